"""Models as they come: boards, batteries, screws, gaskets, odd names, nested and repeated products (OCP)."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from typing import Any

import numpy as np
from OCP.BRepPrimAPI import BRepPrimAPI_MakePrism
from OCP.gp import gp_Vec

from ..ops import box, compound, cut, cylinder, fuse
from ..pair import CLEAR, DARK, draw
from ..section import chain
from ..solid import level_face, swept_solid
from ..spec import Spec
from ..topology import mirrored, sheet
from ..track import circle, l_shape, rounded_rectangle
from .truth import HardModel, Node, SeamTruth, along, motion, moved_by, turned_seam, values_of

GREEN, GREY, RUBBER = (0.1, 0.4, 0.2), (0.6, 0.6, 0.62), (0.25, 0.25, 0.28)
HERE = np.eye(4)

SPEC = Spec(draft_inner=0.5, draft_outer=0.5, top_fillet=0.1)
"""A sound pair, 120 x 80 mm along the mid-line; the cavity's floor lies at z = -12."""

FLOOR = -SPEC.wall_height + SPEC.floor_thickness


def pair(spec: Spec = SPEC, names: tuple[str, str] = ("window lid", "sensor housing")) -> tuple[Node, Node]:
    """Cover and base as products."""
    cover, base = draw(spec)
    return Node(names[0], cover, colour=CLEAR), Node(names[1], base, colour=DARK)


def seam(spec: Spec = SPEC, cover: int = 0, base: int = 1, **more: Any) -> SeamTruth:
    """The seam of a Spec's pair, at these places in the file."""
    return SeamTruth(cover, base, (along(spec.track, values_of(spec)),), **more)


def assembly(*nodes: Node, name: str = "weather station") -> Node:
    return Node(name, None, tuple((node, HERE) for node in nodes))


def _clutter(*parts: Node, note: str, spec: Spec = SPEC, **more: Any) -> HardModel:
    """The sound pair and other parts; the pair comes in the middle, so that order does not help."""
    cover, base = pair(spec)
    half = len(parts) // 2
    order = [*parts[:half], base, *parts[half:], cover]
    return HardModel(assembly(*order), (seam(spec, len(order) - 1, half, **more),), note=note)


# -- what else lies in a housing ---------------------------------------------------------------------


def board_on_posts() -> HardModel:
    """A circuit board on four posts of the base, screwed down, with parts and a cable."""
    spec = SPEC
    cover, base = draw(spec)
    places = [(x, y) for x in (-48, 48) for y in (-28, 28)]
    for x, y in places:
        base = fuse(base, cylinder((x, y, FLOOR - 0.5), 3.0, 4.5))
    board = box((-52, -32, FLOOR + 4), (52, 32, FLOOR + 5.6))
    screws = []
    for x, y in places:
        board = cut(board, cylinder((x, y, FLOOR + 3), 1.6, 4))
        base = cut(base, cylinder((x, y, FLOOR + 0.5), 1.25, 4))
        shank = cylinder((x, y, FLOOR + 1), 1.25, 4.6)
        screws.append(Node("screw", fuse(shank, cylinder((x, y, FLOOR + 5.6), 2.4, 1.4)), colour=GREY))
    chips = [
        Node(f"part {i}", box((x, y, FLOOR + 5.6), (x + 6, y + 4, FLOOR + 6.8)), colour=GREY)
        for i, (x, y) in enumerate([(-30, -20), (-10, 5), (15, -12), (28, 10)])
    ]
    cable = Node("cable", cylinder((0, 0, FLOOR + 5.6), 1.5, 3.2), colour=RUBBER)
    nodes = [
        Node("board", board, colour=GREEN),
        *screws,
        Node("sensor housing", base, colour=DARK),
        *chips,
        cable,
        Node("window lid", cover, colour=CLEAR),
    ]
    return HardModel(
        assembly(*nodes), (seam(spec, len(nodes) - 1, 5),), note="A board with more contact than the cover."
    )


def battery_on_the_floor() -> HardModel:
    """A flat battery with 6 000 mm² of contact with the base; the seam has 460."""
    battery = Node("battery", box((-50, -30, FLOOR), (50, 30, FLOOR + 6)), colour=GREY)
    return _clutter(battery, note="The largest contact of the base is with the battery on its floor.")


def board_on_a_ledge() -> HardModel:
    """A board that lies on a ledge all round inside: a narrow band of contact that is no seam."""
    spec = SPEC
    cover, base = draw(spec)
    inner = -spec.wall_face("inner")
    base = fuse(base, _ring(spec, inner - 1.2, inner + 0.5, FLOOR - 0.5, -7.0))
    board = _plate(spec, inner - 0.1, -7.0, -5.4)
    nodes = (
        Node("board", board, colour=GREEN),
        Node("sensor housing", base, colour=DARK),
        Node("window lid", cover, colour=CLEAR),
    )
    return HardModel(
        assembly(*nodes), (seam(spec, 2, 1),), note="The board's contact with its ledge is a narrow band too."
    )


def gasket_beside_the_seam() -> HardModel:
    """A gasket on a ledge inside, which ends 0.3 mm below the cover."""
    return _gasket(0.3, "A second narrow band under the cover, a little apart.")


def gasket_touching() -> HardModel:
    """A gasket on a ledge inside that touches the cover: it offers the cover a second narrow band."""
    model = _gasket(0.0, "A second narrow band touches the cover; the gasket is small and no base.")
    return replace(model, reasons=("ambiguous",))


def _gasket(below: float, note: str) -> HardModel:
    spec = SPEC
    cover, base = draw(spec)
    inner = -spec.wall_face("inner")
    base = fuse(base, _ring(spec, inner - 3.0, inner + 0.5, FLOOR - 0.5, -4.0))
    gasket = _ring(spec, inner - 2.5, inner - 0.8, -4.0, -below)
    nodes = (
        Node("gasket", gasket, colour=RUBBER),
        Node("window lid", cover, colour=CLEAR),
        Node("sensor housing", base, colour=DARK),
    )
    leave_out = ("free_travel",)
    paths = (along(spec.track, values_of(spec, leave_out)),)
    return HardModel(assembly(*nodes), (SeamTruth(1, 2, paths, may=("sink-travel",)),), note=note)


def hundreds_of_parts() -> HardModel:
    """300 small boxes on a board."""
    board = Node("board", box((-52, -32, -9), (52, 32, -7.4)), colour=GREEN)
    chips = [
        Node(f"R{i}", box((x, y, -7.4), (x + 2.0, y + 1.2, -6.9)))
        for i, (x, y) in enumerate((-49.0 + 5 * (k % 20), -29.0 + 4 * (k // 20)) for k in range(300))
    ]
    return _clutter(board, *chips, note="300 parts that touch a board inside.")


def label_over_the_middle() -> HardModel:
    """A label on the cover, inside the seam, thinner than the search distance."""
    label = Node("label", box((-40, -20, 2.0), (40, 20, 2.1)), colour=GREY)
    return _clutter(label, note="A part lies flat on the cover's light side, beside the beam.")


def clamp_ring_above() -> HardModel:
    """A metal ring that stands on the clamp land all round, as the clamp would."""
    spec = SPEC
    ring = _ring(spec, spec.rib_width / 2 + 1.2, spec.cover_edge, 2.0, 8.0)
    paths = (along(spec.track, values_of(spec, ("clamp_land",), clamp_land=1.2)),)
    cover, base = pair(spec)
    return HardModel(
        assembly(Node("clamp", ring, colour=GREY), cover, base),
        (SeamTruth(1, 2, paths),),
        note="A clamp is drawn on the land: the land ends where something lies above it.",
    )


# -- product trees and names -------------------------------------------------------------------------


def five_levels_deep() -> HardModel:
    """The cover six placed sub-assemblies deep, the base in another branch."""
    cover, base = pair()
    steps = [motion((8, 3, -5), (10, -4, 2)), motion((0, 20, 0), (0, 7, 0)), moved_by(3, 4, 5)] * 2
    branch, whole = cover, HERE
    for i, step in enumerate(steps):
        branch, whole = Node(f"level {i}", None, ((branch, step),)), step @ whole
    frame = Node("frame", None, ((base, whole),))
    root = Node("weather station", None, ((branch, HERE), (frame, HERE)))
    return HardModel(root, (turned_seam(seam(), whole),), note="Placements multiply through six levels.")


def without_names() -> HardModel:
    """Every product and instance has an empty name."""
    cover, base = pair(names=("", ""))
    return HardModel(assembly(base, cover, name=""), (seam(SPEC, 1, 0),), note="No name anywhere.")


def equal_names() -> HardModel:
    """All parts bear the same name."""
    cover, base = pair(names=("body", "body"))
    third = Node("body", box((-50, -30, FLOOR), (50, 30, FLOOR + 6)))
    return HardModel(assembly(third, base, cover, name="body"), (seam(SPEC, 2, 1),), note="All named alike.")


def names_beyond_ascii() -> HardModel:
    """Names in several scripts, with quotes and backslashes."""
    cover, base = pair(names=("Déckel 'ü' \\ 盖", "корпус Ω"))
    return HardModel(assembly(base, cover, name="Wetterstation №1"), (seam(SPEC, 1, 0),), note="Any script.")


def both_in_one_product() -> HardModel:
    """Cover and base are two solids of one product."""
    cover, base = draw(SPEC)
    one = Node("housing", compound([base, cover]))
    return HardModel(assembly(one), (seam(SPEC, 1, 0),), note="Two solids of one product share name and path.")


def both_in_one_bare_product() -> HardModel:
    """As before, without an assembly around it."""
    cover, base = draw(SPEC)
    root = Node("housing", compound([cover, base]))
    return HardModel(root, (seam(SPEC, 0, 1),), note="No assembly structure at all.")


def sheets_beside_solids() -> HardModel:
    """Construction surfaces: a sketch plane inside, a parting surface at the rib top's level."""
    cover, base = pair()
    plane, parting = sheet((-40, -25), (40, 25), -6.0), sheet((-90, 50), (90, 80), 0.0)
    nodes = (Node("sketch plane", plane), base, Node("parting surface", parting), cover)
    return HardModel(assembly(*nodes), (seam(SPEC, 3, 1),), note="Sheet bodies are neither cover nor base.")


def mirrored_twin() -> HardModel:
    """A left and a right housing: the right one mirrored, as geometry."""
    spec = Spec(track=l_shape())
    cover, base = draw(spec)
    twins = [Node("lid right", mirrored(cover)), Node("housing right", mirrored(base))]
    places = [moved_by(10)] * 2 + [moved_by(-10)] * 2
    path = seam(spec).paths[0]
    other = replace(path, points=(path.points * [-1, 1, 1])[::-1])
    left, right = SeamTruth(0, 1, (path,)), SeamTruth(2, 3, (other,))
    nodes = [Node("lid left", cover, colour=CLEAR), Node("housing left", base, colour=DARK), *twins]
    seams = (turned_seam(left, places[0]), turned_seam(right, places[2]))
    root = Node("weather station", None, tuple(zip(nodes, places, strict=True)))
    return HardModel(root, seams, note="Mirrored parts come as geometry of their own.")


def three_instances() -> HardModel:
    """The same pair three times, one of them upside down."""
    spec = Spec(track=circle(22), top_fillet=0.15)
    cover, base = pair(spec)
    unit = assembly(base, cover, name="humidity capsule")
    places = [moved_by(-70, 0, 0), motion((0, 180, 0), (0, 0, 40)), motion((30, 0, 10), (75, 20, 0))]
    root = Node("mast", None, tuple((unit, m) for m in places))
    seams = tuple(turned_seam(seam(spec, 2 * i + 1, 2 * i), m) for i, m in enumerate(places))
    return HardModel(root, seams, note="One product in three places: three seams.")


def two_pairs_back_to_back() -> HardModel:
    """Two different housings whose floors touch over their whole area."""
    spec = Spec(track=rounded_rectangle(70, 50, 8))
    cover, base = pair(spec)
    m = motion((180, 0, 0), (0, 0, -2 * spec.wall_height))
    unit = assembly(base, cover, name="module")
    root = Node("stack", None, ((unit, HERE), (unit, m)))
    seams = (seam(spec, 1, 0), turned_seam(seam(spec, 3, 2), m))
    return HardModel(root, seams, note="The two bases have the largest contact of all.")


def in_metres() -> HardModel:
    cover, base = pair()
    return HardModel(assembly(cover, base), (seam(),), note="Length unit metre.", unit="m")


def in_inches_ap203() -> HardModel:
    cover, base = pair()
    return HardModel(assembly(cover, base), (seam(),), note="Inch, AP203.", unit="in", schema="AP203")


def in_feet_ap242() -> HardModel:
    cover, base = pair()
    return HardModel(assembly(cover, base), (seam(),), note="Foot, AP242.", unit="ft", schema="AP242")


def far_from_the_origin() -> HardModel:
    """The pair turned and 25 m away from the origin, as in a drawing of a whole plant."""
    cover, base = pair()
    model = HardModel(assembly(cover, base), (seam(),), note="Coordinates of 25 m.")
    return model.turned(motion((10, -25, 40), (25000, -18000, 3000)))


# -- helpers -----------------------------------------------------------------------------------------


def _ring(spec: Spec, inner: float, outer: float, low: float, high: float) -> Any:
    """The upright ring between two parallels of the mid-line."""
    face = level_face(spec.track, low, outer, inner)
    return BRepPrimAPI_MakePrism(face, gp_Vec(0, 0, high - low)).Shape()


def _plate(spec: Spec, edge: float, low: float, high: float) -> Any:
    return swept_solid(spec.track, chain([(edge, low, 0.0), (edge, high, 0.0)]))


CLUTTER: dict[str, Callable[[], HardModel]] = {
    f.__name__.replace("_", "-"): f
    for f in (
        board_on_posts,
        battery_on_the_floor,
        board_on_a_ledge,
        gasket_beside_the_seam,
        gasket_touching,
        hundreds_of_parts,
        label_over_the_middle,
        clamp_ring_above,
        five_levels_deep,
        without_names,
        equal_names,
        names_beyond_ascii,
        both_in_one_product,
        both_in_one_bare_product,
        sheets_beside_solids,
        mirrored_twin,
        three_instances,
        two_pairs_back_to_back,
        in_metres,
        in_inches_ap203,
        in_feet_ap242,
        far_from_the_origin,
    )
}
