"""What a file holds instead of exact bodies."""

from __future__ import annotations

import re

from seamcheck.assembly.text import StepText
from seamcheck.catalogue.say import refused, say
from seamcheck.errors import NotReviewed

SOLIDS = (b"MANIFOLD_SOLID_BREP", b"BREP_WITH_VOIDS", b"FACETED_BREP")  # ISO 10303-42
_TESSELLATED = (b"TESSELLATED_", b"TRIANGULATED_FACE", b"COMPLEX_TRIANGULATED")
_CURVES = (b"GEOMETRIC_CURVE_SET", b"EDGE_BASED_WIREFRAME", b"SHELL_BASED_WIREFRAME", b"GEOMETRIC_SET")
_DOCUMENT = re.compile(rb"DOCUMENT_FILE\s*\(\s*'((?:[^']|'')*)'")


def nothing_exact(name: str, text: StepText) -> NotReviewed:
    """The error for a file from which no body came."""
    outside = _outside(text)
    if outside:
        named = ", ".join(outside[:3]) + (" ..." if len(outside) > 3 else "")
        return refused("unsupported", "unsupported.others", file=repr(name), others=named)
    solids = sum(1 for keyword in SOLIDS for _ in text.records_of(keyword))
    if solids:
        return refused("unreadable", "unreadable.solids", file=repr(name), count=solids)
    if any(keyword in text.data for keyword in _TESSELLATED):
        return refused("unsupported", "unsupported.triangles", file=repr(name))
    if any(keyword in text.data for keyword in _CURVES):
        return refused("no-solid", "no-solid.wireframe", file=repr(name))
    return refused("empty", "empty.bodies", file=repr(name))


def outside_files(name: str, text: StepText) -> list[str]:
    """A note on files that a file refers to, whose bodies this file lacks."""
    outside = _outside(text)
    if not outside:
        return []
    return [say("file.others", file=repr(name), others=", ".join(outside[:3]))]


def _outside(text: StepText) -> list[str]:
    """Names of STEP files that the file refers to, without folders."""
    names = []
    for found in _DOCUMENT.finditer(text.data):
        word = found[1].decode("utf-8", "replace").replace("\\", "/").rsplit("/", 1)[-1]
        if word.lower().endswith((".stp", ".step", ".p21", ".stpz")) and word not in names:
            names.append(word)
    return names
