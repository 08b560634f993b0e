"""The kinds of part, what they have in common, and where a part stands in its maker's range."""

from __future__ import annotations

from enum import StrEnum


class PartKind(StrEnum):
    """Kinds of part in the catalogue."""

    NOZZLE = "nozzle"
    SWIVEL = "swivel"
    SWIVEL_BREAKAWAY = "swivel_breakaway"
    CURB_HOSE = "curb_hose"
    WHIP_HOSE = "whip_hose"
    BREAKAWAY = "breakaway"
    ADAPTOR = "adaptor"
    SPLITTER = "splitter"
    CAP = "cap"
    HOSE_CLAMP = "hose_clamp"
    SEALANT = "sealant"
    LABEL = "label"


HOSES = (PartKind.CURB_HOSE, PartKind.WHIP_HOSE)
BREAKAWAYS = (PartKind.BREAKAWAY, PartKind.SWIVEL_BREAKAWAY)
HANGING_KINDS = (
    PartKind.NOZZLE,
    PartKind.SWIVEL,
    PartKind.SWIVEL_BREAKAWAY,
    PartKind.CURB_HOSE,
    PartKind.WHIP_HOSE,
    PartKind.BREAKAWAY,
    PartKind.ADAPTOR,
    PartKind.SPLITTER,
)
ACCESSORIES = (PartKind.CAP, PartKind.HOSE_CLAMP, PartKind.SEALANT, PartKind.LABEL)


class PartStatus(StrEnum):
    """Where a part stands in its maker's range."""

    ACTIVE = "active"
    SUPERSEDED = "superseded"
    DISCONTINUED = "discontinued"
