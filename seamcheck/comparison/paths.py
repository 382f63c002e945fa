"""The seam of one review document as arrays: paths with their stations, values and reasons."""

from __future__ import annotations

from collections.abc import Mapping
from functools import cached_property
from typing import Any

import numpy as np
from msgspec.structs import replace

from seamcheck.comparison.rigid import Rigid
from seamcheck.report.review import ContourReview


class SeamPath(ContourReview, frozen=True, eq=False, dict=True):
    """One path of a seam as a document holds it, with what comparing it needs."""

    def moved(self, motion: Rigid) -> SeamPath:
        """The path after a rigid motion."""
        return replace(self, points=motion.points(self.points), u=motion.vectors(self.u))

    @cached_property
    def corners(self) -> np.ndarray:
        """(n or n + 1, 3) mm: the stations as a chain; the first again at the end of a closed path."""
        return np.vstack([self.points, self.points[:1]]) if self.closed else self.points

    @cached_property
    def corner_s(self) -> np.ndarray:
        """(n or n + 1,) mm: arc lengths of the corners."""
        return np.append(self.s, self.s[0] + self.length) if self.closed else self.s

    @cached_property
    def tangents(self) -> np.ndarray:
        """(n, 3) unit vectors along the path, from the neighbours on both sides."""
        if self.closed:
            along = np.roll(self.points, -1, axis=0) - np.roll(self.points, 1, axis=0)
        else:
            along = np.gradient(self.points, axis=0)
        size = np.linalg.norm(along, axis=1, keepdims=True)
        return np.asarray(along / np.where(size > 0, size, 1.0))

    def column(self, key: str) -> np.ndarray:
        """(n,) float; NaN all along where the path has no such column."""
        return self.columns.get(key, np.full(len(self.s), np.nan))

    def reason(self, key: str, s: float) -> str:
        """Why a column has no value at an arc length; '' where it has one, or nothing is said."""
        near = [run for run in self.unmeasured if run["column"] == key]
        best = min(near, key=lambda run: max(run["from_s"] - s, s - run["to_s"], 0.0), default=None)
        return "" if best is None else str(best["why"])

    def is_reason(self, key: str, why: str) -> np.ndarray:
        """(n,) bool: stations where a column is not measured for this reason."""
        mark = np.zeros(len(self.s), dtype=bool)
        for run in self.unmeasured:
            if run["column"] == key and run["why"] == why:
                mark |= (self.s >= run["from_s"] - 1e-6) & (self.s <= run["to_s"] + 1e-6)
        return mark


def seam_paths(document: Mapping[str, Any]) -> tuple[SeamPath, ...]:
    """All paths of all joints of a review document; those of fewer than two stations are left out."""
    return tuple(
        SeamPath.of(joint["id"], contour)
        for joint in document["joints"]
        for contour in joint["contours"]
        if len(contour["stations"]["s"]) > 1
    )
