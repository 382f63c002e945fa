"""Rigid motions: a turn and a shift."""

from __future__ import annotations

import numpy as np
from msgspec import Struct


class Rigid(Struct, frozen=True, eq=False, dict=True):
    """x -> turn @ x + shift.

    Attributes
    ----------
    turn : (3, 3) rotation
    shift : (3,) mm
    """

    turn: np.ndarray
    shift: np.ndarray

    def points(self, points: np.ndarray) -> np.ndarray:
        """(n, 3) points or one (3,), moved."""
        return np.asarray(np.asarray(points, dtype=float) @ self.turn.T + self.shift)

    def vectors(self, vectors: np.ndarray) -> np.ndarray:
        """(n, 3) directions, turned."""
        return np.asarray(np.asarray(vectors, dtype=float) @ self.turn.T)

    @property
    def angle(self) -> float:
        """Of the turn, degrees; by both its sine and its cosine, so that small angles stay exact."""
        skew = self.turn - self.turn.T
        sine = np.linalg.norm([skew[2, 1], skew[0, 2], skew[1, 0]]) / 2
        return float(np.degrees(np.arctan2(sine, (np.trace(self.turn) - 1) / 2)))

    @property
    def axis(self) -> np.ndarray:
        """(3,) unit vector about which it turns; zeros without a turn."""
        from scipy.spatial.transform import Rotation

        vector = Rotation.from_matrix(self.turn).as_rotvec()
        size = float(np.linalg.norm(vector))
        return vector / size if size > 1e-12 else np.zeros(3)


STILL = Rigid(np.eye(3), np.zeros(3))
"""No motion."""
