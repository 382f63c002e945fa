"""The records of faces, held against the text of the file."""

import re

import cadquery as cq
import pytest
from OCP.BRep import BRep_Tool
from OCP.BRepAdaptor import BRepAdaptor_Surface
from OCP.TopAbs import TopAbs_FACE, TopAbs_VERTEX
from OCP.TopExp import TopExp_Explorer
from OCP.TopoDS import TopoDS
from reading_models import box, write

from seamcheck.assembly import read_assembly


def models():
    plate = box(60, 40, 5).edges("|Z").fillet(4).faces(">Z").workplane().rarray(9, 9, 4, 3).hole(3)
    # the kernel turns faces of this one and gives them in another order than the file
    dome = cq.Workplane().sphere(10).union(cq.Workplane().cylinder(20, 4)).edges().fillet(0.5)
    hollow = box(30, 30, 30).cut(box(10, 10, 10).translate((10, 10, 10)))  # a solid with a void
    return [("plate", plate, cq.Location((1, 2, 3), (1, 1, 0), 40)), ("dome", dome, None), ("hollow", hollow, None)]


def surface_in_text(text, face):
    """Record of the surface that an ADVANCED_FACE of the text lies on (the last reference in its record)."""
    record = re.search(rf"^#{face}\s*=\s*ADVANCED_FACE([^;]*);", text, re.MULTILINE)[1]
    surface = re.findall(r"#(\d+)", record)[-1]
    return re.search(rf"^#{surface}\s*=([^;]*);", text, re.MULTILINE)[1]


def corners_in_text(text, face):
    """Corner points of a face, by following the records one by one: slow, and apart from the reader's way."""

    def record(number):
        return re.search(rf"^#{number}\s*=\s*([^;]*);", text, re.MULTILINE)[1]

    points, waiting = set(), [face]
    while waiting:
        body = record(waiting.pop())
        if body.startswith("VERTEX_POINT"):
            point = record(re.findall(r"#(\d+)", body)[0])
            points.add(tuple(round(float(v), 3) + 0.0 for v in re.findall(r"-?\d+\.\d*(?:E[+-]?\d+)?", point)))
        elif body.startswith(("ADVANCED_FACE", "FACE_", "EDGE_LOOP", "VERTEX_LOOP", "ORIENTED_EDGE", "EDGE_CURVE")):
            waiting += [int(n) for n in re.findall(r"#(\d+)", body)]
    return points


@pytest.mark.parametrize("unit", ["MM", "INCH"])
def test_every_face_names_its_record_and_line(tmp_path, unit):
    path = write(tmp_path / "a.step", models(), unit=unit)
    text = path.read_text()
    lines = text.split("\n")
    size = {"MM": 1.0, "INCH": 25.4}[unit]
    kinds = {"GeomAbs_Plane": "PLANE", "GeomAbs_Cylinder": "CYLINDRICAL_SURFACE", 
             "GeomAbs_Torus": "TOROIDAL_SURFACE", "GeomAbs_Sphere": "SPHERICAL_SURFACE"}  # fmt: skip
    for part in read_assembly(path).parts:
        assert len(part.entities) == part.faces
        assert None not in part.entities
        explorer = TopExp_Explorer(part.shape, TopAbs_FACE)
        back = part.shape.Location().Inverted()
        for entity in part.entities:
            assert lines[entity.line - 1].startswith(f"#{entity.number} = ADVANCED_FACE")
            face = TopoDS.Face_s(explorer.Current())
            kind = BRepAdaptor_Surface(face).GetType().name
            assert kinds.get(kind, "B_SPLINE_SURFACE") in surface_in_text(text, entity.number)
            mine = set()
            vertices = TopExp_Explorer(face.Moved(back), TopAbs_VERTEX)
            while vertices.More():
                point = BRep_Tool.Pnt_s(TopoDS.Vertex_s(vertices.Current()))
                mine.add(tuple(round(v / size, 3) + 0.0 for v in (point.X(), point.Y(), point.Z())))
                vertices.Next()
            assert mine == corners_in_text(text, entity.number)
            explorer.Next()


def test_equal_bodies_in_one_place_get_none_rather_than_a_guess(tmp_path):
    path = write(tmp_path / "a.step", [("one", box(9, 8, 7), None), ("two", box(9, 8, 7), cq.Location((20, 0, 0)))])
    for part in read_assembly(path).parts:
        assert part.entities == (None,) * 6
