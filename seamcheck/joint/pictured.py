"""The best readings of a model that was not reviewed, as plain values that can be shown and chosen from."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from typing import Any

import numpy as np
import shapely
from shapely.geometry.base import BaseGeometry

from seamcheck.catalogue.message import message_of
from seamcheck.catalogue.say import say
from seamcheck.joint.frame import Frame
from seamcheck.joint.names import Names
from seamcheck.joint.reading import Reading
from seamcheck.joint.regions import seen_facets
from seamcheck.kernel import Body

MOST = 2  # readings that are shown
_COARSE, _ANGLE = 0.3, 0.8  # mm, radians: facets fine enough to be drawn
_STRAIGHT = 0.1  # mm that an outline may be off
_MOST_FACETS = 20_000  # of a part whose outline is worth drawing


def pictured(readings: Sequence[Reading], bodies: Mapping[str, Body], names: Names) -> tuple[dict[str, Any], ...]:
    """The first readings with what speaks for and against them, the options that choose them, and outlines.

    Parameters
    ----------
    readings : the best first, with their evidence
    """
    return tuple(_plain(reading, bodies, names) for reading in readings[:MOST])


def _plain(reading: Reading, bodies: Mapping[str, Body], names: Names) -> dict[str, Any]:
    candidate = reading.candidate
    beam = [round(float(c), 4) + 0.0 for c in reading.beam]
    ranked = sorted(reading.evidence, key=lambda e: e.weight)
    says = say("any.reading", cover=names(reading.cover), base=names(reading.base), band=candidate.describes)
    # seen from the light: the frame's z may run with it
    turn = 1.0 if float(candidate.frame.axes[2] @ reading.beam) < 0 else -1.0
    return {
        "says": message_of(says),
        "cover": reading.cover,
        "base": reading.base,
        "beam": beam,
        "kind": candidate.kind,
        "confidence": round(reading.confidence, 3),
        "options": f"--cover {reading.cover} --base {reading.base} --beam {','.join(f'{c:g}' for c in beam)}",
        "against": [message_of(e.says) for e in ranked if e.weight < 1.0],
        "supports": [message_of(e.says) for e in ranked if e.weight >= 1.0],
        "band": _lines(candidate.region, turn),
        "outlines": [
            line for i in (reading.base, reading.cover) for line in _lines(_seen(bodies[i], candidate.frame), turn)
        ],
    }


def _seen(body: Body, frame: Frame) -> BaseGeometry:
    """A part's outline seen along the frame's z; its box where it has too many facets."""
    corners = frame.local(body.facets(np.arange(len(body.faces)), _COARSE, _ANGLE).corners)[..., :2]
    if len(corners) > _MOST_FACETS:
        low, high = corners.min(axis=(0, 1)), corners.max(axis=(0, 1))
        return shapely.box(*low, *high)
    return seen_facets(corners).buffer(1e-3)


def _lines(shape: BaseGeometry, turn: float) -> list[list[tuple[float, float]]]:
    """The borders of polygons, mm, straightened; mirrored where it is seen from below."""
    rings: Iterable[Any] = (
        ring
        for polygon in shapely.get_parts(shape)
        if polygon.geom_type == "Polygon"
        for ring in (polygon.exterior, *polygon.interiors)
    )
    return [
        [
            (round(turn * x, 2) + 0.0, round(y, 2) + 0.0)
            for x, y in shapely.get_coordinates(ring.simplify(_STRAIGHT)).tolist()
        ]
        for ring in rings
    ]
