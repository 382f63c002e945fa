"""Cases of specialists, each named with where it comes from: what the verdict has to say of them."""

import re

import numpy as np
import pytest
from builder import Spec, build, rounded_rectangle
from material_surveys import run, survey
from measuring import measure
from test_material_rules import GEOMETRY_OFF

from seamcheck.catalogue.material_rules import MATERIAL_RULES
from seamcheck.judge.findings import JointResult
from seamcheck.judge.judge import judge
from seamcheck.measure.material import MaterialSettings, add_to, assess
from seamcheck.settings.settings import Settings


def reviewed(table, **section):
    """Findings by rule, and the material section of the document."""
    whole = survey(run(length=200.0, n=401, **section), travel=1.0)
    result = assess(whole, MaterialSettings.from_table({"samples": {"count": 100}, **table}), 0.4)
    joint = JointResult("j1", ("p1",), ("p2",), "base", np.array([0, 0, -1.0]), "touching", (), result.onto(whole))
    return {f.rule: f for f in judge([joint], Settings().changed(GEOMETRY_OFF)).findings}, result.document


def results(document):
    return {entry["key"]: entry["value"] for entry in document["energy"]["results"]}


PBT = {"cover": "PBT-GF30", "base": "PBT-GF30", "plaques": [[2.0, 13.0]]}


def test_13_percent_of_light_is_no_violation():
    # A PBT-GF30 made for laser welding is published with 13 % at 2 mm and 980 nm.
    found, _ = reviewed(PBT)
    assert found["transmission"].severity == "attention"
    assert not {rule for rule in found if found[rule].severity == "must-fix"} & {r.key for r in MATERIAL_RULES}


def test_no_plaque_is_no_pass_without_a_word():
    found, _ = reviewed({"cover": "PBT-GF30", "base": "PBT-GF30"})
    assert found["transmission-unknown"].severity == "attention"
    assert "PBT-GF30" in found["transmission-unknown"].message
    clear, _ = reviewed({"cover": "PMMA", "base": "PMMA"})
    assert clear["transmission-untold"].severity == "note"
    assert "transmission-unknown" not in clear
    named_by_none, _ = reviewed({"base": "PMMA"})
    assert not {"transmission-unknown", "transmission-untold"} & set(named_by_none)


def test_a_thick_clear_cover_that_was_measured_is_not_too_thick():
    # PMMA of 3.4 mm measured at 91.6 %; a pad of it changes the light by a tenth of a percent.
    thickness = np.full(401, 3.4)
    thickness[100:120] = 3.9
    found, _ = reviewed({"cover": "PMMA", "base": "PMMA", "plaques": [[3.4, 91.6]]}, thickness=thickness)
    assert not {"cover-thickness", "cover-uniformity", "energy-uniformity", "transmission"} & set(found)
    # Without materials geometry judges as ever.
    whole = survey(run(length=200.0, n=401, thickness=thickness), travel=1.0)
    joint = JointResult("j1", ("p1",), ("p2",), "base", np.array([0, 0, -1.0]), "touching", (), whole)
    assert {"cover-thickness", "cover-uniformity"} <= {f.rule for f in judge([joint], Settings()).findings}


def test_a_small_pad_on_a_dark_cover_is_uneven_energy():
    # 0.28 mm more of a PBT-GF30 of 13 % at 2 mm: 31 % more energy elsewhere by the exponential curve, 12 % by the
    # diffuse one, about 21 % in the middle; though the thickness is even enough.
    thickness = np.full(401, 2.0)
    thickness[100:120] = 2.28
    found, _ = reviewed(PBT, thickness=thickness)
    assert "cover-uniformity" not in found
    surfaces = (1 - ((1.55 - 1) / (1.55 + 1)) ** 2) ** 2
    k, s = -np.log(0.13 / surfaces) / 2.0, (surfaces / 0.13 - 1.0) / 2.0
    both = np.exp(k * 0.28), (1.0 + 2.28 * s) / (1.0 + 2.0 * s)
    assert both == pytest.approx((1.31, 1.12), abs=0.01)
    assert found["energy-uniformity"].value == pytest.approx(np.sqrt(both[0] * both[1]), rel=1e-3)
    assert found["energy-uniformity"].severity == "attention"


@pytest.mark.parametrize("power", [100, 150])
def test_no_feasible_cycle_of_seconds_for_a_weld_that_hardly_or_never_starts(power):
    # PBT-GF30, 13 %, 200 mm of a rib of 1.2 x 0.9: never at 100 W, minutes at 150 W; energy over power says 8 to 13 s.
    found, document = reviewed({**PBT, "laser": {"power": power, "speed": 2000}}, width=1.2, height=0.9)
    values = results(document)
    assert values["least_time"] < 13.0
    assert "cycle_time" not in values
    if power == 100:
        assert found["weld-start"].severity == "attention"
        assert "no weld starts" in found["weld-start"].message
        assert "start_time" not in values
    else:
        assert values["start_time"] > 150.0
        assert values["least_power"] < 150.0


def test_the_inner_trap_of_a_bend_is_as_full_as_its_length_says_and_no_fuller_at_the_joint():
    # Rib 1.2 wide and 0.9 high, draft 1 degree, trap 1.4 wide at its floor, arcs of 9 mm between lines; PP on PP-GF30.
    # Fill = k (A_d / 2) / (A_t (1 - u_c / R)), u_c the middle of the trap's area: 0.411 straight, 0.482 in the arc. A
    # curvature from turns over short stretches gave 0.555 where line and arc meet.
    found = measure(build(Spec(track=rounded_rectangle(30, 24, 9))).parts)
    settings = MaterialSettings.from_table({"cover": "PP", "base": "PP-GF30", "samples": {"count": 100}})
    seam = add_to(found.survey, settings, "j1", 0.4, "base")[0]
    fill = np.concatenate([path.columns["trap_fill_inner"] for path in seam.paths])
    tan, left = np.tan(np.radians(1.0)), 0.9 - 0.4
    melt = 1.2 * 0.4 + 0.4**2 * tan
    room, at = trapezoid(0.6 + 0.9 * tan, 0.6 + 0.4 * tan, 0.6 + 0.9 * tan + 1.4, left)
    k = settings.base.melt_expansion(230.0).value
    straight = k * melt / 2 / room
    assert fill.min() == pytest.approx(straight, rel=2e-3)
    assert straight == pytest.approx(0.411, abs=5e-4)
    assert fill.max() == pytest.approx(straight / (1 - at / 9.0), rel=2e-3)
    assert fill.max() == pytest.approx(0.482, abs=5e-4)


def trapezoid(low, high, wall, height):
    """Area and middle (across) of a trap between a leaning flank (low and high end) and an upright wall."""
    lows, highs = np.linspace(low, high, 2001), np.full(2001, wall)
    width = highs - lows
    area = np.trapezoid(width, dx=height / 2000)
    return area, np.trapezoid(width * (lows + highs) / 2, dx=height / 2000) / area


def test_light_beside_the_rib_does_not_heat_it():
    # A spot of 2.5 times the rib's width brings 40 % of its light onto the rib: energy and power rise by 2.5.
    laser = {"power": 400, "speed": 2000}
    table = {"cover": "PP", "base": "PP", "plaques": [[1.0, 55.0], [2.0, 36.0]]}
    _, all_of_it = reviewed({**table, "laser": laser})
    _, part_of_it = reviewed({**table, "laser": {**laser, "spot": 3.75}})
    for key in ("laser_energy", "least_power"):
        assert results(part_of_it)[key] == pytest.approx(2.5 * results(all_of_it)[key], rel=1e-5)
    assert results(part_of_it)["first_pass_rise"] == pytest.approx(
        results(all_of_it)["first_pass_rise"] / 2.5, rel=1e-5
    )


def test_the_rise_of_a_pass_takes_one_mixture():
    # PP-GF30 at 36 %: 141 K with density and heat of the compound, where mixed constants gave 119; here with the
    # table's cp 1.68: (0.7 1.68 + 0.3 0.8) J/(g·K), 1.14 g/cm³ by mixture.
    table = {"cover": "PP", "base": "PP-GF30", "plaques": [[1.0, 55.0], [2.0, 36.0]]}
    _, document = reviewed({**table, "laser": {"power": 150, "speed": 2000}})
    density = 1 / (0.7 / 0.905 + 0.3 / 2.55)
    expected = 150 * 0.36 / (2000 * 1.5 * 0.1 * density * 1e-3 * (0.7 * 1.68 + 0.3 * 0.8))
    assert results(document)["first_pass_rise"] == pytest.approx(expected, rel=1e-4)


def test_what_decomposition_is_not_given_is_not_evaluated():
    table = {"cover": "PP", "base": "PP", "plaques": [[2.0, 36.0]], "laser": {"power": 600, "speed": 2000}}
    found, document = reviewed(table)
    assert "decomposition" not in found
    assert any("not evaluated" in line for line in document["heat"]["not_evaluated"])
    found, _ = reviewed({**table, "process": {"decomposition": 300}})
    assert found["decomposition"].severity == "attention"


def test_energy_in_step_follows_the_light_that_arrives():
    # Until a place melts its rise is in proportion to its power (heat conduction is linear): where ribs are alike the
    # energy goes with 1 / transmission. The slowest place takes what the laser brings evenly: power times weld time.
    thickness = np.full(401, 2.0)
    thickness[100:120] = 2.28
    whole = survey(run(length=200.0, n=401, thickness=thickness), travel=1.0)
    table = {"cover": "PP", "base": "PP", "plaques": [[1.0, 55.0], [2.0, 36.0]], "laser": {"power": 400, "speed": 2000}}
    found = assess(whole, MaterialSettings.from_table({"samples": {"count": 100}, **table}), 0.4)
    own = {key: column.values for key, column in found.columns["c1"].items()}
    dose = own["energy_in_step"] * own["transmission"]
    np.testing.assert_allclose(dose, dose[0], rtol=2e-3)
    even = 400.0 * results(found.document)["weld_time"] / 200.0
    assert own["energy_in_step"].max() == pytest.approx(even, rel=2e-3)
    assert own["energy_in_step"][110] == own["energy_in_step"].max()
    single = {**table, "laser": {"power": 40, "speed": 50, "spot": 1.5, "passes": 1}}
    found = assess(whole, MaterialSettings.from_table({"samples": {"count": 100}, **single}), 0.4)
    own = {key: column.values for key, column in found.columns["c1"].items()}
    dose = own["energy_in_step"] * own["transmission"]
    np.testing.assert_allclose(dose, dose[0], rtol=1e-6)
    assert own["energy_in_step"].max() == pytest.approx(40.0 / 50.0)


@pytest.mark.parametrize(
    ("own", "trap", "severity"),
    [
        ({}, 0.4, "attention"),  # melt 0.6 mm², room 0.64: full only by an expansion of 1.17, which is from memory
        ({}, 0.36, "must-fix"),  # room 0.576: the melt does not fit, expanded or not
        ({"PA6": {"expansion": 1.17}}, 0.4, "must-fix"),  # given
    ],
    ids=["from memory", "by geometry", "given"],
)
def test_no_expansion_from_memory_makes_a_must_fix(own, trap, severity):
    found, _ = reviewed({"cover": "PA6", "base": "PA6", "polymer": own}, trap=trap)
    assert found["trap-fill"].value == pytest.approx(1.17 * 0.6 / (1.6 * trap), rel=1e-3)
    assert found["trap-fill"].severity == severity


@pytest.mark.parametrize(("own", "severity"), [({}, "attention"), ({"PA6": {"expansion": 1.17}}, "must-fix")])
def test_a_collapse_window_that_only_an_expansion_from_memory_closes_asks_for_attention(own, severity):
    # Rib 1.5 wide, traps 0.45 wide and 1.2 deep on both sides: they hold 1.5 k c = 0.9 (1.2 - c), that is 0.406 mm with
    # k = 1.17 and 0.45 mm without; the gap of 0.32 mm and 0.1 mm of collapse need 0.42 mm.
    gap = np.where(np.arange(401) < 20, 0.32, 0.0)
    found, _ = reviewed({"cover": "PA6", "base": "PA6", "polymer": own}, trap=0.45, gap=gap)
    window = found["collapse-window"]
    assert window.value == pytest.approx(0.9 * 1.2 / (1.5 * 1.17 + 0.9) - 0.42, abs=2e-3)
    assert window.severity == severity
    assert "0.013 mm more than the largest that it allows" in window.message


def test_a_collapse_at_either_end_of_its_window_holds_the_limit():
    # Travel 0.6 less 0.2 leaves 0.4, gap 0.3 and 0.1 of collapse need 0.4: as planned, no more and no less.
    gap = np.where(np.arange(401) < 20, 0.3, 0.0)
    whole = survey(run(length=200.0, n=401, gap=gap), travel=0.6)
    result = assess(whole, MaterialSettings.from_table({"cover": "PP", "base": "PP"}), 0.4)
    assert result.document["window"]["place"] == "inside"
    joint = JointResult("j1", ("p1",), ("p2",), "base", np.array([0, 0, -1.0]), "touching", (), result.onto(whole))
    found = {f.rule for f in judge([joint], Settings()).findings}
    assert not {"collapse-window", "collapse-high", "collapse-low", "sink-travel"} & found


@pytest.mark.parametrize(
    ("power", "state"),
    [(26, "never"), (28.5, "too long"), (32, "too long"), (60, "finished")],  # 27.9 W at least, by the heat model
)
def test_a_weld_that_is_not_finished_in_time_is_no_pass(power, state):
    pp = {"cover": "PP", "base": "PP", "plaques": [[2.0, 36.0]], "laser": {"power": power, "speed": 2000}}
    found, document = reviewed(pp, width=1.2, height=0.9)
    assert ("weld-start" in found) == (state != "finished")
    assert ("weld_time" in results(document)) == (state == "finished")
    if state != "finished":
        assert found["weld-start"].severity == "attention"
        assert found["weld-start"].at is not None
        assert ("longest_heating" in found["weld-start"].message) == (state == "too long")


def test_thinned_as_told_a_scattering_cover_of_one_plaque_transmits_the_limit():
    # 13 % at 2 mm: by the curve between the exponential and the diffuse one 28 % pass at 1.00 mm.
    found, document = reviewed(PBT)
    by = float(re.search(r"by ([\d.]+) mm", found["transmission"].remedy)[1])
    assert by == pytest.approx(2.0 - document["transmission"]["limit_path_28_mm"], abs=0.011)
    assert reviewed(PBT, thickness=np.full(401, 2.0 - by))[1]["transmission"]["contours"][0]["least_percent"] >= 27.9


def test_a_value_just_beyond_its_limit_does_not_read_like_it():
    # Room for both traps 1.6 t, melt 0.6 k: t = 0.375 k / 1.003 fills them 1.003 times.
    expansion = 1.17
    found, _ = reviewed({"cover": "PA6", "base": "PA6"}, trap=0.375 * expansion / 1.003)
    assert "1.003 times; it should be at most 1.00 times" in found["trap-fill"].message
