"""A joint that fits: room, section, bodies, and the review that proves it."""
