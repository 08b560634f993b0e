"""Wetted materials and how well they stand each class of liquid."""

from __future__ import annotations

from dataclasses import dataclass, field
from enum import StrEnum
from functools import cached_property
from typing import Any

from spoutline.frozen import frozen


class Material(StrEnum):
    """Materials that touch the liquid."""

    FKM = "fkm"
    FLUOROSILICONE = "fluorosilicone"
    NBR = "nbr"
    NEOPRENE = "neoprene"
    SBR = "sbr"
    SILICONE = "silicone"
    POLYURETHANE = "polyurethane"
    NATURAL_RUBBER = "natural_rubber"
    EPDM = "epdm"
    PTFE = "ptfe"
    POLYAMIDE = "polyamide"
    HDPE = "hdpe"
    POLYPROPYLENE = "polypropylene"
    CORK_LEATHER = "cork_leather"
    STAINLESS_STEEL = "stainless_steel"
    CARBON_STEEL = "carbon_steel"
    ALUMINIUM = "aluminium"
    BRASS = "brass"
    COPPER_BRONZE = "copper_bronze"
    ZINC = "zinc"
    LEAD_TIN = "lead_tin"


class MaterialColumn(StrEnum):
    """Columns of the material table: the liquid as a material sees it."""

    E10 = "E10"
    E25 = "E25"
    E85 = "E85"
    B5 = "B5"
    B20 = "B20"
    B100 = "B100"
    DEF = "DEF"


class Suitability(StrEnum):
    """The verdict of the material table."""

    SUITABLE = "suitable"
    CAUTION = "caution"
    UNSUITABLE = "unsuitable"


@frozen
class MaterialEntry:
    """One cell of the material table with its basis."""

    material: Material
    column: MaterialColumn
    suitability: Suitability
    source: str
    status: str


@dataclass(frozen=True)
class MaterialTable:
    """All cells; ``verdict`` raises ``KeyError`` for a pair that the loader should have refused as missing."""

    edition: str
    entries: tuple[MaterialEntry, ...]
    derived: dict[object, Any] = field(default_factory=dict, repr=False, compare=False)  # by others, once

    @cached_property
    def _by_pair(self) -> dict[tuple[Material, MaterialColumn], MaterialEntry]:
        return {(entry.material, entry.column): entry for entry in self.entries}

    def verdict(self, material: Material, column: MaterialColumn) -> MaterialEntry:
        """Return the cell of ``material`` and ``column``."""
        return self._by_pair[material, column]
