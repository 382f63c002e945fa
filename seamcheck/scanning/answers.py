"""What a reviewer says once of single models of a scan: cover, base and beam, or that there is no seam in it."""

from __future__ import annotations

import csv
import io
from collections.abc import Mapping
from pathlib import Path
from typing import Any

from msgspec import Struct

from seamcheck.errors import UsageError
from seamcheck.scanning.pairs import MOST_BYTES
from seamcheck.settings.guard import bytes_of
from seamcheck.settings.settings import Settings

UNANSWERED = "unanswered.csv"
"""File in the scan's folder: a row for each refusal that such a table can answer."""

NO_SEAM = "said-no-seam"
"""Reason code of a model of which the table says that there is no seam in it."""

COLUMNS = ("folder", "path", "cover", "base", "beam", "seam")
_REQUIRED = ("path",)
_ANSWERED_BY_NAMES = ("ambiguous", "no-seam", "unsupported")
_NO = ("no", "none", "0", "false")
_YES = ("", "yes", "1", "true")


class Answer(Struct, frozen=True):
    """What the table says of one model.

    Attributes
    ----------
    changes : of the settings: cover, base and beam as far as they are given
    no_seam : whether there is no seam in it
    """

    changes: Mapping[str, Any]
    no_seam: bool


def read_answers(file: Path) -> dict[tuple[str, str], Answer]:
    """The table by (folder, path); the folder is '' where the row names none.

    Parameters
    ----------
    file : CSV with a head line: 'path' as the scan lists it, 'cover' and 'base' (part names or ids), 'beam' (three
        numbers, from cover to base), 'seam' ('no' where there is none), and 'folder' where paths alone are not
        enough. Rows without any answer, and other columns, are passed over.

    Raises
    ------
    UsageError : what can't be taken, with its line
    """
    try:
        text = bytes_of(file, "the table of joints", MOST_BYTES).decode("utf-8-sig")
    except UnicodeDecodeError:
        raise UsageError(f"{file} is not a table of joints: it is not UTF-8 text.") from None
    rows = csv.DictReader(io.StringIO(text, newline=""))
    missing = [name for name in _REQUIRED if name not in (rows.fieldnames or ())]
    if missing:
        raise UsageError(f"{file}, line 1: the column {missing[0]!r} is missing; columns are {', '.join(COLUMNS)}.")
    found: dict[tuple[str, str], Answer] = {}
    for row in rows:
        place = f"{file}, line {rows.line_num}"
        cells = {name: _text(row.get(name)) for name in COLUMNS}
        answer = _answer(cells, place)
        if answer is None:
            continue
        key = cells["folder"], cells["path"]
        if not key[1]:
            raise UsageError(f"{place}: the path of the model is missing.")
        if key in found:
            raise UsageError(f"{place}: {key[1]!r} stands in the table twice.")
        found[key] = answer
    return found


def _text(cell: Any) -> str:
    """A cell without the quote that keeps a spreadsheet from reading a formula."""
    text = (cell or "").strip()
    return text[1:] if text[:1] == "'" and text[1:2] in "=+-@" else text


def _answer(cells: Mapping[str, str], place: str) -> Answer | None:
    changes: dict[str, Any] = {role: cells[role] for role in ("cover", "base") if cells[role]}
    if cells["beam"]:
        changes["beam"] = _direction(cells["beam"], place)
    said = cells["seam"].lower()
    if said not in (*_NO, *_YES):
        raise UsageError(f"{place}: seam is 'yes' or 'no'; got {cells['seam']!r}.")
    if said in _NO and changes:
        raise UsageError(f"{place}: a model without a seam has no {next(iter(changes))}.")
    return Answer(changes, said in _NO) if changes or said in _NO else None


def _direction(cell: str, place: str) -> tuple[float, float, float]:
    try:
        x, y, z = (float(number) for number in cell.replace(",", " ").replace(";", " ").split())
    except ValueError:
        raise UsageError(f"{place}: beam is three numbers such as '0 0 -1'; got {cell!r}.") from None
    return x, y, z


class Answers(Struct, frozen=True):
    """The table, laid over the settings of the scan."""

    table: Mapping[tuple[str, str], Answer]
    settings: Settings

    def of(self, folder: str, path: str) -> Answer | None:
        return self.table.get((folder, path)) or self.table.get(("", path))

    def settings_of(self, folder: str, path: str) -> Settings:
        """The settings for a model: those of the scan, with cover, base and beam of its row."""
        answer = self.of(folder, path)
        return self.settings if answer is None else self.settings.changed(dict(answer.changes))


UNANSWERED_HEAD = (*COLUMNS, "reason")


def unanswered_row(row: Any) -> tuple[str, ...] | None:
    """A row for a refusal that names can settle, else None; filled in, such a table is what --joints reads.

    Parameters
    ----------
    row : a result of the store, by names of columns
    """
    if row["verdict"] != "not-reviewed" or row["reason_code"] not in _ANSWERED_BY_NAMES:
        return None
    return row["folder"], row["path"], "", "", "", "", row["reason"]
