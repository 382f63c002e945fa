"""What the fuzz tests run in a child: read a model and say what was read in plain values."""

from pathlib import Path

from seamcheck.assembly import read_assembly


def read_facts(path, progress):
    """Facts that don't depend on how the text is written, and the entities' lines and numbers."""
    from OCP.Bnd import Bnd_Box
    from OCP.BRepBndLib import BRepBndLib
    from OCP.BRepGProp import BRepGProp
    from OCP.GProp import GProp_GProps

    assembly = read_assembly([Path(path)], progress)
    parts = []
    for part in assembly.parts:
        mass, box = GProp_GProps(), Bnd_Box()
        BRepGProp.VolumeProperties_s(part.shape, mass)
        BRepBndLib.Add_s(part.shape, box, False)
        parts.append(
            {
                "name": part.name,
                "path": part.path,
                "kind": part.kind,
                "faces": part.faces,
                "colour": part.colour,
                "transparency": part.transparency,
                "volume": mass.Mass(),
                "box": None if box.IsVoid() else tuple(box.Get()),
                "entities": [None if e is None else (e.number, e.line) for e in part.entities],
                "notes": part.notes,
            }
        )
    return {"parts": parts, "notes": assembly.notes, "unit": assembly.files[0].length_unit}
