"""What a file holds instead of exact bodies."""

from __future__ import annotations

import re

from seamcheck.assembly.text import StepText
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
        return NotReviewed(
            "unsupported",
            f"{name!r} only refers to other files ({named}), which hold the bodies. Export the assembly as "
            "one file, or name those files instead.",
        )
    solids = sum(1 for keyword in SOLIDS for _ in text.records_of(keyword))
    if solids:
        bodies = "a solid body" if solids == 1 else f"{solids} solid bodies"
        return NotReviewed(
            "unreadable",
            f"{name!r} lists {bodies}, and the CAD kernel can read none: the file is damaged. Export it again.",
        )
    if any(keyword in text.data for keyword in _TESSELLATED):
        return NotReviewed(
            "unsupported",
            f"{name!r} holds only triangles (a tessellated model), no exact faces. Export exact solids.",
        )
    if any(keyword in text.data for keyword in _CURVES):
        return NotReviewed(
            "no-solid", f"{name!r} holds only curves and points (a wireframe), no solid body. Export solids."
        )
    return NotReviewed(
        "empty", f"{name!r} holds no body that can be read. Select the bodies in CAD and export them again."
    )


def outside_files(name: str, text: StepText) -> list[str]:
    """A note on files that a file refers to, whose bodies are missing here."""
    outside = _outside(text)
    if not outside:
        return []
    return [f"{name!r} refers to other files ({', '.join(outside[:3])}), whose bodies are not reviewed."]


def _outside(text: StepText) -> list[str]:
    """Names of STEP files that the file refers to, without folders."""
    names = []
    for found in _DOCUMENT.finditer(text.data):
        word = found[1].decode("utf-8", "replace").replace("\\", "/").rsplit("/", 1)[-1]
        if word.lower().endswith((".stp", ".step", ".p21", ".stpz")) and word not in names:
            names.append(word)
    return names
