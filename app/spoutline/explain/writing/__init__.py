"""Formulas, money and numbers as they are read."""
