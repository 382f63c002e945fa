"""The only place that says within, at risk or outside: findings, causes and consequences, waivers, the verdict."""
