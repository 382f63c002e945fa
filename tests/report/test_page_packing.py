"""What the page carries of sections and meshes is what the document holds, to a thousandth of a millimetre."""

import base64

import numpy as np
import pytest

from seamcheck.report.html.packing import page_view


def text(values, kind):
    return base64.b64encode(np.asarray(values, dtype=kind).tobytes()).decode()


def three(packed):
    """Integers of three bytes, written here anew: the least byte first, two's complement."""
    raw = np.frombuffer(base64.b64decode(packed), "u1").astype(np.int64).reshape(-1, 3) @ [1, 256, 65536]
    return np.where(raw >= 2**23, raw - 2**24, raw)


def wrapped(sums):
    return (sums + 2**23) % 2**24 - 2**23


@pytest.mark.parametrize("far", [0.0, -120.5, 8000.0, 250000.0])
def test_sections_and_meshes_are_those_of_the_document(far):
    rng = np.random.default_rng(3)
    segments, points = rng.uniform(-14, 14, (50, 4)), rng.uniform(-80, 80, (30, 3)) + far
    corners, faces = rng.integers(0, 30, (40, 3)), np.sort(rng.integers(0, 9, 40))
    view = {
        "sections": [{"joint": "j1", "contour": "c1", "stations": [0], "offsets": text([0, 50], "<u4"),
                      "segments": text(segments, "<f4"), "owner": text(np.zeros(50), "u1"), "face": text([0], "<i4")}],
        "meshes": [{"part": "p1", "positions": text(points, "<f4"), "triangles": text(corners, "<u4"),
                    "face": text(faces, "<i4"), "left_out": 2}],
    }  # fmt: skip
    packed = page_view(view)
    section, mesh = packed["sections"][0], packed["meshes"][0]
    np.testing.assert_allclose(three(section["segments"]) * section["step"], segments.ravel(), atol=6e-4)
    told = wrapped(np.cumsum(three(mesh["positions"]).reshape(-1, 3), axis=0)) * mesh["step"]
    np.testing.assert_allclose(told, points, atol=max(6e-4, 3 * abs(far) * 2**-23))  # as fine as float32 there
    assert (np.cumsum(three(mesh["triangles"])) == corners.ravel()).all()
    assert (np.cumsum(three(mesh["face"])) == faces).all()
    assert mesh["left_out"] == 2


def test_no_view_is_none():
    assert page_view(None) is None
