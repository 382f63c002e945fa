"""The shape of a quantity: title, unit and definition."""

from __future__ import annotations

from msgspec import Struct


class Quantity(Struct, frozen=True):
    """One measured quantity.

    Attributes
    ----------
    key : column of the survey and key of the document
    title : what people call it
    unit : 'mm', 'mm²', '1', '°', '%', '1/mm' or 'J/mm'
    definition : what it is, in at most 25 words, with the letters of docs/joint.svg
    per : 'station', 'contour' or 'interface'
    decimals : how many are shown to people
    detail : what else decides its value: bounds, special cases, search distances
    """

    key: str
    title: str
    unit: str
    definition: str
    per: str = "station"
    decimals: int = 3
    detail: str = ""

    @property
    def whole_definition(self) -> str:
        """Definition and detail in one text."""
        return f"{self.definition} {self.detail}".rstrip()

    @property
    def scale(self) -> str:
        """What it shares the scale of its chart with: the same length on the other side, its least and its most."""
        return self.key.rpartition("_")[0] if self.key.endswith(_ASPECTS) else self.key


_ASPECTS = ("_inner", "_outer", "_min", "_max", "_least", "_most", "_top", "_mid", "_root")
