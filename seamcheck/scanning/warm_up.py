"""Loads what reviews of a scan need into the process that they are forked from."""

import importlib
from contextlib import suppress

from seamcheck.isolation.loading import REVIEW_MODULES

_OTHERS = (
    "platformdirs",
    "seamcheck.document.take_view",
    "seamcheck.kernel.display",
    "seamcheck.measure.material.assessment",
    "seamcheck.report.html.page",
    "seamcheck.scanning.job",
)

for _name in (*REVIEW_MODULES, *_OTHERS):
    with suppress(Exception):  # a review that needs it fails with its own words
        importlib.import_module(_name)
with suppress(Exception):
    importlib.import_module("seamcheck.cache.key").code()  # looked up once, not in every child
with suppress(Exception):
    importlib.import_module("seamcheck.report.html.page").prepare()
