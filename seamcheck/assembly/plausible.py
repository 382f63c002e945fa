"""Whether the size of what was read makes sense for housings."""

from __future__ import annotations

import math
from collections.abc import Sequence

from seamcheck.errors import NotReviewed

SMALLEST_MM = 1.0  # no welded part is smaller; DESIGN: 8 to 600 mm are common
LARGEST_MM = 5000.0
_COMMON_MM = (8.0, 600.0)

_FACTORS = {  # the most frequent mistakes first
    1e-3: "metres instead of millimetres", 1e3: "millimetres instead of metres",
    1 / 25.4: "inches instead of millimetres", 25.4: "millimetres instead of inches",
    1 / 304.8: "feet instead of millimetres", 304.8: "millimetres instead of feet",
    0.1: "centimetres instead of millimetres", 10.0: "millimetres instead of centimetres",
    1e-6: "metres twice over", 1e6: "millimetres twice over",
}  # fmt: skip


def check_scale(sizes: Sequence[tuple[float, str]], unit: str) -> list[str]:
    """Notes about odd sizes; raises NotReviewed('scale-suspect') when no pair of bodies has a sane one.

    Parameters
    ----------
    sizes : longest side in mm and name of each solid
    unit : length unit that the file declares, '' for none
    """
    if not sizes:
        return []
    ordered = sorted(sizes, reverse=True)
    largest = ordered[0]
    second = ordered[min(1, len(ordered) - 1)]  # cover and base are two: one huge body alone is clutter
    for size, name in (second, largest):
        if (size > LARGEST_MM and (size, name) == second) or largest[0] < SMALLEST_MM:
            raise NotReviewed("scale-suspect", _message(size, name, unit))
    return [
        f"{name!r} measures {_in_words(size)}, far more than a welded housing; it is taken as it is."
        for size, name in ordered
        if size > LARGEST_MM
    ]


def _message(size: float, name: str, unit: str) -> str:
    common = [factor for factor in _FACTORS if _COMMON_MM[0] <= size * factor <= _COMMON_MM[1]]
    factor = common[0] if common else min(_FACTORS, key=lambda factor: _strangeness(size * factor))
    declared = f"The file declares {_FACTORS[factor]}" if unit else "The file declares no length unit"
    return (
        f"{name!r} measures {_in_words(size)}, which no welded housing does. A factor of {factor:.6g} would "
        f"make it {_in_words(size * factor)}: {declared}, it seems. Set the length unit on export and "
        "export again."
    )


def _strangeness(size: float) -> float:
    """How far a size lies from the middle of the common ones, in powers of ten."""
    middle = math.sqrt(_COMMON_MM[0] * _COMMON_MM[1])
    return abs(math.log10(size / middle)) if size > 0.0 else math.inf


def _in_words(size: float) -> str:
    return f"{size / 1000:.3g} m" if size >= 5000.0 else f"{size:.3g} mm"
