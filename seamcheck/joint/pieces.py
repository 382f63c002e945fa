"""Cover or base drawn as several solids that touch: joined before the seam is traced.

Solids of one product that touch over faces are pieces of one part where the seam lies between two products: a rib
drawn by itself on its base, a cover cut in halves, a window in its frame. Where cover and base stand in one product,
the product tells nothing; then only solids that share a whole face are pieces: a part that was cut.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from itertools import combinations
from typing import TYPE_CHECKING

import numpy as np
from msgspec.structs import replace

from seamcheck.assembly.parts import Assembly, Part
from seamcheck.catalogue.message import message_of
from seamcheck.catalogue.say import refused, say
from seamcheck.errors import NotReviewed
from seamcheck.joint.find import Enumerated, Looked, between_others
from seamcheck.joint.light import column, inner_points
from seamcheck.joint.names import shown
from seamcheck.joint.outline import outline
from seamcheck.joint.reading import Reading
from seamcheck.kernel import Body
from seamcheck.kernel.boxes import boxes_meet
from seamcheck.settings.settings import Settings

if TYPE_CHECKING:
    from seamcheck.assembly.joining import Joined

_TOUCHING = 1e-3  # mm between boxes of solids that may touch
_SAME_FACE = 0.02  # mm: two faces whose boxes agree this closely are one face drawn from both sides
_ACROSS = 0.5  # share of the best score from which on a seam between two products goes before one within a product
_BESIDE = 10.0  # mm beside the seam within which a piece that can't be joined spoils the review
_MANY_FACES = 2000  # a solid with more is joined only beside the seam, as it takes long
_MOST_WAYS = 12  # pieces that are tried in place of a named one
_THINNEST = 0.01  # mm of a piece that count
_SOME = 0.02  # share of the seam over which light passes one piece behind the other

Pair = frozenset[str]


def join_pieces(assembly: Assembly, settings: Settings, seen: Looked | None = None) -> Assembly:
    """The assembly with the pieces of cover and base joined, each into the first of its pieces.

    A piece that was joined stays in the list of parts as kind 'other', with ``joined_to``; a note says what was
    joined. An assembly without several solids in one product comes back as it is. ``seen`` keeps what was looked at.

    Raises
    ------
    NotReviewed : unsupported, where pieces can't be joined, or light would pass pieces of different plastic; and as
        ``look`` does
    """
    seen = Looked() if seen is None else seen
    pieces: dict[str, list[Part]] = {}  # of a joined part, as they were read
    while True:
        products = _products(assembly)
        if not products and not pieces:
            return assembly
        cut = _cut(products, assembly)
        enumerated, reading = _enumerated(assembly, settings, products, cut, seen)
        if reading is None:
            _refuse_cut(cut, enumerated.parts)
            return assembly
        for ident in (reading.cover, reading.base):
            members = _companions(ident, reading, enumerated, products, cut)
            joined = _joined(ident, members, reading, enumerated, cut)
            if joined is not None:
                before = [piece for i in joined.pieces for piece in pieces.pop(i, [enumerated.parts[i]])]
                pieces[joined.part.id] = before
                assembly = _put(assembly, joined, before)
                break
        else:
            _check_light(reading, enumerated, pieces)
            return assembly


def _products(assembly: Assembly) -> list[list[str]]:
    """Ids of the solids of each placed product that holds several, in models with three solids or more."""
    solids = [part for part in assembly.parts if part.kind == "solid"]
    found: dict[int, list[str]] = {}
    for part in solids:
        if part.product is not None:
            found.setdefault(part.product, []).append(part.id)
    return [ids for ids in found.values() if len(ids) > 1] if len(solids) > 2 else []


def _cut(products: list[list[str]], assembly: Assembly) -> set[Pair]:
    """Pairs of solids of one product that share a whole face: one part that was cut in two."""
    shapes = {part.id: part.shape for part in assembly.parts}
    found: set[Pair] = set()
    for ids in products:
        bodies = {i: Body(shapes[i]) for i in ids}
        found |= {
            frozenset(pair)
            for pair in combinations(ids, 2)
            if _meet(*(bodies[i] for i in pair)) and _share_a_face(*(bodies[i] for i in pair))
        }
    return found


def _meet(a: Body, b: Body) -> bool:
    """Whether the boxes of two bodies meet."""
    return bool(boxes_meet(a.box, b.box, _TOUCHING))


def _share_a_face(a: Body, b: Body) -> bool:
    plane_a, plane_b = (np.flatnonzero(np.isfinite(body.planes[:, 0])) for body in (a, b))
    apart = np.abs(a.boxes[plane_a][:, None] - b.boxes[plane_b][None]).max(axis=2)
    opposite = a.planes[plane_a, :3] @ b.planes[plane_b, :3].T < -0.999
    return any(
        abs(_area(a, plane_a[i]) - _area(b, plane_b[j])) <= 0.01 * _area(a, plane_a[i])
        for i, j in np.argwhere(opposite & (apart < _SAME_FACE))
    )


def _area(body: Body, face: int) -> float:
    corners = body.facets([face], 0.05, 0.35).corners
    return float(
        np.linalg.norm(np.cross(corners[:, 1] - corners[:, 0], corners[:, 2] - corners[:, 0]), axis=1).sum() / 2
    )


def _enumerated(
    assembly: Assembly, settings: Settings, products: list[list[str]], cut: set[Pair], seen: Looked
) -> tuple[Enumerated, Reading | None]:
    """The likeliest reading; where a named piece has none, that of another piece of the same product."""
    meant = _without_doubt(settings, assembly, products)
    ways = [meant]
    for role in ("cover", "base"):
        mine = next((ids for ids in products if getattr(meant, role) in ids), [])
        ways += [meant.with_part(role, other) for other in mine if other not in (meant.cover, meant.base)]
    first: Enumerated | NotReviewed | None = None
    for way in ways[:_MOST_WAYS]:
        try:
            enumerated = between_others(seen(assembly, way), assembly, cut)
        except NotReviewed as refusal:
            first = first or refusal
            continue
        first = first or enumerated
        reading = _likeliest(enumerated)
        if reading is not None:
            return enumerated, reading
    if isinstance(first, NotReviewed):
        raise first
    assert first is not None  # there is always the way that is meant
    return first, None


def _without_doubt(settings: Settings, assembly: Assembly, products: list[list[str]]) -> Settings:
    """The settings, with an id where a name is that of several pieces of one product: of that with most faces."""
    parts = {part.id: part for part in assembly.parts}
    for role in ("cover", "base"):
        wanted = getattr(settings, role)
        named = [i for i, part in parts.items() if part.kind == "solid" and wanted in (part.name, "/".join(part.path))]
        if wanted and len(named) > 1 and any(set(named) <= set(ids) for ids in products):
            settings = settings.with_part(role, max(named, key=lambda i: parts[i].faces))
    return settings


def _likeliest(enumerated: Enumerated) -> Reading | None:
    """The best reading; one between two products where it is not much worse."""
    if enumerated.likeliest is None:
        return None
    best = enumerated.likeliest.candidate.score
    across = [r for r in enumerated.readings if _across(r, enumerated) and r.candidate.score >= _ACROSS * best]
    return max(across, key=lambda r: r.candidate.score, default=enumerated.likeliest)


def _across(reading: Reading, enumerated: Enumerated) -> bool:
    """Whether cover and base belong to two products."""
    one, other = (enumerated.parts[i].product for i in (reading.cover, reading.base))
    return one is not None and one != other


def _companions(
    ident: str, reading: Reading, enumerated: Enumerated, products: list[list[str]], cut: set[Pair]
) -> list[str]:
    """Solids that are pieces of the same part as a solid, itself first."""
    ids = next((ids for ids in products if ident in ids), [])
    seams = {frozenset((r.cover, r.base)) for r in enumerated.readings if r.candidate.stands_out}
    if _across(reading, enumerated):
        rivals = {i for i in ids if frozenset((i, ident)) in seams}
        links = {frozenset(p) for p in combinations(ids, 2) if _meet(*(enumerated.bodies[i] for i in p))} - seams
    else:
        rivals, links = {reading.cover, reading.base} - {ident}, cut
    found = [ident]
    for piece in found:  # grows during the loop
        found += [i for i in ids if i not in found and i not in rivals and frozenset((i, piece)) in links]
    return [
        i
        for i in found
        if enumerated.parts[i].faces <= _MANY_FACES or i == ident or _near_seam(enumerated.bodies[i], reading)
    ]


def _near_seam(body: Body, reading: Reading) -> bool:
    """Whether a body, seen along the light, reaches close to the seam."""
    around = outline(body, reading.candidate.frame).around
    return bool(around.distance(reading.candidate.region) < _BESIDE)


def _joined(ident: str, members: list[str], reading: Reading, enumerated: Enumerated, cut: set[Pair]) -> Joined | None:
    """A solid with its pieces in one; None where it has none."""
    from seamcheck.assembly.joining import join

    if len(members) < 2:
        return None
    parts = enumerated.parts
    if not _across(reading, enumerated) and not reading.candidate.stands_out:
        raise _in_pieces(members, parts)
    joined, left = join([parts[i] for i in members])
    spoilt = [i for i in left if frozenset((i, ident)) in cut or _near_seam(enumerated.bodies[i], reading)]
    if spoilt:
        raise _in_pieces([ident, *spoilt], parts)
    return joined


def _refuse_cut(cut: set[Pair], parts: Mapping[str, Part]) -> None:
    if cut:
        raise _in_pieces(sorted(set().union(*cut)), parts)


def _in_pieces(ids: Sequence[str], parts: Mapping[str, Part]) -> NotReviewed:
    return refused(
        "unsupported", "unsupported.pieces", part=shown(parts[ids[0]]), count=len(ids), pieces=", ".join(ids)
    )


def _put(assembly: Assembly, joined: Joined, before: list[Part]) -> Assembly:
    """The assembly with pieces replaced by the part that they make."""
    whole = joined.part
    ids = sorted((piece.id for piece in before), key=lambda ident: int(ident[1:]))
    parts = []
    for part in assembly.parts:
        if part.id == whole.id:
            part = replace(whole, solids=len(ids))
        elif part.id in joined.pieces or part.joined_to in joined.pieces:
            note = say("part.piece", part=shown(whole))
            part = replace(part, kind="other", solids=0, joined_to=whole.id, notes=(*part.notes, note))
        parts.append(part)
    of_pieces = {shown(piece) for piece in before}
    old = tuple(note for note in assembly.notes if _pieces_of(note) not in of_pieces)
    note = say("part.pieces", part=shown(whole), count=len(ids), pieces=", ".join(ids))
    return replace(assembly, parts=tuple(parts), notes=(*old, note))


def _pieces_of(note: str) -> object:
    """The part that a note on pieces speaks of; None for other notes."""
    said = message_of(note)
    return said.args["part"] if said.key == "part.pieces" else None


def _check_light(reading: Reading, enumerated: Enumerated, pieces: Mapping[str, list[Part]]) -> None:
    """Raise where light passes pieces of the cover one behind the other that are drawn as different plastics."""
    mine = pieces.get(reading.cover, [])
    if len({_look(piece) for piece in mine}) < 2:
        return
    region, frame = reading.candidate.region, reading.candidate.frame
    flat = inner_points(region)
    points = np.column_stack([flat, np.full(len(flat), reading.candidate.level)])
    sign = 1.0 if reading.through_counter else -1.0
    passed = np.array([column(points, sign, Body(piece.shape), frame)[1] > _THINNEST for piece in mine])
    stacked = passed.sum(axis=0) > 1
    if stacked.mean() > _SOME:
        over = [piece.id for piece, here in zip(mine, passed[:, stacked], strict=True) if here.any()]
        raise refused(
            "unsupported", "unsupported.colours", count=len(over), part=shown(enumerated.parts[reading.cover]),
            pieces=", ".join(over),
        )  # fmt: skip


def _look(piece: Part) -> tuple[float, ...]:
    return (*(round(value, 1) for value in piece.colour or ()), round(piece.transparency or 0.0, 1))
