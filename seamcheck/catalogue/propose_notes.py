"""Sentences of a proposal: what was changed, what keeps it from fitting, what a kernel could not cut."""

from __future__ import annotations

PROPOSE_NOTES: dict[str, str] = {
    "propose.hand.cover-hole": (
        "the model does not say what the hole is for; close it or move it out of the light by hand"
    ),
    "propose.hand.beam-path": "the model does not say what the part or feature in the light is for; move it by hand",
    "propose.hand.light-clear": (
        "the model does not say what the part or feature in the light is for; move it[ {by:.2 mm}] by hand"
    ),
    "propose.hand.scanner-shadow": (
        "it depends on where the scanner stands and on what stands beside the seam, not on the joint"
    ),
    "propose.hand.beam-angle": "it depends on the scanner's place and field, not on the joint",
    "propose.hand.clamp-reach": (
        "the model does not say what the features beside the seam are for; make room for the clamp by hand"
    ),
    "propose.hand.wall-opening": (
        "the model does not say what the opening is for; move it or support the wall over it by hand"
    ),
    "propose.hand.flatness-stack": "it depends on the tolerances of the parts, not on the drawn shape",
    "propose.hand.support-offset": (
        "the wall below the seam would have to move[ by {by:.2 mm}], and the inside of the housing with it"
    ),
    "propose.hand.wall-to-rib": (
        "the wall below the seam would have to become wider, and the housing larger or its inside smaller"
    ),
    "propose.hand.overhang": (
        "the wall below the seam would have to move[ by {by:.2 mm}], and the inside of the housing with it"
    ),
    "propose.hand.near-parts": "the model does not say whether the other part may move[; {by:.2 mm} are missing]",
    "propose.hand.path-distance": "the two seams and the walls below them would have to move apart[ by {by:.2 mm}]",
    "propose.hand.seam-step": "the whole seam would have to lie in one plane",
    "propose.hand.corner-radius": "the wall below the corner would need a larger radius[, by {by:.2 mm}]",
    "propose.hand.rib-missing": "the gap in the rib can't be closed by extending the faces on both sides of it",
    "propose.hand.guide-play": "the model does not say which of the two flanks may be set back; change one by hand",
    "propose.hand.guide-depth": "the model does not say which of the two flanks may be longer; change one by hand",
    "propose.hand.guide-draft": "the draft depends on how both parts are moulded, which the model does not say",
    "propose.hand.sink-mark": (
        "the plate below the rib would have to become thicker, and the part's other side would change with it"
    ),
    "propose.hand.second-collapse": "it depends on the planned collapse of both welds, not on the shape of the joint",
    "propose.hand": "no change of the joint's own faces is known to mend it",
    "propose.measured": "{why}. Measured: {measured}",
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
    "propose.cut.no-feature": "no pad, recess or groove was found there that can be removed or filled",
    "propose.cut.no-stop": "the stop's face is not known",
    "propose.cut.overlap-of": "the overlap is not between the cover and one other part",
    "propose.cut.no-overlap": "the overlap was not found again",
    "propose.cut.touch": "the parts touch there but do not overlap",
    "propose.cut.no-plane": "moving one plane face of the cover does not clear the overlap",
    "propose.cut.no-level": "no level face of the cover lies over the seam",
    "propose.cut.no-chamfer": (
        "the land does not end at a chamfer or rounding of the cover; its border would have to move out"
    ),
    "propose.cut.inclined": "the land belongs to a seam that is itself inclined",
    "propose.cut.no-move": "no change of up to three dimensions of rib, traps and lips meets all limits",
    "propose.cut.no-trap": "there is no flash trap whose dimensions could change",
    "propose.cut.branches": "the seam has open ends or branches, so its section is not changed as a whole",
    "propose.cut.not-level": "the seam is not level, so its trap floors and lips have no common height",
    "propose.cut.floor": "the floor of the {side:word} flash trap is not level",
    "propose.tried": "a change was tried, but {why}",
    "propose.levelled": "a pad at s = {s:.1 mm} is removed",
    "propose.filled": "a recess or groove at s = {s:.1 mm} is filled",
    "propose.cut-back": "what the cover meets first is cut back",
    "propose.moved-out": "a face is moved clear of the other part",
    "propose.chamfer": "the chamfer that ends the land is removed",
    "propose.land-level": "the sloping land is filled level",
    "propose.stop-raised": "the stop is raised",
    "propose.stop-lowered": "the stop is lowered",
    "propose.cover-raised": "the cover's face towards the light is raised",
    "propose.cover-lowered": "the cover's face towards the light is lowered",
    "propose.lip": "a lip {width:.2 mm} wide, {below:.2 mm} below the contact, closes the inner flash trap",
    "propose.both-limits": "both limits",
    "propose.window": "no pad or recess causes it; no collapse is left between {ends}",
    "propose.window-land": (
        "no pad or recess causes it; no collapse is left between {ends}; the land would have to lie {travel:.2 "
        "mm} below the contact, and the lip gap would then be more than lip-gap allows ({most:.2 mm} below the "
        "contact)"
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
    "propose.anew": "the joint is redrawn on the same contact",
    "propose.moved": "Changed: {changes:list}.",
    "propose.not-moved": "Nothing could be changed: {reasons:list}.",
    "propose.for-rule": "{rule}: {why}",
    "propose.by": "{what} by {by:.2 mm}",
    "propose.no-flat": "The joint is of the kind {kind:word}: it has no flat contact to cut a rib from.",
    "propose.not-flat": "Base and cover do not lie flat on each other all along the seam.",
    "propose.open": (
        "The contact does not run round closed: a seam with open ends can't be tight. Close the contact first, or "
        "name the parts that belong together."
    ),
    "propose.not-cut": "The joint could not be cut into the part: {why}.",
    "propose.cut-rib": (
        "A rib {width:.2 mm} wide and {height:.2 mm} high between flash traps {inner:.2 mm} and {outer:.2 mm} "
        "wide, the land beside them {low:.2 mm} lower."
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
        "Over s = {start:.1 mm} to {end:.1 mm} the contact is {missing:.2 mm} too narrow on the {side:word} side: "
        "{room:.2 mm} from the mid-line, {need:.2 mm} are needed."
    ),
    "propose.widen": "Widen the contact there by {missing:.2 mm} on the {side:word} side.",
    "propose.narrow-both": (
        "Over s = {start:.1 mm} to {end:.1 mm} the contact is {missing:.2 mm} too narrow on the {side:word} side: "
        "{room:.2 mm} from the mid-line, {need:.2 mm} are needed. On the {other:word} side {opposite:.2 mm} are "
        "missing."
    ),
    "propose.widen-both": (
        "Widen the contact there by {missing:.2 mm} on the {side:word} side, and by {opposite:.2 mm} on the "
        "{other:word} side."
    ),
    "propose.nor-deep": "{what} The wall is not deep enough below the contact either: {depth:.2 mm}.",
    "propose.limit": "The nearest limit can't be held: {rule}, {quantity} {value} against {bound}.",
    "propose.leave-lip": (
        "Leave out the {side:word} lip ({option}): it would fit; flash then shows on the {side:word} side."
    ),
    "propose.free": "Leave the fixed dimensions free: without them it fits.",
    "propose.list": "{changes:list}",
    "propose.went": "mended by the other changes",
    "propose.still": "{what}, but the review still finds it",
    "propose.nothing": "nothing was changed for it",
    "propose.found": "{rule}: {says}",
    "propose.mends-none": "it mends none of the findings.",
    "propose.then": "{first} Then: {then}",
    "propose.kept": "A joint was drawn, but it is not proposed: {why}",
    "propose.held": "The proposed model was reviewed: no must-fix limit is broken.",
    "propose.none": "No joint was found.",
}
"""Key -> English template; sentences that stand within others begin small and have no full stop."""
