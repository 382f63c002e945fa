"""The comparison document: everything that a report of a comparison shows, as plain values."""

from __future__ import annotations

from collections import Counter
from collections.abc import Mapping, Sequence
from typing import Any

import msgspec
import numpy as np

from seamcheck.catalogue.cautions import CAUTION_TEXTS
from seamcheck.catalogue.message import Message, Sentence
from seamcheck.catalogue.quantities import QUANTITIES
from seamcheck.catalogue.say import say, together
from seamcheck.comparison import background
from seamcheck.comparison.align import Alignment, JointPair, align
from seamcheck.comparison.along import Change, changes_of, columns_of, columns_of_either, old_values
from seamcheck.comparison.matching import BETTER, SAME, WORSE, Match, Matching, match_findings
from seamcheck.comparison.materials import material_differences
from seamcheck.comparison.motion import Found, degrees_between, find_motion
from seamcheck.comparison.paths import SeamPath, seam_paths
from seamcheck.comparison.reasons import why_gone, why_new
from seamcheck.comparison.rigid import Rigid
from seamcheck.comparison.shape import Piece, added, removed, shift_of
from seamcheck.comparison.tolerances import LENGTH, tolerance
from seamcheck.document.plain import number, numbers
from seamcheck.version import __version__

KIND, SCHEMA_VERSION = "seamcheck-comparison", 1

NOT_WORSE, WORSE_OUTCOME, NOT_COMPARED = "not-worse", "worse", "not-compared"

Document = Mapping[str, Any]
Record = dict[str, Any]


def compare_documents(old: Document, new: Document) -> Record:
    """The comparison document of two review documents.

    Places and arc lengths are those of the new model; what the old model had is brought into its coordinates.
    """
    head = {
        "document": KIND,
        "schema_version": SCHEMA_VERSION,
        "seamcheck": __version__,
        "old": _side(old),
        "new": _side(new),
    }
    limits = background.limit_differences(old, new)
    settings = background.setting_differences(old, new)
    shared = {
        "warnings": background.warnings(old, new, limits, settings),
        "limits": [_plain(entry) for entry in limits],
        "settings": [_plain(entry) for entry in settings],
        "parts": background.part_differences(old, new),
    }
    tail = {"cautions": [say(key) for key in CAUTION_TEXTS]}
    refused = [(word, side) for word, side in (("old", old), ("new", new)) if side["verdict"] == "not-reviewed"]
    if refused:
        said = together(*(say(f"compare.refused-{word}", why=_why(side["reason"])) for word, side in refused))
        nothing: Record = {
            "motion": None,
            "joints": [],
            "findings": {"new": [], "remaining": [], "fixed": [], "dropped": []},
            "identical": False,
        }
        return head | {"outcome": NOT_COMPARED, "reason": said} | shared | nothing | tail
    before, after = seam_paths(old), seam_paths(new)
    found = find_motion(old, new, before, after)
    before = tuple(path.moved(found.motion) for path in before)
    alignment = align(old, new, before, after)
    matching = match_findings(old["findings"], new["findings"], alignment, found.motion)
    findings = _findings(matching, old, new, alignment, found)
    turned = _turned_light(alignment.pairs, found.motion)
    shared["warnings"] = turned + background.warnings(old, new, limits, settings)
    joints = [_joint(pair, old, new) for pair in alignment.pairs]
    joints += [_unmatched(joint, old, "old") for joint in alignment.only_old]
    joints += [_unmatched(joint, new, "new") for joint in alignment.only_new]
    body = {
        "motion": _motion(found),
        "joints": joints,
        "findings": findings,
        "identical": not turned and _is_identical(shared, found, joints, findings),
    }
    outcome = WORSE_OUTCOME if worse(findings, ("must-fix",)) else NOT_WORSE
    return head | {"outcome": outcome, "reason": None} | shared | body | tail


def _why(reason: Mapping[str, Any]) -> Sentence:
    """Why a model was not reviewed, as the sentence of its review."""
    record = {key: reason[key] for key in ("key", "args", "parts") if key in reason}
    return Sentence.of(msgspec.convert({**record, "text": reason["message"]}, Message))


_SAME_LIGHT = 1.0
"""Degrees between old and new beam direction, beyond which a sentence says so."""

_REVERSED = 135.0
"""Degrees between both in the model's coordinates, beyond which a turn of the whole is told as well."""


def _turned_light(pairs: Sequence[JointPair], motion: Rigid) -> list[str]:
    """A sentence for each joint that is welded from another side now, as the mirror image of a model is.

    A seam alone does not tell a mirror image from a model that is turned over: both are said.
    """
    said: list[str] = []
    for pair in pairs:
        before, after = (np.asarray(side["beam"], dtype=float) for side in (pair.old, pair.new))
        moved, as_drawn = degrees_between(motion.vectors(before), after), degrees_between(before, after)
        if moved > _SAME_LIGHT:
            key = "compare.light-opposite" if moved > 179.0 else "compare.light-turned"
            said.append(say(key, seam=pair.new["id"], **({} if moved > 179.0 else {"angle": moved})))
        elif as_drawn > _REVERSED:
            said.append(say("compare.light-over", seam=pair.new["id"]))
    return said


def worse(findings: Mapping[str, Any], severities: Sequence[str]) -> list[Record]:
    """Findings that are new or worse, of these severities and not waived."""
    entries = [*findings["new"], *(entry for entry in findings["remaining"] if entry["state"] == WORSE)]
    return [e for e in entries if e["new"]["severity"] in severities and not e["new"]["waived"]]


def _side(document: Document) -> Record:
    model = document["model"]
    counts = Counter(f["severity"] for f in document["findings"] if not f["waived"])
    return {
        "file": model["file"],
        "files": [entry["file"] for entry in model["files"]],
        "sha256": model["sha256"],
        "seamcheck": document["seamcheck"],
        "verdict": document["verdict"],
        "reason": document["reason"],
        "settings_file": document["settings"].get("file"),
        "length_mm": number(sum(joint["length_mm"] or 0.0 for joint in document["joints"])),
        "findings": {severity: counts[severity] for severity in ("must-fix", "attention", "note")},
        "waived": sum(bool(f["waived"]) for f in document["findings"]),
    }


def _motion(found: Found) -> Record:
    motion = found.motion
    x, y, z = (float(c) for c in np.round(motion.shift, 2) + 0.0)
    says: dict[str, str] = {
        "none": "",
        "moved": say("compare.moved", x=x, y=y, z=z),
        "turned": say("compare.turned", angle=float(motion.angle)),
        "unlike": say("compare.unlike"),
    }
    return {
        "kind": found.kind,
        "shift_mm": numbers(motion.shift),
        "angle_deg": number(motion.angle),
        "axis": numbers(motion.axis),
        "share": number(found.share),
        "says": says[found.kind],
    }


def _joint(pair: JointPair, old: Document, new: Document) -> Record:
    changes = list(changes_of(pair))
    changed = list(dict.fromkeys(change.quantity for change in changes))
    shift = shift_of(pair, LENGTH)
    lengths = [number(joint["length_mm"] or 0.0) or 0.0 for joint in (pair.old, pair.new)]
    paired = [pair.swapped(k)[feet.found] for k, feet in enumerate(pair.onto_old)]
    return {
        "old": pair.old["id"],
        "new": pair.new["id"],
        "cover": _both_names(pair, "cover", old, new),
        "base": _both_names(pair, "base", old, new),
        "rib_on": {"old": pair.old["rib_on"], "new": pair.new["rib_on"]},
        "modelled_state": {"old": pair.old["modelled_state"], "new": pair.new["modelled_state"]},
        "length_mm": {"old": lengths[0], "new": lengths[1], "by": number(lengths[1] - lengths[0])},
        "paths": {"old": len(pair.old["contours"]), "new": len(pair.new["contours"])},
        "shift": {
            "mean_mm": number(shift.mean),
            "max_mm": number(shift.most),
            "at": None if shift.at is None else numbers(shift.at),
            "length_mm": number(shift.length),
        },
        "pieces": [_piece("added", piece) for piece in added(pair)]
        + [_piece("removed", piece) for piece in removed(pair)],
        "sides_swapped": bool(paired and np.concatenate(paired).any()),
        "quantities": [_quantity(key, pair, [c for c in changes if c.quantity == key]) for key in changed],
        "unchanged": [key for key in columns_of(pair) if key not in changed],
        "only_old": _only(pair, 0),
        "only_new": _only(pair, 1),
        "interface": _interface(pair),
        "material": [
            _plain(entry) for entry in material_differences(pair.old.get("material"), pair.new.get("material"))
        ],
        "plan": _plan(pair),
        "tracks": [_track(pair, k, changed) for k in range(len(pair.after))],
    }


def _unmatched(joint: Mapping[str, Any], document: Document, role: str) -> Record:
    """A joint that the other model lacks: only its length and its parts are told."""
    other = "new" if role == "old" else "old"
    length = number(joint["length_mm"] or 0.0) or 0.0
    nothing = {other: None}
    return {
        "old": joint["id"] if role == "old" else None,
        "new": joint["id"] if role == "new" else None,
        "cover": {role: _names(joint["cover"], document), other: []},
        "base": {role: _names(joint["base"], document), other: []},
        "rib_on": {role: joint["rib_on"]} | nothing,
        "modelled_state": {role: joint["modelled_state"]} | nothing,
        "length_mm": {role: length, other: 0.0, "by": length if role == "new" else -length},
        "paths": {role: len(joint["contours"]), other: 0},
        "shift": {"mean_mm": None, "max_mm": None, "at": None, "length_mm": 0.0},
        "pieces": [],
        "sides_swapped": False,
        "quantities": [],
        "unchanged": [],
        "only_old": [],
        "only_new": [],
        "interface": [],
        "material": [],
        "plan": None,
        "tracks": [],
    }


def _names(ids: Sequence[str], document: Document) -> list[str]:
    names = {part["id"]: part["name"] or part["id"] for part in document["model"]["parts"]}
    return [names.get(part, part) for part in ids]


def _both_names(pair: JointPair, role: str, old: Document, new: Document) -> Record:
    return {"old": _names(pair.old[role], old), "new": _names(pair.new[role], new)}


def _piece(what: str, piece: Piece) -> Record:
    return {
        "what": what,
        "contour": piece.path.id,
        "from_s": number(piece.stretch.from_s),
        "to_s": number(piece.stretch.to_s),
        "length_mm": number(piece.stretch.length),
        "at": numbers(piece.at),
    }


def _quantity(key: str, pair: JointPair, changes: Sequence[Change]) -> Record:
    length = sum(change.stretch.length for change in changes)
    whole = sum(path.length for path in pair.after) or 1.0
    return {
        "quantity": key,
        "title": QUANTITIES[key].title if key in QUANTITIES else key,
        "unit": QUANTITIES[key].unit if key in QUANTITIES else "",
        "old": _three(pair.old["summary"].get(key)),
        "new": _three(pair.new["summary"].get(key)),
        "length_mm": number(length),
        "share": number(min(1.0, length / whole)),
        "changes": [_change(change) for change in changes],
    }


def _change(change: Change) -> Record:
    return {
        "kind": change.kind,
        "contour": change.path.id,
        "from_s": number(change.stretch.from_s),
        "to_s": number(change.stretch.to_s),
        "length_mm": number(change.stretch.length),
        "is_whole": change.stretch.is_whole,
        "s": number(change.s),
        "at": numbers(change.at),
        "old": number(change.old),
        "new": number(change.new),
        "by": number(change.by),
        "old_why": change.old_why or None,
        "new_why": change.new_why or None,
    }


def _only(pair: JointPair, side: int) -> list[str]:
    """Quantities of one review that the other does not know or was not asked for."""
    columns, joints = columns_of_either(pair), (pair.old, pair.new)
    mine = columns[side] | set(joints[side]["interface"])
    return sorted(mine - columns[1 - side] - set(joints[1 - side]["interface"]))


def _interface(pair: JointPair) -> list[Record]:
    """Values of the whole interface that differ by more than the measuring error."""
    before, after = pair.old["interface"], pair.new["interface"]
    result = []
    for key in [k for k in QUANTITIES if k in before and k in after]:
        a, b = (side.get(key, {}).get("value") for side in (before, after))
        if a is None and b is None:
            continue
        if a is not None and b is not None and abs(b - a) <= float(tolerance(key, max(abs(a), abs(b)))):
            continue
        result.append(
            {
                "quantity": key,
                "title": QUANTITIES[key].title,
                "unit": QUANTITIES[key].unit,
                "old": number(a),
                "new": number(b),
                "by": None if a is None or b is None else number(b - a),
                "at": after.get(key, {}).get("at"),
            }
        )
    return result


def _plan(pair: JointPair) -> Record:
    """Both centre lines seen along the beam, in the plane across it; mm."""
    beam = np.asarray(pair.new["beam"], dtype=float)
    start = np.eye(3)[int(np.argmin(np.abs(beam)))]
    x = start - (start @ beam) * beam
    x /= np.linalg.norm(x)
    axes = np.array([x, np.cross(x, beam)])  # seen along the beam: y to the left of x

    def drawn(paths: Sequence[SeamPath]) -> list[Record]:
        return [{"closed": path.closed, "points": numbers(path.points @ axes.T)} for path in paths]

    return {"axes": numbers(axes), "old": drawn(pair.before), "new": drawn(pair.after)}


def _track(pair: JointPair, k: int, changed: Sequence[str]) -> Record:
    """Columns that changed, old and new side by side at the stations of one path of the new seam."""
    path = pair.after[k]
    contour = next(c for c in pair.new["contours"] if c["id"] == path.id)
    return {
        "contour": path.id,
        "closed": path.closed,
        "length_mm": number(path.length),
        "s": numbers(path.s),
        "columns": {
            key: {"old": numbers(old_values(pair, k, key)), "new": numbers(path.column(key))} for key in changed
        },
        "bounds": [bound for bound in contour["bounds"] if bound["column"] in changed],
    }


def _findings(matching: Matching, old: Document, new: Document, alignment: Alignment, found: Found) -> Record:
    gone = [(finding, why_gone(finding, old, new, alignment, found.motion)) for finding in matching.fixed]
    return {
        "new": [
            {"new": match.new, **why_new(match.new, old, new, alignment)} for match in matching.now if not match.old
        ],
        "remaining": [_remaining(match) for match in matching.of(WORSE, SAME, BETTER)],
        "fixed": [{"old": finding, **why} for finding, why in gone if why["how"] in _BY_THE_MODEL],
        "dropped": [{"old": finding, **why} for finding, why in gone if why["how"] not in _BY_THE_MODEL],
    }


_BY_THE_MODEL = ("value", "limit-follows", "seam-gone", "other")
"""Reasons for which a finding is gone that lie in the model; for others it is only no longer reported."""


def _remaining(match: Match) -> Record:
    assert match.old is not None
    old, new = match.old, match.new
    margins = old["margin"], new["margin"]
    return {
        "old": old,
        "new": new,
        "state": match.state,
        "margin_by": number(margins[1] - margins[0]) if None not in margins else None,
        "length_by_mm": number((new["length_mm"] or 0.0) - (old["length_mm"] or 0.0)),
        "is_piece": match.is_piece,
        "merged": [part["id"] for part in match.parts],
    }


def _is_identical(shared: Mapping[str, Any], found: Found, joints: Sequence[Record], findings: Record) -> bool:
    """Whether nothing differs by more than the measuring error."""
    if shared["limits"] or shared["settings"] or any(shared["parts"].values()) or found.kind != "none":
        return False
    if findings["new"] or findings["fixed"] or findings["dropped"]:
        return False
    if any(entry["state"] != SAME for entry in findings["remaining"]):
        return False
    return not any(
        joint["old"] is None
        or joint["new"] is None
        or joint["pieces"]
        or joint["quantities"]
        or joint["interface"]
        or joint["material"]
        or joint["rib_on"]["old"] != joint["rib_on"]["new"]
        or (joint["shift"]["max_mm"] or 0.0) > LENGTH
        for joint in joints
    )


def _plain(entry: Mapping[str, Any]) -> Record:
    return {key: number(value) if isinstance(value, float) else value for key, value in entry.items()}


def _three(summary: Mapping[str, Any] | None) -> dict[str, Any] | None:
    """Least, median and largest of a summary."""
    return None if summary is None else {key: summary[key] for key in ("min", "median", "max")}
