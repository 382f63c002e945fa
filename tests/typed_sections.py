"""Sections typed in tests: outlines of parts as polygons in (u, w), mm, w = 0 at the rib's top."""

from __future__ import annotations

import numpy as np

from seamcheck.sections.slices import BASE, COVER, OTHER, Segments

__all__ = ["BASE", "COVER", "OTHER", "outline", "plate", "rib", "section"]


def outline(owner, points, face=0):
    """(k, 8) lines of a polygon that is walked with its material on the left: u0, w0, u1, w1, nu, nw, owner, face."""
    rows = []
    for i, ((u0, w0), (u1, w1)) in enumerate(zip(points, [*points[1:], points[0]], strict=True)):
        size = np.hypot(u1 - u0, w1 - w0)
        normal = (w1 - w0) / size, (u0 - u1) / size
        ends = (u0, w0, u1, w1) if u0 <= u1 else (u1, w1, u0, w0)
        rows.append((*ends, *normal, owner, face + i))
    return np.array(rows, dtype=float)


def section(*parts):
    """Segments of stations, each a list of outlines."""
    rows = [np.column_stack([np.full(len(p), i), p]) for i, station in enumerate(parts) for p in station]
    lines = np.vstack(rows)
    station, u0, w0, u1, w1, nu, nw, owner, face = lines.T
    return Segments(station.astype(int), u0, w0, u1, w1, nu, nw, owner.astype(int), face.astype(int))


def plate(low=0.0, high=2.0, left=-6.0, right=6.0, owner=COVER):
    """A rectangle."""
    return outline(owner, [(left, low), (right, low), (right, high), (left, high)], face=100)


def rib(width=1.2, height=0.9, trap=1.4, lip=0.3, draft=0.0, wall=2.0):
    """A base with a rib over its middle, traps on both sides, and lips that rise ``lip`` above the floor.

    Where ``lip`` is None the floor runs on to the edge: the traps are open.
    """
    half, foot = width / 2, width / 2 + height * np.tan(np.radians(draft))
    end = half + trap
    right = [(end, -height), (end, lip - height), (end + 0.6, lip - height)] if lip is not None else [(end, -height)]
    last = right[-1][0]
    top = [(half, 0.0), (-half, 0.0)]
    left = [(-u, w) for u, w in reversed(right)]
    points = [(-last, -height - wall), (last, -height - wall), *reversed(right), (foot, -height), *top]
    return outline(BASE, [*points, (-foot, -height), *reversed(left)])
