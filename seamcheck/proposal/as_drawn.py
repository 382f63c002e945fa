"""Sections of a model as it was drawn, in the section planes of the proposed one: for the switch in the page."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from pathlib import Path
from typing import Any

import numpy as np
from msgspec.structs import replace

from seamcheck.assembly import read_assembly
from seamcheck.contour import trace_contour
from seamcheck.document.take_view import outlines
from seamcheck.document.view import pack_view
from seamcheck.joint import find_joints, join_pieces
from seamcheck.kernel import Body
from seamcheck.measure.table import PathSurvey
from seamcheck.settings.settings import Settings


def sections_as_drawn(
    drawn: Sequence[Path], proposed: Path, document: Mapping[str, Any], settings: Settings
) -> dict[str, Any]:
    """The part "view" of a document, sections only: the parts as drawn, cut where the proposed ones were.

    Parameters
    ----------
    drawn : the files of the model as drawn
    proposed : the proposed model; its parts are those of ``drawn``, in the same order
    document : review of the proposed model
    """
    before = join_pieces(read_assembly(drawn), settings)
    after = join_pieces(read_assembly([proposed]), settings)
    bodies = {new.id: Body(old.shape) for old, new in zip(before.parts, after.parts, strict=True)}
    records = {record["id"]: record for record in document["joints"]}
    sections = []
    for joint in find_joints(after, settings):
        if joint.id in records:
            paths = [_path(contour) for contour in records[joint.id]["contours"]]
            sections += outlines(replace(joint, bodies=bodies), trace_contour(joint), paths)
    return pack_view(sections)


def _path(contour: Mapping[str, Any]) -> PathSurvey:
    """The stations of a path, with nothing measured."""
    stations = contour["stations"]
    points = np.column_stack([stations[axis] for axis in "xyz"]).astype(float)
    none = np.full(len(points), -1)
    return PathSurvey(
        contour["id"], contour["closed"], contour["length_mm"], (), np.asarray(stations["s"], dtype=float), points,
        np.asarray(stations["u"], dtype=float), {}, {}, none, none,
    )  # fmt: skip
