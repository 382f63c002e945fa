"""The one finding of a joint without a rib: what it is, what it measures, and whether a rib has room in it."""

from __future__ import annotations

from dataclasses import replace

from seamcheck.catalogue.kinds import KINDS
from seamcheck.catalogue.words import value_text
from seamcheck.judge.bounds import RIB_MISSING
from seamcheck.judge.joint_judge import DraftFinding, JointJudge

_RIB = 1.0  # mm, a usual rib, for saying whether one has room
_MORE_TRAP = 1.2  # trap volume over melt, both sides together
_CLEAR = 0.2  # mm that a rib is higher than its collapse


def rib_missing(judging: JointJudge, also: tuple[str, ...] = ()) -> DraftFinding:
    """The finding, with the kind of joint and its measures in its sentences; ``also``: rules of the same cause."""
    draft = judging.whole(RIB_MISSING, {}, also)
    joint = judging.joint
    length = sum(view.path.length for view in judging.seam.paths)
    width = joint.band_width
    wide = f" {width:.2f} mm wide and" if width == width else ""
    measured = [f"The band is{wide} {length:.0f} mm long"]
    thickness, gap = judging.seam.median("cover_thickness"), judging.seam.median("gap")
    if thickness == thickness:
        measured.append(f"the cover over it {value_text(thickness, 'cover_thickness')} thick")
    if gap == gap:
        measured.append(f"the gap {value_text(gap, 'gap')}")
    if joint.step == joint.step:
        measured.append(f"the step beside it {joint.step:.2f} mm high")
    says = f"{KINDS[joint.kind]} {', '.join(measured)}."
    remedy = (
        draft.finding.remedy
        if width != width
        else f"{draft.finding.remedy} {room_for_a_rib(width, judging.settings.collapse)}"
    )
    return replace(draft, finding=replace(draft.finding, message=says, remedy=remedy))


def room_for_a_rib(width: float, collapse: float) -> str:
    """Whether a band (mm wide) has room for a rib with a trap on each side, as a sentence.

    A trap's width follows from its room: the melt of one side, rib width times collapse / 2 times 1.2, over a height of
    collapse + 0.2 mm.
    """
    trap = _MORE_TRAP * _RIB * collapse / 2 / (collapse + _CLEAR)
    needed = _RIB + 2 * trap
    if width >= needed:
        return (
            f"The band has room for a rib of {_RIB:.1f} mm with a flash trap of {(width - _RIB) / 2:.2f} mm on each "
            "side."
        )
    return (
        f"A rib of {_RIB:.1f} mm with a flash trap of {trap:.2f} mm on each side needs {needed:.2f} mm: widen the band "
        f"by {needed - width:.2f} mm."
    )
