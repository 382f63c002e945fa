"""Bending of plates: moments and loads at the edge against closed forms and the tables of handbooks."""

from __future__ import annotations

import numpy as np
import pytest

from seamcheck.measure.plate import plate_edge

TWO_TURNS = 2 * np.pi


def circle(radius: float, count: int = 720) -> np.ndarray:
    angle = np.linspace(0.0, TWO_TURNS, count, endpoint=False)
    return radius * np.column_stack([np.cos(angle), np.sin(angle)])


@pytest.mark.parametrize("radius", [8.0, 32.0])
def test_a_round_plate(radius):
    """S. Timoshenko and S. Woinowsky-Krieger, Theory of Plates and Shells, section 16: M = p a²/8, load p a/2."""
    edge = plate_edge(circle(radius), 0.1, 0.3, radius / 10)
    assert edge.moment.mean() == pytest.approx(0.1 * radius**2 / 8, rel=0.01)
    assert edge.moment == pytest.approx(0.1 * radius**2 / 8, rel=0.01)
    for load in (edge.load_clamped, edge.load_hinged):
        assert load.mean() == pytest.approx(0.1 * radius / 2, rel=0.01)
        assert load == pytest.approx(0.1 * radius / 2, rel=0.025)


def rectangle(a: float, b: float) -> np.ndarray:
    return np.array([(-a / 2, -b / 2), (a / 2, -b / 2), (a / 2, b / 2), (-a / 2, b / 2)])


def place(edge, a: float, b: float, x: float, y: float) -> int:
    """The place of the edge that is nearest to (x, y), of an outline that begins at (-a/2, -b/2)."""
    along = {(-b / 2): a / 2 + x, (a / 2): a + b / 2 + y}[y if x != a / 2 else x]
    return int(np.argmin(np.abs(edge.s - along)))


@pytest.mark.parametrize(
    ("ratio", "long", "short"), [(1.0, 0.0513, 0.0513), (1.5, 0.0757, 0.0570), (2.0, 0.0829, 0.0571)]
)
def test_a_clamped_rectangle(ratio, long, short):
    """Theory of Plates and Shells, table 35: moments in the middle of long and short side, in p b² (ν = 0.3)."""
    b = 40.0
    a = ratio * b
    edge = plate_edge(rectangle(a, b), 0.1, 0.3, 1.0)
    assert edge.moment[place(edge, a, b, 0.0, -b / 2)] == pytest.approx(long * 0.1 * b**2, rel=0.02)
    assert edge.moment[place(edge, a, b, a / 2, 0.0)] == pytest.approx(short * 0.1 * b**2, rel=0.02)


@pytest.mark.parametrize(("ratio", "long", "short"), [(1.0, 0.420, 0.420), (1.5, 0.486, 0.480), (2.0, 0.503, 0.496)])
def test_a_hinged_rectangle(ratio, long, short):
    """Theory of Plates and Shells, table 8: loads in the middle of the long and the short side, in p b (ν = 0.3)."""
    b = 40.0
    a = ratio * b
    edge = plate_edge(rectangle(a, b), 0.1, 0.3, 2.0)
    assert edge.load_hinged[place(edge, a, b, 0.0, -b / 2)] == pytest.approx(long * 0.1 * b, rel=0.02)
    short_found = edge.load_hinged[place(edge, a, b, a / 2, 0.0)]
    assert short_found == pytest.approx(short * 0.1 * b, rel=0.02)


def test_loads_carry_the_pressure():
    edge = plate_edge(rectangle(64.0, 44.0), 0.1, 0.4, 2.0)
    step = 216.0 / len(edge.s)
    for load in (edge.load_clamped, edge.load_hinged):
        assert load.sum() * step == pytest.approx(0.1 * 64 * 44, rel=0.01)
    # a lid of 64 x 44 mm at 1 bar: about 1.3 N/mm on average, but a moment of 14 N in the middle of the long side
    assert edge.moment.max() == pytest.approx(14.0, abs=0.6)


def test_what_cannot_be_filled_is_no_answer():
    assert plate_edge(np.array([(0, 0), (10, 10), (10, 0), (0, 10)], dtype=float), 0.1, 0.4, 1.0) is None
