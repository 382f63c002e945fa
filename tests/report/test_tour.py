"""The tour names what there is: its pictures, the options and the licences of what is bundled."""

import re
from importlib import resources
from pathlib import Path

from seamcheck.cli.outputs import OUTPUTS

TOUR = Path(__file__).parents[2] / "docs" / "report" / "README.md"


def test_every_picture_of_the_tour_is_there_and_small():
    text = TOUR.read_text("utf-8")
    pictures = re.findall(r"!\[[^\]]+\]\(([^)]+)\)", text)
    assert len(pictures) >= 6
    for name in pictures:
        assert 3_000 < (TOUR.parent / name).stat().st_size < 300_000


def test_the_tour_names_every_kind_of_file():
    text = TOUR.read_text("utf-8")
    for output in OUTPUTS:
        assert re.search(rf"`--{output.name} (F|FOLDER)`", text)


def test_licences_of_all_that_is_bundled_come_along():
    text = resources.files("seamcheck.report.html").joinpath("LICENCES.txt").read_text("utf-8")
    assert text.count("Permission is hereby granted") >= 2  # three.js and uPlot, MIT
    assert "SIL OPEN FONT LICENSE" in text.upper()
