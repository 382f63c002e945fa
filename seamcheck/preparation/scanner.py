"""What a scanner is told so that its beam meets the mid-line under the cover: refraction taken into account."""

from __future__ import annotations

from collections.abc import Callable

import numpy as np
from msgspec import Struct

from seamcheck.joint.frame import Frame
from seamcheck.measure.material.optics import refract

CLOSE = 1e-4
"""mm within which the beam has to meet its points."""

_STEPS = 30  # each leaves about a tenth of what the last one missed by

Tops = Callable[[np.ndarray], tuple[np.ndarray, np.ndarray]]
"""Places (n, 3) near the cover's top -> a place on it (n, 3) and the unit normal there (n, 3), all in the frame."""


class Field(Struct, frozen=True, eq=False):
    """A scanner over a seam.

    Attributes
    ----------
    frame : z against the beam, the origin in the middle of the seam, at the height of the rib's top
    pivot : mm in the frame, height of the mirrors' pivot; None: the beam is parallel
    axis : (2,) mm in the frame, foot of the optical axis
    index : of the cover
    plate : (thickness mm, refractive index) of a transparent plate, or None
    is_refracted : whether a tilted top turns the beam; not where no scanner is given
    """

    frame: Frame
    pivot: float | None
    axis: np.ndarray
    index: float
    plate: tuple[float, float] | None = None
    is_refracted: bool = True


def field_coordinates(field: Field, points: np.ndarray, thickness: np.ndarray, tops: Tops) -> np.ndarray:
    """Where the straight ray of the scanner would meet the plane z = 0 of the frame, had it no cover to pass.

    Parameters
    ----------
    points : (n, 3) mm in the model, that are to be met
    thickness : (n,) mm, of the cover over them, along the beam

    Returns
    -------
    (n, 2) mm in the frame; NaN where no ray was found

    Notes
    -----
    Each ray is traced through plate and cover (Snell's law in vector form) and then moved by what it misses.
    """
    local = field.frame.local(points)
    if not field.is_refracted:
        return np.asarray(local[:, :2])
    told = local[:, :2].copy()
    entry = local + np.column_stack([np.zeros((len(local), 2)), thickness])
    miss = np.full(len(local), np.inf)
    for _ in range(_STEPS):
        entry, met = trace(field, told, local[:, 2], entry, tops)
        off = local[:, :2] - met
        miss = np.linalg.norm(off, axis=1)
        if not (miss > CLOSE / 10.0).any():
            break
        told += np.nan_to_num(off)
    return np.where((miss < CLOSE)[:, None], told, np.nan)


def trace(
    field: Field, told: np.ndarray, level: np.ndarray, entry: np.ndarray, tops: Tops
) -> tuple[np.ndarray, np.ndarray]:
    """Where rays enter the cover (n, 3), and where they come to a level below it (n, 2); mm in the frame.

    Parameters
    ----------
    told : (n, 2) mm, where the straight rays meet z = 0; level : (n,) mm in the frame
    entry : (n, 3) mm, near which they enter
    """
    if field.pivot is None:
        ray = np.broadcast_to([0.0, 0.0, -1.0], entry.shape)
        start = np.column_stack([told, np.zeros(len(told))])
    else:
        pivot = np.array([*field.axis, field.pivot])
        ray = np.column_stack([told, np.zeros(len(told))]) - pivot
        ray = ray / np.linalg.norm(ray, axis=1, keepdims=True)
        start = np.broadcast_to(pivot, entry.shape)
    if field.plate is not None:  # a plane plate moves the ray aside and leaves its direction
        thick, index = field.plate
        inside = refract(ray, np.broadcast_to([0.0, 0.0, 1.0], ray.shape), index)
        start = start + thick * (inside / -inside[:, 2:] - ray / -ray[:, 2:])
    place, normal = tops(entry)
    with np.errstate(invalid="ignore", divide="ignore"):
        way = ((place - start) * normal).sum(axis=1) / (ray * normal).sum(axis=1)
        entry = start + way[:, None] * ray
        inside = refract(ray, normal, field.index)
        down = (level - entry[:, 2]) / inside[:, 2]
        return entry, np.asarray((entry + down[:, None] * inside)[:, :2])


def plate_transmission(index: float) -> float:
    """Share of the light that a clear plate in air passes at normal incidence: 2 n / (n² + 1)."""
    return 2.0 * index / (index**2 + 1.0)
