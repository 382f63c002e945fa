"""Housings without a weld rib, drawn with a general-purpose CAD library: a case and a flat lid that lies on it."""

from __future__ import annotations

import cadquery as cq

LID = 2.0
FLOOR = 2.0


def case_on(outline, wall, height=16.0, corner=0.0):
    """A box with a floor: the outline (a cadquery sketch-like Workplane of wires) extruded, hollowed to a wall."""
    outer = outline.extrude(height)
    if corner:
        outer = outer.edges("|Z").fillet(corner)
    return outer.faces(">Z").shell(-wall)


def lid_on(outline, height=16.0, corner=0.0, thickness=LID):
    lid = outline.extrude(thickness)
    if corner:
        lid = lid.edges("|Z").fillet(corner)
    return lid.translate((0, 0, height))


def pair(outline, wall, corner=0.0, height=16.0, thickness=LID):
    return {
        "lamp case": case_on(outline(), wall, height, corner),
        "lamp lid": lid_on(outline(), height, corner, thickness),
    }


def rectangle(length, width):
    return lambda: cq.Workplane().rect(length, width)


def circle(radius):
    return lambda: cq.Workplane().circle(radius)


def ellipse(a, b):
    return lambda: cq.Workplane().ellipse(a, b)


def free_form(a, b, wave):
    """A closed spline through 24 points of a waved ellipse."""
    import math

    turns = [2 * math.pi * k / 24 for k in range(24)]
    points = [
        ((a + wave * math.cos(3 * t)) * math.cos(t), (b + 0.7 * wave * math.sin(2 * t)) * math.sin(t)) for t in turns
    ]
    return lambda: cq.Workplane().spline(points, periodic=True).close()


def cee(length, width, arm):
    points = [
        (0, 0), (length, 0), (length, arm), (arm, arm), (arm, width - arm), (length, width - arm), (length, width),
        (0, width),
    ]  # fmt: skip
    return lambda: cq.Workplane().polyline(points).close()


def ell(length, width, arm):
    points = [(0, 0), (length, 0), (length, arm), (arm, arm), (arm, width), (0, width)]
    return lambda: cq.Workplane().polyline(points).close()


def hexagon(across):
    return lambda: cq.Workplane().polygon(6, across)


def slot(length, width):
    return lambda: cq.Workplane().slot2D(length, width)


def in_recess(length, width, wall, ledge, corner, depth=2.0, height=16.0):
    """A lid in a pocket of the case, lying on a ledge; 0.1 mm of play at its sides."""
    case = cq.Workplane().rect(length, width).extrude(height).edges("|Z").fillet(corner)
    pocket = cq.Workplane("XY", origin=(0, 0, height - depth)).rect(length - 2 * wall, width - 2 * wall)
    case = case.cut(pocket.extrude(depth).edges("|Z").fillet(corner - wall))
    inner = length - 2 * (wall + ledge), width - 2 * (wall + ledge)
    room = cq.Workplane("XY", origin=(0, 0, FLOOR)).rect(*inner).extrude(height).edges("|Z")
    case = case.cut(room.fillet(max(0.5, corner - wall - ledge)))
    lid = cq.Workplane("XY", origin=(0, 0, height - depth)).rect(length - 2 * wall - 0.2, width - 2 * wall - 0.2)
    return {"lamp case": case, "lamp lid": lid.extrude(depth).edges("|Z").fillet(corner - wall - 0.1)}


def with_posts(length, width, wall, post, corner=4.0, height=16.0):
    """Screw posts that merge into the wall's corners, with holes through lid and posts."""
    parts = pair(rectangle(length, width), wall, corner, height)
    places = [(x * (length / 2 - post), y * (width / 2 - post)) for x in (-1, 1) for y in (-1, 1)]
    posts = cq.Workplane("XY", origin=(0, 0, FLOOR)).pushPoints(places).circle(post).extrude(height - FLOOR)
    holes = cq.Workplane("XY", origin=(0, 0, FLOOR)).pushPoints(places).circle(1.2).extrude(height + 10)
    return {"lamp case": parts["lamp case"].union(posts).cut(holes), "lamp lid": parts["lamp lid"].cut(holes)}


def two_chambers(length, width, wall, corner=5.0, height=16.0):
    parts = pair(rectangle(length, width), wall, corner, height)
    middle = cq.Workplane("XY", origin=(0, 0, FLOOR)).rect(wall, width - wall).extrude(height - FLOOR)
    return {"lamp case": parts["lamp case"].union(middle), "lamp lid": parts["lamp lid"]}


def inclined(length, width, wall, degrees, corner=5.0):
    """Cut by an inclined plane: case below it, a lid of even thickness above it."""
    import math

    rise = math.tan(math.radians(degrees)) * length / 2
    height = 16.0

    def below(level):
        points = [
            (-length, -50),
            (length, -50),
            (length, height + level + 2 * rise),
            (-length, height + level - 2 * rise),
        ]
        return cq.Workplane("XZ").polyline(points).close().extrude(width, both=True)

    outer = cq.Workplane().rect(length, width).extrude(height + 2 * rise + 10).edges("|Z").fillet(corner)
    inner = cq.Workplane("XY", origin=(0, 0, FLOOR)).rect(length - 2 * wall, width - 2 * wall)
    inner = inner.extrude(height + 2 * rise + 10).edges("|Z").fillet(corner - wall)
    case = outer.cut(inner).intersect(below(0.0))
    lid = outer.intersect(below(LID)).cut(below(0.0))
    return {"lamp case": case, "lamp lid": lid}


def curved(length, width, wall, radius, corner=5.0):
    """Cut by a cylinder along y: case below it, a lid of even thickness above it."""
    height = 16.0
    outer = cq.Workplane().rect(length, width).extrude(height + 20).edges("|Z").fillet(corner)
    inner = cq.Workplane("XY", origin=(0, 0, FLOOR)).rect(length - 2 * wall, width - 2 * wall)
    inner = inner.extrude(height + 20).edges("|Z").fillet(corner - wall)

    def drum(by):
        return cq.Workplane("XZ", origin=(0, 0, height - radius)).circle(radius + by).extrude(width, both=True)

    return {"lamp case": outer.cut(inner).intersect(drum(0.0)), "lamp lid": outer.intersect(drum(LID)).cut(drum(0.0))}


def with_port(length, width, wall, below, corner=6.0, height=16.0):
    """An opening for a plug in one wall, some way below the contact."""
    parts = pair(rectangle(length, width), wall, corner, height)
    port = cq.Workplane("XY", origin=(0, -width / 2, height - below - 4.0)).rect(12, 4 * wall).extrude(4.0)
    return {"lamp case": parts["lamp case"].cut(port), "lamp lid": parts["lamp lid"]}


def chamfered(length, width, wall, by, corner=6.0, height=16.0):
    """The outer border of the case's wall broken by a chamfer."""
    outer = cq.Workplane().rect(length, width).extrude(height).edges("|Z").fillet(corner).faces(">Z").chamfer(by)
    room = cq.Workplane("XY", origin=(0, 0, FLOOR)).rect(length - 2 * wall, width - 2 * wall).extrude(height)
    lid = lid_on(cq.Workplane().rect(length, width), height, corner)
    return {"lamp case": outer.cut(room.edges("|Z").fillet(corner - wall)), "lamp lid": lid}


def write(parts, path, turned=False, mirrored=False):
    assembly = cq.Assembly(name="reading lamp")
    place = cq.Location(cq.Vector(31.0, -17.0, 9.0), cq.Vector(1, 2, 3), 40.0) if turned else cq.Location()
    for name, shape in parts.items():
        assembly.add(shape.mirror("YZ") if mirrored else shape, name=name, loc=place)
    assembly.export(str(path))
    return path


def solids_of(step, tmp_path):
    file = tmp_path / "out.step"
    file.write_bytes(step)
    return cq.importers.importStep(str(file)).solids().vals()
