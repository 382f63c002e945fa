"""Lines, ticks and bars of the page's figures, as plain numbers and path data; the template draws them.

Drawing only: values, stretches and limits are those of the comparison document.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping, Sequence
from typing import Any

from msgspec import Struct

from seamcheck.catalogue.quantities import QUANTITIES
from seamcheck.catalogue.voice import in_voice, localised, tr, unit_in_voice
from seamcheck.comparison.along import DOWN, UP
from seamcheck.comparison.words import amount, change_words, difference
from seamcheck.report.language import rule_title

Record = Mapping[str, Any]

WIDE, LEFT, RIGHT = 1180.0, 262.0, 14.0
"""Units across a figure, and of it left and right of the seam."""

CHART_HIGH, CHART_TOP, CHART_BOTTOM = 168.0, 12.0, 28.0
ROW = 22.0


class Tick(Struct, frozen=True, dict=True):
    """A mark on an axis: where, and what it says."""

    at: float
    text: str


class Bar(Struct, frozen=True, dict=True):
    """A stretch of the seam: from, how long, which kind, and what it says."""

    x: float
    width: float
    kind: str
    text: str


class Chart(Struct, frozen=True, dict=True):
    """One quantity along one path, old and new."""

    title: str
    unit: str
    contour: str
    high: float
    old: str
    new: str
    changed: tuple[Bar, ...]
    limits: tuple[tuple[str, str], ...]
    x: tuple[Tick, ...]
    y: tuple[Tick, ...]


class Strip(Struct, frozen=True, dict=True):
    """The unrolled seam of one path: rows of bars under a ruler."""

    contour: str
    closed: bool
    high: float
    x: tuple[Tick, ...]
    rows: tuple[tuple[str, float, tuple[Bar, ...]], ...]


class Plan(Struct, frozen=True, dict=True):
    """Both centre lines seen along the beam."""

    box: str
    old: tuple[str, ...]
    new: tuple[str, ...]
    marks: tuple[tuple[str, str], ...]
    scale: float


def chart(track: Record, quantity: Record) -> Chart:
    """Old and new values of one quantity along one path of the new seam."""
    key = quantity["quantity"]
    columns = track["columns"][key]
    values = [v for side in ("old", "new") for v in columns[side] if v is not None]
    low, high = _range(values, [v for _, v in _constant_limits(track, key)])
    span = CHART_HIGH - CHART_TOP - CHART_BOTTOM

    def y(value: float) -> float:
        return CHART_TOP + span * (high - value) / (high - low)

    changed = [c for c in quantity["changes"] if c["contour"] == track["contour"]]
    limits = tuple(
        (side, _line(track["s"], _spread(bound, len(track["s"])), track, y, clip=(low, high)))
        for side, bound in _limits(track, key)
    )
    ticks = tuple(
        Tick(y(v), amount(v, key).removesuffix(f" {unit_in_voice(quantity['unit'])}")) for v in _round(low, high, 4)
    )
    return Chart(
        title=quantity["title"],
        unit="" if quantity["unit"] == "1" else unit_in_voice(quantity["unit"]),
        contour=track["contour"],
        high=CHART_HIGH,
        old=_line(track["s"], columns["old"], track, y),
        new=_line(track["s"], columns["new"], track, y),
        changed=tuple(bar for c in changed for bar in _bars(track, c["from_s"], c["to_s"], c["length_mm"], "changed")),
        limits=tuple((side, line) for side, line in limits if line),
        x=_ruler(track),
        y=ticks,
    )


def strip(document: Record, joint: Record, track: Record) -> Strip:
    """Where along one path of the new seam findings and changes lie."""
    rows: list[tuple[str, list[Bar]]] = []
    found = document["findings"]
    live = [(e["new"], "new") for e in found["new"]]
    live += [(e["new"], e["state"]) for e in found["remaining"]]
    for heading, kinds in ((tr("new or worse"), ("new", "worse")), (tr("as before or better"), ("same", "better"))):
        bars = [
            bar
            for finding, kind in live
            if kind in kinds and finding["joint"] == joint["new"] and finding["contour"] == track["contour"]
            for bar in _bars(
                track, finding["from_s"], finding["to_s"], finding["length_mm"], kind, rule_title(finding["rule"])
            )
        ]
        rows.append((heading, bars))
    for heading, kind in ((tr("fixed"), "fixed"), (tr("no longer reported"), "dropped")):
        bars = [
            Bar(_x(track, e["place"]["s"]) - 4, 8.0, kind, rule_title(e["old"]["rule"]))
            for e in found[kind]
            if e["place"] and e["place"]["contour"] == track["contour"] and e["old"]["joint"] == joint["old"]
        ]
        rows.append((heading, bars))
    added = [piece for piece in joint["pieces"] if piece["what"] == "added" and piece["contour"] == track["contour"]]
    rows.append(
        (tr("seam added"), [b for p in added for b in _bars(track, p["from_s"], p["to_s"], p["length_mm"], "added")])
    )
    rows = [row for row in rows if row[1]]
    for quantity in joint["quantities"]:
        key = quantity["quantity"]
        bars = [
            bar
            for c in quantity["changes"]
            if c["contour"] == track["contour"]
            for bar in _bars(
                track, c["from_s"], c["to_s"], c["length_mm"],
                {UP: "up", DOWN: "down"}.get(c["kind"], "other"), difference(c["by"], key) or change_words(c, key),
            )
        ]  # fmt: skip
        if bars:
            rows.append((quantity["title"], bars))
    placed = tuple((heading, 26.0 + ROW * i, tuple(bars)) for i, (heading, bars) in enumerate(rows))
    return Strip(track["contour"], track["closed"], 30.0 + ROW * len(rows), _ruler(track), placed)


def plan(document: Record, joint: Record) -> Plan | None:
    """Both centre lines seen along the beam; findings and pieces as thick stretches of them."""
    drawn = joint["plan"]
    if not drawn or not drawn["new"]:
        return None
    points = [p for side in ("old", "new") for line in drawn[side] for p in line["points"]]
    xs, ys = [p[0] for p in points], [-p[1] for p in points]
    size = max(max(xs) - min(xs), max(ys) - min(ys), 1.0)
    edge = 0.06 * size
    box = (min(xs) - edge, min(ys) - edge, max(xs) - min(xs) + 2 * edge, max(ys) - min(ys) + 2 * edge)
    marks = [*_finding_marks(document, joint), *_piece_marks(joint)]
    return Plan(
        " ".join(f"{c:.3f}" for c in box),
        tuple(_outline(line) for line in drawn["old"]),
        tuple(_outline(line) for line in drawn["new"]),
        tuple(marks),
        size,
    )


def _finding_marks(document: Record, joint: Record) -> Iterator[tuple[str, str]]:
    found = document["findings"]
    live = [(e["new"], "new") for e in found["new"]] + [(e["new"], e["state"]) for e in found["remaining"]]
    tracks = {track["contour"]: (k, track) for k, track in enumerate(joint["tracks"])}
    for finding, kind in live:
        if finding["joint"] != joint["new"] or finding["contour"] not in tracks or finding["from_s"] is None:
            continue
        k, track = tracks[finding["contour"]]
        yield kind, _stretch(joint["plan"]["new"][k]["points"], track, finding["from_s"], finding["to_s"])
    for kind in ("fixed", "dropped"):
        for entry in found[kind]:
            place = entry["place"]
            if place and entry["old"]["joint"] == joint["old"]:
                yield kind, _dot(_seen(joint, place["at"]))


def _piece_marks(joint: Record) -> Iterator[tuple[str, str]]:
    for piece in joint["pieces"]:
        yield piece["what"], _dot(_seen(joint, piece["at"]))


def _seen(joint: Record, at: Sequence[float]) -> tuple[float, float]:
    x, y = (sum(a * b for a, b in zip(axis, at, strict=True)) for axis in joint["plan"]["axes"])
    return x, y


def _dot(place: tuple[float, float]) -> str:
    """A point, drawn as a line of no length with round ends."""
    return f"M{place[0]:.3f} {-place[1]:.3f}h0"


def _outline(line: Record) -> str:
    path = "L".join(f"{x:.3f} {-y:.3f}" for x, y in line["points"])
    return f"M{path}{'Z' if line['closed'] else ''}"


def _stretch(points: Sequence[Sequence[float]], track: Record, start: float, end: float) -> str:
    """The part of a path between two arc lengths, which may pass its start."""
    parts: list[list[Sequence[float]]] = [[]]
    spans = [(start, end)] if start <= end else [(start, math.inf), (-math.inf, end)]
    for low, high in spans:
        parts.append([p for p, s in zip(points, track["s"], strict=True) if low - 0.26 <= s <= high + 0.26])
    return "".join(f"M{'L'.join(f'{x:.3f} {-y:.3f}' for x, y in part)}" for part in parts if part)


def _x(track: Record, s: float) -> float:
    return LEFT + (WIDE - LEFT - RIGHT) * s / (track["length_mm"] or 1.0)


def _bars(track: Record, start: Any, end: Any, length: Any, kind: str, text: str = "") -> Iterator[Bar]:
    """One bar, or two where the stretch passes the start of a closed path; at least wide enough to be seen."""
    if start is None or end is None:
        return
    whole = track["length_mm"] or 1.0
    if (length or 0.0) >= whole - 0.01:
        spans = [(0.0, whole)]
    else:
        spans = [(start, end)] if start <= end else [(start, whole), (0.0, end)]
    for low, high in spans:
        x, width = _x(track, max(0.0, low)), _x(track, min(whole, high)) - _x(track, max(0.0, low))
        more = max(0.0, 5.0 - width)
        yield Bar(x - more / 2, width + more, kind, text)


def _ruler(track: Record) -> tuple[Tick, ...]:
    one = 1.0 / in_voice(1.0, "mm", 0)[0]  # mm in the unit of the report
    marks = _round(0.0, (track["length_mm"] or 1.0) / one, 9)
    return tuple(Tick(_x(track, one * s), localised(f"{s:g}")) for s in marks)


def _line(
    s: Sequence[float], values: Sequence[float | None], track: Record, y: Any, clip: tuple[float, float] | None = None
) -> str:
    """Path data; a gap where there is no value or where it lies outside the picture."""
    parts, pen = [], False
    for at, value in zip(s, values, strict=True):
        if value is None or (clip and not clip[0] <= value <= clip[1]):
            pen = False
            continue
        parts.append(f"{'L' if pen else 'M'}{_x(track, at):.1f} {y(value):.1f}")
        pen = True
    return "".join(parts)


def _limits(track: Record, key: str) -> list[tuple[str, Any]]:
    return [
        (side, bound[side])
        for bound in track["bounds"]
        if bound["column"] == key
        for side in ("low", "high")
        if bound[side] is not None
    ]


def _constant_limits(track: Record, key: str) -> list[tuple[str, float]]:
    return [(side, bound) for side, bound in _limits(track, key) if isinstance(bound, int | float)]


def _spread(bound: Any, count: int) -> list[float | None]:
    return list(bound) if isinstance(bound, list) else [bound] * count


def _range(values: Sequence[float], limits: Sequence[float]) -> tuple[float, float]:
    """What the picture spans: all values, and limits that are not far off."""
    low, high = (min(values), max(values)) if values else (0.0, 1.0)
    span = max(high - low, 0.05 * max(abs(low), abs(high)), 1e-3)
    near = [v for v in limits if low - span <= v <= high + span]
    low, high = min([low, *near]), max([high, *near])
    room = 0.12 * max(high - low, 1e-3)
    return low - room, high + room


def _round(low: float, high: float, about: int) -> list[float]:
    """Round numbers between two values: 1, 2 or 5 times a power of ten apart."""
    step = (high - low) / max(1, about)
    power = 10.0 ** math.floor(math.log10(step)) if step > 0 else 1.0
    step = next(m * power for m in (1, 2, 5, 10) if m * power >= step)
    first = math.ceil(low / step - 1e-9)
    return [round(k * step, 10) for k in range(first, math.floor(high / step + 1e-9) + 1)]


def is_drawn(key: str) -> bool:
    """Whether a chart of the quantity says more than its numbers: not for yes and no."""
    return key in QUANTITIES and not key.startswith("trap_open")
