"""Functions that the tests run in a child."""

import ctypes
import os
import signal
import sys
import time

from seamcheck.errors import NotReviewed, UsageError


def add(a, b, progress):
    progress("reading")
    progress("measuring", 0.5)
    print("chatter")
    os.write(1, b"more chatter\n")
    return a + b


def crash(progress):
    progress("transferring")
    ctypes.string_at(0)


def remark_and_crash(progress):
    progress.remark("'lid' is cracked.")
    progress.remark("Something else is odd.")
    crash(progress)


def costs_and_hog(progress):
    progress.costs("the model has 107 bodies.")
    hog(progress)


def remark_and_sleep(progress):
    progress.remark("'lid' is cracked.")
    sleep(600, progress)


def sleep(seconds, progress):
    progress("finding")
    time.sleep(seconds)


def hog(progress):
    progress("measuring")
    kept = []
    while True:
        kept.append(bytearray(b"x" * 10_000_000))
        time.sleep(0.002)


def threads_that_numpy_starts():
    before = len(os.listdir("/proc/self/task"))
    import numpy as np

    np.ones((300, 300)) @ np.ones((300, 300))
    return len(os.listdir("/proc/self/task")) - before


def refuse():
    raise NotReviewed("empty", "Nothing in it.")


def misuse():
    raise UsageError("wrong option")


def stumble(progress):
    progress("reading")
    raise KeyError("a surprise")


def who(note=None):
    if note is not None:
        with open(note, "w") as file:
            file.write(str(os.getpid()))
    return os.getpid()


def who_and_sleep(note):
    who(note)
    time.sleep(600)


def untravelled(progress):
    progress("reading")
    return lambda: None


def leave(progress):
    progress("reading")
    os._exit(3)


def what_it_has():
    """Open files beyond the standard streams, the path, PYTHONPATH, the parent."""
    files = [int(fd) for fd in os.listdir("/proc/self/fd")]
    names = [os.readlink(f"/proc/self/fd/{fd}") for fd in files if os.path.lexists(f"/proc/self/fd/{fd}")]
    return {
        "files": [name for name in names if name.endswith(".txt")],
        "path": sys.path,
        "PYTHONPATH": os.environ.get("PYTHONPATH"),
        "parent": os.getppid(),
        "kept": "kept_by_the_parent" in sys.modules,
    }


def double(number):
    return 2 * number


def killed(progress):
    progress("reading")
    os.kill(os.getpid(), signal.SIGKILL)


def crash_at_once():
    ctypes.string_at(0)


def sleep_at_once():
    time.sleep(30)


def leave_at_once():
    os._exit(3)
