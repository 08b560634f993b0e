"""Plans as PDF, CSV and XLSX."""
