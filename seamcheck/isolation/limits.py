"""What one job in a child may take unless other limits are given: seconds and MB."""

TIME_LIMIT_S = 600.0
MEMORY_LIMIT_MB = 4096.0
