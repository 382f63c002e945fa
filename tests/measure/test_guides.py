"""Flanks that guide the cover into the base: pins in holes and skirts with typed draft, play, depth and lead-in."""

from __future__ import annotations

import numpy as np
import pytest
from builder import Spec, circle, draw, rounded_rectangle
from builder.hard.truth import motion
from builder.ops import fuse, stretch
from builder.solid import moved
from builder.variants import pinned
from measuring import assembly, settings
from telling import telling

from seamcheck.joint import find_joints
from seamcheck.measure.fit import guide_values
from seamcheck.measure.guides import cut_at, play_between

ROUND = Spec(track=circle(17), draft_inner=0.0, draft_outer=0.0)
LONG = Spec(track=rounded_rectangle(60, 40, 8), draft_inner=0.0, draft_outer=0.0)
COLLAPSE = 0.4


DRAFTED = [(0.0, 0.1), (1.0, 0.1), (0.5, 0.25), (2.0, 0.05)]
SKIRTS = [(0.1, 0.0), (0.15, 0.8)]


def guides(parts):
    """Guides of some drawn parts, which touch as drawn."""
    return guide_values(find_joints(assembly(parts), settings())[0], 0.0, COLLAPSE, []).values


def pins(**typed):
    """A round housing whose lid has two pins."""
    cover, base = pinned(ROUND, *draw(ROUND), [(7.0, 0.0), (-7.0, 0.0)], **typed)
    return [("lid", cover), ("housing", base)]


@pytest.mark.parametrize("case", telling(DRAFTED, [(1.0, 0.1)]))
def test_pins_in_holes(case):
    """Sunk by c, a cone of half-angle a comes nearer to its hole by c tan a; pin and hole have 4 mm in common."""
    draft, play = case
    values = guides(pins(draft=draft, play=play))
    left = play - COLLAPSE * np.tan(np.radians(draft))
    assert values["guide_play"]["value"] == pytest.approx(left, abs=0.004)  # chords of both circles: 0.002 each
    assert values["guide_play"]["why"] == "At 2 places between 'lid' and 'housing'."
    assert values["guide_draft"]["value"] == pytest.approx(draft, abs=0.02)
    assert values["guide_depth"]["value"] == pytest.approx(4.0, abs=0.001)
    assert values["lead_in"]["value"] == 0.0
    at = np.array(values["guide_play"]["at"])
    assert min(np.hypot(at[0] - x, at[1]) for x in (7.0, -7.0)) == pytest.approx(2.0, abs=0.6)


def test_pins_that_meet_late_and_their_lead_in():
    """Above chamfers of 0.3 x 45° the flanks begin 0.15 mm above the mouths: so much later than the rib they meet."""
    values = guides(pins(tip=-1.45, mouth=-1.3, chamfer=0.3, draft=0.0))
    assert values["guide_depth"]["value"] == pytest.approx(-0.15, abs=0.001)
    assert values["lead_in"]["value"] == pytest.approx(0.3, abs=0.004)
    assert values["guide_depth"]["why"].endswith("Their lead-in is 0.30 mm.")


@pytest.mark.thorough
def test_flanks_that_run_into_each_other():
    """A draft of 5° takes 0.035 mm in 0.4 mm of travel: 0.02 mm of play are gone before."""
    values = guides(pins(draft=5.0, play=0.02))
    assert values["guide_play"]["value"] == pytest.approx(0.02 - 0.4 * np.tan(np.radians(5.0)), abs=0.004)


def skirted(play, draft, depth=4.0):
    """A lid with a skirt round a straight side: the housing's wall upright, the skirt's inner face leaning outward."""
    cover, base = draw(LONG)
    wall = LONG.wall_face("outer")
    lean = np.tan(np.radians(draft)) * (depth + 0.5)
    outline = [(wall + play, 0.5), (wall + play + 2.0, 0.5), (wall + play + 2.0, -depth), (wall + play + lean, -depth)]
    skirt = stretch(LONG.track, LONG.track.middle_of_run(), 12.0, outline)
    bridge = [(0.5, 0.5), (wall + 3.0, 0.5), (wall + 3.0, 2.0), (0.5, 2.0)]
    cap = stretch(LONG.track, LONG.track.middle_of_run(), 12.0, bridge)
    return [("lid", fuse(cover, cap, skirt)), ("housing", base)]


@pytest.mark.parametrize("case", telling(SKIRTS, [(0.15, 0.8)]))
def test_a_skirt_round_the_base(case):
    """The least play is at the highest place that both have in common: the wall's lip, 0.6 mm below the rib's top."""
    play, draft = case
    values = guides(skirted(play, draft))
    top = -LONG.lip_depth("outer")  # of the wall; the skirt has sunk there from 0.4 mm higher up
    expected = play + np.tan(np.radians(draft)) * (0.5 - (top + COLLAPSE))
    assert values["guide_play"]["value"] == pytest.approx(expected, abs=0.001)
    assert values["guide_draft"]["value"] == 0.0  # the wall's own


def test_without_flanks_near_each_other_there_is_nothing_to_measure():
    values = guides([("lid", draw(ROUND)[0]), ("housing", draw(ROUND)[1])])
    assert values == {"guide_play": {"value": None, "at": None, "why": "no-guide"}}


def test_a_cut_and_its_play():
    """Two walls 0.2 mm apart that face each other, one that looks away, and one that has run 0.05 mm into the other."""

    def wall(x, sign):
        corners = np.array([[[x, 0, 0], [x, 5, 0], [x, 5, 4]], [[x, 0, 0], [x, 5, 4], [x, 0, 4]]], dtype=float)
        return cut_at(corners, np.tile([sign, 0.0, 0.0], (2, 1)), 1.0)

    ends = wall(0.0, 1.0).ends
    assert len(ends) == 2
    assert np.ptp(ends[:, :, 1]) == pytest.approx(5.0)
    assert play_between(wall(0.0, 1.0), wall(0.2, -1.0))[0] == pytest.approx(0.2)
    assert play_between(wall(0.0, 1.0), wall(0.2, 1.0))[0] == np.inf
    assert play_between(wall(0.0, 1.0), wall(-0.05, -1.0))[0] == pytest.approx(-0.05)
    assert play_between(wall(0.0, 1.0), wall(0.4, -1.0))[0] == np.inf


@pytest.mark.parametrize("case", telling([(-1.0, -1.0), (-2.0, -2.0), (2.0, 2.0)], [(-2.0, -2.0)]))
def test_undercuts(case):
    """Pins that thicken toward their tips, in holes that widen toward their floor: no straight pull frees either."""
    draft, expected = case
    values = guides(pins(draft=draft, play=0.1))
    assert values["guide_draft"]["value"] == pytest.approx(expected, abs=0.02)


@pytest.mark.thorough
@pytest.mark.parametrize("draft", [-1.5, 1.5])
def test_undercuts_of_a_model_placed_askew(draft):
    """The sense of the pull follows the joint, not the axes of the model."""
    askew = motion((37.0, -21.0, 140.0), (12.3, -45.6, 7.8))
    values = guides([(name, moved(shape, askew)) for name, shape in pins(draft=draft, play=0.1)])
    assert values["guide_draft"]["value"] == pytest.approx(draft, abs=0.02)


@pytest.mark.thorough
def test_a_skirt_that_closes_below():
    assert guides(skirted(0.25, -1.0))["guide_draft"]["value"] == pytest.approx(-1.0, abs=0.02)
