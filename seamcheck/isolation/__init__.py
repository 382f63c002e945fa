"""Run a function that may crash, hang or eat the memory in a child process of its own."""

from seamcheck.isolation.fresh import run_isolated
from seamcheck.isolation.warm import Stopped, WarmWorkers

__all__ = ["Stopped", "WarmWorkers", "run_isolated"]
