"""What a trial promises, on drawn housings: round, L-shaped, curved and divided. Long; each is reviewed twice."""

from __future__ import annotations

import io
from dataclasses import dataclass

import cadquery as cq
import numpy as np
import pandas
import pytest
import trimesh
from builder import Spec, build, circle, l_shape
from builder.hard import write_model
from builder.hard.seams import SEAMS
from builder.relief import Ground

from seamcheck.preparation.path import energy
from seamcheck.preparation.prepare import prepare
from seamcheck.settings.settings import Settings

DISTANCE, INDEX, HALF_ANGLE = 250.0, 1.58, 1.5
THICKNESS = 2.0
RIB = 0.6

GROUNDS = {"cylinder": Ground("cylinder", 120.0), "saddle": Ground("saddle", 0.0018)}
DRAWN = {"round": Spec(track=circle(28)), "L": Spec(track=l_shape())}
HARD = ("cylinder", "saddle", "dividing-wall", "crossing-walls")

pytestmark = pytest.mark.thorough


@dataclass(frozen=True)
class Proved:
    """What was made of one drawn housing."""

    name: str
    made: object
    table: pandas.DataFrame
    ground: Ground


@pytest.fixture(scope="module", params=[*DRAWN, *HARD])
def proved(request, tmp_path_factory):
    folder = tmp_path_factory.mktemp("drawn")
    model = folder / "housing.step"
    if request.param in DRAWN:
        build(DRAWN[request.param]).write(model)
    else:
        write_model(model, SEAMS[request.param]())
    settings = Settings().changed(
        {
            "scanner": {"distance": DISTANCE, "half-angle": HALF_ANGLE, "index": INDEX},
            "trial": {"acceleration": 2.0e5, "laps": 4},
        }
    )
    made = prepare(model, folder / "trial", settings)
    table = pandas.read_csv(io.BytesIO(made.files["path.csv"]), comment="#")
    return Proved(request.param, made, table, GROUNDS.get(request.param, Ground("level", 0.0)))


def head(made) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Origin and axes of the seam's frame, and the foot of the optical axis, as the table's head states them."""
    lines = made.files["path.csv"].decode().splitlines()
    frame = next(line for line in lines if line.startswith("# frame of the seam"))
    origin, axes = frame.partition("origin ")[2].split("; axes x, y, z (z against the beam) ")
    foot = next(line for line in lines if "pivot stands" in line).partition("stands at x and y ")[2].partition(",")[0]
    read = np.array([[float(x) for x in axis.split()] for axis in axes.split(";")])
    return np.array([float(x) for x in origin.split()]), read, np.array([float(x) for x in foot.split()])


def rays_of(proved, aside: float = 0.0) -> tuple[np.ndarray, np.ndarray]:
    """Pivot and directions (n, 3) in the model's coordinates, as a scanner sends the light that is told the table."""
    origin, axes, foot = head(proved.made)
    table = proved.table
    told = np.column_stack([table["scanner_x_mm"], table["scanner_y_mm"], np.zeros(len(table))]) @ axes + origin
    across = np.cross(table[["normal_x", "normal_y", "normal_z"]], table[["tangent_x", "tangent_y", "tangent_z"]])
    levels = proved.ground.height(*table[["x_mm", "y_mm"]].to_numpy().T) + THICKNESS
    stations = [np.column_stack([c["stations"][k] for k in "xy"]) for c in joints(proved)[0]["contours"]]
    level = float(np.median(proved.ground.height(*np.vstack(stations).T))) + THICKNESS
    assert levels.min() - 0.1 <= level <= levels.max() + 0.1
    pivot = np.array([*foot, 0.0]) @ axes + origin
    pivot[2] = level + DISTANCE
    rays = told + aside * across - pivot
    return pivot, rays / np.linalg.norm(rays, axis=1, keepdims=True)


def joints(proved):
    return proved.made.before.document["joints"]


def test_the_clamp_adds_no_shadow_and_no_collision_to_the_review(proved):
    rules = {"scanner-shadow", "parts-overlap"}
    before = [f for f in proved.made.before.document["findings"] if f["rule"] in rules]
    (after,) = proved.made.with_clamp
    assert after.verdict in ("pass", "attention", "fail")
    assert after.document["joints"][0]["length_mm"] == pytest.approx(joints(proved)[0]["length_mm"], rel=1e-6)
    assert len([f for f in after.document["findings"] if f["rule"] in rules]) == len(before) == 0


def test_traced_back_through_the_refraction_the_points_meet_the_middle_line(proved):
    # Rays from the pivot to the drawn top z = f(x, y) + 2, halved to its root; refracted there by Snell's law in vector
    # form about the drawn normal (-fx, -fy, 1); then straight on to the height of the point.
    pivot, rays = rays_of(proved)
    ground, points = proved.ground, proved.table[["x_mm", "y_mm", "z_mm"]].to_numpy()
    low, high = np.zeros(len(rays)), np.full(len(rays), 2.0 * DISTANCE)
    for _ in range(60):
        middle = (low + high) / 2.0
        at = pivot + middle[:, None] * rays
        is_over = at[:, 2] > ground.height(at[:, 0], at[:, 1]) + THICKNESS
        low, high = np.where(is_over, middle, low), np.where(is_over, high, middle)
    enters = pivot + low[:, None] * rays
    normal = np.array([[-gx, -gy, 1.0] for gx, gy in (ground.gradient(x, y) for x, y, _ in enters)])
    normal /= np.linalg.norm(normal, axis=1, keepdims=True)
    cosine = -(rays * normal).sum(axis=1)
    inside = rays / INDEX + (cosine / INDEX - np.sqrt(1.0 - (1.0 - cosine**2) / INDEX**2))[:, None] * normal
    meets = enters + ((points[:, 2] - enters[:, 2]) / inside[:, 2])[:, None] * inside
    assert np.linalg.norm(meets - points, axis=1).max() < 0.02
    # and what is met lies on the drawn middle line: on the rib's top, at no offset from the track.
    assert np.abs(points[:, 2] - ground.height(points[:, 0], points[:, 1])).max() < 0.02


def test_no_ray_to_the_edges_of_the_rib_meets_the_clamp(proved, tmp_path):
    file = tmp_path / "clamp.step"
    file.write_bytes(proved.made.files["clamp.step"])
    bodies = cq.importers.importStep(str(file)).solids().vals()
    assert bodies
    assert all(body.isValid() for body in bodies)
    for body in bodies:
        corners, triangles = body.tessellate(0.01, 0.1)
        mesh = trimesh.Trimesh([c.toTuple() for c in corners], triangles)
        for aside in (-RIB, 0.0, RIB):
            pivot, rays = rays_of(proved, aside)
            hit = mesh.ray.intersects_any(np.broadcast_to(pivot, rays.shape), rays)
            assert not hit.any(), (proved.name, aside)


def test_the_energy_of_all_strokes_is_what_the_seam_needs(proved):
    # Without materials: the melted area as a share of its mean, along the strokes, by the trapezoid rule. The share of
    # power in the table knows its greatest only up to a factor, which the need at that row gives.
    table = proved.table
    brought = wanted = 0.0
    peak = table.loc[table["power_share"].idxmax()]
    greatest = peak["energy_share"] * peak["speed_mm_s"] / peak["power_share"]
    for _, rows in table.groupby("stroke"):
        watts = (rows["power_share"] * rows["ramp_share"] * greatest).to_numpy()
        brought += energy(rows["s_mm"].to_numpy(), rows["speed_mm_s"].to_numpy(), watts)
    for path in proved.made.paths:
        lap = path.s <= path.length + 1e-9
        wanted += float(np.trapezoid(path.need.energy[lap], path.s[lap]))
    assert brought == pytest.approx(wanted, rel=0.01)
    length = sum(path.length for path in proved.made.paths)
    assert wanted == pytest.approx(length, rel=0.02)


def test_the_strokes_cover_the_whole_seam_once(proved):
    closed = [path for path in proved.made.paths if path.closed]
    assert len(closed) == 1
    open_ends = [path for path in proved.made.paths if not path.closed]
    assert len(open_ends) == {"dividing-wall": 1, "crossing-walls": 2}.get(proved.name, 0)
    whole = sum(path.length for path in proved.made.paths)
    # Each wall ends where the frame's rib begins: half a rib's width before the middle line, at both ends.
    assert whole + 2.0 * RIB * len(open_ends) == pytest.approx(joints(proved)[0]["length_mm"], rel=2e-3)
