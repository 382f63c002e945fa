"""Sentences that every report of a comparison uses, made from its document."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from typing import Any

from seamcheck.catalogue.quantities import QUANTITIES, REASONS
from seamcheck.catalogue.units import shown
from seamcheck.catalogue.voice import decimal_sign, in_voice, localised, tr, voice
from seamcheck.comparison.along import LOST, MEASURED
from seamcheck.report import facts, language

Document = Mapping[str, Any]
Record = Mapping[str, Any]


def outcome_words(document: Document) -> str:
    """The outcome in a few words."""
    if document["identical"]:
        return tr("No difference")
    words = {
        "not-worse": tr("Nothing is worse"), "worse": tr("Worse than before"), "not-compared": tr("Not compared"),
    }  # fmt: skip
    return words[document["outcome"]]


def state_word(state: str) -> str:
    """What became of a finding that both reviews have."""
    return {"worse": tr("worse"), "same": tr("as before"), "better": tr("better")}[state]


def side_word(side: str) -> str:
    """'old' or 'new'."""
    return {"old": tr("old"), "new": tr("new")}[side]


def headline(document: Document) -> str:
    """What the outcome rests on, in one sentence."""
    if document["outcome"] == "not-compared":
        return str(document["reason"])
    if document["identical"]:
        return tr("Nothing differs by more than the measuring error.")
    found = document["findings"]
    stays = {state: [e for e in found["remaining"] if e["state"] == state] for state in ("worse", "better", "same")}
    said = [
        _count(found["new"], tr("{findings} is new"), tr("{findings} are new")),
        _count(stays["worse"], tr("{findings} is worse"), tr("{findings} are worse")),
        _count(stays["better"], tr("{findings} is better"), tr("{findings} are better")),
        _count(stays["same"], tr("{findings} stays"), tr("{findings} stay")),
        _count(found["fixed"], tr("{findings} is fixed"), tr("{findings} are fixed")),
        _count(found["dropped"], tr("{findings} is no longer reported"), tr("{findings} are no longer reported")),
    ]
    parts = [part for part in said if part]
    return f"{', '.join(parts)}." if parts else tr("Neither review has a finding.")


def _count(entries: list[Record], one: str, many: str) -> str:
    """'2 findings (1 must-fix) are new'; '' for none."""
    if not entries:
        return ""
    must = sum((e.get("new") or e["old"])["severity"] == "must-fix" for e in entries)
    count = len(entries)
    if count == 1:
        return one.format(findings=tr("1 must-fix finding") if must else tr("1 finding"))
    if must == count:
        return many.format(findings=tr("{count} must-fix findings", count=count))
    told = tr("{count} findings", count=count)
    return many.format(findings=tr("{findings} ({must} must-fix)", findings=told, must=must) if must else told)


def amount(value: float | None, key: str) -> str:
    """A value with its unit; 'not measured' without."""
    if value is None:
        return tr("not measured")
    if key.startswith("trap_open"):
        return tr("open") if value else tr("closed")
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
    if at is None:
        return ""
    return f"({(', ' if decimal_sign() == '.' else '; ').join(facts.coordinate(c) for c in at)})"


def stretch(entry: Record) -> str:
    """'c1, s = 10.0 to 14.0 mm (4.0 mm long)', or 'all of c1'."""
    if entry.get("is_whole"):
        return tr("all of {path}", path=entry["contour"])
    if entry["from_s"] is None:
        return str(entry["contour"] or "")
    start, end = entry["from_s"], entry["to_s"]
    where = facts.mm(start) if start == end else facts.span(facts.coordinate(start, 1), facts.mm(end))
    return tr(
        "{path}, s = {where} ({length} long)", path=entry["contour"], where=where, length=facts.mm(entry["length_mm"])
    )


def change_words(change: Record, key: str) -> str:
    """'1.20 mm -> 1.50 mm, +0.30 mm'."""
    if change["kind"] == MEASURED:
        why = _why(change["old_why"])
        return tr("measured now: {value} (before: {why})", value=amount(change["new"], key), why=why)
    if change["kind"] == LOST:
        why = _why(change["new_why"])
        return tr("no longer measured: {why} (before: {value})", value=amount(change["old"], key), why=why)
    old = amount(change["old"], key) if change["old"] is not None else _why(change["old_why"])
    new = amount(change["new"], key) if change["new"] is not None else _why(change["new_why"])
    by = difference(change["by"], key)
    return f"{old} → {new}{', ' if by else ''}{by}"


def _why(code: str | None) -> str:
    """A reason for no value, in few words."""
    if not code:
        return tr("not measured")
    if code not in REASONS:
        return code
    said = language.reason(code).rstrip(".")
    return said[:1].lower() + said[1:] if voice().language == "en" else said


def finding_place(finding: Record) -> str:
    """Where a finding lies, in its own model's coordinates."""
    if finding["at"] is None:
        return tr("along the seam")
    where = place(finding["at"])
    if finding["contour"] is None:
        return where
    return tr("{where} on {stretch}", where=where, stretch=stretch(finding))


def told_findings(document: Document) -> Iterator[tuple[str, Record | None, Record | None, str]]:
    """Of each finding 'new', 'worse', 'same', 'better', 'fixed' or 'dropped', the old and the new one, and why."""
    found = document["findings"]
    yield from (("new", None, entry["new"], how_words(entry)) for entry in found["new"])
    yield from ((entry["state"], entry["old"], entry["new"], remaining_words(entry)) for entry in found["remaining"])
    for state in ("fixed", "dropped"):
        yield from ((state, entry["old"], None, how_words(entry)) for entry in found[state])


def interface_words(entry: Record) -> str:
    """A value of the whole interface that changed: '1.20 mm → 1.50 mm, +0.30 mm'."""
    key = entry["quantity"]
    by = difference(entry["by"], key)
    return f"{amount(entry['old'], key)} → {amount(entry['new'], key)}{', ' if by else ''}{by}"


def how_words(entry: Record) -> str:
    """Why a finding came or went, with the value on the other side."""
    said = _how(entry["how"])
    finding = entry.get("new") or entry["old"]
    other = entry.get("before") if "before" in entry else entry.get("now")
    key = str(finding["column"] or finding["quantity"])
    if other is not None and entry["how"] in ("value", "limit", "limit-follows"):
        told = amount(other, key)
        return f"{said}: {tr('{value} before', value=told) if 'before' in entry else tr('{value} now', value=told)}"
    return said


def _how(code: str) -> str:
    """Why a finding came or went, by its code."""
    return {
        "value": tr("the value changed"),
        "limit": tr("the limit in the settings changed, not the value"),
        "limit-follows": tr("the limit follows the rest of the seam and changed with it, not the value"),
        "rule-off": tr("the rule is no longer judged"),
        "rule-on": tr("the rule was not judged before"),
        "not-measured": tr("the value is no longer measured there"),
        "was-not-measured": tr("the value was not measured there before"),
        "seam-gone": tr("the seam no longer runs there"),
        "seam-new": tr("the seam did not run there before"),
        "other": "",
    }[code]


def remaining_words(entry: Record) -> str:
    """'worse: 0.10 mm farther beyond the limit, 2.0 mm longer'."""
    said = []
    key = str(entry["new"]["column"] or entry["new"]["quantity"])
    by = entry["margin_by"]
    if by is not None and abs(by) >= 0.5 * 10.0 ** -(QUANTITIES[key].decimals if key in QUANTITIES else 3):
        told = amount(abs(by), key)
        farther, nearer = (
            tr("{length} farther beyond the limit", length=told),
            tr("{length} nearer to the limit", length=told),
        )
        said.append(farther if by < 0 else nearer)
    length = entry["length_by_mm"]
    if length is not None and abs(length) >= 0.05 and entry["new"]["contour"] is not None:
        told = facts.mm(abs(length))
        said.append(tr("{length} longer", length=told) if length > 0 else tr("{length} shorter", length=told))
    if bool(entry["old"]["waived"]) != bool(entry["new"]["waived"]):
        said.append(tr("waived now") if entry["new"]["waived"] else tr("no longer waived"))
    if entry["old"]["severity"] != entry["new"]["severity"]:
        now, was = (facts.severity_word(entry[side]["severity"]) for side in ("new", "old"))
        said.append(tr("{now} now, {was} before", now=now, was=was))
    if entry["merged"]:
        said.append(tr("holds {others} as well", others=", ".join(entry["merged"])))
    if entry["is_piece"]:
        said.append(tr("a piece of one that was longer"))
    return f"{state_word(entry['state'])}{': ' if said else ''}{', '.join(said)}"


def seam_lines(joint: Record) -> Iterator[str]:
    """What moved, as sentences."""
    if joint["old"] is None or joint["new"] is None:
        length = facts.mm(joint["length_mm"]["new"] or joint["length_mm"]["old"])
        new, old = (
            tr("This seam is in the new model only: {length}.", length=length),
            tr("This seam is in the old model only: {length}.", length=length),
        )
        yield new if joint["old"] is None else old
        return
    length = joint["length_mm"]
    by = length["by"]
    changed = f"{'+' if by >= 0 else '−'}{facts.mm(abs(by), 2)}" if abs(by) >= 0.005 else tr("as before")
    yield tr(
        "Length {old} → {new}, {changed}.",
        old=facts.mm(length["old"], 2),
        new=facts.mm(length["new"], 2),
        changed=changed,
    )
    shift = joint["shift"]
    if shift["max_mm"] is None:
        yield tr("No place of the new seam has a counterpart on the old one within {reach}.", reach=facts.mm(5.0))
    elif shift["max_mm"] <= 0.01:
        yield tr("The centre line lies where it was.")
    else:
        yield tr(
            "The centre line lies {mean} beside the old one on average, {most} at most, at {place}; {length} of it lie "
            "elsewhere by more than {error}.",
            mean=facts.mm(shift["mean_mm"], 3), most=facts.mm(shift["max_mm"], 3), place=place(shift["at"]),
            length=facts.mm(shift["length_mm"]), error=facts.mm(0.01, 2),
        )  # fmt: skip
    for piece in joint["pieces"]:
        told = {"length": facts.mm(piece["length_mm"]), "place": place(piece["at"])}
        added, removed = (
            tr("Added: {length} of seam about {place}.", **told),
            tr("Removed: {length} of seam about {place}.", **told),
        )
        yield added if piece["what"] == "added" else removed
    if joint["paths"]["old"] != joint["paths"]["new"]:
        paths = {side: _paths(joint["paths"][side]) for side in ("new", "old")}
        yield tr("It runs in {new} now, in {old} before.", **paths)
    if joint["rib_on"]["old"] != joint["rib_on"]["new"]:
        yield tr("Rib: {new} now, {old} before.", **{side: _rib(joint["rib_on"][side]) for side in ("new", "old")})
    if joint["modelled_state"]["old"] != joint["modelled_state"]["new"]:
        drawn = {side: _drawn(joint["modelled_state"][side]) for side in ("new", "old")}
        yield tr("Drawn: {new} now, {old} before.", **drawn)
    if joint["sides_swapped"]:
        yield tr("Inner and outer side have changed places; each side is compared with itself.")


def known_by_one(joint: Record) -> Iterator[str]:
    """Quantities that only one of the reviews has, as sentences."""
    for key in ("only_old", "only_new"):
        if joint[key]:
            titles = ", ".join(language.quantity_title(k) for k in joint[key])
            old, new = (
                tr("Only the old review has: {titles}.", titles=titles),
                tr("Only the new review has: {titles}.", titles=titles),
            )
            yield old if key == "only_old" else new


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
    return tr("one path") if count == 1 else tr("{count} paths", count=count)


def _rib(where: str) -> str:
    return {"none": tr("no rib"), "base": tr("on the base"), "cover": tr("on the cover")}.get(where, where)


def _drawn(state: str) -> str:
    """How both parts lie in the model."""
    words = {
        "gap": tr("with a gap"),
        "mixed": tr("touching in part"),
        "overlap": tr("overlapping"),
        "touching": tr("touching"),
    }
    return words.get(state, state)


def background_lines(document: Document) -> Iterator[str]:
    """Settings, limits and parts that differ, as sentences; names of parts in quotation marks."""
    for entry in document["settings"]:
        yield tr("Setting {key}: {old} → {new}", key=entry["key"], old=plain(entry["old"]), new=plain(entry["new"]))
    for entry in document["limits"]:
        unit = "" if entry["unit"] in ("", "1") else f" {entry['unit']}"
        key = f"{entry['rule']}.{entry['name']}"
        yield tr("Limit {key}: {old} → {new}", key=key, old=plain(entry["old"]), new=plain(entry["new"])) + unit
    parts = document["parts"]
    for entry in parts["renamed"]:
        role, names = facts.role_word(entry["role"]), {"new": repr(entry["new"]), "old": repr(entry["old"])}
        yield tr("The {role} is called {new} now, {old} before", role=role, **names)
    for entry in parts["roles"]:
        roles = {side: facts.role_word(entry[side]) for side in ("new", "old")}
        yield tr("{name} is {new} now, {old} before", name=repr(entry["name"]), **roles)
    for name in parts["added"]:
        yield tr("Part added: {name}", name=repr(name))
    for name in parts["removed"]:
        yield tr("Part removed: {name}", name=repr(name))
    for entry in parts["faces"]:
        name, new, old = repr(entry["name"]), entry["new"], entry["old"]
        yield tr("{name} has {new} faces, {old} before", name=name, new=new, old=old)


def plain(value: Any) -> str:
    """A value of a setting or a material as people read it."""
    if value is None:
        return tr("none")
    if isinstance(value, bool):
        return tr("yes") if value else tr("no")
    if isinstance(value, float | int):
        return localised(f"{value:.6g}")
    if isinstance(value, list):
        return ", ".join(plain(item) for item in value)
    return str(value)


def material_words(entry: Record) -> str:
    """'transmission, least: 27.0 % → 29.5 %'."""
    return f"{entry['title']}: {material_value(entry, 'old')} → {material_value(entry, 'new')}"


def material_value(entry: Record, side: str) -> str:
    """One side of a value of materials, with its unit."""
    value = entry[side]
    if isinstance(value, str):  # the verdict on a pair, or where the plan lies in the window
        return next((word for kind in ("pair", "window") if (word := language.term(kind, value)) != value), value)
    if value is None or isinstance(value, bool | list):
        return plain(value)
    value, unit, _ = in_voice(value, entry["unit"], 0)
    return localised(f"{value:.4g}") + (f" {unit}" if unit else "")


def kind_word(kind: str) -> str:
    """What a value of materials is: put in, or computed."""
    return {"input": tr("input"), "result": tr("result")}.get(kind, kind)
