"""Where a rib runs along a contact: mid-lines and corner radii are tried, the widest margin is taken."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
import shapely
from msgspec import Struct

from seamcheck.proposal.contact import Contact, depths_below
from seamcheck.proposal.design import Choices, Design, Space, design, narrowest, on_grid
from seamcheck.proposal.room import SPACING, Line, Net, Room, measure_room, nets_of, rounded, with_walls
from seamcheck.settings.settings import Settings

RADII = (4.5, 3.3, 3.03)
"""mm, radii to which corners of the mid-line are rounded, the most comfortable first."""

USUAL_HALF = 0.4
"""mm, half the width of a slender rib."""

MOST_AWAY = 5.0
"""mm that a mid-line is moved in from the outer border beyond what the section needs."""

AWAY_STEPS, FINER = (0.5, 0.1), 4
"""mm, steps in which that distance is tried, and so many fine ones on both sides of the best coarse one."""


class Route(Struct, frozen=True, eq=False):
    """A mid-line with its corner radius (mm), the room along it, the scarcest of it, and the design for that."""

    design: Design
    nets: list[Net]
    rooms: list[Room]
    radius: float
    space: Space

    @property
    def least_room(self) -> float:
        """mm, of both sides."""
        return min(self.space.inner, self.space.outer)


def best_route(contact: Contact, settings: Settings, choices: Choices) -> Route | None:
    """The best over the mid-lines and corner radii that may be chosen; None where no line runs round closed.

    Where none fits, and a contact that is too narrow leaves no room for rounded corners, the room is that of the
    mid-line as it is.
    """
    depth = min(float(below.depth.min()) for below in depths_below(contact))
    tried: list[Route] = []
    lines_tried = _middle_lines(contact, settings, choices, depth)
    for lines in lines_tried:
        for radius in RADII:
            tried.append(_route(lines, radius, contact, depth, settings, choices))
            if tried[-1].design.fits and tried[-1].design.aimed > 0.3:
                break
    if not tried:
        return None
    best = max(tried, key=lambda t: _rank(t, settings))
    if best.design.fits or best.least_room >= min(narrowest(settings, choices)):
        return best
    return max((best, *(_route(lines, 0.0, contact, depth, settings, choices) for lines in lines_tried)), key=_room)


def _room(route: Route) -> float:
    return route.least_room


def _rank(route: Route, settings: Settings) -> tuple[bool, bool, float, float]:
    fits, aimed = route.design.fits, round(min(route.design.aimed, 0.3), 2)
    return fits, fits and route.space.outer >= _with_land(settings), aimed, route.least_room


def _route(
    lines: Sequence[Net], radius: float, contact: Contact, depth: float, settings: Settings, choices: Choices
) -> Route:
    nets = [net.rounded(radius) for net in lines]
    rooms = [measure_room(net.outline, contact.region) for net in nets]
    walls = [measure_room(wall, contact.region) for net in nets for wall in net.walls]
    space = Space(
        min(float(reach.min()) for reach in (*(r.inner for r in rooms + walls), *(w.outer for w in walls))),
        min(float(room.outer.min()) for room in rooms), depth,
        min(room.radius("inner") for room in rooms), min(room.radius("outer") for room in rooms),
    )  # fmt: skip
    chosen = on_grid(design(space, settings, choices), space, settings, choices)
    return Route(chosen, nets, rooms + walls, radius, space)


def _middle_lines(contact: Contact, settings: Settings, choices: Choices, depth: float) -> list[tuple[Net, ...]]:
    """Lines that a rib could follow: the middle of the contact, and a line at one distance from its outer border.

    The second one is nearer to the border where the contact is wider on its inside (screw posts, corners), and
    further where the clamp needs the room.
    """
    traced = nets_of(contact.lines)
    found = [] if traced is None else [traced]
    walls = [wall for net in traced or () for wall in net.walls]
    whole = max(getattr(contact.region, "geoms", [contact.region]), key=lambda part: part.area)
    border = shapely.Polygon(whole.exterior)
    inner, outer = narrowest(settings, choices, depth)
    tried: dict[float, tuple[float, Line] | None] = {}

    def at(away: float) -> tuple[float, Line] | None:
        """Room to spare on a line at a distance from the border, and the line; None where none is left."""
        if away not in tried:
            shrunk = border.buffer(-away, quad_segs=64)
            tried[away] = None
            if isinstance(shrunk, shapely.Polygon) and not shrunk.is_empty:
                line = Line("c1", True, np.asarray(shrunk.exterior.coords)[:-1][::-1])
                room = measure_room(rounded(line, RADII[-1]), contact.region, 2.0 * SPACING)
                tried[away] = min(float(room.inner.min()) - inner, float(room.outer.min()) - outer), line
        return tried[away]

    def spare(away: float) -> float:
        one = at(away)
        return -np.inf if one is None else one[0]

    for least in (max(outer, choices.outer_at_least), max(outer, _with_land(settings))):
        coarse = [round(least + 0.02 + AWAY_STEPS[0] * k, 6) for k in range(round(MOST_AWAY / AWAY_STEPS[0]) + 1)]
        middle = max(coarse, key=spare)
        fine = [round(middle + AWAY_STEPS[1] * k, 6) for k in range(-FINER, FINER + 1)]
        best = at(max((away for away in fine if away > least), key=spare))
        if best is not None:
            found.append((with_walls(best[1], walls),))
    return found


def _with_land(settings: Settings) -> float:
    """mm from the mid-line to the border that leave land for the clamp beside the beam of a slender rib."""
    return USUAL_HALF + settings.beam_margin + settings.limit("clamp-land", "min")
