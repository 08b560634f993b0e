"""What a keeper prints: price lists of an edition, and the table of rules of a jurisdiction."""
