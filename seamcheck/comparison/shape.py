"""What moved: how far the centre line lies from where it was, its length, stretches added and removed."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
from msgspec import Struct

from seamcheck.comparison.align import JointPair
from seamcheck.comparison.nearest import NearestPoints
from seamcheck.comparison.paths import SeamPath
from seamcheck.sections.stretches import Stretch, cell_lengths, stretches

LEAST = 0.5
"""mm: shorter stretches of seam without a counterpart are the ends of others, not added or removed."""


class Piece(Struct, frozen=True, eq=False, dict=True):
    """A stretch of one seam that the other does not have.

    Attributes
    ----------
    path : of the new seam where it was added, of the old one (in the new model's coordinates) where removed
    stretch : on it
    at : (3,) mm, its middle
    """

    path: SeamPath
    stretch: Stretch
    at: np.ndarray


class Shift(Struct, frozen=True, eq=False, dict=True):
    """Distances between the two centre lines, after the motion of the whole.

    Attributes
    ----------
    mean, most : mm over the seam that both have; None without any
    at : (3,) mm, the place of the largest
    length : mm of seam that lies elsewhere by more than the measuring error
    """

    mean: float | None
    most: float | None
    at: np.ndarray | None
    length: float


def shift_of(pair: JointPair, tolerance: float) -> Shift:
    """How far the new centre line lies from the old one, every place counting as long as its part of the seam.

    Parameters
    ----------
    tolerance : mm, what counts as lying elsewhere
    """
    distance, weight, places = [], [], []
    for path, feet in zip(pair.after, pair.onto_old, strict=True):
        distance.append(feet.distance[feet.found])
        weight.append(cell_lengths(path.s, path.length, path.closed)[feet.found])
        places.append(path.points[feet.found])
    far, cell, where = np.concatenate(distance), np.concatenate(weight), np.concatenate(places)
    if not len(far) or cell.sum() <= 0:
        return Shift(None, None, None, 0.0)
    worst = int(far.argmax())
    return Shift(
        float(np.average(far, weights=cell)), float(far[worst]), where[worst], float(cell[far > tolerance].sum())
    )


def added(pair: JointPair) -> list[Piece]:
    """Stretches of the new seam that the old one lacks."""
    return _pieces(pair.after, pair.onto_old)


def removed(pair: JointPair) -> list[Piece]:
    """Stretches of the old seam that the new one lacks."""
    return _pieces(pair.before, pair.onto_new)


def _pieces(paths: Sequence[SeamPath], feet: Sequence[NearestPoints]) -> list[Piece]:
    pieces = []
    for path, own in zip(paths, feet, strict=True):
        for stretch in stretches(~own.found, path.s, path.length, path.closed):
            if stretch.length >= LEAST:
                s = np.mod(stretch.middle, path.length) if path.closed else stretch.middle
                at = [np.interp(s, path.corner_s, path.corners[:, axis]) for axis in range(3)]
                pieces.append(Piece(path, stretch, np.array(at)))
    return pieces
