"""Cover or base drawn as several solids of one product: cut, glued in, set on (OCP)."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from typing import Any

from ..ops import box, compound, cut, cylinder
from ..pair import CLEAR, DARK, draw
from ..solid import moved
from ..spec import Spec
from ..track import ellipse
from .strangers import HERE, PLAIN, common, plate, wall
from .truth import HardModel, Node, SeamTruth, along, broken, motion, moved_by, values_of

TURNED = motion((35, -20, 50), (20, -30, 10))
DRAFTED = replace(PLAIN, draft_inner=1.0, draft_outer=1.5, top_fillet=0.15, root_fillet=0.1)
FAR = 99.0


def _halves(shape: Any, x: float = -FAR, y: float = -FAR, z: float = -FAR) -> Any:
    """A compound of what lies beyond a corner and the rest."""
    tool = box((x, y, z), (FAR, FAR, FAR))
    return compound([cut(shape, tool), common(shape, tool)])


def _model(spec: Spec, base: Any, cover: Any, pieces: tuple[int, int], note: str, **more: Any) -> HardModel:
    """Base and cover as products, drawn as so many pieces; the joined part has the id of its first."""
    nodes = (Node("sensor housing", base, colour=DARK), Node("window lid", cover, colour=CLEAR))
    root = Node("weather station", None, tuple((node, HERE) for node in nodes))
    values = values_of(spec)
    cover_at = pieces[0]
    rest = [(0, i) for i in range(1, pieces[0])] + [(cover_at, cover_at + i) for i in range(1, pieces[1])]
    path = along(spec.track, values)
    seam = SeamTruth(cover_at, 0, (path,), rules=broken(values), rib_on=spec.rib_on, pieces=tuple(rest))
    said = [name for name, many in zip(("sensor housing", "window lid"), pieces, strict=True) if many > 1]
    says = tuple(f"'{name}' (p{1 + cover_at * (name != 'sensor housing')}) is drawn as 2 solids" for name in said)
    return HardModel(root, (seam,), note=note, says=says, **more)


def cover_in_two_pieces() -> HardModel:
    cover, base = draw(PLAIN)
    return _model(PLAIN, base, _halves(cover, y=0.0), (1, 2), "A cover cut in two.")


def base_in_two_pieces() -> HardModel:
    cover, base = draw(DRAFTED)
    model = _model(DRAFTED, _halves(base, y=4.3), cover, (2, 1), "A base cut beside its middle, turned.")
    return model.turned(TURNED)


def base_on_a_floor_of_its_own() -> HardModel:
    cover, base = draw(PLAIN)
    return _model(PLAIN, _halves(base, z=-9.0), cover, (2, 1), "The base's walls stand on a lower shell.")


def cover_in_two_pieces_with_spline_faces() -> HardModel:
    spec = replace(PLAIN, track=ellipse(40, 27))
    cover, base = draw(spec)
    model = _model(spec, base, _halves(cover, x=3.0), (1, 2), "A cut cover with spline faces, turned.")
    return model.turned(TURNED)


def rib_of_the_base_as_a_solid() -> HardModel:
    """As rib-of-its-own, but the rib is a solid of the base's product."""
    cover, base = draw(PLAIN)
    ring = wall(PLAIN.track, -0.6, 0.6, -0.9, 0.0)
    pieces = compound([cut(base, wall(PLAIN.track, -0.6, 0.6, -0.9, 1.0)), ring])
    return _model(PLAIN, pieces, cover, (2, 1), "The rib is a solid on the base's trap floor.")


def rib_of_the_cover_as_a_solid() -> HardModel:
    spec = replace(PLAIN, rib_on="cover")
    cover, base = draw(spec)
    ring, room = (wall(spec.track, -0.6, 0.6, z, 0.9) for z in (0.0, -1.0))
    model = _model(spec, base, compound([cut(cover, room), ring]), (1, 2), "The rib is a solid under the cover.")
    return model.turned(TURNED)


def window_in_a_frame() -> HardModel:
    """A cover of two shots: a round window in a frame that carries the seam."""
    cover, base = draw(PLAIN)
    window = cylinder((2, 1, -9), 9.0, 30)
    pieces = compound([common(cover, window), cut(cover, window)])
    return _model(PLAIN, base, pieces, (1, 2), "A cover of window and frame.")


def cut_cover_and_base_in_one_product() -> HardModel:
    """Everything in one product: only the shared face tells that two of three solids are one part."""
    cover, base = draw(PLAIN)
    tool = box((-FAR, 0, -FAR), (FAR, FAR, FAR))
    root = Node("sensor", compound([base, cut(cover, tool), common(cover, tool)]))
    values = values_of(PLAIN)
    seam = SeamTruth(1, 0, (along(PLAIN.track, values),), pieces=((1, 2),))
    return HardModel(root, (seam,), note="Base and both halves of the cover in one product.", says=("2 solids",))


def rib_between_cover_and_base_in_one_product() -> HardModel:
    """Nothing tells whether the rib belongs to the base or to the cover."""
    case = cut(plate(PLAIN.track, 3, -16, -0.9), plate(PLAIN.track, -3, -14, 1))
    ring, lid = wall(PLAIN.track, -0.6, 0.6, -0.9, 0), plate(PLAIN.track, 4, 0, 2)
    root = Node("sensor", compound([case, ring, lid]))
    return HardModel(root, (), ("unsupported",), "Base, rib and cover in one product.", says=("Unite",))


def cover_of_two_plastics_in_layers() -> HardModel:
    """A cover of two shots, one over the other: whether the upper one lets light through can't be seen."""
    cover, base = draw(PLAIN)
    upper = moved(cover, moved_by(z=PLAIN.cover_thickness))
    lid = Node("window lid", None, ((Node("lower", cover, colour=CLEAR), HERE), (Node("upper", upper), HERE)))
    root = Node("weather station", None, ((Node("sensor housing", base, colour=DARK), HERE), (lid, HERE)))
    values = values_of(PLAIN, ("clamp_land", "clamp_tilt", "beam_clear"), beam_clear=0.0)
    seam = SeamTruth(1, 0, (along(PLAIN.track, values),), rules=("beam-path", "clamp-land"))
    return HardModel(root, (seam,), note="Two products, one over the other, stay two parts.")


PIECES: dict[str, Callable[[], HardModel]] = {
    f.__name__.replace("_", "-"): f
    for f in (
        cover_in_two_pieces,
        base_in_two_pieces,
        base_on_a_floor_of_its_own,
        cover_in_two_pieces_with_spline_faces,
        rib_of_the_base_as_a_solid,
        rib_of_the_cover_as_a_solid,
        window_in_a_frame,
        cut_cover_and_base_in_one_product,
        rib_between_cover_and_base_in_one_product,
        cover_of_two_plastics_in_layers,
    )
}
