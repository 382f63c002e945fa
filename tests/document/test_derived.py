"""One definition of every record: what keeps, shows or compares findings follows from it, or is held against it."""

import json
import re
import sqlite3
from importlib import resources
from pathlib import Path

import msgspec
from limits_surveys import circle, joint
from test_document import SPOILED, document

from seamcheck.catalogue.kind_words import base_of
from seamcheck.catalogue.message import Message
from seamcheck.catalogue.messages import WORDINGS, Amount
from seamcheck.catalogue.say import TEXTS, english, say
from seamcheck.catalogue.words import fill
from seamcheck.comparison.schema import make_schema as comparison_schema
from seamcheck.document.page_types import make_types
from seamcheck.document.plain import to_json
from seamcheck.document.schema import make_schema
from seamcheck.judge.findings import Finding
from seamcheck.report.review import Review
from seamcheck.scanning.digest import digest
from seamcheck.settings.file import parse_settings

FIELDS = set(Finding.__struct_encode_fields__)

STORED_AS = {
    "finding": "id", "bound": "limit", "length": "length_mm", "x": "at", "y": "at", "z": "at", "waiver": "waived",
}  # fmt: skip
"""Columns of the store with another name than the record's field."""

ONLY_IN_THE_DOCUMENT = {"column", "station", "faces", "harm", "also", "key", "args", "messages", "places"}
"""Fields that the store leaves to the document, which it keeps whole beside its rows."""


def risky():
    """A document with a value that only its tolerance carries beyond the limit."""
    settings = parse_settings("[tolerance]\nrib_width = 0.1\n")
    return document(circle(("rib_width", 0, 120, 0.65)), settings=settings)


def test_a_review_says_of_a_finding_what_its_document_says():
    doc = risky()
    for found, record in zip(Review(doc).findings, doc["findings"], strict=True):
        for name in FIELDS - {"faces", "waived", "messages", "args", "at", "also", "places"}:
            assert getattr(found, name) == record[name], name
    states = {found.state for found in Review(doc).findings}
    assert "at risk" in states
    assert any(found.tolerance == 0.1 and found.worst_case is not None for found in Review(doc).findings)


def test_the_store_keeps_every_field_or_leaves_it_to_the_document():
    schema = resources.files("seamcheck.scanning").joinpath("store_schema.sql").read_text("utf-8")
    with sqlite3.connect(":memory:") as store:
        store.executescript(schema)
        columns = [row[1] for row in store.execute("PRAGMA table_info(findings)")]
    kept = {STORED_AS.get(column, column) for column in columns} - {"review", "n"}
    assert kept | ONLY_IN_THE_DOCUMENT == FIELDS
    assert kept.isdisjoint(ONLY_IN_THE_DOCUMENT)
    rows = digest(risky()).findings
    assert rows
    assert all(set(row) == set(columns) - {"review"} for row in rows)
    assert {row["state"] for row in rows} >= {"at risk"}


def test_the_comparison_has_the_same_findings():
    own, other = make_schema()["$defs"], comparison_schema()["$defs"]
    for name in ("Finding", "Face", "Waived", "Message", "Amount"):
        assert own[name] == other[name]
    assert set(own["Finding"]["required"]) | {"places"} == FIELDS  # an earlier document has none, and is read


def interface_fields(name: str) -> set[str]:
    source = (Path(__file__).parents[2] / "frontend" / "src" / "types.ts").read_text("utf-8")
    source = re.sub(r"/\*.*?\*/", "", source, flags=re.DOTALL)
    body = re.search(rf"export interface {name} \{{(.*?)\n\}}", source, re.DOTALL)[1]
    nested = re.sub(r"\{[^{}]*\}", "", re.sub(r"\{[^{}]*\{[^{}]*\}[^{}]*\}", "", body))
    return set(re.findall(r"(?:^|[;\s])(\w+)\??:", nested))


def test_the_types_of_the_page_are_made_from_the_records():
    source = Path(__file__).parents[2] / "frontend" / "src"
    said = "python -m seamcheck.document.page_types writes it anew"
    assert (source / "document.ts").read_text("utf-8") == make_types(), said
    assert 'from "./document"' in (source / "types.ts").read_text("utf-8")


def test_the_page_knows_every_field_of_a_finding_by_the_same_name():
    of_the_page = {
        "n",
        "title",
        "waived",
        "value",
        "number",
        "limit",
        "limit_short",
        "goal",
        "way",
        "wide",
        "everywhere",
        "place",
        "change",
        "target",
        "met",
        "leaves",
    }  # made in page.py
    assert interface_fields("Finding") - of_the_page <= FIELDS


def everything_said():
    for spoiled in SPOILED:
        yield from document(spoiled)["findings"]
    yield from risky()["findings"]
    yield from document(circle(("gap_max", 30, 34, 0.4), ("gap", 50, 60, -0.3), ("gap_min", 50, 60, -0.3)))["findings"]
    yield from document(circle(("cover_thickness", 30, 34, "hole"), ("trap_open_inner", 10, 20, 1.0)))["findings"]
    yield from document(
        joint(interface={"free_travel": {"value": 0.1, "at": [0.0, 0.0, 0.0], "why": say("place.side", side="inner")}})
    )["findings"]


def test_every_sentence_can_be_made_again_from_its_key_and_values():
    count = 0
    for finding in everything_said():
        args = {k: Amount(**v) if isinstance(v, dict) else v for k, v in finding["args"].items()}
        assert finding["remedy"] == fill(WORDINGS[finding["key"]].remedy, args)
        assert finding["harm"] == WORDINGS[finding["key"]].harm
        for said in finding["messages"]:
            message = msgspec.convert(said, Message)
            template = WORDINGS[message.key].says if message.key in WORDINGS else TEXTS[message.key]
            assert message.text == english(template, message.args, message.parts or {}, base_of(message.key)[1])
            count += 1
        assert " ".join(said["text"] for said in finding["messages"]) == finding["message"]
    assert count >= 20


def test_numbers_of_a_sentence_carry_their_unit():
    finding = document(circle(("rib_width", 30, 34, 0.5)))["findings"][0]
    value = finding["args"]["value"]
    assert value == {"value": 0.5, "unit": "mm", "decimals": value["decimals"]}
    assert json.loads(to_json(finding)) == finding


def test_the_assumptions_follow_the_settings():
    plain = [said["key"] for said in document()["assumptions"]]
    assert {"assumed.as-drawn", "assumed.parallel-light"} <= set(plain)
    text = "[scanner]\ndistance = 200\nhalf-angle = 20\n\n[tolerance]\nrib_width = 0.1\n"
    given = [said["key"] for said in document(settings=parse_settings(text))["assumptions"]]
    assert {"assumed.tolerances", "assumed.scanner"} <= set(given)
    assert not {"assumed.as-drawn", "assumed.parallel-light"} & set(given)
