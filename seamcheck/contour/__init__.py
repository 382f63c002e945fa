"""From the region of the rib top to its mid-line, divided into paths."""

from seamcheck.contour.contour import Contour, Path
from seamcheck.contour.trace import trace_contour

__all__ = ["Contour", "Path", "trace_contour"]
