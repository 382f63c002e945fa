"""Surveys typed in tests: a circle or an open line with columns that hold every limit, then spoiled."""

from __future__ import annotations

import numpy as np

from seamcheck.judge.findings import JointResult
from seamcheck.measure.table import PathSurvey, Survey

SOUND = {
    "rib_width": 1.2,
    "rib_width_top": 1.2,
    "rib_width_mid": 1.22,
    "rib_width_root": 1.24,
    "rib_height": 1.0,
    "rib_height_inner": 1.0,
    "rib_height_outer": 1.1,
    "slenderness": 0.82,
    "draft_inner": 1.0,
    "draft_outer": 1.0,
    "melt_area": 0.48,
    "trap_area_inner": 0.5,
    "trap_area_outer": 0.5,
    "trap_room": 2.08,
    "trap_room_inner": 2.08,
    "trap_room_outer": 2.08,
    "trap_corner_inner": 2.0,
    "trap_corner_outer": 2.1,
    "trap_open_inner": 0.0,
    "trap_open_outer": 0.0,
    "lip_gap_inner": 0.2,
    "lip_gap_outer": 0.2,
    "clamp_land": 2.5,
    "clamp_tilt": 0.0,
    "cover_thickness": 2.0,
    "cover_thickness_min": 2.0,
    "cover_thickness_max": 2.0,
    "gap": 0.0,
    "gap_min": 0.0,
    "gap_max": 0.0,
    "free_travel": 0.6,
    "beam_clear": 1.0,
    "wall_width": 2.5,
    "support_offset": 0.0,
    "corner_radius": 40.0,
}


def path_survey(
    path_id="c1", closed=True, n=240, length=120.0, ends=("open", "open"), start=0.0, shift=(0, 0, 0), changes=()
):
    """One path of ``n`` stations; a change is (column, from_s, to_s, value or reason).

    A closed path is a circle, ``start`` turns its first station round it (mm); an open one runs along x.
    """
    s = np.arange(n) * length / n if closed else np.linspace(0.0, length, n)
    true_s = (s + start) % length if closed else s
    if closed:
        r, angle = length / (2 * np.pi), 2 * np.pi * true_s / length
        out = np.column_stack([np.cos(angle), np.sin(angle), np.zeros(n)])
        points = r * out
    else:
        points = np.column_stack([s, np.zeros(n), np.zeros(n)])
        out = np.tile([0.0, 1.0, 0.0], (n, 1))
    columns = {key: np.full(n, value) for key, value in SOUND.items()}
    reasons = {key: np.full(n, "", dtype=object) for key in SOUND}
    for key, low, high, value in changes:
        on = (true_s >= low - 1e-9) & (true_s <= high + 1e-9)
        if isinstance(value, str):
            columns[key][on], reasons[key][on] = np.nan, value
        else:
            columns[key][on] = value
    return PathSurvey(
        id=path_id,
        closed=closed,
        length=length,
        ends=() if closed else ends,
        s=s,
        points=points + np.asarray(shift, dtype=float),
        u=out,
        columns=columns,
        reasons={key: value.astype(str) for key, value in reasons.items()},
        rib_face=np.full(n, 3),
        cover_face=np.full(n, 5),
    )


def joint(*paths, rib_on="base", joint_id="j1", cover=("p2",), base=("p1",), **survey):
    """A joint over paths; without any, one sound circle."""
    survey.setdefault("interface", {"free_travel": {"value": 0.6, "at": [0.0, 0.0, 0.0], "why": ""}})
    told = {key: survey.pop(key) for key in ("kind", "left_out", "band_width", "step") if key in survey}
    table = Survey(
        paths=paths or (path_survey(),),
        junctions=survey.pop("junctions", {}),
        interruptions=survey.pop("interruptions", ()),
        rib_part=base[0],
        counter_part=cover[0],
        **survey,
    )
    return JointResult(
        joint_id, cover, base, rib_on, np.array([0.0, 0.0, -1.0]), "touching", ("Typed.",), table, **told
    )


def circle(*changes, **options):
    """A joint of one circle with changes."""
    return joint(path_survey(changes=changes, **options))
