"""Which findings a proposal can answer with geometry; only the proposal says whether the change fits."""

from __future__ import annotations

PROPOSED_FOR = frozenset(
    {
        "clamp-land", "clamp-tilt", "collapse-window", "contact-gap", "corner-radius", "cover-thickness",
        "cover-uniformity", "intended-stop", "lip-gap", "parts-overlap", "rib-height", "rib-missing", "rib-uniformity",
        "rib-width", "seam-open", "sink-travel", "slenderness", "transmission", "trap-corner", "trap-open-inner",
        "trap-room", "trap-side",
    }
)  # fmt: skip
"""Rules for which ``seamcheck propose`` tries a change of the parts; the rest is left with the reason."""
