"""From a section and mid-lines to bodies: what is cut away, and the part that is left."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from typing import Any

import numpy as np
import shapely
from shapely.geometry.base import BaseGeometry

from seamcheck.catalogue.say import say
from seamcheck.joint.frame import Frame
from seamcheck.joint.regions import face_region, union_region
from seamcheck.kernel import Body
from seamcheck.kernel.grooves import ABOVE, Axes, Column, Line, NotCut, column, common, cut_out, slab, united, without
from seamcheck.kernel.stepped import Flat, Wall, arc, stepped
from seamcheck.proposal.room import Net
from seamcheck.proposal.section import Section
from seamcheck.sections.pieces import Ring, rings_of, tangent_ring

WEB = 0.5
"""mm, radius where the rib of a dividing wall meets another. Assumption."""

PLAY = 0.3
"""mm that the land is lowered beyond the contact where its face goes on, for the cover's lateral play. Assumption."""


FLAT = 1e-4
"""mm: a contact whose height varies by no more is a level plane."""

LAND_FIT = 0.01
"""mm within which lines and arcs follow the outline of the lowered land, beyond the part."""

BEYOND = 1.0
"""mm that a cutting body reaches beyond the contact where the part ends there: its wall meets no wall of the part."""

WALL_FIT = 0.002
"""mm within which lines and arcs follow the mid-line."""


@dataclass(frozen=True, slots=True, eq=False)
class Cut:
    """The part with the joint, and the named bodies that were taken out of it; they reach above the contact."""

    part: Any
    tools: tuple[tuple[str, Any], ...]


def contact_faces(body: Body, contact: BaseGeometry, frame: Frame, up: float, height: float) -> list[int]:
    """Faces of a part that lie in the contact and look towards the other part.

    Parameters
    ----------
    contact : region in the frame's x, y
    up : +1 where the part's material lies below the contact in the frame, -1 above
    height : mm, largest height of the contact above and below the frame's origin that is looked at
    """
    found = []
    for i, box in enumerate(body.boxes):
        corners = frame.local(np.array([[box[a], box[b], box[c]] for a in (0, 3) for b in (1, 4) for c in (2, 5)]))
        if np.isnan(corners).any() or corners[:, 2].min() > height or corners[:, 2].max() < -height:
            continue
        if not shapely.box(*corners[:, :2].min(axis=0), *corners[:, :2].max(axis=0)).intersects(contact):
            continue
        facets = body.facets([i], 0.05)
        if not len(facets.corners):
            continue
        normals = np.cross(*(facets.corners[:, k] - facets.corners[:, 0] for k in (1, 2)))
        if up * float(normals.sum(axis=0) @ frame.axes[2]) < 0.3 * float(np.linalg.norm(normals, axis=1).sum()):
            continue
        if face_region(body, i, frame).intersection(contact).area > 1e-3:
            found.append(i)
    return found


def cut_joint(
    body: Body,
    faces: Sequence[int],
    frame: Frame,
    nets: Sequence[Net],
    section: Section,
    heights: tuple[float, float],
    region: BaseGeometry,
) -> Cut:
    """Cut the rib free: lower the land beside it, and deepen the traps.

    Parameters
    ----------
    faces : of the contact
    frame : z out of the part, against the light or along it
    nets : mid-lines of the rib
    section : dimensions
    heights : mm, lowest and highest place of the contact in the frame
    region : the contact in the frame's x, y; the land is lowered there and ``PLAY`` beyond, no further

    Raises
    ------
    NotCut
    """
    if heights[1] - heights[0] < FLAT:
        land = _free_land(body, faces, frame, section, float(np.mean(heights)), region)
        if land is not None:
            tools = _stepped_tools(frame, nets, section, float(np.mean(heights)), land)
            return Cut(cut_out(body, [tool for _, tool in tools]), tuple(tools))
    axes = Axes(frame.origin, frame.axes)
    up = frame.axes[2]
    low, high = heights[0] - section.rib_height - 0.2, heights[1] + 2 * ABOVE
    rib = united(
        [
            _column(axes, *strip, section, low, high, +1.0)
            for strip in _strips(nets, section.rib_width / 2.0, section.rib_width / 2.0)
        ]
    )
    wide = _strips(nets, section.half_width("inner"), section.half_width("outer"))
    traps = united([_column(axes, *strip, section, low, high, -1.0) for strip in wide])
    land = slab(body, faces, up, section.lowering)
    if union_region(body, faces, frame).area > 1.01 * region.area:
        around = region.buffer(PLAY, join_style="mitre")
        straight = replace(section, draft=0.0)
        land = common(land, united([_column(axes, *strip, straight, low, high, 1.0) for strip in rings_of(around)]))
    lowering = without(land, rib)
    deep = without(common(slab(body, faces, up, section.rib_height), traps), rib)
    part = cut_out(body, [lowering, deep])
    return Cut(part, (("lowering", lowering), ("flash traps", deep)))


def _free_land(
    body: Body, faces: Sequence[int], frame: Frame, section: Section, contact: float, region: BaseGeometry
) -> BaseGeometry | None:
    """Where the land is lowered, ``BEYOND`` past the borders at which the part ends; None where it goes on there.

    The part goes on where something of it stands above the contact there, or where a level face lies no deeper than
    the lowered land.
    """
    own = union_region(body, faces, frame)
    land = region.buffer(PLAY, join_style="mitre")
    land = shapely.union_all([land, region.buffer(BEYOND).difference(own.buffer(1e-3))])
    land = land.buffer(BEYOND / 2.0).buffer(-BEYOND / 2.0)  # no ridge is left between contact and border
    beyond = land.difference(own.buffer(1e-3))
    for i, box in enumerate(body.boxes):
        if i in faces:
            continue
        corners = frame.local(np.array([[box[a], box[b], box[c]] for a in (0, 3) for b in (1, 4) for c in (2, 5)]))
        if np.isnan(corners).any():
            return None
        low, high = corners[:, 2].min() - contact, corners[:, 2].max() - contact
        if high < -section.lowering or not shapely.box(
            *corners[:, :2].min(axis=0), *corners[:, :2].max(axis=0)
        ).intersects(beyond):
            continue
        if low > ABOVE:
            continue
        is_level = high - low < FLAT
        if high > FLAT and face_near(body, i, frame, contact + FLAT, contact + ABOVE, land):
            return None
        if is_level and face_region(body, i, frame).intersection(beyond).area > 1e-3:
            return None
    return land


def face_near(body: Body, face: int, frame: Frame, low: float, high: float, region: BaseGeometry) -> bool:
    """Whether a face passes through the column over a region between two heights (mm of the frame)."""
    facets = body.facets([face], 0.05)
    corners = frame.local(facets.corners.reshape(-1, 3)).reshape(-1, 3, 3)
    inside = (corners[:, :, 2].max(axis=1) > low) & (corners[:, :, 2].min(axis=1) < high)
    if not inside.any():
        return False
    rings = shapely.polygons(np.concatenate([corners[inside, :, :2], corners[inside, :1, :2]], axis=1))
    return bool(shapely.intersects(shapely.buffer(rings, 1e-3), region).any())


def _stepped_tools(
    frame: Frame, nets: Sequence[Net], section: Section, contact: float, land: BaseGeometry
) -> list[tuple[str, Any]]:
    """One body for each side of the rib: its flank, the trap's floor and wall, and the lowered land in one piece."""
    axes = Axes(frame.origin, frame.axes)
    low, middle, high = contact - section.rib_height, contact - section.lowering, contact + ABOVE
    pieces = list(getattr(land, "geoms", [land]))
    tools: list[tuple[str, Any]] = []
    for net in nets:
        ribs = _strips([net], section.rib_width / 2.0, section.rib_width / 2.0)
        wides = _strips([net], section.half_width("inner"), section.half_width("outer"))
        if len(ribs) != 1 or len(wides) != 1 or len(ribs[0][1]) != len(wides[0][1]):
            raise NotCut(say("propose.cut.neighbours"))
        (rib, ribs_inside), (wide, wides_inside) = ribs[0], wides[0]
        own = next((piece for piece in pieces if piece.intersects(net.outline.curve)), None)
        if own is None:
            raise NotCut(say("propose.cut.leaves"))
        pieces = [piece for piece in pieces if piece is not own]
        tools.append(("outside of the rib", _tool(axes, section, (low, middle, high), rib, wide, own, "outer")))
        chambers = sorted(wides_inside, key=lambda ring: shapely.Polygon(_points(ring)).area)
        for hole in sorted(ribs_inside, key=lambda ring: shapely.Polygon(_points(ring)).area):
            place = shapely.Polygon(_points(hole)).representative_point()
            trap = min(chambers, key=lambda ring: shapely.Polygon(_points(ring)).distance(place))
            tools.append(("inside of the rib", _tool(axes, section, (low, middle, high), hole, trap, own, "inner")))
    for island in pieces:
        ((outline, holes),) = rings_of(island, LAND_FIT)
        rings = [as_line(ring) for ring in (outline, *holes)]
        walls = [Wall(middle, high, ring, ring) for ring in rings]
        flats = [Flat(at, rings[0], tuple(rings[1:])) for at in (middle, high)]
        tools.append(("land beside the seam", stepped(axes, walls, flats)))
    return tools


def _tool(
    axes: Axes, section: Section, heights: tuple[float, float, float], rib: Ring, wide: Ring, land: BaseGeometry,
    side: str,
) -> Any:  # fmt: skip
    """The body that is cut away on one side of the rib; ``rib`` and ``wide`` are its lines at the contact's height.

    Parameters
    ----------
    heights : mm, of the trap's floor, of the lowered land and of the upper end
    """
    low, middle, high = heights
    contact = high - ABOVE
    sign = 1.0 if side == "outer" else -1.0  # a rib that widens downward: its outer line moves out, its inner one in

    def flank(z: float) -> Line:
        return as_line(rib.offset(sign * section.lean * (contact - z)))

    def trap_wall(z: float) -> Line:
        return as_line(wide.offset(-sign * section.lean * (contact - z)))

    rings = _land_rings(land, rib, side)
    is_open = section.open_outer if side == "outer" else section.open_inner
    bottom = low if is_open else middle
    walls = [Wall(low, high, flank(low), flank(high)), *(Wall(bottom, high, ring, ring) for ring in rings)]
    flats = [_between_lines(high, flank(high), rings, side)]
    if is_open:
        flats.append(_between_lines(low, flank(low), rings, side))
    else:
        walls.append(Wall(low, middle, trap_wall(low), trap_wall(middle)))
        flats += [
            _between_lines(low, flank(low), [trap_wall(low)], side),
            _between_lines(middle, trap_wall(middle), rings, side),
        ]
    return stepped(axes, walls, flats)


def _land_rings(land: BaseGeometry, rib: Ring, side: str) -> list[Line]:
    """The borders of the lowered land on one side of the rib; on the outer side the outline comes first."""
    inside = shapely.Polygon(_points(rib))
    outline, holes = rings_of(land, LAND_FIT)[0]
    if side == "outer":
        return [as_line(outline), *(as_line(h) for h in holes if not inside.contains(shapely.Polygon(_points(h))))]
    return [as_line(h) for h in holes if inside.contains(shapely.Polygon(_points(h)))]


def _between_lines(height: float, line: Line, rings: Sequence[Line], side: str) -> Flat:
    """The level face between a line beside the rib and the borders of what lies beyond it."""
    return Flat(height, rings[0], (line, *rings[1:])) if side == "outer" else Flat(height, line, tuple(rings))


def _points(ring: Ring) -> np.ndarray:
    """(n, 2) mm, points along a ring, those of arcs every tenth of a radian."""
    found = []
    for piece in as_line(ring):
        if piece[2] == 0.0:
            found.append(np.array([piece[0]]))
            continue
        centre, radius, start, sweep = arc(piece)
        angles = start + np.linspace(0.0, sweep, max(3, int(abs(sweep) / 0.1) + 2))[:-1]
        found.append(centre + radius * np.column_stack([np.cos(angles), np.sin(angles)]))
    return np.vstack(found)


def _strips(nets: Sequence[Net], inner: float, outer: float) -> list[tuple[Ring, tuple[Ring, ...]]]:
    """The strips that reach ``inner`` and ``outer`` mm to both sides of the mid-lines: outline and holes of each.

    A loop that stands alone keeps lines and concentric arcs; where walls divide it, all strips are united first.
    """
    found = []
    for net in nets:
        if net.walls:
            for polygon in getattr(region := net.region(inner, outer, WEB), "geoms", [region]):
                rings = [
                    tangent_ring(np.asarray(ring.coords)[:-1], WALL_FIT)
                    for ring in (polygon.exterior, *polygon.interiors)
                ]
                found.append((rings[0], tuple(rings[1:])))
        else:
            ring = tangent_ring(net.outline.points, WALL_FIT)
            found.append((ring.offset(outer), (ring.offset(-inner),)))
    return found


def _column(
    axes: Axes, outline: Ring, holes: Sequence[Ring], section: Section, low: float, high: float, grows: float
) -> Any:
    """A column whose walls lean by the draft; ``grows`` +1: wider downward, -1: narrower."""
    top, bottom = (-grows * section.lean * z for z in (high, low))
    return column(
        axes,
        Column(
            low, high, as_line(outline.offset(bottom)), as_line(outline.offset(top)),
            tuple(as_line(hole.offset(-bottom)) for hole in holes), tuple(as_line(hole.offset(-top)) for hole in holes),
        ),
    )  # fmt: skip


def as_line(ring: Ring) -> tuple[tuple[tuple[float, float], tuple[float, float], float], ...]:
    """A ring as the kernel takes it: start, end and bulge of every piece."""
    return tuple((piece.start, piece.end, piece.bulge) for piece in ring.pieces)
