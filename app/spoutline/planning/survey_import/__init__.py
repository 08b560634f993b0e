"""A survey out of a spreadsheet: read, map columns to questions, check every cell."""
