"""The page of a comparison: self-contained, without a script."""
