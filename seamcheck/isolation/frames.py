"""Messages between parent and child: pickles, each behind its length in eight bytes.

A child believes its parent. The parent does not believe a child, in which a stranger's model was read: of its pickles
it takes plain values, arrays, and seamcheck's own records and errors. Nothing else is built, above all no call.
"""

from __future__ import annotations

import io
import os
import pickle
import queue
import threading
from typing import IO, Any, Protocol

MOST_BYTES = 1 << 30
"""of one message of a child; the document of 20 000 faces with its pictures takes some 20 MB"""

_PIECE = 1 << 20
_READER_ENDS_S = 1.0  # at once, unless something that the child started still holds its stream
_PLAIN = {
    "builtins": {"complex", "set", "frozenset", "slice", "range", "bytearray"},
    "collections": {"Counter", "OrderedDict", "deque"},
    "datetime": {"date", "datetime", "time", "timedelta", "timezone"},
    "pathlib": {"Path", "PosixPath", "WindowsPath", "PurePosixPath", "PureWindowsPath"},
    "pathlib._local": {"Path", "PosixPath", "WindowsPath", "PurePosixPath", "PureWindowsPath"},
    "msgspec": {"UNSET"},
    "msgspec._core": {"UNSET"},
    "msgspec._utils": {"rebuild"},
    "numpy": {"ndarray", "dtype"},
    "numpy.core.multiarray": {"_reconstruct", "scalar"},
    "numpy._core.multiarray": {"_reconstruct", "scalar"},
    "numpy.core.numeric": {"_frombuffer"},
    "numpy._core.numeric": {"_frombuffer"},
}
"""Beside seamcheck's own: what plain values and arrays are pickled with."""


class NotTaken(Exception):
    """A child sent what is no plain value."""


class Readable(Protocol):
    """Gives bytes; fewer than asked for at its end."""

    def read(self, size: int, /) -> bytes: ...


class Writable(Protocol):
    """Takes bytes."""

    def write(self, data: bytes, /) -> Any: ...

    def flush(self) -> Any: ...


def write_message(stream: Writable, message: Any) -> None:
    """Write one message, its length first."""
    body = pickle.dumps(message, protocol=pickle.HIGHEST_PROTOCOL)
    stream.write(len(body).to_bytes(8, "big") + body)
    stream.flush()


def read_message(stream: Readable) -> Any:
    """The next message; raises EOFError when the other side is gone."""
    length = int.from_bytes(_exactly(stream, 8), "big")
    return pickle.loads(_exactly(stream, length))


def read_answer(stream: Readable) -> Any:
    """The next message of a child; raises NotTaken for one that holds more than values, or is too large."""
    length = int.from_bytes(_exactly(stream, 8), "big")
    if length > MOST_BYTES:
        raise NotTaken(f"an answer of {length / 1e6:.0f} MB")
    return _Values(io.BytesIO(_exactly(stream, length))).load()


class _Values(pickle.Unpickler):
    def find_class(self, module: str, name: str) -> Any:
        if "." not in name and name in _PLAIN.get(module, ()):
            return super().find_class(module, name)
        if "." not in name and module.startswith("seamcheck.") and not module.endswith("__main__"):
            found = super().find_class(module, name)
            if isinstance(found, type) and found.__module__ == module and _is_record(found):
                return found
        raise NotTaken(f"{module}.{name}"[:200])


def _is_record(kind: type) -> bool:
    """Whether objects of a class only hold values: errors, sentences, records."""
    return issubclass(kind, Exception | str) or hasattr(kind, "__struct_fields__")


def _exactly(stream: Readable, count: int) -> bytes:
    pieces = bytearray()
    while len(pieces) < count:
        piece = stream.read(min(count - len(pieces), _PIECE))
        if not piece:
            raise EOFError
        pieces += piece
    return bytes(pieces)


class Messages(queue.Queue[Any]):
    """What a child writes, read by a thread of its own; None marks the end."""

    def __init__(self, stream: Readable) -> None:
        super().__init__()
        self._stream = stream
        self._reader = threading.Thread(target=self._fill, daemon=True)
        self._reader.start()

    def join_reader(self) -> None:
        """Wait for the thread that reads; the child must have ended."""
        self._reader.join(_READER_ENDS_S)

    def _fill(self) -> None:
        try:
            while True:
                self.put(read_answer(self._stream))
        except NotTaken as why:
            self.put(("unexpected", "NotTaken", f"its process sent {why}", ""))
        except Exception:  # the stream ended, or a dying child left half a message
            self.put(None)


def tail(chatter: IO[bytes], size: int = 20_000) -> str:
    """The last of what a child wrote to its standard error."""
    end = chatter.seek(0, os.SEEK_END)
    chatter.seek(max(0, end - size))
    return chatter.read().decode("utf-8", "replace")
