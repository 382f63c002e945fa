"""The document's part "view" as the page carries it: a third of the size, and no more than a thousandth of a mm lost.

Numbers become integers of three bytes, which base64 writes as four letters each: equal numbers look alike, so the
compression finds them. Lengths are told in steps, of 0.001 mm as long as the part lies within 8 m of its origin.
"""

from __future__ import annotations

import base64
from collections.abc import Mapping
from typing import Any

import numpy as np

_LARGEST = 2**23 - 1
_STEP = 0.001


def page_view(view: Mapping[str, Any] | None) -> dict[str, Any] | None:
    """Sections and meshes for the page's script (frontend/src/unpack.ts); None without any."""
    if not view:
        return None
    meshes = [_mesh(mesh) for mesh in view.get("meshes") or ()]
    return {"sections": [_section(section) for section in view.get("sections") or ()], "meshes": meshes}


def whole_numbers(values: np.ndarray) -> str:
    """(n,) integers below 2^23 in size as base64 of three bytes each, the least first."""
    wrapped = np.ascontiguousarray(values.reshape(-1), dtype="<i4").view("u1").reshape(-1, 4)[:, :3]
    return base64.b64encode(np.ascontiguousarray(wrapped).tobytes()).decode("ascii")


def _section(section: Mapping[str, Any]) -> dict[str, Any]:
    lengths, step = _steps(_floats(section["segments"]))
    kept = {key: value for key, value in section.items() if key not in ("segments", "face")}
    return {**kept, "segments": whole_numbers(lengths), "step": step}


def _mesh(mesh: Mapping[str, Any]) -> dict[str, Any]:
    """Points and corners each as the difference to the one before, which mostly is small."""
    lengths, step = _steps(_floats(mesh["positions"]).reshape(-1, 3))
    corners = np.frombuffer(base64.b64decode(mesh["triangles"]), "<u4").astype(np.int64)
    faces = np.frombuffer(base64.b64decode(mesh["face"]), "<i4").astype(np.int64)
    return {
        "part": mesh["part"], "left_out": mesh.get("left_out") or 0, "step": step,
        "positions": whole_numbers(np.diff(lengths, axis=0, prepend=np.zeros((1, 3), dtype=np.int64))),
        "triangles": whole_numbers(np.diff(corners, prepend=0)), "face": whole_numbers(np.diff(faces, prepend=0)),
    }  # fmt: skip


def _floats(packed: str) -> np.ndarray:
    return np.frombuffer(base64.b64decode(packed), "<f4").astype(float)


def _steps(lengths: np.ndarray) -> tuple[np.ndarray, float]:
    """Lengths as whole steps, and the step in mm."""
    most = float(np.abs(lengths).max()) if lengths.size else 0.0
    step = max(_STEP, most / _LARGEST)
    return np.rint(lengths / step).astype(np.int64), step
