"""The window."""

from __future__ import annotations
