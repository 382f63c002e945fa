"""Which parts move with the sinking cover, and which touch both sides."""

from __future__ import annotations

from collections.abc import Iterable

import numpy as np
import shapely
from msgspec import Struct

from seamcheck.joint import Joint
from seamcheck.joint.facets import spans
from seamcheck.kernel import Body
from seamcheck.kernel.boxes import boxes_meet
from seamcheck.kernel.distance import shape_distance

_TOUCH = 0.02  # mm: parts this close touch
_MOST_FACES = 400  # pairs of faces compared exactly for two parts; the nearest boxes first
_CHORD, _ANGLE = 0.05, 0.35  # mm and radians of the facets by which it is first seen which faces may touch
_SAME = 1e-3  # of the normals of planes that are parallel


class Moving(Struct, frozen=True):
    """Part ids: with_cover: the cover and what is connected to it alone; on_both: what touches cover and base."""

    with_cover: tuple[str, ...]
    on_both: tuple[str, ...] = ()

    @staticmethod
    def of(joint: Joint) -> Moving:
        """What is connected with the cover by touch moves with it, unless it touches the base as well.

        Notes
        -----
        Parts that touch each other are connected. A group that touches the cover but not the base moves with the
        cover; one that touches both is held by one of them, the geometry does not tell by which: it stays in place.
        Parts that carry another seam of the cover stay in place.
        """
        welded = {part for part, _ in joint.other_ribs}
        free = [
            part
            for part, body in joint.bodies.items()
            if part not in (*joint.cover, *joint.base, *welded) and np.isfinite(body.box).all()
        ]
        cover, base = ([joint.bodies[i] for i in ids] for ids in (joint.cover, joint.base))
        hanging: list[str] = []
        both: list[str] = []
        while seed := next((part for part in free if _touch_any(joint.bodies[part], cover)), None):
            group = _group(seed, free, joint)
            held = any(_touch_any(joint.bodies[part], base) for part in group)
            (both if held else hanging).extend(group)
            free = [part for part in free if part not in group]
        return Moving((*joint.cover, *hanging), tuple(both))


def _group(seed: str, free: Iterable[str], joint: Joint) -> list[str]:
    """All parts connected with one by touch, that one included."""
    found, rest, todo = [seed], [part for part in free if part != seed], [seed]
    while todo:
        body = joint.bodies[todo.pop()]
        touched = [part for part in rest if touch(body, joint.bodies[part])]
        rest = [part for part in rest if part not in touched]
        found += touched
        todo += touched
    return found


def _touch_any(body: Body, others: Iterable[Body]) -> bool:
    return any(touch(body, other) for other in others)


def touch(one: Body, other: Body) -> bool:
    """Whether two bodies touch or overlap."""
    if not boxes_meet(one.box[None], other.box, _TOUCH)[0]:
        return False
    mine, theirs = (np.flatnonzero(boxes_meet(a.boxes, b.box, _TOUCH)) for a, b in ((one, other), (other, one)))
    if not len(mine) or not len(theirs):
        return False
    near = ((i, theirs[boxes_meet(other.boxes[theirs], one.boxes[i], _TOUCH)].tolist()) for i in mine.tolist())
    pairs = [(i, j) for i, found in near for j in found if not _parted(one, i, other, j)]
    pairs = _with_near_facets(one, other, pairs)
    pairs.sort(key=lambda pair: -_common(one.boxes[pair[0]], other.boxes[pair[1]]))
    return any(shape_distance(one.faces[i], other.faces[j])[0] <= _TOUCH for i, j in pairs[:_MOST_FACES])


def _with_near_facets(one: Body, other: Body, pairs: list[tuple[int, int]]) -> list[tuple[int, int]]:
    """The pairs of faces with two facets so close that the faces may touch.

    A face lies within the chord error of its facets. Where a face has none, nothing is left out.
    """
    if not pairs:
        return pairs
    first, second = (
        body.facets(sorted({pair[k] for pair in pairs}), _CHORD, _ANGLE) for k, body in enumerate((one, other))
    )
    room = _CHORD + _TOUCH / 2
    low_a, high_a, low_b, high_b = (
        end(facets.corners, axis=1) + sign * room
        for facets in (first, second)
        for end, sign in ((np.min, -1.0), (np.max, 1.0))
    )
    tree = shapely.STRtree(spans(low_b, high_b))
    i, j = tree.query(spans(low_a, high_a))
    meet = (low_a[i, 2] <= high_b[j, 2]) & (high_a[i, 2] >= low_b[j, 2])
    known = set(first.face.tolist()), set(second.face.tolist())
    found = set(zip(first.face[i[meet]].tolist(), second.face[j[meet]].tolist(), strict=True))
    return [(a, b) for a, b in pairs if (a, b) in found or a not in known[0] or b not in known[1]]


def _common(a: np.ndarray, b: np.ndarray) -> float:
    """mm³ or less that two boxes (6,) have in common, thin ones made thicker: the more, the sooner they touch."""
    return float(np.prod(np.minimum(a[3:], b[3:]) - np.maximum(a[:3], b[:3]) + 2 * _TOUCH))


def _parted(one: Body, i: int, other: Body, j: int) -> bool:
    """Whether two faces lie on parallel planes further apart than a touch; curved faces never are."""
    a, b = one.planes[i], other.planes[j]
    turn = float(a[:3] @ b[:3])
    if not abs(turn) > 1.0 - _SAME**2:  # NaN: not a plane
        return False
    return bool(abs(a[3] - np.sign(turn) * b[3]) > _TOUCH + _SAME * 1e3)
