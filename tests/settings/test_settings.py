"""Settings: defaults, files, options; what is wrong is named with line and nearest key."""

import pickle
from datetime import date

import pytest
from hypothesis import given
from hypothesis import strategies as st

from seamcheck.catalogue.rules import RULES
from seamcheck.catalogue.units import in_unit, shown
from seamcheck.errors import UsageError
from seamcheck.settings.file import find_settings_file, parse_settings, read_settings
from seamcheck.settings.settings import Settings
from seamcheck.settings.waivers import Waiver
from seamcheck.settings.writing import as_toml

VALUES = ("collapse", "beam_margin", "station_spacing", "lateral_play", "cover", "base", "beam")


def wrong(text):
    with pytest.raises(UsageError) as caught:
        parse_settings(text)
    return str(caught.value)


def test_options_win_over_the_file_and_the_file_over_the_defaults():
    settings = parse_settings("collapse = 0.5\n[limits.rib-width]\nmin = 0.7\nmax = 1.8\n")
    settings = settings.changed({"rib-width.max": 1.6})
    assert (settings.collapse, settings.origin("collapse")) == (0.5, "file")
    assert (settings.limit("rib-width", "min"), settings.origin("rib-width.min")) == (0.7, "file")
    assert (settings.limit("rib-width", "max"), settings.origin("rib-width.max")) == (1.6, "option")
    assert settings.origin("clamp-land.min") == "default"


@pytest.mark.parametrize(
    ("written", "unit", "value"),
    [
        (0.5, "mm", 0.5),
        ("0.5", "mm", 0.5),
        ("0.5 mm", "mm", 0.5),
        ("0.02 in", "mm", 0.508),
        ("50 µm", "mm", 0.05),
        ("0.1cm", "mm", 1.0),
        ("2 deg", "°", 2.0),
        ("1e-1 rad", "°", 5.729577951308232),
        ("10 %", "1", 0.1),
        (3, "1", 3.0),
        ("1 cm2", "mm²", 100.0),
    ],
)
def test_units_are_converted(written, unit, value):
    # 25.4 mm to the inch: ISO 80000-3; 180/π degrees to the radian
    assert in_unit(written, unit) == pytest.approx(value, rel=1e-12)


@pytest.mark.parametrize("written", [True, None, [1], "wide", "1 2", "0.5 deg", "0.5 furlong", float("nan"), "inf", ""])
def test_what_is_no_length_is_refused(written):
    with pytest.raises(ValueError, match="must be"):
        in_unit(written, "mm")


@given(st.floats(0.001, 1000))
def test_what_is_shown_reads_back(value):
    assert in_unit(shown(value, "mm"), "mm") == pytest.approx(value, abs=0.0005)


@pytest.mark.parametrize(
    ("text", "line", "words"),
    [
        ("\ncolapse = 1\n", 2, ["'colapse'", "'collapse'"]),
        ("collapse = 0.4\n\n[limits.rib-widht]\nmin = 1\n", 3, ["'rib-widht'", "'rib-width'"]),
        ("[limits.rib-width]\nmim = 1\n", 2, ["'mim'", "'min'"]),
        ("[limits.rib-width]\nmin = '2 deg'\n", 2, ["rib-width.min", "a length", "an angle"]),
        ("[limits.rib-width]\n\nmin = true\n", 3, ["rib-width.min", "true"]),
        ("[limits]\nrib-width.min = '3 furlongs'\n", 2, ["'furlongs'", "mm"]),
        ("[limits]\nrib-width = {min = 1, mx = 2}\n", 2, ["'mx'", "'max'"]),
        ("[limits.rib-width]\nseverity = 'must-fx'\n", 2, ["'must-fx'", "'must-fix'"]),
        ("[limits.rib-width]\nmax = 0.1\n", 1, ["min (0.6) lies above max (0.1)"]),
        ("collapse = -1\n", 1, ["collapse", "between 0.01 mm"]),
        ("[joint]\nbeam = [0, 0, 0]\n", 2, ["length 0"]),
        ("[joint]\nbeam = 'up'\n", 2, ["'up'"]),
        ("[joint]\ncovr = 'lid'\n", 2, ["'covr'", "'cover'"]),
        ("[joint]\ncover = 3\n", 2, ["cover must be the name"]),
        ("[joint\n", 1, ["not valid TOML"]),
        ("a = 'x\n", 1, ["not valid TOML"]),
        ("limits = 3\n", 1, ["limits must be a table"]),
        ("[waivers]\nrule = 'rib-width'\n", 1, ["[[waivers]]"]),
        ("[[waivers]]\nreason = 'x'\n", 1, ["needs a rule"]),
        ("[[waivers]]\nrule = 'rib-width'\ncontour = 'c1'\n", 1, ["needs a reason"]),
        ("[[waivers]]\nrule = 'rib-width'\nreason = 'x'\n", 1, ["needs one place"]),
        ("[[waivers]]\nrule = 'clamp-lnd'\nreason = 'x'\nat = [1,2,3]\n", 2, ["'clamp-lnd'", "'clamp-land'"]),
        (
            "[[waivers]]\nrule = 'rib-width'\nreason = 'x'\ncontour = 'c1'\n\n[[waivers]]\nrule = "
            "'rib-width'\nreason = 'x'\nat = [1,2]\n",
            9,
            ["three coordinates"],
        ),
        ("[[waivers]]\nrule='rib-width'\nreason='x'\nat=[1,2,3]\nuntil='soon'\n", 5, ["2027-06-30", "'soon'"]),
        ("[[waivers]]\nrule='rib-width'\nreason='x'\ncontour='c1'\nfrom=3\n", 1, ["from and to together"]),
        ("[[waivers]]\nrule='rib-width'\nreason='x'\nat=[1,2,3]\nradus=3\n", 5, ["'radus'", "'radius'"]),
        ("[material]\ncover = 'XX-YY'\n", 2, ["XX"]),
    ],
)
def test_what_is_wrong_is_named_with_its_line(text, line, words):
    message = wrong(text)
    assert message.startswith(f"seamcheck.toml, line {line}: "), message
    for word in words:
        assert word in message
    assert "\n" not in message


def test_an_old_key_is_answered_with_the_new_one():
    said = wrong("[limits.contact-gap]\nmax = 0.1\n")
    assert said.startswith("seamcheck.toml, line 2: contact-gap.max is now contact-gap.attention (mm")
    assert "contact-gap.share" in said
    with pytest.raises(UsageError, match=r"contact-gap\.share"):
        Settings().changed({"contact-gap.max": 0.2})


def test_keys_inside_long_texts_do_not_shift_lines():
    text = "[[waivers]]\nrule='rib-width'\nreason='''\n[limits.rib-width]\nmim = 1\n'''\nat=[1, 2, 3]\nbad=1\n"
    assert wrong(text).startswith("seamcheck.toml, line 8: ")


def test_a_file_that_is_not_text_or_not_there(tmp_path):
    file = tmp_path / "seamcheck.toml"
    with pytest.raises(UsageError, match="can't be read"):
        read_settings(file)
    file.write_bytes(b"\xff\xfe\x00")
    with pytest.raises(UsageError, match="not UTF-8"):
        read_settings(file)


def test_the_nearest_file_beside_or_above_the_model_is_found(tmp_path):
    deep = tmp_path / "a" / "b"
    deep.mkdir(parents=True)
    assert find_settings_file(deep / "m.step") is None or tmp_path not in find_settings_file(deep / "m.step").parents
    (tmp_path / "seamcheck.toml").write_text("collapse = 0.5\n")
    assert find_settings_file(deep / "m.step") == (tmp_path / "seamcheck.toml").resolve()
    (deep / "seamcheck.toml").write_text("collapse = 0.6\n")
    assert find_settings_file(deep / "m.step") == (deep / "seamcheck.toml").resolve()
    assert read_settings(deep / "seamcheck.toml").file == "seamcheck.toml"


@pytest.mark.parametrize(
    ("values", "words"),
    [
        ({"colapse": 1}, "'collapse'"),
        ({"rib-width.mn": 1}, "'rib-width.min'"),
        ({"cover": ""}, "name or id"),
        ({"beam": "1,2"}, "direction"),
        ({"corner-radius.severity": "loud"}, "must-fix"),
    ],
)
def test_wrong_options_are_named(values, words):
    with pytest.raises(UsageError, match=words):
        Settings().changed(values)


@pytest.mark.parametrize(
    ("written", "beam"),
    [("-z", (0, 0, -1)), ("x", (1, 0, 0)), ("0,0,-1", (0, 0, -1)), ("0 1 0", (0, 1, 0)), ([0, 0.5, 0], (0, 0.5, 0))],
)
def test_a_direction_is_an_axis_or_three_numbers(written, beam):
    assert Settings().changed({"beam": written}).beam == beam


def test_an_underscore_counts_as_a_hyphen():
    assert Settings().changed({"station_spacing": 0.25}).station_spacing == 0.25


def test_settings_go_through_a_pickle():
    settings = parse_settings("collapse = 0.5\n[[waivers]]\nrule='rib-width'\nreason='x'\nat=[1,2,3]\n")
    again = pickle.loads(pickle.dumps(settings))
    assert again == settings


def test_the_printed_file_reads_back_as_the_same_settings():
    settings = Settings(
        waivers=(
            Waiver("rib-width", 'a "reason"\nin two lines', at=(1.5, 0.0, -3.25), radius=4.0, until=date(2030, 1, 2)),
            Waiver("clamp-land", "x", contour="c2", from_s=3.0, to_s=1.0, joint="j2"),
            Waiver("clamp-land", "x", contour="c2"),
        )
    ).changed(
        {
            "collapse": 0.35,
            "cover": 'lid "A"',
            "beam": (0, 0, -1),
            "rib-width.min": 0.65,
            "corner-radius.severity": "off",
        }
    )
    again = parse_settings(as_toml(settings))
    for name in VALUES:
        assert getattr(again, name) == getattr(settings, name)
    assert again.limits == settings.limits
    assert again.severities == settings.severities
    assert [w.as_dict() | {"origin": None} for w in again.waivers] == [w.as_dict() for w in settings.waivers]


def test_the_printed_file_explains_every_rule():
    text = as_toml()
    plain = " ".join(line.lstrip("# ") for line in text.splitlines())
    for rule in RULES.values():
        assert f"[limits.{rule.key}]" in text
        assert rule.harm in plain
        assert rule.standing_text in plain
        for limit in rule.limits:
            assert limit.what in text


@given(st.text(max_size=200))
def test_any_text_gives_settings_or_one_sentence(text):
    try:
        parse_settings(text)
    except UsageError as error:
        assert str(error).startswith("seamcheck.toml")  # noqa: PT017


@given(
    st.recursive(
        st.one_of(st.integers(), st.floats(allow_nan=False), st.booleans(), st.text(max_size=5)),
        lambda inner: st.one_of(
            st.lists(inner, max_size=3), st.dictionaries(st.text("abcmin-", min_size=1), inner, max_size=3)
        ),
        max_leaves=6,
    ),
    st.sampled_from(["collapse", "joint", "limits", "waivers", "material"]),
)
def test_any_value_gives_settings_or_one_sentence(value, key):
    import tomlkit

    try:
        parse_settings(tomlkit.dumps({key: value}))
    except UsageError as error:
        assert str(error).startswith("seamcheck.toml")  # noqa: PT017
