"""Fields of a report that no model knows: title, project, customer, part number ... and a logo. Reports only.

The review document carries none of them: it stays the same for the same model, settings and version.
"""

from __future__ import annotations

import base64
from collections.abc import Mapping
from datetime import date
from pathlib import Path

from msgspec import Struct, field

from seamcheck.errors import UsageError
from seamcheck.settings.answers import Answers
from seamcheck.settings.guard import bytes_of

NAMES: dict[str, str] = {
    "title": "title",
    "project": "project",
    "customer": "customer",
    "part": "part number",
    "revision": "revision",
    "number": "report number",
    "author": "author",
    "company": "company",
    "date": "date",
}
"""Key -> what people read."""

LONGEST, LARGEST = 120, 400_000
"""Signs of a field, bytes of a logo."""


class Fields(Struct, frozen=True):
    """Values by the keys of NAMES, in their order, the logo as a data URI ('' for none), and answers given before."""

    values: Mapping[str, str] = field(default_factory=dict)
    logo: str = ""
    answers: Answers | None = None

    @property
    def rows(self) -> list[tuple[str, str]]:
        """(what people read, value) of those that were given."""
        return [(title, self.values[key]) for key, title in NAMES.items() if self.values.get(key)]


def read_fields(pairs: Mapping[str, str], today: date | None = None, answers: Answers | None = None) -> Fields:
    """Fields from 'key=value' pairs.

    Parameters
    ----------
    pairs : keys of NAMES, and 'logo' with the path of a PNG or SVG file; 'date=today' takes the day of today
    today : for tests; None for the clock
    answers : decisions about findings and answers to questions that the page shows again

    Raises
    ------
    UsageError
        For an unknown key, a value that is too long, or a logo that is no PNG or SVG.
    """
    unknown = sorted(set(pairs) - {*NAMES, "logo"})
    if unknown:
        raise UsageError(f"A report has no field {unknown[0]!r}; it has {', '.join(NAMES)} and logo.")
    values = {}
    for key in NAMES:
        value = "".join(c for c in pairs.get(key, "") if c.isprintable())
        if len(value) > LONGEST:
            raise UsageError(f"The field {key} is {len(value)} signs long; a report shows up to {LONGEST}.")
        if value:
            values[key] = (today or date.today()).isoformat() if key == "date" and value == "today" else value
    return Fields(values, _logo(pairs["logo"]) if "logo" in pairs else "", answers)


def _logo(name: str) -> str:
    """The picture as a data URI: a page shows it as a picture, so that nothing in it is ever run or fetched."""
    content = bytes_of(Path(name), "the logo", LARGEST)
    kind = (
        "image/png"
        if content.startswith(b"\x89PNG\r\n\x1a\n")
        else "image/svg+xml"
        if b"<svg" in content[:2000]
        else ""
    )
    if not kind:
        raise UsageError(f"The logo {name} is neither PNG nor SVG.")
    return f"data:{kind};base64,{base64.b64encode(content).decode('ascii')}"


def page_footer(fields: Fields, model: str, sha256: str) -> str:
    """Style that prints model, revision, hash and page on every sheet."""
    revision = f" · revision {fields.values['revision']}" if fields.values.get("revision") else ""
    number = f"{fields.values['number']} · " if fields.values.get("number") else ""
    hash_ = f" · {sha256[:12]}" if sha256 else ""
    text = f"{number}{model[:70]}{revision}{hash_} · pre-check, not an approval"
    return f'@page {{ @bottom-left {{ content: "{_css(text)}"; font: 8.5pt sans-serif; color: #555; }} }}\n'


def _css(text: str) -> str:
    """Text within a CSS string; everything but plain letters, digits and blanks as escapes."""
    return "".join(
        c if c.isascii() and (c.isalnum() or c in " .-_") else f"\\{ord(c):x} " for c in text if c.isprintable()
    )
