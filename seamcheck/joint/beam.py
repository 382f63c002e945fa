"""The direction of the light: the direction of pull that the rib's own flanks show."""

from __future__ import annotations

import numpy as np

from seamcheck.kernel import Body

_STEEP = (
    0.6,
    0.35,
)  # |cosine| between a flank's normal and the beam, at most: first guess, then the beam found


def pull_direction(body: Body, seam_faces: tuple[int, ...], guess: np.ndarray) -> np.ndarray | None:
    """Unit vector along which the flanks beside the seam faces can be drawn from a mould.

    The flanks' normals n, weighted by area A, are all about square to it, so it is the eigenvector of
    sum A n n^T with the smallest eigenvalue (least squares). Opposite drafts cancel.

    Parameters
    ----------
    guess : (3,) unit vector; the result lies within 60 degrees of it and has its sense

    Returns
    -------
    (3,) unit vector, or None where the flanks leave it open (all parallel to one plane)
    """
    ring = set(seam_faces)
    beside: list[int] = []
    for _ in range(2):  # the flanks, also behind a fillet
        fresh = body.neighbours(ring)
        beside += fresh
        ring |= set(fresh)
    facets = body.facets(beside, 0.01, 0.2)
    across = np.cross(facets.corners[:, 1] - facets.corners[:, 0], facets.corners[:, 2] - facets.corners[:, 0])
    length = np.linalg.norm(across, axis=1)
    sound = length > 1e-12
    normal, area, face = across[sound] / length[sound, None], length[sound] / 2, facets.face[sound]
    pull = guess
    for steepest in _STEEP:
        most = np.zeros(len(body.faces))
        np.maximum.at(most, face, np.abs(normal @ pull))
        flank = most[face] < steepest  # whole faces: a fillet runs from steep to flat and says nothing
        if not flank.any():
            return None
        values, vectors = np.linalg.eigh(np.einsum("i,ij,ik->jk", area[flank], normal[flank], normal[flank]))
        if values[1] < 0.02 * values[2]:
            return None
        pull = vectors[:, 0] * np.sign(vectors[:, 0] @ guess)
    return pull if pull @ guess > 0.5 else None
