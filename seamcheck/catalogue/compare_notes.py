"""Sentences of a comparison of two reviews."""

from __future__ import annotations

COMPARE_NOTES: dict[str, str] = {
    "compare.refused-old": "The old model was not reviewed: {why}",
    "compare.refused-new": "The new model was not reviewed: {why}",
    "compare.versions": "The reviews were made by different versions of seamcheck ({old} and {new}), which may explain "
        "small differences. Review the old model again to be sure.",
    "compare.settings.one": "The reviews used different settings ({count:0} differs), so findings may have come or "
        "gone for that reason alone. Review both models with the same settings to compare like with like.",
    "compare.settings": "The reviews used different settings ({count:0} differ), so findings may have come or gone for "
        "that reason alone. Review both models with the same settings to compare like with like.",
    "compare.light-opposite": "The beam of seam {seam} comes from the opposite side now. If that is not meant, the "
        "model may be mirrored: check the export.",
    "compare.light-turned": "The beam of seam {seam} has turned by {angle:0 °}. If that is not meant, the model may be "
        "mirrored: check the export.",
    "compare.light-over": "In the model's coordinates the beam of seam {seam} comes from the opposite side now: the "
        "model was turned over or mirrored. The seam alone does not tell which; check lettering or another one-sided "
        "feature.",
    "compare.moved": "The whole seam has moved by x {x:.2 mm}, y {y:.2 mm}, z {z:.2 mm}: either the model was moved in "
        "its coordinates, or the seam within the model. The comparison leaves this motion out.",
    "compare.turned": "The whole seam is rotated by {angle:.2 °} and shifted: either the model was moved in its "
        "coordinates, or the seam within the model. The comparison leaves this motion out.",
    "compare.unlike": "No shift or rotation brings the whole old seam onto the new one: both are compared where they "
        "are.",
    "compare.plaques": "plaques measured",
    "compare.pair": "polymer pair",
    "compare.cover-28": "cover thickness that transmits 28 %",
    "compare.least": "transmission, least",
    "compare.most": "transmission, most",
    "compare.expansion": "expansion of the melt",
    "compare.melt-inner": "melt pressed out, inner side",
    "compare.melt-outer": "melt pressed out, outer side",
    "compare.trap-inner": "flash trap area, inner side",
    "compare.trap-outer": "flash trap area, outer side",
    "compare.trap_fill": "fill of both flash traps, most",
    "compare.trap_fill_inner": "fill of the inner flash trap, most",
    "compare.trap_fill_outer": "fill of the outer flash trap, most",
    "compare.lowest": "least collapse that works",
    "compare.highest": "largest collapse that works",
    "compare.window": "planned collapse within that window",
    "compare.share": "share of combinations within limits: {what:word}",
}  # fmt: skip
"""Key -> English template: what keeps two reviews from being alike, how the seam moved, values of materials."""
