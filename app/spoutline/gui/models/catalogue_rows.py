"""Rows and columns of the keeper's page: editions, entries, reports of cells, changes, notes on health."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from spoutline.bootstrap.catalogues import EntryLine
from spoutline.catalogue.shelf_lookup import CatalogueFacts
from spoutline.explain.plan.story import Story
from spoutline.frozen import frozen
from spoutline.gui.models.record_table import Column
from spoutline.gui.roles import Tone
from spoutline.gui.wording import told, tr
from spoutline.model.catalogue_edition import CatalogueEdition, EditionRef
from spoutline.planning.keeping.health import HealthNote, Matter
from spoutline.planning.table_intake.cell_values import FaultKind
from spoutline.planning.table_intake.draft_changes import ChangeKind, PartChange, RowChange
from spoutline.planning.table_intake.intake import CellReport


@frozen
class EditionRow:
    """An edition of a catalogue, or its draft where ``edition`` is None, and who plans with it."""

    facts: CatalogueFacts
    edition: CatalogueEdition | None
    by_book: bool = False
    by_survey: bool = False

    @property
    def ref(self) -> EditionRef:
        """What names it."""
        return EditionRef(self.facts.name, is_draft=True) if self.edition is None else self.edition.ref


def edition_rows(
    catalogues: Sequence[CatalogueFacts], of_book: EditionRef, of_survey: EditionRef
) -> Iterator[EditionRow]:
    """Yield every catalogue: its draft where it may have one, then its editions from the newest on."""
    for facts in catalogues:
        editions: list[CatalogueEdition | None] = [] if facts.is_demonstration else [None]
        editions += reversed(facts.editions)
        for edition in editions:
            yield EditionRow(facts, edition, _names(of_book, facts, edition), _names(of_survey, facts, edition))


def _names(ref: EditionRef, facts: CatalogueFacts, edition: CatalogueEdition | None) -> bool:
    if ref.catalogue.casefold() != facts.name.casefold():
        return False
    if edition is None:
        return ref.is_draft
    return not ref.is_draft and (ref.number == edition.number or (ref.number is None and edition is facts.newest))


def edition_words(row: EditionRow) -> str:
    """Return how one of several editions is called in a list."""
    return f"{row.facts.name}, {tr('draft')}" if row.edition is None else f"{row.facts.name}, {row.edition.number}"


def edition_columns() -> tuple[Column[EditionRow], ...]:
    """Return the columns of catalogues and their editions."""
    return (
        Column(title=tr("Catalog"), text=lambda row: row.facts.name),
        Column(title=tr("Edition"), text=_edition, tone=lambda row: Tone.OPEN if row.edition is None else None),
        Column(title=tr("Date"), text=lambda row: _day(row.edition)),
        Column(title=tr("Parts"), text=lambda row: str(_parts(row)), sort=_parts, is_number=True),
        Column(title=tr("Not yet described"), text=_lacking, is_number=True),
        Column(title=tr("Published by"), text=lambda row: row.edition.publisher if row.edition else ""),
        Column(title=tr("Notes"), text=_notes, hint=_notes),
        Column(title=tr("Planned with by"), text=_users, tone=lambda row: Tone.GOOD if _users(row) else None),
    )


def _edition(row: EditionRow) -> str:
    return tr("Draft") if row.edition is None else str(row.edition.number)


def _day(edition: CatalogueEdition | None) -> str:
    return edition.published_on.isoformat() if edition is not None and edition.published_on else ""


def _parts(row: EditionRow) -> int:
    return row.facts.draft_parts if row.edition is None else row.edition.parts_count


def _lacking(row: EditionRow) -> str:
    return "" if row.edition is None else str(row.edition.parts_count - row.edition.described_count)


def _notes(row: EditionRow) -> str:
    if row.edition is not None:
        return row.edition.notes
    if not row.facts.has_changes:
        return tr("as published") if row.facts.editions else tr("empty")
    facts = row.facts
    parts = tr("{new} new or changed, {gone} gone or changed").format(new=facts.draft_put, gone=facts.draft_gone)
    beside = (
        parts if facts.draft_put or facts.draft_gone else "",
        tr("old numbers changed") if facts.references_changed else "",
        tr("price lists changed") if facts.price_lists_changed else "",
        tr("families changed") if facts.families_changed else "",
    )
    return "; ".join(filter(None, beside))


def _users(row: EditionRow) -> str:
    said = (tr("book") if row.by_book else "", tr("this survey") if row.by_survey else "")
    return ", ".join(filter(None, said))


def entry_columns(story: Story) -> tuple[Column[EntryLine], ...]:
    """Return the columns of the entries of an edition."""

    def kind(line: EntryLine) -> str:
        return "" if line.entry.kind is None else story.title(line.entry.kind)

    def prices(line: EntryLine) -> str:
        return ", ".join(story.money(price.minor, price.currency) for price in line.entry.prices)

    def lacking(line: EntryLine) -> str:
        wrong = (f"{fault.column} {fault.value}: {told(fault.wanted)}" for fault in line.faults)
        return "; ".join((*wrong, ", ".join(line.lacking))) if line.faults else ", ".join(line.lacking)

    def tone(line: EntryLine) -> Tone | None:
        return Tone.BAD if line.faults else Tone.OPEN if line.lacking else None

    return (
        Column(title=tr("Number"), text=lambda line: line.entry.number),
        Column(title=tr("Maker"), text=lambda line: line.entry.maker),
        Column(title=tr("Kind"), text=kind),
        Column(title=tr("Name"), text=lambda line: line.entry.name, hint=lambda line: line.entry.name),
        Column(title=tr("Price"), text=prices, is_number=True),
        Column(title=tr("Lacks"), text=lacking, hint=lacking, tone=tone),
    )


def report_columns() -> tuple[Column[CellReport], ...]:
    """Return the columns of what is wrong or open in cells."""

    def cell(report: CellReport) -> str:
        return report.address.rsplit(" ", 1)[-1]

    return (
        Column(
            title=tr("Cell"),
            text=cell,
            sort=lambda report: report.row,
            hint=lambda report: report.address,
            tone=lambda report: Tone.BAD if report.kind is FaultKind.FAULT else Tone.QUESTION,
        ),
        Column(title=tr("Field"), text=lambda report: report.field),
        Column(title=tr("What stands there"), text=lambda report: report.text, hint=lambda report: report.text),
        Column(title=tr("What would be right"), text=lambda report: report.wanted, hint=lambda report: report.wanted),
        Column(title=tr("Nearest"), text=lambda report: report.nearest),
    )


def change_columns() -> tuple[Column[PartChange | RowChange], ...]:
    """Return the columns of what a table changes in a draft."""
    kinds = {ChangeKind.NEW: tr("new"), ChangeKind.CHANGED: tr("changed"), ChangeKind.MISSING: tr("not in the table")}

    def fields(change: PartChange | RowChange) -> str:
        return "; ".join(f"{one.field}: {one.before or '–'} → {one.after or '–'}" for one in change.fields)

    def look(change: PartChange | RowChange) -> str:
        moves = [tr("price {0:+.0%}").format(move.share) for move in change.moves]
        alike = [tr("much like {0}").format(ref) for ref in change.alike]
        return ", ".join((*moves, *alike))

    return (
        Column(title=tr("What"), text=lambda change: change.name, hint=lambda change: change.name),
        Column(title=tr("What happens"), text=lambda change: kinds[change.kind]),
        Column(title=tr("Before → after"), text=fields, hint=fields),
        Column(title=tr("To look at"), text=look, tone=lambda change: Tone.CAUTION if look(change) else None),
    )


def _subject(note: HealthNote) -> str:
    return note.price_list if note.ref is None else f"{note.ref.number}  {note.ref.maker}"


def health_columns(story: Story) -> tuple[Column[HealthNote], ...]:
    """Return the columns of what a keeper should look at."""
    words = {
        Matter.FAULTY: tr("Figures that are wrong"),
        Matter.NOT_DESCRIBED: tr("Not yet described"),
        Matter.NO_MATE: tr("End that no other part joins"),
        Matter.NEVER_CHOSEN: tr("No question can choose it"),
        Matter.NO_SCHEME: tr("Listing class without a scheme"),
        Matter.NO_PRICE: tr("No price"),
        Matter.PRICE_UNUSUAL: tr("Price far from the usual"),
        Matter.LIST_EXPIRED: tr("Price list has ended"),
        Matter.LIST_EXPIRES: tr("Price list ends soon"),
    }

    def said(note: HealthNote) -> str:
        told = (
            *(fault.column + " " + fault.value + ": " + fault.wanted for fault in note.faults),
            *((", ".join(note.columns),) if note.columns else ()),
            *map(str, note.ports),
            *(story.finding(finding).sentence for finding in note.findings),
            *((note.day.isoformat(),) if note.day else ()),
        )
        return "; ".join(told)

    return (
        Column(
            title=tr("Matter"),
            text=lambda note: words[note.matter],
            sort=lambda note: list(Matter).index(note.matter),
            tone=lambda note: Tone.BAD if note.matter is Matter.FAULTY else Tone.CAUTION,
        ),
        Column(title=tr("Part"), text=_subject),
        Column(title=tr("Name"), text=lambda note: note.name, hint=lambda note: note.name),
        Column(title=tr("What it is"), text=said, hint=said),
    )
