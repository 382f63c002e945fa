"""The README names every command and every file that can be written, and carries the cautions."""

from pathlib import Path

import pytest

from seamcheck.cli.group import COMMANDS
from seamcheck.cli.outputs import OUTPUTS
from seamcheck.settings.file import parse_settings

README = (Path(__file__).parents[2] / "README.md").read_text(encoding="utf-8")


@pytest.mark.parametrize("name", COMMANDS)
def test_every_command_is_in_the_readme(name):
    assert f"seamcheck {name} " in README


@pytest.mark.parametrize("output", OUTPUTS, ids=lambda output: output.name)
def test_every_output_is_in_the_readme(output):
    assert f"`--{output.name} " in README


@pytest.mark.parametrize(
    "words", ["not an approval", "Class 4", "IEC 60825-1", "Clamps crush", "fumes", "validated process"]
)
def test_the_readme_carries_the_cautions(words):
    assert words in README


def test_the_settings_of_the_readme_can_be_read():
    text = README[README.index("```toml") + 7 :]
    settings = parse_settings(text[: text.index("```")])
    assert settings.limit("rib-width", "max") == pytest.approx(0.07 * 25.4)
    assert settings.waivers[0].rule == "clamp-land"


def test_the_two_commands_of_the_readme_exist():
    makefile = (Path(__file__).parents[2] / "Makefile").read_text(encoding="utf-8")
    for target in ("demo", "test"):
        assert f"make {target} " in README
        assert f"\n{target}:" in makefile
