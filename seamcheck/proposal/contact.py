"""A flat contact of two parts as a joint can use it: its faces, region, lines and heights, and the wall below it."""

from __future__ import annotations

from typing import Any

import numpy as np
import shapely
from msgspec import Struct
from msgspec.structs import replace
from shapely.geometry.base import BaseGeometry

from seamcheck.contour import trace_contour
from seamcheck.joint import Joint
from seamcheck.joint.frame import Frame
from seamcheck.joint.regions import union_region
from seamcheck.kernel import Body
from seamcheck.kernel.distance import depth_inside
from seamcheck.proposal.design import Choices
from seamcheck.proposal.room import Line
from seamcheck.proposal.shape import contact_faces
from seamcheck.settings.settings import Settings

DEPTH_SPACING = 3.0
"""mm along the seam between the places where the wall's depth is taken."""


class Contact(Struct, frozen=True, eq=False):
    """A flat contact as a joint can use it: base's frame with z out of the base, faces, region, lines, heights."""

    joint: Joint
    frame: Frame
    body: Body
    faces: tuple[int, ...]
    region: BaseGeometry
    lines: tuple[Line, ...]
    heights: tuple[float, float]


def carrier_of(joint: Joint, choices: Choices) -> tuple[str, str]:
    """Id of the part that is to carry the rib, and of the other one."""
    base, cover = joint.base[0], joint.cover[0]
    return (base, cover) if choices.rib_on == "base" else (cover, base)


def contact_of(joint: Joint, settings: Settings, choices: Choices, shapes: dict[str, Any]) -> Contact | None:
    """The region in which both parts lie on each other, and the lines along its middle."""
    carrier, other = carrier_of(joint, choices)
    body, counter = Body(shapes[carrier]), joint.bodies[other]
    boxes = joint.bodies[joint.rib_part].boxes[list(joint.rib_faces)]
    middle = (boxes[:, :3].min(axis=0) + boxes[:, 3:].max(axis=0)) / 2.0
    height = float(joint.frame.local(middle)[2])
    frame = Frame.along(-joint.beam if choices.rib_on == "base" else joint.beam, middle)
    turned = shapely.transform(joint.region, lambda xy: _into(frame, joint.frame, xy, height))
    reach = _height_reach(joint, frame)
    faces = contact_faces(body, turned, frame, 1.0, reach)
    under = contact_faces(counter, turned, frame, -1.0, reach)
    if not faces or not under:
        return None
    lying = union_region(body, faces, frame).intersection(union_region(counter, under, frame))
    region = lying.intersection(turned.buffer(0.01))
    if region.is_empty or region.area < 0.5 * turned.area:
        return None
    own = joint
    if joint.rib_part != carrier or region.area < 0.98 * turned.area:
        roles: dict[str, Any] = {"rib_part": carrier, "counter_part": other, "rib_faces": tuple(faces)}
        own = replace(joint, frame=frame, region=region, **roles)
    contour = trace_contour(own)
    lines, heights = [], []
    for path in contour.paths:
        local = frame.local(own.frame.world(path.points))
        lines.append(Line(path.id, path.closed, local[:, :2]))
        heights += [float(local[:, 2].min()), float(local[:, 2].max())]
    return Contact(joint, frame, body, tuple(faces), region, tuple(lines), (min(heights), max(heights)))


def _into(frame: Frame, other: Frame, xy: np.ndarray, z: float) -> np.ndarray:
    world = other.world(np.column_stack([xy, np.full(len(xy), z)]))
    local: np.ndarray = frame.local(world)[:, :2]
    return local


def _height_reach(joint: Joint, frame: Frame) -> float:
    """mm, how far the seam's faces reach above and below the frame's origin."""
    boxes = joint.bodies[joint.rib_part].boxes[list(joint.rib_faces)]
    corners = np.array([[b[i], b[j], b[k]] for b in boxes for i in (0, 3) for j in (1, 4) for k in (2, 5)])
    return float(np.abs(frame.local(corners)[:, 2]).max()) + 0.1


class Depth(Struct, frozen=True, eq=False):
    """Material below the contact along the beam: at places s (n,) mm of a mid-line, xy (n, 2), depth (n,) mm."""

    line: Line
    s: np.ndarray
    xy: np.ndarray
    depth: np.ndarray


def depths_below(contact: Contact) -> list[Depth]:
    """How deep the wall is below every mid-line; inf where nothing ends it."""
    found = []
    for line in contact.lines:
        s = np.arange(0.0, line.curve.length, DEPTH_SPACING)
        xy = shapely.get_coordinates(shapely.line_interpolate_point(line.curve, s))
        start = contact.frame.world(np.column_stack([xy, np.full(len(xy), contact.heights[0] - 0.01)]))
        depth = depth_inside(contact.body, start, -contact.frame.axes[2]) + 0.01
        found.append(Depth(line, s, xy, np.where(np.isfinite(depth), depth, np.inf)))
    return found
