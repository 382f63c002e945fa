"""Reading STEP files: product structure, names, placements, units, entity numbers, plausibility."""
