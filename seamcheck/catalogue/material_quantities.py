"""Quantities and reasons of the material side, declared as data in the words that people read.

catalogue/quantities.py includes them; a review without material settings never computes any of them.
"""

from __future__ import annotations

from seamcheck.catalogue.quantity import Quantity

MATERIAL_QUANTITIES: dict[str, Quantity] = {
    q.key: q
    for q in (
        Quantity(
            "light_path",
            "light path in the cover",
            "mm",
            "Way of the light through the plastic above the rib, the longest over the strip of its top: the "
            "largest cover thickness, divided by the cosine of the angle in the plastic where the angle is "
            "known.",
        ),
        Quantity(
            "transmission",
            "transmission",
            "%",
            "Share of the light that passes the cover here, by the curve T0 e^(-K l) through the measured plaques at "
            "the local light path l; for one plaque of a cover that scatters by the geometric mean of that and the "
            "diffuse curve T0 / (1 + S l).",
            decimals=1,
        ),
        Quantity(
            "extinction",
            "apparent extinction",
            "1/mm",
            "How fast the light falls off in the cover at the local light path l: K of the curve T0 e^(-K l) through "
            "the measured plaques, the same at every station; for one plaque of a cover that scatters the slope of "
            "the curve between the exponential and the diffuse one.",
        ),
        Quantity(
            "local_collapse",
            "local collapse",
            "mm",
            "How far the rib melts down here when the cover sinks by the planned collapse from initial contact: "
            "the "
            "collapse less what the gap is larger here than at its smallest.",
        ),
        Quantity(
            "trap_fill",
            "flash trap fill",
            "1",
            "Expanded melt of this section at the planned collapse divided by the room of both flash traps, "
            "bends taken into account.",
            decimals=2,
        ),
        Quantity(
            "trap_fill_inner",
            "flash trap fill, inner side",
            "1",
            "Half of the expanded melt of this section at the planned collapse divided by the room of the "
            "inner "
            "flash trap, bends taken into account. That the melt divides evenly is an assumption.",
            decimals=2,
        ),
        Quantity(
            "trap_fill_outer",
            "flash trap fill, outer side",
            "1",
            "As trap_fill_inner, on the outer side.",
            decimals=2,
        ),
        Quantity(
            "trap_holds_up_to",
            "collapse that the traps hold",
            "mm",
            "Largest collapse at which the room of both flash traps here still holds the expanded melt.",
        ),
        Quantity(
            "energy_need",
            "energy to melt",
            "J/mm",
            "Energy that melts one millimetre of the seam here, without any loss: density times melted area "
            "times "
            "heat to the melt.",
            decimals=3,
        ),
        Quantity(
            "energy_surplus",
            "energy surplus",
            "1",
            "Light that arrives at this place at even power and speed (transmission, share of the spot on the rib) "
            "over the area of rib that it has to melt, divided by the smallest such ratio of the seam: 1 there, more "
            "elsewhere.",
            decimals=2,
        ),
        Quantity(
            "corner_dose",
            "corner dose",
            "1",
            "How much longer the light stays here than on a straight run, if the scanner slows down to keep "
            "its "
            "largest acceleration: planned speed divided by √(acceleration · turn radius), at least 1.",
            decimals=2,
        ),
        Quantity(
            "melting_start",
            "time to melting",
            "s",
            "Time with the laser on, at even power and speed, until the mean of the interface here reaches the melting "
            "point, by the heat model; heat of fusion and collapse come after that.",
            decimals=1,
        ),
        Quantity(
            "least_power",
            "least power",
            "W",
            "Laser power at which this place reaches its melting point at all, against the heat that air and tool "
            "take.",
            decimals=0,
        ),
        Quantity(
            "energy_in_step",
            "energy to melt in step",
            "J/mm",
            "Light on one millimetre of the seam here over the whole weld with which, by the heat model, this place "
            "melts at the same moment as the slowest one does at even power and speed. In a single pass: with which "
            "its rib gets as much light as that of the dimmest place.",
            decimals=3,
        ),
        Quantity(
            "power_reserve",
            "laser power over the least power",
            "1",
            "Rise of the interface that the laser reaches at the slowest place in the end (in a single pass: at the "
            "end of the pass), divided by the rise to melting. Below 1 the seam does not melt.",
            per="interface",
            decimals=2,
        ),
        Quantity(
            "decomposition_margin",
            "decomposition above the highest temperature",
            "K",
            "Temperature given as material.process.decomposition less the highest that the heat model finds in the "
            "seam.",
            per="interface",
            decimals=0,
        ),
        Quantity(
            "first_pass_rise",
            "rise in one pass",
            "K",
            "Rise of the base's surface while the spot passes once, where most light arrives: all of it turns to heat "
            "within the absorption depth, over the width of the spot (of the rib where no spot is given).",
            per="interface",
            decimals=0,
        ),
        Quantity(
            "collapse_window",
            "collapse window",
            "mm",
            "Largest collapse that flash traps, free travel and rib height allow, less the smallest that "
            "closes "
            "the worst gap and the flatness. Negative: no collapse suits this geometry.",
            per="interface",
        ),
        Quantity(
            "collapse_above_lowest",
            "collapse above its lowest",
            "mm",
            "Planned collapse less the smallest that closes the worst gap and the flatness.",
            per="interface",
        ),
        Quantity(
            "collapse_below_highest",
            "collapse below its highest",
            "mm",
            "Largest collapse that flash traps, free travel and rib height allow, less the planned one.",
            per="interface",
        ),
        Quantity(
            "pair_grade",
            "pair of polymers",
            "1",
            "2: same polymer, common component or listed; 1: conditional, doubtful or unknown; 0: listed as "
            "not "
            "weldable. Never an approval.",
            per="interface",
            decimals=0,
        ),
        Quantity(
            "thickness_of_class",
            "cover thickness for its class",
            "1",
            "Largest cover thickness over the strip, divided by the thickness up to which covers of its class "
            "(unfilled semi-crystalline, filled, clear amorphous) are usually welded. Only where no plaque was "
            "measured.",
            decimals=2,
        ),
        Quantity(
            "transmission_doubt",
            "doubt about the transmission",
            "1",
            "0: plaques were measured, or no cover is named; 1: a clear amorphous cover without plaques; 2: a "
            "semi-crystalline or filled one without plaques.",
            per="interface",
            decimals=0,
        ),
        Quantity(
            "combinations_outside",
            "tolerance combinations without a weld",
            "%",
            "Share of the random tolerance combinations in which the collapse does not close the worst gap, or travel, "
            "rib height or flash traps have no room for it.",
            per="interface",
            decimals=2,
        ),
        Quantity(
            "path_over_plaques",
            "light path against plaques",
            "1",
            "Longest light path divided by the thickness of the thickest measured plaque.",
            per="interface",
            decimals=2,
        ),
    )
}

MATERIAL_REASONS: dict[str, str] = {
    "no-plaque": "No plaque of the cover was measured.",
    "never-melts": "The laser does not melt the seam here, by the heat model.",
    "no-material": "The settings do not name the material that this value needs.",
}
