"""The sample models: housings of a small weather station, one sound and one spoiled for each rule.

The STEP files lie in the folder ``sample_models`` of the project, whose ``draw.py`` draws them. An installed package
carries them as its subfolder of the same name.
"""

from __future__ import annotations

import os
from pathlib import Path

from msgspec import Struct

from seamcheck.errors import UsageError

__all__ = ["Sample", "samples", "write_samples"]


class Sample(Struct, frozen=True):
    """One sample model.

    Attributes
    ----------
    name : short name, the rule's key where it breaks one
    file : the STEP file as it ships
    sentence : what it is and what is wrong with it
    rule : key of the one rule that it breaks under the default limits, or with its own settings where it
        has some; None when it is sound
    settings : the settings file that goes with it and names its materials, scanner, stop or tolerances, or
        None; without it such a sample is sound
    """

    name: str
    file: Path
    sentence: str
    rule: str | None
    settings: Path | None = None


_PACKAGE = Path(__file__).resolve().parents[1]
FOLDER = next(
    (folder for folder in (_PACKAGE / "sample_models", _PACKAGE.parent / "sample_models") if folder.is_dir()),
    _PACKAGE / "sample_models",
)
"""Where the files lie: in an installed package, or in the project that is run in place."""

_SOUND = {
    "sound": "Barometer housing with a clear lid on top: nothing to find.",
    "sound-recessed": "Rain gauge head whose lid lies in a pocket of the base: nothing to find.",
}

_SPOILED = {
    "seam-open": "Barometer housing; the rib is interrupted for 2 mm by a groove.",
    "rib-missing": "Rain gauge head; the lid lies flat on the wall's rim, without a rib.",
    "traps-missing": "Rain gauge head; the lid lies on the top of a plain wall, which melts with open sides.",
    "seam-junction": "Logger box with two chambers; the dividing wall's rib meets the seam twice.",
    "rib-width": "Wind sensor head; the rib is only 0.55 mm wide all round.",
    "rib-uniformity": "Barometer housing; an ejector pad widens the rib from 1.2 to 1.5 mm over 3 mm.",
    "rib-height": "Rain gauge head; the outer trap floor lies only 0.55 mm below the rib's top.",
    "slenderness": "Wind sensor head; the rib is 1.7 mm high and 1.0 mm wide.",
    "flank-draft": "Rain gauge head; the rib's outer flank leans by 4°.",
    "corner-radius": "Battery compartment; the seam turns its corners in a radius of 2.2 mm.",
    "trap-room": "Wind sensor head; both flash traps together hold only 1.1 times the melt.",
    "trap-side": "Rain gauge head; the inner flash trap holds only 0.8 times its half of the melt.",
    "trap-open-inner": "Rain gauge head; nothing closes the inner flash trap.",
    "lip-gap": "Wind sensor head; the outer lip leaves 0.5 mm after the collapse.",
    "clamp-land": "Rain gauge head; a wide chamfer leaves 0.8 mm of land for the clamp.",
    "clamp-tilt": "Wind sensor head; the clamp land slopes outward by 4°.",
    "cover-thickness": "Rain gauge head; the lid is 3.4 mm thick over the rib.",
    "cover-uniformity": "Barometer housing; a pad thickens the lid from 2.0 to 2.5 mm over 6 mm.",
    "cover-hole": "Rain gauge head; a vent hole of 3 mm goes through the lid over the rib.",
    "beam-path": "Barometer housing; a cable clip above the lid shades half of the rib over 8 mm.",
    "contact-gap": "Barometer housing; a recess in the lid leaves a gap of 0.25 mm over the rib for 5 mm.",
    "drawn-welded": "Rain gauge head, drawn after welding: the parts overlap by 0.4 mm.",
    "sink-travel": "Rain gauge head; a pad beside the outer trap stops the lid after 0.45 mm.",
    "seam-step": "Barometer housing on a slope of 26.6°: the seam rises by 0.54 mm within one rib width.",
    "path-distance": "Logger box with two ribs side by side, 2.6 mm from each other.",
    "near-parts": "Barometer housing; a sensor inside stands 4.5 mm from the rib.",
    "parts-overlap": "Barometer housing; a locating tongue of the lid is drawn 0.08 mm into the housing's wall.",
    "wall-opening": "Barometer housing; a cable opening of 8 mm goes through the wall below the rib.",
    "wall-to-rib": "Wind sensor head; the wall below the rib is 1.0 mm wide, the rib 1.2 mm.",
    "support-offset": "Wind sensor head; the wall below the rib stands 1.75 mm beside it.",
    "overhang": "Wind sensor head; the rib stands on a ledge 2.3 mm deep that reaches 3.2 mm out from the wall.",
    "trap-corner": "Battery compartment; in corners the inner flash trap holds only 0.9 times its half of the melt.",
    "clamp-reach": "Wind sensor head under a sun shield; clips on both sides leave no land for the clamp over 9 mm.",
    "guide-play": "Rain gauge head; the lid's locating pins have 0.02 mm of play left at the end of the collapse.",
    "guide-depth": "Rain gauge head; the lid's pins reach their holes only 0.15 mm after it touches the rib.",
    "guide-draft": "Rain gauge head; the lid's locating pins and their holes have a draft of only 0.2°.",
    "sink-mark": "Wind sensor head with the rib on its lid: 1.23 mm wide at the root, on a plate of 1.1 mm.",
}


_SPOILED_BY_SETTINGS = {
    "beam-angle": "Barometer housing; the scanner stands only 110 mm above it.",
    "scanner-shadow": "Barometer housing; a mast beside the seam shades it from a scanner 200 mm above.",
    "intended-stop": "Rain gauge head; the post that is meant to end the collapse at 0.40 mm stands 0.20 mm too low.",
    "flatness-stack": "Rain gauge head; lid and rib are allowed to be 0.35 mm out of flat together.",
    "weld-load": "Wind sensor head; at 2 MPa inside the weld carries more than its strength.",
    "weld-peel": "Barometer housing; at 0.1 MPa inside the bending lid peels the weld in the middle of its long sides.",
    "second-collapse": "Wind sensor head; a second collapse of 0.2 mm is planned, which leaves no reserve of travel.",
    "transmission": "Barometer housing; within all limits of geometry, but a pad of 0.28 mm on the lid "
    "leaves too little light over 6 mm.",
    "collapse-window": "Barometer housing; within all limits of geometry, but no collapse closes gap and "
    "warp and still has travel left.",
}


def samples() -> tuple[Sample, ...]:
    """All sample models, the sound ones first."""
    return tuple(
        Sample(name, FOLDER / f"{name}.step", sentence, rule, settings)
        for table, spoiled, own in ((_SOUND, False, False), (_SPOILED, True, False), (_SPOILED_BY_SETTINGS, True, True))
        for name, sentence in table.items()
        for rule in (name if spoiled else None,)
        for settings in (FOLDER / f"{name}.toml" if own else None,)
    )


def write_samples(folder: str | os.PathLike[str]) -> list[Path]:
    """Copy the sample models into a folder, which is made where it is missing.

    A file that is already there with the same content is kept.

    Returns
    -------
    The written (or kept) files.

    Raises
    ------
    UsageError
        The folder can't be written, or a file of the same name with other content is there; then
        nothing is written.
    """
    folder = Path(folder)
    files = [file for sample in samples() for file in (sample.file, sample.settings) if file is not None]
    copies = [(file.read_bytes(), folder / file.name) for file in files]
    try:
        folder.mkdir(parents=True, exist_ok=True)
        differing = [path.name for data, path in copies if path.exists() and path.read_bytes() != data]
        if differing:
            raise UsageError(
                f"{folder} already holds other files named {', '.join(differing)}; they are left as they are "
                "and nothing is written. Give another folder, or move them away."
            )
        for data, path in copies:
            if not path.exists():
                path.write_bytes(data)
    except OSError as problem:
        raise UsageError(f"The sample models can't be written to {folder}: {problem}.") from problem
    return [path for _, path in copies]
