"""The rules of the material side through the judge: when they speak, what they say, when they are silent."""

import re

import numpy as np
import pytest
from material_surveys import run, survey

from seamcheck.catalogue.material_rules import MATERIAL_RULES, REPLACED_BY
from seamcheck.catalogue.quantities import QUANTITIES
from seamcheck.catalogue.rules import RULES
from seamcheck.judge.findings import JointResult
from seamcheck.judge.judge import judge
from seamcheck.measure.material import MaterialSettings, assess
from seamcheck.settings.file import parse_settings
from seamcheck.settings.settings import Settings

KEYS = {rule.key for rule in MATERIAL_RULES}
TABLE = {
    "cover": "PP",
    "base": "PP",
    "plaques": [[1.0, 55.0], [2.0, 36.0]],
    "process": {"melt_temperature": 200},
    "samples": {"count": 100},
}


GEOMETRY_OFF = {f"{rule}.severity": "off" for rule in ("seam-open", "trap-room", "sink-travel")}
"""What a straight run of stations breaks besides: above six findings, one cause is told as one."""


def judged(path, table, settings=None, travel=1.0, rib_on="base"):
    whole = survey(path, travel=travel)
    if table is not None:
        whole = assess(whole, MaterialSettings.from_table(table), 0.4).onto(whole)
    joint = JointResult("j1", ("p1",), ("p2",), rib_on, np.array([0, 0, -1.0]), "touching", (), whole)
    alone = (settings or Settings()).changed(GEOMETRY_OFF)
    return [f for f in judge([joint], alone).findings if f.rule in KEYS]


def test_without_materials_no_rule_speaks():
    assert judged(run(thickness=9.0), None) == []


def test_a_sound_joint_has_no_finding():
    assert judged(run(), TABLE) == []


def test_every_rule_names_its_quantity_and_can_be_explained():
    for rule in MATERIAL_RULES:
        assert rule.optional
        assert RULES[rule.key] is rule
        assert rule.unit == rule.limits[0].unit
        for check in rule.checks:
            assert check.column in QUANTITIES
    assert set(REPLACED_BY) | set(REPLACED_BY.values()) <= KEYS | {"flatness-stack"}


def test_too_little_light_is_one_finding_with_what_to_thin():
    thickness = np.full(801, 2.0)
    thickness[200:301] = 4.5
    (dark,) = (f for f in judged(run(thickness=thickness), TABLE) if f.rule.startswith("transmission"))
    assert (dark.rule, dark.severity) == ("transmission", "attention")
    assert dark.value == pytest.approx(100 * 0.840278 * np.exp(-0.423814 * 4.5), rel=1e-5)
    assert dark.from_s == pytest.approx(99.75)
    # Thinner by 4.5 - ln(T0 / 0.28) / K = 1.907 mm, rounded up.
    assert "1.91 mm" in dark.remedy


def test_scarce_light_asks_for_attention():
    thickness = np.full(801, 2.0)
    thickness[200:301] = 3.0
    before, behind, dim = sorted(judged(run(thickness=thickness), TABLE), key=lambda f: f.rule)
    assert (dim.rule, dim.severity) == ("transmission", "attention")
    # Before and behind the thick stretch 1.53 times its light arrives: e^K.
    for uneven in (before, behind):
        assert (uneven.rule, uneven.severity) == ("energy-uniformity", "must-fix")
        assert uneven.value == pytest.approx(np.exp(0.423814), rel=1e-5)
    assert "0.41 mm" in dim.remedy  # 3 - 2.592983
    # With a limit of one's own the advice follows it: ln(0.2356 / 0.20) is less than nothing.
    even = {"energy-uniformity.severity": "off"}
    own = Settings().changed({"transmission.min": "20 %", **even})
    assert judged(run(thickness=thickness), TABLE, own) == []
    stricter = Settings().changed({"transmission.min": 30, **even})
    (dim,) = judged(run(thickness=thickness), TABLE, stricter)
    by = float(re.search(r"by ([\d.]+) mm", dim.remedy)[1])
    assert by == pytest.approx(3.0 - np.log(0.840278 / 0.30) / 0.423814, abs=0.01)


def test_a_path_beyond_the_plaques():
    found = {f.rule: f for f in judged(run(thickness=3.2), TABLE)}
    assert found["plaque-range"].value == pytest.approx(1.6)
    assert found["plaque-range"].severity == "attention"


@pytest.mark.parametrize(
    ("base", "rules"), [("PP", set()), ("PA6", {"pair"}), ("PC", {"pair"}), ("PE-HD", {"pair-doubt"})]
)
def test_pairs_that_do_not_weld(base, rules):
    found = judged(run(), {**TABLE, "base": base})
    assert {f.rule for f in found if f.rule.startswith("pair")} == rules
    for finding in found:
        assert "Trial weld required" in finding.message


def test_a_pair_in_doubt():
    (finding,) = judged(run(), {**TABLE, "cover": "PC", "base": "PBT"})
    assert (finding.rule, finding.severity) == ("pair-doubt", "attention")


def test_a_full_trap_and_an_empty_window():
    found = {f.rule: f for f in judged(run(trap=0.4), TABLE, travel=0.4)}
    assert found["trap-fill"].value == pytest.approx(1.204 * 0.6 / 0.64, rel=1e-3)
    assert {"trap-fill-inner", "trap-fill-outer", "collapse-high"} <= set(found)
    gap = np.where(np.arange(801) < 20, 0.45, 0.0)
    found = {f.rule: f for f in judged(run(gap=gap), TABLE, travel=0.6)}
    empty = found["collapse-window"]
    assert (empty.severity, empty.contour) == ("must-fix", None)
    assert empty.value == pytest.approx(0.4 - 0.55)  # 0.6 less the reserve of 0.2
    assert "free travel" in empty.message
    assert "0.15 mm" in empty.remedy
    assert empty.also == ("collapse-low",)
    assert "collapse-low" not in found
    off = Settings().changed({"collapse-window.severity": "off"})
    low = {f.rule: f for f in judged(run(gap=gap), TABLE, off, travel=0.5)}["collapse-low"]
    assert low.value == pytest.approx(0.4 - 0.55)
    assert "0.15 mm too small" in low.message


def test_missing_light_is_not_a_pass():
    path = run()
    path.columns["cover_thickness_max"][100:120] = np.nan
    path.reasons["cover_thickness_max"][100:120] = "broken-geometry"
    whole = assess(survey(path), MaterialSettings.from_table(TABLE), 0.4).onto(survey(path))
    joint = JointResult("j1", ("p1",), ("p2",), "base", np.array([0, 0, -1.0]), "touching", (), whole)
    (missing,) = (f for f in judge([joint], Settings()).findings if f.rule == "not-measured")
    assert "energy surplus" in missing.message
    assert missing.from_s == pytest.approx(49.75)


def test_limits_of_the_material_are_set_like_all_others():
    settings = parse_settings('[limits.transmission]\nmin = "20 %"\n[limits.pair-doubt]\nseverity = "off"\n')
    assert settings.limit("transmission", "min") == 20.0
    assert settings.severity("pair-doubt") == "off"
