"""Settings of all tests."""

from hypothesis import settings

# No time limit for a single example: on a busy machine a first example may take long without being wrong.
settings.register_profile("seamcheck", deadline=None)
settings.load_profile("seamcheck")
