"""Mending a solid face by face: only the faces that need it.

The kernel's reader mends every face of every body while it transfers a file: it gives bent faces the curves in their
parameters that files leave out, closes seams, widens tolerances. That takes three quarters of the transfer, and a plain
face, a plane between straight edges and arcs that lead from corner to corner, is afterwards what it was before. So
solids are transferred as they stand, and the same tool of the kernel is asked for the faces that are not plain. A body
that isn't sound then is read again and mended by the reader as a whole.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from OCP.BRep import BRep_Builder
from OCP.BRepTools import BRepTools_ReShape
from OCP.ShapeProcess import ShapeProcess, ShapeProcess_ShapeContext
from OCP.TopAbs import TopAbs_EDGE, TopAbs_FACE
from OCP.TopoDS import TopoDS_Compound

from seamcheck.assembly.kernel_reader import LARGEST_TOLERANCE, SKIPPED_REPAIRS
from seamcheck.assembly.shapes import different

_SEQUENCE = "faces"  # a name for the list of operations that the kernel is asked for; its only one mends shapes
_REPAIRS = f"{_SEQUENCE}.FixShape"


def mended(shape: Any, faces: Sequence[Any], precision: float) -> Any:
    """A body with some of its faces mended as the kernel's reader does it.

    Parameters
    ----------
    shape : TopoDS_Shape, mm; its edges get what bent faces need of them
    faces : TopoDS_Face, those of the body to mend
    precision : mm, what its file states as uncertainty of lengths
    """
    if not faces:
        return shape
    loose = TopoDS_Compound()
    builder = BRep_Builder()
    builder.MakeCompound(loose)
    for face in faces:
        builder.Add(loose, face)
    context = ShapeProcess_ShapeContext(loose, "", "")
    asked = context.ResourceManager()
    asked.SetResource(f"{_SEQUENCE}.exec.op", "FixShape")
    for name in SKIPPED_REPAIRS:
        asked.SetResource(f"{_SEQUENCE}.{name}", "0")
    asked.SetResource(f"{_REPAIRS}.Tolerance3d", precision)
    asked.SetResource(f"{_REPAIRS}.MaxTolerance3d", max(precision, LARGEST_TOLERANCE))
    context.SetDetalisation(TopAbs_EDGE)  # what became of every edge is wanted, too
    ShapeProcess.Perform_s(context, _SEQUENCE)
    became, replacing = context.Map(), BRepTools_ReShape()
    for kind in (TopAbs_EDGE, TopAbs_FACE):
        for part in different(loose, kind)[1]:
            if became.IsBound(part):
                replacing.Replace(part, became.Find(part))
    return replacing.Apply(shape)
