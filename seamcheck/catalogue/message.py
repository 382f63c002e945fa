"""A sentence with its key and with what goes into it, so that another language or unit can be made from it."""

from __future__ import annotations

from collections.abc import Mapping

import msgspec

from seamcheck.catalogue.field_types import Count, Real
from seamcheck.catalogue.units import shown

NOTE = "note"
"""Key of a sentence that has none of its own."""


class Amount(msgspec.Struct, frozen=True, forbid_unknown_fields=True):
    """A number in a sentence: its value, its unit, and to how many decimals people read it."""

    value: Real
    unit: str
    decimals: Count

    def __str__(self) -> str:
        return shown(self.value, self.unit, self.decimals)


Args = Mapping[str, Amount | str]
"""What goes into a sentence: numbers with their units, and words such as names of parts."""


class Message(msgspec.Struct, frozen=True, forbid_unknown_fields=True):
    """One sentence: its key, what goes into it, and its English text."""

    key: str
    args: dict[str, Amount | str]
    text: str
