"""The types of the page's script for what it takes from the document as it stands there, made from the records.

``python -m seamcheck.document.page_types`` writes frontend/src/document.ts anew after a record was changed.
"""

from __future__ import annotations

import json
import re
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import msgspec

from seamcheck.document.records import JointRecord, View
from seamcheck.document.schema import plain_schema

FILE = Path(__file__).parents[2] / "frontend" / "src" / "document.ts"

_HEAD = """\
/** Records of the review document. Made by `python -m seamcheck.document.page_types`; never edited by hand. */
"""
_NOT_DRAWN = ("material",)  # Python draws what stands there
_TEXTS = {"rule", "quantity"}  # keys of the catalogue: long lists, that change with it
_SIMPLE = {"string": "string", "number": "number", "integer": "number", "boolean": "boolean", "null": "null"}


def make_types() -> str:
    """The text of document.ts: one interface for each record that a joint or the view is made of."""
    _, definitions = msgspec.json.schema_components((JointRecord, View), ref_template="#/$defs/{name}")
    definitions = {name: plain_schema(content) for name, content in definitions.items()}
    for field in _NOT_DRAWN:
        del definitions["JointRecord"]["properties"][field]
    return _HEAD + "".join(_interface(name, definitions[name]) for name in sorted(_reached(definitions)))


def _reached(definitions: dict[str, Any]) -> set[str]:
    """Names of the records that a joint or the view leads to."""
    found: set[str] = set()
    todo = [JointRecord.__name__, View.__name__]
    while todo:
        name = todo.pop()
        if name not in found:
            found.add(name)
            todo += set(re.findall(r"#/\$defs/(\w+)", json.dumps(definitions[name]))) - _TEXTS
    return found


def _interface(name: str, schema: dict[str, Any]) -> str:
    about = schema.get("description", "").partition("\n")[0]
    fields = "".join(f"  {line}\n" for line in _fields(schema))
    return f"\n/** {about} */\nexport interface {name} {{\n{fields}}}\n"


def _fields(schema: dict[str, Any]) -> Iterator[str]:
    needed, types, further = schema.get("required", ()), [], schema.get("additionalProperties")
    for name, field in schema.get("properties", {}).items():
        if name in needed or not further:
            types.append(_type(field))
            yield f"{name}{'' if name in needed else '?'}: {types[-1]};"
    if further:
        yield f"[name: string]: {' | '.join(dict.fromkeys([_type(further), *types]))};"


def _type(schema: dict[str, Any]) -> str:
    """One type in TypeScript."""
    if "$ref" in schema:
        name = str(schema["$ref"]).rpartition("/")[2]
        return "string" if name in _TEXTS else name
    if "anyOf" in schema:
        return " | ".join(dict.fromkeys(_type(one) for one in schema["anyOf"]))
    if "enum" in schema:
        return " | ".join(json.dumps(value) for value in schema["enum"])
    kind = schema.get("type")
    if isinstance(kind, list):
        return " | ".join(_type({**schema, "type": one}) for one in kind)
    if kind == "array":
        if "prefixItems" in schema:
            return "[" + ", ".join(_type(one) for one in schema["prefixItems"]) + "]"
        item = _type(schema.get("items") or {})
        if schema.get("minItems") == schema.get("maxItems") == 3:
            return f"[{item}, {item}, {item}]"
        return f"({item})[]" if " " in item and not item.startswith("[") else f"{item}[]"
    if kind == "object":
        if "properties" in schema:
            return "{ " + " ".join(_fields(schema)) + " }"
        return f"Record<string, {_type(schema.get('additionalProperties') or {})}>"
    return _SIMPLE.get(str(kind), "unknown")


if __name__ == "__main__":
    FILE.write_text(make_types(), encoding="utf-8")
