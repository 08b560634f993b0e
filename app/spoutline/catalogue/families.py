"""Families of parts in a catalogue: kept in its draft and editions, and what their parts have of them.

What a part inherits stands among its own figures with the family as its origin, so that everything that reads an entry
sees it. It is never kept otherwise than the family says: it comes and goes with every writing of part or family.
"""

from __future__ import annotations

import json
from collections.abc import Callable, Iterable, Iterator, Mapping

from sqlalchemy import Connection, select

from spoutline.catalogue.descriptions import COLUMNS
from spoutline.catalogue.editions import held_by
from spoutline.catalogue.entry_text import entry_from_text
from spoutline.catalogue.family_store import families_held, family_text
from spoutline.catalogue.named_states import NamedStates
from spoutline.catalogue.tables import EntryRow, FamilyRow
from spoutline.model.catalogue_entry import CatalogueEntry, FigureCell, Origin
from spoutline.model.part import PartKind
from spoutline.model.part_family import PartFamily

Rewrite = Callable[[Iterable[CatalogueEntry]], None]


def with_family(entry: CatalogueEntry, families: Mapping[str, PartFamily]) -> CatalogueEntry:
    """Return an entry with the figures of its family that it has not itself; without those of any other.

    A part of no kind becomes one of its family's kind; one of another kind inherits nothing.
    """
    family = families.get(entry.family) if entry.family else None
    if family is not None and entry.kind not in (None, family.kind):
        family = None
    if family is None and Origin.FAMILY not in [cell.origin for cell in entry.figures]:
        return entry
    own = {cell.column: cell for cell in entry.figures if cell.origin is not Origin.FAMILY}
    if family is None:
        return _with(entry, entry.kind, own)
    inherited = {
        cell.column: cell.model_copy(update={"origin": Origin.FAMILY, "source": family.name}) for cell in family.figures
    }
    return _with(entry, family.kind, inherited | own)


def _with(entry: CatalogueEntry, kind: PartKind | None, cells: Mapping[str, FigureCell]) -> CatalogueEntry:
    columns = tuple(cells) if kind is None else COLUMNS[kind]
    figures = tuple(cells[column] for column in columns if column in cells)
    strange = tuple(cell for column, cell in cells.items() if column not in columns)  # told by whoever describes it
    return entry.model_copy(update={"kind": kind, "figures": (*figures, *strange)})


class FamilyDesk:
    """Puts families into the draft of one catalogue; by ``rewrite`` the draft's parts have what they inherit."""

    def __init__(self, connection: Connection, catalogue_id: int, last_edition: int, rewrite: Rewrite) -> None:
        self._connection = connection
        self._catalogue_id = catalogue_id
        self._draft = last_edition + 1
        self._rewrite = rewrite
        self._states = NamedStates(connection, FamilyRow, catalogue_id, last_edition)
        self._known: dict[str, PartFamily] | None = None

    def all(self) -> dict[str, PartFamily]:
        """Return the families that the draft holds, by name."""
        if self._known is None:
            held = families_held(self._connection, self._catalogue_id, self._draft)
            self._known = {family.name: family for family in held}
        return self._known

    def put(self, families: Iterable[PartFamily]) -> None:
        """Put families in, each in the place of the one with its name."""
        self._change({family.name: family for family in families}, ())

    def take_out(self, names: Iterable[str]) -> None:
        """Take families out, and what parts inherit of them; a name that none has is passed over."""
        self._change({}, tuple(names))

    def keep_only(self, names: set[str]) -> None:
        """Take out every family that is not one of ``names``."""
        self.take_out(sorted(set(self.all()) - names))

    def parts_of(self, names: Iterable[str]) -> Iterator[CatalogueEntry]:
        """Yield the parts of the draft that belong to families."""
        asked = set(names)
        held = held_by(EntryRow, self._catalogue_id, self._draft)
        for name in sorted(asked):
            written = f'"family":{json.dumps(name, ensure_ascii=False)}'
            query = select(EntryRow.content).where(*held, EntryRow.content.contains(written, autoescape=True))
            for text in self._connection.execute(query).scalars().all():
                entry = entry_from_text(text)
                if entry.family == name:  # capitals do not count in the query
                    yield entry

    def _change(self, put: Mapping[str, PartFamily], gone: tuple[str, ...]) -> None:
        before = self.all()
        changed = {name for name, family in put.items() if before.get(name) != family} | (set(gone) & set(before))
        for name, family in put.items():
            self._states.put(name, family_text(family))
        self._states.take_out(gone)
        self._known = None
        if changed:
            self._rewrite(list(self.parts_of(changed)))
