"""The coverage map of an edition on paper and for other programs."""
