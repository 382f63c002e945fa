"""Many models: each reviewed in a child of its own, kept in a store, listed on a page.

The function is ``seamcheck.scan``, in ``scanning/run.py``.
"""
