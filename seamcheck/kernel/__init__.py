"""Work with exact shapes, given out as numpy arrays: outlines of faces, facets, boxes, distances."""

from seamcheck.kernel.body import Body

__all__ = ["Body"]
