"""Two ribs side by side on one rim: the other one neither stops the cover nor counts as a lip."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest
from builder import Spec, draw, rounded_rectangle
from builder.ops import box, fuse
from builder.solid import level_face
from interface_models import interface
from OCP.BRepPrimAPI import BRepPrimAPI_MakePrism
from OCP.gp import gp_Vec

AWAY, WIDTH, HEIGHT = 2.6, 0.9, 0.9  # mm: between the mid-lines; of both ribs
SPEC = Spec(
    track=rounded_rectangle(60, 40, 9), rib_width=WIDTH, draft_inner=0, draft_outer=0, trap_width_outer=4.0,
    clamp_land=5.0,
)  # fmt: skip


def twins(spec: Spec):
    cover, base = draw(spec)
    face = level_face(spec.track, -HEIGHT - 0.5, AWAY + WIDTH / 2, AWAY - WIDTH / 2)
    return [("lid", cover), ("housing", fuse(base, BRepPrimAPI_MakePrism(face, gp_Vec(0, 0, HEIGHT + 0.5)).Shape()))]


@pytest.mark.parametrize("fillet", [pytest.param(0.0, marks=pytest.mark.thorough), 0.15])
def test_the_other_rib_is_a_rib(fillet):
    """Closed form: 0.6 mm to the lips; the room between both flanks, 0.5 mm high at a collapse of 0.4, halved."""
    spec = replace(SPEC, top_fillet=fillet)
    found, values = interface(twins(spec))
    assert len(found.survey.paths) == 2
    assert values["free_travel"]["value"] == pytest.approx(0.6, abs=0.001)
    travel = found.column("free_travel")
    assert travel[np.isfinite(travel)] == pytest.approx(0.6, abs=0.001)
    outer, inner = sorted(found.survey.paths, key=lambda p: -p.length)
    between = (AWAY - WIDTH - fillet) * (HEIGHT - 0.4) / 2  # a square corner of radius r starts r beside the flat
    for path, side in ((outer, "inner"), (inner, "outer")):
        assert path.columns[f"trap_area_{side}"] == pytest.approx(between, abs=0.002)
        assert (path.columns[f"trap_open_{side}"] == 0).all()
        assert set(path.reasons[f"lip_gap_{side}"].tolist()) == {"other-rib"}


@pytest.mark.thorough
def test_a_post_beside_twin_ribs_still_stops_the_cover():
    """A step of 0.3 mm below the tops between both ribs, on 4 mm of a straight run."""
    parts = twins(SPEC)
    step = box((-2, 20 + WIDTH / 2 - 0.1, -HEIGHT - 0.2), (2, 20 + AWAY - WIDTH / 2 + 0.1, -0.3))
    parts[1] = (parts[1][0], fuse(parts[1][1], step))
    found, values = interface(parts)
    assert values["free_travel"]["value"] == pytest.approx(0.3, abs=0.001)
    assert np.nanmin(found.column("free_travel")) == pytest.approx(0.3, abs=0.001)
