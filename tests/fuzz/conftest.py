"""How many variants the long run reviews."""

VARIANTS = 1500


def pytest_addoption(parser):
    parser.addoption("--variants", type=int, default=VARIANTS, help=f"damaged files of the long run ({VARIANTS})")
    parser.addoption("--keep", default="", help="file for what the long run found, as JSON")
    parser.addoption("--seconds", type=float, default=0.0, help="after which a variant counts as hanging (300)")
    parser.addoption("--first", type=int, default=10_000, help="seed of its first one (10000)")
