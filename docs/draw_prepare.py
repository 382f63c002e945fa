"""Draws docs/prepare.png from the files of a trial: clamp, weld path and nest, read back from DXF and CSV.

Needs the development extras. Run it from the project's folder: ``.venv/bin/python docs/draw_prepare.py``.
"""

from __future__ import annotations

import tempfile
from pathlib import Path

import ezdxf
import matplotlib as mpl
import numpy as np
import pandas as pd
import shapely
from ezdxf.path import make_path
from shapely.geometry.polygon import orient

mpl.use("Agg")
from matplotlib import pyplot as plt
from matplotlib.path import Path as Outline

from seamcheck import propose
from seamcheck.preparation.prepare import prepare
from seamcheck.samples import FOLDER
from seamcheck.settings.settings import Settings

HERE = Path(__file__).parent
SETTINGS = {"scanner": {"distance": 300.0}, "clamp": {"pressure": 2.0}, "trial": {"laps": 12, "acceleration": 2.0e5}}


def main() -> None:
    with tempfile.TemporaryDirectory() as name:
        model, trial = Path(name) / "head-r1.step", Path(name) / "trial"
        model.write_bytes(propose(FOLDER / "rib-missing.step").step)
        prepare(model, trial, Settings().changed(SETTINGS))
        figure, (left, right) = plt.subplots(1, 2, figsize=(10, 4.8), dpi=100)
        _clamp(left, trial)
        _nest(right, trial)
        figure.tight_layout()
        figure.savefig(HERE / "prepare.png", metadata={"Software": None})


def curves(file: Path, layer: str) -> list[np.ndarray]:
    """(n, 2) mm, the curves of a layer."""
    space = ezdxf.readfile(file).modelspace()
    return [
        np.array([(p.x, p.y) for p in make_path(line).flattening(0.01)])
        for line in space.query(f"LWPOLYLINE[layer=='{layer}']")
    ]


def _fill(axes, rings, **style) -> None:
    """Rings filled, one within another as a hole."""
    region = shapely.Polygon()
    for ring in sorted((shapely.Polygon(ring) for ring in rings), key=lambda x: -x.area):
        region = region.symmetric_difference(ring)
    for k, part in enumerate(getattr(region, "geoms", [region])):
        part = orient(part)
        whole = Outline.make_compound_path(*(Outline(r.coords, closed=True) for r in (part.exterior, *part.interiors)))
        axes.add_patch(mpl.patches.PathPatch(whole, **style | ({"label": None} if k else {})))


def _clamp(axes, trial: Path) -> None:
    _fill(axes, curves(trial / "clamp.dxf", "CLAMP_FOOT"), facecolor="#b9c3cc", edgecolor="#55606a", label="clamp")
    _fill(axes, curves(trial / "clamp.dxf", "CLAMP_LAND"), facecolor="none", edgecolor="#1f7a5a", hatch="....",
          linewidth=0.6, label="land found by the review")  # fmt: skip
    table = pd.read_csv(trial / "path.csv", comment="#")
    axes.plot(table["x_mm"], table["y_mm"], color="#c62828", linewidth=1.6, label="weld path")
    first = table.iloc[0]
    axes.annotate(
        "start", (first["x_mm"], first["y_mm"]), (first["x_mm"] - 4, first["y_mm"] - 18), fontsize=8, color="#c62828",
        arrowprops={"arrowstyle": "->", "color": "#c62828"},
    )  # fmt: skip
    _finish(axes, "Foot of the clamp and weld path, seen against the beam")


def _nest(axes, trial: Path) -> None:
    _fill(axes, curves(trial / "nest.dxf", "NEST_POCKET"), facecolor="#eee5d6", edgecolor="#7a6a4f", label="pocket")
    _fill(
        axes, curves(trial / "nest.dxf", "SUPPORT"), facecolor="#c8b48a", edgecolor="#7a6a4f", label="supports the base"
    )
    for line in curves(trial / "path.dxf", "SEAM_MID_LINE"):
        axes.plot(*line.T, color="#333333", linewidth=1.0, label="mid-line of the seam")
    _finish(axes, "Nest")


def _finish(axes, title: str) -> None:
    axes.set_title(title, fontsize=10)
    axes.set_aspect("equal")
    axes.autoscale_view()
    axes.set_xlabel("x, mm")
    axes.set_ylabel("y, mm")
    axes.legend(fontsize=7, loc="center")


if __name__ == "__main__":
    main()
