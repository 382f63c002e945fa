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
