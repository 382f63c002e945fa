"""Curvature of the mid-line, from the edges of the rib top themselves: exact at joints of lines and arcs."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
import shapely
from msgspec import Struct
from scipy.spatial import cKDTree

from seamcheck.joint import Joint
from seamcheck.joint.regions import OUTLINE_TOLERANCE
from seamcheck.kernel.curves import EdgePieces

_ON = 0.01  # mm that the border of the rib's top may lie off its edges
_TURNS = np.cos(np.radians(1.0))  # of the angle between two edges from which on they meet in a corner
_SAME = 1e-3  # mm between ends of edges that meet
_CORNER = 1.5  # mm round a corner within which edges do not tell how the line bends


class Bends(Struct, frozen=True, eq=False):
    """Edges of the rib's top seen along the press direction.

    tree : of the pieces; curvature (m, 2) 1/mm, vector from each piece toward its centre of curvature
    corners : (c, 2) mm, where edges meet at an angle
    """

    tree: shapely.STRtree
    curvature: np.ndarray
    corners: cKDTree

    @staticmethod
    def of(joint: Joint) -> Bends:
        """The bends of a joint's rib top."""
        axes = joint.frame.axes
        edges = joint.rib.border_pieces(joint.rib_faces, OUTLINE_TOLERANCE)

        def flat(vectors: np.ndarray) -> np.ndarray:
            return np.asarray(vectors @ axes[:2].T)

        if not edges:
            return Bends(shapely.STRtree([]), np.empty((0, 2)), cKDTree(np.empty((0, 2))))
        ends = zip(*((e.start, e.end) for e in edges), strict=True)
        start, end = (joint.frame.local(np.concatenate(part))[:, :2] for part in ends)
        first, second = (flat(np.concatenate(part)) for part in zip(*((e.first, e.second) for e in edges), strict=True))
        pieces = shapely.linestrings(np.stack([start, end], axis=1))
        return Bends(shapely.STRtree(pieces), curvature_of(first, second), cKDTree(_corners(edges, joint)))

    def at(self, points: np.ndarray, u: np.ndarray, inner: np.ndarray, outer: np.ndarray) -> np.ndarray:
        """(n,) curvature of the mid-line, 1/mm, positive where its centre lies toward u; NaN where it is not known.

        Parameters
        ----------
        points, u : (n, 2) mm and unit; inner, outer : (n,) mm from P to the edges of the rib's top

        Notes
        -----
        The mid-line is taken as parallel to each edge: 1/k = d + 1/k_edge, with the edge at d along u. Of both edges
        the one that bends less counts: what only one of them shows is a notch or a pad, no bend of the line.
        """
        found = [self._from_edge(points, u, d) for d in (-inner, outer)]
        one, other = found
        return np.where(np.abs(one) <= np.abs(other), one, other)

    def _from_edge(self, points: np.ndarray, u: np.ndarray, along: np.ndarray) -> np.ndarray:
        bend = np.full(len(points), np.nan)
        known = np.flatnonzero(np.isfinite(along))
        if not len(known) or not len(self.curvature):
            return bend
        feet = points[known] + along[known, None] * u[known]
        index, piece = self.tree.query_nearest(shapely.points(feet), all_matches=False, max_distance=_ON)
        row = known[index]
        of_edge = (self.curvature[piece] * u[row]).sum(axis=1)
        with np.errstate(divide="ignore", invalid="ignore"):
            bend[row] = of_edge / (1.0 + of_edge * along[row])
        if self.corners.n:
            bend[known[self.corners.query(feet)[0] < _CORNER]] = np.nan
        return bend


def curvature_of(first: np.ndarray, second: np.ndarray) -> np.ndarray:
    """Vectors (n, 2) toward the centres of curvature, 1/mm, from first and second derivatives (n, 2); 0 where at rest.

    k = (x' y" - y' x") / |x'|^3, along the normal to the left (do Carmo, Differential Geometry of Curves and Surfaces,
    section 1-5).
    """
    speed = np.linalg.norm(first, axis=1)
    turn = first[:, 0] * second[:, 1] - first[:, 1] * second[:, 0]
    left = np.column_stack([-first[:, 1], first[:, 0]])
    with np.errstate(divide="ignore", invalid="ignore"):
        vectors = (turn / speed**4)[:, None] * left
    return np.where(np.isfinite(vectors), vectors, 0.0)


def _corners(edges: Sequence[EdgePieces], joint: Joint) -> np.ndarray:
    """(c, 2) mm, ends of edges that meet another edge's end at an angle."""
    places = joint.frame.local(np.concatenate([np.stack([e.start[0], e.end[-1]]) for e in edges]))[:, :2]
    tangents = np.concatenate([e.ends for e in edges]) @ joint.frame.axes[:2].T
    tangents = tangents / np.maximum(np.linalg.norm(tangents, axis=1, keepdims=True), 1e-30)
    pairs = cKDTree(places).query_pairs(_SAME, output_type="ndarray")
    angled = np.abs((tangents[pairs[:, 0]] * tangents[pairs[:, 1]]).sum(axis=1)) < _TURNS
    return np.asarray(places[pairs[angled, 0]])
