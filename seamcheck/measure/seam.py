"""All section-wise quantities of one joint, station by station."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

import numpy as np
from msgspec.structs import replace

from seamcheck.contour import Contour, Path
from seamcheck.joint import Joint
from seamcheck.measure.additions import Additions, Column, Columns
from seamcheck.measure.areas import Areas, RibSide, SideAreas
from seamcheck.measure.beam_path import SIDES, entries
from seamcheck.measure.bends import Bends
from seamcheck.measure.clamp_land import LAND_REACH, AtSeam, land_columns
from seamcheck.measure.cover import cover_columns, gap_columns
from seamcheck.measure.ends import interruptions
from seamcheck.measure.flash_trap import Trap, blank_under_holes, is_roofless, measure_trap, rib_side, trap_columns
from seamcheck.measure.floor import Floor, other_ribs
from seamcheck.measure.meaning import (
    NO_MEANING,
    RibTop,
    at_open_end,
    blank_without_meaning,
    runs_into_another,
    without_meaning,
)
from seamcheck.measure.rib import Usual, deepest_floor, floors_beside, rib_columns
from seamcheck.measure.table import PathSurvey, Survey, initial_contact
from seamcheck.measure.travel import travel_columns
from seamcheck.measure.turning import corner_radius, turn_columns, turns_to
from seamcheck.measure.wall import wall_columns
from seamcheck.sections.alike import cut_alike
from seamcheck.sections.band import light_facets
from seamcheck.sections.section import Cutter, Section, Sections, sections_along
from seamcheck.sections.slices import box_tree
from seamcheck.settings.settings import Settings
from seamcheck.settings.tables import Light


def survey_joint(joint: Joint, contour: Contour, settings: Settings) -> Survey:
    """Measure every section-wise quantity along all paths of a joint.

    Parameters
    ----------
    settings : uses collapse, station_spacing (mm) and the light onto the joint
    """
    given = settings.light(joint.id)
    cutter = Cutter(joint, contour, given.spot)
    measured = [(path, sections_along(cutter, path, settings.station_spacing)) for path in contour.paths]
    cutter.let_go()
    contact = float(np.nan_to_num(initial_contact(sections.each.gap_min for _, sections in measured)))
    usual = Usual.of(measured)
    frame, bends = joint.frame, Bends.of(joint)
    survey = Survey(
        tuple(_path_survey(cutter, path, sections, contact, usual, settings, bends) for path, sections in measured),
        {name: frame.world(place) for name, place in contour.junctions.items()},
        interruptions(contour, frame),
        {},
        joint.rib_part,
        joint.counter_part,
    )
    return _with_land(survey, cutter, [sections for _, sections in measured], given)


def _with_land(survey: Survey, cutter: Cutter, measured: Sequence[Sections], given: Light) -> Survey:
    """The survey with the clamp land, and what the beam covers of the cover's top where that is not the rib's width."""
    joint, contour = cutter.joint, cutter.contour
    level = min((joint.up * sections.points[:, 2]).min() for sections in measured)
    above = light_facets(joint, contour, max(LAND_REACH, cutter.reach), level)
    tree = box_tree(above)
    is_plain = given.spot is None and given.scanner is None
    found = {} if is_plain else entries(joint, contour, survey, given)
    paths = []
    for path, sections in zip(survey.paths, measured, strict=True):
        taken = {} if is_plain else found[path.id].columns(path)
        edges = {side: sign * taken[f"light_enters_{side}"] for side, sign in SIDES.items() if taken}
        marks = np.column_stack([sections.of, *edges.values()])
        wide, of = cut_alike(above, sections.points[:, :2], sections.u, LAND_REACH, tree, marks)
        _, stations, times = np.unique(of, return_index=True, return_counts=True)
        land, clamp_side = land_columns(AtSeam.of(sections, stations, edges, times), wide, given.margin)
        why = path.reasons["rib_width_top"]
        columns = {key: column.at(of).without(np.isin(why, NO_MEANING), why) for key, column in land.items()}
        columns |= {key: Column.of(values, "no-cover") for key, values in taken.items()}
        paths.append(replace(Additions({}, {path.id: columns}).onto_path(path), clamp_side=clamp_side))
    return replace(survey, paths=tuple(paths))


def _path_survey(
    cutter: Cutter, path: Path, sections: Sections, contact: float, usual: Usual, settings: Settings, bends: Bends
) -> PathSurvey:
    """One path: what its sections have, then at every station what depends on its place; no meaning, no value."""
    joint, section, of = cutter.joint, sections.each, sections.of
    s, points, u = sections.s, sections.points, sections.u
    floors = floors_beside(section, usual)
    others = {name: other_ribs(side, floors[name], joint.rib_faces) for name, side in section.sides.items()}
    ribs = {name: rib_side(side, floors[name]) for name, side in section.sides.items()}
    area = ribs["inner"].melted(settings.collapse) + ribs["outer"].melted(settings.collapse)
    melt = Column.of(np.where(np.isfinite(section.outer.floor_a[:, 0]), area, np.nan), "no-rib").at(of)
    traps = {name: trap.at(of) for name, trap in _traps(section, floors, others, settings.collapse + contact).items()}
    roofless = {name: is_roofless(side, section.edges[name])[of] for name, side in section.sides.items()}
    edges = section.inner_edge[of], section.outer_edge[of]
    line = (path.s, path.points[:, :2], path.length, path.closed, s)
    radius = corner_radius(*line)
    with np.errstate(divide="ignore"):
        over_a_mm = turns_to(*line, u) / radius
    bend = bends.at(points[:, :2], u, *edges)
    bend = np.where(np.isfinite(bend), bend, over_a_mm)
    cover, shade = cover_columns(section, cutter.spot)
    cover = _at(cover, of)
    beside = trap_columns(traps, melt.values, bend, _in_corners(cutter, points, u, traps))
    columns: Columns = {
        **_at(rib_columns(section, floors, joint.rounded), of),
        "melt_area": melt,
        **blank_under_holes(roofless, beside, cover),
        **_at(gap_columns(section), of),
        **cover,
        **_at(wall_columns(section, floors), of),
        **_at(travel_columns(section, floors, others, contact, cutter.reach), of),
        **turn_columns(radius),
    }
    top = RibTop(cutter.region, cutter.holes, cutter.junctions, cutter.width, usual.width)
    mark = without_meaning(path, s, points[:, :2], u, edges, top)
    columns = blank_without_meaning(columns, mark, at_open_end(path, s))
    columns = {**columns, "rib_width": columns["rib_width_top"]}
    frame = joint.frame
    return PathSurvey(
        path.id,
        path.closed,
        path.length,
        path.ends,
        s,
        frame.world(points),
        frame.world_vectors(np.column_stack([u, np.zeros(len(s))])),
        {key: column.values for key, column in columns.items()},
        {key: column.reasons for key, column in columns.items()},
        section.outer.floor_face[of, 0],
        section.outer.roof_face[of, 0],
        "",
        _areas(sections, ribs, traps, columns, contact),
        (section.up * section.slope)[of],
        shade.at(of),
    )


def _at(columns: Columns, of: np.ndarray) -> Columns:
    """Columns of all stations (n,), from those of their sections."""
    return {key: column.at(of) for key, column in columns.items()}


def _traps(
    section: Section, floors: Mapping[str, Floor], others: Mapping[str, np.ndarray], drop: float
) -> dict[str, Trap]:
    deepest = deepest_floor(section.width)
    return {
        name: measure_trap(side, section.edges[name], floors[name], drop, section.width, deepest, others[name])
        for name, side in section.sides.items()
    }


def _in_corners(cutter: Cutter, points: np.ndarray, u: np.ndarray, traps: Mapping[str, Trap]) -> dict[str, np.ndarray]:
    """(n,) bool by side: where the trap leads into that of another stretch of the seam."""
    ahead = {"inner": -u, "outer": u}
    return {
        name: ~trap.by_rib & runs_into_another(points[:, :2], ahead[name], trap.end, cutter.width, cutter.nodes)
        for name, trap in traps.items()
    }


def _areas(
    sections: Sections, ribs: Mapping[str, RibSide], traps: Mapping[str, Trap], columns: Columns, contact: float
) -> Areas:
    """Melt and traps at other collapses, where they were measured at the planned one."""
    inner, outer = (
        SideAreas(ribs[name], traps[name].room, np.isnan(columns[f"trap_area_{name}"].values)) for name in ribs
    )
    late, unknown = np.maximum(sections.each.gap - contact, 0.0), np.isnan(columns["melt_area"].values)
    return Areas(inner, outer, sections.of, late, contact, unknown)
