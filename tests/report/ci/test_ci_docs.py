"""The pages about CI and comparing: their jobs can be read, and every command in them exists."""

from __future__ import annotations

import re
import shlex
from pathlib import Path

import pytest
import yaml

from seamcheck.cli.group import COMMANDS, cli
from seamcheck.report.ci.annotations import STYLES

ROOT = Path(__file__).parents[3]
PAGES = {name: (ROOT / "docs" / name).read_text("utf-8") for name in ("ci.md", "compare.md")}
HOOKS = yaml.safe_load((ROOT / ".pre-commit-hooks.yaml").read_text("utf-8"))


def blocks(language):
    return re.findall(rf"```{language}\n(.*?)```", PAGES["ci.md"], re.DOTALL)


def commands():
    """Every command line of seamcheck in the pages, the jobs and the hooks."""
    lines = []
    for page in PAGES.values():
        lines += re.findall(r"^    (seamcheck .*)$", page, re.MULTILINE)
        lines += [m.replace("\n", " ") for m in re.findall(r"`(seamcheck [^`]*)`", page)]
        lines += re.findall(r"exec (seamcheck .*)$", page, re.MULTILINE)
    for block in blocks("yaml"):
        for text in strings(yaml.safe_load(block)):
            lines += [text] if text.startswith("seamcheck ") else []
    lines += [" ".join([hook["entry"], *hook.get("args", ())]) for hook in HOOKS]
    return sorted({re.sub(r"\s*\|\|.*", "", line.strip()) for line in lines})


def strings(value):
    if isinstance(value, str):
        yield value
    for item in value.values() if isinstance(value, dict) else value if isinstance(value, list) else ():
        yield from strings(item)


def test_there_are_commands_to_check():
    assert len(commands()) >= 8


@pytest.mark.parametrize("line", commands())
def test_every_command_and_option_exists(line):
    _, name, *arguments = shlex.split(line)
    if (name == "compare" and not arguments) or (name == "scan" and not arguments):  # named in a sentence
        assert name in COMMANDS
        return
    import importlib

    command = importlib.import_module(COMMANDS[name][0]).command
    known = {option for parameter in command.params for option in getattr(parameter, "opts", ())}
    assert {a for a in arguments if a.startswith("-") and a != "--"} <= known
    arguments = [a for a in arguments if a != "..."]
    with command.make_context(name, arguments, resilient_parsing=True) as context:
        assert context.command is command
    assert cli.get_command(None, name) is command


def test_the_jobs_can_be_read_and_hand_on_what_they_write():
    workflow, pipeline, hook = (yaml.safe_load(block) for block in blocks("yaml"))
    steps = workflow["jobs"]["review"]["steps"]
    (review,) = [step["run"] for step in steps if "seamcheck review" in step.get("run", "")]
    kept = steps[-1]["with"]["path"].split()
    assert all(f" {name}" in review for name in kept)
    assert steps[0]["with"]["fetch-depth"] == 0
    job = pipeline["review-seams"]
    assert all(f" {name}" in job["script"][-1] for name in job["artifacts"]["paths"])
    assert {h["id"] for h in hook["repos"][0]["hooks"]} <= {h["id"] for h in HOOKS}


def test_the_hooks_have_what_the_tool_that_runs_them_needs():
    # keys that pre-commit requires of a hook definition: id, name, entry, language
    for hook in HOOKS:
        assert {"id", "name", "entry", "language"} <= set(hook)
        assert hook["language"] == "python"
    pattern = re.compile(HOOKS[0]["files"])
    for name in ("a.step", "models/B.STP", "c.p21"):
        assert pattern.search(name)
    assert not pattern.search("steps.txt")


@pytest.mark.parametrize("page", PAGES)
def test_the_pages_carry_the_cautions(page):
    for words in ("not an approval", "Class 4", "IEC 60825-1", "clamps", "fumes", "validated process"):
        assert words in PAGES[page].replace("\n", " ")


def test_the_picture_is_there_and_small():
    (name,) = re.findall(r"!\[[^\]]+\]\(([^)]+)\)", PAGES["compare.md"])
    assert 10_000 < (ROOT / "docs" / name).stat().st_size < 300_000


def test_every_style_of_annotations_is_in_the_page():
    for style in STYLES:
        assert f"`--annotations {style}`" in PAGES["ci.md"]


def test_no_name_of_a_host_stands_in_the_pages():
    for page in PAGES.values():
        assert not re.search(r"github|gitlab|jenkins|azure|bitbucket|circleci", page, re.IGNORECASE)
