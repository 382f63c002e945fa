"""The station table as comma-separated values: one row for each station, one column for each quantity."""

from __future__ import annotations

import csv
import io
from typing import Any

from seamcheck.catalogue.cautions import SHORT_CAUTION
from seamcheck.catalogue.quantities import QUANTITIES
from seamcheck.report import facts
from seamcheck.report.facts import Document
from seamcheck.report.loosened import loosened

_UNIT = {"mm": "_mm", "mm²": "_mm2", "°": "_deg", "%": "_percent", "1": "", "s": "_s", "W": "_w"}
_WITHIN = {",": " -", ";": " -", '"': "'", "#": " "}  # what would divide a cell, or begin a comment, within a comment
_FORMULA = ("=", "+", "-", "@", "\t", "\r", "\n")


def render_csv(document: Document) -> str:
    """The table as text; RFC 4180, UTF-8, a point as decimal sign, heads with their unit.

    A value that was not measured is an empty cell; the last columns say why, and which findings hold there.
    Cells of text that a spreadsheet would take for a formula begin with an apostrophe. The first lines begin with
    ``#`` and say what the table is worth: ``pandas.read_csv(file, comment="#")`` passes over them.
    """
    out = io.StringIO()
    for line in preface(document):
        out.write(f"# {line}\r\n")
    writer = csv.writer(out, lineterminator="\r\n")
    keys = _columns(document)
    heads = ["joint", "path", "station", "s_mm", "x_mm", "y_mm", "z_mm", "u_x", "u_y", "u_z"]
    writer.writerow([*heads, *(head(key) for key in keys), "not_measured", "findings"])
    numbered = facts.numbered_findings(document)
    for joint, contour in facts.paths(document):
        stations = contour["stations"]
        here = [
            (n, facts.stations_of_finding(document, n.finding, contour))
            for n in numbered
            if n.finding.get("joint") == joint["id"]
        ]
        for i, s in enumerate(stations["s"]):
            values = [stations[key][i] if key in stations else None for key in keys]
            why = [
                f"{key}: {code}"
                for key, value in zip(keys, values, strict=True)
                if value is None and (code := _why(contour, key, s))
            ]
            found = [f"{n.number} {n.finding['rule']}" for n, mask in here if mask[i]]
            row: list[Any] = [safe(joint["id"]), safe(contour["id"]), i + 1, s]
            row += [stations[axis][i] for axis in "xyz"] + list(stations["u"][i])
            row += ["" if v is None else v for v in values]
            writer.writerow([*row, safe("; ".join(why)), safe("; ".join(found))])
    return out.getvalue()


def preface(document: Document) -> list[str]:
    """What stands above the table, one cell in each line: no comma, semicolon, tab or quote divides it."""
    lines = [
        f"Seam review of {document['model']['file']} by seamcheck {document['seamcheck']}: {facts.headline(document)}",
        *([milder] if (milder := loosened(document)) else []),
        *(sentence.strip().rstrip(".") + "." for sentence in SHORT_CAUTION.split(". ")),
    ]
    return ["".join(_WITHIN.get(c, c) if c.isprintable() else " " for c in line) for line in lines]


def head(key: str) -> str:
    """'rib_width' -> 'rib_width_mm'."""
    return safe(key + _UNIT.get(QUANTITIES[key].unit, "")) if key in QUANTITIES else safe(key)


def safe(text: Any) -> str:
    """Text that no spreadsheet reads as a formula."""
    text = str(text)
    return f"'{text}" if text.startswith(_FORMULA) else text


def _columns(document: Document) -> list[str]:
    """Keys of all columns: as declared, then what else the document has."""
    present = {key for _, contour in facts.paths(document) for key in contour["stations"]}
    present -= {"s", "x", "y", "z", "u"}
    return [key for key in QUANTITIES if key in present] + sorted(present - set(QUANTITIES))


def _why(contour: Any, key: str, s: float) -> str:
    for run in contour.get("unmeasured") or ():
        if run["column"] == key and run["from_s"] - 1e-6 <= s <= run["to_s"] + 1e-6:
            return str(run["why"])
    return ""
