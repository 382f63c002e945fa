"""A thin plate under even pressure, clamped or hinged on its outline: moment and load at its edge."""

from __future__ import annotations

from typing import Any

import numpy as np
import shapely
from msgspec import Struct

_FINE, _MOST = 160, 6000.0  # nodes round the outline; inner nodes at most
_ACROSS = 12.0  # elements at least over the narrowest extent, in terms of area over half the perimeter
_OFF = 0.6  # of the spacing that inner nodes keep from the outline
_WHOLE = 1e-3  # share of the area by which the elements may miss the outline


class Edge(Struct, frozen=True, eq=False):
    """What a plate does to its support, at even places along its outline.

    s : (n,) mm from the outline's start; moment : (n,) N (N·mm for each mm) where it is clamped; load_clamped,
    load_hinged : (n,) N/mm, positive against the pressure
    """

    s: np.ndarray
    moment: np.ndarray
    load_clamped: np.ndarray
    load_hinged: np.ndarray

    def at(self, values: np.ndarray, s: np.ndarray, length: float) -> np.ndarray:
        """(m,) one of the arrays, in its unit, at arc lengths (m,) mm of the closed outline."""
        around = np.concatenate([self.s - length, self.s, self.s + length])
        return np.asarray(np.interp(s, around, np.tile(values, 3)))


def plate_edge(outline: np.ndarray, pressure: float, poisson: float, over: float) -> Edge | None:
    """Solve a plate clamped along its outline and one hinged there.

    Parameters
    ----------
    outline : (k, 2) mm, closed without repeating its first point; pressure : MPa; poisson : of the plate
    over : mm of the outline over which moment and load are averaged: below the thickness a plate tells nothing

    Returns
    -------
    Edge, or None where the outline can't be filled with elements

    Notes
    -----
    Kirchhoff's plate by Morley's elements (scikit-fem): quadratic, the deflection known at corners, the slope at the
    middle of edges; moment and load at the edge are the reactions of these unknowns. Where it is hinged only the nodes
    of the outline are held, which spares a round plate the paradox of its polygons (I. Babuška). Of even thickness: its
    stiffness does not matter then.
    """
    mesh, count = _filled(outline)
    if mesh is None:
        return None
    from scipy.sparse.linalg import splu
    from skfem import Basis, BilinearForm, ElementTriMorley, LinearForm
    from skfem.helpers import dd, ddot

    basis = Basis(mesh, ElementTriMorley(), intorder=4)

    def bending(u: Any, v: Any, w: Any) -> np.ndarray:
        one, other = dd(u), dd(v)
        shared = (one[0, 0] + one[1, 1]) * (other[0, 0] + other[1, 1])
        return np.asarray((1.0 - poisson) * ddot(one, other) + poisson * shared)

    stiffness = BilinearForm(bending).assemble(basis).tocsc()
    pushed = pressure * LinearForm(lambda v, w: 1.0 * v).assemble(basis)
    corners = basis.nodal_dofs[0, :count]
    border = mesh.boundary_facets()
    slopes = basis.facet_dofs[0, border]
    ends = mesh.facets[:, border]
    lengths = np.linalg.norm(mesh.p[:, ends[0]] - mesh.p[:, ends[1]], axis=0)
    found = {}
    for name, held in (("clamped", np.concatenate([corners, slopes])), ("hinged", corners)):
        free = np.setdiff1d(np.arange(basis.N), held)
        bent = np.zeros(basis.N)
        bent[free] = splu(stiffness[free][:, free]).solve(pushed[free])
        found[name] = pushed - stiffness @ bent
    half = np.zeros(count)
    np.add.at(half, ends.ravel(), np.tile(lengths / 2.0, 2))
    moment = np.zeros(count)
    np.add.at(moment, ends.ravel(), np.tile(np.abs(found["clamped"][slopes]) / 2.0, 2))
    steps = np.linalg.norm(np.roll(mesh.p[:, :count], -1, axis=1) - mesh.p[:, :count], axis=0)
    s = np.concatenate([[0.0], np.cumsum(steps)[:-1]])
    width = max(1, round(over / float(steps.mean())))
    per_mm = (_averaged(values, width) / _averaged(half, width) for values in (
        moment, found["clamped"][corners], found["hinged"][corners]
    ))  # fmt: skip
    return Edge(s, *per_mm)


def _averaged(values: np.ndarray, width: int) -> np.ndarray:
    """Sums over ``width`` neighbours to each side, round a closed line."""
    return np.asarray(sum(np.roll(values, k) for k in range(-width, width + 1)))


def _filled(outline: np.ndarray) -> tuple[Any, int]:
    """Triangles in an outline (a mesh of scikit-fem, its first nodes along the outline), and how many those are."""
    from scipy.spatial import Delaunay
    from skfem import MeshTri

    region = shapely.Polygon(outline)
    length, area = region.length, region.area
    if not region.is_valid or not area > 0.0:
        return None, 0
    spacing = min(length / _FINE, 2.0 * area / length / _ACROSS * 2.0)
    spacing = max(spacing, float(np.sqrt(area / _MOST)))
    count = max(24, round(length / spacing))
    spacing = length / count
    ring = shapely.get_coordinates(shapely.line_interpolate_point(region.exterior, np.arange(count) * spacing))
    region = shapely.Polygon(ring)
    x0, y0, x1, y1 = region.bounds
    rows = np.arange(y0, y1, spacing * np.sqrt(0.75))
    lattice = [np.column_stack(np.broadcast_arrays(np.arange(x0 + (k % 2) * spacing / 2, x1, spacing), y))
               for k, y in enumerate(rows)]  # fmt: skip
    inner = np.concatenate(lattice)
    layers = [ring]
    for depth in (1, 2):  # even layers along the outline: there the reactions are read
        layers.append(_layer(layers[-1], region, spacing, depth))
    room = region.buffer(-(2.0 * np.sqrt(0.75) + _OFF) * spacing)
    places = np.vstack([*layers, inner[shapely.contains_xy(room, inner[:, 0], inner[:, 1])]])
    corners = Delaunay(places).simplices
    middle = places[corners].mean(axis=1)
    corners = corners[shapely.contains_xy(region, middle[:, 0], middle[:, 1])]
    one, two = (places[corners[:, k]] - places[corners[:, 0]] for k in (1, 2))
    areas = np.abs(one[:, 0] * two[:, 1] - one[:, 1] * two[:, 0]) / 2.0
    corners = corners[areas > 1e-6 * spacing**2]
    mesh = MeshTri(np.ascontiguousarray(places.T), np.ascontiguousarray(corners.T))
    border = np.unique(mesh.facets[:, mesh.boundary_facets()])
    if abs(areas.sum() / region.area - 1.0) > _WHOLE or not np.array_equal(border, np.arange(count)):
        return None, 0
    return mesh, count


def _layer(line: np.ndarray, region: shapely.Polygon, spacing: float, depth: int) -> np.ndarray:
    """(m, 2) nodes inward of those of a closed line, between them, as far as makes equal triangles."""
    if len(line) < 3:
        return line[:0]
    ahead = np.roll(line, -1, axis=0) - line
    long = np.linalg.norm(ahead, axis=1)
    usual = (long > 0.3 * spacing) & (long < 1.7 * spacing)
    sign = 1.0 if region.exterior.is_ccw else -1.0
    inward = sign * np.column_stack([-ahead[:, 1], ahead[:, 0]]) / np.maximum(long, 1e-12)[:, None]
    nodes = (line + ahead / 2.0 + np.sqrt(0.75) * spacing * inward)[usual]
    room = region.buffer(-(depth * np.sqrt(0.75) - 0.2) * spacing)
    return np.asarray(nodes[shapely.contains_xy(room, nodes[:, 0], nodes[:, 1])])
