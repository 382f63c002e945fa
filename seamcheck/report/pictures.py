"""Pictures of the findings for mails and slides: the section at its worst station, and where that is."""

from __future__ import annotations

import io
import re
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

import numpy as np
import shapely
from shapely.geometry.base import BaseGeometry

from seamcheck.catalogue.cautions import SHORT_CAUTION
from seamcheck.document.view import BASE, COVER, FIRST_OTHER, SectionSet, unpack_view
from seamcheck.report import bands, facts, plan
from seamcheck.report.dxf import MissingLibrary
from seamcheck.report.facts import Document

INK, SOFT, PAPER = "#18222a", "#52606a", "#fdfcf8"
_BODY = {BASE: ("#ddd4c3", "#4a3f2d", "////"), COVER: ("#cfe4ec", "#2b6377", "")}
_STATE = {
    bands.UNKNOWN: ("#737b80", 1.5), bands.WITHIN: ("#28705f", 1.8), bands.NEAR: ("#8a5f00", 2.4),
    bands.BROKEN: ("#b0103f", 5.0), bands.WAIVED: ("#6a56a0", 4.0), bands.LOOK: ("#8a5f00", 4.0),
    bands.NOTED: ("#28705f", 1.8),
}  # fmt: skip
_TONE = {"must-fix": "#b0103f", "attention": "#8a5f00", "note": SOFT}


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


@dataclass(frozen=True, slots=True, eq=False)
class _Place:
    """What is drawn: the joint, the path and the station, with its values."""

    joint: Mapping[str, Any]
    contour: Mapping[str, Any]
    station: int

    def value(self, key: str) -> float | None:
        return (self.contour["stations"].get(key) or [None] * (self.station + 1))[self.station]


def solids(segments: np.ndarray, owner: np.ndarray) -> dict[int, BaseGeometry]:
    """Owner -> its material in the section plane, from unordered segments (m, 4), mm."""
    result = {}
    for number in np.unique(owner):
        rows = np.round(segments[owner == number].astype(float), 3).reshape(-1, 2, 2)
        rows = rows[np.any(rows[:, 0] != rows[:, 1], axis=1)]
        if len(rows):
            result[int(number)] = shapely.build_area(shapely.node(shapely.multilinestrings(shapely.linestrings(rows))))
    return result


def trap_area(free: BaseGeometry, side: int, area: float) -> BaseGeometry:
    """The free room beside the rib out to where it holds the stated area, mm².

    ``free`` lies beside the rib between both parts; the stated area decides where the drawn trap ends, so
    that drawing and number can't disagree.
    """
    low, high = 0.0, 20.0
    for _ in range(40):
        middle = (low + high) / 2
        if free.intersection(_strip(side, middle)).area < area:
            low = middle
        else:
            high = middle
    return free.intersection(_strip(side, high))


def _strip(side: int, reach: float) -> BaseGeometry:
    return shapely.box(min(0.0, side * reach), -50.0, max(0.0, side * reach), 50.0)


def _picture(document: Document, numbered: facts.Numbered, sections: tuple[SectionSet, ...], dpi: int) -> bytes:
    try:
        from matplotlib.figure import Figure
    except ImportError:
        raise MissingLibrary("Pictures of the findings", "pictures") from None
    finding = numbered.finding
    joint = next(j for j in facts.joints(document) if j["id"] == finding["joint"])
    contour = next(c for c in joint["contours"] if c["id"] == numbered.contour)
    place = _Place(joint, contour, int(numbered.station or 0))
    figure = Figure(figsize=(10.4, 6.2), dpi=dpi, facecolor=PAPER)
    left = figure.add_axes((0.02, 0.13, 0.58, 0.68))
    right = figure.add_axes((0.62, 0.42, 0.36, 0.39))
    _draw_section(left, document, place, plan.sections_of(sections, joint["id"], contour["id"]))
    _draw_plan(right, document, place)
    tone = _TONE.get(finding["severity"], SOFT)
    waived = ", waived" if numbered.is_waived else ""
    title = f"{numbered.number}  {facts.finding_title(finding)}"
    figure.text(0.025, 0.945, _plain(title), size=17, weight="bold", color=tone, va="top")
    mark = facts.MARKS.get(finding["severity"], "")
    figure.text(0.975, 0.945, f"{mark} {finding['severity']}{waived}", size=11, color=tone, va="top", ha="right")
    s = contour["stations"]["s"][place.station]
    at = ", ".join(f"{axis} {contour['stations'][axis][place.station]:.2f}" for axis in "xyz")
    figure.text(0.025, 0.875, _plain(finding["message"]), size=10.5, color=INK, va="top", wrap=True)
    lines = [
        f"{facts.quantity_title(finding)}: {facts.value_text(finding)}",
        f"limit: {facts.limit_words(document, finding)}" if finding.get("limit") is not None else "",
        f"s = {s:.2f} mm; {at} mm",
        document["model"]["file"],
    ]
    for k, line in enumerate(part for part in lines if part):
        figure.text(0.64, 0.35 - 0.045 * k, _plain(line)[:64], size=10, color=INK, va="top")
    figure.text(0.025, 0.055, _folded(SHORT_CAUTION, 150), size=6.8, color=SOFT, va="center")
    out = io.BytesIO()
    figure.savefig(out, format="png", metadata={"Software": None})
    return out.getvalue()


def _draw_section(axes: Any, document: Document, place: _Place, sections: SectionSet | None) -> None:
    axes.set_aspect("equal")
    axes.axis("off")
    found = None if sections is None else sections.at(place.station)
    width = place.value("rib_width_top") or place.value("rib_width")
    height, thickness = place.value("rib_height") or 1.2, place.value("cover_thickness") or 2.0
    land = place.value("clamp_land") or 2.0
    reach = max((width or 1.5) / 2 + min(land, 5.0) + 0.8, 3.2)
    up = -1 if place.joint["rib_on"] == "cover" else 1
    axes.set_xlim(-reach, reach)
    axes.set_ylim(-(height + 1.6) if up > 0 else -2.0, thickness + 1.3)
    if width is not None:
        lit = width / 2 + facts.beam_margin(document)
        axes.fill_between([-lit, lit], 0, thickness + 1.3, color="#ffd23d", alpha=0.4, lw=0)
    if found is None:
        axes.text(0, 0, "The document carries no section here.", ha="center", color=SOFT)
        return
    bodies = solids(*found)
    collapse = facts.collapse_of(document)
    if collapse is not None and BASE in bodies and COVER in bodies:
        drop = collapse + facts.initial_contact(place.joint)
        lowered = shapely.affinity.translate(bodies[COVER], 0, -drop)
        gap = shapely.box(-20, -height * 1.05 if up > 0 else -drop, 20, 0.0 if up > 0 else height * 1.05)
        free = gap.difference(shapely.union_all([bodies[BASE], lowered]))
        for side, name in ((-1, "inner"), (1, "outer")):
            area = place.value(f"trap_area_{name}")
            if area:
                _fill(axes, trap_area(free, side, area), "#d9cdf0", "#7d67b5", "---", 1.0, thick=0.0)
        _outline(axes, lowered, "#2b6377", (0, (9, 2, 2, 2, 2, 2)), 0.9)
    for owner in sorted(bodies, key=lambda o: o >= FIRST_OTHER):
        fill, line, hatch = _BODY.get(owner, ("#e3e3e0", "#737b80", "..."))
        _fill(axes, bodies[owner], fill, line, hatch, 0.75 if owner == COVER else 1.0)
    rib = bodies.get(BASE if up > 0 else COVER)
    if collapse is not None and width is not None and rib is not None:
        low, high = sorted((0.0, -up * collapse))
        _fill(
            axes,
            rib.intersection(shapely.box(-width, low, width, high)),
            "#ee5b2b",
            "#ee5b2b",
            "",
            0.85,
            thick=0.0,
        )
    _dimensions(axes, place, width, height, thickness, up)


def _dimensions(axes: Any, place: _Place, width: float | None, height: float, thickness: float, up: int) -> None:
    (left, right), top = axes.get_xlim(), thickness + 0.55

    def label(x: float, y: float, text: str, ha: str) -> None:
        box = {"facecolor": PAPER, "edgecolor": "none", "pad": 1.0}
        axes.text(x, y, text, size=9, color=INK, ha=ha, va="center", bbox=box)

    def arrow(a: tuple[float, float], b: tuple[float, float]) -> None:
        axes.annotate("", a, b, arrowprops={"arrowstyle": "<|-|>", "color": INK, "lw": 0.8, "shrinkA": 0, "shrinkB": 0})

    if width is not None:
        arrow((-width / 2, top), (width / 2, top))
        label(0, top + 0.32, f"rib width {facts.number_text(width, 'rib_width')}", "center")
    arrow((right - 0.35, 0.0), (right - 0.35, thickness))
    label(
        right - 0.45,
        thickness / 2,
        facts.number_text(place.value("cover_thickness"), "cover_thickness"),
        "right",
    )
    if place.value("rib_height") is not None:
        for level in (0.0, -up * height):
            axes.plot([left + 0.25, 0.0 if width is None else -width / 2], [level, level], color=SOFT, lw=0.5)
        arrow((left + 0.35, 0.0), (left + 0.35, -up * height))
        label(left + 0.45, -up * height / 2, facts.number_text(height, "rib_height"), "left")
    for side, name in ((-1, "inner"), (1, "outer")):
        area = place.value(f"trap_area_{name}")
        if area is not None and width is not None:
            text = f"trap {facts.number_text(area, 'trap_area_inner')}"
            label(side * (width / 2 + 2.2), -up * (height + 0.5), text, "center")


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
    stations = place.contour["stations"]
    at = frame.flat(np.array([[stations[axis][place.station] for axis in "xyz"]]))[0]
    across = frame.flat(np.array([stations["u"][place.station]], dtype=float))[0]
    size = 0.06 * max(float(np.ptp(axes.dataLim.intervalx)), float(np.ptp(axes.dataLim.intervaly)))
    for side in (1, -1):
        ends = np.array([at + side * 0.4 * size * across, at + side * 1.5 * size * across])
        axes.plot(ends[:, 0], ends[:, 1], color="#0f55c4", lw=2.4)
    axes.margins(0.1)


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
