"""What a user can set: one class for a settable number, all tables, their file, waivers."""
