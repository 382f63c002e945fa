"""One section as shapes and dimensions in mm, drawn alike by pictures, drawings and the page without scripts.

Nothing is measured here: outlines, shade and numbers are the document's. The rib top may lean across the section; what
is measured from it (trap, melt, heights) is drawn along it, by a shear v - slope u that keeps areas and heights.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from typing import Any

import numpy as np
import shapely
from msgspec import Struct, field
from shapely.geometry.base import BaseGeometry

from seamcheck.catalogue.voice import tr
from seamcheck.document.view import BASE, COVER, SectionSet
from seamcheck.report import facts
from seamcheck.report.facts import Document, Numbered
from seamcheck.report.plan import land_side
from seamcheck.report.section_target import Point, Site, Target, targets, travel


class Dimension(Struct, frozen=True):
    """A length between two points, mm; where it shows a finding with its severity, limit and what it should become."""

    column: str
    title: str
    value: str
    start: Point
    end: Point
    tone: str = ""
    limit: str = ""
    target: str = ""

    @property
    def measure(self) -> str:
        """'0.55 mm', or '0.55 mm → 0.6 mm' where it should change."""
        return f"{self.value} → {self.target}" if self.target else self.value

    @property
    def side(self) -> int:
        """Where it is written: over the section (0), beside it inward (-1) or outward (1)."""
        if self.column in ("rib_width", "clamp_land", "beam_margin"):
            return 0
        return -1 if self.column.endswith("inner") or self.column == "gap" else 1

    @property
    def rows(self) -> list[str]:
        """Its lines beside the section."""
        told = [self.title, self.measure, self.limit] if self.tone else [self.text]
        return [row for row in told if row]

    @property
    def text(self) -> str:
        """All of it in one line."""
        return f"{self.title} {self.measure}" + (f" ({self.limit})" if self.limit else "")


class Pin(Struct, frozen=True):
    """A finding tied to a point of the section, mm."""

    number: int
    at: Point
    tone: str


class SectionShapes(Struct, frozen=True, eq=False):
    """What is drawn of one station; every shape in mm, u outward and v against the beam.

    torn : break lines, where a part goes on beyond the window
    bodies : owner -> material; moved : the moving part after the collapse; traps : by side, after the collapse
    """

    bodies: dict[int, BaseGeometry]
    moved: BaseGeometry | None
    melt: BaseGeometry | None
    traps: dict[str, BaseGeometry]
    light: BaseGeometry | None
    shade: list[BaseGeometry]
    caster: str
    window: tuple[float, float, float, float]  # u0, v0, u1, v1
    dimensions: list[Dimension] = field(default_factory=list)
    pins: list[Pin] = field(default_factory=list)
    targets: list[Target] = field(default_factory=list)
    torn: list[list[Point]] = field(default_factory=list)
    findings: list[Numbered] = field(default_factory=list)


def section_shapes(
    document: Document, joint: Mapping[str, Any], contour: Mapping[str, Any], station: int, sections: SectionSet | None
) -> SectionShapes:
    """Everything drawn at one station of a document with or without section outlines."""
    here = findings_at(document, joint, contour, station)
    ribless = joint["rib_on"] == "none" or any(n.finding["rule"] == "rib-missing" and not n.is_waived for n in here)
    found = None if sections is None else sections.at(station)
    bodies = {} if found is None else solids(*found)
    values = _Values(contour, station)
    slope = 0.0 if sections is None else sections.slope_at(station)
    up = -1 if joint["rib_on"] == "cover" else 1
    half = (values["rib_width_top"] or values["rib_width"] or 0.0) / 2
    edge = None if COVER not in bodies else bodies[COVER].bounds[2 if land_side(contour) >= 0 else 0]
    window = _window(values, contour, half, up, facts.beam_margin(document), abs(edge or 0.0))
    casters = [] if sections is None else [row["v"] for row in sections.shade_at(station) if row["v"] is not None]
    if casters and min(casters) < window[3] + 4.0:
        window = (*window[:3], max(window[3], min(casters) + 0.8))
    window = _with_places(window, here, joint, contour, station, bodies)
    rib = bodies.get(BASE if up > 0 else COVER)
    collapse = facts.collapse_of(document)
    moved, melt, traps = None, None, {}
    if collapse is not None and not ribless and COVER in bodies:
        drop = collapse + facts.initial_contact(joint)
        moved = shapely.affinity.translate(bodies[COVER], 0, -drop)
        if rib is not None and half:
            strip = shapely.box(-2 * half, min(0.0, -up * collapse), 2 * half, max(0.0, -up * collapse))
            melt = _sheared(strip, slope).intersection(rib)
            if up > 0:  # no further than the cover comes down: over a pocket in it the rib stays
                melt = melt.intersection(moved)
        if BASE in bodies:
            traps = _traps(values, bodies[BASE], moved, slope, up, drop)
    light, shade, caster = _light(document, values, half, slope, window, sections, station)
    shapes = SectionShapes(bodies, moved, melt, traps, light, shade, caster, window, findings=here)
    _dimension(shapes, document, joint, contour, values, half, slope, up, ribless)
    _travel(shapes, document, joint, contour, station, Site(values.__getitem__, half, slope, up, traps, None, 0.0))
    land = next(((d.start[0], d.end[0]) for d in shapes.dimensions if d.column == "clamp_land"), None)
    casts: dict[int, Point] | None = None
    if casting := [] if sections is None else [row for row in sections.shade_at(station) if row["v"] is not None]:
        tall = min(float(row["v"]) for row in casting)
        ends = [(r["u"], r["u"]) if r["leans"] and r["u"] is not None else (r["low"], r["high"]) for r in casting]
        casts = {-1: (min(low for low, _ in ends), tall), 1: (max(high for _, high in ends), tall)}
        if tall > window[3] or not all(window[0] < u < window[2] for u, _ in casts.values()):
            casts = None  # it stands outside the picture
    site = Site(values.__getitem__, half, slope, up, traps, land, _lip_gap(contour), casts)
    shapes.targets.extend(targets(document, here, site))
    shapes.torn.extend(line for body in bodies.values() for line in _torn(body, window))
    return shapes


def _in_section(numbered: Numbered, joint: Mapping[str, Any], contour: Mapping[str, Any], station: int) -> Point | None:
    """Where the own place of a finding about the interface lies in a section, mm; None where it has none there."""
    finding = numbered.finding
    if finding.get("at") is None or finding.get("column") in contour["stations"] or finding.get("from_s") is None:
        return None
    stations = contour["stations"]
    near = int(np.linalg.norm(facts.points_of(contour) - np.asarray(finding["at"], dtype=float), axis=1).argmin())
    away = np.asarray(finding["at"], dtype=float) - facts.points_of(contour)[near]
    across, beam = np.asarray(stations["u"][near], dtype=float), np.asarray(joint["beam"], dtype=float)
    u, v = float(away @ across), float(-away @ beam)
    return (u, v) if np.hypot(u, v) > 0.3 else None


_DEEPEST, _UNDER = 16.0, 0.8  # mm below the rib to which a section reaches for a finding, and how far beyond it


def _with_places(
    window: tuple[float, float, float, float], here: list[Numbered], joint: Mapping[str, Any],
    contour: Mapping[str, Any], station: int, bodies: Mapping[int, BaseGeometry],
) -> tuple[float, float, float, float]:  # fmt: skip
    """The window, so deep that it shows what the findings of a station are about: down to where an opening ends."""
    u0, v0, u1, v1 = window
    for numbered in here:
        at = _in_section(numbered, joint, contour, station)
        if at is None or not u0 < at[0] < u1 or not -_DEEPEST < at[1] < 0:
            continue
        line = shapely.LineString([at, (at[0], at[1] - 2 * _DEEPEST)])
        met = [body.intersection(line) for body in bodies.values()]
        tops = [part.bounds[3] for part in met if not part.is_empty and part.bounds[3] < at[1]]
        v0 = min(v0, max([max(tops, default=at[1]), at[1] - _DEEPEST]) - _UNDER)
    return u0, v0, u1, v1


_TOOTH, _OFF = 0.15, 0.06  # mm: half the length of a tooth of a break line, and how far it stands out


def _torn(body: BaseGeometry, window: tuple[float, float, float, float]) -> Iterator[list[Point]]:
    """Break lines where a body goes on beyond the sides or the lower edge of the window."""
    u0, v0, u1, v1 = window
    for start, end in (((u0, v0), (u0, v1)), ((u1, v0), (u1, v1)), ((u0, v0), (u1, v0))):
        met = body.intersection(shapely.LineString([start, end]))
        for part in getattr(met, "geoms", [met]):
            if part.geom_type == "LineString" and part.length > _TOOTH:
                count = max(2, round(part.length / _TOOTH))
                ends = np.asarray(part.coords)
                way = np.linspace(ends[0], ends[-1], count + 1)
                off = np.where(np.arange(count + 1) % 2, _OFF, -_OFF) * (np.arange(count + 1) % count > 0)
                across = np.array([1.0, 0.0]) if start[0] == end[0] else np.array([0.0, 1.0])
                yield [(float(u), float(v)) for u, v in way + off[:, None] * across]


def _travel(
    shapes: SectionShapes, document: Document, joint: Mapping[str, Any], contour: Mapping[str, Any], station: int,
    site: Site,
) -> None:  # fmt: skip
    """How far the cover can sink, where a finding says that it meets something, and how far it should."""
    numbered = next((n for n in shapes.findings if n.finding.get("quantity") == "free_travel"), None)
    limit = None if numbered is None else facts.goal(document, numbered.finding)
    way = (
        None
        if numbered is None or limit is None
        else travel(numbered, joint, contour, station, site, facts.met_at(document, numbered.finding))
    )
    if numbered is None or limit is None or way is None:
        return
    start, end = way
    if not shapes.window[0] < start[0] < shapes.window[2]:
        return
    tone, words = tone_of(numbered), facts.limit_short(document, numbered.finding)
    told = facts.number_text(start[1] - end[1], "free_travel")
    shapes.dimensions.append(
        Dimension(
            "free_travel", tr("free travel"), told, start, end, tone, words, facts.goal_text(document, numbered.finding)
        )
    )
    u, low = start[0], start[1] - limit
    shapes.targets.append(Target(tone, (((u - 0.4, low), (u + 0.4, low)),), (((u, end[1]), (u, low)),)))
    shapes.pins[:] = [pin for pin in shapes.pins if pin.number != numbered.number]


def _lip_gap(contour: Mapping[str, Any]) -> float:
    """The middle of the limits of a lip's gap, mm; the document's own where it states both as one number."""
    for bound in contour.get("bounds") or ():
        low, high = bound["low"], bound["high"]
        if bound["rule"] == "lip-gap" and isinstance(low, int | float) and isinstance(high, int | float):
            return float(low + high) / 2
    return 0.2


def findings_at(
    document: Document, joint: Mapping[str, Any], contour: Mapping[str, Any], station: int
) -> list[Numbered]:
    """Findings that hold at a station, gravest first."""
    return [
        n
        for n in facts.numbered_findings(document)
        if n.finding.get("joint") == joint["id"]
        and bool(facts.stations_of_finding(document, n.finding, contour)[station])
    ]


class _Values:
    """Values of one station by column; None where not measured."""

    def __init__(self, contour: Mapping[str, Any], station: int) -> None:
        self.stations, self.station = contour["stations"], station

    def __getitem__(self, column: str) -> float | None:
        values = self.stations.get(column)
        return None if values is None else values[self.station]


def solids(segments: np.ndarray, owner: np.ndarray) -> dict[int, BaseGeometry]:
    """Owner -> its material in the section plane, from unordered segments (m, 4), mm."""
    result = {}
    for number in sorted(set(owner.tolist())):
        rows = np.round(segments[owner == number].astype(float), 3).reshape(-1, 2, 2)
        rows = rows[np.any(rows[:, 0] != rows[:, 1], axis=1)]
        if len(rows):
            result[number] = shapely.build_area(shapely.node(shapely.multilinestrings(shapely.linestrings(rows))))
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


def _sheared(shape: BaseGeometry, slope: float) -> BaseGeometry:
    """A shape drawn along a line that rises by ``slope`` mm for each mm outward."""
    return shape if slope == 0.0 else shapely.affinity.affine_transform(shape, [1.0, 0.0, slope, 1.0, 0.0, 0.0])


def _traps(
    values: _Values, base: BaseGeometry, moved: BaseGeometry, slope: float, up: int, drop: float
) -> dict[str, BaseGeometry]:
    level_base, level_moved = _sheared(base, -slope), _sheared(moved, -slope)
    result = {}
    for side, name in ((-1, "inner"), (1, "outer")):
        area, deep = values[f"trap_area_{name}"], values[f"rib_height_{name}"]
        if not area or deep is None:
            continue
        low, high = (-deep * 1.02, 0.0) if up > 0 else (-drop, deep * 1.02 - drop)
        free = shapely.box(-20, low, 20, high).difference(shapely.union_all([level_base, level_moved]))
        pieces = [p for p in getattr(free, "geoms", [free]) if p.intersects(_strip(side, 20.0)) and p.area > 1e-4]
        pieces = [p.intersection(_strip(side, 20.0)) for p in pieces]
        near = min((p.distance(shapely.Point(0.0, low)) for p in pieces if not p.is_empty), default=None)
        own = [p for p in pieces if near is not None and p.distance(shapely.Point(0.0, low)) <= near + 0.05]
        if own:
            result[name] = _sheared(trap_area(shapely.union_all(own), side, float(area)), slope)
    return result


_MORE, _KEPT = 3.0, 9.0  # mm by which the window grows to show the cover's edge; that outlines reach at least


def _window(
    values: _Values, contour: Mapping[str, Any], half: float, up: int, margin: float, edge: float
) -> tuple[float, float, float, float]:
    height = min(values["rib_height"] or 1.2, 4.0)
    thickness = values["cover_thickness"] or 2.0
    land = min(values["clamp_land"] or 2.0, 5.0)
    reach = max(half + margin + land + 0.8, 3.2)
    if reach < edge + 0.4 < min(reach + _MORE, _KEPT):  # to the cover's free edge
        reach = edge + 0.4
    low = -(height + 1.6) if up > 0 else -2.0
    high = thickness + 1.4 if up > 0 else max(thickness, height) + 1.6
    side = land_side(contour)
    near = max(half + 2.3, 3.0)
    return (-reach if side < 0 else -near, low, reach if side >= 0 else near, high)


def _light(
    document: Document, values: _Values, half: float, slope: float, window: tuple[float, float, float, float],
    sections: SectionSet | None, station: int,
) -> tuple[BaseGeometry | None, list[BaseGeometry], str]:  # fmt: skip
    """Beam corridor down to the rib top, the strips of it in the shade, and the part that casts it."""
    if not half:
        return None, [], ""
    margin, top = facts.beam_margin(document), values["cover_thickness"] or 0.0
    lean, inner, outer = values["light_lean"], values["light_enters_inner"], values["light_enters_outer"]
    foot = (values["light_width"] or 2 * half) / 2 + margin
    ceiling = window[3]

    def column(low: float, high: float, upto: float) -> BaseGeometry:
        """The beam onto the rib top between two places, up to a height."""
        ends = []
        for at in (low, high):
            enters, above = at, at
            if inner is not None and outer is not None:
                share = (at + foot) / (2 * foot)
                enters = inner - margin + share * (outer - inner + 2 * margin)
                above = enters + np.tan(np.radians(lean or 0.0)) * max(ceiling - top, 0.0)
            ends.append((at, enters, above))
        (a, a1, a2), (b, b1, b2) = ends
        shape = shapely.Polygon(
            [
                (a, slope * a),
                (a1, top + slope * a1),
                (a2, ceiling),
                (b2, ceiling),
                (b1, top + slope * b1),
                (b, slope * b),
            ]
        )
        return shape.intersection(shapely.box(-50, -50, 50, upto))

    rows = [] if sections is None else sections.shade_at(station)
    given = lean is not None
    rows = [row for row in rows if row["leans"] == given] or rows

    def rim(at: float) -> float:
        """The margin beside the beam lies in the shade of the beam's edge."""
        return float(np.sign(at) * foot) if abs(at) >= foot - margin - 1e-3 else at

    shade = [column(rim(row["low"]), rim(row["high"]), ceiling if row["v"] is None else row["v"]) for row in rows]
    caster = next((row for row in rows if row["part"]), None)
    name = ""
    if caster is not None:
        far = "" if caster["v"] is None else tr(", {height} above the rib", height=facts.mm(caster["v"]))
        name = f"{facts.part_names(document).get(caster['part'], caster['part'])}{far}"
    return column(-foot, foot, ceiling), shade, name


_SAME = {
    "rib_width": ("rib_width_top",),
    "cover_thickness": ("cover_thickness_min", "cover_thickness_max"),
    "rib_height_inner": ("rib_height",),
    "rib_height_outer": ("rib_height",),
    "gap": ("gap_min", "gap_max"),
}
"""Column of a dimension -> further columns whose findings it shows."""


def _dimension(
    shapes: SectionShapes, document: Document, joint: Mapping[str, Any], contour: Mapping[str, Any], values: _Values,
    half: float, slope: float, up: int, ribless: bool,
) -> None:  # fmt: skip
    """Fill in dimensions of what was measured here, and pins for findings that none of them shows."""
    shown: set[int] = set()

    def add(column: str, title: str, start: Point, end: Point) -> None:
        is_higher = column.startswith("rib_height_") and values[column] != values["rib_height"]  # judged is the lower
        names = (column, *(() if is_higher else _SAME.get(column, ())))
        found = next(
            (n for n in shapes.findings if n.finding.get("column") in names or n.finding.get("quantity") in names), None
        )
        if found is None:
            text = facts.number_text(values[column], column)
            shapes.dimensions.append(Dimension(column, title, text, start, end))
            return
        shown.add(found.number)
        own = str(found.finding.get("column") or "")
        is_worst = found.station == values.station or values[own] is None
        text = facts.value_text(found.finding) if is_worst else facts.number_text(values[own], own)
        limit, target = facts.limit_short(document, found.finding), facts.goal_text(document, found.finding)
        shapes.dimensions.append(Dimension(column, title, text, start, end, tone_of(found), limit, target))

    margin, thick, gap = facts.beam_margin(document), values["cover_thickness"], values["gap"]
    low = gap or 0.0 if up > 0 else 0.0
    if half and not ribless:
        add("rib_width", tr("rib width"), (-half, -slope * half), (half, slope * half))
    if thick is not None:
        add("cover_thickness", tr("cover"), (half, low + slope * half), (half, low + thick + slope * half))
    if gap is not None and abs(gap) > 1e-3:
        add("gap", tr("gap"), (0.0, 0.0), (0.0, up * gap))
    side, land = land_side(contour), values["clamp_land"]
    if side and land is not None and thick is not None and half:
        enters = values["light_enters_outer" if side > 0 else "light_enters_inner"]
        a = (side * half if enters is None else enters) + side * margin
        b = a + side * land
        if margin > 0:
            foot, over = a - side * margin, tr("beam margin")
            ends = (foot, low + thick + slope * foot), (a, low + thick + slope * a)
            shapes.dimensions.append(Dimension("beam_margin", over, facts.mm(margin, 2), *ends))
        add("clamp_land", tr("land from the beam's edge"), (a, low + thick + slope * a), (b, low + thick + slope * b))
    if not ribless:
        for sign, name in ((-1, "inner"), (1, "outer")):
            tall = values[f"rib_height_{name}"]
            if tall is not None and tall < 6.0:
                u = sign * half
                add(f"rib_height_{name}", tr("rib height"), (u, slope * u), (u, slope * u - up * tall))
            if values[f"lip_gap_{name}"] is not None and name in shapes.traps:
                u0, v0, u1, v1 = shapes.traps[name].bounds
                u = u0 if sign < 0 else u1
                edge = v1 if up > 0 else v0
                add(
                    f"lip_gap_{name}",
                    tr("lip gap"),
                    (u, edge),
                    (u, edge - up * float(values[f"lip_gap_{name}"] or 0.0)),
                )
    u0, v0, u1, v1 = shapes.window
    depth = values["support_depth"]
    if depth is not None and any(n.finding.get("quantity") == "support_open" for n in shapes.findings):
        shapes.dimensions.append(
            Dimension("support_depth", facts.quantity_title({"quantity": "support_depth"}),
                      facts.number_text(depth, "support_depth"), (0.0, 0.0), (0.0, -depth))
        )  # fmt: skip
    for numbered in shapes.findings:
        if numbered.number not in shown:
            at = _in_section(numbered, joint, contour, values.station)
            inside = at is not None and u0 < at[0] < u1 and v0 < at[1] < v1
            spot = at if at is not None and inside else _anchor(numbered, shapes, values, half, up)
            shapes.pins.append(Pin(numbered.number, spot, tone_of(numbered)))


def tone_of(numbered: Numbered) -> str:
    """'waived' or the severity."""
    return "waived" if numbered.is_waived else str(numbered.finding["severity"])


def _anchor(numbered: Numbered, shapes: SectionShapes, values: _Values, half: float, up: int) -> Point:
    """Where a finding without a dimension is pinned, by the quantity that it is about."""
    column = str(numbered.finding.get("column") or numbered.finding.get("quantity") or "")
    side = -1 if column.endswith("inner") else 1
    top, tall = values["cover_thickness"] or 1.0, min(values["rib_height"] or 0.6, 4.0)
    name = "inner" if side < 0 else "outer"
    if column.startswith("trap") and name in shapes.traps:
        middle = shapes.traps[name].representative_point()
        return (middle.x, middle.y)
    if column.startswith("draft"):
        return (side * half, -up * tall / 2)
    if column.startswith(("beam", "light", "spot")):
        return (0.0, top + 0.5)
    if column.startswith("clamp"):
        return (half + 0.6, top)
    if column.startswith(("cover", "transmission")):
        return (half * 0.4, top * 0.6)
    if column.startswith(("support", "overhang", "wall")):
        return (0.0, -up * (tall + 0.7))
    if column.startswith(("rib", "slenderness", "melt")):
        return (0.0, -up * tall * 0.35)
    return (0.0, 0.0)
