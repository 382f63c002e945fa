"""Reviews on the workers of a Dask scheduler (the optional extra ``cluster``).

Each worker runs its jobs as a local scan does: in limited children, forked from a warm process of its own. Every
job is given to one certain worker; if that is lost, the job comes back as Lost and the scan decides about a
second try. So a model that ends its worker ends two workers at most, whatever the scheduler's own settings are.
"""

from __future__ import annotations

import threading
from collections import deque
from collections.abc import Callable
from concurrent.futures import Future
from contextlib import suppress
from pathlib import Path
from typing import Any

from msgspec import Struct
from msgspec.structs import replace

from seamcheck.errors import SeamcheckError, UsageError
from seamcheck.isolation import WarmWorkers
from seamcheck.scanning.errors import Lost, ScanStopped
from seamcheck.scanning.job import PRELOAD, Job, Outcome, attempt
from seamcheck.version import __version__

LOOK_EVERY_S = 0.5
CONNECT_S = 20.0
MOST_FAILURES = 40  # in a row
NO_WORKER_S = 120.0
"""So long a scan waits for a worker when there is none left."""


class _Running(Struct):
    answer: Future[Outcome]
    worker: str
    remote: Any


class ClusterWorkers:
    """The workers of a cluster; those that come and go are followed.

    Parameters
    ----------
    address : of the scheduler, such as 'tcp://10.0.0.5:8786', or 'tls://...' as Dask's own settings allow
    shared : the workers see the files under the same paths; else jobs carry the files' bytes
    tell : gets a sentence now and then

    Raises
    ------
    UsageError : distributed is not installed, there is no scheduler, or its workers have another seamcheck
    """

    def __init__(self, address: str, shared: bool, tell: Callable[[str], None] = lambda sentence: None) -> None:
        self.sends_bytes, self._address, self._tell = not shared, address, tell
        self._client = _connect(address)
        self._lock = threading.Lock()
        self._queue: deque[tuple[Job, Future[Outcome]]] = deque()
        self._running: dict[int, _Running] = {}
        self._threads: dict[str, int] = {}  # worker -> jobs at a time
        self._unfit: dict[str, str] = {}  # worker -> why it gets no job
        self._without_since: float | None = None
        self._closed = threading.Event()
        self._changed = threading.Event()
        try:
            self._look_for_workers()
            if not self._threads and self._unfit:
                raise UsageError(next(iter(self._unfit.values())))
        except BaseException:
            self._client.close()
            raise
        self._minder = threading.Thread(target=self._watch, name="seamcheck-cluster", daemon=True)
        self._minder.start()

    @property
    def count(self) -> int:
        return max(1, sum(self._threads.values()))

    def submit(self, job: Job) -> Future[Outcome]:
        answer: Future[Outcome] = Future()
        if not self.sends_bytes:  # a worker runs in a folder of its own
            job = replace(job, files=tuple(replace(f, place=str(Path(f.place).resolve())) for f in job.files))
        with self._lock:
            self._queue.append((job, answer))
        self._changed.set()
        return answer

    def close(self) -> None:
        """Cancel what runs and leave the cluster as it was."""
        if self._closed.is_set():
            return
        self._closed.set()
        self._changed.set()
        self._minder.join(timeout=10)
        with suppress(Exception):
            self._client.cancel([entry.remote for entry in self._running.values()], force=True)
        with suppress(Exception):
            self._client.close(timeout=5)

    # The minder's thread: looks who is there, gives out jobs, and takes back those of lost workers

    def _watch(self) -> None:
        failures = 0
        while not self._closed.is_set():
            try:
                self._look_for_workers()
                self._reclaim()
                self._assign()
                failures = 0
            except Exception as why:  # a worker may go away while it is asked
                failures += 1
                if self._client.status != "running" or failures > MOST_FAILURES:
                    self._fail_all(f"The cluster at {self._address} does not answer any more ({why}).")
            self._changed.wait(LOOK_EVERY_S)
            self._changed.clear()

    def _look_for_workers(self) -> None:
        import time

        known = self._client.scheduler_info(n_workers=-1)["workers"]
        new = [worker for worker in known if worker not in self._threads and worker not in self._unfit]
        if new:
            versions = self._client.run(worker_version, workers=new, on_error="return")
            for worker in new:
                version = versions.get(worker)
                if version == __version__:
                    self._threads[worker] = int(known[worker]["nthreads"])
                else:
                    has = f"seamcheck {version}" if isinstance(version, str) else "no seamcheck"
                    self._unfit[worker] = (
                        f"Worker {worker} has {has}; this scan needs {__version__}. Install the same version there."
                    )
        self._threads = {worker: n for worker, n in self._threads.items() if worker in known}
        if self._threads:
            self._without_since = None
        elif self._without_since is None:
            self._without_since = time.monotonic()
        elif time.monotonic() - self._without_since > NO_WORKER_S:
            self._fail_all(f"The cluster at {self._address} has had no usable worker for {NO_WORKER_S:.0f} s.")

    def _reclaim(self) -> None:
        for number, entry in list(self._running.items()):
            if entry.worker not in self._threads and not entry.remote.done():
                self._end(number)
                with suppress(Exception):
                    self._client.cancel([entry.remote], force=True)
                entry.answer.set_exception(_lost(entry.worker))

    def _assign(self) -> None:
        while True:
            busy = dict.fromkeys(self._threads, 0)
            with self._lock:
                for entry in self._running.values():
                    if entry.worker in busy:
                        busy[entry.worker] += 1
                free = [worker for worker, n in busy.items() if n < self._threads[worker]]
                if not free or not self._queue:
                    return
                worker = min(free, key=lambda name: busy[name] / self._threads[name])
                job, answer = self._queue.popleft()
            if not answer.set_running_or_notify_cancel():
                continue
            remote = self._client.submit(
                on_worker, job, self.sends_bytes, workers=[worker], allow_other_workers=False, pure=False, retries=0
            )
            number = id(remote)
            with self._lock:
                self._running[number] = _Running(answer, worker, remote)
            remote.add_done_callback(lambda done, number=number: self._finished(number))

    def _finished(self, number: int) -> None:
        entry = self._end(number)
        if entry is None or self._closed.is_set():
            return
        remote = entry.remote
        try:
            value = remote.result(timeout=60) if remote.status == "finished" else None
        except Exception:  # the worker went away between its end and our asking
            value = None
        if isinstance(value, Outcome):
            entry.answer.set_result(value)
        else:
            entry.answer.set_exception(value or _lost(entry.worker))
        remote.release()
        self._changed.set()

    def _end(self, number: int) -> _Running | None:
        with self._lock:
            return self._running.pop(number, None)

    def _fail_all(self, sentence: str) -> None:
        stopped = ScanStopped(f"{sentence} What was reviewed so far is kept; the same command resumes there.")
        with self._lock:
            answers = [answer for _, answer in self._queue] + [entry.answer for entry in self._running.values()]
            self._queue.clear()
            self._running.clear()
        for answer in answers:
            if not answer.done():
                answer.set_exception(stopped)


def _connect(address: str) -> Any:
    try:
        from distributed import Client
    except ImportError:
        raise UsageError(
            "--cluster needs the library distributed; install seamcheck with its extra: pip install -e '.[cluster]'"
        ) from None
    try:
        return Client(address, timeout=CONNECT_S, set_as_default=False)
    except (OSError, ValueError) as why:
        raise UsageError(
            f"No scheduler answers at {address} ({type(why).__name__}). Start one with `dask scheduler`, and workers "
            "with `dask worker ADDRESS`."
        ) from None


def _lost(worker: str) -> Lost:
    return Lost(
        "crashed",
        f"The worker that reviewed it was lost twice, last {worker}. Scan again, or review it alone to see more.",
    )


# What runs on the worker

_warm_lock = threading.Lock()
_warm: WarmWorkers | None = None


def worker_version() -> str:
    """The version of seamcheck on a worker."""
    return __version__


def on_worker(job: Job, carries_bytes: bool) -> Outcome | SeamcheckError:
    """Review one model on a worker, in a child of its own.

    Errors come back as values, not raised: Lost where the child was ended from outside, UsageError where the
    worker does not see the file, ScanStopped with what else went wrong.
    """
    try:
        return _review(job, carries_bytes)
    except SeamcheckError as error:
        return error
    except Exception as error:
        import traceback

        where = traceback.format_exc(limit=-1).strip().replace("\n", " ")
        return ScanStopped(f"A worker of the cluster can't review: {type(error).__name__}: {error} ({where}).")


def _review(job: Job, carries_bytes: bool) -> Outcome:
    if not carries_bytes:
        for file in job.files:
            if not Path(file.place).exists():
                raise UsageError(
                    f"A worker does not see {file.place}. Leave out --shared to have the files sent, or mount the "
                    "folder there under the same path."
                )
    return attempt(_warm_workers(), job)


def _warm_workers() -> WarmWorkers:
    """The warm process of this worker, started with its first job; the worker's threads bound how many run."""
    global _warm
    with _warm_lock:
        if _warm is None:
            _warm = WarmWorkers(1, preload=PRELOAD)
        return _warm
