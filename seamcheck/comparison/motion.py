"""Whether the seam as a whole lies elsewhere: by a shift, or by a turn and a shift."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

import numpy as np
from msgspec import Struct

from seamcheck.comparison.nearest import find_nearest
from seamcheck.comparison.paths import SeamPath
from seamcheck.comparison.rigid import STILL, Rigid

SAME = 0.05
"""mm: a place of the seam counts as lying where it should within this distance."""

SETTLED, MOST, CLEAR = 0.95, 0.9, 0.4
"""Shares of the seam: so much in place needs no motion; so much is a motion; so much more than at rest is one
as well."""

_POINTS = 120
_BEAM = 1.0  # degrees between the beams after the motion


class Found(Struct, frozen=True, eq=False, dict=True):
    """The motion that takes the old seam onto the new one.

    Attributes
    ----------
    kind : 'none', 'moved' (a shift), 'turned' (a turn and a shift) or 'unlike' (no motion fits; at rest)
    motion : to be applied to the old seam; none for 'none' and 'unlike'
    share : 0..1, how much of the old seam then lies on the new one
    """

    kind: str
    motion: Rigid
    share: float


def find_motion(
    old: Mapping[str, Any], new: Mapping[str, Any], before: Sequence[SeamPath], after: Sequence[SeamPath]
) -> Found:
    """Compare where two seams lie as wholes.

    Parameters
    ----------
    old, new : review documents
    before, after : their seams

    Notes
    -----
    Points evenly along the old seam are brought onto the new one by least squares of their distances with a
    soft loss (scipy), first by a shift alone, then by turns about the beam as starts. A shift goes before a
    turn that fits no better; a motion that can't be seen on the seam, such as a circle turned about its own
    axis, is none.
    """
    if not before or not after:
        return Found("none", STILL, 1.0)
    points = np.vstack([_even(path) for path in before])
    points = points[np.linspace(0, len(points) - 1, min(_POINTS, len(points))).astype(int)]
    at_rest = _share(STILL, points, after)
    beams = _beam(old), _beam(new)
    same_light = degrees_between(*beams) <= _BEAM
    if same_light and at_rest >= SETTLED:
        return Found("none", STILL, at_rest)
    middles = points.mean(axis=0), np.vstack([_even(path) for path in after]).mean(axis=0)
    best, share = STILL, at_rest if same_light else 0.0
    if same_light:
        shift = _settle(Rigid(np.eye(3), middles[1] - middles[0]), points, after, turns=False)
        found = _share(shift, points, after)
        if found > share:
            best, share = shift, found
    if share < MOST:
        for start in _rotations(points, after, middles, beams):
            turned = _settle(start, points, after, turns=True)
            found = _share(turned, points, after)
            if found > share + 0.02 and degrees_between(turned.vectors(beams[0]), beams[1]) <= _BEAM:
                best, share = turned, found
    is_motion = share >= MOST or (share >= 0.6 and share - at_rest >= CLEAR)
    if best is STILL or not is_motion or share < at_rest + 0.05:
        return Found("unlike" if at_rest < 0.5 else "none", STILL, at_rest)
    return Found("turned" if best.angle > 0.02 else "moved", best, share)


def _even(path: SeamPath) -> np.ndarray:
    """(m, 3) points evenly along a path, about 1 mm apart."""
    s = np.linspace(path.corner_s[0], path.corner_s[-1], max(4, int(path.length)))
    return np.column_stack([np.interp(s, path.corner_s, path.corners[:, axis]) for axis in range(3)])


def _share(motion: Rigid, points: np.ndarray, after: Sequence[SeamPath]) -> float:
    return float(np.mean(find_nearest(motion.points(points), after, reach=SAME).found))


def _settle(start: Rigid, points: np.ndarray, after: Sequence[SeamPath], turns: bool) -> Rigid:
    """The motion near a first guess that brings the points closest to the seam."""
    from scipy.optimize import least_squares  # here: most revisions lie where they lay
    from scipy.spatial.transform import Rotation

    centre = points.mean(axis=0)
    middle = start.points(centre)

    def motion(x: np.ndarray) -> Rigid:
        turn = start.turn if not turns else Rotation.from_rotvec(x[3:]).as_matrix() @ start.turn
        return Rigid(turn, middle + x[:3] - turn @ centre)

    def apart(x: np.ndarray) -> np.ndarray:
        moved = motion(x).points(points)
        return np.asarray((find_nearest(moved, after, reach=np.inf).points - moved).ravel())

    size = float(np.ptp(points, axis=0).max()) / 2 or 1.0
    scale = np.array([1.0] * 3 + [1.0 / size] * 3)[: 6 if turns else 3]
    found = least_squares(apart, np.zeros(len(scale)), x_scale=scale, loss="soft_l1", f_scale=SAME, max_nfev=25)
    return motion(found.x)


def _rotations(
    points: np.ndarray,
    after: Sequence[SeamPath],
    middles: tuple[np.ndarray, np.ndarray],
    beams: tuple[np.ndarray, np.ndarray],
) -> list[Rigid]:
    """Starts for the search: beam onto beam, then turned about it; the few that come nearest, least turn first."""
    from scipy.spatial.transform import Rotation

    upright = Rotation.align_vectors([beams[1]], [beams[0]])[0].as_matrix()
    starts = []
    for angle in range(0, 360, 15):
        turn = Rotation.from_rotvec(np.radians(angle) * beams[1]).as_matrix() @ upright
        starts.append(Rigid(turn, middles[1] - turn @ middles[0]))
    some = points[:: max(1, len(points) // 40)]
    apart = [float(np.median(find_nearest(start.points(some), after, reach=np.inf).distance)) for start in starts]
    nearest = sorted(range(len(starts)), key=lambda i: apart[i])[:6]
    return sorted((starts[i] for i in nearest), key=lambda start: start.angle)


def _beam(document: Mapping[str, Any]) -> np.ndarray:
    """(3,) mean beam direction of all joints, where they agree; else that of the first."""
    beams = np.array([joint["beam"] for joint in document["joints"]], dtype=float)
    mean = beams.mean(axis=0)
    size = float(np.linalg.norm(mean))
    return np.asarray(mean / size if size > 0.9 else beams[0])


def degrees_between(a: np.ndarray, b: np.ndarray) -> float:
    """Angle between two directions (3,)."""
    return float(np.degrees(np.arctan2(np.linalg.norm(np.cross(a, b)), a @ b)))
