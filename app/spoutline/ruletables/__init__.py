"""Rule tables from resources/rules: limits and jurisdictions."""
