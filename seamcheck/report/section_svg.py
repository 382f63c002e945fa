"""A section as static SVG, for readers and mail previews that run no script; styled by the page's own classes."""

from __future__ import annotations

from typing import Any

import numpy as np
import shapely
from markupsafe import Markup, escape
from shapely.geometry.base import BaseGeometry

from seamcheck.catalogue.voice import tr
from seamcheck.document.view import BASE, COVER
from seamcheck.report.section import Dimension, SectionShapes

_SCALE = 60.0  # pixels for each mm
_SIDE, _HEAD = 150.0, 34.0  # pixels beside and over the section, for its labels


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
    drawn += [_dimension(dimension, at, width) for dimension in shapes.dimensions]
    for pin in shapes.pins:
        x, y = at(*pin.at)
        drawn.append(
            f'<g class="pin {pin.tone}"><path d="M{x:.1f} {y:.1f}L{x + 22:.1f} {y - 20:.1f}"/>'
            f'<circle class="pin-head" cx="{x + 22:.1f}" cy="{y - 20:.1f}" r="10"/>'
            f'<text x="{x + 22:.1f}" y="{y - 16:.1f}" text-anchor="middle">{pin.number}</text></g>'
        )
    if shapes.caster:
        drawn.append(f'<text class="caster" x="{_SIDE:.0f}" y="14">{escape(shapes.caster)}</text>')
    return Markup(
        f'<svg class="section-drawing" viewBox="0 0 {width:.0f} {height:.0f}" role="img" '
        f'aria-label="{tr("Section across the seam")}">{"".join(drawn)}</svg>'
    )


def _dimension(dimension: Dimension, at: Any, width: float) -> str:
    (x0, y0), (x1, y1) = at(*dimension.start), at(*dimension.end)
    text = escape(dimension.text)
    group = f'<g class="dim-label {dimension.tone}">'
    label = group + '<text class="dim-value" x="{:.1f}" y="{:.1f}" text-anchor="{}">'
    across = dimension.column in ("rib_width", "clamp_land")
    if across:
        row = 22.0 if dimension.column == "rib_width" else 44.0
        line = f'<path class="dim {dimension.tone}" d="M{x0:.1f} {row}H{x1:.1f}"/>'
        feet = f'<path class="extension" d="M{x0:.1f} {y0:.1f}V{row - 4}M{x1:.1f} {y1:.1f}V{row - 4}"/>'
        return feet + line + label.format((x0 + x1) / 2, row - 6, "middle") + f"{text}</text></g>"
    left = dimension.column.endswith("inner") or dimension.column == "gap"
    edge = _SIDE - 8 if left else width - _SIDE + 8
    shift = 22 if dimension.column.startswith("lip") else 0
    line = f'<path class="dim {dimension.tone}" d="M{edge:.1f} {y0:.1f}V{y1:.1f}"/>'
    feet = f'<path class="extension" d="M{x0:.1f} {y0:.1f}H{edge:.1f}M{x1:.1f} {y1:.1f}H{edge:.1f}"/>'
    where = (edge - 5 if left else edge + 5, (y0 + y1) / 2 + 5 + shift, "end" if left else "start")
    told, found, limit = dimension.text.partition(" (")
    x, y, anchor = where
    below = f'<text class="dim-limit" x="{x:.1f}" y="{y + 15:.1f}" text-anchor="{anchor}">'
    more = f"{below}{escape(limit.rstrip(')'))}</text>" if found else ""
    return feet + line + label.format(*where) + f"{escape(told)}</text>{more}</g>"
