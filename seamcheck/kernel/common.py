"""What two bodies have in common."""

from __future__ import annotations

import numpy as np
from OCP.Bnd import Bnd_Box
from OCP.BRepAlgoAPI import BRepAlgoAPI_Common
from OCP.BRepBndLib import BRepBndLib
from OCP.BRepGProp import BRepGProp
from OCP.GProp import GProp_GProps

from seamcheck.kernel.body import Body

MOST_FACES = 1500
"""Of two bodies together: with more the kernel takes too long."""


def common_volume(a: Body, b: Body) -> tuple[float, np.ndarray]:
    """Volume (mm³) that two solids share, and the (6,) box of it; NaN where the kernel doesn't find out."""
    nothing = np.full(6, np.nan)
    if len(a.faces) + len(b.faces) > MOST_FACES:
        return float("nan"), nothing
    try:
        tool = BRepAlgoAPI_Common(a.shape, b.shape)
        if not tool.IsDone():
            return float("nan"), nothing
        shape = tool.Shape()
        properties = GProp_GProps()
        BRepGProp.VolumeProperties_s(shape, properties)
        box = Bnd_Box()
        BRepBndLib.Add_s(shape, box, False)
    except Exception:  # the kernel's own errors, of many kinds
        return float("nan"), nothing
    return abs(properties.Mass()), nothing if box.IsVoid() else np.array(box.Get())
