"""What a hostile model's process would try."""

import os
import socket
import subprocess


def write(path):
    try:
        with open(path, "w") as file:
            file.write("x")
    except OSError as why:
        return type(why).__name__
    return "written"


def connect(family):
    try:
        socket.socket(family, socket.SOCK_STREAM).close()
    except OSError as why:
        return type(why).__name__
    return "a socket"


def start():
    try:
        return subprocess.run(["/bin/true"], check=False).returncode
    except OSError as why:
        return type(why).__name__


def remove(path):
    try:
        os.unlink(path)
    except OSError as why:
        return type(why).__name__
    return "removed"


class Call:
    """Built anew, it calls what it was told."""

    def __init__(self, function, *args):
        self.function, self.args = function, args

    def __reduce__(self):
        return self.function, self.args


def answer_with_a_call(path):
    return {"verdict": "pass", "hidden": [Call(os.mkdir, path)]}


def answer_with_a_worker():
    """A class of seamcheck's own that starts a process when it is built."""
    from seamcheck.isolation import WarmWorkers

    return Call(WarmWorkers, 1)


def raise_a_call(path):
    from seamcheck.errors import NotReviewed

    error = NotReviewed("unreadable", "No.")
    error.note = Call(os.mkdir, path)
    raise error


def answer_without_end():
    """Claim an answer of a terabyte, in every pipe and socket that there is."""
    import stat

    for handle in range(3, 64):
        try:
            kind = os.fstat(handle).st_mode
            if stat.S_ISSOCK(kind) or stat.S_ISFIFO(kind):
                os.set_blocking(handle, False)
                os.write(handle, (10**12).to_bytes(8, "big") + b"x" * 1000)
        except OSError:
            continue
    os._exit(0)


def not_installed(progress):
    """A module is gone when the model is half read, as when seamcheck is updated during a scan."""
    progress("finding")
    import seamcheck.no_such_module  # noqa: F401


def values():
    """What real answers hold."""
    from collections import Counter
    from pathlib import Path

    import numpy as np

    from seamcheck.assembly.source import Given
    from seamcheck.catalogue.message import Amount, Message, Sentence
    from seamcheck.proposal.records import Bound

    said = Sentence.of(Message("a-key", {"value": Amount(1.5, "mm", 2)}, "Text."))
    bound = Bound(rule="a", quantity="b", value=1.0, bound=2.0, share=0.5)
    return {
        "array": np.arange(6.0).reshape(2, 3), "cut": np.arange(9)[::2], "number": np.float64(2.5), "set": {1, 2},
        "path": Path("a/b"), "words": np.array(["a", "b"]), "record": bound, "said": said,
        "given": Given("n", b"x"), "count": Counter("aab"), "kind": np.dtype("<f4"),
    }  # fmt: skip
