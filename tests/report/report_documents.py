"""Review documents made from stated dimensions, for the tests of the reports (no CAD, no survey).

A housing of the weather station: a rounded-rectangle seam, rib 1.5 x 1.2, a trap with a bead on both sides, a
cover plate 2 mm thick that reaches 3.2 mm beyond the mid-line. Defects are stretches in which one dimension
differs. Section outlines and values come from the same dimensions.
"""

from __future__ import annotations

import json
import math

import numpy as np
from msgspec.structs import replace

from seamcheck.assembly.parts import Assembly, Entity, ModelFile, Part
from seamcheck.catalogue.rules import RULES
from seamcheck.document.make import make_document, not_reviewed_document
from seamcheck.document.view import Mesh, SectionSet, pack_view
from seamcheck.errors import NotReviewed
from seamcheck.judge.findings import JointResult
from seamcheck.judge.judge import judge
from seamcheck.measure.table import PathSurvey, Survey
from seamcheck.settings.settings import Settings
from seamcheck.settings.waivers import Waiver

HOSTILE = "<img src=x onerror=alert(1)>"


def note(text: str) -> dict:
    """A sentence of the document without a key of its own."""
    return {"key": "note", "args": {}, "text": text}


COLLAPSE = 0.4
STANDARD = {"w": 1.5, "h": 1.2, "trap": 1.0, "lip": 0.22, "t": 2.0, "edge": 3.2, "chamfer": 0.3, "draft": 0.0}


def rounded_rectangle(width: float, depth: float, radius: float, step: float):
    """Stations (x, y), outer normals and arc lengths of a closed rounded rectangle, counter-clockwise."""
    straight_x, straight_y = width - 2 * radius, depth - 2 * radius
    arc = math.pi / 2 * radius
    length = 2 * straight_x + 2 * straight_y + 4 * arc
    n = round(length / step)
    s = np.arange(n) * length / n
    xy, normal, turn = np.zeros((n, 2)), np.zeros((n, 2)), np.full(n, np.nan)
    corners = [
        (width / 2 - radius, depth / 2 - radius),
        (-width / 2 + radius, depth / 2 - radius),
        (-width / 2 + radius, -depth / 2 + radius),
        (width / 2 - radius, -depth / 2 + radius),
    ]
    runs = [
        (straight_y, corners[3], 0.0),
        (straight_x, corners[0], 90.0),
        (straight_y, corners[1], 180.0),
        (straight_x, corners[2], 270.0),
    ]
    for i, value in enumerate(s):
        rest = value
        for k, (straight, corner, angle) in enumerate(runs):
            a = math.radians(angle)
            out, along = np.array([math.cos(a), math.sin(a)]), np.array([-math.sin(a), math.cos(a)])
            if rest < straight:
                xy[i], normal[i] = np.array(corner) + radius * out + along * rest, out
                break
            rest -= straight
            if rest < arc:
                b = a + rest / radius
                out = np.array([math.cos(b), math.sin(b)])
                xy[i], normal[i], turn[i] = np.array(corners[k]) + radius * out, out, radius
                break
            rest -= arc
    return s, xy, normal, turn, length


def section_polygons(d: dict[str, float]) -> list[tuple[int, list[tuple[float, float]]]]:
    """Closed outlines (owner, points) of one section with the dimensions d."""
    w, h, trap = d["w"] / 2, d["h"], d["trap"]
    bead = -COLLAPSE - d["lip"]
    root = math.tan(math.radians(d["draft"])) * h
    out, edge, c = w + trap, d["edge"], d["chamfer"]
    base = [
        (-w, 0),
        (-w - root, -h),
        (-out, -h),
        (-out, bead),
        (-out - 0.8, bead),
        (-out - 0.8, -h - 1.2),
        (-1.1, -h - 1.8),
        (-1.1, -7.0),
        (1.1, -7.0),
        (1.1, -h - 1.8),
        (out + 0.8, -h - 1.2),
        (out + 0.8, bead),
        (out, bead),
        (out, -h),
        (w + root, -h),
        (w, 0),
    ]
    cover = [(-8.0, 0), (-8.0, d["t"]), (edge - c, d["t"]), (edge, d["t"] - c), (edge, 0)]
    return [(0, base), (1, cover)]


def segments_of(polygons, seed: int):
    """Unordered segments with owners: the order and the direction carry no meaning."""
    rng = np.random.default_rng(seed)
    rows, owners = [], []
    for owner, points in polygons:
        for (u0, v0), (u1, v1) in zip(points, points[1:] + points[:1], strict=True):
            rows.append((u0, v0, u1, v1) if rng.random() < 0.5 else (u1, v1, u0, v0))
            owners.append(owner)
    order = rng.permutation(len(rows))
    return np.array(rows)[order], np.array(owners)[order]


def values_of(d: dict[str, float]) -> dict[str, float]:
    """Closed-form values of a section with dimensions d (no draft, flat cover, touching)."""
    melt = d["w"] * COLLAPSE
    area = d["trap"] * (d["h"] - COLLAPSE)
    return {
        "rib_width": d["w"],
        "rib_width_top": d["w"],
        "rib_width_mid": d["w"],
        "rib_width_root": d["w"],
        "rib_height": d["h"],
        "rib_height_inner": d["h"],
        "rib_height_outer": d["h"],
        "slenderness": d["h"] / d["w"],
        "draft_inner": 0.0,
        "draft_outer": 0.0,
        "melt_area": melt,
        "trap_area_inner": area,
        "trap_area_outer": area,
        "trap_room": 2 * area / melt,
        "trap_room_inner": area / (melt / 2),
        "trap_room_outer": area / (melt / 2),
        "trap_open_inner": 0.0,
        "trap_open_outer": 0.0,
        "lip_gap_inner": d["lip"],
        "lip_gap_outer": d["lip"],
        "clamp_land": d["edge"] - d["chamfer"] - d["w"] / 2,
        "clamp_tilt": 0.0,
        "cover_thickness": d["t"],
        "cover_thickness_min": d["t"],
        "cover_thickness_max": d["t"],
        "gap": 0.0,
        "gap_min": 0.0,
        "gap_max": 0.0,
        "free_travel": COLLAPSE + d["lip"],
        "beam_clear": 1.0,
        "wall_width": math.nan,
        "support_offset": 0.0,
    }


def made_settings() -> Settings:
    """Settings in which rules about values that are not made here are off; the light is as wide as the rib."""
    made = {*values_of(STANDARD), "corner_radius"}
    missing = [r.key for r in RULES.values() if any(c.column not in made for c in r.checks)]
    return Settings().changed({**{f"{key}.severity": "off" for key in missing}, "beam-margin": 0.0})


def path_survey(ident, s, xyz, u, turn, length, dims, closed=True, ends=()) -> PathSurvey:
    """One path with the values of its dimensions; two stretches where something was not measured."""
    keys = [*values_of(STANDARD), "corner_radius"]
    columns = {key: np.empty(len(s)) for key in keys}
    reasons = {key: np.full(len(s), "", dtype=object) for key in keys}
    for i, d in enumerate(dims):
        for key, value in (values_of(d) | {"corner_radius": turn[i]}).items():
            columns[key][i] = value
    reasons["wall_width"][:] = "broad"
    reasons["corner_radius"][np.isnan(turn)] = "straight"
    gone = (s > length * 0.36) & (s < length * 0.36 + 3)
    columns["lip_gap_outer"][gone] = np.nan
    reasons["lip_gap_outer"][gone] = "broken-geometry"
    return PathSurvey(
        ident,
        closed,
        float(length),
        tuple(ends),
        np.asarray(s, dtype=float),
        xyz,
        u,
        columns,
        reasons,
        np.full(len(s), 7),
        np.full(len(s), 3),
        "outer",
    )


def part(ident: str, name: str, path: tuple[str, ...], faces: int) -> Part:
    entities = tuple(Entity(100 + i, 90 + i) for i in range(faces))
    return Part(ident, name, path, "solid", None, 1, faces, entities=entities)


def document_of(joints: list[JointResult], names, view=None, settings: Settings | None = None) -> dict:
    """The document that the project makes of these joints, through JSON as a file would be."""
    settings = settings or made_settings()
    assembly = Assembly(
        (ModelFile("weather-station-housing.step", "5f" * 32, "AP242", "mm"),),
        (
            part("p1", names[0], ("weather station", names[0]), 84),
            part("p2", names[1], ("weather station", names[1]), 42),
            part("p3", "sensor board", ("weather station", "inside", "sensor board"), 12),
        ),
    )
    judgement = judge(joints, settings, dict(zip(("p1", "p2"), names, strict=True)))
    return json.loads(json.dumps(make_document(assembly, joints, judgement, settings, view=view)))


def joint_of(ident: str, paths: list[PathSurvey], names, junctions=None) -> JointResult:
    interface = {"free_travel": {"value": 0.62, "at": [52.0, 40.0, 24.0], "why": ""}}
    return JointResult(
        ident, ("p2",), ("p1",), "base", np.array([0.0, 0.0, -1.0]), "touching",
        (
            "A band 1.5 mm wide and 382.8 mm long runs once round; both parts fall away beside it.",
            f"The cover is {names[1]!r}: it is 2.0 mm thick over the band and nothing lies above it.",
        ),
        Survey(tuple(paths), junctions or {}, (), interface, "p1", "p2"),
    )  # fmt: skip


def _box_mesh(part, outline, z0, z1, inner=None, face0=0):
    """A prism over a closed outline (n, 2); with ``inner`` a ring of the same count of points."""
    n = len(outline)
    rings = [np.column_stack([outline, np.full(n, z)]) for z in (z0, z1)]
    if inner is not None:
        rings += [np.column_stack([inner, np.full(n, z)]) for z in (z0, z1)]
    points = np.vstack(rings)
    triangles, face = [], []

    def strip(a, b, number):
        for i in range(n):
            j = (i + 1) % n
            triangles.extend([(a + i, a + j, b + j), (a + i, b + j, b + i)])
            face.extend([number + (i * 8) // n if number >= 100 else number] * 2)

    strip(0, n, 100 + face0)
    if inner is None:
        for z, number in ((0, 1), (1, 2)):
            centre = len(points)
            points = np.vstack([points, [*outline.mean(axis=0), (z0, z1)[z]]])
            for i in range(n):
                j = (i + 1) % n
                triangles.append((z * n + i, z * n + j, centre) if z else (z * n + j, z * n + i, centre))
                face.append(number + face0)
    else:
        strip(3 * n, 2 * n, 200 + face0)
        strip(n, 3 * n, 2 + face0)
        strip(2 * n, 0, 1 + face0)
    return points, np.array(triangles), np.array(face), part


def _mesh(part, pieces):
    positions, triangles, face, start = [], [], [], 0
    for p, t, f, _ in pieces:
        positions.append(p)
        triangles.append(t + start)
        face.append(f)
        start += len(p)
    return Mesh(part, np.vstack(positions), np.vstack(triangles), np.concatenate(face))


def _offset(width, depth, radius, by, step=0.9):
    _, xy, normal, _, _ = rounded_rectangle(width, depth, radius, step)
    return xy + normal * by


NAMES = ("station housing", "station lid")


def housing_path(step: float, clean: bool) -> tuple[PathSurvey, list[dict]]:
    s, xy, normal, turn, length = rounded_rectangle(120, 80, 10, step)
    xyz = np.column_stack([xy, np.full(len(s), 24.0)])
    u = np.column_stack([normal, np.zeros(len(s))])
    dims = [dict(STANDARD) for _ in s]
    if not clean:
        for d, at in zip(dims, s, strict=True):
            if 130 <= at <= 142:
                d["w"] = 0.48 + 0.02 * abs(at - 136) / 6
            if 60 <= at <= 75:
                d["h"] = 0.74 + 0.002 * abs(at - 68)
            if 250 <= at <= 262:
                d["chamfer"] = 1.75 - 0.01 * abs(at - 256)
            if 310 <= at <= 318:
                d["t"] = 1.62
            if 200 <= at <= 208:
                d["h"] = 2.4
    return path_survey("c1", s, xyz, u, turn, length, dims), dims


def waived(settings: Settings) -> Settings:
    """The recess of the cover, accepted."""
    waiver = Waiver(rule="cover-uniformity", reason="Local recess for the label, trial-welded.")
    return replace(settings, waivers=(waiver,))


def housing(step: float = 0.5, view: bool = True, clean: bool = False, names=NAMES) -> dict:
    """The housing with its defects (or without); about 760 stations at the default spacing."""
    path, dims = housing_path(step, clean)
    settings = waived(made_settings().changed({"clamp-land.min": 1.0}, "file"))
    joint = joint_of("j1", [path], names)
    return document_of([joint], names, _view("j1", "c1", dims) if view else None, settings)


def many(step: float = 0.5) -> dict:
    """The housing with faults of four kinds, one after the other round the seam: some 30 findings."""
    path, dims = housing_path(step, clean=True)
    kinds = (("w", 0.5), ("h", 0.5), ("chamfer", 1.7), ("t", 3.3))
    for d, at in zip(dims, path.s, strict=True):
        key, value = kinds[int(at // 12) % 4]
        if 4 <= at % 12 <= 8:
            d[key] = value
    joint = joint_of("j1", [_path_of(path, dims)], NAMES)
    return document_of([joint], NAMES, _view("j1", "c1", dims), made_settings())


def _path_of(path, dims):
    s, xy, normal, turn, length = rounded_rectangle(120, 80, 10, path.length / len(path.s))
    xyz, u = np.column_stack([xy, np.full(len(s), 24.0)]), np.column_stack([normal, np.zeros(len(s))])
    return path_survey("c1", s, xyz, u, turn, length, dims)


def _view(joint, contour, dims):
    rows, owners, offsets = [], [], [0]
    for i, d in enumerate(dims):
        seg, own = segments_of(section_polygons(d), i)
        rows.append(seg)
        owners.append(own)
        offsets.append(offsets[-1] + len(seg))
    segments = np.vstack(rows)
    sections = [
        SectionSet(
            joint,
            contour,
            np.arange(len(dims)),
            np.array(offsets),
            segments,
            np.concatenate(owners),
            np.full(len(segments), -1),
        )
    ]
    ring = lambda by: _offset(120, 80, 10, by)  # noqa: E731
    base = _mesh(
        "p1",
        [
            _box_mesh("p1", ring(1.1), 0.0, 21.0, ring(-1.1)),
            _box_mesh("p1", ring(2.55), 21.0, 22.8, ring(-2.55), 10),
            _box_mesh("p1", ring(0.75), 22.8, 24.0, ring(-0.75), 20),
            _box_mesh("p1", ring(-1.1), 0.0, 2.0, None, 30),
        ],
    )
    port = rounded_rectangle(30, 18, 4, 0.6)[1] + np.array([-20.0, 5.0])
    cover = _mesh(
        "p2",
        [
            _box_mesh("p2", ring(3.2), 24.0, 26.0, None),
            _box_mesh("p2", port, 26.0, 31.0, None, 10),
            _box_mesh("p2", rounded_rectangle(12, 12, 5.9, 0.5)[1] + np.array([32.0, -14.0]), 26.0, 29.0, None, 20),
        ],
    )
    board = _mesh("p3", [_box_mesh("p3", rounded_rectangle(90, 50, 1, 2.0)[1], 8.0, 9.6, None)])
    return pack_view(sections, [base, cover, board])


def hostile() -> dict:
    """The housing with part names, messages and a file name that try to become markup, formulas or paths."""
    document = housing(step=2.0, names=(HOSTILE, "</script><script>alert(2)</script>"))
    document["model"]["file"] = '=cmd|"/c calc"!A1 <b>..%2f..\\x.step'
    document["model"]["notes"] = [note("<svg onload=alert(3)>"), note("{{7*7}} ${7*7} <!--")]
    document["findings"][0]["message"] = "</SCRIPT><!-- " + HOSTILE
    document["findings"][0]["id"] = '"><img src=x onerror=alert(4)>'
    document["not_checked"].append(note(HOSTILE))
    document["joints"][0]["why"].append(note(HOSTILE))
    return document


def two_joints() -> dict:
    """Two joints: the housing, and a small round window that has no view."""
    path, dims = housing_path(1.0, False)
    s, xy, normal, turn, length = rounded_rectangle(24, 24, 11.99, 0.5)
    xyz = np.column_stack([xy, np.full(len(s), 40.0)])
    u = np.column_stack([normal, np.zeros(len(s))])
    window = path_survey("c1", s, xyz, u, turn, length, [dict(STANDARD) for _ in s])
    joints = [joint_of("j1", [path], NAMES), joint_of("j2", [window], NAMES)]
    return document_of(joints, NAMES, _view("j1", "c1", dims))


def with_junction() -> dict:
    """A closed outline, and a dividing wall that meets it at one end and ends open at the other."""
    path, dims = housing_path(1.0, False)
    s = np.arange(0.0, 58.0, 1.0)
    xyz = np.column_stack([np.zeros(len(s)), s - 40.0, np.full(len(s), 24.0)])
    u = np.tile([1.0, 0.0, 0.0], (len(s), 1))
    wall = path_survey(
        "c2", s, xyz, u, np.full(len(s), np.nan), 57.0, [dict(STANDARD) for _ in s], False, ("junction:J1", "open")
    )
    joint = joint_of("j1", [path, wall], NAMES, {"J1": np.array([0.0, -40.0, 24.0])})
    return document_of([joint], NAMES, _view("j1", "c1", dims))


def not_reviewed() -> dict:
    """A model that could not be reviewed."""
    files = (ModelFile("lid.step", "00" * 32, "AP214", "mm"),)
    reason = NotReviewed("single-part", "The file holds one part; a seam needs a cover and a base.")
    return json.loads(json.dumps(not_reviewed_document(files, reason, Settings(), [HOSTILE])))
