"""What was measured on a model, kept for the next review of the same bytes under other limits.

Reading, finding, tracing and surveying take nearly all the time of a review and don't depend on limits, severities
and waivers. Their result is kept as plain values, never as code, in a folder that only the user can write.
"""
