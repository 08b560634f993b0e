"""Any supplier's table turned into parts of a catalogue: read, mapped, typed, repaired, compared. No Qt, no store."""
