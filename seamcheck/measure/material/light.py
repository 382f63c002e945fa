"""Light along the seam: the columns light_path and transmission, and the section of the document."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

import numpy as np

from seamcheck.catalogue.known import rounded, weakest
from seamcheck.catalogue.polymers import Compound
from seamcheck.catalogue.say import say
from seamcheck.measure.additions import Column, Columns, Value, value_of
from seamcheck.measure.material.stretches import stretches_below
from seamcheck.measure.material.track import Track
from seamcheck.measure.material.transmission import COMFORTABLE, EXTRAPOLATION, TransmissionFit, fit_transmission
from seamcheck.settings.material import MaterialSettings
from seamcheck.settings.plaques import Plaque

_AS_THICK = 1e-3  # mm: a beam path so little longer than the thickest plaque counts as long as it


def cover_fit(settings: MaterialSettings) -> TransmissionFit | None:
    """Transmission over thickness as the plaques give it; None without plaques."""
    if not settings.plaques:
        return None
    plaques = [Plaque(thickness, percent / 100.0) for thickness, percent in settings.plaques]
    scatter = settings.numbers["light.plaque_scatter"].value / 100.0
    scatters = settings.cover is not None and class_of(settings.cover) != "amorphous"
    return fit_transmission(plaques, settings.index().value, scatter, scatters)


def add_light_columns(
    tracks: Sequence[Track], fit: TransmissionFit | None, columns: dict[str, dict[str, Column]]
) -> None:
    """Add the columns light_path and transmission."""
    for track in tracks:
        source = "cover_thickness_max" if "cover_thickness_max" in track.survey.columns else "cover_thickness"
        path = track.column(source) * _slant(track)
        own = columns[track.id]
        own["light_path"] = track.because(path, source, "cover_thickness", "path_in_cover")
        if fit is not None:
            own["transmission"] = Column(100.0 * fit.at(path), own["light_path"].reasons)
            own["extinction"] = Column(fit.falls_by(path, fit.limit_thickness(COMFORTABLE)), own["light_path"].reasons)


CLASSES: dict[str, float] = {"filled": 2.0, "semi-crystalline": 2.5, "amorphous": 6.0}
"""Class of a cover -> thickness (mm) up to which it is usually welded (from memory)."""


def class_of(compound: Compound) -> str:
    """Return the key of CLASSES: blends and elastomers scatter, and count as semi-crystalline."""
    if compound.filler:
        return "filled"
    return "amorphous" if compound.polymer.kind == "amorphous" and not compound.polymer.opaque else "semi-crystalline"


def add_class(
    tracks: Sequence[Track],
    settings: MaterialSettings,
    columns: dict[str, dict[str, Column]],
    interface: dict[str, Value],
) -> None:
    """Where the cover is named and no plaque was measured: its thickness for its class, and the doubt that is left."""
    if settings.cover is None or settings.plaques:
        return
    key = class_of(settings.cover)
    thickest = CLASSES[key]
    for track in tracks:
        source = "cover_thickness_max" if "cover_thickness_max" in track.survey.columns else "cover_thickness"
        values = track.column(source) / thickest
        columns[track.id]["thickness_of_class"] = track.because(values, source, "cover_thickness")
    doubt = 1.0 if key == "amorphous" else 2.0
    interface["transmission_doubt"] = value_of(
        doubt, why=say("material.class", cover=settings.cover.name, kind=f"class-{key}")
    )


def _slant(track: Track) -> np.ndarray | float:
    """Path of the refracted ray over the thickness along the beam, where a scanner was given; 1 otherwise."""
    if "path_in_cover" not in track.survey.columns:
        return 1.0
    with np.errstate(invalid="ignore", divide="ignore"):
        return np.asarray(track.column("path_in_cover") / track.column("cover_thickness"))


def transmission_section(
    tracks: Sequence[Track],
    fit: TransmissionFit,
    columns: Mapping[str, Columns],
    settings: MaterialSettings,
    interface: dict[str, Value],
) -> dict[str, Any]:
    """The document's section on transmission."""
    index = settings.index()
    comfortable = fit.limit_thickness(COMFORTABLE)
    places, contours = [], []
    longest: tuple[float, Track, int] | None = None
    for track in tracks:
        path = columns[track.id]["light_path"].values
        values = columns[track.id]["transmission"].values
        if not np.isfinite(values).any():
            continue
        worst = int(np.nanargmin(values))
        if longest is None or path[worst] > longest[0]:
            longest = (float(path[worst]), track, worst)
        low, high = fit.interval(path[worst])
        thickest = fit.plaques[-1].thickness
        contours.append(
            {
                "contour": track.id,
                "least_percent": rounded(values[worst]),
                "median_percent": rounded(np.nanmedian(values)),
                "most_percent": rounded(np.nanmax(values)),
                "at": track.point(worst),
                "s_mm": rounded(track.s[worst]),
                "light_path_mm": rounded(path[worst]),
                "low_percent": rounded(100 * low),
                "high_percent": rounded(100 * high),
                "diffuse_form_percent": rounded(100 * float(fit.diffuse_at(path[worst]))),
                "carried_on_mm": rounded(float(track.length[path > thickest + _AS_THICK].sum())),
                "farthest_of_plaque": rounded(float(np.nanmax(path)) / thickest),
                "beyond_plaques_mm": rounded(float(track.length[fit.is_beyond(path)].sum())),
            }
        )
        for stretch in stretches_below(track, values, 100.0 * COMFORTABLE):
            i = stretch.worst
            places.append(
                {
                    "contour": track.id,
                    "what": say("light.below", percent=100 * COMFORTABLE),
                    "from_s_mm": rounded(stretch.start),
                    "to_s_mm": rounded(stretch.end),
                    "length_mm": rounded(stretch.length),
                    "at": track.point(i),
                    "percent": rounded(values[i]),
                    "light_path_mm": rounded(path[i]),
                    "thin_to_mm": rounded(comfortable),
                    "thin_by_mm": rounded(path[i] - comfortable),
                }
            )
    if longest is not None:
        length, track, i = longest
        interface["path_over_plaques"] = value_of(length / fit.plaques[-1].thickness) | {"at": track.point(i)}
    standing = weakest([index]) if fit.form == "one plaque" else "given"
    return {
        "form": fit.form,
        "surface_term": rounded(fit.surface_term),
        "extinction_per_mm": rounded(fit.extinction),
        "surface_term_standing": standing,
        "index": index.as_dict(),
        "surface_limit_percent": rounded(100.0 * fit.cap),
        "limit_path_28_mm": rounded(comfortable),
        "limits": [{"percent": 28.0, "standing": say("light.comfortable"), "meaning": say("light.burns")}],
        "reach_mm": rounded(fit.reach),
        "reach_standing": say("light.reach", times=EXTRAPOLATION),
        "contours": contours,
        "places": places,
        "notes": [*fit.notes, *_light_notes(settings)],
    }


def _light_notes(settings: MaterialSettings) -> list[str]:
    notes: list[str] = [say("material.plaques"), say("material.wets")]
    if settings.get("light.wavelength") is None:
        notes.append(say("material.no-wavelength"))
    return notes
