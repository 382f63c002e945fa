"""Draw the sample models from their stated dimensions: the housings of a small weather station.

Run ``python sample_models/draw.py`` from the project's folder; it writes the STEP files beside this script, which ship
with the package, or with ``python sample_models/draw.py FOLDER`` into another folder. It needs the development
packages. The same script gives the same bytes on one kernel version.
"""

from __future__ import annotations

import sys
from collections.abc import Callable
from dataclasses import replace
from pathlib import Path

ROOT = Path(__file__).resolve().parents[1]
sys.path[:0] = [str(ROOT), str(ROOT / "tests")]

from builder import Model, Spec, assemble, build, circle, draw, rounded_rectangle, spoil  # noqa: E402
from builder.defects import GREY, rectangle  # noqa: E402
from builder.ops import box, cut, cylinder, fuse, stretch  # noqa: E402
from builder.relief import Ground, draw_on  # noqa: E402
from builder.solid import level_face  # noqa: E402
from builder.variants import bumped, divided, flat_rim, pinned, tilted_cover  # noqa: E402
from OCP.BRepPrimAPI import BRepPrimAPI_MakePrism  # noqa: E402
from OCP.gp import gp_Vec  # noqa: E402

from seamcheck.samples import samples  # noqa: E402

# mm and degrees; what is not named here stands in tests/builder/spec.py
BAROMETER = Spec(track=rounded_rectangle(64, 44, 9), cover_name="barometer lid", base_name="barometer housing")
RAIN_GAUGE = Spec(track=circle(32), cover_name="rain gauge lid", base_name="rain gauge head")
WIND_SENSOR = Spec(track=circle(24), cover_name="wind sensor lid", base_name="wind sensor head")
RECESSED = replace(RAIN_GAUGE, outer="wall", trap_width_outer=1.8)
BATTERY = replace(
    BAROMETER,
    track=rounded_rectangle(48, 22, 2.2),
    rib_width=1.0,
    trap_width_inner=0.8,
    lip_width=0.6,
    cover_name="battery lid",
    base_name="battery compartment",
)
LOGGER = replace(BAROMETER, track=rounded_rectangle(70, 40, 8), cover_name="logger lid", base_name="logger box")


def rib_missing() -> Model:
    cover, _ = draw(RAIN_GAUGE)
    return assemble(RAIN_GAUGE, cover, flat_rim(replace(RAIN_GAUGE, lip_width=0.2, inner="open", outer="open")))


def traps_missing() -> Model:
    cover, _ = draw(RAIN_GAUGE)
    narrow = {"lip_width": 0.2, "trap_width_inner": 0.1, "trap_width_outer": 0.1}
    return assemble(RAIN_GAUGE, cover, flat_rim(replace(RAIN_GAUGE, inner="open", outer="open", **narrow)))


def seam_junction() -> Model:
    cover, base = draw(LOGGER)
    return assemble(LOGGER, cover, divided(LOGGER, base, at=8.0, reach=20.0))


def clamp_tilt() -> Model:
    _, base = draw(WIND_SENSOR)
    return assemble(WIND_SENSOR, tilted_cover(WIND_SENSOR, degrees=4.0), base)


def sink_travel() -> Model:
    spec = replace(RAIN_GAUGE, outer="open", rib_height_outer=0.62, trap_width_outer=2.6, clamp_land=2.9)
    cover, base = draw(spec)
    # 0.17 mm high: too low to count as a lip
    base = bumped(spec, base, spec.track.length / 4, length=6.0, o=(2.2, 3.0), rise=0.17)
    return assemble(spec, cover, base)


def seam_step() -> Model:
    spec = replace(BAROMETER, draft_inner=0.0, draft_outer=0.0)
    return assemble(spec, *draw_on(spec, Ground("slope", 0.5)))


def path_distance() -> Model:
    spec = replace(LOGGER, rib_width=0.9, draft_inner=0.0, draft_outer=0.0, trap_width_outer=4.0, clamp_land=5.0)
    cover, base = draw(spec)
    height, away, half = spec.rib_height_outer, 2.6, spec.rib_width / 2
    face = level_face(spec.track, -height - 0.5, away + half, away - half)
    return assemble(spec, cover, fuse(base, BRepPrimAPI_MakePrism(face, gp_Vec(0, 0, height + 0.5)).Shape()))


def near_parts() -> Model:
    cover, base = draw(BAROMETER)
    # 3.4 mm beside the rib's edge and 3.0 mm below its top
    sensor = stretch(BAROMETER.track, BAROMETER.track.middle_of_run(), 8.0, rectangle(-9.0, -4.0, -8.0, -3.0))
    return assemble(BAROMETER, cover, base, ("pressure sensor", sensor, GREY))


def parts_overlap() -> Model:
    cover, base = draw(BAROMETER)
    wall = -BAROMETER.wall_face("inner")
    tongue = stretch(
        BAROMETER.track, BAROMETER.track.middle_of_run(), 8.0, rectangle(wall - 1.2, wall + 0.08, -5.0, 0.5)
    )
    return assemble(BAROMETER, fuse(cover, tongue), base)


def wall_opening() -> Model:
    cover, base = draw(BAROMETER)
    opening = stretch(BAROMETER.track, BAROMETER.track.middle_of_run(), 8.0, rectangle(-5.0, 5.0, -9.0, -5.0))
    return assemble(BAROMETER, cover, cut(base, opening))


def intended_stop() -> Model:
    spec = replace(RAIN_GAUGE, lip_height_inner=0.25, lip_height_outer=0.25)
    cover, base = draw(spec)
    # a post on the housing's floor, 0.60 mm below the rib's top, where 0.4 mm are meant
    post = cylinder((6.0, 4.0, -spec.wall_height + 1.0), 2.0, spec.wall_height - 1.0 - 0.6)
    return assemble(spec, cover, fuse(base, post))


def clamp_reach() -> Model:
    spec = replace(WIND_SENSOR, clamp_land=34.0, cover_name="sun shield")
    cover, base = draw(spec)
    # clips with slanted tops along both sides of the seam, 0.2 mm beside the rib's edge, 9 mm long
    for side in (-1.0, 1.0):
        clip = [(side * o, z) for o, z in ((0.8, 1.0), (8.0, 1.0), (8.0, 9.0), (0.8, 5.0))]
        cover = fuse(cover, stretch(spec.track, spec.track.length / 3, 9.0, clip))
    return assemble(spec, cover, base)


def scanner_shadow() -> Model:
    cover, base = draw(BAROMETER)
    # 5 mm inside of the rib's edge and 55 mm high: clear of the seam itself, not of light that leans inward
    mast = box((-26.4, -5.0, 2.0), (-22.0, 5.0, 57.0))
    return assemble(BAROMETER, cover, base, ("wind vane mast", mast, GREY))


def with_pins(**typed: float) -> Model:
    """Two locating pins of the lid in posts of the head."""
    return assemble(RAIN_GAUGE, *pinned(RAIN_GAUGE, *draw(RAIN_GAUGE), [(14.0, 0.0), (-14.0, 0.0)], **typed))


MODELS: dict[str, Callable[[], Model]] = {
    "sound": lambda: build(BAROMETER),
    "sound-recessed": lambda: build(RECESSED),
    "seam-open": lambda: spoil("no-rib", BAROMETER, length=2.0)[0],
    "rib-missing": rib_missing,
    "traps-missing": traps_missing,
    "seam-junction": seam_junction,
    "rib-width": lambda: build(
        replace(
            WIND_SENSOR,
            rib_width=0.55,
            rib_height_inner=0.82,
            rib_height_outer=0.82,
            lip_height_inner=0.22,
            lip_height_outer=0.22,
        )
    ),
    "rib-uniformity": lambda: spoil("wide-rib", BAROMETER, length=3.0, by=0.3)[0],
    "rib-height": lambda: build(
        replace(RAIN_GAUGE, outer="open", rib_height_outer=0.55, trap_width_outer=2.4, clamp_land=3.2)
    ),
    "slenderness": lambda: build(
        replace(
            WIND_SENSOR,
            rib_width=1.0,
            rib_height_inner=1.7,
            rib_height_outer=1.7,
            lip_height_inner=1.1,
            lip_height_outer=1.1,
        )
    ),
    "flank-draft": lambda: build(replace(RAIN_GAUGE, draft_outer=4.0)),
    "corner-radius": lambda: build(BATTERY),
    "trap-room": lambda: build(replace(WIND_SENSOR, trap_width_inner=0.527, trap_width_outer=0.527)),
    "trap-side": lambda: build(replace(RAIN_GAUGE, trap_width_inner=0.382)),
    "trap-open-inner": lambda: build(replace(RAIN_GAUGE, inner="open")),
    "lip-gap": lambda: build(replace(WIND_SENSOR, rib_height_outer=1.2)),
    "clamp-land": lambda: build(replace(RAIN_GAUGE, clamp_land=0.8, edge_chamfer=1.8)),
    "clamp-tilt": clamp_tilt,
    "cover-thickness": lambda: build(replace(RAIN_GAUGE, cover_thickness=3.4)),
    "cover-uniformity": lambda: spoil("thick-cover", BAROMETER, length=6.0, by=0.5)[0],
    "cover-hole": lambda: spoil("hole", RAIN_GAUGE, s=RAIN_GAUGE.track.length / 8, length=3.0)[0],
    "beam-path": lambda: spoil("shade", BAROMETER, length=8.0)[0],
    "contact-gap": lambda: spoil("gap", BAROMETER, length=5.0, by=0.25)[0],
    "drawn-welded": lambda: build(replace(RAIN_GAUGE, gap=-0.4)),
    "sink-travel": sink_travel,
    "seam-step": seam_step,
    "path-distance": path_distance,
    "near-parts": near_parts,
    "parts-overlap": parts_overlap,
    "wall-opening": wall_opening,
    "transmission": lambda: spoil("thick-cover", replace(BAROMETER, cover_thickness=2.4), length=6.0, by=0.28)[0],
    "collapse-window": lambda: spoil("gap", BAROMETER, length=5.0, by=0.08)[0],
    "wall-to-rib": lambda: build(replace(WIND_SENSOR, flange=0.15, stem=(-0.5, 0.5))),
    "support-offset": lambda: build(replace(WIND_SENSOR, stem=(0.5, 3.0))),
    "trap-corner": lambda: build(replace(BATTERY, track=rounded_rectangle(48, 22, 3.2), trap_width_inner=0.45)),
    "overhang": lambda: build(replace(WIND_SENSOR, lip_width=4.0, flange=1.4, stem=(3.2, 5.6), clamp_land=6.0)),
    "clamp-reach": clamp_reach,
    "beam-angle": lambda: build(BAROMETER),
    "scanner-shadow": scanner_shadow,
    "intended-stop": intended_stop,
    "flatness-stack": lambda: build(RECESSED),
    "guide-play": lambda: with_pins(play=0.03),
    "guide-depth": lambda: with_pins(tip=-1.45, mouth=-1.3, chamfer=0.3),
    "guide-draft": lambda: with_pins(draft=0.2),
    "sink-mark": lambda: build(replace(WIND_SENSOR, rib_on="cover")),
    "second-collapse": lambda: build(WIND_SENSOR),
    "weld-load": lambda: build(WIND_SENSOR),
    "weld-peel": lambda: build(BAROMETER),
}
"""Sample name -> its model."""


def main(folder: Path) -> None:
    folder.mkdir(parents=True, exist_ok=True)
    for sample in samples():
        path = folder / sample.file.name
        MODELS[sample.name]().write(path)
        print(f"{path.stat().st_size / 1000:6.0f} kB  {path}")


if __name__ == "__main__":
    main(Path(sys.argv[1]) if len(sys.argv) > 1 else Path(__file__).resolve().parent)
