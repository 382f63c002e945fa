"""Types of the fields of records that are read from files: what no number, text or list may exceed."""

from __future__ import annotations

from typing import Annotated

from msgspec import Meta

LARGEST, LARGEST_COUNT = 1e12, 2**53

Real = Annotated[float, Meta(ge=-LARGEST, le=LARGEST)]
"""A finite number; NaN, infinities and numbers beyond any length, area or volume of a part are refused."""

Share = Annotated[float, Meta(ge=0.0, le=1.0)]
Count = Annotated[int, Meta(ge=0, le=LARGEST_COUNT)]
Point = tuple[Real, Real, Real]
"""mm, or a unit vector."""
