"""A part by the name that a user typed."""

from __future__ import annotations

import difflib

from seamcheck.assembly.parts import Part
from seamcheck.errors import UsageError


def shown(part: Part) -> str:
    """A part as messages call it."""
    return f"'{part.name}' ({part.id})" if part.name else part.id


def named_part(wanted: str | None, parts: list[Part], option: str) -> Part | None:
    """The part with this id, path or name; None when nothing is wanted.

    Raises
    ------
    UsageError : no part has this name (the nearest ones are listed), or several have
    """
    if wanted is None:
        return None
    for key in (lambda p: p.id, lambda p: "/".join(p.path), lambda p: p.name, lambda p: p.path[-1]):
        found = [part for part in parts if key(part) == wanted]
        if len(found) == 1:
            return found[0]
        if len(found) > 1:
            ids = ", ".join(part.id for part in found)
            raise UsageError(f"{option} {wanted!r} names {len(found)} parts ({ids}). Give one of these ids instead.")
    names = [part.name for part in parts if part.name]
    near = difflib.get_close_matches(wanted, names, n=3, cutoff=0.3) or names[:5]
    listed = ", ".join(repr(name) for name in dict.fromkeys(near)) or "none of the parts has a name"
    raise UsageError(
        f"{option} {wanted!r}: no part has this name. Nearest: {listed}. Ids p1 to p{len(parts)} work too."
    )
