"""Outlines of sections are closed where they leave what is shown, against shapely's clipping."""

import numpy as np
import pytest
import shapely

from seamcheck.document.take_view import closed_outlines


def outline(polygon):
    """(k, 4) segments of all rings, each with u ascending."""
    rows = []
    for ring in (polygon.exterior, *polygon.interiors):
        xy = np.array(ring.coords)
        rows += [[*min(a, b), *max(a, b)] for a, b in zip(xy[:-1].tolist(), xy[1:].tolist(), strict=True)]
    return np.array(rows)


def area_of(lines):
    """The polygon that segments (k, 4) enclose."""
    strings = [shapely.LineString(row) for row in lines.reshape(-1, 2, 2)]
    return shapely.build_area(shapely.node(shapely.MultiLineString(strings)))


SHAPES = {
    "reaches beyond both sides": shapely.box(-20, 1, 20, 3),
    "reaches beyond one side": shapely.box(-20, -4, 2, 0),
    "lies within": shapely.box(-1, -1, 1, 0),
    "lies outside": shapely.box(12, 0, 15, 3),
    "two decks with a void": shapely.box(-20, 0, 20, 6).difference(shapely.box(-18, 2, 18, 4)),
    "slanted": shapely.Polygon([(-20, -3), (15, -1), (18, 4), (-16, 2.5)]),
}


@pytest.mark.parametrize("shape", SHAPES.values(), ids=SHAPES)
def test_outlines_enclose_what_is_shown_of_the_material(shape):
    segments = outline(shape)
    n = len(segments)
    _, lines, _, face = closed_outlines(np.zeros(n, int), segments, np.ones(n, int), np.arange(n), 9.0)
    expected = shape.intersection(shapely.box(-9, -99, 9, 99))
    drawn = area_of(lines)
    assert drawn.symmetric_difference(expected).area == pytest.approx(0.0, abs=1e-9)
    assert set(face) <= {-1, *range(n)}


def test_stations_and_owners_are_kept_apart():
    one, other = outline(SHAPES["slanted"]), outline(SHAPES["reaches beyond both sides"])
    station = np.array([1] * len(one) + [0] * len(other) + [1] * len(other))
    owner = np.array([0] * len(one) + [1] * len(other) + [1] * len(other))
    found, lines, owners, _ = closed_outlines(
        station, np.vstack([one, other, other]), owner, np.zeros(len(station), int), 9.0
    )
    assert list(found) == sorted(found)
    for s, o, shape in ((0, 1, "reaches beyond both sides"), (1, 0, "slanted"), (1, 1, "reaches beyond both sides")):
        drawn = area_of(lines[(found == s) & (owners == o)])
        assert drawn.area == pytest.approx(SHAPES[shape].intersection(shapely.box(-9, -99, 9, 99)).area, abs=1e-9)
    assert not len(lines[(found == 0) & (owners == 0)])
