"""Transmission from plaques: worked examples, scipy's own fit, invariants, and input that can't be true."""

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.optimize import brentq, curve_fit

from seamcheck.errors import UsageError
from seamcheck.measure.material.transmission import Plaque, fit_transmission


def plaques(*pairs):
    return [Plaque(t, p) for t, p in pairs]


def test_two_plaques():
    # By hand: K = ln(T1/T2)/(t2-t1), T0 = T1 e^(K t1); T(1.5) is the geometric mean of both.
    fit = fit_transmission(plaques((1, 0.55), (2, 0.36)), 1.49)
    assert fit.form == "two plaques"
    assert fit.extinction == pytest.approx(0.423814, abs=1e-6)
    assert fit.surface_term == pytest.approx(0.840278, abs=1e-6)
    assert fit.at(1.5) == pytest.approx(np.sqrt(0.55 * 0.36), rel=1e-12)
    assert fit.at(1.5) == pytest.approx(0.444972, abs=1e-6)
    assert fit.at(2.5) == pytest.approx(0.291254, abs=1e-6)
    assert fit.limit_thickness(0.28) == pytest.approx(2.592983, abs=1e-6)
    assert fit.limit_thickness(0.28) == pytest.approx(brentq(lambda t: fit.at(t) - 0.28, 0.1, 10.0), abs=1e-9)


@pytest.mark.parametrize("absorbed", [0.02, 0.05, 0.1])
def test_one_plaque_of_a_cover_that_scatters_lies_between_both_forms(absorbed):
    """Two-flux theory (Kubelka and Munk): T = b / (a sinh bSl + b cosh bSl), a = (S + A) / S, b² = a² - 1; S 1/mm.

    S = 1, A = 0.05: 0.472, 0.289, 0.194 at 1, 2, 3 mm. From the plaque of 2 mm alone, with the surfaces of n = 1.53.
    """
    a = 1.0 + absorbed
    b = np.sqrt(a**2 - 1.0)
    surfaces = (1.0 - ((1.53 - 1) / (1.53 + 1)) ** 2) ** 2

    def passed(path):
        return surfaces * b / (a * np.sinh(b * path) + b * np.cosh(b * path))

    if absorbed == 0.05:
        assert passed(np.array([1.0, 2.0, 3.0])) / surfaces == pytest.approx([0.472, 0.289, 0.194], abs=1e-3)
    plaque = [Plaque(2.0, float(passed(2.0)))]
    fit, plain = fit_transmission(plaque, 1.53, scatters=True), fit_transmission(plaque, 1.53)
    for path in (1.0, 1.5, 2.5, 3.0):
        truth, found, exponential = float(passed(path)), float(fit.at(path)), float(plain.at(path))
        assert found == pytest.approx(truth, rel=0.1)
        assert abs(found / truth - 1.0) < 0.6 * abs(exponential / truth - 1.0)
        low, high = fit.interval(path)
        assert low < truth < high
    assert float(fit.at(2.0)) == pytest.approx(plaque[0].transmission)
    assert float(fit.at(fit.limit_thickness(0.2))) == pytest.approx(0.2)
    step = 1e-5
    slope = -(np.log(fit.at(1.5 + step)) - np.log(fit.at(1.5 - step))) / (2 * step)
    assert float(fit.falls_by(1.5)) == pytest.approx(float(slope), rel=1e-6)


def test_one_plaque():
    # By hand: T0 = (1 - R)², K = -ln(T/T0)/t, n = 1.53.
    fit = fit_transmission(plaques((2, 0.35)), 1.53)
    assert fit.form == "one plaque"
    assert fit.surface_term == pytest.approx(0.914157, abs=1e-6)
    assert fit.extinction == pytest.approx(0.480035, abs=1e-6)
    assert fit.at(1.5) == pytest.approx(0.444945, abs=1e-6)
    assert fit.at(3.0) == pytest.approx(0.216567, abs=1e-6)
    assert fit.limit_thickness(0.28) == pytest.approx(2.464849, abs=1e-6)
    assert any("One plaque" in note for note in fit.notes)


@settings(max_examples=40, deadline=None)
@given(st.floats(0.5, 0.88), st.floats(0.05, 1.5), st.integers(0, 1000))
def test_many_plaques_agree_with_scipy(start, rate, seed):
    random = np.random.default_rng(seed)
    t = np.array([0.8, 1.0, 1.5, 2.0, 3.0])
    measured = start * np.exp(-rate * t) * np.exp(random.normal(0, 0.01, len(t)))
    fit = fit_transmission(plaques(*zip(t, measured, strict=True)), 1.5, 0.01)
    (log_start, slope), cov = curve_fit(
        lambda x, a, k: a - k * x, t, np.log(measured), sigma=np.full(5, 0.01), absolute_sigma=True
    )
    if slope > 0:
        assert fit.surface_term == pytest.approx(np.exp(log_start), rel=1e-6)
        assert fit.extinction == pytest.approx(slope, rel=1e-5)
    residual = np.log(measured) - (log_start - slope * t)
    factor = max(1.0, np.sum(residual**2) / 3 / 0.01**2)
    np.testing.assert_allclose(fit.covariance, cov * factor, rtol=1e-5, atol=1e-12)


@given(st.floats(0.3, 2.0), st.floats(1.1, 3.0), st.floats(0.05, 0.85), st.floats(0.1, 0.99))
def test_transmission_never_rises_with_the_path_and_lies_in_its_range(thin, times, first, share):
    fit = fit_transmission(plaques((thin, first), (thin * times, first * share)), 1.5)
    path = np.linspace(0.0, 10.0, 200)
    for values in (fit.at(path), fit.diffuse_at(path)):
        assert (np.diff(values) <= 1e-15).all()
        assert ((values >= 0.0) & (values <= fit.cap)).all()
    low, high = fit.interval(path)
    assert (low <= fit.at(path) + 1e-15).all()
    assert (fit.at(path) <= high + 1e-15).all()
    assert (high <= fit.cap).all()


def test_the_exponential_and_the_diffuse_form_part_beyond_the_plaques():
    # Two-flux layer S = 1, A = 0.05 /mm: 0.194 at 3 mm; an exponential through 1 and 2 mm says 0.177.
    # Two-flux theory (P. Kubelka, J. Opt. Soc. Am. 38, 1948): b / (a sinh(b S t) + b cosh(b S t)), a = (S + A) / S.
    a = 1.05
    b = np.sqrt(a**2 - 1.0)
    t1, t2, t3 = (b / (a * np.sinh(b * t) + b * np.cosh(b * t)) for t in (1.0, 2.0, 3.0))
    fit = fit_transmission(plaques((1, t1), (2, t2)), 1.5)
    assert fit.at(3.0) == pytest.approx(0.177, abs=5e-4)
    low, high = fit.interval(3.0)
    assert low < t3 < high
    assert not fit.is_beyond(3.0)
    assert fit.is_beyond(3.01)


def test_repeated_plaques_of_one_thickness_are_averaged():
    fit = fit_transmission(plaques((2, 0.34), (2, 0.36)), 1.53)
    assert fit.form == "one plaque"
    assert fit.at(2.0) == pytest.approx(np.sqrt(0.34 * 0.36), rel=1e-12)


def test_a_clear_cover_loses_nothing_in_the_bulk():
    fit = fit_transmission(plaques((1, 0.880), (3, 0.884)), 1.57)
    assert fit.extinction == 0.0
    assert fit.limit_thickness(0.28) == np.inf
    assert any("no loss" in note for note in fit.notes)


def test_plaques_that_point_above_the_surfaces_are_reported():
    fit = fit_transmission(plaques((1, 0.80), (2, 0.40)), 1.5)
    assert any("too high" in note for note in fit.notes)
    assert fit.at(0.0) == pytest.approx(fit.cap)


def test_an_outlier_is_named():
    fit = fit_transmission(plaques((1, 0.55), (2, 0.36), (3, 0.30), (4, 0.154)), 1.5)
    assert any("3.00 mm plaque" in note for note in fit.notes)


@pytest.mark.parametrize(
    ("pairs", "word"),
    [(((1, 0.97),), "surfaces"), (((1, 0.36), (2, 0.55)), "thicker"), (((1, 0.2), (1.5, 0.3), (3, 0.1)), "thicker")],
)
def test_plaques_that_cannot_be_true_get_a_sentence(pairs, word):
    with pytest.raises(UsageError, match=word):
        fit_transmission(plaques(*pairs), 1.5)
