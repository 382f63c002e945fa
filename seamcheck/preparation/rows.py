"""What the sheet of a trial says, chapter by chapter."""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from typing import Any

import numpy as np
import shapely
from msgspec import Struct

from seamcheck.catalogue.voice import decimal_sign, localised, tr
from seamcheck.joint.frame import Frame
from seamcheck.measure.flattening import POISSON
from seamcheck.preparation.blocks import Drawn
from seamcheck.preparation.corridor import column, unsupported
from seamcheck.preparation.cycle import Times
from seamcheck.preparation.files import Program, lap_energy, sheet
from seamcheck.preparation.given import cooling_of, handling_of, laps_of, power_of, pressure_of, speed_of
from seamcheck.preparation.path import AREA, HEAT, Drive, WeldPath
from seamcheck.preparation.pressing import Pressing
from seamcheck.preparation.scanner import plate_transmission
from seamcheck.preparation.strokes import points_of
from seamcheck.report.language import rule_title
from seamcheck.settings.settings import Settings

Rows = list[tuple[str, str]]

MANY = 8
"""So many stretches are named."""

NEAR = 0.3
"""mm that a supporting face may lie beside the mid-line or below the material that it supports."""


class Trial(Struct, frozen=True, eq=False):
    """All that the sheet of one joint is made from.

    Attributes
    ----------
    model : its file; joint : of the review's document
    accepted : rules about the clamp's land that the review breaks and a plate does without
    """

    model: str
    joint: Mapping[str, Any]
    frame: Frame
    settings: Settings
    drive: Drive
    drawn: Drawn
    pressed: Sequence[Pressing]
    program: Program
    accepted: Sequence[str] = ()


def sheet_of(trial: Trial) -> str:
    """The sheet of one joint: clamp, nest, weld path, cycle, what was assumed, cautions."""
    chapters = {
        tr("Clamp"): _clamp_rows(trial),
        tr("Nest"): _nest_rows(trial),
        tr("Weld path"): _path_rows(trial),
        tr("Cycle"): _cycle_rows(trial),
    }
    title = tr("Trial of {model}, seam {joint}", model=trial.model, joint=trial.joint["id"])
    return sheet(" ".join(title.split()), chapters, _remarks(trial))


def _clamp_rows(trial: Trial) -> Rows:
    settings, own, drawn = trial.settings, trial.settings.trial, trial.drawn
    rows: Rows = []
    if own.plate is not None:
        thick, index = own.plate
        rows += [
            (tr("kind"), tr("transparent plate {thick:g} mm thick, refractive index {index:g}, pressing over the seam",
                            thick=thick, index=index)),
            (tr("light that the plate transmits"),
             tr("{share:.1f} % (reflection at both faces; absorption is not included)",
                share=100 * plate_transmission(index))),
        ]  # fmt: skip
        if trial.accepted:
            rows.append((tr("limits that do not apply with a plate"), ", ".join(map(rule_title, trial.accepted))))
    else:
        rows.append(
            (tr("kind"), tr("frame and cores {high:g} mm high, {clear:g} mm clear of the beam",
                            high=settings.clamp.height, clear=own.clearance))
        )  # fmt: skip
    if own.plate is None:
        reach = settings.clamp.reach
        for name, area in drawn.pressed.items():
            told = tr("{area:.0f} mm² within {reach:g} mm of the beam", area=area, reach=reach)
            rows.append((tr("land under {name}", name=_body_word(name)), told))
        tilt = max((float(np.nanmax(column(c["stations"], "clamp_tilt"), initial=0.0))
                    for c in trial.joint["contours"]), default=0.0)  # fmt: skip
        if tilt >= 0.05:
            rows.append(
                (
                    tr("tilt of the land"),
                    tr(
                        "up to {tilt:.1f}°: a clamp that comes down straight pushes the cover sideways there", tilt=tilt
                    ),
                )
            )
        rows.append((tr("checked"), tr("reviewed again with the clamp on the cover: no shadow, no collision")))
    return rows + _force_rows(trial)


def _body_word(name: str) -> str:
    """The name of a body in the language of the sheet: 'clamp frame 2'."""
    words = {"clamp frame": tr("clamp frame"), "clamp core": tr("clamp core")}
    kind = next((kind for kind in words if name.startswith(kind)), "")
    return f"{words[kind]}{name[len(kind) :]}" if kind else name


def _force_rows(trial: Trial) -> Rows:
    force = np.concatenate([own.force for own in trial.pressed])
    if not np.isfinite(force).any():
        return [(tr("force"), tr("not evaluated: no pressure is given (--clamp pressure=MPA)"))]
    pressure = pressure_of(trial.settings, trial.joint)
    whole = float(np.nanmean(force)) * float(trial.joint["length_mm"])
    rows = [
        (tr("pressure over the rib"), tr("{pressure:g} MPa", pressure=pressure)),
        (tr("clamping force"), tr("{whole:.0f} N in all, {along} N/mm along the seam", whole=whole,
                                  along=_span(float(np.nanmin(force)), float(np.nanmax(force)), ".2f"))),
    ]  # fmt: skip
    if trial.settings.trial.plate is not None:
        return [*rows, (tr("bending of the cover"), tr("none between rib and land: the plate presses over the seam"))]
    area = sum(trial.drawn.pressed.values())
    rows.append((tr("pressure on that land"), tr("{pressure:.2f} MPa", pressure=whole / area)))
    return [*rows, _bending_row(trial), _flattening_row(trial)]


def _bending_row(trial: Trial) -> tuple[str, str]:
    what = tr("bending of the cover between rib and land")
    if trial.settings.clamp.modulus is None:
        return what, tr("not evaluated: no modulus of the cover is given (--clamp modulus=MPA)")
    bends = np.concatenate([own.bending for own in trial.pressed])
    if not np.isfinite(bends).any():
        return what, tr("not evaluated: the land beside the rib was not measured")
    contour, own = max(
        zip(trial.joint["contours"], trial.pressed, strict=True),
        key=lambda pair: float(np.nanmax(pair[1].bending, initial=0.0)),
    )
    i = int(np.nanargmax(own.bending))
    return what, tr(
        "up to {by:.3f} mm over {arm:.2f} mm, at s = {s:.1f} mm of {contour}; worst case: pressed on one side only",
        by=own.bending[i], arm=own.arm[i], s=contour["stations"]["s"][i], contour=contour["id"],
    )  # fmt: skip


def _flattening_row(trial: Trial) -> tuple[str, str]:
    what = tr("flattening of a bowed cover")
    value = trial.joint["interface"].get("pressed_flat")
    bow = trial.settings.tolerances.get("flatness_cover")
    if bow is None or value is None:
        return what, tr("not evaluated: no flatness of the cover is given (--tolerance flatness_cover=MM)")
    if value["value"] is None:
        return what, tr("not evaluated: the cover is not a plate of constant height, or its modulus is not given")
    return what, tr(
        "to flatten a bow of {bow:.2f} mm takes {takes:.2f} N/mm along the seam; the clamp has {has:.2f} N/mm, so "
        "{flat:.2f} mm are pressed flat",
        bow=bow, takes=value["takes_newton_per_mm"], has=value["has_newton_per_mm"], flat=value["value"],
    )  # fmt: skip


def _nest_rows(trial: Trial) -> Rows:
    own, frame = trial.settings.trial, trial.frame
    support = shapely.Polygon()
    for ring in trial.drawn.support:
        support = support.symmetric_difference(shapely.Polygon(frame.local(np.asarray(ring))[:, :2]).buffer(0.0))
    rows = [
        (
            tr("pocket"),
            tr("{grip:g} mm deep, {play:g} mm play on each side, walls open by {draft:g}° for insertion",
               grip=trial.drawn.grip, play=own.nest_play, draft=own.nest_draft),
        ),
        (tr("supports the base on"), tr("{area:.0f} mm² of level faces", area=support.area)),
    ]  # fmt: skip
    floor = float(frame.local(np.asarray(trial.drawn.pocket[0]))[0, 2])
    for contour in trial.joint["contours"]:
        points = frame.local(points_of(contour))
        s = np.asarray(contour["stations"]["s"], dtype=float)
        with np.errstate(invalid="ignore"):
            hangs = column(contour["stations"], "support_depth") < points[:, 2] - floor - NEAR
        bare = unsupported(points[:, :2], s, support.buffer(NEAR), float(contour["length_mm"]), hangs)
        said = "; ".join(f"s = {_span(a, b, '.1f')} mm" for a, b in bare[:MANY])
        if len(bare) > MANY:
            said = tr("{places} and {count} more", places=said, count=len(bare) - MANY)
        length = sum(b - a for a, b in bare)
        rows.append(
            (
                tr("no support directly below {contour}", contour=contour["id"]),
                tr("{length:.0f} mm: {places}", length=length, places=said) if bare else tr("nowhere"),
            )
        )
    return rows


def _path_rows(trial: Trial) -> Rows:
    program, settings, joint = trial.program, trial.settings, trial.joint
    paths = program.paths
    speed = speed_of(settings, joint)
    lap = sum(path.lap_seconds for path in paths)
    rows: Rows = []
    if len(paths) > 1:
        order = ", ".join(f"{k} {path.id}" for k, path in enumerate(paths, 1))
        rows.append((tr("order of strokes"), order))
    rows += [(tr("stroke {number}, {path}", number=k, path=path.id), _stroke_words(path, trial.drive))
             for k, path in enumerate(paths, 1)]  # fmt: skip
    low, high = min(float(p.speed.min()) for p in paths), max(float(p.speed.max()) for p in paths)
    slow = "" if trial.drive.acceleration else tr("; no acceleration is given, so corners do not slow it")
    rows.append((tr("speed"), f"{_span(low, high, '.0f')} mm/s ({speed.source}){slow}"))
    laps, why = laps_of(settings, joint, lap)
    rows.append((tr("laps"), f"{laps} ({why})"))
    least = min(float(path.power.min()) for path in paths)
    rows.append((tr("power, as a share of the highest"), f"{_span(100 * least, 100.0, '.0f')} %"))
    return rows + _energy_rows(trial)


def _span(low: float, high: float, form: str) -> str:
    """'800 to 1000', or one number where both look alike."""
    one, other = localised(format(low, form)), localised(format(high, form))
    return one if one == other else tr("{low} to {high}", low=one, high=other)


def _point(at: np.ndarray) -> str:
    """(3,) mm as '1.00, 2.00, 3.00', with semicolons where a comma stands before the decimals."""
    between = ", " if decimal_sign() == "." else "; "
    return between.join(localised(f"{x + 0.0:.2f}") for x in at)


def _stroke_words(path: WeldPath, drive: Drive) -> str:
    start = _point(path.points[0])
    if not path.closed:
        end = _point(path.points[-1])
        return tr("{length:.1f} mm from {start} to {end}", length=path.length, start=start, end=end)
    way = tr("clockwise") if drive.clockwise else tr("counter-clockwise")
    over = float(path.s[-1]) - path.length
    if math.isinf(path.to_corner):
        where = tr("it has no corner")
    elif path.to_corner > 0.0:
        where = tr("{away:.1f} mm from the nearest corner or junction", away=path.to_corner)
    else:
        where = tr("no straight run is as long as the overlap")
    return tr(
        "{length:.1f} mm, {way} seen against the beam, starts at {start} and overlaps by {over:.1f} mm; {where}",
        length=path.length, way=way, start=start, over=over, where=where,
    )  # fmt: skip


def _energy_rows(trial: Trial) -> Rows:
    program, own = trial.program, trial.settings.trial
    need = program.paths[0].need
    if not program.is_absolute:
        return [(tr("energy"), tr("relative only: the settings name no materials, so it follows the melted area"))]
    source = {HEAT: tr("by the heat model: the whole seam melts in step with its slowest place")}.get(
        need.of, tr("energy to melt divided by the transmission; heat losses are not included")
    )
    passes = 1.0 if own.plate is None else plate_transmission(own.plate[1])
    whole = sum(lap_energy(path) for path in program.paths) / passes
    watts = max(path.greatest_power for path in program.paths) / program.laps / passes
    plate = "" if own.plate is None else tr(", the plate's loss included")
    rows = [
        (
            tr("energy"),
            tr("{whole:.0f} J for the whole seam{plate}, {source}", whole=whole, plate=plate, source=source),
        ),
        (tr("a power share of 1 is"), tr("{watts:.0f} W{plate}", watts=watts, plate=plate)),
    ]
    power = power_of(trial.settings, trial.joint)
    if power is not None and watts > power * (1.0 + 1e-6):
        least = math.ceil(watts * program.laps / power - 1e-9)
        told = {"power": power, "least": least}
        once = tr("{power:g} W are not enough for one lap at this speed: it takes at least {least}", **told)
        text = tr(
            "{power:g} W are not enough for {laps} laps at this speed: it takes at least {least}",
            laps=program.laps, **told,
        )  # fmt: skip
        rows.append((tr("laser"), once if program.laps == 1 else text))
    between = sum(path.need.between for path in program.paths)
    if between >= 0.05:
        rows.append((tr("energy interpolated where it is not known"), tr("{length:.1f} mm", length=between)))
    return rows


def _cycle_rows(trial: Trial) -> Rows:
    program, own = trial.program, trial.settings.trial
    welding = welding_time(program)
    rows = [(tr("welding"), tr("{time:.2f} s, laps: {laps}", time=welding, laps=program.laps))]
    if len(program.paths) > 1:
        rows.append((tr("jumps between strokes"), tr("not included: they depend on the machine")))
    cooling, handling = cooling_of(trial.settings, trial.joint), handling_of(trial.settings, trial.joint)
    if cooling.value is None or handling.value is None:
        return [*rows, (tr("cycle"), tr("not evaluated: no cooling or handling time is given (--cooling, --handling)"))]
    times = Times(welding, cooling.value, handling.value, own.hours, own.used, own.parts)
    rows += [
        (tr("cooling"), tr("{time:.2f} s ({source})", time=cooling.value, source=cooling.source)),
        (tr("handling"), tr("{time:.2f} s ({source})", time=handling.value, source=handling.source)),
        (tr("cycle"), tr("{time:.2f} s", time=times.cycle)),
    ]
    if times.parts_a_year is None:
        return [*rows, (tr("parts a year"), tr("not evaluated: no working hours are given (--hours)"))]
    rows.append(
        (tr("parts a year"), tr("{parts:.0f} from one station in {hours:g} h, {used:.0f} % of them used",
                                parts=math.floor(times.parts_a_year), hours=own.hours, used=100 * own.used))
    )  # fmt: skip
    if times.stations is not None:
        rows.append(
            (tr("stations"), tr("{stations} for {parts:.0f} parts a year", stations=times.stations, parts=own.parts))
        )
    return rows


def welding_time(program: Program) -> float:
    """s with the laser on, all laps and overlaps."""
    return sum(path.lap_seconds * (program.laps - 1) + path.seconds for path in program.paths)


def _remarks(trial: Trial) -> list[str]:
    program = trial.program
    remarks = [
        tr("Speed, laps, power and overlap are starting values for a trial, not a recipe."),
        tr(
            "The power rises over the overlap's length in the first lap only and falls over the overlap after the last."
        ),
    ]
    if program.paths[0].need.of == AREA:
        remarks.append(tr("Energy is relative to the mean of the seam, in proportion to the melted area."))
    elif program.paths[0].need.of == HEAT:
        remarks.append(
            tr("The heat model is that of the review, with its inputs and their standing; a trial weld decides.")
        )
    else:
        remarks.append(
            tr("Energy is the energy to melt divided by the cover's transmission; conduction and losses come on top.")
        )
    remarks += [
        tr("How clamp and nest are held and guided, and how stiff they are, is up to the toolmaker."),
        tr("The nest carries the base on level faces; whether the base is stiff enough is not checked."),
        tr("Bending and flattening take the cover as a plate of constant thickness, Poisson's ratio {ratio:g}.",
           ratio=POISSON),
    ]  # fmt: skip
    return remarks
