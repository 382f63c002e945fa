"""What a hard model is (parts in a product tree) and what must come out of it; imports no kernel."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass, replace
from typing import Any

import numpy as np
from scipy.spatial import cKDTree

from ..spec import Spec
from ..track import AnyTrack

STEP = 0.02
"""mm between the samples of a true mid-line: its chords lie within 1e-5 mm of it for radii above 5 mm."""

Value = float | Callable[[np.ndarray], np.ndarray]


@dataclass(frozen=True, eq=False)
class PathTruth:
    """One path of the true mid-line.

    Attributes
    ----------
    points : (n, 3) mm, dense samples in assembly coordinates; of a closed path the first is not repeated
    closed : whether it returns to its start
    length : mm, exact (or by quadrature to 1e-6)
    values : quantity key -> true value, or a function from points (m, 3) to true values (m,)
    not_within : places (x, y, z, radius) beside which the values do not hold: corners, junctions, ends, steps
    length_open : by how much the length may be greater, mm: the risers of steps, which may count or not
    """

    points: np.ndarray
    closed: bool
    length: float
    values: Mapping[str, Value]
    not_within: tuple[tuple[float, float, float, float], ...] = ()
    length_open: float = 0.0

    def distance(self, points: np.ndarray) -> np.ndarray:
        """Distance (m,) of points (m, 3) from the mid-line."""
        p, a = np.asarray(points, dtype=float), self.points
        nearest = cKDTree(a).query(p)[1]
        best = np.full(len(p), np.inf)
        for step in (-1, 1):
            other = (nearest + step) % len(a) if self.closed else np.clip(nearest + step, 0, len(a) - 1)
            chord = a[other] - a[nearest]
            square = np.maximum((chord**2).sum(axis=1), 1e-30)
            share = np.clip(((p - a[nearest]) * chord).sum(axis=1) / square, 0, 1)
            best = np.minimum(best, np.linalg.norm(p - a[nearest] - share[:, None] * chord, axis=1))
        return best

    def holds(self, points: np.ndarray) -> np.ndarray:
        """(m,) bool: where the values hold."""
        ok = np.ones(len(points), dtype=bool)
        for x, y, z, radius in self.not_within:
            ok &= np.linalg.norm(np.asarray(points) - (x, y, z), axis=1) > radius
        return ok

    def value(self, key: str, points: np.ndarray) -> np.ndarray:
        """True values (m,) of a quantity at points (m, 3)."""
        true = self.values[key]
        return np.asarray(true(points)) if callable(true) else np.full(len(points), float(true))


@dataclass(frozen=True, eq=False)
class SeamTruth:
    """One seam that must be found.

    Attributes
    ----------
    cover, base : index of the part, in file order (depth first): part id ``p{index + 1}``
    paths : the true mid-line
    rules : keys of the must-fix rules that it breaks under the default limits; besides them only ``may`` may
        be reported as such
    rib_on, beam, state : as in the review document
    junctions : (x, y, z) mm
    interruptions : (length along the missing stretch, (x, y, z) of its middle)
    pieces : (index of cover or base, index of a solid that is a piece of the same part)
    """

    cover: int
    base: int
    paths: tuple[PathTruth, ...]
    rules: tuple[str, ...] = ()
    may: tuple[str, ...] = ()
    rib_on: str = "base"
    beam: tuple[float, float, float] = (0.0, 0.0, -1.0)
    state: str = "touching"
    junctions: tuple[tuple[float, float, float], ...] = ()
    interruptions: tuple[tuple[float, tuple[float, float, float]], ...] = ()
    pieces: tuple[tuple[int, int], ...] = ()


@dataclass(frozen=True, eq=False)
class Node:
    """A product: a body (or several in a compound), or an assembly of placed children.

    The same Node in several places is one product with several instances.
    """

    name: str
    shape: Any = None
    children: tuple[tuple[Node, np.ndarray], ...] = ()
    colour: tuple[float, ...] | None = None


@dataclass(frozen=True, eq=False)
class HardModel:
    """Parts and what must come out.

    Attributes
    ----------
    root : product tree; shapes in mm
    seams : every seam that must be found; () where the model can't be reviewed
    reasons : reason codes that are right answers; with seams given, an honest answer that is allowed as well
    note : what makes it hard, one sentence
    says : words that the answer must contain (the name of a broken part, for instance)
    """

    root: Node
    seams: tuple[SeamTruth, ...] = ()
    reasons: tuple[str, ...] = ()
    note: str = ""
    says: tuple[str, ...] = ()
    unit: str = "mm"
    schema: str = "AP214"
    name: str = ""

    def turned(self, matrix: np.ndarray) -> HardModel:
        """The whole model under a rigid motion (4, 4)."""
        children = tuple((child, matrix @ place) for child, place in self.root.children)
        return replace(
            self,
            root=replace(self.root, children=children),
            seams=tuple(turned_seam(seam, matrix) for seam in self.seams),
        )


def turned_seam(seam: SeamTruth, m: np.ndarray) -> SeamTruth:
    """The seam under a rigid motion (4, 4)."""

    def put(xyz: Any) -> tuple[float, float, float]:
        x, y, z = m[:3, :3] @ np.asarray(xyz, dtype=float) + m[:3, 3]
        return float(x), float(y), float(z)

    def back(true: Value) -> Value:
        if not callable(true):
            return true
        return lambda points: true((np.asarray(points) - m[:3, 3]) @ m[:3, :3])

    paths = tuple(
        replace(
            path,
            points=path.points @ m[:3, :3].T + m[:3, 3],
            values={key: back(true) for key, true in path.values.items()},
            not_within=tuple((*put(place[:3]), place[3]) for place in path.not_within),
        )
        for path in seam.paths
    )
    x, y, z = m[:3, :3] @ np.asarray(seam.beam)
    return replace(
        seam,
        paths=paths,
        beam=(float(x), float(y), float(z)),
        junctions=tuple(put(j) for j in seam.junctions),
        interruptions=tuple((length, put(at)) for length, at in seam.interruptions),
    )


def along(track: AnyTrack, values: Mapping[str, Value], z: float = 0.0, **more: Any) -> PathTruth:
    """The whole of a closed track at one height."""
    return stretch_of(track, 0.0, track.length, values, z, closed=True, **more)


def stretch_of(
    track: AnyTrack,
    start: float,
    length: float,
    values: Mapping[str, Value],
    z: float = 0.0,
    closed: bool = False,
    **more: Any,
) -> PathTruth:
    """A stretch of a track from arc length ``start`` on."""
    n = max(8, round(length / STEP))
    s = start + np.linspace(0, length, n + (not closed), endpoint=not closed)
    xy, _ = track.at(s)
    return PathTruth(np.column_stack([xy, np.full(len(xy), z)]), closed, length, dict(values), **more)


def straight(p: Any, q: Any, values: Mapping[str, Value], **more: Any) -> PathTruth:
    """A straight path from p to q."""
    p, q = np.asarray(p, dtype=float), np.asarray(q, dtype=float)
    length = float(np.linalg.norm(q - p))
    share = np.linspace(0, 1, max(8, round(length / STEP)) + 1)[:, None]
    return PathTruth(p + share * (q - p), False, length, dict(values), **more)


# What is true on every seam drawn with a Spec, whatever else the parts carry.
NEAR = (
    "rib_width",
    "rib_width_top",
    "rib_width_mid",
    "rib_width_root",
    "rib_height",
    "rib_height_inner",
    "rib_height_outer",
    "melt_area",
    "trap_area_inner",
    "trap_area_outer",
    "trap_room",
    "lip_gap_inner",
    "lip_gap_outer",
    "gap",
    "cover_thickness",
    "beam_clear",
    "free_travel",
    "clamp_land",
    "clamp_tilt",
)


def values_of(spec: Spec, leave_out: tuple[str, ...] = (), **other: Value) -> dict[str, Value]:
    """Closed-form values of a Spec without those left out, with others put in."""
    true = spec.truth().values
    found: dict[str, Value] = {k: true[k] for k in NEAR if k not in leave_out and true[k] == true[k]}
    return {**found, **other}


def broken(values: Mapping[str, Value], collapse: float = 0.4) -> tuple[str, ...]:
    """Must-fix rules that constant values break under the default limits (DESIGN section 3)."""

    def out(key: str, low: float = -np.inf, high: float = np.inf) -> bool:
        true = values.get(key, np.nan)
        return not callable(true) and bool(true < low - 1e-9 or true > high + 1e-9)

    height = values.get("rib_height", np.nan)
    is_stopped_by_the_floor = out("rib_height", collapse + 0.2) and values.get("free_travel", 0.0) == height
    checks = (
        ("rib-width", out("rib_width", 0.6, 2.5)),
        ("rib-height", out("rib_height", collapse + 0.2)),
        ("trap-room", out("trap_room", 1.2)),
        ("clamp-land", out("clamp_land", 1.0)),
        ("cover-thickness", out("cover_thickness", 0.8, 3.0)),
        ("contact-gap", out("gap", -0.5 * collapse, 0.5 * collapse)),
        ("sink-travel", out("free_travel", collapse + 0.2) and not is_stopped_by_the_floor),
        ("beam-path", out("beam_clear", 1.0)),
    )
    return tuple(rule for rule, is_out in checks if is_out)


def motion(turn: tuple[float, float, float], shift: tuple[float, float, float]) -> np.ndarray:
    """(4, 4) rigid motion from a rotation vector in degrees and a translation."""
    return Spec(turn=turn, shift=shift).matrix


def moved_by(x: float = 0.0, y: float = 0.0, z: float = 0.0) -> np.ndarray:
    m = np.eye(4)
    m[:3, 3] = (x, y, z)
    return m
