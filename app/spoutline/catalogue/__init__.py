"""The store of parts and prices."""
