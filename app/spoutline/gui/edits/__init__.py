"""Edits of the survey as values and commands."""
