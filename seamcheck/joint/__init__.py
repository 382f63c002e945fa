"""From opposing faces to roles, beam and seam faces."""

from __future__ import annotations

from importlib import import_module
from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from seamcheck.joint.find import Looked, find_joints
    from seamcheck.joint.frame import Frame
    from seamcheck.joint.joint import Joint
    from seamcheck.joint.pieces import join_pieces

__all__ = ["Frame", "Joint", "Looked", "find_joints", "join_pieces"]

_WHERE = {"find_joints": "find", "Frame": "frame", "Joint": "joint", "Looked": "find", "join_pieces": "pieces"}


def __getattr__(name: str) -> Any:
    """Import the finding only when asked for: judging needs the facts of a joint, not the CAD kernel."""
    if name in _WHERE:
        return getattr(import_module(f"seamcheck.joint.{_WHERE[name]}"), name)
    raise AttributeError(name)
