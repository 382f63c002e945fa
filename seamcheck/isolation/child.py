"""The child's side: take one job from standard input, run it, report on the former standard output."""

from __future__ import annotations

import ctypes
import faulthandler
import importlib
import inspect
import os
import signal
import sys
import threading
import traceback
from typing import Any, BinaryIO

from seamcheck.errors import SeamcheckError
from seamcheck.isolation.confine import confine
from seamcheck.isolation.frames import Readable, Writable, read_message, write_message
from seamcheck.isolation.loading import begin_review_process

EXTRA_TIME_S = 5.0  # the parent ends the child at its limit; without a parent it ends itself this much later
_PR_SET_PDEATHSIG = 1  # linux/prctl.h


def main() -> None:
    """Entry of a child process, fresh or forked."""
    answers = _keep_stdout_clean()
    faulthandler.enable()
    begin_review_process()
    if hasattr(signal, "SIGINT"):
        signal.signal(signal.SIGINT, signal.SIG_IGN)  # the parent ends the child on Ctrl-C
    stream = os.fdopen(0, "rb", closefd=False)  # sys.stdin of a fork is its parent's
    job = read_message(stream)
    end_with_parent(job["parent"])
    if job["writable"] is not None:
        confine(job["writable"])
    if job["time_limit_s"]:
        faulthandler.dump_traceback_later(job["time_limit_s"] + EXTRA_TIME_S, exit=True)
    threading.Thread(target=_end_when_closed, args=(stream,), daemon=True).start()
    run_job(job["function"], job["args"], answers)
    os._exit(0)  # nothing of the kernel is worth a crash while it is torn down


def run_job(function: str, args: tuple[Any, ...], answers: Writable) -> None:
    """Run ``module:name`` and write ('result', value), or ('error', exception) when it raises."""

    try:
        module, _, name = function.partition(":")
        call = getattr(importlib.import_module(module), name)
        takes_progress = "progress" in inspect.signature(call).parameters
        options = {"progress": Progress(answers)} if takes_progress else {}
        answer = ("result", call(*args, **options))
        write_message(answers, answer)
    except SeamcheckError as error:
        error.traceback = traceback.format_exc()  # type: ignore[attr-defined]
        write_message(answers, ("error", error))
    except MemoryError:
        write_message(answers, ("memory", traceback.format_exc()))
    except BaseException as error:  # whatever it is, the parent gets to know it
        write_message(answers, ("unexpected", type(error).__name__, str(error), traceback.format_exc()))


class Progress:
    """What a job calls with the name of each stage as it begins."""

    def __init__(self, answers: Writable) -> None:
        self._answers = answers

    def __call__(self, *stage: Any) -> None:
        write_message(self._answers, ("progress", stage))

    def remark(self, sentence: str) -> None:
        """Leave a sentence about the model that explains it if this process comes to a bad end."""
        write_message(self._answers, ("remark", sentence))

    def costs(self, sentence: str) -> None:
        """Leave a sentence that says what takes long or much memory, should this process reach a limit."""
        write_message(self._answers, ("costs", sentence))


def end_with_parent(parent: int) -> None:
    """Have the system end this process when its parent dies (Linux; elsewhere a thread watches for it)."""
    if sys.platform.startswith("linux"):
        ctypes.CDLL(None).prctl(_PR_SET_PDEATHSIG, signal.SIGKILL)
        if os.getppid() != parent:  # it died before
            os._exit(1)


def _keep_stdout_clean() -> BinaryIO:
    """Move standard output to a stream of our own; what others print goes to standard error instead."""
    answers = os.fdopen(os.dup(1), "wb")
    os.dup2(2, 1)
    return answers


def _end_when_closed(stream: Readable) -> None:
    """End this process when the parent's end of the pipe closes."""
    while stream.read(1):
        pass
    os._exit(1)
