"""From the region of the rib top to the paths along its middle."""

from __future__ import annotations

from typing import Any

import numpy as np
import shapely
from msgspec import Struct

from seamcheck.catalogue.say import refused
from seamcheck.contour.contour import Contour, Path
from seamcheck.contour.holes import without_holes
from seamcheck.contour.midline import Border, steady
from seamcheck.contour.skeleton import Chain, skeleton
from seamcheck.joint import Joint
from seamcheck.joint.heights import highest_at

_SPACING = 0.2  # mm between nodes, less on narrow ribs
_STRETCH = 6.0  # band widths: a piece of the band of this length without a path was left out
_BLURRED = 1.2  # rib widths round a junction in which borders of several ribs count


def trace_contour(joint: Joint) -> Contour:
    """Trace the mid-line of a joint's rib top.

    Returns
    -------
    Contour in the joint's press frame

    Raises
    ------
    NotReviewed : no-seam where the region has no mid-line to trace
    """
    polygons = list(shapely.get_parts(without_holes(joint.region)[0]))
    if not polygons:
        raise refused("no-seam", "no-seam.no-line")
    width = _typical_width(polygons)
    border = Border(shapely.MultiPolygon(polygons))
    rib_top = joint.frame.local(joint.rib.facets(joint.rib_faces, 0.001, 0.1).corners)
    paths: list[Path] = []
    junctions: dict[str, np.ndarray] = {}
    for polygon in sorted(polygons, key=lambda p: (-round(p.area, 6), tuple(np.round(p.bounds, 3)))):
        chains, nodes = skeleton(polygon, 2 * polygon.area / polygon.length)
        chains, nodes = _merge_near_junctions(chains, nodes, 2.0 * width)
        runs = [run for chain in chains if (run := _settled(chain, border, width, joint.up)) is not None]
        names = {}
        for node, place in sorted(nodes.items()):
            names[node] = f"J{len(junctions) + 1}"
            junctions[names[node]] = _lift(_meeting_point(node, place, runs, width)[None], rib_top)[0]
        for run in runs:
            first, last = (None if mark is None else junctions[names[mark]][:2] for mark in run.marks)
            paths.append(_path(f"c{len(paths) + 1}", run, (first, last), names, border, width, rib_top, joint.up))
    if not paths:
        raise refused("no-seam", "no-seam.no-line")
    region = shapely.MultiPolygon(polygons)
    return Contour(tuple(paths), junctions, width, untraced(region, [path.points[:, :2] for path in paths], width))


def untraced(region: shapely.MultiPolygon, lines: list[np.ndarray], width: float) -> float:
    """Length (mm) of the stretches of a band along which no line runs.

    Parameters
    ----------
    region : the band, mm; lines : (n, 2) mm each; width : mm, of the band

    Notes
    -----
    What lies further than the band's width from every line is such a stretch where it is longer than a few widths; a
    post that merges with the band is not.
    """
    near = shapely.union_all([shapely.LineString(line).buffer(width) for line in lines if len(line) > 1])
    rest = shapely.get_parts(region.difference(near))
    return float(sum(part.length / 2 for part in rest if part.length / 2 > _STRETCH * width))


def _typical_width(polygons: list[shapely.Polygon]) -> float:
    return float(2 * sum(p.area for p in polygons) / sum(p.length for p in polygons))


class _Run(Struct, frozen=True, eq=False):
    """A chain whose nodes lie on the exact middle: points (n, 2), closed, junction number (or None) at each end."""

    points: np.ndarray
    closed: bool
    marks: tuple[int | None, int | None]


def _merge_near_junctions(
    chains: list[Chain], nodes: dict[int, np.ndarray], within: float
) -> tuple[list[Chain], dict[int, np.ndarray]]:
    """Merge the two junctions with a short chain between them as which a crossing shows."""
    same = {node: node for node in nodes}
    kept = []
    for chain in chains:
        a, b = chain.ends
        length = float(np.linalg.norm(np.diff(chain.points, axis=0), axis=1).sum())
        if a is not None and b is not None and a != b and length < within:
            target, gone = same[a], same[b]
            same = {node: target if to == gone else to for node, to in same.items()}
        else:
            kept.append(chain)
    merged = [Chain(c.points, c.closed, _renamed(c.ends, same)) for c in kept]
    groups: dict[int, list[np.ndarray]] = {}
    for node, place in nodes.items():
        groups.setdefault(same[node], []).append(place)
    return merged, {node: np.mean(places, axis=0) for node, places in groups.items()}


def _renamed(ends: tuple[int | None, int | None], same: dict[int, int]) -> tuple[int | None, int | None]:
    first, last = (None if end is None else same[end] for end in ends)
    return first, last


def _settled(chain: Chain, border: Border, width: float, up: float) -> _Run | None:
    """A chain run in its direction and moved onto the exact middle, but for the neighbourhood of junctions."""
    line = chain.points
    if len(line) < 2:
        return None
    if chain.closed:
        line = np.vstack([line, line[:1]])
    turned = _oriented(line, up)
    marks = chain.ends[::-1] if turned is not line else chain.ends
    spacing = min(_SPACING, width / 5)
    points = _resample(turned, spacing, chain.closed)
    if len(points) < 3:
        return None
    for _ in range(2):
        u = _across(points, chain.closed, up)
        settled, u = border.settle(points, u, 3 * width)
        free = _away_from_junctions(points, marks, width)
        points = np.where(free[:, None], settled, points)
        ring = np.vstack([points, points[:1]]) if chain.closed else points
        points = _resample(ring, spacing, chain.closed)
    return _Run(points, chain.closed, marks)


def _meeting_point(node: int, place: np.ndarray, runs: list[_Run], width: float) -> np.ndarray:
    """Where the middles of all runs that end at a junction meet when each is extended straight (least squares)."""
    matrix, right = np.zeros((2, 2)), np.zeros(2)
    for run in runs:
        for mark, points in ((run.marks[0], run.points), (run.marks[1], run.points[::-1])):
            if mark != node:
                continue
            away = np.linalg.norm(points - place, axis=1)
            near = points[(away > _BLURRED * width) & (away < 2.5 * width)]
            if len(near) < 2:
                continue
            centre = near.mean(axis=0)
            normal = np.linalg.svd(near - centre)[2][1]
            matrix += np.outer(normal, normal)
            right += np.outer(normal, normal) @ centre
    if np.linalg.eigvalsh(matrix)[0] < 0.05:
        return place
    meeting = np.linalg.solve(matrix, right)
    return meeting if np.linalg.norm(meeting - place) < 2.0 * width else place


def _path(
    ident: str,
    run: _Run,
    junctions: tuple[np.ndarray | None, np.ndarray | None],
    names: dict[int, str],
    border: Border,
    width: float,
    rib_top: np.ndarray,
    up: float,
) -> Path:
    spacing = min(_SPACING, width / 5)
    points = _start_at_far_point(run.points) if run.closed else _straight_to(run.points, junctions, width)
    u = _across(points, run.closed, up)
    settled, across = border.settle(points, u, 3 * width)
    free = np.ones(len(points), dtype=bool)
    for place in junctions:
        if place is not None:
            free &= np.linalg.norm(points - place, axis=1) > _BLURRED * width
    points = np.where(free[:, None], settled, points)
    u = np.where(free[:, None], across, u)
    angle = steady(np.unwrap(np.arctan2(u[:, 1], u[:, 0])), spacing, width, run.closed)
    u = np.column_stack([np.cos(angle), np.sin(angle)])
    room = [0.0, 0.0]
    if not run.closed:
        points, u, room = _extend_to_ends(points, u, run.marks, border, width, up)
    lifted = _lift(points, rib_top)
    s, length = _arc_length(lifted, np.unwrap(np.arctan2(u[:, 1], u[:, 0])), run.closed)
    ends = () if run.closed else tuple("open" if m is None else f"junction:{names[m]}" for m in run.marks)
    return Path(ident, run.closed, ends, s, length, lifted, u, (room[0], room[1]))


def _straight_to(
    points: np.ndarray, junctions: tuple[np.ndarray | None, np.ndarray | None], width: float
) -> np.ndarray:
    """Replace the blurred ends of a run by straight ones that reach the junctions."""
    spacing = _step(points)
    for place, junction in zip((0, -1), junctions, strict=True):
        if junction is None:
            continue
        line = points if place == 0 else points[::-1]
        clear = np.linalg.norm(line - junction, axis=1) > _BLURRED * width
        first = int(np.argmax(clear)) if clear.any() else len(line) - 1
        count = max(2, round(float(np.linalg.norm(line[first] - junction)) / spacing))
        straight = junction + np.linspace(0, 1, count, endpoint=False)[:, None] * (line[first] - junction)
        line = np.vstack([straight, line[first:]])
        points = line if place == 0 else line[::-1]
    return points


def _oriented(line: np.ndarray, up: float) -> np.ndarray:
    """Run loops, and arches seen as closed by their chord, counter-clockwise seen from the light."""
    x, y = line[:, 0], line[:, 1]
    turn = float(np.sum(x * np.roll(y, -1) - y * np.roll(x, -1)))
    return line[::-1] if turn * up < 0 else line


def _resample(line: np.ndarray, spacing: float, closed: bool) -> np.ndarray:
    steps = np.linalg.norm(np.diff(line, axis=0), axis=1)
    s = np.append(0.0, np.cumsum(steps))
    keep = np.append(True, steps > 1e-12)
    count = max(3, round(s[-1] / spacing))
    at = np.linspace(0.0, s[-1], count + 1)
    if closed:
        at = at[:-1]
    return np.column_stack([np.interp(at, s[keep], line[keep, k]) for k in (0, 1)])


def _across(points: np.ndarray, closed: bool, up: float) -> np.ndarray:
    """Unit vectors u = t x v from central differences; v = up * z."""
    t = np.roll(points, -1, axis=0) - np.roll(points, 1, axis=0) if closed else np.gradient(points, axis=0)
    t /= np.maximum(np.linalg.norm(t, axis=1, keepdims=True), 1e-12)
    return up * np.column_stack([t[:, 1], -t[:, 0]])


def _away_from_junctions(points: np.ndarray, marks: tuple[Any, ...], width: float) -> np.ndarray:
    free = np.ones(len(points), dtype=bool)
    for mark, place in zip(marks, (0, -1), strict=True):
        if mark is not None:
            free &= np.linalg.norm(points - points[place], axis=1) > _BLURRED * width
    return free


def _start_at_far_point(points: np.ndarray) -> np.ndarray:
    """Begin a loop at the node farthest from the middle of all: a place that a rotation does not move."""
    far = np.round(np.linalg.norm(points - points.mean(axis=0), axis=1), 3)
    return np.roll(points, -int(np.argmax(far)), axis=0)


def _step(points: np.ndarray) -> float:
    """mm between neighbours of points (n, 2): the median, for single ones may coincide; never 0."""
    return max(float(np.median(np.linalg.norm(np.diff(points, axis=0), axis=1))), 1e-6)


def _extend_to_ends(
    points: np.ndarray, u: np.ndarray, marks: tuple[Any, ...], border: Border, width: float, up: float
) -> tuple[np.ndarray, np.ndarray, list[float]]:
    """Extend a path straight to the face that ends the rib."""
    room = [0.0, 0.0]
    points, u = points.copy(), u.copy()
    step = _step(points)
    inner = min(max(1, round(0.8 * width / step)), len(points) - 1)
    before, after = np.empty((0, 2)), np.empty((0, 2))
    for place, sign in ((0, -1.0), (-1, 1.0)):
        if marks[place] is not None:
            continue
        anchor = inner if place == 0 else len(points) - 1 - inner
        across = u[anchor]
        ahead = sign * up * np.array([-across[1], across[0]])
        _, room_ahead = border.chord(points[anchor][None], ahead[None], 4 * width + 2 * inner * step)
        if not np.isfinite(room_ahead[0]):
            continue
        # the last stretch of the skeleton swerves toward the corners of the end face: extend straight instead
        end = points[anchor] + room_ahead[0] * ahead
        last = np.arange(anchor) if place == 0 else np.arange(anchor + 1, len(points))
        along = np.clip((points[last] - points[anchor]) @ ahead, 0.0, room_ahead[0] - 1e-6)
        points[last], u[last] = points[anchor] + along[:, None] * ahead, across
        room[place] = 0.5 * width
        if place == 0:
            before = end[None]
        else:
            after = end[None]
    u = np.vstack([np.repeat(u[:1], len(before), 0), u, np.repeat(u[-1:], len(after), 0)])
    return np.vstack([before, points, after]), u, room


def _lift(points: np.ndarray, rib_top: np.ndarray) -> np.ndarray:
    """Put points (n, 2) onto the rib top: (n, 3); beside it the nearest height along the path is taken."""
    z = highest_at(points, rib_top)
    known = np.flatnonzero(np.isfinite(z))
    if not len(known):
        corners = rib_top.reshape(-1, 3)
        away = np.linalg.norm(corners[None, :, :2] - points[:, None], axis=2)
        return np.column_stack([points, corners[away.argmin(axis=1), 2]])
    missing = np.flatnonzero(~np.isfinite(z))
    if len(missing):
        z[missing] = np.interp(missing, known, z[known])
    return np.column_stack([points, z])


def _arc_length(points: np.ndarray, angle: np.ndarray, closed: bool) -> tuple[np.ndarray, float]:
    """Arc length (n,) and total; each chord is lengthened to the arc of its bend."""
    ring = np.vstack([points, points[:1]]) if closed else points
    turns = np.diff(np.append(angle, angle[0]) if closed else angle)
    turns = np.arctan2(np.sin(turns), np.cos(turns))
    step = np.diff(ring, axis=0)
    flat = np.linalg.norm(step[:, :2], axis=1)
    chord = np.where(
        np.abs(step[:, 2]) > 2.0 * flat, flat, np.linalg.norm(step, axis=1)
    )  # a vertical riser adds no length
    half = np.abs(turns) / 2
    arc = chord * np.where((half > 1e-6) & (half < 0.5), half / np.maximum(np.sin(half), 1e-12), 1.0)
    s = np.append(0.0, np.cumsum(arc))
    return (s[:-1], float(s[-1])) if closed else (s, float(s[-1]))
