"""The optional part "view" of the review document: section outlines and display meshes.

Arrays travel as base64 text of their little-endian bytes, so that the document stays plain JSON. A page or a
picture draws from them; nothing is measured on them.

    "view": {
      "sections": [{"joint", "contour", "stations": [index into the contour's stations, ...],
                    "offsets": uint32 (k+1,), "segments": float32 (m, 4), "owner": uint8 (m,),
                    "face": int32 (m,), "slope": float32 (k,), "shade": [[one value for each of SHADE], ...],
                    "others": [id of the part of owner 2, of owner 3, ...]}],
      "meshes": [{"part", "positions": float32 (n, 3), "triangles": uint32 (t, 3), "face": int32 (t,), "left_out"}]}

The segments of the i-th listed station are ``segments[offsets[i]:offsets[i + 1]]``: each is u0, v0, u1, v1 in
mm in the station's frame (P at the origin, u outer, v against the beam), in any order; together they outline
the solid material of every part that the section plane meets.
"""

from __future__ import annotations

import base64
import binascii
import math
from collections.abc import Iterable, Mapping
from typing import Any

import numpy as np
from msgspec import Struct
from msgspec.structs import force_setattr

from seamcheck.errors import SeamcheckError

_LARGEST_KEY = 2**62  # that an int64 holds

BASE, COVER, FIRST_OTHER = 0, 1, 2
"""Values of ``SectionSet.owner``: the base, the cover, every further part its own number from 2 on."""


class ViewDamaged(SeamcheckError):
    """The part "view" of a review document can't be decoded."""


SHADE = ("station", "low", "high", "share", "u", "v", "along", "part", "leans")
"""Fields of one strip of the rib top in the shade: numbers in mm, None where not known."""


class SectionSet(Struct, frozen=True, eq=False):
    """Section outlines along one path.

    Attributes
    ----------
    joint, contour : ids in the document
    stations : (k,) int, which of the contour's stations have a section, ascending
    offsets : (k + 1,) int, where the segments of each of them start
    segments : (m, 4) float, mm, u0 v0 u1 v1 in the station's frame
    owner : (m,) int, BASE, COVER or a number from FIRST_OTHER on
    face : (m,) int, face index in the part, -1 unknown
    slope : (k,) float, rise of the rib top along v for each mm outward; heights are measured from this slope
    shade : strips of the rib top that the light reaches only in part, one row each:
        (station, from u, to u, share that arrives, u, v, along of what stops the rest, its part, whether it leans)
    others : ids of the parts whose owners are FIRST_OTHER, FIRST_OTHER + 1 ...
    """

    joint: str
    contour: str
    stations: np.ndarray
    offsets: np.ndarray
    segments: np.ndarray
    owner: np.ndarray
    face: np.ndarray
    slope: np.ndarray | None = None
    shade: tuple[tuple[Any, ...], ...] = ()
    others: tuple[str, ...] = ()

    def __post_init__(self) -> None:
        stations = np.asarray(self.stations, dtype=np.int64).reshape(-1)
        offsets = np.asarray(self.offsets, dtype=np.int64).reshape(-1)
        segments = np.asarray(self.segments, dtype=np.float32).reshape(-1, 4)
        owner = np.asarray(self.owner, dtype=np.int64).reshape(-1)
        face = np.asarray(self.face, dtype=np.int64).reshape(-1)
        if len(offsets) != len(stations) + 1 or offsets[0] != 0 or offsets[-1] != len(segments):
            raise ViewDamaged(
                f"Sections of {self.contour!r}: {len(stations)} stations, {len(offsets)} offsets, "
                f"{len(segments)} segments do not belong together."
            )
        if np.any(np.diff(offsets) < 0) or len(owner) != len(segments) or len(face) != len(segments):
            raise ViewDamaged(f"Sections of {self.contour!r}: offsets, owners or faces do not fit the segments.")
        slope = np.zeros(len(stations)) if self.slope is None else np.asarray(self.slope, dtype=np.float32).reshape(-1)
        if len(slope) != len(stations) or not np.all(np.isfinite(slope)):
            raise ViewDamaged(f"Sections of {self.contour!r}: the slopes do not fit the stations.")
        if any(len(row) != len(SHADE) for row in self.shade):
            raise ViewDamaged(f"Sections of {self.contour!r}: a row of the shade is cut.")
        if not np.all(np.isfinite(segments)):
            raise ViewDamaged(f"Sections of {self.contour!r}: a segment is not a number.")
        if np.any((owner < 0) | (owner > 255)):
            raise ViewDamaged(f"Sections of {self.contour!r}: owners run from 0 to 255.")
        for name, value in (
            ("stations", stations),
            ("offsets", offsets),
            ("segments", segments),
            ("owner", owner),
            ("face", face),
            ("slope", slope),
        ):
            force_setattr(self, name, value)

    def slope_at(self, station: int) -> float:
        """Slope of the rib top at a station; 0 where it has no section."""
        found = np.flatnonzero(self.stations == station)
        return float(self.slope[found[0]]) if len(found) and self.slope is not None else 0.0

    def shade_at(self, station: int) -> list[dict[str, Any]]:
        """The strips of one station that not all of the light reaches, by the names of SHADE."""
        return [dict(zip(SHADE, row, strict=True)) for row in self.shade if row[0] == station]

    def at(self, station: int) -> tuple[np.ndarray, np.ndarray] | None:
        """Segments (m, 4) and owners (m,) of one station; None where it has no section."""
        found = np.flatnonzero(self.stations == station)
        if not len(found):
            return None
        part = slice(int(self.offsets[found[0]]), int(self.offsets[found[0] + 1]))
        return self.segments[part], self.owner[part]


class Mesh(Struct, frozen=True, eq=False):
    """Display mesh of one part.

    Attributes
    ----------
    part : id in the document
    positions : (n, 3) float, mm, the model's coordinates
    triangles : (t, 3) int
    face : (t,) int, face index in the part, -1 unknown
    left_out : so many small faces of the part are not in the mesh
    """

    part: str
    positions: np.ndarray
    triangles: np.ndarray
    face: np.ndarray
    left_out: int = 0

    def __post_init__(self) -> None:
        positions = np.asarray(self.positions, dtype=np.float32).reshape(-1, 3)
        triangles = np.asarray(self.triangles, dtype=np.int64).reshape(-1, 3)
        face = np.asarray(self.face, dtype=np.int64).reshape(-1)
        if len(triangles) and (triangles.min() < 0 or triangles.max() >= len(positions)):
            raise ViewDamaged(f"Mesh of {self.part!r}: a triangle names a point that is not there.")
        if len(face) != len(triangles):
            raise ViewDamaged(f"Mesh of part {self.part!r}: {len(triangles)} triangles, {len(face)} face numbers.")
        if not np.all(np.isfinite(positions)):
            raise ViewDamaged(f"Mesh of part {self.part!r}: a position is not a number.")
        force_setattr(self, "positions", positions)
        force_setattr(self, "triangles", triangles)
        force_setattr(self, "face", face)


def pack_view(sections: Iterable[SectionSet] = (), meshes: Iterable[Mesh] = ()) -> dict[str, Any]:
    """The document's part "view" from sections and meshes; plain JSON values only."""
    return {
        "sections": [
            {
                "joint": s.joint,
                "contour": s.contour,
                "stations": [int(i) for i in s.stations],
                "offsets": _encode(s.offsets, "<u4"),
                "segments": _encode(s.segments, "<f4"),
                "owner": _encode(s.owner, "<u1"),
                "face": _encode(s.face, "<i4"),
                "slope": _encode(s.slope if s.slope is not None else np.zeros(len(s.stations)), "<f4"),
                "shade": [list(row) for row in s.shade],
                "others": list(s.others),
            }
            for s in sections
        ],
        "meshes": [
            {
                "part": m.part,
                "positions": _encode(m.positions, "<f4"),
                "triangles": _encode(m.triangles, "<u4"),
                "face": _encode(m.face, "<i4"),
                "left_out": m.left_out,
            }
            for m in meshes
        ],
    }


def unpack_view(view: Mapping[str, Any] | None) -> tuple[tuple[SectionSet, ...], tuple[Mesh, ...]]:
    """Sections and meshes of a document's part "view"; two empty tuples where it has none.

    Raises
    ------
    ViewDamaged
        If the arrays can't be decoded or do not belong together.
    """
    if not view:
        return (), ()
    try:
        sections = tuple(
            SectionSet(
                joint=s["joint"],
                contour=s["contour"],
                stations=np.asarray(s["stations"], dtype=np.int64),
                offsets=_decode(s["offsets"], "<u4"),
                segments=_decode(s["segments"], "<f4"),
                owner=_decode(s["owner"], "<u1"),
                face=_decode(s["face"], "<i4"),
                slope=_decode(s["slope"], "<f4") if "slope" in s else None,
                shade=tuple(tuple(row) for row in s.get("shade") or ()),
                others=tuple(s.get("others") or ()),
            )
            for s in view.get("sections") or ()
        )
        meshes = tuple(
            Mesh(
                part=m["part"],
                positions=_decode(m["positions"], "<f4"),
                triangles=_decode(m["triangles"], "<u4"),
                face=_decode(m["face"], "<i4"),
                left_out=int(m.get("left_out") or 0),
            )
            for m in view.get("meshes") or ()
        )
    except (KeyError, TypeError, ValueError, AttributeError, binascii.Error) as error:
        raise ViewDamaged(f"The part 'view' of the document can't be decoded: {error!r}.") from error
    return sections, meshes


def _encode(values: np.ndarray, kind: str) -> str:
    return base64.b64encode(np.ascontiguousarray(values, dtype=kind).tobytes()).decode("ascii")


def _decode(text: str, kind: str) -> np.ndarray:
    return np.frombuffer(base64.b64decode(text, validate=True), dtype=kind)


def different_rows(rows: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
    """The different ones among rows (n, k) of whole numbers, ascending, and (n,) the place of each among them.

    As ``np.unique`` along the first axis, in a quarter of its time: each row is told as one number.
    """
    if not len(rows):
        return rows, np.empty(0, dtype=int)
    low = rows.min(axis=0)
    span = (rows.max(axis=0) - low + 1).tolist()
    if math.prod(span) > _LARGEST_KEY:
        found, place = np.unique(rows, axis=0, return_inverse=True)
        return found, place.reshape(-1)
    key = np.zeros(len(rows), dtype=np.int64)
    for column, size in zip((rows - low).T, span, strict=True):
        key = key * size + column
    _, first, place = np.unique(key, return_index=True, return_inverse=True)
    return rows[first], place
