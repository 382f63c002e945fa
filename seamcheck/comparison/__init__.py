"""Compare two revisions of a model: findings fixed, new and remaining, and what changed along the seam."""
