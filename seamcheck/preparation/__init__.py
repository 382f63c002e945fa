"""From a review to a trial weld: clamp, nest and weld path as files."""
