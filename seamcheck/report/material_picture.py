"""The collapse window as one picture (SVG), drawn from the numbers in the review document alone."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from html import escape
from typing import Any

from seamcheck.catalogue.units import shown
from seamcheck.catalogue.voice import in_voice, localised, tr, unit_in_voice
from seamcheck.report.facts import mm
from seamcheck.report.facts import span as between
from seamcheck.report.language import term

WIDTH, HEIGHT = 640, 300
LEFT, RIGHT, TOP, BOTTOM = 52, 16, 34, 46
TOP_FILL = 1.5  # highest trap fill on the axis
LINES = {"fill": "#b5651d", "closed": "#3f7fc4"}  # readable on light and dark ground
BANDS = {"window": "#2e9e57", "clash": "#c8402f"}


def window_picture(window: Mapping[str, Any]) -> str:
    """Return an SVG of the collapse window; '' where the section holds no picture data.

    From left to right the collapse. The line that rises is the fullest place of both flash traps, the stepped
    one the share of the seam that is closed. The window between the smallest and the largest collapse is
    shaded; where it is empty, the part in which its ends cross is red. A dashed line marks the plan.
    """
    data = window.get("picture")
    if not data:
        return ""
    collapses: Sequence[float] = data["collapse_mm"]
    low, high, plan = window["lowest"]["value_mm"], window["highest"], window["planned_mm"]
    ends = [collapses[-1], low, plan, *([high["value_mm"]] if high else [])]
    span = 1.05 * max(ends)

    def x(c: float) -> float:
        return float(LEFT + (WIDTH - LEFT - RIGHT) * min(max(c, 0.0), span) / span)

    def y(fill: float) -> float:
        return HEIGHT - BOTTOM - (HEIGHT - TOP - BOTTOM) * min(max(fill, 0.0), TOP_FILL) / TOP_FILL

    def line(values: Sequence[float | None], kind: str) -> str:
        points = [f"{x(c):.1f},{y(v):.1f}" for c, v in zip(collapses, values, strict=True) if v is not None]
        return (
            f'<polyline class="{kind}" fill="none" stroke="{LINES[kind]}" stroke-width="2" '
            f'points="{" ".join(points)}"/>'
            if len(points) > 1
            else ""
        )

    top, floor = y(TOP_FILL), y(0.0)
    end = span if high is None else high["value_mm"]
    empty = end < low
    band = "clash" if empty else "window"
    limit = y(data["trap_fill_limit"])
    parts = [
        f'<rect class="{band}" fill="{BANDS[band]}" fill-opacity="0.25" x="{x(min(low, end)):.1f}" '
        f'y="{top:.1f}" width="{abs(x(end) - x(low)):.1f}" height="{floor - top:.1f}"/>',
        f'<line class="limit" stroke="{LINES["fill"]}" stroke-dasharray="2 3" '
        f'x1="{x(0):.1f}" x2="{x(span):.1f}" y1="{limit:.1f}" y2="{limit:.1f}"/>',
        line(data["trap_fill"], "fill"),
        line(data["closed_share"], "closed"),
        f'<line class="plan" stroke="currentColor" stroke-dasharray="6 4" '
        f'x1="{x(plan):.1f}" x2="{x(plan):.1f}" y1="{top:.1f}" y2="{floor:.1f}"/>',
    ]
    one = 1.0 / in_voice(1.0, "mm", 0)[0]  # mm in the unit of the report
    for step in range(1 + int(span / one / _step(span / one))):
        c = step * _step(span / one) * one
        parts.append(_text(x(c), floor + 16, localised(f"{c / one:g}"), "middle"))
    for fill in (0.0, 0.5, 1.0, 1.5):
        parts.append(_text(LEFT - 8, y(fill) + 4, localised(f"{fill:g}"), "end"))
    parts.append(
        _text((LEFT + WIDTH - RIGHT) / 2, HEIGHT - 8, tr("collapse, {unit}", unit=unit_in_voice("mm")), "middle")
    )
    parts += _ends(x, top, low, None if high is None else end)
    planned = shown(plan, "mm", 2)
    if empty:
        title = tr("No collapse suits, by {length}; planned {planned}", length=mm(low - end, 2), planned=planned)
    else:
        reach = tr("{low} and more", low=mm(low, 2)) if high is None else between(mm(low, 2), mm(end, 2))
        state = term("window", window["place"])
        title = tr("Collapse window: {ends}; planned {planned} ({state})", ends=reach, planned=planned, state=state)
    parts.append(_text(LEFT, 20, title, "start"))
    parts.append(_text(WIDTH - RIGHT, floor - 24, tr("fullest flash traps (1 is full)"), "end", LINES["fill"]))
    parts.append(_text(WIDTH - RIGHT, floor - 8, tr("share of the seam that is closed"), "end", LINES["closed"]))
    causes = between(window["lowest"]["cause"], high["cause"] if high else tr("no end found"))
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {WIDTH} {HEIGHT}" role="img" '
        f'font-family="sans-serif" font-size="12" aria-label="{escape(title)}">'
        f"<title>{escape(title)}</title><desc>{escape(causes)}</desc>"
        f"{''.join(parts)}</svg>"
    )


def _ends(x: Callable[[float], float], top: float, low: float, high: float | None) -> list[str]:
    """Both ends of the window in words: within it beside its borders, outside where they cross."""
    crossed = high is not None and high < low
    parts = [_text(x(low) + 5, top + 13, tr("closed from {length}", length=mm(low, 2)), "start")]
    if high is not None:
        at, anchor = (x(high) - 5, "end") if crossed else (x(high) + 5, "start")
        parts.append(
            _text(at, top + (13 if crossed else 28), tr("possible up to {length}", length=mm(high, 2)), anchor)
        )
    return parts


def _step(span: float) -> float:
    """Distance of the marks on the axis: the smallest of a row that gives at most eight."""
    return next(
        step for step in (0.002, 0.005, 0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1.0, 2.0, 5.0, 10.0, span) if span / step <= 8
    )


def _text(x: float, y: float, text: str, anchor: str, colour: str = "currentColor") -> str:
    return f'<text x="{x:.1f}" y="{y:.1f}" text-anchor="{anchor}" fill="{colour}">{escape(text)}</text>'
