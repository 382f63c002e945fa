"""Follow a child to its end: pass on its progress, hold it to its limits, turn every end into an answer."""

from __future__ import annotations

import os
import queue
import signal
import sys
import time
from collections.abc import Callable
from typing import Any

from seamcheck.catalogue.say import Value, refused, say, together
from seamcheck.errors import NotReviewed

_ADDRESSES_MB = 2000.0  # more addresses than resident memory: libraries map what they never touch
_PAGE_MB = os.sysconf("SC_PAGE_SIZE") / 1e6 if hasattr(os, "sysconf") else 0.0
_LOOK_EVERY_S = 0.03  # between two looks at the child's memory

_NOT_INSTALLED = ("ImportError", "ModuleNotFoundError")
"""Errors of an installation that is damaged, or was changed while a long scan ran."""

STARTING = "starting"
"""The stage before a job tells its first one: the model was not opened yet."""


class Watch:
    """The limits of one child and the stage it is in."""

    def __init__(
        self, time_limit_s: float | None, memory_limit_mb: float | None, progress: Callable[..., None] | None
    ) -> None:
        self.time_limit_s, self.memory_limit_mb, self.progress = time_limit_s, memory_limit_mb, progress
        self.stage = STARTING
        self._why = ""  # what ended the child
        self._raised = False  # whether the job itself raised an error of seamcheck
        self.remarks: list[str] = []  # what the child found odd about the model so far, as sentences
        self.costs: list[str] = []  # what takes long, as a sentence
        self._began = time.monotonic()

    def follow(self, messages: queue.Queue[Any], pid: int, wait: Callable[[], int], chatter: Callable[[], str]) -> Any:
        """The child's result; raises what it raised, or NotReviewed where it came to another end.

        Parameters
        ----------
        messages : what the child writes, None at its end
        wait : waits for the child's end, returns its exit status (negative: signal)
        chatter : what the child wrote to its standard error
        """
        try:
            return self._followed(messages, pid, wait, chatter)
        except NotReviewed as reason:
            raise (self._not_started(reason) if self.stage == STARTING and not self._raised else reason) from None

    def _followed(
        self, messages: queue.Queue[Any], pid: int, wait: Callable[[], int], chatter: Callable[[], str]
    ) -> Any:
        while True:
            self._hold_to_limits(pid)
            try:
                message = messages.get(timeout=_LOOK_EVERY_S)
            except queue.Empty:
                continue
            if message is None:
                raise self._crashed(wait(), chatter())
            kind, *rest = message
            if kind == "progress":
                self._at_stage(rest[0])
            elif kind == "remark":
                self.remarks.append(rest[0])
            elif kind == "costs":
                self.costs = [rest[0]]
            elif kind == "result":
                return rest[0]
            elif kind == "error":
                self._raised = True
                raise rest[0]
            elif kind == "memory":
                error = self._out_of_memory()
                raise _with_traceback(ended_from_outside(error) if self._shell_is_lower() else error, rest[0])
            else:
                error = self._unexpected(rest[0], rest[1])
                changed = rest[0] in _NOT_INSTALLED  # whatever the model holds
                raise _with_traceback(ended_from_outside(error) if changed else error, rest[2])

    def _not_started(self, reason: NotReviewed) -> NotReviewed:
        """The same end before the model was opened, which says something of the machine and nothing of the model."""
        if getattr(reason, "ended_from_outside", False) and reason.code != "crashed":
            why: str = say("why.ended")
        elif reason.code == "timeout":
            why = say("why.slow", limit=self.time_limit_s or 0.0)
        elif reason.code == "out-of-memory":
            why = say("why.memory")
        else:
            why = self._why or say("why.process")
        shell = shell_limit_mb()
        error = refused("not-started", "not-started.process", why=why, **({} if shell is None else {"shell": shell}))
        return ended_from_outside(_with_traceback(error, getattr(reason, "traceback", "")))

    def _at_stage(self, stage: tuple[Any, ...]) -> None:
        if stage and isinstance(stage[0], str):
            self.stage = stage[0]
        if self.progress is not None:
            self.progress(*stage)

    def _hold_to_limits(self, pid: int) -> None:
        if self.time_limit_s is not None and time.monotonic() - self._began > self.time_limit_s:
            raise refused("timeout", "timeout.limit", limit=self.time_limit_s, stage=self.stage, **self._cause())
        if self.memory_limit_mb is not None and resident_mb(pid) > self.memory_limit_mb:
            raise self._out_of_memory()

    def _out_of_memory(self) -> NotReviewed:
        said: dict[str, Value] = {"stage": self.stage, **self._cause()}
        shell = shell_limit_mb()
        if self._shell_is_lower() and shell is not None:
            return refused("out-of-memory", "out-of-memory.shell", limit=shell, **said)
        if self.memory_limit_mb is None:
            return refused("out-of-memory", "out-of-memory.machine", **said)
        return refused("out-of-memory", "out-of-memory.limit", limit=self.memory_limit_mb, **said)

    def _crashed(self, status: int, chatter: str) -> NotReviewed:
        if status == -getattr(signal, "SIGKILL", 0) and status:
            error = refused("out-of-memory", "out-of-memory.ended", stage=self.stage)
            return ended_from_outside(_with_traceback(error, chatter))
        how = f"exit status {status}"
        if status < 0:
            try:
                how = signal.Signals(-status).name
            except ValueError:
                how = f"signal {-status}"
        self._why = say("why.status", how=how)
        remark = self._remark()
        key = "crashed.kernel" if remark else "crashed.damaged"
        error = refused("crashed", key, stage=self.stage, how=how, **remark)
        shell = shell_limit_mb()
        if self._shell_is_lower() and shell is not None:
            error = ended_from_outside(
                NotReviewed("crashed", together(error.message, say("crashed.shell", shell=shell)))
            )
        return _with_traceback(error, chatter)

    def _shell_is_lower(self) -> bool:
        """Whether a memory limit that this process inherited is reached before the one that it was given."""
        shell = shell_limit_mb()
        return shell is not None and (self.memory_limit_mb is None or shell < self.memory_limit_mb + _ADDRESSES_MB)

    def _remark(self) -> dict[str, list[str]]:
        """The first thing that was found odd, for the place ``remark`` of a sentence."""
        return {"remark": self.remarks[:1]} if self.remarks else {}

    def _cause(self) -> dict[str, list[str]]:
        """What may be why a limit was reached: what is odd, else what the model has most of."""
        return self._remark() or ({"remark": self.costs} if self.costs else {})

    def _unexpected(self, kind: str, text: str) -> NotReviewed:
        first = text.strip().splitlines()[0] if text.strip() else "no text"
        error = f"{kind}: {first}".rstrip(".")
        self._why = say("why.error", error=error)
        return refused("crashed", "crashed.error", stage=self.stage, error=error)


def shell_limit_mb() -> float | None:
    """MB of addresses that this process and its children may use, as ``ulimit -v`` sets it; None for no limit."""
    try:
        import resource
    except ImportError:  # Windows
        return None
    size = resource.getrlimit(resource.RLIMIT_AS)[0]
    return None if size == resource.RLIM_INFINITY else size / 1e6


def resident_mb(pid: int) -> float:
    """Resident memory of a process in MB; 0 when it is gone."""
    if sys.platform.startswith("linux"):  # thirty times a second, so without a library
        try:
            with open(f"/proc/{pid}/statm", "rb", buffering=0) as file:
                return int(file.read().split()[1]) * _PAGE_MB  # proc(5): size, resident ... in pages
        except (OSError, IndexError):
            return 0.0
    import psutil

    try:
        return float(psutil.Process(pid).memory_info().rss / 1e6)
    except psutil.Error:
        return 0.0


def ended_from_outside(error: NotReviewed) -> NotReviewed:
    """Mark a refusal that says nothing about the model: whoever runs many models may try again."""
    error.ended_from_outside = True  # type: ignore[attr-defined]
    return error


def _with_traceback(error: NotReviewed, text: str) -> NotReviewed:
    error.traceback = text  # type: ignore[attr-defined]
    return error
