"""Price lists of a catalogue: put into its draft, held by its editions; a list changes as a whole."""

from __future__ import annotations

import json
from collections.abc import Iterable, Iterator
from datetime import date
from decimal import Decimal

from sqlalchemy import Connection, delete, func, insert, or_, select, update

from spoutline.catalogue.editions import CatalogueKey, held_by
from spoutline.catalogue.tables import OPEN, PriceListRow
from spoutline.model.pricing import PriceBreak, PriceList, PriceRow


class PriceListDesk:
    """Puts price lists into the draft of one catalogue and takes others out, in the caller's transaction."""

    def __init__(self, connection: Connection, catalogue_id: int, last_edition: int) -> None:
        self._connection = connection
        self._catalogue_id = catalogue_id
        self._published = last_edition
        self._draft = last_edition + 1

    def all(self) -> dict[str, PriceList]:
        """Return the price lists that the draft holds, by id."""
        return {one.id: one for one in lists_held(self._connection, self._catalogue_id, self._draft)}

    def put(self, lists: Iterable[PriceList]) -> None:
        """Put price lists in, each in the place of the one with its id."""
        for one in lists:
            text = list_text(one)
            now = self._content(one.id, *held_by(PriceListRow, self._catalogue_id, self._draft))
            if now is not None and now[1] == text:
                continue
            self.take_out((one.id,))
            before = self._content(
                one.id, PriceListRow.catalogue_id == self._catalogue_id, PriceListRow.last_edition == self._published
            )
            if before is not None and before[1] == text:  # as it was published: that state goes on
                self._set_last(before[0], OPEN)
                continue
            last: int = self._connection.execute(select(func.max(PriceListRow.id))).scalar() or 0
            held = {"catalogue_id": self._catalogue_id, "first_edition": self._draft, "last_edition": OPEN}
            self._connection.execute(insert(PriceListRow), [held | {"id": last + 1, "name": one.id, "content": text}])

    def take_out(self, ids: Iterable[str]) -> None:
        """Take price lists out; an id that none has is passed over."""
        for name in ids:
            query = select(PriceListRow.id, PriceListRow.first_edition).where(
                *held_by(PriceListRow, self._catalogue_id, self._draft), PriceListRow.name == name
            )
            for key, first in self._connection.execute(query).all():
                if first == self._draft:
                    self._connection.execute(delete(PriceListRow).where(PriceListRow.id == key))
                else:
                    self._set_last(key, self._published)

    def keep_only(self, ids: set[str]) -> None:
        """Take out every price list that is not one of ``ids``."""
        self.take_out(sorted(set(self.all()) - ids))

    def _content(self, name: str, *conditions: object) -> tuple[int, str] | None:
        query = select(PriceListRow.id, PriceListRow.content).where(PriceListRow.name == name, *conditions)  # type: ignore[arg-type]
        row = self._connection.execute(query).first()
        return None if row is None else (row.id, row.content)

    def _set_last(self, key: int, last: int) -> None:
        self._connection.execute(update(PriceListRow).where(PriceListRow.id == key).values(last_edition=last))


def lists_held(connection: Connection, catalogue_id: int, at: int) -> Iterator[PriceList]:
    """Yield the price lists of an edition by id."""
    query = select(PriceListRow.content).where(*held_by(PriceListRow, catalogue_id, at)).order_by(PriceListRow.name)
    for text in connection.execute(query).scalars():
        yield list_from_text(text)


def lists_changed(connection: Connection, row: CatalogueKey) -> bool:
    """Say whether the price lists of the draft are others than those of the newest edition."""
    touched = [PriceListRow.first_edition == row.last_edition + 1]
    if row.last_edition:
        touched.append(PriceListRow.last_edition == row.last_edition)
    query = select(func.count()).select_from(PriceListRow).where(PriceListRow.catalogue_id == row.id, or_(*touched))
    return connection.execute(query).scalar_one() > 0


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
