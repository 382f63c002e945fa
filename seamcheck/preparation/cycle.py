"""How many parts a station makes, and how many stations a year's parts take; from given times only."""

from __future__ import annotations

import math

from msgspec import Struct


class Times(Struct, frozen=True):
    """s for one part: welding, cooling under pressure, handling; hours of work in a year; share of it that is used."""

    welding: float
    cooling: float
    handling: float
    hours: float | None = None
    used: float = 1.0
    parts: float | None = None

    @property
    def cycle(self) -> float:
        """s from part to part of one station."""
        return self.welding + self.cooling + self.handling

    @property
    def parts_a_year(self) -> float | None:
        """Of one station; None without hours."""
        return None if self.hours is None else self.hours * 3600.0 * self.used / self.cycle

    @property
    def stations(self) -> int | None:
        """For the wanted parts in a year; None where these or the hours are not given."""
        made = self.parts_a_year
        return None if made is None or self.parts is None else math.ceil(self.parts / made - 1e-9)
