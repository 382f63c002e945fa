"""Call-outs of a file: written by the kernel as AP242 data, read from its text, taken where they hold for the seam."""

from __future__ import annotations

from pathlib import Path

import numpy as np
import pytest
from builder import Spec, build, circle
from OCP.Interface import Interface_Static
from OCP.Message import Message
from OCP.STEPCAFControl import STEPCAFControl_Controller, STEPCAFControl_Writer
from OCP.STEPControl import STEPControl_StepModelType
from OCP.TCollection import TCollection_ExtendedString
from OCP.TDF import TDF_Label
from OCP.TDocStd import TDocStd_Document
from OCP.XCAFDimTolObjects import XCAFDimTolObjects_GeomToleranceObject
from OCP.XCAFDimTolObjects import XCAFDimTolObjects_GeomToleranceType as Type
from OCP.XCAFDoc import XCAFDoc_DocumentTool, XCAFDoc_GeomTolerance

from seamcheck.assembly.callouts import call_outs
from seamcheck.assembly.text import StepText
from seamcheck.kernel import Body
from seamcheck.pipeline import remembered, review_model
from seamcheck.settings.file import parse_settings
from seamcheck.settings.settings import Settings

FLATNESS = Type.XCAFDimTolObjects_GeomToleranceType_Flatness
PROFILE = Type.XCAFDimTolObjects_GeomToleranceType_ProfileOfSurface
POSITION = Type.XCAFDimTolObjects_GeomToleranceType_Position


def level_faces(shape, z):
    """Plane faces of a shape at a height."""
    body = Body(shape)
    level = (np.abs(body.planes[:, 2]) > 0.999) & (np.abs(np.abs(body.planes[:, 3]) - abs(z)) < 1e-6)
    return [body.faces[i] for i in np.flatnonzero(level)]


def written(path: Path, stated) -> Path:
    """A round housing, drawn touching, with call-outs: (part 0 or 1, height of its faces, type, mm).

    The kernel writes millimetres and calls them metres; the text is put right.
    """
    Message.DefaultMessenger_s().ChangePrinters().Clear()
    STEPCAFControl_Controller.Init_s()
    Interface_Static.SetCVal_s("write.step.schema", "AP242DIS")
    document = TDocStd_Document(TCollection_ExtendedString("BinXCAF"))
    shapes = XCAFDoc_DocumentTool.ShapeTool_s(document.Main())
    tool = XCAFDoc_DocumentTool.DimTolTool_s(document.Main())
    parts = [part[1] for part in build(Spec(track=circle(16), draft_inner=0.0, draft_outer=0.0)).parts]
    labels = [shapes.AddShape(shape, False) for shape in parts]
    for which, z, kind, value in stated:
        for face in level_faces(parts[which], z):
            label = TDF_Label()
            label = shapes.AddSubShape(labels[which], face)
            tolerance = tool.AddGeomTolerance()
            tool.SetGeomTolerance(label, tolerance)
            what = XCAFDimTolObjects_GeomToleranceObject()
            what.SetType(kind)
            what.SetValue(value)
            XCAFDoc_GeomTolerance.Set_s(tolerance).SetObject(what)
    writer = STEPCAFControl_Writer()
    writer.SetDimTolMode(True)
    writer.Transfer(document, STEPControl_StepModelType.STEPControl_AsIs)
    writer.Write(str(path))
    path.write_text(path.read_text().replace("SI_UNIT($,.METRE.)", "SI_UNIT(.MILLI.,.METRE.)"))
    return path


COVER, BASE = (
    [part[0] for part in build(Spec(track=circle(16))).parts].index(name) for name in ("window lid", "sensor housing")
)


@pytest.fixture(scope="module")
def file(tmp_path_factory):
    stated = [
        (BASE, 0.0, FLATNESS, 0.25),
        (COVER, 0.0, PROFILE, 0.2),
        (COVER, 2.0, FLATNESS, 0.5),
        (BASE, 0.0, POSITION, 0.3),
    ]
    return written(tmp_path_factory.mktemp("callouts") / "housing.step", stated)


def notes(document):
    return [note["text"] for note in document["model"]["notes"]]


def test_call_outs_go_into_the_tolerance_table(file, tmp_path):
    """Collapse 0.4, rib 0.25 and cover 0.2 out of flat: -0.05 mm is left at the lowest place."""
    document = review_model([file], Settings(), cache=tmp_path)
    assert remembered([file], Settings(), None, False, tmp_path) == document
    settings = document["settings"]
    assert settings["tolerances"] == pytest.approx({"flatness_rib": 0.25, "flatness_cover": 0.2})
    assert settings["from"]["tolerance.flatness_rib"] == "model"
    left = document["joints"][0]["interface"]["local_collapse_left"]["value"]
    assert left == pytest.approx(0.4 - 0.25 - 0.2)
    assert "flatness-stack" in [finding["rule"] for finding in document["findings"]]
    said = notes(document)
    assert sum("from the model" in text for text in said) == 2
    assert any("0.50 mm on faces beside the seam" in text for text in said)
    assert any("not evaluated: 1 of position" in text for text in said)


def test_the_settings_win_and_that_is_said(file):
    document = review_model([file], parse_settings("[tolerance]\nflatness_rib = 0.05\n"))
    assert document["settings"]["tolerances"] == pytest.approx({"flatness_rib": 0.05, "flatness_cover": 0.2})
    assert document["settings"]["from"]["tolerance"] == "file"
    assert document["joints"][0]["interface"]["local_collapse_left"]["value"] == pytest.approx(0.15)
    assert any("the settings say flatness_rib = 0.05 mm, and that counts" in text for text in notes(document))


LINES = """#1=(LENGTH_UNIT()NAMED_UNIT(*)SI_UNIT(.MILLI.,.METRE.));
#2=(CONVERSION_BASED_UNIT('INCH',#3)LENGTH_UNIT()NAMED_UNIT(#4));
#10=LENGTH_MEASURE_WITH_UNIT(LENGTH_MEASURE(0.004),#2);
#11=(LENGTH_MEASURE_WITH_UNIT()MEASURE_REPRESENTATION_ITEM()
MEASURE_WITH_UNIT(LENGTH_MEASURE(0.2),#1)REPRESENTATION_ITEM(''));
#12=LENGTH_MEASURE_WITH_UNIT(LENGTH_MEASURE(0.1.2),#1);
#20=SHAPE_ASPECT('','',#99,.T.);
#21=COMPOSITE_GROUP_SHAPE_ASPECT('','',#99,.T.);
#22=SHAPE_ASPECT_RELATIONSHIP('','',#21,#20);
#30=GEOMETRIC_ITEM_SPECIFIC_USAGE('','PMI',#20,#98,#40);
#40=ADVANCED_FACE('',(#97),#96,.T.);
#50=FLATNESS_TOLERANCE('it''s; flat','of #7',#10,#20);
#51=(GEOMETRIC_TOLERANCE('Frame (2)',$,#11,#21)
GEOMETRIC_TOLERANCE_WITH_DATUM_REFERENCE((#95))SURFACE_PROFILE_TOLERANCE());
#52=FLATNESS_TOLERANCE('','',#94,#20);
#57=FLATNESS_TOLERANCE('','',#12,#20);
#53=(GEOMETRIC_TOLERANCE('','',#11,#20)POSITION_TOLERANCE());
#56=(FLATNESS_TOLERANCE()GEOMETRIC_TOLERANCE('','',#11,#20)GEOMETRIC_TOLERANCE_WITH_DEFINED_UNIT(#10));
#58=(GEOMETRIC_TOLERANCE('GENERAL_PROFILE','',#11,#24)SURFACE_PROFILE_TOLERANCE());
#24=PRODUCT_DEFINITION_SHAPE('','',#93);
#54=DIMENSIONAL_SIZE(#20,'diameter');
#55=DIMENSIONAL_SIZE(#20,'diameter');
"""


def test_records_as_other_programs_write_them():
    """Inches, measures that are items, groups, records of several types, a general profile: forms of ISO 10303-242.

    On the fourteen AP242 files of the NIST's public validation models (CTC 1 to 5, FTC 6 to 11) every flatness and
    profile on faces is found, with the value that the kernel's own reader gives where it gives one; two general
    profiles stand on whole parts, three tolerances are per length.
    """
    text = StepText(b"ISO-10303-21;\nHEADER;\nENDSEC;\nDATA;\n" + LINES.encode() + b"ENDSEC;\nEND-ISO-10303-21;\n")
    taken, said = call_outs("x.step", text, 0)
    assert [(c.kind, c.number, c.faces) for c in taken] == [("flatness", 50, (40,)), ("profile", 51, (40,))]
    assert [c.value for c in taken] == pytest.approx([0.1016, 0.2])
    assert len(said) == 1
    told = "2 of dimension; 2 of flatness without a value or a face; 1 of flatness per length; 1 of position; "
    told += "1 of profile of the surfaces of a whole part"
    assert told in said[0]


def test_call_outs_that_are_only_drawn_are_told():
    text = StepText(b"ISO-10303-21;\nDATA;\n#1=ANNOTATION_CURVE_OCCURRENCE('Flatness',(#2),#3);\nENDSEC;\n")
    taken, said = call_outs("x.step", text, 0)
    assert not taken
    assert "only as drawn lines and text" in said[0]
