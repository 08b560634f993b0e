"""The start view."""
