"""Judging: surveyed columns against bounds, contiguous stretches as findings, waivers, the verdict."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence

import numpy as np
from msgspec.structs import replace

from seamcheck.catalogue.interface_rules import REPLACED_BY as BY_INTERFACE
from seamcheck.catalogue.material_rules import REPLACED_BY as BY_MATERIAL
from seamcheck.catalogue.messages import amount_of
from seamcheck.catalogue.quantities import QUANTITIES
from seamcheck.catalogue.rule import NOTE, OFF, SEVERITIES, SLACK
from seamcheck.catalogue.rules import RULES
from seamcheck.catalogue.say import refused, together
from seamcheck.judge.bounds import RIB_MISSING, TRAPS_MISSING
from seamcheck.judge.columns import broken_stretches, holes, not_measured
from seamcheck.judge.findings import Finding, JointResult, Judgement
from seamcheck.judge.grouping import along_paths, grouped, junctions_together
from seamcheck.judge.identity import JointFrame, finding_name, numbered
from seamcheck.judge.interface_values import SAME_PLACE, interface_travel, interface_value, with_places
from seamcheck.judge.joint_judge import DraftFinding, JointJudge, of_kind, point, saying
from seamcheck.judge.lap import rib_missing
from seamcheck.judge.open_seam import with_open_seam
from seamcheck.judge.parts_outside import parts_outside
from seamcheck.judge.remedies import with_remedies
from seamcheck.judge.tolerance import percent_of_parts, tolerance_states
from seamcheck.judge.waiving import with_waivers
from seamcheck.settings.settings import Settings

_REPLACED_BY = {**BY_INTERFACE, **BY_MATERIAL}

_SAME_POINT = 1e-3  # mm
_ON_THE_FLOOR = 0.02  # mm: so near to the rib's height, what ends the travel is the floor of the trap


def judge(
    joints: Sequence[JointResult],
    settings: Settings,
    part_names: Mapping[str, str] | None = None,
    doubts: Sequence[str] = (),
) -> Judgement:
    """Judge everything that was measured on all joints.

    Parameters
    ----------
    joints : as surveyed
    settings : limits, severities, waivers
    part_names : part id -> name; tells apart findings that are alike in everything else
    doubts : sentences about damage of the model

    Raises
    ------
    NotReviewed : no-seam, without a joint, or where one has no station: nothing that was not measured passes
    """
    if not joints or not all(any(len(path.s) for path in joint.survey.paths) for joint in joints):
        raise refused("no-seam", "no-seam.no-station")
    part_names = part_names or {}
    found: list[Finding] = []
    names: list[str] = []
    order: list[tuple[object, ...]] = []
    for number, joint in enumerate(joints):
        parts = [part_names.get(p, "") for p in (*joint.cover, *joint.base)]
        judging = JointJudge(joint, settings, part_names)
        drafts = [replace(draft, finding=of_kind(draft.finding, joint.kind)) for draft in _drafts(judging)]
        if doubts and number == 0 and settings.severity("model-doubt") != OFF:
            drafts.append(judging.seam_finding("model-doubt", {"what": together(*doubts)}))
        points = np.concatenate([view.path.points for view in judging.seam.paths])
        frame = JointFrame.of(points, judging.seam.weights(), joint.beam)
        for draft in drafts:
            found.append(draft.finding)
            place = None if draft.place is None else frame.local(draft.place)
            names.append(finding_name(draft.finding.rule, draft.side, place))
            order.append(_rank(draft.finding, frame, parts))
    found = [replace(f, id=name) for f, name in zip(found, numbered(names, order), strict=True)]
    rules = list(RULES)
    found.sort(
        key=lambda f: (
            SEVERITIES.index(f.severity),
            rules.index(f.rule),
            f.joint,
            f.contour or "",
            f.from_s or 0.0,
            f.id,
        )
    )
    judgement = with_waivers(found, settings, {joint.id: joint for joint in joints})
    return Judgement(grouped(judgement.findings), judgement.waivers)


def _rank(finding: Finding, frame: JointFrame, parts: Sequence[str]) -> tuple[object, ...]:
    """Which of several findings of one name comes first: by its place in the joint, what it is, and by names last."""
    place = (0.0, 0.0, 0.0) if finding.at is None else frame.local(np.asarray(finding.at))
    numbers = [-np.inf if v is None else round(v, 3) for v in (finding.margin, finding.value, finding.length_mm)]
    return (*(round(c, 3) for c in place), *numbers, *parts)


def _drafts(judging: JointJudge) -> list[DraftFinding]:
    """All findings of one joint, rule after rule."""
    rules = [r for r in RULES.values() if judging.seam.judges(r) and judging.applies(r)]
    on = {rule.key for rule in rules}
    drafts: list[DraftFinding] = []
    drawn_welded = _is_drawn_welded(judging)
    for rule in rules:
        if rule.key == "contact-gap" and drawn_welded:
            continue
        for view in judging.seam.paths:
            for check in rule.checks:
                drafts += broken_stretches(judging, rule, check, view)
    for rule in rules:
        for check in rule.checks:
            if QUANTITIES[check.column].per == "interface":
                drafts += interface_value(judging, rule, check)
    if "cover-hole" in on:
        drafts += holes(judging)
    drafts = with_remedies(judging, with_places(judging, _without_replaced(judging, drafts)))
    if "sink-travel" in on:
        drafts = _without_wedged([*drafts, *interface_travel(judging, drafts)])
    if "not-measured" in on:
        drafts += not_measured(judging, rules, drawn_welded)
    if "parts-outside" in on and judging.settings.tolerances:
        drafts += _parts_outside(judging, drafts)
    if "drawn-welded" in on and drawn_welded:
        drafts.append(judging.seam_finding("drawn-welded", {"collapse": amount_of(judging.settings.collapse, "gap")}))
    if "seam-junction" in on:
        drafts = _junctions(judging, drafts)
    if RIB_MISSING in on:
        gaps = [d for d in drafts if judging.is_flat and d.finding.rule == "contact-gap"]
        drafts = [d for d in drafts if not any(d is gap for gap in gaps)]
        drafts.append(rib_missing(judging, ("contact-gap",) if gaps else ()))
    if TRAPS_MISSING in on:  # without traps none is open: one fact
        own = dict.fromkeys(d.finding.rule for d in drafts if d.finding.rule == "trap-open-inner")
        drafts = [d for d in drafts if d.finding.rule not in own]
        drafts.append(judging.seam_finding(TRAPS_MISSING, {}, tuple(own)))
    if "joint-left-out" in on:
        drafts += [judging.seam_finding("joint-left-out", {"what": what}) for what in judging.joint.left_out]
    if not judging.is_flat and "seam-open" in on:
        drafts = with_open_seam(judging, drafts)
    return _once_for_all_paths(judging, drafts)


def _once_for_all_paths(judging: JointJudge, drafts: Sequence[DraftFinding]) -> list[DraftFinding]:
    """What holds along several whole paths, such as open inner traps of two chambers, is one finding."""
    views = {view.path.id: view for view in judging.seam.paths}
    groups: dict[tuple[str, str | None, str], list[DraftFinding]] = {}
    for draft in drafts:
        found = draft.finding
        if found.column is None or found.contour not in views or draft.stations is None:
            continue
        known = np.flatnonzero(np.isfinite(views[found.contour].column(found.column)))
        if len(known) and np.isin(known, draft.stations).all():
            groups.setdefault((found.key, found.column, found.severity), []).append(draft)
    kept = list(drafts)
    for group in groups.values():
        if len(group) > 1:
            one = along_paths([draft.finding for draft in group])
            lead = replace(group[0], finding=one, place=None)
            kept = [lead if d is group[0] else d for d in kept if not any(d is other for other in group[1:])]
    return kept


def _parts_outside(judging: JointJudge, drafts: Sequence[DraftFinding]) -> Iterator[DraftFinding]:
    """The share of parts that break a limit, where no finding reports it yet."""
    found = parts_outside(judging.seam, list(tolerance_states(judging.joint, judging.seam)))
    limit = judging.settings.limit("parts-outside", "max")
    told = {rule for draft in drafts for rule in (draft.finding.rule, *draft.finding.also)}
    if found is None or found.ppm is None or found.ppm <= 1e4 * limit or set(found.rules) <= told:
        return
    draft = judging.seam_finding(
        "parts-outside", {"percent": percent_of_parts(found.ppm / 1e6), "what": ",".join(found.rules)}
    )
    percent = found.ppm / 1e4
    yield replace(draft, finding=replace(draft.finding, value=percent, limit=limit, margin=limit - percent, at=None))


def _is_drawn_welded(judging: JointJudge) -> bool:
    """Whether all of the seam overlaps by the planned collapse."""
    within = judging.settings.limit("drawn-welded", "within")
    low, high = judging.seam.pooled("gap_min"), judging.seam.pooled("gap_max")
    values = np.concatenate([low, high])
    values = values[np.isfinite(values)]
    return bool(len(values)) and bool(np.all(np.abs(values + judging.settings.collapse) <= within + SLACK["mm"]))


def _junctions(judging: JointJudge, drafts: Sequence[DraftFinding]) -> list[DraftFinding]:
    """One finding for each junction that breaks a limit, the other limit named with it; one note of all that keep."""
    rule = RULES["seam-junction"]
    broken = [d for d in drafts if d.finding.rule == rule.key]
    kept = [d for d in drafts if d.finding.rule != rule.key]
    notes: dict[int, list[DraftFinding]] = {}
    for name, place in sorted(judging.joint.survey.junctions.items()):
        mine = [d for d in broken if d.place is not None and np.linalg.norm(d.place - place) < _SAME_POINT]
        if mine:
            said = [message for d in mine[1:] for message in d.finding.messages]
            kept.append(replace(mine[0], finding=saying(mine[0].finding, *said)))
            continue
        ends = [e for view in judging.seam.paths for e in view.path.ends]
        paths = ends.count(f"junction:{name}")
        finding = judging.finding(rule, rule.key, {"count": str(paths)})
        note = replace(finding, at=point(place), severity=NOTE)
        notes.setdefault(paths, []).append(DraftFinding(note, "junction", np.asarray(place, dtype=float)))
    for paths, alike in notes.items():
        told = alike[0].finding if len(alike) == 1 else junctions_together([d.finding for d in alike], str(paths))
        kept.append(replace(alike[0], finding=told))
    return kept


def _without_replaced(judging: JointJudge, drafts: Sequence[DraftFinding]) -> list[DraftFinding]:
    """The drafts without those that a more severe rule reports at the same place; it names them in ``also``."""
    kept: list[DraftFinding] = []
    also: dict[int, list[str]] = {}
    for draft in drafts:
        graver = _REPLACED_BY.get(draft.finding.rule)
        same = [i for i, d in enumerate(drafts) if d.finding.rule == graver and _is_covered(judging, draft, d)]
        if not same:
            kept.append(draft)
        for i in same:
            also.setdefault(i, []).append(draft.finding.rule)
    named = {
        id(drafts[i]): replace(
            drafts[i], finding=replace(drafts[i].finding, also=tuple(dict.fromkeys((*drafts[i].finding.also, *rules))))
        )
        for i, rules in also.items()
    }
    return [named.get(id(draft), draft) for draft in kept]


def _without_wedged(drafts: Sequence[DraftFinding]) -> list[DraftFinding]:
    """Overlapping flanks are reported once where the free travel ends at the same two faces."""
    ends = {frozenset(d.finding.faces) for d in drafts if d.finding.rule == "sink-travel"}
    wedged = {
        frozenset(d.finding.faces)
        for d in drafts
        if d.finding.rule == "guide-play" and (d.finding.value or 0.0) < 0.0 and frozenset(d.finding.faces) in ends
    }
    kept = []
    for draft in drafts:
        found = draft.finding
        if frozenset(found.faces) in wedged and found.rule == "sink-travel":
            found = replace(found, also=tuple(dict.fromkeys((*found.also, "guide-play"))))
        if frozenset(found.faces) not in wedged or found.rule != "guide-play":
            kept.append(replace(draft, finding=found))
    return kept


def _is_covered(judging: JointJudge, draft: DraftFinding, graver: DraftFinding) -> bool:
    """Whether the finding of a more severe rule has the same cause."""
    mild, grave = draft.finding, graver.finding
    if SEVERITIES.index(grave.severity) > SEVERITIES.index(mild.severity) or not _overlap(judging, graver, draft):
        return False
    if mild.rule == "clamp-tilt" and draft.stations is not None and graver.stations is not None:
        return bool(np.isin(draft.stations, graver.stations).all())
    if mild.rule != "sink-travel" or mild.value is None or grave.value is None:
        return True
    return mild.value > grave.value - _ON_THE_FLOOR  # it is the trap's floor that stops the cover


def _overlap(judging: JointJudge, one: DraftFinding, other: DraftFinding) -> bool:
    if one.stations is None and other.stations is None:
        return True  # both about the whole interface
    if one.stations is None or other.stations is None:
        on, off = (one, other) if other.stations is None else (other, one)
        path = next(view.path for view in judging.seam.paths if view.path.id == on.finding.contour)
        if off.finding.at is None:
            return False
        return bool((np.linalg.norm(path.points[on.stations] - np.asarray(off.finding.at), axis=1) < SAME_PLACE).any())
    if one.finding.contour != other.finding.contour or {_side(one), _side(other)} == {"inner", "outer"}:
        return False
    return bool(np.isin(one.stations, other.stations).any())


def _side(draft: DraftFinding) -> str:
    """'inner' or 'outer' for a finding about one side of the seam."""
    return (draft.finding.column or "").rpartition("_")[2]
