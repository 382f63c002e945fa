"""What light, heat, melt and tolerances add to a review of a long seam, in CPU seconds."""

import time

import pytest
from builder import Spec, build, rounded_rectangle
from measuring import measure

from seamcheck.measure.material import add_to
from seamcheck.settings.file import parse_settings

EVERYTHING = """
[material]
cover = "PBT"
base = "PBT-GF30"
plaques = [[1.0, 46.0], [2.0, 33.5], [3.0, 24.4]]
[material.laser]
power = 400
speed = 1500
spot = 1.5
acceleration = 4000000
[material.process]
pressure = 2.0
decomposition = 400
[tolerance]
gap = 0.05
free_travel = 0.1
rib_width = 0.05
collapse = 0.05
trap_area = 5
cover_thickness = 0.05
cpk = 1.33
"""


@pytest.mark.thorough
def test_a_thousand_stations_cost_half_a_second():
    """0.43 s where it was measured (the bar is 0.5); twice the bar for slower machines."""
    found = measure(build(Spec(track=rounded_rectangle(160, 100, 10))).parts)
    assert 1000 < len(found.points) < 1100
    settings = parse_settings(EVERYTHING)
    spent = []
    for _ in range(3):
        began = time.process_time()
        _, extra = add_to(found.survey, settings.materials(), "j1", settings.collapse, "base")
        spent.append(time.process_time() - began)
    assert {"heat", "uncertainty", "window", "energy"} <= set(extra["material"])
    assert min(spent) < 1.0
