"""The quotations: offer, prices, revisions, book."""
