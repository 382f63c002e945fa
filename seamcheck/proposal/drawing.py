"""The proposed section as a dimensioned DXF drawing, one below another for several joints."""

from __future__ import annotations

import math
from typing import Any

from seamcheck.catalogue.cautions import SHORT_CAUTION
from seamcheck.proposal.records import JointProposal, ProposalDocument
from seamcheck.report.dxf_text import dxf_text, plain

LIP = 1.0
"""mm of the land that is drawn beside each trap."""

LAYERS = {"BASE": 7, "COVER": 4, "DIMENSIONS": 3, "NOTES": 8}


def outline(joint: JointProposal) -> list[tuple[float, float]]:
    """The base's surface across the seam, (u, v) mm: u = 0 the rib's middle, + outward; v = 0 the contact plane."""
    d = {one.key: one.value for one in joint.dimensions}
    lean = math.tan(math.radians(d["draft"]))
    half, high, down = d["rib_width"] / 2.0, d["rib_height"], d["lowering"]

    def side(trap: float) -> list[tuple[float, float]]:
        wall = half + trap
        return [
            (half, 0.0), (half + lean * high, -high), (wall - lean * high, -high), (wall - lean * down, -down),
            (wall + LIP, -down),
        ]  # fmt: skip

    return [(-u, v) for u, v in reversed(side(d["trap_inner"]))] + side(d["trap_outer"])


def render_dxf(document: ProposalDocument) -> str:
    """The sections as DXF text (R2010, mm); MissingLibrary without ezdxf."""

    def draw(drawing: Any) -> None:
        for name, colour in LAYERS.items():
            drawing.layers.add(name, color=colour)
        for k, joint in enumerate(j for j in document.joints if j.state == "cut"):
            _section(drawing.modelspace(), joint, -8.0 * k)

    return dxf_text(draw, setup=True)


def _section(space: Any, joint: JointProposal, level: float) -> None:
    d = {one.key: one.value for one in joint.dimensions}
    line = [(u, v + level) for u, v in outline(joint)]
    space.add_lwpolyline(line, dxfattribs={"layer": "BASE"})
    space.add_line((line[0][0], level), (line[-1][0], level), dxfattribs={"layer": "COVER"})
    half, high, down = d["rib_width"] / 2.0, d["rib_height"], d["lowering"]
    style = {"dimtxt": 0.18, "dimasz": 0.12, "dimexe": 0.06, "dimexo": 0.04, "dimdec": 2, "dimgap": 0.05}
    across = [(-half - d["trap_inner"], -half), (-half, half), (half, half + d["trap_outer"])]
    for row, (a, b) in enumerate(across):
        space.add_linear_dim(
            base=(a, level + 0.5 + 0.35 * (row == 1)), p1=(a, level), p2=(b, level), override=style,
            dxfattribs={"layer": "DIMENSIONS"},
        ).render()  # fmt: skip
    beyond = line[-1][0]
    for offset, depth, u in ((0.4, down, beyond), (0.9, high, half + d["trap_outer"] / 2.0)):
        space.add_linear_dim(
            base=(beyond + offset, level), p1=(beyond, level), p2=(u, level - depth), angle=90, override=style,
            dxfattribs={"layer": "DIMENSIONS"},
        ).render()  # fmt: skip
    notes = [
        f"{joint.joint}: proposed section, cover {joint.cover}, base {joint.base}; lengths in mm, inner side left",
        f"draft of flanks and trap walls {d['draft']:.2f} deg, planned collapse {d['collapse']:.2f}",
        *(part.strip() + "." for part in SHORT_CAUTION.rstrip(".").split(". ")),
    ]
    for k, text in enumerate(notes):
        note = space.add_text(plain(text), height=0.18, dxfattribs={"layer": "NOTES"})
        note.dxf.insert = (line[0][0], level - high - 0.6 - 0.3 * k)
