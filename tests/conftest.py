"""Settings of all tests."""

import os
from pathlib import Path

from hypothesis import settings

from seamcheck.isolation import imports

os.environ["SEAMCHECK_CACHE_SECRET"] = "of the tests"  # leaves the user's own alone
os.environ["SEAMCHECK_CACHE"] = ""  # tests measure what they test; those of the cache name a folder

# jobs of the tests' own: their children import from the folders of the tests, too
imports.ALSO += [str(folder) for folder in Path(__file__).parent.glob("**/") if folder.name != "__pycache__"]

# No time limit for a single example: on a busy machine a first example may take long without being wrong. The quick
# suite draws the same examples each time, so that it judges a change and not its luck; the long one draws new ones.
settings.register_profile("quick", deadline=None, derandomize=True)
settings.register_profile("thorough", deadline=None, print_blob=True)
settings.load_profile(os.environ.get("HYPOTHESIS_PROFILE", "quick"))
