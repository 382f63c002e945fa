"""Whether the faces of a closed body look the same way, and the volume that they enclose."""

from __future__ import annotations

import math

import pytest
from OCP.BRep import BRep_Builder
from OCP.BRepAlgoAPI import BRepAlgoAPI_Cut
from OCP.BRepBuilderAPI import BRepBuilderAPI_MakeSolid
from OCP.BRepPrimAPI import BRepPrimAPI_MakeBox, BRepPrimAPI_MakeCone
from OCP.gp import gp_Ax2, gp_Dir, gp_Pnt
from OCP.TopAbs import TopAbs_FACE
from OCP.TopoDS import TopoDS_Shell

from seamcheck.assembly.bodies import product_bodies
from seamcheck.assembly.shapes import explore
from seamcheck.assembly.soundness import Faces
from seamcheck.catalogue.say import say

VOLUME = 30.0 * 20.0 * 10.0 - math.pi * 10.0 / 3.0 * (16.0 + 12.0 + 9.0)
"""mm³: a block of 30 x 20 x 10 mm without a cone's stump of radii 4 and 3 mm: pi h / 3 (R² + R r + r²)."""


def block(turned: int | None = None, all_turned: bool = False):
    """The block with its hole, one face turned over, or all."""
    hole = BRepPrimAPI_MakeCone(gp_Ax2(gp_Pnt(15, 10, 0), gp_Dir(0, 0, 1)), 4.0, 3.0, 10.0).Shape()
    shape = BRepAlgoAPI_Cut(BRepPrimAPI_MakeBox(30.0, 20.0, 10.0).Shape(), hole).Shape()
    builder, shell = BRep_Builder(), TopoDS_Shell()
    builder.MakeShell(shell)
    for number, face in enumerate(explore(shape, TopAbs_FACE)):
        builder.Add(shell, face.Reversed() if all_turned or number == turned else face)
    shell.Closed(True)
    return BRepBuilderAPI_MakeSolid(shell).Solid()


@pytest.mark.parametrize("origin", [(0.0, 0.0, 0.0), (40.0, -7.0, 22.0)])
def test_the_volume_is_that_of_its_closed_form_from_everywhere(origin):
    assert Faces.of(block()).volume(origin) == pytest.approx(VOLUME, rel=1e-9)
    assert Faces.of(block(all_turned=True)).volume(origin) == pytest.approx(-VOLUME, rel=1e-9)


def test_a_body_with_faces_that_look_the_same_way_is_sound_and_one_inside_out_is_turned():
    (sound,) = product_bodies(block(), lambda _: True)
    (turned,) = product_bodies(block(all_turned=True), lambda _: True)
    assert sound.sound
    assert not sound.notes
    assert turned.notes == (say("part.inside-out"),)
    assert Faces.of(turned.shape).volume((0.0, 0.0, 0.0)) == pytest.approx(VOLUME, rel=1e-9)


@pytest.mark.parametrize("turned", range(7))
def test_a_body_of_which_one_face_is_turned_over_is_not_sound(turned):
    (body,) = product_bodies(block(turned), lambda _: True)
    assert not body.sound
    assert say("part.no-inside") in body.notes
