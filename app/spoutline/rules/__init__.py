"""Requirement derivation, part, joint and set rules, checks over the physics."""
