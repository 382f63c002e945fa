"""Models from memory give the review of the same model from a file."""

import cadquery as cq
import numpy as np
import pytest

import seamcheck
from seamcheck.errors import UsageError

LENGTH = 2 * (40 - 2 * 5) + 2 * (30 - 2 * 5) + 2 * np.pi * 5  # of a rounded rectangle 40 x 30, r = 5


def ring(by):
    return cq.Workplane().rect(40 + 2 * by, 30 + 2 * by).extrude(1.0).edges("|Z").fillet(5 + by)


def parts():
    """A base with a rib 1.2 mm wide and 1 mm high, and a lid 2 mm thick."""
    floor = cq.Workplane(origin=(0, 0, -3)).rect(44, 34).extrude(2.999999).edges("|Z").fillet(7)
    base = floor.union(ring(0.6).cut(ring(-0.6)).translate((0, 0, -0.000001)))
    lid = cq.Workplane(origin=(0, 0, 0.999999)).rect(45, 35).extrude(2.0).edges("|Z").fillet(7.5)
    return base, lid


@pytest.fixture(scope="module")
def bodies():
    return parts()


def test_an_assembly_a_mapping_and_bare_shapes_give_the_same_review(bodies, tmp_path_factory):
    base, lid = bodies
    assembly = cq.Assembly()
    assembly.add(base, name="case", loc=cq.Location((0, 0, 7)))
    assembly.add(lid, name="lid", loc=cq.Location((0, 0, 7)), color=cq.Color(0.5, 0.6, 0.7, 0.4))
    reviews = [seamcheck.review(m) for m in (assembly, {"case": base, "lid": lid.val().wrapped})]
    for review in reviews:
        assert review.verdict in ("pass", "attention"), review.reason
        assert review.length == pytest.approx(LENGTH, rel=5e-4)  # closed form, straight runs and quarter circles
        assert np.nanmedian(review.contours[0]["rib_width"]) == pytest.approx(1.2, abs=0.002)
        model = review.document["model"]
        assert (model["file"], model["sha256"]) == ("in memory", "")
        names = {p["id"]: p["name"] for p in model["parts"]}
        joint = review.document["joints"][0]
        assert ([names[i] for i in joint["cover"]], [names[i] for i in joint["base"]]) == (["lid"], ["case"])
    assert reviews[0].contours[0].points[0][2] == pytest.approx(7.999999, abs=1e-5)


@pytest.mark.parametrize("model", [3, None, [], {}, {"case": "not a shape", "lid": 4}])
def test_what_is_no_shape_is_refused(model):
    with pytest.raises(UsageError):
        seamcheck.review(model)
