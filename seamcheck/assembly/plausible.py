"""Whether the size of what was read, and of the seam found in it, makes sense for housings."""

from __future__ import annotations

import math
from collections.abc import Sequence

from seamcheck.catalogue.say import Value, refused, say

SMALLEST_MM = 1.0  # no welded part is smaller; DESIGN: 8 to 600 mm are common
LARGEST_MM = 5000.0
_COMMON_MM = (8.0, 600.0)
_THINNEST_MM = 0.25  # a cover below that is no moulded part; limits begin at 0.8 mm
_COMMON_COVER_MM = (0.5, 6.0)
_USUAL_COVER_MM = 2.0

_FACTORS = {  # the most frequent mistakes first
    1e-3: "mm-as-m", 1e3: "m-as-mm", 1 / 25.4: "mm-as-in", 25.4: "in-as-mm", 1 / 304.8: "mm-as-ft", 304.8: "ft-as-mm",
    0.1: "mm-as-cm", 10.0: "cm-as-mm", 1e-6: "mm-as-m-twice", 1e6: "m-as-mm-twice",
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
            said = _said(size, _likely_factor(size), unit)
            raise refused("scale-suspect", "scale-suspect.size", part=repr(name), **said)
    return [say("file.large", part=repr(name), size=_in_words(size)) for size, name in ordered if size > LARGEST_MM]


def odd_size(sizes: Sequence[tuple[float, str]], unit: str) -> str:
    """A sentence on the size of the parts that can explain why no seam was found; '' for usual sizes.

    Parameters
    ----------
    sizes, unit : as for check_scale
    """
    ordered = sorted(sizes, reverse=True)
    if len(ordered) < 2 or _COMMON_MM[0] <= ordered[1][0] <= _COMMON_MM[1]:
        return ""
    size, name = ordered[1]
    return say("any.size", part=repr(name), **_said(size, _likely_factor(size), unit))


def check_cover(thickness: float, largest: tuple[float, str], unit: str) -> None:
    """Raise NotReviewed('scale-suspect') for a cover that is thinner than plastic can be moulded and welded.

    Parameters
    ----------
    thickness : mm, of the cover over the seam, its median; NaN where it was not measured
    largest : longest side in mm and name of the larger of the two parts
    unit : length unit that the file declares, '' for none
    """
    size, name = largest
    if not thickness < _THINNEST_MM:  # NaN: not measured
        return
    fitting = [factor for factor in _FACTORS if _is_common(thickness * factor, size * factor)]
    if not fitting:
        return
    factor = min(fitting, key=lambda factor: abs(math.log(thickness * factor / _USUAL_COVER_MM)))
    said = {"thickness": f"{thickness:.2g} mm", **_said(size, factor, unit)}
    raise refused("scale-suspect", "scale-suspect.cover", part=repr(name), **said)


def _said(size: float, factor: float, unit: str) -> dict[str, Value]:
    """What a sentence tells of a size (mm) and of the mistake that a factor stands for."""
    declared = say("any.unit", unit=unit) if unit else say("any.no-unit")
    return {
        "size": _in_words(size), "factor": f"{factor:.6g}", "better": _in_words(size * factor),
        "mistake": _FACTORS[factor], "declared": declared,
    }  # fmt: skip


def _likely_factor(size: float) -> float:
    """The most frequent mistake that makes a size common, else the one that makes it least strange."""
    common = [factor for factor in _FACTORS if _COMMON_MM[0] <= size * factor <= _COMMON_MM[1]]
    return common[0] if common else min(_FACTORS, key=lambda factor: _decades_off(size * factor))


def _is_common(thickness: float, size: float) -> bool:
    return _COMMON_COVER_MM[0] <= thickness <= _COMMON_COVER_MM[1] and _COMMON_MM[0] <= size <= _COMMON_MM[1]


def _decades_off(size: float) -> float:
    """How far a size lies from the middle of the common ones, in powers of ten."""
    middle = math.sqrt(_COMMON_MM[0] * _COMMON_MM[1])
    return abs(math.log10(size / middle)) if size > 0.0 else math.inf


def _in_words(size: float) -> str:
    return f"{size / 1000:.3g} m" if size >= 1000.0 else f"{size:.3g} mm"
