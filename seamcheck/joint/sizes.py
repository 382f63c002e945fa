"""Which bodies are small beside the largest one."""

from __future__ import annotations

from collections.abc import Mapping
from functools import cached_property

from seamcheck.joint.constants import SMALL
from seamcheck.kernel import Body


class Sizes:
    """Compares bodies by the diagonals of their own boxes.

    Most are told from bounds: the hull, from which the box along a body itself is made, takes long.
    """

    def __init__(self, bodies: Mapping[str, Body]) -> None:
        """bodies : by part id."""
        self._bodies = bodies

    def is_small(self, ident: str) -> bool:
        """Whether a body's diagonal is below SMALL of the largest one's."""
        low, high = self._bodies[ident].diagonal_bounds
        least, most = self._largest
        if high < SMALL * least:
            return True
        if low >= SMALL * most:
            return False
        return self._bodies[ident].own_box.diagonal < SMALL * self._exact

    @cached_property
    def _largest(self) -> tuple[float, float]:
        """mm, between which the largest diagonal lies."""
        low, high = zip(*(body.diagonal_bounds for body in self._bodies.values()), strict=True)
        return max(low), max(high)

    @cached_property
    def _exact(self) -> float:
        """mm, the largest diagonal."""
        return max(b.own_box.diagonal for b in self._bodies.values() if b.diagonal_bounds[1] >= self._largest[0])
