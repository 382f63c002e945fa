"""The picture of the collapse window: valid SVG, its marks where the numbers are."""

import xml.etree.ElementTree as ET

import numpy as np
import pytest
from material_surveys import run, survey

from seamcheck.measure.material import MaterialSettings, assess
from seamcheck.report.material_picture import window_picture

SVG = "{http://www.w3.org/2000/svg}"


def drawn(gap, travel):
    found = assess(
        survey(run(gap=gap), travel=travel),
        MaterialSettings.from_table({"base": "PP", "process": {"travel_reserve": 0.1}}),
        0.4,
    )
    window = found.document["window"]
    return window, ET.fromstring(window_picture(window))


def part(root, kind):
    return next(node for node in root.iter() if node.get("class") == kind)


def test_the_shaded_window_and_the_plan_stand_at_their_numbers():
    window, root = drawn(np.where(np.arange(801) == 5, 0.1, 0.0), 0.6)
    low, high = window["lowest"]["value_mm"], window["highest"]["value_mm"]
    assert low == pytest.approx(0.2)
    assert high == pytest.approx(0.5)
    band, plan = part(root, "window"), float(part(root, "plan").get("x1"))
    start, wide = float(band.get("x")), float(band.get("width"))
    # One linear axis: the plan at 0.4 lies two thirds of the way from 0.2 to 0.5.
    assert (plan - start) / wide == pytest.approx((0.4 - low) / (high - low), abs=2e-3)
    assert "inside" in root.find(f"{SVG}title").text


def test_an_empty_window_says_so():
    _, root = drawn(np.where(np.arange(801) == 5, 0.45, 0.0), 0.5)
    assert part(root, "clash") is not None
    assert "No collapse suits, by 0.15 mm" in root.find(f"{SVG}title").text


def test_without_data_there_is_no_picture():
    assert window_picture({"picture": None}) == ""
