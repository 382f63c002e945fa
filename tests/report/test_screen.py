"""The default output of a review: one screen, at every width, whatever the number of findings."""

import copy
import re

import pytest
from report_documents import HOSTILE, hostile, housing, not_reviewed, two_joints

from seamcheck.report import facts
from seamcheck.report.screen import screen

WIDTHS = (60, 80, 120)


def lines_of(document, width):
    return [line.plain for line in screen(document, width)]


@pytest.mark.parametrize("width", WIDTHS)
@pytest.mark.parametrize("count", [0, 1, 5, 30])
def test_any_number_of_findings_fits_one_screen(count, width):
    document = with_findings(count)
    lines = lines_of(document, width)
    assert len(lines) <= 40
    assert max(map(len, lines)) <= width
    assert "Class 4" in " ".join(lines[-3:])
    assert lines[0].startswith(("PASS", "ATTENTION", "FAIL"))


@pytest.mark.parametrize("width", WIDTHS)
def test_what_is_not_listed_is_counted(width):
    document = with_findings(30)
    text = "\n".join(lines_of(document, width))
    listed = [int(n) for n in re.findall(r"^(\d+)  (?:MUST-FIX|ATTENTION|NOTE)", text, re.MULTILINE)]
    more = int(re.search(r"and (\d+) more findings", text)[1])
    assert listed == list(range(1, len(listed) + 1)), "the gravest come first, with the numbers of the page"
    assert len(listed) + more == 30


def test_the_screen_says_what_was_taken_and_from_where():
    text = " ".join(" ".join(lines_of(housing(), 100)).split())
    for part in ("cover 'station lid'", "base 'station housing'", "beam along (0,0,-1)", "collapse 0.40 mm (default)",
                 "no scanner given", "382.8 mm closed"):  # fmt: skip
        assert part in text


def test_the_gravest_finding_is_told_with_place_and_remedy():
    document = housing()
    first = facts.numbered_findings(document)[0].finding
    text = " ".join(" ".join(lines_of(document, 100)).split())
    assert first["message"] in text
    assert first["remedy"] in text
    assert facts.place_text(document, first) in text


def test_an_accepted_finding_is_named_in_the_first_lines():
    document = housing()
    document["findings"][0]["waived"] = {"reason": "Trial-welded.", "until": None, "origin": ""}
    assert any("Trial-welded." in line for line in lines_of(document, 80)[:3])


@pytest.mark.parametrize("document", [hostile(), two_joints(), not_reviewed()], ids=["hostile", "two", "not reviewed"])
def test_odd_documents_are_shown_plainly(document):
    for width in WIDTHS:
        lines = lines_of(document, width)
        assert len(lines) <= 40
        assert all(line.isprintable() for line in lines)


def test_names_that_turn_the_writing_direction_are_shown_without_that_sign():
    document = housing(names=("lid\u202egpj.exe", HOSTILE))
    assert "\u202e" not in "\n".join(lines_of(document, 80))


def with_findings(count):
    """The housing with so many findings, made of copies of its own."""
    document = housing(step=2.0, view=False)
    own = [f for f in document["findings"] if not f["waived"]]
    made = []
    for i in range(count):
        finding = copy.deepcopy(own[i % len(own)])
        finding["id"] = f"{finding['id']}-{i}"
        made.append(finding)
    document["findings"] = made
    document["verdict"] = "pass" if not count else "fail"
    return document


def test_a_finding_that_a_proposal_may_mend_names_the_command():
    document = with_findings(1)
    (finding,) = document["findings"]
    finding |= {"rule": "rib-width", "severity": "must-fix"}
    command = f"Does the change for finding 1 fit? seamcheck propose {document['model']['files'][0]['file']}"
    assert command in " ".join(" ".join(lines_of(document, 100)).split())
    finding["rule"] = "wall-opening"
    assert "propose" not in " ".join(lines_of(document, 100))


def test_parts_of_one_name_are_told_apart_by_their_ids():
    parts = [{"id": "p1", "name": "case"}, {"id": "p2", "name": "case"}, {"id": "p3", "name": "seal"}, {"id": "p4"}]
    named = facts.part_names({"model": {"parts": parts}})
    assert named == {"p1": "case (p1)", "p2": "case (p2)", "p3": "seal", "p4": "p4"}
