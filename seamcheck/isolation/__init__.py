"""Run a function that may crash, hang or eat the memory in a child process of its own."""

from __future__ import annotations

from importlib import import_module
from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from seamcheck.isolation.fresh import run_isolated
    from seamcheck.isolation.warm import Stopped, WarmWorkers
    from seamcheck.isolation.written import written_by_child

__all__ = ["Stopped", "WarmWorkers", "run_isolated", "written_by_child"]

_WHERE = {"run_isolated": "fresh", "Stopped": "warm", "WarmWorkers": "warm", "written_by_child": "written"}


def __getattr__(name: str) -> Any:
    """Import what is asked for only then: a child needs nothing of what starts one."""
    if name in _WHERE:
        return getattr(import_module(f"seamcheck.isolation.{_WHERE[name]}"), name)
    raise AttributeError(name)
