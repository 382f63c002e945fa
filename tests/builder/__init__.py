"""Models drawn from stated dimensions, with closed-form truth: for tests and for the sample models."""

from .defects import DEFECTS, Flaw, spoil
from .pair import Model, assemble, build, draw
from .spec import Spec, Truth
from .step import write_step
from .track import c_shape, circle, closed_spline, ellipse, l_shape, rounded_polygon, rounded_rectangle

__all__ = [
    "DEFECTS",
    "Flaw",
    "Model",
    "Spec",
    "Truth",
    "assemble",
    "build",
    "c_shape",
    "circle",
    "closed_spline",
    "draw",
    "ellipse",
    "l_shape",
    "rounded_polygon",
    "rounded_rectangle",
    "spoil",
    "write_step",
]
