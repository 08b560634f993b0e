"""Quantities at the edge: parse what people type, show SI values in their unit system."""
