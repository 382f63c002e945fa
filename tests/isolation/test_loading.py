"""What a child loads of scipy: little, the same objects, and everything once it is asked for more."""

from __future__ import annotations

import subprocess
import sys

_SAID = """
import sys
import numpy as np
from seamcheck.isolation.loading import load_little

load_little()
load_little()
from scipy.sparse.csgraph import connected_components
from scipy.spatial import ConvexHull, Delaunay, cKDTree

heavy = ("scipy.special", "scipy.linalg._basic", "scipy.spatial.distance", "numpy.f2py", "numpy.testing")
loaded = [name for name in heavy if name in sys.modules]
assert not loaded, loaded

assert np.unique([2, 1, 2]).tolist() == [1, 2] and np.median([3.0, 1.0, 2.0]) == 2.0
assert "numpy.ma.core" not in sys.modules
masked = np.ma.masked_array([3, 1, 1], mask=[True, False, False])
assert np.unique(masked).tolist() == [1, None] and np.ma.is_masked(masked) and not np.ma.is_masked(np.ones(2))
assert np.ma.median(masked) == 1.0 and np.ma.isMaskedArray(masked)

points = np.random.default_rng(7).random((60, 3))
brute = np.linalg.norm(points[:, None] - points[None], axis=2)
assert np.allclose(cKDTree(points).query(points, k=2)[0], np.sort(brute, axis=1)[:, :2])
cube = np.array([[x, y, z] for x in (0, 1) for y in (0, 1) for z in (0, 1)], dtype=float)
assert np.isclose(ConvexHull(cube).volume, 1.0)
assert len(Delaunay(points[:, :2]).simplices) > 60
assert connected_components(np.array([[0, 1, 0], [0, 0, 0], [0, 0, 0]]))[0] == 2

import scipy.linalg
import scipy.sparse.csgraph
import scipy.spatial
import scipy.spatial.transform

from scipy._lib.array_api_compat import numpy as double
from scipy.sparse.linalg import splu

assert scipy.spatial.distance.cdist(points[:1], points[1:2])[0, 0] == brute[0, 1]
assert scipy.spatial.KDTree is not None and scipy.spatial.cKDTree is cKDTree
assert scipy.spatial.transform.Rotation.from_euler("z", 90, degrees=True).apply([1, 0, 0])[1] == 1
assert np.allclose(scipy.linalg.svd(np.eye(2))[1], 1.0)
assert scipy.sparse.csgraph.minimum_spanning_tree is not None and splu is not None
assert double.random is np.random and double.testing is np.testing
assert {"f2py", "testing", "random"} <= set(dir(np)) and "testing" in np.__all__
try:
    scipy.spatial.no_such_name
except AttributeError as why:
    assert "no_such_name" in str(why)
else:
    raise AssertionError
print("all of it")
"""


def test_little_of_scipy_is_loaded_and_the_rest_on_demand() -> None:
    done = subprocess.run([sys.executable, "-c", _SAID], capture_output=True, text=True, check=False)
    assert done.stdout.strip() == "all of it", done.stderr[-2000:]
