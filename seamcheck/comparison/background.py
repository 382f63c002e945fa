"""What both reviews went by, and what they were of: settings, limits, parts, roles, materials."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Mapping
from typing import Any

from seamcheck.catalogue.say import say
from seamcheck.settings.declared import NUMBERS

Document = Mapping[str, Any]
Record = dict[str, Any]

_NOT_A_SETTING = ("file", "from")


def limit_differences(old: Document, new: Document) -> list[Record]:
    """Limits and severities that differ, in the order of the new review."""
    before = {(e["rule"], e["name"]): e for e in old["limits"]}
    after = {(e["rule"], e["name"]): e for e in new["limits"]}
    result: list[Record] = []
    severities: set[str] = set()
    for rule, name in dict.fromkeys([*after, *before]):
        a, b = before.get((rule, name)), after.get((rule, name))
        some = b or a
        assert some is not None
        if name is not None and _differ(a and a["value"], b and b["value"]):
            result.append(
                _limit(rule, some["title"], name, a and a["value"], b and b["value"], some["unit"], bool(a), bool(b))
            )
        was, now = (e["severity"] if e else "not judged" for e in (a, b))
        if was != now and rule not in severities:
            severities.add(rule)
            result.append(_limit(rule, some["title"], "severity", was, now, "", bool(a), bool(b)))
    return result


def _limit(rule: str, title: str, name: str, old: Any, new: Any, unit: str, is_old: bool, is_new: bool) -> Record:
    return {
        "rule": rule, "title": title, "name": name, "old": old, "new": new, "unit": unit,
        "judged_old": is_old, "judged_new": is_new,
    }  # fmt: skip


def setting_differences(old: Document, new: Document) -> list[Record]:
    """Settings that differ, by their keys ('collapse_mm', 'scanner.height' ...)."""
    before, after = (_flat(document["settings"]) for document in (old, new))
    return [
        {"key": key, "title": _setting_title(key), "old": before.get(key), "new": after.get(key)}
        for key in dict.fromkeys([*after, *before])
        if key.partition(".")[0] not in _NOT_A_SETTING and _differ(before.get(key), after.get(key))
    ]


def _setting_title(key: str) -> str:
    name = key.removesuffix("_mm").replace("_", "-")
    return NUMBERS[name].what if name in NUMBERS else key.replace("_", " ").replace(".", ", ")


def _flat(value: Any, key: str = "") -> dict[str, Any]:
    """{'scanner.height': 300.0} of nested mappings; lists of plain values stay whole."""
    if isinstance(value, Mapping):
        return {k: v for name, item in value.items() for k, v in _flat(item, f"{key}.{name}" if key else name).items()}
    if isinstance(value, list) and any(isinstance(item, Mapping) for item in value):
        return {k: v for i, item in enumerate(value, 1) for k, v in _flat(item, f"{key}.{i}").items()}
    return {key: value}


def _differ(a: Any, b: Any) -> bool:
    """Whether two plain values differ by more than the rounding of a document."""
    if isinstance(a, int | float) and isinstance(b, int | float) and not isinstance(a, bool):
        return abs(a - b) > 1e-6 * max(1.0, abs(a), abs(b))
    if isinstance(a, list) and isinstance(b, list) and len(a) == len(b):
        return any(_differ(x, y) for x, y in zip(a, b, strict=True))
    return bool(a != b)


def part_differences(old: Document, new: Document) -> Record:
    """Parts by their names, which both files give: renamed roles, parts added and removed, other face counts."""
    before, after = (document["model"]["parts"] for document in (old, new))
    renamed = list(_renamed(before, after))
    told = Counter(r["old"] for r in renamed), Counter(r["new"] for r in renamed)
    gone = Counter(p["name"] for p in before) - Counter(p["name"] for p in after) - told[0]
    come = Counter(p["name"] for p in after) - Counter(p["name"] for p in before) - told[1]
    return {
        "renamed": renamed,
        "roles": list(_roles(before, after)),
        "added": sorted(come.elements()),
        "removed": sorted(gone.elements()),
        "faces": list(_faces(before, after)),
    }


def _renamed(before: list[Record], after: list[Record]) -> Iterator[Record]:
    """A role held by one part on both sides under different names, neither of which the other model has."""
    for role in ("cover", "base"):
        old, new = ([p["name"] for p in parts if role in p["role"].split(" and ")] for parts in (before, after))
        gone, come = Counter(old) - Counter(new), Counter(new) - Counter(old)
        others = {p["name"] for p in after}, {p["name"] for p in before}
        a = [name for name in gone.elements() if name not in others[0]]
        b = [name for name in come.elements() if name not in others[1]]
        if len(a) == len(b) == 1:
            yield {"role": role, "old": a[0], "new": b[0]}


def _roles(before: list[Record], after: list[Record]) -> Iterator[Record]:
    """Parts that both models have once, in another role now."""
    old, new = (_only_ones(parts) for parts in (before, after))
    for name in old:
        if name in new and old[name]["role"] != new[name]["role"]:
            yield {"name": name, "old": old[name]["role"], "new": new[name]["role"]}


def _faces(before: list[Record], after: list[Record]) -> Iterator[Record]:
    old, new = (_only_ones(parts) for parts in (before, after))
    for name in old:
        if name in new and old[name]["faces"] != new[name]["faces"]:
            yield {"name": name, "old": old[name]["faces"], "new": new[name]["faces"]}


def _only_ones(parts: list[Record]) -> dict[str, Record]:
    count = Counter(p["name"] for p in parts)
    return {p["name"]: p for p in parts if count[p["name"]] == 1}


def warnings(old: Document, new: Document, limits: list[Record], settings: list[Record]) -> list[str]:
    """Sentences about what keeps the comparison from being like with like."""
    said: list[str] = []
    if old["seamcheck"] != new["seamcheck"]:
        said.append(say("compare.versions", old=old["seamcheck"], new=new["seamcheck"]))
    if settings or limits:
        said.append(say("compare.settings", count=len(settings) + len(limits)))
    return said


def rule_is_on(document: Document, rule: str) -> bool:
    """Whether a review judged a rule."""
    entries = [e for e in document["limits"] if e["rule"] == rule]
    return bool(entries) and entries[0]["severity"] != "off"
