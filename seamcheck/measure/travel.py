"""How far the cover can sink along the beam until it touches anything but the rib, and what it touches."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

import numpy as np

from seamcheck.catalogue.say import say
from seamcheck.joint import Joint
from seamcheck.measure.additions import Additions, Column, Columns, Value, value_of
from seamcheck.measure.depth import Overlap
from seamcheck.measure.floor import Floor
from seamcheck.measure.moving import Moving
from seamcheck.measure.overlap import are_near
from seamcheck.measure.table import Survey
from seamcheck.measure.touches import Sinking, find_touches, place_of
from seamcheck.measure.wall import lower_floor, wall_at
from seamcheck.sections.levels import nearest_end
from seamcheck.sections.section import Section, extreme_of
from seamcheck.settings.settings import Settings

_BEYOND = 0.3  # mm beyond the planned collapse within which everything that would touch is listed
_FURTHER = (5.0, np.inf)  # mm: where nothing touches so soon, how far the first touch is looked for
_MOST_PLACES = 50
_DRAWN_INTO = -1e-3  # mm


def travel_columns(
    section: Section, floors: Mapping[str, Floor], others: Mapping[str, np.ndarray], contact: float, reach: float
) -> Columns:
    """Smallest gap beside the rib over the wall's own width, less the gap at initial contact; NaN where nothing is met.

    Parameters
    ----------
    others : (n, k) bool by side, intervals of another rib of the seam
    contact : mm, the smallest gap of the seam; reach : mm beside P to which sections go
    """
    met = wall_at(section, lower_floor(floors))
    least = np.full(len(section.s), np.nan)
    for name, side in section.sides.items():
        wall = nearest_end(met, len(section.s), name == "outer")
        end = np.where(np.isfinite(wall), wall, reach)
        foot = floors[name].foot
        zone = np.isfinite(side.b) & (side.a >= foot[:, None] - 1e-6) & (side.a < end[:, None] - 1e-6)
        zone &= np.isfinite(floors[name].height)[:, None] & ~others[name]
        gaps = np.where(zone[None], np.stack([side.roof_a - side.floor_a, side.roof_b - side.floor_b]), np.nan)
        least = np.fmin(least, extreme_of(np.fmin, gaps))
    return {"free_travel": Column.of(least - contact, "free")}


def free_travel(
    joint: Joint, survey: Survey, settings: Settings, moving: Moving, overlaps: Sequence[Overlap]
) -> Additions:
    """The free travel over the whole interface, with its place and 'places' in order of touch.

    Parameters
    ----------
    settings : uses collapse and lateral_play (mm)
    moving : parts that sink
    overlaps : of moving parts with others, as drawn: those along the beam stop the cover at once; where it is drawn
        sideways into another part, that is no stop

    Notes
    -----
    Travel counts from initial contact, the smallest gap of the whole seam.
    """
    if joint.rib_on == "none":
        return Additions({"free_travel": value_of(None, why="no-rib")})
    contact = survey.initial_contact
    if not np.isfinite(contact):
        return Additions({"free_travel": value_of(None, why="no-opposite")})
    sinking = Sinking(joint, survey, moving, contact, settings.lateral_play)
    along = [overlap for overlap in overlaps if overlap.is_stop]
    presses = [overlap for overlap in overlaps if not overlap.is_stop]
    places = _with_overlaps(_places(sinking, settings.collapse + _BEYOND, presses), along, sinking)
    kept = {"initial_contact": contact, "lateral_play": sinking.play}
    found = {**places[0], **kept, "places": places} if places else value_of(None, why="free") | kept
    return Additions({"free_travel": found})


def _places(sinking: Sinking, soon: float, presses: Sequence[Overlap]) -> list[Value]:
    """Everything that touches within a travel of ``soon`` mm; where nothing does, what touches first after that."""
    for most in (soon, *_FURTHER):
        found = [place_of(touch, sinking) for touch in find_touches(sinking, soon, most)]
        kept = [place for place in found if not _is_press(place, sinking, presses)]
        if kept:
            return kept[:_MOST_PLACES] if kept[0]["value"] <= soon else kept[:1]
    return []


def _is_press(place: Value, sinking: Sinking, presses: Sequence[Overlap]) -> bool:
    """Whether a place of the free travel lies where the cover is drawn sideways into another part."""
    if place["value"] + sinking.contact > _DRAWN_INTO:
        return False
    bodies = sinking.joint.bodies
    (cover, above), (other, below) = ((face["part"], face["face"]) for face in place["faces"])
    return any(
        (cover, other) == (press.cover[0], press.other[0])
        and are_near(bodies[cover], above, press.cover[1])
        and are_near(bodies[other], below, press.other[1])
        for press in presses
        if press.cover[1] >= 0
    )


def _with_overlaps(places: list[Value], along: Sequence[Overlap], sinking: Sinking) -> list[Value]:
    """The places with overlaps along the beam that lie too deep for the gaps to tell them from other storeys."""
    found, contact, parts = list(places), sinking.contact, sinking.joint.parts
    for overlap in along:
        pair = {overlap.cover[0], overlap.other[0]}
        known = [p["value"] + contact for p in found if {face["part"] for face in p.get("faces", ())} == pair]
        if not any(value <= -overlap.depth + 0.05 for value in known):
            cover, other = (f"'{parts[part].name or part}'" for part in (overlap.cover[0], overlap.other[0]))
            why = say("place.into", cover=cover, other=other, depth=overlap.depth)
            found.append(overlap.place(-overlap.depth - contact, why))
    return sorted(found, key=lambda place: place["value"])
