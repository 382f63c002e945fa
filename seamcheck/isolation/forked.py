"""A child forked from the command line's own process: what is loaded there already is not loaded again.

Only the command line allows this, of its own process: a program that calls the library may hold anything, which a fork
would share. It is done on Linux, and as long as the process has one thread.
"""

from __future__ import annotations

import os
import signal
import sys
import threading
import time
from contextlib import suppress
from typing import IO

_THREAD_ENDS_S = 0.2  # a thousand times what it takes; threads that a library keeps are waited for in vain
_allowed = False


def allow_forks() -> None:
    """Let children be forked from this process: it holds nothing but what the command line has loaded."""
    global _allowed
    _allowed = sys.platform.startswith("linux")


def can_fork() -> bool:
    """Whether a child may be forked from this process now: it has one thread, also by the system's count.

    A thread that Python knows no more may take the system a moment to end; that is waited for.
    """
    if not _allowed or threading.active_count() > 1:
        return False
    until = time.monotonic() + _THREAD_ENDS_S
    while (many := len(os.listdir("/proc/self/task")) > 1) and time.monotonic() < until:
        time.sleep(0.001)
    return not many


class ForkedChild:
    """Runs ``seamcheck.isolation.child:main`` in a fork of this process; as much of ``subprocess.Popen`` as is needed.

    It has nothing of this process's files, standard streams and import path but what a fresh child has as well.
    """

    def __init__(self, chatter: IO[bytes]) -> None:
        job_out, job_in = os.pipe()
        answers_out, answers_in = os.pipe()
        self.returncode: int | None = None
        self.pid = os.fork()
        if self.pid == 0:
            try:
                _become_a_child(job_out, answers_in, chatter.fileno())
            finally:
                os._exit(70)  # EX_SOFTWARE of sysexits.h; main does not come back
        os.close(job_out)
        os.close(answers_in)
        self.stdin, self.stdout = os.fdopen(job_in, "wb"), os.fdopen(answers_out, "rb")

    def wait(self) -> int:
        """Wait for its end; its exit status, negative for a signal."""
        if self.returncode is None:
            self.returncode = os.waitstatus_to_exitcode(os.waitpid(self.pid, 0)[1])
        return self.returncode

    def kill(self) -> None:
        """End it; not waited for yet, so the id is still its own."""
        if self.returncode is None:
            with suppress(ProcessLookupError):
                os.kill(self.pid, signal.SIGKILL)


def _become_a_child(job: int, answers: int, chatter: int) -> None:
    import fcntl

    from seamcheck.isolation.child import main
    from seamcheck.isolation.imports import children_path

    given = [fcntl.fcntl(fd, fcntl.F_DUPFD, 3) for fd in (job, answers, chatter)]  # a shell may have closed 0, 1 or 2
    for stream, fd in enumerate(given):
        os.dup2(fd, stream)
    for name in os.listdir("/proc/self/fd"):
        if int(name) > 2:
            with suppress(OSError):  # the one that listed them
                os.close(int(name))
    sys.stdout, sys.stderr = (os.fdopen(stream, "w", closefd=False) for stream in (1, 2))
    sys.path[:] = children_path()
    os.environ.pop("PYTHONPATH", None)
    main()
