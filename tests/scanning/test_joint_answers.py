"""A table that answers refusals once: read, kept apart by model, and used in a scan."""

from __future__ import annotations

import csv

import pytest
from builder.hard.tree import write_model
from builder.joints import JOINTS

from seamcheck import scan
from seamcheck.errors import UsageError
from seamcheck.scanning.answers import Answers, read_answers
from seamcheck.settings.settings import Settings

HEAD = "folder,path,cover,base,beam,seam,reason\n"


def _table(folder, *rows):
    file = folder / "joints.csv"
    file.write_text(HEAD + "".join(f"{row}\n" for row in rows), encoding="utf-8")
    return file


def test_rows_with_an_answer_count(tmp_path):
    found = read_answers(
        _table(
            tmp_path, "m,a.step,lid,box,0 0 -1,,ambiguous", ",b.step,,,,no,", ",c.step,,,,,left open", "m,'=d,p1,,,yes,"
        )
    )
    assert set(found) == {("m", "a.step"), ("", "b.step"), ("m", "=d")}
    assert found["m", "a.step"].changes == {"cover": "lid", "base": "box", "beam": (0.0, 0.0, -1.0)}
    assert found["", "b.step"].no_seam
    assert not found["m", "=d"].no_seam


@pytest.mark.parametrize(
    ("rows", "says"),
    [
        (["m,a.step,lid,,0 -1,,"], "line 2: beam"),
        (["m,a.step,lid,,,maybe,"], "line 2: seam"),
        (["m,a.step,lid,,,no,"], "no cover"),
        (["m,,lid,,,,"], "line 2: the path"),
        (["m,a.step,lid,,,,", "m,a.step,box,,,,"], "line 3: 'a.step' stands in the table twice"),
    ],
)
def test_what_can_not_be_taken_is_said_with_its_line(tmp_path, rows, says):
    with pytest.raises(UsageError, match=says):
        read_answers(_table(tmp_path, *rows))


def test_a_table_needs_a_path(tmp_path):
    (tmp_path / "joints.csv").write_text("cover,base\nlid,box\n", encoding="utf-8")
    with pytest.raises(UsageError, match="'path' is missing"):
        read_answers(tmp_path / "joints.csv")


def test_an_answer_is_for_its_model_only(tmp_path):
    answers = Answers(read_answers(_table(tmp_path, "m,a.step,lid,,,,")), Settings())
    assert answers.settings_of("m", "a.step").cover == "lid"
    assert answers.settings_of("n", "a.step") is answers.settings
    assert answers.settings_of("m", "b.step") is answers.settings


def test_a_refusal_is_answered_once(tmp_path):
    models, out = tmp_path / "models", tmp_path / "out"
    models.mkdir()
    for name in ("rib-on-a-plate-under-a-hood", "plug-010"):
        write_model(models / f"{name}.step", JOINTS[name]())
    first = scan(models, out, Settings(), jobs=1, pages="none")
    assert first.reasons == {"ambiguous": 1, "no-seam": 1}
    assert first.exit_code() == 2
    with (out / "unanswered.csv").open(encoding="utf-8", newline="") as file:
        rows = list(csv.DictReader(file))
    assert [row["path"] for row in rows] == ["plug-010.step", "rib-on-a-plate-under-a-hood.step"]
    rows[0]["seam"] = "no"
    rows[1]["cover"] = "p1"
    with (tmp_path / "joints.csv").open("w", encoding="utf-8", newline="") as file:
        writer = csv.DictWriter(file, list(rows[0]))
        writer.writeheader()
        writer.writerows(rows)
    second = scan(models, out, Settings(), joints=tmp_path / "joints.csv", jobs=1, pages="none")
    assert second.reviewed == 1
    assert second.reasons == {"said-no-seam": 1}
    assert second.verdicts["not-reviewed"] == 1
    assert second.exit_code() in (0, 1)
    again = scan(models, out, Settings(), joints=tmp_path / "joints.csv", jobs=1, pages="none")
    assert again.reviewed == 0
