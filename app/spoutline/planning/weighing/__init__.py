"""Sets weighed against each other on axes that a person chose."""
