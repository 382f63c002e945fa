"""A frame that is welded round a window: the clamp land lies on the inner side, toward the opening."""

from __future__ import annotations

import io

import ezdxf
import numpy as np
import pytest
from builder import Spec, assemble, circle, draw
from builder.ops import cut, cylinder

from seamcheck.pipeline import review_model
from seamcheck.report import plan
from seamcheck.report.dxf import render_dxf
from seamcheck.settings.file import parse_settings

SPEC = Spec(track=circle(25), clamp_land=30.0)
"""Rib 1.2 mm wide on radius 25, a cover that reaches out to 55.6."""

OPENING = 22.3  # mm, radius of the window in the cover


@pytest.fixture(scope="module")
def document(tmp_path_factory) -> dict:
    cover, base = draw(SPEC)
    frame = cut(cover, cylinder((0.0, 0.0, -1.0), OPENING, 5.0))
    path = assemble(SPEC, frame, base).write(tmp_path_factory.mktemp("frame") / "frame.step")
    return review_model([path], parse_settings("beam-margin = 0.2\n[limits.clamp-land]\nmin = 2.0\n"))


def test_the_land_runs_toward_the_window(document):
    """Closed form: from the rib's edge, 24.4, less the margin, to the window's edge."""
    contour = document["joints"][0]["contours"][0]
    assert contour["clamp_side"] == "inner"
    land = np.array(contour["stations"]["clamp_land"], dtype=float)
    assert land == pytest.approx(25.0 - 0.6 - 0.2 - OPENING, abs=0.002)
    assert np.array(contour["stations"]["clamp_tilt"], dtype=float) == pytest.approx(0.0, abs=0.01)


def test_a_land_that_is_too_narrow_is_found_on_that_side(document):
    found = [f for f in document["findings"] if f["rule"] == "clamp-land"]
    assert [f["value"] for f in found] == [pytest.approx(1.9, abs=0.002)]
    assert found[0]["length_mm"] == pytest.approx(2 * np.pi * 25, rel=1e-3)


def test_drawings_put_it_inside(document):
    contour = document["joints"][0]["contours"][0]
    assert plan.land_side(contour) == -1
    drawing = ezdxf.read(io.StringIO(render_dxf(document)))
    rings = drawing.modelspace().query('LWPOLYLINE[layer=="CLAMP_LAND"]')
    radii = sorted(float(np.mean([np.hypot(p[0], p[1]) for p in ring.get_points()])) for ring in rings)
    assert radii == pytest.approx([OPENING, 24.2], abs=0.01)


def test_areas_are_those_of_rings(document):
    values = document["joints"][0]["interface"]
    assert values["clamp_area_inner"]["value"] == pytest.approx(np.pi * (24.2**2 - OPENING**2), rel=0.002)
    assert values["clamp_area_outer"]["value"] == pytest.approx(np.pi * (30.8**2 - 25.8**2), rel=0.002)
