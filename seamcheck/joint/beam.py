"""The direction of the light: the direction of pull that the rib's own flanks show."""

from __future__ import annotations

from weakref import WeakKeyDictionary

import numpy as np

from seamcheck.joint.constants import ON_NORMAL, PULL_SHOWN
from seamcheck.joint.facets import area_vectors, lengths
from seamcheck.kernel import Body
from seamcheck.kernel.normals import spread_normals

_STEEP = (0.6, 0.35)  # |cosine| between a flank's normal and the beam, at most: first guess, then the beam found
_ONE_WAY = 0.999998  # cosine of 0.1 degrees: planes of one direction
_RUNS_ALONG = 0.1  # |cosine| between a wall's normal and a pull along which it runs, with its draft
_CLEARLY_MORE = 1.3  # times the area of flanks that run along the guess
_MOST = 0.7  # of the flanks' area must run along a pull that is not square to the seam: chamfers don't
_SAME_WAY = 12  # decimals of directions that are one
_MOST_BENT = 100  # faces that are no planes, whose exact normals are worth computing; of more the facets average out


Pull = tuple[np.ndarray, np.ndarray, np.ndarray]
_known: WeakKeyDictionary[Body, dict[tuple[tuple[int, ...], bytes], Pull | None]] = WeakKeyDictionary()


def _pull(body: Body, seam_faces: tuple[int, ...], guess: np.ndarray) -> Pull | None:
    """``_pull_of``, of every band once."""
    known = _known.setdefault(body, {})
    key = (seam_faces, (np.round(guess, _SAME_WAY) + 0.0).tobytes())
    if key not in known:
        known[key] = _pull_of(body, seam_faces, guess)
    return known[key]


def _pull_of(body: Body, seam_faces: tuple[int, ...], guess: np.ndarray) -> Pull | None:
    """Unit vector (3,) along which the flanks beside the seam faces can be drawn from a mould, and these flanks.

    The flanks' normals n, weighted by area A, are all about square to it, so it is the eigenvector of
    sum A n n^T with the smallest eigenvalue (least squares). Opposite drafts cancel.

    Parameters
    ----------
    guess : (3,) unit vector; the result lies within 60 degrees of it and has its sense

    Returns
    -------
    (3,) unit vector, normals (n, 3) and areas (n,) mm² of the flanks; or None where these leave it open (all parallel
    to one plane)
    """
    ring = set(seam_faces)
    beside: list[int] = []
    for _ in range(2):  # the flanks, also behind a fillet
        fresh = body.neighbours(ring)
        beside += fresh
        ring |= set(fresh)
    facets = body.facets(beside, 0.01, 0.2)
    across = area_vectors(facets.corners)
    length = lengths(across)
    sound = length > 1e-12
    normal, area, face = across[sound] / length[sound, None], length[sound] / 2, facets.face[sound]
    bent = np.array([f for f in np.unique(face) if np.isnan(body.planes[f, 0])], dtype=int)
    exact = _exact(body, bent) if len(bent) <= _MOST_BENT else None
    pull = guess
    for steepest in _STEEP:
        most = np.zeros(len(body.faces))
        np.maximum.at(most, face, np.abs(normal @ pull))
        flank = most[face] < steepest  # whole faces: a fillet runs from steep to flat and tells nothing
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
    return (pull, n, a) if pull @ guess > 0.5 else None


def light_axis(body: Body, seam_faces: tuple[int, ...], guess: np.ndarray) -> np.ndarray | None:
    """(3,) unit vector, axis of the light: the pull of the flanks, or the normal of a plane seam.

    The normal is taken where the pull lies nearly along it, or where the flanks lean to the pull hardly less.
    Flanks of a slanted seam are steep to its normal: then the pull is taken from the part's own walls.

    Parameters
    ----------
    guess : (3,) unit vector; the result lies within 60 degrees of it and has its sense

    Returns
    -------
    (3,) unit vector, or None where the flanks leave it open (all parallel to one plane)
    """
    found = _pull(body, seam_faces, _steepest_walls(body, seam_faces, guess))
    normal = _plane_normal(body, seam_faces)
    if found is None:
        return None
    pull, flanks, area = found
    if normal is None:
        return pull
    normal = normal * np.sign(normal @ guess)
    near = pull @ normal > np.cos(np.radians(ON_NORMAL))
    lean = [float(np.sqrt(area @ (flanks @ way) ** 2)) for way in (pull, normal)]
    return normal if near or PULL_SHOWN * lean[0] > lean[1] else pull


def _plane_normal(body: Body, faces: tuple[int, ...]) -> np.ndarray | None:
    """(3,) unit normal of planar faces that all lie in one direction; None of others."""
    normals = body.planes[list(faces), :3]
    if not len(normals) or not np.isfinite(normals).all() or (normals @ normals[0] < _ONE_WAY).any():
        return None
    return np.asarray(normals[0])


def _steepest_walls(body: Body, seam_faces: tuple[int, ...], guess: np.ndarray) -> np.ndarray:
    """Of the guess and the directions of the part's planes, that along which most area of the seam's flanks runs."""
    ring = body.neighbours(set(seam_faces))
    flanks = body.planes[ring, :3]
    area = np.prod(np.maximum(np.sort(body.boxes[ring, 3:] - body.boxes[ring, :3], axis=1)[:, 1:], 0.0), axis=1)
    known = np.isfinite(flanks[:, 0]) & np.isfinite(area)
    flanks, area = flanks[known], area[known]
    planes = body.planes[np.isfinite(body.planes[:, 0]), :3]
    others = np.unique(np.round(planes * np.sign(planes @ guess + 1e-12)[:, None], 4), axis=0)
    others = others[(others @ guess > 0.5) & (others @ guess < _ONE_WAY)]
    ways = np.vstack([guess[None], others])
    along = (np.abs(ways @ flanks.T) < _RUNS_ALONG) @ area
    best = int(np.argmax(along))
    clear = along[best] > _CLEARLY_MORE * along[0] and along[best] > _MOST * area.sum()
    return ways[best] / np.linalg.norm(ways[best]) if clear else guess


def _exact(body: Body, faces: np.ndarray) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Normals (n, 3) spread over faces, the area (n,) mm² of each, and its face (n,)."""
    found = [spread_normals(body.faces[face]) for face in faces.tolist()]
    normals = np.concatenate([n for n, _ in found] or [np.empty((0, 3))])
    area = np.concatenate([a for _, a in found] or [np.empty(0)])
    return normals, area, np.repeat(faces, [len(a) for _, a in found])
