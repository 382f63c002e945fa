"""What planned numbers leave over: the intended stop against the collapse, flatness against the collapse."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from seamcheck.catalogue.say import say
from seamcheck.measure.additions import Additions, value_of
from seamcheck.settings.settings import Settings


def intended_stop(travel: Mapping[str, Any], settings: Settings) -> Additions:
    """A declared stop against the collapse and against the free travel of the whole interface; nothing without one.

    Parameters
    ----------
    travel : the entry 'free_travel'
    settings : uses intended_stop and collapse (mm)
    """
    stop = settings.intended_stop
    if stop <= 0:
        return Additions({})
    value = travel.get("value")
    left = None if value is None else value - stop
    return Additions(
        {
            "stop_collapse": value_of(stop - settings.collapse),
            "stop_difference": value_of(left, travel.get("at"), travel.get("why", ""), faces=travel.get("faces", [])),
        }
    )


def flatness_stack(settings: Settings, pressed: Mapping[str, Any] | None = None) -> Additions:
    """Collapse left at the lowest place of the rib in the worst case; nothing where no flatness is given.

    Notes
    -----
    collapse - (flatness of cover + flatness of rib - what the clamp presses flat). The last one is as given, else as
    computed (the entry 'pressed_flat'), else nothing.
    """
    given = settings.tolerances
    off = [given[key] for key in ("flatness_cover", "flatness_rib") if key in given]
    if not off:
        return Additions({})
    computed = (pressed or {}).get("value")
    flat = given.get("flattened", computed or 0.0)
    left = settings.collapse - max(0.0, sum(off) - flat)
    why = "" if "flattened" in given or computed is not None else say("material.nothing-flat")
    return Additions({"local_collapse_left": value_of(left, why=why)})
