"""Texts about a rib, said of the wall or band that a joint of another kind has in its place.

One text serves all kinds: where it says "rib", a plain wall reads "wall" and a lap "band". Its key then ends in
``.wall`` or ``.band``, so that every language makes the same of it. The German words share the gender of "Rippe".
"Weld rib" is never exchanged: it is what a wall or a lap lacks.
"""

from __future__ import annotations

import re

from seamcheck.catalogue.kinds import PLAIN_WALL, WELD_RIB

WALL, BAND = "wall", "band"

_ENGLISH = {WALL: ("wall", "wall top"), BAND: ("band", "band")}
"""What stands for the rib, and what does where the text speaks of a wall besides."""
_GERMAN = {WALL: ("Wand", "Wandoberkante"), BAND: ("Auflage", "Auflage")}
_GERMAN_MANY = {"Wand": "Wände", "Wandoberkante": "Wandoberkanten", "Auflage": "Auflagen"}
_RIB = re.compile(r"(?<![Ww]eld )(?<![-{])\b([Rr])ib(s?)\b(?!-)")
_RIPPE = re.compile(r"(?<![-{])\b([Rr])ippe(n?)(?![a-zäöüß])|\bRippen(?=[a-zäöüß-])")


def word_of(kind: str) -> str:
    """What the texts of a kind of joint call the rib: '' where it has one."""
    return "" if kind == WELD_RIB else WALL if kind == PLAIN_WALL else BAND


def keyed(key: str, word: str) -> str:
    """The key of a text in the words of a kind."""
    return f"{key}.{word}" if word else key


def base_of(key: str) -> tuple[str, str]:
    """The key of the text that is said of a rib, and the word that stands for it: '' where it is itself that text."""
    base, _, word = key.rpartition(".")
    return (base, word) if word in _ENGLISH and base else (key, "")


def speaks_of_rib(*texts: str) -> bool:
    """Whether one of some English texts speaks of a rib."""
    return any(_RIB.search(text) for text in texts)


def worded(text: str, word: str, language: str = "en") -> str:
    """A text that speaks of a rib in the words of a kind; unchanged where ``word`` is ''."""
    if not word or not text:
        return text
    if language == "de":
        name = _GERMAN[word]["wand" in text.lower()]
        return _RIPPE.sub(lambda found: _german(found, name), text)
    name = _ENGLISH[word][bool(re.search(r"\bwalls?\b", text))]
    return _RIB.sub(lambda found: (name.capitalize() if found[1] == "R" else name) + found[2], text)


def _german(found: re.Match[str], name: str) -> str:
    if found[1] is None:  # within a longer word
        return f"{name}n" if name == "Auflage" else name
    return _GERMAN_MANY[name] if found[2] else name
