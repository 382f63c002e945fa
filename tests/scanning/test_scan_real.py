"""Real reviews in a scan: what the store, the lists and the examples of docs/scan.md say of the sample models."""

import csv
import gzip
import json
import os
import re
import sqlite3
import subprocess
import sys
import zipfile
from pathlib import Path

import pytest
from scan_fakes import Fakes, dump, model, rows

sys.path.insert(0, str(Path(__file__).parents[1] / "report"))
from report_browser import browser, needs_browser

import seamcheck
from seamcheck.document.plain import to_json
from seamcheck.samples import samples
from seamcheck.scanning.store import open_to_read

ROOT = Path(__file__).parents[2]
DOCS = (ROOT / "docs" / "scan.md").read_text(encoding="utf-8")
SAMPLES = {sample.name: sample for sample in samples()}


@pytest.fixture(scope="module")
def scanned(tmp_path_factory):
    """Folder 'review': sound, spoiled, packed, paired and unreadable models of two suppliers."""
    place = tmp_path_factory.mktemp("real")
    for path, name in (
        ("north/trap.step", "trap-room"),
        ("north/turn.step", "corner-radius"),
        ("south/open.step", "seam-open"),
    ):
        target = place / "models" / path
        target.parent.mkdir(parents=True, exist_ok=True)
        target.write_bytes(SAMPLES[name].file.read_bytes())
    whole = SAMPLES["sound"].file.read_bytes()
    (place / "models/north/cut.step").write_bytes(whole[:20_000])
    (place / "models/south/light.step.gz").write_bytes(gzip.compress(SAMPLES["transmission"].file.read_bytes()))
    with zipfile.ZipFile(place / "models/south/box.zip", "w", zipfile.ZIP_DEFLATED) as archive:
        archive.writestr("../../sound.step", whole)
    (place / "models/south/seamcheck.toml").write_text("collapse = 0.1\n")
    (place / "mine.toml").write_text(SAMPLES["transmission"].settings.read_text(encoding="utf-8"), encoding="utf-8")
    result = seamcheck.scan(place / "models", place / "review", place / "mine.toml")
    return place, result


def test_each_model_has_its_verdict(scanned):
    place, result = scanned
    found = dict(rows(place / "review", "SELECT path, coalesce(reason_code, verdict) FROM results"))
    assert len(found) == 6
    assert found["north/trap.step"] == found["south/open.step"] == "fail"
    assert found["north/cut.step"] == "unreadable"
    assert found["north/turn.step"] == "attention"
    assert found["south/light.step.gz"] == "attention"  # the sample that breaks the rule of transmission
    assert found["south/box.zip/../../sound.step"] in ("pass", "attention")
    assert result.exit_code() == 1
    assert result.ignored_settings == (f"{place / 'models'}/south/seamcheck.toml",)
    assert not list(place.rglob("sound.step"))  # nothing was unpacked to where the archive says
    assert not (place / "review/.unpacked").exists()


def test_a_document_in_the_store_is_the_one_of_a_single_review(scanned):
    place, _ = scanned
    alone = seamcheck.review(place / "models/south/open.step", place / "mine.toml")
    with open_to_read(place / "review") as store:
        (key,) = store.rows("SELECT review FROM results WHERE path = 'south/open.step'")[0]
        stored = store.document(key)
    assert to_json(stored) == to_json(json.loads(json.dumps(alone.document)))


def test_what_the_settings_say_of_the_material_is_in_the_store_and_the_lists(scanned):
    place, _ = scanned
    # transmission.toml: PBT over PBT-GF30; T(2.68 mm) of the plaques 46, 33.5 and 24.4 % at 1, 2 and 3 mm by least
    # squares on the logarithms, computed here anew: T = T0 exp(-K t).
    import numpy as np

    t, percent = np.array([1.0, 2.0, 3.0]), np.array([46.0, 33.5, 24.4])
    slope, start = np.polyfit(t, np.log(percent), 1)
    expected = float(np.exp(start + slope * 2.68))
    question = (
        "SELECT cover, base, pair, transmission_least FROM results JOIN materials USING (review) "
        "WHERE path = 'south/light.step.gz'"
    )
    cover, base, pair, least = rows(place / "review", question)[0]
    assert (cover, base, pair) == ("PBT", "PBT-GF30", "same polymer")
    assert least == pytest.approx(expected, abs=0.01)
    with (place / "review/index.csv").open(newline="") as file:
        listed = {row["path"]: row["transmission_percent_least"] for row in csv.DictReader(file)}
    assert float(listed["south/light.step.gz"]) == pytest.approx(least, abs=1e-3)


SQL = re.findall(r"```sql\n(.*?)```", DOCS, re.DOTALL)


@pytest.mark.parametrize("question", SQL, ids=[q.split("\n")[0][:50] for q in SQL])
def test_the_questions_of_the_docs_run_as_printed(scanned, question):
    db = sqlite3.connect(scanned[0] / "review/store.sqlite")
    found = db.execute(question).fetchall()
    db.close()
    assert found or "rib-width" in question  # no sample here breaks that rule
    if "'trap-room'" in question:
        assert found == [("north", 1, 1.1)]
    if "reason_code, reason" in question:
        assert [(path, code) for path, code, _ in found] == [("north/cut.step", "unreadable")]
    if "transmission_least" in question:
        assert "south/light.step.gz" in [row[0] for row in found]


def test_the_python_of_the_docs_runs_as_printed(scanned, tmp_path):
    place, _ = scanned
    (code,) = re.findall(r"```python\n(.*?)```", DOCS, re.DOTALL)
    (tmp_path / "review").symlink_to(place / "review")
    env = os.environ | {"PYTHONPATH": str(ROOT)}
    subprocess.run([sys.executable, "-c", code], cwd=tmp_path, env=env, check=True)
    documents = [json.loads(file.read_text()) for file in tmp_path.glob("*.json")]
    assert {"trap.step", "open.step"} <= {document["model"]["file"] for document in documents}


def test_the_docs_name_every_table_and_option():
    schema = (ROOT / "seamcheck/scanning/store_schema.sql").read_text()
    for table in re.findall(r"CREATE (?:TABLE|VIEW) (\w+)", schema):
        assert f"`{table}`" in DOCS
    for words in ("Class 4", "approves none", "validated process", "--accept", "--pair-list", "--cluster", "--shared"):
        assert words in DOCS
    assert "@@" not in DOCS


def test_a_second_scan_changes_nothing_and_costs_nothing(scanned):
    place, _ = scanned
    before = dump(place / "review")
    result = seamcheck.scan(place / "models", place / "review", place / "mine.toml")
    assert result.reviewed == 0
    assert dump(place / "review") == before


def test_the_command_says_what_it_did(scanned):
    place, _ = scanned
    command = [sys.executable, "-m", "seamcheck", "scan", "models", "--out", "review", "--settings", "mine.toml"]
    env = os.environ | {"PYTHONPATH": str(ROOT)}
    done = subprocess.run(command, cwd=place, capture_output=True, text=True, env=env)
    assert done.returncode == 1
    assert "6 models; 0 reviews made now." in done.stdout
    assert "trap-room 1" in done.stdout
    assert "unreadable 1" in done.stdout
    assert "never an approval" in done.stdout
    assert "seamcheck.toml" in done.stdout
    assert "looking:" in done.stderr
    for wrong, words in (
        (["models"], "--out"),
        (["models", "--out", "review", "--accept", "singel-part"], "'single-part'"),
        (["models", "--out", "review", "--collapse", "big"], "collapse"),
        (["nowhere", "--out", "review"], "no folder nowhere"),
    ):
        done = subprocess.run([*command[:4], *wrong], cwd=place, capture_output=True, text=True, env=env)
        assert done.returncode == 2
        assert words in done.stderr
        assert "Traceback" not in done.stderr


@needs_browser
def test_the_page_shows_sorts_and_filters(tmp_path_factory):
    place = tmp_path_factory.mktemp("page")
    hostile = "<img src=x onerror=alert(1)> {{7*7}}.step"
    for n in range(150):
        model(place / "in", f"s{n % 3}/m{n}.step", ("pass", "fail", "refused")[n % 3], n)
    model(place / "in", f"'\"&/{hostile}", "hostile", 1)
    seamcheck.scan(place / "in", place / "out", workers=Fakes())
    with browser(tmp_path_factory.mktemp("profile")) as window:
        window.open(place / "out/index.html")
        assert window.complaints() == []
        assert [url for url in window.requests() if not url.startswith("chrome:")] == []
        body = "document.querySelectorAll('#list tbody tr').length"
        assert window.run(f"return {body}") == 100
        window.click("#more")
        assert window.run(f"return {body}") == 151
        order = window.run("return [...document.querySelectorAll('#list tbody tr')].map(r => r.dataset.verdict)")
        assert order == ["fail"] * 51 + ["not-reviewed"] * 50 + ["pass"] * 50
        assert window.run("return document.querySelectorAll('#list img, #list script').length") == 0
        assert hostile in window.text("#list tbody")
        assert window.run("return document.querySelectorAll('#list svg polyline').length") > 100
        window.click(".verdict.is-not-reviewed")
        assert window.run(f"return {body}") == 50
        assert "The file holds one part." in window.text("#list tbody tr")
        window.click("#reset")
        window.run("const f = document.getElementById('find'); f.value = 'm14 s2'; f.dispatchEvent(new Event('input'))")
        names = window.run("return [...document.querySelectorAll('.model')].map(r => r.firstChild.textContent)")
        assert sorted(names) == [f"s2/m{n}.step" for n in (14, 140, 143, 146, 149)]
        window.click("#reset")
        kinds = window.run("return [...document.querySelectorAll('#kind option')].map(o => o.value)")
        assert kinds == ["", "weld-rib"]
        window.run(
            "const k = document.getElementById('kind'); k.value = 'weld-rib'; k.dispatchEvent(new Event('change'))"
        )
        assert window.run(f"return {body}") == 100  # all but those that were not reviewed
        assert "weld-rib" in window.text("#list tbody .joint")
        window.click("#reset")
        window.click("[data-sort=path]")
        first = window.text("#list tbody .model")
        window.click("[data-sort=path]")
        assert window.text("#list tbody .model") > first
        window.click("#reset")
        link = window.run("return document.querySelector('#list a').getAttribute('href')")
        assert (place / "out" / link).is_file()
        window.click(".rules button")
        assert 0 < window.run(f"return {body}") <= 51
        window.click("#reset")
        window.run('document.querySelector(`[data-supplier="\'\\\\"&"]`).click()')
        assert window.run(f"return {body}") == 1
        assert window.complaints() == []
        for words in ("Class 4", "never an approval", "validated process"):
            assert words in window.text("body")
