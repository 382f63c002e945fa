"""Review documents made from stated dimensions, for the tests of the reports (no CAD, no survey).

A housing of the weather station: a rounded-rectangle seam, rib 1.5 x 1.2, a trap with a bead on both sides, a
cover plate 2 mm thick that reaches 3.2 mm beyond the mid-line. Defects are stretches in which one dimension
differs. Section outlines and values come from the same dimensions.
"""

from __future__ import annotations

import copy
import math

import numpy as np

from seamcheck.limits.quantities import QUANTITIES
from seamcheck.report.view import Mesh, SectionSet, pack_view

HOSTILE = "<img src=x onerror=alert(1)>"
COLLAPSE = 0.4
STANDARD = {
    "w": 1.5,
    "h": 1.2,
    "trap": 1.0,
    "lip": 0.15,
    "t": 2.0,
    "edge": 3.2,
    "chamfer": 0.3,
    "draft": 0.0,
}


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
    cover = [
        (-8.0, 0),
        (-8.0, d["t"]),
        (edge - c, d["t"]),
        (edge, d["t"] - c),
        (edge, 0),
    ]
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


LIMITS = [
    ("rib-width", "rib_width", [0.6, 2.0], "mm", "outside", "common practice, no published source"),
    ("rib-evenness", "rib_width", 0.1, "1", "evenness-share", "assumption of this project"),
    ("rib-height", "rib_height", 0.6, "mm", "below", "assumption of this project"),
    ("trap-room", "trap_room", 1.2, "1", "below", "assumption of this project"),
    ("clamp-land", "clamp_land", 1.0, "mm", "below", "common practice, no published source"),
    ("cover-thickness", "cover_thickness", [0.8, 3.0], "mm", "outside", "from memory, unverified"),
    ("cover-evenness", "cover_thickness", 0.3, "mm", "evenness", "assumption of this project"),
    ("contact-gap", "gap", 0.1, "mm", "size-above", "common practice, no published source"),
    ("sink-travel", "free_travel", 0.5, "mm", "below", "assumption of this project"),
    ("beam-path", "beam_clear", 1.0, "1", "below", "assumption of this project"),
    ("slenderness", "slenderness", 1.5, "1", "above", "common practice, no published source"),
]

HARM = {
    "rib-width": (
        "A narrow rib welds weakly and the beam overlaps the trap.",
        "Widen the weld rib to the width of its neighbours.",
    ),
    "trap-room": (
        "The melt finds no room, squeezes out as flash and blocks the collapse.",
        "Deepen or widen the flash trap.",
    ),
    "clamp-land": (
        "The clamp presses unevenly and the cover lifts.",
        "Make the flange wider or move the edge break outward.",
    ),
    "cover-evenness": (
        "The energy at the rib changes exponentially with the cover's thickness.",
        "Keep the cover's wall constant over the seam.",
    ),
    "slenderness": ("A slender rib tilts when it softens.", "Lower the rib or widen it."),
    "rib-evenness": (
        "Uneven melting: cold or burnt zones.",
        "Keep the rib's width constant, also in the corners.",
    ),
}


def finding(ident, rule, severity, quantity, value, limit, unit, at, from_s, to_s, length, message, **more):
    harm, remedy = HARM.get(rule, ("", ""))
    return {
        "id": ident,
        "rule": rule,
        "severity": severity,
        "quantity": quantity,
        "value": value,
        "limit": limit,
        "unit": unit,
        "margin": None if value is None or limit is None else round(min(value - limit, limit - value), 6),
        "joint": "j1",
        "contour": "c1",
        "at": at,
        "from_s": from_s,
        "to_s": to_s,
        "length_mm": length,
        "faces": [{"part": "p1", "step_entity": "#1234", "line": 1301}],
        "message": message,
        "harm": harm,
        "remedy": remedy,
        "waived": None,
        **more,
    }


def _clean(value: float) -> float | None:
    return None if not math.isfinite(value) else round(float(value), 6)


def _contour(ident, s, xyz, u, turn, length, dims, closed=True, junctions=()):
    columns = {key: [] for key in QUANTITIES if QUANTITIES[key].per == "station"}
    for i, d in enumerate(dims):
        row = values_of(d) | {"turn_radius": turn[i]}
        for key in columns:
            columns[key].append(_clean(row.get(key, math.nan)))
    unmeasured = [{"column": "wall_width", "from_s": 0.0, "to_s": round(float(s[-1]), 6), "why": "broad"}]
    hole = (s > length * 0.36) & (
        s < length * 0.36 + 3
    )  # a stretch where the outer lip gap could not be measured
    for i in np.flatnonzero(hole):
        columns["lip_gap_outer"][i] = None
    if hole.any():
        unmeasured.append(
            {
                "column": "lip_gap_outer",
                "from_s": round(float(s[hole][0]), 6),
                "to_s": round(float(s[hole][-1]), 6),
                "why": "broken-geometry",
            }
        )
    summary = {}
    for key, values in columns.items():
        known = [v for v in values if v is not None]
        summary[key] = (
            None
            if not known
            else {"min": min(known), "median": round(float(np.median(known)), 6), "max": max(known)}
        )
    return {
        "id": ident,
        "closed": closed,
        "length_mm": round(length, 6),
        "junctions": list(junctions),
        "stations": {
            "s": [round(float(v), 6) for v in s],
            "x": [round(float(v), 6) for v in xyz[:, 0]],
            "y": [round(float(v), 6) for v in xyz[:, 1]],
            "z": [round(float(v), 6) for v in xyz[:, 2]],
            "u": [[round(float(c), 6) for c in row] for row in u],
            **columns,
        },
        "unmeasured": unmeasured,
        "summary": summary,
    }


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


def housing(
    step: float = 0.5, view: bool = True, clean: bool = False, names=("station housing", "station lid")
) -> dict:
    """The housing with its defects (or without); about 760 stations at the default spacing."""
    s, xy, normal, turn, length = rounded_rectangle(120, 80, 10, step)
    xyz = np.column_stack([xy, np.full(len(s), 24.0)])
    u = np.column_stack([normal, np.zeros(len(s))])
    dims = [dict(STANDARD) for _ in s]

    def inside(a, b):
        return np.flatnonzero((s >= a) & (s <= b))

    findings = []
    if not clean:
        for i in inside(130, 142):
            dims[i]["w"] = 0.48 + 0.02 * abs(s[i] - 136) / 6
        for i in inside(60, 75):
            dims[i]["h"] = 0.74 + 0.002 * abs(s[i] - 68)
        for i in inside(250, 262):
            dims[i]["chamfer"] = 1.75 - 0.01 * abs(s[i] - 256)
        for i in inside(310, 318):
            dims[i]["t"] = 1.62
        for i in inside(200, 208):
            dims[i]["h"] = 2.4
            dims[i]["lip"] = 0.15
    contour = _contour("c1", s, xyz, u, turn, length, dims)
    stations = contour["stations"]

    def worst(quantity, a, b, pick):
        rows = inside(a, b)
        i = int(pick(rows, key=lambda k: stations[quantity][k]))
        return (
            i,
            stations[quantity][i],
            [stations[c][i] for c in "xyz"],
            stations["s"][rows[0]],
            stations["s"][rows[-1]],
        )

    if not clean:
        for ident, rule, severity, quantity, limit, unit, a, b, pick, text in (
            (
                "f-rib-width-1",
                "rib-width",
                "must-fix",
                "rib_width",
                0.6,
                "mm",
                130,
                142,
                min,
                "The rib is {v:.3f} mm wide at s = {s:.1f} mm; at least 0.600 mm is asked.",
            ),
            (
                "f-rib-evenness-1",
                "rib-evenness",
                "must-fix",
                "rib_width",
                1.35,
                "mm",
                130,
                142,
                min,
                "The rib is {v:.3f} mm wide where the seam's median is 1.500 mm.",
            ),
            (
                "f-trap-room-1",
                "trap-room",
                "must-fix",
                "trap_room",
                1.2,
                "1",
                60,
                75,
                min,
                "The flash traps hold {v:.2f} times the melt; at least 1.20 times is asked.",
            ),
            (
                "f-clamp-land-1",
                "clamp-land",
                "must-fix",
                "clamp_land",
                1.0,
                "mm",
                250,
                262,
                min,
                "The clamp land is {v:.3f} mm wide; at least 1.000 mm is asked.",
            ),
            (
                "f-cover-evenness-1",
                "cover-evenness",
                "must-fix",
                "cover_thickness",
                1.7,
                "mm",
                310,
                318,
                min,
                "The cover is {v:.3f} mm thick where the seam's median is 2.000 mm.",
            ),
            (
                "f-slenderness-1",
                "slenderness",
                "attention",
                "slenderness",
                1.5,
                "1",
                200,
                208,
                max,
                "The rib is {v:.3f} times as high as wide.",
            ),
        ):
            i, value, at, from_s, to_s = worst(quantity, a, b, pick)
            findings.append(
                finding(
                    ident,
                    rule,
                    severity,
                    quantity,
                    value,
                    limit,
                    unit,
                    at,
                    from_s,
                    to_s,
                    round(to_s - from_s, 6),
                    text.format(v=value, s=stations["s"][i]),
                )
            )
        waived = next(f for f in findings if f["rule"] == "cover-evenness")
        waived["waived"] = {
            "by": "A. Reader",
            "reason": "Local recess for the label, trial-welded.",
            "until": "2027-06-30",
        }
        findings.append(
            finding(
                "f-note-1",
                "welded-state",
                "note",
                "gap",
                0.0,
                None,
                "mm",
                [stations[c][0] for c in "xyz"],
                0.0,
                stations["s"][-1],
                round(length, 6),
                "Drawn touching: the cover rests on the rib along the whole seam.",
            )
        )
    document = {
        "document": "seamcheck-review",
        "schema_version": 1,
        "seamcheck": "0.1.0",
        "model": {
            "file": "weather-station-housing.step",
            "sha256": "5f" * 32,
            "step_schema": "AP242",
            "length_unit": "mm",
            "parts": [
                {
                    "id": "p1",
                    "name": names[0],
                    "path": ["weather station", names[0]],
                    "role": "base",
                    "solids": 1,
                    "faces": 84,
                },
                {
                    "id": "p2",
                    "name": names[1],
                    "path": ["weather station", names[1]],
                    "role": "cover",
                    "solids": 1,
                    "faces": 42,
                },
                {
                    "id": "p3",
                    "name": "sensor board",
                    "path": ["weather station", "inside", "sensor board"],
                    "role": "other",
                    "solids": 1,
                    "faces": 12,
                },
            ],
            "notes": [],
        },
        "settings": {"collapse": COLLAPSE},
        "verdict": "pass" if clean else "fail",
        "reason": None,
        "joints": [
            {
                "id": "j1",
                "cover": ["p2"],
                "base": ["p1"],
                "rib_on": "base",
                "beam": [0.0, 0.0, -1.0],
                "modelled_state": "touching",
                "why": [
                    "A band 1.5 mm wide and 382.8 mm long runs once round; both parts fall away beside it.",
                    f"The cover is {names[1]!r}: it is 2.0 mm thick over the band and nothing lies above it.",
                ],
                "contours": [contour],
                "interface": {"free_travel": {"value": 0.55, "at": [52.0, 40.0, 24.0], "why": ""}},
            }
        ],
        "findings": findings,
        "limits": [
            {
                "rule": r,
                "quantity": q,
                "value": v,
                "unit": unit,
                "fails": fails,
                "standing": standing,
                "from": "file" if r == "clamp-land" else "default",
            }
            for r, q, v, unit, fails, standing in LIMITS
        ],
        "not_checked": [
            "Ejector marks, gate, parting line and texture in the beam window are usually not in CAD.",
            "Moisture and fibre orientation of the materials.",
            "Flatness and warp of the moulded parts.",
        ],
        "cautions": [
            "This is a geometric and rule-of-thumb pre-check of CAD data. It is not an approval.",
            "Laser sources for plastic welding are normally Class 4 in the sense of IEC 60825-1.",
        ],
    }
    if view:
        document["view"] = _view("j1", "c1", dims, base_outlines=True)
    return document


def _view(joint, contour, dims, base_outlines=True):
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
            _box_mesh(
                "p2", rounded_rectangle(12, 12, 5.9, 0.5)[1] + np.array([32.0, -14.0]), 26.0, 29.0, None, 20
            ),
        ],
    )
    board = _mesh("p3", [_box_mesh("p3", rounded_rectangle(90, 50, 1, 2.0)[1], 8.0, 9.6, None)])
    return pack_view(sections, [base, cover, board])


def hostile() -> dict:
    """The housing with part names, messages and a file name that try to become markup, formulas or paths."""
    document = housing(step=2.0, names=(HOSTILE, "</script><script>alert(2)</script>"))
    document["model"]["file"] = '=cmd|"/c calc"!A1 <b>..%2f..\\x.step'
    document["model"]["notes"] = ["<svg onload=alert(3)>", "{{7*7}} ${7*7} <!--"]
    document["findings"][0]["message"] = "</SCRIPT><!-- " + HOSTILE
    document["findings"][0]["id"] = '"><img src=x onerror=alert(4)>'
    document["not_checked"].append(HOSTILE)
    document["joints"][0]["why"].append(HOSTILE)
    return document


def two_joints() -> dict:
    """Two joints: the housing, and a small round window that has no view."""
    document = housing(step=1.0)
    other = copy.deepcopy(document["joints"][0])
    s, xy, normal, turn, length = rounded_rectangle(24, 24, 11.99, 0.5)
    xyz = np.column_stack([xy, np.full(len(s), 40.0)])
    other.update(
        id="j2",
        contours=[
            _contour(
                "c1",
                s,
                xyz,
                np.column_stack([normal, np.zeros(len(s))]),
                turn,
                length,
                [dict(STANDARD) for _ in s],
            )
        ],
    )
    document["joints"].append(other)
    return document


def with_junction() -> dict:
    """Three open paths that meet at two junctions: an outline with a dividing wall; one interruption."""
    document = housing(step=1.0)
    joint = document["joints"][0]
    s = np.arange(0.0, 58.0, 1.0)
    xyz = np.column_stack([np.zeros(len(s)), s - 29.0, np.full(len(s), 24.0)])
    u = np.tile([1.0, 0.0, 0.0], (len(s), 1))
    joint["contours"].append(
        _contour(
            "c2",
            s,
            xyz,
            u,
            np.full(len(s), np.nan),
            58.0,
            [dict(STANDARD) for _ in s],
            closed=False,
            junctions=["J1", "J2"],
        )
    )
    document["findings"].append(
        finding(
            "f-seam-open-1",
            "seam-open",
            "must-fix",
            "rib_height",
            None,
            None,
            "mm",
            [0.0, -29.0, 24.0],
            0.0,
            0.5,
            0.5,
            "The seam ends open here.",
            contour="c2",
        )
    )
    return document


def not_reviewed() -> dict:
    """A model that could not be reviewed."""
    return {
        "document": "seamcheck-review",
        "schema_version": 1,
        "seamcheck": "0.1.0",
        "model": {
            "file": "lid.step",
            "sha256": "00" * 32,
            "step_schema": "AP214",
            "length_unit": "mm",
            "parts": [{"id": "p1", "name": HOSTILE, "path": [], "role": "", "solids": 1, "faces": 6}],
            "notes": [],
        },
        "verdict": "not-reviewed",
        "reason": {
            "code": "single-part",
            "message": "The file holds one part; a seam needs a cover and a base.",
        },
        "joints": [],
        "findings": [],
        "limits": [],
        "not_checked": [],
        "cautions": [],
    }
