"""Sentences of findings, filled from a rule's templates."""

from __future__ import annotations

import math
import re
from collections.abc import Mapping

from seamcheck.catalogue.quantities import QUANTITIES
from seamcheck.catalogue.units import shown

_STEP = {"mm": 0.01, "mm²": 0.01, "°": 0.1, "1": 0.01, "%": 0.1, "K": 1.0}


def value_text(value: float, quantity: str) -> str:
    """A value of a quantity with its decimals and unit."""
    q = QUANTITIES[quantity]
    return shown(value, q.unit, q.decimals)


def change_by(by: float, unit: str) -> float:
    """How much to change, rounded up so that following the advice is enough.

    Half a thousandth of a mm counts as nothing, as in judging (rule.py, SLACK): 0.79999 against 1.00 says 0.20.
    """
    step = _STEP[unit]
    nothing = 0.0005 / step if unit == "mm" and by > step else 1e-6
    return math.ceil(by / step - nothing) * step


def fill(template: str, values: Mapping[str, object]) -> str:
    """The template with {names} filled in; a [part] stays away where one of its names is missing."""

    def bracket(match: re.Match[str]) -> str:
        names = re.findall(r"\{(\w+)\}", match[1])
        return match[1] if all(name in values for name in names) else ""

    return re.sub(r"\[([^\]]*)\]", bracket, template).format_map(values)
