"""Exact best-first search over port states, alternatives, minimal conflicts."""
