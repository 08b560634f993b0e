"""Reusable widgets without trade knowledge."""
