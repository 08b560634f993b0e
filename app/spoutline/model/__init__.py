"""Frozen typed values of the trade: liquid, port, part, survey, requirement, set, finding, check."""
