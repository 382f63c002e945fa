"""The ``[material]`` part of a settings file, every entry explained and commented out."""

from __future__ import annotations

from seamcheck.catalogue.known import STANDINGS
from seamcheck.settings.material import ENTRIES, SECTIONS

HEAD = """\
# Material, light and process: all optional. Without them the review of the geometry stands alone.
# Every number can also be written as [value, low, high]; ranges of the results come from there.
# [material]
# cover = "PP"          # ISO 1043: symbol, and filler after a hyphen, such as PA6-GF30 or PBT-(GF20+MD10)
# base = "PP-GF30"
# plaques = [[1.0, 55.0], [2.0, 36.0]]   # measured on the cover's grade and colour: [thickness mm, percent]
"""

_SHARED = {
    "tolerance": "What is left out here is taken from [tolerance]: thickness from cover_thickness, width from "
    "rib_width, gap, travel from free_travel, and flatness less what is flattened.",
    "process": "A pressure left out here is taken from [clamp].",
}


def settings_template() -> str:
    """Return the lines that ``seamcheck settings`` adds for material, light and process."""
    lines = [HEAD]
    for section, title in SECTIONS.items():
        lines.append(f"# [material.{section}]   # {title}")
        if section in _SHARED:
            lines.append(f"# {_SHARED[section]}")
        for entry in ENTRIES:
            if entry.section != section:
                continue
            known = entry.default
            if known is None:
                lines.append(f"# {entry.key} =   # {entry.unit}: {entry.meaning}")
                continue
            span = f", {known.low:g} to {known.high:g}" if known.high > known.low else ""
            standing = STANDINGS[known.standing] + span
            lines.append(f"# {entry.key} = {known.value:g}   # {entry.unit}: {entry.meaning} ({standing})")
        lines.append("")
    lines.append("# [material.joints.j2]   # what differs for one joint, in the same shape\n")
    return "\n".join(lines)
