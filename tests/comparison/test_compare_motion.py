"""Whether a seam was moved as a whole, and where its places lie: on lines with a closed form, without CAD."""

from __future__ import annotations

import numpy as np
import pytest
from builder import c_shape, circle, l_shape, rounded_rectangle
from hypothesis import example, given, settings
from hypothesis import strategies as st
from scipy.spatial.transform import Rotation

from seamcheck.comparison.motion import SAME, find_motion
from seamcheck.comparison.nearest import find_nearest
from seamcheck.comparison.paths import seam_paths
from seamcheck.comparison.rigid import Rigid

STILL = Rigid(np.eye(3), np.zeros(3))


def document(track, motion=STILL, spacing=0.5, start=0, backwards=False):
    """As much of a review document as the seam needs: stations along a drawn line, moved."""
    n = round(track.length / spacing)
    s = np.linspace(0.0, track.length, n, endpoint=False)
    xy, normal = track.at(s)
    points = motion.points(np.column_stack([xy, np.zeros(n)]))
    u = motion.vectors(np.column_stack([normal, np.zeros(n)]))
    order = np.roll(np.arange(n), start)[:: -1 if backwards else 1]
    stations = {"s": s.tolist(), "u": u[order].tolist()}
    stations |= {axis: points[order, k].tolist() for k, axis in enumerate("xyz")}
    contour = {
        "id": "c1", "closed": True, "length_mm": track.length, "stations": stations, "unmeasured": [], "bounds": [],
    }  # fmt: skip
    beam = motion.vectors(np.array([[0.0, 0.0, -1.0]]))[0]
    return {"joints": [{"id": "j1", "beam": beam.tolist(), "contours": [contour]}]}


def found_between(old, new):
    return find_motion(old, new, seam_paths(old), seam_paths(new))


@settings(max_examples=3)
@example(turn=(0.0, 0.0, 0.0), shift=(0.0, 0.0, 0.03125), start=0, backwards=False, spacing=0.5)
@given(
    turn=st.tuples(*[st.floats(-180, 180)] * 3),
    shift=st.tuples(*[st.floats(-300, 300)] * 3),
    start=st.integers(0, 500),
    backwards=st.booleans(),
    spacing=st.floats(0.3, 0.7),
)
def test_a_turn_and_a_shift_are_found_whatever_they_are(turn, shift, start, backwards, spacing):
    # an L, which no motion but none brings onto itself
    drawn = Rigid(Rotation.from_rotvec(np.radians(turn)).as_matrix(), np.array(shift))
    old = document(l_shape(60, 42, 20, 6))
    found = found_between(old, document(l_shape(60, 42, 20, 6), drawn, spacing, start, backwards))
    corners = np.array([[60.0, 0, 0], [0, 42.0, 0], [0, 0, 10.0], [-30, -21, 0]])
    # what counts is where the motion takes points about the seam
    moved = np.linalg.norm(drawn.points(corners) - corners, axis=1).max()
    assert found.share > 0.95
    if found.kind == "none":  # a seam whose places lie within SAME of where they were counts as one that stayed
        assert moved < 2 * SAME
        return
    assert np.linalg.norm(found.motion.points(corners) - drawn.points(corners), axis=1).max() < 0.02
    if drawn.angle > 1.0 and np.linalg.norm(shift) > 1.0:
        assert found.kind == "turned"


@settings(max_examples=8)
@given(shift=st.tuples(*[st.floats(-300, 300)] * 3), track=st.sampled_from(["c", "circle", "rectangle"]))
def test_a_shift_is_called_a_shift(shift, track):
    line = {"c": c_shape(), "circle": circle(25), "rectangle": rounded_rectangle(120, 80, 10)}[track]
    found = found_between(document(line), document(line, Rigid(np.eye(3), np.array(shift)), 0.45))
    if np.linalg.norm(shift) < 0.1:
        return
    assert found.kind == "moved"
    assert found.motion.shift == pytest.approx(shift, abs=0.005)


def test_a_seam_that_stayed_has_no_motion():
    found = found_between(document(c_shape()), document(c_shape(), spacing=0.41, start=33, backwards=True))
    assert (found.kind, found.share) == ("none", 1.0)


@pytest.mark.parametrize(
    "new",
    [rounded_rectangle(46, 28, 6), rounded_rectangle(41, 29, 6.5), circle(18)],
    ids=["longer", "outward", "round"],
)
def test_another_shape_is_not_taken_for_a_moved_one(new):
    found = found_between(document(rounded_rectangle(40, 28, 6)), document(new))
    assert found.kind in ("none", "unlike")
    assert np.array_equal(found.motion.turn, np.eye(3))
    assert not found.motion.shift.any()


@settings(max_examples=40)
@given(angle=st.floats(0, 2 * np.pi), away=st.floats(-0.5, 0.5), radius=st.floats(2.0, 60.0))
def test_the_nearest_place_on_a_circle_is_where_it_should_be(angle, away, radius):
    # closed form: the foot of a point lies on the ray from the centre, at the radius
    line = circle(radius)
    paths = seam_paths(document(line))
    point = (radius + away * radius) * np.array([[np.cos(angle), np.sin(angle), 0.0]])
    feet = find_nearest(point, paths, reach=100.0)
    # right beside the curve it is the curve's own; farther off, at worst the chord's: off by its sagitta d²/8R
    allowed = 2e-4 if abs(away) < 0.02 else 0.5**2 / (8 * radius)
    assert feet.distance[0] == pytest.approx(abs(away) * radius, abs=allowed)
    assert np.linalg.norm(feet.points[0]) == pytest.approx(radius, abs=2e-4)


def test_a_place_ahead_of_an_end_has_no_counterpart():
    document_ = document(rounded_rectangle(40, 28, 6))
    contour = document_["joints"][0]["contours"][0]
    contour["closed"] = False
    contour["stations"] = {key: values[:40] for key, values in contour["stations"].items()}
    (path,) = seam_paths(document_)
    tangent = path.tangents[-1:]
    ahead, beside = path.points[-1:] + 2.0 * tangent, path.points[-5:-4] + 2.0 * path.u[-5:-4]
    assert not find_nearest(ahead, [path], tangents=tangent).found[0]
    assert find_nearest(beside, [path], tangents=tangent).distance[0] == pytest.approx(2.0, abs=0.02)
    assert not find_nearest(beside + 4 * path.u[-5:-4], [path], tangents=tangent).found[0]  # beyond 5 mm
