"""Follow a child to its end: pass on its progress, hold it to its limits, turn every end into an answer."""

from __future__ import annotations

import queue
import signal
import time
from collections.abc import Callable
from typing import Any

from seamcheck.errors import NotReviewed

_ADDRESSES_MB = 2000.0  # more addresses than resident memory: libraries map what they never touch
_LOOK_EVERY_S = 0.03  # between two looks at the child's memory

STARTING = "starting"
"""The stage before a job tells its first one: the model was not opened yet."""

DOING = {
    "starting": "starting",
    "reading": "reading the file",
    "transferring": "transferring the bodies",
    "checking": "checking the bodies",
    "finding": "finding the seam",
    "tracing": "tracing the contour",
    "measuring": "measuring the seam",
    "judging": "judging the values",
}


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
        self._began = time.monotonic()

    def follow(
        self,
        messages: queue.Queue[Any],
        pid: int,
        wait: Callable[[], int],
        chatter: Callable[[], str],
    ) -> Any:
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
            elif kind == "result":
                return rest[0]
            elif kind == "error":
                self._raised = True
                raise rest[0]
            elif kind == "memory":
                error = self._out_of_memory()
                raise _with_traceback(ended_from_outside(error) if self._shell_is_lower() else error, rest[0])
            else:
                raise _with_traceback(self._unexpected(rest[0], rest[1]), rest[2])

    def _not_started(self, reason: NotReviewed) -> NotReviewed:
        """The same end before the model was opened, which says something of the machine and nothing of the model."""
        if getattr(reason, "ended_from_outside", False) and reason.code != "crashed":
            why = "the system ended its process"
        elif reason.code == "timeout":
            why = f"its process was not ready after {self.time_limit_s:g} s"
        elif reason.code == "out-of-memory":
            why = "its process alone needs more memory than it may have"
        else:
            why = self._why or "its process ended"
        shell = shell_limit_mb()
        limit = "" if shell is None else f" A memory limit of {shell:.0f} MB is set (ulimit -v)."
        error = NotReviewed(
            "not-started",
            f"This machine could not start the review: {why}.{limit} Nothing is known of the model; try again with "
            "more memory or time.",
        )
        return ended_from_outside(_with_traceback(error, getattr(reason, "traceback", "")))

    @property
    def doing(self) -> str:
        return DOING.get(self.stage, self.stage)

    def _at_stage(self, stage: tuple[Any, ...]) -> None:
        if stage and isinstance(stage[0], str):
            self.stage = stage[0]
        if self.progress is not None:
            self.progress(*stage)

    def _hold_to_limits(self, pid: int) -> None:
        if self.time_limit_s is not None and time.monotonic() - self._began > self.time_limit_s:
            raise NotReviewed(
                "timeout",
                f"Not finished after {self.time_limit_s:g} s, while {self.doing}. Give it more time with "
                "--time-limit, or leave out bodies that have nothing to do with the seam."
                + self._remark("That may be why: "),
            )
        if self.memory_limit_mb is not None and resident_mb(pid) > self.memory_limit_mb:
            raise self._out_of_memory()

    def _out_of_memory(self) -> NotReviewed:
        limit = "the machine has" if self.memory_limit_mb is None else f"the limit of {self.memory_limit_mb:g} MB"
        if self._shell_is_lower():
            limit = f"the {shell_limit_mb():.0f} MB that the shell allows (ulimit -v)"
        return NotReviewed(
            "out-of-memory",
            f"More memory was needed than {limit}, while {self.doing}. Allow more with --memory-limit, or "
            "leave out bodies that have nothing to do with the seam." + self._remark("That may be why: "),
        )

    def _crashed(self, status: int, chatter: str) -> NotReviewed:
        if status == -getattr(signal, "SIGKILL", 0) and status:
            error = NotReviewed(
                "out-of-memory",
                f"The system ended the review while {self.doing}, most likely because the memory of the "
                "machine ran out. Close other programs, review fewer models at a time, or leave out "
                "bodies that have nothing to do with the seam.",
            )
            return ended_from_outside(_with_traceback(error, chatter))
        how = f"exit status {status}"
        if status < 0:
            try:
                how = signal.Signals(-status).name
            except ValueError:
                how = f"signal {-status}"
        self._why = f"its process ended with {how}"
        error = NotReviewed(
            "crashed",
            f"The CAD kernel crashed while {self.doing} ({how})."
            + (
                self._remark()
                or " The file is probably damaged there: open it in a CAD program, check the bodies and export it "
                "again as STEP."
            ),
        )
        if self._shell_is_lower():
            shell = f" A memory limit of {shell_limit_mb():.0f} MB is set (ulimit -v), which may be why."
            error = ended_from_outside(NotReviewed("crashed", error.message + shell))
        return _with_traceback(error, chatter)

    def _shell_is_lower(self) -> bool:
        """Whether a memory limit that this process inherited is reached before the one that it was given."""
        shell = shell_limit_mb()
        return shell is not None and (self.memory_limit_mb is None or shell < self.memory_limit_mb + _ADDRESSES_MB)

    def _remark(self, introduction: str = "") -> str:
        """The first thing that was found odd, as a further sentence; '' where nothing was."""
        return f" {introduction}{self.remarks[0]}" if self.remarks else ""

    def _unexpected(self, kind: str, text: str) -> NotReviewed:
        first = text.strip().splitlines()[0] if text.strip() else "no text"
        self._why = f"{kind}: {first}".rstrip(".")
        return NotReviewed(
            "crashed",
            f"An unexpected error ended the review while {self.doing}: {kind}: {first}. Run it again with "
            "--debug to see where.",
        )


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
