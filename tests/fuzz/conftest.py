"""How many variants the long run reviews, and how."""

from fuzz_options import OPTIONS


def pytest_addoption(parser):
    for name, (default, meaning) in OPTIONS.items():
        parser.addoption(f"--{name}", type=type(default), default=default, help=f"{meaning} ({default})")
