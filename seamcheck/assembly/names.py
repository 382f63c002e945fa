"""Names as a stranger's file or folder gives them, made fit to read: the unseen is spelled out, long ones are cut."""

from __future__ import annotations

from seamcheck.catalogue.readable import readable

__all__ = ["MOST", "readable", "short"]

MOST = 80
"""Characters of a part's name. The whole name stands in the part's path."""

_KEPT_AT_END = 16


def short(name: str, most: int = MOST) -> str:
    """A readable name of at most so many characters, its beginning and its end kept."""
    name = readable(name)
    return name if len(name) <= most else f"{name[: most - _KEPT_AT_END - 3]}...{name[-_KEPT_AT_END:]}"
