"""Which settings a scan goes by: the reviewer's own, never those that lie beside a model."""

from __future__ import annotations

import hashlib
import json
from collections.abc import Mapping, Sequence
from datetime import date
from pathlib import Path
from typing import Any

from msgspec import Struct
from msgspec.structs import asdict

from seamcheck.settings.file import NAME, first_in, read_found, read_settings
from seamcheck.settings.settings import Settings


def reviewers_settings(
    file: Path | None, out: Path, folders: Sequence[Path], look: bool = True
) -> tuple[Settings, Path | None, list[Path]]:
    """The settings, the file they are of, and files passed over because they lie in a scanned folder.

    Looked for in ``out``, then in the working folder; only ``file`` itself may lie in a scanned folder.
    """
    if file is not None:
        return read_settings(file), file, []
    passed = []
    for folder in (out, Path.cwd()) if look else ():
        candidate = folder / NAME
        if first_in([folder]) is None:
            continue
        places = (folder.resolve(), candidate.resolve())  # the file, or a link to it: either may be a stranger's
        if any(place.is_relative_to(scanned.resolve()) for place in places for scanned in folders):
            passed.append(candidate)
            continue
        return read_found(candidate), candidate, passed
    return Settings(), None, list(dict.fromkeys(passed))


def settings_hash(settings: Settings) -> str:
    """The same text for settings that give the same review documents.

    The day counts only by which waivers have ended; where a number comes from counts, as the document says it.
    """
    day = settings.today or date.today()
    values = {key: value for key, value in asdict(settings).items() if key != "today"}
    values["ended"] = [waiver.is_expired(day) for waiver in settings.waivers]
    text = json.dumps(_plain(values), sort_keys=True, ensure_ascii=True)
    return hashlib.sha256(text.encode()).hexdigest()[:32]


def review_key(files: Sequence[tuple[str, str]], settings: str, version: str) -> str:
    """The key of a review: of (name, SHA-256) of every file in order, the settings' hash and the version."""
    text = json.dumps([list(map(list, files)), settings, version], ensure_ascii=True)
    return hashlib.sha256(text.encode()).hexdigest()[:32]


def _plain(value: Any) -> Any:
    if isinstance(value, Mapping):
        return {str(key): _plain(item) for key, item in value.items()}
    if isinstance(value, Struct):
        return _plain(asdict(value))
    if isinstance(value, list | tuple):
        return [_plain(item) for item in value]
    if value is None or isinstance(value, bool | int | str):
        return value
    return float(value).hex() if isinstance(value, float) else str(value)
