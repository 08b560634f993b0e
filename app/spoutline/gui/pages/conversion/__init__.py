"""The conversion of the site."""
