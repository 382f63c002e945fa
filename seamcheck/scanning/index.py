"""The lists of a scan, made from its store row by row: a page and a table, however many models there are."""

from __future__ import annotations

import base64
import csv
import json
import zlib
from collections.abc import Iterator
from functools import cache
from pathlib import Path
from typing import IO, Any

from seamcheck.catalogue.cautions import CAUTIONS, SHORT_CAUTION
from seamcheck.catalogue.quantities import QUANTITIES
from seamcheck.catalogue.rules import RULES
from seamcheck.report import facts
from seamcheck.report.csv import head, safe
from seamcheck.report.html.fonts import font_style
from seamcheck.report.html.skeleton import asset, environment, policy
from seamcheck.scanning.answers import UNANSWERED, write_unanswered
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
    with written_whole(out / PAGE, **text) as page:
        write_page(store, page)
    with written_whole(out / TABLE, **text) as table:
        write_table(store, table)
    with written_whole(out / UNANSWERED, **text) as table:
        write_unanswered(map(dict, store.results()), table, _cell)


def write_table(store: Store, file: IO[str]) -> None:
    """One line for each model, the worst first (RFC 4180); no cell of text is read as a formula."""
    writer = csv.writer(file, lineterminator="\r\n")
    writer.writerow(
        ["folder", "path", "supplier", "verdict", "reason_code", "reason", "must_fix", "attention", "notes", "waived",
         "gravest_rule", "gravest_message", "remedy", "kinds", "confidence", "seams", "seam_length_mm", "parts",
         *(f"{head(key)}_{end}" for key, end in VALUES), "page", "review"]
    )  # fmt: skip
    for row in store.results():
        finding, values, (kinds, confidence) = _gravest(store, row), _values(store, row), _kinds(store, row)
        page = f"pages/{row['page']}" if row["page"] else ""
        writer.writerow(
            [
                _cell(value)
                for value in (
                    row["folder"], row["path"], row["supplier"], row["verdict"], row["reason_code"], row["reason"],
                    row["must_fix"], row["attention"], row["notes"], row["waived"],
                    finding.get("rule"), finding.get("message"), finding.get("remedy"),
                    " ".join(kinds), confidence, row["seams"], row["seam_length"], row["parts"],
                    *values, page, row["review"],
                )
            ]
        )  # fmt: skip


def write_page(store: Store, file: IO[str]) -> None:
    """The page: what stands around the rows from a template, the rows as packed data that its script shows."""
    style = font_style() + asset(_HERE, "index.css")
    script = asset(_HERE, "index.js")
    last = store.rows("SELECT * FROM scans ORDER BY scan DESC LIMIT 1")
    text: str = _template().render(
        version=__version__, script=script, style=style, policy=policy(style, script), rows=_ROWS_HERE,
        verdicts=_verdicts(store), words=facts.VERDICTS, marks=MARKS, short_caution=SHORT_CAUTION, cautions=CAUTIONS,
        suppliers=_suppliers(store), rules=_rules(store), scan=last[0] if last else None,
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
    for piece in _packed(_page_rows(store)):
        file.write(piece)
    file.write(after)


MARKS = {"fail": "◆", "attention": "▲", "pass": "✓", "not-reviewed": "–", "waiting": "…"}
_ORDER = ("fail", "not-reviewed", "waiting", "attention", "pass")


def _page_rows(store: Store) -> Iterator[Any]:
    """First what the rows are made of, then one list for each model; see index.js."""
    rules = [row["key"] for row in _rules(store)]
    yield {
        "picture": [WIDTH, HEIGHT, *STATES],
        "rules": [[rule, facts.rule_title(rule)] for rule in rules],
        "verdicts": [[verdict, MARKS[verdict]] for verdict in _ORDER],
        "decimals": [QUANTITIES[key].decimals for key, _ in VALUES],
    }
    several = len(store.rows("SELECT DISTINCT folder FROM models LIMIT 2")) > 1
    number = {rule: n for n, rule in enumerate(rules)}
    for row in store.results():
        finding = _gravest(store, row)
        broken = store.rows(
            "SELECT DISTINCT rule FROM findings WHERE review = ? AND severity != 'note' AND NOT waived",
            (row["review"],),
        )
        yield [
            f"{row['folder']}/{row['path']}" if several else row["path"],
            row["supplier"],
            _ORDER.index(row["verdict"]),
            [row["must_fix"] or 0, row["attention"] or 0, row["notes"] or 0, row["waived"] or 0],
            facts.rule_title(finding["rule"]) if finding else row["reason_code"] or "",
            finding.get("message") or row["reason"] or "",
            finding.get("remedy") or "",
            row["page"] or "",
            row["picture"] or "",
            row["seam_length"],
            _values(store, row),
            sorted(number[r["rule"]] for r in broken if r["rule"] in number),
            row["exceeds"],
            *_kinds(store, row),
        ]


def _kinds(store: Store, row: Any) -> tuple[list[str], float | None]:
    """Kinds of joint of a model, each once, and the least confidence among its joints."""
    joints = store.rows("SELECT kind, confidence FROM joints WHERE review = ? ORDER BY joint", (row["review"],))
    known = [joint["confidence"] for joint in joints if joint["confidence"] is not None]
    return list(dict.fromkeys(joint["kind"] for joint in joints)), min(known, default=None)


def _packed(items: Iterator[Any]) -> Iterator[str]:
    """JSON lines, gzip, base64, piece by piece: only letters, digits, '+', '/', '=' reach the page."""
    packer = zlib.compressobj(9, zlib.DEFLATED, 31)  # 31: with the head of gzip (RFC 1952)
    held = b""
    for item in items:
        line = json.dumps(item, ensure_ascii=True, separators=(",", ":"), allow_nan=False) + "\n"
        held += packer.compress(line.encode("ascii"))
        if whole := len(held) // 3 * 3:
            yield base64.b64encode(held[:whole]).decode("ascii")
            held = held[whole:]
    yield base64.b64encode(held + packer.flush()).decode("ascii")


def _gravest(store: Store, row: Any) -> dict[str, Any]:
    """The first finding that isn't waived; empty where there is none."""
    rows = store.rows(
        "SELECT rule, severity, message, remedy FROM findings WHERE review = ? AND NOT waived ORDER BY n LIMIT 1",
        (row["review"],),
    )
    return dict(rows[0]) if rows else {}


def _values(store: Store, row: Any) -> list[float | None]:
    """The values of VALUES over all seams of one review."""
    if not row["review"]:
        return [None] * len(VALUES)
    known = {
        r["quantity"]: r
        for r in store.rows(
            "SELECT quantity, min(least) AS least, max(most) AS most FROM quantities JOIN joints USING (review, joint) "
            "WHERE review = ? AND contour = '' AND (rib_on != 'none' OR quantity NOT IN ('rib_width', 'trap_room')) "
            "GROUP BY quantity",
            (row["review"],),
        )
    }
    return [known[key][end] if key in known else None for key, end in VALUES]


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
        "SELECT rule, severity, count(DISTINCT folder || '/' || path) AS models FROM results JOIN findings "
        "USING (review) WHERE severity != 'note' AND NOT findings.waived GROUP BY rule, severity "
        "ORDER BY severity DESC, models DESC, rule"
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
