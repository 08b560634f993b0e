"""The store of surveys and plans."""
