"""Measured plaques: what the settings say of the cover's transmission, checked for what can't be true."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from msgspec import Struct

from seamcheck.catalogue.setting import Setting
from seamcheck.errors import UsageError
from seamcheck.settings.reading import number


class Plaque(Struct, frozen=True):
    """One measured plaque: thickness in mm, total transmission at the weld wavelength as a share 0..1."""

    thickness: float
    transmission: float


def check_plaques(plaques: Sequence[Plaque], index: float, scatter: float) -> tuple[Plaque, ...]:
    """Return the plaques sorted by thickness; UsageError with a sentence when they can't be true.

    Parameters
    ----------
    plaques : one or more
    index : refractive index of the cover
    scatter : relative standard deviation of one measured transmission
    """
    limit = 2.0 * index / (index**2 + 1.0)  # a plate that absorbs nothing: its two surfaces alone
    ordered = tuple(sorted(plaques, key=lambda p: (p.thickness, p.transmission)))
    for plaque in ordered:
        if plaque.transmission > limit * (1.0 + scatter):
            raise UsageError(
                f"The {plaque.thickness:g} mm plaque passes {100 * plaque.transmission:g} %, but the two "
                "surfaces of "
                f"a plastic with index {index:g} alone leave {100 * limit:.1f} %. Was the empty beam taken "
                "as 100 %, and "
                "is it the transmission of the plaque and not of the bulk alone?"
            )
    for thin, thick in pairwise(ordered):
        if thick.thickness > thin.thickness and thick.transmission > thin.transmission * (1.0 + 3.0 * scatter):
            raise UsageError(
                f"The {thin.thickness:g} mm plaque passes {100 * thin.transmission:g} %, the thicker one of "
                f"{thick.thickness:g} mm {100 * thick.transmission:g} %. A thicker plaque of the same "
                "material can't "
                "pass more: were two values swapped, or are the plaques of different grades?"
            )
    return ordered


def read_plaques(name: str, written: object) -> tuple[tuple[float, float], ...]:
    """((thickness mm, percent), ...) by thickness, of a list as it was written; UsageError says what is wrong."""
    if not isinstance(written, list | tuple):
        raise UsageError(
            f"{name} is a list of [thickness in mm, transmission in percent], such as [[1.0, 55.0], [2.0, 36.0]]; "
            f"got {written!r}."
        )
    return tuple(sorted(_plaque(entry) for entry in written))


def _plaque(entry: object) -> tuple[float, float]:
    if not isinstance(entry, list | tuple) or len(entry) != 2:
        raise UsageError(
            "Each of material.plaques is [thickness in mm, transmission in percent], such as "
            f"[2.0, 36.0]; got {entry!r}."
        )
    thickness = number("A plaque's thickness", entry[0], _THICKNESS)
    percent = number(f"The transmission of the {thickness:g} mm plaque", entry[1], _PERCENT)
    if percent > 100.0:
        raise UsageError(
            f"A plaque can't pass {percent:g} % of the light. Each entry is [thickness, percent]; were the two swapped?"
        )
    if percent <= 0.0:
        raise UsageError(
            f"The {thickness:g} mm plaque passes {percent:g} %: a cover that passes no light can't be welded through."
        )
    if percent < 1.0:
        raise UsageError(
            f"The {thickness:g} mm plaque passes {percent:g} %: is that a share? Write percent "
            f"({100 * percent:g}). If it is truly below 1 %, this cover can't be welded through."
        )
    return thickness, percent


_THICKNESS = Setting("thickness", None, "mm", "thickness of a plaque", 0.05, 50.0, "your own", table="material.plaques")
_PERCENT = Setting(
    "percent", None, "%", "what a plaque passes of the light", float("-inf"), float("inf"), "your own",
    table="material.plaques",
)  # fmt: skip
