"""The walk through of docs/prepare.md says what its commands print."""

import sys
from pathlib import Path

import pytest

DOCS = Path(__file__).parents[2] / "docs"


@pytest.mark.thorough
def test_every_command_of_the_walk_prints_what_the_page_says(monkeypatch):
    monkeypatch.syspath_prepend(str(DOCS))
    from walk import walked

    page = (DOCS / "prepare.md").read_text("utf-8")
    assert walked(page) == page
    sys.modules.pop("walk", None)
