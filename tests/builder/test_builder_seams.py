"""The hard seams' truth against the kernel's own classification of points and lines in the solids."""

from __future__ import annotations

import numpy as np
import pytest
from OCP.BRepClass3d import BRepClass3d_SolidClassifier
from OCP.gp import gp_Pnt
from OCP.TopAbs import TopAbs_IN
from telling import telling

from builder import Spec, rounded_rectangle
from builder.hard.seams import SEAMS
from builder.hard.tree import bodies
from builder.relief import Ground, draw_on

from .test_builder_truth import length_inside


def is_inside(shape, point) -> bool:
    return BRepClass3d_SolidClassifier(shape, gp_Pnt(*map(float, point)), 1e-7).State() == TopAbs_IN


@pytest.mark.parametrize("name", telling(SEAMS, list(SEAMS)[::4]))
def test_the_true_line_runs_on_top_of_the_rib(name):
    model = SEAMS[name]()
    parts = [shape for _, shape in bodies(model.root)]
    for seam in model.seams:
        carrier = parts[seam.cover if seam.rib_on == "cover" else seam.base]
        up = -np.array(seam.beam) * (-1 if seam.rib_on == "cover" else 1)
        for path in seam.paths:
            n = len(path.points)
            which = np.linspace(0, n - 1, 9, dtype=int)[1:-1]
            which = which[path.holds(path.points[which])]
            # tangents from neighbouring samples, 0.04 mm apart
            t = path.points[(which + 1) % n] - path.points[which - 1]
            u = np.cross(t, up)
            u /= np.linalg.norm(u, axis=1)[:, None]
            for p, across in zip(path.points[which], u, strict=True):
                assert is_inside(carrier, p - 0.02 * up)
                assert not is_inside(carrier, p + 0.02 * up)
                if "rib_width" not in path.values or seam.rib_on == "none":
                    continue
                half = path.value("rib_width", p[None])[0] / 2
                for side in (-1, 1):
                    assert is_inside(carrier, p + side * (half - 1e-3) * across - 0.3 * up)
            run = np.linalg.norm(np.diff(path.points[[*range(n), *([0] * path.closed)]], axis=0), axis=1)
            # chords of 0.02 mm are short of the arc by s^3 / 24 R^2 each; a step in level counts no length
            assert run[run < 0.2].sum() == pytest.approx(path.length, rel=3e-4)


@pytest.mark.parametrize(
    "ground",
    [
        Ground("slope", 0.2),
        pytest.param(Ground("cylinder", 90.0), marks=pytest.mark.thorough),
        pytest.param(Ground("saddle", 0.002), marks=pytest.mark.thorough),
    ],
    ids=lambda g: g.kind,
)
def test_on_uneven_ground_all_heights_along_the_light_are_true(ground):
    spec = Spec(track=rounded_rectangle(44, 30, 8), draft_inner=0, draft_outer=0)
    cover, base = draw_on(spec, ground)
    want = spec.truth().values
    for share in (0.07, 0.21, 0.4, 0.83):
        (xy,), (normal,) = spec.track.at(np.array([share * spec.track.length]))

        def upright(shape, o, low, high, xy=xy, normal=normal):
            x, y = xy + o * normal
            z = float(ground.height(np.array(x), np.array(y)))
            return length_inside(shape, (x, y, z + low), (x, y, z + high))

        assert upright(cover, 0.0, -1, 5) == pytest.approx(want["cover_thickness"], abs=1e-5)
        assert 1 - upright(base, 0.3, -1, 0) == pytest.approx(0, abs=1e-5)
        assert 2 - upright(base, -1.0, -2, 0) == pytest.approx(want["rib_height_inner"], abs=1e-5)
        assert 2 - upright(base, 1.0, -2, 0) == pytest.approx(want["rib_height_outer"], abs=1e-5)
        lip = spec.trap_end("outer") + 0.4
        assert 2 - upright(base, lip, -2, 0) - 0.4 == pytest.approx(want["lip_gap_outer"], abs=1e-5)
