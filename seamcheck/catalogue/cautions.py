"""What every output that a person reads says about its own worth, and about dangers of the process."""

CAUTIONS: tuple[str, ...] = (
    "This is a geometric and rule-of-thumb pre-check of CAD data. It is not an approval, not a weld-process "
    "qualification and not a substitute for trials, testing and the judgement of qualified persons.",
    "Laser sources for plastic welding are normally Class 4 in the sense of IEC 60825-1: direct and "
    "diffusely reflected radiation endangers eyes and skin and can ignite material; the radiation is mostly "
    "invisible. Welding belongs in an interlocked enclosure, with a laser-safety officer where required.",
    "Heating plastics releases fumes and possibly toxic decomposition products (PVC, fluoropolymers, POM, "
    "flame retardants): extraction is needed. Clamps and presses crush: machine safety rules apply.",
    "Pressure-tight, medical, food, fuel, battery and safety-related parts need a validated process and "
    "their own standards.",
    "Material and limit values are partly typical values or from memory; verify them against your own "
    "measurements. Local law, codes and licensed practice take precedence. No warranty.",
)

SHORT_CAUTION = (
    "A pre-check of CAD data, never an approval: it replaces no trial weld, no test and no qualified "
    "judgement. Welding lasers are normally Class 4 (IEC 60825-1), clamps crush, hot plastics give off "
    "fumes. Pressure-tight, medical and other safety-related parts need a validated process."
)

CAUTION_LINE = "A pre-check, never an approval. Class 4 lasers, clamps and fumes injure; trials decide."

MATERIAL_NOT_CHECKED = (
    "Whether the cover lets the laser's light pass, its colour, and whether both materials weld to each "
    "other: the settings name no materials."
)

NO_SCANNER_NOT_CHECKED = (
    "Beam angle, refraction and the spot of the laser: the settings give no scanner, so the light is taken as "
    "parallel to the beam direction."
)

NO_TOLERANCE_NOT_CHECKED = (
    "Shrinkage, warp, flatness and tolerances: the model is taken as drawn, at its nominal dimensions; the "
    "settings give no tolerances."
)

TOLERANCE_NOT_CHECKED = (
    "Shrinkage and warp, and tolerances of any quantity but those given in the settings: all others are "
    "judged "
    "at their nominal value only."
)

NOT_CHECKED: tuple[str, ...] = (
    "To ask the moulder: where are the gates of cover and base, and does a gate or its vestige lie over the seam or "
    "on the rib?",
    "To ask the moulder: do ejector marks, parting lines or weld lines lie over the seam or on the rib?",
    "To ask the moulder: is the cover smooth over the seam, or does a texture, an engraving or a label lie in the "
    "light's way?",
    "To ask the material's supplier: which colours and pigments do both parts have, and how much light of the weld's "
    "wavelength passes the cover in that colour? A colour in CAD proves nothing.",
    "To ask the moulder: how is moisture kept low until the weld (polyamides, polyesters, polycarbonate take it up), "
    "and how much glass fibre lies in the seam, in which direction?",
    "Clamp tool and nest themselves: their shape, force and shadow. Measured are the land, the free room above "
    "it, and what lies below the rib.",
    "Locating of cover and base: pins, play, lead-in.",
    "Which parts heat or stray light could harm, and whether flash may be seen where a trap is open: ask for both.",
)
"""Moulding and material as questions, since CAD can't tell."""
