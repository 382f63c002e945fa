"""Markdown as a CommonMark parser reads it; annotations as hosts take them apart."""

from __future__ import annotations

import re
from pathlib import PurePosixPath

import pytest
from ci_documents import WILD, plain, refused, wild, with_states
from hypothesis import given
from hypothesis import strategies as st
from markdown_it import MarkdownIt

from seamcheck.catalogue.cautions import SHORT_CAUTION
from seamcheck.report.ci import escape
from seamcheck.report.ci.annotations import render_plain, render_workflow
from seamcheck.report.ci.markdown import render_markdown
from seamcheck.report.ci.reviews import Reviewed

# markdown-it-py: CommonMark with tables, raw HTML switched on, so that it would be seen
PARSER = MarkdownIt("commonmark", {"html": True}).enable("table")


def tokens(text):
    for token in PARSER.parse(text):
        yield token
        yield from token.children or ()


def shown(text):
    """Texts that a reader of the Markdown sees."""
    return [t.content for t in tokens(text) if t.type in ("text", "code_inline")]


@pytest.mark.parametrize("document", [plain(), wild(), refused()], ids=["plain", "wild", "refused"])
def test_nothing_of_a_model_becomes_mark_up(document):
    text = render_markdown(document)
    kinds = {token.type for token in tokens(text)}
    assert not kinds & {"html_block", "link_open", "image", "fence", "code_block", "hr"}
    raw = [t.content for t in tokens(text) if t.type == "html_inline"]
    assert set(raw) <= {"<br>"}  # our own, within a cell
    assert not re.search(r"(?<!`)[@#]\w", re.sub(r"`+[^\n]*?`+", "", text.replace("# Seam", "").replace("## ", "")))


def test_every_row_of_a_table_has_all_its_cells():
    for document in (plain(), wild(), with_states(wild(), f0="same")):
        rows = [line for line in render_markdown(document).splitlines() if line.startswith("|")]
        heads = [len(re.findall(r"(?<!\\)\|", row)) for row in rows]
        assert rows
        assert len(set(heads)) == 1


def test_the_summary_says_the_verdict_every_finding_and_the_caution():
    document = plain()
    text = " ".join(shown(render_markdown(document, [PurePosixPath("models/a.step")])))
    assert "models/a.step" in text
    for finding in document["findings"]:
        assert finding["id"] in text
    assert SHORT_CAUTION in text


def test_several_models_have_a_table_of_them_first():
    reviews = [Reviewed(d, [PurePosixPath(f"{i}.step")]) for i, d in enumerate((plain(), refused()))]
    text = render_markdown(reviews)
    assert text.index("| model | verdict |") < text.index("## ")
    assert text.count("\n## ") == 2
    assert "No model to review" in render_markdown([])


def test_a_baseline_shows_what_is_known_and_what_is_fixed():
    text = render_markdown(with_states(plain(), f0="same", f1="worse"))
    assert "known from the baseline" in text
    assert "worse than in the baseline" in text
    assert "rib-width-00000000" in text


@given(st.text())
def test_any_text_comes_out_of_markdown_as_it_was(text):
    plain_text = re.sub(r"\s+", " ", escape.one_line(text)).strip()
    found = "".join(shown(f"x {escape.markdown(text)} x"))
    assert (
        found.replace("\u200b", "") == f"x {plain_text} x".replace("\u200b", "").replace("x  x", "x x")
        or not plain_text
    )


@given(st.text())
def test_any_text_comes_out_of_a_code_span_as_it_was(text):
    plain_text = re.sub(r"\s+", " ", escape.one_line(text)).strip()
    found = [t.content for t in tokens(f"x {escape.code(text, in_table=False)} x") if t.type == "code_inline"]
    assert found == ([plain_text] if plain_text else [])


def test_plain_annotations_are_file_line_severity_message():
    document = plain()
    document["findings"][0]["faces"] = [{"part": "p1", "face": 1, "step_entity": "#5", "line": 42}]
    lines = render_plain(document, [PurePosixPath("models/a.step")]).splitlines()
    live = [f for f in document["findings"] if not f["waived"]]
    assert len(lines) == len(live) + 1  # the caution
    pattern = re.compile(r"models/a\.step(?::(\d+))?: (error|warning|note): (.+) \[([a-z-]+)\]")
    for line, finding in zip(lines, live, strict=False):
        match = pattern.fullmatch(line)
        assert match
        assert match[4] == finding["rule"]
        assert match[2] == {"must-fix": "error", "attention": "warning", "note": "note"}[finding["severity"]]
    assert pattern.fullmatch(lines[0])[1] == "42"
    assert SHORT_CAUTION in lines[-1]


def read_command(line):
    """A workflow command taken apart the way hosts do: properties at ',' and '=', then %XX undone."""
    match = re.fullmatch(r"::(\w+) ([^:]*)::(.*)", line)
    assert match, line
    undo = {"%0D": "\r", "%0A": "\n", "%3A": ":", "%2C": ",", "%25": "%"}

    def plain_text(text):
        return re.sub("|".join(undo), lambda m: undo[m[0]], text)

    properties = dict(part.split("=", 1) for part in match[2].split(","))
    return match[1], {k: plain_text(v) for k, v in properties.items()}, plain_text(match[3])


def test_workflow_annotations_are_one_command_a_line_and_can_be_taken_apart():
    document = plain()
    path = "models/50% a,b:c.step"
    lines = render_workflow(document, [PurePosixPath(path)]).splitlines()
    live = [f for f in document["findings"] if not f["waived"]]
    for line, finding in zip(lines, live, strict=False):
        kind, properties, message = read_command(line)
        assert kind == {"must-fix": "error", "attention": "warning", "note": "notice"}[finding["severity"]]
        assert properties["file"] == path
        assert finding["message"] in message
        assert finding["id"] in message
    assert SHORT_CAUTION in lines[-1]


@pytest.mark.parametrize("render", [render_plain, render_workflow])
@pytest.mark.parametrize("make", [wild, refused])
def test_hostile_names_make_no_lines_and_no_commands_of_their_own(render, make):
    document = make()
    lines = render(document, [PurePosixPath(WILD)]).split("\n")
    count = sum(not f["waived"] for f in document["findings"]) or 1
    assert len(lines) == count + 2  # the caution, and the end
    assert not any("\x1b" in line for line in lines)
    for line in lines:
        assert not line.startswith("::") or render is render_workflow
        if line.startswith("::"):
            assert line.startswith(("::error file=", "::warning file=", "::notice "))


@pytest.mark.parametrize("name", ["::add-mask::x.step", "##[error].step", "[x].step"])
def test_a_file_name_is_no_command(name):
    for line in render_plain(plain(), [PurePosixPath(name)]).splitlines()[:-1]:
        assert line.startswith(f"./{name}")


def test_known_findings_are_notes():
    document = plain()
    numbers = {f"f{k}": "same" for k in range(len(document["findings"]))}
    known = with_states(document, **numbers)
    assert not re.search(r": (error|warning): ", render_plain(known))
    assert not re.search(r"^::(error|warning)", render_workflow(known), re.MULTILINE)
