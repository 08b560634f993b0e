"""What a labour task is done for, and what makes up the net amount of a quotation."""

from __future__ import annotations

from enum import StrEnum


class Per(StrEnum):
    """What a labour task is done for once."""

    POSITION = "position"
    DISPENSER = "dispenser"
    SITE = "site"


class Charge(StrEnum):
    """What makes up the net amount, and what a tax may lie on."""

    GOODS = "goods"
    LABOUR = "labour"
    FREIGHT = "freight"
