"""Sentences of a proposal: what was moved, what keeps it from fitting, what a kernel could not cut."""

from __future__ import annotations

PROPOSE_NOTES: dict[str, str] = {
    "propose.hand.cover-hole": (
        "the hole has a purpose that the model does not tell; move it[ {by:.2 mm}] out of the light by hand"
    ),
    "propose.hand.beam-path": "what shades the seam has a purpose that the model does not tell; move it by hand",
    "propose.hand.light-clear": (
        "what shades the seam has a purpose that the model does not tell; move it[ {by:.2 mm}] by hand"
    ),
    "propose.hand.scanner-shadow": (
        "it is decided by the scanner's place and by what stands beside the seam, not by the joint"
    ),
    "propose.hand.beam-angle": (
        "it is decided by the scanner's place and field[, {by:.2 °} too far], not by the joint"
    ),
    "propose.hand.clamp-reach": (
        "what stands on the land has a purpose that the model does not tell; move it[ {by:.2 mm}] by hand"
    ),
    "propose.hand.wall-opening": "the opening has a purpose that the model does not tell; move it by hand",
    "propose.hand.flatness-stack": (
        "it is decided by the tolerances of the parts[, {by:.2 mm} too wide], not by their drawn shape"
    ),
    "propose.hand.support-offset": (
        "the wall below the seam would have to move[ by {by:.2 mm}], and with it the housing's inside"
    ),
    "propose.hand.wall-to-rib": (
        "the wall below the seam would have to grow, and with it the housing's inside or outside"
    ),
    "propose.hand.overhang": (
        "the wall below the seam would have to move[ by {by:.2 mm}], and with it the housing's inside"
    ),
    "propose.hand.near-parts": (
        "the other part has its place for a reason that the model does not tell[; {by:.2 mm} are missing]"
    ),
    "propose.hand.path-distance": (
        "the two seams would have to move[ {by:.2 mm}] apart, and with them the walls below"
    ),
    "propose.hand.seam-step": "the whole seam would have to be laid level",
    "propose.hand.corner-radius": "the wall below the corner would have to turn in a larger radius[, by {by:.2 mm}]",
    "propose.hand.rib-missing": "the rib is missing over a stretch that is not closed by its neighbours",
    "propose.hand.guide-play": ("which of the two flanks may give way is not told by the model; set one back by hand"),
    "propose.hand.guide-depth": "which of the two flanks may grow is not told by the model; lengthen one by hand",
    "propose.hand.guide-draft": "the draft hangs on how both parts are moulded, which the model does not tell",
    "propose.hand.sink-mark": "the plate below the rib would have to grow, and with it the part's other side",
    "propose.hand.second-collapse": ("it is decided by the collapses that are planned, not by a fault of the joint"),
    "propose.hand": "no move of the joint's own faces is known to mend it",
    "propose.at": "{what} (at s = {s:.1 mm})",
    "propose.over": "{what} (over s = {start:.1 mm} to {end:.1 mm})",
    "propose.rib-less": "the rib is narrower",
    "propose.rib-more": "the rib is wider",
    "propose.floor_inner-less": "the inner trap's floor is higher",
    "propose.floor_inner-more": "the inner trap's floor is deeper",
    "propose.floor_outer-less": "the outer trap's floor is higher",
    "propose.floor_outer-more": "the outer trap's floor is deeper",
    "propose.wall_inner-less": "the inner trap is narrower",
    "propose.wall_inner-more": "the inner trap is wider",
    "propose.wall_outer-less": "the outer trap is narrower",
    "propose.wall_outer-more": "the outer trap is wider",
    "propose.lip_inner-less": "the inner lip is higher",
    "propose.lip_inner-more": "the inner lip is lower",
    "propose.lip_outer-less": "the outer lip is higher",
    "propose.lip_outer-more": "the outer lip is lower",
    "propose.cut.no-feature": "no small feature was found there",
    "propose.cut.no-stop": "the stop's face is not known",
    "propose.cut.overlap-of": "the overlap is not one of the cover with one other part",
    "propose.cut.no-overlap": "no overlap was found again",
    "propose.cut.touch": "the parts touch there without sharing any volume",
    "propose.cut.no-plane": "no plane face of the cover frees it on its own",
    "propose.cut.no-level": "no level face of the cover lies over the seam",
    "propose.cut.no-chamfer": (
        "the land is not ended by a chamfer or rounding of the cover; its border would have to move out"
    ),
    "propose.cut.inclined": "the land belongs to a seam that is itself inclined",
    "propose.cut.no-move": "no move of up to three dimensions of rib, traps and lips brings all limits in",
    "propose.cut.no-trap": "there is no flash trap whose dimensions could move",
    "propose.cut.branches": (
        "the seam does not run round closed, or branches: its dimensions are not moved as a whole"
    ),
    "propose.cut.not-level": "the seam is not level: its floors and lips have no one height",
    "propose.cut.floor": "the floor of the {side:word} flash trap is not level",
    "propose.tried": "it was tried, but {why}",
    "propose.levelled": "a raised place is taken away beside s = {s:.1 mm}",
    "propose.filled": "a recess or groove is filled beside s = {s:.1 mm}",
    "propose.cut-back": "what the cover meets first is cut back",
    "propose.moved-out": "a face is moved out of the other part",
    "propose.chamfer": "the chamfer that ends the land is taken away",
    "propose.land-level": "the land that falls off is filled level",
    "propose.stop-raised": "the stop is raised",
    "propose.stop-lowered": "the stop is lowered",
    "propose.cover-raised": "the cover's face towards the light is raised",
    "propose.cover-lowered": "the cover's face towards the light is lowered",
    "propose.lip": "a lip {width:.2 mm} wide, {below:.2 mm} below the contact, closes the inner flash trap",
    "propose.both-limits": "both limits",
    "propose.window": "no pad or recess makes the gap; no collapse is left between {ends}",
    "propose.window-land": (
        "no pad or recess makes the gap; no collapse is left between {ends}; the land would have to lie "
        "{travel:.2 mm} below the contact, where the lips then leave more than lip-gap allows ({most:.2 mm})"
    ),
    "propose.cut.walls": "the walls of the body to be cut away do not close",
    "propose.cut.body": "the body to be cut away is not sound",
    "propose.cut.neighbours": "the traps of neighbouring walls run into each other",
    "propose.cut.leaves": "the mid-line leaves the contact",
    "propose.cut.pieces": "it would fall into {count:0} pieces",
    "propose.cut.unsound": "the kernel's result is not sound",
    "propose.cut.volumes-by": "the volumes before and after do not agree by {by:.3 mm³}",
    "propose.cut.volumes": "the volumes before and after do not agree",
    "propose.cut.flank": "the kernel could not draw a leaning flank",
    "propose.cut.outline": "the outline of the joint does not close",
    "propose.cut.faces": "the faces beside the feature do not close over it",
    "propose.sound": "There is a weld rib already, and it holds its limits.",
    "propose.anew": "the joint is drawn anew on the same contact",
    "propose.moved": "Moved: {changes:list}.",
    "propose.not-moved": "Nothing could be moved: {reasons:list}.",
    "propose.for-rule": "{rule}: {why}",
    "propose.by": "{what} by {by:.2 mm}",
    "propose.no-flat": "The parts meet as {kind:word}: there is no flat contact from which a rib could be cut.",
    "propose.not-flat": "Base and cover do not lie flat on each other all along the seam.",
    "propose.open": (
        "The contact does not run round closed: a seam with open ends can't be tight. Close the contact "
        "first, or name the parts that belong together."
    ),
    "propose.not-cut": "The joint could not be cut into the part: {why}.",
    "propose.cut-rib": (
        "A rib {width:.2 mm} wide and {height:.2 mm} high between flash traps {inner:.2 mm} and {outer:.2 mm}"
        " wide, the land beside them {low:.2 mm} lower."
    ),
    "propose.size.rib_width": "rib width at the contact plane",
    "propose.size.rib_height": "rib height above both trap floors",
    "propose.size.trap_inner": "width of the inner flash trap",
    "propose.size.trap_outer": "width of the outer flash trap",
    "propose.size.lowering": "land beside the traps below the contact plane",
    "propose.size.draft": "draft of flanks and trap walls",
    "propose.size.collapse": "planned collapse",
    "propose.shallow": (
        "Over s = {start:.1 mm} to {end:.1 mm} the wall is {missing:.2 mm} too shallow below the contact: "
        "{room:.2 mm} deep, {need:.2 mm} are needed for traps with {floor:.1 mm} below their floors."
    ),
    "propose.down": "Move what ends the wall there (an opening, a recess) {missing:.2 mm} down.",
    "propose.narrow": (
        "Over s = {start:.1 mm} to {end:.1 mm} the contact is {missing:.2 mm} too narrow on the {side:word} "
        "side: {room:.2 mm} from the mid-line, {need:.2 mm} are needed."
    ),
    "propose.widen": "Widen the contact there by {missing:.2 mm} on the {side:word} side.",
    "propose.narrow-both": (
        "Over s = {start:.1 mm} to {end:.1 mm} the contact is {missing:.2 mm} too narrow on the {side:word} side: "
        "{room:.2 mm} from the mid-line, {need:.2 mm} are needed. On the {other:word} side {opposite:.2 mm} "
        "are missing."
    ),
    "propose.widen-both": (
        "Widen the contact there by {missing:.2 mm} on the {side:word} side, and by {opposite:.2 mm} on the "
        "{other:word} side."
    ),
    "propose.nor-deep": "{what} Nor is the wall deep enough below the contact: {depth:.2 mm}.",
    "propose.limit": "The nearest limit can't be held: {rule}, {quantity} {value} against {bound}.",
    "propose.leave-lip": (
        "Leave out the {side:word} lip ({option}): it would fit; flash then shows on the {side:word} side."
    ),
    "propose.free": "Leave the fixed dimensions free: without them it fits.",
    "propose.list": "{changes:list}",
    "propose.went": "it went with the other moves",
    "propose.still": "{what}, but the review still finds it",
    "propose.nothing": "nothing was drawn for it",
    "propose.found": "{rule}: {says}",
    "propose.mends-none": "nothing that the model breaks is mended by it.",
    "propose.then": "{first} Then: {then}",
    "propose.kept": "The joint was drawn, but its review finds what keeps it from being a proposal: {why}",
    "propose.held": "The proposed model was reviewed: no must-fix limit is broken.",
    "propose.none": "No joint was found.",
}
"""Key -> English template; sentences that stand within others begin small and have no full stop."""
