"""What everything on a terminal is made of: plain tables, headings, indented lines, and text without control signs."""

from __future__ import annotations

from collections.abc import Collection, Iterable, Iterator

from rich.console import RenderableType
from rich.padding import Padding
from rich.table import Table
from rich.text import Text


def clean(text: str) -> str:
    """Text from a model without control characters, which a terminal would obey."""
    return "".join(c if c.isprintable() else "\N{REPLACEMENT CHARACTER}" for c in text)


def line(*parts: str | tuple[str, str]) -> Text:
    """Text with its styles that stays on one line however narrow the terminal is."""
    text = Text.assemble(*parts)
    text.no_wrap, text.overflow = True, "ignore"
    return text


def table(heads: Iterable[str] = (), right: Collection[int] = (), fold: bool = False) -> Table:
    """A table without lines; the columns numbered in ``right`` are flush right, with ``fold`` long words are broken."""
    found = Table(box=None, pad_edge=False, padding=(0, 2, 0, 0), show_edge=False, header_style="bold")
    for k, head in enumerate(heads):
        found.add_column(head, justify="right" if k in right else "left", overflow="fold" if fold else "ellipsis")
    return found


def heading(text: str) -> Iterator[RenderableType]:
    """A heading with an empty line before it."""
    yield Text()
    yield Text(text, style="bold")


def indented(content: RenderableType | str, by: int = 2, style: str = "") -> Padding:
    """Something with room to its left."""
    return Padding(Text(content, style=style) if isinstance(content, str) else content, (0, 0, 0, by))


def bullets(lines: Iterable[str], style: str = "") -> Iterator[RenderableType]:
    """Lines that begin with a dash."""
    for text in lines:
        yield indented(f"- {text}", style=style)
