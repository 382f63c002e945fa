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
            "Share of the light that passes the cover here, by the curve T0 e^(-K l) through the measured "
            "plaques "
            "at the local light path l.",
            decimals=1,
        ),
        Quantity(
            "extinction",
            "apparent extinction",
            "1/mm",
            "How fast the light falls off in the cover: K of the curve T0 e^(-K l) through the measured "
            "plaques, the same at every station.",
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
