"""Reading STEP files: product structure, names, placements, units, entity numbers, plausibility."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from pathlib import Path

from seamcheck.assembly.parts import Assembly, Entity, ModelFile, Part
from seamcheck.assembly.source import Given

__all__ = ["Assembly", "Entity", "Given", "ModelFile", "Part", "read_assembly"]


def read_assembly(
    paths: Sequence[Path | str | Given] | Path | str | Given, progress: Callable[[str], None] | None = None
) -> Assembly:
    """All placed bodies of one or more STEP files that share a frame, in mm.

    Parameters
    ----------
    paths : one file or several; several are placed together as they stand
    progress : called with a stage name, 'reading' or 'transferring', when the stage begins

    Raises
    ------
    NotReviewed
        with a code and one or two sentences, when a file can't be read or holds nothing to review

    Notes
    -----
    The CAD kernel is imported on the first call, and it can crash on a damaged file: call this in a child
    process (``seamcheck.isolation``).
    """
    from seamcheck.assembly.read import read_files  # here, so that importing the values needs no kernel

    several = [paths] if isinstance(paths, str | Path | Given) else paths
    return read_files(
        [Path(path) if isinstance(path, str) else path for path in several], progress or (lambda stage: None)
    )
