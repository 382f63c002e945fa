"""``python -m seamcheck`` is the command ``seamcheck``."""

from seamcheck.cli import main

main()
