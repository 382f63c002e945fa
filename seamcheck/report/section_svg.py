"""A section as static SVG, for readers and mail previews that run no script; styled by the page's own classes."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from typing import Any

import numpy as np
import shapely
from markupsafe import Markup, escape
from shapely.geometry.base import BaseGeometry

from seamcheck.catalogue.voice import tr
from seamcheck.document.view import BASE, COVER
from seamcheck.report.labels import apart
from seamcheck.report.section import Dimension, SectionShapes
from seamcheck.report.section_target import Move, Target

_SCALE = 60.0  # pixels for each mm
_SIDE, _HEAD = 150.0, 34.0  # pixels beside and over the section, for its labels
_LINE = 15.0  # pixels from line to line of a label


def section_svg(shapes: SectionShapes) -> Markup:
    """The section as an SVG element; empty where the document carries no outline of it."""
    if not shapes.bodies:
        return Markup("")
    u0, v0, u1, v1 = shapes.window
    width, height = (u1 - u0) * _SCALE + 2 * _SIDE, (v1 - v0) * _SCALE + _HEAD
    window = shapely.box(u0, v0, u1, v1)

    def at(u: float, v: float) -> tuple[float, float]:
        return _SIDE + (u - u0) * _SCALE, _HEAD + (v1 - v) * _SCALE

    def path(shape: BaseGeometry | None) -> str:
        if shape is None:
            return ""
        rings = []
        for part in getattr(kept := shape.intersection(window), "geoms", [kept]):
            if part.geom_type == "Polygon" and not part.is_empty:
                rings += [part.exterior, *part.interiors]
        return "".join(f"M{'L'.join('{:.1f} {:.1f}'.format(*at(*xy)) for xy in np.asarray(r.coords))}Z" for r in rings)

    layers: list[tuple[str, BaseGeometry | None]] = [("light", shapes.light)]
    layers += [("trap", trap) for trap in shapes.traps.values()]
    names = {BASE: "base", COVER: "cover"}
    for owner in sorted(shapes.bodies, key=lambda o: (o in names, o)):
        kind = names.get(owner, "other")
        layers += [(f"body {kind}", shapes.bodies[owner]), (f"outline {kind}", shapes.bodies[owner])]
    layers += [("melt", shapes.melt), *(("shade", shape) for shape in shapes.shade), ("moved", shapes.moved)]
    drawn = [f'<path class="{name}" fill-rule="evenodd" d="{d}"/>' for name, shape in layers if (d := path(shape))]
    for line in shapes.torn:
        d = "M" + "L".join("{:.1f} {:.1f}".format(*at(*point)) for point in line)
        drawn.append(f'<path class="torn gap" d="{d}"/><path class="torn" d="{d}"/>')
    drawn += [_over(one, at) for one in shapes.dimensions if not one.side]
    for side, edge in ((-1, _SIDE - 8), (1, width - _SIDE + 8)):
        drawn += _beside([one for one in shapes.dimensions if one.side == side], at, edge, height)
    drawn += [_target(target, at) for target in shapes.targets]
    for pin in shapes.pins:
        x, y = at(*pin.at)
        drawn.append(
            f'<g class="pin {pin.tone}"><path d="M{x:.1f} {y:.1f}L{x + 22:.1f} {y - 20:.1f}"/>'
            f'<circle class="pin-head" cx="{x + 22:.1f}" cy="{y - 20:.1f}" r="10"/>'
            f'<text x="{x + 22:.1f}" y="{y - 16:.1f}" text-anchor="middle">{pin.number}</text></g>'
        )
    if shapes.caster:
        under = max((shape.bounds[3] for shape in shapes.shade if not shape.is_empty), default=v1)
        row = max(at(0.0, under)[1] - 6, 14.0)
        drawn.append(f'<text class="caster" x="{_SIDE + 8:.0f}" y="{row:.1f}">{escape(shapes.caster)}</text>')
    return Markup(
        f'<svg class="section-drawing" viewBox="0 0 {width:.0f} {height:.0f}" role="img" '
        f'aria-label="{tr("Section across the seam")}">{"".join(drawn)}</svg>'
    )


def _over(dimension: Dimension, at: Any) -> str:
    """A width, written over the section."""
    (x0, y0), (x1, y1) = at(*dimension.start), at(*dimension.end)
    row = 22.0 if dimension.column == "rib_width" else 44.0
    middle, anchor = (x0 + x1) / 2, "middle"
    if dimension.column == "beam_margin":  # too narrow for its text, which stands on the rib's side
        middle, anchor = (x0 - 6, "end") if x1 > x0 else (x0 + 6, "start")
    if dimension.column == "clamp_land":  # from the light's edge outward
        middle, anchor = (x0 + 3, "start") if x1 > x0 else (x0 - 3, "end")
    return (
        f'<path class="extension" d="M{x0:.1f} {y0:.1f}V{row - 4}M{x1:.1f} {y1:.1f}V{row - 4}"/>'
        f'<path class="dim {dimension.tone}" d="M{x0:.1f} {row}H{x1:.1f}"/><g class="dim-label {dimension.tone}">'
        f'<text class="dim-value" x="{middle:.1f}" y="{row - 6}" text-anchor="{anchor}">{escape(dimension.text)}'
        "</text></g>"
    )


def _beside(dimensions: Sequence[Dimension], at: Any, edge: float, height: float) -> Iterator[str]:
    """Heights, written in one margin, whose line stands at ``edge``, without touching each other."""
    ends = [(at(*one.start), at(*one.end)) for one in dimensions]
    heights = [_LINE * len(one.rows) for one in dimensions]
    middles = apart([(start[1] + end[1]) / 2 for start, end in ends], heights, 4.0, 4.0, height)
    for dimension, ((x0, y0), (x1, y1)), middle in zip(dimensions, ends, middles, strict=True):
        side = dimension.side
        yield f'<path class="extension" d="M{x0:.1f} {y0:.1f}H{edge:.1f}M{x1:.1f} {y1:.1f}H{edge:.1f}"/>'
        yield f'<path class="dim {dimension.tone}" d="M{edge:.1f} {y0:.1f}V{y1:.1f}"/>'
        if abs(middle - (y0 + y1) / 2) > _LINE / 2:
            yield f'<path class="leader" d="M{edge:.1f} {(y0 + y1) / 2:.1f}L{edge + 7 * side:.1f} {middle:.1f}"/>'
        rows = dimension.rows
        names = ("dim-title", "dim-value", "dim-limit") if len(rows) > 1 else ("dim-value",)
        top, anchor = middle - _LINE * len(rows) / 2, "end" if side < 0 else "start"
        yield f'<g class="dim-label {dimension.tone}">'
        for k, (name, row) in enumerate(zip(names, rows, strict=False)):
            yield (
                f'<text class="{name}" x="{edge + 9 * side:.1f}" y="{top + _LINE * k + 11:.1f}" '
                f'text-anchor="{anchor}">{escape(row)}</text>'
            )
        yield "</g>"


def _target(target: Target, at: Any) -> str:
    """Dashed where an edge should lie, and an arrow from where it is."""

    def data(pairs: Iterable[Move]) -> str:
        ends = [(at(*start), at(*end)) for start, end in pairs]
        return "".join(f"M{x0:.1f} {y0:.1f}L{x1:.1f} {y1:.1f}" for (x0, y0), (x1, y1) in ends)

    lines = f'<path class="ghost {target.tone}" d="{data(target.lines)}"/>' if target.lines else ""
    moves = "".join(
        f'<path class="change {target.tone}" d="{data([move])}{_head(at(*move[0]), at(*move[1]))}"/>'
        for move in target.moves
    )
    label = ""
    if target.label:
        (x0, y0), (x1, _) = at(*target.moves[0][0]), at(*target.moves[0][1])
        x, anchor = (x0 + 8, "start") if x1 < x0 else (x0 - 8, "end")
        label = (
            f'<g class="dim-label {target.tone}"><text class="dim-value" x="{x:.1f}" y="{y0 + 5:.1f}" '
            f'text-anchor="{anchor}">{escape(target.label)}</text></g>'
        )
    return lines + moves + label


def _head(start: tuple[float, float], end: tuple[float, float]) -> str:
    """The head of an arrow, in pixels; none on one too short for it."""
    (x0, y0), (x1, y1) = start, end
    length = float(np.hypot(x1 - x0, y1 - y0))
    if length < 3.0:
        return ""
    along = np.array([x1 - x0, y1 - y0]) / length
    across = np.array([-along[1], along[0]])
    size = min(7.0, length)
    a, b = (np.array([x1, y1]) - size * along + k * 0.5 * size * across for k in (1, -1))
    return f"M{a[0]:.1f} {a[1]:.1f}L{x1:.1f} {y1:.1f}L{b[0]:.1f} {b[1]:.1f}"
