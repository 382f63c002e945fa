"""Plan, unrolled seam and charts as plain SVG: what the page shows where no script runs, and on paper.

Drawing only: states and numbers are those of the figures that the script draws (report/bands.py).
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence
from typing import Any

import numpy as np
import shapely
from markupsafe import Markup, escape
from shapely.geometry.base import BaseGeometry

from seamcheck.catalogue.quantities import QUANTITIES
from seamcheck.catalogue.voice import in_voice, localised, tr
from seamcheck.document.view import Mesh
from seamcheck.report import bands, facts
from seamcheck.report.facts import Document, Numbered
from seamcheck.report.language import quantity_title
from seamcheck.report.plan import PlanFrame, mesh_outline, plan_frame, start_mark

_STATE = ("unknown", "within", "near", "broken", "waived", "look", "noted")
_TALL = ((6.5, 1.5), (5.5, 3.0), (4.0, 6.0), (0.0, 14.0), (1.5, 11.0), (2.0, 10.0), (4.5, 5.0))
"""State -> top and height of its mark in a row 14 high, as in the page's own strip."""

_WIDE, _LEFT, _RIGHT = 820.0, 190.0, 150.0
_ROW, _HEAD = 17.0, 40.0
_CHART, _MOST_POINTS = 120.0, 250


def plan_svg(document: Document, joint: Mapping[str, Any], meshes: Sequence[Mesh] = ()) -> Markup:
    """The seam of one joint seen along the beam over its parts, in the states of its stretches, with its findings."""
    frame = plan_frame(joint["beam"])
    lines = [(c, frame.flat(facts.points_of(c))) for c in joint["contours"]]
    every = np.vstack([flat for _, flat in lines if len(flat)]) if any(len(flat) for _, flat in lines) else None
    if every is None:
        return Markup("")
    bodies = [(role, mesh_outline(m, frame)) for role in ("base", "cover") for m in meshes if m.part in joint[role]]
    bodies = [(role, shape) for role, shape in bodies if not shape.is_empty]
    every = np.vstack([every, *(np.array(shape.bounds).reshape(2, 2) for _, shape in bodies)])
    low, high = every.min(axis=0), every.max(axis=0)
    scale = min(300.0 / max(high[0] - low[0], 1e-6), 220.0 / max(high[1] - low[1], 1e-6))

    def at(points: np.ndarray) -> np.ndarray:
        return np.column_stack([50 + (points[:, 0] - low[0]) * scale, 40 + (high[1] - points[:, 1]) * scale])

    rows = bands.bands(document, joint)
    drawn = [f'<path class="plan-part {role}" fill-rule="evenodd" d="{_rings(shape, at)}"/>' for role, shape in bodies]
    for contour, flat in lines:
        pixels = at(flat)
        states = [bands.track(document, joint, contour, band) for band in rows]
        for first, last, state in bands.runs(bands.worst_state(states, len(flat))):
            run = pixels[first : last + 2]
            if contour["closed"] and last == len(flat) - 1:
                run = np.vstack([run, pixels[:1]])
            drawn.append(f'<path class="seam {_STATE[state]}" d="{_path(run)}"/>')
            if state == bands.BROKEN:
                drawn.append(f'<path class="seam broken-core" d="{_path(run)}"/>')
    middle = at(np.array([(low + high) / 2]))[0]
    for contour, _ in lines:
        drawn += _start(contour, frame, at, scale, f"{contour['id']}: s = 0" if len(lines) > 1 else "s = 0")
    for numbers, (x, y), tone in _marks(document, joint, {c["id"]: at(flat) for c, flat in lines}):
        out = np.array([x, y]) - middle  # the number stands outside the seam, on a field of its own
        tx, ty = np.array([x, y]) + 24 * out / max(float(np.hypot(*out)), 1e-6)
        half = 5 + 4.5 * len(numbers)
        drawn.append(
            f'<g class="section-mark {tone}"><circle class="static-dot" cx="{x:.1f}" cy="{y:.1f}" r="4"/>'
            f'<path class="cut" d="M{x:.1f} {y:.1f}L{tx:.1f} {ty:.1f}"/>'
            f'<rect class="static-field" x="{tx - half:.1f}" y="{ty - 10:.1f}" width="{2 * half:.1f}" height="20" '
            f'rx="10"/><text x="{tx:.1f}" y="{ty + 5:.1f}" text-anchor="middle">{numbers}</text></g>'
        )
    wide, tall = 100 + float(high[0] - low[0]) * scale, 80 + float(high[1] - low[1]) * scale
    drawn += _axes(frame, tall)
    return Markup(
        f'<svg class="static-plan" viewBox="0 0 {wide:.0f} {tall:.0f}" role="img" '
        f'aria-label="{tr("The seam seen along the beam, with the numbers of the findings")}">{"".join(drawn)}</svg>'
    )


def _rings(shape: BaseGeometry, at: Callable[[np.ndarray], np.ndarray]) -> str:
    """Path data of the outlines of a shape."""
    rings = []
    for part in getattr(shape, "geoms", [shape]):
        if part.geom_type == "Polygon" and not part.is_empty:
            rings += [ring for ring in (part.exterior, *part.interiors) if shapely.Polygon(ring).area > 0.01]
    return "".join(f"{_path(at(np.asarray(ring.coords)[:, :2]))}Z" for ring in rings)


def _start(
    contour: Mapping[str, Any], frame: PlanFrame, at: Callable[[np.ndarray], np.ndarray], scale: float, name: str
) -> Iterator[str]:
    """Where s begins on a path, and which way it runs."""
    mark = start_mark(contour, frame, 10.0 / scale)
    if mark is None:
        return
    line, (x, y) = at(mark[0]), at(mark[1][None])[0]
    along = (line[2] - line[1]) / max(float(np.linalg.norm(line[2] - line[1])), 1e-9)
    across = np.array([-along[1], along[0]])
    head = [line[2] + 9 * along, line[2] + 4 * across, line[2] - 4 * across]
    yield (
        f'<g class="start-mark" data-start="{escape(contour["id"])}"><path d="{_path(line)}"/>'
        f'<path class="cut-arrow" d="{_path(head)}Z"/>'
        f'<text x="{x:.1f}" y="{y + 4:.1f}" text-anchor="middle">{escape(name)}</text></g>'
    )


def _axes(frame: PlanFrame, tall: float) -> Iterator[str]:
    """The model's axes as they lie in the plan."""
    for name, axis in zip("XYZ", np.eye(3), strict=True):
        x, y = frame.flat(axis[None])[0]
        if np.hypot(x, y) > 0.3:
            yield f'<path class="axis" d="M18 {tall - 18:.1f}L{18 + 18 * x:.1f} {tall - 18 - 18 * y:.1f}"/>'
            yield _text("static-soft", 18 + 26 * x, tall - 14 - 26 * y, name, "middle")


def _marks(
    document: Document, joint: Mapping[str, Any], pixels: Mapping[str, np.ndarray]
) -> Iterator[tuple[str, np.ndarray, str]]:
    """Numbers of the findings at one place, the place, and the tone of the gravest; of many places in short."""
    placed = _placed(document, joint, pixels, 26.0)
    is_short = len(placed) > _FEW_PLACES
    for place, group in _placed(document, joint, pixels, 44.0) if is_short else placed:
        shown = 1 if is_short else 3
        rest = f"+{len(group) - shown}" if len(group) > shown else ""
        numbers = "·".join(str(n.number) for n in group[:shown]) + (rest if is_short or not rest else f" {rest}")
        yield numbers, place, "waived" if group[0].is_waived else str(group[0].finding["severity"])


_FEW_PLACES = 8


def _placed(
    document: Document, joint: Mapping[str, Any], pixels: Mapping[str, np.ndarray], apart: float
) -> list[tuple[np.ndarray, list[Numbered]]]:
    """Findings by place; those nearer to each other than ``apart`` pixels are at one."""
    placed: list[tuple[np.ndarray, list[Numbered]]] = []
    for numbered in facts.numbered_findings(document):
        if numbered.finding.get("joint") != joint["id"]:
            continue
        for contour, station in facts.spots(document, numbered):
            place = pixels[contour][station]
            near = next((group for spot, group in placed if float(np.hypot(*(spot - place))) < apart), None)
            if near is None:
                placed.append((place, [numbered]))
            elif numbered not in near:
                near.append(numbered)
    return placed


def strip_svg(document: Document, joint: Mapping[str, Any]) -> Markup:
    """The unrolled seam of one joint: one row for each rule that is broken or must hold."""
    found = {f["rule"] for f in document["findings"] if f["joint"] == joint["id"] and f["severity"] != "note"}
    rows = [b for b in bands.bands(document, joint) if b.rule in found or b.severity == "must-fix"]
    rows.sort(key=lambda b: b.rule not in found)
    total = sum(float(c["length_mm"]) for c in joint["contours"])
    if not rows or total <= 0:
        return Markup("")
    scale = (_WIDE - _LEFT - _RIGHT) / total
    drawn = list(_ruler(total, scale, _HEAD - 6))
    for k, band in enumerate(rows):
        y, start = _HEAD + k * _ROW, 0.0
        drawn.append(_text("static-label", 0, y + 11, band.title))
        drawn.append(_text("static-soft", _WIDE - _RIGHT + 12, y + 11, band.words))
        for contour in joint["contours"]:
            s = np.asarray(contour["stations"]["s"], dtype=float)
            for first, last, state in bands.runs(bands.track(document, joint, contour, band)):
                x0 = _LEFT + scale * (start + (0.0 if first == 0 else (s[first - 1] + s[first]) / 2))
                end = contour["length_mm"] if last == len(s) - 1 else (s[last] + s[last + 1]) / 2
                wide = max(scale * (start + end) + _LEFT - x0, 5.0 if state > bands.NEAR else 0.0)
                top, tall = _TALL[state]
                drawn.append(
                    f'<rect class="cell {_STATE[state]}" x="{x0:.1f}" y="{y + top:.1f}" width="{wide:.1f}" '
                    f'height="{tall}"/>'
                )
            start += float(contour["length_mm"])
    for numbered in facts.numbered_findings(document):
        if numbered.finding.get("joint") != joint["id"]:
            continue
        tone = "waived" if numbered.is_waived else numbered.finding["severity"]
        for contour, station in facts.spots(document, numbered):
            x = _LEFT + scale * _unrolled(joint, contour, station)
            drawn.append(_text(f"static-number {tone}", x, 11, str(numbered.number), "middle"))
    tall = _HEAD + len(rows) * _ROW + 4
    return Markup(
        f'<svg class="static-strip" viewBox="0 0 {_WIDE:.0f} {tall:.0f}" role="img" '
        f'aria-label="{tr("The unrolled seam, one row for each rule")}">{"".join(drawn)}</svg>'
    )


def _unrolled(joint: Mapping[str, Any], contour: str, station: int) -> float:
    start = 0.0
    for path in joint["contours"]:
        if path["id"] == contour:
            return start + float(path["stations"]["s"][station])
        start += float(path["length_mm"])
    return start


def charts_svg(document: Document, joint: Mapping[str, Any]) -> Markup:
    """One chart for each judged quantity with a finding, over the unrolled seam; what can be compared to one scale."""
    found = {f["rule"] for f in document["findings"] if f["joint"] == joint["id"]}
    edges = {edge.column: edge for band in bands.bands(document, joint) for edge in band.edges}
    broken = {e.column for band in bands.bands(document, joint) if band.rule in found for e in band.edges}
    ranges: dict[str, tuple[float, float]] = {}
    for column in edges:
        if column in QUANTITIES and (own := _range(joint, edges[column])) is not None:
            low, high = ranges.get(QUANTITIES[column].scale, own)
            ranges[QUANTITIES[column].scale] = min(low, own[0]), max(high, own[1])
    drawn = [c for c in edges if c in broken and c in QUANTITIES and QUANTITIES[c].scale in ranges]
    return Markup("").join(_chart(joint, edges[column], ranges[QUANTITIES[column].scale]) for column in drawn)


def _range(joint: Mapping[str, Any], edge: bands.Edge) -> tuple[float, float] | None:
    """From where to where a quantity is drawn: its values and the limits near them; None where nothing is measured."""
    values = np.concatenate([facts.column_of(contour, edge.column) for contour in joint["contours"]] or [np.array([])])
    known = values[np.isfinite(values)]
    if not len(known):
        return None
    rows = [row[np.isfinite(row)] for side in (edge.low, edge.high) for row in side.values()]
    bounds = [float(v) for row in rows if len(row) for v in (row.min(), row.max())]
    low, high = float(known.min()), float(known.max())
    for bound in bounds:
        if abs(bound - (low + high) / 2) < 3 * max(high - low, 0.3 * abs(high), 0.05):
            low, high = min(low, bound), max(high, bound)
    return low, high


def _chart(joint: Mapping[str, Any], edge: bands.Edge, drawn_range: tuple[float, float]) -> Markup:
    columns = [(c, facts.column_of(c, edge.column)) for c in joint["contours"]]
    if not any(np.isfinite(values).any() for _, values in columns):
        return Markup("")
    low, high = drawn_range
    pad = max(0.1 * (high - low), 0.02 * abs(high), 0.01)
    low, high = low - pad, high + pad
    total = sum(float(c["length_mm"]) for c, _ in columns)
    scale, inner = (_WIDE - 70.0) / max(total, 1e-6), _CHART - 34.0

    def y(value: float) -> float:
        return 8.0 + inner * (high - value) / (high - low)

    drawn, start = [], 0.0
    for contour, values in columns:
        s, x0 = np.asarray(contour["stations"]["s"], dtype=float), 60.0 + scale * start
        for side in (edge.low, edge.high):
            if contour["id"] in side:
                drawn.append(_line("static-limit", x0 + scale * s, np.clip(side[contour["id"]], low, high), y))
        drawn.append(_line("static-line", x0 + scale * s, values, y))
        start += float(contour["length_mm"])
    for value in (low + pad, high - pad):
        text = facts.number_text(value, edge.column).partition(" ")[0]
        drawn.append(_text("static-soft", 54, y(value) + 4, text, "end"))
    drawn += _ruler(total, scale, _CHART - 18, left=60.0, below=True)
    title, unit = escape(quantity_title(edge.column)), facts.unit_of(edge.column)
    return Markup(
        f'<figure class="chart static"><figcaption><span class="chart-title">{title}{" / " + unit if unit else ""}'
        f'</span></figcaption><svg viewBox="0 0 {_WIDE:.0f} {_CHART:.0f}" role="img" '
        f'aria-label="{tr("{quantity} along the seam", quantity=title)}">{"".join(drawn)}</svg></figure>'
    )


def _line(name: str, x: np.ndarray, values: np.ndarray, y: Any) -> str:
    """A line that stops where nothing was measured, of as many points as can be told apart."""
    if len(x) > 1 and np.isfinite(values).all() and np.ptp(values) < 1e-9:
        return f'<path class="{name}" d="M{x[0]:.1f} {y(float(values[0])):.1f}H{x[-1]:.1f}"/>'
    step = max(1, len(x) // _MOST_POINTS)
    parts: list[list[str]] = [[]]
    for i in range(0, len(x), step):
        window = values[i : i + step]
        if not np.isfinite(window).any():
            parts.append([])
            continue
        for value in {float(np.nanmin(window)), float(np.nanmax(window))}:
            parts[-1].append(f"{x[i]:.1f} {y(value):.1f}")
    d = "".join(f"M{'L'.join(part)}" for part in parts if len(part) > 1)
    return f'<path class="{name}" d="{d}"/>' if d else ""


def _ruler(total: float, scale: float, y: float, left: float = _LEFT, below: bool = False) -> Iterator[str]:
    rough = max(total / 8, 1e-6)
    power = 10.0 ** np.floor(np.log10(rough))
    step = next((k * power for k in (1, 2, 5, 10) if k * power >= 0.75 * rough), 10 * power)
    yield f'<path class="ruler-line" d="M{left:.1f} {y:.1f}H{left + total * scale:.1f}"/>'
    for s in np.arange(0.0, total + 1e-6, step):
        x = left + s * scale
        yield f'<path class="ruler-line" d="M{x:.1f} {y - 5:.1f}V{y:.1f}"/>'
        mark = localised(f"{round(in_voice(s, 'mm', 4)[0], 2):g}")
        yield _text("static-soft", x, y + 13 if below else y - 8, mark, "middle")


def _text(name: str, x: float, y: float, text: str, anchor: str = "start") -> str:
    return f'<text class="{name}" x="{x:.1f}" y="{y:.1f}" text-anchor="{anchor}">{escape(text)}</text>'


def _path(points: Sequence[Any] | np.ndarray) -> str:
    return "M" + "L".join(f"{x:.1f} {y:.1f}" for x, y in points)
