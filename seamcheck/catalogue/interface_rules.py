"""Rules about the whole interface, declared once; catalogue/rules.py includes them."""

from __future__ import annotations

from seamcheck.catalogue.rule import ATTENTION, MUST_FIX, NOTE, Bound, Check, Rule
from seamcheck.catalogue.setting import Setting

_UNCOVERED = {"hole": "reported by cover-hole", "no-cover": "reported by cover-hole"}

INTERFACE_RULES: tuple[Rule, ...] = (
    Rule(
        "intended-stop", "Intended stop", MUST_FIX, "outside",
        "The cover meets the intended stop first, and does so at the planned collapse.",
        "Too early, the rib is not melted down and the seam is not fused; too late, the stop does nothing.",
        "assumption", "0.1 mm to both sides.",
        (
            Setting(
                "within", 0.1, "mm", "how far the stop may be off the planned collapse, or off the travel given for it",
            ),
        ),
        (
            Check(
                "stop_difference",
                lower=Bound(
                    "-within",
                    "Something stops the cover {size} before the intended stop engages (tolerance {size_limit}). {why}",
                    "Cut back what the cover meets first, or correct intended-stop in the settings.",
                ),
                upper=Bound(
                    "within", "The intended stop engages {value} late (tolerance {limit}). {why}",
                    "Raise the stop[ by {by}], or correct intended-stop in the settings.",
                ),
                failing_reasons={"free": "Nothing stops the cover: the stop that should end the collapse is missing."},
            ),
            Check(
                "stop_collapse",
                lower=Bound(
                    "-within",
                    "The stop engages {size} before the planned collapse is complete (tolerance {size_limit}).",
                    "Lower the stop[ by {by}], or plan less collapse.",
                ),
                upper=Bound(
                    "within", "The stop engages {value} after the planned collapse is complete (tolerance {limit}).",
                    "Raise the stop[ by {by}], or plan more collapse.",
                ),
            ),
        ),
        optional=True,
    ),
    Rule(
        "beam-angle", "Beam angle", ATTENTION, "above", "The beam meets the cover's top at a small angle of incidence.",
        "The spot is shifted and elongated, more light is reflected, and features beside the seam shade it.",
        "common practice", "15°; beyond 25° (from memory) a uniform weld is unlikely.",
        (
            Setting("max", 15.0, "°", "largest angle of incidence, in air", 0.0, 90.0),
            Setting("grave", 25.0, "°", "angle above which the finding adds a warning", 0.0, 90.0),
        ),
        (
            Check(
                "beam_angle", accepted_reasons=_UNCOVERED,
                upper=Bound(
                    "max", "The angle of incidence on the cover's top is {value}; it should be at most {limit}.",
                    "Put the scanner higher or over the middle of the seam, tilt the part, or use telecentric optics.",
                    grave="grave", grave_says="Above {grave} a uniform weld is unlikely.",
                ),
            ),
        ),
        for_flat_overlap=True, optional=True,
    ),
    Rule(
        "scanner-shadow", "Shadow on the rib", MUST_FIX, "below",
        "The scanner's beam reaches the cover's top over the rib unobstructed, in its whole width.",
        "An obstacle in the beam absorbs it and burns, and the rib stays cold in the shadow.", "assumption",
        "All rays of the cone, at the middle and both edges of the spot, or of the rib where no spot is given.",
        (Setting("min", 1.0, "1", "smallest share of the rays that must arrive", 0.0, 1.0),),
        (
            Check(
                "light_clear", accepted_reasons=_UNCOVERED,
                lower=Bound(
                    "min", "Only {percent} of the rays from the scanner reach the rib here.",
                    "Move what stands in the beam, put the scanner higher, or shift its axis.",
                ),
            ),
        ),
        for_flat_overlap=True, optional=True,
    ),
    Rule(
        "clamp-reach", "Clamp land along the seam", ATTENTION, "below",
        "Along the whole seam there is land for the clamp within its reach, with free space for the tool.",
        "Where no clamp presses near the rib, the cover bends away from it.", "assumption",
        "The whole seam; the clamp's reach of 5 mm and height of 20 mm are settings.",
        (Setting("min", 1.0, "1", "smallest share of the seam with clamp land within reach", 0.0, 1.0),),
        (
            Check(
                "clamp_share",
                lower=Bound(
                    "min",
                    "{percent} of the seam has land square to the beam within the clamp's reach; all of it should. "
                    "{why}",
                    "Give the cover a flat beside the seam, square to the beam, and keep the space above it free.",
                ),
            ),
        ),
        for_flat_overlap=True,
    ),
    Rule(
        "near-parts", "Other parts near the seam", NOTE, "below",
        "Parts that heat or stray light could damage keep a distance from the seam.",
        "Stray and scattered light, more than heat, can damage parts nearby.", "assumption",
        "5 mm; which parts are sensitive is not in CAD.",
        (Setting("min", 5.0, "mm", "smallest distance of another part from the seam"),),
        (
            Check(
                "neighbour_distance",
                lower=Bound(
                    "min", "Another part is {value} from the seam; it should be at least {limit}. {why}",
                    "Where that part is sensitive to heat or light, shield it, or move it[ {by}] further away[; moved "
                    "{both} {way:word} in all, it clears the beam path as well].",
                ),
            ),
        ),
        for_flat_overlap=True,
    ),
    Rule(
        "rib-hole", "Hole in the rib top", MUST_FIX, "above", "No hole opens in the rib top.",
        "At a hole there is no rib to melt, and trapped air blows through the melt; a through hole is a leak across "
        "the seam.",
        "common practice", "No hole at all.", (Setting("max", 0.0, "mm", "largest width of a hole in the rib top"),),
        (
            Check(
                "rib_hole",
                upper=Bound(
                    "max", "A hole {value} wide opens in the rib top. {why}",
                    "Close the hole, or route the seam round it.",
                ),
            ),
        ),
        optional=True,
    ),
    Rule(
        "parts-overlap", "Interpenetrating parts", ATTENTION, "above",
        "Except at the rib, the cover and the other parts do not interpenetrate.",
        "A press fit holds the cover up while it should sink, and strains both parts; where it is a mistake, the "
        "review measured a model that can't be built.",
        "assumption", "0.02 mm, across the beam; what the cover penetrates along the beam breaks sink-travel.",
        (Setting("max", 0.02, "mm", "largest depth to which parts may interpenetrate"),),
        (
            Check(
                "overlap",
                upper=Bound(
                    "max", "The cover and another part interpenetrate by {value}; it should be at most {limit}. {why}",
                    "Remove material from one of the two here[, {value} deep], or move them apart. If a press fit or a "
                    "thread is intended, make sure that the cover can still sink, and waive this.",
                ),
            ),
        ),
        for_flat_overlap=True,
    ),
    Rule(
        "seam-step", "Steps in the seam", NOTE, "above", "The seam's height changes little within one rib width.",
        "At a step the clamp presses at an angle, the focus is off and the beam path in the cover is longer: the place "
        "welds differently from the rest.",
        "assumption",
        "0.5 mm within one rib width; no general limit is known: set what your scanner's focus and your clamp "
        "tolerate.",
        (Setting("max", 0.5, "mm", "largest change of the seam's height within one rib width"),),
        (
            Check(
                "seam_step",
                upper=Bound(
                    "max", "The seam rises or falls by {value} within one rib width; it should be at most {limit}.",
                    "Spread the step over a longer distance, or keep the seam level.",
                ),
            ),
        ),
    ),
    Rule(
        "path-distance", "Neighbouring stretches of the seam", NOTE, "below",
        "Stretches of the seam that are far apart along it keep a distance from each other.",
        "Each heats the other, they share a flash trap, and no clamp presses between them.", "assumption",
        "3 mm from mid-line to mid-line; no general limit is known: set what suits your ribs and traps.",
        (Setting("min", 3.0, "mm", "smallest distance of neighbouring stretches, mid-line to mid-line"),),
        (
            Check(
                "path_distance",
                lower=Bound(
                    "min",
                    "Two stretches of the seam run {value} apart, mid-line to mid-line; it should be at least {limit}.",
                    "Move them apart[ by {by}], or treat both as one weld, with flash traps for the melt of both.",
                ),
            ),
        ),
    ),
    Rule(
        "wall-opening", "Opening below the rib", ATTENTION, "above",
        "The base below the rib is solid: no opening goes through the material that carries it.",
        "Over an opening the rib gives way under the clamp, and the pressure on the seam is lost.", "common practice",
        "No opening at all; set the length that your parts tolerate.",
        (Setting("max", 0.0, "mm", "largest length of the seam over openings, in total"),),
        (
            Check(
                "support_open",
                upper=Bound(
                    "max",
                    "An opening goes through the wall below {value} of the seam[; allowed is at most {most}]. {why}",
                    "Close the opening, or move it along or away until no part of it lies below the rib. Where it has "
                    "to stay, support the wall above it with the nest and set the length that your parts tolerate.",
                ),
            ),
        ),
    ),
    Rule(
        "wall-to-rib", "Wall below the rib", ATTENTION, "below",
        "The wall that carries the rib is at least as wide as the rib.",
        "A narrower wall gives way sideways under the clamp, and conducts away less heat than the rib brings: it "
        "softens.",
        "assumption",
        "As wide as the rib. A rib on the side of a wall needs a wall 1.7 times as thick as its root, against sink "
        "marks (common practice); this is about walls that end in the rib.",
        (Setting("min", 1.0, "1", "smallest width of the wall, in widths of the rib at half height", 0.0, 10.0),),
        (
            Check(
                "wall_to_rib",
                lower=Bound(
                    "min",
                    "The wall that carries the rib is {value} times as wide as the rib; it should be at least {limit} "
                    "times. {why}",
                    "Widen the wall below the rib, or narrow the rib.",
                ),
            ),
        ),
    ),
    Rule(
        "overhang", "Overhang below the rib", ATTENTION, "above",
        "Where the rib stands on a ledge, the ledge is at least as deep as it reaches out.",
        "A long thin ledge gives way under the clamp, and the pressure on the seam is lost.", "assumption",
        "As long as it is deep. Where support-offset is broken as well, only that is reported.",
        (Setting("share", 1.0, "1", "largest overhang, in depths of the material below the rib"),),
        (
            Check(
                "overhang",
                upper=Bound(
                    "share * support_depth",
                    "The rib stands on a ledge that reaches {value} beyond the material below; for its depth it should "
                    "be at most {limit}.",
                    "Put the wall below the rib, deepen the ledge, or support it with the nest where that can reach "
                    "it.",
                ),
            ),
        ),
    ),
    Rule(
        "weld-load", "Weld under load", MUST_FIX, "above", "The weld carries the line load, even without any peel.",
        "The cover comes off under the load given.", "assumption",
        "Load, strength and weld factor are yours; without them it is not evaluated. An estimate, no proof of "
        "strength: no ageing, temperature, notches or shocks.",
        (
            Setting(
                "max", 1.0, "1", "largest stress by the line load alone, over strength times weld factor", 0.01, 10.0,
            ),
        ),
        (
            Check(
                "weld_use_least",
                upper=Bound(
                    "max",
                    "The line load alone stresses the weld to {value} times what it can carry; it should be at most "
                    "{limit} times.",
                    "Widen the rib, choose a stronger polymer, or lower the load on the cover.",
                ),
            ),
        ),
        optional=True,
    ),
    Rule(
        "weld-peel", "Weld under load and peel", ATTENTION, "above",
        "The weld carries the line load together with the moment of the bending cover.",
        "The weld begins to peel from inside: it leaks, then the cover comes off.", "assumption",
        "As weld-load. The moment is that of a cover clamped by the weld, an upper bound; a wall that gives way takes "
        "less.",
        (Setting("max", 1.0, "1", "largest stress with the peel moment, over strength times weld factor", 0.01, 10.0),),
        (
            Check(
                "weld_use_most",
                upper=Bound(
                    "max",
                    "With the moment of the bending cover the weld is stressed to up to {value} times what it can "
                    "carry; it should be at most {limit} times.",
                    "Stiffen the cover's middle or support it there, widen the rib, or prove it by tests.",
                ),
            ),
        ),
        optional=True,
    ),
    Rule(
        "sink-mark", "Sink mark over the rib", NOTE, "above",
        "A rib that stands on a plate is narrower at its root than the plate is thick.",
        "The plate sinks in opposite the rib, and the rib's top with it: beam, clamp and seam meet faces that are not "
        "flat.",
        "common practice",
        "0.7; public moulding guides ask for 0.5 to 0.7 where the other side is seen. Walls that end in the rib are "
        "wall-to-rib's.",
        (Setting("max", 0.7, "1", "largest width of the rib's root, in thicknesses of its plate", 0.0, 10.0),),
        (
            Check(
                "root_to_plate",
                accepted_reasons={
                    "wall-below": "over a wall there is no other side to sink in",
                    "depends": "where root or plate were not measured, those are told",
                },
                upper=Bound(
                    "max",
                    "The rib's root is {value} times as wide as its plate is thick; up to {limit} would leave no sink "
                    "mark.",
                    "Thicken the plate below the rib[ to {by}], narrow the rib, or core it out from the other side.",
                    change="rib_width_root / limit", change_unit="mm",
                ),
            ),
        ),
    ),
    Rule(
        "guide-play", "Play of guiding flanks", ATTENTION, "below",
        "Flanks that guide the cover into the base keep some play until the collapse is done.",
        "The cover wedges before the rib is melted down: the seam stays open, or the parts are strained.", "assumption",
        "0.05 mm on one side, about what moulded parts differ by; set what yours do.",
        (Setting("min", 0.05, "mm", "smallest play on one side, at the end of the collapse"),),
        (
            Check(
                "guide_play",
                lower=Bound(
                    "min",
                    "Flanks that guide the cover have only {value} of play left at the end of the collapse; it should "
                    "be at least {limit}. {why}",
                    "Set one of the two flanks back[ by {by}], or shorten it so that it disengages before.",
                    below_zero="Flanks that guide the cover run {size} into each other before the collapse is done; "
                    "{limit} of play should be left. {why}",
                ),
            ),
        ),
    ),
    Rule(
        "guide-depth", "Late guiding flanks", ATTENTION, "below",
        "Flanks that guide the cover into the base have met before the rib begins to melt.",
        "The cover can be off to one side when melting begins, and a flank that then meets an edge stops it.",
        "assumption",
        "They have met when the cover first touches the rib; ask for more where the cover is put on by hand.",
        (Setting("min", 0.0, "mm", "smallest height that flanks have in common at first touch", -5.0, 50.0),),
        (
            Check(
                "guide_depth",
                lower=Bound(
                    "min",
                    "Flanks that guide the cover have {value} in common when it first touches the rib; it should be at "
                    "least {limit}. {why}",
                    "Lengthen one of the two[ by {by}].",
                    below_zero="Flanks that guide the cover meet only {size} after it touches the rib. {why}",
                ),
            ),
        ),
    ),
    Rule(
        "guide-draft", "Draft of guiding flanks", NOTE, "below",
        "Flanks that guide the cover into the base have draft.",
        "Without draft they drag in the mould: scored and bent flanks hold the cover up while it sinks.",
        "common practice",
        "0.5°; public moulding guides ask for 0.5° to 1° on smooth flanks, more on deep or textured ones.",
        (Setting("min", 0.5, "°", "smallest draft of a guiding flank", 0.0, 15.0),),
        (
            Check(
                "guide_draft",
                lower=Bound(
                    "min", "A flank that guides the cover has {value} of draft; it should have at least {limit}. {why}",
                    "Give it more draft[, by {by}], and the flank beside it as much, so that the play stays.",
                    below_zero="A flank that guides the cover leans back by {size}: an undercut, which no straight "
                    "pull releases from the mould. {why}",
                ),
            ),
        ),
    ),
    Rule(
        "second-collapse", "Second melting", ATTENTION, "below",
        "Free travel, rib height and flash traps allow the second collapse that is planned.",
        "A leaking part can't be welded again: the cover stops before the rib melts once more, or the melt overflows.",
        "assumption",
        "0.1 mm, as sink-travel. The second collapse is yours; without one what fits is shown, not judged. Whether the "
        "polymer withstands a second melting is not checked.",
        (Setting("reserve", 0.1, "mm", "what must be left beyond the second collapse"),),
        (
            Check(
                "second_collapse",
                lower=Bound(
                    "second_collapse + reserve",
                    "After the planned collapse a second one of {value} fits; the one that is planned needs {limit}. "
                    "{why}",
                    "Increase free travel, rib height or flash traps[, by {by}], or plan less collapse.",
                    below_zero="The planned collapse already goes {size} too far; the second one that is planned needs "
                    "{limit} more. {why}",
                ),
            ),
        ),
        optional=True,
    ),
    Rule(
        "flatness-stack", "Flatness against the collapse", ATTENTION, "below",
        "After the flatness of cover and rib, some collapse is left at the lowest place of the rib.",
        "Where the rib lies lowest it never touches the cover: the seam leaks there.", "assumption",
        "0.1 mm, in the worst case; without stiffness nothing is taken as pressed flat.",
        (Setting("min", 0.1, "mm", "smallest collapse left at the lowest place"),),
        (
            Check(
                "local_collapse_left",
                lower=Bound(
                    "min",
                    "With the flatness given, {value} of the collapse of {collapse} is left at the lowest place; it "
                    "should be at least {limit}.",
                    "Plan more collapse[, by {by}], or ask for flatter parts.",
                    below_zero="With the flatness given, the whole collapse of {collapse} is used up, and the lowest "
                    "place still has a gap of {size}; at least {limit} of it should be left there.",
                ),
            ),
        ),
        optional=True,
    ),
)  # fmt: skip

NEEDS: dict[str, str] = {
    "intended-stop": "intended_stop",
    "beam-angle": "scanner",
    "scanner-shadow": "scanner",
    "flatness-stack": "tolerances",
    "weld-load": "load",
    "weld-peel": "load",
    "second-collapse": "second_collapse",
}  # fmt: skip
"""Rule -> the setting that brings it in; the other optional rules need materials."""

REPLACED_BY: dict[str, str] = {
    "weld-peel": "weld-load",
    "trap-corner": "trap-side",
    "clamp-tilt": "clamp-land",  # of a land that is too narrow all along, the tilt says nothing more
    "clamp-reach": "clamp-land",
    "rib-hole": "cover-hole",  # a screw's hole goes through both
    "overhang": "support-offset",
    "sink-travel": "rib-height",  # where the floor of the flash trap is what the cover meets
}
"""Rule -> the rule that says it already where both are broken at the same place, and is no milder there."""
