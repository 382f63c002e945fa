"""Templates are compiled once and kept beside Python's modules; whatever becomes of the file, the page is the same."""

from __future__ import annotations

import os
import sys
from pathlib import Path

import jinja2
import pytest

from seamcheck.catalogue.voice import Voice, speaking
from seamcheck.report.html import compiled

HTML = "seamcheck.report.html"


@pytest.fixture
def folder(tmp_path, monkeypatch) -> Path:
    """Where Python keeps what it compiled, for this test."""
    monkeypatch.setattr(sys, "pycache_prefix", str(tmp_path))
    monkeypatch.setattr(sys, "dont_write_bytecode", False)
    return tmp_path


def kept(folder: Path) -> list[Path]:
    return [file for file in folder.rglob("*.html.*") if file.is_file()]


def text_of(language: str = "en") -> str:
    with speaking(Voice(language)):
        return "".join(compiled.template(HTML, "material.html").render(joints=()).split())


def test_a_template_is_compiled_once_for_each_language(folder, monkeypatch):
    english, german = text_of(), text_of("de")
    assert len(kept(folder)) == 2

    def compile_again(*_: object, **__: object) -> None:
        raise AssertionError("compiled again")

    monkeypatch.setattr(jinja2.Environment, "compile", compile_again)
    assert text_of() == english
    assert text_of("de") == german


@pytest.mark.parametrize("damage", ["cut", "other", "older texts"])
def test_a_file_that_does_not_fit_is_made_anew(folder, damage, monkeypatch):
    before = text_of()
    (file,) = kept(folder)
    whole = file.read_bytes()
    if damage == "older texts":
        monkeypatch.setattr(jinja2, "__version__", "0.0")
    else:
        file.write_bytes(whole[: len(whole) // 2] if damage == "cut" else b"something else")
    assert text_of() == before
    assert file.read_bytes() != whole if damage == "older texts" else file.read_bytes() == whole


def test_nothing_is_kept_where_python_keeps_nothing(folder, monkeypatch):
    monkeypatch.setattr(sys, "dont_write_bytecode", True)
    assert text_of()
    assert not kept(folder)


@pytest.mark.skipif(not hasattr(os, "geteuid"), reason="folders are closed otherwise")
def test_a_folder_that_can_not_be_written_is_left_alone(folder, monkeypatch):
    monkeypatch.setattr(sys, "pycache_prefix", os.devnull)  # nobody, however mighty, makes a folder below it
    assert text_of()
