"""Many jobs, each in a child of its own, forked from a process that has loaded everything already."""

from __future__ import annotations

import itertools
import os
import select
import socket
import subprocess
import sys
import tempfile
import threading
from collections.abc import Callable, Sequence
from concurrent.futures import Future, ThreadPoolExecutor
from contextlib import suppress
from typing import Any

from seamcheck.catalogue.say import refused
from seamcheck.isolation.fork_server import END, FORK
from seamcheck.isolation.frames import Messages, tail, write_message
from seamcheck.isolation.fresh import run_isolated
from seamcheck.isolation.imports import child_command, child_environment
from seamcheck.isolation.limits import MEMORY_LIMIT_MB, TIME_LIMIT_S
from seamcheck.isolation.loading import REVIEW_MODULES
from seamcheck.isolation.outcome import Watch, ended_from_outside

CAN_FORK_WARM = sys.platform.startswith("linux")
"""Elsewhere a fork without exec is missing (Windows) or not dependable with loaded libraries (macOS): there
every job gets a fresh child, which loads the kernel anew."""

_LOADING_LIMIT_S = 300.0


class Stopped(Exception):
    """The pool was closed while the job ran."""


class WarmWorkers:
    """Runs functions in single-use children, at most ``count`` at a time.

    >>> with WarmWorkers(2) as workers:                                             # doctest: +SKIP
    ...     futures = [workers.submit("seamcheck.pipeline:review_model", (m, settings)) for m in models]

    Parameters
    ----------
    count : children at a time; default: the processors that this process may use
    preload : modules that are loaded once, before the first fork
    time_limit_s, memory_limit_mb : of every job, unless it gets its own
    warm : fork from a warm process; default where that is dependable (``CAN_FORK_WARM``)

    Notes
    -----
    A job that crashes, hangs or eats the memory costs that job: its child is ended and its future raises
    NotReviewed, the next job gets a new child. ``run`` and ``submit`` may be called from any thread. Children
    end when the pool closes, and when this process dies, however it dies.
    """

    def __init__(
        self,
        count: int | None = None,
        *,
        preload: Sequence[str] = REVIEW_MODULES,
        time_limit_s: float | None = TIME_LIMIT_S,
        memory_limit_mb: float | None = MEMORY_LIMIT_MB,
        warm: bool = CAN_FORK_WARM,
    ) -> None:
        self.count = count or processors()
        self.time_limit_s, self.memory_limit_mb = time_limit_s, memory_limit_mb
        self._preload = tuple(preload)
        self._warm = warm and hasattr(os, "fork")
        self._server: _Server | None = None
        self._lock = threading.Lock()
        self._closed = threading.Event()
        self._threads = ThreadPoolExecutor(self.count, thread_name_prefix="seamcheck-worker")
        if self._warm:
            self._running_server()  # loads while the caller still collects its jobs

    def submit(self, function: str, args: tuple[Any, ...] = (), **options: Any) -> Future[Any]:
        """Queue a job; options as for ``run``. Its future gives the result or raises what ``run`` raises."""
        return self._threads.submit(self.run, function, args, **options)

    def run(
        self,
        function: str,
        args: tuple[Any, ...] = (),
        *,
        time_limit_s: float | None = None,
        memory_limit_mb: float | None = None,
        progress: Callable[..., None] | None = None,
        writable: Sequence[str] | None = None,
    ) -> Any:
        """Run one job now and wait for it, as ``run_isolated`` does with a fresh child.

        Raises
        ------
        NotReviewed, SeamcheckError : as ``run_isolated``
        Stopped : the pool was closed
        """
        limits: dict[str, Any] = {
            "time_limit_s": self.time_limit_s if time_limit_s is None else time_limit_s,
            "memory_limit_mb": self.memory_limit_mb if memory_limit_mb is None else memory_limit_mb,
            "progress": progress,
            "writable": writable,
        }
        if not self._warm:
            self._resume()
            return run_isolated(function, args, **limits)
        for attempt in range(2):
            self._resume()
            server = self._running_server()
            try:
                return server.run(function, args, limits)
            except _ServerGone as gone:
                self._resume()
                if attempt == 1:
                    raise ended_from_outside(refused("not-started", "not-started.server")) from gone
        raise AssertionError("unreachable")

    def close(self) -> None:
        """End all children and take no more jobs: waiting ones are cancelled, running ones raise Stopped."""
        self._closed.set()
        self._threads.shutdown(wait=False, cancel_futures=True)
        with self._lock:
            server, self._server = self._server, None
        if server is not None:
            server.close()
        self._threads.shutdown(wait=True)

    def __enter__(self) -> WarmWorkers:
        return self

    def __exit__(self, kind: type[BaseException] | None, *error: object) -> None:
        if kind is None:
            self._threads.shutdown(wait=True)  # let what was submitted finish
        self.close()

    def _resume(self) -> None:
        if self._closed.is_set():
            raise Stopped

    def _running_server(self) -> _Server:
        with self._lock:
            self._resume()
            if self._server is None or not self._server.is_alive():
                if self._server is not None:
                    self._server.close()
                self._server = _Server(self._preload)
            return self._server


class _ServerGone(Exception):
    """The fork server ended before it told how the child ended."""


class _Sender:
    """Writes to a socket at once: nothing is left to be written when it closes."""

    def __init__(self, connection: socket.socket) -> None:
        self._connection = connection

    def write(self, data: bytes) -> None:
        self._connection.sendall(data)

    def flush(self) -> None:
        pass


class _Server:
    """This side of the fork server."""

    def __init__(self, preload: tuple[str, ...]) -> None:
        ours, theirs = socket.socketpair(socket.AF_UNIX, socket.SOCK_STREAM)
        self._control, self._lock, self._numbers = ours, threading.Lock(), itertools.count(1)
        with theirs:
            self._process = subprocess.Popen(
                child_command("seamcheck.isolation.fork_server:main", str(theirs.fileno()), str(os.getpid()), *preload),
                stdin=subprocess.DEVNULL,
                stdout=subprocess.DEVNULL,
                stderr=subprocess.DEVNULL,
                pass_fds=[theirs.fileno()],
                env=child_environment(),
            )

    def is_alive(self) -> bool:
        return self._process.poll() is None

    def close(self) -> None:
        with self._lock:
            self._control.close()
        try:
            self._process.wait(timeout=2)
        except subprocess.TimeoutExpired:  # still loading
            self._process.kill()
            self._process.wait()

    def run(self, function: str, args: tuple[Any, ...], limits: dict[str, Any]) -> Any:
        number = next(self._numbers)
        ours, theirs = socket.socketpair(socket.AF_UNIX, socket.SOCK_STREAM)
        status, told = os.pipe()
        with tempfile.TemporaryFile() as chatter, ours, ours.makefile("rb") as answers, open(status, "rb") as ends:
            try:
                with theirs:
                    self._ask(FORK, number, [theirs.fileno(), told, chatter.fileno()])
            finally:
                os.close(told)
            try:
                pid = self._forked(ends)
                watch = Watch(limits["time_limit_s"], limits["memory_limit_mb"], limits["progress"])
                job = {"function": function, "args": args, "time_limit_s": limits["time_limit_s"]}
                job["writable"] = limits["writable"]
                with suppress(OSError):  # the child is gone already: the watch says how
                    write_message(_Sender(ours), job)
                return watch.follow(Messages(answers), pid, lambda: _number(ends), lambda: tail(chatter))
            finally:
                with suppress(_ServerGone):
                    self._ask(END, number, [])
                with suppress(OSError):
                    ours.shutdown(socket.SHUT_RDWR)  # the thread that reads it ends

    def _forked(self, ends: Any) -> int:
        """The child's process id; the first one comes when the server has loaded everything."""
        ready, _, _ = select.select([ends], [], [], _LOADING_LIMIT_S)
        if not ready:
            self._process.kill()
        return _number(ends)

    def _ask(self, kind: bytes, number: int, fds: list[int]) -> None:
        request = kind + number.to_bytes(8, "big")
        try:
            with self._lock:
                sent = socket.send_fds(self._control, [request], fds)
                self._control.sendall(request[sent:])
        except OSError as error:
            raise _ServerGone from error


def _number(pipe: Any) -> int:
    piece = pipe.read(8)
    if len(piece) < 8:
        raise _ServerGone
    return int.from_bytes(piece, "big", signed=True)


def processors() -> int:
    """How many processors this process may use."""
    if hasattr(os, "sched_getaffinity"):
        return max(1, len(os.sched_getaffinity(0)))
    return os.cpu_count() or 1
