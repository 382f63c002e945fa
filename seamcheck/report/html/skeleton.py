"""What every page is made with: its templates' settings, the files of a package, and what the page may load and run."""

from __future__ import annotations

import base64
import hashlib
from functools import cache
from importlib import resources
from typing import Any

from jinja2 import Environment, StrictUndefined, select_autoescape


def environment(**options: Any) -> Environment:
    """For templates of pages: every text is escaped, and a name that is not there is an error unless told."""
    return Environment(
        autoescape=select_autoescape(default=True, default_for_string=True),
        trim_blocks=True,
        lstrip_blocks=True,
        **{"undefined": StrictUndefined, **options},
    )


@cache
def asset(package: str, name: str) -> str:
    """Text of a file that a package carries."""
    return resources.files(package).joinpath(name).read_text("utf-8")


def policy(style: str, script: str = "", pictures: bool = False) -> str:
    """Content-Security-Policy of a page: its own style and script by their digests, and nothing from elsewhere.

    Parameters
    ----------
    pictures : whether it shows pictures that stand in it or that its script draws
    """

    def digest(text: str) -> str:
        return f"'sha256-{base64.b64encode(hashlib.sha256(text.encode()).digest()).decode()}'"

    rules = [
        "default-src 'none'",
        *([f"script-src {digest(script)}"] if script else []),
        f"style-src {digest(style)}",
        "font-src data:",
        *(["img-src data: blob:"] if pictures else []),
        "base-uri 'none'",
        "form-action 'none'",
        *(["require-trusted-types-for 'script'"] if script else []),
    ]
    return "; ".join(rules)
