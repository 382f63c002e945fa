"""What judging takes and gives: the result of one joint, and findings."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field

import numpy as np

from seamcheck.catalogue.kinds import WELD_RIB
from seamcheck.measure.table import Survey

PASS, ATTENTION_VERDICT, FAIL, NOT_REVIEWED = "pass", "attention", "fail", "not-reviewed"

INSIDE, AT_RISK, OUTSIDE = "inside", "at risk", "outside"


@dataclass(frozen=True, slots=True, eq=False)
class JointResult:
    """One joint as found and surveyed; everything that judging and the document need of it.

    Attributes
    ----------
    id : "j1", "j2", ...
    cover, base : part ids
    rib_on : 'base', 'cover' or 'none'
    beam : (3,) unit vector, from cover into base
    modelled_state : 'touching', 'gap', 'overlap' or 'mixed'
    why : reasons for roles, light and seam, as sentences
    survey : what was measured
    extra : further plain values that travel into the document's joint untouched, such as "material"
    kind : a key of KINDS in catalogue/kinds.py
    confidence : 0 to 1, how far the evidence carries this reading of the model; None where it was not weighed
    left_out : what may be another joint and was not reviewed, as sentences
    band_width : mm, of the band that faces the other part; step : mm, of what lies beside it; NaN where not measured
    """

    id: str
    cover: tuple[str, ...]
    base: tuple[str, ...]
    rib_on: str
    beam: np.ndarray
    modelled_state: str
    why: tuple[str, ...]
    survey: Survey
    extra: Mapping[str, object] = field(default_factory=dict)
    kind: str = WELD_RIB
    confidence: float | None = None
    left_out: tuple[str, ...] = ()
    band_width: float = float("nan")
    step: float = float("nan")


@dataclass(frozen=True, slots=True)
class Finding:
    """One contiguous stretch of one path that breaks one rule, located at its worst station.

    Attributes
    ----------
    id : stable over runs and small edits of the model
    rule, severity, quantity : keys; severity is 'must-fix', 'attention' or 'note'
    column : column of the survey that was judged; '' where the finding is about no column
    value, limit, margin : in ``unit``; margin is negative where the limit is missed; None without
    joint, contour : ids; contour None where the finding is about the whole interface
    at : (3,) mm in the model's coordinates; None where the whole seam is meant
    station : index of the worst station in its path, None off the stations
    from_s, to_s, length_mm : mm along the path; from_s > to_s passes the start of a closed path
    faces : (part id, face index) at the worst station
    message, harm, remedy : sentences
    also : other rules that describe the same cause
    state : 'outside' the limit as drawn; 'at risk': outside only in the worst case of its tolerance
    tolerance, worst_case : +- as set, and the value at its end towards the limit; None without
    waived : None, or reason, last day and origin of the waiver that covers it
    """

    id: str
    rule: str
    severity: str
    quantity: str
    column: str
    value: float | None
    limit: float | None
    unit: str
    margin: float | None
    joint: str
    contour: str | None
    at: tuple[float, float, float] | None
    station: int | None
    from_s: float | None
    to_s: float | None
    length_mm: float | None
    faces: tuple[tuple[str, int], ...]
    message: str
    harm: str
    remedy: str
    also: tuple[str, ...] = ()
    waived: Mapping[str, object] | None = None
    state: str = OUTSIDE
    tolerance: float | None = None
    worst_case: float | None = None


@dataclass(frozen=True, slots=True)
class Judgement:
    """All findings of a model, in order, and what became of each waiver.

    waivers : plain values of each waiver with "state" ('used', 'unused' or 'expired'), and the ids of the
        "findings" that it covers whole and "partly"
    """

    findings: tuple[Finding, ...]
    waivers: tuple[Mapping[str, object], ...] = ()

    @property
    def verdict(self) -> str:
        """'fail' with a must-fix that is not waived, 'attention' with such an attention, else 'pass'."""
        open_ones = {f.severity for f in self.findings if f.waived is None}
        return FAIL if "must-fix" in open_ones else ATTENTION_VERDICT if "attention" in open_ones else PASS
