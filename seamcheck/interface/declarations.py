"""Quantities and reasons of the whole interface, declared as data; limits/quantities.py includes them."""

from __future__ import annotations

from seamcheck.limits.quantity import Quantity

INTERFACE_QUANTITIES: dict[str, Quantity] = {
    q.key: q
    for q in (
        Quantity(
            "field_circle",
            "scan field, diameter of the circle",
            "mm",
            "Diameter of the smallest circle around the mid-line, seen along the light: the round field that a "
            "scanner needs. Its place is the circle's centre.",
            per="interface",
            decimals=2,
        ),
        Quantity(
            "field_length",
            "scan field, long side",
            "mm",
            "Long side of the smallest rectangle, turned as it fits best, around the mid-line, seen along the light.",
            per="interface",
            decimals=2,
        ),
        Quantity(
            "field_width",
            "scan field, short side",
            "mm",
            "Short side of the rectangle of field_length.",
            per="interface",
            decimals=2,
        ),
        Quantity(
            "seam_rise",
            "rise of the seam",
            "mm",
            "Difference of the highest and the lowest place of the mid-line, along the light.",
            per="interface",
        ),
        Quantity(
            "seam_slope",
            "steepest slope of the seam",
            "°",
            "Largest angle between the mid-line and the plane normal to the light; a step in height shows here.",
            per="interface",
            decimals=2,
        ),
        Quantity(
            "path_distance",
            "distance of neighbouring stretches",
            "mm",
            "Smallest distance, mid-line to mid-line, of two stretches of the seam of which the way from one to "
            "the other along the seam is more than three times their distance; looked for up to 30 mm.",
            per="interface",
            decimals=2,
        ),
        Quantity(
            "stop_difference",
            "travel beyond the intended stop",
            "mm",
            "Free travel over the whole interface less the travel at which a stop is meant to end the collapse; "
            "negative where something stops the cover before.",
            per="interface",
        ),
        Quantity(
            "stop_collapse",
            "intended stop beyond the planned collapse",
            "mm",
            "Travel at which a stop is meant to end the collapse, less the planned collapse.",
            per="interface",
        ),
        Quantity(
            "beam_angle",
            "angle of the light",
            "°",
            "Angle in air between the ray to P from the scanner and the normal of the cover's top where the ray "
            "enters, with the ray refracted there.",
            decimals=2,
        ),
        Quantity(
            "spot_offset",
            "shift of the light by the cover",
            "mm",
            "How far the cover moves the ray at the level of P against a straight one: t (tan a - tan b), with "
            "the depth t below the top, the angle a in air and b in the plastic; towards the optical axis.",
        ),
        Quantity(
            "spot_stretch",
            "stretch of the light spot",
            "1",
            "Length of the spot along its tilt over its diameter: 1 / cos of the angle in air.",
        ),
        Quantity(
            "path_in_cover",
            "way of the ray in the cover",
            "mm",
            "Way of the refracted ray through the plastic, from the cover's top to P.",
        ),
        Quantity(
            "light_clear",
            "light reaching the rib from the scanner",
            "1",
            "Share of rays from the scanner to the middle and both edges of the rib's top, and round the rim of "
            "its cone, that enter through the cover's light-side face and meet no part before.",
            decimals=2,
        ),
        Quantity(
            "local_collapse_left",
            "collapse left by flatness",
            "mm",
            "Planned collapse less the flatness of cover and rib as given, plus what the clamp is given to "
            "press flat: what melts at the lowest place in the worst case.",
            per="interface",
        ),
    )
}

INTERFACE_REASONS: dict[str, str] = {
    "no-scanner": "No scanner is given in the settings: the angle of the light is not evaluated. The seam needs "
    "the scan field given as field_circle, field_length and field_width.",
    "no-neighbour": "No other stretch of the seam comes near.",
}
