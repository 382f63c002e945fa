"""Every rule of seamcheck, declared once: bounds, harm, remedy and the standing of the number.

Left out on purpose: the width of the rib's root against the wall behind it. That rule keeps sink marks off
the visible side where a rib stands on the face of a plate. A weld rib stands on the end of a wall, or on a
floor; on a wall's end there is no visible side behind it, and over a floor ``wall_width`` is not measured. A
limit on ``rib_width_root / wall_width`` would therefore flag sound ribs and miss the ones that sink.
"""

from __future__ import annotations

from msgspec.structs import replace

from seamcheck.catalogue.interface_rules import INTERFACE_RULES
from seamcheck.catalogue.material_rules import MATERIAL_RULES
from seamcheck.catalogue.rule import ATTENTION, MUST_FIX, NOTE, Bound, Check, Rule
from seamcheck.catalogue.setting import Setting

_NARROW = "A narrow rib welds weakly, and the light falls beside it into the flash traps."
_WIDE = "A wide rib needs more power, and the melt in its middle is not squeezed out."
_NO_DRAFT = "A flank without draft releases badly from the mould and may be scored."
_MUCH_DRAFT = "A large draft widens the weld as the rib melts down."
_LIP_SHUT = "Too little: the lip stops the cover before the rib has melted down."
_LIP_WIDE = "Too much: flash escapes over the lip."
_THIN = "A thin cover bends under the clamp and burns through."
_THICK = "A thick cover absorbs and scatters the light: little energy arrives, in a widened spot."
_APART = "Across a gap no heat reaches the cover: the rib burns and does not weld."
_OVERLAP = "Where they overlap, the cover comes to rest first, and the rest of the seam stays open."


def _both_sides(column: str, lower: Bound | None = None, upper: Bound | None = None) -> tuple[Check, ...]:
    """One check for the inner and one for the outer side; SIDE in the texts becomes its name."""
    return tuple(
        Check(f"{column}_{side}", lower=_on_side(lower, side), upper=_on_side(upper, side))
        for side in ("inner", "outer")
    )


def _on_side(bound: Bound | None, side: str) -> Bound | None:
    if bound is None:
        return None
    texts = {name: getattr(bound, name).replace("SIDE", side) for name in ("says", "remedy", "below_zero", "change")}
    lengths = tuple((name, formula.replace("SIDE", side)) for name, formula in bound.lengths)
    return replace(bound, lengths=lengths, **texts)


RIB = (
    Rule(
        "rib-width", "Rib width", MUST_FIX, "outside",
        "The rib's width at the contact plane lies between min and max, better below the attention bound.",
        f"{_NARROW} {_WIDE}", "common practice",
        "0.6 to 2.5 mm, attention above 2.0 mm, which a public design guideline for laser-welded ribs calls typical; "
        "one for ribs melted by light that falls on them directly names 0.5 to 3.0 mm. The lower bound itself is from "
        "memory: set your own.",
        (
            Setting("min", 0.6, "mm", "smallest width of the rib at the contact plane"),
            Setting("attention", 2.0, "mm", "width of the rib above which a finding is attention"),
            Setting("max", 2.5, "mm", "largest width of the rib at the contact plane"),
        ),
        (
            Check(
                "rib_width", substitute="rib_width_mid", substitute_reason="rounded-top",
                lower=Bound(
                    "min", "The rib is {value} wide; it should be at least {limit}.", "Widen the rib[ by {by}].",
                    harm=_NARROW,
                ),
                upper=Bound(
                    "max", "The rib is {value} wide; it should be at most {limit}.",
                    "Narrow the rib[ by {by}], or weld two narrow ribs side by side.", harm=_WIDE,
                    attention="attention",
                ),
            ),
        ),
    ),
    Rule(
        "rib-uniformity", "Uniformity of the rib width", MUST_FIX, "uniformity-share",
        "The rib's width stays near the median of the whole seam.",
        "The rib melts unevenly: where it is wider the weld stays cold, where it is narrower it burns.", "assumption",
        "20 % of the median, attention from 10 % on; where the energy along the seam is known, that says more.",
        (
            Setting(
                "attention", 0.10, "1",
                "deviation from the seam's median, as a share of it, above which a finding is attention", 0.0, 1.0,
            ),
            Setting(
                "share", 0.20, "1", "largest deviation from the seam's median rib width, as a share of it", 0.0, 1.0,
            ),
        ),
        (
            Check(
                "rib_width", substitute="rib_width_mid", substitute_reason="rounded-top",
                lower=Bound(
                    "median * (1 - share)",
                    "The rib is {value} wide against a median of {median}; the limit is {limit}.",
                    "Widen the rib here[ by {by}, {each} on each flank], to the width of the rest of the seam.",
                    change="median - value", attention="median * (1 - attention)", stands_in_for=("energy_surplus",),
                    lengths=(("each", "(median - value) / 2"),),
                ),
                upper=Bound(
                    "median * (1 + share)",
                    "The rib is {value} wide against a median of {median}; the limit is {limit}.",
                    "Narrow the rib here[ by {by}, {each} on each flank], to the width of the rest of the seam.",
                    change="value - median", attention="median * (1 + attention)", stands_in_for=("energy_surplus",),
                    lengths=(("each", "(value - median) / 2"),),
                ),
            ),
        ),
    ),
    Rule(
        "rib-height", "Rib height", MUST_FIX, "below",
        "The rib stands higher above the trap floor than the planned collapse plus a reserve.",
        "When the rib has melted down by the collapse, the cover sits on the floor of the flash trap: it stops before "
        "the seam is fused, and the melt has nowhere to go.",
        "assumption",
        "0.2 mm on top of the planned collapse; a public design guideline makes grooves twice as high as the collapse, "
        "for the flash.",
        (Setting("reserve", 0.2, "mm", "rib height on top of the planned collapse"),),
        (
            Check(
                "rib_height",
                lower=Bound(
                    "collapse + reserve",
                    "The rib stands {value} above the trap floor; with a collapse of {collapse} it should be at least "
                    "{limit}.",
                    "Raise the rib or lower the trap floor[ by {by}].",
                ),
            ),
        ),
    ),
    Rule(
        "slenderness", "Slenderness of the rib", ATTENTION, "above",
        "The rib is not much higher than it is wide at half its height.",
        "A slender rib bends sideways when it is soft, and is hard to mould full.", "common practice",
        "1.5; above 2.0 a change is needed in any case; partly from memory.",
        (
            Setting("max", 1.5, "1", "largest rib height divided by the width at half height"),
            Setting("grave", 2.0, "1", "slenderness above which a change is needed in any case"),
        ),
        (
            Check(
                "slenderness",
                upper=Bound(
                    "max",
                    "The rib is {value} times as high as it is wide at half height; it should be at most {limit} "
                    "times.",
                    "Make the rib lower or its trap shallower[ by {by}], or widen the rib.",
                    change="(value - limit) * rib_width_mid", change_unit="mm", grave="grave",
                    grave_says="Above {grave} a change is needed in any case.",
                ),
            ),
        ),
    ),
    Rule(
        "flank-draft", "Draft of the rib's flanks", NOTE, "outside", "The rib's flanks have a small draft.",
        f"{_NO_DRAFT} {_MUCH_DRAFT}", "common practice", "0.5° to 2° is usual; no draft and more than 3° are reported.",
        (
            Setting("min", 0.1, "°", "draft below which a flank counts as having none", -90.0, 90.0),
            Setting("max", 3.0, "°", "largest draft of a flank", -90.0, 90.0),
        ),
        _both_sides(
            "draft",
            lower=Bound(
                "min", "The rib's SIDE flank has a draft of {value}.", "Give the SIDE flank 0.5° to 2° of draft.",
                harm=_NO_DRAFT, below_zero="The rib's SIDE flank is undercut: it leans in by {size} below its top.",
            ),
            upper=Bound(
                "max",
                "The rib's SIDE flank has a draft of {value}; more than {limit} makes the weld wider as it melts down.",
                "Reduce the draft of the SIDE flank[ by {by}].", harm=_MUCH_DRAFT,
            ),
        ),
    ),
    Rule(
        "corner-radius", "Corner radius of the seam", ATTENTION, "below",
        "The corner radius of the mid-line is at least so many rib widths, and at least min.",
        "In a tight corner the inner side overheats, its flash trap is small, and the spot slows down.",
        "common practice", "Two rib widths, at least 3 mm; partly from memory.",
        (
            Setting("widths", 2.0, "1", "smallest corner radius of the mid-line, in rib widths"),
            Setting("min", 3.0, "mm", "smallest corner radius of the mid-line in any case"),
        ),
        (
            Check(
                "corner_radius", value_for_reason={"corner": 0.0},
                lower=Bound(
                    "larger(widths * rib_width, min)",
                    "The seam has a corner radius of {value}; it should be at least {limit}.",
                    "Enlarge the corner radius of the mid-line[ by {by}].",
                ),
            ),
        ),
    ),
)  # fmt: skip

TRAPS = (
    Rule(
        "trap-room", "Flash trap volume", MUST_FIX, "below",
        "Both flash traps together hold the melt of the planned collapse, with some to spare.",
        "The melt fills the traps before the collapse is complete: it holds the cover up, or comes out as flash.",
        "assumption", "1.2 times the melt area, for the melt's expansion and uneven sides.",
        (Setting("min", 1.2, "1", "smallest area of both flash traps together, divided by the melt area"),),
        (
            Check(
                "trap_room", accepted_reasons={"bare-sides": "the melt comes out beside the rib, which trap-side says"},
                lower=Bound(
                    "min",
                    "Both flash traps together hold {value} times the melt; it should be at least {limit} times.",
                    "Widen each flash trap[ by {by} at its present depth], deepen both[ by {deeper}], or plan less "
                    "collapse.",
                    change="(limit - value) * melt_area / (rib_height_inner + rib_height_outer - 2 * collapse)",
                    change_unit="mm",
                    lengths=(
                        (
                            "deeper",
                            "(limit - value) * melt_area / (trap_area_inner / (rib_height_inner - collapse) + "
                            "trap_area_outer / (rib_height_outer - collapse))",
                        ),
                    ),
                ),
            ),
        ),
    ),
    Rule(
        "trap-side", "Volume of one flash trap", ATTENTION, "below",
        "The flash trap of each side holds its half of the melt.",
        "Melt comes out on this side, or is pushed across to the other.", "assumption",
        "Half of the melt to each side, without reserve.",
        (Setting("min", 1.0, "1", "smallest area of one flash trap, divided by half the melt area"),),
        _both_sides(
            "trap_room",
            lower=Bound(
                "min",
                "The SIDE flash trap holds {value} times its half of the melt; it should be at least {limit} times.",
                "Widen the SIDE flash trap[ by {by} at its present depth][ ({width} wide now, on average)], or deepen "
                "it[ by {deeper}].",
                change="(limit - value) * melt_area / 2 / (rib_height_SIDE - collapse)", change_unit="mm",
                lengths=(
                    ("width", "trap_area_SIDE / (rib_height_SIDE - collapse)"),
                    ("deeper", "(limit / value - 1) * (rib_height_SIDE - collapse)"),
                ),
            ),
        ),
    ),
    Rule(
        "trap-corner", "Flash trap volume in corners", ATTENTION, "below",
        "On the inside of a corner, where it is shorter, the flash trap still holds its half of the melt.",
        "On the inside of the corner the melt has nowhere to go: it comes out there, or holds the cover up.",
        "assumption",
        "Half of the melt to each side, without reserve. Where trap-side is broken as well, only that is reported.",
        (Setting("min", 1.0, "1", "smallest volume of one flash trap in a corner, divided by half the melt"),),
        tuple(
            Check(
                f"trap_corner_{side}",
                lower=Bound(
                    "min",
                    f"In this corner the {side} flash trap, on the inside of the bend, holds {{value}} times its half "
                    "of the melt; it should be at least {limit} times.",
                    f"Give the corner a larger radius, or widen the {side} flash trap there[ by {{by}} at least].",
                    change=f"(limit / value - 1) * trap_room_{side} * melt_area / 2 / (rib_height_{side} - collapse)",
                    change_unit="mm",
                ),
            )
            for side in ("inner", "outer")
        ),
    ),
    Rule(
        "trap-open-inner", "Inner flash trap open", ATTENTION, "above",
        "A wall or lip closes the flash trap on the inner side.",
        "Melt and loose particles reach the inside of the housing: electronics, membranes, channels.",
        "common practice", "Closed on the inner side.", (),
        (
            Check(
                "trap_open_inner",
                upper=Bound(
                    "0", "Nothing closes the inner flash trap.",
                    "Close the inner flash trap with a wall or lip[ whose top stands {low} to {high} above the "
                    "trap's floor: after the collapse it leaves {least} to {most} to the other part].",
                ),
            ),
        ),
    ),
    Rule(
        "lip-gap", "Gap at the lip of a flash trap", ATTENTION, "outside",
        "The lip gap left after the collapse lies between min and max.", f"{_LIP_SHUT} {_LIP_WIDE}", "from memory",
        "0.1 to 0.3 mm after the collapse.",
        (
            Setting("min", 0.1, "mm", "smallest gap at a lip after the collapse", -10.0),
            Setting("max", 0.3, "mm", "largest gap at a lip after the collapse", -10.0),
        ),
        _both_sides(
            "lip_gap",
            lower=Bound(
                "min", "The SIDE lip gap is {value} after the collapse; it should be at least {limit}.",
                "Cut the SIDE lip back[ by {by}].", harm=_LIP_SHUT,
                below_zero="The SIDE lip meets the other part {size} before the collapse is complete; {limit} should "
                "stay open after it.",
            ),
            upper=Bound(
                "max", "The SIDE lip gap is {value} after the collapse; it should be at most {limit}.",
                "Reduce the SIDE lip gap[ by {by}].", harm=_LIP_WIDE,
            ),
        ),
    ),
)  # fmt: skip

COVER = (
    Rule(
        "clamp-land", "Clamp land", MUST_FIX, "below", "Beside the beam the cover has a flat, free land for the clamp.",
        "The clamp has nothing to press on, or presses unevenly: the cover lifts and the seam leaks.",
        "common practice", "1.0 mm, no published source; 2.0 mm is comfortable (from memory).",
        (Setting("min", 1.0, "mm", "smallest width of the land"),),
        (
            Check(
                "clamp_land", value_for_reason={"no-land": 0.0},
                accepted_reasons={"no-edge": "the cover continues on both sides; clamp-reach looks for clamp area"},
                lower=Bound(
                    "min", "The clamp land is {value} wide; it should be at least {limit}.",
                    "Widen the flat of the cover beside the seam[ by {by}]: move the edge, step or rounding that ends "
                    "it, or remove what stands on it.",
                ),
            ),
        ),
        for_flat_overlap=True,
    ),
    Rule(
        "clamp-tilt", "Tilt of the clamp land", ATTENTION, "above", "The clamp land lies square to the beam.",
        "The clamp pushes the cover sideways and presses on an edge.", "assumption", "2° in the section.",
        (Setting("max", 2.0, "°", "largest tilt of the land", 0.0, 90.0),),
        (
            Check(
                "clamp_tilt",
                upper=Bound(
                    "max", "The clamp land is tilted by {value}; it should be at most {limit}.",
                    "Make the land square to the beam, or shape the clamp to the cover there.",
                ),
            ),
        ),
        for_flat_overlap=True,
    ),
    Rule(
        "cover-thickness", "Thickness of the cover over the rib", MUST_FIX, "outside",
        "The cover is between min and max thick over the whole width of the rib.", f"{_THIN} {_THICK}", "from memory",
        "0.8 to 3.0 mm; about 3 mm is named in a public design guideline for semi-crystalline plastics, the lower "
        "bound is from memory. Covers with glass fibre must be thinner, clear amorphous ones may be thicker. The upper "
        "bound stands in for a measured transmission, and is not judged where the settings give plaques or name the "
        "cover.",
        (
            Setting("min", 0.8, "mm", "smallest thickness of the cover over the rib"),
            Setting("max", 3.0, "mm", "largest thickness of the cover over the rib"),
        ),
        (
            Check(
                "cover_thickness_min", "cover_thickness",
                accepted_reasons={"hole": "reported by cover-hole", "no-cover": "reported by cover-hole"},
                lower=Bound(
                    "min", "The cover is {value} thick over the rib; it should be at least {limit}.",
                    "Thicken the cover over the rib[ by {by}].", harm=_THIN,
                ),
            ),
            Check(
                "cover_thickness_max", "cover_thickness",
                accepted_reasons={"hole": "reported by cover-hole", "no-cover": "reported by cover-hole"},
                upper=Bound(
                    "max", "The cover is {value} thick over the rib; it should be at most {limit}.",
                    "Thin the cover over the rib[ by {by}], with a recess along the seam in the cover's top.",
                    harm=_THICK, stands_in_for=("transmission", "thickness_of_class"),
                ),
            ),
        ),
        for_flat_overlap=True,
    ),
    Rule(
        "cover-uniformity", "Uniformity of the cover thickness", MUST_FIX, "uniformity",
        "The largest and the smallest thickness of the cover over the rib differ by no more than max along the seam.",
        "Transmission drops steeply with thickness: the seam burns where the cover is thin and stays cold where it is "
        "thick.",
        "assumption",
        "0.3 mm between the thinnest and the thickest place. A finding marks what lies outside the span of that width "
        "that holds most of the seam. Not judged where the energy along the seam is known (rule energy-uniformity).",
        (Setting("max", 0.3, "mm", "largest difference of the cover's thickness along the seam"),),
        (
            Check(
                "cover_thickness_min", "cover_thickness",
                lower=Bound(
                    "main_most - max",
                    "The cover is {value} thick over the rib against a median of {median}; it should be at least "
                    "{limit}.",
                    "Thicken the cover here[ by {by}] to match the rest of the seam.", change="median - value",
                    stands_in_for=("energy_surplus",),
                ),
            ),
            Check(
                "cover_thickness_max", "cover_thickness",
                upper=Bound(
                    "main_least + max",
                    "The cover is {value} thick over the rib against a median of {median}; it should be at most "
                    "{limit}.",
                    "Thin the cover here[ by {by}] to match the rest of the seam.", change="value - median",
                    stands_in_for=("energy_surplus",),
                ),
            ),
        ),
        for_flat_overlap=True,
    ),
    Rule(
        "cover-hole", "Hole in the cover over the rib", MUST_FIX, "flag", "The cover lies over the rib everywhere.",
        "There is nothing to weld to: the seam is open here.", "common practice", "Follows from the task; no number.",
        quantity="cover_thickness", says="There is no cover over[ {length} of] the rib here ({reason:word}).",
        remedy="Close the hole, extend the cover over the rib, or route the seam round it.",
        for_flat_overlap=True,
    ),
    Rule(
        "beam-path", "Beam path", MUST_FIX, "below",
        "The beam reaches the rib in its whole width, through one thickness of cover and nothing else.",
        "An obstacle in the beam absorbs it and burns, and the rib stays cold in the shadow.", "assumption",
        "The whole width of the spot, or of the rib where no spot is given; parallel beam.",
        (Setting("min", 1.0, "1", "smallest share of the beam's width that arrives", 0.0, 1.0),),
        (
            Check(
                "beam_clear", accepted_reasons={"no-cover": "reported by cover-hole", "hole": "reported by cover-hole"},
                lower=Bound(
                    "min", "Only {percent} of the beam's width reaches the rib.",
                    "Clear the beam path over the rib, so that it passes through one thickness of the cover and "
                    "nothing else.",
                ),
            ),
        ),
        for_flat_overlap=True,
    ),
)  # fmt: skip

CONTACT = (
    Rule(
        "contact-gap", "Gap between rib and opposite part", MUST_FIX, "size-above",
        "As drawn, gap and overlap of rib and opposite part stay within a share of the planned collapse over the whole "
        "width of the rib, or within flat for a lap without collapse.",
        f"{_APART} {_OVERLAP}", "common practice",
        "Half of the collapse, attention above 0.10 mm; a lap has no collapse that closes a gap, its limit is 0.10 mm. "
        "Published: contour-welded laps bridged 0.20 mm (PC), 0.40 mm (PA6) and 0.25 mm (PA6-GF30), Polym. Eng. Sci. "
        "2011, doi 10.1002/pen.21943; by thermal expansion alone PVC bridged 0.025 mm, doi 10.1115/1.2769731.",
        (
            Setting("attention", 0.1, "mm", "gap or overlap as drawn above which a finding is attention"),
            Setting("share", 0.5, "1", "largest gap and largest overlap as drawn, in planned collapses"),
            Setting("flat", 0.1, "mm", "largest gap of a flat or stepped lap, which has no collapse"),
        ),
        (
            Check(
                "gap_min", "gap",
                accepted_reasons={
                    "hole": "reported by cover-hole",
                    "no-cover": "reported by cover-hole",
                    "no-opposite": "reported once, as a gap",
                },
                lower=Bound(
                    "-share * collapse",
                    "Rib and opposite part overlap by {size} as drawn; it should be at most {size_limit}.",
                    "Lower the rib here[ by {by}], or move the parts to their assembled position.", change="-value",
                    harm=_OVERLAP, attention="-attention", on_flat="-flat",
                ),
            ),
            Check(
                "gap_max", "gap", failing_reasons={"no-opposite": "No opposite part faces the rib here."},
                accepted_reasons={"hole": "reported by cover-hole", "no-cover": "reported by cover-hole"},
                upper=Bound(
                    "share * collapse",
                    "The gap between rib and opposite part is {value}; it should be at most {limit}.",
                    "Close the gap here[ by {by}].", change="value", harm=_APART, attention="attention", on_flat="flat",
                ),
            ),
        ),
        for_flat_overlap=True,
    ),
    Rule(
        "parts-outside", "Parts outside their limits", ATTENTION, "above",
        "With the tolerances given, nearly all parts keep every limit that must be kept, and some collapse suits them.",
        "Some of the parts leak, or are never fused, though the drawing is sound.", "common practice",
        "0.27 %, what a centred process with Cpk 1 leaves outside. Judged only where the settings give tolerances, and "
        "reported where no other finding reports what breaks.",
        (Setting("max", 0.27, "%", "largest share of parts outside their limits", 0.0, 100.0),),
        quantity="parts_outside", says="{percent} of parts break limits that hold as drawn: {what:rules}.",
        remedy="Give these dimensions more reserve, or tighten their tolerances.", for_flat_overlap=True,
    ),
    Rule(
        "model-doubt", "Damaged model", ATTENTION, "flag",
        "The file was read whole: nothing in it is lost, duplicated or left open.",
        "What was lost may be what breaks a limit: a review of a damaged model is no proof.", "assumption",
        "Any sign of damage counts.", (), quantity="rib", says="The model shows signs of damage: {what}",
        remedy="Export the model again and review that file.", for_flat_overlap=True,
    ),
    Rule(
        "traps-missing", "No flash traps", ATTENTION, "flag", "Flash traps lie beside the rib or wall that melts.",
        "The melt leaves the joint on both sides: flash shows outside, and particles can come loose inside.",
        "common practice", "A plain wall has none by design; where flash may show, it can do without.", (),
        quantity="rib", says="The top of a plain wall melts with open sides: nothing beside it holds the flash.",
        remedy="Accept visible flash, or give the wall a weld rib with a flash trap on each side.",
    ),
    Rule(
        "joint-left-out", "Joint not reviewed", ATTENTION, "flag", "Every joint of the model was reviewed.",
        "What was not reviewed can leak: the review of the other joints says nothing about it.", "assumption",
        "A rib under a cover of its own counts from a fifth of the longest seam's length on.", (), quantity="rib",
        says="{what}.",
        remedy="Name its cover and base and review it by itself; where a band could not be traced, give it even sides.",
        for_flat_overlap=True,
    ),
    Rule(
        "drawn-welded", "Drawn in the welded position", NOTE, "flag",
        "Along the whole seam the parts overlap as drawn by the planned collapse.",
        "None: the model shows the parts after welding. All values are those of the parts as moulded.", "assumption",
        "The overlap counts as the collapse within ±0.05 mm along the whole seam.",
        (Setting("within", 0.05, "mm", "how far the overlap may differ from the planned collapse"),), quantity="gap",
        says="The parts are drawn in the welded position: they overlap by about the planned collapse of {collapse} "
        "along the whole seam. The gap is not judged.",
        remedy="Nothing to change if the model is meant to show the welded position.",
    ),
    Rule(
        "sink-travel", "Free travel of the cover", MUST_FIX, "below",
        "From initial contact the cover can sink by the planned collapse plus a reserve before it touches anything but "
        "the rib.",
        "The cover comes to rest on something else before the rib has melted down, at the latest where parts are at "
        "the edge of their tolerances: the seam is not fused.",
        "assumption",
        "0.2 mm on top of the planned collapse: with two dimensions of ±0.1 mm at Cpk 1 (normal), 1e-5 of the parts "
        "touch too early; with 0.1 mm it would be 1.7 %. Where the settings give a tolerance of free_travel, that is "
        "judged and the smaller reserve holds, unless you set one. A public design guideline for ribs melted by light "
        "that falls on them directly keeps 0.25 mm between surfaces that are not welded.",
        (
            Setting("reserve", 0.2, "mm", "free travel on top of the planned collapse"),
            Setting("toleranced", 0.1, "mm", "the same where the settings give a tolerance of free_travel"),
        ),
        (
            Check(
                "free_travel", accepted_reasons={"free": "nothing is in the way"},
                lower=Bound(
                    "collapse + reserve",
                    "The cover can sink by {value} until it touches something else; with a collapse of {collapse} it "
                    "should be at least {limit}.",
                    "Take[ {by}] off the height of what the cover meets first[: {other}, {side:word} side of the rib]["
                    ", along {axis}].",
                    below_zero="The cover meets something else {size} before it rests on the rib; with a collapse of "
                    "{collapse} it should be free to sink by at least {limit} from there.",
                ),
            ),
        ),
    ),
    Rule(
        "support-offset", "Support below the rib", ATTENTION, "above",
        "The material that carries the rib stands below it.",
        "Under the clamp the rib bends away sideways, and the pressure on the seam is lost.", "assumption",
        "Half a rib width.", (Setting("share", 0.5, "1", "largest offset of the material below, in rib widths"),),
        (
            Check(
                "support_offset",
                upper=Bound(
                    "share * rib_width",
                    "The material that carries the rib is offset by {value}; it should be at most {limit}.",
                    "Put the wall below the rib, or move the rib over the wall[ by {by}].",
                ),
            ),
        ),
    ),
)  # fmt: skip

SEAM = (
    Rule(
        "seam-open", "Seam open", MUST_FIX, "flag", "The rib runs without interruption and without an open end.",
        "The housing is open here: it leaks.", "common practice", "Follows from the task; no number.",
        quantity="rib_height", says="The rib ends here.",
        remedy="Close the seam: continue the rib to its start, or into another rib.",
    ),
    Rule(
        "rib-missing", "No weld rib", MUST_FIX, "flag", "A weld rib stands between cover and base.",
        "Flat on flat there is nothing to melt down: gaps are not closed, and the melt has nowhere to go.",
        "common practice",
        "Welding flat on flat is another kind of joint, with far stricter gaps; it is not reviewed here.",
        quantity="rib", says="Cover and base lie flat on each other without a weld rib between them.",
        remedy="Add a weld rib with flash traps, on the base or on the cover.", for_flat_overlap=True,
    ),
    Rule(
        "seam-junction", "Junction of seams", ATTENTION, "flag",
        "Where paths of the seam meet, the rib melts through, and the flash traps hold its melt.",
        "The beam passes here more than once, the rib is wider, and the melt is blocked from two sides.", "assumption",
        "The limits that hold along the seam; a junction that keeps them is a note.",
        (
            Setting("apart", 0.1, "mm", "largest gap between cover and rib top at a junction"),
            Setting("room", 1.2, "1", "smallest flash trap volume at a junction, divided by the melt volume there"),
        ),
        (
            Check(
                "junction_gap",
                upper=Bound(
                    "apart", "Where paths of the seam meet, the cover stays {value} off the rib (limit {limit}).",
                    "Bring the rib top at the junction to the height of the rest.",
                ),
            ),
            Check(
                "junction_room",
                lower=Bound(
                    "room",
                    "Where paths of the seam meet, the flash traps hold {value} times the melt; it should be at least "
                    "{limit} times.",
                    "Enlarge the flash traps in the corners of the junction, or round these less.",
                ),
            ),
        ),
        quantity="rib", says="{count} paths of the seam meet here.",
        remedy="Keep junctions few, enlarge the flash traps beside them, and plan the order of the passes.",
    ),
    Rule(
        "not-measured", "Not measured", ATTENTION, "flag",
        "Every quantity of a must-fix rule is measured along the whole seam.",
        "What is not measured is not checked: a fault can hide here.", "assumption",
        "No number; a gap in the measurement never counts as a pass.", quantity="rib",
        says="Could not be measured here: {what:list}.",
        remedy="Look at this place yourself; if the faces are damaged, repair them in CAD and review again.",
        for_flat_overlap=True,
    ),
)  # fmt: skip

_UNDER_THE_COVER = tuple(replace(rule, needs_cover=True) for rule in (*TRAPS, *COVER, *CONTACT))

RULES: dict[str, Rule] = {
    rule.key: rule for rule in (*SEAM, *RIB, *_UNDER_THE_COVER, *INTERFACE_RULES, *MATERIAL_RULES)
}
