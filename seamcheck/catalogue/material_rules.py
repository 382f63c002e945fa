"""Rules of the material side, declared once; judged only where the settings have materials."""

from __future__ import annotations

from seamcheck.catalogue.rule import ATTENTION, MUST_FIX, Bound, Check, Limit, Rule

_THINNER = "Thin the cover over the seam here[ by {by}], or take a grade or colour that passes more light."
_THIN_BY = "log(limit / value) / extinction"  # from T = T0 e^(-K l)
_UNCOVERED = {"hole": "reported by cover-hole", "no-cover": "reported by cover-hole"}


def _trap_side(side: str) -> Rule:
    return Rule(
        f"trap-fill-{side}",
        f"Melt in the {side} flash trap",
        ATTENTION,
        "above",
        f"Half of the expanded melt fits into the {side} flash trap.",
        f"Melt comes out on the {side} side, or has to press to the other one.",
        "assumption",
        "1, without reserve. That the melt divides evenly is an assumption too.",
        (
            Limit(
                "max",
                1.0,
                "1",
                f"largest share of the {side} flash trap that half the melt may fill",
                0.1,
                10.0,
            ),
        ),
        (
            Check(
                f"trap_fill_{side}",
                upper=Bound(
                    "max",
                    f"Half of the expanded melt fills the {side} flash trap {{value}} times; it should be at "
                    "most {limit} times.",
                    f"Deepen or widen the {side} flash trap, or plan less collapse.",
                ),
            ),
        ),
        optional=True,
    )


MATERIAL_RULES: tuple[Rule, ...] = (
    Rule(
        "transmission",
        "Light through the cover",
        MUST_FIX,
        "below",
        "Enough light passes the cover over the rib for any weld at all.",
        "Hardly any light reaches the rib: the cover's surface burns before the rib melts.",
        "from memory",
        "15 %, of the total transmission at the weld wavelength.",
        (Limit("min", 15.0, "%", "smallest transmission of the cover over the rib", 0.0, 100.0),),
        (
            Check(
                "transmission",
                accepted_reasons=_UNCOVERED,
                lower=Bound(
                    "min",
                    "The cover passes {value} of the light here; it should be at least {limit}.",
                    _THINNER,
                    change=_THIN_BY,
                    change_unit="mm",
                ),
            ),
        ),
        for_flat_overlap=True,
        optional=True,
    ),
    Rule(
        "transmission-comfort",
        "Light through the cover, comfortable",
        ATTENTION,
        "below",
        "So much light passes the cover over the rib that its surface is in little danger.",
        "The surface of the cover is more prone to burn, and the weld takes longer.",
        "common practice",
        "28 %, no published source; of the total transmission at the weld wavelength.",
        (
            Limit(
                "min",
                28.0,
                "%",
                "transmission from which the cover's surface is in little danger",
                0.0,
                100.0,
            ),
        ),
        (
            Check(
                "transmission",
                accepted_reasons=_UNCOVERED,
                lower=Bound(
                    "min",
                    "The cover passes {value} of the light here; from {limit} on its surface is in little danger.",
                    _THINNER,
                    change=_THIN_BY,
                    change_unit="mm",
                ),
            ),
        ),
        for_flat_overlap=True,
        optional=True,
    ),
    Rule(
        "plaque-range",
        "Range of the measured plaques",
        ATTENTION,
        "above",
        "The light path in the cover is not much longer than the thickest plaque that was measured.",
        "The transmission is carried on beyond what was measured; the curve is known to be inaccurate there.",
        "assumption",
        "1.5 times the thickest plaque.",
        (Limit("max", 1.5, "1", "longest light path divided by the thickest plaque", 0.5, 10.0),),
        (
            Check(
                "path_over_plaques",
                upper=Bound(
                    "max",
                    "The light path is {value} times as long as the thickest plaque; it should be at "
                    "most {limit} times.",
                    "Measure a plaque at least as thick as the cover over the seam.",
                ),
            ),
        ),
        for_flat_overlap=True,
        optional=True,
    ),
    Rule(
        "trap-fill",
        "Melt in both flash traps",
        MUST_FIX,
        "above",
        "The expanded melt of the planned collapse fits into both flash traps together.",
        "The melt has nowhere to go: it holds the cover up, or comes out as flash.",
        "assumption",
        "1, both traps full to the brim.",
        (Limit("max", 1.0, "1", "largest share of both flash traps that the melt may fill", 0.1, 10.0),),
        (
            Check(
                "trap_fill",
                upper=Bound(
                    "max",
                    "The expanded melt fills both flash traps {value} times; it should be at most {limit} times.",
                    "Deepen or widen the flash traps, narrow the rib, or plan less collapse.",
                ),
            ),
        ),
        optional=True,
    ),
    _trap_side("inner"),
    _trap_side("outer"),
    Rule(
        "collapse-window",
        "Collapse window",
        MUST_FIX,
        "below",
        "Some collapse closes every gap and still finds room for its melt.",
        "Whatever collapse is chosen, the seam stays open at its lowest place, or flash comes out.",
        "assumption",
        "Any width; what limits its ends is printed with it.",
        (Limit("min", 0.0, "mm", "smallest width of the collapse window", 0.0, 5.0),),
        (
            Check(
                "collapse_window",
                lower=Bound(
                    "min",
                    "No collapse suits this geometry: what closes every gap and what has room are {by} apart ({why}).",
                    "Reduce gap and flatness, or give flash traps, travel or rib height more room[: {by} are missing].",
                ),
            ),
        ),
        optional=True,
    ),
    Rule(
        "collapse-low",
        "Planned collapse against the gap",
        ATTENTION,
        "below",
        "The planned collapse closes the worst gap and the flatness.",
        "At its lowest place the rib does not melt down far enough to seal.",
        "assumption",
        "0.1 mm of collapse left at the lowest place.",
        (Limit("min", 0.0, "mm", "planned collapse above the smallest that closes every gap", 0.0, 5.0),),
        (
            Check(
                "collapse_above_lowest",
                lower=Bound(
                    "min",
                    "The planned collapse of {collapse} is {by} too small to close every gap ({why}).",
                    "Plan more collapse[ by {by}], or reduce gap and flatness.",
                ),
            ),
        ),
        optional=True,
    ),
    Rule(
        "collapse-high",
        "Planned collapse against the room",
        ATTENTION,
        "below",
        "Flash traps, free travel and rib height have room for the planned collapse.",
        "The melt finds no room, or the cover comes to rest on something else before the collapse is done.",
        "assumption",
        "Traps not over the brim, 0.1 mm of travel and 0.2 mm of rib height left.",
        (Limit("min", 0.0, "mm", "planned collapse below the largest that has room", 0.0, 5.0),),
        (
            Check(
                "collapse_below_highest",
                lower=Bound(
                    "min",
                    "The planned collapse of {collapse} is {by} larger than what has room ({why}).",
                    "Plan less collapse[ by {by}], or give flash traps, travel or rib height more room.",
                ),
            ),
        ),
        optional=True,
    ),
    Rule(
        "pair",
        "Pair of polymers",
        MUST_FIX,
        "below",
        "The two polymers are not listed as not weldable to each other.",
        "The weld does not hold, or comes apart clean.",
        "common practice",
        "The list and its sources are printed with the pair; your own pairs win.",
        (Limit("min", 1.0, "1", "smallest grade of the pair: 0 is listed as not weldable", 0.0, 2.0),),
        (
            Check(
                "pair_grade",
                lower=Bound(
                    "min",
                    "Cover and base are of polymers that don't weld to each other. {why}",
                    "Choose another polymer for one of the parts, or enter your own trial welds under material.pairs.",
                ),
            ),
        ),
        for_flat_overlap=True,
        optional=True,
    ),
    Rule(
        "pair-doubt",
        "Pair of polymers in doubt",
        ATTENTION,
        "below",
        "The two polymers are the same, or listed as weldable to each other.",
        "Whether the weld holds is not known.",
        "assumption",
        "Estimates can reject a pair, never approve it.",
        (Limit("min", 2.0, "1", "grade from which a pair is in no special doubt: 2", 0.0, 2.0),),
        (
            Check(
                "pair_grade",
                lower=Bound(
                    "min",
                    "Whether the polymers of cover and base weld to each other is in doubt. {why}",
                    "Make trial welds with the very grades before a tool is ordered.",
                ),
            ),
        ),
        for_flat_overlap=True,
        optional=True,
    ),
)
"""In the order in which they are listed to people."""

REPLACED_BY: dict[str, str] = {
    "transmission-comfort": "transmission",
    "pair-doubt": "pair",
    "collapse-low": "collapse-window",
    "collapse-high": "collapse-window",
}
"""Rule -> the graver one that covers it at the same place; only the graver is reported there."""
