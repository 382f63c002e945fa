"""From opposed faces to roles, beam and seam faces."""

from seamcheck.joint.find import find_joints
from seamcheck.joint.frame import Frame
from seamcheck.joint.joint import Joint
from seamcheck.joint.pieces import join_pieces

__all__ = ["Frame", "Joint", "find_joints", "join_pieces"]
