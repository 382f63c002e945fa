"""The JSON Schema of the review document, made from the declarations.

``python -m seamcheck.document.schema`` writes document_schema.json anew after a rule or quantity was added.
"""

from __future__ import annotations

import json
from importlib import resources
from pathlib import Path
from typing import Any

from seamcheck.catalogue.kinds import KINDS
from seamcheck.catalogue.known import OF_DEFAULTS
from seamcheck.catalogue.quantities import QUANTITIES
from seamcheck.catalogue.rule import SEVERITIES
from seamcheck.catalogue.rules import RULES
from seamcheck.errors import REASONS as REFUSALS

FILE = Path(__file__).with_name("document_schema.json")

NUMBER: dict[str, Any] = {"type": ["number", "null"]}
TEXT: dict[str, Any] = {"type": "string"}
POINT: dict[str, Any] = {"type": ["array", "null"], "items": {"type": "number"}, "minItems": 3, "maxItems": 3}
TEXTS: dict[str, Any] = {"type": "array", "items": TEXT}
FOUND_SEVERITIES = [s for s in SEVERITIES if s != "off"]


def record(properties: dict[str, Any], optional: tuple[str, ...] = (), **more: Any) -> dict[str, Any]:
    """An object with just these keys, all of them needed but the optional ones."""
    return {
        "type": "object",
        "properties": properties,
        "required": [key for key in properties if key not in optional],
        "additionalProperties": False,
        **more,
    }


def maybe(text: dict[str, Any]) -> dict[str, Any]:
    return {**text, "type": [text["type"], "null"]}


def listed(item: dict[str, Any]) -> dict[str, Any]:
    return {"type": "array", "items": item}


def make_schema() -> dict[str, Any]:
    """The schema as a dict."""
    file = {
        "file": {**TEXT, "description": "name without folders"},
        "sha256": TEXT,
        "step_schema": TEXT,
        "length_unit": TEXT,
    }
    return {
        "$schema": "https://json-schema.org/draft/2020-12/schema",
        "title": "seamcheck review document",
        "description": "One review of one model. Coordinates are the model's own, in mm; areas in mm². null: "
        "not measured, or nothing to say.",
        **record(
            {
                "document": {"const": "seamcheck-review"},
                "schema_version": {"const": 2},
                "seamcheck": {**TEXT, "description": "version that made the document"},
                "model": record(
                    {**file, "files": listed(record(file)), "parts": listed(_part()), "notes": TEXTS},
                ),
                "verdict": {"enum": ["pass", "attention", "fail", "not-reviewed"]},
                "reason": {"oneOf": [{"type": "null"}, record({"code": {"enum": list(REFUSALS)}, "message": TEXT})]},
                "joints": listed(_joint()),
                "findings": listed(_finding()),
                "limits": listed(_limit()),
                "waivers": listed(_waiver()),
                "settings": {
                    "type": "object",
                    "properties": {"collapse_mm": {"type": "number"}},
                    "required": ["collapse_mm"],
                },
                "reasons": {
                    "type": "object",
                    "additionalProperties": TEXT,
                    "description": "codes in 'why' and their meaning",
                },
                "not_checked": TEXTS,
                "cautions": TEXTS,
                "view": {"type": "object", "description": "section outlines and display meshes"},
                "run": {"type": "object", "description": "facts of the run, only on request"},
            },
            optional=("view", "run"),
            allOf=[
                {
                    "if": {"properties": {"verdict": {"const": "not-reviewed"}}},
                    "then": {"properties": {"reason": {"type": "object"}, "findings": {"maxItems": 0}}},
                    "else": {"properties": {"reason": {"type": "null"}, "joints": {"minItems": 1}}},
                }
            ],
        ),
    }


def _part() -> dict[str, Any]:
    return record(
        {
            "id": TEXT,
            "name": TEXT,
            "path": TEXTS,
            "role": {"enum": ["cover", "base", "cover and base", "other"]},
            "kind": {"enum": ["solid", "sheet", "other"]},
            "solids": {"type": "integer", "minimum": 0},
            "faces": {"type": "integer", "minimum": 0},
            "file": {"type": "integer", "minimum": 0, "description": "index into model.files"},
            "notes": TEXTS,
        }
    )


def _joint() -> dict[str, Any]:
    summaries = {
        "type": "object",
        "additionalProperties": {"oneOf": [{"type": "null"}, record({"min": NUMBER, "median": NUMBER, "max": NUMBER})]},
        "description": "median: every station counts as long as its part of the seam",
    }
    interface = {
        "type": "object",
        "additionalProperties": {
            "type": "object",
            "properties": {"value": NUMBER, "at": POINT},
            "required": ["value"],
        },
    }
    material = json.loads(resources.files("seamcheck.document").joinpath("material.schema.json").read_text("utf-8"))
    return record(
        {
            "id": TEXT,
            "cover": TEXTS,
            "base": TEXTS,
            "kind": {"enum": list(KINDS)},
            "confidence": {
                **NUMBER,
                "minimum": 0,
                "maximum": 1,
                "description": "how far the evidence carries this reading of the model; null: not weighed",
            },
            "rib_on": {"enum": ["base", "cover", "none"]},
            "rib_part": TEXT,
            "beam": POINT,
            "modelled_state": {"enum": ["touching", "gap", "overlap", "mixed"]},
            "why": TEXTS,
            "length_mm": NUMBER,
            "summary": summaries,
            "junctions": {"type": "object", "additionalProperties": POINT},
            "interruptions": listed(record({"length_mm": NUMBER, "at": POINT, "contours": TEXTS})),
            "seam_faces": {
                **record({"rib": listed(_face()), "opposite": listed(_face())}),
                "description": "faces that the stations lie on",
            },
            "contours": listed(_contour(summaries)),
            "interface": interface,
            "tolerances": listed(
                record(
                    {
                        "rule": {"enum": list(RULES)},
                        "quantity": {"enum": list(QUANTITIES)},
                        "side": {"enum": ["low", "high"]},
                        "state": {"enum": ["inside", "at risk", "outside"]},
                        "value": NUMBER,
                        "tolerance": NUMBER,
                        "worst_case": NUMBER,
                        "limit": NUMBER,
                        "unit": TEXT,
                        "outside_ppm": NUMBER,
                        "from": {"enum": ["default", "file", "option"]},
                    }
                )
            ),
            "parts_outside": {
                "oneOf": [
                    {"type": "null"},
                    record({"ppm": NUMBER, "spread": TEXT, "rules": TEXTS}),
                ],
                "description": "parts in which something breaks that holds as drawn; null without tolerances",
            },
            "material": material,
        },
        optional=("material", "seam_faces"),
    )


def _contour(summaries: dict[str, Any]) -> dict[str, Any]:
    column = {"type": "array", "items": NUMBER}
    known = {
        key: {**column, "description": f"{q.title}, {q.unit}: {q.definition}"}
        for key, q in QUANTITIES.items()
        if q.per == "station"
    }
    place = {"type": "array", "items": {"type": "number"}}
    stations = {
        "type": "object",
        "properties": {
            "s": {**place, "description": "arc length, mm, ascending"},
            "x": place,
            "y": place,
            "z": place,
            "u": listed({**POINT, "type": "array"}),
            **known,
        },
        "required": ["s", "x", "y", "z", "u"],
        "additionalProperties": column,
    }
    bound = {"oneOf": [NUMBER, column]}
    return record(
        {
            "id": TEXT,
            "closed": {"type": "boolean"},
            "length_mm": NUMBER,
            "clamp_side": {"enum": ["inner", "outer", None], "description": "side of the clamp land"},
            "ends": TEXTS,
            "junctions": TEXTS,
            "stations": stations,
            "unmeasured": listed(record({"column": TEXT, "from_s": NUMBER, "to_s": NUMBER, "why": TEXT})),
            "summary": summaries,
            "bounds": listed(
                record({**dict.fromkeys(("rule", "column", "quantity", "severity"), TEXT), "low": bound, "high": bound})
            ),
        },
        optional=("clamp_side",),
    )


def _face() -> dict[str, Any]:
    return record(
        {
            "part": TEXT,
            "face": {"type": "integer"},
            "step_entity": maybe({**TEXT, "pattern": "^#[0-9]+$"}),
            "line": {"type": ["integer", "null"]},
        }
    )


def _finding() -> dict[str, Any]:
    face = _face()
    waived = record({"reason": TEXT, "until": maybe(TEXT), "origin": maybe(TEXT)})
    return record(
        {
            "id": {**TEXT, "description": "stable over runs and small edits of the model"},
            "rule": {"enum": list(RULES)},
            "severity": {"enum": FOUND_SEVERITIES},
            "quantity": {"enum": list(QUANTITIES)},
            "column": {**maybe(TEXT), "description": "the column of the stations that was judged"},
            "value": NUMBER,
            "limit": NUMBER,
            "unit": TEXT,
            "margin": {**NUMBER, "description": "negative by how far the limit is missed"},
            "joint": TEXT,
            "contour": maybe(TEXT),
            "at": {**POINT, "description": "the worst place"},
            "station": {"type": ["integer", "null"], "description": "index of the worst station"},
            "from_s": NUMBER,
            "to_s": {
                **NUMBER,
                "description": "below from_s where the stretch passes the start of a closed contour",
            },
            "length_mm": NUMBER,
            "faces": listed(face),
            "message": TEXT,
            "harm": TEXT,
            "remedy": TEXT,
            "also": {**TEXTS, "description": "other rules that describe the same cause"},
            "state": {
                "enum": ["outside", "at risk"],
                "description": "at risk: inside the limit as drawn, outside in the worst case of its tolerance",
            },
            "tolerance": {**NUMBER, "description": "+- as set"},
            "worst_case": NUMBER,
            "waived": {"oneOf": [{"type": "null"}, waived]},
        }
    )


def _limit() -> dict[str, Any]:
    return record(
        {
            "rule": {"enum": list(RULES)},
            "title": TEXT,
            "severity": {"enum": list(SEVERITIES)},
            "quantity": {"enum": list(QUANTITIES)},
            "fails": TEXT,
            "name": maybe(TEXT),
            "value": NUMBER,
            "unit": TEXT,
            "what": TEXT,
            "standing": {"enum": list(OF_DEFAULTS)},
            "standing_text": TEXT,
            "from": {"enum": ["default", "file", "option"]},
        }
    )


def _waiver() -> dict[str, Any]:
    return record(
        {
            "rule": TEXT,
            "reason": TEXT,
            "at": POINT,
            "radius": NUMBER,
            "contour": maybe(TEXT),
            "from_s": NUMBER,
            "to_s": NUMBER,
            "joint": maybe(TEXT),
            "until": maybe(TEXT),
            "origin": maybe(TEXT),
            "state": {"enum": ["used", "unused", "expired"]},
            "findings": {**TEXTS, "description": "ids of the findings that it covers whole"},
            "partly": {**TEXTS, "description": "ids of findings that reach beyond it; they are not waived"},
        }
    )


if __name__ == "__main__":
    FILE.write_text(json.dumps(make_schema(), indent=1, ensure_ascii=False) + "\n", encoding="utf-8")
