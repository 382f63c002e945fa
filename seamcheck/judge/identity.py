"""Names of findings that stay the same over runs, small edits, renamed parts and a model that is moved as a whole.

A name is made from the rule, the side of its limit and a coarse place in the joint's own frame: seen along the beam,
from the centre of the seam, in directions that the shape of the seam gives. No coordinate of the model, no name of a
part and no order in the file goes in.
"""

from __future__ import annotations

import cmath
import hashlib
from collections.abc import Sequence

import numpy as np
from msgspec import Struct

CELL = 10.0
"""mm: edge of the cells into which places are sorted."""

_SHIFT = 3.7  # mm: borders of cells lie beside the middle of the seam and the round dimensions that designers use
_LONG, _LOPSIDED, _SQUARE = 0.1, 0.05, 0.1  # moments of the seam's shape beyond which they give a direction
_HEAVIER = 0.01  # lopsidedness along a known direction that tells its two ends apart


class JointFrame(Struct, frozen=True, eq=False):
    """A frame that moves and rotates with its joint.

    Attributes
    ----------
    centre : (3,) mm, centre of the seam line
    axes : (3, 3) unit rows: two across the beam, and one against it
    folds : how often the seam's shape coincides with itself in one turn about the beam: 1 no symmetry, 2 an oblong,
        4 a square, 0 round, where only the distance from the centre says something
    """

    centre: np.ndarray
    axes: np.ndarray
    folds: int

    @staticmethod
    def of(points: np.ndarray, weights: np.ndarray, beam: np.ndarray) -> JointFrame:
        """The frame of a seam.

        Parameters
        ----------
        points : (n, 3) mm, along the seam; weights : (n,) mm, length that each stands for; beam : (3,) unit vector

        Notes
        -----
        Complex moments of the line in the plane across the beam: of order z|z|^2 for a lopsided shape, z^2 for a
        long one, z^4 for a square one (the argument of each turns once, twice, four times as the shape turns;
        M. R. Teague, J. Opt. Soc. Am. 70, 1980, for moments of that kind).
        """
        up = -np.asarray(beam, dtype=float)
        first = np.cross(up, np.eye(3)[np.argmin(np.abs(up))])
        first /= np.linalg.norm(first)
        second = np.cross(up, first)
        share = weights / weights.sum()
        centre = share @ points
        away = points - centre
        z = away @ first + 1j * (away @ second)
        size = float(np.sqrt(share @ np.abs(z) ** 2)) or 1.0
        z = z / size
        lopsided, long, square = (complex(share @ m) for m in (z * np.abs(z) ** 2, z**2, z**4))
        angle, folds = 0.0, 0
        if abs(long) > _LONG:
            angle = cmath.phase(long) / 2
            along, across = (lopsided * cmath.exp(-1j * angle)).real, (lopsided * cmath.exp(-1j * angle)).imag
            heavier = along if abs(along) >= abs(across) else across
            angle += np.pi if heavier < 0 else 0.0
            folds = 1 if abs(heavier) > _HEAVIER else 2
        elif abs(lopsided) > _LOPSIDED:
            angle, folds = cmath.phase(lopsided), 1
        elif abs(square) > _SQUARE:
            angle, folds = cmath.phase(square) / 4, 4
        ahead = np.cos(angle) * first + np.sin(angle) * second
        return JointFrame(centre, np.array([ahead, np.cross(up, ahead), up]), folds)

    def local(self, place: np.ndarray) -> tuple[float, float, float]:
        """(x, y, height) of a place, mm; places that the symmetry of the seam can't tell apart have the same."""
        x, y, height = (float(c) for c in self.axes @ (np.asarray(place, dtype=float) - self.centre))
        if self.folds == 0:
            return float(np.hypot(x, y)), 0.0, height
        if self.folds >= 2:
            x, y = abs(x), abs(y)
        if self.folds == 4:
            x, y = max(x, y), min(x, y)
        return x, y, height


def finding_name(rule: str, side: str, place: Sequence[float] | None) -> str:
    """'rib-width-3f9a2c51' from what is broken and roughly where.

    Parameters
    ----------
    rule, side : key of the rule; which column and which side of the limit
    place : (3,) mm in the joint's frame, middle of the stretch (not its worst station, which noise moves about);
        None for the whole seam
    """
    cell = "whole" if place is None else ",".join(str(int(np.floor((c - _SHIFT) / CELL))) for c in place)
    text = "|".join((rule, side, cell))
    return f"{rule}-{hashlib.sha256(text.encode()).hexdigest()[:8]}"


def numbered(names: Sequence[str], order: Sequence[tuple[object, ...]]) -> list[str]:
    """The names, told apart where two are alike: the second in ``order`` ends in '-2' ..."""
    result = list(names)
    count: dict[str, int] = {}
    for i in sorted(range(len(names)), key=lambda i: (names[i], order[i])):
        count[names[i]] = count.get(names[i], 0) + 1
        if count[names[i]] > 1:
            result[i] = f"{names[i]}-{count[names[i]]}"
    return result
