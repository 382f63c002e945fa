"""The labelled drawing of the joint: every letter that definitions use, once, to one made-up section.

``python -m seamcheck.report.joint_drawing`` writes docs/joint.svg; the page shows the same drawing above its words.
"""

from __future__ import annotations

import re
from pathlib import Path

from markupsafe import Markup, escape

from seamcheck.catalogue.voice import tr

LETTERS: dict[str, str] = {
    "P": "station: the middle of the rib top, where heights begin",
    "u": "direction across the seam, outward",
    "v": "direction against the beam",
    "c": "planned collapse: how far the cover sinks as the rib melts",
    "w": "rib width",
    "h": "rib height, from the trap floor to P",
    "g": "gap between rib top and opposite part as drawn",
    "t": "cover thickness over the rib",
    "A": "flash trap area, after the collapse",
    "b": "lip gap that closes the trap, after the collapse",
    "l": "clamp land beside the beam",
    "f": "free travel of the cover until it touches anything but the rib",
    "R": "corner radius of the mid-line, seen along the beam",
    "d": "distance from P to the middle of the flash trap's area",
}
"""Letter -> what it stands for; the definitions of quantities use the same ones."""

_STYLE = """
svg.joint { background: #fdfcf8; font: 600 15px Barlow, sans-serif; }
.joint .cover { fill: #cfe4ec; stroke: #2b6377; stroke-width: 2; }
.joint .base { fill: #ddd4c3; stroke: #4a3f2d; stroke-width: 2; }
.joint .light { fill: #ffd23d; opacity: .45; }
.joint .melt { fill: #ee5b2b; opacity: .85; } .joint .trap { fill: #d9cdf0; }
.joint .line { fill: none; stroke: #18222a; stroke-width: 1.3; }
.joint .thin { fill: none; stroke: #52606a; stroke-width: .8; }
.joint .moved { fill: none; stroke: #2b6377; stroke-width: 1.3; stroke-dasharray: 11 3 2 3 2 3; }
.joint text { fill: #18222a; } .joint .name { font-weight: 500; font-size: 14px; fill: #52606a; }
"""

_S = 60.0  # pixels for each mm of the made-up section
_X, _Y = 330.0, 210.0  # where P lies
_W, _H, _C, _T, _TRAP, _LIP, _LAND = 1.4, 1.5, 0.5, 1.8, 1.5, 0.25, 2.4  # mm


def joint_drawing(with_style: bool = True) -> Markup:
    """The drawing as an SVG element; its own style within, or the page's."""
    half, outer = _W / 2, _W / 2 + _TRAP
    bead = -_C - _LIP
    base = [
        (-half, 0), (-half, -_H), (-outer, -_H), (-outer, bead), (-outer - 0.8, bead), (-outer - 0.8, -_H - 1.0),
        (outer + 0.8, -_H - 1.0), (outer + 0.8, bead), (outer, bead), (outer, -_H), (half, -_H), (half, 0),
    ]  # fmt: skip
    cover = [(-3.6, 0), (-3.6, _T), (half + _LAND + 0.5, _T), (half + _LAND + 0.5, 0)]
    trap = [(half, -_H), (outer, -_H), (outer, -_C), (half, -_C)]
    parts = [
        _shape("light", [(-half, 0), (-half, _T + 0.9), (half, _T + 0.9), (half, 0)]),
        _shape("trap", trap),
        _shape("trap", [(-u, v) for u, v in trap]),
        _shape("cover", cover),
        _shape("base", base),
        _shape("melt", [(-half, 0), (half, 0), (half, -_C), (-half, -_C)]),
        _shape("moved", [(u, v - _C) for u, v in cover]),
        _across("w", -half, half, _T + 0.45),
        _across("l", half, half + _LAND, _T + 0.18),
        _along("h", -half, -4.35, 0, -_H),
        _along("t", half + _LAND + 0.5, half + _LAND + 1.0, _T, 0),
        _along("c", half, 2.45, 0, -_C),
        _along("b", outer, outer + 0.45, -_C, bead),
        _along("f", -outer - 0.4, -3.3, 0, bead),
        _letter("A", half + _TRAP / 2, -1.1),
        _letter("A", -half - _TRAP / 2, -1.1),
        _letter("P", 0.12, 0.12),
        f'<circle class="line" cx="{_X}" cy="{_Y}" r="3"/>',
        _letter("g", -0.4, 0.12),
        _axes(),
        _corner(),
        _name(tr("cover, transmits the light"), -3.45, _T - 0.35),
        _name(tr("base"), -1.9, -_H - 0.6),
        _name(tr("weld rib"), -0.45, -1.0),
        _name(tr("beam"), -half + 0.1, _T + 0.72),
        _name(tr("dashed: after the collapse"), -3.45, _T - 0.78),
    ]
    legend = "".join(
        f'<text x="690" y="{44 + 27 * k}">{letter}<tspan class="name" dx="12">{escape(tr(text))}</tspan></text>'
        for k, (letter, text) in enumerate(LETTERS.items())
    )
    style = f"<style>{_STYLE}</style>" if with_style else ""
    return Markup(
        f'<svg class="joint" xmlns="http://www.w3.org/2000/svg" viewBox="0 0 1180 420" role="img" '
        f'aria-label="{escape(tr("The joint in section, with the letters that definitions use"))}">'
        f"{style}{''.join(parts)}{legend}</svg>"
    )


def letters_in(text: str) -> list[str]:
    """'P: station ...' for every letter of the drawing that a definition uses as a word of its own."""
    words = set(re.findall(r"(?<![A-Za-z'])[B-Zb-z](?![A-Za-z])|(?<=[a-z] )A(?![A-Za-z])", text))
    return [f"{letter}: {meaning}" for letter, meaning in LETTERS.items() if letter in words]


def _at(u: float, v: float) -> str:
    return f"{_X + _S * u:.1f} {_Y - _S * v:.1f}"


def _shape(name: str, points: list[tuple[float, float]]) -> str:
    return f'<path class="{name}" d="M{"L".join(_at(*p) for p in points)}Z"/>'


def _letter(text: str, u: float, v: float) -> str:
    x, y = _at(u, v).split()
    return f'<text x="{x}" y="{y}">{text}</text>'


def _name(text: str, u: float, v: float) -> str:
    x, y = _at(u, v).split()
    return f'<text class="name" x="{x}" y="{y}">{escape(text)}</text>'


def _tick(u: float, v: float, du: float, dv: float) -> str:
    return f"M{_at(u - du, v - dv)}L{_at(u + du, v + dv)}"


def _across(letter: str, u0: float, u1: float, v: float) -> str:
    extensions = f'<path class="thin" d="M{_at(u0, 0)}L{_at(u0, v + 0.08)}M{_at(u1, 0)}L{_at(u1, v + 0.08)}"/>'
    line = f'<path class="line" d="M{_at(u0, v)}L{_at(u1, v)}{_tick(u0, v, 0.06, 0.06)}{_tick(u1, v, 0.06, 0.06)}"/>'
    return extensions + line + _letter(letter, (u0 + u1) / 2 - 0.08, v + 0.08)


def _along(letter: str, foot: float, u: float, v0: float, v1: float) -> str:
    extensions = f'<path class="thin" d="M{_at(foot, v0)}L{_at(u, v0)}M{_at(foot, v1)}L{_at(u, v1)}"/>'
    line = f'<path class="line" d="M{_at(u, v0)}L{_at(u, v1)}{_tick(u, v0, 0.06, 0.06)}{_tick(u, v1, 0.06, 0.06)}"/>'
    return extensions + line + _letter(letter, u + 0.1, (v0 + v1) / 2 - 0.08)


def _corner() -> str:
    """A corner of the seam, seen along the beam: the mid-line and the outer flash trap's middle."""
    x, y, radius, out = 572, 402, 62, 24
    mid, trap = radius, radius + out
    near, far = (f"{x + 0.5 * r:.1f} {y - 0.866 * r:.1f}" for r in (mid, trap))
    return (
        f'<path class="line" d="M{x} {y - mid}A{mid} {mid} 0 0 1 {x + mid} {y}M{x} {y}L{near}"/>'
        f'<path class="moved" d="M{x} {y - trap}A{trap} {trap} 0 0 1 {x + trap} {y}"/>'
        f'<path class="thin" d="M{near}L{far}"/><circle class="line" cx="{x}" cy="{y}" r="2"/>'
        f'<text x="{x + 22}" y="{y - 20}">R</text><text x="{x + 52}" y="{y - 40}">d</text>'
    )


def _axes() -> str:
    u, v = -4.9, -2.4
    return (
        f'<path class="line" d="M{_at(u, v)}L{_at(u + 0.9, v)}M{_at(u + 0.8, v + 0.06)}L{_at(u + 0.9, v)}L'
        f"{_at(u + 0.8, v - 0.06)}M{_at(u, v)}L{_at(u, v + 0.9)}M{_at(u - 0.06, v + 0.8)}L{_at(u, v + 0.9)}L"
        f'{_at(u + 0.06, v + 0.8)}"/>{_letter("u", u + 1.0, v - 0.05)}{_letter("v", u - 0.05, v + 1.0)}'
    )


if __name__ == "__main__":
    target = Path(__file__).parents[2] / "docs" / "joint.svg"
    target.write_text(joint_drawing() + "\n", encoding="utf-8")
