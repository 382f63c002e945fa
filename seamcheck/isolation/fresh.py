"""Run one function in one fresh child process, with limits (Linux, macOS, Windows)."""

from __future__ import annotations

import contextlib
import os
import tempfile
from collections.abc import Callable, Sequence
from typing import IO, TYPE_CHECKING, Any

from seamcheck.isolation.forked import ForkedChild, can_fork
from seamcheck.isolation.frames import Messages, tail, write_message
from seamcheck.isolation.imports import child_command, child_environment
from seamcheck.isolation.limits import MEMORY_LIMIT_MB, TIME_LIMIT_S
from seamcheck.isolation.outcome import Watch

if TYPE_CHECKING:
    import subprocess


def run_isolated(
    function: str,
    args: tuple[Any, ...] = (),
    *,
    time_limit_s: float | None = TIME_LIMIT_S,
    memory_limit_mb: float | None = MEMORY_LIMIT_MB,
    progress: Callable[..., None] | None = None,
    writable: Sequence[str] | None = None,
) -> Any:
    """What a function returns that ran in a child process of its own.

    Parameters
    ----------
    function : 'module:name'; importable in the child, its arguments and result picklable. If it has a
        parameter ``progress`` it gets a callback there, to be called with the name
        of each stage as it begins.
    time_limit_s, memory_limit_mb : seconds of wall time and megabytes of resident memory; None for no limit
    progress : called here with what the function reports
    writable : folders below which alone the child may write; where given it has no network either, as far as the system
        can (see ``confine``). None for a function that may do what this process may

    Raises
    ------
    NotReviewed
        'timeout', 'out-of-memory', or 'crashed' with what the child was doing
    SeamcheckError
        whatever the function raised of these; an unexpected exception becomes 'crashed'. The attribute
        ``traceback`` holds the child's traceback as text.

    Notes
    -----
    The child writes nothing to this process's standard output, and it ends with this process: at once on
    Linux; on other systems as soon as the kernel gives Python a turn, and at the latest 5 s after the time
    limit.
    """
    watch = Watch(time_limit_s, memory_limit_mb, progress)
    with tempfile.TemporaryFile() as chatter:
        child = ForkedChild(chatter) if can_fork() else _fresh_child(chatter)
        assert child.stdin is not None
        assert child.stdout is not None
        messages: Messages | None = None
        try:
            job = {
                "function": function,
                "args": args,
                "parent": os.getpid(),
                "time_limit_s": time_limit_s,
                "writable": writable,
            }
            messages = Messages(child.stdout)
            with contextlib.suppress(OSError):  # the child is gone already: the watch says how
                write_message(child.stdin, job)
            return watch.follow(messages, child.pid, child.wait, lambda: tail(chatter))
        finally:
            child.kill()
            child.wait()
            if messages is not None:
                messages.join_reader()  # the next child may be forked only from a process of one thread
            child.stdout.close()
            with contextlib.suppress(OSError):
                child.stdin.close()


def _fresh_child(chatter: IO[bytes]) -> subprocess.Popen[bytes]:
    import subprocess

    return subprocess.Popen(
        child_command("seamcheck.isolation.child:main"),
        stdin=subprocess.PIPE,
        stdout=subprocess.PIPE,
        stderr=chatter,
        env=child_environment(),
    )
