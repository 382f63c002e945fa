"""Who does the reviews. A scan hands out jobs and takes outcomes; where they run is all the same to it."""

from __future__ import annotations

from concurrent.futures import Future, ThreadPoolExecutor
from typing import Protocol

from seamcheck.isolation import WarmWorkers
from seamcheck.isolation.warm import processors
from seamcheck.scanning.job import PRELOAD, Job, Outcome, attempt


class Workers(Protocol):
    """Runs jobs; like an executor of concurrent.futures.

    Attributes
    ----------
    count : jobs at a time; may change while workers come and go
    sends_bytes : whether jobs must carry the bytes of their files

    Notes
    -----
    A future gives an Outcome, also where the model crashed its child or ran out of time or memory. It raises
    Lost where the child or the worker was ended from outside, and another SeamcheckError where no job could run.
    """

    sends_bytes: bool

    @property
    def count(self) -> int: ...

    def submit(self, job: Job) -> Future[Outcome]: ...

    def close(self) -> None: ...


class LocalWorkers:
    """The processors of this machine, each job in a limited child forked from a warm process."""

    sends_bytes = False

    def __init__(self, count: int | None = None) -> None:
        self.count = count or processors()
        self._warm = WarmWorkers(self.count, preload=PRELOAD)
        self._threads = ThreadPoolExecutor(self.count, thread_name_prefix="seamcheck-scan")

    def submit(self, job: Job) -> Future[Outcome]:
        return self._threads.submit(attempt, self._warm, job)

    def close(self) -> None:
        """End all children; jobs that run are lost, waiting ones cancelled."""
        self._threads.shutdown(wait=False, cancel_futures=True)
        self._warm.close()
        self._threads.shutdown(wait=True)
