"""Frames: the press frame of a joint, and the one in which it is seen along the light."""

from __future__ import annotations

import numpy as np
from msgspec import Struct


class Frame(Struct, frozen=True, eq=False):
    """A right-handed frame.

    Attributes
    ----------
    origin : (3,) mm
    axes : (3, 3) rows are the unit vectors x, y, z in assembly coordinates
    """

    origin: np.ndarray
    axes: np.ndarray

    @staticmethod
    def along(z: np.ndarray, origin: np.ndarray) -> Frame:
        """Frame at the origin (3,) mm with z along (3,), of any length; x is the assembly axis most across z."""
        z = np.asarray(z, dtype=float) / np.linalg.norm(z)
        seed = np.eye(3)[int(np.argmin(np.abs(z)))]
        x = seed - (seed @ z) * z
        x /= np.linalg.norm(x)
        return Frame(np.asarray(origin, dtype=float), np.array([x, np.cross(z, x), z]))

    def local(self, points: np.ndarray) -> np.ndarray:
        """Assembly coordinates (n, 3) or (..., 3) to frame coordinates, mm."""
        moved = np.asarray(points) - self.origin
        rows = moved.reshape(-1, 3) @ self.axes.T  # facet by facet it takes twice as long
        return np.asarray(rows.reshape(moved.shape))

    def world(self, points: np.ndarray) -> np.ndarray:
        """Frame coordinates (n, 3) or (..., 3) to assembly coordinates, mm."""
        return np.asarray(np.asarray(points) @ self.axes + self.origin)

    @property
    def up(self) -> np.ndarray:
        """(3,) unit vector z in assembly coordinates."""
        return np.asarray(self.axes[2])

    def turned_over(self) -> Frame:
        """The same with z the other way, turned about x."""
        return Frame(self.origin, self.axes * np.array([[1.0], [-1.0], [-1.0]]))

    def boxes(self, boxes: np.ndarray) -> np.ndarray:
        """(n, 6) boxes of the assembly's axes to (n, 6) boxes in the frame that hold them."""
        centre = self.local((boxes[:, :3] + boxes[:, 3:]) / 2)
        half = ((boxes[:, 3:] - boxes[:, :3]) / 2) @ np.abs(self.axes).T
        return np.hstack([centre - half, centre + half])

    def local_vectors(self, vectors: np.ndarray) -> np.ndarray:
        """Directions (n, 3) or (..., 3), unit vectors as a rule, from assembly to frame coordinates."""
        return np.asarray(np.asarray(vectors) @ self.axes.T)

    def world_vectors(self, vectors: np.ndarray) -> np.ndarray:
        """Directions (n, 3) or (..., 3), unit vectors as a rule, from frame to assembly coordinates."""
        return np.asarray(np.asarray(vectors) @ self.axes)
