"""The phrases of one language, complete before any of them is used, and the lists of what they must hold."""
