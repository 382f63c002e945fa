"""Pre-checks the CAD of laser-welded plastic housings.

``import seamcheck`` loads no CAD kernel; that happens in a child process when a model is read.

>>> import seamcheck
>>> review = seamcheck.review("housing.step", collapse=0.35)      # doctest: +SKIP
>>> review.verdict, [f.rule for f in review.findings]             # doctest: +SKIP
('fail', ['rib-width'])
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from seamcheck.version import __version__

if TYPE_CHECKING:
    from seamcheck.comparison.compare import Comparison, compare
    from seamcheck.errors import NotReviewed, SeamcheckError, UsageError
    from seamcheck.judge.findings import Finding
    from seamcheck.pipeline import review
    from seamcheck.preparation.prepare import Preparation, prepare
    from seamcheck.proposal.propose import Proposal, propose
    from seamcheck.report.review import Review
    from seamcheck.scanning.run import scan
    from seamcheck.settings.file import read_settings
    from seamcheck.settings.settings import Settings

__all__ = [
    "Comparison", "Finding", "NotReviewed", "Preparation", "Proposal", "Review", "SeamcheckError", "Settings",
    "UsageError", "__version__", "compare", "prepare", "propose", "read_settings", "review", "scan",
]  # fmt: skip

_FROM = {
    "Comparison": "seamcheck.comparison.compare",
    "Finding": "seamcheck.judge.findings",
    "NotReviewed": "seamcheck.errors",
    "Preparation": "seamcheck.preparation.prepare",
    "Proposal": "seamcheck.proposal.propose",
    "Review": "seamcheck.report.review",
    "SeamcheckError": "seamcheck.errors",
    "Settings": "seamcheck.settings.settings",
    "UsageError": "seamcheck.errors",
    "compare": "seamcheck.comparison.compare",
    "prepare": "seamcheck.preparation.prepare",
    "propose": "seamcheck.proposal.propose",
    "read_settings": "seamcheck.settings.file",
    "review": "seamcheck.pipeline",
    "scan": "seamcheck.scanning.run",
}


def __getattr__(name: str) -> Any:
    """Import what is asked for only then."""
    if name not in _FROM:
        raise AttributeError(f"module 'seamcheck' has no attribute {name!r}")
    import importlib

    return getattr(importlib.import_module(_FROM[name]), name)


def __dir__() -> list[str]:
    return sorted(__all__)
