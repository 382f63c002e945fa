"""A small picture of the seam, seen along the beam: lines, and where findings lie."""

from __future__ import annotations

from typing import Any

import numpy as np
from shapely.geometry import LineString

from seamcheck.report import facts
from seamcheck.report.facts import Document

WIDTH, HEIGHT, MARGIN = 160, 100, 8
"""Of the picture, in its own units."""

FINE = 0.6
"""How far a line of the picture may lie from the seam, in units of the picture."""

STATES = ("quiet", "attention", "must-fix")


def seam_picture(document: Document) -> str:
    """Lines 'STATE x,y x,y ...' separated by ';', STATE an index into STATES; '' without a seam.

    The paths of all joints are drawn as one looks along the beam of the first, lines of findings last.
    """
    joints = [joint for joint in facts.joints(document) if joint["contours"]]
    if not joints:
        return ""
    across, up = _axes(np.asarray(joints[0]["beam"], dtype=float))
    paths = [(joint, contour) for joint in joints for contour in joint["contours"] if contour["stations"]["s"]]
    flat = [facts.points_of(contour) @ np.column_stack([across, up]) for _, contour in paths]
    if not flat:
        return ""
    placed = _placed(flat)
    lines: list[tuple[int, np.ndarray]] = []
    for (joint, contour), points in zip(paths, placed, strict=True):
        state = _states(document, joint, contour)
        ring = np.vstack([points, points[:1]]) if contour["closed"] else points
        lines.append((0, ring))
        for first, last in _runs(state, contour["closed"]):
            lines.append((int(state[first]), ring[np.arange(first, last + 1) % len(points)]))
    return ";".join(_line(state, points) for state, points in sorted(lines, key=lambda line: line[0]))


def _axes(beam: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
    """Right and up as one looks along the beam; up is y where the beam comes from above."""
    up = np.array([0.0, 1.0, 0.0]) if abs(beam[1]) < 0.9 else np.array([0.0, 0.0, 1.0])
    across = np.cross(beam, up)
    across /= np.linalg.norm(across)
    return across, np.cross(across, beam)


def _placed(flat: list[np.ndarray]) -> list[np.ndarray]:
    """All paths scaled into the picture, y downward."""
    every = np.vstack(flat)
    low, high = every.min(axis=0), every.max(axis=0)
    size = np.maximum(high - low, 1e-9)
    scale = min((WIDTH - 2 * MARGIN) / size[0], (HEIGHT - 2 * MARGIN) / size[1])
    middle = (low + high) / 2
    return [(points - middle) * scale * [1, -1] + [WIDTH / 2, HEIGHT / 2] for points in flat]


def _states(document: Document, joint: Any, contour: Any) -> np.ndarray:
    """(n,) int: the gravest severity of a finding at every station."""
    state = np.zeros(len(contour["stations"]["s"]), dtype=int)
    for finding in document["findings"]:
        if finding["waived"] or finding["joint"] != joint["id"] or finding["severity"] not in STATES:
            continue
        if finding["from_s"] is None:  # the whole path, or the whole seam
            on = np.full(len(state), finding["contour"] in (None, contour["id"]) and finding["at"] is None)
            on |= finding["contour"] == contour["id"] and finding["station"] is None
        else:
            on = facts.stations_of_finding(document, finding, contour)
        state[on] = np.maximum(state[on], STATES.index(finding["severity"]))
    return state


def _runs(state: np.ndarray, closed: bool) -> list[tuple[int, int]]:
    """First and last station of every stretch of findings, one station wider on both sides, as it is drawn."""
    runs = []
    edges = np.flatnonzero(np.diff(state)) + 1
    for first, last in zip([0, *edges], [*(edges - 1), len(state) - 1], strict=True):
        if state[first]:
            runs.append((int(first), int(min(last + 1, len(state) if closed else len(state) - 1))))
    return runs


def _line(state: int, points: np.ndarray) -> str:
    if len(points) == 1:
        points = np.vstack([points, points + np.array([0.5, 0.0])])
    simple = np.round(np.asarray(LineString(points).simplify(FINE).coords)).astype(int)
    return f"{state} " + " ".join(f"{x},{y}" for x, y in simple)
