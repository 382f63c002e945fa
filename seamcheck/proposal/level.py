"""A rib on a level contact: the bodies that are cut away beside it, and the part with rib and traps built in."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Any

import numpy as np
import shapely
from msgspec import Struct
from shapely.geometry.base import BaseGeometry

from seamcheck.catalogue.say import say
from seamcheck.joint.frame import Frame
from seamcheck.joint.regions import face_region, union_region
from seamcheck.kernel import Body
from seamcheck.kernel.grooves import ABOVE, AGREES, Axes, Line, NotCut, solids_of, volume
from seamcheck.kernel.stepped import Flat, Wall, arc, below, inlaid, stepped
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

CLEAR = 0.1
"""mm beside and below the traps in which no other face of the part may lie where they are built in."""


class Trap(Struct, frozen=True, eq=False):
    """The flash trap on one side of a rib, and the lowered land beyond it.

    Attributes
    ----------
    rib, wide : the rib's and the trap wall's line at the contact's height
    side : 'outer' or 'inner'
    borders : of the land; on the outer side the outline comes first
    section, contact : dimensions; mm, height of the contact in the frame
    """

    rib: Ring
    wide: Ring
    side: str
    borders: tuple[Line, ...]
    section: Section
    contact: float

    @property
    def floor(self) -> float:
        """mm, height of the trap's floor."""
        return self.contact - self.section.rib_height

    @property
    def land(self) -> float:
        """mm, height of the lowered land."""
        return self.contact - self.section.lowering

    @property
    def is_open(self) -> bool:
        return self.section.open_outer if self.side == "outer" else self.section.open_inner

    def flank(self, height: float) -> Line:
        """The rib's line at a height: the rib widens downward."""
        sign = 1.0 if self.side == "outer" else -1.0
        return as_line(self.rib.offset(sign * self.section.lean * (self.contact - height)))

    def wall(self, height: float) -> Line:
        """The trap wall's line at a height: the trap narrows downward."""
        sign = -1.0 if self.side == "outer" else 1.0
        return as_line(self.wide.offset(sign * self.section.lean * (self.contact - height)))

    def level(self, height: float, line: Line, beyond: Sequence[Line]) -> Flat:
        """The level face between a line beside the rib and the borders of what lies beyond it."""
        if self.side == "outer":
            return Flat(height, beyond[0], (line, *beyond[1:]))
        return Flat(height, line, tuple(beyond))


def level_traps(nets: Sequence[Net], section: Section, contact: float, land: BaseGeometry) -> list[list[Trap]]:
    """The traps beside every net's rib, the outer one first.

    Raises
    ------
    NotCut : traps run into each other, or a mid-line leaves the land
    """
    pieces = list(getattr(land, "geoms", [land]))
    found = []
    for net in nets:
        ribs = strips([net], section.rib_width / 2.0, section.rib_width / 2.0)
        wides = strips([net], section.half_width("inner"), section.half_width("outer"))
        if len(ribs) != 1 or len(wides) != 1 or len(ribs[0][1]) != len(wides[0][1]):
            raise NotCut(say("propose.cut.neighbours"))
        (rib, ribs_inside), (wide, wides_inside) = ribs[0], wides[0]
        own = next((piece for piece in pieces if piece.intersects(net.outline.curve)), None)
        if own is None:
            raise NotCut(say("propose.cut.leaves"))
        traps = [Trap(rib, wide, "outer", _borders(own, rib, "outer"), section, contact)]
        chambers = sorted(wides_inside, key=lambda ring: area_in(ring).area)
        for hole in sorted(ribs_inside, key=lambda ring: area_in(ring).area):
            place = area_in(hole).representative_point()
            trap = min(chambers, key=lambda ring: area_in(ring).distance(place))
            traps.append(Trap(hole, trap, "inner", _borders(own, hole, "inner"), section, contact))
        found.append(traps)
    return found


def cutting_bodies(frame: Frame, beside: Sequence[Sequence[Trap]], land: BaseGeometry) -> list[tuple[str, Any]]:
    """One body for each side of the rib: its flank, the trap's floor and wall, and the lowered land in one piece."""
    axes = Axes(frame.origin, frame.axes)
    names = {"outer": "outside of the rib", "inner": "inside of the rib"}
    found = [(names[trap.side], _cutting_body(axes, trap)) for traps in beside for trap in traps]
    lines = [area_in(traps[0].rib).exterior for traps in beside]
    first = beside[0][0]
    for island in getattr(land, "geoms", [land]):
        if any(island.intersects(line) for line in lines):
            continue
        ((outline, holes),) = rings_of(island, LAND_FIT)
        rings = [as_line(ring) for ring in (outline, *holes)]
        high = first.contact + ABOVE
        walls = [Wall(first.land, high, ring, ring) for ring in rings]
        flats = [Flat(at, rings[0], tuple(rings[1:])) for at in (first.land, high)]
        found.append(("land beside the seam", stepped(axes, walls, flats)))
    return found


def _cutting_body(axes: Axes, trap: Trap) -> Any:
    low, middle, high = trap.floor, trap.land, trap.contact + ABOVE
    bottom = low if trap.is_open else middle
    walls = [Wall(low, high, trap.flank(low), trap.flank(high))]
    walls += [Wall(bottom, high, ring, ring) for ring in trap.borders]
    flats = [trap.level(high, trap.flank(high), trap.borders)]
    if trap.is_open:
        flats.append(trap.level(low, trap.flank(low), trap.borders))
    else:
        walls.append(Wall(low, middle, trap.wall(low), trap.wall(middle)))
        flats += [
            trap.level(low, trap.flank(low), [trap.wall(low)]),
            trap.level(middle, trap.wall(middle), trap.borders),
        ]
    return stepped(axes, walls, flats)


def built_in(body: Body, frame: Frame, beside: Sequence[Sequence[Trap]], land: BaseGeometry) -> Any | None:
    """The part with rib and traps, made without intersecting its walls with theirs.

    The part is cut off at the level of the lowered land, and the traps' and ribs' faces are set into the level face
    that is left. None where that is not all: where the part reaches higher beside the land, where a trap runs out to
    the border, or where another face of the part lies in a trap's way.

    Notes
    -----
    Cutting bodies of some hundred faces out of walls that are offsets of splines takes the kernel tens of seconds,
    since each of their faces lies in the box of each wall.

    Raises
    ------
    NotCut : the faces do not close, or the volumes before and after do not agree
    """
    traps = [trap for both in beside for trap in both]
    first, axes = traps[0], Axes(frame.origin, frame.axes)
    if any(trap.is_open for trap in traps):
        return None
    lowered = Body(below(body, axes, first.land))
    if len(solids_of(lowered.shape)) != 1:
        return None
    height = first.land + float(frame.origin @ frame.axes[2])
    is_up = lowered.planes[:, :3] @ frame.axes[2] > 1.0 - 1e-9
    tops = np.flatnonzero(is_up & (abs(lowered.planes[:, 3] - height) < 1e-6)).tolist()
    level = union_region(lowered, tops, frame)
    away = shapely.union_all([_strip(both) for both in beside])
    if level.difference(land.buffer(CLEAR)).area > 1e-3 or not level.contains(away.buffer(CLEAR)):
        return None
    others = (i for i in range(len(lowered.faces)) if i not in tops)
    if any(face_near(lowered, i, frame, first.floor - CLEAR, first.land - FLAT, away.buffer(CLEAR)) for i in others):
        return None
    faces: tuple[list[Wall], list[Flat]] = ([], [])
    mouths, expected = [], volume(lowered.shape)
    for both in beside:
        ridge, trench = (
            _between(both, first.floor, first.contact, Trap.flank),
            _between(both, first.floor, first.land, Trap.wall),
        )
        expected += volume(stepped(axes, *ridge)) - volume(stepped(axes, *trench))
        mouths.append(trench[1][1])
        faces[0].extend([*ridge[0], *trench[0]])
        faces[1].append(ridge[1][1])
        faces[1].extend(trap.level(trap.floor, trap.flank(trap.floor), [trap.wall(trap.floor)]) for trap in both)
    part = inlaid(lowered, tops, axes, mouths, *faces)
    missing = abs(volume(part) - expected)
    if missing > AGREES * max(1.0, volume(body.shape) - expected):
        raise NotCut(say("propose.cut.volumes-by", by=missing))
    return part


def _between(
    both: Sequence[Trap], low: float, high: float, line: Callable[[Trap, float], Line]
) -> tuple[list[Wall], list[Flat]]:
    """Walls and level faces of what lies between the lines of the outer and the inner traps, from low to high (mm)."""
    outer, *inner = both
    walls = [Wall(low, high, line(trap, low), line(trap, high)) for trap in both]
    return walls, [Flat(at, line(outer, at), tuple(line(trap, at) for trap in inner)) for at in (low, high)]


def _strip(both: Sequence[Trap]) -> BaseGeometry:
    """Rib and traps, seen from above."""
    outer, *inner = both
    return area_in(outer.wide).difference(shapely.union_all([area_in(trap.wide) for trap in inner]))


def _borders(land: BaseGeometry, rib: Ring, side: str) -> tuple[Line, ...]:
    """The borders of the lowered land on one side of the rib; on the outer side the outline comes first."""
    inside = area_in(rib)
    outline, holes = rings_of(land, LAND_FIT)[0]
    if side == "outer":
        return (as_line(outline), *(as_line(hole) for hole in holes if not inside.contains(area_in(hole))))
    return tuple(as_line(hole) for hole in holes if inside.contains(area_in(hole)))


def area_in(ring: Ring) -> shapely.Polygon:
    """What a ring encloses; its arcs are taken every tenth of a radian."""
    found = []
    for piece in as_line(ring):
        if piece[2] == 0.0:
            found.append(np.array([piece[0]]))
            continue
        centre, radius, start, sweep = arc(piece)
        angles = start + np.linspace(0.0, sweep, max(3, int(abs(sweep) / 0.1) + 2))[:-1]
        found.append(centre + radius * np.column_stack([np.cos(angles), np.sin(angles)]))
    return shapely.Polygon(np.vstack(found))


def free_land(
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


def strips(nets: Sequence[Net], inner: float, outer: float) -> list[tuple[Ring, tuple[Ring, ...]]]:
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


def as_line(ring: Ring) -> tuple[tuple[tuple[float, float], tuple[float, float], float], ...]:
    """A ring as the kernel takes it: start, end and bulge of every piece."""
    return tuple((piece.start, piece.end, piece.bulge) for piece in ring.pieces)
