"""Sets weighed against each other on paper."""
