"""The labelled drawing: the file in docs is the one that the code makes, and no letter lacks its meaning."""

import re
from pathlib import Path
from xml.etree import ElementTree

from seamcheck.catalogue.quantities import QUANTITIES
from seamcheck.report.joint_drawing import LETTERS, joint_drawing, letters_in

EXPLAINED = {"peel_moment": "N", "spot_offset": "z", "transmission": "Kxe", "extinction": "Kxe"}
"""Units, and letters that a definition or its detail explains by itself."""

DOCS = Path(__file__).parents[2] / "docs"


def test_the_drawing_in_docs_is_the_one_made_here():
    assert (DOCS / "joint.svg").read_text("utf-8") == f"{joint_drawing()}\n"
    assert "joint.svg" in (DOCS / "quantities.md").read_text("utf-8")


def test_every_letter_is_in_the_drawing_and_in_its_list():
    root = ElementTree.fromstring(joint_drawing())
    texts = [e.text for e in root.iter("{http://www.w3.org/2000/svg}text")]
    for letter in LETTERS:
        assert texts.count(letter) >= 2, f"{letter} stands in the section and in the list beside it"


def test_the_letters_of_a_definition_are_explained():
    told = letters_in(QUANTITIES["rib_height_inner"].definition)
    assert [line[0] for line in told] == ["P", "v"]
    assert [line[0] for line in letters_in("Area A of the trap. A cover is no letter.")] == ["A"]
    assert letters_in("A cover a person knows.") == []


def test_a_definition_has_at_most_25_words_and_only_letters_that_are_drawn():
    for quantity in QUANTITIES.values():
        assert len(quantity.definition.split()) <= 25, quantity.key
        alone = set(re.findall(r"(?<![A-Za-z'0-9])[b-zB-Z](?![A-Za-z])(?!0)", quantity.definition))
        assert alone <= {*LETTERS, *EXPLAINED.get(quantity.key, "")}, quantity.key
