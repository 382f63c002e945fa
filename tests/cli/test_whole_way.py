"""From a sample file to verdict and document, as people run it: in a process of its own."""

import json
import subprocess
import sys

import jsonschema
import pytest
from telling import telling

from seamcheck.document.make import schema


@pytest.fixture(scope="module")
def models(tmp_path_factory):
    folder = tmp_path_factory.mktemp("models")
    seamcheck("samples", folder)
    return folder


def seamcheck(*args, **more):
    command = [sys.executable, "-m", "seamcheck", *map(str, args)]
    return subprocess.run(command, capture_output=True, text=True, encoding="utf-8", timeout=300, **more)


def test_the_sound_sample_passes(models):
    result = seamcheck("review", models / "sound.step")
    assert result.returncode == 0
    assert result.stdout.startswith("PASS  No limit is broken.")
    assert "weld rib on the base" in result.stdout
    assert result.stderr == ""


def test_a_spoiled_sample_fails_with_place_and_remedy_and_the_same_bytes_twice(models, tmp_path):
    texts = []
    for name in ("a.json", "b.json"):
        result = seamcheck("review", models / "rib-height.step", "--json", tmp_path / name)
        assert result.returncode == 1
        texts.append((tmp_path / name).read_bytes())
    assert texts[0] == texts[1]
    document = json.loads(texts[0])
    jsonschema.Draft202012Validator(schema()).validate(document)
    finding = next(f for f in document["findings"] if f["rule"] == "rib-height")
    assert finding["value"] < finding["limit"]
    assert finding["remedy"].startswith("Raise the rib or lower the trap floor by ")
    assert finding["faces"]
    assert all(face["step_entity"].startswith("#") for face in finding["faces"])


def test_standard_output_is_json_alone(models):
    result = seamcheck("review", models / "sound.step", "--json", "-")
    assert json.loads(result.stdout)["verdict"] == "pass"


def test_sections_and_meshes_hold_the_schema(models):
    result = seamcheck("review", models / "sound.step", "--json", "-", "--with-view")
    document = json.loads(result.stdout)
    jsonschema.Draft202012Validator(schema()).validate(document)
    from seamcheck.document.view import unpack_view

    sections, meshes = unpack_view(document["view"])
    assert {s.contour for s in sections} == {c["id"] for j in document["joints"] for c in j["contours"]}
    assert {m.part for m in meshes} == {p["id"] for p in document["model"]["parts"]}
    segments, _ = sections[0].at(0)
    assert len(segments) > 8


@pytest.mark.parametrize("content", telling([b"", b"hello", b"ISO-10303-21;", b"\x00" * 1000], [b"hello"]))
def test_what_is_no_model_is_one_sentence(tmp_path, content):
    file = tmp_path / "model.step"
    file.write_bytes(content)
    result = seamcheck("review", file, "-q")
    assert result.returncode == 2
    assert result.stdout.startswith("NOT REVIEWED  model.step  ")
    assert len(result.stdout.splitlines()) == 1
    assert "Traceback" not in result.stdout + result.stderr


def test_a_part_that_is_not_there_is_named(models):
    result = seamcheck("review", models / "sound.step", "--cover", "no such part")
    assert result.returncode == 2
    assert len(result.stderr.strip().splitlines()) == 1
