"""What every output that a person reads says about its own worth, and about dangers of the process."""

from __future__ import annotations

from seamcheck.catalogue.message import Amount, Message
from seamcheck.catalogue.words import fill

CAUTION_TEXTS: dict[str, str] = {
    "caution.pre-check": "This is a geometric and rule-of-thumb pre-check of CAD data. It is not an approval, not a "
        "weld-process qualification and not a substitute for trials, testing and the judgement of qualified persons.",
    "caution.laser": "Laser sources for plastic welding are normally Class 4 in the sense of IEC 60825-1: direct and "
        "diffusely reflected radiation endangers eyes and skin and can ignite material; the radiation is mostly "
        "invisible. Welding belongs in an interlocked enclosure, with a laser-safety officer where required.",
    "caution.fumes-and-clamps": "Heating plastics releases fumes and possibly toxic decomposition products (PVC, "
        "fluoropolymers, POM, flame retardants): extraction is needed. Clamps and presses crush: machine safety rules "
        "apply.",
    "caution.critical-parts": "Pressure-tight, medical, food, fuel, battery and safety-related parts need a validated "
        "process and their own standards.",
    "caution.values": "Material and limit values are partly typical values or from memory; verify them against your "
        "own measurements. Local law, codes and licensed practice take precedence. No warranty.",
}  # fmt: skip
"""Key -> one of them, in the order in which they are told."""

CAUTIONS: tuple[str, ...] = tuple(CAUTION_TEXTS.values())

SHORT_CAUTION = (
    "A pre-check of CAD data, never an approval: it replaces no trial weld, no test and no qualified "
    "judgement. Welding lasers are normally Class 4 (IEC 60825-1), clamps crush, hot plastics give off "
    "fumes. Pressure-tight, medical and other safety-related parts need a validated process."
)

PRE_CHECK = (
    "A pre-check of CAD data by geometry and rules of thumb. It is not an approval, not a qualification of a "
    "weld process, and it replaces no trial."
)

CAUTION_LINE = "A pre-check, never an approval. Class 4 lasers, clamps and fumes injure; trials decide."

RULE_OFF, NO_RIB, SCAN_FIELD = "not-checked.rule-off", "not-checked.no-rib", "not-checked.scan-field"

REMARKS: dict[str, str] = {
    **CAUTION_TEXTS,
    "not-checked.nothing": "Everything: the model was not reviewed.",
    RULE_OFF: "{rule}: switched off in the settings.",
    "not-checked.travel-in-sections": "Free travel away from the seam: the cover was followed only within the "
        "sections, not over the whole interface.",
    NO_RIB: "Weld rib, flash traps and travel of {joint}: there is no weld rib to measure.",
    "not-checked.material": "Whether the cover transmits the laser light, its colour, and whether both materials weld "
        "to each other: the settings name no materials.",
    "not-checked.no-scanner": "Beam angle, refraction and the spot of the laser: the settings give no scanner, so the "
        "beam is taken as parallel.",
    SCAN_FIELD: "The seam of {joint} needs a round scan field of {circle}, or one of {length} x {width}.",
    "not-checked.no-tolerances": "Shrinkage, warp, flatness and tolerances: the model is taken as drawn, at its "
        "nominal dimensions; the settings give no tolerances.",
    "not-checked.other-tolerances": "Shrinkage and warp, and tolerances of any quantity but those given in the "
        "settings: all others are judged at their nominal value only.",
    "ask.gates": "To ask the moulder: where are the gates of cover and base, and does a gate or its vestige lie over "
        "the seam or on the rib?",
    "ask.ejectors": "To ask the moulder: do ejector marks, parting lines or weld lines lie over the seam or on the "
        "rib?",
    "ask.texture": "To ask the moulder: is the cover smooth over the seam, or does a texture, an engraving or a label "
        "lie in the beam path?",
    "ask.pigments": "To ask the material's supplier: which colours and pigments do both parts have, and how much light "
        "of the weld wavelength does the cover transmit in that colour? A colour in CAD proves nothing.",
    "ask.moisture": "To ask the moulder: how is moisture kept low until the weld (polyamides, polyesters, "
        "polycarbonate take it up), and how much glass fibre lies in the seam, in which direction?",
    "not-checked.clamp-tool": "Clamp tool and nest themselves: their shape, force and shadow. Measured are the clamp "
        "land, the free space above it and the support below the rib.",
    "not-checked.locating": "Locating of cover and base beyond play, depth, draft and lead-in of flanks that guide: "
        "how the cover is put on, and whether several locators bind one another.",
    "ask.heat-and-flash": "To ask the customer: which parts could heat or stray light damage, and may flash be visible "
        "where a trap is open?",
    "assumed.as-drawn": "The model is taken as drawn: nominal dimensions, no shrinkage, warp, tolerance or flatness.",
    "assumed.tolerances": "The model is taken as drawn; tolerances and flatness count where they are given, shrinkage "
        "and warp do not.",
    "assumed.sinks-straight": "The cover sinks straight along the beam, by the same planned collapse everywhere.",
    "assumed.parallel-light": "The beam is taken as parallel; refraction and the angle of a scanner are left out.",
    "assumed.load": "The load on the weld is estimated from a plate of constant thickness, hinged on the seam or "
        "clamped by it; it is no proof of strength and no design calculation. Pressure-tight parts need tests.",
    "not-checked.weld-strength": "Whether the weld holds the load is not evaluated: strength and weld factor ([load]) "
        "are not both given.",
    "assumed.scanner": "The beam comes from the scanner given, refracted at the cover's top with the index given; the "
        "cover's underside and scattering are left out.",
    "assumed.melt-halves": "Melt is shared half and half between the inner and the outer flash trap where one side is "
        "judged alone.",
    "assumed.colour": "Colour and transparency in CAD are hints and prove nothing about the material.",
}  # fmt: skip
"""Key -> what a review takes for granted, leaves out, or asks somebody else. Which of them stand in a document hangs
on its settings; that is decided once, in document/make.py."""


def remark(key: str, **args: Amount | str) -> Message:
    """One of them as a message, its {places} filled in."""
    return Message(key, args, fill(REMARKS[key], args))


ADDRESSEES: dict[str, str] = {
    "ask.gates": "moulder", "ask.ejectors": "moulder", "ask.texture": "moulder", "ask.moisture": "moulder",
    "ask.pigments": "supplier", "ask.heat-and-flash": "customer",
}  # fmt: skip
"""Question -> whom it is for."""

ALWAYS_ASSUMED = ("assumed.melt-halves", "assumed.colour")
ALWAYS_LEFT_OUT = (
    "ask.gates", "ask.ejectors", "ask.texture", "ask.pigments", "ask.moisture", "not-checked.clamp-tool",
    "not-checked.locating", "ask.heat-and-flash",
)  # fmt: skip
"""Moulding and material as questions, since CAD can't tell; what no setting changes."""
