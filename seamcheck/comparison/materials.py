"""Light, polymers, melt and energy of a joint in two reviews: single values side by side."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from typing import Any

from seamcheck.catalogue.material_results import RESULTS
from seamcheck.catalogue.say import say
from seamcheck.comparison.background import _differ, _flat

Section = Mapping[str, Any]
Record = dict[str, Any]

SHARE = 0.005
"""Of a value: computed values of materials that differ by less are the same."""


def material_differences(old: Section | None, new: Section | None) -> list[Record]:
    """What differs between two "material" sections: inputs first, then results.

    Parameters
    ----------
    old, new : the joints' sections; None where a review names no material

    Returns
    -------
    records with "kind" ('input' or 'result'), "title", "unit", "old", "new"; None where one side has no such value
    """
    if old is None and new is None:
        return []
    before, after = (_values(section) for section in (old or {}, new or {}))
    result = []
    for key in dict.fromkeys([*after, *before]):
        a, b = before.get(key), after.get(key)
        some = b or a
        assert some is not None
        values = (a["value"] if a else None, b["value"] if b else None)
        if _changed(*values):
            result.append(
                {"kind": some["kind"], "title": some["title"], "unit": some["unit"], "old": values[0], "new": values[1]}
            )
    return sorted(result, key=lambda record: record["kind"] != "input")


def _changed(a: Any, b: Any) -> bool:
    if isinstance(a, float | int) and isinstance(b, float | int):
        return abs(a - b) > SHARE * max(abs(a), abs(b), 1e-9)
    return _differ(a, b)


def _values(section: Section) -> dict[str, Record]:
    """Key -> {"kind", "title", "unit", "value"}."""
    return {key: record for part in (_inputs, _pair, _light, _melt, _window, _energy) for key, record in part(section)}


def _record(kind: str, title: str, unit: str, value: Any) -> Record:
    return {"kind": kind, "title": title, "unit": "" if unit == "1" else unit, "value": value}


def _inputs(section: Section) -> Iterator[tuple[str, Record]]:
    settings = section.get("settings") or {}
    for part in ("cover", "base"):
        for key, value in _flat(settings.get(part) or {}).items():
            if not key.endswith("standing"):
                yield f"input.{part}.{key}", _record("input", f"{part}, {key.replace('_', ' ')}", "", value)
    plaques = settings.get("plaques") or []
    if plaques:
        words = ", ".join(f"{p['thickness_mm']:g} mm: {p['percent']:g} %" for p in plaques)
        yield "input.plaques", _record("input", say("compare.plaques"), "", words)
    for key, entry in (settings.get("numbers") or {}).items():
        title = key.replace(".", ", ").replace("_", " ")
        yield f"input.{key}", _record("input", title, str(entry.get("unit") or ""), entry.get("value"))


def _pair(section: Section) -> Iterator[tuple[str, Record]]:
    pair = section.get("pair")
    if pair:
        yield "pair", _record("result", say("compare.pair"), "", pair["verdict"])


def _light(section: Section) -> Iterator[tuple[str, Record]]:
    light = section.get("transmission")
    if not light:
        return
    yield "light.28", _record("result", say("compare.cover-28"), "mm", light["limit_path_28_mm"])
    # contours are numbered anew in every review, so the seam's least and most are compared
    least = [c["least_percent"] for c in light["contours"] if c["least_percent"] is not None]
    most = [c["most_percent"] for c in light["contours"] if c["most_percent"] is not None]
    yield "light.least", _record("result", say("compare.least"), "%", min(least, default=None))
    yield "light.most", _record("result", say("compare.most"), "%", max(most, default=None))


def _melt(section: Section) -> Iterator[tuple[str, Record]]:
    melt = section.get("melt")
    if not melt:
        return
    yield "melt.expansion", _record("result", say("compare.expansion"), "", (melt["expansion"] or {}).get("value"))
    for side in ("inner", "outer"):
        for what in ("melt", "trap"):
            values = [c[f"{what}_volume_{side}_mm3"] for c in melt["contours"]]
            known = [v for v in values if v is not None]
            total = sum(known) if known and len(known) == len(values) else None
            yield f"melt.{what}.{side}", _record("result", say(f"compare.{what}-{side}"), "mm³", total)
    for key in ("trap_fill", "trap_fill_inner", "trap_fill_outer"):
        fills = [(c[key] or {}).get("most") for c in melt["contours"]]
        yield (
            f"melt.{key}",
            _record("result", say(f"compare.{key}"), "", max((f for f in fills if f is not None), default=None)),
        )


def _window(section: Section) -> Iterator[tuple[str, Record]]:
    window = section.get("window")
    if not window:
        return
    for key in ("lowest", "highest"):
        yield f"window.{key}", _record("result", say(f"compare.{key}"), "mm", (window[key] or {}).get("value_mm"))
    yield "window.place", _record("result", say("compare.window"), "", window["place"])


def _energy(section: Section) -> Iterator[tuple[str, Record]]:
    for entry in (section.get("energy") or {}).get("results", ()):
        yield f"energy.{entry['key']}", _record("result", _title(entry), entry["unit"], entry["value"])
    ranges = section.get("uncertainty") or {}
    for key, share in (ranges.get("shares") or {}).items():
        if isinstance(share, int | float):
            title = say("compare.share", what=f"condition-{key}")
            yield f"share.{key}", _record("result", title, "", share)


def _title(entry: Mapping[str, Any]) -> str:
    """Title of a result, also of one by another version."""
    return say(f"result.{entry['key']}") if entry["key"] in RESULTS else str(entry["title"])
