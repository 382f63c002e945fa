"""The Joint: one cover, one base, the light's direction and the faces of the seam."""

from __future__ import annotations

from dataclasses import dataclass, field

import numpy as np
from shapely.geometry.base import BaseGeometry

from seamcheck.assembly.parts import Part
from seamcheck.catalogue.kinds import WELD_RIB
from seamcheck.joint.frame import Frame
from seamcheck.kernel import Body


@dataclass(frozen=True, slots=True, eq=False)
class Joint:
    """A seam between two parts.

    Attributes
    ----------
    id : "j1", "j2", ...
    cover, base : part ids
    rib_on : 'base', 'cover' or 'none'
    beam : (3,) unit vector in which the light travels, from cover into base
    modelled_state : 'touching', 'gap', 'overlap' or 'mixed'
    why : reasons for roles, light and seam, as sentences
    frame : press frame; z from the part with the rib into the opposite part
    rib, counter : the bodies that carry the rib and face it; others : every other body
    rib_faces : faces of the rib top
    region : the rib top seen along z, polygon(s) in the frame, mm
    rounded : the rib top has no flat; region then is the footprint of its rounding
    other_ribs : rib tops of other joints that share a part with this one, as (part id, faces)
    kind : a key of KINDS in catalogue/kinds.py
    confidence : 0 to 1, how far the evidence carries this reading; None where it was not weighed
    left_out : what may be another joint and could not be told, as sentences
    band_width : mm, of the rib top or band; step : mm, of what lies beside a lap's; NaN where there is none
    bodies : part id -> Body of every solid; parts : part id -> Part
    """

    id: str
    cover: tuple[str, ...]
    base: tuple[str, ...]
    rib_on: str
    beam: np.ndarray
    modelled_state: str
    why: tuple[str, ...]
    frame: Frame
    rib_part: str
    counter_part: str
    rib_faces: tuple[int, ...]
    region: BaseGeometry
    rounded: bool
    gap: float
    bodies: dict[str, Body] = field(repr=False)
    parts: dict[str, Part] = field(repr=False)
    other_ribs: tuple[tuple[str, tuple[int, ...]], ...] = ()
    kind: str = WELD_RIB
    confidence: float | None = None
    left_out: tuple[str, ...] = ()
    band_width: float = float("nan")
    step: float = float("nan")

    @property
    def rib(self) -> Body:
        return self.bodies[self.rib_part]

    @property
    def counter(self) -> Body:
        return self.bodies[self.counter_part]

    @property
    def up(self) -> float:
        """+1 where the frame's z runs against the light (rib on the base), -1 where along it."""
        return 1.0 if float(self.frame.axes[2] @ self.beam) < 0 else -1.0
