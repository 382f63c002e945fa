"""What a review was given, each with its origin: the numbers on which most results depend."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from typing import Any

from seamcheck.catalogue.quantities import QUANTITIES
from seamcheck.catalogue.units import shown
from seamcheck.catalogue.voice import in_voice, localised, tr, voice
from seamcheck.report.language import quantity_title, term
from seamcheck.settings.declared import tolerance

_NOT_BOTH_WAYS = ("flatness_cover", "flatness_rib", "flattened", "cpk")

Document = Mapping[str, Any]
Row = tuple[str, str, str]
"""Title, value with unit, origin."""


def origin_word(origin: str) -> str:
    """Where a number comes from, in the language of the report."""
    words = {
        "default": tr("default"),
        "file": tr("settings file"),
        "option": tr("command line"),
        "model": tr("from the model"),
    }
    return words.get(origin, origin)


def input_rows(document: Document) -> list[Row]:
    """All inputs of a review document, those that are always there first."""
    settings = document.get("settings") or {}
    return [
        *_numbers(settings),
        *_scanner(settings),
        *_clamp(settings),
        *_load(settings),
        *_tolerances(settings),
        *_material(document),
    ]


def _origin(settings: Mapping[str, Any], *keys: str) -> str:
    origins = settings.get("from") or {}
    found = next((origins[key] for key in keys if key in origins), "default")
    return origin_word(str(found))


def _numbers_told() -> tuple[tuple[str, str, str], ...]:
    return (
        ("collapse", tr("planned collapse"), "collapse_mm"),
        ("intended-stop", tr("intended stop"), "intended_stop_mm"),
        ("second-collapse", tr("planned second collapse"), "second_collapse_mm"),
        ("beam-margin", tr("margin of the beam beside the rib"), "beam_margin_mm"),
        ("lateral-play", tr("lateral play of the cover"), "lateral_play_mm"),
        ("station-spacing", tr("spacing of the stations"), "station_spacing_mm"),
    )


def _numbers(settings: Mapping[str, Any]) -> Iterator[Row]:
    for key, title, name in _numbers_told():
        value = settings.get(name)
        if isinstance(value, int | float) and (value or key in ("collapse", "beam-margin")):
            yield title, shown(value, "mm"), _origin(settings, key)
    if settings.get("file"):
        yield tr("settings file"), str(settings["file"]), ""
    for key, title in (("cover", tr("cover named")), ("base", tr("base named"))):
        if settings.get(key):
            yield title, str(settings[key]), _origin(settings, key)
    if settings.get("beam"):
        yield tr("beam direction"), _components(settings["beam"]), _origin(settings, "beam")


def _components(vector: Sequence[float]) -> str:
    return ("; " if voice().language != "en" else ", ").join(_plain(c) for c in vector)


def _plain(value: float, unit: str = "") -> str:
    """A number as it was given, converted where the report writes other units, or smaller numbers."""
    if unit == "mm/s²":
        value, unit = value / 1000.0, "m/s²"
    value, unit, decimals = in_voice(value, unit, 6)
    return f"{localised(f'{round(value, decimals):g}')}{f' {unit}' if unit else ''}"


def _scanner(settings: Mapping[str, Any]) -> Iterator[Row]:
    scanner = settings.get("scanner")
    if not scanner:
        yield tr("scanner"), tr("none given: beam taken as parallel"), ""
        return
    origin = _origin(settings, "scanner")
    distance = scanner.get("distance")
    where = tr("telecentric") if distance is None else tr("{way} from pivot to cover", way=_plain(distance, "mm"))
    axis = scanner.get("axis")
    yield tr("scanner"), where, origin
    yield tr("axis of the scanner"), tr("over the middle of the seam") if not axis else _components(axis), origin
    yield tr("half-angle of the beam's cone"), f"{_plain(scanner.get('half_angle') or 0)}°", origin
    sources = {"material": tr("of the cover's material"), "assumption": tr("assumption")}
    source = sources.get(scanner.get("index_from", ""), origin)
    yield tr("refractive index of the cover"), _plain(scanner.get("index") or 0), source


def _clamp(settings: Mapping[str, Any]) -> Iterator[Row]:
    clamp = settings.get("clamp") or {}
    sides = (("height", tr("height")), ("reach", tr("reach")), ("width", tr("width")))
    known = [f"{word} {_plain(clamp[name], 'mm')}" for name, word in sides if clamp.get(name) is not None]
    if known:
        yield tr("clamp tool"), "; ".join(known), _origin(settings, "clamp")
    if clamp.get("pressure") is not None:
        yield tr("clamp pressure"), _plain(clamp["pressure"], "MPa"), _origin(settings, "clamp")


def _load(settings: Mapping[str, Any]) -> Iterator[Row]:
    load = settings.get("load") or {}
    values = {key: load.get(key) for key in ("pressure", "force", "strength", "weld_factor")}
    told = {
        "pressure": tr("{pressure} inside", pressure=_plain(values["pressure"] or 0.0, "MPa")),
        "force": tr("{force} on the cover", force=_plain(values["force"] or 0.0, "N")),
        "strength": tr("strength {strength}", strength=_plain(values["strength"] or 0.0, "MPa")),
        "weld_factor": tr("weld factor {factor}", factor=_plain(values["weld_factor"] or 0.0)),
    }
    known = [text for key, text in told.items() if values[key] is not None]
    if known:
        yield tr("load"), "; ".join(known), _origin(settings, "load")


def _tolerances(settings: Mapping[str, Any]) -> Iterator[Row]:
    tolerances = settings.get("tolerances") or {}
    if not tolerances:
        yield tr("tolerances"), tr("none given: judged at nominal dimensions"), ""
    for key, value in tolerances.items():
        entry = tolerance(key)
        named = tr("tolerance of {quantity}", quantity=quantity_title(key))
        text = shown(value, entry.unit if entry else "mm") if isinstance(value, int | float) else str(value)
        yield (
            named if key in QUANTITIES else term("tolerance", key),
            text if key in _NOT_BOTH_WAYS else f"±{text}",
            _origin(settings, f"tolerance.{key}", "tolerance"),
        )


def _material(document: Document) -> Iterator[Row]:
    told: set[Row] = set()
    for joint in document.get("joints") or ():
        given = (joint.get("material") or {}).get("settings") or {}
        for row in _material_rows(given):
            if row not in told:
                told.add(row)
                yield row
    if not told:
        yield tr("materials"), tr("none named: transmission and pairing not evaluated"), ""


def _material_rows(given: Mapping[str, Any]) -> Iterator[Row]:
    for role, title in (("cover", tr("material of the cover")), ("base", tr("material of the base"))):
        if given.get(role):
            yield title, str(given[role].get("name") or given[role].get("polymer") or ""), tr("settings file")
    for plaque in given.get("plaques") or ():
        title = tr("plaque of {thickness}", thickness=_plain(plaque["thickness_mm"], "mm"))
        yield title, tr("{percent} % transmission", percent=_plain(plaque["percent"])), tr("settings file")
    for key, known in (given.get("numbers") or {}).items():
        if known.get("standing") == "given" and not key.startswith("tolerance."):  # those have rows of their own
            unit = "" if known.get("unit") in ("1", None) else known["unit"]
            yield term("number", key), _plain(known["value"], unit), tr("settings file")


def in_one_line(document: Document) -> str:
    """What weighs most, in one line: 'collapse 0.40 mm (default); beam parallel, no scanner given; ...'."""
    settings = document.get("settings") or {}
    scanner = settings.get("scanner")
    joints = document.get("joints") or ()
    named = [j["material"]["settings"] for j in joints if (j.get("material") or {}).get("settings")]
    unnamed = tr("not named")
    pair = [str((named[0].get(role) or {}).get("name") or unnamed) for role in ("cover", "base")] if named else []
    collapse, origin = shown(settings.get("collapse_mm") or 0.0, "mm"), _origin(settings, "collapse")
    said = [
        tr("collapse {collapse} ({origin})", collapse=collapse, origin=origin),
        tr("beam parallel (no scanner given)")
        if not scanner
        else tr("scanner {where}", where=next(_scanner(settings))[1]),
        tr("dimensions with tolerances") if settings.get("tolerances") else tr("nominal dimensions"),
        tr("{cover} on {base}", cover=pair[0], base=pair[1]) if pair else tr("no materials named"),
    ]
    if settings.get("file"):
        said.append(tr("settings from {file}", file=settings["file"]))
    return "; ".join(said)
