"""The owner's conversion report, its charts, its calendar."""
