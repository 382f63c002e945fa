"""The walk through both sections: path data of every place, for the page and its script."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

import numpy as np
import shapely
from shapely.geometry.base import BaseGeometry

from seamcheck.catalogue.quantities import QUANTITIES
from seamcheck.catalogue.voice import tr
from seamcheck.comparison.overlay import Overlay, Place
from seamcheck.comparison.tolerances import PAD, tolerance
from seamcheck.document.view import BASE, COVER
from seamcheck.report.facts import mm, number_text
from seamcheck.report.language import quantity_title
from seamcheck.report.section import solids

SIDE, LOW, HIGH = 5.5, -4.0, 4.5
"""Window of the drawing, mm beside, below and above the rib's top."""

_NAMES = {BASE: "base", COVER: "cover"}


def walks(document: Mapping[str, Any], overlays: Sequence[Overlay]) -> list[dict[str, Any]]:
    """One entry for each path: its places with path data ('d' of SVG) and what the values there were and are."""
    return [_walk(document, overlay) for overlay in overlays]


def _walk(document: Mapping[str, Any], overlay: Overlay) -> dict[str, Any]:
    joint = next(j for j in document["joints"] if j["new"] == overlay.joint)
    track = next((t for t in joint["tracks"] if t["contour"] == overlay.contour), None)
    return {
        "joint": overlay.joint,
        "contour": overlay.contour,
        "worst": overlay.worst,
        "window": _window(overlay),
        "places": [_place(track, place, _changed(joint, overlay.contour, place.s)) for place in overlay.places],
    }


def _window(overlay: Overlay) -> list[float]:
    """Left, top, width and height of the drawing, in the axes of SVG: as wide as any of the sections needs."""
    segments = np.vstack([part for place in overlay.places for part, _ in (place.new, place.old)])
    u, v = segments[:, ::2], segments[:, 1::2]
    left, right = max(float(u.min()), -SIDE) - 0.3, min(float(u.max()), SIDE) + 0.3
    low, high = max(float(v.min()), LOW) - 0.7, min(float(v.max()), HIGH) + 0.3
    return [round(left, 2), round(-high, 2), round(right - left, 2), round(high - low, 2)]


def _changed(joint: Mapping[str, Any], contour: str, s: float) -> set[str]:
    """Keys of the quantities of which the comparison says that they changed at a place of a path."""
    return {
        quantity["quantity"]
        for quantity in joint["quantities"]
        for change in quantity["changes"]
        if change["contour"] == contour and (change["is_whole"] or _lies_in(s, change["from_s"], change["to_s"]))
    }


def _lies_in(s: float, start: float, end: float) -> bool:
    """Whether an arc length lies in a stretch; one that runs over the path's start ends before it begins."""
    start, end = start - PAD, end + PAD
    return start <= s <= end if start <= end else s >= start or s <= end


def _place(track: Mapping[str, Any] | None, place: Place, changed: set[str]) -> dict[str, Any]:
    rows = []
    if track is not None and track["s"]:
        i = int(np.argmin(np.abs(np.asarray(track["s"], dtype=float) - place.s)))
        for key, column in track["columns"].items():
            old, new = column["old"][i], column["new"][i]
            if key in QUANTITIES and key in changed and _differs(key, old, new):
                rows.append([quantity_title(key), number_text(old, key), number_text(new, key)])
    return {
        "s": round(place.s, 2),
        "old_s": round(place.old_s, 2),
        "where": tr("new s = {new}, old s = {old}", new=mm(place.s, 2), old=mm(place.old_s, 2)),
        "rows": rows,
        **{f"old_{name}": d for name, d in _outlines(*place.old).items()},
        **{f"new_{name}": d for name, d in _outlines(*place.new).items()},
    }


def _differs(key: str, old: float | None, new: float | None) -> bool:
    """Whether a quantity changed by more than the measuring error."""
    if old is None or new is None:
        return old is not new
    return abs(new - old) > float(tolerance(key, max(abs(old), abs(new))))


def _outlines(segments: np.ndarray, owner: np.ndarray) -> dict[str, str]:
    """Path data of base, cover and further parts, within the window; v grows upward, y of SVG downward."""
    window = shapely.box(-SIDE, LOW, SIDE, HIGH)
    found = {"base": "", "cover": "", "other": ""}
    for number, shape in solids(segments, owner).items():
        found[_NAMES.get(number, "other")] += _data(shape.intersection(window))
    return found


def _data(shape: BaseGeometry) -> str:
    rings = []
    for part in getattr(shape, "geoms", [shape]):
        if part.geom_type == "Polygon" and not part.is_empty:
            rings += [part.exterior, *part.interiors]
    return "".join("M" + "L".join(f"{u:.2f} {-v:.2f}" for u, v in np.asarray(r.coords)[:-1]) + "Z" for r in rings)
