"""What the kernel does for a trial: tools drawn beside the model, and rays traced through its cover. In a child."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from pathlib import Path
from typing import Any

import numpy as np
from msgspec import Struct

from seamcheck.assembly import read_assembly
from seamcheck.joint import join_pieces
from seamcheck.joint.frame import Frame
from seamcheck.kernel import Body
from seamcheck.kernel.grooves import Axes, common, volume
from seamcheck.kernel.moving import shifted
from seamcheck.kernel.write_step import write_bodies
from seamcheck.measure.beam_path import top_near, zone_of
from seamcheck.preparation.clamp import Site, Tool, clamp_tools, plate_tools
from seamcheck.preparation.corridor import Lamp, land_of, light_region, polygons, press_frame, rings_of, tops_of
from seamcheck.preparation.nest import nest_of
from seamcheck.preparation.scanner import Field, Tops, field_coordinates
from seamcheck.sections.face_gaps import FaceList
from seamcheck.settings.settings import Settings

CLAMP, NEST, PLATE = "clamp", "nest", "plate"
"""Kinds of tools, and the names of their files."""

LIFTED = 0.1
"""mm by which the clamp stands over the cover in the model that is reviewed again: faces that coincide over a curved
cover take minutes to compare. What clamp and cover share is computed of the clamp as it is."""

_COLOURS = {CLAMP: (0.55, 0.58, 0.62, 1.0), NEST: (0.45, 0.40, 0.33, 1.0), PLATE: (0.75, 0.88, 0.95, 0.4)}

Ring = tuple[tuple[float, float, float], ...]


class Drawn(Struct, frozen=True, eq=False):
    """What was drawn for one joint; rings are of (x, y, z) mm in the model's coordinates.

    Attributes
    ----------
    feet : name of each body of clamp or plate -> rings of its foot
    pressed : name -> mm² of that foot on land that the review found
    land : rings of the land that the review found
    pocket, support : rings of the nest's pocket and of what it carries; grip : mm, depth of the pocket
    overlap : mm³ that a tool shares with a part
    told : (n, 2) mm in the frame, scanner coordinates of the points that were asked for
    """

    feet: Mapping[str, tuple[Ring, ...]]
    pressed: Mapping[str, float]
    land: tuple[Ring, ...]
    pocket: tuple[Ring, ...]
    support: tuple[Ring, ...]
    grip: float
    overlap: float
    told: np.ndarray


def draw_blocks(
    paths: Sequence[Path], settings: Settings, joint: Mapping[str, Any], lamp: Lamp, field: Field,
    points: np.ndarray, thickness: np.ndarray, target: Path,
) -> Drawn:  # fmt: skip
    """Draw the tools of one joint, write them and the model with the clamp on it, and trace the light.

    Parameters
    ----------
    joint : of the review's document
    points : (n, 3) mm, that the beam has to meet; thickness : (n,) mm, of the cover over them
    target : folder for 'clamp.step' or 'plate.step', 'nest.step' and 'with-clamp.step'
    """
    trial, assembly = settings.trial, join_pieces(read_assembly(paths), settings)
    frame = press_frame(joint)
    bodies = {part.id: Body(part.shape) for part in assembly.parts}
    axes = Axes(frame.origin, frame.axes)
    tops = np.concatenate(tops_of(joint, frame))
    light = light_region(joint, frame, lamp, settings.beam_margin + trial.clearance)
    land = land_of(joint, frame, lamp, settings.beam_margin)
    cover = {i: bodies[i] for i in joint["cover"]}
    others = {i: body for i, body in bodies.items() if i not in cover}
    low, high = float(np.nanmin(tops)), float(np.nanmax(tops))
    site = Site(frame, axes, cover, others, lamp, light, land, low, high, settings.clamp.height)
    kind = CLAMP if trial.plate is None else PLATE
    tools = clamp_tools(site, trial) if trial.plate is None else plate_tools(site, trial)
    _write(target / f"{kind}.step", tools, kind)
    if kind == CLAMP:
        parts = [
            (part.name or part.id, part.shape, (*(part.colour or (0.7, 0.7, 0.7)), 1.0)) for part in assembly.parts
        ]
        own = [(tool.name, shifted(tool.solid, LIFTED * frame.up), _COLOURS[kind]) for tool in tools]
        write_bodies([*parts, *own], target / "with-clamp.step")
    nest = nest_of(axes, joint, bodies, frame, trial, settings.collapse)
    write_bodies([(NEST, nest.solid, _COLOURS[NEST])], target / "nest.step", title=NEST)
    solids = [*(tool.solid for tool in tools), nest.solid]
    overlap = max(volume(common(tool, body.shape)) for tool in solids for body in bodies.values())
    told = field_coordinates(field, points, thickness, top_of(site.cover, frame, points, thickness))
    return Drawn(
        {tool.name: tuple(_world(frame, ring, site.high) for ring in tool.rings) for tool in tools},
        {tool.name: tool.area for tool in tools},
        tuple(_world(frame, ring, site.high) for part in polygons(land.simplify(0.01)) for ring in rings_of(part)),
        tuple(_world(frame, ring, nest.low) for ring in nest.pocket),
        tuple(_world(frame, ring, nest.low) for ring in nest.support), nest.grip,
        float(overlap), told,
    )  # fmt: skip


def top_of(cover: Mapping[str, Body], frame: Frame, points: np.ndarray, thickness: np.ndarray) -> Tops:
    """The cover's top as the beam meets it, from its exact faces."""
    local = frame.local(points) + np.column_stack([np.zeros((len(points), 2)), np.nan_to_num(thickness)])
    faces = FaceList.of(dict(cover), frame, 1.0, zone_of(local, 5.0))
    lit = faces.facets(frame, 1.0)

    def tops(places: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
        top = top_near(frame.world(places), frame, faces, lit)
        return frame.local(top.place), frame.local_vectors(top.normal)

    return tops


def _write(file: Path, tools: Sequence[Tool], kind: str) -> None:
    write_bodies([(tool.name, tool.solid, _COLOURS[kind]) for tool in tools], file, title=kind)


def _world(frame: Frame, ring: np.ndarray, z: float) -> Ring:
    points = frame.world(np.column_stack([ring, np.full(len(ring), z)]))
    return tuple((float(x), float(y), float(z)) for x, y, z in points)
