"""Dialogs: surveys, site, copying answers, jurisdictions."""
