"""Waivers: findings that somebody has looked at and accepted, with a reason, for a place, until a day."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date


@dataclass(frozen=True, slots=True)
class Waiver:
    """One accepted deviation.

    Attributes
    ----------
    rule : key of the rule
    reason : why it is accepted; never empty
    at, radius : (3,) mm in the model's coordinates and mm: the whole finding lies within the radius
    contour, from_s, to_s : path and stretch (mm along it) that hold the whole finding; the whole path where
        no stretch is given; from_s > to_s passes the start of a closed path
    joint : where the model has several
    until : last day on which it counts; None for ever
    origin : 'seamcheck.toml, line 12' or ''
    """

    rule: str
    reason: str
    at: tuple[float, float, float] | None = None
    radius: float = 2.0
    contour: str = ""
    from_s: float | None = None
    to_s: float | None = None
    joint: str = ""
    until: date | None = None
    origin: str = ""

    def is_expired(self, today: date) -> bool:
        return self.until is not None and today > self.until

    def as_dict(self) -> dict:
        """Plain values, as they stand in the review document."""
        return {
            "rule": self.rule,
            "reason": self.reason,
            "at": None if self.at is None else list(self.at),
            "radius": None if self.at is None else self.radius,
            "contour": self.contour or None,
            "from_s": self.from_s,
            "to_s": self.to_s,
            "joint": self.joint or None,
            "until": None if self.until is None else self.until.isoformat(),
            "origin": self.origin or None,
        }


def place_in_words(waiver: Mapping) -> str:
    """Where a waiver of a review document (``Waiver.as_dict``) counts, in words."""
    if waiver.get("at") is not None:
        x, y, z = waiver["at"]
        return f"within {waiver['radius']:g} mm of ({x:g}, {y:g}, {z:g})"
    stretch = ""
    if waiver.get("from_s") is not None:
        stretch = f" from s = {waiver['from_s']:g} to {waiver['to_s']:g} mm"
    joint = f"{waiver['joint']} " if waiver.get("joint") else ""
    return f"on {joint}{waiver['contour']}{stretch}"
