"""The folder for a trial: every file read back by another program, clamp and nest clear of light and parts."""

from __future__ import annotations

import io
import json

import cadquery as cq
import ezdxf
import numpy as np
import pandas
import pytest
import trimesh
from builder import Spec, build, circle, l_shape
from report.german_words import english_words
from scipy.spatial.transform import Rotation
from shell import shell

from seamcheck.measure.material.optics import refract
from seamcheck.pipeline import settings_for
from seamcheck.preparation.prepare import prepare
from seamcheck.samples import FOLDER
from seamcheck.settings.file import parse_settings
from seamcheck.settings.settings import Settings
from seamcheck.settings.writing import as_toml

DISTANCE = 250.0
NAMES = {
    "clamp.step", "clamp.dxf", "clamp.csv", "nest.step", "nest.dxf", "path.csv", "path.dxf", "path.json", "sheet.md",
}  # fmt: skip


def made_from(model, folder, **settings):
    trial = {"acceleration": 2.0e5, "laps": 10, "cooling": 2.0, "handling": 8.0, "hours": 4000.0, "parts": 1e6}
    return prepare(
        model,
        folder,
        Settings().changed(
            {
                "clamp": {"pressure": 2.0, "modulus": 2300.0},
                "tolerance": {"flatness_cover": 0.2},
                "trial": trial,
                **settings,
            }
        ),
    )


@pytest.fixture(scope="module")
def trial(tmp_path_factory):
    folder = tmp_path_factory.mktemp("trial") / "out"
    scanner = {"distance": DISTANCE, "half-angle": 3.0, "index": 1.58}
    return made_from(FOLDER / "sound.step", folder, scanner=scanner), folder


def solids(content, tmp_path):
    file = tmp_path / "read.step"
    file.write_bytes(content)
    return cq.importers.importStep(str(file)).solids().vals()


def mesh_of(solid):
    corners, triangles = solid.tessellate(0.01, 0.1)
    return trimesh.Trimesh([c.toTuple() for c in corners], triangles)


def test_all_files_are_there_at_once_and_carry_the_cautions(trial):
    made, folder = trial
    assert {path.name for path in folder.iterdir()} == set(made.files) == NAMES
    for name in NAMES - {"clamp.step", "nest.step"}:
        assert "IEC 60825-1" in (folder / name).read_text("utf-8"), name
    sheet = (folder / "sheet.md").read_text("utf-8")
    for said in (
        "no shadow, no collision",
        "481 N in all",
        "bending of the cover between rib and land | up to 0.0",
        "are pressed flat",
        "| 12.01 s |",
    ):
        assert said in sheet
    # Force: 2 MPa over a rib 1.2 mm wide and 200.5 mm long.
    assert pytest.approx(481, abs=1) == 2.0 * 1.2 * 200.5
    # and station by station in the table: 2.4 N/mm along the whole seam.
    table = pandas.read_csv(folder / "clamp.csv", comment="#")
    np.testing.assert_allclose(table["force_n_per_mm"], 2.4, rtol=1e-3)
    assert table["land_mm"].min() > 1.0
    # End-loaded strip, 2 mm thick, E = 2300 MPa, ν = 0.4: F a³ / (3 D), D = E t³ / (12 (1 - ν²)).
    stiff = 2300.0 * 2.0**3 / (12.0 * (1.0 - 0.4**2))
    np.testing.assert_allclose(table["bending_mm"], 2.4 * table["arm_mm"] ** 3 / (3.0 * stiff), rtol=1e-3)


def test_clamp_and_nest_are_sound_bodies_that_touch_no_part(trial, tmp_path):
    # The kernel's own check and volumes, through a general-purpose library.
    made, _ = trial
    housing = cq.importers.importStep(str(FOLDER / "sound.step")).solids().vals()
    for name, count in (("clamp.step", 2), ("nest.step", 1)):
        bodies = solids(made.files[name], tmp_path)
        assert len(bodies) == count
        for body in bodies:
            assert body.isValid()
            assert min(edge.Length() for edge in body.Edges()) > 0.01
            assert sum(body.intersect(part).Volume() for part in housing) < 1e-3


def test_no_ray_on_its_way_to_the_rib_meets_the_clamp(trial, tmp_path):
    # Rays through meshes (trimesh), from the pivot over the seam's middle to both edges of the rib, as refracted.
    made, _ = trial
    table = pandas.read_csv(io.BytesIO(made.files["path.csv"]), comment="#")
    told = np.column_stack([table["scanner_x_mm"], table["scanner_y_mm"], np.zeros(len(table))])
    across = np.cross(table[["normal_x", "normal_y", "normal_z"]], table[["tangent_x", "tangent_y", "tangent_z"]])
    pivot = np.array([0.0, 0.0, 2.0 + DISTANCE])
    clamp = [mesh_of(body) for body in solids(made.files["clamp.step"], tmp_path)]
    for shift in (-0.6, 0.0, 0.6):
        rays = told + shift * across - pivot
        for mesh in clamp:
            assert not mesh.ray.intersects_any(np.broadcast_to(pivot, rays.shape), rays).any()
    beside = told + 2.5 * across - pivot  # and beside the beam the clamp stands
    assert any(mesh.ray.intersects_any(np.broadcast_to(pivot, beside.shape), beside).all() for mesh in clamp)


def test_scanner_coordinates_traced_through_the_cover_meet_the_middle_line(trial):
    made, _ = trial
    table = pandas.read_csv(io.BytesIO(made.files["path.csv"]), comment="#")
    pivot = np.array([0.0, 0.0, 2.0 + DISTANCE])
    rays = np.column_stack([table["scanner_x_mm"], table["scanner_y_mm"], np.zeros(len(table))]) - pivot
    rays /= np.linalg.norm(rays, axis=1, keepdims=True)
    enters = pivot + rays * (-DISTANCE / rays[:, 2])[:, None]
    inside = refract(rays, np.broadcast_to([0.0, 0.0, 1.0], rays.shape), 1.58)
    meets = enters + inside * (-2.0 / inside[:, 2])[:, None]
    # The drawn middle line: 64 x 44 with corners of 9 mm.
    at = np.abs(meets[:, :2]) - (32.0 - 9.0, 22.0 - 9.0)
    off = np.where((at > 0).all(axis=1), np.hypot(*at.T) - 9.0, np.max(at - 9.0, axis=1))
    assert np.abs(off).max() < 0.02


def test_drawings_and_pose_form_say_the_same_as_the_table(trial):
    made, _ = trial
    table = pandas.read_csv(io.BytesIO(made.files["path.csv"]), comment="#")
    form = json.loads(made.files["path.json"])
    (stroke,) = form["strokes"]
    np.testing.assert_allclose([p["position"] for p in stroke["points"]], table[["x_mm", "y_mm", "z_mm"]], atol=2e-6)
    turned = Rotation.from_quat([[*p["quaternion_wxyz"][1:], p["quaternion_wxyz"][0]] for p in stroke["points"]])
    np.testing.assert_allclose(turned.apply([0, 0, 1]), np.broadcast_to([0, 0, -1], (len(table), 3)), atol=1e-6)
    np.testing.assert_allclose(turned.apply([1, 0, 0]), table[["tangent_x", "tangent_y", "tangent_z"]], atol=1e-5)
    s = np.array([p["s"] for p in stroke["points"]])
    share = np.array([p["energy"] for p in stroke["points"]])[s <= stroke["lap_length"]]
    assert np.trapezoid(share, s[s <= stroke["lap_length"]]) == pytest.approx(stroke["lap_length"], rel=1e-5)
    assert form["units"]["length"] == "mm"
    for name, layers in (
        ("path.dxf", {"SEAM_MID_LINE", "SCANNER_COORDINATES", "START"}),
        ("clamp.dxf", {"CLAMP_FOOT", "CLAMP_LAND"}), ("nest.dxf", {"NEST_POCKET", "SUPPORT"}),
    ):  # fmt: skip
        drawing = ezdxf.read(io.StringIO(made.files[name].decode()))
        assert not drawing.audit().errors
        curves = drawing.modelspace().query("LWPOLYLINE")
        assert {c.dxf.layer for c in curves} == layers
        assert all(c.closed for c in curves)
    seam = (
        ezdxf.read(io.StringIO(made.files["path.dxf"].decode()))
        .modelspace()
        .query("LWPOLYLINE[layer=='SEAM_MID_LINE']")
    )
    # Perimeter of the rounded rectangle: 2 (a + b) - (8 - 2 pi) r.
    assert _length(seam[0]) == pytest.approx(2 * (64 + 44) - (8 - 2 * np.pi) * 9, abs=0.05)


def _length(polyline):
    from ezdxf.path import make_path

    points = np.array([tuple(p) for p in make_path(polyline).flattening(0.001)])
    return float(np.linalg.norm(np.diff(points, axis=0), axis=1).sum())


@pytest.mark.parametrize(
    ("model", "options", "says"),
    [
        ("rib-height", (), "breaks 1 must-fix limit (rib-height)"),
        ("sound", ("--scanner", "half-angle=3"), "either distance"),
        pytest.param("sound", ("--clearance", "6"), "leave no land", marks=pytest.mark.thorough),
        ("sound", ("--speed", "0"), "trial.speed must be between"),
    ],
)
def test_what_can_not_be_prepared_is_one_sentence_and_leaves_nothing(tmp_path, model, options, says):
    done = shell("prepare", FOLDER / f"{model}.step", "--into", tmp_path / "t", *options)
    assert done.exit_code == 2
    assert says in done.output
    assert done.output.count("\n") == 1
    assert not list(tmp_path.iterdir())


def refused(*options):
    """What is said of options that end before anything is reviewed."""
    done = shell("prepare", FOLDER / "sound.step", *options)
    assert done.exit_code == 2
    assert done.output.count("\n") == 1
    return done.output


def test_a_link_is_no_folder_to_write_into(tmp_path):
    (tmp_path / "real").mkdir()
    (tmp_path / "link").symlink_to(tmp_path / "real")
    assert "is a link" in refused("--into", str(tmp_path / "link"))
    assert (tmp_path / "link").is_symlink()
    assert not list((tmp_path / "real").iterdir())


def test_the_folder_above_must_be_there(tmp_path):
    assert "there is no folder" in refused("--into", str(tmp_path / "not" / "there"))
    assert not list(tmp_path.iterdir())


@pytest.mark.parametrize(
    ("options", "says"),
    [
        (("--plate-thickness", "5"), "needs both plate-thickness"),
        (("--laps", "2.5"), "whole number"),
        (("--speed", "fast"), "must be a speed"),
        (("--used", "120 %"), "trial.used must be between"),
    ],
)
def test_numbers_of_a_trial_that_can_not_be_taken_are_named(options, says, tmp_path):
    assert says in refused("--into", tmp_path / "t", *options)
    assert not list(tmp_path.iterdir())


def test_a_settings_file_holds_what_a_trial_goes_by(tmp_path):
    file = tmp_path / "seamcheck.toml"
    file.write_text('[trial]\nspeed = "2 m/s"\nnest-grip = 4.0\nused = "85 %"\n')
    trial = settings_for((), file).trial
    assert (trial.speed, trial.nest_grip, trial.used, trial.overlap) == (2000.0, 4.0, 0.85, 5.0)
    assert parse_settings(as_toml(Settings().changed({"trial": {"speed": 2000.0}}))).trial.speed == 2000.0


def test_a_folder_that_holds_something_is_left_alone(tmp_path):
    (tmp_path / "kept.txt").write_text("mine")
    done = shell("prepare", FOLDER / "sound.step", "--into", tmp_path)
    assert done.exit_code == 2
    assert "not an empty folder" in done.output
    assert [path.name for path in tmp_path.iterdir()] == ["kept.txt"]


@pytest.mark.thorough
@pytest.mark.parametrize("track", [circle(28), l_shape()], ids=["round", "L"])
@pytest.mark.parametrize("scanner", [None, {"distance": 220.0, "half-angle": 2.0}], ids=["parallel", "scanner"])
def test_round_and_l_shaped_housings_get_a_clamp_that_their_review_holds_clear(track, scanner, tmp_path):
    model = tmp_path / "housing.step"
    build(Spec(track=track)).write(model)
    made = made_from(model, tmp_path / "trial", **({} if scanner is None else {"scanner": scanner}))
    assert [review.verdict for review in made.with_clamp] != ["not-reviewed"]
    assert all(body.isValid() for body in solids(made.files["clamp.step"], tmp_path))


@pytest.mark.thorough
def test_a_plate_presses_without_land(tmp_path):
    options = ["--plate-thickness", "5", "--plate-index", "1.49"]
    done = shell("prepare", FOLDER / "sound.step", "--into", tmp_path / "t", *options)
    assert done.exit_code == 0, done.output
    assert not (tmp_path / "t" / "clamp.step").exists()
    assert "92.5 %" in (tmp_path / "t" / "sheet.md").read_text("utf-8")
    # Closed form: over the seam of 64 x 44 with corners of 9 mm, 8 mm wider than the light (rib 1.2, margin and
    # clearance 0.2 each, 0.02 of fit); 5 mm thick.
    (body,) = solids((tmp_path / "t" / "plate.step").read_bytes(), tmp_path)
    edge = 0.6 + 0.4 + 0.02 + 8.0
    area = (64 + 2 * edge) * (44 + 2 * edge) - (4 - np.pi) * (9 + edge) ** 2
    assert body.isValid()
    assert body.Volume() == pytest.approx(5.0 * area, rel=0.001)
    housing = cq.importers.importStep(str(FOLDER / "sound.step")).solids().vals()
    assert sum(body.intersect(part).Volume() for part in housing) < 1e-3


@pytest.mark.thorough
def test_a_spot_wider_than_the_land_allows_is_refused(tmp_path):
    options = ["--set", "material.laser.spot=7"]
    done = shell("prepare", FOLDER / "sound.step", "--into", tmp_path / "t", *options)
    assert done.exit_code == 2
    assert done.output.count("\n") == 1
    assert "breaks 2 must-fix limits (beam-path, clamp-land)" in done.output
    assert not list(tmp_path.iterdir())


@pytest.mark.thorough
def test_the_sheet_speaks_german_on_demand(tmp_path):
    options = ["--plate-thickness", "5", "--plate-index", "1.49", "--clamp", "pressure=2", "--language", "de"]
    done = shell("prepare", FOLDER / "sound.step", "--into", tmp_path / "t", *options)
    assert done.exit_code == 0, done.output
    assert english_words(done.output.replace(str(tmp_path), "")) == set()
    sheet = (tmp_path / "t" / "sheet.md").read_text("utf-8")
    assert english_words(sheet) == set()
    assert "92,5 %" in sheet


@pytest.mark.thorough
@pytest.mark.parametrize(
    ("model", "length", "deep"),
    [
        ("wall-opening", 8.0, "6 mm deep"),  # drawn: a cable opening of 8 mm through the wall below the rib
        ("overhang", 150.8, "6 mm deep"),  # drawn: a ledge within the wall carries the rib all round, 2 pi 24 mm
    ],
)
def test_the_sheet_says_where_no_support_can_reach(model, length, deep, tmp_path):
    options = ["--severity", f"{model}=note"]
    done = shell("prepare", FOLDER / f"{model}.step", "--into", tmp_path / "t", *options)
    assert done.exit_code == 0, done.output
    sheet = (tmp_path / "t" / "sheet.md").read_text("utf-8")
    said = next(line for line in sheet.splitlines() if "no support directly below c1" in line)
    assert float(said.split("|")[2].split()[0]) == pytest.approx(length, abs=1.0)
    assert deep in sheet
    (nest,) = solids((tmp_path / "t" / "nest.step").read_bytes(), tmp_path)
    assert nest.isValid()
    housing = cq.importers.importStep(str(FOLDER / f"{model}.step")).solids().vals()
    assert sum(nest.intersect(part).Volume() for part in housing) < 1e-3
