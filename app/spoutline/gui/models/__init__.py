"""Qt item models over values, tested without a window."""
