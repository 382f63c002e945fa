"""Text as a stranger's file gives it, made fit to read."""

from __future__ import annotations


def readable(text: str) -> str:
    """Text in which bytes that are no UTF-8, and characters that are unseen or turn a line round, are spelled out."""
    if text.isprintable():  # nearly all
        return text
    text = text.encode("utf-8", "surrogateescape").decode("utf-8", "backslashreplace")
    return "".join(c if c.isprintable() else c.encode("unicode_escape").decode("ascii") for c in text)
