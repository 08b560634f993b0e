"""Drawings as primitives in metres, the same for screen and paper."""
