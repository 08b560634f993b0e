"""File names made of names that a person gave."""

from __future__ import annotations


def file_stem(name: str) -> str:
    """Return a file name for a site: letters, digits and dashes only."""
    words = "".join(character if character.isalnum() else " " for character in name).split()
    return "-".join(words)[:60] or "site"
