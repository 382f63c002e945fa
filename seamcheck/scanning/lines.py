"""What the lists of a scan show of one review, put together once: when it is stored."""

from __future__ import annotations

import json
from typing import Any

from seamcheck.scanning.digest import Digest

VALUES = (("rib_width", "least"), ("rib_width", "most"), ("trap_room", "least"), ("clamp_land", "least"),
          ("gap_max", "most"), ("transmission", "least"))  # fmt: skip
"""Quantities that the lists show, each with the end of its range that is nearest to harm."""

_OF_A_RIB = ("rib_width", "trap_room")
"""They say nothing of a joint without a rib."""


def line_of(rows: Digest) -> dict[str, Any]:
    """The row of the table ``lines`` that belongs to a review."""
    live = [finding for finding in rows.findings if not finding["waived"]]
    gravest = live[0] if live else {"rule": None, "message": None, "remedy": None}
    broken = dict.fromkeys(finding["rule"] for finding in live if finding["severity"] != "note")
    without_rib = {joint["joint"] for joint in rows.joints if joint["rib_on"] == "none"}
    ends: dict[tuple[str, str], list[float]] = {}
    for row in rows.quantities:
        if row["contour"] == "" and not (row["joint"] in without_rib and row["quantity"] in _OF_A_RIB):
            for end in ("least", "most"):
                if row[end] is not None:
                    ends.setdefault((row["quantity"], end), []).append(row[end])
    known = [joint["confidence"] for joint in rows.joints if joint["confidence"] is not None]
    values = [(min if end == "least" else max)(ends.get((key, end), ()), default=None) for key, end in VALUES]
    return {
        "rule": gravest["rule"],
        "message": gravest["message"],
        "remedy": gravest["remedy"],
        "broken": " ".join(broken),
        "kinds": " ".join(dict.fromkeys(joint["kind"] for joint in rows.joints)),
        "confidence": min(known, default=None),
        "measured": json.dumps(values),
    }
