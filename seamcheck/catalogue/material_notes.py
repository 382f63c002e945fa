"""What is said about light, heat and melt beside findings: key -> English template (catalogue/say.py)."""

from __future__ import annotations

MATERIAL_NOTES: dict[str, str] = {
    "material.caution.orders": "Light, melt, energy and time are orders of magnitude from typical values; they are no "
        "process setting and no approval. A trial weld with the actual grades is required.",
    "material.caution.laser": "Laser sources for plastic welding are normally Class 4 (IEC 60825-1): direct and "
        "scattered light endangers eyes and skin. Clamps crush. Heated plastics give off fumes; extraction is needed.",
    "material.caution.critical": "Pressure-tight, medical, food, fuel, battery and safety-related parts need a "
        "validated process.",
    "material.no-rib": "There is no weld rib between the parts: no melt, collapse window or energy.",
    "material.carbon": "The cover, {cover}, holds carbon, which absorbs the light: it can't be welded through.",
    "material.fitted": "Melt and flash traps at other collapses than the planned one come from simple sections fitted "
        "to the measured areas: straight flanks, flat floors, upright walls.",
    "material.divides": "That the melt divides evenly to both sides is an assumption; unequal drafts and gaps shift "
        "it.",
    "material.expansion": "The expansion is temporary: it counts for the traps while the melt is hot.",
    "material.unmeasured": "{unknown:.1 mm} of {length:.1 mm} of the seam were not measured; there the mean of the "
        "rest is taken for energy and force.",
    "material.orders": "Orders of magnitude. Energies are lower bounds without conduction; times come from the heat "
        "model. No process setting is recommended.",
    "material.passes": "One pass goes once round all paths; jumps between them are not counted.",
    "material.spot-narrow": "The spot ({spot:.2 mm}) is narrower than the rib ({widest:.2 mm} at its widest): its "
        "edges may stay cold.",
    "material.spot-wide": "Of a spot of {spot:.2 mm} about {share:0 %} of the light falls beside the rib where it is "
        "narrowest ({narrowest:.2 mm}), if it is uniform; energies and times count what falls on the rib.",
    "material.one-plaque": "One plaque only: the surface term comes from the refractive index. A second plaque of "
        "another thickness would show whether that is right.",
    "material.scatters": "The cover scatters: at other thicknesses than the plaque's the value lies in the middle of "
        "an exponential and a diffuse curve, and the range reaches over both.",
    "material.no-loss": "The thicker plaques transmit as much as the thin ones within the scatter: no loss in the "
        "bulk.",
    "material.start": "Extrapolated to zero thickness the plaques transmit {start:0 %}, more than the surfaces leave "
        "({surface:0 %}): the plaques may differ in grade, colour or surface, or scatter strongly. Values below the "
        "thinnest plaque are then too high.",
    "material.plaque-off": "The {plaque:.2 mm} plaque is off the fitted line by {off:0 %}.",
    "material.plaques": "Plaques must be of the same grade, colour, filler and moulding conditions, measured at the "
        "weld wavelength with an integrating sphere (total transmission). Luminous transmittance is no substitute.",
    "material.wets": "In the joint the melt wets the underside and one reflection disappears: the value is about 4 to "
        "6 % on the safe side.",
    "material.no-wavelength": "The wavelength of the plaques is not given (material.light.wavelength).",
    "material.class": "The cover, {cover}, is {kind:word}.",
    "material.no-flatness": "Flatness is not given (tolerance.flatness_cover, flatness_rib): parts as drawn.",
    "material.nothing-flat": "The clamp is taken to press nothing flat.",
    "material.no-gap": "No gap was measured: what closes it is not known.",
    "material.no-traps": "Melt or trap areas were measured nowhere: what the traps hold is not known.",
    "material.no-travel": "Free travel is not known: {why:reasons}.",
    "material.travel-unknown": "Free travel was not measured.",
    # what limits the collapse
    "cause.gap": "worst gap {gap:.3 mm} over the smallest, flatness {flatness:.3 mm}, least local collapse "
        "{reserve:.2 mm}",
    "cause.traps": "flash traps full",
    "cause.travel": "free travel {travel:.3 mm} less {reserve:.2 mm}",
    "cause.height": "rib height less {reserve:.2 mm}",
    "cause.both": "highest: {high}; lowest: {low}",
    # the heat model
    "heat.wanted": "the slowest place has to reach {wanted:0 °C}",
    "heat.reached": "at the slowest place the interface reaches {comes:0 °C} of the {wanted:0 °C} that it needs",
    "heat.never": "The seam does not melt: {why}. It takes at least {power:0 W}.",
    "heat.long": "The seam does not melt: {why}. It would take longer than {time:0 s}.",
    "heat.grids": "The two grids of the heat model differ by {error:0 %} in the weld time ({rows:.3 mm} rows; "
        "extrapolated).",
    "heat.not-reached": "The planned collapse is not reached within {time:0 s}.",
    "heat.comes": "the interface reaches {comes:0 °C} of the {wanted:0 °C} that it needs",
    "heat.one-pass": "One pass at {speed:0 mm/s}: line energy {energy:.2 J/mm}.",
    "heat.least-place": "The seam does not melt at the place that gets least: {why}.",
    "heat.peak": "{peak:0 °C}",
    "heat.no-materials": "Weld time not evaluated: the materials of cover and base are not both named.",
    "heat.no-plaques": "Weld time not evaluated: the cover's transmission is not measured (material.plaques).",
    "heat.no-number": "Single pass not evaluated: {setting} is not given.",
    "heat.no-temperature": "Weld time not evaluated: no temperature of the melt is known.",
    "heat.no-decomposition": "Decomposition not evaluated: material.process.decomposition is not given.",
    "heat.with": "{inputs:list}",
    "heat.with.rise": "from {room:0} to {melt:0 °C} (ΔT {rise:0 K})",
    "heat.with.material": "{name}: ρ {density:.2 g/cm³}, cp {heat:.2 J/(g·K)}, k {conductivity:.2 W/(m·K)}, fusion "
        "{fusion:0 J/g}, begins to flow at {flows:0 °C}",
    "heat.with.light": "η {use:.2}, transmission {least:0} to {most:0 %}, absorption depth {depth:.2 mm}",
    "heat.with.losses": "losses {air:0 W/(m²·K)} to air, {tool:0 W/(m²·K)} to the tool",
    "heat.with.losses-unknown": "losses {air:0 W/(m²·K)} to air, to the tool as to air (material.process.tool_loss is "
        "not given)",
    # light
    "light.below": "below {percent:0 %}",
    "light.burns": "below it the cover's surface is more prone to burn",
    "light.comfortable": "common practice, no published source",
    "light.reach": "{times:.1} times the thickest plaque; assumption of this project",
    # pairs of polymers
    "pair.is.same polymer": "Both parts are of the same polymer. Trial weld required.",
    "pair.is.common component": "One polymer is a component of the other. Trial weld required.",
    "pair.is.listed as weldable": "The pair is listed as weldable. Trial weld required.",
    "pair.is.some grades": "The pair is listed as weldable in some grades. Trial weld required.",
    "pair.is.some reports": "The pair is listed with some reports of successful welds. Trial weld required.",
    "pair.is.conditional": "The pair is listed as weldable under conditions. Trial weld required.",
    "pair.is.estimate: check by trial": "The pair is not listed; the estimate finds nothing clear against it. Trial "
        "weld required.",
    "pair.is.estimate: unlikely": "The estimate speaks against the pair. Trial weld required.",
    "pair.is.not weldable": "The pair is listed as not weldable. Trial weld required.",
    "pair.is.unknown": "Too little is known for an estimate. Trial weld required.",
    "pair.limit.estimate": "The estimate can reject a pair, it can't approve one: long chains (1000 units) mix fully "
        "only below a difference of about 0.29 MPa^0.5, which is less than the scatter of published solubility "
        "parameters (0.5 to 1, from memory).",
    "pair.limit.wrong": "Known failures: PE with PP and PS with PMMA look good and do not weld reliably; PC with PMMA "
        "looks doubtful and is welded in some grades.",
    "pair.limit.grades": "Colour, fillers, moisture, flow and additives of the grades decide as well and are not in "
        "it.",
    "pair.same": "Colour, fillers, flow and moisture of the two grades still decide.",
    "pair.own": "Your own list has this pair.",
    "pair.blend": "How much of it is in the blend decides.",
    "pair.no-solubility": "No solubility parameter is known for at least one of them.",
    "pair.difference": "Difference of the solubility parameters {difference:.1} MPa^0.5 (estimate: up to 2.5 by "
        "trial).",
    "pair.share": "The melt windows overlap by {overlap:0 K}.",
    "pair.miss": "The melt windows are {gap:0 K} apart.",
}  # fmt: skip

CLASS_WORDS: dict[str, str] = {
    "class-filled": "filled with glass, mineral or carbon",
    "class-semi-crystalline": "semi-crystalline and unfilled",
    "class-amorphous": "amorphous and unfilled",
}
"""Class of a cover -> what it is."""
