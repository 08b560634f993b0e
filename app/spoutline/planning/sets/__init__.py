"""Which sets a station gets: candidates, the best set of each position, its alternatives, or the conflict."""
