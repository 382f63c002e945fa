"""The name under which a measured model is kept: it changes with everything that what is measured depends on."""

from __future__ import annotations

import hashlib
import os
import sys
from collections.abc import Sequence
from functools import cache
from pathlib import Path

from msgspec.structs import asdict, replace

from seamcheck.assembly.parts import ModelFile
from seamcheck.catalogue.rule import OFF
from seamcheck.settings.settings import Settings
from seamcheck.version import __version__

RIB_MISSING = "rib-missing"
"""The rule that, switched off, says that a lap without a rib is what is wanted: the one that measuring looks at."""

AFTERWARDS = ("second_collapse", "limits", "severities", "waivers", "material", "origins", "file", "today", "trial")
"""Settings that come in after everything is measured; every other one is part of the key."""

_MEASURING = ("cadquery-ocp", "numpy", "scipy", "shapely")  # libraries that numbers come from


_AFTER = ("proposal", "preparation", "report", "comparison", "scanning", "cli")
"""Rooms that look at what was measured; nothing that measures imports them, so their source is no part of the key."""


def measuring(settings: Settings) -> Settings:
    """What measuring gets to know of the settings: those that come in afterwards stand at their defaults."""
    nothing = Settings()
    kept = {name: getattr(nothing, name) for name in AFTERWARDS}
    if settings.severity(RIB_MISSING) == OFF:  # a lap then is what is wanted, and measured as a whole
        kept["severities"] = {**nothing.severities, RIB_MISSING: OFF}
    return replace(settings, **kept)


def key_of(files: Sequence[ModelFile], settings: Settings) -> str:
    """Hex text, from the files' names and contents, the settings, this code and the libraries below it."""
    digest = hashlib.sha256()
    for file in files:
        digest.update(f"{file.name}\0{file.sha256}\0".encode("utf-8", "surrogatepass"))
    asked = measuring(settings)
    for name, value in asdict(asked).items():
        digest.update(f"{name}={value!r}\0".encode("utf-8", "surrogatepass"))
    digest.update(code().encode())
    return digest.hexdigest()


@cache
def code() -> str:
    """Version of this package, digest of the source that measures, versions of what it measures with."""
    digest = hashlib.sha256()
    root = Path(__file__).resolve().parents[1]
    below = [folder for folder in root.iterdir() if folder.is_dir() and folder.name not in _AFTER]
    for path in sorted([*root.glob("*.py"), *(path for folder in below for path in folder.rglob("*.py"))]):
        digest.update(str(path.relative_to(root)).encode() + b"\0" + path.read_bytes() + b"\0")
    versions = [f"{name} {_version(name)}" for name in _MEASURING]
    return "\n".join([__version__, digest.hexdigest(), sys.version, sys.platform, *versions])


def _version(name: str) -> str:
    """Version of an installed package, '' where there is none.

    It stands in the name of the folder that describes the package (``NAME-VERSION.dist-info``, Recording Installed
    Projects of the Python packaging guide); to ask the library for it takes 25 ms of imports.
    """
    start = name.replace("-", "_") + "-"
    for folders in _described():
        found = [folder for folder in folders if folder.startswith(start)]
        if len(found) == 1:
            return found[0][len(start) : -len(".dist-info")]
    from importlib import metadata

    try:
        return metadata.version(name)
    except metadata.PackageNotFoundError:
        return ""


@cache
def _described() -> list[list[str]]:
    """Names of the folders that describe packages, in the order in which Python looks for modules."""
    places = [place for place in sys.path if os.path.isdir(place)]
    return [[name for name in os.listdir(place) if name.endswith(".dist-info")] for place in places]
