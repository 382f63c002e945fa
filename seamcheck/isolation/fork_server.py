"""A process that has loaded everything and forks one child for each job (systems with fork only).

It stays single-threaded, does no work of its own and answers at once, so that it can end any child at any
moment. What it forks runs one job and ends; nothing of one model reaches the next.
"""

from __future__ import annotations

import faulthandler
import gc
import importlib
import os
import select
import signal
import socket
import sys
from contextlib import suppress
from typing import Any

from seamcheck.isolation.child import EXTRA_TIME_S, end_with_parent, run_job
from seamcheck.isolation.confine import confine
from seamcheck.isolation.frames import read_message
from seamcheck.isolation.loading import begin_review_process

REQUEST_SIZE = 9  # kind (1 byte) and number of the job (8 bytes, big-endian)
FORK, END = b"F", b"E"
_ORPHAN_CHECK_S = 1.0


def main() -> None:
    """Serve until the parent's end of the control socket closes; then end every child.

    Its arguments: the control socket's file descriptor, the parent's process id, modules to load before the first fork.
    """
    control, parent, preload = socket.socket(fileno=int(sys.argv[1])), int(sys.argv[2]), sys.argv[3:]
    for number in (signal.SIGINT, signal.SIGTERM):  # the parent ends this process by closing the socket
        signal.signal(number, signal.SIG_IGN)
    begin_review_process(forks=True)
    for module in preload:
        with suppress(Exception):  # a job that needs it fails with its own words
            importlib.import_module(module)
    gc.freeze()  # what is loaded stays in shared pages
    Server(control, parent).serve()
    os._exit(0)


class Server:
    """Forks, ends and reaps children.

    A request to fork carries three file descriptors: the job's channel (the job comes in, answers go out),
    a pipe for the child's process id and exit status (8 bytes each, signed; negative status: signal), and a
    file for what the child writes to standard output and error.
    """

    def __init__(self, control: socket.socket, parent: int) -> None:
        self._control, self._parent = control, parent
        self._jobs: dict[int, tuple[int, int]] = {}  # process id -> (number of the job, status pipe)

    def serve(self) -> None:
        wake_read, wake_write = os.pipe()
        for fd in (wake_read, wake_write):
            os.set_blocking(fd, False)
        signal.set_wakeup_fd(wake_write, warn_on_full_buffer=False)
        signal.signal(signal.SIGCHLD, lambda number, frame: None)
        sources: list[Any] = [self._control, wake_read]
        while os.getppid() == self._parent:
            ready, _, _ = select.select(sources, [], [], _ORPHAN_CHECK_S)
            if wake_read in ready:
                with suppress(BlockingIOError):
                    os.read(wake_read, 4096)
            self._reap()
            if self._control in ready and not self._answer_request():
                break
        for pid in self._jobs:
            os.kill(pid, signal.SIGKILL)

    def _answer_request(self) -> bool:
        """Do what the parent asks; False when it is gone."""
        request, fds = _receive(self._control)
        if request is None:
            return False
        kind, number = request[:1], int.from_bytes(request[1:], "big")
        if kind == FORK:
            self._fork(number, *fds)
        else:
            for pid, (job, _) in self._jobs.items():
                if job == number:
                    os.kill(pid, signal.SIGKILL)  # not reaped yet, so the id is still the child's
        return True

    def _fork(self, number: int, channel: int, status: int, chatter: int) -> None:
        server = os.getpid()
        pid = os.fork()
        if pid == 0:
            try:
                signal.set_wakeup_fd(-1)
                signal.signal(signal.SIGCHLD, signal.SIG_DFL)
                signal.signal(signal.SIGTERM, signal.SIG_DFL)
                self._control.close()
                for fd in (status, *(pipe for _, pipe in self._jobs.values())):
                    os.close(fd)
                _run(channel, chatter, server)
            finally:
                os._exit(70)  # EX_SOFTWARE of sysexits.h; _run does not come back
        self._jobs[pid] = (number, status)
        os.close(channel)
        os.close(chatter)
        _tell(status, pid)

    def _reap(self) -> None:
        while self._jobs:
            pid, status = os.waitpid(-1, os.WNOHANG)
            if pid == 0:
                return
            _, pipe = self._jobs.pop(pid)
            _tell(pipe, os.waitstatus_to_exitcode(status))
            os.close(pipe)


def _run(channel: int, chatter: int, server: int) -> None:
    """The child: take the job from its channel, run it, answer there, end."""
    os.dup2(chatter, 1)
    os.dup2(chatter, 2)
    end_with_parent(server)
    faulthandler.enable(file=sys.__stderr__ or 2)
    with socket.socket(fileno=channel) as connection, connection.makefile("rwb") as stream:
        job: dict[str, Any] = read_message(stream)
        if job["time_limit_s"]:
            faulthandler.dump_traceback_later(job["time_limit_s"] + EXTRA_TIME_S, exit=True, file=2)
        if job["writable"] is not None:
            confine(job["writable"])
        run_job(job["function"], job["args"], stream)
        os._exit(0)


def _receive(control: socket.socket) -> tuple[bytes | None, list[int]]:
    request, fds = b"", []
    while len(request) < REQUEST_SIZE:
        piece, more, _, _ = socket.recv_fds(control, REQUEST_SIZE - len(request), 3)
        if not piece:
            return None, []
        request += piece
        fds += more
    return request, fds


def _tell(pipe: int, number: int) -> None:
    with suppress(OSError):  # the parent is gone
        os.write(pipe, number.to_bytes(8, "big", signed=True))
