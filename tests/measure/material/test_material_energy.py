"""Energy, time and force: the worked examples by hand, scipy where it has the integral, scaling laws."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from msgspec.structs import replace
from scipy.integrate import quad, solve_bvp
from scipy.special import erfc

from seamcheck.catalogue.material_results import BOUNDS
from seamcheck.measure.material import energy


def joint(width=1.5, collapse=0.4, length=400.0, transmission=0.4, n=5, **numbers):
    base = {
        "density": 0.905,
        "heat": 2.2,
        "rise": 200.0,
        "fusion": 0.5 * 207,
        "layer": 0.15,
        "use": 0.6,
        "power": 150.0,
        "speed": 2000.0,
        "pressure": 2.0,
        "viscosity": 500.0,
        "diffusivity": 0.065,
    }
    one = np.ones(n)
    return energy.EnergyInputs(
        lambda c: width * np.asarray(c)[..., None] * one,
        length / n * one,
        width * one,
        transmission * one,
        collapse,
        {**base, **numbers},
    )


def test_first_example():
    # PP, w = 1.5, c = 0.4, 400 mm, by hand.
    assert energy.melted_area(0.6, 0.15, 1.5) == pytest.approx(1.05)
    assert energy.heat_to_weld(2.2, 200, 103.5) == pytest.approx(543.5)
    out = energy.estimate(joint())
    assert out["energy_per_length"] == pytest.approx(0.516461, abs=1e-6)
    assert out["melt_energy"] == pytest.approx(206.584, abs=1e-3)
    assert out["laser_energy"] == pytest.approx(860.768, abs=1e-3)
    assert out["least_time"] == pytest.approx(5.738, abs=5e-4)
    assert energy.first_pass_rise(150, 0.4, 2000, 1.5, 0.1, 0.905, 1.7) == pytest.approx(130.0, abs=0.1)
    assert out["steady_layer"] == pytest.approx(0.04094, abs=1e-4)  # at 0.122 mm/s
    assert out["clamp_force"] == pytest.approx(1200.0)
    assert out["cooling_depth"] == pytest.approx(0.23, abs=5e-3)
    assert out["laser_energy_even"] == pytest.approx(out["laser_energy"])


def test_second_example():
    # PC, w = 1.2, c = 0.25, 250 mm, by hand.
    out = energy.estimate(
        joint(
            1.2, 0.25, 250.0, 0.88, density=1.20, heat=1.6, rise=257.0, fusion=0.0, layer=0.1, power=60.0, speed=1000.0
        )
    )
    assert out["energy_per_length"] == pytest.approx(0.266458, abs=1e-6)
    assert out["melt_energy"] == pytest.approx(66.614, abs=1e-3)
    assert out["laser_energy"] == pytest.approx(126.164, abs=1e-3)
    assert out["least_time"] == pytest.approx(2.103, abs=5e-4)


def test_the_steady_layer_solves_the_film_equation():
    # Reynolds equation of a thin film, d/dx (h³/(12 μ) dp/dx) = -V, p = 0 at both edges (B. Hamrock,
    # Fundamentals of Fluid Film Lubrication): mean pressure over the strip.
    h, mu, w, v = 0.08, 500e-6, 1.5, 1.7
    film = solve_bvp(
        lambda x, y: np.vstack([y[1], np.full_like(x, -12 * mu * v / h**3)]),
        lambda a, b: np.array([a[0], b[0]]),
        np.linspace(0, w, 11),
        np.zeros((2, 11)),
    )
    mean = quad(lambda x: film.sol(x)[0], 0, w)[0] / w
    assert energy.steady_layer(v, mean, 500.0, w) == pytest.approx(h, rel=1e-6)


def test_cooling_depth_is_where_the_half_space_has_cooled_by_sixteen_percent():
    # Half-space with a suddenly changed surface: T/T0 = erfc(x / √(4 a t)) (Carslaw and Jaeger, section 2.5);
    # at x = √(4 a t) erfc(1) = 0.157.
    depth = energy.cooling_depth(0.065, 0.2)
    assert erfc(depth / np.sqrt(4 * 0.065 * 0.2)) == pytest.approx(0.1573, abs=1e-4)


@given(st.floats(1.1, 5.0))
def test_energies_scale(factor):
    one = energy.estimate(joint())
    assert energy.estimate(joint(length=400 * factor))["melt_energy"] == pytest.approx(one["melt_energy"] * factor)
    assert energy.estimate(joint(density=0.905 * factor))["least_time"] == pytest.approx(one["least_time"] * factor)
    assert energy.estimate(joint(power=150 * factor))["least_time"] == pytest.approx(one["least_time"] / factor)
    assert energy.estimate(joint(pressure=2 * factor))["clamp_force"] == pytest.approx(1200 * factor)
    assert energy.estimate(joint(n=11))["laser_energy"] == pytest.approx(one["laser_energy"])


def test_a_dark_stretch_costs_more_at_even_power_than_dosed():
    inputs = joint()
    light = inputs.transmission.copy()
    light[2] = 0.2
    out = energy.estimate(replace(inputs, transmission=light))
    # Four fifths at 40 %, one fifth at 20 %: dosed 1.2 times, even twice the energy of 40 % everywhere.
    assert out["laser_energy"] == pytest.approx(860.768 * 1.2, rel=1e-5)
    assert out["laser_energy_even"] == pytest.approx(860.768 * 2.0, rel=1e-5)


def test_unmeasured_stations_are_taken_as_the_mean_of_the_rest():
    inputs = joint()
    light = inputs.transmission.copy()
    light[0] = np.nan
    assert energy.estimate(replace(inputs, transmission=light))["laser_energy"] == pytest.approx(860.768, abs=1e-3)


def test_many_combinations_at_once_are_those_one_by_one():
    random = np.random.default_rng(5)
    one = joint(n=7)
    length, width = random.uniform(1.0, 3.0, 7), random.uniform(1.0, 2.0, 7)
    through = np.where(np.arange(7) == 3, np.nan, random.uniform(0.2, 0.5, 7))
    one = replace(one, length=length, width=width, transmission=through)
    drawn = {key: random.uniform(0.8, 1.2, 4) * value for key, value in one.numbers.items()}
    collapse, light, wide = random.uniform(0.2, 0.5, 4), random.uniform(0.9, 1.1, 4), random.uniform(0.9, 1.1, 4)
    every = energy.estimate(
        replace(one, collapse=collapse, numbers=drawn, transmission_factor=light, width_factor=wide)
    )
    assert "steady_layer" in every
    for i in range(4):
        numbers = {key: values[i] for key, values in drawn.items()}
        single = replace(one, collapse=collapse[i], numbers=numbers, transmission_factor=light[i], width_factor=wide[i])
        for key, value in energy.estimate(single).items():
            assert np.broadcast_to(every[key], 4)[i] == pytest.approx(float(value), rel=1e-12), key


def test_only_what_the_inputs_suffice_for_is_given():
    inputs = joint()
    none = replace(inputs, transmission=np.full(5, np.nan))
    assert "laser_energy" not in energy.estimate(none)
    assert "melt_energy" in energy.estimate(none)
    bare = replace(inputs, numbers={"pressure": 2.0, "layer": 0.15})
    assert set(energy.estimate(bare)) == {"clamp_force"}
    assert set(energy.estimate(inputs)) == set(BOUNDS) - {"first_pass_rise"}


def test_sensitivity():
    table = energy.sensitivity(joint())
    # Exact: time goes with 1/power and 1/transmission, linearly with density.
    assert table["power"]["least_time"] == pytest.approx((1 / 0.9 - 1, 1 / 1.1 - 1))
    assert table["transmission"]["least_time"] == pytest.approx((1 / 0.9 - 1, 1 / 1.1 - 1))
    assert table["density"]["melt_energy"] == pytest.approx((-0.1, 0.1))
    # Collapse: only the 0.6 of the 1.05 mm² move.
    assert table["collapse"]["melt_energy"] == pytest.approx((-0.1 * 0.6 / 1.05, 0.1 * 0.6 / 1.05))
    assert table["rib width"]["clamp_force"] == pytest.approx((-0.1, 0.1))
    assert "least_time" not in table["pressure"]
    # The layer: third root of the pressure.
    assert table["pressure"]["steady_layer"][1] == pytest.approx(1.1 ** (-1 / 3) - 1)
