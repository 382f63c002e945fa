"""Kinds of joint, as the document and every report name them."""

from __future__ import annotations

WELD_RIB, PLAIN_WALL, FLAT_LAP, STEPPED_LAP = "weld-rib", "plain-wall", "flat-lap", "stepped-lap"
TONGUE_GROOVE, LEDGE = "tongue-groove", "ledge"

KINDS: dict[str, str] = {
    WELD_RIB: "A ridge with a shoulder on one side or both stands between the parts and melts.",
    PLAIN_WALL: "The top of a wall meets a flat cover and melts; it has no shoulders.",
    FLAT_LAP: "Two flat faces lie on each other; there is no rib that could melt.",
    STEPPED_LAP: "Stepped edges of both parts overlap; there is no rib that could melt.",
    TONGUE_GROOVE: "A tongue of one part sits in a groove of the other.",
    LEDGE: "The cover lies on a ledge inside the wall of the base.",
}
"""Kind -> what it is, in a sentence."""

KIND_NAMES: dict[str, str] = {
    WELD_RIB: "a weld rib",
    PLAIN_WALL: "the top of a plain wall",
    FLAT_LAP: "a flat lap",
    STEPPED_LAP: "a stepped lap",
    TONGUE_GROOVE: "a tongue in a groove",
    LEDGE: "a ledge inside a wall",
}
"""Kind -> its name within a sentence."""
