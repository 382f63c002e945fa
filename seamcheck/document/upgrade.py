"""Documents of schema version 1, and of version 2 under former names, as documents of this version."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType
from typing import Any

from seamcheck.catalogue.cautions import ALWAYS_ASSUMED, CAUTION_TEXTS, remark
from seamcheck.catalogue.former import FORMER_QUANTITIES, FORMER_RULES
from seamcheck.catalogue.kinds import FLAT_LAP, WELD_RIB
from seamcheck.catalogue.message import NOTE
from seamcheck.document.records import SCHEMA_VERSION, SettingsRecord
from seamcheck.errors import UsageError
from seamcheck.settings.declared import NUMBERS


def upgraded(document: dict[str, Any], name: str) -> dict[str, Any]:
    """The document in this schema version; UsageError where it is of a version that can't be read.

    What version 1 does not say stays unsaid: sentences get the key 'note', and confidence is None. What it says of
    materials is left out. The ids of its findings are of the older kind; a comparison goes by places first.
    """
    version = document.get("schema_version")
    if version == SCHEMA_VERSION:
        return _with_names_of_now(document) if _has_former_names(document) else document
    if version != 1:
        raise UsageError(
            f"{name} has schema version {str(version)[:20]}; this seamcheck reads versions 1 and {SCHEMA_VERSION}. "
            "Review the model again."
        )
    try:
        return _from_1(_with_names_of_now(document))
    except (TypeError, KeyError, AttributeError, ValueError):
        raise UsageError(
            f"{name} is not a sound review document of schema version 1, and can't be brought to version "
            f"{SCHEMA_VERSION}. Review the model again."
        ) from None


def _has_former_names(document: dict[str, Any]) -> bool:
    """Whether its list of limits has a rule that is called otherwise now; what is no such list is left to the check."""
    limits = document.get("limits")
    entries = limits if isinstance(limits, list) else ()
    return any(isinstance(entry, dict) and str(entry.get("rule")) in FORMER_RULES for entry in entries)


_OF_QUANTITIES, _OF_RULES = ("quantity", "column"), ("rule", "also")
"""Keys whose texts are names of quantities, and of rules."""


def _with_names_of_now(value: Any, names: Mapping[str, str] = MappingProxyType({})) -> Any:
    """The values of a document with quantities and rules called as they are now; ``names`` for a text itself."""
    if isinstance(value, dict):
        return {_name_of_now(key): _with_names_of_now(item, _names_under(key)) for key, item in value.items()}
    if isinstance(value, list):
        return value if value and isinstance(value[0], float) else [_with_names_of_now(item, names) for item in value]
    return names.get(value, value) if isinstance(value, str) else value


def _names_under(key: str) -> Mapping[str, str]:
    return FORMER_QUANTITIES if key in _OF_QUANTITIES else FORMER_RULES if key in _OF_RULES else {}


_KEYS = FORMER_QUANTITIES | {"least_turn_radius_mm": "least_corner_radius_mm"}


def _name_of_now(key: str) -> str:
    """A key of an object: a quantity, or a limit as 'rule.min'."""
    rule, dot, rest = key.partition(".")
    return FORMER_RULES.get(rule, rule) + dot + rest if dot else _KEYS.get(key, key)


def _from_1(document: dict[str, Any]) -> dict[str, Any]:
    model = document["model"]
    severities = {entry["rule"]: entry["severity"] for entry in document["limits"]}
    result = {
        **document,
        "schema_version": SCHEMA_VERSION,
        "model": {
            **model,
            "notes": _said(model["notes"]),
            "parts": [{**part, "notes": _said(part["notes"])} for part in model["parts"]],
        },
        "joints": [_joint(joint, severities) for joint in document["joints"]],
        "findings": [_finding(finding) for finding in document["findings"]],
        "limits": [_renamed(entry) for entry in document["limits"]],
        "assumptions": [_plain(remark(key)) for key in ALWAYS_ASSUMED],
        "not_checked": _said(document["not_checked"]),
        "cautions": [_plain(remark(key)) for key in CAUTION_TEXTS],
        "settings": _settings(document["settings"]),
    }
    if document["reason"] is not None:
        result["reason"] = {**document["reason"], "key": document["reason"]["code"], "args": {}}
    return result


def _settings(settings: dict[str, Any]) -> dict[str, Any]:
    """The settings of that version; numbers that it had not yet stand at their defaults, others are left out."""
    record = SettingsRecord.__struct_encode_fields__
    defaults = {f"{number.attribute}_mm": number.default for number in NUMBERS.values()}
    return {key: settings.get(key, defaults.get(key)) for key in record}


def _joint(joint: dict[str, Any], severities: dict[str, str]) -> dict[str, Any]:
    gaps = [
        value
        for contour in joint["contours"]
        for key in ("gap_min", "gap")
        for value in contour["stations"].get(key, ())
        if value is not None
    ]
    kept = {key: value for key, value in joint.items() if key != "material"}  # of another form then
    return {
        **kept,
        "parts_outside": None,
        "kind": FLAT_LAP if joint["rib_on"] == "none" else WELD_RIB,
        "confidence": None,
        "why": _said(joint["why"]),
        "initial_contact_mm": min(gaps, default=None),
        "seam_faces": joint.get("seam_faces") or {"rib": [], "opposite": []},
        "contours": [
            {
                "clamp_side": None,
                **contour,
                "bounds": [_renamed({"severity": severities.get(b["rule"], "note"), **b}) for b in contour["bounds"]],
            }
            for contour in joint["contours"]
        ],
    }


def _renamed(entry: dict[str, Any]) -> dict[str, Any]:
    """An entry of a rule under the key that the rule has now."""
    return {**entry, "rule": FORMER_RULES.get(entry["rule"], entry["rule"])}


def _finding(finding: dict[str, Any]) -> dict[str, Any]:
    return {**_renamed(finding), "key": NOTE, "args": {}, "messages": _said([finding["message"]])}


def _said(texts: list[str]) -> list[dict[str, Any]]:
    return [{"key": NOTE, "args": {}, "text": text} for text in texts]


def _plain(message: Any) -> dict[str, Any]:
    return {"key": message.key, "args": dict(message.args), "text": message.text}
