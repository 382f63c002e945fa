"""Points of the model as reports write them."""

from __future__ import annotations

from collections.abc import Sequence

from seamcheck.catalogue.voice import decimal_sign, in_voice, localised


def coordinate(value: float, decimals: int = 2) -> str:
    """A coordinate given in mm, in the unit of the report, never '-0.00'."""
    value, _, decimals = in_voice(value, "mm", decimals)
    return localised(f"{round(value, decimals) + 0.0:.{decimals}f}")


def point(at: Sequence[float]) -> str:
    """'(1.00, 2.00, 3.00)'; with semicolons where a comma stands before the decimals."""
    between = ", " if decimal_sign() == "." else "; "
    return f"({between.join(coordinate(c) for c in at)})"
