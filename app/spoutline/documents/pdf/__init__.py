"""Content trees set as PDF pages."""
