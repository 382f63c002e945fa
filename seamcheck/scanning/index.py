"""The lists of a scan, made from its store row by row: a page and a table, however many models there are."""

from __future__ import annotations

import base64
import csv
import json
import sqlite3
import zlib
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from functools import cache
from itertools import islice
from pathlib import Path
from typing import IO, Any

import msgspec

from seamcheck.catalogue.cautions import CAUTIONS, SHORT_CAUTION
from seamcheck.catalogue.quantities import QUANTITIES
from seamcheck.catalogue.rules import RULES
from seamcheck.report import facts
from seamcheck.report.csv import head, safe
from seamcheck.report.html.fonts import font_style
from seamcheck.report.html.skeleton import asset, environment, policy
from seamcheck.scanning.answers import UNANSWERED, UNANSWERED_HEAD, unanswered_row
from seamcheck.scanning.files import written_whole
from seamcheck.scanning.picture import HEIGHT, STATES, WIDTH
from seamcheck.scanning.store import Store
from seamcheck.version import __version__

_HERE = "seamcheck.scanning"
PAGE, TABLE = "index.html", "index.csv"

VALUES = (("rib_width", "least"), ("rib_width", "most"), ("trap_room", "least"), ("clamp_land", "least"),
          ("gap_max", "most"), ("transmission", "least"))  # fmt: skip
"""Quantities that the lists show, each with the end of its range that is nearest to harm."""

_ROWS_HERE = "@@rows@@"
_MOST_SUPPLIERS = 300


def write_index(store: Store, out: Path) -> None:
    """Write index.html, index.csv and unanswered.csv anew, each whole or not at all; raises ScanStopped."""
    text = {"mode": "x", "encoding": "utf-8", "newline": ""}
    with (
        written_whole(out / PAGE, **text) as page,
        written_whole(out / TABLE, **text) as table,
        written_whole(out / UNANSWERED, **text) as unanswered,
    ):
        writers = csv.writer(table, lineterminator="\r\n"), csv.writer(unanswered, lineterminator="\r\n")
        writers[0].writerow(_TABLE_HEAD)
        writers[1].writerow(UNANSWERED_HEAD)

        def listed() -> Iterator[_Listed]:
            for model in _models(store):
                writers[0].writerow(_table_row(model))
                if (question := unanswered_row(model.row)) is not None:
                    writers[1].writerow(list(map(_cell, question)))
                yield model

        _write_page(store, page, listed())


@dataclass(frozen=True, slots=True)
class _Listed:
    """One model with what the lists show of it.

    Attributes
    ----------
    row : of the view ``results``
    gravest : rule, message and remedy of the first finding that isn't waived; None where there is none
    broken : rules that are broken or ask for attention
    kinds : kinds of joint, each once
    confidence : the least of its joints
    values : of VALUES, over all seams
    """

    row: sqlite3.Row
    gravest: sqlite3.Row | None
    broken: tuple[str, ...]
    kinds: tuple[str, ...]
    confidence: float | None
    values: tuple[float | None, ...]


_AT_ONCE = 400
"""Models of which the findings and values are asked for together."""


def _models(store: Store) -> Iterator[_Listed]:
    """All models, the worst first."""
    results = store.results()
    while rows := list(islice(results, _AT_ONCE)):
        reviews = list({row["review"] for row in rows if row["review"]})
        findings = _by_review(
            store,
            "SELECT review, rule, severity, message, remedy FROM findings WHERE review IN ({}) AND NOT waived "
            "ORDER BY review, n",
            reviews,
        )
        joints = _by_review(
            store, "SELECT review, kind, confidence FROM joints WHERE review IN ({}) ORDER BY review, joint", reviews
        )
        values = _by_review(store, _VALUES_OF, reviews)
        for row in rows:
            found, own = findings.get(row["review"], ()), joints.get(row["review"], ())
            known = {value["quantity"]: value for value in values.get(row["review"], ())}
            yield _Listed(
                row,
                found[0] if found else None,
                tuple(dict.fromkeys(finding["rule"] for finding in found if finding["severity"] != "note")),
                tuple(dict.fromkeys(joint["kind"] for joint in own)),
                min((joint["confidence"] for joint in own if joint["confidence"] is not None), default=None),
                tuple(known[key][end] if key in known else None for key, end in VALUES),
            )


_QUANTITIES = ", ".join(f"'{key}'" for key in dict(VALUES))
_VALUES_OF = f"""
    SELECT review, quantity, min(least) AS least, max(most) AS most FROM quantities JOIN joints USING (review, joint)
    WHERE review IN ({{}}) AND contour = '' AND quantity IN ({_QUANTITIES})
        AND (rib_on != 'none' OR quantity NOT IN ('rib_width', 'trap_room'))
    GROUP BY review, quantity
"""


def _by_review(store: Store, question: str, reviews: Sequence[str]) -> dict[str, list[sqlite3.Row]]:
    found: dict[str, list[sqlite3.Row]] = {}
    for row in store.of_many(question, reviews):
        found.setdefault(row["review"], []).append(row)
    return found


_TABLE_HEAD = [
    "folder", "path", "supplier", "verdict", "reason_code", "reason", "must_fix", "attention", "notes", "waived",
    "gravest_rule", "gravest_message", "remedy", "kinds", "confidence", "seams", "seam_length_mm", "parts",
    *(f"{head(key)}_{end}" for key, end in VALUES), "page", "review",
]  # fmt: skip


def _table_row(model: _Listed) -> list[Any]:
    """A line of the table (RFC 4180); no cell of text is read as a formula."""
    row, finding = model.row, model.gravest
    told = ("", "", "") if finding is None else (finding["rule"], finding["message"], finding["remedy"])
    cells = (
        row["folder"], row["path"], row["supplier"], row["verdict"], row["reason_code"], row["reason"],
        row["must_fix"], row["attention"], row["notes"], row["waived"], *told,
        " ".join(model.kinds), model.confidence, row["seams"], row["seam_length"], row["parts"],
        *model.values, f"pages/{row['page']}" if row["page"] else "", row["review"],
    )  # fmt: skip
    return [_cell(cell) for cell in cells]


def _write_page(store: Store, file: IO[str], models: Iterable[_Listed]) -> None:
    """The page: what stands around the rows from a template, the rows as packed data that its script shows."""
    style = font_style() + asset(_HERE, "index.css")
    script = asset(_HERE, "index.js")
    last, rules = store.rows("SELECT * FROM scans ORDER BY scan DESC LIMIT 1"), _rules(store)
    text: str = _template().render(
        version=__version__, script=script, style=style, policy=policy(style, script), rows=_ROWS_HERE,
        verdicts=_verdicts(store), words=facts.VERDICTS, marks=MARKS, short_caution=SHORT_CAUTION, cautions=CAUTIONS,
        suppliers=_suppliers(store), rules=rules, scan=last[0] if last else None,
        folders=json.loads(last[0]["folders"]) if last else [],
        settings=store.rows("SELECT settings, file FROM settings WHERE settings = ?", (last[0]["settings"],))
        if last else [],
        reasons=store.rows(
            "SELECT reason_code AS code, count(*) AS n FROM results WHERE verdict = 'not-reviewed' "
            "GROUP BY reason_code ORDER BY n DESC, code"
        ),
        ignored=store.rows("SELECT folder || '/' || path AS path FROM ignored_settings ORDER BY 1 LIMIT 50"),
        others=store.rows("SELECT ending, files FROM other_files ORDER BY files DESC, ending LIMIT 12"),
        materials=bool(store.rows("SELECT 1 FROM materials LIMIT 1")),
    )  # fmt: skip
    before, _, after = text.partition(_ROWS_HERE)
    file.write(before)
    several = len(store.rows("SELECT DISTINCT folder FROM models LIMIT 2")) > 1
    for piece in _packed(_page_rows([rule["key"] for rule in rules], models, several)):
        file.write(piece)
    file.write(after)


MARKS = {"fail": "◆", "attention": "▲", "pass": "✓", "not-reviewed": "–", "waiting": "…"}
_ORDER = ("fail", "not-reviewed", "waiting", "attention", "pass")


def _page_rows(rules: Sequence[str], models: Iterable[_Listed], several: bool) -> Iterator[Any]:
    """First what the rows are made of, then one list for each model; see index.js.

    Parameters
    ----------
    several : whether more than one folder was scanned
    """
    titles = {rule: facts.rule_title(rule) for rule in rules}
    yield {
        "picture": [WIDTH, HEIGHT, *STATES],
        "rules": list(titles.items()),
        "verdicts": [[verdict, MARKS[verdict]] for verdict in _ORDER],
        "decimals": [QUANTITIES[key].decimals for key, _ in VALUES],
    }
    number = {rule: n for n, rule in enumerate(rules)}
    for model in models:
        row, finding = model.row, model.gravest
        title = row["reason_code"] or ""
        if finding is not None:
            title = titles.get(finding["rule"]) or facts.rule_title(finding["rule"])
        yield (
            f"{row['folder']}/{row['path']}" if several else row["path"],
            row["supplier"],
            _ORDER.index(row["verdict"]),
            (row["must_fix"] or 0, row["attention"] or 0, row["notes"] or 0, row["waived"] or 0),
            title,
            (finding["message"] if finding is not None else row["reason"]) or "",
            finding["remedy"] if finding is not None else "",
            row["page"] or "",
            row["picture"] or "",
            row["seam_length"],
            model.values,
            sorted(number[rule] for rule in model.broken if rule in number),
            row["exceeds"],
            model.kinds,
            model.confidence,
        )


def _packed(items: Iterable[Any]) -> Iterator[str]:
    """JSON lines, gzip, base64, piece by piece: only letters, digits, '+', '/', '=' reach the page."""
    packer = zlib.compressobj(6, zlib.DEFLATED, 31)  # 31: with the head of gzip (RFC 1952)
    encoder = msgspec.json.Encoder()
    held = b""
    for item in items:
        held += packer.compress(encoder.encode(item) + b"\n")
        if whole := len(held) // 3 * 3:
            yield base64.b64encode(held[:whole]).decode("ascii")
            held = held[whole:]
    yield base64.b64encode(held + packer.flush()).decode("ascii")


def _verdicts(store: Store) -> list[tuple[str, int]]:
    counts = store.verdicts()
    return [(verdict, counts.get(verdict, 0)) for verdict in _ORDER if verdict != "waiting" or counts.get(verdict)]


def _suppliers(store: Store) -> list[Any]:
    """Models of each supplier by verdict, those with the most broken ones first."""
    return store.rows(
        "SELECT supplier AS name, count(*) AS models, sum(verdict = 'fail') AS fail, "
        "sum(verdict = 'attention') AS attention, sum(verdict = 'pass') AS pass, "
        "sum(verdict IN ('not-reviewed', 'waiting')) AS unknown "
        "FROM results GROUP BY supplier ORDER BY fail DESC, unknown DESC, supplier LIMIT ?",
        (_MOST_SUPPLIERS,),
    )


def _rules(store: Store) -> list[dict[str, Any]]:
    """Rules that are broken or ask for attention somewhere, with the number of models."""
    rows = store.rows(
        "SELECT rule, severity, sum(models) AS models FROM "
        "(SELECT DISTINCT review, rule, severity FROM findings WHERE severity != 'note' AND NOT waived) JOIN "
        "(SELECT review, count(*) AS models FROM models WHERE review IS NOT NULL GROUP BY review) USING (review) "
        "GROUP BY rule, severity ORDER BY severity DESC, models DESC, rule"
    )
    seen: dict[str, dict[str, Any]] = {}
    for row in rows:
        entry = seen.setdefault(
            row["rule"],
            {"key": row["rule"], "title": facts.rule_title(row["rule"]), "must-fix": 0, "attention": 0,
             "harm": RULES[row["rule"]].harm if row["rule"] in RULES else ""},
        )  # fmt: skip
        entry[row["severity"]] = row["models"]
    return sorted(seen.values(), key=lambda entry: (-entry["must-fix"], -entry["attention"], entry["key"]))


def _cell(value: Any) -> Any:
    return "" if value is None else safe(value) if isinstance(value, str) else value


@cache
def _template() -> Any:
    return environment().from_string(asset(_HERE, "index.html"))
