"""What a scanner is told so that its light meets the mid-line under the cover: refraction taken into account."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from seamcheck.joint.frame import Frame


@dataclass(frozen=True, slots=True, eq=False)
class Field:
    """A scanner over a seam.

    Attributes
    ----------
    frame : z against the light, the origin in the middle of the seam, at the height of the rib's top
    distance : mm from the pivot of the mirrors down to the cover's top; None: the light is parallel
    axis : (2,) mm in the frame, foot of the optical axis
    layers : (thickness mm, refractive index) of a transparent plate, if there is one, from the top; the cover comes
        last, with its thickness at each place
    index : of the cover
    """

    frame: Frame
    distance: float | None
    axis: np.ndarray
    index: float
    plate: tuple[float, float] | None = None


def field_coordinates(field: Field, points: np.ndarray, thickness: np.ndarray) -> np.ndarray:
    """Where the straight ray of the scanner would meet the plane of the rib's top, had it no cover to pass.

    Parameters
    ----------
    points : (n, 3) mm, that are to be met
    thickness : (n,) mm, of the cover over them, along the light

    Returns
    -------
    (n, 2) mm in the frame

    Notes
    -----
    Snell's law in plane layers square to the axis: a ray that enters at x from the axis meets
    r = x + sum t tan θ. r rises steadily with x; the one root is found by halving.
    """
    local = field.frame.local(points)
    if field.distance is None:
        return np.asarray(local[:, :2])
    away = local[:, :2] - field.axis
    radius = np.linalg.norm(away, axis=1)
    pivot, top = heights(field, local[:, 2], thickness)
    layers = [(thickness, field.index)]
    if field.plate is not None:
        layers.insert(0, (np.full(len(top), field.plate[0]), field.plate[1]))
    over = pivot - top - (0.0 if field.plate is None else field.plate[0])
    reach = entry_radius(over, radius, layers) / over * pivot
    with np.errstate(invalid="ignore", divide="ignore"):
        share = np.where(radius > 0.0, reach / radius, 1.0)
    return np.asarray(field.axis + away * share[:, None])


def heights(field: Field, rib: np.ndarray, thickness: np.ndarray) -> tuple[float, np.ndarray]:
    """mm in the frame: of the pivot, and (n,) of the cover's top over the points."""
    top = rib + thickness
    return float(np.median(top)) + float(field.distance or 0.0), top


def entry_radius(
    height: np.ndarray, radius: np.ndarray, layers: list[tuple[np.ndarray, float]], steps: int = 60
) -> np.ndarray:
    """(n,) mm from the axis where rays enter plane layers so that they leave them at a radius (n,).

    Parameters
    ----------
    height : (n,) mm, of the pivot over the layers; layers : (thickness (n,) mm, refractive index), from the top
    """
    low, high = np.zeros_like(radius), radius.copy()
    for _ in range(steps):
        x = (low + high) / 2.0
        too_far = leaves(x, height, layers) > radius
        low, high = np.where(too_far, low, x), np.where(too_far, x, high)
    return np.asarray((low + high) / 2.0)


def leaves(entry: np.ndarray, height: np.ndarray, layers: list[tuple[np.ndarray, float]]) -> np.ndarray:
    """(n,) mm from the axis where rays leave plane layers that they enter at ``entry`` (n,)."""
    sine = entry / np.hypot(entry, height)
    out = entry.astype(float)
    for thickness, index in layers:
        out = out + thickness * sine / np.sqrt(index**2 - sine**2)
    return np.asarray(out)


def plate_transmission(index: float) -> float:
    """Share of the light that a clear plate in air passes at normal incidence: 2 n / (n² + 1)."""
    return 2.0 * index / (index**2 + 1.0)
