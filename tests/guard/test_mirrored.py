"""A model and its mirror image in the light's direction are never called identical."""

from __future__ import annotations

import copy

import pytest

from seamcheck.comparison.document import compare_documents
from seamcheck.comparison.text import whole
from seamcheck.pipeline import review_model
from seamcheck.samples import samples
from seamcheck.settings.settings import Settings


@pytest.fixture(scope="module")
def document():
    return review_model((next(s.file for s in samples() if s.name == "sound"),), Settings())


def mirrored(document):
    """The document of the model mirrored at the plane of its flat seam: the light alone is reversed."""
    other = copy.deepcopy(document)
    for joint in other["joints"]:
        joint["beam"] = [-c for c in joint["beam"]]
    return other


def test_the_reversed_light_is_told(document):
    found = compare_documents(document, mirrored(document))
    assert not found["identical"]
    assert any("opposite side" in sentence for sentence in found["warnings"]) or found["motion"]["kind"] != "none"
    assert list(whole(found))


def test_the_model_itself_is_identical(document):
    found = compare_documents(document, copy.deepcopy(document))
    assert found["identical"]
    assert found["warnings"] == []
