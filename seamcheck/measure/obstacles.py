"""What rays meet above the seam: every facet of every part."""

from __future__ import annotations

import numpy as np
import shapely

from seamcheck.joint import Joint
from seamcheck.joint.frame import Frame
from seamcheck.sections.face_gaps import FaceList, Sheet

_OFF = 0.01  # mm from the top at which a ray begins


class Obstacles:
    """Facets of every part above the seam, meshed once where rays come near."""

    def __init__(self, joint: Joint, view: Frame) -> None:
        self.joint, self.view = joint, view
        self.ids = tuple(joint.bodies)
        boxes = np.array([body.box for body in joint.bodies.values()])
        local = view.boxes(boxes[np.isfinite(boxes).all(axis=1)])
        self.highest = float(local[:, 5].max())
        self.sheet: Sheet | None = None
        self.zone = np.array([np.inf, np.inf, np.inf, -np.inf, -np.inf, -np.inf])

    def first(self, start: np.ndarray, out: np.ndarray, reach: np.ndarray) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
        """Part (index, -1 for none) and face that each ray meets, and how far away (n,) mm, NaN for none.

        start, out : (n, 3) in the view; reach : (n,) mm
        """
        part, face, far = np.full(len(start), -1), np.full(len(start), -1), np.full(len(start), np.nan)
        with np.errstate(invalid="ignore", divide="ignore"):
            last = np.where(out[:, 2] > 1e-6, (self.highest - start[:, 2]) / out[:, 2], np.inf)
        last = np.minimum(np.minimum(last, reach), 1e4)
        going = np.flatnonzero(last > _OFF)
        if not len(going):
            return part, face, far
        begin, way = start[going] + _OFF * out[going], out[going] * (last[going] - _OFF)[:, None]
        sheet = self._near(begin, begin + way)
        if not len(sheet.face):
            return part, face, far
        low, high = sheet.boxes()
        tree = shapely.STRtree(shapely.box(low[:, 0], low[:, 1], high[:, 0], high[:, 1]))
        end = begin[:, :2] + way[:, :2]
        still = np.linalg.norm(way[:, :2], axis=1) < 1e-6
        end[still, 0] += 1e-6
        ray, facet = tree.query(shapely.linestrings(np.stack([begin[:, :2], end], axis=1)), predicate="intersects")
        t = meet(begin[ray], way[ray], sheet.corners[facet])
        hit = np.isfinite(t)
        order = np.argsort(-t[hit], kind="stable")
        part[going[ray[hit][order]]] = sheet.part[facet[hit][order]]  # the nearest is written last
        face[going[ray[hit][order]]] = sheet.face[facet[hit][order]]
        far[going[ray[hit][order]]] = _OFF + t[hit][order] * (last[going[ray[hit][order]]] - _OFF)
        return part, face, far

    def _near(self, begin: np.ndarray, end: np.ndarray) -> Sheet:
        both = np.concatenate([begin, end])
        zone = np.concatenate([both.min(axis=0) - 0.5, both.max(axis=0) + 0.5])
        if self.sheet is None or (zone[:3] < self.zone[:3]).any() or (zone[3:] > self.zone[3:]).any():
            self.zone = np.concatenate([np.minimum(zone, self.zone)[:3], np.maximum(zone, self.zone)[3:]])
            self.zone += [-2.0, -2.0, 0.0, 2.0, 2.0, 2.0]
            self.sheet = FaceList.of(self.joint.bodies, self.view, None, self.zone).facets(self.view, None)
        return self.sheet


def meet(start: np.ndarray, way: np.ndarray, corners: np.ndarray) -> np.ndarray:
    """(k,) share of the way at which each ray meets its facet, NaN where it does not (Möller and Trumbore)."""
    a, e1, e2 = corners[:, 0], corners[:, 1] - corners[:, 0], corners[:, 2] - corners[:, 0]
    p = np.cross(way, e2)
    det = (e1 * p).sum(axis=1)
    with np.errstate(invalid="ignore", divide="ignore"):
        to = start - a
        u = (to * p).sum(axis=1) / det
        q = np.cross(to, e1)
        v = (way * q).sum(axis=1) / det
        t = (e2 * q).sum(axis=1) / det
        hit = (np.abs(det) > 1e-14) & (u >= -1e-9) & (v >= -1e-9) & (u + v <= 1 + 1e-9) & (t >= 0) & (t <= 1)
    return np.where(hit, t, np.nan)
