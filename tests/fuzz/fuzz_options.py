"""What can be asked of the long run: option -> its default and meaning."""

from __future__ import annotations

OPTIONS: dict[str, tuple[float | str, str]] = {
    "variants": (1500, "damaged files of the long run"),
    "first": (10_000, "seed of its first one"),
    "keep": ("", "file for what it found, as JSON; a run that was broken off goes on from it"),
    "seconds": (0.0, "after which a variant counts as hanging, 0 for 300"),
    "workers": (2, "children at a time"),
}
