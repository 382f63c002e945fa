"""The limits of a document as bounds that figures can draw, and the state of every station under each rule.

Drawing only: a station counts as broken where a finding of the document says so, never by a comparison here.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

import numpy as np
from msgspec import Struct
from msgspec.structs import replace

from seamcheck.catalogue.quantities import QUANTITIES
from seamcheck.catalogue.voice import tr
from seamcheck.report.facts import (
    Document,
    at_least,
    at_most,
    column_of,
    number_text,
    rule_title,
    rules_of,
    short_text,
    span,
    stations_of_finding,
    under_rule,
)

UNKNOWN, WITHIN, NEAR, BROKEN, WAIVED, LOOK, NOTED = range(7)
"""State of a station: not measured, within, close to a bound, must-fix, waived, attention, note."""

GRAVITY = (0, 1, 3, 6, 4, 5, 2)
"""State -> how much it counts where one picture shows the worst of several rules."""

NEAR_SHARE = 0.05
"""A value within this share of a bound is drawn as close to it; this changes no verdict."""


class Edge(Struct, frozen=True, eq=False):
    """Bounds of one column: contour id -> (n,) float; empty on the side where there is none.

    ``judged`` is the quantity that a finding names, ``column`` the one compared (an edge of the strip).
    """

    column: str
    judged: str
    low: dict[str, np.ndarray]
    high: dict[str, np.ndarray]


class Band(Struct, frozen=True, eq=False):
    """One rule of the document for one joint: its limit in words and its edges."""

    rule: str
    title: str
    severity: str
    columns: tuple[str, ...]
    words: str
    edges: tuple[Edge, ...]


def bands(document: Document, joint: Mapping[str, Any]) -> list[Band]:
    """The rules that judge a column measured here, and all with a finding in this joint; must-fix first."""
    severities = {entry["rule"]: entry["severity"] for entry in document.get("limits") or ()}
    found = {rule for f in _of(document, joint) for rule in rules_of(f)}
    edges: dict[str, list[Edge]] = {}
    for contour in joint.get("contours") or ():
        for k, bound in enumerate(contour.get("bounds") or ()):
            own = edges.setdefault(bound["rule"], [])
            place = sum(e["rule"] == bound["rule"] for e in contour["bounds"][:k])
            if place == len(own):
                own.append(Edge(bound["column"], bound["quantity"], {}, {}))
            count = len(contour["stations"]["s"])
            for side, bounds in ((bound["low"], own[place].low), (bound["high"], own[place].high)):
                if side is not None:
                    bounds[contour["id"]] = _spread(side, count)
    rules = [*severities, *sorted((set(edges) | found) - set(severities))]
    result = []
    for rule in rules:
        own_edges = tuple(edges.get(rule, ()))
        columns = tuple(dict.fromkeys(e.judged for e in own_edges))
        if rule in found or any(_is_measured(joint, e.column) for e in own_edges):
            severity = severities.get(rule, "attention")
            result.append(Band(rule, rule_title(rule), severity, columns, _words(own_edges), own_edges))
    return sorted(result, key=lambda b: b.severity != "must-fix")


def _is_whole(quantity: str) -> bool:
    """Whether a quantity is one value of the whole interface: it has no state at a station."""
    return quantity in QUANTITIES and QUANTITIES[quantity].per == "interface"


def _spread(side: Any, count: int) -> np.ndarray:
    """(n,) float from one number or a list."""
    if isinstance(side, list | tuple):
        return np.array([np.nan if v is None else float(v) for v in side], dtype=float)
    return np.full(count, float(side))


def _is_measured(joint: Mapping[str, Any], column: str) -> bool:
    contours = joint.get("contours") or ()
    return any(bool(np.isfinite(column_of(contour, column)).any()) for contour in contours)


def _span(side: Mapping[str, np.ndarray]) -> tuple[float, float] | None:
    if not side:
        return None
    values = np.concatenate(list(side.values()))
    values = values[np.isfinite(values)]
    return (float(values.min()), float(values.max())) if len(values) else None


def _words(edges: tuple[Edge, ...]) -> str:
    """'at least 0.6 mm', '0.6 to 2 mm', 'at least 3 to 4.2 mm, by place'."""
    lows = [s for s in (_span(e.low) for e in edges) if s]
    highs = [s for s in (_span(e.high) for e in edges) if s]
    if not edges or not (lows or highs):
        return ""
    column = edges[0].judged
    if lows and highs:
        low, high = max(s[1] for s in lows), min(s[0] for s in highs)
        if low == -high:
            return tr("within ±{limit}", limit=short_text(high, column))
        return span(short_text(low, column, unit=False), short_text(high, column))
    (low, high), words = (lows[0], at_least) if lows else (highs[0], at_most)
    if column.startswith("trap_open") and high == 0:
        return tr("closed")
    if high - low > 1e-6:
        return tr("{limit}, by place", limit=words(span(short_text(low, column, unit=False), short_text(high, column))))
    return words(short_text(low, column))


def _of(document: Document, joint: Mapping[str, Any]) -> list[Mapping[str, Any]]:
    """The findings of a joint."""
    return [f for f in document.get("findings") or () if f.get("joint") == joint["id"]]


def track(document: Document, joint: Mapping[str, Any], contour: Mapping[str, Any], band: Band) -> np.ndarray:
    """(n,) int, UNKNOWN ... NOTED: the state of every station under one rule."""
    count = len(contour["stations"]["s"])
    own = [place for f in _of(document, joint) for place in under_rule(f, band.rule)]
    whole = any(_is_whole(f.get("quantity") or "") for f in own)  # one value for the seam: elsewhere it says nothing
    state = np.full(count, UNKNOWN if band.edges or whole else WITHIN)
    unjudged = np.zeros(count, dtype=bool)
    for edge in band.edges:
        here, beyond = _states(column_of(contour, edge.column), contour["id"], edge, _room(band, contour["id"]))
        state = np.where(np.array(GRAVITY)[here] > np.array(GRAVITY)[state], here, state)
        unjudged |= beyond
    state[unjudged] = UNKNOWN
    for finding in own:
        here = stations_of_finding(document, finding, contour)
        new = WAIVED if finding.get("waived") else _STATE_OF.get(str(finding.get("severity")), NOTED)
        graver = (state <= NEAR) | (np.array(GRAVITY)[state] < GRAVITY[new])
        state[here & graver] = new
    return state


_STATE_OF = {"must-fix": BROKEN, "attention": LOOK, "note": NOTED}


def _room(band: Band, contour: str) -> np.ndarray | float:
    """(n,) half the room between the bounds of a rule that has both, also on two columns; inf where it has one."""
    lows = [edge.low[contour] for edge in band.edges if contour in edge.low]
    highs = [edge.high[contour] for edge in band.edges if contour in edge.high]
    if not lows or not highs:
        return np.inf
    room = np.min(highs, axis=0) - np.max(lows, axis=0)
    return np.where(room > 0, room / 2, np.inf)


def _states(values: np.ndarray, contour: str, edge: Edge, room: np.ndarray | float) -> tuple[np.ndarray, np.ndarray]:
    """State and "beyond" of every station under one edge; ``room``: half that between the bounds of its rule.

    Returns
    -------
    (n,) int : UNKNOWN where not measured, NEAR where closer to a bound than NEAR_SHARE of it (of half the
        band where there are two), else WITHIN
    (n,) bool : beyond a bound; with no finding there, the value was not judged
    """
    state = np.where(np.isfinite(values), WITHIN, UNKNOWN)
    beyond = np.zeros(len(values), dtype=bool)
    if edge.column in ("beam_clear", "light_clear") or edge.column.startswith("trap_open"):
        return state, beyond  # a share that is at its best on the bound itself is not close to breaking it
    low, high = edge.low.get(contour), edge.high.get(contour)
    for bound, inside in ((low, 1.0), (high, -1.0)):
        if bound is None:
            continue
        scale = np.minimum(np.abs(bound), room)
        with np.errstate(invalid="ignore"):
            left = (values - bound) * inside
            state[left < NEAR_SHARE * scale] = NEAR
            beyond |= left < -SLACK
    return state, beyond


SLACK = 0.02
"""A value so little beyond its bound may still count as holding it; the judge decides (catalogue/rule.py)."""


def runs(state: np.ndarray) -> list[list[int]]:
    """Equal neighbours as [first, last, state]."""
    if not len(state):
        return []
    starts = np.concatenate([[0], np.flatnonzero(np.diff(state)) + 1])
    ends = np.concatenate([starts[1:] - 1, [len(state) - 1]])
    return [[int(a), int(b), int(state[a])] for a, b in zip(starts, ends, strict=True)]


def worst_state(states: list[np.ndarray], count: int) -> np.ndarray:
    """(n,) int: the gravest state of every station over all rules."""
    if not states:
        return np.full(count, UNKNOWN)
    stack = np.array(states)
    return np.asarray(stack[np.array(GRAVITY)[stack].argmax(axis=0), np.arange(count)])


class Tight(Struct, frozen=True):
    """Where a rule comes closest to its limit: share of the bound left, value, place; along most of the seam or there.

    Of a rule with a finding, what lies apart from its stretches.
    """

    share: float
    title: str
    value: str
    words: str
    joint: str
    contour: str
    station: int
    s: float
    is_long: bool


CLOSE = 0.25
"""Share of a bound (of half the band where there are two) up to which a value is told as close to it."""


def tightest(document: Document, most: int = 4) -> list[Tight]:
    """The rules that hold everywhere but come closest to breaking, the closest first; none that keep well clear."""
    told = {(f.get("joint"), rule) for f in document.get("findings") or () for rule in rules_of(f)}
    result = []
    for joint in document.get("joints") or ():
        for band in bands(document, joint):
            places = [
                place
                for edge in band.edges
                for contour in joint["contours"]
                if (place := _closest(joint, contour, band, edge, _marked(document, joint, contour)))
            ]
            if places:
                one = min(places, key=lambda place: place.share)
                apart = tr("{title}, elsewhere", title=one.title)
                result.append(replace(one, title=apart) if (joint["id"], band.rule) in told else one)
    return sorted((t for t in result if t.share <= CLOSE), key=lambda place: place.share)[:most]


_APART = 3.0  # mm from a finding's stretch: nearer values are still on their way to it


def _marked(document: Document, joint: Mapping[str, Any], contour: Mapping[str, Any]) -> np.ndarray:
    """(n,) bool: stations on the stretch of any finding that is more than a note, and those near its ends."""
    s = np.asarray(contour["stations"]["s"], dtype=float)
    mark = np.zeros(len(contour["stations"]["s"]), dtype=bool)
    for finding in document.get("findings") or ():
        if finding.get("joint") == joint["id"] and finding["severity"] != "note":
            own = stations_of_finding(document, finding, contour)
            mark |= own & (not own.all())  # one all along leaves the other rules their places
    if not mark.any() or mark.all():
        return mark
    away = np.abs(s[:, None] - s[mark][None, :])
    if contour["closed"]:
        away = np.minimum(away, float(contour["length_mm"]) - away)
    return np.asarray(away.min(axis=1) <= _APART)


def _closest(
    joint: Mapping[str, Any], contour: Mapping[str, Any], band: Band, edge: Edge, marked: np.ndarray
) -> Tight | None:
    values = column_of(contour, edge.column)
    low, high = edge.low.get(contour["id"]), edge.high.get(contour["id"])
    if edge.column in ("beam_clear", "light_clear") or edge.column.startswith("trap_open"):
        return None
    share = np.full(len(values), np.inf)
    for bound, inside in ((low, 1.0), (high, -1.0)):
        if bound is not None:
            size = np.minimum(np.abs(bound), _room(band, contour["id"]))
            scale = np.where(size > 0, size, 1.0)
            share = np.fmin(share, (values - bound) * inside / scale)
    share[~np.isfinite(values) | marked | (share < 0)] = np.inf
    if not np.isfinite(share).any():
        return None
    i = int(share.argmin())
    s = float(contour["stations"]["s"][i])
    text = number_text(float(values[i]), edge.judged)
    is_long = bool((share <= share[i] + 0.01).mean() > 0.5)
    return Tight(float(share[i]), band.title, text, band.words, joint["id"], contour["id"], i, s, is_long)
