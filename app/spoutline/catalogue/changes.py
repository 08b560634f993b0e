"""What changed in an entry from one edition to another, field by field."""

from __future__ import annotations

from collections.abc import Iterator
from decimal import Decimal
from typing import Final

from spoutline.catalogue.shelf_lookup import EntryChange
from spoutline.catalogue.table_schema import IDENTITY_COLUMNS
from spoutline.frozen import frozen
from spoutline.model.catalogue_entry import CatalogueEntry, Origin
from spoutline.model.worded import Worded
from spoutline.units.writing import currency_decimals

# a figure that the entry has from elsewhere, by where it is from
_INHERITED: Final = {
    Origin.SIMILAR: "{text} (similar {source})",
    Origin.FAMILY: "{text} (family {source})",
    Origin.TEXT: "{text} (text {source})",
}


@frozen
class FieldChange:
    """A field before and after, as texts; empty where it said nothing."""

    field: str
    before: str
    after: str


def changed_fields(change: EntryChange) -> tuple[FieldChange, ...]:
    """Return what changed in an entry that both editions have; nothing for one that came or went."""
    if change.before is None or change.after is None:
        return ()
    before, after = dict(_texts(change.before)), dict(_texts(change.after))
    names = [*before, *(name for name in after if name not in before)]
    return tuple(
        FieldChange(name, before.get(name, ""), after.get(name, ""))
        for name in names
        if before.get(name, "") != after.get(name, "")
    )


def _texts(entry: CatalogueEntry) -> Iterator[tuple[str, str]]:
    yield "kind", "" if entry.kind is None else entry.kind.value
    for column in IDENTITY_COLUMNS[2:]:
        value = getattr(entry, column)
        yield column, "" if value is None else str(value)
    for price in entry.prices:
        places = currency_decimals(price.currency)
        yield Worded("price in {currency}", currency=price.currency), str(Decimal(price.minor).scaleb(-places))
    for cell in entry.figures:
        text = " ".join(cell.value) if isinstance(cell.value, tuple) else str(cell.value)
        inherited = _INHERITED.get(cell.origin)
        yield cell.column, Worded(inherited, text=text, source=cell.source) if inherited else text
