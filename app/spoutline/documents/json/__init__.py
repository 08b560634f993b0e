"""Plans, conversions and substitutes as stable JSON documents."""
