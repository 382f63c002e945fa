"""``python -m seamcheck`` is the command ``seamcheck``."""

import os
import sys

_HOME = os.path.dirname(os.path.dirname(os.path.realpath(__file__)))
if not sys.flags.safe_path and sys.path and os.path.realpath(sys.path[0]) != _HOME:
    del sys.path[0]  # the working folder, which Python puts first: what lies there may be anybody's

from seamcheck.cli import main  # noqa: E402

main()
