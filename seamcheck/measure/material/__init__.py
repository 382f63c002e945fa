"""Transmission of the cover, polymer pairs, melt and energy along the seam.

Everything here is optional: without material settings the review of the geometry stands alone. ``assess`` is
the one entry point; ``MaterialSettings.from_table`` reads the ``[material]`` table of seamcheck.toml.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from seamcheck.measure.material.assessment import MaterialResult, add_to, assess
    from seamcheck.settings.material import MaterialSettings

__all__ = ["MaterialResult", "MaterialSettings", "add_to", "assess"]


def __getattr__(name: str) -> Any:
    """Import on demand: the command line's help loads no numpy."""
    if name == "MaterialSettings":
        from seamcheck.settings.material import MaterialSettings

        return MaterialSettings
    if name in ("assess", "add_to", "MaterialResult"):
        from seamcheck.measure.material import assessment

        return getattr(assessment, name)
    raise AttributeError(name)
