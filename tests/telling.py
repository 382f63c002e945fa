"""Long lists of cases: a telling few run in the quick suite, all of them in the thorough one."""

from __future__ import annotations

from collections.abc import Collection, Iterable
from typing import Any

import pytest


def telling(cases: Iterable[Any], few: Collection[Any], several: bool = False) -> list[Any]:
    """The cases as parameters of a test, those that are not among the few marked as thorough.

    ``several``: each case is a tuple with a value for each of several names.
    ``few`` must be among the cases: a name that is gone is no longer telling.
    """
    cases = list(cases)
    missing = [case for case in few if case not in cases]
    assert not missing, f"no case is called {missing}"
    return [
        pytest.param(*(case if several else (case,)), marks=() if case in few else pytest.mark.thorough)
        for case in cases
    ]
