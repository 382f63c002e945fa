"""The JSON Schema of the review document, made from its records (records.py).

``python -m seamcheck.document.schema`` writes document_schema.json anew after a record, rule or quantity was changed.
"""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

import msgspec

from seamcheck.catalogue.field_types import LARGEST, LARGEST_COUNT
from seamcheck.catalogue.quantities import QUANTITIES
from seamcheck.catalogue.rules import RULES
from seamcheck.document.records import Document
from seamcheck.judge.findings import Finding

FILE = Path(__file__).with_name("document_schema.json")


def make_schema() -> dict[str, Any]:
    """The schema as a dict."""
    (top,), definitions = msgspec.json.schema_components((Document,), ref_template="#/$defs/{name}")
    definitions = {name: plain_schema(content) for name, content in sorted(definitions.items())}
    document = definitions.pop("Document")
    assert top == {"$ref": "#/$defs/Document"}
    return {
        "$schema": "https://json-schema.org/draft/2020-12/schema",
        **document,
        "title": "seamcheck review document",
        "description": "One review of one model. Coordinates are the model's own, in mm; areas in mm². null: "
        "not measured, or nothing to say.",
        "allOf": [
            {
                "if": {"properties": {"verdict": {"const": "not-reviewed"}}},
                "then": {"properties": {"reason": {"type": "object"}, "findings": {"maxItems": 0}}},
                "else": {"properties": {"reason": {"type": "null"}, "joints": {"minItems": 1}}},
            }
        ],
        "$defs": {
            "rule": {"enum": list(RULES), "type": "string"},
            "quantity": {"enum": list(QUANTITIES), "type": "string"},
            **definitions,
        },
    }


def finding_schemas() -> dict[str, Any]:
    """The schema of a finding and of what it is made of: name -> schema, each referring to '#/$defs/NAME'."""
    _, definitions = msgspec.json.schema_components((Finding,), ref_template="#/$defs/{name}")
    return {name: plain_schema(content) for name, content in sorted(definitions.items())}


def plain_schema(content: Any) -> Any:
    """A part of the schema without what repeats the code: details of docstrings, titles, keys, far bounds."""
    if isinstance(content, list | tuple):
        return [plain_schema(item) for item in content]
    if not isinstance(content, dict):
        return content
    for name, keys in (("rule", RULES), ("quantity", QUANTITIES)):
        if content.get("enum") == list(keys):
            return {"$ref": f"#/$defs/{name}"}
    result = {key: plain_schema(item) for key, item in content.items()}
    for bound in ("minimum", "maximum"):
        if abs(result.get(bound) or 0) in (LARGEST, LARGEST_COUNT):
            del result[bound]
    if isinstance(result.get("description"), str):
        result["description"] = result["description"].partition("\n\n")[0].replace("\n", " ")
    if isinstance(result.get("properties"), dict):
        result.pop("title", None)
    return result


if __name__ == "__main__":
    FILE.write_text(json.dumps(make_schema(), indent=1, ensure_ascii=False) + "\n", encoding="utf-8")
