"""How fast seamcheck is, as ratios against the kernel and against general-purpose libraries."""
