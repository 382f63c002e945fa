"""One joint as a whole: columns, places, collapse window, ranges, and what stays out when inputs lack."""

import json

import msgspec
import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from material_surveys import ring, run, survey
from msgspec.structs import replace

from seamcheck.catalogue.material_quantities import MATERIAL_QUANTITIES, MATERIAL_REASONS
from seamcheck.catalogue.quantities import REASONS
from seamcheck.document.material import Material
from seamcheck.measure.material import MaterialSettings, add_to, assess, balance
from seamcheck.measure.material.balance import sections
from seamcheck.measure.material.melt import closed_form
from seamcheck.measure.material.track import track_of
from seamcheck.report.material_text import material_lines
from seamcheck.settings.material import completed

PP = {
    "cover": "PP", "base": "PP", "plaques": [[1.0, 55.0], [2.0, 36.0]],
    "light": {"wavelength": 980}, "laser": {"power": 150, "speed": 2000},
    "process": {"pressure": 2, "melt_temperature": 200}, "samples": {"count": 200},
}  # fmt: skip


def material(tolerance=None, **changes):
    return completed(MaterialSettings.from_table({**PP, **changes}), tolerance or {}, None)


def result_of(document, key):
    return next(entry for entry in document["energy"]["results"] if entry["key"] == key)


def test_transmission_follows_the_cover():
    thickness = np.full(801, 2.0)
    thickness[200:301] = 3.0  # 28 % is passed up to 2.593 mm
    thickness[500:511] = 4.2  # 15 % up to 4.066 mm
    found = assess(survey(run(thickness=thickness)), material(), 0.4)
    values = found.columns["c1"]["transmission"].values
    # Worked example of the two plaques: T0 = 0.840278, K = 0.423814.
    np.testing.assert_allclose(values, 100 * 0.840278 * np.exp(-0.423814 * thickness), rtol=2e-6)
    places = found.document["transmission"]["places"]
    assert [(p["what"], p["from_s_mm"], p["to_s_mm"]) for p in places] == [
        ("below 28 %", 100.0, 150.0),
        ("below 28 %", 250.0, 255.0),
    ]
    assert places[0]["thin_by_mm"] == pytest.approx(3.0 - 2.592983, abs=1e-5)
    assert places[1]["thin_by_mm"] == pytest.approx(4.2 - 2.592983, abs=1e-5)
    contour = found.document["transmission"]["contours"][0]
    assert contour["s_mm"] == 250.0
    assert contour["beyond_plaques_mm"] == pytest.approx(5.5)  # 11 stations of 0.5 mm over 3 mm
    assert contour["carried_on_mm"] == pytest.approx(56.0)  # and 101 of 3 mm, over the thickest plaque of 2 mm
    assert contour["farthest_of_plaque"] == pytest.approx(2.1)
    said = " ".join(material_lines(found.document))
    assert "over 56.0 mm of the seam the curve is extrapolated beyond the thickest plaque, up to 2.10 times" in said
    assert found.values["path_over_plaques"]["value"] == pytest.approx(2.1)


def test_a_stretch_over_the_start_of_a_closed_path_is_one():
    thickness = np.full(720, 2.0)
    thickness[:10] = thickness[-5:] = 3.0
    found = assess(survey(ring(thickness=thickness)), material(), 0.4)
    (place,) = found.document["transmission"]["places"]
    assert place["from_s_mm"] > place["to_s_mm"]
    assert place["length_mm"] == pytest.approx(15 * 2 * np.pi * 40 / 720, rel=1e-5)


def test_a_scanner_lengthens_the_path():
    # n = 1.58, angle in air 18.364963°: 2.040991 mm through 2 mm; the strip's largest thickness is 2.2 mm.
    path = run()
    path.columns["cover_thickness_max"][:] = 2.2
    path.columns["path_in_cover"] = np.full(801, 2.040991)
    found = assess(survey(path), material(), 0.4)
    np.testing.assert_allclose(found.columns["c1"]["light_path"].values, 2.2 * 2.040991 / 2.0, rtol=1e-12)
    expected = 100 * 0.840278 * np.exp(-0.423814 * 2.2 * 2.040991 / 2.0)
    assert found.columns["c1"]["transmission"].values[0] == pytest.approx(expected)


def test_what_was_not_measured_stays_so_with_its_reason():
    path = run()
    thickness = path.columns["cover_thickness_max"].copy()
    thickness[:3] = np.nan
    why = np.full(801, "", dtype="U24")
    why[:3] = "hole"
    path = replace(
        path,
        columns={**path.columns, "cover_thickness_max": thickness},
        reasons={**path.reasons, "cover_thickness_max": why},
    )
    found = assess(survey(path), material(), 0.4)
    assert np.isnan(found.columns["c1"]["transmission"].values[:3]).all()
    assert list(found.columns["c1"]["transmission"].reasons[:4]) == ["hole", "hole", "hole", ""]
    assert set(found.columns["c1"]) <= set(MATERIAL_QUANTITIES)
    for key, column in found.columns["c1"].items():
        assert ((column.reasons == "") == np.isfinite(column.values)).all(), key
        assert set(column.reasons) - {""} <= {*REASONS, *MATERIAL_REASONS}


def test_straight_rib_and_traps():
    # Floor 1.2 mm below, trap 1.0 mm wide, c = 0.4, k = 1.204 (PP at 200 °C): 0.4515 on each side.
    found = assess(survey(run()), material(), 0.4)
    for key in ("trap_fill", "trap_fill_inner", "trap_fill_outer"):
        np.testing.assert_allclose(found.columns["c1"][key].values, 0.4515, atol=2e-4)
    melt = found.document["melt"]["contours"][0]
    assert melt["melt_volume_inner_mm3"] == pytest.approx(120.0)
    assert melt["trap_volume_outer_mm3"] == pytest.approx(320.0)
    # k w c = 2 (h - c): c = 2.4 / (1.5 k + 2).
    k = found.document["melt"]["expansion"]["value"]
    np.testing.assert_allclose(found.columns["c1"]["trap_holds_up_to"].values, 2.4 / (1.5 * k + 2), atol=1e-5)


def test_the_inner_trap_of_a_bend_is_the_scarce_one():
    # Radius 5, trap middle 1.25 mm beside the path: inner trap shorter by 1.25/5, outer as much longer.
    found = assess(survey(ring(radius=5.0)), material(), 0.4)
    own = {key: column.values for key, column in found.columns["c1"].items()}
    k = found.document["melt"]["expansion"]["value"]
    np.testing.assert_allclose(own["trap_fill_inner"], k * 0.3 / (0.8 * 0.75), rtol=1e-3)
    np.testing.assert_allclose(own["trap_fill_outer"], k * 0.3 / (0.8 * 1.25), rtol=1e-3)
    melt = found.document["melt"]["contours"][0]
    assert melt["trap_volume_inner_mm3"] == pytest.approx(0.8 * 2 * np.pi * 3.75, rel=1e-5)
    assert melt["trap_volume_outer_mm3"] == pytest.approx(0.8 * 2 * np.pi * 6.25, rel=1e-5)


def test_a_low_place_collapses_less():
    gap = np.zeros(801)
    gap[400:420] = 0.25
    found = assess(survey(run(gap=gap)), material(), 0.4)
    assert found.columns["c1"]["local_collapse"].values[410] == pytest.approx(0.15)
    # Melt of 1.5 x 0.15 against traps of 1.0 x (1.2 - 0.15) each side.
    k = found.document["melt"]["expansion"]["value"]
    assert found.columns["c1"]["trap_fill"].values[410] == pytest.approx(k * 1.5 * 0.15 / 2.1, rel=1e-4)


def test_the_rows_of_collapses_are_fine_enough(monkeypatch):
    """Straight between 31 collapses: as 481 of them within 0.00001 mm, with drafted flanks as well."""
    seam = survey(run(draft=3.0, trap=0.9, height=1.3, width=np.linspace(1.2, 1.6, 801)))
    coarse = assess(seam, material(), 0.4).columns["c1"]["trap_holds_up_to"].values
    monkeypatch.setattr(balance, "ROWS", 481)
    np.testing.assert_allclose(
        coarse, assess(seam, material(), 0.4).columns["c1"]["trap_holds_up_to"].values, atol=1e-5
    )


def test_collapse_window_by_hand():
    gap = np.zeros(801)
    gap[400:420] = 0.12
    found = assess(survey(run(gap=gap), travel=0.7), material(tolerance={"flatness_cover": 0.05}), 0.4)
    window = found.document["window"]
    assert window["lowest"]["value_mm"] == pytest.approx(0.12 + 0.05 + 0.1)
    assert window["lowest"]["s_mm"] == 200.0
    assert window["highest"]["value_mm"] == pytest.approx(0.5)  # travel 0.7 less 0.2
    assert [bound["value_mm"] for bound in window["uppers"]] == pytest.approx([0.5, 0.6307, 1.0], abs=1e-3)
    assert window["place"] == "inside"
    assert window["highest"]["at"] == [0.0, 0.0, 0.0]  # where the survey says that the travel ends
    assert found.values["collapse_window"]["value"] == pytest.approx(0.23)
    assert found.values["collapse_above_lowest"]["value"] == pytest.approx(0.13)
    assert found.values["collapse_below_highest"]["value"] == pytest.approx(0.1)
    picture = window["picture"]
    lengths = {len(values) for key, values in picture.items() if isinstance(values, list)}
    assert lengths == {len(picture["collapse_mm"])}
    at = picture["collapse_mm"].index(0.4)
    assert picture["trap_fill"][at] == pytest.approx(0.4515, abs=2e-4)
    assert picture["closed_share"][at] == 1.0
    assert picture["travel_left_mm"][at] == pytest.approx(0.3)


@pytest.mark.parametrize(("collapse", "place"), [(0.1, "too small"), (0.3, "inside"), (0.55, "too large")])
def test_place_of_the_planned_collapse(collapse, place):
    gap = np.where(np.arange(801) == 5, 0.1, 0.0)
    found = assess(survey(run(gap=gap, collapse=collapse), travel=0.7), material(), collapse)
    assert found.document["window"]["place"] == place


def test_a_collapse_at_the_end_of_the_window_lies_in_it():
    """Travel 0.6 less a reserve of 0.2 leaves just the planned 0.4: 0.6 - 0.2 is a little less in binary numbers."""
    found = assess(survey(run(), travel=0.6), material(), 0.4)
    assert 0.6 - 0.2 < 0.4
    assert found.document["window"]["highest"]["value_mm"] == 0.4
    assert found.document["window"]["place"] == "inside"
    assert found.document["uncertainty"]["shares"]["travel left after the collapse"] == 1.0


def test_the_rise_in_one_pass_is_no_limit_of_a_single_pass():
    laser = {"power": 40, "speed": 40, "spot": 1.5}
    assert "first_pass_rise" in assess(survey(run()), material(laser=laser), 0.4).values
    single = assess(survey(run()), material(laser={**laser, "passes": 1}), 0.4)
    assert "first_pass_rise" not in single.values
    assert result_of(single.document, "first_pass_rise")["value"] > 300.0
    assert "power_reserve" in single.values


def test_an_empty_window():
    gap = np.zeros(801)
    gap[100:140] = 0.45
    found = assess(survey(run(gap=gap), travel=0.6), material(), 0.4)
    assert found.document["window"]["place"] == "empty window"
    assert found.values["collapse_window"]["value"] == pytest.approx(0.4 - 0.55)
    assert found.document["uncertainty"]["shares"]["a collapse exists that suits"] == 0.0


def test_a_fitted_section_is_named_where_the_sections_themselves_are_not_at_hand():
    made = survey(run())
    assert any("simple sections fitted" in note for note in assess(made, material(), 0.4).document["notes"])
    one = np.ones(801)
    own = replace(made.paths[0], areas_at=lambda c: (2 * c * one, 0.5 * one, 0.5 * one))
    found = assess(replace(made, paths=(own,)), material(), 0.4)
    assert not any("simple sections fitted" in note for note in found.document["notes"])
    k = found.document["melt"]["expansion"]["value"]
    np.testing.assert_allclose(found.columns["c1"]["trap_holds_up_to"].values, 0.5 / k, rtol=1e-5)


def test_a_rib_with_a_trap_on_one_side_fills_that_one():
    made = survey(run())
    made.paths[0].columns["trap_area_inner"][:] = np.nan
    found = assess(made, material(), 0.4)
    k = found.document["melt"]["expansion"]["value"]
    columns = made.paths[0].columns
    expected = k * columns["melt_area"] / columns["trap_area_outer"]
    np.testing.assert_allclose(found.columns["c1"]["trap_fill"].values, expected, rtol=1e-3)
    assert np.isnan(found.columns["c1"]["trap_fill_inner"].values).all()
    assert any(bound["cause"] == "flash traps full" for bound in found.document["window"]["uppers"])


def test_energy_of_the_first_worked_example():
    # As worked by hand: density 0.905, cp 2.2, rise 200, x_c 0.5, 36 % instead of 40 % transmission.
    found = assess(survey(run()), material(process={"pressure": 2, "melt_temperature": 220}), 0.4)
    assert result_of(found.document, "energy_per_length")["value"] == pytest.approx(0.516461, abs=1e-6)
    assert result_of(found.document, "laser_energy")["value"] == pytest.approx(206.584 / 0.36 / 0.6, rel=1e-5)
    assert result_of(found.document, "clamp_force")["value"] == pytest.approx(1200.0)
    np.testing.assert_allclose(found.columns["c1"]["energy_need"].values, 0.516461, atol=1e-6)
    np.testing.assert_allclose(found.columns["c1"]["energy_surplus"].values, 1.0)
    least = result_of(found.document, "least_time")
    assert {"power", "use", "density", "transmission", "collapse"} <= set(least["inputs"])
    assert "pressure" not in least["inputs"]
    assert "assumption" in least["standing"]
    assert result_of(found.document, "weld_time")["value"] > least["value"]
    assert "use" in found.document["energy"]["inputs"]


def test_energy_surplus_shows_where_the_cover_is_thin():
    thickness = np.where(np.arange(801) < 400, 1.0, 2.0)
    found = assess(survey(run(thickness=thickness)), material(), 0.4)
    surplus = found.columns["c1"]["energy_surplus"].values
    np.testing.assert_allclose(surplus[400:], 1.0)
    np.testing.assert_allclose(surplus[:400], 0.55 / 0.36, rtol=1e-6)


def test_corners_slow_the_scanner_down():
    # 2 m/s on a radius of 2 mm is 2000 m/s²; with 200 m/s² at most the speed falls by √10.
    laser = {"power": 150, "speed": 2000, "acceleration": 2e5}
    found = assess(survey(ring(radius=2.0, width=0.8, trap=0.5)), material(laser=laser), 0.4)
    np.testing.assert_allclose(found.columns["c1"]["corner_dose"].values, np.sqrt(10.0))
    corners = found.document["energy"]["corners"]
    assert corners["acceleration_mm_s2"] == pytest.approx(2e6)
    assert corners["slowed_to_mm_s"] == pytest.approx(2000 / np.sqrt(10), rel=1e-5)
    assert "takes this corner at 632 mm/s" in " ".join(material_lines(found.document))
    straight = assess(survey(run(radius=np.nan)), material(laser=laser), 0.4)
    np.testing.assert_array_equal(straight.columns["c1"]["corner_dose"].values, 1.0)


def test_rib_on_the_cover_takes_the_covers_material():
    two = material(cover="PC", base="PC+ABS")
    base = assess(survey(run()), two, 0.4)
    cover = assess(survey(run()), two, 0.4, rib_on="cover")
    density = [found.document["energy"]["inputs"]["density"]["value"] for found in (base, cover)]
    assert density == [1.13, 1.2]


@pytest.mark.parametrize(
    "keys", [(), ("cover",), ("plaques",), ("cover", "base"), ("plaques", "laser"), ("base", "process")]
)
def test_everything_is_optional(keys):
    found = assess(survey(run()), MaterialSettings.from_table({key: PP[key] for key in keys}), 0.4)
    document = found.document
    json.dumps(document, allow_nan=False)
    assert ("transmission" in document) == ("plaques" in keys)
    assert ("transmission" in found.columns["c1"]) == ("plaques" in keys)
    assert ("pair" in document) == ({"cover", "base"} <= set(keys))
    assert document["window"]["width_mm"] > 0
    assert any("Class 4" in caution for caution in document["cautions"])


def test_a_survey_without_numbers_is_taken():
    path = run()
    empty = replace(path, columns={key: np.full(801, np.nan) for key in path.columns}, reasons={})
    found = assess(survey(empty, travel=None), material(), 0.4)
    json.dumps(found.document, allow_nan=False)
    assert np.isnan(found.columns["c1"]["transmission"].values).all()
    assert found.values["collapse_window"]["value"] is None
    assert len(found.document["window"]["unknown"]) >= 2


def test_several_paths_count_together():
    one, two = run(length=100.0, n=201), replace(run(length=300.0, n=601, thickness=3.0), id="c2")
    found = assess(survey(one, two), material(), 0.4)
    assert result_of(found.document, "clamp_force")["value"] == pytest.approx(1200.0)
    assert [c["contour"] for c in found.document["transmission"]["contours"]] == ["c1", "c2"]
    assert found.document["transmission"]["places"][0]["contour"] == "c2"


def test_carbon_in_the_cover_is_named():
    found = assess(survey(run()), material(cover="PA6-CF10", base="PA6"), 0.4)
    assert any("carbon" in note for note in found.document["notes"])


def test_merged_survey_holds_both():
    whole = survey(run())
    merged = assess(whole, material(), 0.4).onto(whole)
    assert {"rib_width", "transmission"} <= set(merged.paths[0].columns)
    assert {"free_travel", "collapse_window"} <= set(merged.interface)
    assert "transmission" not in whole.paths[0].columns


def test_ranges_hold_the_nominal_and_are_repeatable():
    loose = material(
        tolerance={
            "cover_thickness": 0.1,
            "rib_width": 0.05,
            "collapse": 0.05,
            "trap_area": 10,
            "gap": 0.03,
            "free_travel": 0.05,
            "flatness_cover": 0.05,
        },
        samples={"count": 600},
    )
    one, two = (assess(survey(run()), loose, 0.4).document for _ in range(2))
    assert json.dumps(one) == json.dumps(two)
    for entry in one["energy"]["results"]:
        if "low" in entry:
            assert entry["low"] <= entry["value"] * (1 + 1e-9), entry["key"]
            assert entry["value"] <= entry["high"] * (1 + 1e-9), entry["key"]
    ranges = one["uncertainty"]["ranges"]
    assert ranges["transmission_least_percent"]["p05"] < 36.0 < ranges["transmission_least_percent"]["p95"]
    assert ranges["collapse_highest_mm"]["p05"] <= one["window"]["highest"]["value_mm"]
    assert {"tolerance.thickness", "plaque scatter", "melt expansion"} <= set(one["uncertainty"]["varied"])


def test_share_of_combinations_is_that_of_the_rectangle():
    # Only the collapse varies, evenly over 0.4 ± 0.1; the travel of 0.65 leaves room up to 0.45: 75 %.
    found = assess(survey(run(), travel=0.65), material(tolerance={"collapse": 0.1}, samples={"count": 20000}), 0.4)
    share = found.document["uncertainty"]["shares"]["travel left after the collapse"]
    assert share == pytest.approx(0.75, abs=0.012)  # 4 standard deviations of 20000 draws


def test_range_of_the_transmission_is_that_of_the_plaque_scatter():
    # At a plaque's thickness of two, ln T is normal with the scatter itself; both forms agree there.
    found = assess(survey(run()), material(light={"plaque_scatter": 3}, samples={"count": 20000}), 0.4)
    spread = found.document["uncertainty"]["ranges"]["transmission_least_percent"]
    assert spread["p95"] / spread["p50"] == pytest.approx(np.exp(1.6449 * 0.03), rel=2e-3)
    contour = found.document["transmission"]["contours"][0]
    assert contour["low_percent"] == pytest.approx(spread["p05"], rel=2e-3)


@settings(max_examples=12, deadline=None)
@given(
    st.floats(0.8, 2.0),
    st.floats(0.9, 2.0),
    st.floats(0.0, 3.0),
    st.floats(0.5, 2.0),
    st.floats(0.1, 0.5),
    st.floats(1.0, 6.0),
)
def test_invariants(width, height, draft, trap, collapse, thickness):
    path = run(n=21, width=width, height=height, draft=draft, trap=trap, collapse=collapse, thickness=thickness)
    found = assess(survey(path), material(), collapse)
    json.dumps(found.document, allow_nan=False)
    own = {key: column.values for key, column in found.columns["c1"].items()}
    assert (own["trap_fill"] > 0).all()
    assert (own["energy_need"] > 0).all()
    # A thicker cover passes less; the planned collapse fits the traps when it lies below their end.
    thicker = assess(survey(run(n=21, thickness=thickness + 0.5)), material(), 0.4)
    assert (thicker.columns["c1"]["transmission"].values < own["transmission"]).all()
    upper = own["trap_holds_up_to"][0]
    if abs(collapse - upper) > 1e-6:
        assert (own["trap_fill"][0] <= 1.0) == (collapse < upper)


@pytest.mark.parametrize("keys", [(), ("cover", "base"), ("plaques",), tuple(PP)])
def test_the_section_is_what_its_record_declares_and_reads_as_text(keys):
    gap = np.where(np.arange(801) == 5, 0.1, 0.0)
    path = run(gap=gap, thickness=np.linspace(1.0, 4.5, 801), radius=5.0)
    settings_ = MaterialSettings.from_table({key: PP[key] for key in keys})
    section = json.loads(json.dumps(assess(survey(path), settings_, 0.4).document, allow_nan=False))
    assert json.loads(msgspec.json.encode(msgspec.convert(section, Material))) == section
    text = "\n".join(material_lines(section))
    assert "Collapse window" in text
    assert "no approval" in text
    assert ("Transmission c1" in text) == ("plaques" in keys)
    assert "nan" not in text.lower().replace("nanometre", "")
    if keys == tuple(PP):
        assert "Trial weld required" in text
        assert "make it" in text


def test_a_flat_overlap_has_light_and_pair_but_no_melt():
    found = assess(survey(run()), material(), 0.4, rib_on="none")
    msgspec.convert(found.document, Material)
    assert {"transmission", "pair"} <= set(found.document)
    assert not {"melt", "window", "energy", "uncertainty"} & set(found.document)
    assert set(found.columns["c1"]) == {"light_path", "transmission", "extinction", "energy_surplus"}
    assert "no approval" in "\n".join(material_lines(found.document))


def test_without_a_table_nothing_changes():
    whole = survey(run())
    same, extra = add_to(whole, None, "j1", 0.4, "base")
    assert same is whole
    assert extra == {}
    other = MaterialSettings.from_table({**PP, "joints": {"j2": {"plaques": []}}})
    more, extra = add_to(whole, other, "j2", 0.4, "base")
    assert "transmission" not in more.paths[0].columns
    assert "trap_fill" in more.paths[0].columns
    assert set(extra) == {"material"}


def test_a_rounded_rib_top_has_melt_and_energy():
    # A half round of radius 0.6 over straight flanks 1.2 mm apart; cut at 0.4: a circular segment,
    # r² acos((r - c)/r) - (r - c) √(2 r c - c²) (Bronshtein, circular segment).
    path = run(width=1.2)
    r, c = 0.6, 0.4
    segment = r**2 * np.arccos((r - c) / r) - (r - c) * np.sqrt(2 * r * c - c**2)
    for key in ("rib_width", "rib_width_top"):
        path.columns[key][:] = np.nan
        path.reasons[key][:] = "rounded-top"
    path.columns["melt_area"][:] = segment
    areas = closed_form(*sections(track_of(path), 0.0, c))
    assert areas(c)[0][0] == pytest.approx(segment, rel=1e-12)
    deeper = r**2 * np.arccos((r - 0.5) / r) - (r - 0.5) * np.sqrt(2 * r * 0.5 - 0.25)
    assert areas(0.5)[0][0] == pytest.approx(deeper, rel=1e-9)
    found = assess(survey(path), material(), c)
    assert np.isfinite(found.columns["c1"]["trap_fill"].values).all()
    assert np.isfinite(found.columns["c1"]["energy_need"].values).all()
