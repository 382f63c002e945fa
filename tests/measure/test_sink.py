"""The rib's root against the plate that it stands on."""

from __future__ import annotations

import numpy as np
import pytest
from builder import Spec, build, rounded_rectangle
from interface_models import interface

from seamcheck.measure.sink import root_to_plate

RING = {"track": rounded_rectangle(40, 30, 8)}


def test_a_ratio_of_typed_arrays():
    ratio = root_to_plate(np.array([1.2, 1.2, np.nan, 1.2]), np.array([2.0, 0.8, 1.0, 0.0]))
    assert ratio == pytest.approx([0.6, 1.5, np.nan, np.nan], nan_ok=True)


def test_a_rib_on_a_plate():
    """1.2 mm wide, 0.9 high with drafts of 2°, on a cover of 2.0 mm in all: root 1.263 on a plate of 1.1 mm."""
    spec = Spec(rib_on="cover", draft_inner=2.0, draft_outer=2.0, **RING)
    root = 1.2 + 2 * 0.9 * np.tan(np.radians(2.0))
    _, values = interface(build(spec).parts)
    assert values["root_to_plate"]["value"] == pytest.approx(root / 1.1, abs=0.003)


@pytest.mark.thorough
def test_a_rib_on_a_wall_leaves_no_mark():
    _, values = interface(build(Spec(**RING)).parts)
    assert values["root_to_plate"] == {"value": None, "at": None, "why": "wall-below"}
