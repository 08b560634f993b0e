"""Spoutline specifies the hanging hardware of motor-fuel dispensers."""

__version__ = "0.1.0"
