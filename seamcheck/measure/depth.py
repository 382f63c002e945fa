"""Depth of an overlap of two bodies: the shortest distance through both, normal to the faces that cross there."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

import numpy as np
from msgspec import Struct

from seamcheck.kernel import Body
from seamcheck.kernel.distance import contains, line_hits
from seamcheck.measure.crossing import ANGLE, DEFLECTION, SHALLOW

_INTO = np.array([0.01, 0.05, 0.2, 0.8])  # mm inside both faces at which an overlap is measured
_PLACES, _WAYS = 10, 6  # of each overlap at which, and directions in which its depth is measured
_SAME_WAY, _SQUARE = np.cos(np.radians(15.0)), np.cos(np.radians(18.0))


class Overlap(Struct, frozen=True):
    """One place where a cover part and another part interpenetrate.

    depth : mm; at : (3,) mm in it; along : unit vector in which the depth lies
    cover, other : (part id, face index)
    is_stop : whether it lies along the beam, and so stops the cover as drawn
    """

    depth: float
    at: tuple[float, float, float]
    along: tuple[float, float, float]
    cover: tuple[str, int]
    other: tuple[str, int]
    is_stop: bool = False

    def place(self, value: float, why: str) -> dict[str, Any]:
        """The overlap as a place of a value of the whole interface."""
        return {
            "value": value,
            "at": list(self.at),
            "why": why,
            "faces": [{"part": part, "face": face} for part, face in (self.cover, self.other) if face >= 0],
        }


def deepest(
    one: str, other: str, cover: Body, body: Body, place: np.ndarray, upper: np.ndarray, lower: np.ndarray
) -> Overlap | None:
    """The overlap that a line of crossings belongs to; None where nothing beside it lies in both bodies.

    Parameters
    ----------
    place : (n, 3) mm, the crossings; upper, lower : (n,) indices of the faces of both bodies that cross there
    """
    spots: list[_Spot] = []
    ways: list[np.ndarray] = []
    for k in np.unique(np.linspace(0, len(place) - 1, _PLACES).round().astype(int)):
        faces = (int(upper[k]), int(lower[k]))
        normals = tuple(_normal(b, face, place[k]) for b, face in zip((cover, body), faces, strict=True))
        inward = -(normals[0] + normals[1])
        if not np.isfinite(inward).all() or np.linalg.norm(inward) < 0.05:
            continue  # faces that face each other: nothing lies between them
        tried = place[k] + _INTO[:, None] * inward / np.linalg.norm(inward)
        if _in_both(cover, body, tried[:1])[0]:  # else it is no border of an overlap
            held = np.append(True, _in_both(cover, body, tried[1:]))
            spots += [_Spot(inside, faces, normals) for inside in tried[held]]
            ways += [n for n in normals if len(ways) < _WAYS and all(abs(n @ way) < _SAME_WAY for way in ways)]
    for also_grazing in (False, True):
        found = [way for spot in spots if (way := _least(spot, ways, cover, body, also_grazing)) is not None]
        if found:
            deepest, at, along, spot = max(found, key=lambda way: way[0])
            if deepest <= SHALLOW:
                return None
            return Overlap(deepest, _three(at), _three(along), (one, spot.faces[0]), (other, spot.faces[1]))
    return None


def _in_both(one: Body, other: Body, points: np.ndarray) -> np.ndarray:
    """(n,) bool: points (n, 3) mm that lie inside both bodies; the one with fewer faces is asked first."""
    held = np.ones(len(points), dtype=bool)
    for body in sorted((one, other), key=lambda body: len(body.faces)):
        held[held] = contains(body, points[held])
    return held


class _Spot(Struct, frozen=True, eq=False):
    """A place (3,) just inside both bodies; the faces that cross there, and their outward normals (3,)."""

    inside: np.ndarray
    faces: tuple[int, int]
    normals: tuple[np.ndarray, ...]


def _least(
    spot: _Spot, ways: list[np.ndarray], cover: Body, body: Body, also_grazing: bool
) -> tuple[float, np.ndarray, np.ndarray, _Spot] | None:
    """The shortest distance through both bodies at a spot: mm, its middle, its direction.

    Lines that graze a curved face of the spot and end on it twice are chords near its border, no depth.
    """
    own = [n for n in spot.normals if all(abs(n @ way) < 1.0 - 1e-9 for way in ways)]
    best: tuple[float, np.ndarray, np.ndarray, _Spot] | None = None
    for along in (*ways, *own):
        low, high, ends = _way(cover, body, spot.inside, along)
        grazes = any(
            ends[0] == ends[1] == (side, face)
            and not np.isfinite(one.planes[face, 0])
            and abs(along @ spot.normals[side]) < _SQUARE
            for side, (one, face) in enumerate(zip((cover, body), spot.faces, strict=True))
        )
        if not np.isfinite(high - low) or (grazes and not also_grazing):
            continue
        if best is None or high - low < best[0]:
            best = (float(high - low), spot.inside + (low + high) / 2 * along, along, spot)
    return best


def _three(vector: np.ndarray) -> tuple[float, float, float]:
    return float(vector[0]), float(vector[1]), float(vector[2])


def _normal(body: Body, face: int, place: np.ndarray) -> np.ndarray:
    """(3,) outward normal of a face at a place on it: of its plane, else of the nearest facet."""
    plane = body.planes[face, :3]
    if np.isfinite(plane).all():
        return plane
    corners = body.facets([face], DEFLECTION, ANGLE).corners
    nearest = corners[np.argmin(np.linalg.norm(corners.mean(axis=1) - place, axis=1))]
    normal = np.cross(nearest[1] - nearest[0], nearest[2] - nearest[0])
    return np.asarray(normal / np.linalg.norm(normal))


def _way(
    one: Body, other: Body, inside: np.ndarray, along: np.ndarray
) -> tuple[float, float, tuple[tuple[int, int], tuple[int, int]]]:
    """(low, high) mm from a place inside both bodies to where either ends, against and along a direction.

    And what ends it there: (0 or 1 for the body, face); -1 where nothing does.
    """
    low, high = (-np.inf, (-1, -1)), (np.inf, (-1, -1))
    for side, body in enumerate((one, other)):
        for face in _on_line(body.boxes, inside, along):
            for t in line_hits(body, int(face), inside, along):
                if t < 0:
                    low = max(low, (float(t), (side, int(face))))
                else:
                    high = min(high, (float(t), (side, int(face))))
    return low[0], high[0], (low[1], high[1])


def _on_line(boxes: np.ndarray, start: np.ndarray, along: np.ndarray) -> np.ndarray:
    """Numbers of the boxes (n, 6) that a line meets."""
    with np.errstate(invalid="ignore", divide="ignore"):
        near, far = (boxes[:, :3] - 1e-6 - start) / along, (boxes[:, 3:] + 1e-6 - start) / along
        flat = np.abs(along) < 1e-12
        between = (boxes[:, :3] - 1e-6 <= start) & (boxes[:, 3:] + 1e-6 >= start)
        enter = np.where(flat, -np.inf, np.minimum(near, far)).max(axis=1)
        leave = np.where(flat, np.inf, np.maximum(near, far)).min(axis=1)
        return np.flatnonzero((enter <= leave) & (between | ~flat).all(axis=1))


def within(one: str, other: str, cover: Body, body: Body) -> Iterator[Overlap]:
    """A part that lies wholly in the cover's material, without crossing surfaces."""
    inside = (body.box[:3] >= cover.box[:3] - SHALLOW).all() and (body.box[3:] <= cover.box[3:] + SHALLOW).all()
    if not inside or not len(body.faces):
        return
    corners = body.facets([0], DEFLECTION, ANGLE).corners
    if not len(corners):
        return
    place = corners[0].mean(axis=0) - _INTO[0] * _normal(body, 0, corners[0].mean(axis=0))
    if _in_both(cover, body, place[None])[0]:
        size = body.box[3:] - body.box[:3]
        k = int(np.argmin(size))
        middle = (body.box[:3] + body.box[3:]) / 2
        yield Overlap(float(size[k]), _three(middle), _three(np.eye(3)[k]), (one, -1), (other, 0))
