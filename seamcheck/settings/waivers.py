"""Waivers: findings that somebody has looked at and accepted, with a reason, for a place, until a day."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import date, datetime
from typing import Any

from msgspec import Struct
from msgspec.structs import replace

from seamcheck.catalogue.rules import RULES
from seamcheck.catalogue.voice import tr
from seamcheck.errors import UsageError
from seamcheck.settings.declared import WAIVER
from seamcheck.settings.reading import SettingFault, Table, point, text, unknown

_KEYS = ("rule", "reason", "at", "radius", "contour", "from", "to", "joint", "until")


class Waiver(Struct, frozen=True):
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
        """Whether its last day has passed."""
        return self.until is not None and today > self.until

    def as_dict(self) -> dict[str, Any]:
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


def read_waivers(written: Any) -> tuple[Waiver, ...]:
    """The waivers of ``[[waivers]]``, still without origin; SettingFault for what can't be taken."""
    if not isinstance(written, list):
        raise SettingFault(("waivers",), "waivers are written as [[waivers]], one table for each")
    return tuple(_waiver(replace(Table.of(entry, ("waivers", str(i))), name="")) for i, entry in enumerate(written))


def _waiver(table: Table) -> Waiver:
    table.only(_KEYS, "entry of a waiver")
    _check_place(table)
    radius, from_s, to_s = (table.number(setting) for setting in WAIVER.values())
    return Waiver(
        rule=table.at("rule", _rule),
        reason=table.at("reason", text, "text").strip(),
        at=table.maybe("at", None, point),
        radius=radius,
        contour=table.maybe("contour", "", text),
        from_s=from_s,
        to_s=to_s,
        joint=table.maybe("joint", "", text),
        until=table.maybe("until", None, _day),
    )


def _check_place(table: Table) -> None:
    """A fault where something that a waiver needs is missing, or says two things."""
    entry = table.values
    for is_wrong, sentence in (
        ("rule" not in entry, 'a waiver needs a rule, such as rule = "clamp-land"'),
        (not str(entry.get("reason", "")).strip(), 'a waiver needs a reason, such as reason = "accepted after trials"'),
        (
            ("at" in entry) == ("contour" in entry),
            'a waiver needs one place: at = [x, y, z] with a radius, or contour = "c1" (from, to)',
        ),
        (
            ("from" in entry) != ("to" in entry) or ("from" in entry and "contour" not in entry),
            "a stretch is written with contour, from and to together",
        ),
    ):
        if is_wrong:
            raise SettingFault(table.path, sentence)


def _rule(_: str, written: Any) -> str:
    if written not in RULES:
        raise UsageError(unknown(str(written), RULES, "rule"))
    return str(written)


def _day(name: str, written: Any) -> date:
    if isinstance(written, datetime):
        return written.date()
    if isinstance(written, date):
        return written
    try:
        return date.fromisoformat(written)
    except (TypeError, ValueError):
        raise UsageError(f"{name} must be a day such as 2027-06-30; got {written!r}.") from None


def place_in_words(waiver: Mapping[str, Any]) -> str:
    """Where a waiver of a review document (``Waiver.as_dict``) counts, in words."""
    if waiver.get("at") is not None:
        x, y, z = waiver["at"]
        return tr("within {radius} mm of ({place})", radius=f"{waiver['radius']:g}", place=f"{x:g}, {y:g}, {z:g}")
    stretch = ""
    if waiver.get("from_s") is not None:
        stretch = tr(" from s = {low} to {high} mm", low=f"{waiver['from_s']:g}", high=f"{waiver['to_s']:g}")
    joint = f"{waiver['joint']} " if waiver.get("joint") else ""
    return tr("on {path}{stretch}", path=f"{joint}{waiver['contour']}", stretch=stretch)
