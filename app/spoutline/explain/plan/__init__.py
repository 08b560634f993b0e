"""A plan told in ordered sentences."""
