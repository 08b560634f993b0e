"""The nominal sizes in which ports are made: a closed list, so that no free text can stand for a size."""

from __future__ import annotations

from enum import StrEnum


class NominalSize(StrEnum):
    """A nominal size as its thread standard writes it; ``model.port_sizes`` says which thread has which.

    Sources: ASME B1.20.1 and ISO 228-1 (inches; both lists from memory, 1/2 to 1-1/4 read in public tables); the two
    coaxial sizes are common practice, no source.
    """

    INCH_1_16 = "1/16"
    INCH_1_8 = "1/8"
    INCH_1_4 = "1/4"
    INCH_3_8 = "3/8"
    INCH_1_2 = "1/2"
    INCH_5_8 = "5/8"
    INCH_3_4 = "3/4"
    INCH_7_8 = "7/8"
    INCH_1 = "1"
    INCH_1_1_8 = "1-1/8"
    INCH_1_1_4 = "1-1/4"
    INCH_1_1_2 = "1-1/2"
    INCH_1_3_4 = "1-3/4"
    INCH_2 = "2"
    INCH_2_1_4 = "2-1/4"
    INCH_2_1_2 = "2-1/2"
    INCH_2_3_4 = "2-3/4"
    INCH_3 = "3"
    INCH_3_1_2 = "3-1/2"
    INCH_4 = "4"
    METRIC_34_1_5 = "34x1.5"
    UNIFIED_1_7_8_12 = "1-7/8-12"
