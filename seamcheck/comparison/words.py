"""Sentences that every report of a comparison uses, made from its document."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from typing import Any

from seamcheck.catalogue.quantities import QUANTITIES, REASONS
from seamcheck.catalogue.units import shown
from seamcheck.comparison.along import LOST, MEASURED
from seamcheck.comparison.reasons import HOW

Document = Mapping[str, Any]
Record = Mapping[str, Any]

OUTCOMES = {
    "not-worse": "Nothing is worse",
    "worse": "Worse than before",
    "not-compared": "Not compared",
}
STATES = {"worse": "worse", "same": "as before", "better": "better"}


def outcome_words(document: Document) -> str:
    """The outcome in a few words."""
    if document["identical"]:
        return "No difference"
    return OUTCOMES[document["outcome"]]


def headline(document: Document) -> str:
    """What the outcome rests on, in one sentence."""
    if document["outcome"] == "not-compared":
        return str(document["reason"])
    if document["identical"]:
        return "Nothing differs by more than the measuring error."
    found = document["findings"]
    said = [
        _count(found["new"], "is new", "are new"),
        _count([e for e in found["remaining"] if e["state"] == "worse"], "is worse", "are worse"),
        _count([e for e in found["remaining"] if e["state"] == "better"], "is better", "are better"),
        _count([e for e in found["remaining"] if e["state"] == "same"], "stays", "stay"),
        _count(found["fixed"], "is fixed", "are fixed"),
        _count(found["dropped"], "is no longer reported", "are no longer reported"),
    ]
    parts = [part for part in said if part]
    if not parts:
        return "Neither review has a finding."
    return f"{', '.join(parts)}."


def _count(entries: list[Record], one: str, many: str) -> str:
    """'2 findings (1 must-fix) are new'; '' for none."""
    if not entries:
        return ""
    must = sum((e.get("new") or e["old"])["severity"] == "must-fix" for e in entries)
    all_of_them = "must-fix " if must == len(entries) else ""
    some = f" ({must} must-fix)" if 0 < must < len(entries) else ""
    if len(entries) == 1:
        return f"1 {all_of_them}finding{some} {one}"
    return f"{len(entries)} {all_of_them}findings{some} {many}"


def amount(value: float | None, key: str) -> str:
    """A value with its unit; 'not measured' without."""
    if value is None:
        return "not measured"
    if key.startswith("trap_open"):
        return "open" if value else "closed"
    if key not in QUANTITIES:
        return shown(value, "")
    return shown(value, QUANTITIES[key].unit, QUANTITIES[key].decimals)


def difference(by: float | None, key: str) -> str:
    """'+0.30 mm'; '' where there is none."""
    if by is None or key.startswith("trap_open"):
        return ""
    text = amount(abs(by), key)
    return f"{'+' if by >= 0 else '−'}{text}"


def place(at: Any) -> str:
    """'(1.00, 2.00, 3.00)'."""
    return "" if at is None else f"({', '.join(shown(c, '', 2) for c in at)})"


def stretch(entry: Record) -> str:
    """'c1, s = 10.0 to 14.0 mm (4.0 mm long)', or 'all of c1'."""
    if entry.get("is_whole"):
        return f"all of {entry['contour']}"
    if entry["from_s"] is None:
        return str(entry["contour"] or "")
    start, end = entry["from_s"], entry["to_s"]
    span = f"{start:.1f}" if start == end else f"{start:.1f} to {end:.1f}"
    return f"{entry['contour']}, s = {span} mm ({entry['length_mm']:.1f} mm long)"


def change_words(change: Record, key: str) -> str:
    """'1.20 mm -> 1.50 mm, +0.30 mm'."""
    if change["kind"] == MEASURED:
        why = _why(change["old_why"])
        return f"measured now: {amount(change['new'], key)} (before: {why})"
    if change["kind"] == LOST:
        return f"no longer measured: {_why(change['new_why'])} (before: {amount(change['old'], key)})"
    old = amount(change["old"], key) if change["old"] is not None else _why(change["old_why"])
    new = amount(change["new"], key) if change["new"] is not None else _why(change["new_why"])
    by = difference(change["by"], key)
    return f"{old} → {new}{', ' if by else ''}{by}"


def _why(code: str | None) -> str:
    """A reason for no value, in few words."""
    if not code:
        return "not measured"
    return REASONS.get(code, code).rstrip(".").lower() if code in ("straight", "free", "broad") else code


def finding_place(finding: Record) -> str:
    """Where a finding lies, in its own model's coordinates."""
    if finding["at"] is None:
        return "along the seam"
    where = place(finding["at"])
    if finding["contour"] is None:
        return where
    return f"{where} on {stretch(finding)}"


def how_words(entry: Record) -> str:
    """Why a finding came or went, with the value on the other side."""
    said = HOW[entry["how"]]
    finding = entry.get("new") or entry["old"]
    other = entry.get("before") if "before" in entry else entry.get("now")
    key = str(finding["column"] or finding["quantity"])
    if other is not None and entry["how"] in ("value", "limit", "limit-follows"):
        was = "before" if "before" in entry else "now"
        return f"{said}: {amount(other, key)} {was}"
    return said


def remaining_words(entry: Record) -> str:
    """'worse: 0.10 mm farther beyond the limit, 2.0 mm longer'."""
    said = []
    key = str(entry["new"]["column"] or entry["new"]["quantity"])
    by = entry["margin_by"]
    if by is not None and abs(by) >= 0.5 * 10.0 ** -(QUANTITIES[key].decimals if key in QUANTITIES else 3):
        said.append(f"{amount(abs(by), key)} {'farther beyond' if by < 0 else 'nearer to'} the limit")
    length = entry["length_by_mm"]
    if length is not None and abs(length) >= 0.05 and entry["new"]["contour"] is not None:
        said.append(f"{abs(length):.1f} mm {'longer' if length > 0 else 'shorter'}")
    if bool(entry["old"]["waived"]) != bool(entry["new"]["waived"]):
        said.append("waived now" if entry["new"]["waived"] else "no longer waived")
    if entry["old"]["severity"] != entry["new"]["severity"]:
        said.append(f"{entry['new']['severity']} now, {entry['old']['severity']} before")
    if entry["merged"]:
        said.append(f"holds {', '.join(entry['merged'])} as well")
    if entry["is_piece"]:
        said.append("a piece of one that was longer")
    return f"{STATES[entry['state']]}{': ' if said else ''}{', '.join(said)}"


def seam_lines(joint: Record) -> Iterator[str]:
    """What moved, as sentences."""
    if joint["old"] is None or joint["new"] is None:
        which = "new model only" if joint["old"] is None else "old model only"
        yield f"This seam is in the {which}: {(joint['length_mm']['new'] or joint['length_mm']['old']):.1f} mm."
        return
    length = joint["length_mm"]
    by = length["by"]
    changed = f", {'+' if by >= 0 else '−'}{abs(by):.2f} mm" if abs(by) >= 0.005 else ", as before"
    yield f"Length {length['old']:.2f} → {length['new']:.2f} mm{changed}."
    shift = joint["shift"]
    if shift["max_mm"] is None:
        yield "No place of the new seam has a counterpart on the old one within 5 mm."
    elif shift["max_mm"] <= 0.01:
        yield "The centre line lies where it was."
    else:
        yield (
            f"The centre line lies {shift['mean_mm']:.3f} mm beside the old one on average, {shift['max_mm']:.3f} mm "
            f"at most, at {place(shift['at'])}; {shift['length_mm']:.1f} mm of it lie elsewhere by more than 0.01 mm."
        )
    for piece in joint["pieces"]:
        yield f"{piece['what'].capitalize()}: {piece['length_mm']:.1f} mm of seam about {place(piece['at'])}."
    if joint["paths"]["old"] != joint["paths"]["new"]:
        yield f"It runs in {_paths(joint['paths']['new'])} now, in {_paths(joint['paths']['old'])} before."
    if joint["rib_on"]["old"] != joint["rib_on"]["new"]:
        yield f"Rib: {_rib(joint['rib_on']['new'])} now, {_rib(joint['rib_on']['old'])} before."
    if joint["modelled_state"]["old"] != joint["modelled_state"]["new"]:
        yield f"Drawn: {joint['modelled_state']['new']} now, {joint['modelled_state']['old']} before."
    if joint["sides_swapped"]:
        yield "Inner and outer side have changed places; each side is compared with itself."


def known_by_one(joint: Record) -> Iterator[str]:
    """Quantities that only one of the reviews has, as sentences."""
    for key, which in (("only_old", "old"), ("only_new", "new")):
        titles = [QUANTITIES[k].title if k in QUANTITIES else k for k in joint[key]]
        if titles:
            yield f"Only the {which} review has: {', '.join(titles)}."


def by_place(joint: Record) -> list[tuple[Record, list[tuple[Record, Record]]]]:
    """Changes that share a stretch, together.

    Returns
    -------
    For each stretch its first change, and (quantity, change) of all; the longest stretch first
    """
    groups: list[tuple[Record, list[tuple[Record, Record]]]] = []
    for quantity in joint["quantities"]:
        for change in quantity["changes"]:
            own = next((g for g in groups if _same_stretch(g[0], change)), None)
            if own is None:
                groups.append((change, [(quantity, change)]))
            else:
                own[1].append((quantity, change))
    return sorted(groups, key=lambda group: -group[0]["length_mm"])


def _same_stretch(a: Record, b: Record) -> bool:
    if a["contour"] != b["contour"]:
        return False
    return all(abs(a[key] - b[key]) <= 0.5 for key in ("from_s", "to_s", "length_mm"))


def _paths(count: int) -> str:
    return "one path" if count == 1 else f"{count} paths"


def _rib(where: str) -> str:
    return "no rib" if where == "none" else f"on the {where}"


def background_lines(document: Document) -> Iterator[str]:
    """Settings, limits and parts that differ, as sentences; names of parts in quotation marks."""
    for entry in document["settings"]:
        yield f"Setting {entry['key']}: {plain(entry['old'])} → {plain(entry['new'])}"
    for entry in document["limits"]:
        unit = "" if entry["unit"] in ("", "1") else f" {entry['unit']}"
        yield f"Limit {entry['rule']}.{entry['name']}: {plain(entry['old'])} → {plain(entry['new'])}{unit}"
    parts = document["parts"]
    for entry in parts["renamed"]:
        yield f"The {entry['role']} is called {entry['new']!r} now, {entry['old']!r} before"
    for entry in parts["roles"]:
        yield f"{entry['name']!r} is {entry['new']} now, {entry['old']} before"
    for name in parts["added"]:
        yield f"Part added: {name!r}"
    for name in parts["removed"]:
        yield f"Part removed: {name!r}"
    for entry in parts["faces"]:
        yield f"{entry['name']!r} has {entry['new']} faces, {entry['old']} before"


def plain(value: Any) -> str:
    """A value of a setting or a material as people read it."""
    if value is None:
        return "none"
    if isinstance(value, bool):
        return "yes" if value else "no"
    if isinstance(value, float | int):
        return f"{value:.6g}"
    if isinstance(value, list):
        return ", ".join(plain(item) for item in value)
    return str(value)


def material_words(entry: Record) -> str:
    """'transmission, least: 27.0 % → 29.5 %'."""
    unit = f" {entry['unit']}" if entry["unit"] else ""

    def side(value: Any) -> str:
        if value is None or isinstance(value, str):
            return plain(value)
        return f"{value:.4g}{unit}"

    return f"{entry['title']}: {side(entry['old'])} → {side(entry['new'])}"
