"""Decisions and answers saved from a page: what they waive, what leaves the questions, and what is refused."""

import json
from pathlib import Path

import pytest

from seamcheck.errors import UsageError
from seamcheck.settings.answers import read_answers, with_answers

ACCEPTED = {
    "id": "clamp-land-1", "rule": "clamp-land", "decision": "accept", "text": "Tight, but held in trials",
    "by": "A. Writer", "date": "2026-11-28", "place": {"joint": "j1", "contour": "c1", "from_s": 3.0, "to_s": 9.5},
}  # fmt: skip


def write(folder: Path, **changes) -> Path:
    content = {"document": "seamcheck-answers", "schema_version": 1, "findings": [ACCEPTED], **changes}
    path = folder / "answers.json"
    path.write_text(json.dumps(content))
    return path


def test_an_accepted_finding_is_a_waiver_with_reason_name_day_and_origin(tmp_path):
    (waiver,) = read_answers(write(tmp_path)).waivers("answers.json")
    assert (waiver.rule, waiver.joint, waiver.contour) == ("clamp-land", "j1", "c1")
    assert (waiver.from_s, waiver.to_s, waiver.at) == (3.0, 9.5, None)
    assert waiver.reason == "Tight, but held in trials (A. Writer, 2026-11-28)"
    assert waiver.origin == "answers.json, clamp-land-1"


@pytest.mark.parametrize("decision", ["change", "question", ""])
def test_only_what_is_accepted_is_waived(decision, tmp_path):
    assert read_answers(write(tmp_path, findings=[{**ACCEPTED, "decision": decision}])).waivers("a") == ()


@pytest.mark.parametrize(
    ("change", "said"),
    [({"text": " "}, "without a reason"), ({"by": ""}, "without a name"), ({"date": "soon"}, "a day is written like"),
     ({"place": {}}, "without a place"), ({"decision": "perhaps"}, "not a file of answers"),
     ({"place": {"at": [1, 2]}}, "not a file of answers"), ({"more": 1}, "not a file of answers"),
     ({"text": "x" * 5000}, "not a file of answers")],
)  # fmt: skip
def test_what_does_not_count_is_refused_with_one_sentence(change, said, tmp_path):
    with pytest.raises(UsageError) as refused:
        read_answers(write(tmp_path, findings=[{**ACCEPTED, **change}]))
    assert said in str(refused.value)


@pytest.mark.parametrize("text", ["", "[]", "{", '{"document": "seamcheck-review"}', "\ufffe"])
def test_another_file_is_refused(text, tmp_path):
    path = tmp_path / "x.json"
    path.write_text(text)
    with pytest.raises(UsageError):
        read_answers(path)


def test_an_answered_question_leaves_the_list_and_its_answer_stays(tmp_path):
    texts = {
        "ask.gates": "To ask the moulder: where are the gates?",
        "ask.texture": "To ask the moulder: is it smooth?",
    }
    document = {"not_checked": [{"key": key, "args": {}, "text": text} for key, text in texts.items()]}
    told = [{"key": "ask.gates", "answer": "On the short side.", "by": "the moulder", "date": "2026-11-27"}]
    items = with_answers(document, read_answers(write(tmp_path, questions=told)))["not_checked"]
    assert items[0]["key"] == "ask.gates.answered"
    assert items[0]["text"].startswith("Answered by the moulder, 2026-11-27: ")
    assert items[0]["text"].endswith("On the short side.")
    assert items[1] == document["not_checked"][1]
