"""The kernel's stored triangles as arrays: many faces in one go, through its binary format.

Asked node by node, the kernel takes ten times as long.
"""

from __future__ import annotations

import io
from collections.abc import Sequence
from typing import Any

import numpy as np
from msgspec import Struct
from OCP.BinTools import BinTools
from OCP.BRep import BRep_Builder, BRep_Tool
from OCP.TopLoc import TopLoc_Location
from OCP.TopoDS import TopoDS_Compound, TopoDS_Face

_FORMAT = b"Open CASCADE Topology V4,"
_SECTION = b"\nTriangulations "


class Triangulation(Struct, frozen=True, eq=False):
    """nodes (n, 3) mm in the frame of the face's surface; uv (n, 2) their parameters, None without; index (m, 3)."""

    nodes: np.ndarray
    uv: np.ndarray | None
    index: np.ndarray


def triangulations(faces: Sequence[Any]) -> list[Triangulation | None]:
    """Of every TopoDS_Face the triangles that the kernel stored with it; None without any."""
    stored = [BRep_Tool.Triangulation_s(face, TopLoc_Location()) for face in faces]
    known = [item for item in stored if item is not None and item.NbTriangles()]
    if len({id(item) for item in known}) < len(known):  # one face twice: written once only
        return [triangulations([face])[0] for face in faces]
    builder, compound = BRep_Builder(), TopoDS_Compound()
    builder.MakeCompound(compound)
    for item in known:
        face = TopoDS_Face()
        builder.MakeFace(face, item)
        builder.Add(compound, face)
    stream = io.BytesIO()
    BinTools.Write_s(compound, stream)
    found = iter(_read(stream.getvalue(), known))
    return [next(found) if item is not None and item.NbTriangles() else None for item in stored]


def _read(data: bytes, known: list[Any]) -> list[Triangulation]:
    at = data.find(_SECTION) + len(_SECTION)
    end = data.index(b"\n", at)
    if _FORMAT not in data[:100] or int(data[at:end]) != len(known):
        raise RuntimeError("The CAD kernel's binary format of triangles is another than expected.")
    at = end + 1

    def take(kind: str, rows: int, columns: int) -> np.ndarray:
        nonlocal at
        found = np.frombuffer(data, kind, rows * columns, at).reshape(rows, columns)
        at += found.nbytes
        return found

    tables = []
    for item in known:
        nodes, triangles = take("<i4", 1, 2)[0].tolist()
        has_uv, has_normals = take("u1", 1, 2)[0].tolist()
        at += 8  # the deflection
        if (nodes, triangles) != (item.NbNodes(), item.NbTriangles()):
            raise RuntimeError("The CAD kernel's triangles came in another order than expected.")
        points = take("<f8", nodes, 3)
        uv = take("<f8", nodes, 2) if has_uv else None
        tables.append(Triangulation(points, uv, take("<i4", triangles, 3).astype(int) - 1))
        if has_normals:
            take("<f4", nodes, 3)
    return tables
