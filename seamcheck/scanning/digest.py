"""A review document as the rows of the store."""

from __future__ import annotations

import json
import zlib
from collections.abc import Mapping, Sequence
from typing import Any

from msgspec import Struct

from seamcheck.report import facts
from seamcheck.report.facts import Document
from seamcheck.scanning.picture import seam_picture

Row = dict[str, Any]


class Digest(Struct, frozen=True):
    """Rows for the tables of the store, without their key, and the packed document.

    Attributes
    ----------
    review : one row of ``reviews``
    findings, quantities, interface_values, materials, joints, parts : rows of these tables
    document : JSON as bytes, compressed with zlib
    files : SHA-256 of every file as it was read, '' where it wasn't
    """

    review: Row
    findings: list[Row]
    quantities: list[Row]
    interface_values: list[Row]
    materials: list[Row]
    joints: list[Row]
    parts: list[Row]
    document: bytes
    files: tuple[str, ...]


def digest(document: Document) -> Digest:
    """All rows of one review document."""
    joints = facts.joints(document)
    return Digest(
        review=_review(document),
        findings=[_finding(n.number, n.finding) for n in facts.numbered_findings(document)],
        quantities=[row for joint in joints for row in _quantities(joint)],
        interface_values=[
            _interface_value(joint["id"], key, entry)
            for joint in joints
            for key, entry in sorted((joint.get("interface") or {}).items())
        ],
        materials=[_material(joint["id"], joint["material"]) for joint in joints if joint.get("material")],
        joints=[_joint(joint, facts.part_names(document)) for joint in joints],
        parts=[
            {
                "part": part["id"], "name": text(part["name"]), "role": part["role"],
                "solids": part["solids"], "faces": part["faces"],
            }
            for part in document["model"]["parts"]
        ],
        document=pack(document),
        files=tuple(file["sha256"] for file in document["model"]["files"]),
    )  # fmt: skip


def pack(document: Document) -> bytes:
    """A document as compressed bytes."""
    plain = json.dumps(document, ensure_ascii=True, separators=(",", ":"), allow_nan=False)
    return zlib.compress(plain.encode("ascii"), 6)


def unpack(data: bytes) -> dict[str, Any]:
    """The document of such bytes."""
    document: dict[str, Any] = json.loads(zlib.decompress(data))
    return document


def text(value: Any) -> str:
    """Text that a database takes: without halves of characters, which damaged names may hold."""
    return str(value).encode("utf-8", "replace").decode("utf-8").replace("\0", "")


def _review(document: Document) -> Row:
    model, reason = document["model"], document["reason"] or {}
    parts = model["parts"]
    counts = dict.fromkeys((*facts.SEVERITIES, "waived"), 0)
    for finding in document["findings"]:
        counts["waived" if finding["waived"] else finding["severity"]] += 1
    return {
        "verdict": document["verdict"],
        "reason_code": reason.get("code"),
        "reason": None if not reason else text(reason["message"]),
        "step_schema": text(model["step_schema"]),
        "length_unit": text(model["length_unit"]),
        "parts": len(parts),
        "solids": sum(part["solids"] for part in parts),
        "faces": sum(part["faces"] for part in parts),
        "seams": len(document["joints"]),
        "seam_length": sum(joint["length_mm"] or 0.0 for joint in document["joints"]) or None,
        "must_fix": counts["must-fix"],
        "attention": counts["attention"],
        "notes": counts["note"],
        "waived": counts["waived"],
        "exceeds": _exceeds(document),
        "picture": seam_picture(document),
    }


def _exceeds(document: Document) -> float | None:
    """How far the gravest finding lies beyond its limit, as a share of the limit; None where it has no number."""
    live = [n.finding for n in facts.numbered_findings(document) if not n.is_waived]
    if not live or live[0]["severity"] == "note":
        return None
    margin, bound = live[0]["margin"], _bound(live[0]["limit"])
    return None if margin is None or not bound else -margin / abs(bound)


def _bound(limit: Any) -> float | None:
    return float(limit) if isinstance(limit, int | float) else None


def _finding(number: int, f: Mapping[str, Any]) -> Row:
    x, y, z = f["at"] or (None, None, None)
    waived = f["waived"]
    return {
        "n": number,
        "finding": f["id"],
        "rule": f["rule"],
        "severity": f["severity"],
        "waived": int(bool(waived)),
        "waiver": text(waived["reason"]) if waived else None,
        "quantity": f["quantity"],
        "value": f["value"],
        "bound": _bound(f["limit"]),
        "margin": f["margin"],
        "unit": f["unit"],
        "state": f["state"],
        "tolerance": f["tolerance"],
        "worst_case": f["worst_case"],
        "joint": f["joint"],
        "contour": f["contour"],
        "x": x, "y": y, "z": z,
        "from_s": f["from_s"],
        "to_s": f["to_s"],
        "length": f["length_mm"],
        "message": text(f["message"]),
        "remedy": text(f["remedy"]),
    }  # fmt: skip


def _joint(joint: Mapping[str, Any], names: Mapping[str, str]) -> Row:
    return {
        "joint": joint["id"],
        "cover": text(", ".join(names.get(part, part) for part in joint["cover"])),
        "base": text(", ".join(names.get(part, part) for part in joint["base"])),
        "kind": joint["kind"],
        "confidence": joint["confidence"],
        "rib_on": joint["rib_on"],
        "modelled_state": joint["modelled_state"],
        "length": joint["length_mm"],
        "contours": len(joint["contours"]),
        "stations": sum(len(contour["stations"]["s"]) for contour in joint["contours"]),
    }


def _quantities(joint: Mapping[str, Any]) -> list[Row]:
    """Least, median and most of every quantity: of the whole seam, and of each path where there are several."""
    contours: Sequence[Mapping[str, Any]] = joint["contours"]
    groups = [("", joint["summary"])]
    if len(contours) > 1:
        groups += [(contour["id"], contour["summary"]) for contour in contours]
    return [
        {
            "joint": joint["id"], "contour": contour, "quantity": key,
            "least": values["min"], "median": values["median"], "most": values["max"],
        }
        for contour, summary in groups
        for key, values in sorted(summary.items())
        if values is not None
    ]  # fmt: skip


def _interface_value(joint: str, key: str, entry: Mapping[str, Any]) -> Row:
    x, y, z = entry.get("at") or (None, None, None)
    value = entry.get("value")
    return {
        "joint": joint, "quantity": key, "value": None if value is None else float(value),
        "x": x, "y": y, "z": z, "why": text(entry.get("why") or ""),
    }  # fmt: skip


def _material(joint: str, material: Mapping[str, Any]) -> Row:
    given, pair = material.get("settings") or {}, material.get("pair") or {}
    window = material.get("window") or {}
    light = (material.get("transmission") or {}).get("contours") or ()
    melt = (material.get("melt") or {}).get("contours") or ()
    medians = [c.get("median_percent") for c in light]
    return {
        "joint": joint,
        "cover": _name(given.get("cover")),
        "base": _name(given.get("base")),
        "pair": text(pair["verdict"]) if pair.get("verdict") else None,
        "transmission_least": _smallest(c.get("least_percent") for c in light),
        "transmission_median": medians[0] if len(medians) == 1 else None,
        "trap_fill_most": _largest((c.get("trap_fill") or {}).get("most") for c in melt),
        "window_place": text(window["place"]) if window.get("place") else None,
        "window_lowest": (window.get("lowest") or {}).get("value_mm"),
        "window_highest": (window.get("highest") or {}).get("value_mm"),
    }


def _name(compound: Mapping[str, Any] | None) -> str | None:
    return text(compound["name"]) if compound and compound.get("name") else None


def _smallest(values: Any) -> float | None:
    return min((float(v) for v in values if v is not None), default=None)


def _largest(values: Any) -> float | None:
    return max((float(v) for v in values if v is not None), default=None)
