"""The schema of a joint's part "material", written by hand beside the code that makes it."""

from __future__ import annotations

import json
from importlib import resources
from typing import Any


def material_schema() -> dict[str, Any]:
    """JSON Schema (draft 2020-12) of what a review says about materials."""
    text = resources.files("seamcheck.document").joinpath("material.schema.json").read_text("utf-8")
    schema: dict[str, Any] = json.loads(text)
    return schema
