"""Documents that somebody edited, cut, damaged or invented: one sentence with the place in it, and exit code 2."""

import copy
import json

import pytest
from limits_surveys import circle, joint
from shell import shell
from test_document import SPOILED, document, section_of

from seamcheck.document.plain import to_json
from seamcheck.document.read import check_document, read_text
from seamcheck.document.view import pack_view
from seamcheck.errors import UsageError
from seamcheck.report.review import Review
from seamcheck.settings.file import parse_settings

BROKEN = circle(("rib_width", 30, 34, 0.5))


def contour(doc):
    return doc["joints"][0]["contours"][0]


def stations(doc):
    return contour(doc)["stations"]


def put(path, value):
    """Set document[path[0]][path[1]] ... to a value."""

    def edit(doc):
        for key in path[:-1]:
            doc = doc[key]
        doc[path[-1]] = value

    return edit


EDITS = {
    "wrong type": (put(("joints", 0, "contours", 0, "length_mm"), "long"), "joints[0].contours[0].length_mm"),
    "joints is no list": (put(("joints",), {}), "joints"),
    "a beam of two numbers": (put(("joints", 0, "beam"), [0.0, 1.0]), "joints[0].beam"),
    "more findings than a page could draw": (
        lambda d: d["findings"].extend({**d["findings"][0], "id": f"rib-width-{n}"} for n in range(2000)), "findings",
    ),
    "a stretch without a length": (put(("findings", 0, "length_mm"), None), "findings[0].from_s"),
    "far away": (lambda d: stations(d)["x"].__setitem__(3, 1e308), "joints[0].contours[0].stations.x[3]"),
    "far below": (lambda d: stations(d)["gap"].__setitem__(5, -1e308), "joints[0].contours[0].stations.gap[5]"),
    "a number as text": (lambda d: stations(d)["gap"].__setitem__(5, "0.1"), "joints[0].contours[0].stations.gap[5]"),
    "a truth as number": (lambda d: stations(d)["gap"].__setitem__(5, True), "joints[0].contours[0].stations.gap[5]"),
    "no place": (lambda d: stations(d)["y"].__setitem__(0, None), "joints[0].contours[0].stations.y[0]"),
    "no direction": (lambda d: stations(d)["u"].__setitem__(2, [1.0]), "joints[0].contours[0].stations.u[2]"),
    "a shorter column": (lambda d: stations(d)["rib_width"].pop(), "joints[0].contours[0].stations.rib_width"),
    "a longer column": (lambda d: stations(d)["s"].append(121.0), "joints[0].contours[0].stations.x"),
    "no column of places": (lambda d: stations(d).pop("z"), "joints[0].contours[0].stations"),
    "descending": (lambda d: stations(d)["s"].__setitem__(9, 0.0), "joints[0].contours[0].stations.s[9]"),
    "bounds of another length": (
        lambda d: contour(d)["bounds"][0].update(low=[1.0, 2.0]),
        "joints[0].contours[0].bounds[0].low",
    ),
    "finding of no joint": (put(("findings", 0, "joint"), "j9"), "findings[0].joint"),
    "finding of no contour": (put(("findings", 0, "contour"), "c9"), "findings[0].contour"),
    "station beyond the last": (put(("findings", 0, "station"), 9999), "findings[0].station"),
    "face of no part": (put(("findings", 0, "faces", 0, "part"), "p9"), "findings[0].faces[0].part"),
    "rule nobody knows": (put(("findings", 0, "rule"), "rib-colour"), "findings[0].rule"),
    "severity off": (put(("findings", 0, "severity"), "off"), "findings[0].severity"),
    "twice the same finding": (lambda d: d["findings"].append(copy.deepcopy(d["findings"][0])), "findings[2].id"),
    "another message": (put(("findings", 0, "message"), "All is well."), "findings[0].messages"),
    "waived by nobody": (
        put(("findings", 0, "waived"), {"reason": "fine", "until": None, "origin": None}),
        "findings[0].waived",
    ),
    "verdict pass with a must-fix finding": (put(("verdict",), "pass"), "verdict"),
    "verdict attention with a must-fix finding": (put(("verdict",), "attention"), "verdict"),
    "verdict fail without a finding": (put(("findings",), []), "verdict"),
    "no joint": (lambda d: d.update(joints=[], findings=[], verdict="pass"), "joints"),
    "no contour": (
        lambda d: d.update(findings=[], verdict="pass") or d["joints"][0].update(contours=[]),
        "joints[0].contours",
    ),
    "not reviewed, with findings": (
        lambda d: d.update(verdict="not-reviewed", reason={"code": "empty", "message": "", "key": "empty", "args": {}}),
        "findings",
    ),
    "a reason nobody knows": (
        lambda d: d.update(
            verdict="not-reviewed", findings=[], reason={"code": "tired", "message": "", "key": "", "args": {}}
        ),
        "reason.code",
    ),
    "a kind nobody knows": (put(("joints", 0, "kind"), "glued"), "joints[0].kind"),
    "more than certain": (put(("joints", 0, "confidence"), 1.5), "joints[0].confidence"),
    "cover of no part": (put(("joints", 0, "cover"), ["p9"]), "joints[0].cover[0]"),
    "a key too many": (put(("joints", 0, "glue"), 1), "joints[0]"),
    "a key too few": (lambda d: d["findings"][0].pop("at"), "findings[0]"),
    "view of no contour": (lambda d: d.update(view=pack_view([section_of("c9")])), "view.sections[0]"),
    "view cut short": (lambda d: d.update(view=cut_view()), "view"),
}  # fmt: skip


def cut_view():
    view = pack_view([section_of("c1")])
    view["sections"][0]["segments"] = view["sections"][0]["segments"][:8]
    return view


@pytest.fixture(scope="module")
def sound():
    return json.loads(to_json(document(BROKEN)))


@pytest.mark.parametrize(("edit", "place"), EDITS.values(), ids=EDITS)
def test_an_edited_document_is_refused_with_the_place(edit, place, sound):
    doc = copy.deepcopy(sound)
    edit(doc)
    with pytest.raises(UsageError) as refused:
        read_text(json.dumps(doc), "review.json")
    said = str(refused.value)
    assert f"at {place}:" in said
    assert said.startswith("review.json ")
    assert len(said) < 500
    with pytest.raises(UsageError):
        Review.from_document(doc)


@pytest.mark.parametrize("command", ["report", "compare", "baseline"])
@pytest.mark.parametrize("case", ["verdict pass with a must-fix finding", "finding of no joint", "a shorter column"])
def test_nothing_of_it_is_printed(case, command, sound, tmp_path):
    doc = copy.deepcopy(sound)
    EDITS[case][0](doc)
    edited, whole = tmp_path / "edited.json", tmp_path / "whole.json"
    edited.write_text(json.dumps(doc))
    whole.write_text(json.dumps(sound))
    args = {
        "report": ["report", str(edited), "--html", str(tmp_path / "page.html")],
        "compare": ["compare", str(whole), str(edited)],
        "baseline": ["report", str(whole), "--baseline", str(edited)],
    }[command]
    done = shell(*args)
    assert done.exit_code == 2
    assert done.stdout == ""
    assert len(done.stderr.strip().splitlines()) == 1
    assert EDITS[case][1] in done.stderr
    assert not (tmp_path / "page.html").exists()


DAMAGED = {
    "NaN": lambda text: text.replace("120.0", "NaN", 1),
    "infinity": lambda text: text.replace("120.0", "Infinity", 1),
    "beyond every number": lambda text: text.replace("120.0", "1e999", 1),
    "6000 digits": lambda text: text.replace("120.0", "9" * 6000, 1),
    "6000 digits for a count": lambda text: text.replace('"faces": 8', '"faces": ' + "9" * 6000, 1),
    "nested": lambda text: "[" * 100_000,
    "nested below a key": lambda text: '{"document": "seamcheck-review", "view": ' + "[" * 100_000,
    "nested and closed": lambda text: text.replace('"parts": [', '"parts": [' + "[" * 100_000 + "]" * 100_000 + ",", 1),
    "cut": lambda text: text[: len(text) // 2],
    "nothing": lambda text: "",
    "a list": lambda text: "[1]",
    "a version of tomorrow": lambda text: text.replace('"schema_version": 2', '"schema_version": 3'),
    "a version that is a list": lambda text: text.replace('"schema_version": 2', '"schema_version": [2]'),
    "version 1 and nothing else": lambda text: '{"document": "seamcheck-review", "schema_version": 1}',
    "version 1 by name only": lambda text: text.replace('"schema_version": 2', '"schema_version": 1'),
}


@pytest.mark.parametrize("damage", DAMAGED.values(), ids=DAMAGED)
def test_damaged_text_is_one_sentence_and_exit_code_2(damage, sound, tmp_path):
    text = to_json(sound)
    damaged = damage(text)
    assert damaged != text
    file = tmp_path / "d.json"
    file.write_text(damaged)
    done = shell("report", file)
    assert done.exit_code == 2
    assert done.stdout == ""
    assert len(done.stderr.strip().splitlines()) == 1
    assert len(done.stderr) < 600


@pytest.mark.parametrize("value", [float("nan"), float("inf"), 1e308])
def test_a_document_in_memory_is_checked_as_well(value, sound):
    doc = copy.deepcopy(sound)
    stations(doc)["s"][4] = value
    with pytest.raises(UsageError, match=r"stations\.s\[4\]"):
        check_document(doc, "It")


@pytest.mark.parametrize("spoiled", SPOILED, ids=range(len(SPOILED)))
def test_what_was_made_here_is_read_back_whole(spoiled):
    doc = document(spoiled)
    assert read_text(to_json(doc), "It") == doc


def test_a_waived_finding_is_read_back():
    settings = parse_settings("[[waivers]]\nrule='rib-width'\nreason='seen'\ncontour='c1'\n")
    doc = document(BROKEN, settings=settings)
    assert any(finding["waived"] for finding in doc["findings"])
    assert read_text(to_json(doc), "It") == doc


def test_all_three_verdicts_come_back():
    for spoiled, verdict in (
        (BROKEN, "fail"),
        (joint(), "pass"),
        (circle(("corner_radius", 30, 34, 2.0)), "attention"),
    ):
        doc = document(spoiled)
        assert doc["verdict"] == verdict
        assert Review.from_json(to_json(doc)).verdict == verdict
