"""What is known of a joint without its geometry: what judging and the document take over as it was found."""

from __future__ import annotations

from typing import Any

import numpy as np
from msgspec import Struct

from seamcheck.catalogue.kinds import WELD_RIB


class _Weighed(Struct, frozen=True, eq=False, kw_only=True):
    """What is told of a joint by keyword only, described with JointFacts, whose own fields are given in order."""

    kind: str = WELD_RIB
    confidence: float | None = None
    left_out: tuple[str, ...] = ()
    band_width: float = float("nan")
    step: float = float("nan")


class JointFacts(_Weighed, frozen=True, eq=False):
    """One cover, one base, and how they are joined.

    Attributes
    ----------
    id : "j1", "j2", ...
    cover, base : part ids
    rib_on : 'base', 'cover' or 'none'
    beam : (3,) unit vector in which the light travels, from cover into base
    modelled_state : 'touching', 'gap', 'overlap' or 'mixed'
    why : reasons for roles, light and seam, as sentences
    kind : a key of KINDS in catalogue/kinds.py
    confidence : 0 to 1, how far the evidence carries this reading; None where it was not weighed
    left_out : what may be another joint and could not be told, or was not reviewed, as sentences
    band_width : mm, of the rib top or band; step : mm, of what lies beside a lap's; NaN where there is none
    """

    id: str
    cover: tuple[str, ...]
    base: tuple[str, ...]
    rib_on: str
    beam: np.ndarray
    modelled_state: str
    why: tuple[str, ...]

    def facts(self) -> dict[str, Any]:
        """These attributes by name."""
        return {name: getattr(self, name) for name in JointFacts.__struct_fields__}
