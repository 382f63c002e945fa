"""Pictures of the findings for mails and slides: the section at its worst station, and where that is."""

from __future__ import annotations

import io
import re
from collections.abc import Mapping, Sequence
from typing import Any

import numpy as np
import shapely
from msgspec import Struct
from shapely.geometry.base import BaseGeometry

from seamcheck.catalogue.cautions import SHORT_CAUTION
from seamcheck.catalogue.voice import tr, unit_in_voice
from seamcheck.document.view import BASE, COVER, FIRST_OTHER, SectionSet, unpack_view
from seamcheck.errors import MissingLibrary
from seamcheck.report import bands, facts, plan
from seamcheck.report.facts import Document
from seamcheck.report.labels import apart
from seamcheck.report.section import Dimension, SectionShapes, section_shapes
from seamcheck.report.section_target import Target

INK, SOFT, PAPER = "#18222a", "#52606a", "#fdfcf8"
_BODY = {BASE: ("#ddd4c3", "#4a3f2d", "////"), COVER: ("#cfe4ec", "#2b6377", "")}
_STATE = {
    bands.UNKNOWN: ("#737b80", 1.5), bands.WITHIN: ("#28705f", 1.8), bands.NEAR: ("#8a5f00", 2.4),
    bands.BROKEN: ("#b0103f", 5.0), bands.WAIVED: ("#6a56a0", 4.0), bands.LOOK: ("#8a5f00", 4.0),
    bands.NOTED: ("#28705f", 1.8),
}  # fmt: skip
_TONE = {"must-fix": "#b0103f", "attention": "#8a5f00", "note": SOFT, "waived": "#6a56a0"}


_SIZE = (10.4, 6.2)  # of the picture, inches
_SECTION = (0.02, 0.13, 0.58, 0.68)  # where the section lies in it: left, bottom, width, height as shares
_LINE_INCHES = 0.155  # from line to line of a label


def render_pictures(document: Document, dpi: int = 150) -> dict[str, bytes]:
    """File name -> PNG of every finding that has a place on the seam.

    Raises
    ------
    MissingLibrary
        Without matplotlib.
    """
    sections, _ = unpack_view(document.get("view"))
    result = {}
    for numbered in facts.numbered_findings(document):
        if numbered.station is None:
            continue
        name = re.sub(r"[^a-z0-9]+", "-", str(numbered.finding["rule"]).lower()).strip("-")[:60]
        result[f"finding-{numbered.number:02d}-{name}.png"] = _picture(document, numbered, sections, dpi)
    return result


class _Place(Struct, frozen=True, eq=False):
    """What is drawn: the joint, the path and the station, with its values."""

    joint: Mapping[str, Any]
    contour: Mapping[str, Any]
    station: int

    def value(self, key: str) -> float | None:
        column: list[float | None] = self.contour["stations"].get(key) or [None] * (self.station + 1)
        return column[self.station]


def _picture(document: Document, numbered: facts.Numbered, sections: tuple[SectionSet, ...], dpi: int) -> bytes:
    try:
        from matplotlib.figure import Figure
    except ImportError:
        raise MissingLibrary("Pictures of the findings", "pictures") from None
    finding = numbered.finding
    joint = next(j for j in facts.joints(document) if j["id"] == finding["joint"])
    contour = next(c for c in joint["contours"] if c["id"] == numbered.contour)
    place = _Place(joint, contour, int(numbered.station or 0))
    figure = Figure(figsize=_SIZE, dpi=dpi, facecolor=PAPER)
    left = figure.add_axes(_SECTION)
    right = figure.add_axes((0.62, 0.42, 0.36, 0.39))
    _draw_section(left, document, place, plan.sections_of(sections, joint["id"], contour["id"]))
    _draw_plan(right, document, place)
    tone = _TONE.get(finding["severity"], SOFT)
    severity = facts.severity_word(finding["severity"]) + (f", {tr('waived')}" if numbered.is_waived else "")
    title = f"{numbered.number}  {facts.finding_title(finding)}"
    figure.text(0.025, 0.945, _plain(title), size=17, weight="bold", color=tone, va="top")
    mark = facts.MARKS.get(finding["severity"], "")
    figure.text(0.975, 0.945, f"{mark} {severity}", size=11, color=tone, va="top", ha="right")
    s = contour["stations"]["s"][place.station]
    at = "  ".join(f"{axis} {facts.coordinate(contour['stations'][axis][place.station])}" for axis in "xyz")
    figure.text(0.025, 0.875, _plain(finding["message"]), size=10.5, color=INK, va="top", wrap=True)
    lines = [
        f"{facts.quantity_title(finding)}: {facts.value_text(finding)}",
        f"{tr('limit')}: {facts.limit_words(document, finding)}" if finding.get("limit") is not None else "",
        f"s = {facts.mm(s, 2)};  {at} {unit_in_voice('mm')}",
        document["model"]["file"],
    ]
    rows = [row for line in lines if line for row in _folded(_plain(line), 46).split("\n")]
    for k, row in enumerate(rows[:6]):
        figure.text(0.64, 0.38 - 0.042 * k, row, size=10, va="top", color=tone if k == 0 else INK)
    figure.text(
        0.64, 0.37 - 0.042 * min(len(rows), 6), _folded(_plain(finding["remedy"]), 46), size=10, color=INK, va="top"
    )
    figure.text(0.025, 0.055, _folded(tr(SHORT_CAUTION), 150), size=6.8, color=SOFT, va="center")
    out = io.BytesIO()
    figure.savefig(out, format="png", metadata={"Software": None})
    return out.getvalue()


def _draw_section(axes: Any, document: Document, place: _Place, sections: SectionSet | None) -> SectionShapes:
    axes.set_aspect("equal")
    axes.axis("off")
    shapes = section_shapes(document, place.joint, place.contour, place.station, sections)
    u0, v0, u1, v1 = shapes.window
    axes.set_xlim(u0 - 3.0, u1 + 2.9)
    axes.set_ylim(v0, v1 + 0.9)
    window = shapely.box(u0, v0, u1, v1)
    if shapes.light is not None:
        _fill(axes, shapes.light.intersection(window), "#ffd23d", "#ffd23d", "", 0.4, thick=0.0)
    if not shapes.bodies:
        axes.text(0, 0, tr("The document carries no section here."), ha="center", color=SOFT)
        return shapes
    for shape in shapes.traps.values():
        _fill(axes, shape, "#d9cdf0", "#7d67b5", "---", 1.0, thick=0.0)
    if shapes.moved is not None:
        _outline(axes, shapes.moved.intersection(window), "#2b6377", (0, (9, 2, 2, 2, 2, 2)), 0.9)
    for owner in sorted(shapes.bodies, key=lambda o: o >= FIRST_OTHER):
        fill, line, hatch = _BODY.get(owner, ("#e3e3e0", "#737b80", "..."))
        _fill(axes, shapes.bodies[owner].intersection(window), fill, line, hatch, 0.75 if owner == COVER else 1.0)
    if shapes.melt is not None:
        _fill(axes, shapes.melt, "#ee5b2b", "#ee5b2b", "", 0.85, thick=0.0)
    for shape in shapes.shade:
        _fill(axes, shape.intersection(window), "#737b80", "#737b80", "", 0.6, thick=0.0)
    if shapes.caster:
        axes.text(0, v1 + 0.55, _plain(shapes.caster), size=9, weight="bold", color=INK, ha="center")
    for edge in shapes.torn:
        axes.plot(*np.array(edge).T, color=PAPER, lw=4.5)
        axes.plot(*np.array(edge).T, color=SOFT, lw=0.8)
    for dimension in shapes.dimensions:
        if not dimension.side:
            _draw_over(axes, dimension, shapes.window)
    for side in (-1, 1):
        _draw_beside(axes, [one for one in shapes.dimensions if one.side == side], shapes.window)
    for target in shapes.targets:
        _draw_target(axes, target)
    for pin in shapes.pins:
        tone = _TONE.get(pin.tone, SOFT)
        mark = {"boxstyle": "circle,pad=0.25", "facecolor": PAPER, "edgecolor": tone, "lw": 1.4}
        axes.annotate(
            str(pin.number), pin.at, (pin.at[0] + 0.55, pin.at[1] + 0.5), size=9, weight="bold", color=tone, bbox=mark,
            arrowprops={"arrowstyle": "-", "color": tone, "lw": 1.0}, ha="center", va="center",
        )  # fmt: skip
    return shapes


def _draw_target(axes: Any, target: Target) -> None:
    """Dashed where an edge should lie, and an arrow from where it is."""
    tone = _TONE.get(target.tone, INK)
    for (a, b), (c, d) in target.lines:
        axes.plot([a, c], [b, d], color=tone, lw=1.6, ls=(0, (4, 2)), zorder=5)
    for start, end in target.moves:
        arrows = {"arrowstyle": "-|>", "color": tone, "lw": 1.6, "shrinkA": 0, "shrinkB": 0, "mutation_scale": 9}
        axes.annotate("", end, start, arrowprops=arrows, zorder=6)
    if target.label:
        (u, v), (to, _) = target.moves[0]
        align, off = ("left", 0.12) if to < u else ("right", -0.12)
        axes.text(u + off, v, target.label, size=9, weight="bold", color=tone, ha=align, va="center", zorder=6)


def _draw_over(axes: Any, dimension: Dimension, window: tuple[float, float, float, float]) -> None:
    """A width: arrows and text over the section."""
    (a, b), (c, d) = dimension.start, dimension.end
    tone = _TONE.get(dimension.tone, INK)
    row = window[3] - (0.15 if dimension.column == "rib_width" else 0.62)
    axes.annotate("", (a, row), (c, row), arrowprops=_arrows(tone))
    for u, v in ((a, b), (c, d)):
        axes.plot([u, u], [v, row], color=SOFT, lw=0.5)
    place, align = (a + c) / 2, "center"
    if dimension.column == "beam_margin":  # too narrow for its text, which stands on the rib's side
        place, align = (a - 0.1, "right") if c > a else (a + 0.1, "left")
    if dimension.column == "clamp_land":  # from the light's edge outward
        place, align = (a + 0.1, "left") if c > a else (a - 0.1, "right")
    axes.text(place, row + 0.2, dimension.text, ha=align, **_lettering(dimension))


def _draw_beside(axes: Any, dimensions: Sequence[Dimension], window: tuple[float, float, float, float]) -> None:
    """Heights: arrows at one edge of the section, and their texts beside them, kept apart."""
    line = _LINE_INCHES * max(
        float(np.ptp(axes.get_xlim())) / (_SIZE[0] * _SECTION[2]),
        float(np.ptp(axes.get_ylim())) / (_SIZE[1] * _SECTION[3]),
    )  # mm of the section
    middles = apart(
        [(one.start[1] + one.end[1]) / 2 for one in dimensions], [line * len(one.rows) for one in dimensions],
        0.06, window[1] - 0.6, window[3],
    )  # fmt: skip
    for dimension, middle in zip(dimensions, middles, strict=True):
        (a, b), (c, d) = dimension.start, dimension.end
        left = dimension.side < 0
        edge = (window[0] - 0.1) if left else (window[2] + 0.1)
        axes.annotate("", (edge, b), (edge, d), arrowprops=_arrows(_TONE.get(dimension.tone, INK)))
        for u, v in ((a, b), (c, d)):
            axes.plot([u, edge], [v, v], color=SOFT, lw=0.5)
        out = edge - 0.12 if left else edge + 0.12
        if abs(middle - (b + d) / 2) > line / 2:
            axes.plot([edge, out], [(b + d) / 2, middle], color=SOFT, lw=0.5)
        told = "\n".join(dimension.rows)
        axes.text(out, middle, told, ha="right" if left else "left", va="center", **_lettering(dimension))


def _arrows(tone: str) -> dict[str, Any]:
    return {"arrowstyle": "<|-|>", "color": tone, "lw": 0.9, "shrinkA": 0, "shrinkB": 0}


def _lettering(dimension: Dimension) -> dict[str, Any]:
    box = {"facecolor": PAPER, "edgecolor": "none", "pad": 0.8}
    weight = "bold" if dimension.tone else "normal"
    return {"size": 9, "color": _TONE.get(dimension.tone, INK), "weight": weight, "bbox": box}


def _draw_plan(axes: Any, document: Document, place: _Place) -> None:
    axes.set_aspect("equal")
    axes.axis("off")
    frame = plan.plan_frame(place.joint["beam"])
    rows = bands.bands(document, place.joint)
    for contour in place.joint["contours"]:
        flat = frame.flat(facts.points_of(contour))
        states = [bands.track(document, place.joint, contour, band) for band in rows]
        for first, last, state in bands.runs(bands.worst_state(states, len(flat))):
            run = flat[first : last + 2]
            if contour["closed"] and last == len(flat) - 1:
                run = np.vstack([run, flat[:1]])
            colour, thick = _STATE[state]
            axes.plot(run[:, 0], run[:, 1], color=colour, lw=thick, solid_capstyle="butt")
        _draw_start(axes, contour, frame)
    stations = place.contour["stations"]
    at = frame.flat(np.array([[stations[axis][place.station] for axis in "xyz"]]))[0]
    across = frame.flat(np.array([stations["u"][place.station]], dtype=float))[0]
    size = 0.06 * max(float(np.ptp(axes.dataLim.intervalx)), float(np.ptp(axes.dataLim.intervaly)))
    for side in (1, -1):
        ends = np.array([at + side * 0.4 * size * across, at + side * 1.5 * size * across])
        axes.plot(ends[:, 0], ends[:, 1], color="#0f55c4", lw=2.4)
    axes.margins(0.1)


def _draw_start(axes: Any, contour: Mapping[str, Any], frame: plan.PlanFrame) -> None:
    """Where s begins on a path, and which way it runs."""
    flat = frame.flat(facts.points_of(contour))
    mark = plan.start_mark(contour, frame, 0.035 * float(np.ptp(flat, axis=0).max())) if len(flat) else None
    if mark is None:
        return
    line, name = mark
    axes.plot(line[:, 0], line[:, 1], color=INK, lw=1.2)
    axes.annotate(
        "", line[2] + 0.4 * (line[2] - line[1]), line[1], arrowprops={"arrowstyle": "-|>", "color": INK, "lw": 1.2}
    )
    axes.text(*name, "s = 0", size=8, color=INK, ha="center", va="center")


def _fill(axes: Any, shape: BaseGeometry, fill: str, line: str, hatch: str, alpha: float, thick: float = 1.3) -> None:
    from matplotlib.patches import PathPatch
    from matplotlib.path import Path

    for part in getattr(shape, "geoms", [shape]):
        if part.geom_type != "Polygon" or part.is_empty:
            continue
        rings = [part.exterior, *part.interiors]
        path = Path.make_compound_path(*(Path(np.asarray(ring.coords), closed=True) for ring in rings))
        axes.add_patch(PathPatch(path, facecolor=fill, edgecolor=line, lw=thick, hatch=hatch, alpha=alpha))


def _outline(axes: Any, shape: BaseGeometry, colour: str, style: Any, width: float) -> None:
    for part in getattr(shape, "geoms", [shape]):
        if part.geom_type == "Polygon":
            axes.plot(*np.asarray(part.exterior.coords).T, color=colour, ls=style, lw=width)


def _plain(text: Any) -> str:
    """Text without the signs that the drawing library reads as formulas."""
    return str(text).replace("$", r"\$")


def _folded(text: str, width: int) -> str:
    import textwrap

    return "\n".join(textwrap.wrap(text, width))
