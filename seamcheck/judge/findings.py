"""What judging takes and gives: the result of one joint, and findings."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from typing import Annotated, Final, Literal

import msgspec
from msgspec import Meta, Struct, field

from seamcheck.catalogue.field_types import LARGEST_COUNT, Count, Point, Real
from seamcheck.catalogue.keys import QuantityKey, RuleKey
from seamcheck.catalogue.message import Amount, Message
from seamcheck.joint.facts import JointFacts
from seamcheck.measure.table import Survey

PASS, ATTENTION_VERDICT, FAIL, NOT_REVIEWED = "pass", "attention", "fail", "not-reviewed"

INSIDE: Final = "inside"
AT_RISK: Final = "at risk"
OUTSIDE: Final = "outside"


class JointResult(JointFacts, frozen=True, eq=False):
    """One joint as found and surveyed; everything that judging and the document need of it.

    Attributes
    ----------
    survey : what was measured
    extra : further plain values for the document's joint, unchanged, such as "material"
    """

    survey: Survey
    extra: Mapping[str, object] = field(default_factory=dict)


class Face(msgspec.Struct, frozen=True, forbid_unknown_fields=True):
    """A face of a part, with its place in the STEP file where that is known.

    Attributes
    ----------
    part : id
    face : index in the part
    step_entity, line : such as '#123', and its line in the file; None where not known
    """

    part: str
    face: Annotated[int, Meta(ge=-1, le=LARGEST_COUNT)]
    step_entity: Annotated[str, Meta(pattern="^#[0-9]+$")] | None
    line: Count | None


class Waived(msgspec.Struct, frozen=True, forbid_unknown_fields=True):
    """The waiver that covers a finding: why, its last day, and where it is written."""

    reason: str
    until: str | None
    origin: str | None


class Place(msgspec.Struct, frozen=True, forbid_unknown_fields=True, kw_only=True, omit_defaults=True):
    """A further place where what a finding says holds: see the fields of Finding.

    Attributes
    ----------
    rule, severity : of what is broken there, where it is another rule than the finding's, broken by the same cause
    """

    contour: str | None
    at: Point | None
    station: Count | None
    from_s: Real | None
    to_s: Real | None
    length_mm: Real | None
    value: Real | None
    rule: str | None = None
    severity: str | None = None


class Finding(msgspec.Struct, frozen=True, forbid_unknown_fields=True, kw_only=True):
    """One contiguous stretch of one path that breaks one rule, located at its worst station.

    The record of the review document; what else keeps or shows findings is derived from it.

    Attributes
    ----------
    id : stable over runs and small edits of the model
    rule, severity, quantity : keys; severity is 'must-fix', 'attention' or 'note'
    column : column of the survey that was judged; None where the finding is about no column
    value, limit, margin : in ``unit``; margin is negative where the limit is missed; None without
    joint, contour : ids; contour None where the finding is about the whole interface
    at : (3,) mm in the model's coordinates; None where the whole seam is meant
    station : index of the worst station in its path, None off the stations
    from_s, to_s, length_mm : mm along the path; from_s > to_s passes the start of a closed path
    faces : at the worst station
    message, harm, remedy : in English
    key, args : wording of remedy and harm (catalogue/messages.py), and what goes into it
    messages : the sentences of ``message``, one by one, with their keys
    places : further places where the same holds, for one cause is one finding
    also : other rules that describe the same cause
    state : 'outside' the limit as drawn; 'at risk': outside only in the worst case of its tolerance
    tolerance, worst_case : +- as set, and the value at its end towards the limit; None without
    waived : None, or reason, last day and origin of the waiver that covers it
    """

    id: Annotated[str, Meta(description="stable over runs and small edits of the model")]
    rule: RuleKey
    severity: Literal["must-fix", "attention", "note"]
    quantity: QuantityKey
    column: Annotated[str, Meta(description="the column of the stations that was judged")] | None
    value: Real | None
    limit: Real | None
    unit: str
    margin: Annotated[Real, Meta(description="negative by how far the limit is missed")] | None
    joint: str
    contour: str | None
    at: Annotated[Point, Meta(description="the worst place")] | None
    station: Annotated[Count, Meta(description="index of the worst station")] | None
    from_s: Real | None
    to_s: (
        Annotated[Real, Meta(description="below from_s where the stretch passes the start of a closed contour")] | None
    )
    length_mm: Real | None
    faces: tuple[Face, ...]
    message: str
    harm: str
    remedy: str
    also: Annotated[tuple[str, ...], Meta(description="other rules that describe the same cause")]
    state: Annotated[
        Literal["outside", "at risk"],
        Meta(description="at risk: inside the limit as drawn, outside in the worst case of its tolerance"),
    ]
    tolerance: Annotated[Real, Meta(description="+- as set")] | None
    worst_case: Real | None
    waived: Waived | None
    key: Annotated[str, Meta(description="of the wording of remedy and harm")]
    args: Annotated[dict[str, Amount | str], Meta(description="what goes into remedy and harm")]
    messages: Annotated[tuple[Message, ...], Meta(description="the sentences of message, with their keys")]
    places: Annotated[tuple[Place, ...], Meta(description="further places where the same holds")] = ()


class Judgement(Struct, frozen=True):
    """All findings of a model, in order, and the state of each waiver.

    waivers : plain values of each waiver with "state" ('used', 'unused' or 'expired'), and the ids of the
        "findings" that it covers whole and "partly"
    """

    findings: tuple[Finding, ...]
    waivers: tuple[Mapping[str, object], ...] = ()

    @property
    def verdict(self) -> str:
        """See ``verdict_of``; there is no judgement of a model without a joint."""
        return verdict_of(self.findings)


def verdict_of(findings: Iterable[Finding]) -> str:
    """'fail' with a must-fix that is not waived, 'attention' with such an attention, else 'pass'."""
    open_ones = {finding.severity for finding in findings if finding.waived is None}
    return FAIL if "must-fix" in open_ones else ATTENTION_VERDICT if "attention" in open_ones else PASS
