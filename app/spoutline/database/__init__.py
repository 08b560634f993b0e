"""What every store shares: one engine, one watch over its file, one way to migrate, one telling of faults."""
