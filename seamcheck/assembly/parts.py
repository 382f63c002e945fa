"""The Assembly: placed bodies in millimetres, as plain frozen values (imports no CAD kernel)."""

from __future__ import annotations

from typing import Any

from msgspec import Struct, field


class Entity(Struct, frozen=True):
    """Where a face stands in the STEP file: the record ``#number`` on the line ``line`` (1-based)."""

    number: int
    line: int


class Part(Struct, frozen=True, eq=False):
    """One placed body (solid, or sheet body) of the assembly.

    Attributes
    ----------
    id : "p1", "p2", ... in reading order
    name : product or instance name, '' when the file gives none; of several solids in one product
        each gets its own Part with the same name and path
    path : names from the root of the product tree down to this body's product
    kind : 'solid', 'sheet' (open shell or loose faces) or 'other'; only solids can be cover or base
    shape : placed TopoDS_Shape in mm, in assembly coordinates; opaque outside assembly/ and kernel/
    solids, faces : counts
    colour : RGB 0..1 or None
    transparency : 0 opaque .. 1 clear, or None
    entities : one per face, in the order of a TopExp_Explorer over the shape; None where unknown
    file : index into Assembly.files
    notes : what is odd about this part (not closed, healed, mirrored placement ...), as sentences
    product : number of the placed product that the body belongs to, the same for all bodies of it; None unknown
    joined_to : id of the part that this body was joined to as a piece of it ('' mostly); it then is 'other'
    """

    id: str
    name: str
    path: tuple[str, ...]
    kind: str
    shape: Any
    solids: int
    faces: int
    colour: tuple[float, float, float] | None = None
    transparency: float | None = None
    entities: tuple[Entity | None, ...] = ()
    file: int = 0
    notes: tuple[str, ...] = ()
    product: int | None = None
    joined_to: str = ""


class ModelFile(Struct, frozen=True):
    """One file as read: name without folders, SHA-256, schema and length unit as declared."""

    name: str
    sha256: str
    step_schema: str
    length_unit: str


class CallOut(Struct, frozen=True):
    """A tolerance that a file states on faces, as data.

    Attributes
    ----------
    kind : 'flatness', or 'profile' of a surface
    value : mm, width of the zone
    file : index into Assembly.files; number : of its record
    faces : numbers of the faces' records
    """

    kind: str
    value: float
    file: int
    number: int
    faces: tuple[int, ...]


class Assembly(Struct, frozen=True, eq=False):
    """All placed bodies of the model, in mm, in one frame.

    Attributes
    ----------
    files, parts : in reading order
    notes : what is odd about the files, as sentences
    doubts : those of the notes, and of the parts' notes with the part's name in front, that tell of damage: a
        body that was not read, or not as the file means it. A review in spite of them is no clean pass.
    callouts : flatness and profile that the files state on faces
    """

    files: tuple[ModelFile, ...]
    parts: tuple[Part, ...]
    notes: tuple[str, ...] = field(default=())
    doubts: tuple[str, ...] = field(default=())
    callouts: tuple[CallOut, ...] = field(default=())
