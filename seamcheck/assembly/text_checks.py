"""Look at the text for what would crash the kernel or lead it astray, before it reads it."""

from __future__ import annotations

import re

import numpy as np

from seamcheck.assembly.declared import step_schema
from seamcheck.assembly.owners import product_name
from seamcheck.assembly.text import StepText, without_comments, without_strings
from seamcheck.catalogue.say import refused, say
from seamcheck.errors import NotReviewed

DEEPEST = 50  # brackets within brackets; real files have fewer than ten, and the kernel's parser recurses

_RUN_OF_BRACKETS = re.compile(rb"\({%d,}|\){%d,}" % (DEEPEST, DEEPEST))
_ALL_BUT_BRACKETS = bytes(set(range(256)) - set(b"()"))
_DATA = re.compile(rb"\bDATA\b")
_RECORD = re.compile(rb"#\d+\s*=")


def check_text(name: str, text: StepText) -> tuple[StepText, list[str]]:
    """Look for what the kernel would choke on or follow wrongly without a word.

    Returns
    -------
    StepText
        the text as the kernel can live with it
    list of str
        sentences on damage

    Raises
    ------
    NotReviewed : for a file without records, with absurd nesting, or with a product that contains itself
    """
    if step_schema(text).upper().startswith("IFC"):
        raise refused("unsupported", "unsupported.building", file=repr(name))
    _check_records(name, text)
    text, doubts = _check_nesting(name, text)
    _check_cycles(name, text)
    return text, doubts


def _check_records(name: str, text: StepText) -> None:
    data = _DATA.search(text.data)
    if _RECORD.search(text.data, data.end() if data else 0) is None:
        raise refused("empty", "empty.data", file=repr(name))
    if data is None:
        raise refused("unreadable", "unreadable.data", file=repr(name))


def _check_nesting(name: str, text: StepText) -> tuple[StepText, list[str]]:
    """The text without long runs of brackets."""
    if _depth(text.data) <= DEEPEST:  # strings and comments counted in: at most too deep
        return text, []
    depth = _depth(without_comments(without_strings(text.data)))
    if depth <= DEEPEST:
        return text, []
    damage = say("file.nesting", file=repr(name), depth=depth)
    mended = StepText(_shortened(text.data))
    if _depth(without_comments(without_strings(mended.data))) > DEEPEST:
        raise NotReviewed("unreadable", damage)
    return mended, [damage]


def _shortened(data: bytes) -> bytes:
    """One bracket in place of each long run, blanks for the others; what closes brackets before a run stays."""
    left_out = 0  # opening brackets whose closing ones are still to come

    def short(run: re.Match[bytes]) -> bytes:
        nonlocal left_out
        count = len(run[0])
        if run[0].startswith(b"("):
            left_out += count - 1
            return b"(".ljust(count)
        closing = min(max(1, count - left_out), DEEPEST)
        left_out = max(0, left_out - (count - closing))
        return (b")" * closing).ljust(count)

    return _RUN_OF_BRACKETS.sub(short, data)


def _depth(data: bytes) -> int:
    brackets = np.frombuffer(data.translate(None, delete=_ALL_BUT_BRACKETS), dtype=np.uint8)
    depth = np.cumsum(np.where(brackets == 40, 1, -1))
    return int(depth.max(initial=0))


def _check_cycles(name: str, text: StepText) -> None:
    """Raise when a product contains itself, directly or through others."""
    inside: dict[int, set[int]] = {}
    for _, offset in text.records_of(b"NEXT_ASSEMBLY_USAGE_OCCURRENCE"):
        references = text.references(text.record_at(offset))
        if len(references) >= 2:
            inside.setdefault(references[0], set()).add(references[1])
    product = _on_a_cycle(inside)
    if product is not None:
        contains = repr(product_name(text, product))
        raise refused("unreadable", "unreadable.cycle", file=repr(name), product=contains)


def _on_a_cycle(inside: dict[int, set[int]]) -> int | None:
    """A node of a directed graph that lies on a cycle, or None (Kahn's algorithm: peel off the rest)."""
    waiting = dict.fromkeys(inside, 0)
    for below in inside.values():
        for node in below:
            waiting[node] = waiting.get(node, 0) + 1
    free = [node for node, above in waiting.items() if not above]
    while free:
        node = free.pop()
        del waiting[node]
        for child in inside.get(node, ()):
            waiting[child] -= 1
            if not waiting[child]:
                free.append(child)
    # what is left lies on a cycle or below one: walk up until a node repeats
    if not waiting:
        return None
    above = {child: parent for parent, children in inside.items() if parent in waiting for child in children}
    seen: set[int] = set()
    current = next(iter(waiting))
    while current not in seen:
        seen.add(current)
        current = above[current]
    return current
