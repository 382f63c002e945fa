"""Causes that break several rules at once, for models with many findings: one cause is one change to the model."""

from __future__ import annotations

CAUSES: dict[str, tuple[str, tuple[str, ...]]] = {
    "cause-width": ("the width along the seam", ("rib-width", "rib-uniformity")),
    "cause-cover": (
        "the shape of the cover over and beside the seam",
        ("cover-thickness", "cover-uniformity", "clamp-land", "clamp-tilt", "clamp-reach"),
    ),
    "cause-sinking": (
        "what the cover meets while it sinks",
        ("sink-travel", "intended-stop", "guide-play", "second-collapse"),
    ),
    "cause-traps": (
        "the flash traps beside the seam",
        ("trap-room", "trap-side", "trap-corner", "trap-open-inner", "lip-gap", "traps-missing", "trap-fill",
         "trap-fill-inner", "trap-fill-outer"),
    ),
    "cause-support": ("what lies below the seam", ("support-offset", "wall-opening", "wall-to-rib", "overhang")),
    "cause-heat": (
        "the energy along the seam",
        ("energy-uniformity", "weld-start", "decomposition", "first-pass-rise", "corner-dose"),
    ),
    "cause-load": ("the load on the weld", ("weld-load", "weld-peel")),
}  # fmt: skip
"""Key -> how a sentence calls it, and the rules that one change to it would mend."""

CAUSE_OF: dict[str, str] = {rule: key for key, (_, rules) in CAUSES.items() for rule in rules}
