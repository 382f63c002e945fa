"""Rules of the material side, declared once; judged only where the settings have materials."""

from __future__ import annotations

from seamcheck.catalogue.rule import ATTENTION, MUST_FIX, NOTE, Bound, Check, Rule
from seamcheck.catalogue.setting import Setting

_THINNER = "Thin the cover over the seam here[ by {by}], or choose a grade or colour that transmits more light."
_THIN_BY = "log(limit / value) / extinction"  # from T = T0 e^(-K l)
_UNCOVERED = {"hole": "reported by cover-hole", "no-cover": "reported by cover-hole"}


def _trap_side(side: str) -> Rule:
    return Rule(
        f"trap-fill-{side}",
        f"Melt in the {side} flash trap",
        ATTENTION,
        "above",
        f"Half of the expanded melt fits into the {side} flash trap.",
        f"Melt comes out on the {side} side, or is pushed across to the other.",
        "assumption",
        "1, without reserve. That the melt divides evenly is an assumption too.",
        (Setting("max", 1.0, "1", f"largest share of the {side} flash trap that half the melt may fill", 0.1, 10.0),),
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
        "transmission", "Transmission of the cover", ATTENTION, "below",
        "The cover over the rib transmits so much light that its surface is in little danger.",
        "The cover's surface burns more easily, and the weld takes longer, or does not start at all.",
        "common practice",
        "28 %, no published source; of the total transmission at the weld wavelength. Covers with less are welded: a "
        "PBT-GF30 made for laser welding is published with 13 % at 2 mm. The heat model tells what that means for your "
        "laser.",
        (Setting("min", 28.0, "%", "transmission from which the cover's surface is in little danger", 0.0, 100.0),),
        (
            Check(
                "transmission", accepted_reasons=_UNCOVERED,
                lower=Bound(
                    "min",
                    "The cover transmits {value} of the light here; from {limit} its surface is in little danger.",
                    _THINNER, change=_THIN_BY, change_unit="mm",
                ),
            ),
        ),
        for_flat_overlap=True, optional=True,
    ),
    Rule(
        "transmission-unknown", "Transmission not measured", ATTENTION, "above",
        "The transmission of the cover is measured, where it can't be taken for granted.",
        "How much light reaches the rib is unknown: the same polymer transmits a fifth or four fifths, depending on "
        "crystallinity, filler, colour and thickness.",
        "common practice",
        "A semi-crystalline or filled cover needs plaques. A clear amorphous one loses little more than its surfaces "
        "reflect: rule transmission-untold.",
        (
            Setting(
                "max", 1.0, "1", "largest uncertainty: 2 is a semi-crystalline or filled cover without plaques", 0.0,
                2.0,
            ),
        ),
        (
            Check(
                "transmission_doubt",
                upper=Bound(
                    "max", "The transmission of the cover is not measured. {why}",
                    "Measure plaques of the cover's grade and colour at the weld's wavelength and enter them under "
                    "material.plaques.",
                ),
            ),
        ),
        for_flat_overlap=True, optional=True,
    ),
    Rule(
        "transmission-untold", "Transmission not given", NOTE, "above",
        "The transmission of a clear cover is given too.",
        "Colour and additives may absorb light that the clear polymer transmits.", "common practice",
        "Follows from the task; no number.",
        (Setting("max", 0.0, "1", "largest uncertainty: 1 is a clear amorphous cover without plaques", 0.0, 2.0),),
        (
            Check(
                "transmission_doubt",
                upper=Bound(
                    "max", "The transmission of the cover is not given. {why}",
                    "Enter plaques of the cover's grade and colour under material.plaques.",
                ),
            ),
        ),
        for_flat_overlap=True, optional=True,
    ),
    Rule(
        "thickness-of-class", "Cover thickness for its class", ATTENTION, "above",
        "As long as the transmission is not measured, the cover is no thicker than covers of its class usually are.",
        "Little light arrives, in a widened spot.", "from memory",
        "Unfilled semi-crystalline 2.5 mm, with glass or mineral 2.0 mm, clear amorphous 6 mm. Stands in for a "
        "measured transmission.",
        (Setting("max", 1.0, "1", "largest thickness of the cover, in thicknesses usual for its class", 0.1, 10.0),),
        (
            Check(
                "thickness_of_class", accepted_reasons=_UNCOVERED,
                upper=Bound(
                    "max", "The cover is {value} times as thick over the rib as covers of its class usually are.",
                    "Measure its transmission, or thin the cover over the seam.",
                ),
            ),
        ),
        for_flat_overlap=True, optional=True,
    ),
    Rule(
        "energy-uniformity", "Uniformity of the energy", MUST_FIX, "above",
        "At constant power and speed every place gets about as much energy as it needs.",
        "By the time the last place has melted, this one burns, or its melt flows off.", "assumption",
        "1.5 times the place that gets least for its need, attention from 1.2 times on. Power or speed adapted along "
        "the seam makes up for it: waive it, or set your own.",
        (
            Setting(
                "attention", 1.2, "1",
                "energy over that of the place that gets least for its need, above which a finding is attention", 1.0,
            ),
            Setting("max", 1.5, "1", "largest energy over that of the place that gets least for its need", 1.0),
        ),
        (
            Check(
                "energy_surplus", accepted_reasons=_UNCOVERED,
                upper=Bound(
                    "max",
                    "For its need this place gets {value} times the energy of the place that gets least; it should be "
                    "at most {limit} times.",
                    "Make the cover's thickness and the rib's width more uniform, or adapt the power along the seam.",
                    attention="attention",
                ),
            ),
        ),
        for_flat_overlap=True, optional=True,
    ),
    Rule(
        "weld-start", "Power to melt the seam", ATTENTION, "below",
        "The laser melts the whole seam, in the time that a weld may take.",
        "Heat is lost about as fast as the light brings it: the slowest place melts far too late, or never.",
        "assumption",
        "1.0; by the heat model from the settings' numbers, some of them from memory. Near 1 the weld takes very long: "
        "longer than material.process.longest_heating is a finding too.",
        (
            Setting(
                "min", 1.0, "1", "smallest rise of the interface, as a multiple of the rise to its melting point", 0.0,
                100.0,
            ),
        ),
        (
            Check(
                "power_reserve",
                lower=Bound(
                    "min",
                    "The laser heats the interface to {value} times the rise needed to melt it, so no weld starts: "
                    "{why}.",
                    "More power, a cover that transmits more light, a narrower rib, or a shorter seam for one laser.",
                ),
            ),
            Check(
                "weld_time",
                failing_reasons={
                    "too-long": "The weld does not reach the planned collapse within the time given as "
                        "material.process.longest_heating.",
                },
            ),
        ),
        for_flat_overlap=True, optional=True,
    ),
    Rule(
        "decomposition", "Highest temperature in the seam", ATTENTION, "below",
        "By the heat model the seam stays below the temperature given as its decomposition.",
        "The polymer decomposes: bubbles, smoke, a weak and leaking seam.", "assumption",
        "0 K below the temperature that you gave; without one it is not evaluated.",
        (Setting("min", 0.0, "K", "smallest distance from the temperature of decomposition", -500.0, 500.0),),
        (
            Check(
                "decomposition_margin",
                lower=Bound(
                    "min",
                    "The hottest place ({why}) comes within {value} of the temperature given for decomposition; at "
                    "least {limit} should be left.",
                    "Less power for longer, faster passes, or a more uniform seam.",
                    below_zero="The hottest place ({why}) comes {size} above the temperature given for decomposition.",
                ),
            ),
        ),
        for_flat_overlap=True, optional=True,
    ),
    Rule(
        "first-pass-rise", "Temperature rise in one pass", ATTENTION, "above",
        "One pass of the spot heats the base's surface only a little.",
        "The surface chars under the spot while the rib below is still cold.", "assumption",
        "300 K in one pass of many; an indication, not a limit of a standard. A single pass is judged by its highest "
        "temperature.",
        (Setting("max", 300.0, "K", "largest rise of the base's surface in one pass", 1.0, 5000.0),),
        (
            Check(
                "first_pass_rise",
                upper=Bound(
                    "max", "Each pass heats the base's surface by {value}; it should be at most {limit}.",
                    "Move the spot faster, widen it, or use less power and more passes.",
                ),
            ),
        ),
        for_flat_overlap=True, optional=True,
    ),
    Rule(
        "corner-dose", "Energy in corners", ATTENTION, "above",
        "The scanner follows the seam without slowing down much.",
        "Where the spot slows down it brings more energy: the corner burns.", "assumption",
        "1.2 times; where the power follows the speed, switch it off.",
        (
            Setting(
                "max", 1.2, "1", "largest dwell of the spot at a place, as a multiple of that on a straight run", 1.0,
                100.0,
            ),
        ),
        (
            Check(
                "corner_dose",
                upper=Bound(
                    "max",
                    "With the acceleration given the spot stays {value} times as long here as on a straight run; it "
                    "should be at most {limit} times.",
                    "Round the corner, move the spot slower, or let the power follow the speed.",
                ),
            ),
        ),
        for_flat_overlap=True, optional=True,
    ),
    Rule(
        "plaque-range", "Range of the measured plaques", ATTENTION, "above",
        "The beam path in the cover is not much longer than the thickest plaque that was measured.",
        "The transmission is extrapolated beyond what was measured; the curve is known to be inaccurate there.",
        "assumption", "1.5 times the thickest plaque.",
        (Setting("max", 1.5, "1", "longest beam path divided by the thickest plaque", 0.5, 10.0),),
        (
            Check(
                "path_over_plaques",
                upper=Bound(
                    "max",
                    "The beam path is {value} times as long as the thickest plaque; it should be at most {limit} "
                    "times.",
                    "Measure a plaque at least as thick as the cover over the seam.",
                ),
            ),
        ),
        for_flat_overlap=True, optional=True,
    ),
    Rule(
        "trap-fill", "Melt in both flash traps", MUST_FIX, "above",
        "The expanded melt of the planned collapse fits into both flash traps together.",
        "The melt has nowhere to go: it holds the cover up, or comes out as flash.", "assumption",
        "1: both traps full. Where the expansion of the melt is from memory or assumed, attention as long as the melt "
        "would fit without expanding.",
        (Setting("max", 1.0, "1", "largest share of both flash traps that the melt may fill", 0.1, 10.0),),
        (
            Check(
                "trap_fill",
                upper=Bound(
                    "max",
                    "The expanded melt fills both flash traps {value} times; it should be at most {limit} times.",
                    "Deepen or widen the flash traps, narrow the rib, or plan less collapse.",
                    unproven="max * unproven_expansion",
                ),
            ),
        ),
        optional=True,
    ),
    _trap_side("inner"),
    _trap_side("outer"),
    Rule(
        "collapse-window", "Collapse window", MUST_FIX, "below",
        "There is a collapse that closes every gap and that flash traps, free travel and rib height allow.",
        "Whatever collapse is chosen, the seam stays open at its lowest place, or flash comes out.", "assumption",
        "Any width; what limits its ends is printed with it. Where the expansion of the melt is from memory or "
        "assumed, attention as long as a collapse would suit without it.",
        (Setting("min", 0.0, "mm", "smallest width of the collapse window", 0.0, 5.0),),
        (
            Check(
                "collapse_window",
                lower=Bound(
                    "min", "The collapse window is {value} wide; it should be at least {limit} ({why}).",
                    "Reduce gap and flatness deviation, or enlarge flash traps, travel or rib height[: {by} more].",
                    below_zero="No collapse suits this geometry: the least that closes every gap is {size} more than "
                    "the largest that it allows ({why}).",
                    unproven="min - unproven_window",
                ),
            ),
        ),
        optional=True,
    ),
    Rule(
        "collapse-low", "Planned collapse against the gap", ATTENTION, "below",
        "The planned collapse closes the worst gap and the flatness deviations given.",
        "At its lowest place the rib does not melt down far enough to seal.", "assumption",
        "0.1 mm of collapse left at the lowest place.",
        (Setting("min", 0.0, "mm", "planned collapse above the smallest that closes every gap", 0.0, 5.0),),
        (
            Check(
                "collapse_above_lowest",
                lower=Bound(
                    "min", "The planned collapse of {collapse} is {by} too small to close every gap ({why}).",
                    "Plan more collapse[ by {by}], or reduce gap and flatness deviation.",
                ),
            ),
        ),
        optional=True,
    ),
    Rule(
        "collapse-high", "Planned collapse against its upper limit", ATTENTION, "below",
        "Flash traps, free travel and rib height allow the planned collapse.",
        "The flash traps do not hold the melt, or the cover comes to rest on something else before the collapse is "
        "complete.",
        "assumption",
        "Traps no more than full, 0.2 mm of travel and of rib height left, as in sink-travel and rib-height.",
        (Setting("min", 0.0, "mm", "planned collapse below the largest that the geometry allows", 0.0, 5.0),),
        (
            Check(
                "collapse_below_highest",
                lower=Bound(
                    "min", "The planned collapse of {collapse} is {by} more than the geometry allows ({why}).",
                    "Plan less collapse[ by {by}], or enlarge flash traps, travel or rib height.",
                ),
            ),
        ),
        optional=True,
    ),
    Rule(
        "pair", "Polymer pair", MUST_FIX, "below", "The two polymers are not listed as not weldable to each other.",
        "The weld does not hold, or separates at the interface.", "common practice",
        "The list and its sources are printed with the pair; your own pairs take precedence.",
        (Setting("min", 1.0, "1", "smallest grade of the pair: 0 is listed as not weldable", 0.0, 2.0),),
        (
            Check(
                "pair_grade",
                lower=Bound(
                    "min", "The polymers of cover and base don't weld to each other. {why}",
                    "Choose another polymer for one of the parts, or enter your own trial welds under material.pairs.",
                ),
            ),
        ),
        for_flat_overlap=True, optional=True,
    ),
    Rule(
        "pair-doubt", "Doubtful polymer pair", ATTENTION, "below",
        "The two polymers are the same, or listed as weldable to each other.", "Whether the weld holds is not known.",
        "assumption", "Estimates can reject a pair, never approve it.",
        (Setting("min", 2.0, "1", "grade from which a pair does not count as doubtful: 2", 0.0, 2.0),),
        (
            Check(
                "pair_grade",
                lower=Bound(
                    "min", "Whether the polymers of cover and base weld to each other is in doubt. {why}",
                    "Make trial welds with the actual grades before ordering a tool.",
                ),
            ),
        ),
        for_flat_overlap=True, optional=True,
    ),
)  # fmt: skip
"""In the order in which they are listed to people."""

REPLACED_BY: dict[str, str] = {
    "transmission-untold": "transmission-unknown",
    "pair-doubt": "pair",
    "flatness-stack": "collapse-window",
    "collapse-low": "collapse-window",
    "collapse-high": "collapse-window",
}  # fmt: skip
"""Rule -> the graver one that covers it at the same place; only the graver is reported there."""
