"""A number that a user can set: declared once; file, help, docs and error messages follow from it."""

from __future__ import annotations

from msgspec import Struct

from seamcheck.catalogue.known import STANDINGS, Known


class Setting(Struct, frozen=True):
    """One number that a user can set.

    Attributes
    ----------
    name : key in its table of the settings file
    default : what stands where nothing is set; None where nothing can, and what needs it is not evaluated
    unit : a unit of catalogue/units.py; text in the file may carry another one of the same kind
    what : meaning, in a few words
    least, most : the values that can be taken
    standing : a key of STANDINGS: where the default comes from
    source : what is known about the default, in a few words
    table : its table in the settings file, such as 'scanner' or 'material.laser'; '' at the top
    low, high : the range that the default is expected in; None where none is known
    has_range : whether it can be written as [value, low, high]
    """

    name: str
    default: float | None
    unit: str
    what: str
    least: float = 0.0
    most: float = float("inf")
    standing: str = "assumption"
    source: str = ""
    table: str = ""
    low: float | None = None
    high: float | None = None
    has_range: bool = False

    def __post_init__(self) -> None:
        if self.standing not in STANDINGS:
            raise ValueError(f"unknown standing {self.standing!r}")
        if self.default is not None and not self.least <= self.default <= self.most:
            raise ValueError(f"the default of {self.name} lies outside of what can be taken")

    @property
    def key(self) -> str:
        """Dotted name in the settings file: 'collapse', 'scanner.distance'."""
        return f"{self.table}.{self.name}" if self.table else self.name

    @property
    def attribute(self) -> str:
        """Name in Python."""
        return self.name.replace("-", "_")

    @property
    def known(self) -> Known | None:
        """The default with range and standing; None without one."""
        if self.default is None:
            return None
        low, high = (self.default if end is None else end for end in (self.low, self.high))
        return Known(self.default, self.unit, self.standing, self.source, low, high)

    def standing_in_words(self) -> str:
        """'assumption', 'common practice: 0.2 to 0.8 mm', with the range where one is known."""
        span = "" if self.low is None or self.high is None else f"{self.low:g} to {self.high:g}"
        more = ", ".join(text for text in (self.source, span) if text)
        return f"{self.standing}: {more}" if more else self.standing
