"""The review document: everything that a report shows, as plain values."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import asdict
from importlib import resources
from typing import Any

import numpy as np

from seamcheck.assembly.parts import Assembly, ModelFile, Part
from seamcheck.catalogue.cautions import (
    CAUTIONS,
    MATERIAL_NOT_CHECKED,
    NO_SCANNER_NOT_CHECKED,
    NO_TOLERANCE_NOT_CHECKED,
    NOT_CHECKED,
    TOLERANCE_NOT_CHECKED,
)
from seamcheck.catalogue.interface_rules import NEEDS
from seamcheck.catalogue.quantities import QUANTITIES, REASONS
from seamcheck.catalogue.rule import OFF, Rule
from seamcheck.catalogue.rules import RULES
from seamcheck.document.plain import number, numbers
from seamcheck.errors import NotReviewed
from seamcheck.judge.bounds import JudgedPath, JudgedSeam
from seamcheck.judge.findings import (
    NOT_REVIEWED,
    Finding,
    JointResult,
    Judgement,
)
from seamcheck.judge.parts_outside import LimitWithTolerance, limits_with_tolerance, share_of_parts
from seamcheck.measure.table import PathSurvey
from seamcheck.sections.stretches import cell_lengths, weighted_median
from seamcheck.settings.declared import NUMBERS
from seamcheck.settings.settings import Settings
from seamcheck.version import __version__

KIND, SCHEMA_VERSION = "seamcheck-review", 2


def make_document(
    assembly: Assembly,
    joints: Sequence[JointResult],
    judgement: Judgement,
    settings: Settings,
    notes: Sequence[str] = (),
    view: Mapping[str, Any] | None = None,
) -> dict[str, Any]:
    """The review document of a model that was reviewed.

    Parameters
    ----------
    assembly : as read
    joints : as surveyed
    judgement : of these joints under these settings
    notes : what else was odd about the model, as sentences
    view : section outlines and display meshes (document/view.py); passed through
    """
    parts = {part.id: part for part in assembly.parts}
    document = _head(assembly.files, (*assembly.notes, *notes), judgement.verdict, None)
    document["model"]["parts"] = [_part(part, joints) for part in assembly.parts]
    document["joints"] = [_joint(joint, settings, parts) for joint in joints]
    document["findings"] = [_finding(f, parts) for f in judgement.findings]
    document |= _tail(settings, judgement.waivers, _not_checked(joints, settings))
    if view is not None:
        document["view"] = view
    return document


def not_reviewed_document(
    files: Sequence[ModelFile], reason: NotReviewed, settings: Settings, notes: Sequence[str] = ()
) -> dict[str, Any]:
    """The review document of a model that could not be reviewed."""
    document = _head(files, notes, NOT_REVIEWED, {"code": reason.code, "message": reason.message})
    return document | _tail(settings, (), ["Everything: the model was not reviewed."])


def schema() -> dict[str, Any]:
    """The JSON Schema (draft 2020-12) that every review document holds."""
    import json

    text = resources.files("seamcheck.document").joinpath("document_schema.json").read_text(encoding="utf-8")
    return json.loads(text)


def _head(
    files: Sequence[ModelFile], notes: Sequence[str], verdict: str, reason: dict[str, str] | None
) -> dict[str, Any]:
    described = [
        {"file": f.name, "sha256": f.sha256, "step_schema": f.step_schema, "length_unit": f.length_unit} for f in files
    ]
    first = described[0] if described else {"file": "", "sha256": "", "step_schema": "", "length_unit": ""}
    return {
        "document": KIND,
        "schema_version": SCHEMA_VERSION,
        "seamcheck": __version__,
        "model": {**first, "files": described, "parts": [], "notes": list(dict.fromkeys(notes))},
        "verdict": verdict,
        "reason": reason,
        "joints": [],
        "findings": [],
    }


def _tail(settings: Settings, waivers: Sequence[Mapping[str, Any]], not_checked: list[str]) -> dict[str, Any]:
    return {
        "limits": [entry for rule in _in_force(settings) for entry in _limits(rule, settings)],
        "waivers": [_record(w) for w in waivers],
        "settings": _settings(settings),
        "reasons": dict(REASONS),
        "not_checked": not_checked,
        "cautions": list(CAUTIONS),
    }


def _part(part: Part, joints: Sequence[JointResult]) -> dict[str, Any]:
    roles = [
        role
        for role, held in (
            ("cover", any(part.id in j.cover for j in joints)),
            ("base", any(part.id in j.base for j in joints)),
        )
        if held
    ]
    return {
        "id": part.id,
        "name": part.name,
        "path": list(part.path),
        "role": " and ".join(roles) or "other",
        "kind": part.kind,
        "solids": part.solids,
        "faces": part.faces,
        "file": part.file,
        "notes": list(part.notes),
    }


def _joint(joint: JointResult, settings: Settings, parts: Mapping[str, Part]) -> dict[str, Any]:
    seam = JudgedSeam(joint, settings)
    survey = joint.survey
    views = {view.path.id: view for view in seam.paths}
    limits = limits_with_tolerance(seam)
    keys = _columns(survey.paths)
    return {
        "id": joint.id,
        "cover": list(joint.cover),
        "base": list(joint.base),
        "kind": joint.kind,
        "confidence": number(joint.confidence),
        "rib_on": joint.rib_on,
        "rib_part": survey.rib_part,
        "beam": numbers(joint.beam),
        "modelled_state": joint.modelled_state,
        "why": list(joint.why),
        "length_mm": number(sum(path.length for path in survey.paths)),
        "summary": {key: _summary(seam.pooled(key), _weights(survey.paths)) for key in keys},
        "junctions": {name: numbers(place) for name, place in sorted(survey.junctions.items())},
        "interruptions": [
            {
                "length_mm": number(gap.length),
                "at": numbers(gap.at),
                "contours": sorted({name for name, _ in gap.ends}),
            }
            for gap in survey.interruptions
        ],
        "seam_faces": _seam_faces(joint, parts),
        "contours": [_contour(path, views.get(path.id), joint.rib_on == "none") for path in survey.paths],
        "interface": {key: _record(entry) for key, entry in sorted(survey.interface.items())},
        "tolerances": _tolerances(limits, seam),
        "parts_outside": _parts_outside(limits, seam),
        **joint.extra,
    }


def _seam_faces(joint: JointResult, parts: Mapping[str, Part]) -> dict[str, Any]:
    """The faces that the stations lie on: the rib's top, and those of the opposite part."""
    survey = joint.survey
    return {
        name: [_face(part, int(face), parts) for face in sorted({int(f) for found in faces for f in found if f >= 0})]
        for name, part, faces in (
            ("rib", survey.rib_part, [path.rib_face for path in survey.paths]),
            ("opposite", survey.counter_part, [path.cover_face for path in survey.paths]),
        )
    }


def _tolerances(limits: Sequence[LimitWithTolerance], seam: JudgedSeam) -> list[dict[str, Any]]:
    """For every limit of a quantity with a tolerance: inside, at risk or outside, worst case, parts outside."""
    return [
        {
            "rule": one.rule,
            "quantity": one.quantity,
            "side": one.side,
            "state": one.state,
            "value": number(one.value),
            "tolerance": number(one.tolerance),
            "worst_case": number(one.worst_case),
            "limit": number(one.limit),
            "unit": QUANTITIES[one.quantity].unit,
            "outside_ppm": number(1e6 * one.share),
            "from": seam.settings.origin("tolerance"),
        }
        for one in limits
    ]


def _parts_outside(limits: Sequence[LimitWithTolerance], seam: JudgedSeam) -> dict[str, Any] | None:
    """Share of parts in which something breaks that holds as drawn; None without tolerances."""
    if not seam.settings.tolerances:
        return None
    share, rules = share_of_parts(seam, limits)
    cpk = seam.settings.tolerances.get("cpk")
    spread = "even between the ends" if cpk is None else f"normal, Cpk {cpk:g}"
    return {"ppm": number(1e6 * share), "spread": spread, "rules": list(rules)}


def _columns(paths: Sequence[PathSurvey]) -> list[str]:
    """Keys of all columns: in the order of their declaration, then what others added."""
    present = {key for path in paths for key in path.columns}
    return [key for key in QUANTITIES if key in present] + sorted(present - set(QUANTITIES))


def _weights(paths: Sequence[PathSurvey]) -> np.ndarray:
    cells = [cell_lengths(p.s, p.length, p.closed) for p in paths if len(p.s)]
    return np.concatenate(cells) if cells else np.zeros(0)


def _summary(values: np.ndarray, weights: np.ndarray) -> dict[str, float | None] | None:
    """Least, median (by length of seam) and largest; None where nothing was measured."""
    known = np.isfinite(values)
    if not known.any():
        return None
    return {
        "min": number(float(values[known].min())),
        "median": number(weighted_median(values, weights)),
        "max": number(float(values[known].max())),
    }


def _contour(path: PathSurvey, view: JudgedPath | None, is_flat: bool) -> dict[str, Any]:
    keys = _columns([path])
    weights = _weights([path])
    return {
        "id": path.id,
        "closed": path.closed,
        "length_mm": number(path.length),
        "clamp_side": path.clamp_side or None,
        "ends": list(path.ends),
        "junctions": [end.partition(":")[2] for end in path.ends if end.startswith("junction:")],
        "stations": {
            "s": numbers(path.s),
            **{axis: numbers(path.points[:, i]) for i, axis in enumerate("xyz")},
            "u": numbers(path.u),
            **{key: numbers(path.columns[key]) for key in keys},
        },
        "unmeasured": [run for key in keys for run in _unmeasured(path, key)],
        "summary": {key: _summary(np.asarray(path.columns[key], dtype=float), weights) for key in keys},
        "bounds": [] if view is None else _bounds(view, is_flat),
    }


def _unmeasured(path: PathSurvey, key: str) -> list[dict[str, Any]]:
    """Runs of stations where a column has no value, by reason; from and to are the first and last station."""
    missing = ~np.isfinite(np.asarray(path.columns[key], dtype=float))
    if not missing.any():
        return []
    reasons = path.reasons.get(key)
    why = np.full(len(missing), "") if reasons is None else np.asarray(reasons).astype(str)
    why = np.where(missing, np.where(why == "", "unknown", why), "")
    starts = np.flatnonzero(np.append(True, why[1:] != why[:-1]))
    ends = np.append(starts[1:], len(why)) - 1
    return [
        {"column": key, "from_s": number(path.s[a]), "to_s": number(path.s[b]), "why": str(why[a])}
        for a, b in zip(starts, ends, strict=True)
        if why[a]
    ]


def _bounds(view: JudgedPath, is_flat: bool) -> list[dict[str, Any]]:
    """What each rule compares along this path: a number, or one for every station where the bound changes."""
    result = []
    for rule in _in_force(view.seam.settings):
        if view.seam.settings.severity(rule.key) == OFF or (is_flat and not rule.for_flat_overlap):
            continue
        for check in rule.checks:
            if check.column not in view.path.columns:
                continue
            sides: dict[str, dict[str, Any]] = {}
            for side, bound in (("low", check.lower), ("high", check.upper)):
                for step in () if bound is None else view.steps(rule, check, bound):
                    sides.setdefault(step.severity, {"low": None, "high": None})[side] = _constant_or_list(step.limit)
            for severity, limits in sides.items():
                judged = {"rule": rule.key, "column": check.column, "quantity": check.judged, "severity": severity}
                result.append({**judged, **limits})
    return result


def _constant_or_list(values: np.ndarray) -> Any:
    plain = numbers(values)
    return plain[0] if all(v == plain[0] for v in plain) else plain


def _record(entry: Mapping[str, Any]) -> dict[str, Any]:
    """A mapping as plain values, its numbers rounded."""
    return {key: _plain(value) for key, value in entry.items()}


def _plain(value: Any) -> Any:
    if isinstance(value, np.ndarray):
        return numbers(value)
    if isinstance(value, bool) or value is None or isinstance(value, str):
        return value
    if isinstance(value, np.integer | int):
        return int(value)
    if isinstance(value, np.floating | float):
        return number(float(value))
    if isinstance(value, Mapping):
        return {str(k): _plain(v) for k, v in value.items()}
    if isinstance(value, list | tuple):
        return [_plain(v) for v in value]
    raise TypeError(f"{value!r} can't stand in the review document")


def _finding(f: Finding, parts: Mapping[str, Part]) -> dict[str, Any]:
    return {
        "id": f.id,
        "rule": f.rule,
        "severity": f.severity,
        "quantity": f.quantity,
        "column": f.column or None,
        "value": number(f.value),
        "limit": number(f.limit),
        "unit": f.unit,
        "margin": number(f.margin),
        "joint": f.joint,
        "contour": f.contour,
        "at": None if f.at is None else [number(c) for c in f.at],
        "station": f.station,
        "from_s": number(f.from_s),
        "to_s": number(f.to_s),
        "length_mm": number(f.length_mm),
        "faces": [_face(part, face, parts) for part, face in f.faces],
        "message": f.message,
        "harm": f.harm,
        "remedy": f.remedy,
        "also": list(f.also),
        "state": f.state,
        "tolerance": number(f.tolerance),
        "worst_case": number(f.worst_case),
        "waived": None if f.waived is None else dict(f.waived),
    }


def _face(part_id: str, face: int, parts: Mapping[str, Part]) -> dict[str, Any]:
    part = parts.get(part_id)
    entity = part.entities[face] if part is not None and face < len(part.entities) else None
    return {
        "part": part_id,
        "face": face,
        "step_entity": None if entity is None else f"#{entity.number}",
        "line": None if entity is None else entity.line,
    }


def _in_force(settings: Settings) -> list[Rule]:
    """All rules; optional ones only where the settings hold what they need."""
    return [rule for rule in RULES.values() if not rule.optional or _is_needed(rule, settings)]


def _is_needed(rule: Rule, settings: Settings) -> bool:
    return bool(getattr(settings, NEEDS.get(rule.key, "material")))


def _limits(rule: Rule, settings: Settings) -> list[dict[str, Any]]:
    """One entry for each number of a rule; one without a number for a rule that has none."""
    shared = {
        "rule": rule.key,
        "title": rule.title,
        "severity": settings.severity(rule.key),
        "quantity": rule.quantities[0],
        "fails": rule.fails,
    }
    standing = {"standing": rule.standing, "standing_text": rule.standing_text}
    if not rule.limits:
        origin = settings.origin(f"{rule.key}.severity")
        return [
            {
                **shared,
                "name": None,
                "value": None,
                "unit": rule.unit,
                "what": rule.what,
                **standing,
                "from": origin,
            }
        ]
    return [
        {
            **shared,
            "name": limit.name,
            "value": number(settings.limit(rule.key, limit.name)),
            "unit": limit.unit,
            "what": limit.what,
            **standing,
            "from": settings.origin(f"{rule.key}.{limit.name}"),
        }
        for limit in rule.limits
    ]


def _settings(settings: Settings) -> dict[str, Any]:
    return {
        **{f"{n.attribute}_mm": number(getattr(settings, n.attribute)) for n in NUMBERS.values()},
        "cover": settings.cover,
        "base": settings.base,
        "beam": None if settings.beam is None else [number(c) for c in settings.beam],
        "scanner": _scanner(settings),
        "clamp": _record(asdict(settings.clamp)),
        "tolerances": _record(settings.tolerances),
        "file": settings.file or None,
        "from": {key: origin for key, origin in sorted(settings.origins.items())},
    }


def _scanner(settings: Settings) -> dict[str, Any] | None:
    return None if settings.scanner is None else _record(asdict(settings.scanner))


def _not_checked(joints: Sequence[JointResult], settings: Settings) -> list[str]:
    items = []
    for rule in _in_force(settings):
        if settings.severity(rule.key) == OFF:
            items.append(f"{rule.title}: switched off in the settings.")
    if any("free_travel" not in joint.survey.interface for joint in joints):
        items.append(
            "Free travel away from the seam: the cover was followed only within the sections, not over the "
            "whole interface."
        )
    for joint in joints:
        if joint.rib_on == "none":
            items.append(f"Rib, flash traps and travel of {joint.id}: there is no weld rib to measure.")
    items.append(TOLERANCE_NOT_CHECKED if settings.tolerances else NO_TOLERANCE_NOT_CHECKED)
    if settings.scanner is None:
        items.append(" ".join((NO_SCANNER_NOT_CHECKED, *(_field(joint) for joint in joints))).rstrip())
    unknown_material = [] if all("material" in joint.extra for joint in joints) else [MATERIAL_NOT_CHECKED]
    return [*items, *unknown_material, *NOT_CHECKED]


def _field(joint: JointResult) -> str:
    """The scan field that a seam needs, as a sentence; '' where it is not known."""
    found = [
        joint.survey.interface.get(key, {}).get("value") for key in ("field_circle", "field_length", "field_width")
    ]
    if None in found:
        return ""
    circle, length, width = found
    return (
        f"The seam of {joint.id} needs a round scan field of {circle:.1f} mm, or one of {length:.1f} x {width:.1f} mm."
    )
