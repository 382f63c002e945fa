"""Templates of pages, kept compiled as Python keeps modules: to compile the page's takes half as long as to fill it."""

from __future__ import annotations

import hashlib
import os
import sys
from contextlib import suppress
from importlib import resources
from importlib.util import cache_from_source
from pathlib import Path
from typing import Any

import jinja2
from jinja2.bccache import Bucket, FileSystemBytecodeCache

from seamcheck.catalogue import kind_words, languages
from seamcheck.catalogue.voice import Voice, voice
from seamcheck.report.html import skeleton, translated


def template(package: str, name: str, **options: Any) -> jinja2.Template:
    """A template that a package carries, compiled in the language that holds here.

    Parameters
    ----------
    options : of the environment of templates
    """
    folder = os.path.dirname(cache_from_source(str(resources.files(package).joinpath(name))))
    made = translated.environment(
        loader=jinja2.FunctionLoader(lambda one: skeleton.asset(package, one)),
        bytecode_cache=_Kept(folder, voice()),
        **options,
    )
    return made.get_template(name)


class _Kept(FileSystemBytecodeCache):
    """Compiled templates in the folder in which Python keeps its own; none is written where that may not be.

    Beside the template's own text a compiled one depends on the texts of its language, on the code that exchanges
    these, and on the library: as Python does with modules, files are told apart by their size and time.
    """

    def __init__(self, folder: str, spoken: Voice) -> None:
        super().__init__(folder, f"%s.{spoken.language}.{spoken.length}.{spoken.melts}.{sys.implementation.cache_tag}")

    def get_cache_key(self, name: str, filename: str | None = None) -> str:
        """The name of the template, as it stands in that of the file."""
        return name

    def get_source_checksum(self, source: str) -> str:
        """Of all that a compiled template depends on."""
        texts = Path(languages.__file__).parent.glob("*.po")
        files = sorted([*texts, *(Path(module.__file__ or "") for module in (kind_words, skeleton, translated))])
        stamps = [(one.name, stat.st_size, stat.st_mtime_ns) for one in files for stat in [one.stat()]]
        return hashlib.sha256(repr((source, jinja2.__version__, stamps)).encode()).hexdigest()

    def load_bytecode(self, bucket: Bucket) -> None:
        """Take a compiled template, where one is kept that fits."""
        with suppress(OSError):
            super().load_bytecode(bucket)

    def dump_bytecode(self, bucket: Bucket) -> None:
        """Keep a compiled template, if modules are kept and the folder can be written."""
        if not sys.dont_write_bytecode:
            with suppress(OSError):
                os.makedirs(self.directory, exist_ok=True)
                super().dump_bytecode(bucket)
