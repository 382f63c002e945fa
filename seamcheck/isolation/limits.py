"""What one job in a child may take: seconds and MB unless other limits are given, and one thread."""

TIME_LIMIT_S = 600.0
MEMORY_LIMIT_MB = 4096.0

ONE_THREAD = dict.fromkeys(("OMP_NUM_THREADS", "OPENBLAS_NUM_THREADS", "MKL_NUM_THREADS"), "1")
"""Environment in which numpy's linear algebra starts no threads: the arrays here are small, and threads that wait for
work spin, which costs 0.1 s of CPU and more in every process."""
