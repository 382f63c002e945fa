"""Open ends of the contour, and the stretches of missing rib between ends that face each other."""

from __future__ import annotations

import numpy as np

from seamcheck.contour import Contour
from seamcheck.joint.frame import Frame
from seamcheck.measure.table import Interruption

_FACING = 0.3  # cosine between an end's own direction and that to the other end


def interruptions(contour: Contour, frame: Frame) -> tuple[Interruption, ...]:
    """Pairs of open ends that face each other, nearest first; each end is used once."""
    ends = [
        (path, place) for path in contour.paths for place in (0, -1) if not path.closed and path.ends[place] == "open"
    ]
    pairs = []
    for i, (path_a, place_a) in enumerate(ends):
        for j in range(i + 1, len(ends)):
            path_b, place_b = ends[j]
            a, b = path_a.points[place_a], path_b.points[place_b]
            apart = float(np.linalg.norm(b - a))
            way = (b - a) / max(apart, 1e-9)
            facing = min(way @ _outward(path_a.points, place_a), -way @ _outward(path_b.points, place_b))
            if facing > _FACING or (path_a is path_b and facing > -0.2 and apart < 0.5 * path_a.length):
                pairs.append((apart, i, j))
    used: set[int] = set()
    found = []
    for apart, i, j in sorted(pairs):
        if used & {i, j}:
            continue
        used |= {i, j}
        (path_a, place_a), (path_b, place_b) = ends[i], ends[j]
        middle = (path_a.points[place_a] + path_b.points[place_b]) / 2
        found.append(Interruption(apart, frame.world(middle), ((path_a.id, place_a), (path_b.id, place_b))))
    return tuple(found)


def _outward(points: np.ndarray, place: int) -> np.ndarray:
    inner = points[min(5, len(points) - 1)] if place == 0 else points[-min(6, len(points))]
    away = points[place] - inner
    return np.asarray(away / max(float(np.linalg.norm(away)), 1e-9))
