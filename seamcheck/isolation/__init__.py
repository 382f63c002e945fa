"""Run a function that may crash, hang or eat the memory in a child process of its own."""

from seamcheck.isolation.fresh import run_isolated
from seamcheck.isolation.warm import Stopped, WarmWorkers
from seamcheck.isolation.written import written_by_child

__all__ = ["Stopped", "WarmWorkers", "run_isolated", "written_by_child"]
