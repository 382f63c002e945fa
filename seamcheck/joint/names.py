"""A part by the name that a user typed."""

from __future__ import annotations

import difflib
from collections import Counter
from collections.abc import Mapping

from seamcheck.assembly.parts import Assembly, Part
from seamcheck.errors import UsageError
from seamcheck.kernel import Body


def shown(part: Part) -> str:
    """A part as messages call it."""
    return f"'{part.name}' ({part.id})" if part.name else part.id


class Names:
    """Parts as messages call them; equal names are told apart by size, place and file.

    Parameters
    ----------
    assembly : as read; bodies : of its solids, by part id
    """

    def __init__(self, assembly: Assembly, bodies: Mapping[str, Body]) -> None:
        self._parts = {part.id: part for part in assembly.parts}
        self._bodies = bodies
        solids = [part for part in assembly.parts if part.kind == "solid"]
        self._often = {name for name, times in Counter(part.name for part in solids).items() if times > 1}
        self._files = [file.name for file in assembly.files]

    def __call__(self, ident: str) -> str:
        part = self._parts[ident]
        if part.name not in self._often or ident not in self._bodies:
            return shown(part)
        corners = self._bodies[ident].corners
        if not len(corners):
            return shown(part)
        low, high = corners.min(axis=0), corners.max(axis=0)
        size = " x ".join(f"{side:.0f}" for side in high - low)
        place = ", ".join(f"{c:.0f}" for c in (high + low) / 2)
        file = f", {self._files[part.file]}" if len(self._files) > 1 else ""
        called = f"'{part.name}' ({part.id}" if part.name else f"{part.id} ("
        return f"{called}{', ' if part.name else ''}{size} mm, about ({place}){file})"


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
