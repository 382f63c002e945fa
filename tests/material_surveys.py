"""Surveys typed in: a ring, a straight run and a rounded rectangle with a stated section, no CAD kernel."""

from __future__ import annotations

import numpy as np

from seamcheck.measure.table import PathSurvey, Survey


def section_columns(
    n: int, *, width=1.5, height=1.2, draft=0.0, trap=1.0, thickness=2.0, gap=0.0, collapse=0.4, radius=np.inf
) -> dict[str, np.ndarray]:
    """Columns of a section with straight flanks, sharp edges, flat floors and upright walls (mm, degrees).

    ``trap`` is the distance of the wall from the flank at the rib's top.
    """
    tan = np.tan(np.radians(draft))
    one = np.ones(n)
    first = np.min(gap * one)
    down = collapse - (gap * one - first)
    area = trap * (height - down) - tan * (height**2 - down**2) / 2.0
    columns = {
        "rib_width": width,
        "rib_width_top": width,
        "rib_width_mid": width + height * tan,
        "rib_width_root": width + 2 * height * tan,
        "rib_height": height,
        "rib_height_inner": height,
        "rib_height_outer": height,
        "draft_inner": draft,
        "draft_outer": draft,
        "melt_area": width * collapse + collapse**2 * tan,
        "trap_area_inner": area,
        "trap_area_outer": area,
        "cover_thickness": thickness,
        "cover_thickness_min": thickness,
        "cover_thickness_max": thickness,
        "gap": gap,
        "gap_min": gap,
        "gap_max": gap,
        "corner_radius": radius,
        "clamp_land": 2.5,
        "beam_clear": 1.0,
        "free_travel": 0.8,
        "trap_room": 2.0 * area / (width * collapse + collapse**2 * tan),
    }
    return {key: np.asarray(value, dtype=float) * one for key, value in columns.items()}


def path_survey(name, points, u, s, length, closed, columns) -> PathSurvey:
    n = len(s)
    reasons = {key: np.where(np.isfinite(v), "", "no-cover").astype("U24") for key, v in columns.items()}
    reasons["corner_radius"] = np.where(np.isfinite(columns["corner_radius"]), "", "straight").astype("U24")
    return PathSurvey(
        name,
        closed,
        length,
        () if closed else ("open", "open"),
        s,
        points,
        u,
        columns,
        reasons,
        np.zeros(n, int),
        np.zeros(n, int),
    )


def ring(radius=40.0, n=720, **section) -> PathSurvey:
    """A circle run counter-clockwise seen from the light (+z); +u is outer."""
    a = np.linspace(0.0, 2 * np.pi, n, endpoint=False)
    u = np.column_stack([np.cos(a), np.sin(a), np.zeros(n)])
    section.setdefault("radius", radius)
    return path_survey("c1", radius * u, u, radius * a, 2 * np.pi * radius, True, section_columns(n, **section))


def run(length=400.0, n=801, **section) -> PathSurvey:
    """A straight open run along x; +u is -y, so that u x t points to the light (+z)."""
    s = np.linspace(0.0, length, n)
    points = np.column_stack([s, np.zeros(n), np.zeros(n)])
    u = np.tile([0.0, -1.0, 0.0], (n, 1))
    return path_survey("c1", points, u, s, length, False, section_columns(n, **section))


def survey(*paths, travel=1.0) -> Survey:
    entry = (
        {"value": travel, "at": [0.0, 0.0, 0.0], "why": ""}
        if travel is not None
        else {"value": None, "at": None, "why": "free"}
    )
    return Survey(tuple(paths), {}, (), {"free_travel": entry}, "p2", "p1")
