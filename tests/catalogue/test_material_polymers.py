"""The polymer table against its sources in their own units, compounds, and the pair check."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy import constants

from seamcheck.catalogue.known import STANDINGS
from seamcheck.catalogue.pairs import (
    RISKY,
    VERDICTS,
    check_pair,
    hansen_distance,
    interaction,
    interface_width,
    own_pairs,
)
from seamcheck.catalogue.polymers import polymer_table
from seamcheck.errors import UsageError

TABLE = polymer_table()


def test_every_row_is_complete_and_in_order():
    assert len(TABLE.polymers) >= 27
    for symbol, polymer in TABLE.polymers.items():
        assert polymer.symbol == symbol
        assert polymer.window[0] < polymer.window[1]
        assert {"density", "heat", "solubility"} <= set(polymer.cells)
        for known in polymer.cells.values():
            assert known.standing in STANDINGS
            assert (known.source != "") == (known.standing == "source")
        for cell in ("index", "heat_to_melt", "fusion", "crystallinity", "conductivity", "expansion"):
            assert polymer.get(cell).value >= 0.0
        softening = polymer.cells.get("melting", polymer.cells.get("glass"))
        assert softening.low <= polymer.window[1]


@pytest.mark.parametrize(
    ("symbol", "calories"), [("PE-HD", 7.9), ("PS", 9.1), ("PVC-U", 9.7), ("PET", 10.7), ("PA66", 13.6)]
)
def test_solubility_parameters_against_the_source_in_its_own_unit(symbol, calories):
    # Encyclopedia of Polymer Technology, in (cal/cm³)^½; 1 cal/cm³ = 4.184 MPa. The table has one decimal.
    assert TABLE.find(symbol).cells["solubility"].value == pytest.approx(
        calories * np.sqrt(constants.calorie), abs=0.05
    )


@pytest.mark.parametrize(
    ("symbol", "kilojoule", "gram", "expected"),
    [("PE-HD", 4.11, 14.03, 293), ("PP", 8.70, 42.08, 207), ("POM", 9.79, 30.03, 326), ("PA6", 26.0, 113.2, 230)],
)
def test_heats_of_fusion_against_the_source_per_mole(symbol, kilojoule, gram, expected):
    # Thermal Analysis, Academic Press 1990: kJ per mole of repeat unit.
    assert kilojoule / gram * 1000.0 == pytest.approx(expected, abs=0.6)
    assert TABLE.find(symbol).cells["fusion"].value == expected


def test_heats_of_fusion_of_the_polyesters():
    # NIST: PBT 7.6004 kcal/mol, 220.2213 g/mol; fitted lines of PET and PBT against specific volume.
    fusion = TABLE.find("PBT").cells["fusion"]
    assert 7.6004 * constants.calorie / 220.2213 * 1000 == pytest.approx(144.40, abs=0.01)
    assert pytest.approx(143.2, abs=0.1) == 17.5 / 220.2213 * 1000 / 0.555
    assert fusion.low <= 1296 - 1628 * 0.71 <= fusion.high
    assert fusion.high == pytest.approx(144.40, abs=0.01)
    assert TABLE.find("PET").cells["fusion"].high == pytest.approx(1411 - 1886 * 0.660, abs=0.1)


@pytest.mark.parametrize(
    ("symbol", "celsius", "volume", "density", "k"),
    [
        ("PP", 200, 1.33070, 0.905, 1.204),
        ("PE-HD", 180, 1.30641, 0.950, 1.241),
        ("PC", 280, 0.93782, 1.20, 1.125),
        ("PS", 195, 1.02801, 1.05, 1.079),
        ("PMMA", 155, 0.88809, 1.18, 1.048),
    ],
)
def test_melt_expansion_against_the_handbook(symbol, celsius, volume, density, k):
    # Handbook of Polymer Solution Thermodynamics, Tait constants: melt volume in cm³/g at zero pressure.
    a0, a1, a2, start, end = TABLE.find(symbol).melt_volume
    assert start <= celsius <= end
    assert a0 + a1 * celsius + a2 * celsius**2 == pytest.approx(volume, abs=1e-5)
    known = TABLE.find(symbol).melt_expansion(celsius)
    assert known.value == pytest.approx(volume * density, abs=1e-4)
    assert known.value == pytest.approx(k, abs=6e-4)
    assert known.standing == "source"


def test_melt_expansion_beyond_the_fitted_range_is_an_assumption():
    assert TABLE.find("PMMA").melt_expansion(225).standing == "assumption"
    assert 1.0 < TABLE.find("PA6").melt_expansion(260).value <= 1.2


@pytest.mark.parametrize(
    ("name", "polymer", "glass", "mineral"),
    [
        ("PP", "PP", 0, 0),
        ("PA6-GF30", "PA6", 0.3, 0),
        ("pa66 gf35", "PA66", 0.35, 0),
        ("PBT-(GF20+MD10)", "PBT", 0.2, 0.1),
        ("PE-HD", "PE-HD", 0, 0),
        ("PC+ABS", "PC+ABS", 0, 0),
        ("PP-TD20", "PP", 0, 0.2),
        ("PE-HD-GB10", "PE-HD", 0.1, 0),
    ],
)
def test_compounds_are_read_by_iso_1043(name, polymer, glass, mineral):
    compound = TABLE.compound(name)
    assert (compound.polymer.symbol, compound.glass, compound.mineral) == (
        polymer,
        pytest.approx(glass),
        pytest.approx(mineral),
    )


def test_fillers_change_density_heat_and_expansion():
    # PA6-GF30: about 1.36 g/cm³ (typical data sheet value, from memory).
    filled, plain = TABLE.compound("PA6-GF30"), TABLE.compound("PA6")
    assert filled.density().value == pytest.approx(1.36, abs=0.02)
    assert filled.fusion().value == pytest.approx(0.7 * plain.fusion().value)
    assert filled.heat_to_melt().value == pytest.approx(0.7 * plain.heat_to_melt().value + 0.3 * 0.8)
    assert 1.0 < filled.melt_expansion(260).value < plain.melt_expansion(260).value


@pytest.mark.parametrize(("symbol", "hint"), [("HDPE", "PE-HD"), ("PMA", "PMMA"), ("PES", "PESU"), ("PA6.6", "PA66")])
def test_an_unknown_symbol_names_the_nearest(symbol, hint):
    with pytest.raises(UsageError, match=f"Nearest: .*{hint}"):
        TABLE.find(symbol)


@pytest.mark.parametrize("name", ["PP-GF80", "PP-XF10", "", 5])
def test_impossible_compounds_get_a_sentence(name):
    with pytest.raises(UsageError):
        TABLE.compound(name)


def test_own_polymers_are_added_and_checked():
    table = TABLE.with_own(
        {
            "PPmod": {"like": "PP", "density": 0.95, "hansen": [18.0, 1.0, 2.0]},
            "XP": {"kind": "amorphous", "window": [200, 250], "density": [1.1, 1.0, 1.2], "heat": 1.4},
        }
    )
    assert table.find("ppmod").cells["density"].standing == "given"
    assert table.find("XP").cells["density"].high == 1.2
    for row, word in (
        ({"kind": "amorphous", "window": [250, 200], "density": 1.1, "heat": 1.4}, "window"),
        ({"kind": "amorphous", "window": [200, 250], "density": -1.1, "heat": 1.4}, "density"),
        ({"kind": "amorphous", "window": [200, 250], "heat": 1.4}, "density"),
        ({"kind": "glassy", "window": [200, 250], "density": 1.1, "heat": 1.4}, "kind"),
        ({"kind": "amorphous", "window": [200, 250], "densty": 1.1, "heat": 1.4}, "density"),
        ({"kind": "semi-crystalline", "window": [200, 250], "density": 1.1, "heat": 1.4}, "fusion"),
        ({"like": "PP", "density": [1.0, 1.1, 1.2]}, "low <= value"),
    ):
        with pytest.raises(UsageError, match=word):
            TABLE.with_own({"BAD": row})


def test_estimate_numbers():
    # By hand at 500 K, V = 100 cm³/mol, b = 0.7 nm; χ = 2/N for N = 1000.
    assert interaction(1.0) == pytest.approx(0.02405, abs=5e-6)
    assert interaction(2.0) == pytest.approx(0.0962, abs=5e-5)
    for difference, width in ((0.5, 7.4), (1.0, 3.69), (2.0, 1.8), (3.0, 1.2)):
        assert interface_width(interaction(difference)) == pytest.approx(width, abs=0.05)
    assert interaction(0.288) == pytest.approx(0.002, rel=5e-3)
    assert hansen_distance((18.1, 5.9, 6.9), (18.6, 10.5, 7.5)) == pytest.approx(4.745524, abs=1e-6)
    assert interface_width(0.0) == np.inf
    assert pytest.approx(8.314462618) == constants.R


@pytest.mark.parametrize(
    ("cover", "base", "verdict"),
    [
        ("PP", "PP", "same polymer"),
        ("PMMA", "ABS", "listed as weldable"),
        ("ABS", "PMMA", "listed as weldable"),
        ("PC", "PC+ABS", "listed as weldable"),
        ("PBT", "PC", "some reports"),
        ("PP", "PE-HD", "some reports"),
        ("PP", "PA6", "not weldable"),
        ("POM", "PC", "not weldable"),
        ("PA12", "ABS", "not weldable"),
        ("PEI", "PEEK", "conditional"),
        ("PE-HD", "PE-LD", "estimate: check by trial"),
        ("PSU", "PESU", "estimate: check by trial"),
        ("PA6", "PVDF", "estimate: unlikely"),
        ("PVC-U", "ABS", "some grades"),
        ("PMMA", "PVDF", "conditional"),
        ("PS", "PMMA", "some grades"),
        ("PC", "PPS", "estimate: check by trial"),
        ("SAN", "PBT", "estimate: check by trial"),
        ("PA12", "PBT", "estimate: check by trial"),
        ("PC", "PC+PBT", "common component"),
        ("PBT", "PBT+ASA", "common component"),
        ("PPA", "PA66", "conditional"),
        ("MABS", "PMMA", "listed as weldable"),
        ("PA612", "ABS", "not weldable"),
    ],
)
def test_pair_verdicts(cover, base, verdict):
    # Listed pairs: a welding research institute's public answer page, common practice; see data/pairs.toml.
    check = check_pair(TABLE.find(cover), TABLE.find(base))
    assert check.verdict == verdict
    entry = check.as_dict()
    assert "Trial weld required." in entry["message"]
    assert len(entry["limits"]) == 3
    assert "approved" not in str(entry).lower()


@given(st.sampled_from(sorted(TABLE.polymers)), st.sampled_from(sorted(TABLE.polymers)))
def test_the_pair_check_does_not_care_which_part_is_which(one, other):
    a, b = check_pair(TABLE.find(one), TABLE.find(other)), check_pair(TABLE.find(other), TABLE.find(one))
    assert a.verdict == b.verdict
    assert a.verdict in VERDICTS
    assert a.overlap == b.overlap


def test_no_estimate_passes_without_a_finding():
    symbols = sorted(TABLE.polymers)
    for i, one in enumerate(symbols):
        for other in symbols[i + 1 :]:
            check = check_pair(TABLE.find(one), TABLE.find(other))
            if check.verdict.startswith(("estimate", "some")) or check.verdict == "unknown":
                assert check.verdict in RISKY, (one, other)
            assert check.verdict != "unknown"


def test_own_pairs_win():
    own = own_pairs([{"symbols": ["PP", "PE-HD"], "verdict": "conditional", "why": "Trial of spring."}], TABLE)
    check = check_pair(TABLE.find("PE-HD"), TABLE.find("PP"), own)
    assert (check.verdict, check.standing) == ("conditional", "given in the settings")
    for wrong in (
        [{"symbols": ["PP"], "verdict": "conditional"}],
        [{"symbols": ["PP", "PE-HD"], "verdict": "approved"}],
        {"symbols": []},
        [{"symbols": ["PP", "XX9"], "verdict": "conditional"}],
    ):
        with pytest.raises(UsageError):
            own_pairs(wrong, TABLE)
