"""Solids mended face by face: what comes is what the kernel's reader makes of a whole body, and nothing else is taken.

The outside reference is the kernel's own mending of whole bodies, and closed forms of the shapes (from memory).
"""

from __future__ import annotations

import math

import cadquery as cq
import numpy as np
import pytest
from OCP.BRep import BRep_Tool
from OCP.BRepCheck import BRepCheck_Analyzer
from OCP.BRepGProp import BRepGProp
from OCP.GProp import GProp_GProps
from OCP.TopAbs import TopAbs_EDGE, TopAbs_FACE, TopAbs_SOLID, TopAbs_VERTEX
from OCP.TopoDS import TopoDS
from reading_models import box, replace, volume, write
from telling import telling

from seamcheck.assembly import read_assembly
from seamcheck.assembly.bodies import NeedsRepairs, product_bodies, sound_solids
from seamcheck.assembly.kernel_reader import Repairs, transfer
from seamcheck.assembly.products import placed_products
from seamcheck.assembly.shapes import explore
from seamcheck.assembly.soundness import Faces
from seamcheck.samples import samples

RING = 2.0 * math.pi**2 * 20.0 * 3.0**2  # mm³ of a torus: 2 pi² R r²
SHAPES = {  # a shape, and its volume in mm³ where a closed form is known
    "block with a round hole": (lambda: box(30, 20, 10).cut(hole(15, 10, 4)), 6000.0 - math.pi * 160.0),
    "half disc": (lambda: cq.Workplane().circle(8).extrude(5).intersect(box(20, 20, 20)), math.pi * 64.0 * 5.0 / 4.0),
    "cylinder": (lambda: cq.Workplane().circle(7).extrude(9), math.pi * 441.0),
    "ball": (lambda: cq.Workplane().sphere(6), math.pi * 288.0),
    "ring": (lambda: cq.Workplane(obj=cq.Solid.makeTorus(20, 3)), RING),
    "cone": (lambda: cq.Workplane(obj=cq.Solid.makeCone(6, 0, 9)), math.pi * 108.0),
    "rounded block": (lambda: box(30, 20, 10).edges().fillet(2), None),
    "free form": (lambda: cq.Workplane().spline([(0, 0), (9, 4), (20, 0), (12, -7)]).close().extrude(6), None),
    "ellipse": (lambda: cq.Workplane().ellipse(9, 5).extrude(4), None),
}
PRECISION = 1e-7  # mm, what the files written here state


def hole(x, y, radius):
    return cq.Workplane().center(x, y).circle(radius).extrude(10)


def products(path, repairs):
    document = transfer(path.name, path.read_bytes(), repairs, lambda *_: None)
    return document, [product.shape for product in placed_products(document)]


def facts(shape):
    """(f, 5): area, edges, largest tolerance of an edge and of a corner, and side of every face."""
    rows = []
    for face in explore(shape, TopAbs_FACE):
        area = GProp_GProps()
        BRepGProp.SurfaceProperties_s(face, area)
        edges = [TopoDS.Edge_s(edge) for edge in explore(face, TopAbs_EDGE)]
        corners = [TopoDS.Vertex_s(corner) for corner in explore(face, TopAbs_VERTEX)]
        loose = (
            max(map(BRep_Tool.Tolerance_s, edges), default=0.0),
            max(map(BRep_Tool.Tolerance_s, corners), default=0.0),
        )
        rows.append((area.Mass(), len(edges), *loose, int(face.Orientation().value)))
    return np.array(rows, dtype=float)


def assert_mended_as_a_whole(path):
    whole, by_face = products(path, Repairs.USUAL), products(path, Repairs.NOT_SOLIDS)
    for one, other in zip(whole[1], by_face[1], strict=True):
        bodies = sound_solids(other, PRECISION)
        assert len(bodies) == sum(1 for _ in explore(one, TopAbs_SOLID))
        for solid, body in zip(explore(one, TopAbs_SOLID), bodies, strict=True):
            assert BRepCheck_Analyzer(body.shape).IsValid()
            assert facts(body.shape) == pytest.approx(facts(solid), rel=1e-9, abs=1e-12)


@pytest.mark.parametrize("name", SHAPES)
def test_a_solid_mended_face_by_face_is_the_one_that_the_kernel_mends_as_a_whole(tmp_path, name):
    shape, closed_form = SHAPES[name]
    path = write(tmp_path / "part.step", [(name, shape(), cq.Location((1.0, 2.0, 3.0)))])
    assert_mended_as_a_whole(path)
    _, (product,) = products(path, Repairs.NOT_SOLIDS)
    (body,) = sound_solids(product, PRECISION)
    assert body.sound
    if closed_form is not None:
        assert Faces.of(body.shape).volume((5.0, -3.0, 2.0)) == pytest.approx(closed_form, rel=1e-6)


@pytest.mark.parametrize("name", telling([sample.name for sample in samples()], ["sound", "guide-draft"]))
def test_samples_mended_face_by_face_are_those_that_the_kernel_mends_as_a_whole(name):
    (file,) = [sample.file for sample in samples() if sample.name == name]
    assert_mended_as_a_whole(file)


def test_only_what_is_bent_or_does_not_meet_is_mended(tmp_path):
    _, (product,) = products(
        write(tmp_path / "block.step", [("block", SHAPES["block with a round hole"][0](), None)]), Repairs.NOT_SOLIDS
    )
    (solid,) = explore(product, TopAbs_SOLID)
    faces = Faces.of(solid)
    assert len(faces.every) == 7
    assert faces.face_one_way
    (bent,) = faces.to_mend(PRECISION)
    assert BRep_Tool.Surface_s(bent).__class__.__name__ == "Geom_CylindricalSurface"
    assert len(faces.to_mend(9.9)) == 1
    assert len(faces.to_mend(10.1)) == 5, "the faces beside edges of 10 mm, shorter than such a precision"


@pytest.mark.parametrize("off", [0.0005, 0.002, 0.015])
def test_corners_that_edges_miss_are_bridged_as_the_kernel_does_it(tmp_path, off):
    path = write(tmp_path / "block.step", [("block", SHAPES["block with a round hole"][0](), None)])
    replace(path, r"(VERTEX_POINT\('',#\d+\);\s*#\d+ = CARTESIAN_POINT\('',\(30\.,20\.,)10\.", rf"\g<1>{10 + off}", 1)
    assert_mended_as_a_whole(path)


def test_what_is_no_sound_solid_is_left_to_the_reader(tmp_path):
    plate = cq.Workplane(obj=cq.Face.makePlane(20, 10))
    hollow = box(30, 20, 10).cut(box(10, 10, 4).translate((5, 5, 3)))
    for name, shape in (("sheet", plate), ("hollow", hollow)):
        _, (product,) = products(write(tmp_path / f"{name}.step", [(name, shape, None)]), Repairs.NOT_SOLIDS)
        with pytest.raises(NeedsRepairs):
            sound_solids(product, PRECISION)
    (part,) = read_assembly([tmp_path / "hollow.step"]).parts
    assert volume(part.shape) == pytest.approx(6000.0 - 400.0, rel=1e-9)


def test_a_face_turned_over_or_gone_is_left_to_the_reader():
    from test_inside import block

    with pytest.raises(NeedsRepairs):
        sound_solids(block(turned=2), PRECISION)
    with pytest.raises(NeedsRepairs):
        sound_solids(block(all_turned=True), PRECISION)
    (sound,) = sound_solids(block(), PRECISION)
    (usual,) = product_bodies(block(), lambda _: True)
    assert facts(sound.shape) == pytest.approx(facts(usual.shape), rel=1e-9, abs=1e-12)
