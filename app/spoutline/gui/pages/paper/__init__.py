"""A paper shown as it will be printed, printed, or written into a file."""
