"""Findings, checks and conflicts as ordered sentences."""
