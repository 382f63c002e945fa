"""Readings of one pair of bodies: which faces could be its seam, who carries the rib, where light comes from."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import cached_property, partial

import numpy as np
import shapely
from msgspec import Struct
from shapely.geometry.base import BaseGeometry

from seamcheck.catalogue.kinds import WELD_RIB
from seamcheck.catalogue.say import say
from seamcheck.joint.beam import light_axis
from seamcheck.joint.constants import (
    BAND_SHARE,
    BRIDGED,
    FALLS,
    FREE_ENOUGH,
    LONGEST_DROP,
    NARROWEST,
    SAME_LEVEL,
    WIDEST,
)
from seamcheck.joint.contact import Surface, coverage, directions, near_surface
from seamcheck.joint.frame import Frame
from seamcheck.joint.heights import highest_at
from seamcheck.joint.kind import kind_of
from seamcheck.joint.light import LightSide, inner_points, light_side
from seamcheck.joint.meeting import ALL_OPPOSED, Meeting, along, bare, covered, opposed_area
from seamcheck.joint.patches import Patch, find_patches, rings_within
from seamcheck.joint.profile import BorderProfile, border_profile
from seamcheck.joint.regions import ROOM, rooms
from seamcheck.kernel import Body

_BESIDE, _SAME = 0.03, 1e-3  # mm between regions that touch, and between borders that are one
_LONG = 0.25  # of the longest level of bands: a shorter one is none of its own
_ALONG = 0.9986  # cosine of 3 degrees: a direction further from the pull is not the light's


class Candidate(Struct, frozen=True, eq=False, dict=True):
    """One reading of one pair.

    carrier, counter : part ids; frame : z from carrier into counter
    look_beside : tells what lies beside the bands; takes long, and is asked where light can reach them
    share : 0 to 1 of the band's length that the other part opposes
    bare : stretches of the bands without the other part over them; the region excludes them
    patches : the seam's bands; gap : mm, to the opposite face; level : mm, height of the band; length : mm
    through_counter, through_carrier : what the light would meet on the two ways in
    """

    carrier: str
    counter: str
    frame: Frame
    patches: tuple[Patch, ...]
    faces: tuple[int, ...]
    region: BaseGeometry
    gap: float
    level: float
    length: float
    look_beside: Callable[[], BorderProfile]
    through_counter: LightSide
    through_carrier: LightSide
    bare: BaseGeometry
    share: float

    @cached_property
    def border(self) -> BorderProfile:
        """What lies beside the bands."""
        return self.look_beside()

    @cached_property
    def width(self) -> float:
        """mm, mean of the bands, by their length."""
        return float(np.average([p.width for p in self.patches], weights=[p.length for p in self.patches]))

    @cached_property
    def falls(self) -> float:
        return float(np.average([p.falls for p in self.patches], weights=[p.length for p in self.patches]))

    @property
    def stands_out(self) -> bool:
        """Whether the band is the top of a rib: it falls away to a trap floor on one side at least."""
        return self.kind == WELD_RIB

    @cached_property
    def kind(self) -> str:
        return kind_of(self.border, self.falls, self.width)

    @property
    def describes(self) -> str:
        """What it is, in words; a ridge is called a weld rib only where a joint is stated."""
        if self.stands_out:
            return say("any.ridge", width=self.width, length=self.length)
        return say("any.band", width=self.width, length=self.length, kind=self.kind)

    @cached_property
    def encloses(self) -> float:
        """mm², area inside the bands' loops, short interruptions bridged."""
        return float(enclosed(self.region, self.length).area)

    @property
    def free(self) -> float:
        return max(self.through_counter.free, self.through_carrier.free)

    @property
    def score(self) -> float:
        """Length of the seam, reduced where it hardly stands out, is hardly opposed or shaded."""
        around = 1.0 if self.encloses > 0.2 * (self.length / 4) ** 2 else 0.6
        stands = 1.0 if self.stands_out else 0.3
        return self.length * self.falls * self.share * around * self.free * stands


def read_pair(
    ids: tuple[str, str], bodies: dict[str, Body], named: bool = False
) -> tuple[list[Candidate], list[Meeting]]:
    """All readings of two bodies that lie near each other, and where they meet at all.

    Where the user named a part, a closed band amid broad faces counts too: a board in its holder has one as well.
    """
    a, b = (bodies[i] for i in ids)
    surface_a, surface_b = near_surface(a, b.box), near_surface(b, a.box)
    if not len(surface_a.area) or not len(surface_b.area):
        return [], []
    others = [body for part, body in bodies.items() if part not in ids]
    found, meetings = [], []
    for direction in directions(surface_a, surface_b):
        for carrier, counter, z, own, opposite in (
            (ids[0], ids[1], direction, surface_a, surface_b),
            (ids[1], ids[0], -direction, surface_b, surface_a),
        ):
            frame = Frame.along(z, bodies[carrier].box[:3])
            opposed = coverage(own, opposite, frame)
            patches = find_patches(bodies[carrier], own, opposed, frame, 1.0)
            meeting = Meeting(carrier, counter, frame, tuple(sorted(patches, key=opposed_area)[::-1]))
            candidate = _read(meeting, own, opposite, bodies, others) if patches else None
            if candidate is None and named:
                over = partial(covered, opposite=opposite, frame=frame)
                patches += rings_within(bodies[carrier], own, opposed, over, frame)
                meeting = Meeting(carrier, counter, frame, tuple(sorted(patches, key=opposed_area)[::-1]))
                candidate = _read(meeting, own, opposite, bodies, others) if patches else None
            if patches:
                meetings.append(meeting)
            pull = None if candidate is None else light_axis(bodies[carrier], candidate.faces, z)
            if pull is not None and pull @ z < _ALONG:  # a slope or a dome: search again along the pull
                frame = Frame.along(pull, bodies[carrier].box[:3])
                again = find_patches(bodies[carrier], own, coverage(own, opposite, frame), frame, 1.0)
                meeting = Meeting(carrier, counter, frame, tuple(again))
                candidate = _read(meeting, own, opposite, bodies, others) or candidate
            if candidate is not None:
                found.append(candidate)
    usual = [candidate for candidate in found if not any(not p.rest.is_empty for p in candidate.patches)]
    if len(usual) < len(found) and any(candidate.encloses > 0.0 for candidate in usual):
        return usual, meetings
    return found, meetings


def _read(
    meeting: Meeting, own: Surface, opposite: Surface, bodies: dict[str, Body], others: list[Body]
) -> Candidate | None:
    carrier, counter, frame = meeting.one, meeting.other, meeting.frame
    chosen = _choose(list(meeting.patches))
    if not chosen:
        return None
    rounded = any(p.rounded for p in chosen)
    top = [*chosen, *(_flats(chosen, meeting.patches) if rounded else ())]
    faces = tuple(sorted({f for patch in top for f in patch.faces}))
    whole = shapely.unary_union([patch.region for patch in top])
    length = sum(patch.length for patch in chosen)
    level = _median_height(_on_top(inner_points(whole), own, faces, frame))
    share = float(np.average([p.share for p in chosen], weights=[p.length for p in chosen]))
    left, region = shapely.unary_union([patch.rest for patch in top]), whole
    if not rounded and share < ALL_OPPOSED:
        over = covered(whole, level, opposite, frame)
        left = bare(whole, over)
        region = whole if left.is_empty else whole.difference(left.buffer(_SAME))
        if region.is_empty:
            return None
        share = max(share * whole.area / region.area, along(region, over))
    points = _on_top(inner_points(region), own, faces, frame)
    width = float(np.average([p.width for p in chosen], weights=[p.length for p in chosen]))
    return Candidate(
        carrier,
        counter,
        frame,
        tuple(chosen),
        faces,
        region,
        min(patch.gap for patch in chosen),
        _median_height(points),
        length if left.is_empty else region.length / 2,
        partial(
            border_profile,
            region,
            faces,
            own,
            opposite,
            frame,
            width,
            bodies[carrier],
            bodies[counter],
            slopes=not rounded,
        ),
        light_side(points, 1.0, bodies[counter], others, frame),
        light_side(points, -1.0, bodies[carrier], others, frame),
        left,
        min(1.0, share),
    )


def _median_height(points: np.ndarray) -> float:
    return float(np.median(points[:, 2])) if len(points) else float("nan")


def enclosed(region: BaseGeometry, length: float) -> BaseGeometry:
    """What a band encloses, without the band itself.

    Parameters
    ----------
    region : the band, mm; length : mm; an interruption of up to BRIDGED of it is bridged
    """
    holes = rooms(region)
    if holes:
        return shapely.union_all(holes)
    within = _filled(_bridged(region, length)).difference(_filled(region))
    return within if within.area > ROOM * region.convex_hull.area else shapely.Polygon()


def interruptions(region: BaseGeometry, length: float) -> list[tuple[float, tuple[float, float]]]:
    """Where a band is open: length (mm) and middle (x, y) of each gap that is bridged, none of a closed band.

    Parameters as of ``enclosed``.
    """
    if rooms(region):
        return []
    line = _bridged(region, length).boundary
    width = 2 * region.area / region.length
    gaps = shapely.get_parts(shapely.line_merge(line.difference(region.buffer(_BESIDE))))
    found = []
    for gap in gaps:
        one, other = shapely.get_coordinates(gap)[[0, -1]]
        open_, (x, y) = float(np.linalg.norm(other - one)) + 2 * _BESIDE, (one + other) / 2
        if open_ > width:
            found.append((open_, (float(x), float(y))))
    return found


def _bridged(region: BaseGeometry, length: float) -> BaseGeometry:
    """What a band and its bridged interruptions run round, with them."""
    half = BRIDGED * length / 2
    # filled before it shrinks again: else it would draw back out of the gap of a narrow band from inside too
    return _filled(region.buffer(half, quad_segs=4)).buffer(-half, quad_segs=4)


def _filled(region: BaseGeometry) -> BaseGeometry:
    return shapely.union_all([shapely.Polygon(part.exterior) for part in _polygons(region)])


def _polygons(region: BaseGeometry) -> list[shapely.Polygon]:
    return [part for part in shapely.get_parts(region) if part.geom_type == "Polygon"]


def _choose(patches: list[Patch]) -> list[Patch]:
    """The bands that make up the seam: the lowest level of long, narrow, standing-out bands."""
    bands = [p for p in patches if p.length >= 4 * p.width and p.share >= BAND_SHARE and NARROWEST <= p.width <= WIDEST]
    ribs = _lowest(bands, lambda patch: patch.falls >= FALLS)
    found = ribs or _lowest(bands, lambda patch: not patch.rounded)
    if found is None:
        return []
    level, gap = found
    seam = _without_posts(level)
    return _with_low_stretches(seam, patches, gap) if ribs else seam


def _lowest(bands: list[Patch], counts: Callable[[Patch], bool]) -> tuple[list[Patch], float] | None:
    """The lowest of the long levels among the bands that count, and its gap; None where none counts.

    Long is a quarter of the longest level. Whether they count is asked of the lowest first, and of no more where
    that level is long whatever the others are.
    """
    at_most = max((sum(p.length for p in bands if _same_level(p, one)) for one in bands), default=0.0)
    first = next((one for one in sorted(bands, key=lambda p: p.gap) if counts(one)), None)
    if first is None:
        return None
    level = _at_level([p for p in bands if _same_level(p, first) and counts(p)], first)
    if sum(p.length for p in level) >= _LONG * at_most:
        return level, first.gap
    some = [p for p in bands if counts(p)]
    levels = [_at_level(some, p) for p in some]
    lengths = [sum(p.length for p in level) for level in levels]
    long = [i for i, length in enumerate(lengths) if length >= _LONG * max(lengths)]
    lowest = min(long, key=lambda i: some[i].gap)
    return levels[lowest], some[lowest].gap


def _flats(seam: list[Patch], patches: Sequence[Patch]) -> list[Patch]:
    """The flat faces of a rounded rib: the sliver along its crest, and the floors of notches narrower than it."""
    level = min(p.gap for p in seam)
    top = shapely.unary_union([p.region for p in seam]).buffer(_BESIDE).buffer(-_BESIDE)  # both halves of it
    rooms = [shapely.Polygon(ring) for polygon in _polygons(top) for ring in polygon.interiors]
    width = 2 * top.area / max(top.length, _BESIDE)
    notches = [room for room in rooms if 2 * shapely.maximum_inscribed_circle(room).length <= width]
    within = shapely.unary_union([top, *notches]).buffer(_BESIDE)
    flat = [p for p in patches if not p.rounded and abs(p.gap - level) <= LONGEST_DROP]
    return [p for p in flat if within.contains(p.region)]


def _at_level(ribs: list[Patch], one: Patch) -> list[Patch]:
    """The bands at one level. Beside a flat top its rounded faces are fillets; without one they are the top."""
    level = [p for p in ribs if _same_level(p, one)]
    return [p for p in level if not p.rounded] or level


def _same_level(one: Patch, other: Patch) -> bool:
    return abs(one.gap - other.gap) <= SAME_LEVEL


def _without_posts(seam: list[Patch]) -> list[Patch]:
    """Leave out short bands without a trap floor beside them where the long ones have one: tops of posts."""
    longest = max(seam, key=lambda p: p.length)
    if longest.shoulder < 0.4:
        return seam
    return [
        p
        for p in seam
        if p.shoulder >= 0.1 or p.length > 0.25 * longest.length or p.region.distance(longest.region) < 1.0
    ]


def _with_low_stretches(seam: list[Patch], patches: list[Patch], level: float) -> list[Patch]:
    """Add bands that continue the seam end to end at another level (a lowered or raised stretch of rib)."""
    width = float(np.median([p.width for p in seam]))
    rest = [
        p
        for p in patches
        if p not in seam and not p.rounded and abs(p.gap - level) <= LONGEST_DROP and p.width <= 2.0 * width
    ]
    grew = True
    while grew and rest:
        grew = False
        joined = shapely.unary_union([p.region for p in seam])
        border = joined.buffer(0.03)
        bridged: BaseGeometry | None = None
        for patch in list(rest):
            shared = patch.region.boundary.intersection(border).length
            sides = patch.region.length / 2 - shared
            end_to_end = 0 < shared <= 4.0 * width and sides > 0.3 * width  # two ends, each as oblique as 60 degrees
            if not (end_to_end or shared > width) or not _meets_an_end(joined, patch.region, width):
                continue
            if not end_to_end and bridged is None:
                # filling every opening of up to six rib widths shows what lies between two ends of the rib
                bridged = joined.buffer(3.0 * width, quad_segs=4).buffer(-3.0 * width, quad_segs=4)
            between = bridged is not None and patch.region.intersection(bridged).area > 0.8 * patch.region.area
            if end_to_end or between:
                seam.append(patch)
                rest.remove(patch)
                grew = True
    return seam


_DEEP = np.array([0.3, 0.9, 1.6, 2.2])
"""Rib widths that a rib continues behind its end; behind a flank it ends within 2 widths in any oblique direction."""
_OBLIQUE = np.radians([0.0, 20.0, -20.0, 40.0, -40.0, 60.0, -60.0])
"""How far the direction into the rib may deviate from the perpendicular of its end; 1 / cos 60 degrees is 2 widths."""


def _meets_an_end(seam: BaseGeometry, patch: BaseGeometry, width: float) -> bool:
    """Whether a region meets the seam at an end face, not beside a flank that runs on past it."""
    contact = seam.boundary.intersection(patch.buffer(0.03))
    merged = shapely.line_merge(contact) if contact.geom_type == "MultiLineString" else contact
    for line in shapely.get_parts(merged):
        if line.geom_type != "LineString" or line.length < 0.2 * width:
            continue
        ends = np.array(line.coords)[[0, -1]]
        way = (ends[1] - ends[0]) / max(float(np.linalg.norm(ends[1] - ends[0])), 1e-9)
        beyond = np.array([ends[0] - 0.3 * width * way, ends[1] + 0.3 * width * way])
        turns = (shapely.distance(seam.boundary, shapely.points(beyond)) > 0.05 * width).any()
        if not turns:
            continue
        across = np.array([-way[1], way[0]])
        middle = shapely.get_coordinates(line.interpolate(0.5, normalized=True))[0]
        # behind an end face, even an oblique one, the rib continues; behind a flank it soon ends
        ahead = np.cos(_OBLIQUE)[:, None] * across + np.sin(_OBLIQUE)[:, None] * way
        behind = middle + _DEEP[:, None] * width * np.concatenate([-ahead, ahead])[:, None]
        if shapely.contains_xy(seam, behind[..., 0], behind[..., 1]).all(axis=1).any():
            return True
    return False


def _on_top(points: np.ndarray, own: Surface, faces: tuple[int, ...], frame: Frame) -> np.ndarray:
    """Lift points (n, 2) onto the seam's faces: (m, 3), those that meet one."""
    mine = np.isin(own.face, faces)
    best = highest_at(points, frame.local(own.corners[mine]))
    return np.asarray(np.column_stack([points, best])[np.isfinite(best)])


def is_free(side: LightSide) -> bool:
    """Whether light can come in on this side over most of the seam."""
    return side.free >= FREE_ENOUGH and np.isfinite(side.thickness)


def is_shaded(side: LightSide) -> bool:
    """Whether light could come in on this side if no other part were in the beam path."""
    return side.alone >= FREE_ENOUGH > side.free and np.isfinite(side.thickness)
