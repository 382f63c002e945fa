"""Settings of all tests."""

import os

from hypothesis import settings

os.environ["SEAMCHECK_CACHE"] = ""  # tests measure what they test; those of the cache name a folder

# No time limit for a single example: on a busy machine a first example may take long without being wrong.
settings.register_profile("seamcheck", deadline=None)
settings.load_profile("seamcheck")
