"""Messages between parent and child: pickles, each behind its length in eight bytes."""

from __future__ import annotations

import pickle
from typing import Any, BinaryIO


def write_message(stream: BinaryIO, message: Any) -> None:
    body = pickle.dumps(message, protocol=pickle.HIGHEST_PROTOCOL)
    stream.write(len(body).to_bytes(8, "big") + body)
    stream.flush()


def read_message(stream: BinaryIO) -> Any:
    """The next message; raises EOFError when the other side is gone."""
    length = int.from_bytes(_exactly(stream, 8), "big")
    return pickle.loads(_exactly(stream, length))


def _exactly(stream: BinaryIO, count: int) -> bytes:
    pieces = bytearray()
    while len(pieces) < count:
        piece = stream.read(count - len(pieces))
        if not piece:
            raise EOFError
        pieces += piece
    return bytes(pieces)
