"""The corridor of the light is the spot, not the rib: land, clamp area, light and index by closed form."""

from __future__ import annotations

import numpy as np
import pytest
from builder import Spec, assemble, build, circle, draw, rounded_rectangle
from builder.ops import box
from interface_models import interface
from measuring import measure
from scipy.optimize import brentq
from telling import telling

from seamcheck.pipeline import review_model
from seamcheck.report.dxf import render_dxf
from seamcheck.settings.file import parse_settings
from seamcheck.settings.tables import Scanner

ROUND = Spec(track=circle(25))
"""Rib 1.2 wide on radius 25, cover 2 thick out to 28.2."""


def of_spot(spot: float, index: float | None = None) -> dict:
    """Optics of the settings for a spot of this width."""
    return {"": (spot, index)}


@pytest.mark.parametrize(
    ("spot", "margin"),
    telling([(3.0, 0.0), (3.0, 0.3), (0.8, 0.0), (0.8, 0.3)], [(3.0, 0.3), (0.8, 0.0)], several=True),
)
def test_clamp_land_begins_beside_the_spot(spot, margin):
    found = measure(build(ROUND).parts, optics=of_spot(spot), beam_margin=margin)
    assert found.column("clamp_land") == pytest.approx(3.2 - spot / 2 - margin, abs=0.002)
    assert found.column("light_enters_outer") == pytest.approx(spot / 2, abs=1e-9)


def test_clamp_land_begins_beside_the_spot_as_it_enters_the_cover():
    """From 120 mm over the middle: the spot is 3 / cos(lean) wide in the section, bent at the top, and a cone."""
    index, depth, half_angle, spot, height = 1.58, 2.0, 3.0, 3.0, 120.0

    def enters(radius: float) -> float:
        def over(x: float) -> float:
            return x + depth * np.tan(np.arcsin(np.sin(np.arctan(x / height)) / index)) - radius

        return brentq(over, 0.0, radius, xtol=1e-12)

    found = measure(build(ROUND).parts, scanner=Scanner(height, None, half_angle, index), optics=of_spot(spot))
    width = spot / np.cos(np.arctan(enters(25.0) / height))
    edge = 25.0 + width / 2
    way = np.hypot(depth, edge - enters(edge))
    light = enters(edge) + way * np.tan(np.arcsin(np.sin(np.radians(half_angle)) / index))
    assert found.column("light_width") == pytest.approx(width, abs=1e-5)
    assert found.column("clamp_land") == pytest.approx(28.2 - light, abs=0.003)


def test_area_and_share_for_the_clamp_begin_beside_the_spot():
    _, found = interface(build(ROUND).parts, optics=of_spot(3.0), beam_margin=0.2)
    assert found["clamp_area_outer"]["value"] == pytest.approx(np.pi * (28.2**2 - 26.7**2), rel=0.002)
    assert found["clamp_area_inner"]["value"] == pytest.approx(np.pi * (23.3**2 - 18.3**2), rel=0.002)
    assert found["clamp_share"]["value"] == 1.0
    _, wide = interface(build(ROUND).parts, optics=of_spot(6.0), beam_margin=0.2)
    assert wide["clamp_area_outer"]["value"] == pytest.approx(0.0, abs=0.1)  # 28.2 out, the light to 28.2


SCREEN = box((-28.5, -5.0, 2.5), (-26.0, 5.0, 6.0))
"""Beside the seam at x = -30, 1.5 mm from the mid-line: out of the way of the rib, in the way of a spot of 4 mm."""


def test_a_spot_wider_than_the_rib_needs_more_room_than_the_rib():
    spec = Spec(track=rounded_rectangle(60, 40, 8))
    parts = assemble(spec, *draw(spec), ("screen", SCREEN, None)).parts
    assert interface(parts)[0].column("beam_clear").min() == 1.0
    found, values = interface(parts, optics=of_spot(4.0))
    facing = (np.abs(found.points[:, 1]) < 4.9) & (found.points[:, 0] < 0)
    assert found.column("beam_clear")[facing] == pytest.approx(3.5 / 4.0, abs=1e-4)
    assert found.column("beam_clear")[found.points[:, 0] > 0].min() == 1.0
    assert values["beam_clear"]["why"].startswith("'screen' is in the beam path")


@pytest.mark.thorough
def test_so_it_does_from_a_scanner():
    spec = Spec(track=rounded_rectangle(60, 40, 8))
    parts = assemble(spec, *draw(spec), ("screen", SCREEN, None)).parts
    narrow, wide = (interface(parts, scanner=Scanner(), optics=o)[1]["light_clear"] for o in ({}, of_spot(4.0)))
    assert narrow["value"] == 1.0
    assert wide["value"] == pytest.approx(2 / 3)  # of the rays to the middle and both edges one is lost
    assert wide["why"].startswith("'screen' is in the beam path")


def test_a_spot_that_reaches_past_the_cover_is_told():
    """The cover ends 3.2 mm beside the mid-line."""
    found, values = interface(build(ROUND).parts, optics=of_spot(7.0))
    assert found.column("beam_clear") == pytest.approx((3.2 + 3.5) / 7.0, abs=1e-4)
    assert "past the edge of the cover" in values["beam_clear"]["why"]


MATERIAL = """
[material]
cover = "PC"
base = "PC+ABS"
[material.laser]
spot = {spot}
"""


def land(document: dict) -> float:
    return document["joints"][0]["contours"][0]["summary"]["clamp_land"]["min"]


def test_a_review_takes_the_spot_and_the_index_from_the_materials(tmp_path):
    """The index of PC at 940 nm: 1.5663 (Acta Phys. Pol. A 116, 585), not 1.5."""
    file = build(ROUND).write(tmp_path / "round.step")
    plain = review_model([file], parse_settings(""))
    assert land(plain) == pytest.approx(3.2 - 0.6 - 0.2, abs=0.002)  # by default 0.2 mm beside the rib
    spot = review_model([file], parse_settings(MATERIAL.format(spot=4.6)))
    assert land(spot) == pytest.approx(3.2 - 2.3 - 0.2, abs=0.002)
    assert [f["rule"] for f in spot["findings"] if f["severity"] == "must-fix"] == ["clamp-land"]
    assert render_dxf(spot).startswith("  0")
    seen = review_model([file], parse_settings(MATERIAL.format(spot=4.6) + "[scanner]\ndistance = 120\n"))
    scanner = seen["settings"]["scanner"]
    assert (scanner["index"], scanner["index_from"]) == (pytest.approx(1.565, abs=0.002), "material")
    way = seen["joints"][0]["contours"][0]["summary"]["path_in_cover"]["max"]
    root = brentq(lambda x: x + 2.0 * np.tan(np.arcsin(np.sin(np.arctan(x / 120.0)) / scanner["index"])) - 25.0, 0, 25)
    assert way == pytest.approx(np.hypot(2.0, 25.0 - root), abs=1e-4)


def test_the_index_that_the_settings_give_wins():
    given = parse_settings(MATERIAL.format(spot=2.0) + "[scanner]\ndistance = 120\nindex = 1.6\n")
    assert given.light().index == 1.6
    assert parse_settings("[scanner]\ndistance = 120\n").light().index == 1.5
    assert given.changed({"material": None}).light().spot is None
    own = parse_settings(MATERIAL.format(spot=2.0) + "[material.joints.j2.laser]\nspot = 3.0\n")
    assert (own.light("j1").spot, own.light("j2").spot) == (2.0, 3.0)
