"""The first lines of a child process, run as a file by ``imports.child_command``; nothing imports this module.

sys.argv: the folder of seamcheck, folders of libraries, 'module:function' to run, its own arguments.
"""

import os
import sys
from importlib import import_module
from importlib.machinery import PathFinder
from importlib.util import module_from_spec


def start(home: str, folders: str, main: str) -> None:
    """Load the seamcheck of one folder without having other modules of that folder found, and run a function of it."""
    sys.path += [folder for folder in folders.split(os.pathsep) if folder and folder not in sys.path]
    spec = PathFinder.find_spec("seamcheck", [home])
    if spec is None or spec.loader is None:
        sys.exit(f"There is no seamcheck in {home}.")
    package = sys.modules["seamcheck"] = module_from_spec(spec)
    spec.loader.exec_module(package)
    module, _, function = main.partition(":")
    getattr(import_module(module), function)()


if __name__ == "__main__":
    arguments = sys.argv[1:4]
    sys.argv[1:4] = []
    start(*arguments)
