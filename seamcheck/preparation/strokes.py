"""Strokes: the paths of a seam put together to lines that are welded in one go, in the order of welding."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

import numpy as np
from msgspec import Struct

STRAIGHT_ON = 75.0
"""Degrees: where paths meet, the two that turn least into each other are one stroke, up to this turn. Assumption."""

Half = tuple[int, int]
"""A path by its number and one of its ends: 0 the first, 1 the last."""

_AHEAD = 2.0  # mm from a junction within which the direction of a path is taken


class Stroke(Struct, frozen=True, eq=False):
    """A line along the middle of the rib's top; a closed one does not repeat its first row.

    Attributes
    ----------
    id : of its path, 'c1+c2' of several; closed
    path : (n,) number of the path that a row comes from; station : (n,) its station
    s : (n,) mm from its first row; length : mm
    points : (n, 3) mm
    meets : (k,) mm, where other strokes join it
    short : mm by which it begins and ends before its ends, where another stroke has welded already
    """

    id: str
    closed: bool
    path: np.ndarray
    station: np.ndarray
    s: np.ndarray
    length: float
    points: np.ndarray
    meets: np.ndarray
    short: tuple[float, float] = (0.0, 0.0)

    def column(self, contours: Sequence[Mapping[str, Any]], name: str) -> np.ndarray:
        """(n,) a column of the document; NaN where it was not measured or is not there."""
        found = np.full(len(self.s), np.nan)
        for i in np.unique(self.path):
            values = contours[i]["stations"].get(name)
            if values is not None:
                own = self.path == i
                found[own] = np.array(values, dtype=float)[self.station[own]]
        return found

    def filled(self, values: np.ndarray, other: float = np.nan) -> np.ndarray:
        """(n,) values with what is missing between two others put in straight along the line; ``other`` without any."""
        known = np.isfinite(values)
        if not known.any():
            return np.full(len(values), other)
        return np.asarray(np.interp(self.s, self.s[known], values[known], period=self.length if self.closed else None))


def strokes_of(contours: Sequence[Mapping[str, Any]]) -> list[Stroke]:
    """The strokes of a joint's contours: closed ones first, each kind from the longest to the shortest."""
    nodes = _nodes(contours)
    partner = {half: other for node in nodes.values() for half, other in _paired(contours, node).items()}
    left = set(range(len(contours)))
    found = []
    for i in range(len(contours)):
        if i in left:
            chain, closed = ([(i, 0)], True) if contours[i]["closed"] else _chain(i, partner)
            left -= {k for k, _ in chain}
            found.append(_stroke(contours, chain, closed, nodes, partner))
    return sorted(found, key=lambda stroke: (not stroke.closed, -stroke.length))


def points_of(contour: Mapping[str, Any]) -> np.ndarray:
    """(n, 3) mm, the stations of a contour."""
    return np.column_stack([np.asarray(contour["stations"][axis], dtype=float) for axis in "xyz"])


def _nodes(contours: Sequence[Mapping[str, Any]]) -> dict[str, list[Half]]:
    """Junction -> the ends of paths that meet there."""
    nodes: dict[str, list[Half]] = {}
    for i, contour in enumerate(contours):
        for k, end in enumerate(contour.get("ends") or ()):
            kind, _, name = str(end).partition(":")
            if kind == "junction" and not contour["closed"]:
                nodes.setdefault(name, []).append((i, k))
    return nodes


def _paired(contours: Sequence[Mapping[str, Any]], node: Sequence[Half]) -> dict[Half, Half]:
    """End -> the other end into which the weld goes straight on."""
    outward = {half: _direction(contours[half[0]], half[1]) for half in node}
    pairs = sorted(
        (float(outward[a] @ outward[b]), a, b) for k, a in enumerate(node) for b in node[k + 1 :]
    )  # -1 goes straight on
    found: dict[Half, Half] = {}
    for cosine, a, b in pairs:
        turn = np.degrees(np.arccos(np.clip(-cosine, -1.0, 1.0)))
        if a not in found and b not in found and (turn <= STRAIGHT_ON or len(node) == 2):
            found |= {a: b, b: a}
    return found


def _direction(contour: Mapping[str, Any], end: int) -> np.ndarray:
    """(3,) unit, out of the junction along a path."""
    points = points_of(contour)
    points = points[::-1] if end else points
    away = np.linalg.norm(points - points[0], axis=1)
    far = int(np.argmax(away >= min(_AHEAD, float(away.max()))))
    return np.asarray((points[far] - points[0]) / away[far])


def _chain(first: int, partner: Mapping[Half, Half]) -> tuple[list[Half], bool]:
    """Paths from one end of a stroke to its other, each with the end at which it begins; whether it is closed."""
    chain = [(first, 0)]
    while (ahead := partner.get((chain[-1][0], 1 - chain[-1][1]))) is not None:
        if ahead == chain[0]:
            return chain, True
        chain.append(ahead)
    while (behind := partner.get(chain[0])) is not None:
        chain.insert(0, (behind[0], 1 - behind[1]))
    return chain, False


def _stroke(
    contours: Sequence[Mapping[str, Any]], chain: Sequence[Half], closed: bool, nodes: Mapping[str, Sequence[Half]],
    partner: Mapping[Half, Half],
) -> Stroke:  # fmt: skip
    rows: list[tuple[int, int]] = []
    points: list[np.ndarray] = []
    at_node: list[int] = []
    for i, begins in chain:
        own = points_of(contours[i])
        order = np.arange(len(own))[:: -1 if begins else 1]
        if points and np.linalg.norm(own[order[0]] - points[-1]) < 1e-6:
            order = order[1:]
        if not contours[i]["closed"] and str(contours[i]["ends"][begins]).startswith("junction:"):
            at_node.append(max(len(points) - 1, 0) if points else 0)
        rows += [(i, int(k)) for k in order]
        points += list(own[order])
    if closed and len(points) > 1 and np.linalg.norm(points[0] - points[-1]) < 1e-6:
        points, rows = points[:-1], rows[:-1]
    line = np.array(points)
    steps = np.linalg.norm(np.diff(line, axis=0, append=line[:1]), axis=1)
    s = np.concatenate([[0.0], np.cumsum(steps[:-1])])
    length = float(steps.sum()) if closed else float(s[-1])
    short = (0.0, 0.0)
    if not closed:
        last, begins = chain[-1]
        ends = chain[0], (last, 1 - begins)
        short = (_welded(contours, nodes, partner, ends[0], chain), _welded(contours, nodes, partner, ends[1], chain))
        at_node = at_node[1:] if contours[chain[0][0]]["ends"][chain[0][1]].startswith("junction:") else at_node
    number, station = (np.array(column, dtype=int) for column in zip(*rows, strict=True))
    name = "+".join(str(contours[i]["id"]) for i, _ in chain)
    return Stroke(name, closed, number, station, s, length, line, s[at_node], short)


def _welded(
    contours: Sequence[Mapping[str, Any]], nodes: Mapping[str, Sequence[Half]], partner: Mapping[Half, Half],
    end: Half, chain: Sequence[Half],
) -> float:  # fmt: skip
    """mm before the end of a stroke up to which another one melts the rib: half the width of that one."""
    kind, _, name = str(contours[end[0]]["ends"][end[1]]).partition(":")
    if kind != "junction":
        return 0.0
    here = nodes[name]
    through = [half for half in here if half in partner]
    if not through:  # none goes through: the longest reaches the junction, the others end at its edge
        longest = max(here, key=lambda half: (float(contours[half[0]]["length_mm"]), -half[0]))
        if longest == end:
            return 0.0
        through = [longest]
    own = {i for i, _ in chain}
    widths = [
        np.asarray(contours[i]["stations"].get("rib_width") or [], dtype=float) for i, _ in through if i not in own
    ]
    known = [float(np.nanmedian(width)) for width in widths if np.isfinite(width).any()]
    return max(known, default=0.0) / 2.0
