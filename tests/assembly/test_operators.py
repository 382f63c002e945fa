"""Placements by an operator that mirrors or scales (ISO 10303-42), which the CAD kernel leaves out."""

from __future__ import annotations

import re
from pathlib import Path

import cadquery as cq
import numpy as np
import pytest
from builder.hard import HardModel, Node, SeamTruth, write_model
from builder.hard.compare import differences
from builder.hard.truth import along, values_of
from builder.pair import draw
from builder.spec import Spec
from builder.track import l_shape
from reading_models import extent, replace, volume, write
from scipy.spatial.transform import Rotation

from seamcheck.assembly import read_assembly
from seamcheck.errors import NotReviewed
from seamcheck.pipeline import review_model
from seamcheck.settings.settings import Settings

AXES = np.eye(3)
TURNED = Rotation.from_euler("xyz", (20, -35, 50), degrees=True).as_matrix()


def place_by_operator(path: Path, axes, origin, scale, count: int = 1) -> None:
    """Put an operator with three axes (rows), an origin and a scale in place of so many placements."""
    points = [f"#{90001 + i}=DIRECTION('',({x:.12f},{y:.12f},{z:.12f}));\n" for i, (x, y, z) in enumerate(axes)]
    points.append(f"#90004=CARTESIAN_POINT('',({','.join(f'{c:.9f}' for c in origin)}));\n")
    scale = "$" if scale is None else f"{scale:.6f}"
    body = f"CARTESIAN_TRANSFORMATION_OPERATOR_3D('','','',#90001,#90002,#90004,{scale},#90003)"
    replace(path, r"#(\d+) = ITEM_DEFINED_TRANSFORMATION[^;]*;", rf"#\1 = {body};", count=count)
    replace(path, r"ENDSEC;\s*END-ISO", "".join(points) + "ENDSEC;\nEND-ISO", count=1)


def wedge_and_lid(path: Path, unit: str = "MM") -> Path:
    """A wedge of 30 x 20 x 10 mm (3000 mm³ by closed form) and a box."""
    wedge = cq.Workplane().polyline([(0, 0), (30, 0), (0, 20)]).close().extrude(10)
    lid = cq.Workplane().box(40, 30, 2, centered=False)
    return write(path, [("wedge", wedge, cq.Location((1, 2, 3))), ("lid", lid, cq.Location((0, 0, 10)))], unit=unit)


@pytest.mark.parametrize(("unit", "mm"), [("MM", 1.0), ("INCH", 25.4)])
def test_a_mirrored_placement_is_followed(tmp_path, unit, mm):
    path = wedge_and_lid(tmp_path / "a.step", unit)
    place_by_operator(path, AXES * [[1], [-1], [1]], (5, 6, 7), None)
    wedge, lid = read_assembly(path).parts
    low, high = np.array([0, -20, 0]) + mm * np.array([5, 6, 7]), np.array([30, 0, 10]) + mm * np.array([5, 6, 7])
    assert extent(wedge.shape) == pytest.approx((*low, *high), abs=1e-5)
    assert volume(wedge.shape) == pytest.approx(3000.0)  # positive: its faces point outward
    assert (wedge.name, wedge.path) == ("wedge", ("station", "wedge"))
    assert "Placed mirrored." in wedge.notes
    assert not lid.notes


def test_a_scaled_and_turned_placement_is_followed(tmp_path):
    path = wedge_and_lid(tmp_path / "a.step")
    place_by_operator(path, TURNED.T, (5, 6, 7), 0.5)
    wedge, _ = read_assembly(path).parts
    corners = np.array([(x, y, z) for x, y in ((0, 0), (30, 0), (0, 20)) for z in (0, 10)])
    true = 0.5 * corners @ TURNED.T + [5, 6, 7]  # axis k is where the k-th direction of the part goes
    assert extent(wedge.shape) == pytest.approx((*true.min(axis=0), *true.max(axis=0)), abs=1e-5)
    assert volume(wedge.shape) == pytest.approx(3000.0 / 8)
    assert any("scale of 0.5" in note for note in wedge.notes)


def test_what_places_no_occurrence_or_has_no_axes_is_refused(tmp_path):
    path = wedge_and_lid(tmp_path / "a.step")
    place_by_operator(path, AXES * [[1], [-1], [1]], (5, 6, 7), None)
    sound = path.read_bytes()
    lacking = re.sub(rb"'','','',#90001,#90002,#90004,\$", b"'','','',$,$,#90004,2.0", sound)
    stray = sound.replace(
        b"CARTESIAN_TRANSFORMATION_OPERATOR_3D", b"ITEM_DEFINED_TRANSFORMATION('','',#11,#15);\n"
        b"#90009=CARTESIAN_TRANSFORMATION_OPERATOR_3D"
    )  # fmt: skip
    for data in (lacking, stray):
        assert data != sound
        path.write_bytes(data)
        with pytest.raises(NotReviewed, match="mirrored or scaled") as caught:
            read_assembly(path)
        assert caught.value.code == "unsupported"


def test_a_pair_placed_mirrored_has_the_numbers_of_its_mirror_image(tmp_path):
    """An L, so that the mirror image is another outline than the original."""
    spec = Spec(track=l_shape(), draft_inner=0.0, draft_outer=0.0)
    cover, base = draw(spec)
    root = Node("weather station", None, tuple((Node(n, s), np.eye(4)) for n, s in (("case", base), ("lid", cover))))
    path = write_model(tmp_path / "a.step", HardModel(root))
    place_by_operator(path, AXES * [[1], [-1], [1]], (5, 6, 7), 1.0, count=2)
    line = along(spec.track, values_of(spec))
    mirrored = type(line)((line.points * [1, -1, 1] + [5, 6, 7])[::-1], True, line.length, line.values)
    model = HardModel(root, (SeamTruth(1, 0, (mirrored,)),), says=("Placed mirrored.",))
    assert differences(review_model([path], Settings().changed({"beam-margin": 0.0})), model) == []  # land from the rib
