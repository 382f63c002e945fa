"""English words that are left in a German report."""

from __future__ import annotations

import html
import re

from seamcheck.catalogue.rules import RULES

ENGLISH = re.compile(
    r"\b(the|and|of|is|are|with|from|not|which|should|where|there|this|that|it|its|by|at|to|be|has|have|than|no|"
    r"cover|rib|seam|finding|limit|width|station|light|measured)\b",
    re.IGNORECASE,
)
ALLOWED = re.compile(
    r"--[a-z-]+|`[^`]*`|'[^']*'|https?://\S+|doi \S+|Polym\. Eng\. Sci\.|[\w.-]+\.(?:step|toml|json)|ulimit -v|"
    r"\b[a-z]+(?:[._-][a-z]+)+\b"  # keys of rules, limits and columns
)


def english_words(text: str, names=()) -> set[str]:
    for name in sorted(names, key=len, reverse=True):
        text = text.replace(name, "")
    for key in (*RULES, "flat", "max", "min", "attention"):
        text = re.sub(rf"\b{re.escape(key)}\b", "", text)
    return set(ENGLISH.findall(ALLOWED.sub("", text)))


def words_of_page(page: str) -> str:
    body = re.sub(r"<(script|style)\b.*?</\1>", " ", page, flags=re.DOTALL)
    read = " ".join(re.findall(r'(?:aria-label|title|placeholder)="([^"]*)"', body))
    return html.unescape(re.sub(r"<[^>]*>", "\n", body) + "\n" + read)
