"""Findings of two reviews: which are the same, by name and by place.

The name of a finding holds a cell of 10 mm, so it can change with the middle of its stretch, and two findings of
one rule can exchange names when one of them goes. So the place decides, and the name where places say nothing.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

import numpy as np
from msgspec import Struct, field
from scipy.spatial import cKDTree

from seamcheck.catalogue.quantities import QUANTITIES
from seamcheck.comparison.align import Alignment, JointPair, other_side
from seamcheck.comparison.nearest import find_nearest
from seamcheck.comparison.paths import SeamPath
from seamcheck.comparison.rigid import Rigid
from seamcheck.comparison.tolerances import tolerance
from seamcheck.sections.stretches import MERGE

NEAR = 5.0
"""mm: a finding under its old name counts as the same one up to so far away."""

LONGER = 1.0
"""mm: how much longer a stretch must have become to count as worse; stretches closer than this are one."""

NEW, WORSE, SAME, BETTER, FIXED = "new", "worse", "same", "better", "fixed"

Finding = Mapping[str, Any]


class Match(Struct, frozen=True, eq=False, dict=True):
    """One finding of the new review and what it was before.

    Attributes
    ----------
    new : the finding now
    old : the one that it was; None where it is new
    state : NEW, WORSE, SAME or BETTER
    parts : further old findings that have grown into it; for a piece of one that has fallen apart, empty
    is_piece : whether another new finding counts as the same old one already
    """

    new: Finding
    old: Finding | None
    state: str
    parts: tuple[Finding, ...] = field(default=())
    is_piece: bool = False


class Matching(Struct, frozen=True, eq=False, dict=True):
    """All findings of both reviews: ``now`` in the order of the new review, ``fixed`` in that of the old."""

    now: tuple[Match, ...]
    fixed: tuple[Finding, ...]

    def of(self, *states: str) -> tuple[Match, ...]:
        return tuple(match for match in self.now if match.state in states)


def match_findings(old: Sequence[Finding], new: Sequence[Finding], alignment: Alignment, motion: Rigid) -> Matching:
    """Match the findings of two reviews.

    Parameters
    ----------
    old, new : findings of the review documents
    alignment : of the seams
    motion : from the old model's coordinates to the new one's
    """
    sites_old = [_Site(f, alignment, motion, is_old=True) for f in old]
    sites_new = [_Site(f, alignment, motion, is_old=False) for f in new]
    ranked = []
    for i, a in enumerate(sites_old):
        for j, b in enumerate(sites_new):
            score = _similarity(a, b)
            if score is not None:
                ranked.append((score, -i, -j))
    partner: dict[int, int] = {}
    taken: set[int] = set()
    for _, i, j in sorted(ranked, reverse=True):
        if -i not in taken and -j not in partner:
            partner[-j] = -i
            taken.add(-i)
    merged: dict[int, list[int]] = {}
    for i, a in enumerate(sites_old):
        if i in taken:
            continue
        into = next((j for j, b in enumerate(sites_new) if j in partner and _is_within(a, b)), None)
        if into is not None:
            merged.setdefault(into, []).append(i)
            taken.add(i)
    now = []
    for j, b in enumerate(sites_new):
        parts = tuple(old[i] for i in merged.get(j, ()))
        if j in partner:
            before = old[partner[j]]
            now.append(Match(b.finding, before, _state(before, b.finding, parts), parts))
            continue
        whole = next((i for i, a in enumerate(sites_old) if _is_within(b, a)), None)
        if whole is not None and any(partner.get(k) == whole for k in partner):
            now.append(Match(b.finding, old[whole], _state(old[whole], b.finding, ()), is_piece=True))
        else:
            now.append(Match(b.finding, None, NEW))
    return Matching(tuple(now), tuple(f for i, f in enumerate(old) if i not in taken))


class _Site:
    """A finding with what it is about and where it lies, in the new model's coordinates.

    key : joint (of the new review), rule, quantity, column, side of the limit
    points : (n, 3) mm; none where the whole seam is meant
    """

    def __init__(self, finding: Finding, alignment: Alignment, motion: Rigid, is_old: bool) -> None:
        self.finding = finding
        pair = _pair_of(finding, alignment, is_old)
        swapped = is_old and pair is not None and _is_swapped(pair)
        names = [str(finding["quantity"] or ""), str(finding["column"] or "")]
        if swapped:
            names = [other_side(name) for name in names]
        joint = finding["joint"] if pair is None else pair.new["id"]
        self.key = (joint, finding["rule"], *names, _side(finding))
        self.points = _points(finding, pair, motion, is_old)
        self.is_one_of_its_kind = QUANTITIES[names[0]].per == "interface" if names[0] in QUANTITIES else False
        self.tree = cKDTree(self.points) if len(self.points) else None


def _similarity(a: _Site, b: _Site) -> tuple[int, float, float] | None:
    """How sure it is that two findings are the same, to be compared; None where they are not.

    Overlapping stretches come first, by their length; then the same name near by; then a value of the whole
    interface, which has one place only.
    """
    if a.key != b.key:
        return None
    same_name = float(a.finding["id"] == b.finding["id"])
    if a.tree is None or b.tree is None:
        return (2, same_name, 0.0) if a.tree is b.tree else None
    share = _share_within(a, b)
    if share > 0:
        overlap = share * max(float(a.finding["length_mm"] or 0.0), 0.1)
        return (3, overlap + 1e-3 * same_name, -_apart(a, b))
    if same_name and _apart(a, b) <= NEAR:
        return (2, same_name, -_apart(a, b))
    if a.is_one_of_its_kind and a.finding["contour"] is None and b.finding["contour"] is None:
        return (1, same_name, -_apart(a, b))
    return None


def _is_within(a: _Site, b: _Site) -> bool:
    """Whether most of one finding lies within another of the same kind."""
    if a.key != b.key or a.tree is None or b.tree is None:
        return False
    return _share_within(a, b) >= 0.5


def _share_within(a: _Site, b: _Site) -> float:
    """Share of the places of a that lie on b."""
    assert b.tree is not None
    distance, _ = b.tree.query(a.points)
    return float(np.mean(distance <= MERGE))


def _apart(a: _Site, b: _Site) -> float:
    assert b.tree is not None
    return float(b.tree.query(a.points)[0].min())


def _side(finding: Finding) -> str:
    value, limit = finding["value"], finding["limit"]
    if not isinstance(value, int | float) or not isinstance(limit, int | float):
        return ""
    return "low" if value < limit else "high"


def _pair_of(finding: Finding, alignment: Alignment, is_old: bool) -> JointPair | None:
    role = "old" if is_old else "new"
    return next((pair for pair in alignment.pairs if getattr(pair, role)["id"] == finding["joint"]), None)


def _points(finding: Finding, pair: JointPair | None, motion: Rigid, is_old: bool) -> np.ndarray:
    """(n, 3) mm about 0.5 mm apart along the stretch and along all further places of a finding: see _points_of_one."""
    spots = [finding, *({**finding, **place} for place in finding.get("places") or ())]
    return np.concatenate([_points_of_one(spot, pair, motion, is_old) for spot in spots])


def _points_of_one(finding: Finding, pair: JointPair | None, motion: Rigid, is_old: bool) -> np.ndarray:
    """(n, 3) mm about 0.5 mm apart along the stretch; where the old seam has moved, its places on the new one."""
    at = finding["at"]
    place = np.zeros((0, 3)) if at is None else np.array([at], dtype=float)
    if is_old:
        place = motion.points(place) if len(place) else place
    if pair is None or finding["contour"] is None or finding["from_s"] is None:
        return place
    paths = pair.before if is_old else pair.after
    k = next((k for k, path in enumerate(paths) if path.id == finding["contour"]), None)
    if k is None:
        return place
    s = _along(paths[k], float(finding["from_s"]), float(finding["to_s"]), float(finding["length_mm"] or 0.0))
    points = np.column_stack([np.interp(s, paths[k].corner_s, paths[k].corners[:, axis]) for axis in range(3)])
    if is_old:
        tangents = np.column_stack([np.interp(s, paths[k].s, paths[k].tangents[:, axis]) for axis in range(3)])
        size = np.linalg.norm(tangents, axis=1, keepdims=True)
        feet = find_nearest(points, pair.after, tangents=tangents / np.where(size > 0, size, 1.0))
        points = np.where(feet.found[:, None], feet.points, points)
    return points


def _along(path: SeamPath, start: float, end: float, length: float) -> np.ndarray:
    """(n,) mm: arc lengths along a stretch, which may pass the start of a closed path."""
    span = end - start if end >= start else end - start + path.length
    if path.closed and length >= path.length - 0.01:
        start, span = 0.0, path.length
    s = start + np.linspace(0.0, span, max(2, int(span / 0.5) + 1))
    return np.mod(s - path.corner_s[0], path.length) + path.corner_s[0] if path.closed else s


def _is_swapped(pair: JointPair) -> bool:
    """Whether the inner side of the old seam is the outer one along most of the new seam."""
    marks = [pair.swapped(k)[feet.found] for k, feet in enumerate(pair.onto_old)]
    together = np.concatenate(marks) if marks else np.zeros(0, dtype=bool)
    return bool(len(together)) and float(np.mean(together)) > 0.5


def _state(old: Finding, new: Finding, parts: Sequence[Finding]) -> str:
    """WORSE where it is farther beyond its limit, or longer, or no longer waived; BETTER the other way round."""
    if bool(old["waived"]) != bool(new["waived"]):
        return BETTER if new["waived"] else WORSE
    noise = float(tolerance(str(new["quantity"]), float(new["value"] or 0.0)))
    deeper = _change(old["margin"], new["margin"], noise)
    before = float(old["length_mm"] or 0.0) + sum(float(part["length_mm"] or 0.0) for part in parts)
    longer = float(new["length_mm"] or 0.0) - before
    if deeper < 0 or (longer > LONGER and old["contour"] is not None):
        return WORSE
    if deeper > 0 or (longer < -LONGER and old["contour"] is not None):
        return BETTER
    return SAME


def _change(old: Any, new: Any, slack: float) -> int:
    """-1, 0 or 1: whether a margin became smaller, stayed or became larger."""
    if not isinstance(old, int | float) or not isinstance(new, int | float):
        return 0
    return 0 if abs(new - old) <= slack else -1 if new < old else 1
