"""What the child of a review loads, and how it loads it in little time."""

from __future__ import annotations

import gc
import os
import sys
from collections.abc import Mapping, Sequence
from contextlib import suppress
from importlib import import_module
from importlib.machinery import ModuleSpec, PathFinder
from types import ModuleType
from typing import TYPE_CHECKING, Any, cast

if TYPE_CHECKING:
    from importlib.abc import Loader

REVIEW_MODULES = (
    "seamcheck.pipeline", "seamcheck.assembly.read", "seamcheck.assembly.explain", "seamcheck.cache.key",
    "seamcheck.cache.measured", "seamcheck.joint.find", "seamcheck.joint.pieces", "seamcheck.contour",
    "seamcheck.measure.called_out", "seamcheck.measure.seam", "seamcheck.measure.interface", "seamcheck.judge.judge",
    "seamcheck.measure.material", "seamcheck.document.make", "numpy.ma",
)  # fmt: skip
"""What every review loads: later it would be loaded anew in each forked child, and a failure be laid to the model."""

_PARTS: Mapping[str, Mapping[str, str]] = {
    "numpy.ma": {},
    "scipy.linalg": {},
    "scipy.spatial": {
        "cKDTree": "_ckdtree", "ConvexHull": "_qhull", "Delaunay": "_qhull", "QhullError": "_qhull",
        "Voronoi": "_qhull",
    },
    "scipy.sparse.linalg": {},
    "scipy.sparse.csgraph": {"connected_components": "_traversal"},
}  # fmt: skip
"""Packages of which a review needs a few names -> the module that holds each."""

_DOUBLE_OF_NUMPY = "scipy._lib.array_api_compat.numpy"


def collect_garbage_rarely() -> None:
    """For a process that reviews one model and ends: full of arrays and of the kernel's types, hardly a cycle in it.

    With Python's own thresholds the collector goes through all that is loaded every few ten thousand boxes: 0.1 s
    each time, a tenth of a review. Importing the kernel alone makes 280 000 objects that stay.
    """
    gc.set_threshold(500_000, 20, 100)


def begin_review_process(forks: bool = False) -> None:
    """For a process that does nothing but review: memory, collector and imports as suit it.

    The addresses of the kernel's functions are looked up when they are called first: of 200 000 a review calls few.

    Parameters
    ----------
    forks : whether it forks others that review: each of them would look up the kernel's addresses anew
    """
    collect_garbage_rarely()
    _keep_freed_memory()
    load_little()
    if not forks and hasattr(sys, "setdlopenflags"):
        sys.setdlopenflags(os.RTLD_LAZY)


def load_little() -> None:
    """From now on load of the libraries what a review needs, and the rest when it is asked for.

    Of numpy come no masked arrays. Of scipy come the few modules that are needed without the packages around them,
    which take 0.2 s. Whoever asks for more of a package gets all of it. Nothing is loaded here.
    """
    if not any(isinstance(finder, _Finder) for finder in sys.meta_path):
        sys.meta_path.insert(0, _Finder())


_M_TRIM_THRESHOLD, _M_MMAP_THRESHOLD = -1, -3  # malloc.h


def _keep_freed_memory() -> None:
    """Have glibc keep what is freed from the start as it does later on: large arrays come and go thousands of times.

    It asks the system for each block of 128 kB and more, and gives it back when it is freed, every page of it touched
    anew; with each such block it raises both bounds by itself, up to these (mallopt(3), DEFAULT_MMAP_THRESHOLD_MAX).
    """
    if sys.platform.startswith("linux"):
        import ctypes

        with suppress(AttributeError, OSError):  # another library than glibc
            ctypes.CDLL(None).mallopt(_M_MMAP_THRESHOLD, 32 << 20)
            ctypes.CDLL(None).mallopt(_M_TRIM_THRESHOLD, 64 << 20)


def give_back_memory() -> None:
    """Give the system what is free by now of the arrays: Python takes its small objects from elsewhere."""
    if sys.platform.startswith("linux"):
        import ctypes

        with suppress(AttributeError, OSError):  # another library than glibc
            ctypes.CDLL(None).malloc_trim(0)


class _Finder:
    """Finds what others find, and has some packages of numpy and scipy loaded by little."""

    def find_spec(
        self, fullname: str, path: Sequence[str] | None, target: ModuleType | None = None
    ) -> ModuleSpec | None:
        if fullname not in _PARTS and fullname != _DOUBLE_OF_NUMPY:
            return None
        spec = PathFinder.find_spec(fullname, path, target)
        if spec is not None and spec.loader is not None:
            spec.loader = cast(Any, _Little(spec.loader))
        return spec


class _Little:
    """Runs a package when it is asked for more than the names in ``_PARTS``; scipy's double of numpy at once."""

    def __init__(self, loader: Loader) -> None:
        self._loader = loader

    def create_module(self, spec: ModuleSpec) -> ModuleType | None:
        return self._loader.create_module(spec)

    def exec_module(self, module: ModuleType) -> None:
        module.__loader__ = self._loader
        if module.__spec__ is not None:
            module.__spec__.loader = self._loader
        if module.__name__ == _DOUBLE_OF_NUMPY:
            _run_double_of_numpy(module, self._loader)
        else:
            module.__class__ = _StandIn


class _StandIn(ModuleType):
    """A package that was not run yet: it gives single names of its modules, and runs when asked for another."""

    def __getattr__(self, name: str) -> Any:
        if self.__name__ == "numpy.ma" and name in ("is_masked", "isMaskedArray"):  # asked by numpy.unique and median
            return _is_masked
        where = _PARTS[self.__name__].get(name)
        if where is not None:
            with suppress(ImportError, AttributeError):  # another version of scipy: then as everybody loads it
                value = getattr(import_module(f"{self.__name__}.{where}"), name)
                setattr(self, name, value)
                return value
        if name.startswith("__") and name != "__all__":  # Python's own questions, such as for __wrapped__
            raise AttributeError(name)
        self.__class__ = ModuleType  # type: ignore[assignment]
        self.__loader__.exec_module(self)  # type: ignore[union-attr]
        return getattr(self, name)


def _is_masked(_: object) -> bool:
    """Whether an array has masked values, as long as ``numpy.ma`` was not run: there are none."""
    return False


def _run_double_of_numpy(module: ModuleType, loader: Loader) -> None:
    """Run the module that copies all names of numpy, of what is loaded of it: else its tests and Fortran are, too."""
    import numpy

    names, listed = numpy.__all__, numpy.__dir__
    loaded = [name for name in names if name in vars(numpy)]
    numpy.__all__, numpy.__dir__ = loaded, lambda: loaded  # type: ignore[method-assign]
    try:
        loader.exec_module(module)
    finally:
        numpy.__all__, numpy.__dir__ = names, listed  # type: ignore[method-assign]
    vars(module).setdefault("__getattr__", lambda name: getattr(numpy, name))
