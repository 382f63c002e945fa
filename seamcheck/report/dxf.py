"""The seam seen along the beam as a DXF drawing: mid-line, beam corridor, clamp land, findings."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

import numpy as np
import shapely

from seamcheck.catalogue.cautions import SHORT_CAUTION
from seamcheck.document.view import BASE, COVER, unpack_view
from seamcheck.report import facts, plan
from seamcheck.report.dxf_text import dxf_text, plain
from seamcheck.report.facts import Document
from seamcheck.report.loosened import loosened
from seamcheck.report.section import SectionShapes, section_shapes
from seamcheck.sections.pieces import lines_and_arcs

LAYERS: dict[str, tuple[int, str]] = {
    "SEAM_LINES_ARCS": (3, "mid-line of the rib top as single lines and arcs"),
    "SEAM_POLYLINE": (3, "the same mid-line as one polyline with arcs"),
    "SEAM_STATIONS_3D": (8, "polyline through all stations, in the model's own coordinates"),
    "LIGHT_CORRIDOR": (
        2,
        "what the beam takes of the cover's top, plus the beam margin: straight over the rib, or as a given scanner "
        "sends it",
    ),
    "SEAM_START": (7, "where s begins on every path, with an arrow the way it runs"),
    "CLAMP_LAND": (4, "flat of the cover beside the corridor that a clamp can press on"),
    "FINDING_MUST_FIX": (1, "section marks of findings that must be fixed"),
    "FINDING_ATTENTION": (30, "section marks of findings to look at"),
    "FINDING_NOTE": (9, "section marks of notes"),
    "FINDING_WAIVED": (6, "section marks of waived findings"),
    "OUTLINE_COVER": (140, "outline of the cover seen along the beam, with its openings"),
    "OUTLINE_BASE": (32, "outline of the base seen along the beam"),
    "OUTLINE_OTHER": (8, "outlines of other parts seen along the beam"),
    "SECTION_BASE": (32, "outline of the base in the sections of findings, drawn beside the seam"),
    "SECTION_COVER": (140, "outline of the cover in these sections"),
    "SECTION_OTHER": (8, "outlines of other parts in these sections"),
    "SECTION_DIMENSIONS": (7, "what was measured in these sections, as dimensions and as a list"),
    "SECTION_TARGET": (1, "where edges of these sections should lie, and from where they move"),
    "NOTES": (7, "title, axes and cautions"),
}
"""Layer -> colour number of the format, and what stands on it."""


def render_dxf(document: Document) -> str:
    """The drawing as DXF text (R2010), millimetres, x and y in the plane normal to the beam.

    Raises
    ------
    MissingLibrary
        Without ezdxf.
    """
    return dxf_text(lambda drawing: _draw(drawing, document))


def _draw(drawing: Any, document: Document) -> None:
    for name, (colour, what) in LAYERS.items():
        drawing.layers.add(name, color=colour).description = what
    space = drawing.modelspace()
    size = 2.0
    for joint in facts.joints(document):
        frame = plan.plan_frame(joint["beam"])
        for contour in joint["contours"]:
            _draw_path(space, frame, contour)
            _draw_areas(space, frame, contour, facts.beam_margin(document))
            _draw_start(space, frame, contour, size)
    _draw_outlines(space, document)
    _add_style(drawing)
    taken: list[tuple[float, float]] = []
    for numbered in facts.numbered_findings(document):
        _draw_finding(space, document, numbered, size, taken)
    _draw_sections(space, document)
    _draw_notes(space, document)


def _draw_outlines(space: Any, document: Document) -> None:
    """What every part covers in the plan of the first joint."""
    joint = next(iter(facts.joints(document)), None)
    if joint is None:
        return
    frame = plan.plan_frame(joint["beam"])
    for mesh in unpack_view(document.get("view"))[1]:
        role = "COVER" if mesh.part in joint["cover"] else "BASE" if mesh.part in joint["base"] else "OTHER"
        shape = plan.mesh_outline(mesh, frame)
        for part in getattr(shape, "geoms", [shape]):
            if part.geom_type == "Polygon" and not part.is_empty:
                for ring in (part.exterior, *part.interiors):
                    if shapely.Polygon(ring).area > 0.01:
                        attributes = {"layer": f"OUTLINE_{role}"}
                        space.add_lwpolyline(list(ring.coords)[:-1], close=True, dxfattribs=attributes)


DIMENSION_STYLE = "SEAM"


def _add_style(drawing: Any) -> None:
    """The style of the dimensions in the sections, small enough for drawings at full size."""
    style = drawing.dimstyles.duplicate_entry("Standard", DIMENSION_STYLE)
    for name, value in (("dimtxt", 0.36), ("dimasz", 0.26), ("dimexe", 0.12), ("dimexo", 0.06), ("dimgap", 0.08),
                        ("dimdec", 3), ("dimtad", 1), ("dimscale", 1.0), ("dimzin", 0)):  # fmt: skip
        style.set_dxf_attrib(name, value)


def _draw_path(space: Any, frame: plan.PlanFrame, contour: Mapping[str, Any]) -> None:
    from ezdxf.math import bulge_to_arc

    points = facts.points_of(contour)
    if len(points) < 2:
        return
    pieces = lines_and_arcs(frame.flat(points), contour["closed"])
    for piece in pieces:
        layer = {"layer": "SEAM_LINES_ARCS"}
        if piece.bulge == 0.0:
            space.add_line(piece.start, piece.end, dxfattribs=layer)
        else:
            centre, start, end, radius = bulge_to_arc(piece.start, piece.end, piece.bulge)
            space.add_arc(centre, radius, np.degrees(start), np.degrees(end), dxfattribs=layer)
    vertices = [(*piece.start, 0.0, 0.0, piece.bulge) for piece in pieces]
    if not contour["closed"]:
        vertices.append((*pieces[-1].end, 0.0, 0.0, 0.0))
    space.add_lwpolyline(vertices, close=contour["closed"], dxfattribs={"layer": "SEAM_POLYLINE"})
    space.add_polyline3d([tuple(p) for p in points], close=contour["closed"], dxfattribs={"layer": "SEAM_STATIONS_3D"})


def _draw_start(space: Any, frame: plan.PlanFrame, contour: Mapping[str, Any], size: float) -> None:
    """Where s begins on a path, and which way it runs."""
    mark = plan.start_mark(contour, frame, size)
    if mark is None:
        return
    line, name = mark
    layer = {"layer": "SEAM_START"}
    space.add_lwpolyline(line.tolist(), dxfattribs=layer)
    along = (line[2] - line[1]) / (np.hypot(*(line[2] - line[1])) or 1.0)
    across = 0.3 * size * np.array([-along[1], along[0]])
    tip = line[2] + size * along
    space.add_solid([tuple(line[2] + across), tuple(line[2] - across), tuple(tip)], dxfattribs=layer)
    _write(space, f"{contour['id']}: s = 0", float(name[0]), float(name[1]), 0.7 * size, layer)


def _draw_areas(space: Any, frame: plan.PlanFrame, contour: Any, margin: float) -> None:
    width = facts.column_of(contour, "rib_width_top")
    width = np.where(np.isfinite(width), width, facts.column_of(contour, "rib_width"))
    edge = width / 2 + margin
    for side, name in ((1, "outer"), (-1, "inner")):
        taken = facts.column_of(contour, f"light_enters_{name}") + side * margin
        for run in plan.offset_runs(contour, frame, taken if np.isfinite(taken).any() else side * edge):
            space.add_lwpolyline(run.tolist(), dxfattribs={"layer": "LIGHT_CORRIDOR"})
    side = plan.land_side(contour)
    if not side:
        return
    taken = facts.column_of(contour, f"light_enters_{'outer' if side > 0 else 'inner'}")
    near = np.where(np.isfinite(taken), taken + side * margin, side * edge)
    far = near + side * facts.column_of(contour, "clamp_land")
    near = np.where(np.isfinite(far), near, np.nan)
    for inner, outer in zip(plan.offset_runs(contour, frame, near), plan.offset_runs(contour, frame, far), strict=True):
        if contour["closed"] and np.isfinite(far).all():
            for run in (inner, outer):
                space.add_lwpolyline(run.tolist(), dxfattribs={"layer": "CLAMP_LAND"})
        else:
            area = np.vstack([inner, outer[::-1]])
            space.add_lwpolyline(area.tolist(), close=True, dxfattribs={"layer": "CLAMP_LAND"})


def _draw_finding(
    space: Any, document: Document, numbered: facts.Numbered, size: float, taken: list[tuple[float, float]]
) -> None:
    """A section mark across the seam with the number; its text on the outer side, below those that stand there."""
    finding = numbered.finding
    at = finding.get("at")
    joint = next((j for j in facts.joints(document) if j["id"] == finding.get("joint")), None)
    if at is None or joint is None:
        return
    frame = plan.plan_frame(joint["beam"])
    place = frame.flat(np.asarray([at], dtype=float))[0]
    across = np.array([0.0, 1.0])
    contour = next((c for c in joint["contours"] if c["id"] == numbered.contour), None)
    if contour is not None and numbered.station is not None:
        place = frame.flat(facts.points_of(contour)[[numbered.station]])[0]
        across = frame.flat(np.asarray([contour["stations"]["u"][numbered.station]], dtype=float))[0]
        across = across / (np.hypot(*across) or 1.0)
    layer = "WAIVED" if numbered.is_waived else str(finding["severity"]).upper().replace("-", "_")
    attributes = {"layer": f"FINDING_{layer}" if f"FINDING_{layer}" in LAYERS else "FINDING_NOTE"}
    _draw_mark(space, place, across, size, attributes)
    for path, station in facts.spots(document, numbered)[1:]:
        further = next(c for c in joint["contours"] if c["id"] == path)
        beside = frame.flat(np.asarray([further["stations"]["u"][station]], dtype=float))[0]
        spot = frame.flat(facts.points_of(further)[station : station + 1])[0]
        _draw_mark(space, spot, beside / (np.hypot(*beside) or 1.0), size, attributes)
        x, y = spot + 2.6 * size * beside
        _write(space, str(numbered.number), float(x), float(y), size * 0.8, attributes)
    value = facts.value_text(finding)
    text = f"{numbered.number} {facts.finding_title(finding)}" + ("" if value == "–" else f" {value}")
    spot = place + 2.6 * size * across
    x, y = float(spot[0]), float(spot[1])
    while any(abs(y - b) < 1.3 * size and abs(x - a) < 30.0 * size for a, b in taken):
        y -= 1.3 * size
    taken.append((x, y))
    label = space.add_text(plain(text), height=size * 0.8, dxfattribs=attributes)
    label.dxf.insert = (x, y)


def _draw_mark(space: Any, place: np.ndarray, across: np.ndarray, size: float, attributes: Mapping[str, str]) -> None:
    """Two strokes across the seam and a point on it."""
    for side in (1, -1):
        ends = tuple(place + side * size * across), tuple(place + side * 2.2 * size * across)
        space.add_line(*ends, dxfattribs=dict(attributes))
    space.add_point((float(place[0]), float(place[1])), dxfattribs=dict(attributes))


def _draw_sections(space: Any, document: Document) -> None:
    """The section of every finding, drawn once for each place, full size, in a row to the right of the seam."""
    sections, _ = unpack_view(document.get("view"))
    points = [
        facts.points_of(contour) @ plan.plan_frame(joint["beam"]).right for joint, contour in facts.paths(document)
    ]
    right = max((float(p.max()) for p in points if len(p)), default=0.0) + 75.0  # clear of the texts beside the seam
    drawn: set[tuple[str, str, int]] = set()
    for numbered in facts.numbered_findings(document)[:MOST_SECTIONS]:
        found = next(
            ((j, c) for j, c in facts.paths(document)
             if (j["id"], c["id"]) == (numbered.finding.get("joint"), numbered.contour)), None,
        )  # fmt: skip
        own = None if found is None else plan.sections_of(sections, found[0]["id"], found[1]["id"])
        if found is None or own is None or numbered.station is None:
            continue
        key = (found[0]["id"], found[1]["id"], numbered.station)
        if key in drawn:
            continue
        shapes = section_shapes(document, *found, numbered.station, own)
        if shapes.bodies:
            drawn.add(key)
            _draw_section(space, shapes, numbered, right + 26.0 * len(drawn))


MOST_SECTIONS = 12
"""So many findings, the gravest, get their section."""


def _draw_section(space: Any, shapes: SectionShapes, numbered: facts.Numbered, x: float) -> None:
    u0, v0, u1, v1 = shapes.window
    window = shapely.box(u0, v0, u1, v1)
    for owner, shape in shapes.bodies.items():
        layer = {BASE: "SECTION_BASE", COVER: "SECTION_COVER"}.get(owner, "SECTION_OTHER")
        kept = shape.intersection(window)
        for part in getattr(kept, "geoms", [kept]):
            if part.geom_type == "Polygon":
                for ring in (part.exterior, *part.interiors):
                    line = [(x + u, v) for u, v in ring.coords]
                    space.add_lwpolyline(line, close=True, dxfattribs={"layer": layer})
    attributes = {"layer": "SECTION_DIMENSIONS"}
    over, beside = 0, {-1: 0, 1: 0}
    for rows, dimension in enumerate(shapes.dimensions, 1):
        (a, b), (c, d) = dimension.start, dimension.end
        side = dimension.side
        if not side:
            over += 1
            base = (x + a, v1 + 0.4 + 0.75 * over)
        else:
            beside[side] += 1
            base = (x + (u0 if side < 0 else u1) + side * (0.1 + 0.75 * beside[side]), b)
        if np.hypot(c - a, d - b) > 1e-3:
            space.add_linear_dim(
                base=base, p1=(x + a, b), p2=(x + c, d), angle=90 if side else 0, dimstyle=DIMENSION_STYLE,
                dxfattribs=attributes,
            ).render()  # fmt: skip
        _write(space, f"{dimension.text}", x + u0, v0 - 0.7 * rows, 0.45, attributes)
    for target in shapes.targets:
        for (a, b), (c, d) in (*target.lines, *target.moves):
            space.add_line((x + a, b), (x + c, d), dxfattribs={"layer": "SECTION_TARGET"})
    for pin in shapes.pins:
        space.add_circle((x + pin.at[0], pin.at[1]), 0.35, dxfattribs=attributes)
        _write(space, str(pin.number), x + pin.at[0] + 0.5, pin.at[1], 0.45, attributes)
    numbers = ", ".join(str(n.number) for n in shapes.findings) or str(numbered.number)
    _write(space, f"Section of finding {numbers}, 1 : 1", x + u0, v1 + 0.9 + 0.75 * (over + 1), 0.6, attributes)


def _write(space: Any, text: str, x: float, y: float, height: float, attributes: Mapping[str, str]) -> None:
    label = space.add_text(plain(text), height=height, dxfattribs=dict(attributes))
    label.dxf.insert = (x, y)


def _draw_notes(space: Any, document: Document) -> None:
    """Title, axes of the plan and cautions, below the seam."""
    lines = [
        f"Seam review of {document['model']['file']}: {facts.headline(document)}",
        *([milder] if (milder := loosened(document)) else []),
        f"seamcheck {document['seamcheck']}, model SHA-256 {document['model']['sha256']}",
    ]
    low = [0.0, 0.0]
    for joint in facts.joints(document):
        frame = plan.plan_frame(joint["beam"])
        axes = ", ".join(
            f"{name} = ({', '.join(f'{c:g}' for c in np.round(axis, 6) + 0.0)})"
            for name, axis in (("x", frame.right), ("y", frame.up), ("against the beam", frame.toward))
        )
        lines.append(f"Joint {joint['id']}: axes of this drawing in the model: {axes}; lengths in mm")
        for contour in joint["contours"]:
            flat = frame.flat(facts.points_of(contour))
            if len(flat):
                low = [min(low[0], float(flat[:, 0].min())), min(low[1], float(flat[:, 1].min()))]
    lines += [part.strip() + "." for part in SHORT_CAUTION.rstrip(".").split(". ")]
    for k, line in enumerate(lines):
        note = space.add_text(plain(line), height=2.0, dxfattribs={"layer": "NOTES"})
        note.dxf.insert = (low[0], low[1] - 14.0 - 3.6 * k)
