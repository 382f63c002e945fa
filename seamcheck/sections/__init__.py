"""Stations, sections and facets: what several families of quantities measure from."""
