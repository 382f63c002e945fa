"""Models of every kind that a seam comes in, drawn: what they cost tells where speed was not looked at.

The shapes are those of the tests (``tests/builder/hard``, ``tests/builder/joints``), each below 200 faces unless it is
faceted, with a seam below 500 mm. LADDERS are the same model in growing sizes.
"""

from __future__ import annotations

import math
import sys
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path
from typing import Any

sys.path.insert(0, str(Path(__file__).resolve().parents[1] / "tests"))

from builder import rounded_rectangle
from builder.hard import HARD, HardModel, Node, write_model
from builder.hard.clutter import assembly
from builder.hard.strangers import common, plate, wall
from builder.joints import JOINTS
from builder.ops import box, cut, cylinder, fuse
from builder.track import circle
from OCP.BRepPrimAPI import BRepPrimAPI_MakeCylinder, BRepPrimAPI_MakeSphere
from OCP.gp import gp_Ax2, gp_Dir, gp_Pnt

from benchmarks.models import HOUSING, Kind, housing

SHAPES: dict[str, str] = {
    "cylinder": "curved",
    "saddle": "curved",
    "dome": "domed",
    "free-form": "free-form",
    "all-nurbs-spline": "free-form",
    "filleted": "rounded",
    "widely-rounded": "rounded",
    "rounded-top": "rounded",
    "two-chambers-filleted": "rounded",
    "screws-beside-a-rib": "threads beside it",
    "flat-on-flat": "flat",
    "dividing-wall": "plain",
    "lamp": "domed",
    "filter-cup": "curved",
    "cabinet": "many solids",
}
"""Name of the drawing -> its kind, for the bar on seams up to 500 mm; also those of OWN."""

FACETED = ("every-face-a-triangle", "cover-of-triangles")
TRACK = rounded_rectangle(400, 300, 40)
_TOP = 2.0  # mm, thickness of the covers here


def draw_shape(name: str, folder: Path) -> Path:
    """The STEP file of a drawing of the tests."""
    path = folder / f"{name}.step"
    if not path.exists():
        write_model(path, (OWN.get(name) or HARD.get(name) or JOINTS[name])())
    return path


def lamp() -> HardModel:
    """A dome of 2 mm on a flange with 12 notches and 12 studs, welded to a ring: a seam of 346 mm on a circle."""
    track, centre = circle(55), -46.0
    ring = cut(plate(track, 8, -20, 0), plate(track, -6, -18, 2))
    ring = fuse(ring, wall(track, -0.6, 0.6, -1, 1))
    ball, hollow = (BRepPrimAPI_MakeSphere(gp_Pnt(0, 0, centre), radius).Shape() for radius in (70.0, 68.0))
    dome = common(cut(ball, hollow), plate(track, 20, 1, 60))
    flange = cut(plate(track, 8, 1, 3), plate(track, -6, 0, 4))
    turns = [2 * math.pi * k / 12 for k in range(12)]
    flange = cut(flange, *(cylinder((63 * math.cos(a), 63 * math.sin(a), 0), 2.0, 4.0) for a in turns))
    between = [a + math.pi / 12 for a in turns]
    studs = [cylinder((60.5 * math.cos(a), 60.5 * math.sin(a), 2.5), 1.0, 2.0) for a in between]
    cover = fuse(flange, dome, *studs)
    return HardModel(assembly(Node("lamp dome", cover), Node("lamp ring", ring)), ())


def filter_cup() -> HardModel:
    """A cup of 120 mm whose rim, and the lid on it, follow a cylinder of 100 mm across it."""
    track = circle(35)

    def across(radius: float) -> Any:
        axis = gp_Ax2(gp_Pnt(-100, 0, -100), gp_Dir(1, 0, 0))
        return BRepPrimAPI_MakeCylinder(axis, radius, 200).Shape()

    cup = cut(plate(track, 4, -120, 20), plate(track, -4, -117, 40))
    cup = fuse(common(cup, across(100)), common(wall(track, -0.6, 0.6, -25, 30), across(101)))
    lid = cut(common(plate(track, 4, -25, 20), across(103)), across(101))
    return HardModel(assembly(Node("filter lid", lid), Node("filter cup", cup)), ())


def cabinet() -> HardModel:
    """The logger's housing with four boards of ten chips each in it: 46 solids."""
    inside = []
    for n in range(4):
        x, z = -70.0 + 36.0 * n, -3.4
        inside.append(Node(f"board {n + 1}", box((x, -40, z), (x + 30, 40, z + 0.8))))
        for k in range(10):
            at = (x + 2.0 + 14.0 * (k % 2), -36.0 + 15.0 * (k // 2), z + 0.8)
            inside.append(Node(f"chip {n + 1}.{k + 1}", box(at, (at[0] + 10, at[1] + 10, at[2] + 1.0))))
    return HardModel(assembly(*inside, *_pair()), ())


OWN: dict[str, Callable[[], HardModel]] = {"lamp": lamp, "filter-cup": filter_cup, "cabinet": cabinet}


@dataclass(frozen=True)
class Ladder:
    """One model in growing sizes.

    Attributes
    ----------
    sizes : of what grows, ascending
    unit : of a size
    draw : (path, size) -> None
    spacing : (size) -> mm between stations; None for the usual one
    """

    sizes: tuple[float, ...]
    unit: str
    draw: Callable[[Path, float], Any]
    spacing: Callable[[float], float] | None = None


def _faces(path: Path, size: float) -> None:
    housing(path, Kind(int(size), "many"))


def _bodies(path: Path, size: float) -> None:
    """Chips on a board within the housing, in rows; they touch the board."""
    columns = 40
    board = Node("board", box((-70, -50, -3.4), (70, 50, -2.6)))
    places = [(-67.0 + 3.4 * (k % columns), -47.0 + 2.4 * (k // columns)) for k in range(int(size))]
    chips = [Node(f"C{k}", box((x, y, -2.6), (x + 2.0, y + 1.2, -2.2))) for k, (x, y) in enumerate(places)]
    write_model(path, HardModel(assembly(board, *chips, *_pair()), ()))


def _pair() -> tuple[Node, Node]:
    from builder.pair import draw

    cover, base = draw(HOUSING)
    return Node("logger lid", cover), Node("logger housing", base)


def _contact(path: Path, size: float) -> None:
    """A lid that lies flat on a rim; size: mm² of contact, by the width of the rim."""
    half = size / TRACK_LENGTH / 2
    case = cut(plate(TRACK, half, -10, 0), plate(TRACK, -half, -8, 2))
    write_model(path, HardModel(assembly(Node("logger lid", plate(TRACK, half, 0, _TOP)), Node("case", case)), ()))


def box_file(path: Path) -> Path:
    """A STEP file that holds one box: nothing to weld."""
    write_model(path, HardModel(assembly(Node("block", box((0, 0, 0), (30, 20, 10)))), ()))
    return path


def _plain(path: Path, size: float) -> None:
    housing(path, Kind(100))


TRACK_LENGTH = 2 * (320 + 220) + 2 * math.pi * 40
"""mm, of TRACK: two pairs of straight runs and a circle of 40 mm."""

LADDERS = {
    "faces": Ladder((200, 800, 3000), "faces", _faces),
    "stations": Ladder((1000, 3000, 9000), "stations", _plain, lambda size: 0.5 * 1000 / size),
    "contact area": Ladder((1500, 4500, 13500), "mm²", _contact),
    "bodies": Ladder((20, 100, 500), "bodies", _bodies),
}

__all__ = ["FACETED", "LADDERS", "SHAPES", "Ladder", "box_file", "draw_shape"]
