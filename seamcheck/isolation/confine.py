"""What Linux takes from a child that reads a stranger's model: writing outside of given folders, programs, network.

Two means that need no rights: Landlock (Linux 5.13 and newer, where it is switched on) for files, seccomp for sockets.
Where one is missing the child runs without it; ``in_force`` says which there are. Other systems have the limits of time
and memory alone.

Sources: landlock(7) and seccomp(2) of the Linux man-pages; numbers of linux/landlock.h, linux/seccomp.h, linux/audit.h.
"""

from __future__ import annotations

import ctypes
import os
import platform
import struct
import sys
from collections.abc import Sequence
from contextlib import suppress

_CREATE_RULESET, _ADD_RULE, _RESTRICT_SELF = 444, 445, 446
_ASK_VERSION = 1
_EXECUTE, _WRITE_FILE, _TRUNCATE = 1 << 0, 1 << 1, 1 << 14
_CHANGES = sum(1 << n for n in range(4, 13))  # remove and make files, folders, links, pipes, devices, sockets
_PR_SET_NO_NEW_PRIVS, _PR_SET_SECCOMP, _FILTER = 38, 22, 2

_MACHINES = {"x86_64": (0xC000003E, 41), "aarch64": (0xC00000B7, 198)}  # audit architecture, number of socket(2)
_IO_URING_SETUP = 425
_AF_INET, _AF_INET6 = 2, 10
_LOAD, _EQUAL, _RETURN = 0x20, 0x15, 0x06  # BPF: word at an offset, jump if equal, return
_ALLOW, _DENY = 0x7FFF0000, 0x00050000 | 1  # the latter: fails with EPERM


def confine(writable: Sequence[str]) -> None:
    """Confine this thread and all that it starts; it may still write below some folders, which must exist."""
    if not sys.platform.startswith("linux"):
        return
    libc = ctypes.CDLL(None, use_errno=True)
    libc.prctl(_PR_SET_NO_NEW_PRIVS, 1, 0, 0, 0)
    with suppress(OSError, ValueError, AttributeError):
        _keep_files(libc, [*writable, os.devnull])
    with suppress(OSError, ValueError, AttributeError):
        _keep_network(libc)


def in_force() -> str:
    """What a child is confined by on this machine, as a sentence."""
    limits = "A child that reads a model has limits of time and memory"
    if not sys.platform.startswith("linux"):
        return f"{limits}; this system gives no more."
    files = _landlock_version(ctypes.CDLL(None, use_errno=True)) >= 1
    network = platform.machine() in _MACHINES
    said = ["can write and start nothing outside of its cache folder (Landlock)"] if files else []
    said += ["has no network (seccomp)"] if network else []
    missing = ([] if files else ["Landlock is missing"]) + ([] if network else ["seccomp is not used on this machine"])
    return "; ".join([", ".join([limits, *said]), *missing]) + "."


def _landlock_version(libc: ctypes.CDLL) -> int:
    return int(libc.syscall(_CREATE_RULESET, None, ctypes.c_size_t(0), ctypes.c_uint32(_ASK_VERSION)))


def _keep_files(libc: ctypes.CDLL, writable: Sequence[str]) -> None:
    version = _landlock_version(libc)
    if version < 1:
        return
    change = _WRITE_FILE | _CHANGES | (_TRUNCATE if version >= 3 else 0)
    handled = struct.pack("Q", change | _EXECUTE)
    rules = libc.syscall(_CREATE_RULESET, handled, ctypes.c_size_t(len(handled)), ctypes.c_uint32(0))
    if rules < 0:
        return
    try:
        for place in writable:
            with suppress(OSError):
                handle = os.open(place, os.O_PATH | os.O_CLOEXEC)
                try:
                    allowed = change if os.path.isdir(place) else change & ~_CHANGES
                    rule = struct.pack("=Qi", allowed, handle)
                    libc.syscall(_ADD_RULE, rules, 1, rule, ctypes.c_uint32(0))
                finally:
                    os.close(handle)
        libc.syscall(_RESTRICT_SELF, rules, ctypes.c_uint32(0))
    finally:
        os.close(rules)


def _keep_network(libc: ctypes.CDLL) -> None:
    if platform.machine() not in _MACHINES:
        return
    audit, socket = _MACHINES[platform.machine()]
    program = [  # struct seccomp_data: number at 0, architecture at 4, first argument at 16
        (_LOAD, 0, 0, 4),
        (_EQUAL, 0, 8, audit),  # another architecture: allowed
        (_LOAD, 0, 0, 0),
        (_EQUAL, 5, 0, _IO_URING_SETUP),
        (_EQUAL, 0, 5, socket),
        (_LOAD, 0, 0, 16),
        (_EQUAL, 2, 0, _AF_INET),
        (_EQUAL, 1, 0, _AF_INET6),
        (_RETURN, 0, 0, _ALLOW),
        (_RETURN, 0, 0, _DENY),
        (_RETURN, 0, 0, _ALLOW),
    ]
    code = b"".join(struct.pack("HBBI", *step) for step in program)
    buffer = ctypes.create_string_buffer(code, len(code))
    whole = struct.pack("HxxxxxxP", len(program), ctypes.addressof(buffer))
    libc.prctl(_PR_SET_SECCOMP, _FILTER, whole, 0, 0)
