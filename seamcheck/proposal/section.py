"""The section of a proposed joint: its dimensions, and what they come to under every rule that judges a section."""

from __future__ import annotations

import math

from msgspec import Struct


class Section(Struct, frozen=True):
    """Dimensions of a weld rib cut out of a flat contact, mm and degrees.

    Attributes
    ----------
    rib_width : at the contact plane
    rib_height : from the trap floors to the contact plane
    trap_inner, trap_outer : width of each flash trap at the contact plane
    lowering : how far the land beside the traps lies below the contact plane
    draft : degrees, of the rib's flanks and of the traps' walls against the beam
    collapse : planned
    open_inner, open_outer : whether the trap runs out to the border of the contact, with no lip
    """

    rib_width: float
    rib_height: float
    trap_inner: float
    trap_outer: float
    lowering: float
    draft: float
    collapse: float
    open_inner: bool = False
    open_outer: bool = False

    @property
    def lean(self) -> float:
        return math.tan(math.radians(self.draft))

    def width_at(self, depth: float) -> float:
        """mm, width of the rib ``depth`` mm below the contact plane."""
        return self.rib_width + 2.0 * depth * self.lean

    @property
    def melt_area(self) -> float:
        """mm², of the rib above the collapse: w c + c² tan(draft)."""
        return self.rib_width * self.collapse + self.collapse**2 * self.lean

    def trap_area(self, side: str) -> float:
        """mm², between floor and cover after the collapse, from the flank to the wall of the lip.

        Notes
        -----
        A trapezium: width t - 2 y tan(draft) at the depth y, from y = collapse to y = rib height. An open side has
        one leaning wall only.
        """
        width = self.trap_inner if side == "inner" else self.trap_outer
        walls = 1.0 if (self.open_inner if side == "inner" else self.open_outer) else 2.0
        high = self.rib_height - self.collapse
        return width * high - walls / 2.0 * self.lean * (self.rib_height**2 - self.collapse**2)

    def turn_factor(self, side: str, radius: float) -> float:
        """Share of a trap's area that counts on the inside of a turn: 1 - u / R, u its middle off the rib's middle."""
        width = self.trap_inner if side == "inner" else self.trap_outer
        return max(0.0, 1.0 - (self.rib_width + width) / 2.0 / radius)

    def columns(self, radius_inner: float, radius_outer: float) -> dict[str, float]:
        """Quantity -> value as a review would measure it; lengths mm, areas mm², angles degrees.

        Parameters
        ----------
        radius_inner, radius_outer : mm, smallest radius of the mid-line in turns whose inside is the inner or the
            outer side; inf where there is none
        """
        areas = {side: self.trap_area(side) for side in ("inner", "outer")}
        half = self.melt_area / 2.0
        found = {
            "rib_width": self.rib_width,
            "rib_height": self.rib_height,
            "slenderness": self.rib_height / self.width_at(self.rib_height / 2.0),
            "melt_area": self.melt_area,
            "draft_inner": self.draft,
            "draft_outer": self.draft,
            "trap_room": sum(areas.values()) / self.melt_area,
            "free_travel": math.inf if self.open_inner and self.open_outer else self.lowering,
            "corner_radius": min(radius_inner, radius_outer),
        }
        for side, radius in (("inner", radius_inner), ("outer", radius_outer)):
            found[f"trap_room_{side}"] = areas[side] / half
            if math.isfinite(radius):
                found[f"trap_corner_{side}"] = areas[side] * self.turn_factor(side, radius) / half
        if not self.open_inner:
            found["lip_gap_inner"] = self.lowering - self.collapse
        if not self.open_outer:
            found["lip_gap_outer"] = self.lowering - self.collapse
        return found

    @property
    def removed_area(self) -> float:
        """mm², what the traps take out of the wall, the lowering of the lands left out."""
        return (self.trap_inner + self.trap_outer) * self.rib_height

    def half_width(self, side: str) -> float:
        """mm, from the rib's middle to the wall of the trap's lip at the contact plane."""
        return self.rib_width / 2.0 + (self.trap_inner if side == "inner" else self.trap_outer)
