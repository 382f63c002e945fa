"""The review document: made, checked, written."""
