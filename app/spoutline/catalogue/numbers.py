"""What a typed number leads to in one edition: item numbers, GTINs, cross-references, and the successors of parts."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any, Final

from sqlalchemy import Connection, Engine, or_, select

from spoutline.catalogue.cross_references import reference_in
from spoutline.catalogue.editions import OpenedEdition, held_by
from spoutline.catalogue.entry_text import entry_from_text
from spoutline.catalogue.schema import store_faults
from spoutline.catalogue.tables import CrossReferenceRow, EntryRow
from spoutline.model.catalogue_entry import CatalogueEntry
from spoutline.model.cross_reference import CrossReference, NumberStep, NumberStepKind, NumberTrace, folded_number
from spoutline.model.part_identity import GTIN_LENGTHS
from spoutline.model.part_ref import PartRef

_LONGEST: Final = 300  # characters of a number and its maker: nothing longer is looked up


class NumberIndex:
    """Follows numbers through one edition. Methods may be called from several threads and raise ``StoreFault``."""

    def __init__(self, engine: Engine, opened: OpenedEdition) -> None:
        self._engine = engine
        self._opened = opened

    def traces(self, asked: PartRef) -> tuple[NumberTrace, ...]:
        """Return every way that a number leads to a part, by maker; none for a number that leads nowhere.

        A reference without a maker may hold one before the number, as a person writes it. Numbers differ neither by
        capitals nor by blanks and signs, but what is written exactly so goes before what is only alike.
        """
        if len(str(asked)) > _LONGEST:
            return ()
        with store_faults(self._engine), self._engine.connect() as connection:
            found = [*self._of_items(connection, asked)] if not asked.maker else []
            found += [self._followed(connection, str(asked), one) for one in self._references(connection, asked)]
        return tuple(sorted(found, key=lambda one: (one.maker, one.steps[0].after)))

    def _of_items(self, connection: Connection, asked: PartRef) -> Iterator[NumberTrace]:
        number = asked.number
        named = [EntryRow.item_number == number]
        if number.isascii() and number.isdigit() and len(number) in GTIN_LENGTHS:
            bare = number.lstrip("0")  # a shorter GTIN is the longer one without the noughts before it
            named.append(EntryRow.gtin.in_([bare.zfill(length) for length in GTIN_LENGTHS if len(bare) <= length]))
        held = held_by(EntryRow, self._opened.catalogue_id, self._opened.at)
        query = select(EntryRow.content).where(*held, or_(*named))
        for text in connection.execute(query).scalars().all():
            entry = entry_from_text(text)
            kind = NumberStepKind.ITEM_NUMBER if entry.item_number == number else NumberStepKind.GTIN
            yield self._with_successors(connection, number, "", (NumberStep(kind, number, entry.ref),), entry)

    def _references(self, connection: Connection, asked: PartRef) -> list[CrossReference]:
        """Return the cross-references that are named: those with the very number where there are any."""
        for maker, number in _readings(asked):
            folded = folded_number(number)
            if not folded:
                continue
            held = held_by(CrossReferenceRow, self._opened.catalogue_id, self._opened.at)
            query = select(CrossReferenceRow.__table__).where(*held, CrossReferenceRow.folded_number == folded)
            rows = [reference_in(row) for row in connection.execute(query)]
            found = [one for one in rows if not maker or one.maker.casefold() == maker.casefold()]
            if found:
                return [one for one in found if one.number == number] or found
        return []

    def _followed(self, connection: Connection, asked: str, first: CrossReference) -> NumberTrace:
        steps: list[NumberStep] = []
        step: CrossReference | None = first
        seen: set[PartRef] = set()
        entry: CatalogueEntry | None = None
        while step is not None and step.ref not in seen:
            seen.add(step.ref)
            kind = NumberStepKind(step.relation.value)
            steps.append(NumberStep(kind, str(step.ref), step.leads_to, step.remark))
            entry = self._entry(connection, step.leads_to)
            step = self._reference(connection, step.leads_to) if entry is None else None
        return self._with_successors(connection, asked, first.maker, tuple(steps), entry)

    def _with_successors(
        self,
        connection: Connection,
        asked: str,
        maker: str,
        steps: tuple[NumberStep, ...],
        entry: CatalogueEntry | None,
    ) -> NumberTrace:
        if entry is None:
            return NumberTrace(asked, maker, steps, None, None)
        item, now, way = entry.ref, entry, [*steps]
        seen = {now.ref}
        while now.successor is not None and now.successor not in seen:
            follower = self._entry(connection, now.successor)
            if follower is None:
                break
            way.append(NumberStep(NumberStepKind.SUCCESSOR, str(now.ref), follower.ref))
            seen.add(follower.ref)
            now = follower
        return NumberTrace(asked, maker, tuple(way), item, now.ref)

    def _entry(self, connection: Connection, ref: PartRef) -> CatalogueEntry | None:
        text = self._one(connection, EntryRow, EntryRow.content, ref)
        return None if text is None else entry_from_text(text.content)

    def _reference(self, connection: Connection, ref: PartRef) -> CrossReference | None:
        row = self._one(connection, CrossReferenceRow, CrossReferenceRow.__table__, ref)
        return None if row is None else reference_in(row)

    def _one(self, connection: Connection, table: Any, columns: Any, ref: PartRef) -> Any:  # noqa: ANN401
        held = held_by(table, self._opened.catalogue_id, self._opened.at)
        query = select(columns).where(*held, table.number == ref.number, table.maker == ref.maker)
        return connection.execute(query).one_or_none()


def _readings(asked: PartRef) -> Iterator[tuple[str, str]]:
    """Yield how a reference may be meant: as it stands, then with its first words as the maker."""
    yield asked.maker, asked.number
    if not asked.maker:
        words = asked.number.split()
        for count in range(len(words) - 1, 0, -1):
            yield " ".join(words[:count]), " ".join(words[count:])
