"""Sections across the rib along one path: cut evenly, at events, and between neighbours that differ."""

from __future__ import annotations

import numpy as np
import shapely
from msgspec import Struct
from scipy.spatial import cKDTree

from seamcheck.contour import Contour, Path
from seamcheck.contour.holes import without_holes
from seamcheck.contour.midline import Border
from seamcheck.joint import Joint
from seamcheck.joint.constants import LARGEST_GAP
from seamcheck.sections.alike import cut_alike
from seamcheck.sections.band import near_facets
from seamcheck.sections.intervals import Side, decompose, side_of
from seamcheck.sections.slices import BASE, COVER, Segments, box_tree
from seamcheck.sections.stations import MOST, even_stations, event_stations, merge, place_on

_REFINE_ROUNDS = 3
_JUMP = 0.02  # mm between neighbours from which the stretch between them is looked at again
_EDGE = 0.005  # mm at the edge of the rib top within which the facets of two faces may part


class _Cut(Struct, frozen=True, eq=False):
    """What is known of each station by itself.

    s (n,) mm; flat, u (n, 2); inner_edge, outer_edge (n,) mm; of (n,) number of its section, first of all that of the
    first; segments : of the sections, as cut, heights in the press frame
    """

    s: np.ndarray
    flat: np.ndarray
    u: np.ndarray
    inner_edge: np.ndarray
    outer_edge: np.ndarray
    of: np.ndarray
    segments: Segments

    def joined(self, other: _Cut) -> _Cut:
        """Both, in the order of their stations."""
        order = np.argsort(np.concatenate([self.s, other.s]), kind="stable")

        def both(name: str) -> np.ndarray:
            return np.concatenate([getattr(self, name), getattr(other, name)])[order]

        count = int(self.of.max()) + 1
        number, first, of = np.unique(
            np.concatenate([self.of, other.of + count])[order], return_index=True, return_inverse=True
        )
        rows = np.argsort(first)
        segments = self.segments.joined(other.segments, count, number[rows])
        of = np.argsort(rows)[of]
        return _Cut(both("s"), both("flat"), both("u"), both("inner_edge"), both("outer_edge"), of, segments)


class Section(Struct, frozen=True, eq=False):
    """Sections of one path at some stations, no two neighbours of them equal: everything is measured from these.

    Attributes
    ----------
    s : (n,) mm along the path; points : (n, 3) mm, u : (n, 2) unit, outward, in the press frame
    inner_edge, outer_edge : (n,) mm from P to the edges of the rib top
    slope : (n,) rise of the rib top along +w for each mm outward
    gap, gap_min, gap_max : (n,) mm at P, smallest and largest over the rib top; NaN where nothing is opposite
    segments : as cut, heights from the rib top's tangent line; inner, outer : both sides, decomposed
    up : +1 where the rib stands on the base, -1 where on the cover; rib_owner : BASE or COVER
    """

    s: np.ndarray
    points: np.ndarray
    u: np.ndarray
    inner_edge: np.ndarray
    outer_edge: np.ndarray
    slope: np.ndarray
    gap: np.ndarray
    gap_min: np.ndarray
    gap_max: np.ndarray
    segments: Segments
    inner: Side
    outer: Side
    up: float
    rib_owner: int

    @property
    def width(self) -> np.ndarray:
        """(n,) mm of the rib top."""
        return np.asarray(self.inner_edge + self.outer_edge)

    @property
    def sides(self) -> dict[str, Side]:
        """Both sides by name."""
        return {"inner": self.inner, "outer": self.outer}

    @property
    def edges(self) -> dict[str, np.ndarray]:
        """(n,) mm from P to the edge of the rib top on each side, by name."""
        return {"inner": self.inner_edge, "outer": self.outer_edge}


class Sections(Struct, frozen=True, eq=False):
    """All stations of one path, and the section that each has.

    s : (n,) mm along the path; points : (n, 3) mm, u : (n, 2) unit, outward, in the press frame
    of : (n,) number of the station's section; each : the sections
    """

    s: np.ndarray
    points: np.ndarray
    u: np.ndarray
    of: np.ndarray
    each: Section


class Cutter:
    """Cuts one joint at any stations."""

    def __init__(self, joint: Joint, contour: Contour, spot: float | None = None) -> None:
        """spot : mm, width of the beam where it is not the rib's."""
        self.joint, self.contour = joint, contour
        self.width, self.spot = contour.rib_width, spot
        self.reach = max(6.0, 6.0 * contour.rib_width, spot or 0.0)
        self.up = joint.up
        self.rib_owner = BASE if joint.up > 0 else COVER
        self.region, holes = without_holes(joint.region)
        self.holes = shapely.MultiPolygon(holes)
        self.border = Border(self.region)
        self.soup = near_facets(joint, contour, self.reach, (spot or 0.0) / 2)
        self.tree = box_tree(self.soup)
        self.nodes = cKDTree(np.concatenate([path.points[:, :2] for path in contour.paths]))
        self.junctions = np.array([p[:2] for p in contour.junctions.values()]).reshape(-1, 2)

    def cut(self, path: Path, s: np.ndarray) -> _Cut:
        """Section at each arc length (n,) mm of a path."""
        flat, u = place_on(path, s, self.border, self.width, self.junctions)
        inner_edge, outer_edge = self.border.chord(flat, u, max(4.0 * self.width, 6.0))
        edges = np.column_stack([inner_edge, outer_edge])
        segments, of = cut_alike(self.soup, flat, u, self.reach, self.tree, edges, self._has_top)
        return _Cut(s, flat, u, inner_edge, outer_edge, of, segments)

    def let_go(self) -> None:
        """Give back the memory of the facets, where nothing is cut any more."""
        del self.soup, self.tree

    def _has_top(self, segments: Segments, count: int) -> np.ndarray:
        """(count,) bool: where the rib top's height needs no look at other stations."""
        return np.asarray(np.isfinite(_top_at_p(segments, count, self.rib_owner, self.joint.rib_faces)))

    def sections(self, path: Path, found: _Cut) -> Sections:
        s, segments = found.s, found.segments
        _, rows = np.unique(found.of, return_index=True)
        n = len(rows)
        top = _top_at_p(segments, n, self.rib_owner, self.joint.rib_faces)[found.of]
        known = np.flatnonzero(np.isfinite(top))
        if len(known):
            top = np.where(np.isfinite(top), top, np.interp(s, s[known], top[known]))
        else:
            top = np.interp(s, path.s, path.points[:, 2])
        points = np.column_stack([found.flat, top])
        slope = _lateral_slope(segments, n, self.rib_owner, self.joint.rib_faces, 0.3 * self.width)
        segments = _levelled(segments, top[rows], slope)
        edges = inner_edge, outer_edge = found.inner_edge[rows], found.outer_edge[rows]
        extra = np.column_stack([-inner_edge, outer_edge])
        if self.spot is not None:
            extra = np.column_stack([extra, *(np.full(n, end * self.spot / 2) for end in (-1.0, 1.0))])
        intervals = decompose(segments, n, extra, self.rib_owner, self.up, self.reach)
        inner, outer = side_of(intervals, n, False), side_of(intervals, n, True)
        gaps = _gaps((inner, outer), edges, self.joint)
        each = Section(
            s[rows], points[rows], found.u[rows], *edges, slope, *gaps, segments, inner, outer, self.up, self.rib_owner
        )
        return Sections(s, points, found.u, found.of, each)


def sections_along(cutter: Cutter, path: Path, spacing: float) -> Sections:
    """Sections evenly, spacing mm apart, at events, and between neighbours that differ."""
    s = merge(path, even_stations(path, spacing), event_stations(path, cutter.soup, cutter.reach))
    found = cutter.cut(path, s)
    sections = cutter.sections(path, found)
    for _ in range(_REFINE_ROUNDS):
        more = _between_jumps(path, sections)
        if not len(more) or len(sections.s) + len(more) > MOST:
            break
        merged = merge(path, sections.s, more)
        if len(merged) == len(sections.s):
            break
        found = found.joined(cutter.cut(path, np.setdiff1d(merged, found.s)))
        sections = cutter.sections(path, found)
    return sections


def _between_jumps(path: Path, sections: Sections) -> np.ndarray:
    """Middles between neighbours whose rib width, gap or thickness differ."""
    section, s = sections.each, sections.s
    values = np.column_stack([section.width, section.gap_min, section.gap_max, section.outer.plastic_a[:, 0]])
    values = values[sections.of]
    ahead = np.append(s[1:], s[0] + path.length) if path.closed else s[1:]
    following = np.roll(values, -1, axis=0) if path.closed else values[1:]
    here, there = s[: len(ahead)], ahead
    a = values[: len(ahead)]
    jump = (np.abs(a - following) > _JUMP) | (np.isfinite(a) != np.isfinite(following))
    wide = (there - here) > 0.12
    return np.asarray(((here + there) / 2)[jump.any(axis=1) & wide])


def _gaps(
    sides: tuple[Side, Side], edges: tuple[np.ndarray, np.ndarray], joint: Joint
) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Gap at P, its smallest and its largest over the rib top; a rounded top has no width."""
    outer = sides[1]
    on_rib = np.isin(outer.floor_face[:, 0], joint.rib_faces)
    at_p = np.where(on_rib, outer.roof_a[:, 0] - outer.floor_a[:, 0], np.nan)
    at_p = np.where(at_p <= LARGEST_GAP, at_p, np.nan)
    if joint.rounded:
        return at_p, at_p, at_p
    least, most = [], []
    for side, edge in zip(sides, edges, strict=True):
        within = within_strip(side, edge) & np.isin(side.floor_face, joint.rib_faces)
        gaps = np.stack([side.roof_a - side.floor_a, side.roof_b - side.floor_b])
        gaps = np.where(within[None] & (gaps <= LARGEST_GAP), gaps, np.nan)  # what lies further off is no counterpart
        least.append(extreme_of(np.fmin, gaps))
        most.append(extreme_of(np.fmax, gaps))
    return at_p, np.fmin(*least), np.fmax(*most)


def within_strip(side: Side, edge: np.ndarray) -> np.ndarray:
    """Mask (n, k) of intervals over the rib top; what lies wholly at its edge is an inexact meeting of facets."""
    return (side.b <= edge[:, None] + 2e-5) & (side.a < edge[:, None] - _EDGE)


def extreme_of(function: np.ufunc, values: np.ndarray) -> np.ndarray:
    """(n,) mm, smallest or largest (fmin, fmax) over both ends of all intervals of values (2, n, k); NaN is skipped."""
    return np.asarray(function.reduce(function.reduce(values, axis=0), axis=1))


def _top_at_p(segments: Segments, n: int, owner: int, rib_faces: tuple[int, ...]) -> np.ndarray:
    """(n,) height of the rib top at P from the seam faces alone."""
    mine = np.flatnonzero(
        (segments.owner == owner) & np.isin(segments.face, rib_faces) & (segments.u0 <= 1e-9) & (segments.u1 >= -1e-9)
    )
    run = np.maximum(segments.u1[mine] - segments.u0[mine], 1e-12)
    height = segments.w0[mine] + (0.0 - segments.u0[mine]) / run * (segments.w1[mine] - segments.w0[mine])
    top = np.full(n, -np.inf)
    np.maximum.at(top, segments.station[mine], height)
    return np.where(np.isfinite(top), top, np.nan)


def _lateral_slope(segments: Segments, n: int, owner: int, rib_faces: tuple[int, ...], half: float) -> np.ndarray:
    """(n,) mean slope dw/du of the rib top across the seam within ``half`` mm of P; 0 where it is unknown."""
    mine = np.flatnonzero(
        (segments.owner == owner)
        & np.isin(segments.face, rib_faces)
        & (segments.u0 < half)
        & (segments.u1 > -half)
        & (segments.u1 - segments.u0 > 1e-6)
    )
    run = segments.u1[mine] - segments.u0[mine]
    slope = (segments.w1[mine] - segments.w0[mine]) / run
    inside = np.minimum(segments.u1[mine], half) - np.maximum(segments.u0[mine], -half)
    total = np.bincount(segments.station[mine], inside, n)
    rise = np.bincount(segments.station[mine], inside * slope, n)
    return np.where(total > 0, rise / np.maximum(total, 1e-12), 0.0)


def _levelled(segments: Segments, top: np.ndarray, slope: np.ndarray) -> Segments:
    """Heights measured from the rib top's tangent line: a shear along v, which keeps areas and v-distances."""
    top, slope = top[segments.station], slope[segments.station]
    return Segments(
        segments.station, segments.u0, segments.w0 - top - slope * segments.u0,
        segments.u1, segments.w1 - top - slope * segments.u1,
        segments.nu, segments.nw, segments.owner, segments.face,
    )  # fmt: skip
