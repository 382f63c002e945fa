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
from builder.hard.strangers import plate
from builder.joints import JOINTS
from builder.ops import box, cut

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
}
"""Name of the drawing -> its kind, for the bar on seams up to 500 mm."""

FACETED = ("every-face-a-triangle", "cover-of-triangles")
TRACK = rounded_rectangle(400, 300, 40)
_TOP = 2.0  # mm, thickness of the covers here


def draw_shape(name: str, folder: Path) -> Path:
    """The STEP file of a drawing of the tests."""
    path = folder / f"{name}.step"
    if not path.exists():
        write_model(path, (HARD.get(name) or JOINTS[name])())
    return path


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
