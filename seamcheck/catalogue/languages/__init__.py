"""Texts in other languages than English: one gettext catalogue each."""
