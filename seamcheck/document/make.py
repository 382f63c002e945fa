"""The review document: everything that a report shows, as plain values."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from importlib import resources
from typing import Any, cast

import numpy as np
from msgspec import UNSET
from msgspec.structs import asdict, replace

from seamcheck.assembly.parts import Assembly, ModelFile, Part
from seamcheck.catalogue.cautions import (
    ALWAYS_ASSUMED,
    ALWAYS_LEFT_OUT,
    CAUTION_TEXTS,
    NO_RIB,
    RULE_OFF,
    SCAN_FIELD,
    remark,
)
from seamcheck.catalogue.message import NOTE, Amount, Message, Sentence, message_of
from seamcheck.catalogue.quantities import QUANTITIES, REASONS
from seamcheck.catalogue.rule import OFF, Check, Rule, slack_of
from seamcheck.document import records
from seamcheck.document.plain import DECIMALS, numbers, plain
from seamcheck.errors import NotReviewed
from seamcheck.judge.bounds import JudgedPath, JudgedSeam, in_force
from seamcheck.judge.findings import NOT_REVIEWED, Face, Finding, JointResult, Judgement
from seamcheck.judge.joint_judge import point
from seamcheck.judge.parts_outside import parts_outside
from seamcheck.judge.tolerance import tolerance_states
from seamcheck.measure.table import PathSurvey
from seamcheck.sections.stretches import cell_lengths, weighted_quantiles
from seamcheck.settings.declared import NUMBERS
from seamcheck.settings.settings import Settings
from seamcheck.version import __version__


def make_document(
    assembly: Assembly,
    joints: Sequence[JointResult],
    judgement: Judgement,
    settings: Settings,
    notes: Sequence[Message | str] = (),
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
    return _plain_document(
        assembly.files,
        (*assembly.notes, *notes),
        settings,
        verdict=judgement.verdict,
        reason=None,
        parts=[_part(part, joints) for part in assembly.parts],
        joints=[_joint(joint, settings, parts) for joint in joints],
        findings=[_finding(f, parts) for f in judgement.findings],
        waivers=judgement.waivers,
        not_checked=_not_checked(joints, settings),
        view=view,
    )


def not_reviewed_document(
    files: Sequence[ModelFile], reason: NotReviewed, settings: Settings, notes: Sequence[Message | str] = ()
) -> dict[str, Any]:
    """The review document of a model that could not be reviewed."""
    return _plain_document(
        files,
        notes,
        settings,
        verdict=NOT_REVIEWED,
        reason=_reason(reason),
        not_checked=[remark("not-checked.nothing")],
    )


def _reason(refusal: NotReviewed) -> records.Reason:
    said = message_of(refusal.message)
    key = refusal.code if said.key == NOTE else said.key
    readings = [records.ReadingRecord(**reading) for reading in refusal.readings]
    return records.Reason(
        code=refusal.code, message=said.text, key=key, args=said.args, parts=said.parts, readings=readings or UNSET
    )


def schema() -> dict[str, Any]:
    """The JSON Schema (draft 2020-12) that every review document holds."""
    import json

    text = resources.files("seamcheck.document").joinpath("document_schema.json").read_text(encoding="utf-8")
    return dict(json.loads(text))


def _plain_document(
    files: Sequence[ModelFile],
    notes: Sequence[Message | str],
    settings: Settings,
    *,
    verdict: Any,
    reason: records.Reason | None,
    not_checked: list[Message],
    parts: Sequence[records.PartRecord] = (),
    joints: Sequence[records.JointRecord] = (),
    findings: Sequence[Finding] = (),
    waivers: Sequence[Mapping[str, Any]] = (),
    view: Any = None,
) -> dict[str, Any]:
    """The whole document, as plain values in the order of its records."""
    described = [
        records.File(file=f.name, sha256=f.sha256, step_schema=f.step_schema, length_unit=f.length_unit) for f in files
    ]
    first = described[0] if described else records.File(file="", sha256="", step_schema="", length_unit="")
    document = records.Document(
        document=records.KIND,
        schema_version=records.SCHEMA_VERSION,
        seamcheck=__version__,
        model=records.Model(
            file=first.file, sha256=first.sha256, step_schema=first.step_schema, length_unit=first.length_unit,
            files=described, parts=list(parts), notes=_notes(notes),
        ),
        verdict=verdict,
        reason=reason,
        joints=list(joints),
        findings=list(findings),
        limits=[entry for rule in in_force(settings) for entry in _limits(rule, settings)],
        waivers=[records.WaiverRecord(**waiver) for waiver in waivers],
        settings=_settings(settings),
        reasons=dict(REASONS),
        assumptions=_assumptions(settings),
        not_checked=not_checked,
        cautions=[remark(key) for key in CAUTION_TEXTS],
        view=UNSET if view is None else view,
    )  # fmt: skip
    return plain(document)


def _notes(notes: Sequence[Message | str]) -> list[Message]:
    """Notes as messages, each once."""
    found = [note if isinstance(note, Message) else message_of(note) for note in notes]
    return list({note.text: note for note in found}.values())


def _part(part: Part, joints: Sequence[JointResult]) -> records.PartRecord:
    roles = [
        role
        for role, held in (
            ("cover", any(part.id in j.cover for j in joints)),
            ("base", any(part.id in j.base for j in joints)),
        )
        if held
    ]
    role: Any = " and ".join(roles) or "other"
    kind: Any = part.kind
    return records.PartRecord(
        id=part.id, name=part.name, path=list(part.path), role=role, kind=kind, solids=part.solids, faces=part.faces,
        file=part.file, notes=_notes(part.notes),
    )  # fmt: skip


def _joint(joint: JointResult, settings: Settings, parts: Mapping[str, Part]) -> records.JointRecord:
    seam = JudgedSeam(joint, settings)
    survey = joint.survey
    views = {view.path.id: view for view in seam.paths}
    states = list(tolerance_states(joint, seam))
    keys = _columns(survey.paths)
    along = [_summaries_along(path) for path in survey.paths]
    chosen: dict[str, Any] = {"rib_on": joint.rib_on, "modelled_state": joint.modelled_state, **joint.extra}
    if "material" in chosen:
        chosen["material"] = _material(chosen["material"])
    interface: Any = {key: _with_sentence(value) for key, value in sorted(survey.interface.items())}
    return records.JointRecord(
        id=joint.id,
        cover=list(joint.cover),
        base=list(joint.base),
        kind=joint.kind,
        confidence=joint.confidence,
        rib_part=survey.rib_part,
        beam=point(joint.beam),
        why=_notes(joint.why),
        length_mm=sum(path.length for path in survey.paths),
        initial_contact_mm=survey.initial_contact,
        summary=_summaries(seam, keys, survey.paths, along, joint.rib_on == "none"),
        junctions={name: point(place) for name, place in sorted(survey.junctions.items())},
        interruptions=[
            records.Missing(length_mm=gap.length, at=point(gap.at), contours=sorted({name for name, _ in gap.ends}))
            for gap in survey.interruptions
        ],
        seam_faces=_seam_faces(joint, parts),
        contours=[_contour(path, views.get(path.id), some) for path, some in zip(survey.paths, along, strict=True)],
        interface=interface,
        tolerances=states,
        parts_outside=parts_outside(seam, states),
        **chosen,
    )


def _with_sentence(value: Mapping[str, Any]) -> dict[str, Any]:
    """A value of the whole interface; where a sentence says what was seen there, with that as a message as well."""
    entry = dict(value)
    if isinstance(entry.get("why"), Sentence):
        entry["said"], entry["why"] = entry["why"].message, str(entry["why"].message.text)
    if "places" in entry:
        entry["places"] = [_with_sentence(place) for place in entry["places"]]
    return entry


def _material(section: Mapping[str, Any]) -> dict[str, Any]:
    """The material section as plain values, with its sentences as messages beside them."""
    messages: dict[str, Message] = {}

    def bare(value: Any) -> Any:
        if isinstance(value, Sentence):
            messages[value.message.text] = value.message
            return value.message.text
        if isinstance(value, Mapping):
            return {key: bare(item) for key, item in value.items()}
        return [bare(item) for item in value] if isinstance(value, list | tuple) else value

    return {**bare(section), "messages": list(messages.values())}


def _seam_faces(joint: JointResult, parts: Mapping[str, Part]) -> records.SeamFaces:
    """The faces that the stations lie on: the rib's top, and those of the opposite part."""
    survey = joint.survey

    def faces(part: str, found: Sequence[np.ndarray]) -> list[Face]:
        return [_face(part, face, parts) for face in sorted({int(f) for fs in found for f in fs if f >= 0})]

    return records.SeamFaces(
        rib=faces(survey.rib_part, [path.rib_face for path in survey.paths]),
        opposite=faces(survey.counter_part, [path.cover_face for path in survey.paths]),
    )


def _columns(paths: Sequence[PathSurvey]) -> list[str]:
    """Keys of all columns: in the order of their declaration, then what others added."""
    present = {key for path in paths for key in path.columns}
    return [key for key in QUANTITIES if key in present] + sorted(present - set(QUANTITIES))


def _weights(paths: Sequence[PathSurvey]) -> np.ndarray:
    cells = [cell_lengths(p.s, p.length, p.closed) for p in paths if len(p.s)]
    return np.concatenate(cells) if cells else np.zeros(0)


def _summaries_along(path: PathSurvey) -> dict[str, records.Summary | None]:
    """Of every column of one path."""
    weights = _weights([path])
    return {key: _summary(np.asarray(path.columns[key], dtype=float), weights) for key in _columns([path])}


def _summaries(
    seam: JudgedSeam,
    keys: Sequence[str],
    paths: Sequence[PathSurvey],
    along: Sequence[dict[str, records.Summary | None]],
    is_flat: bool,
) -> dict[str, records.Summary | None]:
    """Of every column over all paths, with the share of its length that is beyond a limit."""
    weights = _weights(paths)
    rules = [rule for rule in in_force(seam.settings) if seam.settings.severity(rule.key) != OFF]
    checks = [(rule, check) for rule in rules if rule.for_flat_overlap or not is_flat for check in rule.checks]
    result = {}
    for key in keys:
        found = along[0][key] if len(paths) == 1 else _summary(seam.pooled(key), weights)
        beyond = _beyond(seam, key, checks)
        if found is not None and beyond is not None:
            measured = weights[np.isfinite(seam.pooled(key))].sum()
            found = replace(found, outside=float(weights[beyond].sum() / measured) if measured else 0.0)
        result[key] = found
    return result


def _beyond(seam: JudgedSeam, key: str, checks: Sequence[tuple[Rule, Check]]) -> np.ndarray | None:
    """(n,) bool over all paths: where a column is beyond a limit of some checks; None where none limits it."""
    mine = [(rule, check) for rule, check in checks if key in (check.column, check.judged)]
    masks, limited = [], False
    slack = slack_of(key, QUANTITIES[key].unit) if key in QUANTITIES else 0.0
    for view in seam.paths if mine else ():
        mask = np.zeros(len(view.path.s), dtype=bool)
        for rule, check in mine:
            values = view.column(check.column)
            for sign, bound in ((1.0, check.lower), (-1.0, check.upper)):
                for step in () if bound is None else view.steps(rule, check, bound):
                    limited = True
                    with np.errstate(invalid="ignore"):
                        mask |= (values - step.limit) * sign < -slack
        masks.append(mask)
    return np.concatenate(masks) if limited and masks else None


def _summary(values: np.ndarray, weights: np.ndarray) -> records.Summary | None:
    """Least, largest and, by length of seam, median, 5 % and 95 %; None where nothing was measured."""
    known = np.isfinite(values)
    if not known.any():
        return None
    low, middle, high = weighted_quantiles(values, weights, (0.05, 0.5, 0.95))
    some = values[known]
    return records.Summary(min=float(some.min()), median=middle, max=float(some.max()), p05=low, p95=high)


def _contour(
    path: PathSurvey, view: JudgedPath | None, summary: dict[str, records.Summary | None]
) -> records.ContourRecord:
    keys = _columns([path])
    side: Any = path.clamp_side or None
    stations: Any = {"s": path.s, **dict(zip("xyz", path.points.T, strict=True)), "u": path.u}
    stations |= {key: path.columns[key] for key in keys}
    return records.ContourRecord(
        id=path.id,
        closed=path.closed,
        length_mm=path.length,
        clamp_side=side,
        ends=list(path.ends),
        junctions=[end.partition(":")[2] for end in path.ends if end.startswith("junction:")],
        stations=stations,
        unmeasured=[run for key in keys for run in _unmeasured(path, key)],
        summary=summary,
        bounds=[] if view is None else _bounds(view),
    )


def _unmeasured(path: PathSurvey, key: str) -> list[records.Unmeasured]:
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
        records.Unmeasured(column=key, from_s=float(path.s[a]), to_s=float(path.s[b]), why=str(why[a]))
        for a, b in zip(starts, ends, strict=True)
        if why[a]
    ]


def _bounds(view: JudgedPath) -> list[records.Bounds]:
    """What each rule compares along this path: a number, or one for every station where the bound changes."""
    result = []
    for rule in in_force(view.seam.settings):
        if not view.seam.judges(rule):
            continue
        for check in rule.checks:
            if check.column not in view.path.columns:
                continue
            sides: dict[str, dict[str, Any]] = {}
            for side, bound in (("low", check.lower), ("high", check.upper)):
                for step in () if bound is None else view.steps(rule, check, bound):
                    sides.setdefault(step.severity, {"low": None, "high": None})[side] = _constant_or_list(step.limit)
            judged: dict[str, Any] = {"rule": rule.key, "column": check.column, "quantity": check.judged}
            result += [records.Bounds(**judged, severity=cast(Any, name), **ends) for name, ends in sides.items()]
    return result


def _constant_or_list(values: np.ndarray) -> Any:
    rounded = np.round(values, DECIMALS)
    alike = (rounded == rounded[0]).all() or not np.isfinite(values).any()
    return numbers(values[:1])[0] if alike else numbers(values)


def _finding(found: Finding, parts: Mapping[str, Part]) -> Finding:
    """The finding with the entities of its faces."""
    return replace(found, faces=tuple(_face(face.part, face.face, parts) for face in found.faces))


def _face(part_id: str, face: int, parts: Mapping[str, Part]) -> Face:
    part = parts.get(part_id)
    entity = part.entities[face] if part is not None and face < len(part.entities) else None
    return Face(part_id, face, None, None) if entity is None else Face(part_id, face, f"#{entity.number}", entity.line)


def _limits(rule: Rule, settings: Settings) -> list[records.LimitRecord]:
    """One entry for each number of a rule; one without a number for a rule that has none."""
    shared: dict[str, Any] = {
        "rule": rule.key,
        "title": rule.title,
        "severity": settings.severity(rule.key),
        "quantity": rule.quantities[0],
        "fails": rule.fails,
        "standing": rule.standing,
        "standing_text": rule.standing_text,
    }
    if not rule.limits:
        origin: Any = settings.origin(f"{rule.key}.severity")
        return [records.LimitRecord(**shared, name=None, value=None, unit=rule.unit, what=rule.what, origin=origin)]
    return [
        records.LimitRecord(
            **shared,
            name=limit.name,
            value=settings.limit(rule.key, limit.name),
            unit=limit.unit,
            what=limit.what,
            origin=cast(Any, settings.origin(f"{rule.key}.{limit.name}")),
        )
        for limit in rule.limits
    ]


def _settings(settings: Settings) -> Any:
    return records.SettingsRecord(
        **{f"{n.attribute}_mm": getattr(settings, n.attribute) for n in NUMBERS.values()},
        cover=settings.cover,
        base=settings.base,
        beam=settings.beam,
        scanner=_scanner(settings),
        clamp=asdict(settings.clamp),
        load=UNSET if settings.load is None else asdict(settings.load),
        tolerances=dict(settings.tolerances),
        file=settings.file or None,
        origins=dict(sorted(settings.origins.items())),
    )


def _scanner(settings: Settings) -> dict[str, Any] | None:
    """The scanner, with the index that is taken for the cover and where that comes from."""
    if settings.scanner is None:
        return None
    of_material = settings.optics.get("", (None, None))[1]
    origin = "given" if settings.scanner.index is not None else "assumption" if of_material is None else "material"
    return {**asdict(settings.scanner), "index": settings.light().index, "index_from": origin}


def _assumptions(settings: Settings) -> list[Message]:
    """What the review takes for granted; what the settings give is not left out."""
    keys = (
        "assumed.tolerances" if settings.tolerances else "assumed.as-drawn",
        "assumed.sinks-straight",
        "assumed.parallel-light" if settings.scanner is None else "assumed.scanner",
        *(("assumed.load",) if settings.load is not None else ()),
        *ALWAYS_ASSUMED,
    )
    return [remark(key) for key in keys]


def _not_checked(joints: Sequence[JointResult], settings: Settings) -> list[Message]:
    items = [remark(RULE_OFF, rule=rule.title) for rule in in_force(settings) if settings.severity(rule.key) == OFF]
    if any("free_travel" not in joint.survey.interface for joint in joints):
        items.append(remark("not-checked.travel-in-sections"))
    items += [remark(NO_RIB, joint=joint.id) for joint in joints if joint.rib_on == "none"]
    items.append(remark("not-checked.other-tolerances" if settings.tolerances else "not-checked.no-tolerances"))
    if settings.scanner is None:
        items.append(remark("not-checked.no-scanner"))
        items += [field for joint in joints if (field := _field(joint)) is not None]
    if settings.load is not None and (settings.load.strength is None or settings.load.weld_factor is None):
        items.append(remark("not-checked.weld-strength"))
    if not all("material" in joint.extra for joint in joints):
        items.append(remark("not-checked.material"))
    return [*items, *(remark(key) for key in ALWAYS_LEFT_OUT)]


def _field(joint: JointResult) -> Message | None:
    """The scan field that a seam needs; None where it is not known."""
    values = [
        joint.survey.interface.get(key, {}).get("value") for key in ("field_circle", "field_length", "field_width")
    ]
    found = [Amount(float(value), "mm", 1) for value in values if value is not None]
    if len(found) < len(values):
        return None
    circle, length, width = found
    return remark(SCAN_FIELD, joint=joint.id, circle=circle, length=length, width=width)
