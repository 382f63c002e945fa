"""A DXF drawing as text: R2010, millimetres, the same bytes for the same content."""

from __future__ import annotations

import io
from collections.abc import Callable
from typing import Any

from seamcheck.errors import MissingLibrary


def plain(text: Any) -> str:
    """Text that a drawing program shows as it stands: no codes, no line breaks."""
    shown = "".join(c if c.isprintable() else " " for c in str(text))
    return shown.replace("\\", "/").replace("%%", "% %").replace("^", "'")


def dxf_text(draw: Callable[[Any], None], *, setup: bool = False) -> str:
    """What ``draw`` puts into an empty drawing, as text.

    Parameters
    ----------
    draw : gets the ezdxf drawing
    setup : whether the usual line types and dimension styles are in it

    Raises
    ------
    MissingLibrary
        Without ezdxf.
    """
    try:
        import ezdxf
    except ImportError:
        raise MissingLibrary("A DXF drawing", "dxf") from None
    before = ezdxf.options.write_fixed_meta_data_for_testing
    ezdxf.options.write_fixed_meta_data_for_testing = True  # no date and no random number
    try:
        drawing = ezdxf.new("R2010", setup=setup)
        drawing.units = ezdxf.units.MM
        draw(drawing)
        out = io.StringIO()
        drawing.write(out)
    finally:
        ezdxf.options.write_fixed_meta_data_for_testing = before
    return out.getvalue()
