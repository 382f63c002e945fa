"""Pair the joints of two reviews, and every station with its place on the other seam, by position alone."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

import numpy as np
from msgspec import Struct

from seamcheck.comparison.nearest import NearestPoints, find_nearest
from seamcheck.comparison.paths import SeamPath

_SIDES = (("inner", "outer"), ("outer", "inner"))


class JointPair(Struct, frozen=True, eq=False, dict=True):
    """One joint of both reviews, its old seam brought into the new model's coordinates.

    Attributes
    ----------
    old, new : the joints' records
    before, after : their paths
    onto_old : for each path of ``after``, feet of its stations on ``before``
    onto_new : for each path of ``before``, feet of its stations on ``after``
    """

    old: Mapping[str, Any]
    new: Mapping[str, Any]
    before: tuple[SeamPath, ...]
    after: tuple[SeamPath, ...]
    onto_old: tuple[NearestPoints, ...]
    onto_new: tuple[NearestPoints, ...]

    def swapped(self, k: int) -> np.ndarray:
        """(n,) bool: stations of ``after[k]`` whose outer side is the inner one of the old seam there."""
        path, feet = self.after[k], self.onto_old[k]
        mark = np.zeros(len(path.s), dtype=bool)
        for i, old in enumerate(self.before):
            here = feet.path == i
            mark[here] = np.einsum("ij,ij->i", path.u[here], old.u[feet.station[here]]) < 0
        return mark


class Alignment(Struct, frozen=True, eq=False, dict=True):
    """All joints of both reviews: pairs, and those without a counterpart."""

    pairs: tuple[JointPair, ...]
    only_old: tuple[Mapping[str, Any], ...]
    only_new: tuple[Mapping[str, Any], ...]


def align(
    old: Mapping[str, Any], new: Mapping[str, Any], before: Sequence[SeamPath], after: Sequence[SeamPath]
) -> Alignment:
    """Pair what lies in the same place.

    Parameters
    ----------
    old, new : review documents
    before : paths of the old seam, in the new model's coordinates
    after : paths of the new seam
    """
    votes: dict[tuple[str, str], float] = {}
    for path in after:
        feet = find_nearest(path.points, before, tangents=path.tangents)
        for i in np.unique(feet.path[feet.found]):
            key = (before[i].joint, path.joint)
            votes[key] = votes.get(key, 0.0) + path.length * float(np.mean(feet.path == i))
    pairs: list[JointPair] = []
    taken: set[tuple[str, str]] = set()
    for a, b in sorted(votes, key=lambda key: (-votes[key], key)):
        if ("old", a) in taken or ("new", b) in taken:
            continue
        taken |= {("old", a), ("new", b)}
        pairs.append(_pair(_joint(old, a), _joint(new, b), before, after))
    if not pairs and len(old["joints"]) == len(new["joints"]) == 1:  # nothing lies near: still the same joint
        pairs.append(_pair(old["joints"][0], new["joints"][0], before, after))
        taken |= {("old", old["joints"][0]["id"]), ("new", new["joints"][0]["id"])}
    order = [joint["id"] for joint in new["joints"]]
    return Alignment(
        tuple(sorted(pairs, key=lambda pair: order.index(pair.new["id"]))),
        tuple(joint for joint in old["joints"] if ("old", joint["id"]) not in taken),
        tuple(joint for joint in new["joints"] if ("new", joint["id"]) not in taken),
    )


def _pair(
    old: Mapping[str, Any], new: Mapping[str, Any], before: Sequence[SeamPath], after: Sequence[SeamPath]
) -> JointPair:
    mine = tuple(path for path in before if path.joint == old["id"])
    theirs = tuple(path for path in after if path.joint == new["id"])
    return JointPair(
        old,
        new,
        mine,
        theirs,
        tuple(find_nearest(path.points, mine, tangents=path.tangents) for path in theirs),
        tuple(find_nearest(path.points, theirs, tangents=path.tangents) for path in mine),
    )


def other_side(key: str) -> str:
    """'trap_area_inner' -> 'trap_area_outer', and the other way; anything else stays."""
    for one, other in _SIDES:
        if key.endswith(f"_{one}"):
            return f"{key.removesuffix(one)}{other}"
    return key


def _joint(document: Mapping[str, Any], name: str) -> Mapping[str, Any]:
    found: Mapping[str, Any] = next(joint for joint in document["joints"] if joint["id"] == name)
    return found
