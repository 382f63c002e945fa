"""Quantities and reasons of the material side, declared as data in the words that people read.

catalogue/quantities.py includes them; a review without material settings never computes any of them.
"""

from __future__ import annotations

from seamcheck.catalogue.quantity import Quantity

MATERIAL_QUANTITIES: dict[str, Quantity] = {
    q.key: q
    for q in (
        Quantity(
            "light_path", "beam path in the cover", "mm",
            "Longest path of the beam through the plastic above the rib top: the largest cover thickness over the "
            "cosine of its angle.",
            detail="The angle is that in the plastic; it counts where it is known.",
        ),
        Quantity(
            "transmission", "transmission", "%",
            "Share of the light that passes the cover here, by the curve T0 e^(-K x) through the measured plaques at "
            "the local beam path x.",
            detail="For one plaque of a cover that scatters: the geometric mean of that and the diffuse curve T0 / (1 "
            "+ S x).",
            decimals=1,
        ),
        Quantity(
            "extinction", "apparent extinction", "1/mm",
            "How fast the light fades in the cover: K of the curve T0 e^(-K x) through the measured plaques, the same "
            "at every station.",
            detail="For one plaque of a cover that scatters: the mean between the local beam path x and the one that "
            "transmits 28 %, on the curve between the exponential and the diffuse one.",
        ),
        Quantity(
            "local_collapse", "local collapse", "mm",
            "How far the rib melts down here when the cover sinks by c from initial contact: c less how much g exceeds "
            "its smallest.",
        ),
        Quantity(
            "trap_fill", "flash trap fill", "1",
            "Expanded melt of this section at the planned collapse c over the area A of both flash traps, corners "
            "taken into account.",
            decimals=2,
        ),
        Quantity(
            "trap_fill_inner", "flash trap fill, inner side", "1",
            "Half the expanded melt of this section at the planned collapse c over the inner flash trap's area A, "
            "corners taken into account.",
            detail="That the melt divides evenly is an assumption.", decimals=2,
        ),
        Quantity(
            "trap_fill_outer", "flash trap fill, outer side", "1", "As trap_fill_inner, on the outer side.", decimals=2,
        ),
        Quantity(
            "trap_holds_up_to", "collapse that the traps hold", "mm",
            "Largest collapse at which both flash traps here still hold the expanded melt.",
        ),
        Quantity(
            "energy_need", "energy to melt", "J/mm",
            "Energy that melts one millimetre of seam here without losses: density times melted area times enthalpy to "
            "the melt.",
            decimals=3,
        ),
        Quantity(
            "energy_surplus", "energy surplus", "1",
            "Light arriving here per area of rib to melt, at constant power and speed, over its smallest value along "
            "the seam.",
            detail="What arrives is the transmission times the share of the spot on the rib. 1 at the place with the "
            "smallest value, more elsewhere.",
            decimals=2,
        ),
        Quantity(
            "corner_dose", "corner dose", "1",
            "Dwell of the light here over that on a straight run, if the scanner slows down to keep its largest "
            "acceleration.",
            detail="Planned speed divided by √(acceleration · R), with the radius R of the corner; at least 1.",
            decimals=2,
        ),
        Quantity(
            "melting_start", "time to melting", "s",
            "Time with the laser on, at constant power and speed, until the mean of the interface reaches the melting "
            "point by the heat model.",
            detail="Heat of fusion and collapse come after that.", decimals=1,
        ),
        Quantity(
            "least_power", "least power", "W",
            "Laser power at which this place only just reaches its melting point, against the heat that air and tool "
            "take.",
            decimals=0,
        ),
        Quantity(
            "energy_in_step", "energy to melt in step", "J/mm",
            "Light per millimetre of seam, over the whole weld, with which this place melts as soon as the slowest.",
            detail="By the heat model; the slowest place gets constant power and speed. In a single pass: the light "
            "with which the rib here gets as much as that of the dimmest place.",
            decimals=3,
        ),
        Quantity(
            "power_reserve", "laser power over the least power", "1",
            "Final temperature rise of the interface at its slowest place over the rise to melting; below 1 the seam "
            "does not melt.",
            detail="In a single pass: the rise at the end of the pass.", per="interface", decimals=2,
        ),
        Quantity(
            "weld_time", "time with the laser on", "s",
            "Time until the slowest place has collapsed by c, by the heat model, at constant power and speed.",
            per="interface", decimals=1,
        ),
        Quantity(
            "decomposition_margin", "margin to decomposition", "K",
            "Temperature given as material.process.decomposition less the highest that the heat model finds in the "
            "seam.",
            per="interface", decimals=0,
        ),
        Quantity(
            "first_pass_rise", "temperature rise in one pass", "K",
            "Temperature rise of the base's surface in one pass of the spot, where most light arrives.",
            detail="All of the light turns to heat within the absorption depth, over the width of the spot (of the rib "
            "where no spot is given).",
            per="interface", decimals=0,
        ),
        Quantity(
            "collapse_window", "collapse window", "mm",
            "Largest collapse that flash traps, free travel and rib height allow, less the smallest that closes worst "
            "gap and flatness.",
            detail="Negative: no collapse suits this geometry.", per="interface",
        ),
        Quantity(
            "unproven_expansion", "expansion of the melt, not proven", "1",
            "Expansion of the melt, where it is from memory or assumed; left out where it is published or given.",
            detail="What only it makes too large asks for attention, no more.", per="interface", decimals=2,
        ),
        Quantity(
            "unproven_window", "collapse window lost to an expansion that is not proven", "mm",
            "By how much the collapse window would be wider if the melt did not expand.",
            detail="Where the expansion is published or given it is left out.", per="interface",
        ),
        Quantity(
            "collapse_above_lowest", "planned collapse above the lowest", "mm",
            "Planned collapse c less the smallest that closes the worst gap and the flatness.", per="interface",
        ),
        Quantity(
            "collapse_below_highest", "planned collapse below the highest", "mm",
            "Largest collapse that flash traps, free travel and rib height allow, less the planned collapse c.",
            per="interface",
        ),
        Quantity(
            "pair_grade", "grade of the polymer pair", "1",
            "2: same polymer, common component or listed; 1: conditional, doubtful or unknown; 0: listed as not "
            "weldable. Never an approval.",
            per="interface", decimals=0,
        ),
        Quantity(
            "thickness_of_class", "cover thickness over the limit of its class", "1",
            "Largest cover thickness over the width of the rib top, divided by the usual limit of its class of "
            "material.",
            detail="The limit is the thickness up to which covers of that class (unfilled semi-crystalline, filled, "
            "clear amorphous) are usually welded. Only where no plaque was measured.",
            decimals=2,
        ),
        Quantity(
            "transmission_doubt", "uncertainty of the transmission", "1",
            "0: plaques were measured, or no cover is named; 1: a clear amorphous cover without plaques; 2: a "
            "semi-crystalline or filled one without plaques.",
            per="interface", decimals=0,
        ),
        Quantity(
            "combinations_outside", "tolerance combinations without a weld", "%",
            "Share of random tolerance combinations in which the collapse leaves the worst gap open or exceeds travel, "
            "rib height or flash traps.",
            per="interface", decimals=2,
        ),
        Quantity(
            "path_over_plaques", "beam path over thickest plaque", "1",
            "Longest beam path in the cover divided by the thickness of the thickest measured plaque.", per="interface",
            decimals=2,
        ),
    )
}  # fmt: skip

MATERIAL_REASONS: dict[str, str] = {
    "no-plaque": "No plaque of the cover was measured.",
    "never-melts": "The laser does not melt the seam here, by the heat model.",
    "too-long": "The weld would take longer than material.process.longest_heating, by the heat model.",
    "no-material": "The settings do not name the material that this value needs.",
}
