"""Where an edge of a section should lie for a finding to be gone: drawn beside where it is.

Nothing is decided here: limits, changes and targets are the finding's own, places those of the section.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from typing import Any

import numpy as np
from msgspec import Struct
from shapely.geometry.base import BaseGeometry

from seamcheck.report import facts
from seamcheck.report.facts import Document, Numbered

Point = tuple[float, float]
Move = tuple[Point, Point]

_LIP = 0.8
"""How wide a missing lip is drawn at most, mm."""


class Target(Struct, frozen=True):
    """Lines where edges should lie, and from where to where they move, mm; in the tone of its finding.

    label : what is written beside the start of a move whose length no dimension tells
    """

    tone: str
    lines: tuple[Move, ...]
    moves: tuple[Move, ...]
    label: str = ""


class Site(Struct, frozen=True, eq=False):
    """What a section is drawn from at one station; lengths in mm.

    value : column -> its value, None where not measured
    half : half the width of the rib's top; slope : of the rib top; up : 1, or -1 with the rib on the cover
    land : from where to where the clamp land lies along u; margin : of the beam beside the rib
    lip : middle of the limits of a lip's gap
    caster : edge of what stands in the beam and its height; None where nothing does
    """

    value: Callable[[str], float | None]
    half: float
    slope: float
    up: int
    traps: Mapping[str, BaseGeometry]
    land: tuple[float, float] | None
    lip: float
    caster: Mapping[int, Point] | None = None

    def at(self, u: float, height: float) -> Point:
        """A place by its height over the rib's top, which leans where the seam climbs."""
        return u, height + self.slope * u

    @property
    def tall(self) -> float:
        return min(self.value("rib_height") or 0.6, 4.0)

    @property
    def gap(self) -> float:
        return (self.value("gap") or 0.0) if self.up > 0 else 0.0


def targets(document: Document, findings: Sequence[Numbered], site: Site) -> list[Target]:
    """What to change in a section, one entry for each finding that names an edge and where it should be."""
    result, drawn = [], set()
    for numbered in findings:
        name = str(numbered.finding.get("column") or numbered.finding.get("quantity") or "")
        if name in drawn:
            continue
        drawn.add(name)
        lines, moves = _edges(numbered.finding, facts.goal(document, numbered.finding), name, site)
        if lines or moves:
            tone = "waived" if numbered.is_waived else str(numbered.finding["severity"])
            by = facts.change_of(numbered.finding)
            label = facts.mm(by, 2) if name in ("beam_clear", "light_clear") and by is not None else ""
            result.append(Target(tone, tuple(lines), tuple(moves), label))
    return result


def _edges(finding: Mapping[str, Any], limit: float | None, name: str, site: Site) -> tuple[list[Move], list[Move]]:
    """Lines and moves of one finding; ``limit``: what its value should become."""
    base, _, side = name.rpartition("_")
    sign = {"inner": -1, "outer": 1}.get(side, 0)
    by = facts.change_of(finding)
    if base in ("trap_room", "trap_corner", "trap_area") and sign and by is not None:
        return _trap_wall(site, side, sign, by)
    if base == "trap_open" and sign:
        return _lip(site, side, sign, facts.lip_leaves(finding))
    if name == "transmission" and by is not None:
        return _cover(site, (site.value("cover_thickness") or 0.0) - by)
    if name in ("beam_clear", "light_clear") and by is not None and (finding.get("args") or {}).get("way"):
        return _out_of_the_light(site, 1 if finding["args"]["way"] == "outward" else -1, by)
    if limit is None:
        return [], []
    if name in ("rib_width", "rib_width_top") and site.half:
        root = -site.tall * site.up
        lines = [(site.at(k * limit / 2, 0.0), site.at(k * limit / 2, root)) for k in (-1, 1)]
        return lines, [(site.at(k * site.half, 0.75 * root), site.at(k * limit / 2, 0.75 * root)) for k in (-1, 1)]
    if name.startswith("cover_thickness"):
        return _cover(site, limit)
    if name in ("gap", "gap_min", "gap_max"):
        wide, now = site.half or 0.5, site.value("gap") or 0.0
        line = site.at(-1.5 * wide, limit * site.up), site.at(1.5 * wide, limit * site.up)
        return [line], [(site.at(wide / 2, now * site.up), site.at(wide / 2, limit * site.up))]
    if name == "clamp_land" and site.land is not None:
        (near, far), roof = site.land, site.gap + (site.value("cover_thickness") or 0.0)
        end = near + np.sign(far - near) * limit
        return [(site.at(end, roof - 0.7), site.at(end, roof + 0.25))], [(site.at(far, roof), site.at(end, roof))]
    if name.startswith("rib_height") or name == "slenderness":
        middle = site.value("rib_width_mid")
        deep = limit if name != "slenderness" else limit * middle if middle else None
        both = [(-1, "inner"), (1, "outer")]  # judged is the lower one
        lower = [(k, way) for k, way in both if site.value(f"rib_height_{way}") == site.value("rib_height")]
        sides = [(sign, side)] if sign else lower
        return _floor(site, sides, deep)
    if base == "draft" and sign:
        return _flank(site, side, sign, limit)
    if base == "lip_gap" and sign and side in site.traps:
        u, roof, _ = _end(site, side, sign)
        now = roof - site.up * (site.value(name) or 0.0)
        wanted = roof - site.up * limit
        x = u + sign * 0.35
        return [((u, wanted), (u + sign * 0.9, wanted))], [((x, now), (x, wanted))]
    return [], []


def _out_of_the_light(site: Site, sign: int, by: float) -> tuple[list[Move], list[Move]]:
    """The edge of what stands in the beam, moved aside: its far edge over the light goes ``by`` to one side."""
    edge = (site.caster or {}).get(-sign)
    if edge is None:
        return [], []
    u, v = edge
    return [((u + sign * by, v - 0.3), (u + sign * by, v + 0.5))], [((u, v + 0.45), (u + sign * by, v + 0.45))]


def _end(site: Site, side: str, sign: int) -> tuple[float, float, float]:
    """Where a trap ends outward, the height of its opening there and that of its floor."""
    u0, v0, u1, v1 = site.traps[side].bounds
    return (u0 if sign < 0 else u1), (v1 if site.up > 0 else v0), (v0 if site.up > 0 else v1)


def _trap_wall(site: Site, side: str, sign: int, by: float) -> tuple[list[Move], list[Move]]:
    if side not in site.traps:
        return [], []
    u, roof, floor = _end(site, side, sign)
    wall, middle = u + sign * by, (roof + floor) / 2
    return [((wall, floor), (wall, roof))], [((u, middle), (wall, middle))]


def _lip(site: Site, side: str, sign: int, leaves: float | None) -> tuple[list[Move], list[Move]]:
    """The lip that is missing, at the end of the trap: its gap in the middle of what the remedy or the limits say."""
    if side not in site.traps:
        return [], []
    u, roof, floor = _end(site, side, sign)
    u0, _, u1, _ = site.traps[side].bounds
    top, far = roof - site.up * (site.lip if leaves is None else leaves), u - sign * min(_LIP, 0.35 * (u1 - u0))
    return [((u, floor), (u, top)), ((u, top), (far, top)), ((far, top), (far, floor))], []


def _cover(site: Site, wanted: float) -> tuple[list[Move], list[Move]]:
    """The cover's top, at another thickness."""
    thick = site.value("cover_thickness")
    if thick is None or wanted <= 0:
        return [], []
    half = site.half or 0.6
    line = site.at(-1.6 * half, site.gap + wanted), site.at(1.6 * half, site.gap + wanted)
    return [line], [(site.at(0.6 * half, site.gap + thick), site.at(0.6 * half, site.gap + wanted))]


def _floor(site: Site, sides: Sequence[tuple[int, str]], deep: float | None) -> tuple[list[Move], list[Move]]:
    """The floor beside the rib at another depth."""
    lines: list[Move] = []
    moves: list[Move] = []
    for sign, side in sides:
        now = site.value(f"rib_height_{side}")
        if now is None or now >= 6.0 or deep is None:
            continue
        foot = sign * site.half
        lines.append((site.at(foot, -deep * site.up), site.at(foot + sign * 1.2, -deep * site.up)))
        u = foot + sign * 0.6
        moves.append((site.at(u, -now * site.up), site.at(u, -deep * site.up)))
    return lines, moves


def _flank(site: Site, side: str, sign: int, degrees: float) -> tuple[list[Move], list[Move]]:
    """The flank of the rib at another draft, from the same edge of its top."""
    tall, lean = site.value(f"rib_height_{side}"), site.value(f"draft_{side}")
    if tall is None or lean is None:
        return [], []
    foot = sign * site.half

    def root(angle: float) -> Point:
        return site.at(foot + sign * tall * float(np.tan(np.radians(angle))), -tall * site.up)

    return [(site.at(foot, 0.0), root(degrees))], [(root(lean), root(degrees))]


def travel(
    numbered: Numbered,
    joint: Mapping[str, Any],
    contour: Mapping[str, Any],
    station: int,
    site: Site,
    met: Sequence[float] | None = None,
) -> Move | None:
    """From where to where the cover sinks until it meets something, where that lies in the section; else None.

    The other end of the way that it should have is ``facts.goal`` below the first.
    """
    finding, stations = numbered.finding, contour["stations"]
    value = site.value("free_travel")
    free = finding.get("value") if numbered.station == station or value is None else value
    if free is None:
        return None
    u, v = 0.0, site.gap
    if met is not None or finding.get("at") is not None:
        here = np.array([stations[axis][station] for axis in "xyz"], dtype=float)
        away = np.asarray(finding["at"] if met is None else met, dtype=float) - here
        across, beam = np.asarray(stations["u"][station], dtype=float), np.asarray(joint["beam"], dtype=float)
        place = float(away @ across), float(-away @ beam)
        if met is not None:
            return (place[0], v), (place[0], v - float(free))
        along = max(float(away @ away) - place[0] ** 2 - place[1] ** 2, 0.0)
        if along <= 0.36:  # within 0.6 mm of the section
            u, v = place
    return (u, v), (u, v - float(free))
