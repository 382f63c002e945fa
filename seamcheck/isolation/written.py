"""Files that a child wrote, taken over by its parent: a child in which a stranger's model was read is not believed."""

from __future__ import annotations

import os
import stat
from pathlib import Path

from seamcheck.catalogue.say import refused
from seamcheck.isolation.frames import MOST_BYTES

_PLAIN = sum(getattr(os, name, 0) for name in ("O_NOFOLLOW", "O_NONBLOCK", "O_BINARY"))


def written_by_child(file: Path) -> bytes:
    """The bytes of a plain file in a folder that a child could write to, after its end.

    A link could lead to a file of the user's, a pipe would wait for ever, a device never ends.

    Raises
    ------
    NotReviewed : 'crashed'; it is no plain file, larger than ``MOST_BYTES``, or can't be read
    """
    try:
        handle = os.open(file, os.O_RDONLY | _PLAIN)
        with os.fdopen(handle, "rb") as stream:
            facts = os.fstat(handle)
            if stat.S_ISREG(facts.st_mode) and facts.st_size <= MOST_BYTES:
                return stream.read(MOST_BYTES)
            why = "it is no plain file, or too large"
    except OSError as error:
        why = str(error.strerror or error)
    raise refused("crashed", "crashed.error", stage="writing", error=f"{file.name}: {why}")
