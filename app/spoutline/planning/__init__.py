"""The use cases."""
