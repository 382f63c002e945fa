"""Where a finding lies, as a designer looks for it: the part, the side of the rib, x, y and z from where to where."""

from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any

from seamcheck.catalogue.voice import tr, unit_in_voice
from seamcheck.report import facts, place
from seamcheck.report.facts import Document

if TYPE_CHECKING:
    import numpy as np

_OF_THE_RIB = ("rib", "slenderness", "draft", "support", "overhang", "wall", "melt", "trap", "lip")
_OF_THE_COVER = ("cover", "transmission", "clamp", "path_in_cover")


def part_text(document: Document, finding: Mapping[str, Any]) -> str:
    """ "base 'rain gauge head', outer side"; '' where the finding is about no single part."""
    joint = next((j for j in facts.joints(document) if j["id"] == finding.get("joint")), None)
    if joint is None:
        return ""
    return ", ".join(said for said in (_part(document, joint, finding), _side(joint, finding)) if said)


def _part(document: Document, joint: Mapping[str, Any], finding: Mapping[str, Any]) -> str:
    args, quantity = finding.get("args") or {}, str(finding.get("column") or finding.get("quantity") or "")
    if named := next((str(args[key]) for key in ("other", "part") if isinstance(args.get(key), str)), ""):
        return named
    names = facts.part_names(document)
    if str(finding.get("key")).endswith(".pocket") or quantity.startswith(_OF_THE_COVER):
        return _named(tr("cover"), [names[i] for i in joint["cover"] if i in names])
    if str(finding.get("key")).endswith(".low-rib") or quantity.startswith(_OF_THE_RIB):
        role = tr("cover") if joint["rib_part"] in joint["cover"] else tr("base")
        return _named(role, [names[joint["rib_part"]]] if joint["rib_part"] in names else [])
    return ""


def _named(role: str, names: list[str]) -> str:
    return f"{role} '{names[0]}'" if len(names) == 1 else role


def _side(joint: Mapping[str, Any], finding: Mapping[str, Any]) -> str:
    args, quantity = finding.get("args") or {}, str(finding.get("column") or finding.get("quantity") or "")
    side = args.get("side") or quantity.rpartition("_")[2]
    if quantity in ("clamp_land", "clamp_tilt"):
        own: Mapping[str, Any] = next((c for c in joint["contours"] if c["id"] == finding.get("contour")), {})
        side = own.get("clamp_side")
    if side not in ("inner", "outer"):
        return ""
    return tr("inner side of the rib") if side == "inner" else tr("outer side of the rib")


def extent_text(document: Document, finding: Mapping[str, Any]) -> str:
    """'x -4.0 to 4.0, y -22.00, z 4.00 mm': where what is to be changed lies along the stretch; '' where it has none.

    That is the rib's middle, or what stands as far beside and above it as the finding's own place does.
    """
    if finding.get("from_s") is None or facts.is_all_along(document, finding):
        return ""
    path = finding.get("joint"), finding.get("contour")
    found = next(((j, c) for j, c in facts.paths(document) if (j["id"], c["id"]) == path), None)
    if found is None:
        return ""
    import numpy as np

    joint, own = found
    on = facts.stations_of_finding(document, {**finding, "places": ()}, own)
    if not on.any():
        return ""
    points = _beside(joint, own, finding)[on]
    told = []
    for axis, low, high in zip("xyz", np.min(points, axis=0), np.max(points, axis=0), strict=True):
        digits = 2 if high - low < 1.0 else 1
        ends = place.coordinate(float(low), digits), place.coordinate(float(high), digits)
        told.append(f"{axis}\N{NO-BREAK SPACE}{ends[0] if ends[0] == ends[1] else facts.span(*ends)}")
    return f"{', '.join(told)} {unit_in_voice('mm')}"


_ON_RIB = 0.05  # mm: a place so near to the middle of the rib's top is on it


def _beside(joint: Mapping[str, Any], contour: Mapping[str, Any], finding: Mapping[str, Any]) -> np.ndarray:
    """(n, 3) mm: the stations, moved across the seam and along the beam to where the finding's own place lies."""
    import numpy as np

    points, at, station = facts.points_of(contour), finding.get("at"), finding.get("station")
    if at is None or station is None:
        return points
    up, across = -np.asarray(joint["beam"], dtype=float), np.asarray(contour["stations"]["u"], dtype=float)
    near = int(np.linalg.norm(points - np.asarray(at, dtype=float), axis=1).argmin())
    away = np.asarray(at, dtype=float) - points[near]
    aside, above = float(away @ across[near]), float(away @ up)
    return points if np.hypot(aside, above) < _ON_RIB else points + aside * across + above * up


def where_text(document: Document, finding: Mapping[str, Any]) -> str:
    """Part and side, then the stretch with its coordinates, in one line."""
    said = part_text(document, finding), facts.place_text(document, finding), extent_text(document, finding)
    return "; ".join(text for text in said if text)
