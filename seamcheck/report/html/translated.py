"""Templates of pages in the language of the report: their fixed texts are exchanged while a template is compiled.

A text stands between two tags, or in an attribute that people read; whoever writes a template marks nothing. Words
within an expression are passed to ``tr``.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator
from typing import Any

from jinja2 import Environment, nodes
from jinja2.ext import Extension
from jinja2.lexer import Token, TokenStream

from seamcheck.catalogue.voice import tr
from seamcheck.report.html import skeleton

_READ = ("aria-label", "title", "placeholder", "alt")
_ATTRIBUTE = re.compile(rf'(\b(?:{"|".join(_READ)})=")([^"<]*)')
_WORD = re.compile(r"[A-Za-zÀ-ÿ]{2}")
_SPLIT = re.compile(r"(<!--.*?-->|<(?:style|script)\b.*?(?:</(?:style|script)>|$)|<[^>]*(?:>|$))", re.DOTALL)


class _Exchange:
    """Exchanges the texts of a template's data, piece by piece; remembers whether a piece ended within a tag."""

    def __init__(self) -> None:
        self._in_tag = False

    def pieces(self, data: str) -> Iterator[tuple[str, str]]:
        """('text' or 'rest', piece) in order; together they are the data."""
        if self._in_tag:
            end = data.find(">")
            if end < 0:
                yield from self._attributes(data)
                return
            yield from self._attributes(data[: end + 1])
            data, self._in_tag = data[end + 1 :], False
        for piece in _SPLIT.split(data):
            if piece.startswith("<"):
                self._in_tag = not piece.endswith(">")
                yield from self._attributes(piece)
            elif piece:
                yield from _with_spaces(piece)

    @staticmethod
    def _attributes(tag: str) -> Iterator[tuple[str, str]]:
        begin = 0
        for found in _ATTRIBUTE.finditer(tag):
            yield "rest", tag[begin : found.start(2)]
            yield from _with_spaces(found[2])
            begin = found.end()
        yield "rest", tag[begin:]


def _with_spaces(text: str) -> Iterator[tuple[str, str]]:
    """A text without the space around it; what holds no word is no text."""
    bare = text.strip()
    if not _WORD.search(bare):
        yield "rest", text
        return
    start = text.index(bare)
    yield "rest", text[:start]
    yield "text", " ".join(bare.split())
    yield "rest", text[start + len(bare) :]


class Translated(Extension):
    """Exchanges the fixed texts of a template for those of the language that holds while it is compiled."""

    def filter_stream(self, stream: TokenStream) -> Iterable[Token]:
        """The tokens with the data's texts exchanged."""
        exchange = _Exchange()
        for token in stream:
            if token.type != "data":
                yield token
                continue
            told = "".join(tr(piece) if kind == "text" else piece for kind, piece in exchange.pieces(token.value))
            yield Token(token.lineno, "data", told)


def environment(**options: Any) -> Environment:
    """The environment of the pages' templates, in the language that holds while a template is compiled."""
    made = skeleton.environment(extensions=[Translated], **options)
    made.globals["tr"] = tr
    return made


def texts_of_template(source: str) -> list[str]:
    """All texts of a template: fixed ones, and first arguments of ``tr`` in its expressions."""
    made = environment()
    exchange = _Exchange()
    found = [
        piece
        for _, kind, value in made.lex(source)
        if kind == "data"
        for what, piece in exchange.pieces(value)
        if what == "text"
    ]
    found += [
        call.args[0].value
        for call in made.parse(source).find_all(nodes.Call)
        if isinstance(call.node, nodes.Name) and call.node.name == "tr" and isinstance(call.args[0], nodes.Const)
    ]
    return list(dict.fromkeys(found))
