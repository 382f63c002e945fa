"""A number with its unit, the range it is expected in, and where it comes from.

Every material value that seamcheck uses or prints travels as a :class:`Known`, so that no number from memory
can be mistaken for one from a standard or from the user's own measurement.
"""

from __future__ import annotations

import math
from collections.abc import Iterable
from typing import Any, SupportsFloat

from msgspec import Struct
from msgspec.structs import force_setattr, replace

STANDINGS: dict[str, str] = {
    "measured": "from the model",
    "given": "given in the settings",
    "source": "a published source, named beside it",
    "common practice": "usual in the trade; what was found published about it is named beside it",
    "from memory": "from memory, not verified",
    "assumption": "an assumption of this project; set your own",
    "your own": "of your machine, process or design; there is no general value",
    "computed": "computed from the inputs listed with it",
}
"""Every standing that a number can have, and how it reads."""

OF_DEFAULTS = ("source", "common practice", "from memory", "assumption")
"""Standings that the default of a limit can have."""


def standing_sentence(standing: str) -> str:
    """How a standing reads as a sentence of its own."""
    text = STANDINGS[standing]
    return f"{text[0].upper()}{text[1:]}."


class Known(Struct, frozen=True):
    """One number, its unit, its range and its standing.

    Attributes
    ----------
    value : in ``unit``
    unit : '1' for a pure number
    standing : a key of STANDINGS
    source : the source or the reason, in a few words; '' when the standing says it all
    low, high : the range that the number is expected in; both equal to ``value`` when none is known
    """

    value: float
    unit: str
    standing: str
    source: str = ""
    low: float = float("nan")
    high: float = float("nan")

    def __post_init__(self) -> None:
        if self.standing not in STANDINGS:
            raise ValueError(f"unknown standing {self.standing!r}")
        if self.low != self.low:  # not a number: no range given
            force_setattr(self, "low", self.value)
        if self.high != self.high:
            force_setattr(self, "high", self.value)
        if not self.low <= self.value <= self.high:
            raise ValueError(f"{self.value} does not lie in its range {self.low} to {self.high}")

    def spread(self, relative: float) -> Known:
        """Return the same number with a range of plus and minus ``relative`` times itself."""
        half = abs(self.value) * relative
        return replace(self, low=self.value - half, high=self.value + half)

    def as_dict(self) -> dict[str, Any]:
        """Return the entry of the review document."""
        entry: dict[str, Any] = {"value": rounded(self.value), "unit": self.unit, "standing": self.standing}
        if self.source:
            entry["source"] = self.source
        if self.low < self.value or self.high > self.value:
            entry["low"], entry["high"] = rounded(self.low), rounded(self.high)
        return entry


def given(value: float, unit: str, source: str = "") -> Known:
    """Return a number that the user wrote into the settings."""
    return Known(float(value), unit, "given", source)


def assumed(value: float, unit: str, source: str = "", low: float = float("nan"), high: float = float("nan")) -> Known:
    """Return a number that this project assumes until the user sets it."""
    return Known(float(value), unit, "assumption", source, low, high)


def remembered(
    value: float, unit: str, source: str = "", low: float = float("nan"), high: float = float("nan")
) -> Known:
    """Return a number written down from memory."""
    return Known(float(value), unit, "from memory", source, low, high)


def rounded(value: SupportsFloat | None, digits: int = 6) -> float | None:
    """Return ``value`` with ``digits`` significant digits; None for what JSON has no number for."""
    if value is None or not math.isfinite(number := float(value)):
        return None
    return float(f"{number:.{digits}g}")


def is_proven(known: Known) -> bool:
    """Whether a number may make a must-fix finding: published, given or measured, not remembered or assumed."""
    return known.standing not in ("from memory", "assumption")


def weakest(inputs: Iterable[Known]) -> str:
    """Return the weakest standing among ``inputs``: a result is no better than that."""
    order = ["measured", "given", "your own", "computed", "source", "common practice", "from memory", "assumption"]
    return max((known.standing for known in inputs), key=order.index, default="computed")
