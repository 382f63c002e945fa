"""A model and its mirror image in the beam direction are never called identical."""

from __future__ import annotations

import copy
import math

import pytest
from telling import telling

from seamcheck.comparison.document import compare_documents
from seamcheck.comparison.text import full_report
from seamcheck.pipeline import review_model
from seamcheck.samples import samples
from seamcheck.settings.settings import Settings


@pytest.fixture(scope="module")
def document():
    return review_model((next(s.file for s in samples() if s.name == "sound"),), Settings())


def mirrored(document):
    """The document of the model mirrored at the plane of its flat seam: the light alone is reversed."""
    other = copy.deepcopy(document)
    for joint in other["joints"]:
        joint["beam"] = [-c for c in joint["beam"]]
    return other


def test_the_reversed_light_is_told(document):
    found = compare_documents(document, mirrored(document))
    assert not found["identical"]
    assert any("opposite side" in sentence for sentence in found["warnings"]) or found["motion"]["kind"] != "none"
    assert list(full_report(found))


def test_the_model_itself_is_identical(document):
    found = compare_documents(document, copy.deepcopy(document))
    assert found["identical"]
    assert found["warnings"] == []


@pytest.fixture(scope="module")
def drawn(tmp_path_factory):
    """Reviews of a model and of STEP files of it: mirrored along the beam, and turned over."""
    from OCP.BRepBuilderAPI import BRepBuilderAPI_Transform
    from OCP.gp import gp_Ax1, gp_Ax2, gp_Dir, gp_Pnt, gp_Trsf

    from seamcheck.assembly import read_assembly
    from seamcheck.kernel.write_step import write_bodies

    folder, sound = tmp_path_factory.mktemp("drawn"), next(s.file for s in samples() if s.name == "sound")
    mirror, elsewhere, over = gp_Trsf(), gp_Trsf(), gp_Trsf()
    mirror.SetMirror(gp_Ax2(gp_Pnt(0, 0, 0), gp_Dir(0, 0, 1)))
    elsewhere.SetMirror(gp_Ax2(gp_Pnt(0, 0, 7.5), gp_Dir(0, 0, 1)))
    over.SetRotation(gp_Ax1(gp_Pnt(0, 0, 7.5), gp_Dir(1, 0, 0)), math.pi)
    documents = {"old": review_model((sound,), Settings())}
    for name, motion in (("mirrored", mirror), ("mirrored elsewhere", elsewhere), ("turned over", over)):
        file = folder / f"{name}.step"
        shapes = [BRepBuilderAPI_Transform(part.shape, motion, True).Shape() for part in read_assembly([sound]).parts]
        names = [part["name"] for part in documents["old"]["model"]["parts"]]
        write_bodies([(n, shape, (0.5, 0.5, 0.5, 1.0)) for n, shape in zip(names, shapes, strict=True)], file)
        documents[name] = review_model((file,), Settings())
    return documents


@pytest.mark.thorough
@pytest.mark.parametrize(
    ("name", "said"),
    telling(
        [
            ("mirrored", "may be mirrored"),
            ("mirrored elsewhere", "mirrored"),
            ("turned over", "turned over or mirrored"),
        ],
        [("mirrored", "may be mirrored")],
        several=True,
    ),
)
def test_a_step_file_mirrored_along_the_light_is_told(drawn, name, said):
    (old,), (new,) = (drawn[which]["joints"] for which in ("old", name))
    assert new["beam"] == pytest.approx([-c for c in old["beam"]])
    found = compare_documents(drawn["old"], drawn[name])
    assert not found["identical"]
    (warning,) = found["warnings"]
    assert "opposite side" in warning
    assert said in warning
