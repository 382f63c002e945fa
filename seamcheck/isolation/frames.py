"""Messages between parent and child: pickles, each behind its length in eight bytes."""

from __future__ import annotations

import os
import pickle
import queue
import threading
from typing import IO, Any, Protocol


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


def _exactly(stream: Readable, count: int) -> bytes:
    pieces = bytearray()
    while len(pieces) < count:
        piece = stream.read(count - len(pieces))
        if not piece:
            raise EOFError
        pieces += piece
    return bytes(pieces)


def messages_from(stream: Readable) -> queue.Queue[Any]:
    """A queue that a thread fills from the stream; None marks its end."""
    messages: queue.Queue[Any] = queue.Queue()

    def fill() -> None:
        try:
            while True:
                messages.put(read_message(stream))
        except Exception:  # the stream ended, or a dying child left half a message
            messages.put(None)

    threading.Thread(target=fill, daemon=True).start()
    return messages


def tail(chatter: IO[bytes], size: int = 20_000) -> str:
    """The last of what a child wrote to its standard error."""
    end = chatter.seek(0, os.SEEK_END)
    chatter.seek(max(0, end - size))
    return chatter.read().decode("utf-8", "replace")
