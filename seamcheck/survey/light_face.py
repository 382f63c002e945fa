"""The cover's face toward the light beside the beam corridor: the clamp land."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from seamcheck.survey.slices import COVER, Segments

_BEND = 5.0  # degrees
_STEP = 0.01  # mm
_LEAST_RUN = 0.1  # mm over which a slope is taken: shorter lines are cut from facets' tips


@dataclass(frozen=True, slots=True, eq=False)
class Land:
    """width (n,) mm; tilt (n,) degrees; why (n,) reason, '' where measured"""

    width: np.ndarray
    tilt: np.ndarray
    why: np.ndarray


def measure_land(
    segments: Segments, stations: int, start: np.ndarray, outer: bool, up: float, level: np.ndarray
) -> Land:
    """Width of the land on one side.

    Parameters
    ----------
    segments : wide cut of cover, base and others; w measured along the frame's z
    start : (n,) mm from P to the edge of the beam corridor
    up : +1 where the light comes from +w
    level : (n,) height of the rib top, only what lies on its light side counts
    """
    width, tilt = np.full(stations, np.nan), np.full(stations, np.nan)
    why = np.full(stations, "no-land", dtype=object)
    sign = 1.0 if outer else -1.0
    lit = (segments.nw * up > 1e-6) & (segments.u1 - segments.u0 > 1e-9)
    above = up * (np.maximum(up * segments.w0, up * segments.w1) * up - level[segments.station]) > 0
    faces = np.flatnonzero(lit & above & (segments.owner == COVER))
    block = np.flatnonzero(above & (segments.owner != COVER))
    bounds = np.searchsorted(segments.station[faces], np.arange(stations + 1))
    block_bounds = np.searchsorted(segments.station[block], np.arange(stations + 1))
    for i in range(stations):
        if not np.isfinite(start[i]):
            why[i] = "depends"
            continue
        mine = faces[bounds[i] : bounds[i + 1]]
        others = block[block_bounds[i] : block_bounds[i + 1]]
        width[i], tilt[i], why[i] = _walk(segments, mine, others, start[i], sign, up)
    return Land(width, tilt, why)


def _walk(
    segments: Segments, mine: np.ndarray, others: np.ndarray, start: float, sign: float, up: float
) -> tuple[float, float, str]:
    """From the corridor's edge outward over the topmost light-side lines of one section."""
    if sign > 0:
        a, wa, b, wb = (x[mine] for x in (segments.u0, segments.w0, segments.u1, segments.w1))
    else:
        a, wa, b, wb = -segments.u1[mine], segments.w1[mine], -segments.u0[mine], segments.w0[mine]
    wa, wb, face = up * wa, up * wb, segments.face[mine]
    here = np.flatnonzero((a <= start + 1e-9) & (b > start + 1e-9))
    if not len(here):
        return np.nan, np.nan, "no-land"
    part = (start - a[here]) / (b[here] - a[here])
    height = wa[here] + part * (wb[here] - wa[here])
    now = int(here[np.argmax(height)])
    along, heights, faces = [start, b[now]], [float(height.max()), wb[now]], [face[now]]
    for _ in range(len(a)):
        follow = np.flatnonzero((np.abs(a - b[now]) < 1e-5) & (np.abs(wa - wb[now]) < _STEP) & (b > b[now] + 1e-9))
        if not len(follow):
            break
        now = int(follow[np.argmax(wb[follow])])
        along.append(b[now])
        heights.append(wb[now])
        faces.append(face[now])
    slope = _slopes(np.array(along), np.array(heights), np.array(faces))
    first_slope = slope[0]
    if abs(first_slope) > 45.0:
        return np.nan, np.nan, "no-land"
    bent = np.flatnonzero(np.abs(slope - first_slope) > _BEND)
    last_line = len(faces)
    if len(bent):
        last_line = int(bent[0])  # a bend counts from where its face begins
        while last_line > 1 and faces[last_line - 1] == faces[bent[0]]:
            last_line -= 1
        last_line = int(bent[0]) if faces[0] == faces[bent[0]] else last_line
    end = along[last_line]
    along, heights = along[: last_line + 1], heights[: last_line + 1]
    # what stands on or over the land ends it: the cover's own features, other parts
    for lines in (mine, others):
        lo, hi = (segments.u0[lines], segments.u1[lines]) if sign > 0 else (-segments.u1[lines], -segments.u0[lines])
        first, last = (segments.w0[lines], segments.w1[lines]) if sign > 0 else (segments.w1[lines], segments.w0[lines])
        left, right = np.clip(lo, start, end), np.clip(hi, start, end)
        run = np.maximum(hi - lo, 1e-12)
        over_left = up * (first + (left - lo) / run * (last - first)) - np.interp(left, along, heights)
        over_right = up * (first + (right - lo) / run * (last - first)) - np.interp(right, along, heights)
        over = (hi > start + 1e-9) & (lo < end - 1e-6) & (np.maximum(over_left, over_right) > _STEP)
        if over.any():
            end = min(end, max(start, float(np.min(np.maximum(lo[over], start)))))
    walked = np.array(along[:-1]) < end - 1e-6
    return max(0.0, float(end - start)), float(np.abs(slope[: len(walked)][walked]).max(initial=abs(first_slope))), ""


def _slopes(along: np.ndarray, heights: np.ndarray, faces: np.ndarray) -> np.ndarray:
    """(k,) slope of every line in degrees; that of a short one together with its neighbours on the same face."""
    change = np.flatnonzero(np.diff(faces)) + 1
    first = np.concatenate([[0], change])[np.searchsorted(change, np.arange(len(faces)), side="right")]
    last = np.append(change, len(faces))[np.searchsorted(change, np.arange(len(faces)), side="right")]
    far = np.maximum(along[1:], np.minimum(along[:-1] + _LEAST_RUN, along[last]))
    near = np.minimum(along[:-1], np.maximum(far - _LEAST_RUN, along[first]))
    rise = np.interp(far, along, heights) - np.interp(near, along, heights)
    return np.degrees(np.arctan2(rise, np.maximum(far - near, 1e-12)))
