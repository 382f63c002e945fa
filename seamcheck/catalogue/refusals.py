"""Why a model was not reviewed, and what to do: key -> English template (catalogue/say.py).

A key begins with the reason's code (``errors.REASONS``), or with ``any`` where several codes use it.
"""

from __future__ import annotations

_EXPORT = "Export the model as STEP (AP203, AP214 or AP242)."
_UNPACK = "Unpack it and name the STEP file inside."
_MESH = f"It holds triangles, not exact faces. {_EXPORT}"
_UTF16 = "Save it as plain text (ASCII or UTF-8), or export the model again."

_IS: dict[str, str] = {
    "gzip": f"a gzip archive. {_UNPACK}",
    "bzip2": f"a bzip2 archive. {_UNPACK}",
    "xz": f"an xz archive. {_UNPACK}",
    "7z": f"a 7z archive. {_UNPACK}",
    "zstd": f"a zstd archive. {_UNPACK}",
    "rar": f"a RAR archive. {_UNPACK}",
    "zip": f"a zip archive (or a CAD format packed as one). {_UNPACK}",
    "zip-empty": f"an empty zip archive. {_EXPORT}",
    "lfs": "a Git LFS pointer, not the model itself. Run `git lfs pull` and try again.",
    "utf-16": f"text in UTF-16. {_UTF16}",
    "pdf": f"a PDF document. {_EXPORT}",
    "png": f"a PNG picture. {_EXPORT}",
    "jpeg": f"a JPEG picture. {_EXPORT}",
    "ole": f"a CAD program's own file format. {_EXPORT}",
    "dwg": f"a DWG drawing. {_EXPORT}",
    "gltf": f"a glTF model. {_MESH}",
    "kernel": f"a CAD kernel's own text format. {_EXPORT}",
    "brep": f"a CAD kernel's own text format (BREP). {_EXPORT}",
    "html": "a web page (HTML), perhaps the page that offers the download. Download the file itself.",
    "xml": f"an XML file. {_EXPORT}",
    "json": f"a JSON file. {_EXPORT}",
    "stl": f"an STL mesh. {_MESH}",
    "ply": f"a PLY mesh. {_MESH}",
    "iges": f"an IGES file. {_EXPORT}",
    "dxf": f"a DXF drawing. {_EXPORT}",
    "obj": f"an OBJ mesh. {_MESH}",
    "binary": f"a binary file, not STEP text. {_EXPORT}",
}  # fmt: skip
"""What a file is that is no STEP text."""

REFUSALS: dict[str, str] = {
    **{f"not-step.{kind}": f"{{file}} is {what}" for kind, what in _IS.items()},
    "not-step.start": "{file} is not a STEP file: it doesn't begin with ISO-10303-21. Export the model as STEP (AP203, "
        "AP214 or AP242).",
    "empty.none": "No file was named. Name one assembly, or a cover and a base.",
    "empty.text": "{file} is empty: it has no text. Export the model again.",
    "empty.data": "{file} has a header and no data: nothing was exported. Select the bodies and export again.",
    "empty.bodies": "{file} holds no body that can be read. Select the bodies in CAD and export them again.",
    "unreadable.folder": "{file} is a folder. Name the STEP file in it, or use `seamcheck scan` for all of them.",
    "unreadable.device": "{file} is a device or a pipe. Save the model as a file and name that.",
    "unreadable.changes": "{file} changes while it is read. Wait until the export or copy is done and try again.",
    "unreadable.name": "{file} is not a valid file name.",
    "unreadable.absent": "There is no file {file}. Check the name and the folder.",
    "unreadable.permission": "{file} can't be opened: no permission to read it. Ask its owner for it.",
    "unreadable.long-name": "{file}... is too long for a file name.",
    "unreadable.error": "{file} can't be read: {error}.",
    "unreadable.unpack": "{file} can't be unpacked: {error}.",
    "unreadable.archive": "{why}",
    "unreadable.cut": "{file} is cut off: its last line END-ISO-10303-21 is missing. Copy or export it again.",
    "unreadable.data": "{file} is damaged: the line DATA; before its records is missing. Export it again.",
    "unreadable.cycle": "{file} has a product that contains itself ({product}): its product tree is damaged. Export it "
        "again.",
    "unreadable.text": "The CAD kernel can't read {file}: its text is damaged. Export it again as STEP.",
    "unreadable.bodies": "The CAD kernel can't make bodies of {file}: it is damaged. Export it again as STEP.",
    "unreadable.solids": "{file} lists {count:0} solid bodies, and the CAD kernel can read none: the file is damaged. "
        "Export it again.",
    "unreadable.solids.one": "{file} lists a solid body, and the CAD kernel can't read it: the file is damaged. Export "
        "it again.",
    "any.body": "{part}: {notes} Export it again as exact solids.",
    "unsupported.large": "{file} has {size:0} MB; more than {most:0} MB are not read. Export only the cover, the base "
        "and what lies beside the seam.",
    "unsupported.building": "{file} is a building model (IFC), not a CAD assembly. Export the housing as STEP (AP203, "
        "AP214 or AP242).",
    "unsupported.others": "{file} only refers to other files ({others}), which hold the bodies. Export the assembly as "
        "one file, or name those files instead.",
    "unsupported.triangles": "{file} holds only triangles (a tessellated model), no exact faces. Export exact solids.",
    "unsupported.placement": "{file} has a part that is placed mirrored or scaled (line {line:0}) in a way that is not "
        "followed here, and that the CAD kernel leaves out. Make the mirrored or scaled part a body of its own in CAD "
        "and export again.",
    "no-solid.wireframe": "{file} holds only curves and points (a wireframe), no solid body. Export solids.",
    "no-solid.sheets": "The model holds sheet bodies or loose faces only; a seam needs solids. Close and sew the "
        "bodies in CAD, then export solids.",
    "no-solid.none": "The model holds no solid body. Export cover and base as solids, not as surfaces.",
    "single-part.one": "The model holds one part only ({part}). A seam needs a cover and a base: give the assembly, or "
        "both files together.",
    "single-part.sheets": "The model holds one solid only, {solid}; {sheets} are sheet bodies (surfaces without an "
        "inside). A seam needs a cover and a base that are solids: close them in CAD and export again.",
    "single-part.sheets.one": "The model holds one solid only, {solid}; {sheets} is a sheet body (a surface without an "
        "inside). A seam needs a cover and a base that are solids: close it in CAD and export again.",
    "any.damage": "The model also shows signs of damage: {doubt}",
    "scale-suspect.size": "{part} measures {size}, which no welded housing does. A factor of {factor} would make it "
        "{better}: {mistake:word} ({declared}). Set the length unit on export and export again.",
    "scale-suspect.cover": "{part} measures {size}, with a cover {thickness} thick over the seam: too thin to be "
        "moulded and welded. A factor of {factor} would make it {better}: {mistake:word} ({declared}). Set the length "
        "unit on export and export again; if the size is right, name the parts with --cover and --base.",
    "any.costs": "the model has {count:0} bodies with {faces:0} faces; most are those of {parts}.",
    "any.size": "{part} measures {size}: if it should be {better}, {mistake:word} ({declared}). Then set the length "
        "unit on export and export again.",
    "any.unit": "the file declares {unit}",
    "any.no-unit": "the file declares no length unit",
    "no-contact.apart": "No two parts come close enough to be welded: the nearest, {one} and {other}, are about "
        "{distance:.2 mm} apart, the search stops at {most:.2 mm}. Move the cover to its welded position.",
    "no-seam.through": "{one} and {other} are not assembled: they interpenetrate by {volume:0 mm³} near ({place}). "
        "Moved by {distance:.2 mm} along {axis} {other} would be clear of {one}. Bring both into their assembled "
        "position and export again.",
    "no-seam.through-plug": "{one} and {other} are not assembled: they interpenetrate by {volume:0 mm³} near "
        "({place}). At their other sides they have {play:.2 mm} of play: a plug fit, with nothing that light from "
        "above could weld. Moved by {distance:.2 mm} along {axis} {other} would be clear of {one}. Bring both into "
        "their assembled position and export again.",
    "no-seam.plug-round": "{one} and {other} only face each other all round their sides: a plug or snap fit. No faces "
        "lie on top of each other there that light could weld. Give the joint a land with a weld rib under the cover.",
    "no-seam.plug": "{one} and {other} only face each other at their sides, with {play:.2 mm} of play: a plug or snap "
        "fit. No faces lie on top of each other there that light could weld; the longest side face is {width:.2 mm} "
        "wide and {length:0 mm} long.[ In the direction of insertion the opposing faces stay {gap:.2 mm} apart: the "
        "part is not seated.] Give the joint a land with a weld rib under the cover.",
    "no-seam.plug-resting": "{one} and {other} face each other at their sides, with {play:.2 mm} of play: a plug or "
        "snap fit. The places where they lie on each other ({places:0}, {area:0 mm²} in all) don't form a closed line; "
        "the longest side face is {width:.2 mm} wide and {length:0 mm} long.[ In the direction of insertion the "
        "opposing faces stay {gap:.2 mm} apart.] Give the joint a land with a weld rib under the cover.",
    "no-seam.strips": "{one} and {other} lie on each other along {count:0} strips, {length:0 mm} long in all and "
        "{width:.2 mm} wide, which don't form a closed line: they enclose no cavity. A seam needs a land that runs "
        "round the opening; if an open seam along these faces is meant, name the parts with --cover and --base.",
    "no-seam.strips.one": "{one} and {other} lie on each other along one strip, {length:0 mm} long and {width:.2 mm} "
        "wide, which is not closed: it encloses no cavity. A seam needs a land that runs round the opening; if an open "
        "seam along these faces is meant, name the parts with --cover and --base.",
    "no-seam.pads": "{one} and {other} lie on each other with {count:0} broad faces, the largest {size} mm "
        "({area:0 mm²} of contact in all): pads, no band that runs round a cavity. A seam needs the top of a wall or a "
        "weld rib that runs round the opening, under a cover.",
    "no-seam.pads.one": "{one} and {other} lie on each other with a broad face of {size} mm ({area:0 mm²} of contact): "
        "a pad, no band that runs round a cavity. A seam needs the top of a wall or a weld rib that runs round the "
        "opening, under a cover.",
    "no-seam.dark": "{cover} is seated on {base} along {band}, but no side lets light in: it would have to pass "
        "through {thickness:.1 mm} of plastic. Weld through a cover of at most {most:0 mm} over the joint, or name "
        "cover and base with --cover and --base.",
    "no-seam.amid": "{one} and {other} lie on each other amid faces that are much larger than what they share: no "
        "band of its own is there that could be welded. If a seam along this contact is meant, name the parts with "
        "--cover and --base.",
    "no-seam.side-by-side": "{one} and {other} stand side by side[ {distance:.2 mm} apart]: only their sides, or open "
        "strips along them, face each other, and no cover closes the other part. Move the cover to its assembled "
        "position.",
    "no-seam.overlap": "{cover} and {base} are not assembled: flat faces of the two interpenetrate by {depth:.2 mm}, "
        "with no weld rib between them. Bring both into their assembled position.",
    "no-seam.not-seated": "{cover} is not seated on {base}: they face each other along {band}, {gap:.2 mm} apart and "
        "with no weld rib between them. Moved by {gap:.2 mm} the cover would be seated. If a ridge with a sharp edge "
        "stands there: give its top a flat or a rounding, so that it has a width to measure.",
    "no-seam.plug-not-seated": "{cover} sits in {base} as a plug fit, with {play:.2 mm} of play at their sides, and is "
        "not seated: along {band} they stay {gap:.2 mm} apart, with no weld rib between them. Moved by {gap:.2 mm} the "
        "cover would be seated; give the joint a weld rib there.",
    "no-seam.no-lid": "The model holds no lid: of the outline of {largest} the parts beside it ({others}) cover "
        "{share:0 %} at most, and no faces between them run round an opening. A seam needs a cover that closes an "
        "opening of the base: add it to the model.",
    "no-seam.nothing": "Parts touch, but no band[ between {one} and {other}] stands out like a weld rib, or runs round "
        "like the top of a wall, with a free beam path. Check that cover and base are in their welded position, not "
        "side by side.",
    "no-seam.none-carries": "No contact between the parts carries a seam that light from above could weld. Nearest to "
        "one: {first}[ Then: {second}] Where one of them is meant, name it with --cover and --base.",
    "any.candidate": "{cover} as cover on {base}, {band} (confidence {confidence:.2}, {needed:.2} is needed).[ "
        "{against}]",
    "any.ridge": "a ridge {width:.2 mm} wide and {length:0 mm} long",
    "any.band": "a band {width:.2 mm} wide and {length:0 mm} long ({kind:word})",
    "any.reading": "{cover} as cover on {base}, {band}",
    "no-seam.no-line": "The faces between cover and base have no centre line that could be traced.",
    "no-seam.no-station": "No station of any seam was measured, so there is nothing to judge.",
    "no-seam.nothing-kept": "Nothing was measured, so nothing can be judged. Review it again with --no-cache.",
    "unsupported.ring": "{ring} fills the gap between {one} and {other}: a weld rib drawn as a part of its own, or a "
        "gasket. Unite a rib with the part that it is moulded on, and export again.",
    "unsupported.tube": "{one} and {other} meet all round an axis, like a tube in a socket. A seam round a cylinder is "
        "welded from the side while the part turns; only seams that a beam from one direction reaches are reviewed "
        "here.",
    "unsupported.pieces": "{part} is one of {count:0} solids of one product ({pieces}) that look like one part cut in "
        "pieces, and they can't be joined here. Unite them in CAD and export again, so that the seam is followed over "
        "all of it.",
    "unsupported.colours": "Over the seam the beam passes {count:0} solids of the cover {part} one behind the other "
        "({pieces}), drawn in different colours: geometry can't tell whether each of them transmits the light. Give "
        "them one colour if they are of one plastic, or leave out of the model what is not in the beam path.",
    "ambiguous.two": "Two readings are about equally good: {first}; or {second}. Say which one with --cover and --base "
        "(and --beam, if the beam comes from the other side).",
    "ambiguous.ridge": "{one} and {other} face each other along {band}, {gap:.2 mm} apart.[ The ridge is interrupted "
        "over {open:.1 mm} near ({place}).] Geometry leaves open which of them is the cover: the beam would pass "
        "{first:.2 mm} of {one}, or {second:.2 mm} of {other}. Say which one with --cover and --base.",
    "ambiguous.roles": "{one} and {other} are seated on each other along {band}, with a gap of {gap:.2 mm}.[ "
        "Beside it a tongue of {tongue} stands in a groove of {groove}, {step:.2 mm} deep and open on one side.][ The "
        "band is interrupted over {open:.1 mm} near ({place}).] Geometry leaves open which of them is the cover: the "
        "beam would pass {first:.2 mm} of {one}, or {second:.2 mm} of {other}. Say which one with --cover and --base.",
    # the process
    "not-started.server": "This machine could not start the review: the process that starts reviews was ended twice. "
        "Check its memory, and limits of the shell (ulimit -v).",
    "not-started.process": "This machine could not start the review: {why}.[ A memory limit of {shell:0 MB} is set "
        "(ulimit -v).] Nothing was learnt about the model; try again with more memory or time.",
    "why.ended": "the system ended its process",
    "why.slow": "its process was not ready after {limit:0 s}",
    "why.memory": "its process alone needs more memory than it may have",
    "why.process": "its process ended",
    "why.status": "its process ended with {how}",
    "why.error": "{error}",
    "timeout.limit": "Not finished after {limit:0 s}, while {stage:word}. Give it more time with --time-limit, or "
        "leave out bodies that have nothing to do with the seam.[ Possible cause: {remark}]",
    "out-of-memory.machine": "More memory was needed than the machine has, while {stage:word}. Allow more with "
        "--memory-limit, or leave out bodies that have nothing to do with the seam.[ Possible cause: {remark}]",
    "out-of-memory.limit": "More memory was needed than the limit of {limit:0 MB}, while {stage:word}. Allow more with "
        "--memory-limit, or leave out bodies that have nothing to do with the seam.[ Possible cause: {remark}]",
    "out-of-memory.shell": "More memory was needed than the {limit:0 MB} that the shell allows (ulimit -v), while "
        "{stage:word}. Allow more with --memory-limit, or leave out bodies that have nothing to do with the seam.[ "
        "Possible cause: {remark}]",
    "out-of-memory.ended": "The system ended the review while {stage:word}, most likely because the memory of the "
        "machine ran out. Close other programs, review fewer models at a time, or leave out bodies that have nothing "
        "to do with the seam.",
    "crashed.kernel": "The CAD kernel crashed while {stage:word} ({how}). {remark}",
    "crashed.damaged": "The CAD kernel crashed while {stage:word} ({how}). The file is probably damaged there: open it "
        "in a CAD program, check the bodies and export it again as STEP.",
    "crashed.shell": "A memory limit of {shell:0 MB} is set (ulimit -v), which may be why.",
    "crashed.error": "An unexpected error ended the review while {stage:word}: {error}. Run it again with --debug to "
        "see where.",
}  # fmt: skip

MISTAKES: dict[str, str] = {
    "mm-as-m": "it is as if millimetres had been taken for metres",
    "m-as-mm": "it is as if metres had been taken for millimetres",
    "mm-as-in": "it is as if millimetres had been taken for inches",
    "in-as-mm": "it is as if inches had been taken for millimetres",
    "mm-as-ft": "it is as if millimetres had been taken for feet",
    "ft-as-mm": "it is as if feet had been taken for millimetres",
    "mm-as-cm": "it is as if millimetres had been taken for centimetres",
    "cm-as-mm": "it is as if centimetres had been taken for millimetres",
    "mm-as-m-twice": "it is as if millimetres had been taken for metres twice",
    "m-as-mm-twice": "it is as if metres had been taken for millimetres twice",
}  # fmt: skip
"""Which unit was taken for which, as a term."""
