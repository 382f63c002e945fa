"""The JSON Schema of the comparison document.

``python -m seamcheck.comparison.schema`` writes comparison_schema.json anew.
"""

from __future__ import annotations

import json
from importlib import resources
from pathlib import Path
from typing import Any

from seamcheck.comparison.along import DOWN, LOST, MEASURED, UP
from seamcheck.comparison.reasons import HOW
from seamcheck.document.schema import NUMBER, POINT, TEXT, TEXTS, finding_schemas, listed, maybe, record

FILE = Path(__file__).with_name("comparison_schema.json")

_FLAG: dict[str, Any] = {"type": "boolean"}
_COUNT: dict[str, Any] = {"type": "integer", "minimum": 0}
_ANY: dict[str, Any] = {}
_NUMBERS: dict[str, Any] = {"type": "array", "items": NUMBER}
_NAMES = record({"old": TEXTS, "new": TEXTS})
_WORDS = record({"old": maybe(TEXT), "new": maybe(TEXT)})
_REASON = record({"code": TEXT, "message": TEXT, "key": TEXT, "args": {"type": "object"}})
_HOW = {"enum": list(HOW)}


def make_schema() -> dict[str, Any]:
    """The schema as a dict."""
    return {
        "$schema": "https://json-schema.org/draft/2020-12/schema",
        "title": "seamcheck comparison document",
        "description": "Two reviews compared. Places and arc lengths are the new model's, in mm; what the old model "
        "had is brought into its coordinates by 'motion'. null: not measured, or nothing to say.",
        **record(
            {
                "document": {"const": "seamcheck-comparison"},
                "schema_version": {"const": 1},
                "seamcheck": {**TEXT, "description": "version that made the comparison"},
                "old": _side(),
                "new": _side(),
                "outcome": {
                    "enum": ["not-worse", "worse", "not-compared"],
                    "description": "worse: a must-fix finding that is not waived is new, or worse than it was",
                },
                "reason": maybe(TEXT),
                "warnings": {**TEXTS, "description": "what keeps the comparison from being like with like"},
                "limits": listed(_limit()),
                "settings": listed(record({"key": TEXT, "title": TEXT, "old": _ANY, "new": _ANY})),
                "parts": _parts(),
                "motion": {"oneOf": [{"type": "null"}, _motion()]},
                "joints": listed(_joint()),
                "findings": _findings(),
                "identical": {**_FLAG, "description": "nothing differs by more than the measuring error"},
                "cautions": TEXTS,
            }
        ),
        "$defs": _any_finding(),
    }


def _any_finding() -> dict[str, Any]:
    """A finding as in the review document, of whatever rule: the reviews may be of other versions."""
    return {**finding_schemas(), "rule": TEXT, "quantity": TEXT}


def schema() -> dict[str, Any]:
    """The schema as it ships."""
    text = resources.files("seamcheck.comparison").joinpath(FILE.name).read_text(encoding="utf-8")
    result: dict[str, Any] = json.loads(text)
    return result


def _side() -> dict[str, Any]:
    return record(
        {
            "file": TEXT,
            "files": TEXTS,
            "sha256": TEXT,
            "seamcheck": TEXT,
            "verdict": {"enum": ["pass", "attention", "fail", "not-reviewed"]},
            "reason": {
                "oneOf": [
                    {"type": "null"},
                    record({"code": TEXT, "message": TEXT, "key": TEXT, "args": {"type": "object"}}),
                ]
            },
            "settings_file": maybe(TEXT),
            "length_mm": NUMBER,
            "findings": record({"must-fix": _COUNT, "attention": _COUNT, "note": _COUNT}),
            "waived": _COUNT,
        }
    )


def _limit() -> dict[str, Any]:
    value = {"type": ["number", "string", "null"]}
    return record(
        {
            "rule": TEXT,
            "title": TEXT,
            "name": {**TEXT, "description": "of the limit, or 'severity'"},
            "old": value,
            "new": value,
            "unit": TEXT,
            "judged_old": _FLAG,
            "judged_new": _FLAG,
        }
    )


def _parts() -> dict[str, Any]:
    return record(
        {
            "renamed": listed(record({"role": {"enum": ["cover", "base"]}, "old": TEXT, "new": TEXT})),
            "roles": listed(record({"name": TEXT, "old": TEXT, "new": TEXT})),
            "added": TEXTS,
            "removed": TEXTS,
            "faces": listed(record({"name": TEXT, "old": _COUNT, "new": _COUNT})),
        }
    )


def _motion() -> dict[str, Any]:
    return record(
        {
            "kind": {"enum": ["none", "moved", "turned", "unlike"]},
            "shift_mm": {**POINT, "description": "x_new = turn(x_old) + shift"},
            "angle_deg": NUMBER,
            "axis": POINT,
            "share": {**NUMBER, "description": "of the old seam that then lies on the new one"},
            "says": TEXT,
        }
    )


def _joint() -> dict[str, Any]:
    summary = {"oneOf": [{"type": "null"}, record({"min": NUMBER, "median": NUMBER, "max": NUMBER})]}
    lengths = record({"old": NUMBER, "new": NUMBER, "by": NUMBER})
    change = record(
        {
            "kind": {"enum": [UP, DOWN, MEASURED, LOST]},
            "contour": TEXT,
            "from_s": NUMBER,
            "to_s": NUMBER,
            "length_mm": NUMBER,
            "is_whole": _FLAG,
            "s": NUMBER,
            "at": POINT,
            "old": NUMBER,
            "new": NUMBER,
            "by": NUMBER,
            "old_why": maybe(TEXT),
            "new_why": maybe(TEXT),
        }
    )
    quantity = record(
        {
            "quantity": TEXT,
            "title": TEXT,
            "unit": TEXT,
            "old": summary,
            "new": summary,
            "length_mm": NUMBER,
            "share": NUMBER,
            "changes": listed(change),
        }
    )
    piece = record(
        {
            "what": {"enum": ["added", "removed"]},
            "contour": {**TEXT, "description": "of the new review where added, of the old one where removed"},
            "from_s": NUMBER,
            "to_s": NUMBER,
            "length_mm": NUMBER,
            "at": POINT,
        }
    )
    interface = record(
        {"quantity": TEXT, "title": TEXT, "unit": TEXT, "old": NUMBER, "new": NUMBER, "by": NUMBER, "at": POINT}
    )
    material = record({"kind": {"enum": ["input", "result"]}, "title": TEXT, "unit": TEXT, "old": _ANY, "new": _ANY})
    line = listed(record({"closed": _FLAG, "points": listed(_NUMBERS)}))
    column = record({"old": _NUMBERS, "new": _NUMBERS})
    bound = {"oneOf": [NUMBER, _NUMBERS]}
    track = record(
        {
            "contour": TEXT,
            "closed": _FLAG,
            "length_mm": NUMBER,
            "s": _NUMBERS,
            "columns": {"type": "object", "additionalProperties": column},
            "bounds": listed(
                record({**dict.fromkeys(("rule", "column", "quantity", "severity"), TEXT), "low": bound, "high": bound})
            ),
        }
    )
    return record(
        {
            "old": maybe(TEXT),
            "new": maybe(TEXT),
            "cover": _NAMES,
            "base": _NAMES,
            "rib_on": _WORDS,
            "modelled_state": _WORDS,
            "length_mm": lengths,
            "paths": record({"old": _COUNT, "new": _COUNT}),
            "shift": record({"mean_mm": NUMBER, "max_mm": NUMBER, "at": POINT, "length_mm": NUMBER}),
            "pieces": listed(piece),
            "sides_swapped": _FLAG,
            "quantities": listed(quantity),
            "unchanged": TEXTS,
            "only_old": {**TEXTS, "description": "quantities that the new review does not have"},
            "only_new": {**TEXTS, "description": "quantities that the old review does not have"},
            "interface": listed(interface),
            "material": listed(material),
            "plan": {"oneOf": [{"type": "null"}, record({"axes": listed(_NUMBERS), "old": line, "new": line})]},
            "tracks": listed(track),
        }
    )


def _findings() -> dict[str, Any]:
    finding = {"$ref": "#/$defs/Finding"}
    place = record({"at": POINT, "contour": maybe(TEXT), "s": NUMBER})
    gone = record(
        {
            "old": finding,
            "how": _HOW,
            "now": {**NUMBER, "description": "the value there now"},
            "place": {"oneOf": [{"type": "null"}, place], "description": "where that is on the new model"},
        }
    )
    return record(
        {
            "new": listed(record({"new": finding, "how": _HOW, "before": NUMBER})),
            "remaining": listed(
                record(
                    {
                        "old": finding,
                        "new": finding,
                        "state": {"enum": ["worse", "same", "better"]},
                        "margin_by": {**NUMBER, "description": "negative: farther beyond the limit than before"},
                        "length_by_mm": NUMBER,
                        "is_piece": {**_FLAG, "description": "the old finding has fallen into several"},
                        "merged": {**TEXTS, "description": "ids of further old findings that grew into it"},
                    }
                )
            ),
            "fixed": listed(gone),
            "dropped": {**listed(gone), "description": "no longer reported for a reason outside the model"},
        }
    )


if __name__ == "__main__":
    FILE.write_text(json.dumps(make_schema(), indent=1, ensure_ascii=False) + "\n", encoding="utf-8")
