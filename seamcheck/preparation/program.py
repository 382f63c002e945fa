"""Where the beam of a joint comes from, and its strokes with speed and power."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

import numpy as np
from msgspec import Struct

from seamcheck.joint.frame import Frame
from seamcheck.preparation.corridor import Lamp, press_frame, tops_of
from seamcheck.preparation.files import Program
from seamcheck.preparation.given import drive_of, index_of, laps_of
from seamcheck.preparation.path import in_shares, needs_of, weld_path
from seamcheck.preparation.scanner import Field
from seamcheck.preparation.strokes import strokes_of
from seamcheck.settings.settings import Settings


class Site(Struct, frozen=True, eq=False):
    """Frame of a joint, where its beam comes from, and the scanner over it."""

    frame: Frame
    lamp: Lamp
    field: Field


def site_of(joint: Mapping[str, Any], settings: Settings) -> Site:
    """The site of one joint."""
    frame, scanner = press_frame(joint), settings.scanner
    level = float(np.nanmedian(np.concatenate(tops_of(joint, frame))))
    if scanner is None:
        lamp = Lamp(None, np.zeros(2), 0.0, level)
    else:
        given = scanner.axis if scanner.axis is not None else joint["interface"]["field_circle"]["at"]
        pivot = None if scanner.distance is None else level + scanner.distance
        axis = np.asarray(frame.local(np.asarray(given, dtype=float))[:2])
        lamp = Lamp(pivot, axis, scanner.half_angle, level)
    field = Field(frame, lamp.pivot, lamp.axis, index_of(settings, joint), settings.trial.plate, scanner is not None)
    return Site(frame, lamp, field)


def program_of(joint: Mapping[str, Any], site: Site, settings: Settings, clockwise: bool, model: str) -> Program:
    """The strokes of one joint with speed and power; what the scanner is told comes later."""
    contours, beam = joint["contours"], np.asarray(joint["beam"], dtype=float)
    drive, strokes = drive_of(settings, joint, clockwise), strokes_of(contours)
    needs = needs_of(strokes, contours)
    paths = in_shares(
        [weld_path(stroke, need, contours, beam, drive) for stroke, need in zip(strokes, needs, strict=True)]
    )
    laps, _ = laps_of(settings, joint, sum(path.lap_seconds for path in paths))
    ids = [str(contour["id"]) for contour in contours]
    return Program(paths, (), ids, laps, site.frame, _notes(model, joint, site, settings, laps))


def _notes(model: str, joint: Mapping[str, Any], site: Site, settings: Settings, laps: int) -> list[str]:
    origin = " ".join(f"{x + 0.0:.4f}" for x in site.frame.origin)
    axes = "; ".join(" ".join(f"{x + 0.0:.6f}" for x in axis) for axis in site.frame.axes)
    told = "scanner coordinates: x and y in that frame where the straight ray would meet z = 0 if there were no cover"
    if settings.scanner is None:
        told += "; no scanner is given, so they are those of the seam"
    elif site.lamp.pivot is None:
        told += f"; parallel beam, refractive index of the cover {site.field.index:g}"
    else:
        foot = " ".join(f"{x + 0.0:.4f}" for x in site.lamp.axis)
        told += (
            f"; the mirrors' pivot stands at x and y {foot}, {settings.scanner.distance:g} mm over the cover's top; "
            f"refractive index of the cover {site.field.index:g}"
        )
    if site.field.plate is not None:
        told += f"; through a plate {site.field.plate[0]:g} mm thick of refractive index {site.field.plate[1]:g}"
    return [
        f"model {' '.join(model.split())}, seam {joint['id']}; lengths in mm, positions in the model's coordinates",
        f"frame of the seam: origin {origin}; axes x, y, z (z against the beam) {axes}",
        told,
        f"laps {laps}; ramp_share counts in the first lap where it rises and after the last lap where it falls; "
        "not a machine's recipe",
    ]
