"""A lip that is drawn as high as a lip must be at least is one along the whole seam, wherever the parts lie."""

from __future__ import annotations

import numpy as np
import pytest
from builder import Spec, build
from builder.track import ellipse
from measuring import assembly

from seamcheck.contour import trace_contour
from seamcheck.joint import find_joints
from seamcheck.measure import survey_joint
from seamcheck.settings.settings import Settings


@pytest.mark.parametrize(("height", "is_open"), [(0.2, 0.0), (0.19, 1.0)])
def test_a_lip_of_one_height_closes_the_trap_everywhere_or_nowhere(height, is_open):
    spec = Spec(
        track=ellipse(30, 20), lip_height_inner=height, lip_height_outer=height,
        turn=(20.0, 30.0, 40.0), shift=(3.3, 5.0, 1.0),
    )  # fmt: skip
    settings = Settings()
    (joint,) = find_joints(assembly(build(spec).parts), settings)
    survey = survey_joint(joint, trace_contour(joint), settings)
    columns = survey.paths[0].columns
    for side in ("inner", "outer"):
        found = columns[f"trap_open_{side}"]
        assert np.unique(found[np.isfinite(found)]).tolist() == [is_open]
