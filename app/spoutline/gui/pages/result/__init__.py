"""The outcome of a position and the bill of the site."""
