"""Invented entries for tests of catalogues."""

from __future__ import annotations

from typing import Any

from spoutline.catalogue.descriptions import figure_cells
from spoutline.model.catalogue_entry import CatalogueEntry, EntryPrice
from spoutline.model.part import PartKind

NAME = "Own list"  # of the catalogue that tests fill
MAKER = "Fernmoor Works"
SWIVEL: dict[str, Any] = {
    "inlet": "NPT 3/4 female single",
    "outlet": "NPT 3/4 male single",
    "listings": "E10 B5",
    "schemes": "UL",
    "materials": "aluminium fkm",
    "temp_min_c": "-29",
    "temp_max_c": "52",
    "max_pressure_kpa": "520",
    "mass_kg": "0.3",
    "kv_m3_h": "11",
    "resistance_ohm": "2",
    "made_up_length_mm": "75",
    "pull_strength_n": "2800",
    "planes": "1",
}


def swivel(number: str = "FW 1", price: int | None = 1765, **changes: Any) -> CatalogueEntry:
    """Return a swivel; ``changes`` are fields of the entry, or figures by column (None leaves one out)."""
    columns = {**SWIVEL, **{name: value for name, value in changes.items() if name in SWIVEL}}
    figures, wrong = figure_cells(PartKind.SWIVEL, columns)
    assert wrong == ()
    fields: dict[str, Any] = {"maker": MAKER, "name": "Swivel, one plane", "kind": PartKind.SWIVEL, "lead_days": 5}
    fields |= {name: value for name, value in changes.items() if name not in SWIVEL}
    prices = () if price is None else (EntryPrice(currency="USD", minor=price),)
    return CatalogueEntry(number=number, prices=prices, figures=figures, **fields)


def priced_only(number: str = "FW 900", text: str = "3/4\" x 9' hardwall", minor: int = 4210) -> CatalogueEntry:
    """Return a part as a price file has it: number, text, price."""
    return CatalogueEntry(number=number, maker=MAKER, name=text, prices=(EntryPrice(currency="USD", minor=minor),))
