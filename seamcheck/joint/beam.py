"""The direction of the light: the direction of pull that the rib's own flanks show."""

from __future__ import annotations

import numpy as np

from seamcheck.kernel import Body

_STEEP = 0.5  # |cosine| between a flank's normal and the first guess of the beam


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
    edges = set().union(*(body.edge_indices(face) for face in seam_faces))
    beside = [
        i for i in range(len(body.faces)) if i not in set(seam_faces) and edges & body.edge_indices(i)
    ]
    facets = body.facets(beside, 0.01, 0.2)
    across = np.cross(facets.corners[:, 1] - facets.corners[:, 0], facets.corners[:, 2] - facets.corners[:, 0])
    length = np.linalg.norm(across, axis=1)
    steep = (length > 1e-12) & (np.abs(across @ guess) < _STEEP * np.maximum(length, 1e-12))
    if not steep.any():
        return None
    normal, area = across[steep] / length[steep, None], length[steep] / 2
    values, vectors = np.linalg.eigh(np.einsum("i,ij,ik->jk", area, normal, normal))
    if values[1] < 0.02 * values[2]:
        return None
    pull = vectors[:, 0] * np.sign(vectors[:, 0] @ guess)
    return pull if pull @ guess > 0.5 else None
