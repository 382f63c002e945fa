"""The Joint: one cover, one base, the light's direction and the faces of the seam."""

from __future__ import annotations

from shapely.geometry.base import BaseGeometry

from seamcheck.assembly.parts import Part
from seamcheck.joint.facts import JointFacts
from seamcheck.joint.frame import Frame
from seamcheck.kernel import Body


class Joint(JointFacts, frozen=True, eq=False):
    """A seam between two parts.

    Attributes
    ----------
    frame : press frame; z from the part with the rib into the opposite part
    rib, counter : the bodies that carry the rib and face it; others : every other body
    rib_faces : faces of the rib top
    region : the rib top seen along z, polygon(s) in the frame, mm
    rounded : the rib top has no flat; region then is the footprint of its rounding
    other_ribs : rib tops of other joints that share a part with this one, as (part id, faces)
    bodies : part id -> Body of every solid; parts : part id -> Part
    """

    frame: Frame
    rib_part: str
    counter_part: str
    rib_faces: tuple[int, ...]
    region: BaseGeometry
    rounded: bool
    gap: float
    bodies: dict[str, Body]
    parts: dict[str, Part]
    other_ribs: tuple[tuple[str, tuple[int, ...]], ...] = ()

    @property
    def rib(self) -> Body:
        return self.bodies[self.rib_part]

    @property
    def counter(self) -> Body:
        return self.bodies[self.counter_part]

    @property
    def view(self) -> Frame:
        """The frame in which the joint is seen along the light: z runs against it."""
        return self.frame if self.up > 0 else self.frame.turned_over()

    @property
    def up(self) -> float:
        """+1 where the frame's z runs against the light (rib on the base), -1 where along it."""
        return 1.0 if float(self.frame.axes[2] @ self.beam) < 0 else -1.0
