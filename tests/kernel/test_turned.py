"""Faces that are turned about an axis: where their points lie, and triangles of their own rows and columns."""

from __future__ import annotations

import math

import numpy as np
import pytest
from OCP.BRepPrimAPI import BRepPrimAPI_MakeTorus
from OCP.Geom import Geom_ConicalSurface, Geom_CylindricalSurface, Geom_SphericalSurface, Geom_ToroidalSurface
from OCP.GeomAbs import GeomAbs_SurfaceType
from OCP.gp import gp_Ax2, gp_Ax3, gp_Dir, gp_Pnt

from seamcheck.kernel.body import Body
from seamcheck.kernel.turned import turned_function

MAJOR, MINOR = 12.0, 0.4


def frame(left_handed: bool) -> gp_Ax3:
    axes = gp_Ax3(gp_Pnt(3, -2, 5), gp_Dir(1, 2, 2), gp_Dir(2, -2, 1))
    if left_handed:
        axes.YReverse()
    return axes


@pytest.mark.parametrize("left_handed", [False, True])
@pytest.mark.parametrize(
    "make",
    [
        lambda axes: Geom_CylindricalSurface(axes, 2.5),
        lambda axes: Geom_ConicalSurface(axes, -0.3, 4.0),
        lambda axes: Geom_SphericalSurface(axes, 7.0),
        lambda axes: Geom_ToroidalSurface(axes, MAJOR, MINOR),
    ],
)
def test_points_are_where_the_kernel_says(make, left_handed):
    surface = make(frame(left_handed))
    uv = np.random.default_rng(1).uniform((0.0, -1.5), (6.2, 1.5), (50, 2))
    true = np.array([surface.Value(u, v).Coord() for u, v in uv])
    assert turned_function(surface)(uv) == pytest.approx(true, abs=1e-12)


def rings(body: Body) -> list[int]:
    return [i for i, s in enumerate(body._surfaces) if s.GetType() == GeomAbs_SurfaceType.GeomAbs_Torus]


def size(corners: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
    """Areas (m,) and unit normals (m, 3)."""
    normal = np.cross(corners[:, 1] - corners[:, 0], corners[:, 2] - corners[:, 0])
    length = np.linalg.norm(normal, axis=1)
    return length / 2, normal / length[:, None]


def of_ring(corners: np.ndarray) -> np.ndarray:
    """Distances (m, 10) of some places on triangles from a torus about z, positive outside of its tube."""
    shares = np.array([(i, j, 3 - i - j) for i in range(4) for j in range(4 - i)]) / 3.0
    at = np.einsum("sk,mkd->msd", shares, corners)
    return np.hypot(np.hypot(at[..., 0], at[..., 1]) - MAJOR, at[..., 2]) - MINOR


@pytest.mark.parametrize("deflection", [0.05, 0.01, 0.001])
@pytest.mark.parametrize(("low", "high", "turn"), [(-90, 90, 90), (-100, 100, 200), (0, 90, 360), (0, 360, 360)])
def test_a_stretch_of_a_ring_keeps_its_chord_error_its_area_and_its_side(low, high, turn, deflection):
    axes = gp_Ax2(gp_Pnt(0, 0, 0), gp_Dir(0, 0, 1))
    low, high, turn = (math.radians(a) for a in (low, high, turn))
    body = Body(BRepPrimAPI_MakeTorus(axes, MAJOR, MINOR, low, high, turn).Shape())
    corners = body.facets(rings(body), deflection, 0.3).corners
    area, normal = size(corners)
    true = turn * MINOR * (MAJOR * (high - low) + MINOR * (math.sin(high) - math.sin(low)))  # Pappus
    assert area.sum() == pytest.approx(true, rel=3 * deflection / MINOR)
    assert np.abs(of_ring(corners)).max() < 1.2 * deflection
    middle = corners.mean(axis=1)
    radial = middle * (1, 1, 0) / np.linalg.norm(middle[:, :2], axis=1)[:, None]
    assert (((middle - MAJOR * radial) * normal).sum(axis=1) > 0).all()  # outward of the tube, inside nowhere
    if deflection == 0.001:  # half of the chord error for either direction: (turn / step) x (turn / step) x 2
        steps = [2 * math.acos(1 - deflection / 2 / r) for r in (MAJOR + MINOR, MINOR)]
        assert len(area) < 1.5 * 2 * (turn / steps[0]) * ((high - low) / steps[1])
