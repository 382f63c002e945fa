"""Labels of a drawing's margin kept apart."""

from __future__ import annotations

from collections.abc import Sequence


def apart(wanted: Sequence[float], heights: Sequence[float], between: float, low: float, high: float) -> list[float]:
    """Middles of labels as near to their wanted ones as they get in their order without touching each other.

    Parameters
    ----------
    wanted, heights : (n,) float, in any unit
    between : room between two of them
    low, high : ends of the margin; where there is no room for all, they pass ``low``
    """
    order = sorted(range(len(wanted)), key=lambda i: wanted[i])
    middles = list(wanted)
    free = low
    for i in order:
        middles[i] = max(middles[i], free + heights[i] / 2)
        free = middles[i] + heights[i] / 2 + between
    limit = high
    for i in reversed(order):
        middles[i] = min(middles[i], limit - heights[i] / 2)
        limit = middles[i] - heights[i] / 2 - between
    return middles
