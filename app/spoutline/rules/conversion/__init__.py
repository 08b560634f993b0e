"""What may stay, go or be closed when a station is converted."""
