"""The direction of the light: the direction of pull that the rib's own flanks show."""

from __future__ import annotations

import numpy as np

from seamcheck.kernel import Body
from seamcheck.kernel.normals import spread_normals

_STEEP = (
    0.6,
    0.35,
)  # |cosine| between a flank's normal and the beam, at most: first guess, then the beam found
_MOST_BENT = 100  # faces that are no planes, whose exact normals are worth their time; of more the facets average out


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
    bent = np.array([f for f in np.unique(face) if np.isnan(body.planes[f, 0])], dtype=int)
    exact = _exact(body, bent) if len(bent) <= _MOST_BENT else None
    pull = guess
    for steepest in _STEEP:
        most = np.zeros(len(body.faces))
        np.maximum.at(most, face, np.abs(normal @ pull))
        flank = most[face] < steepest  # whole faces: a fillet runs from steep to flat and says nothing
        if not flank.any():
            return None
        n, a = normal[flank], area[flank]
        if exact is not None:  # facets of a low, bent flank tilt
            flat, mine = flank & ~np.isin(face, bent), most[exact[2]] < steepest
            n, a = np.concatenate([normal[flat], exact[0][mine]]), np.concatenate([area[flat], exact[1][mine]])
        values, vectors = np.linalg.eigh(np.einsum("i,ij,ik->jk", a, n, n))
        if values[1] < 0.02 * values[2]:
            return None
        pull = vectors[:, 0] * np.sign(vectors[:, 0] @ guess)
    return pull if pull @ guess > 0.5 else None


def _exact(body: Body, faces: np.ndarray) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Normals (n, 3) spread over faces, the area (n,) mm² of each, and its face (n,)."""
    found = [spread_normals(body.faces[face]) for face in faces.tolist()]
    normals = np.concatenate([n for n, _ in found] or [np.empty((0, 3))])
    area = np.concatenate([a for _, a in found] or [np.empty(0)])
    return normals, area, np.repeat(faces, [len(a) for _, a in found])
