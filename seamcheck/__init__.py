"""Pre-checks the CAD of laser-welded plastic housings.

``import seamcheck`` loads no CAD kernel; that happens in a child process when a model is read.
"""

__version__ = "0.1.0"
