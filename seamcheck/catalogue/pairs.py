"""Can these two polymers be welded to each other? What is listed, else an estimate; always a trial weld."""

from __future__ import annotations

import math
import tomllib
from collections.abc import Mapping, Sequence
from functools import cache
from importlib import resources
from typing import Any

from msgspec import Struct

from seamcheck.catalogue.known import rounded
from seamcheck.catalogue.material_notes import MATERIAL_NOTES
from seamcheck.catalogue.polymers import Polymer, PolymerTable
from seamcheck.catalogue.say import say
from seamcheck.errors import UsageError

VERDICTS = tuple(key.removeprefix("pair.is.") for key in MATERIAL_NOTES if key.startswith("pair.is."))
"""Every outcome of the pair check, from best to worst but for the last; none of them is an approval."""

RISKY = ("some grades", "some reports", "conditional", "estimate: check by trial", "estimate: unlikely", "unknown")
"""Outcomes that ask for attention before any tool is made."""

HONEST_LIMITS = ("pair.limit.estimate", "pair.limit.wrong", "pair.limit.grades")
"""Keys of what an estimate can't say."""

GAS_CONSTANT = 8.314462618  # J/(mol·K), CODATA 2018
REFERENCE_VOLUME = 100.0  # cm³/mol
SEGMENT = 0.7  # nm, statistical segment length
MIXING_TEMPERATURE = 500.0  # K


def hansen_distance(one: Sequence[float], other: Sequence[float]) -> float:
    """Distance of two polymers in Hansen space (MPa^0.5): Ra² = 4 ΔD² + ΔP² + ΔH²."""
    d, p, h = (a - b for a, b in zip(one, other, strict=True))
    return math.sqrt(4.0 * d * d + p * p + h * h)


def interaction(difference: float, temperature: float = MIXING_TEMPERATURE, volume: float = REFERENCE_VOLUME) -> float:
    """Interaction parameter χ ≈ V Δδ² / (R T) (Δδ MPa^0.5, V cm³/mol, T K)."""
    return volume * difference**2 / (GAS_CONSTANT * temperature)


def interface_width(chi: float, segment: float = SEGMENT) -> float:
    """Width of the mixed zone between two immiscible melts (nm): 2 b / √(6 χ); infinite at χ = 0.

    Mean-field result for long chains (E. Helfand and Y. Tagami, J. Chem. Phys. 56, 1972).
    """
    return math.inf if chi <= 0.0 else 2.0 * segment / math.sqrt(6.0 * chi)


class PairCheck(Struct, frozen=True):
    """Outcome of the pair check.

    Attributes
    ----------
    cover, base : symbols
    verdict : a key of VERDICTS
    standing : of the verdict, as printed
    why : sentences
    solubility_difference : MPa^0.5, or None
    interaction : χ at 500 K, or None
    interface_width : nm, or None
    window : (low, high) °C that both melts share; low > high when they share none
    """

    cover: str
    base: str
    verdict: str
    standing: str
    why: tuple[str, ...]
    solubility_difference: float | None
    interaction: float | None
    interface_width: float | None
    window: tuple[float, float]

    @property
    def overlap(self) -> float:
        """Width of the shared melt window in K; negative when there is none."""
        return self.window[1] - self.window[0]

    def as_dict(self) -> dict[str, Any]:
        """Return the entry of the review document."""
        return {
            "cover": self.cover,
            "base": self.base,
            "verdict": self.verdict,
            "standing": self.standing,
            "message": say(f"pair.is.{self.verdict}"),
            "why": list(self.why),
            "solubility_difference": rounded(self.solubility_difference),
            "interaction": rounded(self.interaction),
            "interface_width_nm": rounded(self.interface_width),
            "window_c": [rounded(self.window[0]), rounded(self.window[1])],
            "window_overlap_k": rounded(self.overlap),
            "limits": [say(key) for key in HONEST_LIMITS],
        }


@cache
def _data() -> dict[str, Any]:
    return tomllib.loads(resources.files("seamcheck.catalogue").joinpath("data/pairs.toml").read_text("utf-8"))


def check_pair(cover: Polymer, base: Polymer, own: Sequence[Mapping[str, Any]] = ()) -> PairCheck:
    """Judge whether two polymers can be welded to each other.

    The user's own pairs win over the list, the list over the estimate. The estimate takes the difference of
    the solubility parameters and the overlap of the melt windows: check by trial up to 2.5 MPa^0.5 and from 10 K
    on, else unlikely (assumptions of this project). It never comes to more than that.
    """
    window = (max(cover.window[0], base.window[0]), min(cover.window[1], base.window[1]))
    difference = None
    if cover.hansen and base.hansen:
        difference = hansen_distance(cover.hansen, base.hansen)
    elif "solubility" in cover.cells and "solubility" in base.cells:
        difference = abs(cover.cells["solubility"].value - base.cells["solubility"].value)
    chi = None if difference is None else interaction(difference)
    width = None if chi is None else interface_width(chi)
    verdict, standing, why = _verdict(cover, base, own, difference, window[1] - window[0])
    return PairCheck(cover.symbol, base.symbol, verdict, standing, why, difference, chi, width, window)


def _verdict(
    cover: Polymer, base: Polymer, own: Sequence[Mapping[str, Any]], difference: float | None, overlap: float
) -> tuple[str, str, tuple[str, ...]]:
    names = {cover.symbol, base.symbol}
    for entry in own:
        if set(entry["symbols"]) == names:
            return (entry["verdict"], say("pair.source.own"), (entry.get("why") or say("pair.own"),))
    if cover.symbol == base.symbol:
        return ("same polymer", "common practice", (say("pair.same"),))
    data = _data()
    for entry in data["pair"]:
        if set(entry["symbols"]) == names:
            return (
                entry["verdict"],
                say(f"pair.source.{entry['source']}"),
                (say(f"pair.why.{entry['why']}"),) if "why" in entry else (),
            )
    if base.symbol in cover.components or cover.symbol in base.components:
        return "common component", "assumption", (say("pair.blend"),)
    for entry in data["family"]:
        for one, other in ((cover.symbol, base.symbol), (base.symbol, cover.symbol)):
            if (
                one in entry["members"]
                and other not in entry["members"]
                and (entry["against"] == "others" or other in entry["against"])
            ):
                source, reason = say(f"pair.source.{entry['source']}"), say(f"pair.why.{entry['why']}")
                return entry["verdict"], source, (reason,)
    if difference is None:
        return "unknown", "assumption", (say("pair.no-solubility"),)
    why = (
        say("pair.difference", difference=difference),
        say("pair.share", overlap=overlap) if overlap > 0 else say("pair.miss", gap=-overlap),
    )
    if difference <= 2.5 and overlap >= 10.0:
        return "estimate: check by trial", "assumption", why
    return "estimate: unlikely", "assumption", why


def own_pairs(entries: object, table: PolymerTable) -> tuple[dict[str, Any], ...]:
    """Return the user's pairs, checked: ``[[material.pairs]]`` with symbols, verdict and, if wished, why."""
    allowed = ("listed as weldable", "conditional", "not weldable")
    if not isinstance(entries, list):
        raise UsageError('[[material.pairs]] is a list of tables, each with symbols = ["..", ".."] and a verdict.')
    pairs = []
    for entry in entries:
        if (
            not isinstance(entry, Mapping)
            or set(entry) - {"symbols", "verdict", "why"}
            or not (isinstance(entry.get("symbols"), list) and len(entry["symbols"]) == 2)
        ):
            raise UsageError(
                f'Each of [[material.pairs]] has symbols = ["..", ".."], verdict and, if wished, why; got {entry!r}.'
            )
        if entry.get("verdict") not in allowed:
            raise UsageError(f"The verdict of a pair is one of: {', '.join(allowed)}; got {entry.get('verdict')!r}.")
        symbols = [table.find(str(symbol)).symbol for symbol in entry["symbols"]]
        pairs.append({"symbols": symbols, "verdict": str(entry["verdict"]), "why": str(entry.get("why", ""))})
    return tuple(pairs)
