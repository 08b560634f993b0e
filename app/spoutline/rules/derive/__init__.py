"""What a position asks of its set, derived from the survey."""
