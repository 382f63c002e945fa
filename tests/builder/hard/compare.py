"""What differs between a review document and the truth of a hard model; imports no kernel."""

from __future__ import annotations

import json
from collections.abc import Iterator, Mapping, Sequence
from typing import Any

import numpy as np

from .truth import HardModel, PathTruth, SeamTruth

LINE, LENGTH = 0.02, 0.0005
"""mm off the mid-line, and share of a path's length (DESIGN section 7)."""

BARS: dict[str, tuple[float, float]] = {
    **dict.fromkeys(("melt_area", "trap_area_inner", "trap_area_outer"), (0.005, 0.01)),
    **dict.fromkeys(("trap_room", "trap_room_inner", "trap_room_outer"), (0.0, 0.012)),
    "beam_clear": (1e-6, 0.0),
    "clamp_tilt": (0.05, 0.0),
}
"""Quantity -> how far it may be off: (absolute, share of the value), the larger; else 0.01 mm."""


def differences(document: Mapping[str, Any], model: HardModel) -> list[str]:
    """Every way in which the document is not what the model's truth says, as sentences; [] is right."""
    return list(_differences(document, model))


def _differences(document: Mapping[str, Any], model: HardModel) -> Iterator[str]:
    text = json.dumps(document, ensure_ascii=False)
    yield from (f"does not say {word!r}" for word in model.says if word not in text)
    reason = (document.get("reason") or {}).get("code")
    if document["verdict"] == "not-reviewed":
        if reason not in model.reasons:
            yield f"not reviewed: {reason} ({document['reason']['message']})"
        return
    if not model.seams:
        yield f"verdict {document['verdict']} instead of not-reviewed for one of {model.reasons}"
        return
    joints = {(tuple(j["cover"]), tuple(j["base"])): j for j in document["joints"]}
    if len(document["joints"]) != len(model.seams):
        yield f"{len(document['joints'])} joints instead of {len(model.seams)}: {sorted(joints)}"
    for seam in model.seams:
        who = ((f"p{seam.cover + 1}",), (f"p{seam.base + 1}",))
        if who not in joints:
            yield f"no joint of cover {who[0][0]} on base {who[1][0]}"
        else:
            yield from _joint(joints[who], seam, document["findings"])


def _joint(joint: Mapping[str, Any], seam: SeamTruth, findings: Sequence[Mapping[str, Any]]) -> Iterator[str]:
    if joint["rib_on"] != seam.rib_on:
        yield f"rib on {joint['rib_on']} instead of {seam.rib_on}"
    if joint["modelled_state"] != seam.state:
        yield f"modelled state {joint['modelled_state']} instead of {seam.state}"
    across = np.linalg.norm(np.cross(joint["beam"], seam.beam))  # arccos would make 0.05 degrees of rounded digits
    tilt = np.degrees(np.arctan2(across, np.dot(joint["beam"], seam.beam)))
    if tilt > 0.005:
        yield f"beam off by {tilt:.3f} degrees"
    broken = {f["rule"] for f in findings if f["joint"] == joint["id"] and f["severity"] == "must-fix"}
    if missing := set(seam.rules) - broken:
        yield f"no finding of {', '.join(sorted(missing))}"
    if extra := broken - set(seam.rules) - set(seam.may):
        yield f"false finding of {', '.join(sorted(extra))}"
    if len(joint["contours"]) != len(seam.paths):
        yield f"{len(joint['contours'])} paths instead of {len(seam.paths)}"
    taken: list[PathTruth] = []
    for contour in joint["contours"]:
        stations = contour["stations"]
        points = np.column_stack([stations[axis] for axis in "xyz"]).astype(float)
        path = min(seam.paths, key=lambda path: float(np.median(path.distance(points))))
        if path in taken:
            yield f"path {contour['id']} follows a line that is taken"
        taken.append(path)
        yield from (f"{contour['id']}: {what}" for what in _path(contour, points, path))
    yield from _places(joint, seam)


def _path(contour: Mapping[str, Any], points: np.ndarray, path: PathTruth) -> Iterator[str]:
    if contour["closed"] is not path.closed:
        yield f"closed is {contour['closed']}"
    holds = path.holds(points)
    off = path.distance(points)[holds]
    if len(off) and off.max() > LINE:
        yield f"{off.max():.4f} mm off the mid-line"
    # beside corners and junctions the line may be left for a stretch
    spare = sum(0.15 * radius for *_, radius in path.not_within)
    over = contour["length_mm"] - path.length
    if not -LENGTH * path.length - spare <= over <= LENGTH * path.length + spare + path.length_open:
        yield f"length {contour['length_mm']:.3f} instead of {path.length:.3f}"
    for key in path.values:
        if key not in contour["stations"]:
            yield f"{key} is no column"
            continue
        got = np.array([np.nan if x is None else x for x in contour["stations"][key]], dtype=float)[holds]
        true = path.value(key, points[holds])
        absolute, share = BARS.get(key, (0.01, 0.0))
        wrong = np.abs(got - true) > np.maximum(absolute, share * np.abs(true))
        if np.isnan(got).any():
            why = sorted({u["why"] for u in contour["unmeasured"] if u["column"] == key})
            yield f"{key} not measured at {np.isnan(got).sum()} of {len(got)} stations ({', '.join(why)})"
        if wrong.any():
            worst = int(np.nanargmax(np.abs(got - true)))
            at = np.round(points[holds][worst], 2).tolist()
            yield (
                f"{key} is {got[worst]:.4f} instead of {true[worst]:.4f} at {at}, "
                f"off at {wrong.sum()} of {len(got)} stations"
            )


def _places(joint: Mapping[str, Any], seam: SeamTruth) -> Iterator[str]:
    found = [np.array(at) for at in joint["junctions"].values()]
    if len(found) != len(seam.junctions):
        yield f"{len(found)} junctions instead of {len(seam.junctions)}"
    for true in seam.junctions:
        nearest = min((float(np.linalg.norm(at - true)) for at in found), default=np.inf)
        if nearest > 0.3:
            yield f"no junction within 0.3 mm of {true}"
    gaps = joint["interruptions"]
    if len(gaps) != len(seam.interruptions):
        yield f"{len(gaps)} interruptions instead of {len(seam.interruptions)}"
    for length, at in seam.interruptions:
        near = [g for g in gaps if np.linalg.norm(np.subtract(g["at"], at)) < 1.0]
        if not any(abs(g["length_mm"] - length) < 0.05 for g in near):
            yield f"no interruption of {length} mm at {at}: {gaps}"
