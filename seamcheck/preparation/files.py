"""Files for toolmaker and laser operator: CSV, DXF, JSON and a sheet. Neutral forms, each with the cautions."""

from __future__ import annotations

import csv
import io
import json
from collections.abc import Iterable, Mapping, Sequence
from typing import Any

import numpy as np
from msgspec import Struct

from seamcheck.catalogue.cautions import CAUTION_TEXTS, CAUTIONS, SHORT_CAUTION
from seamcheck.catalogue.voice import tr, translated
from seamcheck.joint.frame import Frame
from seamcheck.preparation.path import AREA, WeldPath
from seamcheck.preparation.pressing import Pressing
from seamcheck.report.dxf_text import dxf_text, plain
from seamcheck.sections.pieces import lines_and_arcs, ring_through

FORM = "weld-path"
COLUMNS = (
    "s_mm", "x_mm", "y_mm", "z_mm", "tangent_x", "tangent_y", "tangent_z", "normal_x", "normal_y", "normal_z",
    "curvature_per_mm", "{need}", "speed_mm_s", "power_share", "ramp_share", "scanner_x_mm", "scanner_y_mm", "stroke",
    "contour", "station",
)  # fmt: skip
NEED = {True: "energy_j_per_mm", False: "energy_share"}
"""Whether the need is in J/mm -> name of its column."""


class Program(Struct, frozen=True, eq=False):
    """The strokes of one joint in the order of welding, and what stands at the head of their files.

    Attributes
    ----------
    paths : the strokes; told : for each of them (n, 2) mm, scanner coordinates
    contours : ids, by the numbers that the paths hold
    laps : how often all of them are passed
    """

    paths: Sequence[WeldPath]
    told: Sequence[np.ndarray]
    contours: Sequence[str]
    laps: int
    frame: Frame
    notes: Sequence[str]

    @property
    def is_absolute(self) -> bool:
        """Whether the need is in J/mm."""
        return self.paths[0].need.of != AREA


def path_csv(program: Program) -> str:
    """The strokes as a table; lines that begin with '#' carry units, frame and cautions."""
    out = io.StringIO()
    for note in (*program.notes, *CAUTIONS):
        out.write(f"# {note}\n")
    table = csv.writer(out, lineterminator="\n")
    table.writerow([name.format(need=NEED[program.is_absolute]) for name in COLUMNS])
    for number, (path, told) in enumerate(zip(program.paths, program.told, strict=True), 1):
        for i in range(len(path.s)):
            row = [
                path.s[i], *path.points[i], *path.tangent[i], *path.normal[i], path.curvature[i], path.need.energy[i],
                path.speed[i], path.power[i], path.ramp[i], *told[i],
            ]  # fmt: skip
            table.writerow(
                [*(f"{value:.6f}" for value in row), number, program.contours[path.path[i]], int(path.station[i])]
            )
    return out.getvalue()


def path_json(program: Program) -> str:
    """Positions, poses and relative energy in an open form for robots: nothing of a machine's own language."""
    frame, paths = program.frame, program.paths
    mean = energy_mean(paths)
    document = {
        "form": FORM, "version": 1, "units": {"length": "mm", "energy": "share of the seam's mean"},
        "notes": list(program.notes), "cautions": list(CAUTIONS), "laps": program.laps,
        "seam_frame": {"origin": frame.origin.round(6).tolist(), "axes": frame.axes.round(9).tolist()},
        "strokes": [
            {
                "path": path.id, "closed": path.closed, "lap_length": round(path.length, 6),
                "points": [
                    {
                        "s": round(float(path.s[i]), 6), "position": path.points[i].round(6).tolist(),
                        "quaternion_wxyz": quaternion(path.tangent[i], frame.up).round(9).tolist(),
                        "energy": round(float(path.need.energy[i] / mean), 6), "ramp": round(float(path.ramp[i]), 6),
                    }
                    for i in range(len(path.s))
                ],
            }
            for path in paths
        ],
    }  # fmt: skip
    return json.dumps(document, indent=1) + "\n"


def energy_mean(paths: Sequence[WeldPath]) -> float:
    """Mean of the need along all strokes, the overlap left out."""
    whole = sum(lap_energy(path) for path in paths)
    return whole / sum(path.length for path in paths)


def lap_energy(path: WeldPath) -> float:
    """The need of one lap: in J where it is in J/mm."""
    lap = path.s <= path.length + 1e-9
    return float(np.trapezoid(path.need.energy[lap], path.s[lap]))


def clamp_csv(contours: Sequence[Mapping[str, Any]], pressed: Sequence[Pressing], notes: Iterable[str]) -> str:
    """Force along the seam, land, arm and bending at every station; empty cells are not evaluated or not measured."""
    out = io.StringIO()
    for note in (*notes, *CAUTIONS):
        out.write(f"# {note}\n")
    table = csv.writer(out, lineterminator="\n")
    table.writerow(
        ["contour", "station", "s_mm", "x_mm", "y_mm", "z_mm", "force_n_per_mm", "land_mm", "arm_mm", "bending_mm"]
    )
    for contour, own in zip(contours, pressed, strict=True):
        stations = contour["stations"]
        for i in range(len(stations["s"])):
            row = [
                *(stations[k][i] for k in ("s", "x", "y", "z")),
                own.force[i],
                own.land[i],
                own.arm[i],
                own.bending[i],
            ]
            table.writerow([contour["id"], i, *("" if value != value else f"{value:.6f}" for value in row)])
    return out.getvalue()


def quaternion(tangent: np.ndarray, up: np.ndarray) -> np.ndarray:
    """(4,) w, x, y, z of a tool whose z axis points along the beam and whose x axis points along the path.

    Parameters
    ----------
    tangent : (3,) of the path; up : (3,) against the beam
    """
    from scipy.spatial.transform import Rotation

    z = -up / np.linalg.norm(up)
    x = tangent - (tangent @ z) * z
    x /= np.linalg.norm(x)
    turned: np.ndarray = Rotation.from_matrix(np.column_stack([x, np.cross(z, x), z])).as_quat()
    return np.array([turned[3], *turned[:3]])


def drawing(
    layers: Mapping[str, Sequence[np.ndarray]], frame: Frame, title: str, notes: Sequence[str], fitted: Sequence[str],
    open_layers: Sequence[str] = (),
) -> str:  # fmt: skip
    """Curves seen along the beam as DXF (R2010, mm, x and y of the seam's frame).

    Parameters
    ----------
    layers : name -> rings (n, 3) mm in the model's coordinates, the first point not repeated or repeated alike
    fitted : layers whose curves are drawn as lines and arcs
    open_layers : layers whose curves have two ends, where the first point is not repeated
    """

    def draw(dxf: Any) -> None:
        space = dxf.modelspace()
        low = 0.0
        for colour, (name, rings) in enumerate(layers.items(), 1):
            dxf.layers.add(name, color=colour)
            for ring in rings:
                local = frame.local(np.asarray(ring, dtype=float))[:, :2]
                low = min(low, float(local[:, 1].min()))
                _curve(space, local, name, name in fitted, name not in open_layers)
        dxf.layers.add("NOTES", color=8)
        for k, text in enumerate((title, *notes, *CAUTIONS)):
            note = space.add_text(plain(text), height=1.2, dxfattribs={"layer": "NOTES"})
            note.dxf.insert = (0.0, low - 6.0 - 2.2 * k)

    return dxf_text(draw)


def _curve(space: Any, local: np.ndarray, layer: str, as_arcs: bool, may_close: bool) -> None:
    closed = may_close or bool(np.allclose(local[0], local[-1]))
    if np.allclose(local[0], local[-1]):
        local = local[:-1]
    if not as_arcs:
        space.add_lwpolyline([tuple(map(float, p)) for p in local], close=closed, dxfattribs={"layer": layer})
        return
    pieces = ring_through(local, 0.005).pieces if closed else lines_and_arcs(local, False, 0.005)
    corners = [(*piece.start, piece.bulge) for piece in pieces]
    if not closed:
        corners.append((*pieces[-1].end, 0.0))
    space.add_lwpolyline(corners, format="xyb", close=closed, dxfattribs={"layer": layer})


def sheet(title: str, chapters: Mapping[str, Sequence[tuple[str, str]]], remarks: Sequence[str]) -> str:
    """What people read, as Markdown: a table for each chapter, then assumptions and cautions."""
    lines = [f"# {title}", "", f"> {tr(SHORT_CAUTION)}", ""]
    for heading, rows in chapters.items():
        lines += [f"## {heading}", "", f"| {tr('what')} | {tr('value')} |", "|---|---|"]
        lines += [f"| {_cell(what)} | {_cell(value)} |" for what, value in rows]
        lines.append("")
    lines += [f"## {tr('Assumptions and what is not in here')}", "", *(f"- {remark}" for remark in remarks), ""]
    cautions = [translated(f"say/{key}", caution) for key, caution in CAUTION_TEXTS.items()]
    lines += [f"## {tr('Cautions')}", "", *(f"- {caution}" for caution in cautions), ""]
    return "\n".join(lines)


def _cell(text: str) -> str:
    return " ".join(text.split()).replace("|", "\\|")
