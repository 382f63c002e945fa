"""From opposed faces to roles, beam and seam faces."""

from seamcheck.joint.find import find_joints
from seamcheck.joint.frame import Frame
from seamcheck.joint.joint import Joint

__all__ = ["Frame", "Joint", "find_joints"]
