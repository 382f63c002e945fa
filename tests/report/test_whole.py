"""Rows about the whole interface, as every report shows them."""

from __future__ import annotations

from seamcheck.catalogue.quantities import QUANTITIES, REASONS
from seamcheck.report.interface import interface_rows

INTERFACE = {
    "lip_widest": {"value": 0.25, "at": [1.0, -0.001, 3.0], "why": "On the inner side."},
    "free_travel": {
        "value": 0.2, "at": [9.0, 2.0, -0.2], "why": "There 'lid' meets 'board'.",
        "places": [
            {"value": 0.2, "at": [9.0, 2.0, -0.2], "why": "There 'lid' meets 'board'."},
            {"value": 0.35, "at": [0.0, 5.0, -0.35], "why": "There 'lid' meets 'box'."},
        ],
    },
    "path_distance": {"value": None, "at": None, "why": "no-neighbour"},
    "clamp_area": {
        "value": 1000.0, "at": None, "why": "", "force_newton": 400.0, "force_newton_per_mm": 2.0,
        "pressure_on_land_mpa": 0.4,
    },
    "something_else": {"value": 1.0, "at": None, "why": ""},
}  # fmt: skip


def test_rows_come_in_the_declared_order_with_everything_that_is_met():
    rows = interface_rows({"interface": INTERFACE}, REASONS)
    assert [row[:3] for row in rows] == [
        ("free travel, whole interface", "0.20 mm", "(9.00, 2.00, -0.20)"),
        ("  then", "0.35 mm", "(0.00, 5.00, -0.35)"),
        (QUANTITIES["path_distance"].title, "not measured", ""),
        ("clamp area", "1000.0 mm²", ""),
        ("  force over the rib", "400 N", ""),
        ("  pressure on all of that area", "0.40 MPa", ""),
        ("largest lip gap", "0.25 mm", "(1.00, 0.00, 3.00)"),
    ]
    assert rows[1][3] == "There 'lid' meets 'box'."
    assert rows[2][3] == REASONS["no-neighbour"]
    assert rows[4][3] == "2.00 N/mm"


def test_nothing_in_the_way_is_said_and_is_no_gap_in_the_measurement():
    rows = interface_rows({"interface": {"free_travel": {"value": None, "at": None, "why": "free"}}}, REASONS)
    assert rows == [("free travel, whole interface", "nothing is in the way", "", "")]
