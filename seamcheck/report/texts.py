"""All texts that a language must have, and the command that brings the catalogues of the languages up to date.

``python -m seamcheck.report.texts`` adds what is new to ``catalogue/languages/*.po`` and drops what is gone; what has
no text yet is to be translated. A text of the catalogue is known by its key: a new English wording keeps it.
"""

from __future__ import annotations

import ast
from collections.abc import Iterator
from importlib import resources
from pathlib import Path

from seamcheck.catalogue.cautions import CAUTION_LINE, PRE_CHECK, SHORT_CAUTION
from seamcheck.catalogue.voice import LANGUAGES, read_catalogue
from seamcheck.report.html.script_voice import texts_of_script
from seamcheck.report.html.translated import texts_of_template
from seamcheck.report.joint_drawing import LETTERS
from seamcheck.report.language import catalogue_texts

_PACKAGE = Path(str(resources.files("seamcheck")))
_ROOMS = ("report", "settings", "comparison", "proposal", "preparation", "cli")
_TEMPLATES = ("report/html/page.html", "report/html/material.html", "comparison/html/page.html")

Text = tuple[str, str]
"""Key ('' for a fixed text of a report) and English wording."""


def all_texts() -> list[Text]:
    """Every text, each once, in the order in which they stand in catalogue and code."""
    found: dict[Text, None] = dict.fromkeys(catalogue_texts().items())
    for room in _ROOMS:
        for file in sorted((_PACKAGE / room).rglob("*.py")):
            found |= dict.fromkeys(("", text) for text in texts_of_code(file.read_text("utf-8")))
    constants = (SHORT_CAUTION, CAUTION_LINE, PRE_CHECK, *LETTERS.values())
    found |= dict.fromkeys(("", text) for text in constants)
    for name in _TEMPLATES:
        text = (_PACKAGE / name).read_text("utf-8")
        found |= dict.fromkeys(("", text) for text in texts_of_template(text))
    found |= dict.fromkeys(("", text) for text in texts_of_script())
    return list(found)


def texts_of_code(source: str) -> Iterator[str]:
    """First arguments of ``tr`` in Python code."""
    for node in ast.walk(ast.parse(source)):
        if isinstance(node, ast.Call) and getattr(node.func, "id", "") == "tr" and node.args:
            text = node.args[0]
            if isinstance(text, ast.Constant) and isinstance(text.value, str):
                yield text.value


def main() -> None:
    """Bring the catalogues up to date."""
    from babel.messages.catalog import Catalog
    from babel.messages.pofile import write_po

    wanted = all_texts()
    for language in LANGUAGES:
        if language == "en":
            continue
        known = {(m.context or "", "" if m.context else m.id): m.string for m in read_catalogue(language) if m.id}
        catalogue = Catalog(locale=language, project="seamcheck", charset="utf-8", fuzzy=False)
        for key, english in wanted:
            string = known.get((key, "" if key else english), "")
            catalogue.add(english, string, context=key or None)
        place = _PACKAGE / "catalogue" / "languages" / f"{language}.po"
        with place.open("wb") as stream:
            write_po(stream, catalogue, omit_header=True, width=0, sort_output=False)


if __name__ == "__main__":
    main()
