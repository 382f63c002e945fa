"""Words of the report, each with a small drawing. Definitions of quantities come from their declaration."""

from __future__ import annotations

from markupsafe import Markup
from msgspec import Struct

from seamcheck.catalogue.voice import tr
from seamcheck.report.language import definition, detail, quantity_title

_JOINT = (
    '<path class="g-base" d="M50 34V56H36V43H26V64H46V80H74V64H94V43H84V56H70V34Z"/>'
    '<path class="g-cover" d="M6 13H108V34H6Z"/>'
)


class Word(Struct, frozen=True):
    """One entry: the word, what it means, a drawing (SVG elements in a 120 x 84 window) and what else is to know."""

    title: str
    text: str
    drawing: Markup
    detail: str = ""


def _word(title: str, text: str, marks: str, joint: str = _JOINT, detail: str = "") -> Word:
    return Word(title, text, Markup(joint + marks), detail)  # constants of this file only


def _quantity(key: str, marks: str, joint: str = _JOINT) -> Word:
    return _word(quantity_title(key), definition(key), marks, joint, detail(key))


def _across(x0: int, x1: int, y: int, foot: int) -> str:
    return (
        f'<path class="g-thin" d="M{x0} {foot}V{y - 3}M{x1} {foot}V{y - 3}"/>'
        f'<path class="g-dim" d="M{x0} {y}H{x1}M{x0 + 5} {y - 2}L{x0} {y}L{x0 + 5} {y + 2}'
        f'M{x1 - 5} {y - 2}L{x1} {y}L{x1 - 5} {y + 2}"/>'
    )


def _along(y0: int, y1: int, x: int, foot: int) -> str:
    return (
        f'<path class="g-thin" d="M{foot} {y0}H{x + 3}M{foot} {y1}H{x + 3}"/>'
        f'<path class="g-dim" d="M{x} {y0}V{y1}M{x - 2} {y0 + 5}L{x} {y0}L{x + 2} {y0 + 5}'
        f'M{x - 2} {y1 - 5}L{x} {y1}L{x + 2} {y1 - 5}"/>'
    )


def glossary() -> tuple[Word, ...]:
    """The words in the language of the report."""
    return (
        _word(
            tr("cover, base, weld rib"),
            tr(
                "The cover transmits the light, the base absorbs it. The weld rib is the narrow ridge between them "
                "that melts; it stands on the base, or hangs from the cover."
            ),
            '<path class="g-mark" d="M50 34H70V56H50Z"/>',
        ),
        _word(
            tr("station, s, inner, outer"),
            tr(
                "A station is a place on the mid-line of the rib top where a section is measured; s is its "
                "distance along the seam from the start. Seen along the beam, outer is away from what the seam "
                "encloses."
            ),
            '<rect class="g-cover" x="16" y="12" width="88" height="60" rx="10"/>'
            '<rect class="g-line" x="26" y="20" width="68" height="44" rx="7"/>'
            '<path class="g-dim" d="M60 12V30M56 30H64"/><circle class="g-mark" cx="60" cy="20" r="3"/>',
            "",
        ),
        _word(
            tr("collapse"),
            tr("How far the rib melts down and the cover sinks while it is welded. The planned one is a setting."),
            '<path class="g-melt" d="M50 34H70V42H50Z"/>' + _along(34, 42, 104, 70),
        ),
        _quantity("rib_width", _across(50, 70, 7, 34)),
        _quantity("rib_height", _along(34, 56, 110, 70)),
        _quantity("melt_area", '<path class="g-melt" d="M50 34H70V42H50Z"/>'),
        _word(
            tr("flash trap"),
            definition("trap_area_inner"),
            '<path class="g-mark" d="M36 42H50V56H36ZM70 42H84V56H70Z"/>',
            detail=detail("trap_area_inner"),
        ),
        _quantity("lip_gap_inner", '<path class="g-mark" d="M26 34H36V43H26ZM84 34H94V43H84Z"/>'),
        _quantity("clamp_land", _across(70, 108, 7, 13) + '<path class="g-heavy" d="M70 13H108"/>'),
        _quantity("cover_thickness", _along(13, 34, 114, 60)),
        _quantity(
            "gap",
            _along(30, 38, 104, 70),
            '<path class="g-base" d="M50 38V56H36V43H26V64H46V80H74V64H94V43H84V56H70V38Z"/>'
            '<path class="g-cover" d="M6 9H108V30H6Z"/>',
        ),
        _quantity(
            "free_travel",
            _along(34, 52, 104, 98),
            '<path class="g-base" d="M50 34V56H36V43H26V64H46V80H74V64H84V56H108V52H112V72H84V56H70V34Z"/>'
            '<path class="g-cover" d="M6 13H112V34H6Z"/>',
        ),
        _quantity(
            "beam_clear",
            '<path class="g-light" d="M50 0H70V34H50Z"/>'
            '<path class="g-dim" d="M56 2V28M64 2V28M53 24L56 30L59 24M61 24L64 30L67 24"/>',
        ),
        _quantity("slenderness", _along(34, 56, 104, 70) + _across(50, 70, 47, 46)),
        _quantity("wall_width", _across(46, 74, 72, 64)),
        _quantity(
            "corner_radius",
            '<path class="g-line" d="M20 74V44A30 30 0 0 1 50 14H104"/>'
            '<path class="g-dim" d="M50 44L29 23M29 28V23H34"/>'
            '<circle class="g-mark" cx="50" cy="44" r="2.5"/>',
            "",
        ),
    )
