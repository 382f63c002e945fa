"""The section across the seam as a chain of straight and round pieces in (o, z); imports no kernel.

``o`` is the offset from the mid-line (positive outward), ``z`` the height against the beam, mm.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

Point = tuple[float, float]


@dataclass(frozen=True)
class Piece:
    """From ``start`` to ``end``; with ``centre`` an arc round it through ``through``, else straight."""

    start: Point
    end: Point
    centre: Point | None = None
    through: Point | None = None

    @property
    def is_level(self) -> bool:
        return self.centre is None and abs(self.start[1] - self.end[1]) < 1e-12


def fillet_tangent(radius: float, interior: float) -> float:
    """Distance from the corner to the tangent point of a fillet, for the interior angle in radians."""
    return radius / math.tan(interior / 2)


def fillet_area(radius: float, interior: float) -> float:
    """Area between a corner and its fillet: r^2 (cot(b/2) - (pi - b)/2)."""
    return radius**2 * (1 / math.tan(interior / 2) - (math.pi - interior) / 2)


def chain(vertices: Sequence[tuple[float, float, float]]) -> tuple[Piece, ...]:
    """Pieces through the vertices (o, z, fillet radius); the first and last radius are not used."""
    pieces: list[Piece] = []
    here: Point = vertices[0][:2]
    for i in range(1, len(vertices) - 1):
        before, corner, after = (np.array(v[:2]) for v in vertices[i - 1 : i + 2])
        radius = vertices[i][2]
        if radius <= 0:
            end: Point = (float(corner[0]), float(corner[1]))
            pieces.append(Piece(here, end))
            here = end
            continue
        a = (before - corner) / np.linalg.norm(before - corner)
        b = (after - corner) / np.linalg.norm(after - corner)
        angle = math.acos(float(np.clip(a @ b, -1, 1)))
        foot = fillet_tangent(radius, angle)
        bisector = (a + b) / np.linalg.norm(a + b)
        centre = corner + bisector * radius / math.sin(angle / 2)
        p, q, m = corner + a * foot, corner + b * foot, centre - bisector * radius
        pieces.append(Piece(here, (float(p[0]), float(p[1]))))
        here = (float(q[0]), float(q[1]))
        pieces.append(Piece(pieces[-1].end, here, (float(centre[0]), float(centre[1])), (float(m[0]), float(m[1]))))
    pieces.append(Piece(here, vertices[-1][:2]))
    return tuple(p for p in pieces if math.dist(p.start, p.end) > 1e-9)
