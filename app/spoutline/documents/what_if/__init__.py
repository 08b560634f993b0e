"""Today and another answer side by side on paper."""
