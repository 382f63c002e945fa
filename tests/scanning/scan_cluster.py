"""A real scheduler with real workers on this machine, each a process of its own."""

from __future__ import annotations

import json
import os
import subprocess
import sys
import time
from contextlib import contextmanager
from pathlib import Path

ROOT = Path(__file__).parents[2]


@contextmanager
def cluster(folder: Path, workers: int = 2, threads: int = 1, preload: Path | None = None, ttl: str = "10s"):
    """Address of a scheduler, and a list of its worker processes; all are ended at the end.

    ttl : after so long without a sign of life a worker counts as lost; a busy machine may need longer
    """
    known = folder / "scheduler.json"
    env = os.environ | {"PYTHONPATH": str(ROOT), "DASK_DISTRIBUTED__SCHEDULER__WORKER_TTL": ttl}
    shared = {"env": env, "cwd": folder, "stdout": subprocess.DEVNULL, "stderr": subprocess.DEVNULL}
    dask = [sys.executable, "-m", "distributed.cli.dask_scheduler", "--host", "127.0.0.1", "--port", "0"]
    started = [subprocess.Popen([*dask, "--no-dashboard", "--scheduler-file", str(known)], **shared)]
    try:
        end = time.monotonic() + 60
        while not known.exists() or not known.read_text().strip():
            assert time.monotonic() < end, "the scheduler does not start"
            time.sleep(0.1)
        address = json.loads(known.read_text())["address"]
        started += [worker(folder, address, threads, preload, shared) for _ in range(workers)]
        yield address, started[1:]
    finally:
        for process in reversed(started):
            process.kill()
            process.wait()


def worker(folder: Path, address: str, threads: int, preload: Path | None, shared: dict) -> subprocess.Popen:
    command = [
        sys.executable, "-m", "distributed.cli.dask_worker", address, "--host", "127.0.0.1", "--nthreads", str(threads),
        "--no-nanny", "--no-dashboard", "--memory-limit", "0", "--local-directory", str(folder),
    ]  # fmt: skip
    if preload is not None:
        command += ["--preload", str(preload)]
    return subprocess.Popen(command, **shared)
