"""A whole station planned for a refit: options, commonality, spares, consumables, the quotation."""
