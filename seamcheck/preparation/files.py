"""Files for toolmaker and laser operator: CSV, DXF, JSON and a sheet. Neutral forms, each with the cautions."""

from __future__ import annotations

import csv
import io
import json
from collections.abc import Iterable, Mapping, Sequence
from typing import Any

import numpy as np

from seamcheck.catalogue.cautions import CAUTIONS, SHORT_CAUTION
from seamcheck.joint.frame import Frame
from seamcheck.preparation.path import WeldPath
from seamcheck.report.dxf_text import dxf_text, plain
from seamcheck.sections.pieces import ring_through

FORM = "weld-path"
COLUMNS = (
    "s_mm", "x_mm", "y_mm", "z_mm", "tangent_x", "tangent_y", "tangent_z", "normal_x", "normal_y", "normal_z",
    "curvature_per_mm", "need", "speed_mm_s", "power_share", "ramp_share", "scanner_x_mm", "scanner_y_mm", "station",
)  # fmt: skip


def path_csv(path: WeldPath, scanner: np.ndarray, notes: Iterable[str]) -> str:
    """The path as a table; lines that begin with '#' carry units, frame and cautions."""
    out = io.StringIO()
    for note in (*notes, *CAUTIONS):
        out.write(f"# {note}\n")
    table = csv.writer(out, lineterminator="\n")
    table.writerow(COLUMNS)
    for i in range(len(path.s)):
        row = [
            path.s[i], *path.points[i], *path.tangent[i], *path.normal[i], path.curvature[i], path.need[i],
            path.speed[i], path.power[i], path.ramp[i], *scanner[i],
        ]  # fmt: skip
        table.writerow([f"{value:.6f}" for value in row] + [int(path.station[i])])
    return out.getvalue()


def path_json(path: WeldPath, frame: Frame, notes: Sequence[str]) -> str:
    """Positions, poses and relative energy in an open form for robots: nothing of a machine's own language."""
    mean = float(np.mean(path.need))
    document = {
        "form": FORM, "version": 1, "units": {"length": "mm", "energy": "share of the path's mean"},
        "notes": list(notes), "cautions": list(CAUTIONS), "path": path.id, "closed": path.closed,
        "seam_frame": {"origin": frame.origin.round(6).tolist(), "axes": frame.axes.round(9).tolist()},
        "points": [
            {
                "s": round(float(path.s[i]), 6), "position": path.points[i].round(6).tolist(),
                "quaternion_wxyz": quaternion(path.tangent[i], path.normal[i]).round(9).tolist(),
                "energy": round(float(path.need[i] / mean), 6), "ramp": round(float(path.ramp[i]), 6),
            }
            for i in range(len(path.s))
        ],
    }  # fmt: skip
    return json.dumps(document, indent=1) + "\n"


def quaternion(tangent: np.ndarray, normal: np.ndarray) -> np.ndarray:
    """(4,) w, x, y, z of a tool whose z axis points with the light and whose x axis points along the path."""
    from scipy.spatial.transform import Rotation

    z = -normal / np.linalg.norm(normal)
    x = tangent - (tangent @ z) * z
    x /= np.linalg.norm(x)
    turned: np.ndarray = Rotation.from_matrix(np.column_stack([x, np.cross(z, x), z])).as_quat()
    return np.array([turned[3], *turned[:3]])


def drawing(
    layers: Mapping[str, Sequence[np.ndarray]], frame: Frame, title: str, notes: Sequence[str], fitted: Sequence[str]
) -> str:
    """Closed curves seen along the light as DXF (R2010, mm, x and y of the seam's frame).

    Parameters
    ----------
    layers : name -> rings (n, 3) mm in the model's coordinates, the first point not repeated or repeated alike
    fitted : layers whose curves are drawn as lines and arcs
    """

    def draw(dxf: Any) -> None:
        space = dxf.modelspace()
        low = 0.0
        for colour, (name, rings) in enumerate(layers.items(), 1):
            dxf.layers.add(name, color=colour)
            for ring in rings:
                local = frame.local(np.asarray(ring, dtype=float))[:, :2]
                low = min(low, float(local[:, 1].min()))
                if np.allclose(local[0], local[-1]):
                    local = local[:-1]
                _curve(space, local, name, name in fitted)
        dxf.layers.add("NOTES", color=8)
        for k, text in enumerate((title, *notes, *CAUTIONS)):
            note = space.add_text(plain(text), height=1.2, dxfattribs={"layer": "NOTES"})
            note.dxf.insert = (0.0, low - 6.0 - 2.2 * k)

    return dxf_text(draw)


def _curve(space: Any, local: np.ndarray, layer: str, as_arcs: bool) -> None:
    if not as_arcs:
        space.add_lwpolyline([tuple(map(float, p)) for p in local], close=True, dxfattribs={"layer": layer})
        return
    corners = [(*piece.start, piece.bulge) for piece in ring_through(local, 0.005).pieces]
    space.add_lwpolyline(corners, format="xyb", close=True, dxfattribs={"layer": layer})


def sheet(title: str, chapters: Mapping[str, Sequence[tuple[str, str]]], remarks: Sequence[str]) -> str:
    """What people read, as Markdown: a table for each chapter, then assumptions and cautions."""
    lines = [f"# {title}", "", f"> {SHORT_CAUTION}", ""]
    for heading, rows in chapters.items():
        lines += [f"## {heading}", "", "| what | value |", "|---|---|"]
        lines += [f"| {_cell(what)} | {_cell(value)} |" for what, value in rows]
        lines.append("")
    lines += ["## Assumptions and what is not in here", "", *(f"- {remark}" for remark in remarks), ""]
    lines += ["## Cautions", "", *(f"- {caution}" for caution in CAUTIONS), ""]
    return "\n".join(lines)


def _cell(text: str) -> str:
    return " ".join(text.split()).replace("|", "\\|")
