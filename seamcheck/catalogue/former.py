"""Keys of earlier versions, and what holds instead, so that old settings and waivers are answered with the new key."""

from __future__ import annotations

FORMER_RULES_UNTIL = "0.2.0"

FORMER_RULES: dict[str, str] = {
    "transmission-comfort": "transmission",
    "rib-evenness": "rib-uniformity",
    "cover-evenness": "cover-uniformity",
    "energy-evenness": "energy-uniformity",
    "turn-radius": "corner-radius",
}
"""Rule of an earlier version -> the rule that covers it now."""

FORMER_QUANTITIES: dict[str, str] = {
    "turn_radius": "corner_radius",
    "trap_turn_inner": "trap_corner_inner",
    "trap_turn_outer": "trap_corner_outer",
}
"""Quantity of an earlier version -> its name now."""
