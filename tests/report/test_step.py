"""The marked STEP file, read back by the project's own reader and, for its lines, by the kernel."""

import json
import shutil

import numpy as np
import pytest
from report_documents import hostile, housing
from shell import shell

from seamcheck.assembly import read_assembly
from seamcheck.pipeline import review
from seamcheck.report import facts
from seamcheck.report.step import OtherModel, mid_lines, render_step
from seamcheck.samples import FOLDER


@pytest.fixture(scope="module")
def model():
    return FOLDER / "clamp-land.step"


@pytest.fixture(scope="module")
def reviewed(model):
    return review(model).document


@pytest.fixture(scope="module")
def marked(model, reviewed, tmp_path_factory):
    path = tmp_path_factory.mktemp("marked") / "marked.step"
    path.write_bytes(render_step(reviewed, [model]))
    return path


@pytest.fixture(scope="module")
def parts(marked):
    return read_assembly(marked).parts


def middle(part):
    from OCP.Bnd import Bnd_Box
    from OCP.BRepBndLib import BRepBndLib

    box = Bnd_Box()
    box.SetGap(0.0)
    BRepBndLib.AddOptimal_s(part.shape, box, False, False)
    low, high = np.array(box.Get()).reshape(2, 3)
    return (low + high) / 2


def test_the_model_keeps_names_places_faces_and_colours(parts, model):
    original = read_assembly(model).parts
    kept = [p for p in parts if p.kind == "solid"]
    assert [p.name for p in kept] == [p.name for p in original]
    assert [p.faces for p in kept] == [p.faces for p in original]
    for a, b in zip(kept, original, strict=True):
        np.testing.assert_allclose(middle(a), middle(b), atol=1e-6)
        np.testing.assert_allclose(a.colour, b.colour, atol=0.005)
    cover = next(p for p in kept if "lid" in p.name)
    assert cover.transparency >= 0.5


def test_a_plate_stands_at_every_finding_in_the_colour_of_its_severity(parts, reviewed):
    numbered = [n for n in facts.numbered_findings(reviewed) if n.finding["at"]]
    assert numbered
    plates = {p.name.split(",")[0]: p for p in parts if p.name.startswith("finding ")}
    assert len(plates) == len(numbered)
    for n in numbered:
        plate = plates[f"finding {n.number}"]
        np.testing.assert_allclose(middle(plate), n.finding["at"], atol=1e-4)
        red, green, _ = plate.colour
        assert (red > 2 * green) == (n.finding["severity"] == "must-fix")


def test_seam_faces_and_faces_of_findings_are_bodies_of_their_own(parts):
    names = [p.name for p in parts]
    assert "seam j1, rib top" in names
    assert "seam j1, opposite the rib" in names
    assert any(name.startswith("face of finding 1") for name in names)
    assert all(p.kind == "sheet" for p in parts if p.name.startswith(("seam", "face", "finding")))


def test_the_mid_line_has_the_length_of_the_seam(marked, reviewed):
    # Read by the kernel alone: the project's reader passes over bodies without faces. The bar is 0.05 %.
    from OCP.BRepGProp import BRepGProp
    from OCP.GProp import GProp_GProps
    from OCP.STEPControl import STEPControl_Reader
    from OCP.TopAbs import TopAbs_EDGE, TopAbs_FACE
    from OCP.TopExp import TopExp_Explorer

    reader = STEPControl_Reader()
    reader.ReadFile(str(marked))
    reader.TransferRoots()
    explorer, length = TopExp_Explorer(reader.OneShape(), TopAbs_EDGE, TopAbs_FACE), 0.0
    while explorer.More():
        properties = GProp_GProps()
        BRepGProp.LinearProperties_s(explorer.Current(), properties)
        length += properties.Mass()
        explorer.Next()
    assert length == pytest.approx(sum(c["length_mm"] for _, c in facts.paths(reviewed)), rel=5e-4)


def test_the_header_carries_the_caution(marked):
    head = marked.read_bytes()[:2000].decode("ascii").replace("\r", "").replace("\n", "")
    assert "never an approval" in head


def test_another_model_beside_the_document_is_refused(model, reviewed, tmp_path):
    other = tmp_path / "other.step"
    shutil.copy(model, other)
    other.write_bytes(other.read_bytes() + b"\n")
    with pytest.raises(OtherModel, match="not the file that was reviewed"):
        render_step(reviewed, [other])


def test_lines_of_a_plane_seam_are_lines_and_arcs_in_space():
    lines = mid_lines(housing())
    assert [len(line["pieces"]) for line in lines] == [8]
    for piece in lines[0]["pieces"]:
        assert {round(p[2], 6) for p in piece} == {24.0}
        if len(piece) == 3:  # the middle of an arc lies on the circle of radius 10 about its corner
            x, y, _ = piece[1]
            assert np.hypot(abs(x) - 50, abs(y) - 30) == pytest.approx(10, abs=1e-3)
    assert mid_lines(hostile())


def test_the_shell_writes_it_and_never_over_the_model(model, reviewed, tmp_path):
    copy, target = tmp_path / "gauge.step", tmp_path / "marked.step"
    shutil.copy(model, copy)
    before = copy.read_bytes()
    refused = shell("review", copy, "--step", copy)
    assert refused.exit_code == 2
    assert "is the model itself" in refused.output
    assert copy.read_bytes() == before
    document = tmp_path / "review.json"
    document.write_text(json.dumps(reviewed))
    refused = shell("report", document, "--step", target)
    assert refused.exit_code == 2
    assert "--model" in refused.output
    done = shell("report", document, "--step", target, "--model", copy)
    assert done.exit_code == 1  # the verdict's, as a limit is broken
    assert len(read_assembly(target).parts) > 3


def test_the_faces_of_the_seam_lie_where_the_parts_meet(parts, reviewed):
    # The drawing of this sample states a ring of radius 32 mm, 1.2 mm wide, at z = 0 (sample_models/README.md).
    top = next(p for p in parts if p.name == "seam j1, rib top")
    opposite = next(p for p in parts if p.name == "seam j1, opposite the rib")
    from OCP.BRepGProp import BRepGProp
    from OCP.GProp import GProp_GProps

    properties = GProp_GProps()
    BRepGProp.SurfaceProperties_s(top.shape, properties)
    assert properties.Mass() == pytest.approx(np.pi * (32.6**2 - 31.4**2), rel=1e-3)
    for sheet in (top, opposite):
        assert middle(sheet)[2] == pytest.approx(0.0, abs=1e-6)
    assert top.colour != opposite.colour


def test_the_document_names_the_side_of_the_clamp_land_and_the_faces_of_the_seam(reviewed):
    # The lid's free edge lies outside this sample's ring.
    (contour,) = reviewed["joints"][0]["contours"]
    assert contour["clamp_side"] == "outer"
    faces = reviewed["joints"][0]["seam_faces"]
    assert {f["part"] for f in faces["rib"]} == {reviewed["joints"][0]["rib_part"]}
    assert {f["part"] for f in faces["opposite"]} == set(reviewed["joints"][0]["cover"])
    assert all(f["step_entity"] for side in faces.values() for f in side)


def test_two_runs_write_the_same_bytes(marked, model, reviewed):
    assert render_step(reviewed, [model]) == marked.read_bytes()
