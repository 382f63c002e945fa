"""Every record of the comparison document, defined once; its JSON Schema (schema.py) follows from here.

Places and arc lengths are the new model's, in mm; what the old model had is brought into its coordinates by 'motion'.
None: not measured, or nothing to say.
"""

from __future__ import annotations

from typing import Annotated, Any, Literal

import msgspec
from msgspec import Meta

from seamcheck.catalogue.field_types import Count, Point, Real
from seamcheck.catalogue.message import Amount, Message
from seamcheck.comparison.along import DOWN, LOST, MEASURED, UP
from seamcheck.comparison.reasons import HOW

Texts = list[str]
Numbers = list[Real | None]
Anything = Any
Word = str | None

AnyFinding = Annotated[dict[str, Any], Meta(extra_json_schema={"$ref": "#/$defs/Finding"})]
"""A finding as in the review document, of whatever rule: the reviews may be of other versions."""

How = Annotated[str, Meta(extra_json_schema={"enum": list(HOW)})]
ChangeKind = Annotated[str, Meta(extra_json_schema={"enum": [UP, DOWN, MEASURED, LOST]})]


class ComparisonRecord(msgspec.Struct, frozen=True, forbid_unknown_fields=True, kw_only=True):
    """One object with just these keys, all of them needed."""


class Refusal(ComparisonRecord, frozen=True, kw_only=True):
    """Why a model was not reviewed."""

    code: str
    message: str
    key: str
    args: dict[str, Amount | str]
    parts: dict[str, list[Message]] | msgspec.UnsetType = msgspec.UNSET


class FindingCounts(ComparisonRecord, frozen=True, kw_only=True, rename={"must_fix": "must-fix"}):
    """Findings that are not waived, by severity."""

    must_fix: Count
    attention: Count
    note: Count


class ReviewOf(ComparisonRecord, frozen=True, kw_only=True):
    """One of the two reviews."""

    file: str
    files: Texts
    sha256: str
    seamcheck: str
    verdict: Literal["pass", "attention", "fail", "not-reviewed"]
    reason: Refusal | None
    settings_file: Word
    length_mm: Real | None
    findings: FindingCounts
    waived: Count


class LimitChange(ComparisonRecord, frozen=True, kw_only=True):
    """A limit or severity that differs."""

    rule: str
    title: str
    name: Annotated[str, Meta(description="of the limit, or 'severity'")]
    old: Real | str | None
    new: Real | str | None
    unit: str
    judged_old: bool
    judged_new: bool


class SettingChange(ComparisonRecord, frozen=True, kw_only=True):
    """Another setting that differs."""

    key: str
    title: str
    old: Anything
    new: Anything


class Renamed(ComparisonRecord, frozen=True, kw_only=True):
    """A part of a seam that has another name now."""

    role: Literal["cover", "base"]
    old: str
    new: str


class RoleChange(ComparisonRecord, frozen=True, kw_only=True):
    """A part that has another role now."""

    name: str
    old: str
    new: str


class FaceCount(ComparisonRecord, frozen=True, kw_only=True):
    """A part with more or fewer faces."""

    name: str
    old: Count
    new: Count


class PartChanges(ComparisonRecord, frozen=True, kw_only=True):
    """How the parts of the model differ."""

    renamed: list[Renamed]
    roles: list[RoleChange]
    added: Texts
    removed: Texts
    faces: list[FaceCount]


class MotionFound(ComparisonRecord, frozen=True, kw_only=True):
    """How the seam as a whole lies against where it was."""

    kind: Literal["none", "moved", "turned", "unlike"]
    shift_mm: Annotated[Point, Meta(description="x_new = turn(x_old) + shift")]
    angle_deg: Real | None
    axis: Point | None
    share: Annotated[Real | None, Meta(description="of the old seam that then lies on the new one")]
    says: str


class Three(ComparisonRecord, frozen=True, kw_only=True):
    """Summary of a quantity."""

    min: Real | None
    median: Real | None
    max: Real | None


class ColumnChange(ComparisonRecord, frozen=True, kw_only=True):
    """A stretch along which a quantity differs, with its worst station."""

    kind: ChangeKind
    contour: str
    from_s: Real | None
    to_s: Real | None
    length_mm: Real | None
    is_whole: bool
    s: Real | None
    at: Point | None
    old: Real | None
    new: Real | None
    by: Real | None
    old_why: Word
    new_why: Word


class QuantityChange(ComparisonRecord, frozen=True, kw_only=True):
    """A quantity that differs somewhere along the seam."""

    quantity: str
    title: str
    unit: str
    old: Three | None
    new: Three | None
    length_mm: Real | None
    share: Real | None
    changes: list[ColumnChange]


class PieceChange(ComparisonRecord, frozen=True, kw_only=True):
    """A stretch of seam that is new or gone."""

    what: Literal["added", "removed"]
    contour: Annotated[str, Meta(description="of the new review where added, of the old one where removed")]
    from_s: Real | None
    to_s: Real | None
    length_mm: Real | None
    at: Point | None


class InterfaceChange(ComparisonRecord, frozen=True, kw_only=True):
    """A value of the whole interface that differs."""

    quantity: str
    title: str
    unit: str
    old: Real | None
    new: Real | None
    by: Real | None
    at: Point | None


class MaterialChange(ComparisonRecord, frozen=True, kw_only=True):
    """An input or a result of the materials that differs."""

    kind: Literal["input", "result"]
    title: str
    unit: str
    old: Anything
    new: Anything


class DrawnLine(ComparisonRecord, frozen=True, kw_only=True):
    """A centre line in the plane across the beam."""

    closed: bool
    points: list[Numbers]


class BothPlans(ComparisonRecord, frozen=True, kw_only=True):
    """Both centre lines seen along the beam."""

    axes: list[Numbers]
    old: list[DrawnLine]
    new: list[DrawnLine]


class OldAndNew(ComparisonRecord, frozen=True, kw_only=True):
    """A column of both reviews at the same stations."""

    old: Numbers
    new: Numbers


class BoundsOf(ComparisonRecord, frozen=True, kw_only=True):
    """What a rule compares along a contour."""

    rule: str
    column: str
    quantity: str
    severity: str
    low: Real | Numbers | None
    high: Real | Numbers | None


class ChangedTrack(ComparisonRecord, frozen=True, kw_only=True):
    """Columns that changed along one path of the new seam."""

    contour: str
    closed: bool
    length_mm: Real | None
    s: Numbers
    columns: dict[str, OldAndNew]
    bounds: list[BoundsOf]


class PartNames(ComparisonRecord, frozen=True, kw_only=True):
    """Names of parts."""

    old: Texts
    new: Texts


class BothWords(ComparisonRecord, frozen=True, kw_only=True):
    """A word of both reviews."""

    old: Word
    new: Word


class BothLengths(ComparisonRecord, frozen=True, kw_only=True):
    """Lengths of the seam, mm."""

    old: Real | None
    new: Real | None
    by: Real | None


class PathCounts(ComparisonRecord, frozen=True, kw_only=True):
    """Number of paths."""

    old: Count
    new: Count


class ShiftFound(ComparisonRecord, frozen=True, kw_only=True):
    """How far the centre line lies from where it was."""

    mean_mm: Real | None
    max_mm: Real | None
    at: Point | None
    length_mm: Real | None


class JointChange(ComparisonRecord, frozen=True, kw_only=True):
    """One seam in both reviews; None for the one that lacks it."""

    old: Word
    new: Word
    cover: PartNames
    base: PartNames
    rib_on: BothWords
    modelled_state: BothWords
    length_mm: BothLengths
    paths: PathCounts
    shift: ShiftFound
    pieces: list[PieceChange]
    sides_swapped: bool
    quantities: list[QuantityChange]
    unchanged: Texts
    only_old: Annotated[Texts, Meta(description="quantities that the new review does not have")]
    only_new: Annotated[Texts, Meta(description="quantities that the old review does not have")]
    interface: list[InterfaceChange]
    material: list[MaterialChange]
    plan: BothPlans | None
    tracks: list[ChangedTrack]


class PlaceNow(ComparisonRecord, frozen=True, kw_only=True):
    """A place on the new model."""

    at: Point | None
    contour: Word
    s: Real | None


class NewFinding(ComparisonRecord, frozen=True, kw_only=True):
    """A finding that was not there."""

    new: AnyFinding
    how: How
    before: Real | None


class RemainingFinding(ComparisonRecord, frozen=True, kw_only=True):
    """A finding of both reviews."""

    old: AnyFinding
    new: AnyFinding
    state: Literal["worse", "same", "better"]
    margin_by: Annotated[Real | None, Meta(description="negative: farther beyond the limit than before")]
    length_by_mm: Real | None
    is_piece: Annotated[bool, Meta(description="the old finding has fallen into several")]
    merged: Annotated[Texts, Meta(description="ids of further old findings that grew into it")]


class GoneFinding(ComparisonRecord, frozen=True, kw_only=True):
    """A finding that is no longer there."""

    old: AnyFinding
    how: How
    now: Annotated[Real | None, Meta(description="the value there now")]
    place: Annotated[PlaceNow | None, Meta(description="where that is on the new model")]


class FindingChanges(ComparisonRecord, frozen=True, kw_only=True):
    """Findings of both reviews, matched."""

    new: list[NewFinding]
    remaining: list[RemainingFinding]
    fixed: list[GoneFinding]
    dropped: Annotated[list[GoneFinding], Meta(description="no longer reported for a reason outside the model")]


class Comparison(ComparisonRecord, frozen=True, kw_only=True):
    """Two reviews compared."""

    document: Literal["seamcheck-comparison"]
    schema_version: Literal[1]
    seamcheck: Annotated[str, Meta(description="version that made the comparison")]
    old: ReviewOf
    new: ReviewOf
    outcome: Annotated[
        Literal["not-worse", "worse", "not-compared"],
        Meta(description="worse: a must-fix finding that is not waived is new, or worse than it was"),
    ]
    reason: Word
    warnings: Annotated[Texts, Meta(description="what keeps the comparison from being like with like")]
    limits: list[LimitChange]
    settings: list[SettingChange]
    parts: PartChanges
    motion: MotionFound | None
    joints: list[JointChange]
    findings: FindingChanges
    identical: Annotated[bool, Meta(description="nothing differs by more than the measuring error")]
    cautions: Texts
