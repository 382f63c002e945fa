"""The JSON Schema of the comparison document, made from its records (records.py).

``python -m seamcheck.comparison.schema`` writes comparison_schema.json anew.
"""

from __future__ import annotations

import json
from importlib import resources
from pathlib import Path
from typing import Any

import msgspec

from seamcheck.comparison.records import Comparison
from seamcheck.document.schema import finding_schemas, plain_schema

FILE = Path(__file__).with_name("comparison_schema.json")


def make_schema() -> dict[str, Any]:
    """The schema as a dict."""
    _, definitions = msgspec.json.schema_components((Comparison,), ref_template="#/$defs/{name}")
    definitions = {name: plain_schema(content) for name, content in sorted(definitions.items())}
    top = definitions.pop("Comparison")
    text = {"type": "string"}
    return {
        "$schema": "https://json-schema.org/draft/2020-12/schema",
        **top,
        "title": "seamcheck comparison document",
        "description": "Two reviews compared. Places and arc lengths are the new model's, in mm; what the old model "
        "had is brought into its coordinates by 'motion'. null: not measured, or nothing to say.",
        "$defs": {**definitions, **finding_schemas(), "rule": text, "quantity": text},
    }


def schema() -> dict[str, Any]:
    """The schema as it ships."""
    text = resources.files("seamcheck.comparison").joinpath(FILE.name).read_text(encoding="utf-8")
    result: dict[str, Any] = json.loads(text)
    return result


if __name__ == "__main__":
    FILE.write_text(json.dumps(make_schema(), indent=1, ensure_ascii=False) + "\n", encoding="utf-8")
