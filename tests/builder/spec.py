"""What a pair of parts is drawn from (Spec) and what must be measured on it (Truth); imports no kernel.

Section of a sound pair; o runs outward from the mid-line, z against the beam, z = 0 on the rib top:

        cover  _______________________________________________
              |_______________________________________________|
               ____            _______             ____          z = 0
              |lip |          /       \\           |lip |
              |    |__trap___/   rib   \\___trap___|    |         z = -rib height
              |               base                     |
"""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass, field

import numpy as np
from scipy.spatial.transform import Rotation

from .section import Piece, chain, fillet_area, fillet_tangent
from .track import AnyTrack, rounded_rectangle


@dataclass(frozen=True)
class Spec:
    """Construction parameters; lengths mm, angles degrees.

    Attributes
    ----------
    rib_width : at the contact plane between the tangent points of the top fillets
    rib_height_inner, rib_height_outer : from the trap floor up to the rib top
    trap_width_inner, trap_width_outer : at the floor, from the straight flank line to lip, wall or edge
    inner, outer : what ends the trap: 'lip'; 'hang', a lip of the cover hanging down; 'open'; 'wall' (outer
        only), the cover lies in a pocket; 'flush', no trap: the flank runs down as the wall's face
    lip_height_inner, lip_height_outer : of the lip above its trap floor
    slit : between the edge of a recessed cover and the pocket's wall
    edge_chamfer, edge_fillet : of the cover's upper edge, one of them
    rib_on : 'base', or 'cover': then rib, traps and lips hang from the cover over a flat rim
    rim : how far the pocket's wall rises above the rib top
    stem : offsets (inner, outer) of a narrower wall that begins ``flange`` below the lower trap floor
    clamp_land : flat of the cover from the rib top's edge to its edge or chamfer; a recessed cover's land
        follows from trap width and slit instead
    gap : modelled state: 0 touching, > 0 apart, < 0 overlapping
    turn : rotation vector in degrees; shift : translation, applied after the turn
    cover_first : order of the parts
    """

    track: AnyTrack = field(default_factory=lambda: rounded_rectangle(120, 80, 10))
    rib_width: float = 1.2
    rib_height_inner: float = 0.9
    rib_height_outer: float = 0.9
    draft_inner: float = 1.0
    draft_outer: float = 1.0
    top_fillet: float = 0.0
    root_fillet: float = 0.0
    trap_width_inner: float = 1.4
    trap_width_outer: float = 1.4
    inner: str = "lip"
    outer: str = "lip"
    lip_height_inner: float = 0.3
    lip_height_outer: float = 0.3
    lip_width: float = 1.0
    slit: float = 0.2
    rim: float = 1.5
    stem: tuple[float, float] | None = None
    flange: float = 0.6
    wall_height: float = 14.0
    floor_thickness: float = 2.0
    cover_thickness: float = 2.0
    clamp_land: float = 2.6
    edge_chamfer: float = 0.0
    edge_fillet: float = 0.0
    rib_on: str = "base"
    gap: float = 0.0
    turn: tuple[float, float, float] = (0.0, 0.0, 0.0)
    shift: tuple[float, float, float] = (0.0, 0.0, 0.0)
    cover_first: bool = False
    unit: str = "mm"
    cover_name: str = "window lid"
    base_name: str = "sensor housing"

    # -- derived -------------------------------------------------------------------------------------
    def draft(self, side: str) -> float:
        return math.radians(self.draft_inner if side == "inner" else self.draft_outer)

    def height(self, side: str) -> float:
        return self.rib_height_inner if side == "inner" else self.rib_height_outer

    def half_virtual(self, side: str) -> float:
        """From the mid-line to the flank line extended straight to the contact plane."""
        return self.rib_width / 2 + _foot(self.top_fillet, self.draft(side))

    def flank(self, side: str, depth: float) -> float:
        """From the mid-line to the straight flank line, ``depth`` below the contact plane."""
        return self.half_virtual(side) + math.tan(self.draft(side)) * depth

    def trap_end(self, side: str) -> float:
        """From the mid-line to lip, wall or edge of the floor."""
        width = self.trap_width_inner if side == "inner" else self.trap_width_outer
        if self.kind(side) == "flush":
            return self.rib_width / 2
        return self.flank(side, self.height(side)) + width

    def kind(self, side: str) -> str:
        return self.inner if side == "inner" else self.outer

    @property
    def rib_height(self) -> float:
        return min(self.rib_height_inner, self.rib_height_outer)

    def lip_depth(self, side: str) -> float:
        """Of the lip's top below the contact plane."""
        height = self.lip_height_inner if side == "inner" else self.lip_height_outer
        return self.height(side) - height

    def wall_face(self, side: str) -> float:
        """From the mid-line to the base's outermost (innermost) face."""
        extra = {"open": 0.0, "flush": 0.0, "hang": self.lip_width + 0.4}.get(self.kind(side), self.lip_width)
        return self.trap_end(side) + extra

    @property
    def cover_edge(self) -> float:
        if self.rib_on == "cover":
            return self.wall_face("outer")
        if self.outer == "wall":
            return self.trap_end("outer") - self.slit
        return self.rib_width / 2 + self.clamp_land + self.edge_chamfer + self.edge_fillet

    @property
    def matrix(self) -> np.ndarray:
        """(4, 4) rigid motion from the drawing's frame to the assembly's."""
        m = np.eye(4)
        m[:3, :3] = Rotation.from_rotvec(np.radians(self.turn)).as_matrix()
        m[:3, 3] = self.shift
        return m

    def base_chain(self) -> tuple[Piece, ...]:
        """From the housing's inner floor over wall, lips, traps and rib down to the bottom."""
        low, high = -self.wall_height, -self.wall_height + self.floor_thickness
        face_in, face_out = -self.wall_face("inner"), self.wall_face("outer")
        if self.rib_on == "cover":
            return chain([(face_in, high, 0), (face_in, 0, 0), (face_out, 0, 0), (face_out, low, 0)])
        below = -max(self.rib_height_inner, self.rib_height_outer) - self.flange
        first, last = [(face_in, high, 0.0)], [(face_out, low, 0.0)]
        if self.stem:
            a, b = self.stem
            first = [(a, high, 0.0), (a, below, 0.0), (face_in, below, 0.0)]
            last = [(face_out, below, 0.0), (b, below, 0.0), (b, low, 0.0)]
        return chain(first + self._ridge() + last)

    def cover_chain(self) -> tuple[Piece, ...]:
        """From the underside up to the light-side face."""
        if self.rib_on == "cover":
            underside = self.gap + self.rib_height_inner
            hanging = [(o, self.gap - z, r) for o, z, r in self._ridge()]
            return chain([(-self.wall_face("inner"), underside, 0.0), *hanging, *self._edge(self.gap)])
        edge = self.cover_edge
        lower = [(edge, self.gap, 0.0)]
        for sign, side in ((1, "outer"), (-1, "inner")):
            if self.kind(side) == "hang":
                a, b = self.trap_end(side), self.trap_end(side) + self.lip_width
                low = self.gap - (self.height(side) - self.lip_depth(side))
                tooth = [(sign * o, z, 0.0) for o, z in ((a, self.gap), (a, low), (b, low), (b, self.gap))]
                lower = tooth + lower if sign > 0 else tooth[::-1] + lower
        return chain(lower + self._edge(self.gap))

    def _edge(self, underside: float) -> list[tuple[float, float, float]]:
        """The cover's edge from below its upper corner; the corner itself chamfered or rounded."""
        edge, top = self.cover_edge, underside + self.plate_top
        if self.edge_chamfer:
            return [(edge, top - self.edge_chamfer, 0.0), (edge - self.edge_chamfer, top, 0.0)]
        if self.edge_fillet:
            return [(edge, top, self.edge_fillet), (edge - 2 * self.edge_fillet, top, 0.0)]
        return [(edge, top, 0.0)]

    @property
    def plate_top(self) -> float:
        """The light-side face above the cover's contact plane."""
        return self.cover_thickness

    def _ridge(self) -> list[tuple[float, float, float]]:
        """Lips, traps and rib from the inner face to the outer one, rib top at z = 0."""
        v: list[tuple[float, float, float]] = []
        if self.inner == "flush":
            v += [(-self.rib_width / 2, 0.0, 0.0)]
        else:
            face, end, h = -self.wall_face("inner"), -self.trap_end("inner"), self.rib_height_inner
            if self.inner == "lip":
                v += [(face, -self.lip_depth("inner"), 0.0), (end, -self.lip_depth("inner"), 0.0), (end, -h, 0.0)]
            else:
                v += [(face, -h, 0.0)]
            v += [(-self.flank("inner", h), -h, self.root_fillet)]
            v += [(-self.half_virtual("inner"), 0.0, self.top_fillet)]
        if self.outer == "flush":
            return [*v, (self.rib_width / 2, 0.0, 0.0)]
        face, end, h = self.wall_face("outer"), self.trap_end("outer"), self.rib_height_outer
        v += [(self.half_virtual("outer"), 0.0, self.top_fillet)]
        v += [(self.flank("outer", h), -h, self.root_fillet)]
        if self.outer in ("lip", "wall"):
            top = -self.lip_depth("outer") if self.outer == "lip" else self.rim
            v += [(end, -h, 0.0), (end, top, 0.0), (face, top, 0.0)]
        else:
            v += [(face, -h, 0.0)]
        return v

    def truth(self, collapse: float = 0.4) -> Truth:
        return Truth(self, collapse, _values(self, collapse))


@dataclass(frozen=True, eq=False)
class Truth:
    """Closed-form answers for a Spec.

    Attributes
    ----------
    values : quantity key -> value at every station (constant along the seam); NaN where the quantity has
        none ('free', 'no-shoulder', open lip). ``corner_radius`` is not in it: see corner_radius().
    """

    spec: Spec
    collapse: float
    values: Mapping[str, float]

    @property
    def length(self) -> float:
        """Of the mid-line."""
        return self.spec.track.length

    @property
    def beam(self) -> np.ndarray:
        return self.spec.matrix[:3, :3] @ [0.0, 0.0, -1.0]

    def stations(self, n: int) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
        """n even stations: points (n, 3), outward unit vectors u (n, 3), signed curvature (n,)."""
        s = np.linspace(0, self.length, n, endpoint=False)
        return (*self.place(s), self.spec.track.curvature(s))

    def place(self, s: np.ndarray, o: float = 0.0, z: float = 0.0) -> tuple[np.ndarray, np.ndarray]:
        """Points (n, 3) and outward vectors (n, 3) in assembly coordinates at arc lengths s."""
        xy, normal = self.spec.track.at(np.atleast_1d(s))
        flat = np.column_stack([xy + o * normal, np.full(len(xy), z)])
        m = self.spec.matrix
        return flat @ m[:3, :3].T + m[:3, 3], np.column_stack([normal, np.zeros(len(xy))]) @ m[:3, :3].T

    def distance(self, points: np.ndarray) -> np.ndarray:
        """Distance (n,) of points (n, 3) from the true mid-line."""
        m = self.spec.matrix
        flat = (np.asarray(points) - m[:3, 3]) @ m[:3, :3]
        return np.hypot(self.spec.track.distance(flat[:, :2]), flat[:, 2])

    def corner_radius(self, points: np.ndarray) -> np.ndarray:
        """Radius (n,) of the mid-line's turn at the stations nearest to points (n, 3); inf when straight."""
        s = np.linspace(0, self.length, 8001)[:-1]
        xy, _ = self.spec.track.at(s)
        m = self.spec.matrix
        flat = ((np.asarray(points) - m[:3, 3]) @ m[:3, :3])[:, :2]
        nearest = np.array([np.argmin(((xy - p) ** 2).sum(axis=1)) for p in flat])
        with np.errstate(divide="ignore"):
            return 1.0 / np.abs(self.spec.track.curvature(s[nearest]))


def _foot(radius: float, draft: float) -> float:
    return fillet_tangent(radius, math.pi / 2 + draft) if radius else 0.0


def _values(spec: Spec, c: float) -> dict[str, float]:
    """Every constant quantity, from the definitions in seamcheck/catalogue/quantities.py.

    Widths and areas of the trapezium are elementary; the fillet's area is r^2 (cot(b/2) - (pi - b)/2)
    with b = 90 deg + draft, both for the rib's top (inside the plastic) and for its root (in the air).
    """
    nan = math.nan
    sides = [side for side in ("inner", "outer") if spec.kind(side) != "flush"]
    h = min(spec.height(side) for side in sides)
    width = {
        d: sum(spec.flank(s, d) if s in sides else spec.rib_width / 2 for s in ("inner", "outer"))
        for d in (0.0, h / 2, h)
    }
    values = {
        "rib": 1.0,
        "rib_width": spec.rib_width,
        "rib_width_top": spec.rib_width,
        "rib_width_mid": width[h / 2],
        "rib_width_root": width[h],
        "rib_height": h,
        "slenderness": h / width[h / 2],
        "cover_thickness": spec.cover_thickness,
        "cover_thickness_min": spec.cover_thickness,
        "cover_thickness_max": spec.cover_thickness,
        "gap": spec.gap,
        "gap_min": spec.gap,
        "gap_max": spec.gap,
        "beam_clear": 1.0,
        "clamp_tilt": 0.0,
        "clamp_land": spec.cover_edge - spec.edge_chamfer - spec.edge_fillet - spec.rib_width / 2,
        "wall_width": spec.wall_face("inner") + spec.wall_face("outer"),
        "support_offset": _support_offset(spec),
    }
    if spec.rib_on == "cover":  # the rib hangs from a plate that reaches beyond the section
        values["wall_width"], values["support_offset"] = nan, 0.0
    melt, travel = 0.0, []
    for side in ("inner", "outer"):
        draft, height = spec.draft(side), spec.height(side)
        if side not in sides:
            melt += spec.rib_width / 2 * c
            for key in ("rib_height", "trap_area", "trap_room", "trap_open", "lip_gap"):
                values[f"{key}_{side}"] = nan
            values[f"draft_{side}"] = 0.0
            continue
        corner = math.pi / 2 + draft
        foot = _foot(spec.top_fillet, draft)
        if foot * math.cos(draft) > c or _foot(spec.root_fillet, draft) > height - c:
            raise ValueError("the collapse ends within a fillet; the closed form does not cover that")
        top_loss = fillet_area(spec.top_fillet, corner) if spec.top_fillet else 0.0
        root_loss = fillet_area(spec.root_fillet, corner) if spec.root_fillet else 0.0
        melt += spec.half_virtual(side) * c + math.tan(draft) * c**2 / 2 - top_loss
        values[f"rib_height_{side}"] = height
        values[f"draft_{side}"] = math.degrees(draft)
        end, kind = spec.trap_end(side), spec.kind(side)
        reach = min(end, spec.cover_edge) if side == "outer" and kind == "open" else end
        deep = height - c
        # the flank at the level of the lowered cover and at the floor: a trapezium, less the root fillet
        values[f"trap_area_{side}"] = (
            deep * reach - deep * (spec.flank(side, c) + spec.flank(side, height)) / 2 - root_loss
        )
        values[f"trap_open_{side}"] = 1.0 if kind == "open" else 0.0
        lip = spec.lip_depth(side)
        values[f"lip_gap_{side}"] = {"open": nan, "wall": spec.slit}.get(kind, lip - c)
        travel.append(lip if kind in ("lip", "hang") else height)
    values["melt_area"] = melt
    values["trap_room"] = sum(values[f"trap_area_{side}"] for side in sides) / melt
    for side in sides:
        values[f"trap_room_{side}"] = values[f"trap_area_{side}"] / (melt / 2)
    values["free_travel"] = min(travel)
    return values


def _support_offset(spec: Spec) -> float:
    """Size of the offset; 0 when the wall reaches beyond both flanks at the root by over a rib width."""
    inner, outer = -spec.wall_face("inner"), spec.wall_face("outer")
    if spec.stem and spec.flange < spec.rib_width:
        inner, outer = spec.stem
    root_in, root_out = (
        spec.rib_width / 2 if spec.kind(side) == "flush" else spec.flank(side, spec.height(side))
        for side in ("inner", "outer")
    )
    if -inner - root_in > spec.rib_width and outer - root_out > spec.rib_width:
        return 0.0
    return abs(inner + outer) / 2
