"""The installer's work: papers, records, swaps, inspections."""
