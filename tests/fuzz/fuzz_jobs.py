"""What the fuzz tests run in a child: a whole review in short, and the kernel's plain reader beside it."""

from __future__ import annotations

import resource
import sys
from pathlib import Path
from typing import Any

SPACING = 2.0
"""mm between stations: where a limit is broken stations come closer anyway."""


PLAIN_READER_S = 5
"""CPU seconds; a sound file takes 0.06."""


def review_facts(path: str, progress: Any) -> dict[str, Any]:
    """What a review says, in short, and which modules it had to load."""
    loaded = set(sys.modules)
    from seamcheck.pipeline import review_model
    from seamcheck.settings.settings import Settings

    document = review_model((Path(path),), Settings().changed({"station_spacing": SPACING}), progress=progress)
    names = {part["id"]: part["name"] for part in document["model"]["parts"]}
    return {
        "loaded": sorted(set(sys.modules) - loaded),
        "verdict": document["verdict"],
        "reason": document.get("reason"),
        "broken": sorted({f["rule"] for f in document["findings"] if f["severity"] == "must-fix"}),
        "doubts": [f["message"] for f in document["findings"] if f["rule"] == "model-doubt"],
        "unmeasured": sum(f["rule"] == "not-measured" for f in document["findings"]),
        "notes": [note["text"] for note in document["model"]["notes"]],
        "joints": [
            {
                "cover": [names[part] for part in joint["cover"]],
                "base": [names[part] for part in joint["base"]],
                "rib_on": joint["rib_on"],
                "paths": [
                    {
                        "closed": contour["closed"],
                        "length": contour["length_mm"],
                        "points": list(zip(*(contour["stations"][axis] for axis in "xyz"), strict=True)),
                    }
                    for contour in joint["contours"]
                ],
            }
            for joint in document["joints"]
        ],
    }


def plain_facts(path: str) -> list[tuple[Any, ...]] | None:
    """(volume, faces, box) of every solid as the kernel's plain reader gives them, sorted; None where the reader
    refuses, gives anything else besides solids, or a solid that the kernel's own check finds not valid.

    On some files the plain reader never ends; it is killed after ``PLAIN_READER_S`` of CPU.
    """
    resource.setrlimit(resource.RLIMIT_CPU, (PLAIN_READER_S, PLAIN_READER_S))
    from OCP.Bnd import Bnd_Box
    from OCP.BRepBndLib import BRepBndLib
    from OCP.BRepCheck import BRepCheck_Analyzer
    from OCP.BRepGProp import BRepGProp
    from OCP.GProp import GProp_GProps
    from OCP.IFSelect import IFSelect_RetDone
    from OCP.Message import Message
    from OCP.STEPControl import STEPControl_Reader
    from OCP.TopAbs import TopAbs_FACE, TopAbs_SOLID
    from OCP.TopExp import TopExp_Explorer

    Message.DefaultMessenger_s().ChangePrinters().Clear()
    reader = STEPControl_Reader()
    if reader.ReadFile(path) != IFSelect_RetDone:
        return None
    reader.TransferRoots()
    whole = reader.OneShape()
    if whole is None or whole.IsNull() or TopExp_Explorer(whole, TopAbs_FACE, TopAbs_SOLID).More():
        return None
    solids = []
    explorer = TopExp_Explorer(whole, TopAbs_SOLID)
    while explorer.More():
        solid = explorer.Current()
        if not BRepCheck_Analyzer(solid).IsValid():
            return None
        mass, box = GProp_GProps(), Bnd_Box()
        BRepGProp.VolumeProperties_s(solid, mass)
        BRepBndLib.Add_s(solid, box, False)
        faces, face = 0, TopExp_Explorer(solid, TopAbs_FACE)
        while face.More():
            faces += 1
            face.Next()
        solids.append((round(mass.Mass(), 3), faces, *(round(value, 3) for value in box.Get())))
        explorer.Next()
    return sorted(solids)
