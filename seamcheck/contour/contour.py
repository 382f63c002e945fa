"""The contour: the mid-line of the rib top as one or more paths."""

from __future__ import annotations

from collections.abc import Mapping

import numpy as np
from msgspec import Struct


class Path(Struct, frozen=True, eq=False):
    """One stretch of the mid-line, densely sampled, in the joint's press frame.

    Attributes
    ----------
    id : "c1", "c2", ...
    closed : whether it returns to its start (the first node is not repeated)
    ends : for an open path what is at (start, end): 'open' or 'junction:J1'; () when closed
    s : (n,) mm, arc length in 3-D, ascending from 0
    length : mm, of the whole path
    points : (n, 3) mm
    u : (n, 2) unit, across the path in the frame's x, y; +u is outer
    end_room : (2,) mm, how much of the path at its start and end lies within half a rib width of an open end
    """

    id: str
    closed: bool
    ends: tuple[str, ...]
    s: np.ndarray
    length: float
    points: np.ndarray
    u: np.ndarray
    end_room: tuple[float, float] = (0.0, 0.0)


class Contour(Struct, frozen=True, eq=False):
    """All paths of one joint; junctions "J1" -> (3,) mm in the press frame; rib_width : mm, typical.

    untraced : mm of the band along which no path runs
    """

    paths: tuple[Path, ...]
    junctions: Mapping[str, np.ndarray]
    rib_width: float
    untraced: float = 0.0

    @property
    def length(self) -> float:
        return float(sum(path.length for path in self.paths))
