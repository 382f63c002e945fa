"""All section-wise quantities of one joint, station by station."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from typing import Any, Protocol

import numpy as np
import shapely
from scipy.spatial import cKDTree

from seamcheck.contour import Contour, Path
from seamcheck.contour.holes import without_holes
from seamcheck.contour.midline import Border
from seamcheck.joint import Joint
from seamcheck.joint.constants import LARGEST_GAP
from seamcheck.measure.areas import Areas, SideSections, melt_area
from seamcheck.measure.bends import Bends
from seamcheck.measure.clamp_land import measure_land
from seamcheck.measure.ends import interruptions
from seamcheck.measure.flash_trap import Floor, find_floor, is_roofless, measure_trap, other_ribs, turned
from seamcheck.measure.light import entries
from seamcheck.measure.meaning import NO_MEANING, RibTop, runs_into_another, without_meaning
from seamcheck.measure.ridge import LOWERED, taken_off
from seamcheck.measure.table import PathSurvey, Shade, Survey
from seamcheck.measure.turning import turn_radius, turns_to
from seamcheck.sections.band import DEFLECTION, light_facets, near_facets
from seamcheck.sections.intervals import Intervals, Side, decompose, side_of
from seamcheck.sections.levels import crossings, nearest_end, support_offset
from seamcheck.sections.slices import BASE, COVER, Segments, box_tree, cut
from seamcheck.sections.stations import MOST, even_stations, event_stations, merge, place_on
from seamcheck.sections.stretches import cell_lengths, weighted_median
from seamcheck.settings.settings import Settings

LAND_REACH = 30.0  # mm beside the centre line in which the cover's free edge is looked for
_HOLD_EVERYWHERE = frozenset(
    (
        "cover_thickness",
        "cover_thickness_min",
        "cover_thickness_max",
        "gap",
        "gap_min",
        "gap_max",
        "turn_radius",
        "beam_clear",
    )
)  # these need no section across the rib
_REFINE_ROUNDS = 3
_JUMP = 0.02  # mm between neighbours from which the stretch between them is looked at again
_PARTED = 2 * DEFLECTION  # mm, so far the facets of two faces may part or overlap along an arc that they share
_EDGE = 0.005  # mm at the edge of the rib top within which the facets of two faces may part


class Put(Protocol):
    """Takes the (n,) values of a quantity, and why some of them are NaN."""

    def __call__(self, key: str, values: np.ndarray, reason: str | np.ndarray = ...) -> None: ...


@dataclass(frozen=True, slots=True, eq=False)
class _Cut:
    """What is known of each station by itself.

    s (n,) mm; flat, u (n, 2); inner_edge, outer_edge (n,) mm; segments : as cut, heights in the press frame
    """

    s: np.ndarray
    flat: np.ndarray
    u: np.ndarray
    inner_edge: np.ndarray
    outer_edge: np.ndarray
    segments: Segments

    def joined(self, other: _Cut) -> _Cut:
        """Both, in the order of their stations."""
        order = np.argsort(np.concatenate([self.s, other.s]), kind="stable")

        def both(name: str) -> np.ndarray:
            return np.concatenate([getattr(self, name), getattr(other, name)])[order]

        segments = self.segments.joined(other.segments, len(self.s), order)
        return _Cut(both("s"), both("flat"), both("u"), both("inner_edge"), both("outer_edge"), segments)


@dataclass(frozen=True, slots=True, eq=False)
class _Section:
    """Sections of one path at some stations: everything measured from these."""

    s: np.ndarray
    points: np.ndarray  # (n, 3)
    u: np.ndarray  # (n, 2)
    inner_edge: np.ndarray
    outer_edge: np.ndarray
    slope: np.ndarray  # (n,) rise of the rib top along +w for each mm outward
    segments: Segments
    intervals: Intervals
    inner: Side
    outer: Side


class _Cutter:
    """Cuts one joint at any stations."""

    def __init__(self, joint: Joint, contour: Contour, settings: Settings) -> None:
        self.joint, self.contour, self.settings = joint, contour, settings
        self.width = contour.rib_width
        self.light = settings.light(joint.id)
        self.reach = max(6.0, 6.0 * contour.rib_width, self.light.spot or 0.0)
        self.up = joint.up
        self.rib_owner = BASE if joint.up > 0 else COVER
        self.region, holes = without_holes(joint.region)
        self.holes = shapely.MultiPolygon(holes)
        self.border = Border(self.region)
        self.bends = Bends.of(joint)
        self.land_soup = light_facets(joint, contour, max(LAND_REACH, self.reach))
        self.soup = near_facets(joint, contour, self.reach, (self.light.spot or 0.0) / 2)
        self.tree = box_tree(self.soup)
        self.nodes = cKDTree(np.concatenate([path.points[:, :2] for path in contour.paths]))
        self.junctions = np.array([p[:2] for p in contour.junctions.values()]).reshape(-1, 2)

    def cut(self, path: Path, s: np.ndarray) -> _Cut:
        flat, u = place_on(path, s, self.border, self.width, self.junctions)
        inner_edge, outer_edge = self.border.chord(flat, u, max(4.0 * self.width, 6.0))
        return _Cut(s, flat, u, inner_edge, outer_edge, cut(self.soup, flat, u, self.reach, self.tree))

    def sections(self, path: Path, found: _Cut) -> _Section:
        s, segments = found.s, found.segments
        top = _top_at_p(segments, len(s), self.rib_owner, self.joint.rib_faces)
        known = np.flatnonzero(np.isfinite(top))
        if len(known):
            top = np.where(np.isfinite(top), top, np.interp(s, s[known], top[known]))
        else:
            top = np.interp(s, path.s, path.points[:, 2])
        slope = _lateral_slope(segments, len(s), self.rib_owner, self.joint.rib_faces, 0.3 * self.width)
        segments = _levelled(segments, top, slope)
        extra = np.column_stack([-found.inner_edge, found.outer_edge])
        if self.light.spot is not None:
            extra = np.column_stack([extra, *(np.full(len(s), end * self.light.spot / 2) for end in (-1.0, 1.0))])
        intervals = decompose(segments, len(s), extra, self.rib_owner, self.up, self.reach)
        return _Section(
            s, np.column_stack([found.flat, top]), found.u, found.inner_edge, found.outer_edge, slope, segments,
            intervals, side_of(intervals, len(s), False), side_of(intervals, len(s), True),
        )  # fmt: skip


def survey_joint(joint: Joint, contour: Contour, settings: Settings) -> Survey:
    """Measure every section-wise quantity along all paths of a joint.

    Parameters
    ----------
    settings : uses collapse, station_spacing (mm) and the light onto the joint
    """
    cutter = _Cutter(joint, contour, settings)
    measured = [(path, _measured_sections(cutter, path)) for path in contour.paths]
    strips = [_strip(section, joint) for _, section in measured]
    contact = min((float(np.nanmin(g)) for _, g, _ in strips if np.isfinite(g).any()), default=0.0)
    sections = [section for _, section in measured]
    usual = _usual(measured)
    floors = [_floors(section, usual) for section in sections]
    paths = tuple(
        _path_survey(cutter, path, section, strip, floor, contact, usual)
        for (path, section), strip, floor in zip(measured, strips, floors, strict=True)
    )
    frame = joint.frame
    survey = Survey(
        paths,
        {name: frame.world(place) for name, place in contour.junctions.items()},
        interruptions(contour, frame),
        {},
        joint.rib_part,
        joint.counter_part,
    )
    return _with_land(cutter, survey, sections)


@dataclass(frozen=True, slots=True)
class _Usual:
    """Medians of the whole seam, mm: width of the rib's top, and height above its floors."""

    width: float
    height: float


def _usual(measured: Sequence[tuple[Path, _Section]]) -> _Usual:
    weights = np.concatenate([cell_lengths(section.s, path.length, path.closed) for path, section in measured])
    width = np.concatenate([section.inner_edge + section.outer_edge for _, section in measured])
    found = (_floors(section, None) for _, section in measured)
    height = np.concatenate([np.fmin(floors["inner"].height, floors["outer"].height) for floors in found])
    return _Usual(weighted_median(width, weights), weighted_median(height, weights))


def _floors(section: _Section, usual: _Usual | None) -> dict[str, Floor]:
    """The trap floors on both sides; what lies higher, where the rib's top was chamfered or lowered, is none."""
    width = section.inner_edge + section.outer_edge
    off = np.zeros(len(width)) if usual is None else taken_off(width, usual.width)
    own = 0.0 if usual is None or not np.isfinite(usual.height) else LOWERED * usual.height
    return {
        "inner": find_floor(section.inner, section.inner_edge, _deepest(width), off, own),
        "outer": find_floor(section.outer, section.outer_edge, _deepest(width), off, own),
    }


def _deepest(width: np.ndarray) -> np.ndarray:
    """(n,) mm below the rib's top beyond which a floor is that of the housing, not of a flash trap."""
    return np.maximum(4.0 * width, 3.0)


def _measured_sections(cutter: _Cutter, path: Path) -> _Section:
    """Sections evenly, at events, and between neighbours that differ."""
    spacing = cutter.settings.station_spacing
    s = merge(path, even_stations(path, spacing), event_stations(path, cutter.soup, cutter.reach))
    found = cutter.cut(path, s)
    section = cutter.sections(path, found)
    for _ in range(_REFINE_ROUNDS):
        more = _between_jumps(path, section, cutter.joint)
        if not len(more) or len(section.s) + len(more) > MOST:
            break
        merged = merge(path, section.s, more)
        if len(merged) == len(section.s):
            break
        found = found.joined(cutter.cut(path, np.setdiff1d(merged, found.s)))
        section = cutter.sections(path, found)
    return section


def _between_jumps(path: Path, section: _Section, joint: Joint) -> np.ndarray:
    """Middles between neighbours whose rib width, gap or thickness differ."""
    _, gap_min, gap_max = _strip(section, joint)
    thick = section.outer.plastic_a[:, 0]
    values = np.column_stack([section.inner_edge + section.outer_edge, gap_min, gap_max, thick])
    s = section.s
    ahead = np.append(s[1:], s[0] + path.length) if path.closed else s[1:]
    following = np.roll(values, -1, axis=0) if path.closed else values[1:]
    here, there = s[: len(ahead)], ahead
    a = values[: len(ahead)]
    jump = (np.abs(a - following) > _JUMP) | (np.isfinite(a) != np.isfinite(following))
    wide = (there - here) > 0.12
    return np.asarray(((here + there) / 2)[jump.any(axis=1) & wide])


def _strip(section: _Section, joint: Joint) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Gap at P, its smallest and its largest over the rib top; a rounded top has no width."""
    on_rib = np.isin(section.outer.floor_face[:, 0], joint.rib_faces)
    at_p = np.where(on_rib, section.outer.roof_a[:, 0] - section.outer.floor_a[:, 0], np.nan)
    at_p = np.where(at_p <= LARGEST_GAP, at_p, np.nan)
    if joint.rounded:
        return at_p, at_p, at_p
    least, most = [], []
    for side, edge in ((section.inner, section.inner_edge), (section.outer, section.outer_edge)):
        within = _within_strip(side, edge) & np.isin(side.floor_face, joint.rib_faces)
        gaps = np.stack([side.roof_a - side.floor_a, side.roof_b - side.floor_b])
        gaps = np.where(within[None] & (gaps <= LARGEST_GAP), gaps, np.nan)  # what lies further off is no counterpart
        least.append(_nan_reduce(np.fmin, gaps))
        most.append(_nan_reduce(np.fmax, gaps))
    return at_p, np.fmin(*least), np.fmax(*most)


def _within_strip(side: Side, edge: np.ndarray) -> np.ndarray:
    """Intervals over the rib top. What lies wholly at its edge is where two faces' facets meet inexactly."""
    return (side.b <= edge[:, None] + 2e-5) & (side.a < edge[:, None] - _EDGE)


def _nan_reduce(function: np.ufunc, values: np.ndarray) -> np.ndarray:
    return np.asarray(function.reduce(function.reduce(values, axis=0), axis=1))


def _path_survey(
    cutter: _Cutter,
    path: Path,
    section: _Section,
    strip: tuple[np.ndarray, np.ndarray, np.ndarray],
    floors: dict[str, Floor],
    contact: float,
    usual: _Usual,
) -> PathSurvey:
    joint, settings = cutter.joint, cutter.settings
    n = len(section.s)
    width = section.inner_edge + section.outer_edge
    deepest = _deepest(width)
    columns: dict[str, np.ndarray] = {}
    why: dict[str, np.ndarray] = {}

    def put(key: str, values: np.ndarray, reason: str | np.ndarray = "broken-geometry") -> None:
        values = np.asarray(values, dtype=float)
        columns[key] = values
        why[key] = np.where(np.isnan(values), reason, "").astype(object)

    if joint.rounded:
        put("rib_width_top", np.full(n, np.nan), "rounded-top")
    else:
        put("rib_width_top", width, "no-rib")
    edges = {"inner": section.inner_edge, "outer": section.outer_edge}
    sides = {"inner": section.inner, "outer": section.outer}
    for name, floor in floors.items():
        put(f"rib_height_{name}", floor.height, "no-shoulder")
    height = np.fmin(floors["inner"].height, floors["outer"].height)
    put("rib_height", height, "no-shoulder")

    _flanks(cutter, section, height, put)
    put("slenderness", height / columns["rib_width_mid"], "depends")

    area = sum(melt_area(sides[k], floors[k], settings.collapse) for k in sides)
    put("melt_area", np.where(np.isfinite(section.outer.floor_a[:, 0]), area, np.nan), "no-rib")
    drop = settings.collapse + contact
    radius = turn_radius(path.s, path.points[:, :2], path.length, path.closed, section.s)
    with np.errstate(divide="ignore"):
        over_a_mm = turns_to(path.s, path.points[:, :2], path.length, path.closed, section.s, section.u) / radius
    bend = cutter.bends.at(section.points[:, :2], section.u, section.inner_edge, section.outer_edge)
    bend = np.where(np.isfinite(bend), bend, over_a_mm)
    in_turn, in_corner = {}, {}
    others = {name: other_ribs(side, floors[name], joint.rib_faces) for name, side in sides.items()}
    for name, side in sides.items():
        trap = measure_trap(side, edges[name], floors[name], drop, width, deepest, others[name])
        put(f"trap_area_{name}", trap.area, "no-shoulder")
        put(f"trap_open_{name}", trap.is_open, "no-shoulder")
        in_turn[name] = turned(trap.area, trap.centre, bend if name == "outer" else -bend)
        ahead = section.u if name == "outer" else -section.u
        in_corner[name] = ~trap.by_rib & runs_into_another(
            section.points[:, :2], ahead, trap.end, cutter.width, cutter.nodes
        )
        closed = np.where(trap.by_rib, "other-rib", "no-shoulder")
        put(f"lip_gap_{name}", trap.lip_gap, np.where(trap.is_open == 1.0, "no-lip", closed))
    both = np.nan_to_num(columns["trap_area_inner"]) + np.nan_to_num(columns["trap_area_outer"])
    neither = np.isnan(columns["trap_area_inner"]) & np.isnan(columns["trap_area_outer"])
    with np.errstate(invalid="ignore", divide="ignore"):
        put("trap_room", np.where(neither, 0.0, both) / columns["melt_area"], "depends")
        for name in sides:
            put(f"trap_room_{name}", columns[f"trap_area_{name}"] / (columns["melt_area"] / 2), "no-shoulder")
            put(f"trap_turn_{name}", in_turn[name] / (columns["melt_area"] / 2), "no-shoulder")

    for name, mark in (*in_corner.items(), ("", np.any(list(in_corner.values()), axis=0))):
        for key in _trap_keys(name):
            columns[key], why[key] = np.where(mark, np.nan, columns[key]), np.where(mark, "corner", why[key])

    gap, gap_min, gap_max = strip
    for key, values in (("gap", gap), ("gap_min", gap_min), ("gap_max", gap_max)):
        put(key, values, "no-opposite")
    shade = _cover(section, put, cutter.light.spot)
    roofless = {name: is_roofless(side, edges[name]) for name, side in sides.items()}
    _blank_traps_under_holes(roofless, columns, why)
    _below(cutter, section, floors, height, put)
    put("free_travel", _free_travel(cutter, section, floors, others, contact), "free")
    put(
        "turn_radius",
        np.where(np.isinf(radius), np.nan, radius),
        np.where(np.isinf(radius), "straight", "end"),
    )

    _blank_places_without_meaning(cutter, path, section, usual.width, columns, why)
    inner, outer = (
        SideSections.of(sides[k], edges[k], floors[k], others[k], np.isnan(columns[f"trap_area_{k}"]))
        for k in ("inner", "outer")
    )
    late = np.maximum(gap - contact, 0.0)
    areas_at = Areas(inner, outer, late, contact, width, deepest, np.isnan(columns["melt_area"]))
    put_width = columns["rib_width_top"].copy()
    columns["rib_width"], why["rib_width"] = put_width, why["rib_width_top"].copy()
    frame = joint.frame
    return PathSurvey(
        path.id,
        path.closed,
        path.length,
        path.ends,
        section.s,
        frame.world(section.points),
        frame.world_vectors(np.column_stack([section.u, np.zeros(n)])),
        columns,
        {key: np.asarray(value, dtype=str) for key, value in why.items()},
        section.outer.floor_face[:, 0],
        section.outer.roof_face[:, 0],
        "",
        areas_at,
        cutter.up * section.slope,
        shade,
    )


def _trap_keys(side: str) -> tuple[str, ...]:
    """Columns of the flash trap on one side; with '' that of both together."""
    keys = ("trap_area", "trap_open", "trap_room", "trap_turn", "lip_gap")
    return tuple(f"{key}_{side}" for key in keys) if side else ("trap_room",)


def _blank_traps_under_holes(roofless: dict[str, np.ndarray], columns: dict[str, Any], why: dict[str, Any]) -> None:
    """Where the cover has a hole over the rib, a flash trap on the side of the hole has no meaning."""
    hole = why["cover_thickness"]
    for key in ("cover_thickness_min", "cover_thickness_max"):
        hole = np.where(np.isin(hole, ("hole", "no-cover")), hole, why[key])
    is_hole = np.isin(hole, ("hole", "no-cover"))
    for name, bare in (*roofless.items(), ("", np.any(list(roofless.values()), axis=0))):
        for key in _trap_keys(name):
            columns[key] = np.where(is_hole & bare, np.nan, columns[key])
            why[key] = np.where(is_hole & bare, hole, why[key])


def _flanks(cutter: _Cutter, section: _Section, height: np.ndarray, put: Put) -> None:
    """Widths at half height and at the root, drafts: from the flanks met at three heights."""
    n = len(height)
    shares = (0.4, 0.5, 0.6)
    reach: dict[str, list[np.ndarray]] = {"inner": [], "outer": []}
    for share in shares:
        found = crossings(section.segments, cutter.rib_owner, -share * height)
        for name in reach:
            reach[name].append(nearest_end(found, n, name == "outer"))
    put(
        "rib_width_mid",
        reach["inner"][1] + reach["outer"][1],
        np.where(np.isnan(height), "no-shoulder", "no-flank"),
    )
    root = np.zeros(n)
    for name, (upper, middle, lower) in reach.items():
        with np.errstate(invalid="ignore", divide="ignore"):
            slope = (lower - upper) / ((shares[2] - shares[0]) * height)
        root = root + middle + slope * 0.5 * height
        put(
            f"draft_{name}",
            np.degrees(np.arctan(slope)),
            np.where(np.isnan(height), "no-shoulder", "no-flank"),
        )
    put("rib_width_root", root, np.where(np.isnan(height), "no-shoulder", "no-flank"))


def _cover(section: _Section, put: Put, spot: float | None) -> Shade:
    """Thickness of the cover over the strip of the rib top; light over that of the spot, and what of it is shaded."""
    outer, inner = section.outer, section.inner
    over_p = outer.stretches[:, 0] > 0
    seen = (outer.stretches > 0).any(axis=1) & (inner.stretches > 0).any(axis=1)
    missing = np.where(over_p, "broken-geometry", np.where(seen, "hole", "no-cover"))
    put("cover_thickness", np.where(over_p, outer.plastic_a[:, 0], np.nan), missing)
    least = np.full(len(section.s), np.nan)
    most = least.copy()
    clear = np.zeros(len(section.s))
    total = np.zeros(len(section.s))
    hole = np.zeros(len(section.s), dtype=bool)
    dark = []
    for out, side, edge in ((-1.0, inner, section.inner_edge), (1.0, outer, section.outer_edge)):
        strip = _within_strip(side, edge)
        run = np.where(strip, side.b - side.a, 0.0)
        covered = strip & (side.stretches > 0) & (run > _PARTED)
        hole |= (strip & (side.stretches == 0) & (run > _PARTED)).any(axis=1)
        plastic = np.where(covered[None], np.stack([side.plastic_a, side.plastic_b]), np.nan)
        least = np.fmin(least, _nan_reduce(np.fmin, plastic))
        most = np.fmax(most, _nan_reduce(np.fmax, plastic))
        taken = strip if spot is None else _within_strip(side, np.full(len(edge), spot / 2))
        run = np.where(taken, side.b - side.a, 0.0)
        total += run.sum(axis=1)
        # beside the rib light must pass the cover; over the rib a hole in it is another finding
        lit = (side.stretches == 1) | (strip & (side.stretches == 0))
        lit &= ~side.blocked
        clear += (run * lit).sum(axis=1)
        dark.append(_shaded(taken & (run > _PARTED) & ~lit, side, out))
    strip_missing = np.where(hole | (~over_p & seen), "hole", np.where(over_p, "no-rib", "no-cover"))
    put("cover_thickness_min", np.where(hole, np.nan, least), strip_missing)
    put("cover_thickness_max", np.where(hole, np.nan, most), strip_missing)
    with np.errstate(invalid="ignore", divide="ignore"):
        share = clear / total
    put("beam_clear", np.where(over_p | seen, np.round(share, 9), np.nan), "no-cover")
    return dark[0].joined(dark[1])


def _shaded(dark: np.ndarray, side: Side, out: float) -> Shade:
    """Intervals of one side that parallel light does not reach; out is +1 on the outer side."""
    station, k = np.nonzero(dark)
    ends = np.sort(out * np.column_stack([side.a[station, k], side.b[station, k]]), axis=1)
    count = len(station)
    return Shade(
        station, ends[:, 0], ends[:, 1], np.zeros(count), np.full((count, 3), np.nan), np.full(count, "", dtype=object),
        np.zeros(count, dtype=bool),
    )  # fmt: skip


def _below(cutter: _Cutter, section: _Section, floors: dict[str, Floor], height: np.ndarray, put: Put) -> None:
    """Wall under the rib and its support."""
    n = len(section.s)
    width = section.inner_edge + section.outer_edge
    lowest = np.fmax(floors["inner"].height, floors["outer"].height)
    base_level = np.where(np.isfinite(lowest), lowest, width)
    found = crossings(section.segments, cutter.rib_owner, -(base_level + 0.2))
    inner, outer = nearest_end(found, n, False), nearest_end(found, n, True)
    put("wall_width", inner + outer, "broad")
    level = -(base_level + width)
    found = crossings(section.segments, cutter.rib_owner, level)
    offset = support_offset(found, n, section.inner_edge, section.outer_edge, width)
    put("support_offset", np.abs(offset), "no-flank")


def _free_travel(
    cutter: _Cutter, section: _Section, floors: dict[str, Floor], others: dict[str, np.ndarray], contact: float
) -> np.ndarray:
    """Smallest gap beside the rib over the wall's own width, less the gap at initial contact."""
    n = len(section.s)
    lowest = np.fmax(floors["inner"].height, floors["outer"].height)
    found = crossings(section.segments, cutter.rib_owner, -(lowest + 0.2))
    least = np.full(n, np.nan)
    for name, side in (("inner", section.inner), ("outer", section.outer)):
        wall = nearest_end(found, n, name == "outer")
        reach = np.where(np.isfinite(wall), wall, cutter.reach)
        foot = floors[name].foot
        zone = np.isfinite(side.b) & (side.a >= foot[:, None] - 1e-6) & (side.a < reach[:, None] - 1e-6)
        zone &= np.isfinite(floors[name].height)[:, None] & ~others[name]
        gaps = np.where(zone[None], np.stack([side.roof_a - side.floor_a, side.roof_b - side.floor_b]), np.nan)
        least = np.fmin(least, _nan_reduce(np.fmin, gaps))
    return least - contact


def _with_land(cutter: _Cutter, survey: Survey, sections: Sequence[_Section]) -> Survey:
    """The survey with what the light takes of the cover's top, where that is not just the rib's width, and the land."""
    joint, given = cutter.joint, cutter.light
    is_plain = given.spot is None and given.scanner is None
    found = {} if is_plain else entries(joint, cutter.contour, survey, given)
    paths = []
    for path, section in zip(survey.paths, sections, strict=True):
        taken = {} if is_plain else found[path.id].columns(path)
        land, why, side = _land(cutter, path, section, taken)
        missing = {key: np.where(np.isnan(values), "no-cover", "") for key, values in taken.items()}
        columns, reasons = {**path.columns, **taken, **land}, {**path.reasons, **missing, **why}
        paths.append(replace(path, columns=columns, reasons=reasons, clamp_side=side))
    return replace(survey, paths=tuple(paths))


def _land(
    cutter: _Cutter, path: PathSurvey, section: _Section, taken: Mapping[str, np.ndarray]
) -> tuple[dict[str, np.ndarray], dict[str, np.ndarray], str]:
    """Clamp land toward the side on which the cover's free edge is nearer; that side, '' without a free edge.

    Parameters
    ----------
    taken : what the light takes of the cover's top, where that is not just over the rib's top; else {}
    """
    up = cutter.up
    n = len(section.s)
    wide = cut(cutter.land_soup, section.points[:, :2], section.u, LAND_REACH)
    plastic = section.outer.plastic_a[:, 0]
    light_face = section.outer.roof_a[:, 0] + plastic if up > 0 else -plastic
    level = section.points[:, 2] + light_face - up * np.minimum(0.25 * plastic, 0.3)
    found = crossings(wide, COVER, np.where(plastic > 0, level, np.nan))
    edge = {name: nearest_end(found, n, name == "outer") for name in ("inner", "outer")}
    # a shell without its edge face ends with its last line
    edge = {name: np.fmin(value, _extent(wide, COVER, n, name == "outer")) for name, value in edge.items()}
    edge = {name: np.where(value < LAND_REACH - 1e-3, value, np.inf) for name, value in edge.items()}
    inner_first = np.sum(edge["inner"] < edge["outer"]) > np.sum(edge["outer"] < edge["inner"])
    side = "inner" if inner_first else "outer"
    own = section.inner_edge if side == "inner" else section.outer_edge
    start = own
    if taken:
        enters = (-1.0 if side == "inner" else 1.0) * taken[f"light_enters_{side}"]
        start = np.where(np.isfinite(enters), enters, own)
    start = start + cutter.light.margin
    land = measure_land(wide, n, start, side == "outer", up, section.points[:, 2])
    no_edge = ~np.isfinite(edge[side])
    meaningless = np.isin(path.reasons["rib_width_top"], NO_MEANING)
    reason = np.where(no_edge, "no-edge", land.why).astype(object)
    columns, why = {}, {}
    for key, values in (("clamp_land", land.width), ("clamp_tilt", land.tilt)):
        columns[key] = np.where(no_edge | meaningless, np.nan, values)
        missing = np.where(meaningless, path.reasons["rib_width_top"], reason)
        why[key] = np.where(np.isnan(columns[key]), missing, "").astype(str)
    return columns, why, "" if no_edge.all() else side


def _extent(segments: Segments, owner: int, n: int, outer: bool) -> np.ndarray:
    """(n,) mm from P to the last line of a part on one side."""
    mine = segments.owner == owner
    last = np.zeros(n)
    np.maximum.at(last, segments.station[mine], segments.u1[mine] if outer else -segments.u0[mine])
    return np.where((last > 0) & (last < 0.9 * LAND_REACH), last, np.inf)


def _blank_places_without_meaning(
    cutter: _Cutter, path: Path, section: _Section, median: float, columns: dict[str, Any], why: dict[str, Any]
) -> None:
    """In junctions, sharp corners, holes and the last bit of an open rib a section says nothing."""
    edges = section.inner_edge, section.outer_edge
    top = RibTop(cutter.region, cutter.holes, cutter.junctions, cutter.width, median)
    mark = without_meaning(path, section.s, section.points[:, :2], section.u, edges, top)
    for key in columns:
        hit = mark != ""
        if key in _HOLD_EVERYWHERE:
            hit &= np.isnan(columns[key]) & (why[key] != "hole")
        columns[key][hit] = np.nan
        why[key][hit] = mark[hit]


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
