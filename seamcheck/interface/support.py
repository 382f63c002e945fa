"""What lies below the rib along the light: depth of material, openings, the face on which a nest can carry."""

from __future__ import annotations

from typing import Any

import numpy as np
import shapely

from seamcheck.contour import Contour
from seamcheck.interface.clamp import rib_region
from seamcheck.interface.facing import FaceList, Sheet, View
from seamcheck.joint import Joint
from seamcheck.limits.stretches import cell_lengths
from seamcheck.survey.table import Survey

_LEVEL = np.cos(np.radians(5.0))
_INSIDE = 0.05  # mm below the rib's top from which on its own material is followed
_OPEN = 0.05  # mm: the least height of an opening


def support_values(joint: Joint, contour: Contour, survey: Survey) -> dict[str, dict[str, Any]]:
    """Depth of the base's material below the mid-line, length over openings, area that a nest can carry."""
    view = View.of(joint)
    flat = np.concatenate([view.local(path.points) for path in survey.paths])
    room = contour.rib_width + 1.0
    low, high = flat.min(axis=0), flat.max(axis=0)
    zone = np.array([low[0] - room, low[1] - room, -1e6, high[0] + room, high[1] + room, high[2] + 1.0])
    base = {i: joint.bodies[i] for i in joint.base}
    under, over = (FaceList.of(base, view, sense, zone).facets(view, sense) for sense in (-1.0, 1.0))
    depth, is_open, exits, cells, points = [], [], [], [], []
    for path in survey.paths:
        d, o, e = _below(view.local(path.points), under, over)
        depth.append(d)
        is_open.append(o)
        exits.append(e)
        cells.append(cell_lengths(path.s, path.length, path.closed))
        points.append(path.points)
    depth_all, open_all, cells_all = (np.concatenate(x) for x in (depth, is_open, cells))
    points_all, exit_all = np.concatenate(points), np.concatenate(exits)
    if not np.isfinite(depth_all).any():
        missing = {"value": None, "at": None, "why": "broken-geometry"}
        return {"support_depth": missing, "support_open": missing, "nest_area": missing}
    # an overhang that runs along the whole seam ends over the floor everywhere: that is no opening
    open_all &= depth_all < np.nanmedian(depth_all) - _OPEN
    least = int(np.nanargmin(depth_all))
    opened = np.flatnonzero(open_all)
    middle = None if not len(opened) else [float(c) for c in points_all[opened[len(opened) // 2]]]
    return {
        "support_depth": {
            "value": float(depth_all[least]),
            "at": [float(c) for c in points_all[least]],
            "why": "",
        },
        "support_open": {"value": float(cells_all[open_all].sum()), "at": middle, "why": ""},
        "nest_area": _nest(joint, view, under, exit_all),
        **_wall_to_rib(survey),
    }


def _below(points: np.ndarray, under: Sheet, over: Sheet) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Depth (n,) mm from points (n, 3) in the view to the first way out, whether more comes below, the facet."""
    n = len(points)
    depth, is_open, facet = np.full(n, np.nan), np.zeros(n, dtype=bool), np.full(n, -1)
    height, index, which = _heights(points, under)
    for_order = np.lexsort((-height, index))
    below = height[for_order] < points[index[for_order], 2] - _INSIDE
    order = for_order[below]
    first = np.unique(index[order], return_index=True)
    station, place = first[0], order[first[1]]
    depth[station] = points[station, 2] - height[place]
    facet[station] = which[place]
    tops, on, _ = _heights(points, over)
    again = tops < points[on, 2] - np.nan_to_num(depth[on], nan=np.inf) - _OPEN
    is_open[on[again]] = True
    return depth, is_open, facet


def _heights(points: np.ndarray, sheet: Sheet) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Heights of all facets at points: height (k,), point (k,), facet (k,)."""
    low, high = sheet.boxes()
    tree = shapely.STRtree(shapely.box(low[:, 0], low[:, 1], high[:, 0], high[:, 1]))
    index, facet = tree.query(shapely.points(points[:, :2]))
    p = points[index, :2]
    a, b, c = (sheet.corners[facet, k, :2] for k in range(3))
    turn = np.sign(_cross(b - a, c - a))
    inside = np.all([turn * _cross(q - o, p - o) >= -1e-9 for o, q in ((a, b), (b, c), (c, a))], axis=0)
    index, facet = index[inside], facet[inside]
    return sheet.height(facet, points[index, :2]), index, facet


def _nest(joint: Joint, view: View, under: Sheet, exits: np.ndarray) -> dict[str, Any]:
    """Area of level faces straight below the rib's top, of those faces that end its material."""
    known = exits[exits >= 0]
    faces = {(int(under.part[k]), int(under.face[k])) for k in known}
    mine = np.array([(int(p), int(f)) in faces for p, f in zip(under.part, under.face, strict=True)])
    level = mine & (-under.normal[:, 2] >= _LEVEL)
    if not level.any():
        return {"value": 0.0, "at": None, "why": ""}
    area = shapely.union_all(under.triangles(np.zeros(2))[level])
    lowest = float(under.corners[level][:, :, 2].min())
    ids = tuple(joint.base)
    shown = sorted({(ids[under.part[k]], int(under.face[k])) for k in np.flatnonzero(level)})
    return {
        "value": float(area.intersection(rib_region(joint, view)).area),
        "at": None,
        "why": "",
        "lowest": [float(c) for c in view.world(np.array([0.0, 0.0, lowest]))],
        "faces": [{"part": part, "face": face} for part, face in shown],
    }


def _wall_to_rib(survey: Survey) -> dict[str, dict[str, Any]]:
    """Smallest ratio of the wall's width to the rib's, with its place."""
    best: dict[str, Any] = {"value": None, "at": None, "why": "broad"}
    for path in survey.paths:
        with np.errstate(invalid="ignore", divide="ignore"):
            ratio = np.asarray(path.columns["wall_width"]) / np.asarray(path.columns["rib_width_mid"])
        if np.isfinite(ratio).any():
            k = int(np.nanargmin(ratio))
            if best["value"] is None or ratio[k] < best["value"]:
                best = {"value": float(ratio[k]), "at": [float(c) for c in path.points[k]], "why": ""}
    return {"wall_to_rib": best}


def _cross(a: np.ndarray, b: np.ndarray) -> np.ndarray:
    return a[:, 0] * b[:, 1] - a[:, 1] * b[:, 0]
