"""What a document says, as a pure tree of blocks, before any thought of paper."""
