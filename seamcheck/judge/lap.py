"""The one finding of a joint without a rib: what it is, its dimensions, and whether a rib would fit."""

from __future__ import annotations

import numpy as np
from msgspec.structs import replace

from seamcheck.catalogue.message import Amount
from seamcheck.catalogue.messages import LAP_COVER, LAP_NARROW, LAP_ROOM, LAP_STEP, amount_of, lap_kind, message
from seamcheck.judge.bounds import RIB_MISSING
from seamcheck.judge.joint_judge import DraftFinding, JointJudge, saying

_RIB = 1.0  # mm, a usual rib, for saying whether one has room
_MORE_TRAP = 1.2  # trap volume over melt, both sides together
_CLEAR = 0.2  # mm that a rib is higher than its collapse


def rib_missing(judging: JointJudge, also: tuple[str, ...] = ()) -> DraftFinding:
    """The finding, with the kind of joint and its measures in its sentences; ``also``: rules of the same cause."""
    joint, seam = judging.joint, judging.seam
    if not np.isfinite(joint.band_width):
        return judging.seam_finding(RIB_MISSING, {}, also)
    width, collapse = joint.band_width, judging.settings.collapse
    trap, missing = room_for_a_rib(width, collapse)
    args = {
        "width": _mm(width), "length": _mm(sum(view.path.length for view in seam.paths), 0), "rib": _mm(_RIB, 1),
        "trap": _mm(trap), "needed": _mm(width + missing), "by": _mm(missing),
    }  # fmt: skip
    draft = judging.seam_finding(RIB_MISSING, args, also, LAP_NARROW if missing > 0 else LAP_ROOM)
    said = [message(lap_kind(joint.kind), {}), *draft.finding.messages]
    if np.isfinite(joint.step):
        said.append(message(LAP_STEP, {"step": _mm(joint.step)}))
    thickness, gap = seam.median("cover_thickness"), seam.median("gap")
    if np.isfinite(thickness) and np.isfinite(gap):
        over = {"thickness": amount_of(thickness, "cover_thickness"), "gap": amount_of(gap, "gap")}
        said.append(message(LAP_COVER, over))
    bare = replace(draft.finding, messages=())
    return replace(draft, finding=saying(bare, *said))


def room_for_a_rib(width: float, collapse: float) -> tuple[float, float]:
    """Width of the flash trap on each side of a rib in a band, and how much the band is too narrow for it, mm.

    A trap's width follows from its room: the melt of one side, rib width times collapse / 2 times 1.2, over a height of
    collapse + 0.2 mm. What a wider band leaves is shared by both traps.

    Parameters
    ----------
    width, collapse : mm

    Returns
    -------
    trap, missing : mm; missing is 0 where a rib has room
    """
    trap = _MORE_TRAP * _RIB * collapse / 2 / (collapse + _CLEAR)
    spare = (width - _RIB) / 2
    return max(trap, spare), max(0.0, 2 * (trap - spare))


def _mm(value: float, decimals: int = 2) -> Amount:
    return Amount(float(value), "mm", decimals)
