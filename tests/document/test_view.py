"""The part "view": what is packed comes back, and damage is refused with a clear error."""

import base64
import json

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from seamcheck.document.view import Mesh, SectionSet, ViewDamaged, different_rows, pack_view, unpack_view


def two_squares():
    square = np.array([[0, 0, 1, 0], [1, 0, 1, 1], [1, 1, 0, 1], [0, 1, 0, 0]], dtype=float)
    return SectionSet("j1", "c1", np.array([0, 5]), np.array([0, 4, 8]), np.vstack([square, square + 2]),
                      np.repeat([0, 1], 4), np.arange(8) - 1)  # fmt: skip


def test_sections_and_meshes_come_back_through_json():
    mesh = Mesh("p1", np.array([[0, 0, 0], [1, 0, 0], [0, 1, 0.25]]), np.array([[0, 1, 2]]), np.array([7]))
    sections, meshes = unpack_view(json.loads(json.dumps(pack_view([two_squares()], [mesh]))))
    assert sections[0].stations.tolist() == [0, 5]
    segments, owner = sections[0].at(5)
    np.testing.assert_array_equal(segments[0], [2, 2, 3, 2])
    assert owner.tolist() == [1, 1, 1, 1]
    assert sections[0].face.tolist() == list(range(-1, 7))
    assert sections[0].at(3) is None
    np.testing.assert_array_equal(meshes[0].positions, mesh.positions)
    assert meshes[0].triangles.tolist() == [[0, 1, 2]]
    assert meshes[0].face.tolist() == [7]


def test_bytes_are_little_endian_as_the_page_reads_them():
    # IEEE 754: 1.0 in binary32 is 3F800000, low byte first.
    packed = pack_view([two_squares()])["sections"][0]
    assert base64.b64decode(packed["segments"])[8:12] == bytes([0, 0, 0x80, 0x3F])
    assert base64.b64decode(packed["offsets"])[4:8] == bytes([4, 0, 0, 0])


@given(st.lists(st.integers(0, 6), max_size=8), st.integers(0, 2**31 - 1))
def test_any_sections_come_back(counts, seed):
    rng = np.random.default_rng(seed)
    total = sum(counts)
    offsets = np.concatenate([[0], np.cumsum(counts)])
    segments = rng.normal(size=(total, 4))
    owner, face = rng.integers(0, 256, total), rng.integers(-1, 9, total)
    made = SectionSet("j1", "c1", np.arange(len(counts)), offsets, segments, owner, face)
    back = unpack_view(pack_view([made]))[0][0]
    np.testing.assert_array_equal(back.segments, made.segments)
    np.testing.assert_array_equal(back.owner, made.owner)
    np.testing.assert_array_equal(back.offsets, made.offsets)


def test_slope_and_shade_come_back_by_station():
    plain = two_squares()
    fields = (plain.stations, plain.offsets, plain.segments, plain.owner, plain.face)
    shaded = (5, -0.6, 0.0, 0.25, -0.3, 7.5, 0.0, "p3", False)
    made = SectionSet("j1", "c1", *fields, np.array([0.0, -0.5]), (shaded,), ("p3",))
    back = unpack_view(json.loads(json.dumps(pack_view([made]))))[0][0]
    assert (back.slope_at(0), back.slope_at(5), back.slope_at(3)) == (0.0, -0.5, 0.0)
    assert back.shade_at(0) == []
    assert back.shade_at(5)[0]["part"] == "p3"
    assert back.shade_at(5)[0]["share"] == 0.25
    assert back.others == ("p3",)


def test_no_view_is_no_sections_and_no_meshes():
    assert unpack_view(None) == ((), ())


@pytest.mark.parametrize("spoil", ["segments", "offsets", "owner"])
def test_damage_is_refused(spoil):
    view = pack_view([two_squares()])
    view["sections"][0][spoil] = "!!"
    with pytest.raises(ViewDamaged):
        unpack_view(view)
    view["sections"][0][spoil] = base64.b64encode(b"\1\0\0\0" * 3).decode()
    with pytest.raises(ViewDamaged):
        unpack_view(view)


def test_a_mesh_must_name_points_that_exist():
    with pytest.raises(ViewDamaged, match="not there"):
        Mesh("p1", np.zeros((3, 3)), np.array([[0, 1, 3]]), np.array([0]))


@pytest.mark.parametrize("largest", [3, 2_000_000, 2**40])
def test_different_rows_are_those_that_numpy_finds(largest):
    rows = np.random.default_rng(3).integers(-largest, largest, (40, 3)).repeat(5, axis=0)
    found, place = different_rows(rows)
    true, where = np.unique(rows, axis=0, return_inverse=True)
    assert (found == true).all()
    assert (place == where.reshape(-1)).all()
    assert different_rows(rows[:0])[1].shape == (0,)
