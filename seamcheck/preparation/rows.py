"""What the sheet of a trial says, chapter by chapter."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from typing import Any

import numpy as np
import shapely

from seamcheck.joint.frame import Frame
from seamcheck.preparation.blocks import Blocks, Drawn
from seamcheck.preparation.cycle import Times
from seamcheck.preparation.files import sheet
from seamcheck.preparation.path import Drive, WeldPath
from seamcheck.preparation.scanner import plate_transmission
from seamcheck.preparation.tools import bending, corridor_of, land_of, path_points, press, unsupported
from seamcheck.settings.settings import Settings


@dataclass(frozen=True, slots=True)
class Tooling:
    """What is asked for beside the settings.

    Attributes
    ----------
    plate : (thickness mm, refractive index) of a transparent plate that presses in place of a frame; None: a frame
    modulus : MPa, of the cover, for its bending; None: not evaluated
    power : W of the laser; None: only shares of power are given
    """

    blocks: Blocks = field(default_factory=lambda: Blocks(20.0))
    plate: tuple[float, float] | None = None
    modulus: float | None = None
    power: float | None = None
    cooling: float | None = None
    handling: float | None = None
    hours: float | None = None
    used: float = 1.0
    parts: float | None = None


def sheet_of(
    model: str, joint: Mapping[str, Any], frame: Frame, drawn: Drawn, settings: Settings, drive: Drive,
    tooling: Tooling, paths: Sequence[WeldPath],
) -> str:  # fmt: skip
    """The sheet of one joint: clamp, nest, weld path, cycle, what was assumed, cautions."""
    chapters: dict[str, list[tuple[str, str]]] = {}
    width = np.concatenate([np.asarray(c["stations"]["rib_width"], dtype=float) for c in joint["contours"]])
    land = land_of(joint, frame)
    rows: list[tuple[str, str]] = []
    pressure = settings.clamp.pressure
    length = float(joint["length_mm"])
    if tooling.plate is not None:
        thick, index = tooling.plate
        rows += [
            ("kind", f"transparent plate {thick:g} mm thick, refractive index {index:g}; it presses over the seam"),
            ("light that the clear plate passes", f"{plate_transmission(index):.1%} (both surfaces, no absorption)"),
        ]  # fmt: skip
    else:
        rows += [
            (
                "kind",
                f"frame and core, {tooling.blocks.height:g} mm high, {tooling.blocks.clear:g} mm clear of the light",
            ),
            ("land found by the review", f"{land.area:.0f} mm²"),
            *_pressed(joint, frame, settings, tooling, land),
            ("proof", "reviewed with the clamp on the cover: no shade, no collision"),
        ]
    if pressure is None:
        rows.append(("force", "not evaluated: the settings name no pressure under [clamp]"))
    else:
        along = press(width, pressure)
        force = float(np.nanmean(along)) * length
        rows += [
            ("pressure over the rib", f"{pressure:g} MPa"),
            ("force", f"{force:.0f} N in all, {np.nanmin(along):.2f} to {np.nanmax(along):.2f} N/mm along the seam"),
        ]
        if tooling.plate is None and land.area > 0.0:
            rows.append(("pressure on the land", f"{force / land.area:.2f} MPa"))
        rows.append(("bending of the cover", _bending_words(joint, settings, tooling, float(np.nanmax(along)))))
    chapters["Clamp"] = rows
    chapters["Nest"] = _nest_rows(joint, frame, drawn, tooling)
    chapters["Weld path"] = _path_rows(drive, tooling, paths)
    chapters["Cycle"] = _cycle_rows(drive, tooling, paths)
    remarks = [
        "Speeds, laps and overlap are those that were asked for; they are starting values for a trial, no recipe.",
        "Energy is that of melting, divided by the light that the cover passes; what goes beside the rib, into "
        "fixtures and into the air is not in it." if paths[0].is_absolute
        else "No materials are named: energy is relative, in proportion to the melted area.",
        "The nest carries the base on level faces; whether the base is stiff enough is not checked.",
        "A frame and a core are separate bodies; how they are held is the toolmaker's.",
    ]  # fmt: skip
    return sheet(f"Trial of {model}, seam {joint['id']}", chapters, remarks)


def _pressed(
    joint: Mapping[str, Any], frame: Frame, settings: Settings, tooling: Tooling, land: shapely.Geometry
) -> list[tuple[str, str]]:
    """How much land lies below frame and core."""
    blocks, rows = tooling.blocks, []
    for contour in joint["contours"]:
        corridor = corridor_of(contour, frame, settings.beam_margin + blocks.clear)
        outside = land.difference(corridor.outer).intersection(corridor.outer.buffer(blocks.wide)).area
        inside = land.intersection(corridor.inner).difference(corridor.inner.buffer(-blocks.wide)).area
        rows.append((f"pressed beside {contour['id']}", f"{outside:.0f} mm² outside, {inside:.0f} mm² inside"))
    return rows


def _bending_words(joint: Mapping[str, Any], settings: Settings, tooling: Tooling, force: float) -> str:
    if tooling.plate is not None:
        return "none: the plate presses over the seam"
    if tooling.modulus is None:
        return "not evaluated: no modulus of the cover is given (--modulus)"
    stations = [c["stations"] for c in joint["contours"]]
    land = np.concatenate([np.asarray(s["clamp_land"], dtype=float) for s in stations])
    thick = np.concatenate([np.asarray(s["cover_thickness_min"], dtype=float) for s in stations])
    arm = settings.beam_margin + tooling.blocks.clear + min(float(np.nanmedian(land)), tooling.blocks.wide) / 2.0
    by = bending(force, arm, float(np.nanmin(thick)), tooling.modulus)
    return f"{by:.3f} mm over {arm:.2f} mm from the rib to the middle of the land; a bow up to this is flattened"


def _nest_rows(joint: Mapping[str, Any], frame: Frame, drawn: Drawn, tooling: Tooling) -> list[tuple[str, str]]:
    support = shapely.Polygon()
    for ring in drawn.support_rings:
        support = support.symmetric_difference(shapely.Polygon(frame.local(np.asarray(ring))[:, :2]).buffer(0.0))
    rows = [
        (
            "pocket",
            f"{tooling.blocks.play:g} mm play, {tooling.blocks.grip:g} mm deep, walls open by "
            f"{tooling.blocks.draft:g}° for insertion",
        ),
        ("carries", f"{support.area:.0f} mm² of level faces below the base"),
    ]
    for contour in joint["contours"]:
        points = frame.local(path_points(contour))[:, :2]
        bare = unsupported(
            points, np.asarray(contour["stations"]["s"]), support.buffer(0.3), float(contour["length_mm"])
        )
        said = "; ".join(f"s = {a:.1f} to {b:.1f} mm" for a, b in bare[:8]) or "nowhere"
        rows.append(
            (f"no support straight below the seam, {contour['id']}", said + (" and more" if len(bare) > 8 else ""))
        )
    return rows


def _path_rows(drive: Drive, tooling: Tooling, paths: Sequence[WeldPath]) -> list[tuple[str, str]]:
    rows = []
    way = "clockwise" if drive.clockwise else "counter-clockwise"
    even = "" if drive.acceleration else "; no acceleration given, so corners do not slow it"
    for path in paths:
        start = ", ".join(f"{x:.2f}" for x in path.points[0])
        rows += [
            (f"{path.id}, start", f"{start} mm, away from corners; {way} seen against the light"),
            (f"{path.id}, speed", f"{path.speed.min():.0f} to {path.speed.max():.0f} mm/s{even}"),
            (f"{path.id}, power", f"{path.power.min():.0%} to 100 %, so that each millimetre gets its need"),
        ]  # fmt: skip
        if path.is_absolute:
            least = path.greatest_power / drive.laps
            rows.append(
                (
                    f"{path.id}, full power for {drive.laps} laps",
                    f"{least:.0f} W at the cover's top, without losses beside the rib",
                )
            )
            if tooling.power is not None and least > tooling.power:
                laps = int(np.ceil(path.greatest_power / tooling.power))
                rows.append((f"{path.id}, laps", f"{tooling.power:g} W need at least {laps} laps at this speed"))
    return rows


def _cycle_rows(drive: Drive, tooling: Tooling, paths: Sequence[WeldPath]) -> list[tuple[str, str]]:
    welding = sum(path.seconds * drive.laps for path in paths)
    rows = [("welding", f"{welding:.2f} s for {drive.laps} lap{'s' if drive.laps > 1 else ''}")]
    if tooling.cooling is None or tooling.handling is None:
        return [*rows, ("cycle", "not evaluated: cooling and handling times are not given")]
    times = Times(welding, tooling.cooling, tooling.handling, tooling.hours, tooling.used, tooling.parts)
    rows.append(("cycle", f"{times.cycle:.2f} s: welding, {times.cooling:g} s cooling, {times.handling:g} s handling"))
    if times.parts_a_year is not None:
        rows.append(
            ("parts a year", f"{times.parts_a_year:.0f} from one station in {times.hours:g} h used by {times.used:.0%}")
        )
    if times.stations is not None:
        rows.append(("stations", f"{times.stations} for {times.parts:.0f} parts a year"))
    return rows
