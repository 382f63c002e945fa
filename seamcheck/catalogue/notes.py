"""What is said about a model and its joint beside findings: notes on files and parts, evidence for a reading."""

from __future__ import annotations

NOTES: dict[str, str] = {
    # files
    "file.no-unit": "{file} declares no length unit; its numbers are taken as millimetres.",
    "file.no-unit-partly": "Some geometry of {file} declares no length unit; its numbers are taken as millimetres.",
    "file.units": "{file} uses several length units: {units}.",
    "file.unit-misnamed": "{file} calls its length unit {called} and defines it as one {unit} ({record} on line "
        "{line:0}); it is read as defined.",
    "file.unit-damaged": "{file} declares its length unit ({unit}, {record} on line {line:0}) by damaged records; some "
        "of it may have a wrong size or place. Export it again.",
    "file.others": "{file} refers to other files ({others}), whose bodies are not reviewed.",
    "file.colours-damaged": "{file} has damaged colours (record {record} on line {line:0}); it is read without "
        "colours. Export it again.",
    "file.nesting": "{file} nests brackets {depth:0} deep, which no CAD program does: it is damaged. Export it again.",
    "file.missing": "{file} refers to {count:0} missing records ({records}): it is damaged. What is missing may "
        "matter; export it again.",
    "file.missing.one": "{file} refers to {count:0} missing record ({records}): it is damaged. What is missing may "
        "matter; export it again.",
    "file.repeated": "{file} holds {count:0} records ({records}) more than once: it is damaged. The last one is taken; "
        "export it again.",
    "file.repeated.one": "{file} holds {count:0} record ({records}) more than once: it is damaged. The last one is "
        "taken; export it again.",
    "file.unfinished": "{file} is damaged on line {line:0}: the record there is incomplete. Export it again.",
    "file.loose": "{file} holds {count:0} records ({records}) of faces, shells or solids that belong to no body: it is "
        "damaged or cut off. Export it again.",
    "file.loose.one": "{file} holds {count:0} record ({records}) of faces, shells or solids that belong to no body: it "
        "is damaged or cut off. Export it again.",
    "file.no-curve": "{file} gives edges no curve: {count:0} records ({records}) that should hold one hold a point, a "
        "direction or a plane. It is damaged; export it again.",
    "file.no-curve.one": "{file} gives edges no curve: {count:0} record ({records}) that should hold one holds a "
        "point, a direction or a plane. It is damaged; export it again.",
    "file.faces-lost": "{file} lists {faces:0} faces of solid bodies; {lost:0} of them could not be read. Check the "
        "bodies in CAD and export the file again.",
    "file.solids-lost": "{file} lists {solids:0} solid bodies; {lost:0} of them[ ({which})] could not be read as "
        "solids and are left out of the review. Check them in CAD and export the file again.",
    "file.cut": "{file} ends without its last line END-ISO-10303-21: it may be cut off. Copy or export it again.",
    "file.behind-end": "{file} has text after its end END-ISO-10303-21 (line {line:0}), which is not read. Export it "
        "again.",
    "file.placements-lost": "{file} places {count:0} parts by damaged records (line {line:0}); they may be in the "
        "wrong place. Export it again.",
    "file.placements-lost.one": "{file} places one part by damaged records (line {line:0}); it may be in the wrong "
        "place. Export it again.",
    "file.owners-lost": "{file} has bodies that belong to no product ({record} on line {line:0}): their name is lost, "
        "and they may be in the wrong place. Export it again.",
    "file.absurd": "{file} has {count:0} implausible coordinates or sizes (line {line:0}[, of {products}]): it is "
        "damaged. Check the body in CAD and export the file again.",
    "file.absurd.one": "{file} has an implausible coordinate or size (line {line:0}[, of {products}]): it is damaged. "
        "Check the body in CAD and export the file again.",
    "file.repaired": "{file} was read with all repairs of the CAD kernel, because its bodies are not sound without "
        "them. What is measured on a repaired face can be wrong; check the bodies in CAD.",
    "file.large": "{part} measures {size}, far more than a welded housing; it is taken as it is.",
    "file.no-view": "Sections and 3-D pictures could not be made ({error}).",
    # call-outs
    "callout.ignored": "{file} carries call-outs that are not evaluated: {what:list}. Only flatness and profile of a "
        "surface on faces of the seam are taken; state others in the settings' table of tolerances.",
    "callout.kind": "{count:0} of {kind:word}",
    "callout.drawn": "{file} carries call-outs only as drawn lines and text: none of them is evaluated. State what "
        "counts in the settings' table of tolerances.",
    "callout.taken": "{file} calls out {kind:word} of {value:.2 mm} on {what:word}: it counts as {name}, from the "
        "model.",
    "callout.overruled": "{file} calls out {kind:word} of {value:.2 mm} on {what:word}; the settings say {name} = "
        "{given:.2 mm}, and that counts.",
    "callout.elsewhere": "{file} calls out {kind:word} of {value:.2 mm} on faces beside the seam: it is not evaluated.",
    "callout.partly": "{file} calls out {kind:word} of {value:.2 mm} on {share:0 %} of {what:word} only: it is not "
        "evaluated.",
    "callout.absurd": "{file} calls out {kind:word} of {value:.2 mm}: that makes no sense, its unit may be wrong; it "
        "is not evaluated.",
    # parts
    "part.said": "{part}: {notes}",
    "part.mirrored": "Placed mirrored.",
    "part.scaled": "Placed with a scale of {scale}.",
    "part.open-near": "It is open near ({place}) mm.",
    "part.absurd": "Some of its coordinates are implausible (line {line:0}); it is left out.",
    "part.twice": "It stands in the same place as {first} and has the same shape; it is left out.",
    "part.twice.doubt": "{part}: It stands in the same place as {first} and has the same shape; it is left out. Delete "
        "one of them in CAD.",
    "part.triangles": "Holds only triangles, no exact faces; it is left out.",
    "part.no-faces": "Has no faces; it is left out.",
    "part.endless": "Its coordinates are implausible (beyond 10 km or infinite); it is left out.",
    "part.inside-out": "Its faces pointed inward; they were reversed.",
    "part.no-inside": "Its faces are oriented inconsistently; what is measured near them can be wrong.",
    "part.faces-left-out": "{count:0} of its faces have outlines so damaged that they are left out[ near ({place})]; "
        "values can be missing there.",
    "part.faces-left-out.one": "One of its faces has an outline so damaged that it is left out[ near ({place})]; "
        "values can be missing there.",
    "part.open": "Its shell is not closed: {free:0} of {edges:0} edges belong to one face only, such as near "
        "({place}). Near the opening values can be missing.",
    "part.open.sheet": "Its shell is not closed: {free:0} of {edges:0} edges belong to one face only, such as near "
        "({place}). It is taken as a sheet body.",
    "part.sewn": "Its shell was not closed; cracks of up to {width:.2 mm} were sewn.",
    "part.loose": "Its faces, edges and corners are up to {gap} apart where they should meet; what is measured there "
        "can be that far off.",
    "part.outlines": "{broken:0} of its {faces:0} faces have a damaged outline[, the first near ({place})]; what is "
        "measured there can be wrong.",
    "part.piece": "A piece of {part}, joined with it.",
    "part.pieces": "{part} is drawn as {count:0} solids of one product that touch ({pieces}); they were joined and are "
        "reviewed as one part.",
    # why a joint was read as it was
    "joint.band": "{rib} carries a band {width:.2 mm} wide and {length:0 mm} long that faces {opposite} at a gap of "
        "{gap:.2 mm}: {kind:word}.",
    "joint.cover": "{cover} is the cover: {thickness:.2 mm} thick over the seam, with a free beam path over {free:0 %} "
        "of it.",
    "joint.base": "{base} is the base: on its side the beam would have to pass through {thickness:.1 mm}.",
    "joint.base.blocked": "{base} is the base: on its side the beam path is blocked.",
    "joint.light.given": "The beam direction was given.",
    "joint.light.square": "The beam is square to the seam faces (the flanks leave the direction open).",
    "joint.light.pull": "The beam runs along the direction of pull of the flanks beside the seam.",
    "joint.for": "For: {evidence}",
    "joint.against": "Against: {evidence}",
    "joint.see-through": "By geometry {other} could be the cover as well; {cover} is drawn transparent (a hint, no "
        "proof).",
    "joint.shaded": "Other parts are in the beam path through the cover; no other side lets light in.",
    "joint.left-out": "{cover} on {base} may be another joint and was not reviewed. {against} Name the two with "
        "--cover and --base",
    "joint.passed-over": "Not taken for a seam: {part} also carries a band {length:0 mm} long that faces {opposite}. "
        "Name the two with --cover and --base to have it reviewed.",
    "joint.beside.level": "Not part of the seam: a face of {part}, {width:.2 mm} wide and {length:0 mm} long "
        "({area:0 mm²}), faces {opposite} at another level, {gap:.2 mm} from it.",
    "joint.beside.pad": "Not part of the seam: {part} also lies on {opposite} with a broad face of {area:0 mm²}, "
        "{gap:.2 mm} from it.",
    "joint.beside.strip": "Not part of the seam: {part} also lies on {opposite} along a strip {width:.2 mm} wide and "
        "{length:0 mm} long, {gap:.2 mm} from it.",
    # evidence for and against a reading
    "evidence.rib": "A floor lies {height:.2 mm} lower beside {share:0 %} of the border: a weld rib.",
    "evidence.no-floor": "Beside {share:0 %} of the border there is no trap floor: {kind:word}.",
    "evidence.mark": "{share:0 %} of the border shows {kind:word}.",
    "evidence.encloses": "It encloses {share:0 %} of the smaller part's outline.",
    "evidence.along": "It encloses nothing, but runs along the whole part.",
    "evidence.short": "It encloses nothing and is shorter than the part.",
    "evidence.strip": "It is an open strip along a side: it encloses nothing.",
    "evidence.blocked": "The beam path is blocked.",
    "evidence.light": "The beam passes {thickness:.2 mm} of plastic, with a free beam path over {free:0 %} of it.",
    "evidence.contact": "The other part lies over {share:0 %} of the band, {gap:.2 mm} from it.",
    "evidence.small": "Compared with the others, one of the parts is as small as a screw or a nut.",
    "evidence.size": "Both parts are of a housing's size.",
    "evidence.tall": "Along the beam the cover measures {times:.1} times its shorter side.",
    "evidence.inlaid": "Over {share:0 %} of the band's area the parts also touch on the opposite side.",
    "evidence.held": "The base lies wholly inside the outline of the cover.",
    "evidence.reaches-out": "The base extends beyond the outline of the cover.",
    "evidence.room-unknown": "Whether it encloses a cavity can't be told.",
    "evidence.open-within": "Both parts are open over {share:0 %} of what it encloses.",
    "evidence.room": "It closes a cavity.",
    "evidence.solid-within": "What it encloses is solid: there is no cavity that it could close.",
    "evidence.margin": "The next reading of the same parts scores {share:0 %} of this one.",
    "evidence.parts": "Both parts are more than the band itself.",
    "evidence.ring": "One of the parts is nothing but the band: a rib or a gasket drawn by itself.",
    # within findings
    "part.unmeasured": "{quantity:quantity} ({reasons:reasons})",
    "share.percent": "{share:0 %}",
    "share.million": "{count:0} in a million",
    "share.less": "fewer than one in a million",
    "spread.even": "uniformly",
    "spread.normal": "normally with Cpk {cpk:.2}",
    "spot.station": "{path} at s = {start:.1 mm}",
    "spot.stretch": "{path} at s = {start:.1 mm} to {end:.1 mm}",
    "spot.point": "at {place} mm",
    "spot.path": "{path}",
    "spot.seam": "the whole seam",
    "spot.more": "{count:0} more",
    # what was seen at a place of the whole interface
    "place.through": "It is a through hole.",
    "place.deep": "It is {depth:.2 mm} deep.",
    "place.meets": "There {cover} meets {other}.",
    "place.meets-beside": "There {cover} meets {other}, {away:.1 mm} from the middle of the rib on the {side:word} "
        "side.",
    "place.pocket": "The cover has a pocket here, {depth:.2 mm} deep.",
    "place.low-rib": "The rib is {depth:.2 mm} lower here than along the rest of the seam.",
    "place.into": "There {cover} penetrates {other} by {depth:.2 mm} as drawn.",
    "place.overlap": "{one} and {other} interpenetrate here.",
    "place.carried": "{other} touches cover and base: if the cover carries it, name it with the cover.",
    "place.stands": "It is {part}.",
    "place.above": "It begins {above:.2 mm} above the rib's top.",
    "place.opening": "It begins {depth:.2 mm} below the rib's top and is {height:.2 mm} high there.",
    "place.no-land": "Over {length:.1 mm} here there is none.",
    "place.narrow-wall": "Here the wall is {wall:.2 mm} wide, the rib {rib:.2 mm}.",
    "place.tilted-land": "Over {length:.1 mm} here the flat is tilted by {tilt:.1 °} (allowed: {most:0 °}).",
    "place.rework.seam": "There the flash traps are full then, or the rib is gone.",
    "place.guide": "At {count:0} places between {cover} and {base}.",
    "place.guide.one": "Between {cover} and {base}.",
    "place.lead-in": "Their lead-in is {lead:.2 mm}.",
    "place.flank": "A flank of {part}, {height:.1 mm} high.",
    "place.root": "Here the root is {root:.2 mm} wide, the plate {plate:.2 mm} thick.",
    "place.side": "On the {side:word} side.",
    "place.light": "{part} is in the beam path.",
    "place.cover-twice": "The beam passes the cover more than once here: there is a void, or a ledge above it.",
    "place.cover-beside": "The spot reaches past the edge of the cover, or over a hole in it.",
    "place.flash.no-inside": "The seam encloses nothing: inner and outer follow its direction.",
    "place.flash.inside": "Flash would reach the inside of the housing.[ Nearest there: {parts}]",
    "place.flash.outside": "Flash would reach the visible outside.[ Nearest there: {parts}]",
    "place.flash.opening": "Flash would reach the opening that the seam runs round.[ Nearest there: {parts}]",
    "place.flash.near": "{part}, {distance:.1 mm} from the rib's middle.",
}  # fmt: skip
"""Key -> English template (catalogue/say.py)."""

CALL_OUTS: dict[str, str] = {
    "flatness": "flatness",
    "profile": "profile of a surface",
    "flatness-lost": "flatness without a value or a face",
    "profile-lost": "profile of a surface without a value or a face",
    "flatness-part": "flatness of a whole part",
    "profile-part": "profile of the surfaces of a whole part",
    "flatness-unit": "flatness per length",
    "profile-unit": "profile of a surface per length",
    "position": "position",
    "parallelism": "parallelism",
    "perpendicularity": "perpendicularity",
    "angularity": "angularity",
    "cylindricity": "cylindricity",
    "roundness": "roundness",
    "straightness": "straightness",
    "line-profile": "profile of a line",
    "coaxiality": "coaxiality",
    "symmetry": "symmetry",
    "run-out": "run-out",
    "dimension": "dimension",
    "rib-top": "the rib's top",
    "opposite": "the face opposite the rib",
}  # fmt: skip
"""Kind of a call-out, and what it stands on -> how it reads."""

STAGES: dict[str, str] = {
    "starting": "starting",
    "reading": "reading the file",
    "transferring": "transferring the bodies",
    "checking": "checking the bodies",
    "finding": "finding the seam",
    "tracing": "tracing the contour",
    "measuring": "measuring the seam",
    "judging": "judging the values",
}  # fmt: skip
"""Stage of a review -> what is being done."""
