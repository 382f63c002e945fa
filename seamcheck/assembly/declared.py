"""What a STEP file declares about itself: schema and length unit, read from its text."""

from __future__ import annotations

import math
import re

from msgspec import Struct

from seamcheck.assembly.text import StepText, without_strings
from seamcheck.catalogue.say import Value, say

_SCHEMA = re.compile(rb"FILE_SCHEMA\s*\(\s*\(\s*'([^'{]*)")
_CONTEXT = re.compile(rb"GLOBAL_UNIT_ASSIGNED_CONTEXT\s*\(\s*\(([^)]*)\)")
_SI_METRE = re.compile(rb"SI_UNIT\s*\(\s*(\$|\.[A-Z]+\.)\s*,\s*\.METRE\.\s*\)")
_NUMBER = re.compile(rb"(?<=\()\s*[-+]?\d+\.?\d*(?:[Ee][-+]?\d+)?")
_UNCERTAINTY = re.compile(rb"\(\s*LENGTH_MEASURE\s*\(\s*([-+]?\d+\.?\d*(?:[Ee][-+]?\d+)?)\s*\)")
_CONVERSION_RECORD = re.compile(rb"CONVERSION_BASED_UNIT\s*\(\s*'[^']*'\s*,\s*#\d+\s*\)")
_CONVERSION = re.compile(rb"CONVERSION_BASED_UNIT\s*\(\s*'([^']*)'")

# ISO 10303-41 si_prefix, in millimetres for one prefixed metre
_PREFIXES = {
    b"$": ("metre", 1e3), b".MILLI.": ("millimetre", 1.0), b".CENTI.": ("centimetre", 10.0),
    b".DECI.": ("decimetre", 100.0), b".MICRO.": ("micrometre", 1e-3), b".NANO.": ("nanometre", 1e-6),
    b".KILO.": ("kilometre", 1e6),
}  # fmt: skip

# international yard and pound agreement of 1959: 1 yard = 0.9144 m
_NAMED = {
    "inch": ("inch", 25.4), "in": ("inch", 25.4), "foot": ("foot", 304.8), "feet": ("foot", 304.8),
    "ft": ("foot", 304.8), "mil": ("mil", 0.0254), "yard": ("yard", 914.4), "millimetre": ("millimetre", 1.0),
    "mm": ("millimetre", 1.0), "metre": ("metre", 1000.0), "meter": ("metre", 1000.0),
    "millimeter": ("millimetre", 1.0), "centimetre": ("centimetre", 10.0), "centimeter": ("centimetre", 10.0),
}  # fmt: skip


class LengthUnit(Struct, frozen=True):
    """A length unit: its name, '' where the file declares none, and its size in mm."""

    name: str
    mm: float


UNDECLARED = LengthUnit("", 1.0)
_KNOWN = tuple(dict.fromkeys(LengthUnit(*unit) for unit in (*_NAMED.values(), *_PREFIXES.values())))


def step_schema(text: StepText) -> str:
    """The first schema that the header names, such as 'AUTOMOTIVE_DESIGN', or ''."""
    found = _SCHEMA.search(text.data, 0, 100_000)
    return found[1].decode("utf-8", "replace").strip() if found else ""


def length_units(text: StepText) -> list[LengthUnit]:
    """The length units of the contexts of the geometry, most used first; the one without a name stands for
    contexts that declare none. Empty where there is no such context."""
    counts: dict[LengthUnit, int] = {}
    for context in _CONTEXT.finditer(text.data):
        declared = [length_unit(text, text.record(number)) for number in text.references(context[1])]
        found = next((unit for unit in declared if unit is not None), UNDECLARED)
        counts[found] = counts.get(found, 0) + 1
    return sorted(counts, key=lambda unit: (not unit.name, -counts[unit]))


_NO_PLAIN_SOLIDS = (b"OPEN_SHELL", b"BREP_WITH_VOIDS", b"SHELL_BASED_SURFACE_MODEL")


def holds_plain_solids(text: StepText) -> bool:
    """Whether a file lists neither sheets nor solids of several shells (ISO 10303-42)."""
    return all(next(text.records_of(keyword), None) is None for keyword in _NO_PLAIN_SOLIDS)


def uncertainty(text: StepText, unit: LengthUnit) -> float | None:
    """The uncertainty of lengths (ISO 10303-42) in mm; None unless the file states one, and one only."""
    records = [text.record_at(offset) for _, offset in text.records_of(b"UNCERTAINTY_MEASURE_WITH_UNIT")]
    found = [_UNCERTAINTY.search(record) for record in records]
    stated = {None if number is None else float(number[1]) for number in found}
    value = stated.pop() if len(stated) == 1 else None
    return value * unit.mm if value is not None and value > 0.0 and math.isfinite(unit.mm) else None


def unit_notes(name: str, units: list[LengthUnit]) -> list[str]:
    """What is odd about the length units of a file; empty where all contexts declare the same."""
    if not any(unit.name for unit in units):
        return [say("file.no-unit", file=repr(name))]
    if UNDECLARED in units:
        return [say("file.no-unit-partly", file=repr(name))]
    if len(units) > 1:
        return [say("file.units", file=repr(name), units=", ".join(unit.name for unit in units))]
    return []


def damaged_units(name: str, text: StepText) -> list[str]:
    """A sentence on length units that are declared by other units, such as inches, and wrongly; if any."""
    for number, offset in text.records_of(b"CONVERSION_BASED_UNIT"):
        record = text.record_at(offset)
        unit = length_unit(text, record)
        if unit is None or math.isnan(unit.mm):
            continue
        stated = _stated_mm(text, record)
        whole = _CONVERSION_RECORD.search(record) is not None
        if not whole or stated is None or abs(stated - unit.mm) > 1e-3 * unit.mm:
            where: dict[str, Value] = {"record": f"#{number}", "line": text.line(offset)}
            return [say("file.unit-damaged", file=repr(name), unit=unit.name, **where)]
    return []


def misnamed_units(name: str, text: StepText) -> list[str]:
    """A sentence on a length unit whose name is that of another one than it is defined by; if any."""
    for number, offset in text.records_of(b"CONVERSION_BASED_UNIT"):
        record = text.record_at(offset)
        unit, called = length_unit(text, record), _called(record)
        if unit is not None and called is not None and math.isfinite(called.mm) and unit != called:
            where: dict[str, Value] = {"record": f"#{number}", "line": text.line(offset)}
            return [say("file.unit-misnamed", file=repr(name), called=called.name, unit=unit.name, **where)]
    return []


def _stated_mm(text: StepText, record: bytes) -> float | None:
    """Size in mm by which a record defines its unit; None where it states none."""
    sizes = (_size_mm(text, text.record(other)) for other in text.references(record))
    return next((size for size in sizes if size is not None), None)


def _size_mm(text: StepText, record: bytes) -> float | None:
    """Size in mm of a LENGTH_MEASURE_WITH_UNIT (ISO 10303-41); None for anything else."""
    if b"MEASURE_WITH_UNIT" not in record:
        return None
    number = _NUMBER.search(without_strings(record))
    units = [_declared(text.record(other)) for other in text.references(record)]
    if number is None or not units or units[0] is None:
        return None
    return float(number[0]) * units[0].mm


def length_unit(text: StepText, record: bytes) -> LengthUnit | None:
    """The length unit that a record declares; NaN mm for one that is not known, None where it declares none.

    A unit that is defined by another one is what its conversion factor says (ISO 10303-41), whatever it is called, as
    long as that is the size of some known unit: some writers call the millimetre 'METRE'.
    """
    stated = None if _called(record) is None else _stated_mm(text, record)
    by_name = _declared(record)
    if stated is None:
        return by_name
    return next((unit for unit in _KNOWN if abs(stated - unit.mm) <= 1e-6 * unit.mm), by_name)


def _declared(record: bytes) -> LengthUnit | None:
    """The length unit of a record by its name alone."""
    metre = _SI_METRE.search(record)
    if metre is None:
        return _called(record)
    name, size = _PREFIXES.get(metre[1], (metre[1].decode().strip(".").lower() + "metre", float("nan")))
    return LengthUnit(name, size)


def _called(record: bytes) -> LengthUnit | None:
    """The unit that a conversion based unit has the name of; NaN mm for one not known, None for anything else."""
    named = _CONVERSION.search(record)
    if named is None or b"LENGTH_UNIT" not in record:
        return None
    word = named[1].decode("utf-8", "replace").strip().lower()
    known = _NAMED.get(word.removesuffix("es") if word == "inches" else word)
    return LengthUnit(*known) if known else LengthUnit(word, float("nan"))
