"""Coarse meshes for pictures; nothing is measured on them."""

from __future__ import annotations

import numpy as np
from OCP.BRepTools import BRepTools

from seamcheck.kernel.body import Body, Facets


def display_facets(body: Body, deflection: float, angle: float = 0.35) -> Facets:
    """Facets of all faces of a body.

    Parameters
    ----------
    deflection : mm, largest distance between surface and facets
    angle : radians, largest turn between neighbouring facets

    Notes
    -----
    Throws away the finer meshes that measuring left on the body: call it when all is measured.
    """
    BRepTools.Clean_s(body.shape)
    facets = body.facets(range(len(body.faces)), deflection, angle)
    sound = np.isfinite(facets.corners).all(axis=(1, 2))
    return Facets(facets.corners[sound], facets.face[sound])
