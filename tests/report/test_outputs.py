"""Other files made from a review: read back by libraries that know nothing of seamcheck."""

import csv
import io
import math
from itertools import pairwise

import ezdxf
import numpy as np
import pytest
import trimesh
from report_browser import CHROMIUM, needs_browser
from report_documents import HOSTILE, hostile, housing, not_reviewed, rounded_rectangle, two_joints, with_junction
from telling import telling

from seamcheck.catalogue.cautions import CAUTIONS
from seamcheck.errors import UsageError
from seamcheck.report import facts, pdf
from seamcheck.report.csv import render_csv
from seamcheck.report.dxf import render_dxf
from seamcheck.report.glb import render_glb
from seamcheck.report.notebook import render_fragment, render_frame, stations_frame
from seamcheck.report.pictures import render_pictures
from seamcheck.report.plan import plan_frame
from seamcheck.report.review import Review
from seamcheck.report.section import solids, trap_area
from seamcheck.sections.pieces import Piece, lines_and_arcs

PERIMETER = 382.831853  # rounded rectangle 120 x 80, r = 10: 2 * (100 + 60) + 2 * pi * 10


def table(document):
    """The lines of the table without those that say what it is worth."""
    return [line for line in io.StringIO(render_csv(document), newline="") if not line.startswith("#")]


def test_csv_holds_every_station_and_value():
    document = housing(step=2.0)
    rows = list(csv.DictReader(table(document)))
    stations = document["joints"][0]["contours"][0]["stations"]
    assert len(rows) == len(stations["s"])
    for i in (0, 17, 70, len(rows) - 1):
        assert float(rows[i]["s_mm"]) == stations["s"][i]
        assert float(rows[i]["rib_width_mm"]) == stations["rib_width"][i]
        assert float(rows[i]["melt_area_mm2"]) == stations["melt_area"][i]
        assert rows[i]["wall_width_mm"] == ""
        assert "wall_width: broad" in rows[i]["not_measured"]
    narrow = next(i for i, s in enumerate(stations["s"]) if s >= 136)
    assert "rib-width" in rows[narrow]["findings"]


def test_csv_says_what_it_is_worth_above_the_table_and_pandas_passes_over_it():
    pandas = pytest.importorskip("pandas")
    document = hostile() | {"seamcheck": '1,2;3"4'}
    document["model"]["file"] = 'a,b;c"d\n=1+1.step'
    lines = io.StringIO(render_csv(document), newline="").readlines()
    said = [line for line in lines if line.startswith("#")]
    assert lines[: len(said)] == said
    assert "never an approval" in said[1]
    for word in ("Class 4", "clamps crush", "fumes", "Pressure-tight"):
        assert word in " ".join(said)
    for row in csv.reader(said):  # one cell each, also where a spreadsheet divides at semicolons or tabs
        assert len(row) == 1
        assert not set(row[0]) & set(';\t"')
    frame = pandas.read_csv(io.StringIO(render_csv(document)), comment="#")
    stations = document["joints"][0]["contours"][0]["stations"]
    assert list(frame["s_mm"])[: len(stations["s"])] == stations["s"]
    assert frame["rib_width_mm"].dtype == float


@pytest.mark.parametrize("begin", ["=1+1", "+1", "-1", "@x", "\t=1", "\r=1"])
def test_no_cell_of_csv_is_a_formula(begin):
    # OWASP, "CSV Injection": cells that begin with = + - @ tab or carriage return are read as formulas.
    document = hostile()
    document["joints"][0]["id"] = begin
    for f in document["findings"]:
        f["joint"] = begin
    document["findings"][0]["rule"] = begin
    for row in csv.reader(io.StringIO(render_csv(document), newline="")):
        for cell in row:
            try:
                float(cell)
            except ValueError:
                assert not cell.startswith(("=", "+", "-", "@", "\t", "\r"))


def entities(document):
    drawing = ezdxf.read(io.StringIO(render_dxf(document)))
    assert drawing.audit().errors == []
    return drawing, list(drawing.modelspace())


def test_dxf_contour_has_the_length_of_the_seam_as_lines_and_arcs_and_as_a_polyline():
    # Closed form of the perimeter; the bar is 0.05 %.
    drawing, found = entities(housing())
    assert drawing.units == ezdxf.units.MM
    length = 0.0
    kinds = {"LINE": 0, "ARC": 0}
    for e in found:
        if e.dxf.layer == "SEAM_LINES_ARCS":
            kinds[e.dxftype()] += 1
            if e.dxftype() == "LINE":
                length += e.dxf.start.distance(e.dxf.end)
            else:
                assert e.dxf.radius == pytest.approx(10, abs=0.02)
                length += e.dxf.radius * math.radians((e.dxf.end_angle - e.dxf.start_angle) % 360)
    assert length == pytest.approx(PERIMETER, rel=5e-4)
    assert kinds == {"LINE": 4, "ARC": 4}
    polyline = next(e for e in found if e.dxf.layer == "SEAM_POLYLINE")
    flat = [(v.x, v.y) for v in ezdxf.path.make_path(polyline).flattening(0.001)]
    assert polyline.closed
    assert np.hypot(*np.diff(flat, axis=0).T).sum() == pytest.approx(PERIMETER, rel=5e-4)


def test_dxf_markers_stand_at_the_findings_and_areas_at_their_distance():
    document = housing()
    drawing, found = entities(document)
    points = sorted((round(e.dxf.location.x, 3), round(e.dxf.location.y, 3)) for e in found if e.dxftype() == "POINT")
    ats = [place["at"] for f in document["findings"] for place in (f, *f["places"]) if place["at"]]
    assert len(ats) > len(document["findings"])  # one of them has further places
    assert points == sorted((round(at[0], 3) + 0.0, round(at[1], 3) + 0.0) for at in ats)
    corridor = [e for e in found if e.dxf.layer == "LIGHT_CORRIDOR"]
    xs = np.concatenate([[p[0] for p in e.get_points("xy")] for e in corridor])
    assert xs.max() == pytest.approx(60.75, abs=1e-6)  # half of the rib's width beside the mid-line
    land = np.concatenate([[p[0] for p in e.get_points("xy")] for e in found if e.dxf.layer == "CLAMP_LAND"])
    assert land.max() == pytest.approx(60 + 3.2 - 0.3, abs=1e-6)  # the cover's edge less its chamfer
    assert {e.dxf.layer for e in found} <= {layer.dxf.name for layer in drawing.layers}
    assert "approval" in " ".join(e.dxf.text for e in found if e.dxftype() == "TEXT")


def test_dxf_has_outlines_of_the_parts_and_dimensions_that_measure_the_findings():
    # The base's widest body is the rounded rectangle of 120 x 80 mm, 2.55 mm further out.
    document = housing()
    drawing, found = entities(document)
    base = np.concatenate([[p[:2] for p in e.get_points("xy")] for e in found if e.dxf.layer == "OUTLINE_BASE"])
    np.testing.assert_allclose(np.ptp(base, axis=0), (125.1, 85.1), atol=0.05)
    assert any(e.dxf.layer == "OUTLINE_COVER" for e in found)
    measured = {round(e.get_measurement(), 3) for e in found if e.dxftype() == "DIMENSION"}
    values = {f["rule"]: round(f["value"], 3) for f in document["findings"] if f["value"] is not None}
    for rule in ("rib-width", "clamp-land"):
        assert values[rule] in measured
    texts = [e for e in found if e.dxftype() == "TEXT" and e.dxf.layer.startswith("FINDING")]
    places = [(e.dxf.insert.x, e.dxf.insert.y, len(e.dxf.text) * e.dxf.height) for e in texts]
    for i, (x, y, wide) in enumerate(places):
        for a, b, other in places[:i]:
            assert abs(y - b) > 1.6 or x > a + other or a > x + wide
    assert not drawing.audit().errors


def test_dxf_of_open_paths_joints_and_hostile_names_reads_back():
    for document in (with_junction(), two_joints(), hostile(), not_reviewed(), housing(step=2.0, view=False)):
        _, found = entities(document)
        for e in found:
            if e.dxftype() == "TEXT":
                assert not set(e.dxf.text) & set("\n\r\\^")
    assert render_dxf(hostile()) == render_dxf(hostile())


@pytest.mark.parametrize("closed", [True, False])
def test_lines_and_arcs_stay_within_tolerance_on_an_ellipse(closed):
    # An ellipse holds no line and no circle: many pieces, each within the tolerance of the true curve.
    t = np.linspace(0, 2 * np.pi, 2000, endpoint=False)
    points = np.column_stack([60 * np.cos(t), 40 * np.sin(t)])
    pieces = lines_and_arcs(points, closed, 0.003)
    # Perimeter of the ellipse 60 / 40: 4 a E(m), 317.3087918 (scipy.special.ellipe).
    full = sum(p.length for p in pieces)
    assert full == pytest.approx(317.3087918, rel=1e-4 if closed else 1e-3)
    for a, b in pairwise(pieces):
        assert a.end == b.start
    assert len(pieces) < 200


def test_length_of_an_arc_piece():
    # Bulge 1 is a half circle (tan(pi/4)).
    assert Piece((0, 0), (2, 0), 1.0).length == pytest.approx(math.pi)
    assert Piece((0, 0), (3, 4)).length == 5


@pytest.mark.parametrize("beam", [(0, 0, -1), (0, 0, 1), (1, 0, 0), (0, -1, 0), (0.6, 0, -0.8)])
def test_the_plan_is_a_right_handed_view_against_the_light(beam):
    frame = plan_frame(beam)
    axes = np.array([frame.right, frame.up, frame.toward])
    np.testing.assert_allclose(axes @ axes.T, np.eye(3), atol=1e-12)
    assert np.linalg.det(axes) == pytest.approx(1)
    np.testing.assert_allclose(frame.toward, -np.asarray(beam))


def test_glb_holds_named_parts_seam_and_findings_in_metres_with_y_up():
    document = housing(step=2.0)
    scene = trimesh.load(io.BytesIO(render_glb(document)), file_type="glb")
    names = set(scene.graph.nodes_geometry)
    assert {"station housing", "station lid", "sensor board", "seam j1 c1"} <= names
    assert sum(name.startswith("finding ") for name in names) == sum(f["at"] is not None for f in document["findings"])
    # glTF 2.0, section 3.4: metres, +Y up. The lid's highest face lies at z = 31 mm of the model.
    assert scene.bounds[1][1] == pytest.approx(0.031, abs=1e-6)
    assert scene.bounds[1][0] == pytest.approx(0.0632, abs=3e-3)
    seam = next(g for name, g in scene.geometry.items() if name.startswith("seam"))
    assert seam.is_watertight
    # Tube round a closed curve (Pappus): area of the 8-gon of radius 0.45 times the length.
    octagon = 2 * math.sqrt(2) * 0.45**2
    assert abs(seam.volume) == pytest.approx(octagon * PERIMETER, rel=2e-3)
    assert render_glb(document) == render_glb(document)


def test_glb_markers_stand_at_the_findings():
    document = housing(step=2.0)
    scene = trimesh.load(io.BytesIO(render_glb(document)), file_type="glb")
    for n in facts.numbered_findings(document):
        node = next(name for name in scene.graph.nodes_geometry if name.startswith(f"finding {n.number} "))
        matrix, geometry = scene.graph[node]
        centre = trimesh.transform_points([scene.geometry[geometry].bounds.mean(axis=0)], matrix)[0]
        x, y, z = n.finding["at"]
        np.testing.assert_allclose(centre * 1000, [x, z, -y], atol=0.01)


def test_glb_of_hostile_and_empty_documents_is_valid():
    scene = trimesh.load(io.BytesIO(render_glb(hostile())), file_type="glb")
    assert HOSTILE in set(scene.graph.nodes_geometry)
    assert len(render_glb(housing(step=4.0, view=False))) > 1000
    with pytest.raises(UsageError, match="nothing to write"):
        render_glb(not_reviewed())


def test_pictures_are_one_png_for_each_placed_finding_with_tame_file_names():
    from PIL import Image

    document = hostile()
    document["findings"] = document["findings"][:2]
    document["findings"][0]["rule"] = "../../x y$"
    pictures = render_pictures(document, dpi=60)
    assert len(pictures) == 2
    for name, png in pictures.items():
        assert set(name) <= set("abcdefghijklmnopqrstuvwxyz0123456789-.")
        assert ".." not in name
        image = Image.open(io.BytesIO(png))
        assert image.size == (624, 372)
        assert len(image.convert("RGB").getcolors(1_000_000)) > 50


def test_section_outlines_become_areas_and_the_drawn_trap_has_the_stated_area():
    import shapely

    square = np.array([[0, 0, 4, 0], [4, 3, 4, 0], [0, 3, 4, 3], [0, 3, 0, 0]])
    hole = np.array([[1, 1, 2, 1], [2, 1, 2, 2], [2, 2, 1, 2], [1, 1, 1, 2]])
    shapes = solids(np.vstack([square, hole]), np.zeros(8, dtype=int))
    assert shapes[0].area == pytest.approx(12 - 1)
    assert trap_area(shapely.box(0.75, -1.2, 9, -0.4), 1, 0.8).area == pytest.approx(0.8, abs=1e-6)


def test_notebook_shows_verdict_and_findings_and_runs_nothing():
    fragment = render_fragment(hostile())
    assert "<script" not in fragment.lower().replace("&lt;script", "")
    assert "<img" not in fragment
    assert "Rib width" in fragment
    assert "approval" in fragment
    frame = render_frame(hostile())
    assert frame.count("<") == 2
    assert 'sandbox="allow-scripts allow-modals"' in frame
    assert CAUTIONS[0][:40] in frame


def test_a_review_shows_itself_in_a_notebook():
    shown = Review(housing(step=4.0, view=False))
    assert shown._repr_html_().startswith("<div>")
    assert len(shown.stations()) == len(shown.contours[0].s)


def test_a_notebook_that_holds_a_review_is_a_sound_notebook():
    nbformat = pytest.importorskip("nbformat")
    for document in (hostile(), not_reviewed(), housing(step=4.0, view=False)):
        shown = nbformat.v4.new_output("display_data", {"text/html": Review(document)._repr_html_()})
        cell = nbformat.v4.new_code_cell("review", outputs=[shown])
        text = nbformat.writes(nbformat.v4.new_notebook(cells=[cell]))
        nbformat.validate(nbformat.reads(text, as_version=4))


def test_stations_as_a_data_frame():
    document = two_joints()
    frame = stations_frame(document)
    assert set(frame["joint"]) == {"j1", "j2"}
    assert len(frame) == sum(len(c["stations"]["s"]) for _, c in facts.paths(document))
    first = frame[frame["joint"] == "j1"]
    assert first["rib_width"].min() == pytest.approx(0.48, abs=0.01)
    assert first["wall_width"].isna().all()


@needs_browser
@pytest.mark.parametrize(
    ("paper", "size"), telling([("A4", (595, 842)), ("letter", (612, 792))], [("letter", (612, 792))], several=True)
)
def test_pdf_has_proper_paper_and_a_section_for_each_finding(paper, size, monkeypatch):
    # ISO 216 A4 210 x 297 mm and ANSI letter 8.5 x 11 in, in points of 1/72 inch.
    import pypdf

    document = housing(step=1.0)
    monkeypatch.setenv("SEAMCHECK_PAPER", paper)
    reader = pypdf.PdfReader(io.BytesIO(pdf.render_pdf(document)))
    assert {(round(float(p.mediabox.width)), round(float(p.mediabox.height))) for p in reader.pages} == {size}
    texts = [p.extract_text() for p in reader.pages]
    assert 8 <= len(texts) <= 20
    assert "Limits are broken" in texts[0]
    assert "Next steps." in texts[0]  # the first page is the summary, the findings follow
    assert "Findings one by one" in texts[1]
    for number, text in enumerate(texts, 1):
        for told in (document["model"]["file"], document["model"]["sha256"][:12], f"page {number} of {len(texts)}"):
            assert told in text
    assert all(len(text) > 400 for text in texts)  # no page is mostly blank
    whole = "\n".join(texts)
    for n in facts.numbered_findings(document):
        assert n.finding["message"].split(";")[0][:30] in " ".join(whole.split())
    assert whole.count("rib width 0.4") >= 1
    assert "Class 4" in whole
    assert "pre-check, not an approval" in texts[-1]


def test_paper_that_there_is_not_is_refused(monkeypatch):
    monkeypatch.setenv("SEAMCHECK_PAPER", "foolscap")
    with pytest.raises(UsageError, match="A4 or letter"):
        pdf.render_pdf(housing(step=4.0, view=False))


def test_without_a_browser_the_message_says_what_to_do(monkeypatch):
    monkeypatch.setenv("SEAMCHECK_BROWSER", "no-such-browser")
    with pytest.raises(pdf.NoBrowser, match="--html"):
        pdf.render_pdf(housing(step=4.0, view=False))


@needs_browser
def test_a_browser_that_fails_is_named(monkeypatch, tmp_path):
    broken = tmp_path / "broken-browser"
    broken.write_text("#!/bin/sh\necho 'no display' >&2\nexit 3\n")
    broken.chmod(0o755)
    monkeypatch.setenv("SEAMCHECK_BROWSER", str(broken))
    with pytest.raises(pdf.PrintFailed, match="no display"):
        pdf.render_pdf(housing(step=4.0, view=False))
    assert CHROMIUM


def test_made_seam_has_the_closed_form_length():
    assert rounded_rectangle(120, 80, 10, 0.5)[4] == pytest.approx(PERIMETER, abs=1e-6)


def test_texts_of_findings_in_a_drawing_do_not_lie_on_each_other_and_sections_stand_beside_it():
    document = housing()
    first = next(f for f in document["findings"] if f["at"])
    document["findings"] = [{**first, "id": f"{first['id']}-{i}"} for i in range(4)]
    space = ezdxf.read(io.StringIO(render_dxf(document))).modelspace()
    labels = [t.dxf.insert for t in space.query("TEXT") if t.dxf.layer.startswith("FINDING")]
    assert len(labels) == 4
    for i, a in enumerate(labels):
        assert all(abs(a.y - b.y) >= 1.6 for b in labels[i + 1 :])  # the height of the letters
    seam = max(p[0] for line in space.query('LWPOLYLINE[layer=="SEAM_POLYLINE"]') for p in line.get_points("xy"))
    section = [p for line in space.query('LWPOLYLINE[layer=="SECTION_BASE"]') for p in line.get_points("xy")]
    assert section
    assert min(x for x, _ in section) > seam
