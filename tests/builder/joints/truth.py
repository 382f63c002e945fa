"""What a case of recognition is: parts, and which joint they have or why there is none; imports no kernel.

Every case is drawn from stated dimensions, so that its answer follows from them by hand. Names are neutral ('part 1',
'part 2' in file order) and nothing is coloured: only geometry tells.
"""

from __future__ import annotations

import hashlib
from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from typing import Any

import numpy as np

from ..hard.truth import Node

DOWN = (0.0, 0.0, -1.0)


@dataclass(frozen=True)
class JointTruth:
    """One joint that must be found.

    Attributes
    ----------
    kinds : kinds of joint that are right, the true name first
    cover, base : index of the part; in a finished case in file order, so that its id is ``p{index + 1}``
    beam : unit vector of the light
    closed : whether the seam returns to its start
    either : whether the roles can't be told by geometry, so that both ways are right
    must : must-fix rules that have to be found; besides them only ``may`` may be must-fix (None: any)
    """

    kinds: tuple[str, ...]
    cover: int = 1
    base: int = 0
    beam: tuple[float, float, float] = DOWN
    closed: bool = True
    either: bool = False
    must: tuple[str, ...] = ()
    may: tuple[str, ...] | None = ()


@dataclass(frozen=True, eq=False)
class JointCase:
    """Parts and the right answer.

    Attributes
    ----------
    root : product tree, as for a hard model
    joints : every joint; () where the right answer is a refusal
    reasons : codes of a refusal that are right; where joints are given, honest answers that are allowed as well
    says : regular expressions that a refusal's sentence must match, each (case ignored)
    volume : mm³ that a refusal must name within 2 %, 0 for none
    most : findings above a note, at most
    note : one sentence
    """

    root: Node
    joints: tuple[JointTruth, ...] = ()
    reasons: tuple[str, ...] = ()
    says: tuple[str, ...] = ()
    volume: float = 0.0
    most: int = 6
    note: str = ""
    unit: str = "mm"
    schema: str = "AP214"

    @property
    def kind(self) -> str:
        """In a word: the true kinds, or the first code of the refusal."""
        return " + ".join(joint.kinds[0] for joint in self.joints) or f"not reviewed ({self.reasons[0]})"


def case(
    bodies: Sequence[Any],
    *joints: JointTruth,
    order: Sequence[int] | None = None,
    turn: np.ndarray | None = None,
    note: str,
    **more: Any,
) -> JointCase:
    """Bodies as neutral parts of one assembly.

    Parameters
    ----------
    joints : their cover and base count in ``bodies``
    order : of the bodies in the file; as given where None
    turn : (4, 4) rigid motion of the whole
    """
    order = tuple(range(len(bodies))) if order is None else tuple(order)
    motion = np.eye(4) if turn is None else turn
    nodes = (Node(f"part {i}", bodies[which]) for i, which in enumerate(order, start=1))
    root = Node("assembly", None, tuple((node, motion) for node in nodes))
    return JointCase(root, tuple(_placed(joint, order, motion) for joint in joints), note=note, **more)


def _placed(joint: JointTruth, order: Sequence[int], motion: np.ndarray) -> JointTruth:
    x, y, z = motion[:3, :3] @ np.asarray(joint.beam)
    beam = (float(x), float(y), float(z))
    return replace(joint, cover=order.index(joint.cover), base=order.index(joint.base), beam=beam)


def half(name: str) -> str:
    """Which half of the set a case belongs to: 'choose' (thresholds are chosen on it) or 'prove'.

    By the parity of the first byte of the SHA-256 of its name, so that nobody picks.
    """
    return "choose" if hashlib.sha256(name.encode()).digest()[0] % 2 == 0 else "prove"


def named(*makers: Callable[[], JointCase], **drawn: Callable[[], JointCase]) -> dict[str, Callable[[], JointCase]]:
    """Cases by name, with dashes for underscores."""
    found = {maker.__name__: maker for maker in makers} | drawn
    return {name.replace("_", "-"): maker for name, maker in found.items()}
