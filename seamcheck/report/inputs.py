"""What a review was given, each with its origin: the numbers on which most results depend."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from typing import Any

from seamcheck.catalogue.quantities import QUANTITIES
from seamcheck.catalogue.units import shown

Document = Mapping[str, Any]
Row = tuple[str, str, str]
"""Title, value with unit, origin."""

ORIGINS = {"default": "default", "file": "settings file", "option": "command line"}


def input_rows(document: Document) -> list[Row]:
    """All inputs of a review document, those that are always there first."""
    settings = document.get("settings") or {}
    return [*_numbers(settings), *_scanner(settings), *_clamp(settings), *_tolerances(settings), *_material(document)]


def _origin(settings: Mapping[str, Any], *keys: str) -> str:
    origins = settings.get("from") or {}
    found = next((origins[key] for key in keys if key in origins), "default")
    return ORIGINS.get(found, str(found))


_NUMBERS = (
    ("collapse", "planned collapse", "collapse_mm"),
    ("intended-stop", "intended stop", "intended_stop_mm"),
    ("beam-margin", "margin of the beam beside the rib", "beam_margin_mm"),
    ("lateral-play", "lateral play of the cover", "lateral_play_mm"),
    ("station-spacing", "spacing of the stations", "station_spacing_mm"),
)


def _numbers(settings: Mapping[str, Any]) -> Iterator[Row]:
    for key, title, name in _NUMBERS:
        value = settings.get(name)
        if isinstance(value, int | float) and (value or key in ("collapse", "beam-margin")):
            yield title, shown(value, "mm"), _origin(settings, key)
    if settings.get("file"):
        yield "settings file", str(settings["file"]), ""
    for key in ("cover", "base"):
        if settings.get(key):
            yield f"{key} named", str(settings[key]), _origin(settings, key)
    if settings.get("beam"):
        yield "beam direction", ", ".join(f"{c:g}" for c in settings["beam"]), _origin(settings, "beam")


def _scanner(settings: Mapping[str, Any]) -> Iterator[Row]:
    scanner = settings.get("scanner")
    if not scanner:
        yield "scanner", "none given: light taken as parallel to the beam direction", ""
        return
    origin = _origin(settings, "scanner")
    distance = scanner.get("distance")
    where = "telecentric" if distance is None else f"{distance:g} mm from pivot to cover"
    axis = scanner.get("axis")
    yield "scanner", where, origin
    yield (
        "axis of the scanner",
        "over the middle of the seam" if not axis else ", ".join(f"{c:g}" for c in axis),
        origin,
    )
    yield "half-angle of the beam's cone", f"{scanner.get('half_angle') or 0:g}°", origin
    sources = {"material": "of the cover's material", "assumption": "assumption"}
    source = sources.get(scanner.get("index_from", ""), origin)
    yield "refractive index of the cover", f"{scanner.get('index'):g}", source


def _clamp(settings: Mapping[str, Any]) -> Iterator[Row]:
    clamp = settings.get("clamp") or {}
    known = [f"{name} {clamp[name]:g} mm" for name in ("height", "reach", "width") if clamp.get(name) is not None]
    if known:
        yield "clamp tool", ", ".join(known), _origin(settings, "clamp")
    if clamp.get("pressure") is not None:
        yield "clamp pressure", f"{clamp['pressure']:g} MPa", _origin(settings, "clamp")


def _tolerances(settings: Mapping[str, Any]) -> Iterator[Row]:
    tolerances = settings.get("tolerances") or {}
    if not tolerances:
        yield "tolerances", "none given: judged at nominal dimensions", ""
    for key, value in tolerances.items():
        title = QUANTITIES[key].title if key in QUANTITIES else key.replace("_", " ")
        unit = QUANTITIES[key].unit if key in QUANTITIES else "mm"
        yield (
            f"tolerance of {title}",
            f"±{shown(value, unit)}" if isinstance(value, int | float) else str(value),
            _origin(settings, "tolerance"),
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
        yield "materials", "none named: transmission and pairing not evaluated", ""


def _material_rows(given: Mapping[str, Any]) -> Iterator[Row]:
    for role in ("cover", "base"):
        if given.get(role):
            yield (
                f"material of the {role}",
                str(given[role].get("name") or given[role].get("polymer") or ""),
                "settings file",
            )
    for plaque in given.get("plaques") or ():
        yield f"plaque of {plaque['thickness_mm']:g} mm", f"{plaque['percent']:g} % transmission", "settings file"
    for key, known in (given.get("numbers") or {}).items():
        if known.get("standing") == "given":
            unit = "" if known.get("unit") in ("1", None) else f" {known['unit']}"
            yield key.replace(".", ", ").replace("_", " "), f"{known['value']:g}{unit}", "settings file"


def in_one_line(document: Document) -> str:
    """What weighs most, in one line: 'collapse 0.40 mm (default); light parallel, no scanner given; ...'."""
    settings = document.get("settings") or {}
    scanner = settings.get("scanner")
    joints = document.get("joints") or ()
    named = [j["material"]["settings"] for j in joints if (j.get("material") or {}).get("settings")]
    pair = [str((named[0].get(role) or {}).get("name") or "not named") for role in ("cover", "base")] if named else []
    said = [
        f"collapse {shown(settings.get('collapse_mm') or 0.0, 'mm')} ({_origin(settings, 'collapse')})",
        "light parallel (no scanner given)" if not scanner else f"scanner {next(_scanner(settings))[1]}",
        "dimensions with tolerances" if settings.get("tolerances") else "nominal dimensions",
        f"{pair[0]} on {pair[1]}" if pair else "no materials named",
    ]
    if settings.get("file"):
        said.append(f"settings from {settings['file']}")
    return "; ".join(said)
