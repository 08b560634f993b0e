"""A conversion told in ordered sentences."""
