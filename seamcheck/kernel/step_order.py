"""One order for the colours in a STEP file that the kernel wrote, so that two runs write the same bytes.

The kernel writes shapes and products in their own order, but colours in the order of addresses in memory. They come
last, and nothing before them refers to them: here they are sorted by what they say and numbered anew.
"""

from __future__ import annotations

import hashlib
import re
from collections.abc import Iterator
from pathlib import Path

_ENTITY = re.compile(r"#(\d+)\s*=\s*((?:[^';]|'(?:[^']|'')*')*);", re.S)
_TOKEN = re.compile(r"'(?:[^']|'')*'|#(\d+)")
_COLOURS = re.compile(r"^#(\d+) = MECHANICAL_DESIGN_GEOMETRIC_PRESENTATION_REPRESENTATION\(", re.M)
_STYLED = re.compile(r"(MECHANICAL_DESIGN_GEOMETRIC_PRESENTATION_REPRESENTATION\('[^']*',\()([#\d,]*)(\).*)", re.S)
_WIDTH = 72


def order_colours(file: Path) -> None:
    """Rewrite the file with its colours in an order that depends on nothing but the file's content."""
    text = file.read_bytes().decode("latin-1")
    start = _COLOURS.search(text)
    if start is None:
        return
    end = text.index("ENDSEC;", start.start())
    tail = {int(m[1]): re.sub(r"\s*\n\s*", "", m[2]) for m in _ENTITY.finditer(text, start.start(), end)}
    ordered = "".join(_written(tail, int(start[1])))
    file.write_bytes((text[: start.start()] + ordered + text[end:]).encode("latin-1"))


def _written(tail: dict[int, str], first: int) -> Iterator[str]:
    """The entities of the tail, numbered from ``first`` in the order in which the sorted roots need them."""
    said = _contents(tail)
    inner = {ref for body in tail.values() for ref in _references(body)}
    roots = sorted((n for n in tail if n not in inner), key=said.__getitem__)
    number: dict[int, int] = {}
    order: list[int] = []
    waiting = roots[::-1]
    while waiting:
        n = waiting.pop()
        if n in number or n not in tail:
            continue
        number[n] = first + len(order)
        order.append(n)
        tail[n] = _sorted_items(tail[n], said)
        waiting.extend(reversed(_references(tail[n])))
    for n in order:
        body = _TOKEN.sub(lambda m: f"#{number.get(int(m[1]), int(m[1]))}" if m[1] else m[0], tail[n])
        yield _folded(f"#{number[n]} = {body};")


def _contents(tail: dict[int, str]) -> dict[int, str]:
    """Number -> digest of what an entity says, all that it refers to within the tail included."""
    said: dict[int, str] = {}
    opened: set[int] = set()  # an entity that leads back to itself is not followed twice
    for start in tail:
        waiting = [start]
        while waiting:
            n = waiting[-1]
            missing = [r for r in _references(tail[n]) if r in tail and r not in said and r not in opened]
            if n not in opened and missing:
                opened.add(n)
                waiting.extend(missing)
                continue
            waiting.pop()
            if n not in said:
                body = _sorted_items(tail[n], said)
                full = _TOKEN.sub(lambda m: said.get(int(m[1]), m[0]) if m[1] else m[0], body)
                said[n] = hashlib.sha256(full.encode("latin-1")).hexdigest()
    return said


def _sorted_items(body: str, said: dict[int, str]) -> str:
    """The body with the items of a presentation, which are a set, in the order of what they say."""
    found = _STYLED.fullmatch(body)
    if found is None:
        return body
    items = sorted(found[2].split(","), key=lambda ref: said.get(int(ref[1:]), ref))
    return found[1] + ",".join(items) + found[3]


def _references(body: str) -> list[int]:
    return [int(m[1]) for m in _TOKEN.finditer(body) if m[1]]


def _folded(entity: str) -> str:
    """An entity on lines of at most about 72 characters, broken after commas outside of strings."""
    lines, line = [], ""
    for piece in re.findall(r"(?:'(?:[^']|'')*'|[^',])*,?", entity):
        if line and len(line) + len(piece) > _WIDTH:
            lines.append(line)
            line = "  "
        line += piece
    return "\n".join([*lines, line]) + "\n"
