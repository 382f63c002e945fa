"""What is known of a joint without its geometry: what judging and the document take over as it was found."""

from __future__ import annotations

from dataclasses import dataclass, field, fields
from typing import Any

import numpy as np

from seamcheck.catalogue.kinds import WELD_RIB


@dataclass(frozen=True, slots=True, eq=False)
class JointFacts:
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
    kind: str = field(default=WELD_RIB, kw_only=True)
    confidence: float | None = field(default=None, kw_only=True)
    left_out: tuple[str, ...] = field(default=(), kw_only=True)
    band_width: float = field(default=float("nan"), kw_only=True)
    step: float = field(default=float("nan"), kw_only=True)

    def facts(self) -> dict[str, Any]:
        """These attributes by name."""
        return {one.name: getattr(self, one.name) for one in fields(JointFacts)}
