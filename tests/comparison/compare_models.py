"""Models drawn from stated dimensions, reviewed once for all tests of comparing; and documents turned about."""

from __future__ import annotations

import copy
import re
import tempfile
from dataclasses import replace
from functools import cache
from pathlib import Path

import numpy as np
from builder import Spec, build, draw, rounded_rectangle, spoil
from builder.defects import DEFECTS
from builder.ops import cylinder, fuse
from builder.pair import assemble

from seamcheck.pipeline import review_model
from seamcheck.settings.settings import Settings

SPEC = Spec(track=rounded_rectangle(40, 28, 6))
SHIFT = (37.5, -12.25, 8.0)
TURN = (10.0, 20.0, 75.0)
FIRST, SECOND = 14.0, 76.9  # mm along the mid-line: the middles of both long straight runs
HOSTILE = "lid`|<img src=x onerror=alert(1)>@team #12 ]]>\n::error::"


def wide(by: float = 0.3, s: float | None = FIRST, length: float = 4.0, spec: Spec = SPEC):
    return spoil("wide-rib", spec, s=s, length=length, by=by)[0]


def twice(kind: str, one: float, other: float, length: float = 4.0, by: tuple[float, float] | None = None):
    """A model with the same defect at two places."""
    make, usual = DEFECTS[kind]
    cover, base = draw(SPEC)
    for s, size in zip((one, other), by or (usual, usual), strict=True):
        (cover, base, _), *_ = make(SPEC, cover, base, s, length, size)
    return assemble(SPEC, cover, base)


def with_boss(*defects: float):
    """A feature that has nothing to do with the seam: a post on the floor of the housing."""
    cover, base = draw(SPEC)
    for s in defects:
        (cover, base, _), *_ = DEFECTS["wide-rib"][0](SPEC, cover, base, s, 4.0, 0.3)
    return assemble(SPEC, cover, fuse(base, cylinder((3.0, 2.0, -13.0), 2.0, 4.0)))


MODELS = {
    "plain": lambda: build(SPEC),
    "cover first": lambda: build(replace(SPEC, cover_first=True)),
    "boss": with_boss,
    "wide": wide,
    "wide, boss": lambda: with_boss(FIRST),
    "wider": lambda: wide(0.5),
    "wide longer": lambda: wide(0.3, length=8.0),
    "wide beside": lambda: wide(0.3, s=FIRST + 1.5),
    "wide, cover first": lambda: wide(spec=replace(SPEC, cover_first=True)),
    "wide, moved": lambda: wide(spec=replace(SPEC, shift=SHIFT)),
    "moved": lambda: build(replace(SPEC, shift=SHIFT)),
    "turned": lambda: build(replace(SPEC, shift=SHIFT, turn=TURN)),
    "two near": lambda: twice("wide-rib", 11.0, 15.0, length=2.0),
    "one near": lambda: wide(s=15.0, length=2.0),
    "gap": lambda: spoil("no-rib", SPEC, s=FIRST, length=4.0)[0],
    "two gaps": lambda: twice("no-rib", FIRST, SECOND),
    "bigger": lambda: build(replace(SPEC, track=rounded_rectangle(41, 29, 6.5))),
    "thicker cover": lambda: build(replace(SPEC, cover_thickness=2.2)),
    "renamed": lambda: build(replace(SPEC, cover_name=HOSTILE)),
    "one part": lambda: None,
}


@cache
def file_of(name: str) -> Path:
    folder = Path(tempfile.mkdtemp(prefix="seamcheck-compare-"))
    path = folder / f"{name}.step"
    if name == "one part":
        from builder.step import write_step

        return write_step(path, [("lid", draw(SPEC)[0], None)])
    return MODELS[name]().write(path)


@cache
def _reviewed(name: str, changes: tuple) -> dict:
    return review_model([file_of(name)], Settings().changed(dict(changes)))


def reviewed(name: str, **changes) -> dict:
    """The review document of one of MODELS; settings with '_' for '-' and '__' for '.'."""
    keys = {key.replace("__", ".").replace("_", "-"): value for key, value in changes.items()}
    return copy.deepcopy(_reviewed(name, tuple(sorted(keys.items()))))


def renumbered(path: Path, target: Path, by: int = 1000) -> Path:
    """The same STEP file with other entity numbers."""
    text = path.read_text()
    target.write_text(re.sub(r"#(\d+)", lambda m: f"#{int(m[1]) + by}", text))
    return target


def restarted(document: dict, by: int, backwards: bool = False, other_sides: bool = False) -> dict:
    """The document with its closed contours begun at another station, or run the other way round.

    A contour that runs the other way round keeps its outward vectors; with ``other_sides`` they turn as well, as
    they do on open paths, and inner and outer columns change places.
    """
    document = copy.deepcopy(document)
    for joint in document["joints"]:
        for contour in joint["contours"]:
            _restart(document, joint, contour, by, backwards, other_sides)
    return document


def _restart(document, joint, contour, by, backwards, other_sides):
    stations, length = contour["stations"], contour["length_mm"]
    s = np.array(stations["s"])
    n = len(s)
    order = np.roll(np.arange(n), -by) if contour["closed"] else np.arange(n)
    if backwards:
        order = order[::-1]
    start = s[order[0]]

    def moved(value):
        if not contour["closed"]:
            return length - value if backwards else value
        return float(np.mod(start - value if backwards else value - start, length))

    new = {key: [values[i] for i in order] for key, values in stations.items()}
    new["s"] = [moved(stations["s"][i]) for i in order]
    if other_sides:
        new["u"] = [[-c for c in u] for u in new["u"]]
        new = {_other(key): values for key, values in new.items()}
    contour["stations"] = new
    for run in contour["unmeasured"]:
        ends = moved(run["from_s"]), moved(run["to_s"])
        run["from_s"], run["to_s"] = ends[::-1] if backwards else ends
        if run["from_s"] > run["to_s"]:  # passes the new start
            contour["unmeasured"] = [*contour["unmeasured"], {**run, "from_s": 0.0}]
            run["to_s"] = length
        run["column"] = _other(run["column"]) if other_sides else run["column"]
    for bound in contour["bounds"]:
        for side in ("low", "high"):
            if isinstance(bound[side], list):
                bound[side] = [bound[side][i] for i in order]
        if other_sides:
            bound["column"], bound["quantity"] = _other(bound["column"]), _other(bound["quantity"])
    where = {int(i): k for k, i in enumerate(order)}
    for finding in document["findings"]:
        if finding["joint"] == joint["id"] and finding["contour"] == contour["id"] and finding["from_s"] is not None:
            ends = moved(finding["from_s"]), moved(finding["to_s"])
            finding["from_s"], finding["to_s"] = ends[::-1] if backwards else ends
            finding["station"] = where.get(finding["station"])
            if other_sides:
                finding["column"] = finding["column"] and _other(finding["column"])
                finding["quantity"] = _other(finding["quantity"])


def _other(key: str) -> str:
    for one, two in (("inner", "outer"), ("outer", "inner")):
        if key.endswith(one):
            return key.removesuffix(one) + two
    return key


def review_here(model, settings, **run):
    """Stands for ``seamcheck.pipeline.review`` in this process: no child has to start."""
    from seamcheck.report.review import Review

    paths = [Path(p) for p in (model if isinstance(model, list | tuple) else [model])]
    return Review(review_model(paths, settings))
