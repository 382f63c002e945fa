"""Numbers as people write them (0.5, '0.5 mm', '0.02 in', '10 %', '2 deg') in the unit they are kept in."""

from __future__ import annotations

import math
import re
from typing import Any

from seamcheck.catalogue.voice import in_voice, localised

KINDS: dict[str, tuple[str, dict[str, float]]] = {
    "mm": (
        "a length",
        {"mm": 1.0, "cm": 10.0, "m": 1000.0, "µm": 1e-3, "um": 1e-3, "in": 25.4, "inch": 25.4, '"': 25.4},
    ),
    "mm²": ("an area", {"mm²": 1.0, "mm2": 1.0, "cm²": 100.0, "cm2": 100.0}),
    "mm³": ("a volume", {"mm³": 1.0, "mm3": 1.0, "cm³": 1000.0, "cm3": 1000.0}),
    "°": ("an angle", {"°": 1.0, "deg": 1.0, "rad": 180.0 / math.pi}),
    "%": ("a percentage", {"%": 1.0}),
    "K": ("a difference of temperatures", {"K": 1.0}),
    "1": ("a plain number or a share", {"1": 1.0, "%": 0.01}),
    "nm": ("a wavelength", {"nm": 1.0, "µm": 1000.0, "um": 1000.0}),
    "W": ("a power", {"W": 1.0, "kW": 1000.0}),
    "mm/s": ("a speed", {"mm/s": 1.0, "m/s": 1000.0, "mm/min": 1 / 60}),
    "mm/s²": ("an acceleration", {"mm/s²": 1.0, "mm/s2": 1.0, "m/s²": 1000.0, "m/s2": 1000.0}),
    "MPa": ("a pressure", {"MPa": 1.0, "N/mm²": 1.0, "bar": 0.1, "kPa": 1e-3, "Pa": 1e-6}),
    "Pa·s": ("a viscosity", {"Pa·s": 1.0, "Pas": 1.0}),
    "s": ("a time", {"s": 1.0, "ms": 1e-3, "min": 60.0}),
    "°C": ("a temperature", {"°C": 1.0, "C": 1.0}),
}
"""Unit kept -> what kind of number that is, and the units in which it can be written."""


def kind_of(unit: str) -> tuple[str, dict[str, float]]:
    """Kind and units of a unit; one that is not in KINDS can be written in itself only."""
    return KINDS.get(unit, (f"a number in {unit}", {unit: 1.0}))


_WRITTEN = re.compile(r"\s*([-+]?(?:\d+\.?\d*|\.\d+)(?:[eE][-+]?\d+)?)\s*(\S*)\s*")


def in_unit(written: Any, unit: str) -> float:
    """The number in its unit.

    Parameters
    ----------
    written : a number, taken as being in ``unit``, or text with a unit of the same kind
    unit : in which it is kept, usually a key of KINDS

    Raises
    ------
    ValueError
        with a sentence that goes behind the name of the setting, such as "must be a length, ..."
    """
    kind, factors = kind_of(unit)
    known = ", ".join(name for name in factors if name not in ("1", '"'))
    if isinstance(written, bool) or not isinstance(written, int | float | str):
        raise ValueError(f"must be {kind}, such as {_example(unit)}; got {_shown(written)}")
    if isinstance(written, str):
        match = _WRITTEN.fullmatch(written)
        if match is None:
            raise ValueError(f"must be {kind}, such as {_example(unit)}; got {_shown(written)}")
        number, suffix = float(match[1]), match[2]
        if suffix not in ("", *factors):
            other = next((k for k, f in KINDS.values() if suffix in f), "")
            what = f"{written!r} is {other}" if other else f"the unit {suffix!r} is not known"
            raise ValueError(f"must be {kind} ({known}); {what}")
        value = number * factors.get(suffix, 1.0)
    else:
        try:
            value = float(written)
        except OverflowError:  # a whole number of hundreds of digits
            value = math.inf
    if not math.isfinite(value):
        raise ValueError(f"must be a finite number; got {_shown(written)[:80]}")
    return value


def _example(unit: str) -> str:
    return {
        "mm": '0.5 or "0.5 mm"',
        "mm²": '0.8 or "0.8 mm²"',
        "mm³": '50 or "50 mm³"',
        "°": '2 or "2 deg"',
        "%": '28 or "28 %"',
        "K": '300 or "300 K"',
        "1": '0.1 or "10 %"',
    }.get(unit, f'2 or "2 {unit}"')


def other_reading(value: float, unit: str, least: float, most: float) -> str:
    """A hint for a bare number out of its range that would lie in it in another unit; '' where none does."""
    for name, factor in kind_of(unit)[1].items():
        if factor != 1.0 and least <= value * factor <= most:
            return f' If {value:g} {name} is meant, write "{value:g} {name}".'
    return ""


def _shown(written: Any) -> str:
    if isinstance(written, bool):
        return {True: "true", False: "false"}[written]
    if isinstance(written, int) and abs(written) >= 10**40:
        return "a number of more than 40 digits"
    text = repr(written)
    return text if len(text) <= 80 else f"{text[:76]} ..."


def shown(value: float, unit: str, decimals: int = 3) -> str:
    """A value for people: rounded, without trailing zeros beyond two decimals, with its unit.

    In a report the value is converted into its unit of length and written with its decimal sign (voice.py).
    """
    value, unit, decimals = in_voice(value, unit, decimals)
    text = f"{value:.{decimals}f}"
    if float(text) == 0:
        text = text.lstrip("-")
    while "." in text and len(text.partition(".")[2]) > 2 and text.endswith("0"):
        text = text[:-1]
    text = localised(text)
    return text if unit in ("1", "") else f"{text}{unit}" if unit == "°" else f"{text} {unit}"
