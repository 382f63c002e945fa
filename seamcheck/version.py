"""The version, in one place: the build, the documents and the command line take it from here."""

__version__ = "0.2.0"
