"""Section outlines and display meshes of a surveyed model, for the document's part "view".

Runs where the model was read; it takes the facets that were measured, or coarser ones.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Any

import numpy as np

from seamcheck.contour import Contour
from seamcheck.document.plain import numbers
from seamcheck.document.view import FIRST_OTHER, Mesh, SectionSet, different_rows, pack_view
from seamcheck.joint import Joint
from seamcheck.measure.table import PathSurvey, Shade, Survey
from seamcheck.sections.alike import cut_alike
from seamcheck.sections.band import boxes_within, near_facets, path_line, zone_around
from seamcheck.sections.slices import OTHER, Soup, box_tree

MOST_SECTIONS = 3000
"""For each path; longer ones get every second, third ... station."""

SHOWN = 9.0
"""mm beside the mid-line that are shown, or five rib widths where that is more."""

_MORE = 1.2  # so much further facets are taken than shown
_OTHER_DEFLECTION = 0.05  # mm, of bodies that are neither cover nor base
_STEPS = 2048.0  # to the mm, on which the ends of outlines lie: finer than any line is drawn, and far smaller to send
_NEAR = 12.0  # mm round the mid-line within which parts are drawn finer
_MOST_FACES, _MOST_OF_OTHERS = (3000, 800), (300, 300)  # of a body that are drawn near the seam, and away from it
_JOIN = 1e-4  # mm: corners nearer than this are one in a mesh


def take_view(surveyed: Sequence[tuple[Joint, Contour, Survey]]) -> dict[str, Any]:
    """The part "view" of the document.

    Parameters
    ----------
    surveyed : all joints of the model; their bodies lose the fine meshes that measuring left on them
    """
    sections = [one for joint, contour, survey in surveyed for one in outlines(joint, contour, survey.paths)]
    return pack_view(sections, _meshes([joint for joint, _, _ in surveyed], _near_seam(surveyed)))


def outlines(joint: Joint, contour: Contour, paths: Sequence[PathSurvey]) -> list[SectionSet]:
    """Outlines of all bodies of a joint in the section planes of some paths along its contour."""
    shown = max(SHOWN, 5.0 * contour.rib_width)
    soup = _soup(joint, contour, _MORE * shown)
    return [_sections(joint, path, soup, shown) for path in paths if len(path.s)]


def _soup(joint: Joint, contour: Contour, reach: float) -> Soup:
    """Facets of all bodies near the seam; bodies beside cover and base have owners of their own."""
    measured = near_facets(joint, contour, reach, 0.0)
    if len(joint.bodies) == 2:
        return measured
    mine = measured.owner != OTHER
    corners, owners, faces = [measured.corners[mine]], [measured.owner[mine]], [measured.face[mine]]
    zone = zone_around([path_line(path) for path in contour.paths], reach)
    others = [body for part, body in joint.bodies.items() if part not in (joint.rib_part, joint.counter_part)]
    for owner, body in enumerate(others, FIRST_OTHER):
        near = boxes_within(body.boxes, zone, joint)
        if len(near):
            facets = body.facets(near, _OTHER_DEFLECTION)
            corners.append(joint.frame.local(facets.corners))
            owners.append(np.full(len(facets.face), min(owner, 255)))
            faces.append(facets.face)
    return Soup.of(np.concatenate(corners), np.concatenate(owners), np.concatenate(faces))


def _sections(joint: Joint, path: PathSurvey, soup: Soup, shown: float) -> SectionSet:
    """Outlines of all bodies in the section planes of one path: u outward, v against the beam, P at 0."""
    step = -(-len(path.s) // MOST_SECTIONS)
    stations = np.arange(0, len(path.s), step)
    points = joint.frame.local(path.points[stations])
    u = joint.frame.local_vectors(path.u[stations])[:, :2]
    u = u / np.linalg.norm(u, axis=1, keepdims=True)
    lines, of = cut_alike(soup, points[:, :2], u, shown, box_tree(soup), points[:, 2:])
    height = points[np.unique(of, return_index=True)[1], 2][lines.station]
    segments = np.column_stack([lines.u0, joint.up * (lines.w0 - height), lines.u1, joint.up * (lines.w1 - height)])
    section, segments, owner, face = closed_outlines(lines.station, segments, lines.owner, lines.face, shown)
    segments = np.round(segments * _STEPS) / _STEPS
    station, line = _at_all_stations(section, of)
    segments, owner, face = segments[line], owner[line], face[line]
    slope = np.zeros(len(path.s)) if path.slope is None else np.nan_to_num(path.slope)
    offsets = np.searchsorted(station, np.arange(len(stations) + 1))
    others = tuple(part for part in joint.bodies if part not in (joint.rib_part, joint.counter_part))
    shade = () if path.shade is None else _shade_rows(_stopped(path.shade, station, segments, owner, others))
    return SectionSet(joint.id, path.id, stations, offsets, segments, owner, face, slope[stations], shade, others)


def _at_all_stations(section: np.ndarray, of: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
    """Station and number of every line of all stations, from the section (k,) of each line and that of each station.

    Parameters
    ----------
    section : (k,) int, ascending; of : (n,) int, ascending
    """
    first, last = np.searchsorted(section, of), np.searchsorted(section, of, side="right")
    size = last - first
    return np.repeat(np.arange(len(of)), size), np.arange(size.sum()) + np.repeat(last - np.cumsum(size), size)


def _stopped(
    shade: Shade, station: np.ndarray, segments: np.ndarray, owner: np.ndarray, others: Sequence[str]
) -> Shade:
    """The shade with the place where a parallel beam is stopped: the lowest line of another part over the strip."""
    hit, part = shade.hit.copy(), shade.part.copy()
    for row in np.flatnonzero(~shade.leans):
        u = (shade.low[row] + shade.high[row]) / 2
        first, last = np.searchsorted(station, [shade.station[row], shade.station[row] + 1])
        u0, v0, u1, v1 = segments[first:last].T
        over = (owner[first:last] >= FIRST_OTHER) & (u0 <= u) & (u < u1)
        with np.errstate(invalid="ignore", divide="ignore"):
            v = np.where(over, v0 + (u - u0) / (u1 - u0) * (v1 - v0), np.nan)
        v[~(v > 0)] = np.nan
        if np.isfinite(v).any():
            k = int(np.nanargmin(v))
            hit[row] = u, v[k], 0.0
            part[row] = others[int(owner[first + k]) - FIRST_OTHER]
    return Shade(shade.station, shade.low, shade.high, shade.share, hit, part, shade.leans)


def _shade_rows(shade: Shade) -> tuple[tuple[Any, ...], ...]:
    """Rows of SHADE, rounded to a thousandth."""
    rows = zip(
        shade.station.tolist(), numbers(np.round(shade.low, 3)), numbers(np.round(shade.high, 3)),
        numbers(np.round(shade.share, 3)), np.round(shade.hit, 3).tolist(), shade.part.tolist(), shade.leans.tolist(),
        strict=True,
    )  # fmt: skip
    return tuple(
        (i, low, high, share, *(None if c != c else c for c in hit), part, bool(leans))
        for i, low, high, share, hit, part, leans in rows
    )


def closed_outlines(
    station: np.ndarray, segments: np.ndarray, owner: np.ndarray, face: np.ndarray, shown: float
) -> tuple[np.ndarray, np.ndarray, np.ndarray, np.ndarray]:
    """Segments cut off at u = -shown and u = shown, with the outlines closed along these two lines.

    Parameters
    ----------
    station, owner, face : (k,) int; segments : (k, 4) u0 v0 u1 v1 with u0 <= u1, in mm

    Returns
    -------
    The same four, in the order of stations; closing segments have the face -1
    """
    parts = []
    kept = segments.copy()
    for side in (-shown, shown):
        u0, v0, u1, v1 = segments.T
        # lines that end on a side, as those that are cut there do, count as those that cross it
        crosses = (u0 < side) & (u1 >= side) if side > 0 else (u0 <= side) & (u1 > side)
        share = (side - u0[crosses]) / (u1 - u0)[crosses]
        at = v0[crosses] + share * (v1 - v0)[crosses]
        ends = (2, 3) if side > 0 else (0, 1)
        kept[crosses, ends[0]], kept[crosses, ends[1]] = side, at
        parts.append(_closing(station[crosses], owner[crosses], at, side))
    inside = (segments[:, 2] >= -shown) & (segments[:, 0] < shown)
    closing = np.concatenate(parts)
    station = np.concatenate([station[inside], closing[:, 0].astype(int)])
    owner = np.concatenate([owner[inside], closing[:, 1].astype(int)])
    face = np.concatenate([face[inside], np.full(len(closing), -1)])
    lines = np.concatenate([kept[inside], closing[:, 2:]])
    order = np.argsort(station, kind="stable")
    return station[order], lines[order], owner[order], face[order]


def _closing(station: np.ndarray, owner: np.ndarray, at: np.ndarray, side: float) -> np.ndarray:
    """(m, 6) station, owner, u0, v0, u1, v1: where the border of what is shown runs through material.

    Along the border material begins and ends by turns: crossings are paired in the order of their height.
    """
    order = np.lexsort((at, owner, station))
    station, owner, at = station[order], owner[order], at[order]
    new = np.append(True, (station[1:] != station[:-1]) | (owner[1:] != owner[:-1])) if len(at) else np.zeros(0, bool)
    group = np.cumsum(new) - 1
    within = np.arange(len(at)) - np.flatnonzero(new)[group] if len(at) else np.zeros(0, int)
    size = np.bincount(group)[group] if len(at) else np.zeros(0, int)
    first = np.flatnonzero((within % 2 == 0) & (size % 2 == 0))
    u = np.full(len(first), side)
    return np.column_stack([station[first], owner[first], u, at[first], u, at[first + 1]])


def _near_seam(surveyed: Sequence[tuple[Joint, Contour, Survey]]) -> Callable[[np.ndarray], np.ndarray]:
    """Of boxes (n, 6) mm, which come near the mid-line, (n,) bool: all within _NEAR, and some up to twice as far."""
    lines = [path.points for _, _, survey in surveyed for path in survey.paths]
    points = np.concatenate(lines) if lines else np.empty((0, 3))
    # Every cell of the size of _NEAR that the mid-line runs through; of all axes the slabs that hold them.
    cells = np.unique(np.floor(points[np.isfinite(points).all(axis=1)] / _NEAR), axis=0)
    axes = [np.unique(cells[:, axis], return_inverse=True) for axis in range(3)]

    def is_near(boxes: np.ndarray) -> np.ndarray:
        meet = np.ones((len(cells), len(boxes)), dtype=bool)
        for axis, (slabs, which) in enumerate(axes):
            low, high = slabs[:, None] * _NEAR, slabs[:, None] * _NEAR + _NEAR
            with np.errstate(invalid="ignore"):  # of an empty box, which meets nothing
                in_slab = (boxes[:, axis] - _NEAR <= high) & (boxes[:, axis + 3] + _NEAR >= low)
            meet &= in_slab[which.reshape(-1)]
        return np.asarray(meet.any(axis=0))

    return is_near


def _meshes(joints: Sequence[Joint], is_near: Callable[[np.ndarray], np.ndarray]) -> list[Mesh]:
    """Every body once; cover and base finer than the others, and all of them finer near the seam."""
    from seamcheck.kernel.display import display_facets

    roles = {part for joint in joints for part in (*joint.cover, *joint.base)}
    bodies = {part: body for joint in joints for part, body in joint.bodies.items()}
    meshes = []
    for part, body in bodies.items():
        size = float(np.linalg.norm(body.box[3:] - body.box[:3]))
        if not 1e-3 < size < 1e6:  # an empty body, or one without end
            continue
        fine = part in roles
        most = _MOST_FACES if fine else _MOST_OF_OTHERS
        facets = display_facets(body, size / (2000 if fine else 300), is_near, most)
        left_out = len(body.faces) - len(np.unique(facets.face))
        corners = np.round(facets.corners.reshape(-1, 3) / _JOIN).astype(np.int64)
        places, triangles = different_rows(corners)
        meshes.append(Mesh(part, places * _JOIN, triangles.reshape(-1, 3), facets.face, left_out))
    return meshes
