"""Documents of schema version 1: read as they are, and of use as a baseline though ids are made otherwise now."""

import copy
import gzip
import json
from pathlib import Path

import pytest

from seamcheck.catalogue.former import FORMER_QUANTITIES
from seamcheck.comparison.baseline import exit_code, with_baseline
from seamcheck.document.read import check_document, read_text
from seamcheck.errors import UsageError
from seamcheck.report.html.page import render_html
from seamcheck.report.text import full_report
from seamcheck.version import __version__

FILE = Path(__file__).with_name("version_1.json.gz")  # written by version 0.1.0 for the sample trap-room


@pytest.fixture(scope="module")
def old():
    return json.loads(gzip.decompress(FILE.read_bytes()))


@pytest.fixture(scope="module")
def read(old):
    return read_text(json.dumps(old), "v1.json")


def test_a_document_of_version_1_is_read_with_all_its_numbers(old, read):
    assert old["schema_version"] == 1
    assert read["schema_version"] == 2
    assert read["verdict"] == old["verdict"] == "fail"
    for before, now in zip(old["findings"], read["findings"], strict=True):
        assert {key: now[key] for key in before} == before
    for before, now in zip(old["joints"], read["joints"], strict=True):
        assert now["kind"] == "weld-rib"
        assert now["confidence"] is None
        assert [said["text"] for said in now["why"]] == before["why"]
        for contour, was in zip(now["contours"], before["contours"], strict=True):
            assert "turn_radius" in was["stations"]
            assert contour["stations"] == {FORMER_QUANTITIES.get(key, key): v for key, v in was["stations"].items()}


def test_reports_can_be_made_of_it(read):
    assert list(full_report(read))
    assert "trap-room.step" in render_html(read)


def test_as_a_baseline_it_knows_its_findings_under_their_new_ids_and_says_that_versions_differ(read):
    new = copy.deepcopy(read)
    new["seamcheck"] = __version__
    for number, finding in enumerate(new["findings"]):
        finding["id"] = f"{finding['rule']}-{number:08x}"
    held = with_baseline(check_document(new, "new"), read, "v1.json")
    assert (exit_code(new), exit_code(held)) == (1, 0)
    said = held["run"]["baseline"]
    assert set(said["states"].values()) == {"same"}
    assert any("different versions" in warning for warning in said["warnings"])


def test_an_edited_one_is_refused_as_well(old):
    edited = copy.deepcopy(old)
    edited["verdict"] = "pass"
    with pytest.raises(UsageError, match="at verdict:"):
        check_document(edited, "It")
    del edited["limits"]
    with pytest.raises(UsageError, match="version 1"):
        check_document(edited, "It")


def test_a_document_of_this_version_under_former_names_is_read_as_under_those_of_now(read):
    text = json.dumps(read)
    for before, now in [*FORMER_QUANTITIES.items(), ("turn-radius", "corner-radius")]:
        text = text.replace(f'"{now}"', f'"{before}"').replace(f'"{now}.', f'"{before}.')
    assert json.loads(text) != read
    assert read_text(text, "before.json") == read
