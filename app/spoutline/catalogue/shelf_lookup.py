"""Which catalogues and editions a book has, looked up by the names that people say, and what is known of each."""

from __future__ import annotations

from typing import Any

from sqlalchemy import Connection, func, or_, select

from spoutline.catalogue.editions import (
    CatalogueKey,
    OpenedEdition,
    catalogue_row,
    draft_of,
    published,
)
from spoutline.catalogue.named_states import states_changed
from spoutline.catalogue.tables import (
    OPEN,
    CatalogueRow,
    CrossReferenceRow,
    EditionRow,
    EntryRow,
    FamilyRow,
    PriceListRow,
    StateRow,
)
from spoutline.frozen import frozen
from spoutline.model.catalogue_edition import DEMONSTRATION, CatalogueEdition, EditionRef, catalogue_name_fault
from spoutline.model.catalogue_entry import CatalogueEntry
from spoutline.model.cross_reference import CrossReference
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.part_ref import PartRef
from spoutline.model.worded import Worded

_STATE_KEY = 1  # the only row of its table


@frozen(kw_only=True)
class CatalogueFacts:
    """A catalogue of the book: its published editions from the first on, and how far its draft differs."""

    name: str
    editions: tuple[CatalogueEdition, ...]
    draft_parts: int
    draft_put: int  # entries that the newest edition has not, or has otherwise
    draft_gone: int  # entries that the newest edition has and the draft has not, or has otherwise
    references: int = 0  # cross-references of the draft
    references_changed: bool = False  # whether those of the newest edition are others
    price_lists_changed: bool = False  # likewise
    families_changed: bool = False  # likewise

    @property
    def is_demonstration(self) -> bool:
        """Whether it is the invented one, which nobody writes to."""
        return self.name == DEMONSTRATION

    @property
    def newest(self) -> CatalogueEdition | None:
        """The edition that was published last; None before the first."""
        return self.editions[-1] if self.editions else None

    @property
    def has_changes(self) -> bool:
        """Whether the draft differs from the newest edition."""
        beside = (self.references_changed, self.price_lists_changed, self.families_changed)
        return bool(self.draft_put or self.draft_gone or any(beside))


@frozen
class EntryCount:
    """How many entries were found; ``is_all`` is false where there are more than are counted."""

    number: int
    is_all: bool = True


@frozen
class EntryChange:
    """An entry in two editions: None where one has it not."""

    ref: PartRef
    before: CatalogueEntry | None
    after: CatalogueEntry | None


@frozen
class ReferenceChange:
    """A cross-reference in two editions: None where one has it not."""

    ref: PartRef
    before: CrossReference | None
    after: CrossReference | None


CATALOGUES = select(CatalogueRow.id, CatalogueRow.name, CatalogueRow.last_edition)
FIRST_STATE: dict[str, Any] = {
    "id": _STATE_KEY,
    "last_entry_id": 0,
    "chosen": "",
    "demonstration_left_out": False,
}


@frozen
class ShelfState:
    """What the book plans with unasked, empty for *Demonstration*; whether it does without that."""

    chosen: str = ""
    demonstration_left_out: bool = False


def state_of(connection: Connection) -> ShelfState:
    """Return what the book says of its catalogues as a whole."""
    row = connection.execute(select(StateRow.chosen, StateRow.demonstration_left_out)).one_or_none()
    return ShelfState() if row is None else ShelfState(row.chosen, row.demonstration_left_out)


def known_catalogue(connection: Connection, name: str) -> CatalogueKey:
    """Return the catalogue of this name; raise ``InputFault`` with those that there are."""
    row = catalogue_row(connection, name)
    if row is None or (row.name == DEMONSTRATION and state_of(connection).demonstration_left_out):
        known = connection.execute(select(CatalogueRow.name).order_by(CatalogueRow.folded_name)).scalars().all()
        if state_of(connection).demonstration_left_out:
            known = [one for one in known if one != DEMONSTRATION]
        wanted = Worded("the book has these catalogs: {known}", known=", ".join(known) or "none yet")
        raise InputFault((InputProblem("", "catalogue", repr(name), wanted),))
    return row


def writable_catalogue(connection: Connection, name: str) -> CatalogueKey:
    """Return the catalogue of this name; raise ``InputFault`` for *Demonstration*, which is only read."""
    if catalogue_row(connection, name) is None and not catalogue_name_fault(name.strip()):
        raise InputFault((InputProblem("", "catalogue", repr(name), _to_begin_with(connection, name.strip())),))
    row = known_catalogue(connection, name)
    if row.name == DEMONSTRATION:
        wanted = "the invented catalog is only read; begin one of your own"
        raise InputFault((InputProblem("", "catalogue", repr(name), wanted),))
    return row


def _to_begin_with(connection: Connection, name: str) -> str:
    """Return which catalogues there are to write to, and how one of this name is begun."""
    query = select(CatalogueRow.name).where(CatalogueRow.name != DEMONSTRATION).order_by(CatalogueRow.folded_name)
    return Worded(
        "the book has these catalogs of its own: {known}; to begin this one run `{command}`",
        known=", ".join(connection.execute(query).scalars()) or "none yet",
        command=f'spoutline catalog new "{name}"',
    )


def opened_edition(connection: Connection, ref: EditionRef) -> OpenedEdition:
    """Return the edition that ``ref`` names, or papers print so; raise ``InputFault`` where there is none."""
    if ref.number is None and not ref.is_draft and catalogue_row(connection, ref.catalogue) is None:
        ref = _of_title(connection, ref.catalogue) or ref
    row = known_catalogue(connection, ref.catalogue)
    if ref.is_draft:
        return draft_of(row)
    number = ref.number or row.last_edition
    found = published(connection, row, number)
    if found is None:
        wanted = (
            Worded("{row_name} has editions 1 to {last_edition}", row_name=row.name, last_edition=row.last_edition)
            if row.last_edition
            else Worded(
                "{row_name} has no published edition yet: publish its draft, or name {row_name}@draft",
                row_name=row.name,
            )
        )
        raise InputFault((InputProblem("", "catalogue", repr(str(ref)), wanted),))
    return found


def _of_title(connection: Connection, title: str) -> EditionRef | None:
    """Return the edition that papers call so, the newest of several; None where there is none."""
    query = (
        select(CatalogueRow.name, EditionRow.number)
        .join(CatalogueRow, CatalogueRow.id == EditionRow.catalogue_id)
        .where(EditionRow.title == title)
        .order_by(EditionRow.number.desc())
    )
    row = connection.execute(query).first()
    return None if row is None else EditionRef(row.name, row.number)


def facts_of(connection: Connection, row: CatalogueKey) -> CatalogueFacts:
    """Return what is known of a catalogue: its editions, and how its draft differs from the newest."""
    numbers = range(1, row.last_edition + 1)
    editions = [published(connection, row, number) for number in numbers]
    draft = row.last_edition + 1
    own = EntryRow.catalogue_id == row.id

    def count(*conditions: Any) -> int:  # noqa: ANN401  (conditions of SQLAlchemy)
        return connection.execute(select(func.count()).select_from(EntryRow).where(*conditions)).scalar_one()

    references = CrossReferenceRow
    touched = [references.first_edition == draft]
    if row.last_edition:
        touched.append(references.last_edition == row.last_edition)
    of_catalogue = select(func.count()).select_from(references).where(references.catalogue_id == row.id)
    return CatalogueFacts(
        name=row.name,
        editions=tuple(one.edition for one in editions if one is not None),
        draft_parts=count(own, EntryRow.last_edition == OPEN),
        draft_put=count(own, EntryRow.first_edition == draft),
        draft_gone=count(own, EntryRow.last_edition == row.last_edition) if row.last_edition else 0,
        references=connection.execute(of_catalogue.where(references.last_edition == OPEN)).scalar_one(),
        references_changed=connection.execute(of_catalogue.where(or_(*touched))).scalar_one() > 0,
        price_lists_changed=states_changed(connection, PriceListRow, row),
        families_changed=states_changed(connection, FamilyRow, row),
    )
