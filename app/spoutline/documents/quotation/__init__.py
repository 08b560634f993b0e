"""Quotations on paper and as tables."""
