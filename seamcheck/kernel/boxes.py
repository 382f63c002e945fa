"""Boxes of faces and bodies: rows of lowest x, y, z and highest x, y, z in mm; NaN for an empty one."""

from __future__ import annotations

import numpy as np


def boxes_meet(boxes: np.ndarray, other: np.ndarray, reach: float = 0.0) -> np.ndarray:
    """Which boxes come within reach of another one on every axis.

    Parameters
    ----------
    boxes : (..., 6) mm; other : (6,) mm, or rows that fit; reach : mm

    Returns
    -------
    (...,) bool; false for an empty box
    """
    with np.errstate(invalid="ignore"):
        low, high = boxes[..., :3] - reach, boxes[..., 3:] + reach
        return np.asarray(np.all((low <= other[..., 3:]) & (high >= other[..., :3]), axis=-1))
