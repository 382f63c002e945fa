"""Hard seams: contours, sections, uneven ground, several loops, what stands beside the seam (OCP)."""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from dataclasses import replace
from itertools import pairwise
from typing import Any

import numpy as np

from ..defects import rectangle
from ..ops import box, cut, cylinder, fuse, stretch
from ..pair import CLEAR, DARK, draw
from ..relief import Ground, Region, draw_on, sharp_parallels
from ..section import chain
from ..solid import moved, swept_solid
from ..spec import Spec
from ..track import AnyTrack, Line, Track, c_shape, circle, closed_spline, ellipse, l_shape, rounded_rectangle
from ..variants import bumped, divided, flat_rim, tilted_cover
from .truth import (
    HardModel,
    Node,
    PathTruth,
    SeamTruth,
    Value,
    along,
    broken,
    moved_by,
    straight,
    stretch_of,
    values_of,
)

SEAMS: dict[str, Callable[[], HardModel]] = {}
"""Name -> the model."""

RECT = Spec(track=rounded_rectangle(60, 40, 9))
PLAIN = replace(RECT, draft_inner=0.0, draft_outer=0.0)
HERE = np.eye(4)
LAND = ("clamp_land", "clamp_tilt")


def _hard(make: Callable[[], HardModel]) -> Callable[[], HardModel]:
    SEAMS[make.__name__.replace("_", "-")] = make
    return make


def _model(
    spec: Spec,
    note: str,
    shapes: tuple[Any, Any] | None = None,
    paths: Sequence[PathTruth] | None = None,
    leave_out: tuple[str, ...] = (),
    rules: tuple[str, ...] | None = None,
    **more: Any,
) -> HardModel:
    """One pair with one seam, placed as the Spec says."""
    cover, base = shapes or draw(spec)
    values = values_of(spec, leave_out)
    dark, clear = Node(spec.base_name, base, colour=DARK), Node(spec.cover_name, cover, colour=CLEAR)
    nodes = [(dark, HERE), (clear, HERE)]
    if spec.cover_first:
        nodes.reverse()
    state = "touching" if spec.gap == 0 else "gap" if spec.gap > 0 else "overlap"
    welded = abs(spec.gap + 0.4) <= 0.05  # a note then, not a broken rule
    if rules is None:
        rules = tuple(rule for rule in broken(values) if not (welded and rule == "contact-gap"))
    more = {"rib_on": spec.rib_on, "state": state, "rules": rules, **more}
    first = int(spec.cover_first)
    seam = SeamTruth(1 - first, first, tuple(paths or (along(spec.track, values),)), **more)
    whole = HardModel(Node("weather station", None, tuple(nodes)), (seam,), note=note, unit=spec.unit)
    return whole if np.array_equal(spec.matrix, HERE) else whole.turned(spec.matrix)


def _family(name: str, spec: Spec, note: str) -> None:
    SEAMS[name] = lambda: _model(spec, note)


for _name, _spec, _note in (
    ("circle", replace(RECT, track=circle(30)), "A seam without a straight run."),
    ("ellipse", replace(RECT, track=ellipse(45, 30)), "Spline faces all round."),
    ("free-form", replace(RECT, track=closed_spline(), top_fillet=0.15), "A free curve with fillets."),
    ("l-shape", replace(RECT, track=l_shape()), "One corner turns the other way."),
    ("c-shape", replace(RECT, track=c_shape()), "Two corners turn the other way."),
    (
        "filleted",
        replace(RECT, top_fillet=0.2, root_fillet=0.15, draft_outer=2.0),
        "The flat of the rib's top ends in fillets; drafts differ.",
    ),
    (
        "widely-rounded",
        replace(
            RECT,
            rib_width=0.7,
            top_fillet=0.38,
            rib_height_inner=1.2,
            rib_height_outer=1.2,
            draft_inner=1.0,
            lip_height_inner=0.4,
            lip_height_outer=0.4,
        ),
        "Fillets of the rib's top hide how steeply it falls.",
    ),
    (
        "free-form-recessed",
        replace(
            RECT,
            track=closed_spline(),
            outer="wall",
            trap_width_outer=1.8,
            draft_inner=1.5,
            draft_outer=1.5,
            top_fillet=0.2,
            rim=1.2,
            slit=0.15,
            turn=(35, -20, 50),
            shift=(10, 20, -30),
        ),
        "A free curve with fillets, its cover in a pocket.",
    ),
    ("recessed", replace(RECT, outer="wall", trap_width_outer=2.0), "The cover lies in a pocket of the base."),
    (
        "recessed-turned",
        replace(RECT, outer="wall", trap_width_outer=2.0, turn=(35, -20, 50), shift=(200, -90, 40), cover_first=True),
        "Turned anywhere, cover first.",
    ),
    ("overlapping", replace(RECT, gap=-0.4), "Drawn in the welded position."),
    ("small-gap", replace(RECT, gap=0.05), "Drawn a little apart."),
    ("joint-axis-along-y", replace(RECT, turn=(-90, 0, 0)), "The light travels along y."),
    ("upside-down", replace(RECT, turn=(180, 0, 0)), "The light travels upward."),
    ("inch", replace(RECT, unit="in"), "Length unit inch."),
    ("metre", replace(RECT, unit="m", turn=(10, 0, 0)), "Length unit metre."),
    ("foot", replace(RECT, unit="ft"), "Length unit foot."),
    ("flush-inside", replace(RECT, inner="flush", draft_inner=0.0), "No shoulder on the inner side."),
    ("flush-outside", replace(RECT, outer="flush", draft_outer=0.0), "No shoulder on the outer side."),
    ("hanging-lip-outside", replace(RECT, outer="hang"), "A lip of the cover closes the outer trap."),
    ("hanging-lip-inside", replace(RECT, inner="hang"), "A lip of the cover closes the inner trap."),
    ("open-outside", replace(RECT, outer="open"), "The outer trap ends at the edge of the floor."),
    ("rib-on-cover", replace(RECT, rib_on="cover"), "The rib hangs from the cover onto a flat rim."),
    (
        "rib-on-cover-turned",
        replace(RECT, rib_on="cover", top_fillet=0.15, root_fillet=0.1, turn=(0, 40, 0), cover_first=True),
        "A filleted rib on the cover, turned.",
    ),
    ("rib-on-cover-circle", replace(RECT, rib_on="cover", track=circle(25)), "A round rib on the cover."),
    ("chamfered-cover", replace(RECT, edge_chamfer=0.6), "The clamp land ends at a chamfer."),
    ("filleted-cover", replace(RECT, edge_fillet=0.6), "The clamp land ends at a rounding."),
    ("long-600", replace(RECT, track=rounded_rectangle(600, 60, 12)), "600 mm long."),
    ("wall-off-centre", replace(RECT, stem=(-1.6, 1.0)), "A narrower wall below the flange."),
    (
        "small-8",
        replace(
            RECT,
            track=rounded_rectangle(8, 6.5, 3.0),
            rib_width=0.6,
            trap_width_inner=0.8,
            trap_width_outer=0.8,
            lip_width=0.5,
            clamp_land=1.4,
            cover_thickness=1.0,
            rib_height_inner=0.8,
            rib_height_outer=0.8,
            lip_height_inner=0.25,
            lip_height_outer=0.25,
            wall_height=6,
            floor_thickness=1,
        ),
        "8 mm in all, the rib bends everywhere.",
    ),
    (
        "rib-0.3-wide",
        replace(
            RECT,
            rib_width=0.3,
            rib_height_inner=0.75,
            rib_height_outer=0.75,
            lip_height_inner=0.22,
            lip_height_outer=0.22,
        ),
        "A very narrow rib.",
    ),
    (
        "rib-4-wide",
        replace(RECT, rib_width=4.0, trap_width_inner=2.5, trap_width_outer=2.5, clamp_land=4.0),
        "A very wide rib.",
    ),
):
    _family(_name, _spec, _note)


# -- uneven ground, tight corners ---------------------------------------------------------------------
def _on(ground: Ground, note: str, **changes: Any) -> HardModel:
    """A seam on uneven ground: what is measured along v or across vertical walls.

    The light-side face bends by less than 5 degrees over the land, so the land reaches the cover's edge.
    """
    spec = replace(PLAIN, **changes)
    n = round(spec.track.length / 0.02)
    xy, _ = spec.track.at(np.linspace(0, spec.track.length, n, endpoint=False))
    points = np.column_stack([xy, ground.height(xy[:, 0], xy[:, 1])])
    path = PathTruth(points, True, ground.length(spec.track), values_of(spec, ("clamp_tilt",)))
    return _model(spec, note, draw_on(spec, ground), [path])


SEAMS["slope"] = lambda: _on(Ground("slope", 0.15), "Rib and cover follow a slope; the light stays upright.")
SEAMS["steep-slope"] = lambda: _on(Ground("slope", 0.45), "A steep slope, turned.", turn=(0, 25, 0))
SEAMS["cylinder"] = lambda: _on(Ground("cylinder", 120.0), "Rib and cover follow a cylinder.")
SEAMS["saddle"] = lambda: _on(Ground("saddle", 0.0018), "Rib and cover follow a saddle.")


@_hard
def tight_corners() -> HardModel:
    spec = replace(PLAIN, track=rounded_rectangle(60, 40, 0.8))
    region: Region = sharp_parallels(60, 40, 0.8)
    corners = tuple((x, y, 0.0, 4.5) for x in (-30.0, 30.0) for y in (-20.0, 20.0))
    path = along(spec.track, values_of(spec), not_within=corners)
    note = "The mid-line turns in 0.8 mm, less than the rib is wide; lips and traps turn sharp inside."
    return _model(spec, note, draw_on(spec, Ground("level", 0.0), region), [path])


# -- more than one loop -------------------------------------------------------------------------------
def _s_of(track: AnyTrack, x: float, y: float) -> float:
    """Arc length of a point that lies on a straight run."""
    assert isinstance(track, Track)
    before = 0.0
    for piece in track.pieces:
        if isinstance(piece, Line) and piece.distance(np.array([[x, y]]))[0] < 1e-9:
            return before + math.dist(piece.start, (x, y))
        before += piece.length
    raise ValueError(f"({x}, {y}) lies on no straight run")


def _divided(note: str, xs: Sequence[float], ys: Sequence[float]) -> HardModel:
    """Dividing walls at the given x (along y) and y (along x) in a housing of 80 x 50 mm."""
    spec = replace(RECT, track=rounded_rectangle(80, 50, 9))
    cover, base = draw(spec)
    for x in xs:
        base = divided(spec, base, x, 25.0, "y")
    for y in ys:
        base = divided(spec, base, y, 40.0, "x")
    feet = [(x, y) for x in xs for y in (-25.0, 25.0)] + [(x, y) for y in ys for x in (-40.0, 40.0)]
    crossings = [(x, y) for x in xs for y in ys]
    # beside a junction within the other wall's reach
    near = tuple((x, y, 0.0, spec.wall_face("inner") + 1.0) for x, y in feet + crossings)
    values, within = values_of(spec), values_of(spec, LAND)
    s = sorted(_s_of(spec.track, x, y) for x, y in feet)
    runs = [(a, (b - a) % spec.track.length) for a, b in zip(s, s[1:] + s[:1], strict=True)]
    paths = [stretch_of(spec.track, a, length, values, not_within=near) for a, length in runs]
    for x in xs:
        stops = [-25.0, *sorted(ys), 25.0]
        paths += [straight((x, a, 0), (x, b, 0), within, not_within=near) for a, b in pairwise(stops)]
    for y in ys:
        stops = [-40.0, *sorted(xs), 40.0]
        paths += [straight((a, y, 0), (b, y, 0), within, not_within=near) for a, b in pairwise(stops)]
    junctions = tuple((x, y, 0.0) for x, y in feet + crossings)
    return _model(spec, note, (cover, base), paths, junctions=junctions)


SEAMS["dividing-wall"] = lambda: _divided("A dividing wall: two T-junctions.", [6.0], [])
SEAMS["two-dividing-walls"] = lambda: _divided("Three chambers: four T-junctions.", [-14.0, 12.0], [])
SEAMS["crossing-walls"] = lambda: _divided("Four chambers: a crossing and four T-junctions.", [5.0], [-3.0])


@_hard
def two_covers_on_one_base() -> HardModel:
    left, right = RECT, replace(RECT, track=circle(22))
    (cover_a, base_a), (cover_b, base_b) = draw(left), draw(right)
    a, b = moved_by(-40), moved_by(40)
    base = fuse(moved(base_a, a), box((-9, -8, -14), (22, 8, -12)), moved(base_b, b))
    root = Node(
        "weather station",
        None,
        (
            (Node("left lid", cover_a, colour=CLEAR), a),
            (Node("sensor housing", base, colour=DARK), HERE),
            (Node("right lid", cover_b, colour=CLEAR), b),
        ),
    )
    seams = tuple(
        SeamTruth(i, 1, (replace(path, points=path.points + m[:3, 3]),))
        for i, m, path in ((0, a, along(left.track, values_of(left))), (2, b, along(right.track, values_of(right))))
    )
    return HardModel(root, seams, note="Two covers on one base: two seams.")


def _island(note: str, opening: bool) -> HardModel:
    outer = replace(RECT, track=rounded_rectangle(90, 70, 9))
    inner = replace(RECT, track=circle(16))
    cover, base = draw(outer)
    _, island = draw(inner)
    if opening:
        cover = cut(cover, cylinder((0, 0, -1), 16 - inner.rib_width / 2 - inner.clamp_land, 9))
    paths = [along(outer.track, values_of(outer)), along(inner.track, values_of(inner, () if opening else LAND))]
    return _model(outer, note, (cover, fuse(base, island)), paths)


SEAMS["nested-loops"] = lambda: _island("One cover, a loop within a loop.", opening=False)
SEAMS["window-frame"] = lambda: _island("A ring-shaped cover, welded outside and inside.", opening=True)


# -- interrupted, open, stepped, missing rib ----------------------------------------------------------
def _interrupted(note: str, gaps: Sequence[tuple[int, float]]) -> HardModel:
    """The rib is missing over ``length`` in the middle of the given straight runs (in order)."""
    spec, track = RECT, RECT.track
    cover, base = draw(spec)
    reach = spec.flank("outer", spec.rib_height) + 0.1
    spans = []
    for which, length in gaps:
        s = track.middle_of_run(which)
        base = cut(base, stretch(track, s, length, rectangle(-reach, reach, -spec.rib_height, 1.0)))
        spans.append((s - length / 2, length, s))
    paths, missing = [], []
    for (start, length, s), (following, _, _) in zip(spans, spans[1:] + spans[:1], strict=True):
        run = (following - start - length - 1e-9) % track.length + 1e-9
        ends = track.at(np.array([start, start + length, following]))[0]
        near = tuple((float(x), float(y), 0.0, 1.0) for x, y in ends)
        paths.append(stretch_of(track, start + length, run, values_of(spec), not_within=near))
        (x, y), _ = (a[0] for a in track.at(np.array([s])))
        missing.append((length, (float(x), float(y), 0.0)))
    return _model(spec, note, (cover, base), paths, rules=("seam-open",), interruptions=tuple(missing))


SEAMS["interrupted-once"] = lambda: _interrupted("The rib is missing over 2 mm.", [(0, 2.0)])
SEAMS["interrupted-three-times"] = lambda: _interrupted(
    "The rib is missing in three places.", [(0, 1.0), (1, 4.0), (2, 0.6)]
)
SEAMS["three-sides-only"] = lambda: _interrupted("A whole straight run of the rib is missing.", [(0, 41.0)])


@_hard
def two_levels() -> HardModel:
    """On one straight run rib top and cover lie 0.5 mm lower; the rib stays in contact."""
    spec = replace(PLAIN, rib_height_inner=1.5, rib_height_outer=1.5)
    cover, base = draw(spec)
    track, s, length, down = spec.track, spec.track.middle_of_run(0), 14.0, 0.5
    base = cut(base, stretch(track, s, length, rectangle(-0.75, 0.75, -down, 1.0)))
    cover = fuse(cover, stretch(track, s, length, rectangle(-1.0, 1.0, -down, 0.5)))
    top = spec.cover_thickness
    cover = cut(cover, stretch(track, s, length, rectangle(-4.0, spec.cover_edge + 1, top - down, top + 1)))
    (x, y), _ = (a[0] for a in track.at(np.array([s])))

    def is_low(points: np.ndarray) -> np.ndarray:
        p = np.asarray(points)
        return (np.abs(p[:, 0] - x) < length / 2) & (np.abs(p[:, 1] - y) < 0.5)

    height: Value = lambda points: np.where(is_low(points), 1.5 - down, 1.5)  # noqa: E731
    same = ("rib_width", "rib_width_top", "rib_width_mid", "rib_width_root", "gap", "cover_thickness")
    values: dict[str, Value] = {k: spec.truth().values[k] for k in (*same, "beam_clear", "clamp_land")}
    values.update(rib_height=height, rib_height_inner=height, rib_height_outer=height)
    near = tuple((float(x + side * length / 2), float(y), 0.0, 1.6) for side in (-1, 1))
    path = along(track, values, not_within=near)
    low = path.points.copy()
    low[is_low(low), 2] = -down
    note = "The rib's top steps down by 0.5 mm and up again."
    return _model(spec, note, (cover, base), [replace(path, points=low, length_open=2 * down)])


@_hard
def flat_on_flat() -> HardModel:
    """Lap contact without a rib."""
    cover, _ = draw(RECT)
    rim = replace(RECT, inner="open", outer="open", trap_width_inner=1.0, trap_width_outer=1.0)
    values = {k: RECT.truth().values[k] for k in ("gap", "cover_thickness", "beam_clear")}
    return _model(
        RECT,
        "Flat on flat, no rib.",
        (cover, flat_rim(rim)),
        [along(RECT.track, values)],
        rules=("rib-missing",),
        rib_on="none",
    )


# -- what touches beside the seam ---------------------------------------------------------------------
@_hard
def locating_tongues() -> HardModel:
    cover, base = draw(RECT)
    face = -RECT.wall_face("inner")
    for run in range(4):
        outline = rectangle(face - 1.2, face, -4.0, 0.3)
        cover = fuse(cover, stretch(RECT.track, RECT.track.middle_of_run(run), 5.0, outline))
    note = "Four tongues of the cover hang down inside and touch the wall's face; they don't stop it."
    return _model(RECT, note, (cover, base))


@_hard
def pressing_pins() -> HardModel:
    cover, base = draw(RECT)
    for x in (-15.0, 15.0):
        base = fuse(base, cut(cylinder((x, 0, -13), 3.0, 9.0), cylinder((x, 0, -12.5), 1.5, 20)))
        cover = fuse(cover, cylinder((x, 0, -8.0), 1.55, 8.5))
    note = "Two pins are drawn 0.05 mm too thick for their bosses: an overlap that is not the weld."
    return _model(RECT, note, (cover, base))


@_hard
def pressing_skirt() -> HardModel:
    """A round tongue all round inside, drawn 0.05 mm into the wall: a second closed overlap."""
    spec = replace(RECT, track=circle(30))
    cover, base = draw(spec)
    edge = -spec.wall_face("inner") + 0.05
    ring = swept_solid(spec.track, chain([(edge, -3.0, 0), (edge, 0.3, 0)]))
    hollow = swept_solid(spec.track, chain([(edge - 1.2, -4.0, 0), (edge - 1.2, 1.0, 0)]))
    note = "A tongue all round is drawn 0.05 mm into the wall: a closed overlap that is not the weld."
    cover = fuse(cover, cut(ring, hollow))
    # strictly the two touch there before the cover sinks at all
    return _model(spec, note, (cover, base), leave_out=("free_travel",), rules=(), may=("sink-travel",))


@_hard
def skirt_outside() -> HardModel:
    spec = replace(RECT, clamp_land=4.5)
    cover, base = draw(spec)
    inner = spec.wall_face("outer") + 0.2
    block = swept_solid(spec.track, chain([(spec.cover_edge, -4.0, 0), (spec.cover_edge, 0.5, 0)]))
    hollow = swept_solid(spec.track, chain([(inner, -5.0, 0), (inner, 0.0, 0)]))
    note = "The cover's skirt reaches 4 mm down outside the base, 0.2 mm beside its wall."
    return _model(spec, note, (fuse(cover, cut(block, hollow)), base))


@_hard
def busy_cover() -> HardModel:
    cover, base = draw(RECT)
    cover = fuse(cover, cylinder((-12, 0, 1.5), 5.0, 6.0), box((-20, -8, -3), (20, -7, 0.5)))
    cover = fuse(cover, box((-20, 6, -3), (20, 7, 0.5)), box((6, -4, 1.5), (9, 4, 2.3)))
    cover = cut(cover, box((12, -3, 1.2), (18, 3, 5)), cylinder((2, 0, -1), 1.5, 5))
    cover = cut(cover, box((2, 9, 1.5), (10, 10, 5)))
    note = "Dome, ribs below, embossing, window pocket, hole and engraving on the cover, away from the seam."
    return _model(RECT, note, (cover, base))


@_hard
def post_below_the_cover() -> HardModel:
    cover, base = draw(RECT)
    base = fuse(base, cylinder((4, 3, -13), 2.0, 12.7))
    note = "A post below the cover's middle leaves 0.3 mm: no section shows it, only the whole interface."
    return _model(RECT, note, (cover, base), rules=("sink-travel",))


@_hard
def tilted_land() -> HardModel:
    _, base = draw(RECT)
    path = along(RECT.track, values_of(RECT, clamp_tilt=4.0))
    return _model(RECT, "The land falls off by 4°.", (tilted_cover(RECT, 4.0), base), [path])


@_hard
def low_pad_on_open_floor() -> HardModel:
    spec = replace(RECT, outer="open", rib_height_outer=0.62, trap_width_outer=2.6, clamp_land=2.9)
    cover, base = draw(spec)
    s = spec.track.middle_of_run(0)
    base = bumped(spec, base, s, 6.0, (2.2, 3.0), 0.17)
    (x, y), _ = (a[0] for a in spec.track.at(np.array([s])))
    path = along(spec.track, values_of(spec), not_within=((float(x), float(y), 0.0, 3.5),))
    note = "A pad of 0.17 mm on the outer floor, too low for a lip, stops the cover after 0.45 mm."
    return _model(spec, note, (cover, base), [path], rules=("sink-travel",))
