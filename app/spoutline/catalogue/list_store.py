"""Price lists of a catalogue: put into its draft, held by its editions; a list changes as a whole."""

from __future__ import annotations

import json
from collections.abc import Iterable, Iterator
from datetime import date
from decimal import Decimal
from typing import TYPE_CHECKING

from sqlalchemy import Connection

from spoutline.catalogue.named_states import NamedStates, states_held
from spoutline.catalogue.tables import PriceListRow

if TYPE_CHECKING:
    from spoutline.model.pricing import PriceList


class PriceListDesk:
    """Puts price lists into the draft of one catalogue and takes others out, in the caller's transaction."""

    def __init__(self, connection: Connection, catalogue_id: int, last_edition: int) -> None:
        self._connection = connection
        self._catalogue_id = catalogue_id
        self._draft = last_edition + 1
        self._states = NamedStates(connection, PriceListRow, catalogue_id, last_edition)
        self.changed = 0  # lists that are new or otherwise by what was done, or gone

    def all(self) -> dict[str, PriceList]:
        """Return the price lists that the draft holds, by id."""
        return {one.id: one for one in lists_held(self._connection, self._catalogue_id, self._draft)}

    def names(self) -> set[str]:
        """Return the ids of the price lists that the draft holds."""
        return self._states.names()

    def text(self, name: str) -> str | None:
        """Return a price list of the draft as it is stored; None where it has none of this id."""
        return self._states.text(name)

    def put(self, lists: Iterable[PriceList]) -> None:
        """Put price lists in, each in the place of the one with its id."""
        for one in lists:
            self.put_text(one.id, list_text(one))

    def put_text(self, name: str, text: str) -> None:
        """Put a price list in as ``list_text`` writes it, in the place of the one with its id."""
        self.changed += self._states.put(name, text)

    def take_out(self, ids: Iterable[str]) -> None:
        """Take price lists out; an id that none has is passed over."""
        self.changed += self._states.take_out(ids)

    def keep_only(self, ids: set[str]) -> None:
        """Take out every price list that is not one of ``ids``."""
        self.take_out(sorted(self.names() - ids))


def lists_held(connection: Connection, catalogue_id: int, at: int) -> Iterator[PriceList]:
    """Yield the price lists of an edition by id."""
    for _name, text in states_held(connection, PriceListRow, catalogue_id, at):
        yield list_from_text(text)


def list_text(one: PriceList) -> str:
    """Return a price list as it is stored; the same text for equal lists."""
    return json.dumps(
        {
            "id": one.id,
            "maker": one.maker,
            "supplier": one.supplier,
            "currency": one.currency,
            "valid_from": one.valid_from.isoformat(),
            "valid_to": None if one.valid_to is None else one.valid_to.isoformat(),
            "rows": [
                [
                    row.part_number,
                    row.discount_group,
                    [[step.from_quantity, str(step.unit_price)] for step in row.breaks],
                ]
                for row in sorted(one.rows, key=lambda row: row.part_number)
            ],
        },
        ensure_ascii=False,
        separators=(",", ":"),
    )


def list_from_text(text: str) -> PriceList:
    """Return a stored price list."""
    from spoutline.model.pricing import PriceBreak, PriceList, PriceRow  # no plan asks for lists

    said = json.loads(text)
    return PriceList(
        id=said["id"],
        maker=said["maker"],
        supplier=said["supplier"],
        currency=said["currency"],
        valid_from=date.fromisoformat(said["valid_from"]),
        valid_to=None if said["valid_to"] is None else date.fromisoformat(said["valid_to"]),
        rows=tuple(
            PriceRow(
                part_number=number,
                discount_group=group,
                breaks=tuple(PriceBreak(quantity, Decimal(price)) for quantity, price in breaks),
            )
            for number, group, breaks in said["rows"]
        ),
    )
