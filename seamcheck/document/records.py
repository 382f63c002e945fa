"""Every record of the review document, defined once: what it holds, in which order, and what it may hold.

The JSON Schema (schema.py), the check of what is read (read.py), the types of the page's script, the columns of a
scan's store and ``Review`` follow from here, or are held against it by a test. Coordinates are the model's own, in mm;
areas in mm²; None: not measured, or nothing to say.
"""

from __future__ import annotations

from typing import Annotated, Any, Final, Literal

import msgspec
from msgspec import UNSET, Meta, UnsetType

from seamcheck.catalogue.field_types import Count, Point, Real, Share
from seamcheck.catalogue.keys import QuantityKey, RuleKey
from seamcheck.catalogue.kinds import KINDS
from seamcheck.catalogue.known import OF_DEFAULTS
from seamcheck.catalogue.message import Amount, Message
from seamcheck.catalogue.quantities import QUANTITIES
from seamcheck.catalogue.rule import SEVERITIES
from seamcheck.document.material import Material
from seamcheck.errors import REASONS as REFUSALS
from seamcheck.judge.findings import Face, Finding
from seamcheck.judge.parts_outside import PartsOutside
from seamcheck.judge.tolerance import ToleranceState
from seamcheck.settings.declared import NUMBERS

KIND: Final = "seamcheck-review"
SCHEMA_VERSION: Final = 2

Column = list[Real | None]
Origin = Literal["default", "file", "option"]
Texts = list[str]


def _one_of(keys: object) -> Meta:
    """Shown in the schema; reading checks it by ``unknown_keys``, so that the sentence can say what is not known."""
    return Meta(extra_json_schema={"enum": list(keys)})  # type: ignore[call-overload]


class Record(msgspec.Struct, frozen=True, forbid_unknown_fields=True, kw_only=True):
    """One object of the document with just these keys; all are needed but those that are UNSET."""


class File(Record, frozen=True, kw_only=True):
    """One file of the model."""

    file: Annotated[str, Meta(description="name without folders")]
    sha256: str
    step_schema: str
    length_unit: str


class PartRecord(Record, frozen=True, kw_only=True):
    """One part of the model."""

    id: str
    name: str
    path: Texts
    role: Literal["cover", "base", "cover and base", "other"]
    kind: Literal["solid", "sheet", "other"]
    solids: Count
    faces: Count
    file: Annotated[Count, Meta(description="index into model.files")]
    notes: list[Message]


class Model(Record, frozen=True, kw_only=True):
    """The model as read; the first file's facts, then all files."""

    file: Annotated[str, Meta(description="name without folders")]
    sha256: str
    step_schema: str
    length_unit: str
    files: list[File]
    parts: list[PartRecord]
    notes: list[Message]


class ReadingRecord(Record, frozen=True, kw_only=True):
    """A way to read a model that was not reviewed."""

    says: Message
    cover: str
    base: str
    beam: Point
    kind: Annotated[str, _one_of(KINDS)]
    confidence: Share
    options: Annotated[str, Meta(description="of the command line, that choose this reading")]
    against: list[Message]
    supports: list[Message]
    band: Annotated[list[list[tuple[Real, Real]]], Meta(description="borders of the faces seen along the beam, mm")]
    outlines: Annotated[list[list[tuple[Real, Real]]], Meta(description="of base and cover, likewise")]


class Reason(Record, frozen=True, kw_only=True):
    """Why a model was not reviewed."""

    code: Annotated[str, _one_of(REFUSALS)]
    message: str
    key: Annotated[str, Meta(description="of the sentence, where it has one of its own; else the code")]
    args: dict[str, Amount | str]
    parts: dict[str, list[Message]] | UnsetType = UNSET
    readings: list[ReadingRecord] | UnsetType = UNSET


class Summary(Record, frozen=True, kw_only=True):
    """Of one quantity; every station counts as long as its part of the seam."""

    min: Real | None
    median: Real | None
    max: Real | None
    p05: Annotated[Real | UnsetType | None, Meta(description="5 % of the measured length lie at or below it")] = UNSET
    p95: Annotated[Real | UnsetType | None, Meta(description="95 % of the measured length lie at or below it")] = UNSET
    outside: Annotated[
        Real | UnsetType, Meta(description="share of the measured length that is beyond a limit of a rule in force")
    ] = UNSET


class Unmeasured(Record, frozen=True, kw_only=True):
    """A run of stations where a column has no value."""

    column: str
    from_s: Real
    to_s: Real
    why: str


class Bounds(Record, frozen=True, kw_only=True):
    """What a rule compares along a contour: one number, or one for every station."""

    rule: RuleKey
    column: str
    quantity: QuantityKey
    severity: Annotated[str, _one_of(SEVERITIES)]
    low: Real | Column | None
    high: Real | Column | None


def _stations_schema() -> dict[str, Any]:
    number, place = {"type": ["number", "null"]}, {"type": "array", "items": {"type": "number"}}
    column = {"type": "array", "items": number}
    known = {
        key: {**column, "description": f"{q.title}, {q.unit}: {q.whole_definition}"}
        for key, q in QUANTITIES.items()
        if q.per == "station"
    }
    vector = {"type": "array", "items": {"type": "number"}, "minItems": 3, "maxItems": 3}
    return {
        "properties": {
            "s": {**place, "description": "arc length, mm, ascending"},
            "x": place,
            "y": place,
            "z": place,
            "u": {"type": "array", "items": vector},
            **known,
        },
        "required": ["s", "x", "y", "z", "u"],
        "additionalProperties": column,
    }


Stations = Annotated[
    dict[str, list[Any]], Meta(description="one value for each station", extra_json_schema=_stations_schema())
]
"""s, x, y, z, u and every measured column, all equally long. read.py checks the values: a list of numbers, of triples
and of None crashes msgspec 0.22 as soon as Python collects its garbage."""


class ContourRecord(Record, frozen=True, kw_only=True):
    """One path of a seam."""

    id: str
    closed: bool
    length_mm: Real
    clamp_side: Annotated[Literal["inner", "outer"] | None, Meta(description="side of the clamp land")]
    ends: Texts
    junctions: Texts
    stations: Stations
    unmeasured: list[Unmeasured]
    summary: dict[str, Summary | None]
    bounds: list[Bounds]


class FaceOf(msgspec.Struct, frozen=True, forbid_unknown_fields=True):
    """A face of a part."""

    part: str
    face: Annotated[int, Meta(ge=-1)]


class InterfaceValue(msgspec.Struct, frozen=True, kw_only=True):
    """One value of the whole interface, its place, and what was seen there.

    The only record that may hold more than is declared here: what a single quantity shows beside its value.
    """

    value: Real | None
    at: Point | UnsetType | None = UNSET
    why: str | UnsetType | None = UNSET
    said: Annotated[Message | UnsetType, Meta(description="the sentence in 'why' with its key")] = UNSET
    faces: list[FaceOf] | UnsetType = UNSET
    places: list[InterfaceValue] | UnsetType = UNSET
    length: Real | UnsetType | None = UNSET
    direction: Point | UnsetType | None = UNSET
    move: (
        Annotated[Real, Meta(description="mm by which what stands in the beam clears it when moved in 'direction'")]
        | UnsetType
        | None
    ) = UNSET
    initial_contact: Real | UnsetType | None = UNSET
    lateral_play: Real | UnsetType | None = UNSET
    lowest: Point | UnsetType | None = UNSET
    outlines: list[list[Point]] | UnsetType = UNSET


class Missing(Record, frozen=True, kw_only=True):
    """A stretch where the rib is missing."""

    length_mm: Real | None
    at: Point
    contours: Texts


class SeamFaces(Record, frozen=True, kw_only=True):
    """Faces that the stations lie on."""

    rib: list[Face]
    opposite: list[Face]


class JointRecord(Record, frozen=True, kw_only=True):
    """One seam between a cover and a base."""

    id: str
    cover: Texts
    base: Texts
    kind: Annotated[str, _one_of(KINDS)]
    confidence: (
        Annotated[
            Share, Meta(description="how far the evidence carries this reading of the model; null: it was not weighed")
        ]
        | None
    )
    rib_on: Literal["base", "cover", "none"]
    rib_part: str
    beam: Point
    modelled_state: Literal["touching", "gap", "overlap", "mixed"]
    why: list[Message]
    length_mm: Real | None
    initial_contact_mm: (
        Annotated[
            Real, Meta(description="how far the cover sinks from where it is drawn until it first touches the rib")
        ]
        | None
    )
    summary: dict[str, Summary | None]
    junctions: dict[str, Point]
    interruptions: list[Missing]
    seam_faces: SeamFaces
    contours: list[ContourRecord]
    interface: dict[str, InterfaceValue]
    tolerances: list[ToleranceState]
    parts_outside: PartsOutside | None
    material: Material | UnsetType = UNSET


class LimitRecord(Record, frozen=True, kw_only=True):
    """One number of a rule as it was used; one without a number for a rule that has none."""

    rule: RuleKey
    title: str
    severity: Annotated[str, _one_of(SEVERITIES)]
    quantity: QuantityKey
    fails: str
    name: str | None
    value: Real | None
    unit: str
    what: str
    standing: Annotated[str, _one_of(OF_DEFAULTS)]
    standing_text: str
    origin: Origin = msgspec.field(name="from")


class WaiverRecord(Record, frozen=True, kw_only=True):
    """A waiver of the settings, and what became of it."""

    rule: str
    reason: str
    at: Point | None
    radius: Real | None
    contour: str | None
    from_s: Real | None
    to_s: Real | None
    joint: str | None
    until: str | None
    origin: str | None
    state: Literal["used", "unused", "expired"]
    findings: Annotated[Texts, Meta(description="ids of the findings that it covers whole")]
    partly: Annotated[Texts, Meta(description="ids of findings that reach beyond it; they are not waived")]


SettingsRecord: Any = msgspec.defstruct(
    "SettingsRecord",
    [
        *((f"{n.attribute}_mm", Real) for n in NUMBERS.values() if n.name != "second-collapse"),
        ("second_collapse_mm", Real | UnsetType, UNSET),
        ("cover", str | None),
        ("base", str | None),
        ("beam", Point | None),
        ("scanner", dict[str, Any] | None),
        ("clamp", dict[str, Any]),
        ("load", dict[str, Any] | None | UnsetType, UNSET),
        ("tolerances", dict[str, Real]),
        ("file", str | None),
        ("origins", dict[str, str], msgspec.field(name="from")),
    ],
    bases=(Record,),
    frozen=True,
    forbid_unknown_fields=True,
    kw_only=True,
)
"""Every number of catalogue and settings that a review goes by, beside roles, scanner, clamp and tolerances."""


class PackedSections(Record, frozen=True, kw_only=True):
    """Section outlines of a contour (document/view.py); arrays as base64 of their little-endian bytes."""

    joint: str
    contour: str
    stations: list[Count]
    offsets: str
    segments: str
    owner: str
    face: str
    slope: str | UnsetType = UNSET
    shade: Annotated[list[list[Any]], Meta(description="see SectionSet in document/view.py")] | UnsetType = UNSET
    others: Texts | UnsetType = UNSET


class PackedMesh(Record, frozen=True, kw_only=True):
    """Display mesh of a part (document/view.py)."""

    part: str
    positions: str
    triangles: str
    face: str
    left_out: Count | UnsetType = UNSET


class View(msgspec.Struct, frozen=True, kw_only=True):
    """Section outlines and display meshes."""

    sections: list[PackedSections]
    meshes: list[PackedMesh]


class Baseline(Record, frozen=True, kw_only=True):
    """What a review is held against."""

    file: str
    sha256: str
    states: dict[str, Literal["new", "worse", "same", "better"]]
    fixed: Texts
    dropped: Texts
    warnings: Texts


class Run(msgspec.Struct, frozen=True, kw_only=True):
    """Facts of the run, only on request."""

    baseline: Baseline | UnsetType = UNSET


class Document(Record, frozen=True, kw_only=True):
    """One review of one model."""

    document: Literal["seamcheck-review"]
    schema_version: Literal[2]
    seamcheck: Annotated[str, Meta(description="version that made the document")]
    model: Model
    verdict: Literal["pass", "attention", "fail", "not-reviewed"]
    reason: Reason | None
    joints: list[JointRecord]
    findings: list[Finding]
    limits: list[LimitRecord]
    waivers: list[WaiverRecord]
    settings: SettingsRecord
    reasons: Annotated[dict[str, str], Meta(description="codes in 'why' and their meaning")]
    assumptions: Annotated[list[Message], Meta(description="what the review takes for granted, under its settings")]
    not_checked: list[Message]
    cautions: list[Message]
    view: View | UnsetType = UNSET
    run: Run | UnsetType = UNSET
