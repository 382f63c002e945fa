"""Ids of findings: not changed by renamed parts, by the order of parts, or by a model that is moved as a whole."""

import numpy as np
import pytest
from limits_surveys import joint, path_survey
from msgspec.structs import replace
from scipy.spatial.transform import Rotation

from seamcheck.judge.identity import JointFrame
from seamcheck.judge.judge import judge
from seamcheck.settings.settings import Settings

BEAM = np.array([0.0, 0.0, -1.0])
MOTIONS = {
    "moved": (Rotation.identity(), np.array([103.7, -41.2, 12.9])),
    "a quarter turn": (Rotation.from_euler("z", 90, degrees=True), np.zeros(3)),
    "a half turn": (Rotation.from_euler("z", 180, degrees=True), np.array([5.0, 5.0, 0.0])),
    "on its side": (Rotation.from_euler("x", 90, degrees=True), np.array([0.0, 31.0, 7.0])),
    "askew": (Rotation.from_euler("xyz", [31.0, -17.0, 121.0], degrees=True), np.array([-3.1, 400.0, 21.0])),
}


def outline(kind: str, count: int = 600) -> np.ndarray:
    """(n, 3) mm, points about evenly along a closed line in the plane z = 0, at arc lengths from a corner."""
    if kind == "circle":
        angle = np.linspace(0, 2 * np.pi, count, endpoint=False)
        return np.column_stack([40 * np.cos(angle), 40 * np.sin(angle), 0 * angle])
    corners = {
        "oblong": [(-60, -30), (60, -30), (60, 30), (-60, 30)],
        "square": [(-40, -40), (40, -40), (40, 40), (-40, 40)],
        "lopsided": [(-60, -30), (60, -30), (-10, 30), (-60, 30)],
    }[kind]
    corners = np.array([*corners, corners[0]], dtype=float)
    along = np.concatenate([[0.0], np.cumsum(np.linalg.norm(np.diff(corners, axis=0), axis=1))])
    s = np.linspace(0, along[-1], count, endpoint=False)
    return np.column_stack([np.interp(s, along, corners[:, 0]), np.interp(s, along, corners[:, 1]), 0 * s])


def seam(points, *changes, cover=("p2",), base=("p1",), beam=BEAM, start=0):
    """A joint whose seam runs along points (n, 3), with a narrow rib at the stations of each change."""
    points = np.roll(points, -start, axis=0)
    length = float(np.linalg.norm(np.diff(points, axis=0, append=points[:1]), axis=1).sum())
    path = path_survey(length=length, n=len(points))
    width = path.columns["rib_width"].copy()
    for first, last, value in changes:
        width[(np.arange(first, last) - start) % len(points)] = value
    path = replace(path, points=points, columns={**path.columns, "rib_width": width})
    return replace(joint(path, cover=cover, base=base), beam=beam)


def ids(*joints, names=None):
    found = judge(joints, Settings(), names or {"p1": "case", "p2": "lid"}).findings
    assert found
    return sorted(finding.id for finding in found)


PLACES = ((100, 108, 0.45), (315, 330, 0.48), (480, 486, 0.5))
KINDS = ("circle", "oblong", "square", "lopsided")


@pytest.mark.parametrize("kind", KINDS)
def test_a_rename_and_another_order_of_parts_change_no_id(kind):
    points = outline(kind)
    drawn = ids(seam(points, *PLACES))
    assert ids(seam(points, *PLACES), names={"p1": "Gehäuse v2", "p2": ""}) == drawn
    assert ids(seam(points, *PLACES, cover=("p1",), base=("p2",)), names={"p2": "case", "p1": "lid"}) == drawn


@pytest.mark.parametrize("motion", MOTIONS.values(), ids=MOTIONS)
@pytest.mark.parametrize("kind", KINDS)
def test_a_model_that_is_moved_as_a_whole_keeps_its_ids(kind, motion):
    turn, shift = motion
    points = outline(kind)
    moved = seam(turn.apply(points) + shift, *PLACES, beam=turn.apply(BEAM))
    assert ids(moved) == ids(seam(points, *PLACES))


@pytest.mark.parametrize("kind", KINDS)
def test_another_start_of_the_loop_keeps_the_ids(kind):
    points = outline(kind)
    assert ids(seam(points, *PLACES, start=257)) == ids(seam(points, *PLACES))


def test_faults_far_apart_on_a_lopsided_seam_have_names_of_their_own():
    found = [name for name in ids(seam(outline("lopsided"), *PLACES)) if name.startswith("rib-width-")]
    assert len({name[: len("rib-width-12345678")] for name in found}) == len(PLACES)


def test_equal_seams_of_one_model_are_told_apart_whatever_their_order():
    points = outline("oblong")
    left = seam(points, PLACES[0])
    right = replace(seam(points + np.array([0, 200.0, 0]), PLACES[0], cover=("p4",), base=("p3",)), id="j2")
    names = {"p1": "case", "p2": "lid", "p3": "box", "p4": "window"}
    both = ids(left, right, names=names)
    assert len(set(both)) == len(both)
    assert ids(replace(right, id="j1"), replace(left, id="j2"), names=names) == both


def test_the_frame_of_an_oblong_follows_closed_form():
    # A thin rectangle a x b: of the line's second moments the larger one lies along its long side, so the frame's
    # first axis does (statics of thin-walled sections, any handbook). Turned by 25 degrees about the light.
    turn = Rotation.from_euler("z", 25, degrees=True)
    points = turn.apply(outline("oblong")) + np.array([7.0, -3.0, 2.0])
    frame = JointFrame.of(points, np.ones(len(points)), BEAM)
    assert frame.folds == 2
    np.testing.assert_allclose(frame.centre, [7.0, -3.0, 2.0], atol=1e-9)
    np.testing.assert_allclose(np.abs(frame.axes[0] @ turn.apply([1.0, 0.0, 0.0])), 1.0, atol=1e-9)
    for x, y in ((50.0, 20.0), (-50.0, 20.0), (50.0, -20.0), (-50.0, -20.0)):
        place = turn.apply([x, y, 1.5]) + np.array([7.0, -3.0, 2.0])
        np.testing.assert_allclose(frame.local(place), (50.0, 20.0, 1.5), atol=1e-9)


@pytest.mark.parametrize(("kind", "folds"), [("circle", 0), ("oblong", 2), ("square", 4), ("lopsided", 1)])
def test_the_symmetry_of_a_seam_is_seen(kind, folds):
    points = outline(kind)
    assert JointFrame.of(points, np.ones(len(points)), BEAM).folds == folds
