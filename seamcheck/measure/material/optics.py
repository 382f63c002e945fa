"""Light at and in the cover: reflection, refraction, absorption, the way from a scanner to the rib.

Pure functions on floats and arrays. Angles are radians, lengths mm, wavelengths µm. ``n`` is the refractive
index of the plastic against air (1). Formulas are those of geometrical optics (E. Hecht, Optics, chapters 4
and 5) unless a note names another source.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import ArrayLike

Array = np.ndarray


def normal_reflectance(n: ArrayLike) -> Array:
    """Share of light that one surface reflects at normal incidence, any shape: ((n - 1) / (n + 1))²."""
    n = np.asarray(n, dtype=float)
    return ((n - 1.0) / (n + 1.0)) ** 2


def refraction_angle(incidence: ArrayLike, n: ArrayLike) -> Array:
    """Angle in the plastic, rad, any shape, for an angle of incidence in air (rad): sin θ1 = n sin θ2 (Snell)."""
    return np.asarray(np.arcsin(np.sin(np.asarray(incidence, dtype=float)) / np.asarray(n, dtype=float)))


def refract(directions: ArrayLike, normals: ArrayLike, n: ArrayLike) -> Array:
    """Turn rays at a surface between air and plastic (Snell's law in vector form).

    Parameters
    ----------
    directions : (..., 3) unit vectors in which the light travels in air
    normals : (..., 3) unit normals of the surface, on the side that the light comes from
    n : (...) or float, refractive index of the plastic

    Returns
    -------
    (..., 3) unit vectors in the plastic; NaN for a ray that comes from behind the surface.

    Notes
    -----
    d2 = d1 / n + (cos θ1 / n - cos θ2) N, with cos θ1 = -N·d1.
    """
    directions, normals = np.asarray(directions, dtype=float), np.asarray(normals, dtype=float)
    index = np.asarray(n, dtype=float)[..., None]
    cos_air = -np.sum(directions * normals, axis=-1, keepdims=True)
    cos_in = np.sqrt(1.0 - (1.0 - cos_air**2) / index**2)
    turned = directions / index + (cos_air / index - cos_in) * normals
    return np.where(cos_air > 0.0, turned, np.nan)


def surface_limit(n: ArrayLike) -> Array:
    """Largest share that a plate without absorption or back-scatter transmits, any shape: 2n / (n² + 1)."""
    n = np.asarray(n, dtype=float)
    return 2.0 * n / (n**2 + 1.0)


def cover_shift(incidence: ArrayLike, thickness: ArrayLike, n: ArrayLike) -> Array:
    """How far a plane cover shifts the ray, at its underside, mm, any shape: t (tan θ1 - tan θ2); angle in rad."""
    incidence = np.asarray(incidence, dtype=float)
    return np.asarray(np.asarray(thickness, dtype=float) * (np.tan(incidence) - np.tan(refraction_angle(incidence, n))))


def scanner_entry(
    height: ArrayLike, radius: ArrayLike, thickness: ArrayLike, n: ArrayLike
) -> tuple[Array, Array, Array, Array]:
    """Where the ray from a scanner enters a plane cover, so that it meets a point under it.

    Parameters
    ----------
    height : mm, the pivot above the cover's top face, > 0
    radius : mm, the point from the foot of the pivot, measured in the plane of the top face, >= 0
    thickness : mm, the point below the top face, >= 0
    n : refractive index of the cover, > 1

    Returns
    -------
    (entry, incidence, refracted, path) : mm from the foot of the pivot; rad in air; rad in the plastic; mm in
        the plastic. The arguments have any shape and are broadcast.

    Notes
    -----
    The one root of x + t tan θ2(x) = r in 0..r, tan θ1 = x / H. The left side rises steadily, its slope is
    greater than 1, and it is concave; Newton's method, kept inside a shrinking bracket, needs a few steps.
    """
    h, r, t, index = np.broadcast_arrays(*(np.asarray(a, dtype=float) for a in (height, radius, thickness, n)))
    low, high = np.zeros_like(r), r.copy()
    x = np.clip(h * r / (h + t / index), low, high)
    for _ in range(60):
        sine = x / np.hypot(x, h)
        root = np.sqrt(index**2 - sine**2)  # n cos θ2
        miss = x + t * sine / root - r
        low, high = np.where(miss < 0.0, x, low), np.where(miss > 0.0, x, high)
        slope = 1.0 + t * index**2 / root**3 * h**2 / np.hypot(x, h) ** 3
        step = x - miss / slope
        new = np.where((step >= low) & (step <= high), step, (low + high) / 2.0)
        done = np.max(np.abs(new - x), initial=0.0, where=np.isfinite(new)) < 1e-13 * (1.0 + np.nanmax(r, initial=0.0))
        x = new
        if done:
            break
    incidence = np.arctan2(x, h)
    refracted = refraction_angle(incidence, index)
    return x, incidence, refracted, t / np.cos(refracted)


def entry_points(
    pivots: ArrayLike, targets: ArrayLike, tops: ArrayLike, normals: ArrayLike, n: ArrayLike
) -> tuple[Array, Array, Array, Array]:
    """Where rays from a pivot enter tilted plane tops, so that each meets its target in the plastic.

    Parameters
    ----------
    pivots : (3,) or (m, 3) mm, where the rays start
    targets : (m, 3) mm, points below the top
    tops : (m, 3) mm, any point of the top plane over each target
    normals : (m, 3) unit normals of the tops, toward the pivot
    n : refractive index of the plastic

    Returns
    -------
    points : (m, 3) mm, on the top plane
    incidence : (m,) rad in air, against the top's normal
    path : (m,) mm in the plastic
    directions : (m, 3) unit vectors of the rays in air, from the pivot

    NaN where the pivot lies below the top plane, or the target above it.
    """
    pivots, targets, tops, normals = (np.asarray(a, dtype=float) for a in (pivots, targets, tops, normals))
    height = np.sum((pivots - tops) * normals, axis=-1)
    depth = np.sum((tops - targets) * normals, axis=-1)
    sound = (height > 0.0) & (depth >= 0.0)
    height, depth = np.where(sound, height, np.nan), np.where(sound, depth, np.nan)
    foot = pivots - height[..., None] * normals
    across = targets + depth[..., None] * normals - foot
    radius = np.linalg.norm(across, axis=-1)
    entry, incidence, _, path = scanner_entry(height, radius, depth, n)
    with np.errstate(invalid="ignore", divide="ignore"):
        share = np.where(radius > 0.0, entry / radius, 0.0)
    points = foot + share[..., None] * across
    rays = points - pivots
    return points, incidence, path, rays / np.linalg.norm(rays, axis=-1, keepdims=True)


def spot_stretch(incidence: ArrayLike) -> Array:
    """Length of the tilted spot over its diameter, a ratio, any shape: 1 / cos θ1, angle of incidence in rad."""
    return np.asarray(1.0 / np.cos(np.asarray(incidence, dtype=float)))
