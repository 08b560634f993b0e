"""Bills as rows for spreadsheets."""
