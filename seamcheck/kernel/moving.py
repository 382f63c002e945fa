"""Moving what stands already: faces pulled along a direction, small features taken away, slopes filled level."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import Any

import numpy as np
from OCP.BRepAlgoAPI import BRepAlgoAPI_Defeaturing
from OCP.BRepBuilderAPI import BRepBuilderAPI_MakeFace
from OCP.BRepCheck import BRepCheck_Analyzer
from OCP.BRepPrimAPI import BRepPrimAPI_MakePrism
from OCP.gp import gp_Dir, gp_Pln, gp_Pnt, gp_Trsf, gp_Vec
from OCP.TopAbs import TopAbs_SOLID
from OCP.TopLoc import TopLoc_Location

from seamcheck.catalogue.say import say
from seamcheck.kernel.body import Body
from seamcheck.kernel.grooves import ABOVE, NotCut, common, each_of, merged, united, volume, without

BURIED = 0.05
"""mm that an added body reaches into the part, so that no two faces have to coincide there."""


def added(shape: Any, bodies: Sequence[Any]) -> Any:
    """One sound solid: a part and the bodies fused to it.

    Raises
    ------
    NotCut : the result falls apart, is not sound, or its volume is not that of both less what they share
    """
    whole = shape
    for body in bodies:
        whole = _one(united([whole, body]))
        if abs(volume(whole) - volume(shape) - volume(body) + volume(common(shape, body))) > 1e-3 * max(
            1.0, volume(body)
        ):
            raise NotCut(say("propose.cut.volumes"))
        shape = whole
    return whole


def taken(shape: Any, bodies: Sequence[Any]) -> Any:
    """One sound solid: a part less some bodies; ``NotCut`` where that leaves none or several."""
    whole = without(shape, *bodies)
    return _one(merged(whole), whole)


def pulled(body: Body, faces: Sequence[int], direction: np.ndarray, by: float) -> Any:
    """The part with some of its faces pulled out (``by`` > 0, material added) or pushed in (``by`` < 0).

    Parameters
    ----------
    faces : indices; each faces along ``direction``
    direction : (3,) unit vector out of the material
    by : mm along the direction

    Raises
    ------
    NotCut
    """
    vector = np.asarray(direction, dtype=float)
    if by > 0.0:
        return added(body.shape, [united([_prism(body, i, vector, 0.0, by) for i in faces])])
    return taken(body.shape, [united([_prism(body, i, vector, ABOVE, by) for i in faces])])


def filled(body: Body, faces: Sequence[int], direction: np.ndarray, level: float) -> Any:
    """The part with everything over some faces filled up to a plane square to a direction.

    Parameters
    ----------
    direction : (3,) unit vector out of the material
    level : mm along the direction from the origin of the assembly

    Raises
    ------
    NotCut
    """
    vector = np.asarray(direction, dtype=float)
    low = min(float((body.facets([i], 0.05).corners @ vector).min()) for i in faces)
    over = united([_prism(body, i, vector, 0.0, level - low + 1.0) for i in faces])
    box = body.box
    middle, size = (box[:3] + box[3:]) / 2.0, 2.0 * float(np.linalg.norm(box[3:] - box[:3])) + 10.0
    foot = middle + (level - middle @ vector) * vector
    half_space = BRepPrimAPI_MakePrism(_square(foot, vector, size), gp_Vec(*map(float, size * vector))).Shape()
    return added(body.shape, [without(over, half_space)])


def without_faces(body: Body, faces: Iterable[int]) -> Any:
    """The part with the features that some faces bound taken away or filled: their neighbours are extended.

    Raises
    ------
    NotCut : the neighbours do not meet
    """
    tool = BRepAlgoAPI_Defeaturing()
    tool.SetShape(body.shape)
    for i in faces:
        tool.AddFaceToRemove(body.faces[i])
    tool.Build()
    if not tool.IsDone():
        raise NotCut(say("propose.cut.faces"))
    return _one(tool.Shape())


def shifted(shape: Any, by: np.ndarray) -> Any:
    """A shape moved by (3,) mm."""
    motion = gp_Trsf()
    motion.SetTranslation(gp_Vec(*map(float, by)))
    return shape.Moved(TopLoc_Location(motion))


def _prism(body: Body, face: int, direction: np.ndarray, start: float, end: float) -> Any:
    lifted = shifted(body.faces[face], start * direction)
    return BRepPrimAPI_MakePrism(lifted, gp_Vec(*map(float, (end - start) * direction)), True).Shape()


def _square(at: np.ndarray, normal: np.ndarray, size: float) -> Any:
    plane = gp_Pln(gp_Pnt(*map(float, at)), gp_Dir(*map(float, normal)))
    return BRepBuilderAPI_MakeFace(plane, -size, size, -size, size).Face()


def _one(*shapes: Any) -> Any:
    """The one sound solid of the first shape that is one."""
    why = say("propose.cut.unsound")
    for shape in shapes:
        solids = list(each_of(shape, TopAbs_SOLID))
        if len(solids) != 1:
            why = say("propose.cut.pieces", count=len(solids))
        elif not BRepCheck_Analyzer(solids[0]).IsValid():
            why = say("propose.cut.unsound")
        else:
            return solids[0]
    raise NotCut(why)
