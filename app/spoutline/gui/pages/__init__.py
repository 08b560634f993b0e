"""One page per step of the walk."""
