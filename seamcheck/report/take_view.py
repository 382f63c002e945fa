"""Section outlines and display meshes of a surveyed model, for the document's part "view".

Runs where the model was read; it takes the facets that were measured, or coarser ones.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

import numpy as np

from seamcheck.contour import Contour
from seamcheck.joint import Joint
from seamcheck.report.view import Mesh, SectionSet, pack_view
from seamcheck.survey.band import near_facets
from seamcheck.survey.slices import Soup, cut
from seamcheck.survey.table import PathSurvey, Survey

MOST_SECTIONS = 3000
"""For each path; longer ones get every second, third ... station."""

_REACH = 10.0  # mm beside the mid-line, or six rib widths where that is more
_JOIN = 1e-4  # mm: corners nearer than this are one in a mesh


def take_view(surveyed: Sequence[tuple[Joint, Contour, Survey]]) -> dict[str, Any]:
    """The part "view" of the document.

    Parameters
    ----------
    surveyed : all joints of the model; their bodies lose the fine meshes that measuring left on them
    """
    sections = []
    for joint, contour, survey in surveyed:
        reach = max(_REACH, 6.0 * contour.rib_width)
        soup = near_facets(joint, contour, reach)
        sections += [_sections(joint, path, soup, reach) for path in survey.paths if len(path.s)]
    return pack_view(sections, _meshes([joint for joint, _, _ in surveyed]))


def _sections(joint: Joint, path: PathSurvey, soup: Soup, reach: float) -> SectionSet:
    """Outlines of all bodies in the section planes of one path: u outward, v against the light, P at 0."""
    step = -(-len(path.s) // MOST_SECTIONS)
    stations = np.arange(0, len(path.s), step)
    points = joint.frame.local(path.points[stations])
    u = joint.frame.local_vectors(path.u[stations])[:, :2]
    lines = cut(soup, points[:, :2], u / np.linalg.norm(u, axis=1, keepdims=True), reach)
    height = points[lines.station, 2]
    segments = np.column_stack(
        [lines.u0, joint.up * (lines.w0 - height), lines.u1, joint.up * (lines.w1 - height)]
    )
    offsets = np.searchsorted(lines.station, np.arange(len(stations) + 1))
    return SectionSet(joint.id, path.id, stations, offsets, segments, lines.owner, lines.face)


def _meshes(joints: Sequence[Joint]) -> list[Mesh]:
    """Every body once; cover and base finer than the others."""
    from seamcheck.kernel.display import display_facets

    roles = {part for joint in joints for part in (*joint.cover, *joint.base)}
    bodies = {part: body for joint in joints for part, body in joint.bodies.items()}
    meshes = []
    for part, body in bodies.items():
        if not np.isfinite(body.box).all():
            continue
        size = float(np.linalg.norm(body.box[1] - body.box[0]))
        fine = part in roles
        facets = display_facets(body, size / (2000 if fine else 300), 0.3 if fine else 0.7)
        corners = np.round(facets.corners.reshape(-1, 3) / _JOIN).astype(np.int64)
        places, triangles = np.unique(corners, axis=0, return_inverse=True)
        meshes.append(Mesh(part, places * _JOIN, triangles.reshape(-1, 3), facets.face))
    return meshes
