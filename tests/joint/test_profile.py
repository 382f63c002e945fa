"""What lies beside a band, told on heights typed in here: each row is one place of the border."""

from __future__ import annotations

import numpy as np
import pytest
import shapely

from seamcheck.catalogue.kinds import FLAT_LAP, LEDGE, PLAIN_WALL, STEPPED_LAP, TONGUE_GROOVE, WELD_RIB
from seamcheck.joint.candidates import enclosed, interruptions
from seamcheck.joint.kind import kind_of
from seamcheck.joint.profile import EDGE, FILLED, GROOVE, LEVEL, RISE, TRAP, BorderProfile, classify

FAR = np.inf
STEP = 0.1
CHAMFER = [0.1 * k for k in range(1, 9)]


def told(drop, room, width=1.2):
    kind, depth = classify(np.array([drop], dtype=float), np.array([room], dtype=float), STEP, width)
    return int(kind[0]), float(depth[0])


@pytest.mark.parametrize(
    ("what", "drop", "room", "kind", "depth"),
    [
        ("a trap 1 mm wide, 0.8 deep, then its wall", [0.8] * 10 + [-1.0] * 10, [0.8] * 20, TRAP, 0.8),
        ("a trap with a hanging lip that leaves 0.5", [0.8] * 20, [0.8] * 8 + [0.5] * 12, TRAP, 0.8),
        ("a trap behind a fillet of 0.2 mm", [0.3, 0.7] + [0.8] * 18, [0.8] * 20, TRAP, 0.8),
        ("a wall's edge with nothing beside it", [FAR] * 20, [FAR] * 20, EDGE, np.nan),
        ("a wall's edge over a floor 15 mm lower", [15.0] * 20, [15.0] * 20, EDGE, np.nan),
        ("a chamfer of 45 degrees, then the edge", [*CHAMFER, *[FAR] * 12], [1.0] * 20, EDGE, np.nan),
        ("a decorative step 0.1 mm wide", [0.25] + [FAR] * 19, [0.25] * 20, EDGE, np.nan),
        ("the other half of a stepped lap, 0.1 play", [1.0] * 20, [1.0] + [0.02] * 19, FILLED, 1.0),
        ("a tongue in a groove 1.2 wide", [1.5] * 12 + [0.0] * 8, [1.5] + [0.2] * 10 + [1.5] * 9, GROOVE, 1.5),
        ("a wall that rises 2 mm beside a ledge", [-2.0] * 20, [FAR] * 20, RISE, 2.0),
        ("a plate that goes on", [0.0] * 20, [0.0] * 20, LEVEL, np.nan),
    ],
)  # fmt: skip
def test_each_kind_of_neighbourhood_is_told(what, drop, room, kind, depth):
    assert told(drop, room) == (kind, pytest.approx(depth, nan_ok=True)), what


def test_a_micro_rib_has_its_trap_where_a_usual_one_has_a_bend():
    # 0.3 wide and 0.15 high, its trap 0.3 wide; read every 1/32 mm
    drop, room = np.full((1, 32), 0.15), np.full((1, 32), 0.15)
    drop[:, 10:] = 0.0
    assert classify(drop, room, 1 / 32, 0.3)[0].tolist() == [TRAP]
    assert classify(drop, room, 1 / 32, 1.2)[0].tolist() == [LEVEL]


def beside(wrapped=0.0, height=np.nan, **shares):
    share = np.zeros(6)
    for name, value in shares.items():
        share[{"edge": EDGE, "trap": TRAP, "filled": FILLED, "groove": GROOVE, "rise": RISE, "level": LEVEL}[name]] = (
            value
        )
    return BorderProfile(share, wrapped, height, np.nan)


@pytest.mark.parametrize(
    ("around", "falls", "width", "kind"),
    [
        (beside(trap=1.0, height=0.9), 1.0, 1.2, WELD_RIB),
        (beside(trap=0.5, edge=0.5, height=0.9), 1.0, 1.2, WELD_RIB),  # a shoulder on one side only
        (beside(trap=0.5, edge=0.5, height=0.25), 1.0, 1.75, PLAIN_WALL),  # a decorative step
        (beside(trap=1.0, height=0.15), 1.0, 0.3, WELD_RIB),
        (beside(edge=1.0), 1.0, 2.5, PLAIN_WALL),
        (beside(edge=1.0), 1.0, 2.6, FLAT_LAP),
        (beside(edge=0.5, level=0.5), 0.5, 1.0, FLAT_LAP),
        (beside(edge=0.5, filled=0.5), 1.0, 1.5, STEPPED_LAP),
        (beside(edge=0.5, groove=0.5), 1.0, 1.2, TONGUE_GROOVE),
        (beside(filled=1.0), 1.0, 1.0, TONGUE_GROOVE),
        (beside(edge=0.5, rise=0.5), 0.5, 1.0, LEDGE),
        (beside(edge=1.0, wrapped=1.0), 1.0, 2.0, STEPPED_LAP),
    ],
)
def test_the_kind_follows_from_what_lies_beside_the_band(around, falls, width, kind):
    assert kind_of(around, falls, width) == kind


def frame_of(gap=0.0, wide=2.0):
    ring = shapely.box(0, 0, 60, 40).difference(shapely.box(wide, wide, 60 - wide, 40 - wide))
    return ring.difference(shapely.box(20, -1, 20 + gap, 3)) if gap else ring


@pytest.mark.parametrize(("gap", "share"), [(0.0, 1.0), (8.0, 1.0)])
def test_a_frame_encloses_its_inside_also_across_an_interruption(gap, share):
    # 56 x 36 mm inside; the bridge over 8 mm of 200 leaves the corners that its radius rounds
    region = frame_of(gap)
    assert enclosed(region, region.length / 2).area == pytest.approx(share * 56 * 36, rel=0.02)


@pytest.mark.parametrize(("wide", "gap"), [(2.0, 8.0), (0.7, 16.0)])
def test_an_interruption_is_bridged_however_narrow_the_band_is(wide, gap):
    region = frame_of(gap, wide)
    assert enclosed(region, region.length / 2).area == pytest.approx((60 - 2 * wide) * (40 - 2 * wide), rel=0.02)
    ((length, middle),) = interruptions(region, region.length / 2)
    assert length == pytest.approx(gap, abs=0.1)
    assert middle == pytest.approx((20 + gap / 2, wide / 2), abs=wide)
    assert interruptions(frame_of(), 200.0) == []


@pytest.mark.parametrize("strip", [shapely.box(0, 0, 60, 3), shapely.box(0, 0, 9, 2)])
def test_a_strip_along_one_side_encloses_nothing(strip):
    assert enclosed(strip, strip.length / 2).area < 0.02 * strip.area
