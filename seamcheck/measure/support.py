"""What lies below the rib along the beam: depth of material, openings, the face on which a nest can carry."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

import numpy as np
import shapely
from msgspec import Struct

from seamcheck.catalogue.say import say
from seamcheck.contour import Contour
from seamcheck.joint import Joint
from seamcheck.joint.frame import Frame
from seamcheck.joint.heights import heights_at, tree_of
from seamcheck.measure.additions import Additions, Column, Columns, Value, value_of
from seamcheck.measure.corridor import rib_region
from seamcheck.measure.table import PathSurvey, Survey
from seamcheck.sections.band import zone_around
from seamcheck.sections.face_gaps import FaceList, Sheet
from seamcheck.sections.stretches import Stretch, cell_lengths, stretches

_LEVEL = np.cos(np.radians(5.0))
_INSIDE = 0.05  # mm below the rib's top from which on its own material is followed
_OPEN = 0.05  # mm: the least height of an opening
_SKIN = 0.05  # mm further on which what carries must still be there: outlines of two faces differ on a round wall
_BESIDE = 4.0  # rib widths to both sides in which material that carries on is looked for
_STEPS, _HALVINGS = 40, 6  # places looked at on the way there, and how often the step to it is halved
_TOGETHER = 5  # of these places at once


def support_values(joint: Joint, contour: Contour, survey: Survey) -> Additions:
    """What carries the rib: values of the interface and columns of every path."""
    view = joint.view
    flat = np.concatenate([view.local(path.points) for path in survey.paths])
    reach = _BESIDE * contour.rib_width
    low, high = flat.min(axis=0), flat.max(axis=0)
    zone = np.array([low[0] - reach, low[1] - reach, -1e6, high[0] + reach, high[1] + reach, high[2] + 1.0])
    base = {i: joint.bodies[i] for i in joint.base}
    lines = [view.local(path.points)[:, :2] for path in survey.paths]
    around = [
        np.vstack([line, line[:1]]) if path.closed else line for line, path in zip(lines, survey.paths, strict=True)
    ]
    beside = zone_around(around, 1.05 * reach + 0.1)
    under, over = (FaceList.of(base, view, sense, zone).facets(view, sense, beside) for sense in (-1.0, 1.0))
    columns: dict[str, Columns] = {}
    openings: list[Opening] = []
    exits, open_length = [], 0.0
    for path in survey.paths:
        below = _below(view.local(path.points), under, over)
        beside = _carried_beside(view.local(path.points), path.u @ view.axes[:2].T, below, under, over, contour)
        is_open = below.again & (beside == 0.0)
        found = {"support_depth": below.depth, "overhang": np.where(np.isnan(below.depth), np.nan, beside)}
        columns[path.id] = {key: Column.of(values) for key, values in found.items()}
        exits.append(below.facet)
        openings += _openings(path, is_open, below, view)
        open_length += float(cell_lengths(path.s, path.length, path.closed)[is_open].sum())
    depth = _extreme(survey, columns, "support_depth", np.nanargmin)
    if depth["value"] is None:
        return Additions(dict.fromkeys(("support_depth", "support_open", "nest_area", "overhang"), depth), columns)
    values = {
        "support_depth": depth,
        "overhang": _extreme(survey, columns, "overhang", np.nanargmax),
        "support_open": _open(open_length, openings, under, tuple(joint.base)),
        "nest_area": _nest(joint, view, under, np.concatenate(exits)),
        **_wall_to_rib(survey),
    }
    return Additions(values, columns)


class _Below(Struct, frozen=True, eq=False):
    """What lies straight below stations.

    depth : (n,) mm to where the material first ends, NaN unknown; again : (n,) bool, whether more comes below that;
    air : (n,) mm of air until then, inf where nothing comes; facet : (n,) at which it ends, -1 unknown
    """

    depth: np.ndarray
    again: np.ndarray
    air: np.ndarray
    facet: np.ndarray


def _below(points: np.ndarray, under: Sheet, over: Sheet) -> _Below:
    """Follow the material from points (n, 3) in the view down."""
    n = len(points)
    depth, air, facet = np.full(n, np.nan), np.full(n, np.inf), np.full(n, -1)
    height, index, which = heights_at(points, under.corners)
    for_order = np.lexsort((-height, index))
    below = height[for_order] < points[index[for_order], 2] - _INSIDE
    order = for_order[below]
    first = np.unique(index[order], return_index=True)
    station, place = first[0], order[first[1]]
    depth[station] = points[station, 2] - height[place]
    facet[station] = which[place]
    tops, on, _ = heights_at(points, over.corners)
    ends = points[on, 2] - np.nan_to_num(depth[on], nan=np.inf)
    again = tops < ends - _OPEN
    np.minimum.at(air, on[again], (ends - tops)[again])
    return _Below(depth, np.isfinite(air), air, facet)


class Opening(Struct, frozen=True, eq=False):
    """An opening below a stretch of the seam.

    Attributes
    ----------
    contour, stretch : id of the path, and from where to where along it
    station : the one nearest to its middle
    place : (3,) mm, its middle there, in the model's coordinates; on_rib : (3,) mm, the rib's top above that
    depth, height : mm from the rib's top to where it begins, and how high it is there; facet : that ends the material
    """

    contour: str
    stretch: Stretch
    station: int
    place: np.ndarray
    on_rib: np.ndarray
    depth: float
    height: float
    facet: int


def _openings(path: PathSurvey, is_open: np.ndarray, below: _Below, view: Frame) -> list[Opening]:
    """The openings below one path from (n,) bool, whether a station lies over one."""
    found = []
    for stretch in stretches(is_open, path.s, path.length, path.closed):
        k = int(stretch.stations[len(stretch.stations) // 2])
        depth, height = float(below.depth[k]), float(below.air[k])
        place = path.points[k] - (depth + height / 2) * view.axes[2]
        found.append(Opening(path.id, stretch, k, place, path.points[k], depth, height, int(below.facet[k])))
    return sorted(found, key=lambda one: -one.stretch.length)


def _open(length: float, openings: Sequence[Opening], under: Sheet, ids: Sequence[str]) -> Value:
    """Length of seam over openings, with the stretches of each; shown is the longest."""
    if not openings:
        return value_of(length)
    first = max(openings, key=lambda one: one.stretch.length)
    faces = [{"part": ids[under.part[first.facet]], "face": int(under.face[first.facet])}] if first.facet >= 0 else []
    rest = [one for one in openings if one is not first]
    stretched = [
        {
            "contour": one.contour, "station": one.station, "from_s": one.stretch.from_s, "to_s": one.stretch.to_s,
            "length": one.stretch.length, "at": [float(c) for c in one.place],
        }
        for one in (first, *rest)
    ]  # fmt: skip
    why = say("place.opening", depth=first.depth, height=first.height)
    on_rib = [float(c) for c in first.on_rib]
    return value_of(length, first.place, why, faces=faces, stretches=stretched, on_rib=on_rib)


def _carried_beside(
    points: np.ndarray, across: np.ndarray, below: _Below, under: Sheet, over: Sheet, contour: Contour
) -> np.ndarray:
    """(n,) mm from points sideways to where material that hangs together with theirs carries on; 0 for none.

    Parameters
    ----------
    points (n, 3), across (n, 2) unit, in the view
    """
    width = contour.rib_width
    beside = np.zeros(len(points))
    ends = points[:, 2] - below.depth
    level = ends - np.minimum(width, below.air / 2)
    if not len(under.corners):
        return beside
    asked = np.flatnonzero(np.isfinite(ends) & (level > under.corners[:, :, 2].min()))
    if not len(asked):
        return beside
    steps = np.linspace(0.0, _BESIDE * width, _STEPS + 1)[1:]
    best = np.full(len(asked), np.inf)
    sheets = tuple((sheet, tree_of(sheet.corners)) for sheet in (under, over))
    for sign in (-1.0, 1.0):

        def at(far: np.ndarray, rows: np.ndarray, sign: float = sign) -> tuple[np.ndarray, np.ndarray]:
            """Whether the material reaches places so far (k,) mm aside, and whether it carries on below them."""
            ahead = sign * across[rows]
            xy = points[rows, :2] + far[:, None] * ahead
            reaches, carries = _inside(xy, (ends[rows] + _OPEN, level[rows]), sheets)
            some = np.flatnonzero(carries)
            (carries[some],) = _inside(xy[some] + _SKIN * ahead[some], (level[rows[some]],), sheets)
            return reaches, carries

        far, met = np.zeros(len(asked)), np.zeros(len(asked), dtype=bool)
        going = np.arange(len(asked))
        for some in np.split(steps, range(_TOGETHER, _STEPS, _TOGETHER)):
            reaches, carries = (
                mask.reshape(len(going), len(some))
                for mask in at(np.tile(some, len(going)), np.repeat(asked[going], len(some)))
            )
            joined = np.logical_and.accumulate(reaches, axis=1) & carries
            here = joined.any(axis=1)
            met[going[here]], far[going[here]] = True, some[np.argmax(joined[here], axis=1)]
            going = going[reaches.all(axis=1) & ~here]
            if not len(going):
                break
        rows, far = np.flatnonzero(met), far[met]
        near = far - steps[0]
        for _ in range(_HALVINGS if len(rows) else 0):
            middle = (near + far) / 2
            _, hit = at(middle, asked[rows])
            near, far = np.where(hit, near, middle), np.where(hit, middle, far)
        best[rows] = np.minimum(best[rows], far)
    beside[asked] = np.where(np.isfinite(best), best, 0.0)
    return beside


def _inside(
    xy: np.ndarray, levels: Sequence[np.ndarray], sheets: tuple[tuple[Sheet, shapely.STRtree], ...]
) -> tuple[np.ndarray, ...]:
    """(n,) bool each: whether places xy (n, 2) at levels (n,) lie in material: the next face below looks down.

    Parameters
    ----------
    sheets : faces that look down, and those that look up, with their trees
    """
    nearest: list[list[np.ndarray]] = [[] for _ in levels]
    for sheet, tree in sheets:
        height, index, _ = heights_at(xy, sheet.corners, tree)
        for level, found in zip(levels, nearest, strict=True):
            lower = height < level[index]
            found.append(np.full(len(xy), -np.inf))
            np.maximum.at(found[-1], index[lower], height[lower])
    return tuple(np.asarray(down > up) for down, up in nearest)


def _extreme(survey: Survey, columns: Mapping[str, Columns], key: str, pick: Any) -> Value:
    """The least or the largest value of a column over all paths, with its place."""
    best = value_of(None, why="broken-geometry")
    for path in survey.paths:
        values = columns[path.id][key].values
        if not np.isfinite(values).any():
            continue
        k = int(pick(values))
        if best["value"] is None or pick([best["value"], values[k]]) == 1:
            best = value_of(float(values[k]), path.points[k])
    return best


def _nest(joint: Joint, view: Frame, under: Sheet, exits: np.ndarray) -> Value:
    """Area of level faces straight below the rib's top, of those faces that end its material."""
    known = exits[exits >= 0]
    faces = {(int(under.part[k]), int(under.face[k])) for k in known}
    mine = np.array([(int(p), int(f)) in faces for p, f in zip(under.part, under.face, strict=True)])
    level = mine & (-under.normal[:, 2] >= _LEVEL)
    if not level.any():
        return value_of(0.0)
    region = rib_region(joint, view)
    triangles = under.triangles(np.zeros(2))[level]
    shapely.prepare(region)
    area = shapely.union_all(triangles[shapely.intersects(region, triangles)])
    lowest = float(under.corners[level][:, :, 2].min())
    ids = tuple(joint.base)
    shown = sorted({(ids[under.part[k]], int(under.face[k])) for k in np.flatnonzero(level)})
    return value_of(
        float(area.intersection(region).area),
        lowest=[float(c) for c in view.world(np.array([0.0, 0.0, lowest]))],
        faces=[{"part": part, "face": face} for part, face in shown],
    )


def _wall_to_rib(survey: Survey) -> dict[str, Value]:
    """Smallest ratio of the wall's width to the rib's, with its place."""
    best = value_of(None, why="broad")
    for path in survey.paths:
        with np.errstate(invalid="ignore", divide="ignore"):
            ratio = np.asarray(path.columns["wall_width"]) / np.asarray(path.columns["rib_width_mid"])
        if np.isfinite(ratio).any():
            k = int(np.nanargmin(ratio))
            if best["value"] is None or ratio[k] < best["value"]:
                wall, rib = (float(path.columns[key][k]) for key in ("wall_width", "rib_width_mid"))
                best = value_of(float(ratio[k]), path.points[k], say("place.narrow-wall", wall=wall, rib=rib))
    return {"wall_to_rib": best}
