"""Quantities and rules of the material side, declared as data in the words that people read.

The limits room includes :data:`MATERIAL_QUANTITIES` and :data:`MATERIAL_REASONS` and builds its rules from
:data:`MATERIAL_RULES`; what has no material settings never sees any of them.
"""

from __future__ import annotations

from dataclasses import dataclass

from seamcheck.limits.quantities import Quantity

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
            "Share of the light that passes the cover here, by the curve T0 e^(-K l) through the measured "
            "plaques "
            "at the local light path l.",
            decimals=1,
        ),
        Quantity(
            "local_collapse",
            "local collapse",
            "mm",
            "How far the rib melts down here when the cover sinks by the planned collapse from first rest: "
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
            "Energy that this place gets at even power and speed divided by what it needs, when the slowest "
            "place "
            "of the seam has just melted: 1 there, more elsewhere.",
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
    "no-material": "The settings do not name the material that this value needs.",
}


@dataclass(frozen=True, slots=True)
class MaterialRule:
    """A rule of the material side.

    key : of the rule; quantity : judged; fails : 'below' or 'above' the limit
    severity : 'must-fix' or 'attention'
    limit, unit : default; what, harm, remedy : sentences; standing : where the number comes from
    """

    key: str
    quantity: str
    fails: str
    severity: str
    limit: float
    unit: str
    what: str
    harm: str
    remedy: str
    standing: str


MATERIAL_RULES: tuple[MaterialRule, ...] = (
    MaterialRule(
        "transmission",
        "transmission",
        "below",
        "must-fix",
        15.0,
        "%",
        "Least transmission of the cover over the rib.",
        "Hardly any light reaches the rib: the cover's surface burns before the rib melts.",
        "Make the cover thinner over the seam there, or take a grade or colour that passes more light.",
        "from memory",
    ),
    MaterialRule(
        "transmission-comfort",
        "transmission",
        "below",
        "attention",
        28.0,
        "%",
        "Transmission below which the cover's surface is more prone to burn.",
        "The surface of the cover is more prone to burn, and the weld takes longer.",
        "Make the cover thinner over the seam there, or take a grade or colour that passes more light.",
        "common practice, no published source",
    ),
    MaterialRule(
        "trap-fill",
        "trap_fill",
        "above",
        "must-fix",
        1.0,
        "1",
        "Largest share of both flash traps that the expanded melt may fill.",
        "The melt has nowhere to go: it holds the cover up, or comes out as flash.",
        "Deepen or widen the flash traps, narrow the rib, or plan less collapse.",
        "assumption of this project",
    ),
    MaterialRule(
        "trap-fill-inner",
        "trap_fill_inner",
        "above",
        "attention",
        1.0,
        "1",
        "Largest share of the inner flash trap that half of the expanded melt may fill.",
        "Melt may come out on the inner side, or press to the other one.",
        "Give the inner flash trap more room.",
        "assumption of this project",
    ),
    MaterialRule(
        "trap-fill-outer",
        "trap_fill_outer",
        "above",
        "attention",
        1.0,
        "1",
        "Largest share of the outer flash trap that half of the expanded melt may fill.",
        "Melt may come out on the outer side, or press to the other one.",
        "Give the outer flash trap more room.",
        "assumption of this project",
    ),
    MaterialRule(
        "collapse-window",
        "collapse_window",
        "below",
        "must-fix",
        0.0,
        "mm",
        "Smallest width of the collapse window.",
        "No collapse both closes the gap and finds room for its melt: parts leak, or flash comes out.",
        "Reduce gap and flatness, or give the flash traps, the travel or the rib's height more room.",
        "assumption of this project",
    ),
    MaterialRule(
        "collapse-low",
        "collapse_above_lowest",
        "below",
        "attention",
        0.0,
        "mm",
        "Planned collapse above the smallest that closes gap and flatness.",
        "At the lowest place the rib does not melt down far enough to seal.",
        "Plan more collapse, or reduce gap and flatness.",
        "assumption of this project",
    ),
    MaterialRule(
        "collapse-high",
        "collapse_below_highest",
        "below",
        "attention",
        0.0,
        "mm",
        "Planned collapse below the largest that traps, travel and rib height allow.",
        "The melt finds no room, or the cover comes to rest on something else before the collapse is done.",
        "Plan less collapse, or give the flash traps, the travel or the rib's height more room.",
        "assumption of this project",
    ),
    MaterialRule(
        "pair",
        "pair_grade",
        "below",
        "must-fix",
        1.0,
        "1",
        "The two polymers must not be listed as not weldable to each other.",
        "The weld does not hold, or comes apart clean.",
        "Choose another polymer for one of the parts; a trial weld is required in any case.",
        "common practice, or the source printed with the pair",
    ),
    MaterialRule(
        "pair-doubt",
        "pair_grade",
        "below",
        "attention",
        2.0,
        "1",
        "The two polymers should be the same, or listed as weldable.",
        "Whether the weld holds is not known.",
        "Make a trial weld with the very grades before the tool is ordered.",
        "assumption of this project",
    ),
    MaterialRule(
        "plaque-range",
        "path_over_plaques",
        "above",
        "attention",
        1.5,
        "1",
        "Longest light path against the thickest measured plaque.",
        "The transmission is carried on beyond what was measured; the curve is known to be inaccurate there.",
        "Measure a plaque at least as thick as the cover over the seam.",
        "assumption of this project",
    ),
)
