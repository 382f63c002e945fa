"""How far rays run over an area: all at once, each against the borders near it only."""

from __future__ import annotations

import numpy as np
import shapely
from msgspec import Struct
from shapely.geometry.base import BaseGeometry

from seamcheck.joint.facets import cross, spans


class AreaBorders(Struct, frozen=True, eq=False):
    """An area, and its borders as segments: start, end (m, 2) mm, with their tree."""

    area: BaseGeometry
    start: np.ndarray
    end: np.ndarray
    tree: shapely.STRtree

    @staticmethod
    def of(area: BaseGeometry) -> AreaBorders:
        """The borders of polygons, mm, holes included."""
        nodes, ring = shapely.get_coordinates(shapely.get_rings(shapely.get_parts(area)), return_index=True)
        goes_on = np.flatnonzero(ring[1:] == ring[:-1])
        start, end = nodes[goes_on], nodes[goes_on + 1]
        shapely.prepare(area)
        return AreaBorders(area, start, end, shapely.STRtree(spans(np.minimum(start, end), np.maximum(start, end))))

    def along(self, start: np.ndarray, ahead: np.ndarray, length: float) -> np.ndarray:
        """(n,) mm that rays from start (n, 2) ahead (n, 2) unit of one length run over the area.

        Between two borders that it meets a ray lies inside or outside as its middle does.
        """
        far = start + length * ahead
        ray, border = self.tree.query(spans(np.minimum(start, far), np.maximum(start, far)))
        a, b = self.start[border] - start[ray], self.end[border] - start[ray]
        off_a, off_b = cross(ahead[ray], a), cross(ahead[ray], b)
        meets = np.flatnonzero((off_a > 0) != (off_b > 0))
        ray, a, b, off_a, off_b = (values[meets] for values in (ray, a, b, off_a, off_b))
        at = ((a + (off_a / (off_a - off_b))[:, None] * (b - a)) * ahead[ray]).sum(axis=1)
        every = np.arange(len(start))
        ray = np.concatenate([every, ray, every])
        at = np.concatenate([np.zeros(len(every)), np.clip(at, 0.0, length), np.full(len(every), length)])
        order = np.lexsort((at, ray))
        ray, at = ray[order], at[order]
        run = np.where(ray[1:] == ray[:-1], np.diff(at), 0.0)
        some = np.flatnonzero(run > 0.0)
        middle = start[ray[some]] + ((at[some] + at[some + 1]) / 2)[:, None] * ahead[ray[some]]
        inside = shapely.contains_xy(self.area, middle)
        return np.bincount(ray[some], np.where(inside, run[some], 0.0), len(start))
