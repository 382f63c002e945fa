"""Run a function that may crash, hang or eat the memory in a child process of its own."""

from seamcheck.isolation.fresh import run_isolated

__all__ = ["run_isolated"]
