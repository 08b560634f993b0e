"""Cross-references of a catalogue: put into its draft, held by its editions."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from itertools import islice
from typing import Any, Final, TypeVar

from sqlalchemy import Connection, delete, func, insert, select, update

from spoutline.catalogue.editions import OpenedEdition, held_by
from spoutline.catalogue.tables import OPEN, CrossReferenceRow
from spoutline.model.cross_reference import COLUMNS, CrossReference, NumberRelation, folded_number
from spoutline.model.part_ref import PartRef

_T = TypeVar("_T")
_CHUNK: Final = 2_000


class ReferenceDesk:
    """Puts cross-references into the draft of one catalogue and takes others out, in the caller's transaction."""

    def __init__(self, connection: Connection, catalogue_id: int, last_edition: int) -> None:
        self._connection = connection
        self._catalogue_id = catalogue_id
        self._published = last_edition
        self._draft = last_edition + 1
        self.new = self.changed = self.unchanged = self.gone = 0

    def put(self, references: Iterable[CrossReference]) -> None:
        """Put them in, each in the place of the one with its number and maker; two of one number are a defect."""
        for chunk in _chunks(references):
            self._put(chunk)

    def all(self) -> dict[PartRef, CrossReference]:
        """Return every cross-reference that the draft holds, by its old number."""
        rows = self._connection.execute(
            select(CrossReferenceRow.__table__).where(*held_by(CrossReferenceRow, self._catalogue_id, self._draft))
        )
        return {one.ref: one for one in map(reference_in, rows)}

    def held(self, refs: Sequence[PartRef]) -> dict[PartRef, CrossReference]:
        """Return those of some thousand old numbers that the draft holds."""
        return {ref: reference_in(row) for ref, row in self._rows(refs, self._in_draft).items()}

    def keep_only(self, refs: set[PartRef]) -> None:
        """Take out every cross-reference that is not one of ``refs``."""
        self.take_out(sorted(set(self.all()) - refs))

    def take_out(self, refs: Iterable[PartRef]) -> None:
        """Take cross-references out; a number that none has is passed over."""
        for chunk in _chunks(refs):
            held = self._rows(chunk, self._in_draft)
            self._end(list(held.values()))
            self.gone += len(held)

    @property
    def _in_draft(self) -> tuple[Any, ...]:
        return held_by(CrossReferenceRow, self._catalogue_id, self._draft)

    def _put(self, references: Sequence[CrossReference]) -> None:
        refs = [one.ref for one in references]
        held = self._rows(refs, self._in_draft)
        ended_before = (
            CrossReferenceRow.catalogue_id == self._catalogue_id,
            CrossReferenceRow.last_edition == self._published,
        )
        before = self._rows(refs, ended_before) if self._published else {}
        fresh: list[CrossReference] = []
        ended: list[Any] = []
        reopened: list[int] = []
        for one in references:
            now, was = held.get(one.ref), before.get(one.ref)
            if now is not None and reference_in(now) == one:
                self.unchanged += 1
                continue
            if now is None:
                self.new += 1
            else:
                self.changed += 1
                ended.append(now)
            if was is not None and reference_in(was) == one:
                reopened.append(was.id)  # as it was published: that state goes on
            else:
                fresh.append(one)
        self._end(ended)
        self._set_last(reopened, OPEN)
        self._insert(fresh)

    def _rows(self, refs: Sequence[PartRef], conditions: tuple[Any, ...]) -> dict[PartRef, Any]:
        asked = set(refs)
        query = select(CrossReferenceRow.__table__).where(
            *conditions, CrossReferenceRow.number.in_({ref.number for ref in refs})
        )
        found = {PartRef(row.number, row.maker): row for row in self._connection.execute(query)}
        return {ref: row for ref, row in found.items() if ref in asked}

    def _end(self, rows: Sequence[Any]) -> None:
        """Let states hold no longer: those of the draft alone go, published ones end with the newest edition."""
        drafted = [row.id for row in rows if row.first_edition == self._draft]
        if drafted:
            self._connection.execute(delete(CrossReferenceRow).where(CrossReferenceRow.id.in_(drafted)))
        self._set_last([row.id for row in rows if row.first_edition != self._draft], self._published)

    def _set_last(self, ids: Sequence[int], last: int) -> None:
        if ids:
            self._connection.execute(
                update(CrossReferenceRow).where(CrossReferenceRow.id.in_(ids)).values(last_edition=last)
            )

    def _insert(self, fresh: Sequence[CrossReference]) -> None:
        if not fresh:
            return
        last: int = self._connection.execute(select(func.max(CrossReferenceRow.id))).scalar() or 0
        held = {"catalogue_id": self._catalogue_id, "first_edition": self._draft, "last_edition": OPEN}
        rows = [
            {name: str(getattr(one, name)) for name in COLUMNS}
            | held
            | {"id": key, "folded_number": folded_number(one.number)}
            for key, one in enumerate(fresh, last + 1)
        ]
        self._connection.execute(insert(CrossReferenceRow), rows)


def reference_in(row: Any) -> CrossReference:  # noqa: ANN401  (a row of the table)
    """Return the cross-reference that a row keeps; it was checked before it was stored."""
    values = {name: getattr(row, name) for name in COLUMNS}
    return CrossReference.model_construct(**values | {"relation": NumberRelation(row.relation)})


def references_held(connection: Connection, opened: OpenedEdition) -> Iterator[CrossReference]:
    """Yield the cross-references of an edition by number and maker."""
    query = select(CrossReferenceRow.__table__).where(*held_by(CrossReferenceRow, opened.catalogue_id, opened.at))
    for row in connection.execute(query.order_by(CrossReferenceRow.number, CrossReferenceRow.maker)):
        yield reference_in(row)


def going_round(references: Mapping[PartRef, CrossReference]) -> tuple[CrossReference, ...]:
    """Return the cross-references that lead back to themselves, by number and maker."""
    done: set[PartRef] = set()
    found: list[CrossReference] = []
    for start in sorted(references):
        way: list[PartRef] = []
        step = start
        while step in references and step not in done:
            done.add(step)
            way.append(step)
            step = references[step].leads_to
        if step in way:
            found.extend(references[one] for one in way[way.index(step) :])
    return tuple(sorted(found, key=lambda one: one.ref))


def _chunks(items: Iterable[_T]) -> Iterator[list[_T]]:
    rest = iter(items)
    while chunk := list(islice(rest, _CHUNK)):
        yield chunk
