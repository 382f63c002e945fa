"""Which solids of one product are joined, whatever part is named, and which are not."""

from __future__ import annotations

import pytest
from builder.hard import HardModel, Node, write_model
from builder.hard.strangers import HERE, PLAIN, common
from builder.hard.truth import moved_by
from builder.ops import compound, cut, cylinder
from builder.pair import draw
from builder.solid import moved, volume
from msgspec.structs import replace

from seamcheck.assembly import read_assembly
from seamcheck.errors import NotReviewed
from seamcheck.joint import join_pieces
from seamcheck.settings.settings import Settings


def read(folder, base, *lid):
    root = Node("station", None, ((Node("case", base), HERE), (Node("lid", compound(lid)), HERE)))
    return read_assembly([write_model(folder / "a.step", HardModel(root))])


def painted(assembly, ident):
    """The assembly with one part in another colour."""
    parts = (replace(p, colour=(1.0, 0.0, 0.0)) if p.id == ident else p for p in assembly.parts)
    return replace(assembly, parts=tuple(parts))


@pytest.mark.parametrize("named", [{}, {"cover": "lid"}, {"cover": "p3"}, {"cover": "p2", "base": "case"}])
def test_a_window_is_joined_with_its_frame_whatever_is_named(tmp_path, named):
    cover, base = draw(PLAIN)
    disc = cylinder((0, 0, -1), 9, 9)
    window, frame = common(cover, disc), cut(cover, disc)
    settings = Settings().changed(named)
    joined = join_pieces(read(tmp_path, base, frame, window), settings)
    case, lid, rest = joined.parts
    assert (lid.solids, rest.kind, rest.joined_to) == (2, "other", "p2")
    assert volume(lid.shape) == pytest.approx(volume(cover), rel=1e-9)
    assert lid.faces == len(lid.entities) == 10  # of the uncut plate: two level faces, eight round its edge
    assert all(lid.entities)
    assert case.solids == 1
    assert joined.notes[-1].startswith("'lid' (p2) is drawn as 2 solids of one product that touch (p2, p3)")


def test_layers_of_different_colour_are_refused_and_of_one_colour_joined(tmp_path):
    cover, base = draw(PLAIN)
    assembly = read(tmp_path, base, cover, moved(cover, moved_by(z=PLAIN.cover_thickness)))
    assert volume(join_pieces(assembly, Settings()).parts[1].shape) == pytest.approx(2 * volume(cover), rel=1e-9)
    with pytest.raises(NotReviewed, match="one behind the other") as caught:
        join_pieces(painted(assembly, "p3"), Settings())
    assert caught.value.code == "unsupported"


def test_what_touches_nothing_stays_a_part_of_its_own(tmp_path):
    cover, base = draw(PLAIN)
    assembly = read(tmp_path, base, cover, moved(cylinder((0, 0, 5), 4, 3), HERE))
    joined = join_pieces(assembly, Settings())
    assert [part.kind for part in joined.parts] == ["solid"] * 3
    assert joined.notes == assembly.notes
