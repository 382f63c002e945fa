"""Where to measure: evenly along the path, and at everything that begins or ends beside it."""

from __future__ import annotations

import numpy as np
from scipy.spatial import cKDTree

from seamcheck.contour import Path
from seamcheck.contour.midline import SETTLED, Border
from seamcheck.sections.slices import Soup

_NEAREST = 0.05  # mm between stations, at least
_ASIDE = 0.05  # mm that stations stand off the place where something begins
MOST = 60000
_ANY_WAY = np.array([0.537, 0.296])  # direction along which two places are hardly ever equally far


def even_stations(path: Path, spacing: float) -> np.ndarray:
    """(n,) mm along the path."""
    count = max(8, int(np.ceil(path.length / spacing)))
    if path.closed:
        return np.arange(count) * (path.length / count)
    return np.linspace(0.0, path.length, count + 1)


def event_stations(path: Path, soup: Soup, reach: float) -> np.ndarray:
    """(m,) mm: places just before and after each face begins or ends along the path.

    Every facet edge that isn't shared inside its own face lies on the face's border; its ends along the
    path are where something may change.
    """
    points, group = _different(soup.corners[:, :, :2], soup.owner.astype(np.int64) * 10_000_000 + soup.face)
    nodes = path.points[:, :2]
    away, node = cKDTree(nodes).query(points, distance_upper_bound=reach)
    near = np.isfinite(away)
    node, points, group = node[near], points[near], group[near]
    along = np.einsum("ij,ij->i", points - nodes[node], _tangents(path)[node])
    step = path.length / max(len(nodes), 2)
    where = path.s[node] + np.clip(along, -step, step)
    low, high = _spans(group, where, path.length if path.closed else None)
    marks = np.concatenate([low, high])
    return np.concatenate([marks - _ASIDE, marks + _ASIDE])


def _different(corners: np.ndarray, group: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
    """The places (k, 2) of facets' corners (m, 3, 2), those that a face's facets share once, and (k,) the face's group.

    Parameters
    ----------
    group : (m,) number of each facet's face; a face's facets stand side by side
    """
    place = corners.reshape(-1, 2) @ _ANY_WAY
    run = np.repeat(np.cumsum(np.append(False, group[1:] != group[:-1])[: len(group)]), 3)
    span = np.ptp(place) + 1.0 if len(place) else 1.0
    order = np.argsort(run * span + place)  # one key: a place that is told twice changes no face's ends
    points, group = corners.reshape(-1, 2), np.repeat(group, 3)
    points, group = points[order], group[order]
    new = np.append(True, (points[1:] != points[:-1]).any(axis=1) | (group[1:] != group[:-1]))[: len(order)]
    return points[new], group[new]


def _tangents(path: Path) -> np.ndarray:
    """(n, 2) unit tangents at the nodes, in the direction of travel."""
    across = path.u
    tangent = np.column_stack([-across[:, 1], across[:, 0]])
    ahead = np.gradient(path.points[:, :2], axis=0)
    return np.asarray(tangent * np.sign(np.einsum("ij,ij->i", tangent, ahead))[:, None])


def _spans(group: np.ndarray, where: np.ndarray, period: float | None) -> tuple[np.ndarray, np.ndarray]:
    """Where each face begins and ends along the path; a face on a loop starts after its widest empty stretch."""
    order = np.lexsort((where, group))
    group, where = group[order], where[order]
    starts = np.flatnonzero(np.append(True, np.diff(group) > 0))
    low, high = [], []
    for members in np.split(where, starts[1:]):
        if period is None:
            low.append(members[0])
            high.append(members[-1])
            continue
        gaps = np.append(np.diff(members), members[0] + period - members[-1])
        widest = int(np.argmax(gaps))
        high.append(members[widest])
        low.append(members[(widest + 1) % len(members)])
    return np.array(low), np.array(high)


def merge(path: Path, *places: np.ndarray) -> np.ndarray:
    """(n,) mm, sorted places along the path, none nearer than 0.05 mm to the next; earlier lists take precedence."""
    kept = np.empty(0)
    for extra in places:
        extra = np.mod(extra, path.length) if path.closed else extra[(extra >= 0) & (extra <= path.length)]
        extra = np.sort(extra)
        if len(extra):
            extra = extra[np.append(True, np.diff(extra) > 1e-9)]
        if len(kept) and len(extra):
            place = np.searchsorted(kept, extra)
            below = kept[np.maximum(place - 1, 0)]
            above = kept[np.minimum(place, len(kept) - 1)]
            extra = extra[np.minimum(np.abs(extra - below), np.abs(extra - above)) > _NEAREST * 0.6]
            extra = _thin(extra)
        kept = np.sort(np.concatenate([kept, extra]))
    return kept


def _thin(values: np.ndarray) -> np.ndarray:
    keep, last = [], -np.inf
    for value in values:
        if value - last > _NEAREST * 0.6:
            keep.append(value)
            last = value
    return np.array(keep)


def place_on(
    path: Path, s: np.ndarray, border: Border, width: float, junctions: np.ndarray
) -> tuple[np.ndarray, np.ndarray]:
    """Points (n, 2) on the exact middle and u (n, 2) at the given arc lengths; junctions (k, 2) mm."""
    nodes, angle = path.s, np.unwrap(np.arctan2(path.u[:, 1], path.u[:, 0]))
    flat = path.points[:, :2]
    if path.closed:
        turn = 2 * np.pi * np.round((angle[-1] - angle[0]) / (2 * np.pi))
        nodes, angle = np.append(nodes, path.length), np.append(angle, angle[0] + turn)
        flat = np.vstack([flat, flat[:1]])
    at = np.interp(s, nodes, angle)
    u = np.column_stack([np.cos(at), np.sin(at)])
    points = np.column_stack([np.interp(s, nodes, flat[:, k]) for k in (0, 1)])
    for _ in range(3):
        low, high = border.nearest(points, u, 3 * width)
        shift = 0.5 * (np.linalg.norm(high - points, axis=1) - np.linalg.norm(low - points, axis=1))
        ok = np.isfinite(shift) & (np.abs(shift) < 0.5 * width)
        for junction in junctions:
            ok &= np.linalg.norm(points - junction, axis=1) > 1.2 * width
        points[ok] += shift[ok, None] * u[ok]
        if not ok.any() or np.abs(shift[ok]).max() < SETTLED:
            break
    return points, u
