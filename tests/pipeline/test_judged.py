"""From the settings to the document: tolerances in three states, intended stops, scanner, flatness."""

from __future__ import annotations

import io
from pathlib import Path

import ezdxf
import jsonschema
import numpy as np
import pytest
from builder import Spec, build, circle, draw, rounded_rectangle
from builder.ops import cylinder, fuse
from builder.pair import assemble

from seamcheck.document.make import schema
from seamcheck.errors import UsageError
from seamcheck.pipeline import review_model
from seamcheck.report.dxf import render_dxf
from seamcheck.settings.file import parse_settings
from seamcheck.settings.settings import Settings
from seamcheck.settings.writing import as_toml

SPEC = Spec(track=circle(20))


@pytest.fixture(scope="module")
def plain(tmp_path_factory) -> Path:
    return build(SPEC).write(tmp_path_factory.mktemp("interface") / "plain.step")


def reviewed(path: Path, text: str = "") -> dict:
    document = review_model([path], parse_settings(text))
    jsonschema.validate(document, schema())
    return document


@pytest.fixture(scope="module")
def plain_document(plain) -> dict:
    return reviewed(plain)


def of_rule(document: dict, rule: str) -> list[dict]:
    return [f for f in document["findings"] if f["rule"] == rule]


def state(document: dict, rule: str, side: str) -> dict:
    return next(t for t in document["joints"][0]["tolerances"] if t["rule"] == rule and t["side"] == side)


@pytest.mark.parametrize(
    ("tolerance", "expected", "worst"),
    [
        pytest.param(0.05, "inside", 0.55, marks=pytest.mark.thorough),
        pytest.param(0.1, "inside", 0.5, marks=pytest.mark.thorough),
        (0.15, "at risk", 0.45),
    ],
)
def test_a_travel_of_0_6_against_0_5_in_three_states(plain, tolerance, expected, worst):
    """Worst case = value - tolerance for a least value; 0.6 drawn, 0.5 = collapse 0.4 + reserve 0.1."""
    document = reviewed(plain, f"[tolerance]\nfree_travel = {tolerance}\n")
    entry = state(document, "sink-travel", "low")
    assert (entry["state"], entry["worst_case"]) == (expected, pytest.approx(worst, abs=1e-3))
    found = of_rule(document, "sink-travel")
    assert [f["state"] for f in found] == (["at risk"] if expected == "at risk" else [])
    if found:
        assert found[0]["severity"] == "attention"
        assert found[0]["worst_case"] == pytest.approx(worst, abs=1e-3)
        assert f"{worst:.2f} mm" in found[0]["message"]
        assert "Take 0.05 mm off" in found[0]["remedy"]


def test_outside_as_drawn_is_outside_with_its_worst_case(plain):
    document = reviewed(plain, "[limits.rib-width]\nmin = 1.3\n[tolerance]\nrib_width = 0.05\n")
    assert state(document, "rib-width", "low")["state"] == "outside"
    assert state(document, "rib-width", "high")["state"] == "inside"
    found = of_rule(document, "rib-width")[0]
    assert (found["severity"], found["state"]) == ("must-fix", "outside")
    assert found["worst_case"] == pytest.approx(1.15, abs=1e-3)


@pytest.mark.thorough
def test_the_stack_of_the_domain_sheet(plain):
    """f = 0.45 with 0.10 + 0.05 + 0.05: worst case 0.25 (exact arithmetic)."""
    document = reviewed(plain, "collapse = 0.1\n[limits.sink-travel]\nreserve = 0.45\n[tolerance]\nfree_travel = 0.2\n")
    entry = state(document, "sink-travel", "low")
    assert entry["worst_case"] == pytest.approx(0.6 - 0.2, abs=1e-3)
    assert entry["state"] == "at risk"


def test_without_tolerances_the_document_says_nominal_only(plain_document):
    document = plain_document
    assert document["joints"][0]["tolerances"] == []
    assert any("nominal" in item["text"] for item in document["not_checked"])
    assert any("no scanner" in item["text"] for item in document["not_checked"])
    assert document["joints"][0]["interface"]["beam_angle"]["value"] is None


def test_without_a_scanner_the_field_that_the_seam_needs_is_said(plain_document):
    """A round seam of radius 20: all its fields measure 40 mm."""
    assert any(
        "a round scan field of 40.0 mm, or one of 40.0 mm x 40.0 mm" in x["text"] for x in plain_document["not_checked"]
    )


@pytest.mark.parametrize("word", ["gate", "ejector", "texture", "colour", "moisture"])
def test_what_cad_can_not_tell_is_a_question(plain_document, word):
    told = [item["text"] for item in plain_document["not_checked"]]
    asked = [item for item in told if item.endswith("?") or "? " in item]
    assert any(word in item and item.startswith("To ask the ") for item in asked)


@pytest.mark.parametrize(
    ("flat", "left", "broken"), [pytest.param(0.1, 0.2, False, marks=pytest.mark.thorough), (0.16, 0.08, True)]
)
def test_flatness_of_both_parts_against_the_collapse(plain, flat, left, broken):
    document = reviewed(plain, f"[tolerance]\nflatness_cover = {flat}\nflatness_rib = {flat}\n")
    assert document["joints"][0]["interface"]["local_collapse_left"]["value"] == pytest.approx(left)
    assert bool(of_rule(document, "flatness-stack")) is broken


def test_a_bump_far_from_the_seam_fails_the_review(tmp_path):
    cover, base = draw(SPEC)
    base = fuse(base, cylinder((3.1, 2.2, -13), 0.15, 13 - 0.3))
    path = assemble(SPEC, cover, base).write(tmp_path / "bump.step")
    document = reviewed(path)
    found = of_rule(document, "sink-travel")
    assert [f["severity"] for f in found] == ["must-fix"]
    assert document["verdict"] == "fail"
    assert found[0]["value"] == pytest.approx(0.3, abs=1e-3)
    assert found[0]["at"] == pytest.approx([3.1, 2.2, -0.3], abs=0.16)
    assert [f["part"] for f in found[0]["faces"]] == ["p2", "p1"]
    assert found[0]["contour"] is None


@pytest.mark.parametrize(
    ("depth", "stated", "rules"),
    [
        pytest.param(0.4, 0.4, [], marks=pytest.mark.thorough),
        (0.25, 0.4, ["sink-travel", "intended-stop"]),
        pytest.param(0.6, 0.6, ["intended-stop"], marks=pytest.mark.thorough),
    ],
)
def test_an_intended_stop_is_checked_against_the_collapse(tmp_path, depth, stated, rules):
    """A post that stops the cover at ``depth``, with a collapse of 0.4 mm."""
    cover, base = draw(SPEC)
    base = fuse(base, cylinder((3, 2, -13), 1.0, 13 - depth))
    path = assemble(SPEC, cover, base).write(tmp_path / "stop.step")
    document = reviewed(path, f"intended-stop = {stated}\n")
    broken = [f["rule"] for f in document["findings"] if f["rule"] in ("sink-travel", "intended-stop")]
    assert sorted(set(broken)) == sorted(rules)


def test_a_scanner_too_near_asks_for_attention(plain):
    """Axis over the middle, 60 mm up, seam radius 20: sin a = n sin b; atan(20 / 61.3) = 18.1 degrees."""
    document = reviewed(plain, "[scanner]\ndistance = 60\nhalf-angle = 2\n")
    found = of_rule(document, "beam-angle")
    assert [f["severity"] for f in found] == ["attention"]
    assert found[0]["value"] == pytest.approx(18.07, abs=0.05)
    assert not of_rule(document, "scanner-shadow")
    assert not any("no scanner" in item["text"] for item in document["not_checked"])
    stations = document["joints"][0]["contours"][0]["stations"]
    inner, outer = (np.array(stations[f"light_enters_{side}"]) for side in ("inner", "outer"))
    drawing = ezdxf.read(io.StringIO(render_dxf(document)))
    rings = drawing.modelspace().query('LWPOLYLINE[layer=="LIGHT_CORRIDOR"]')
    radii = sorted(float(np.mean([np.hypot(p[0], p[1]) for p in ring.get_points()])) for ring in rings)
    assert radii == pytest.approx([20 + inner.mean() - 0.2, 20 + outer.mean() + 0.2], abs=0.02)  # with the margin
    assert 20 + outer.mean() < 20.6  # drawn in towards the axis by more than the cone widens it


@pytest.mark.parametrize(
    ("text", "says", "line"),
    [
        ("[scanner]\nhalf-angle = 2\n", "distance", 1),
        ("[scanner]\ndistance = 300\ntelecentric = true\n", "telecentric", 1),
        ("collapse = 0.3\n[scanner]\nindex = 1.5\ndistance = -3\n", "between", 4),
        ("[scanner]\ndistance = 300\nhight = 3\n", "hight", 3),
        ("[clamp]\n# far\nreach = 'far'\n", "clamp.reach", 3),
        ("[tolerance]\nrib_width = 0.1\nrib_widht = 0.1\n", "rib_width", 3),
        ("[tolerance]\nrib_width = -0.1\n", "at least 0", 2),
        ("[scanner]\ndistance = 300\naxis = [1, 2]\n", "three coordinates", 3),
        ('[material]\ncover = "PP"\nbase = "XP"\n', "'XP'", 3),
        ('[material]\ncover = "PP"\n\n[material.laser]\nspeed = 2000\npower = -4\n', "between", 6),
        ('[material]\ncover = "PP"\nbase = "PP"\nplaques = [[1.0, 30], [2.0, 36]]\n', "swapped", 4),
        ('[material]\ncover = "My"\n[material.polymer.My]\nlike = "PP"\ndensity = -3\n', "density", 5),
        ('[material.laser]\npower = 0\n[material.polymer.My]\nlike = "PP"\n', "power", 2),
        ('[material]\n[[material.pairs]]\nsymbols = ["PP", "PC"]\nverdict = "fine"\n', "verdict", 2),
        ('[material]\ncover = "PP"\n[material.joints.j2]\ncover = "QQ"\n', "'QQ'", 4),
    ],
)
def test_wrong_tables_are_named_with_their_line(text, says, line):
    with pytest.raises(UsageError) as caught:
        parse_settings(text)
    assert says in str(caught.value)
    assert f", line {line}:" in str(caught.value)


def test_written_settings_read_back_the_same():
    text = (
        "[scanner]\ndistance = '30 cm'\naxis = [1, 2, 3]\nhalf-angle = 4\nindex = 1.58\n[clamp]\nheight = 12\n"
        "pressure = 2\n[tolerance]\nrib_width = 0.05\nflatness_rib = 0.1\n"
    )
    settings = parse_settings(text)
    assert settings.scanner.distance == 300
    again = parse_settings(as_toml(settings))
    assert (again.scanner, again.clamp, again.tolerances) == (
        settings.scanner, settings.clamp, settings.tolerances,
    )  # fmt: skip
    assert Settings().scanner is None


@pytest.mark.thorough
def test_two_cores_give_the_same_document(tmp_path):
    path = build(Spec(track=rounded_rectangle(40, 30, 6))).write(tmp_path / "same.step")
    text = "lateral-play = 0.1\n[scanner]\ndistance = 200\nhalf-angle = 3\n"
    assert reviewed(path, text) == reviewed(path, text)
