"""Open seams: interruptions and open ends, with what describes the same cause merged into them."""

from __future__ import annotations

from collections.abc import Iterator, Mapping

import numpy as np
from msgspec.structs import replace

from seamcheck.catalogue.kinds import PLAIN_WALL
from seamcheck.catalogue.message import Args
from seamcheck.catalogue.messages import NO_COUNTERPART, OPEN_PLACE, RIB_GONE, WALL_ENDS, WALL_INTERRUPTED, amount_of
from seamcheck.catalogue.rule import SEVERITIES, Rule
from seamcheck.catalogue.rules import RULES
from seamcheck.judge.joint_judge import DraftFinding, JointJudge, point
from seamcheck.measure.table import Interruption

_MERGED_WITH_MISSING_RIB = frozenset(
    key for key, rule in RULES.items() if rule.checks and not rule.for_flat_overlap and key != "sink-travel"
) | {"contact-gap", "not-measured"}


def with_open_seam(judging: JointJudge, drafts: list[DraftFinding]) -> list[DraftFinding]:
    """The drafts with every open place; what lies near one, and is no graver, goes into its ``also``."""
    width = judging.seam.median("rib_width")
    reach = (width / 2 if np.isfinite(width) else 0.5) + 0.5
    result = list(drafts)
    for draft, near in _open_places(judging, reach):
        severity = SEVERITIES.index(draft.finding.severity)
        same = [d for d in result if _describes(d, near) and SEVERITIES.index(d.finding.severity) >= severity]
        own = [] if draft.finding.key in (NO_COUNTERPART, WALL_ENDS, WALL_INTERRUPTED) else ["rib-missing"]
        also = dict.fromkeys([*own, *(d.finding.rule for d in same)])
        result = [d for d in result if not any(d is s for s in same)]
        result.append(replace(draft, finding=replace(draft.finding, also=tuple(also))))
    return result


def _open_places(judging: JointJudge, reach: float) -> Iterator[tuple[DraftFinding, dict[str, np.ndarray]]]:
    """Each open place as a finding, with the stations near it: path id -> (n,) bool."""
    rule = RULES["seam-open"]
    is_wall = judging.joint.kind == PLAIN_WALL
    interrupted, ends = (WALL_INTERRUPTED, WALL_ENDS) if is_wall else (OPEN_PLACE, rule.key)
    taken = set()
    for gap in judging.joint.survey.interruptions:
        taken |= set(gap.ends)
        args = {"length": amount_of(gap.length, "rib_height")}
        yield _at_ends(judging, rule, interrupted, args, gap, reach)
    for view in judging.seam.paths:
        path = view.path
        for end, mark in zip((0, -1), path.ends, strict=False):
            if mark == "open" and (path.id, end) not in taken:
                alone = Interruption(0.0, path.points[end], ((path.id, end),))
                yield _at_ends(judging, rule, ends, {}, alone, reach)
        no_rib = view.reason("rib_height") == "no-rib"
        alone = (view.reason("gap_max") == "no-opposite") & ~view.uncovered & ~no_rib
        for mark, key, side in ((no_rib, RIB_GONE, "no-rib"), (alone, NO_COUNTERPART, "no-opposite")):
            for stretch in view.stretches(mark):
                middle = int(stretch.stations[len(stretch.stations) // 2])
                args = {"length": amount_of(stretch.length, "rib_height")}
                near = view.within(stretch.from_s - reach, stretch.length + 2 * reach)
                yield judging.on_stretch(rule, view, stretch, middle, key, args, side), {path.id: near}


def _at_ends(
    judging: JointJudge, rule: Rule, key: str, args: Args, gap: Interruption, reach: float
) -> tuple[DraftFinding, dict[str, np.ndarray]]:
    views = {view.path.id: view for view in judging.seam.paths}
    near: dict[str, np.ndarray] = {}
    for name, end in gap.ends:
        view = views[name]
        start = 0.0 if end == 0 else view.path.length - reach
        mark = view.within(start, reach)
        near[name] = near.get(name, np.zeros(len(mark), bool)) | mark
    name, end = gap.ends[0]
    path = views[name].path
    at = 0.0 if end == 0 else float(path.length)
    station = 0 if end == 0 else len(path.s) - 1
    finding = replace(
        judging.finding(rule, key, args),
        contour=name, at=point(gap.at), station=station, from_s=at, to_s=at, length_mm=float(gap.length),
        faces=judging.faces(path, station),
    )  # fmt: skip
    return DraftFinding(finding, "open", np.asarray(gap.at, dtype=float)), near


def _describes(draft: DraftFinding, near: Mapping[str, np.ndarray]) -> bool:
    """Whether a finding lies wholly near an open place and would say the same of it."""
    finding = draft.finding
    if finding.rule not in _MERGED_WITH_MISSING_RIB or draft.stations is None or finding.contour is None:
        return False
    if finding.contour not in near:
        return False
    return bool(np.all(near[finding.contour][draft.stations]))
