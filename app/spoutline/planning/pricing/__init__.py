"""Exact prices: lists, discounts, labour, freight, tax, rounding."""
