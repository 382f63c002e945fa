"""The lists of a scan, made from its store row by row: a page and a table, however many models there are."""

from __future__ import annotations

import base64
import csv
import json
import sqlite3
import zlib
from collections.abc import Iterable, Iterator, Sequence
from functools import cache
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
from seamcheck.scanning.lines import VALUES
from seamcheck.scanning.picture import HEIGHT, STATES, WIDTH
from seamcheck.scanning.store import Store
from seamcheck.version import __version__

_HERE = "seamcheck.scanning"
PAGE, TABLE = "index.html", "index.csv"

Row = sqlite3.Row
Values = Sequence[float | None]
"""Of VALUES, over all seams."""

_NOTHING: Values = (None,) * len(VALUES)
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
        lines, questions = csv.writer(table, lineterminator="\r\n"), csv.writer(unanswered, lineterminator="\r\n")
        lines.writerow(_TABLE_HEAD)
        questions.writerow(UNANSWERED_HEAD)

        def listed() -> Iterator[tuple[Row, Values]]:
            for row in store.results():
                values: Values = _NOTHING if row["measured"] is None else json.loads(row["measured"])
                lines.writerow(_table_row(row, values))
                if (question := unanswered_row(row)) is not None:
                    questions.writerow(list(map(_cell, question)))
                yield row, values

        _write_page(store, page, listed())


_TABLE_HEAD = [
    "folder", "path", "supplier", "verdict", "reason_code", "reason", "must_fix", "attention", "notes", "waived",
    "gravest_rule", "gravest_message", "remedy", "kinds", "confidence", "seams", "seam_length_mm", "parts",
    *(f"{head(key)}_{end}" for key, end in VALUES), "page", "review",
]  # fmt: skip


def _table_row(row: Row, values: Values) -> list[Any]:
    """A line of the table (RFC 4180); no cell of text is read as a formula."""
    cells = (
        row["folder"], row["path"], row["supplier"], row["verdict"], row["reason_code"], row["reason"],
        row["must_fix"], row["attention"], row["notes"], row["waived"],
        row["rule"], row["message"], row["remedy"], row["kinds"], row["confidence"],
        row["seams"], row["seam_length"], row["parts"],
        *values, f"pages/{row['page']}" if row["page"] else "", row["review"],
    )  # fmt: skip
    return [_cell(cell) for cell in cells]


def _write_page(store: Store, file: IO[str], models: Iterable[tuple[Row, Values]]) -> None:
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


def _page_rows(rules: Sequence[str], models: Iterable[tuple[Row, Values]], several: bool) -> Iterator[Any]:
    """First what the rows are made of, then one list for each model; see index.js.

    Parameters
    ----------
    several : whether more than one folder was scanned
    """
    yield {
        "picture": [WIDTH, HEIGHT, *STATES],
        "rules": [[rule, facts.rule_title(rule)] for rule in rules],
        "verdicts": [[verdict, MARKS[verdict]] for verdict in _ORDER],
        "decimals": [QUANTITIES[key].decimals for key, _ in VALUES],
    }
    number = {rule: n for n, rule in enumerate(rules)}
    for row, values in models:
        broken = number.keys() & row["broken"].split() if row["broken"] else ()
        yield (
            f"{row['folder']}/{row['path']}" if several else row["path"],
            row["supplier"],
            _ORDER.index(row["verdict"]),
            (row["must_fix"] or 0, row["attention"] or 0, row["notes"] or 0, row["waived"] or 0),
            _rule_title(row["rule"]) if row["rule"] else row["reason_code"] or "",
            row["message"] or row["reason"] or "",
            row["remedy"] or "",
            row["page"] or "",
            row["picture"] or "",
            row["seam_length"],
            values,
            sorted(number[rule] for rule in broken),
            row["exceeds"],
            row["kinds"].split() if row["kinds"] else (),
            row["confidence"],
        )


_rule_title = cache(facts.rule_title)


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
    return safe(value) if type(value) is str else "" if value is None else value


@cache
def _template() -> Any:
    return environment().from_string(asset(_HERE, "index.html"))
