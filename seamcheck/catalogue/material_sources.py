"""Where the numbers of materials and process come from: key -> English text (catalogue/say.py)."""

from __future__ import annotations

SOURCES: dict[str, str] = {
    # of a polymer's cells: the letter behind the number in data/polymers.toml
    "source.a": "Fundamentals of Materials Science and Engineering: An Integrated Approach, 3rd ed., Appendix E",
    "source.b": "Plastics Engineering (textbook), Table 1.8",
    "source.c": "mass-normalised heats of fusion after Thermal Analysis, Academic Press 1990, pp. 417-431",
    "source.d": "NIST Chemistry WebBook, poly(butylene terephthalate)",
    "source.e": "Heat of fusion and specific volume of PET and PBT (abstract)",
    "source.g": "table of solubility parameters after Encyclopedia of Polymer Technology and Treatise on Adhesion and "
        "Adhesives vol. 1 (1967)",
    "source.h": "Handbook of Condensed Matter and Materials Data, Table 3.3-6",
    "source.n1": "Appl. Opt. 59, 2337-2344 (2020), via the refractiveindex.info database (CC0)",
    "source.n2": "Appl. Opt. 54, F139-F143 (2015), via the refractiveindex.info database (CC0)",
    "source.n3": "Acta Phys. Pol. A 116, 585-587 (2009), via the refractiveindex.info database (CC0)",
    "source.t": "Plastics Engineering (textbook), Table 1.8, thermal conductivity",
    "source.w": "public table of thermal conductivities of polymers at 20 °C and 1 atm (web page)",
    "source.s": "Handbook of Polymer Solution Thermodynamics, Tait constants at zero pressure, at {temperature:0 °C}",
    "source.s.beyond": "Handbook of Polymer Solution Thermodynamics, Tait constants at zero pressure, extrapolated "
        "from {start:0}..{end:0 °C} to {temperature:0 °C}",
    # of a pair: the letter behind it in data/pairs.toml
    "pair.source.i": "table on a public answer page of a welding research institute on dissimilar plastics",
    "pair.source.b": "J. Appl. Polym. Sci. 133, 44167 (2016), laser transmission welding of PMMA and PBT with a PC "
        "film (abstract)",
    "pair.source.f": "Materials 15, 8062 (2022), partial solubility in PVDF/PMMA blends (abstract)",
    "pair.source.p": "common practice, no published source found",
    "pair.source.m": "from memory, unverified",
    "pair.source.own": "given in the settings",
    # what stands in where nothing is known
    "known.index": "no index known; plastics lie between 1.42 and 1.65",
    "known.index-unnamed": "no cover polymer named; plastics lie between 1.42 and 1.65",
    "known.heat-to-melt": "1.3 times the heat at 20 °C",
    "known.no-fusion": "an amorphous polymer has no heat of fusion",
    "known.no-crystals": "an amorphous polymer has no crystals",
    "known.crystallinity": "no crystallinity known",
    "known.conductivity": "no conductivity known; unfilled plastics lie between 0.15 and 0.3",
    "known.expansion-amorphous": "typical of amorphous polymers",
    "known.expansion": "typical of semi-crystalline polymers",
    "known.expansion-unnamed": "no polymer named; melts expand by 5 to 25 %",
    "known.diffusivity": "typical of unfilled plastics",
    "known.glass": "glass fibre",
    "known.mineral": "mineral filler",
    "known.filler": "glass and mineral filler",
    "known.window": "middle of the melt window that both share",
    "known.window-one": "middle of the melt window of {name}",
    "known.use": "losses, reflection at the base, light beside the rib",
    "known.air-loss": "free convection of air",
    "known.travel-reserve": "as sink-travel",
    "known.height-reserve": "as rib-height",
    # how a number was mixed or computed
    "mixed.density": "mixture of specific volumes; polymer {polymer:.2}",
    "mixed.conductivity": "mixed logarithmically by volume; polymer {polymer:.2}, filler {filler:.1}",
    "mixed.heat": "mixed by mass; polymer {polymer:.2}",
    "mixed.fusion": "crystallinity {share:.2} of {full:0 J/g}",
    "mixed.expansion": "{own}; fillers do not expand",
    "mixed.expansion-only": "fillers do not expand",
    "mixed.diffusivity": "conductivity {conductivity:.2 W/(m·K)} / (density {density:.2 g/cm³} · heat "
        "{heat:.2 J/(g·K)})",
}  # fmt: skip

WHY: dict[str, str] = {
    "pair.why.blends": "The melts do not mix by published work on blends.",
    "pair.why.compatibiliser": "Without a compatibiliser the melts do not mix.",
    "pair.why.weak-without-film": "Published welds without a film between were weak.",
    "pair.why.hardly-reported": "The melts mix by published work; welds are hardly reported.",
    "pair.why.melting-apart": "The melting points lie far apart.",
    "pair.why.very-hot": "The melts mix, but both need very high temperatures.",
    "pair.why.polyolefin": "Polyolefins do not bond to other polymers by melting alone.",
    "pair.why.pom": "Polyoxymethylene bonds to nothing but itself.",
    "pair.why.polyamide": "Polyamides do not bond to styrene polymers or polycarbonate by melting alone.",
}  # fmt: skip
"""What is known about a pair of polymers; keys without 'pair.why.' stand in data/pairs.toml."""
