"""Renderers: a review document in, text or bytes out."""
