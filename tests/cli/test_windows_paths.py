"""Paths as Windows writes them: what names files, outputs and addresses; with the standard library's pure paths."""

from __future__ import annotations

import ntpath
from pathlib import PureWindowsPath
from urllib.parse import urlsplit

import pytest

from seamcheck.cli import ci
from seamcheck.cli.each import place_in
from seamcheck.report.ci.escape import address
from seamcheck.report.ci.reviews import Reviewed
from seamcheck.scanning.run import page_stem


@pytest.mark.parametrize(
    ("given", "uri"),
    [
        (r"models\ws 7.step", "models/ws%207.step"),
        (r"C:\models\ws-7.step", "file:///C:/models/ws-7.step"),
        (r"\\server\share\ws-7.step", "file://server/share/ws-7.step"),  # RFC 8089, appendix E.3.1
        (r"..\ws-7.step", "../ws-7.step"),
        ("größe.step", "gr%C3%B6%C3%9Fe.step"),
    ],
)
def test_addresses_in_sarif(given, uri):
    path = Reviewed({"model": {"files": [{"file": "x"}]}}, (PureWindowsPath(given),)).files[0]
    assert "\\" not in path
    assert address(path) == uri
    assert urlsplit(uri).path.endswith(uri.rsplit("/", 1)[-1])


@pytest.mark.parametrize(
    ("model", "placed"),
    [
        (r"models\a.step", r"out\models\a.step.json"),
        (r"C:\models\a.step", r"out\models\a.step.json"),
        (r"C:a.step", r"out\a.step.json"),
        (r"\\server\share\models\a.step", r"out\models\a.step.json"),
        (r"..\..\a.step", r"out\_up\_up\a.step.json"),
        (r".\a.step", r"out\a.step.json"),
    ],
)
def test_outputs_of_each_model_stay_in_their_folder(model, placed, monkeypatch):
    monkeypatch.setattr(ci, "shown", lambda path: path)
    found = place_in(PureWindowsPath("out"), PureWindowsPath(model), ".json")
    assert found == PureWindowsPath(placed)
    assert ntpath.normpath(str(found)).startswith("out\\")


@pytest.mark.parametrize(
    "name", ["CON.step", "nul", "com1.stp", "LPT9.step.gz", "aux .step", r"a\b.step", "a:b.step", "a.step.", "a?.step"]
)
def test_pages_have_names_that_no_system_takes_for_something_else(name):
    """A key follows the stem, so that no device is meant; nothing but letters, digits and '-' stands in it."""
    assert all(c.isascii() and (c.isalnum() or c in "-_") for c in page_stem(name))
