"""What a section draws as the place where an edge should lie, and labels that don't touch."""

import numpy as np
import pytest
import shapely
from msgspec.structs import replace

from seamcheck.report import facts
from seamcheck.report.facts import Numbered
from seamcheck.report.labels import apart
from seamcheck.report.section_target import Site, targets

VALUES = {
    "rib_width": 0.5, "rib_width_mid": 0.5, "rib_height": 0.8, "rib_height_inner": 0.8, "rib_height_outer": 1.0,
    "cover_thickness": 2.0, "gap": 0.1, "lip_gap_outer": 0.5, "draft_outer": 0.0,
}  # fmt: skip


NO_PATHS = {"joints": []}


def site(slope=0.0, up=1):
    traps = {"outer": shapely.box(0.25, -0.8, 1.25, -0.4)}
    return Site(VALUES.get, 0.25, slope, up, traps, (0.5, 1.5), 0.2)


def finding(column, limit, value, unit="mm", **more):
    record = {
        "column": column, "quantity": column, "limit": limit, "value": value, "unit": unit, "margin": -1.0,
        "severity": "must-fix", "args": {}, **more,
    }  # fmt: skip
    return [Numbered(1, record, "c1", 0)]


def test_a_rib_too_narrow_widens_to_both_sides():
    (target,) = targets(NO_PATHS, finding("rib_width", 0.6, 0.5), site())
    assert [line[0] for line in target.lines] == [(-0.3, 0.0), (0.3, 0.0)]
    assert [(move[0][0], move[1][0]) for move in target.moves] == [(-0.25, -0.3), (0.25, 0.3)]


def test_on_a_leaning_top_the_target_leans_with_it():
    (target,) = targets(NO_PATHS, finding("rib_width", 0.6, 0.5), site(slope=0.5))
    assert target.lines[1][0] == (0.3, 0.15)


def test_of_two_floors_the_one_of_the_lower_side_moves():
    (target,) = targets(NO_PATHS, finding("rib_height", 0.9, 0.8), site())
    assert len(target.lines) == 1
    assert target.lines[0][0] == (-0.25, -0.9)


@pytest.mark.parametrize(
    ("column", "limit", "value", "to"),
    [
        ("cover_thickness", 3.0, 2.0, 0.1 + 3.0),  # its top, over the gap
        ("cover_thickness", 1.5, 2.0, 0.1 + 1.5),
        ("lip_gap_outer", 0.3, 0.5, -0.4 - 0.3),  # the lip, below what comes down
    ],
)
def test_where_it_should_go(column, limit, value, to):
    (target,) = targets(NO_PATHS, finding(column, limit, value), site())
    assert target.moves[0][1][1] == pytest.approx(to)
    assert target.lines[0][0][1] == pytest.approx(to)


def test_a_flank_of_other_draft_has_its_root_there():
    (target,) = targets(NO_PATHS, finding("draft_outer", 3.0, 0.0, unit="°"), site())
    assert target.moves[0][1] == pytest.approx((0.25 + np.tan(np.radians(3.0)), -1.0))


def test_a_trap_too_small_moves_its_wall_as_the_remedy_says():
    by = {"by": {"value": 0.1, "unit": "mm", "decimals": 2}}
    (target,) = targets(NO_PATHS, finding("trap_room_outer", 1.0, 0.8, unit="1", args=by), site())
    assert target.moves[0][0][0] == 1.25
    assert target.moves[0][1][0] == pytest.approx(1.35)


def test_what_holds_its_limit_or_names_no_number_has_no_target():
    assert targets(NO_PATHS, finding("rib_width", 0.6, 0.5, margin=0.1), site()) == []
    assert targets(NO_PATHS, finding("rib_width", None, None), site()) == []


def test_labels_keep_their_order_and_do_not_touch():
    middles = apart([5.0, 5.5, 30.0], [4.0, 4.0, 4.0], 1.0, 0.0, 40.0)
    assert middles[2] == 30.0
    assert middles[1] - middles[0] >= 5.0
    assert apart([39.0, 39.5], [4.0, 4.0], 1.0, 0.0, 40.0) == [33.0, 38.0]


def test_a_gap_is_to_be_closed_whatever_its_limit():
    (target,) = targets(NO_PATHS, finding("gap_max", 0.2, 0.1, quantity="gap"), site())
    assert target.lines[0][0][1] == target.moves[0][1][1] == 0.0


def test_what_stands_in_the_light_moves_aside_by_what_was_measured():
    """From the inner side to u = 0.1, 4 mm up: its outer edge goes 0.9 mm inward."""
    by = {"way": "inward", "by": {"value": 0.9, "unit": "mm", "decimals": 2}}
    shaded = replace(site(), caster={-1: (-0.5, 4.0), 1: (0.1, 4.0)})
    (target,) = targets(NO_PATHS, finding("beam_clear", 1.0, 0.5, "1", args=by), shaded)
    (start, end) = target.moves[0]
    assert (start[0], end[0]) == pytest.approx((0.1, -0.8))
    assert targets(NO_PATHS, finding("beam_clear", 1.0, 0.5, "1"), shaded) == []


def test_of_a_rule_in_two_steps_the_milder_is_the_goal():
    steps = [("attention", 2.0), ("must-fix", 2.5)]
    bounds = [
        {"rule": "rib-width", "column": "rib_width", "quantity": "rib_width", "severity": s, "low": None, "high": high}
        for s, high in steps
    ]
    document = {"joints": [{"id": "j1", "contours": [{"id": "c1", "bounds": bounds}]}]}
    (numbered,) = finding("rib_width", 2.5, 2.6, joint="j1", contour="c1", station=0, rule="rib-width")
    assert facts.goal(document, numbered.finding) == 2.0
    assert facts.limit_words(document, numbered.finding) == "attention above 2 mm, must-fix above 2.5 mm"
    assert facts.limit_short(document, numbered.finding) == "at most 2 / 2.5 mm"


def test_the_target_is_where_the_amount_of_the_remedy_leads():
    """A rib of 1.5 mm that is to be 0.3 mm narrower, as the rest of the seam: 1.2 mm, not the limit."""
    by = {"by": {"value": 0.3, "unit": "mm", "decimals": 2}}
    (numbered,) = finding("rib_width", 1.44, 1.5, args=by)
    assert facts.goal(NO_PATHS, numbered.finding) == pytest.approx(1.2)
    (target,) = targets(NO_PATHS, [numbered], site())
    assert target.lines[1][0] == (pytest.approx(0.6), 0.0)
