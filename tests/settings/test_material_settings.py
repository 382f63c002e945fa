"""The [material] table: what is taken, what stands in, and a sentence for everything that can't be."""

import pickle

import pytest

from seamcheck.errors import UsageError
from seamcheck.measure.material import MaterialSettings
from seamcheck.settings.declared import MATERIAL, MATERIAL_SECTIONS

WHOLE = {
    "cover": "PP",
    "base": "PP-GF30",
    "plaques": [[2.0, 36.0], [1.0, 55]],
    "light": {"wavelength": 980, "plaque_scatter": 2},
    "laser": {"power": 150, "speed": 2000, "use": [0.6, 0.5, 0.7]},
    "process": {"pressure": 2.0},
}


def test_a_whole_table():
    settings = MaterialSettings.from_table(WHOLE)
    assert settings.plaques == ((1.0, 55.0), (2.0, 36.0))
    assert settings.base.glass == pytest.approx(0.3)
    assert settings.get("laser.power").standing == "given"
    assert settings.get("process.handling").standing == "assumption"
    assert settings.get("laser.spot") is None
    assert (settings.get("laser.use").low, settings.get("laser.use").high) == (0.5, 0.7)
    assert settings.as_dict()["base"]["glass_percent"] == 30.0


def test_an_empty_table_is_allowed_and_only_stand_ins_remain():
    settings = MaterialSettings.from_table({})
    assert settings.cover is None
    assert settings.plaques == ()
    assert {known.standing for known in settings.numbers.values()} <= {"assumption", "from memory"}


def test_a_joint_can_differ():
    settings = MaterialSettings.from_table({**WHOLE, "joints": {"j2": {"base": "PC", "laser": {"power": 80}}}})
    assert settings.for_joint("j1").get("laser.power").value == 150
    second = settings.for_joint("j2")
    assert (second.get("laser.power").value, second.get("laser.speed").value) == (80, 2000)
    assert second.base.polymer.symbol == "PC"


@pytest.mark.parametrize(
    ("change", "words"),
    [
        ({"plaques": [[1.0, 97.0]]}, "surfaces"),
        ({"plaques": [[1.0, 36.0], [2.0, 55.0]]}, "thicker"),
        ({"plaques": [[2.0, 155.0]]}, "swapped"),
        ({"plaques": [[1.0, 0.55]]}, "percent"),
        ({"plaques": [[1.0, 0]]}, "no light"),
        ({"plaques": [[1.0, -5]]}, "no light"),
        ({"plaques": [[-1.0, 55]]}, "thickness"),
        ({"plaques": [[1.0, 55, 3]]}, "thickness in mm"),
        ({"plaques": 55}, "list"),
        ({"cover": "PPX"}, "Nearest: PP"),
        ({"cover": "HDPE"}, "PE-HD"),
        ({"base": 7}, "ISO 1043"),
        ({"laser": {"power": -150}}, "between 0.10 W and 5000.00 W"),
        ({"laser": {"power": "150 kg"}}, "must be a power"),
        ({"laser": {"power": True}}, "must be a power"),
        ({"laser": {"power": float("nan")}}, "finite"),
        ({"laser": {"pwr": 150}}, "'power'"),
        ({"laser": {"use": 1.5}}, "between"),
        ({"laser": {"use": [0.6, 0.7, 0.8]}}, "low <= value"),
        ({"light": {"wavelength": 0.98}}, 'If 0.98 µm is meant, write "0.98 µm"'),
        ({"process": {"pressure": 2e6}}, "If 2e\\+06 Pa is meant"),
        ({"process": {"melt_temperature": 60, "room_temperature": 80}}, "above the room"),
        ({"laser": 5}, "table"),
        ({"lasre": {}}, "'laser'"),
        ({"joints": {"j1": {"joints": {}}}}, "of its own"),
        ({"joints": {"j1": {"laser": {"power": -1}}}}, "between"),
        ({"polymer": {"PP": 5}}, "table"),
        ({"pairs": [{"symbols": ["PP", "PC"], "verdict": "approved"}]}, "verdict"),
    ],
)
def test_impossible_input_gets_a_sentence(change, words):
    with pytest.raises(UsageError, match=words) as caught:
        MaterialSettings.from_table({**WHOLE, **change})
    assert str(pickle.loads(pickle.dumps(caught.value))) == str(caught.value)
    assert len(str(caught.value)) > 30


def test_every_entry_explains_itself():
    keys = [setting.key for setting in MATERIAL]
    assert len(set(keys)) == len(keys)
    for setting in MATERIAL:
        assert setting.table.removeprefix("material.") in MATERIAL_SECTIONS
        assert setting.least < setting.most
        assert len(setting.what) > 8
        if setting.default is not None:
            low, high = setting.known.low, setting.known.high
            assert setting.least <= low <= setting.default <= high <= setting.most


def test_a_number_may_carry_another_unit_of_its_kind():
    """1 bar = 0.1 MPa and 1 m/s = 1000 mm/s (exact by definition of the SI and of the bar)."""
    table = {
        "laser": {"power": "0.15 kW", "speed": "2 m/s"},
        "process": {"pressure": "20 bar"},
        "light": {"wavelength": "0.98 µm"},
    }
    settings = MaterialSettings.from_table(table)
    found = [settings.get(key).value for key in ("laser.power", "laser.speed", "process.pressure", "light.wavelength")]
    assert found == pytest.approx([150, 2000, 2.0, 980])
