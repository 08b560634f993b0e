"""Computed quantities held against their limits."""
