"""The remedy in the words of the place: which part to change, on which side, and where."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

import numpy as np
from msgspec.structs import replace

from seamcheck.catalogue.message import Amount, Message
from seamcheck.catalogue.messages import HIGH, IN_LIGHT, LOW, LOW_RIB, MOVED, POCKET, amount_of, change_of
from seamcheck.catalogue.say import say
from seamcheck.judge.bounds import JudgedPath
from seamcheck.judge.findings import Finding
from seamcheck.judge.joint_judge import DraftFinding, JointJudge, faces_of, in_words, point, saying

_SAME = 0.02  # mm within which two heights are one


def with_remedies(judging: JointJudge, drafts: Sequence[DraftFinding]) -> list[DraftFinding]:
    """The findings with what to change as it was measured: what is met, what stands in the beam, what is recessed."""
    views = {view.path.id: view for view in judging.seam.paths}
    told = {
        "sink-travel": _met, "beam-path": _in_light, "scanner-shadow": _in_light, "contact-gap": _recess,
        "trap-open-inner": _lip,
    }  # fmt: skip
    result = []
    for draft in drafts:
        found = draft.finding
        view, tell = views.get(found.contour or ""), told.get(found.rule)
        result.append(draft if view is None or tell is None else replace(draft, finding=tell(judging, view, found)))
    return [replace(draft, finding=_clears_both(judging, draft.finding, result)) for draft in result]


def _places(judging: JointJudge, quantity: str) -> Sequence[Mapping[str, Any]]:
    places: Sequence[Mapping[str, Any]] = judging.joint.survey.interface.get(quantity, {}).get("places", ())
    return [place for place in places if place.get("at") is not None]


def _foot(view: JudgedPath, at: Sequence[float]) -> tuple[int, np.ndarray]:
    """The station nearest to a place, and the way (3,) mm from it to the place."""
    away = np.asarray(at, dtype=float) - view.path.points
    station = int(np.linalg.norm(away, axis=1).argmin())
    return station, away[station]


def _met(judging: JointJudge, view: JudgedPath, found: Finding) -> Finding:
    """With what the cover meets: the other part, its side of the rib and its place, where the stretch ends there."""
    on = view.within((found.from_s or 0.0) - 1.0, (found.length_mm or 0.0) + 2.0)
    best: tuple[float, Mapping[str, Any], np.ndarray, int] | None = None
    for place in _places(judging, "free_travel"):
        station, away = _foot(view, place["at"])
        far = float(np.linalg.norm(away))
        near = abs(place["value"] - (found.value or 0.0)) < _SAME and len(place.get("faces", ())) == 2
        if near and on[station] and (best is None or far < best[0]):
            best = far, place, away, station
    if best is None:
        return found
    _, place, away, station = best
    across = float(away @ view.path.u[station])
    names = [_name(judging, face["part"]) for face in place["faces"]]
    args: dict[str, Amount | str] = {"other": names[1], "side": _side(across), **_axis("axis", -_up(judging))}
    said = say("place.meets-beside", cover=names[0], other=names[1], away=abs(across), side=_side(across)).message
    kept = tuple(m for m in found.messages if m.key != "place.meets")
    found = replace(found, messages=kept, at=point(np.asarray(place["at"], dtype=float)), faces=faces_of(place))
    return saying(in_words(found, found.key, args), said)


def _in_light(judging: JointJudge, view: JudgedPath, found: Finding) -> Finding:
    """With the part that stands in the beam, and the way out of it."""
    on, column = view.within(found.from_s or 0.0, found.length_mm or 0.0), str(found.column)
    mine = [p for p in _places(judging, column) if p.get("faces") and on[_foot(view, p["at"])[0]]]
    names = {face["part"]: _name(judging, face["part"]) for place in mine for face in place["faces"]}
    if len(names) != 1:
        return found
    above = [float(place["above"]) for place in mine if "above" in place]
    if above and found.station is not None and found.rule == "beam-path":
        found = replace(found, at=point(view.path.points[found.station] + min(above) * _up(judging)))
        found = saying(found, say("place.above", above=min(above)).message)
    args: dict[str, Amount | str] = {"part": next(iter(names.values()))}
    if len(mine) > 1 or "move" not in mine[0]:
        return in_words(found, f"{found.key}.{IN_LIGHT}", args)
    station, _ = _foot(view, mine[0]["at"])
    is_out = float(np.dot(mine[0]["direction"], view.path.u[station])) > 0
    args |= {"way": "outward" if is_out else "inward", "by": change_of(mine[0]["move"], "mm")}
    args |= _axis("axis", np.asarray(mine[0]["direction"], dtype=float))
    return in_words(found, f"{found.key}.{MOVED}", args)


def _clears_both(judging: JointJudge, found: Finding, drafts: Sequence[DraftFinding]) -> Finding:
    """A part near the seam that stands in the beam as well: by how much to move it aside for both."""
    if found.rule != "near-parts" or found.at is None or found.limit is None or found.contour is not None:
        return found
    parts = {f"{_name(judging, face.part)}" for face in found.faces}
    for other in (draft.finding for draft in drafts):
        by = other.args.get("by")
        if other.key != f"beam-path.beam_clear.{LOW}.{MOVED}" or other.args["part"] not in parts or other.at is None:
            continue
        view = next(v for v in judging.seam.paths if v.path.id == other.contour)
        height = float((np.asarray(other.at) - view.path.points[other.station or 0]) @ _up(judging))
        if isinstance(by, Amount) and height < found.limit:
            aside = float(np.sqrt(found.limit**2 - height**2))  # from the edge of the beam margin, where it then stands
            return in_words(found, found.key, {"both": change_of(by.value + aside, "mm"), "way": other.args["way"]})
    return found


def _lip(judging: JointJudge, view: JudgedPath, found: Finding) -> Finding:
    """With how high a lip has to stand: its gap within the limits, and not less than the free travel asks for."""
    settings, tall = judging.settings, view.column("rib_height_inner")
    least = max(settings.limit("lip-gap", "min"), settings.travel_reserve())
    most = settings.limit("lip-gap", "max")
    tall = tall[view.within(found.from_s or 0.0, found.length_mm or view.path.length)]
    if least > most or judging.is_flat or not np.isfinite(tall).any():
        return found
    low, high = float(np.nanmin(tall)) - settings.collapse - most, float(np.nanmin(tall)) - settings.collapse - least
    if low < _SAME or float(np.nanmax(tall) - np.nanmin(tall)) > _SAME:
        return found
    heights = {"low": low, "high": high, "least": least, "most": most}
    return in_words(found, found.key, {name: Amount(value, "mm", 2) for name, value in heights.items()})


def _up(judging: JointJudge) -> np.ndarray:
    """(3,) unit vector against the beam."""
    return -np.asarray(judging.joint.beam, dtype=float)


def _axis(name: str, way: np.ndarray) -> dict[str, Amount | str]:
    """The axis of the model along which a direction (3,) points, such as '-z'; {} where it is none."""
    k = int(np.abs(way).argmax())
    return {name: f"{'-' if way[k] < 0 else '+'}{'xyz'[k]}"} if abs(way[k]) > 0.9998 else {}


def _recess(judging: JointJudge, view: JudgedPath, found: Finding) -> Finding:
    """With what is recessed where a gap opens: the cover or the rib, whichever lies as much back as the gap is wide."""
    station, seam = found.station, judging.seam
    if found.key != f"contact-gap.gap_max.{HIGH}" or station is None or found.value is None:
        return found
    opened = found.value - seam.median("gap_max")
    thin = seam.median("cover_thickness") - view.column("cover_thickness")[station]
    low = seam.median("rib_height") - view.column("rib_height")[station]
    recessed = [c for c, back in ((POCKET, thin), (LOW_RIB, low)) if abs(back - opened) < _SAME]
    cause = recessed[0] if recessed and opened > _SAME else ""
    if not cause:
        return found
    depth = thin if cause == POCKET else low
    said: Message = say(f"place.{cause}", depth=float(depth)).message
    return saying(in_words(found, f"{found.key}.{cause}", {"depth": amount_of(float(depth), "gap")}), said)


def _side(across: float) -> str:
    return "outer" if across > 0 else "inner"


def _name(judging: JointJudge, part: str) -> str:
    return f"'{judging.part_names.get(part) or part}'"
