"""Reading one table of settings as it was written: every value is taken here, every fault knows its place."""

from __future__ import annotations

import math
from collections.abc import Callable, Iterable, Iterator, Mapping
from contextlib import contextmanager
from typing import Any, TypeVar

from msgspec import Struct
from msgspec.structs import replace

from seamcheck.catalogue.former import FORMER_QUANTITIES, FORMER_RULES, FORMER_RULES_UNTIL
from seamcheck.catalogue.known import Known
from seamcheck.catalogue.readable import readable
from seamcheck.catalogue.setting import Setting
from seamcheck.catalogue.units import in_unit, other_reading, shown
from seamcheck.errors import UsageError

T = TypeVar("T")
Path = tuple[str, ...]


class SettingFault(UsageError):
    """A setting that can't be taken; ``path`` leads to it in the file."""

    def __init__(self, path: Path, sentence: str) -> None:
        super().__init__(path, sentence)  # the same arguments: it survives pickling
        self.path, self.sentence = path, sentence

    def __str__(self) -> str:
        return self.sentence if self.sentence.endswith((".", "?")) else f"{self.sentence}."


@contextmanager
def blamed_on(path: Path, names: Iterable[str] = ()) -> Iterator[None]:
    """Errors from within become faults of this path, or of that of ``names`` below it which their sentence names."""
    try:
        yield
    except SettingFault:
        raise
    except UsageError as why:
        below = [name for name in names if name in str(why)]
        raise SettingFault((*path, *below[:1]), str(why)) from None


class Table(Struct, frozen=True):
    """A table of the settings and where it stands: ``path`` leads to it, ``name`` is what people are told."""

    values: Mapping[str, Any]
    path: Path
    name: str

    @classmethod
    def of(cls, written: object, path: Path, example: str = "") -> Table:
        """The table at a path; a fault where something else stands there."""
        if not isinstance(written, Mapping):
            such = f" of entries, such as {example}" if example else ""
            raise SettingFault(path, f"{'.'.join(path)} must be a table{such}; got {written!r}")
        return cls(written, path, ".".join(path))

    def only(self, valid: Iterable[str], kind: str = "entry") -> None:
        """A fault at the first key that is not valid."""
        valid = tuple(valid)
        for key in self.values:
            if key not in valid:
                where = f"in [{self.name}]" if self.name and kind == "entry" else ""
                raise SettingFault((*self.path, key), unknown(str(key), valid, kind, where))

    def table(self, key: str, name: str | None = None) -> Table:
        """The table below a key; an empty one where nothing stands there."""
        found = Table.of(self.values.get(key, {}), (*self.path, key))
        return found if name is None else replace(found, name=name)

    def at(self, key: str, take: Callable[..., T], *more: Any) -> T:
        """What ``take(name, written, *more)`` makes of an entry; its errors are faults of this place."""
        with blamed_on((*self.path, key)):
            return take(f"{self.name}.{key}".lstrip("."), self.values[key], *more)

    def maybe(self, key: str, otherwise: T, take: Callable[..., T], *more: Any) -> T:
        """The same; ``otherwise`` where nothing is written."""
        return otherwise if self.values.get(key) is None else self.at(key, take, *more)

    def number(self, setting: Setting) -> Any:
        """The value of a setting, in its unit; its default, which may be None, where nothing is written."""
        return self.maybe(setting.name, setting.default, number, setting)


def number(name: str, written: Any, setting: Setting) -> float:
    """The number in the unit of its setting; ``name`` stands in what is said of one that can't be taken."""
    try:
        value = in_unit(written, setting.unit)
    except ValueError as why:
        raise UsageError(f"{name} {why}.") from None
    check(name, value, setting, isinstance(written, str))
    return value


def check(name: str, value: float, setting: Setting, has_unit: bool = True) -> None:
    """UsageError where a value lies outside of what its setting can take."""
    least, most, unit = setting.least, setting.most, setting.unit
    if least <= value <= most:
        return
    said = f"at least {_shown(least, unit)}"
    if math.isfinite(most):
        said = f"between {_shown(least, unit)} and {_shown(most, unit)}"
    hint = "" if has_unit else other_reading(value, unit, least, most)
    raise UsageError(f"{name} must be {said}; got {_shown(value, unit)}.{hint}")


def _shown(value: float, unit: str) -> str:
    return shown(value, unit) if abs(value) < 1e4 else f"{value:g} {unit}"


def known(name: str, written: Any, setting: Setting) -> Known:
    """A number that the user gave, or [value, low, high] where the setting has a range."""
    if not isinstance(written, list | tuple) or not setting.has_range:
        value = number(name, written, setting)
        return Known(value, setting.unit, "given")
    if len(written) != 3:
        raise UsageError(f"{name} is a number, or [value, low, high]; got {written!r}.")
    value, low, high = (number(name, part, setting) for part in written)
    if not low <= value <= high:
        raise UsageError(f"{name} is [value, low, high] with low <= value <= high; got {written!r}.")
    return Known(value, setting.unit, "given", "", low, high)


def point(name: str, written: Any) -> tuple[float, float, float]:
    """Three coordinates in mm, as a list or as text with commas."""
    parts = written.strip("[] ").split(",") if isinstance(written, str) else written
    try:
        x, y, z = (in_unit(part.strip() if isinstance(part, str) else part, "mm") for part in parts)
    except (TypeError, ValueError):
        raise UsageError(f"{name} must be three coordinates [x, y, z]; got {written!r}.") from None
    return x, y, z


def flag(name: str, written: Any) -> bool:
    """True or false, as text too."""
    value = {"true": True, "false": False}.get(written.lower(), written) if isinstance(written, str) else written
    if not isinstance(value, bool):
        raise UsageError(f"{name} must be true or false; got {written!r}.")
    return value


def text(name: str, written: Any, what: str = "the name or id of a part") -> str:
    """Text that is not empty; what is unseen in it, line breaks aside, is spelled out."""
    if not isinstance(written, str) or not written.strip():
        raise UsageError(f"{name} must be {what}; got {written!r}.")
    return "\n".join(readable(line.replace("\t", " ")) for line in written.replace("\r\n", "\n").split("\n"))


def choice(name: str, written: Any, valid: tuple[str, ...]) -> str:
    """One of a few words."""
    if written in valid:
        return str(written)
    near = nearest(str(written), valid)
    hint = f" Did you mean {near!r}?" if near else ""
    raise UsageError(f"{name} must be one of {', '.join(valid)}; got {written!r}.{hint}")


def direction(name: str, written: Any) -> tuple[float, float, float]:
    """(3,) from '-z', 'x,y,z' or three numbers."""
    axes = {"x": (1.0, 0.0, 0.0), "y": (0.0, 1.0, 0.0), "z": (0.0, 0.0, 1.0)}
    values: list[Any] = []
    if isinstance(written, str):
        word = written.strip().lower()
        if word.lstrip("+-") in axes and len(word) <= 2:
            sign = -1.0 if word.startswith("-") else 1.0
            x, y, z = axes[word[-1]]
            return sign * x + 0.0, sign * y + 0.0, sign * z + 0.0
        values = list(word.replace(",", " ").split())
    elif isinstance(written, Iterable):
        values = list(written)
    try:
        x, y, z = (in_unit(v if isinstance(v, str) else float(v), "1") for v in values)
    except (ValueError, TypeError, OverflowError):
        how = 'write x,y,z such as 0,0,-1, or an axis such as "-z"'
        raise UsageError(f"{name} must be a direction: {how}; got {str(written)[:80]!r}.") from None
    if x * x + y * y + z * z < 1e-18:
        raise UsageError(f"{name} must be a direction; got one of length 0.")
    return x, y, z


def unknown(word: str, valid: Iterable[str], kind: str, where: str = "") -> str:
    """A sentence about a word that does not exist, with the nearest one that does."""
    valid = list(valid)
    said = " ".join(filter(None, (f"There is no {kind} {word!r}", where)))
    rule, quantity = word.lower().replace("_", "-"), word.lower().replace("-", "_")
    named = [FORMER_RULES.get(rule), FORMER_QUANTITIES.get(quantity)]
    for former in reversed(named) if "_" in word else named:  # as it is written: a quantity with _, a rule with -
        if former in valid:
            return f"{said} any more: since {FORMER_RULES_UNTIL} it is {former!r}. Write that."
    near = nearest(word, valid)
    if near:
        return f"{said}. Did you mean {near!r}?"
    if len(valid) <= 8:
        return f"{said}. There are: {', '.join(valid)}."
    return f"{said}. `seamcheck settings` lists all of them."


def nearest(word: str, valid: Iterable[str]) -> str:
    """The valid word most like the given one; '' where none is."""
    plain: dict[str, str] = {}
    for v in valid:  # the first of two that differ only in '-' and '_': a rule before a quantity
        plain.setdefault(v.lower().replace("_", "-"), v)
    import difflib

    found = difflib.get_close_matches(word.lower().replace("_", "-"), plain, n=1, cutoff=0.5)
    return plain[found[0]] if found else ""
