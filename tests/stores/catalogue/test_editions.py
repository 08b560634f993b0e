"""Drafts and editions: what is published stays, what did not change is shared, a failed write leaves nothing."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from sqlalchemy import Engine, event, func, select

from examples import up_to
from spoutline.catalogue.schema import CATALOGUE_SCHEMA
from spoutline.catalogue.shelf import CatalogueShelf
from spoutline.catalogue.tables import EntryRow, PartRecord, PortRow
from spoutline.database.engine import open_engine
from spoutline.model.candidate_filter import CandidateFilter
from spoutline.model.catalogue_edition import EditionRef
from spoutline.model.catalogue_entry import CatalogueEntry
from spoutline.model.faults import InputFault
from spoutline.model.part import PartKind
from spoutline.model.part_ref import PartRef
from stores.catalogue.entries import MAKER, NAME, priced_only, swivel

DAY = date(2026, 11, 28)


def put(shelf: CatalogueShelf, *entries: CatalogueEntry, gone: tuple[str, ...] = ()) -> tuple[int, int, int, int]:
    with shelf.draft(NAME) as desk:
        desk.put(entries)
        desk.take_out(PartRef(number, MAKER) for number in gone)
        counts = desk.counts
    return counts.new, counts.changed, counts.unchanged, counts.gone


def publish(shelf: CatalogueShelf, notes: str = "next") -> int | None:
    return shelf.publish(NAME, notes=notes, publisher="Ada Fenn", on=DAY).number


def numbers(shelf: CatalogueShelf, ref: EditionRef) -> list[str]:
    return [entry.number for entry in shelf.entries(ref)]


def states(engine: Engine) -> int:
    with engine.connect() as connection:
        return connection.execute(select(func.count()).select_from(EntryRow)).scalar_one()


def test_a_published_edition_never_changes(shelf: CatalogueShelf) -> None:
    put(shelf, swivel("FW 1"), swivel("FW 2"), priced_only())
    assert publish(shelf, "first") == 1
    first = tuple(shelf.entries(EditionRef(NAME, 1)))
    assert put(shelf, swivel("FW 1", price=9900), swivel("FW 3"), gone=("FW 2",)) == (1, 1, 0, 1)
    assert tuple(shelf.entries(EditionRef(NAME, 1))) == first
    assert numbers(shelf, EditionRef(NAME)) == ["FW 1", "FW 2", "FW 900"]  # the newest published one
    assert numbers(shelf, EditionRef(NAME, is_draft=True)) == ["FW 1", "FW 3", "FW 900"]
    assert publish(shelf, "second") == 2
    assert tuple(shelf.entries(EditionRef(NAME, 1))) == first
    assert numbers(shelf, EditionRef(NAME)) == ["FW 1", "FW 3", "FW 900"]
    old, new = (shelf.parts(EditionRef(NAME, number)).part(PartRef("FW 1", MAKER)) for number in (1, 2))
    assert old is not None
    assert new is not None
    assert (old.price_minor("USD"), new.price_minor("USD")) == (1765, 9900)
    edition = shelf.catalogue(NAME).editions[1]
    assert (edition.published_on, edition.publisher, edition.notes) == (DAY, "Ada Fenn", "second")
    assert (edition.parts_count, edition.described_count) == (3, 2)


def test_the_answers_of_an_edition_are_kept_and_those_of_a_draft_are_not(shelf: CatalogueShelf, engine: Engine) -> None:
    put(shelf, swivel("FW 1"))
    publish(shelf)
    edition, draft = (shelf.parts(ref) for ref in (EditionRef(NAME, 1), EditionRef(NAME, is_draft=True)))
    wanted, queries = CandidateFilter(kind=PartKind.SWIVEL), []
    event.listen(engine, "before_cursor_execute", lambda *told: queries.append(told[2]))
    asked = (edition.candidates(wanted), edition.count(PartKind.SWIVEL))
    assert ([part.number for part in asked[0]], asked[1]) == (["FW 1"], 1)
    assert [part.number for part in draft.candidates(wanted)] == ["FW 1"]
    put(shelf, swivel("FW 2"))
    queries.clear()
    assert (edition.candidates(wanted), edition.count(PartKind.SWIVEL)) == asked
    assert queries == []
    assert [part.number for part in draft.candidates(wanted)] == ["FW 1", "FW 2"]
    assert draft.count(PartKind.SWIVEL) == 2


def test_unchanged_entries_are_shared_by_all_editions(shelf: CatalogueShelf, engine: Engine) -> None:
    put(shelf, *(swivel(f"FW {number}") for number in range(30)))
    publish(shelf)
    for edition in range(2, 12):
        put(shelf, *(swivel(f"FW {number}", price=1765 + (edition if number == 3 else 0)) for number in range(30)))
        assert publish(shelf) == edition
    assert states(engine) == 30 + 10  # one new state for each edition, not thirty
    for edition in range(2, 12):
        part = shelf.parts(EditionRef(NAME, edition)).part(PartRef("FW 3", MAKER))
        assert part is not None
        assert part.price_minor("USD") == 1765 + edition


def test_editions_of_two_catalogs_differ_in_what_their_parts_say_alone(shelf: CatalogueShelf) -> None:
    """They share no state, however alike they are."""
    put(shelf, *(swivel(f"FW {number}") for number in range(2500)), priced_only("FW 9000"))
    publish(shelf)
    shelf.create("Copy")
    cheaper, other = swivel("FW 7", price=1700), priced_only("FW 9001")
    with shelf.draft("Copy") as desk:
        desk.put(shelf.entries(EditionRef(NAME, 1)))
        desk.put([cheaper, other])
        desk.take_out([PartRef("FW 9000", MAKER)])
    found = shelf.changes(EditionRef(NAME, 1), EditionRef("Copy", is_draft=True))
    assert [(one.ref.number, one.before, one.after) for one in found] == [
        ("FW 7", swivel("FW 7"), cheaper),
        ("FW 9000", priced_only("FW 9000"), None),
        ("FW 9001", None, other),
    ]
    assert shelf.changes(EditionRef("Copy", is_draft=True), EditionRef("Copy", is_draft=True)) == ()


def test_what_is_put_back_as_it_was_is_no_change(shelf: CatalogueShelf, engine: Engine) -> None:
    put(shelf, swivel("FW 1"), swivel("FW 2"))
    publish(shelf)
    put(shelf, swivel("FW 1", price=1), gone=("FW 2",))
    assert shelf.catalogue(NAME).has_changes
    put(shelf, swivel("FW 1"), swivel("FW 2"))
    assert not shelf.catalogue(NAME).has_changes
    assert states(engine) == 2
    with pytest.raises(InputFault, match="nothing changed"):
        publish(shelf)


def test_a_draft_can_be_thrown_away(shelf: CatalogueShelf, engine: Engine) -> None:
    put(shelf, swivel("FW 1"), swivel("FW 2"))
    publish(shelf)
    put(shelf, swivel("FW 1", price=1), swivel("FW 3"), priced_only(), gone=("FW 2",))
    shelf.discard_draft(NAME)
    assert tuple(shelf.entries(EditionRef(NAME, is_draft=True))) == tuple(shelf.entries(EditionRef(NAME, 1)))
    assert not shelf.catalogue(NAME).has_changes
    assert states(engine) == 2


def test_a_write_that_fails_in_the_middle_leaves_nothing(shelf: CatalogueShelf, engine: Engine) -> None:
    put(shelf, swivel("FW 1"))

    def broken() -> Iterator[CatalogueEntry]:
        yield from (swivel(f"FW {number}") for number in range(2, 2_500))
        raise RuntimeError("the file ends here")

    with pytest.raises(RuntimeError, match="ends here"), shelf.draft(NAME) as desk:
        desk.put(broken())
    assert numbers(shelf, EditionRef(NAME, is_draft=True)) == ["FW 1"]
    with shelf.draft(NAME, dry_run=True) as desk:
        desk.put([swivel("FW 7")])
        assert desk.counts.new == 1
    assert numbers(shelf, EditionRef(NAME, is_draft=True)) == ["FW 1"]
    assert states(engine) == 1


def test_a_part_that_is_not_yet_described_is_kept_and_never_chosen(shelf: CatalogueShelf) -> None:
    lacking = swivel("FW 5", mass_kg=None)
    put(shelf, swivel("FW 1"), priced_only("FW 900"), lacking)
    publish(shelf)
    ref = EditionRef(NAME)
    assert numbers(shelf, ref) == ["FW 1", "FW 5", "FW 900"]
    store = shelf.parts(ref)
    assert [part.number for part in store.candidates(CandidateFilter(kind=PartKind.SWIVEL))] == ["FW 1"]
    assert [part.number for part in store.search("", None, 10)] == ["FW 1"]
    assert store.count(PartKind.SWIVEL) == 1
    assert [entry.number for entry in shelf.entries(ref, described=False)] == ["FW 5", "FW 900"]
    assert shelf.entry(ref, PartRef("FW 5", MAKER)) == lacking
    put(shelf, swivel("FW 5"))  # now its mass is known
    publish(shelf)
    assert [part.number for part in shelf.parts(ref).candidates(CandidateFilter(kind=PartKind.SWIVEL))] == [
        "FW 1",
        "FW 5",
    ]


def test_a_number_is_unique_within_its_maker_and_catalogue(shelf: CatalogueShelf) -> None:
    other = swivel("FW 1", maker="Thrapwell Foundry")
    put(shelf, swivel("FW 1"), other)
    shelf.create("Second list")
    with shelf.draft("second LIST") as desk:  # capitals do not count
        desk.put([swivel("FW 1", price=5)])
    store = shelf.parts(EditionRef(NAME, is_draft=True))
    assert store.part(PartRef("FW 1")) is None
    assert {part.maker for part in store.parts([PartRef("FW 1")])} == {MAKER, "Thrapwell Foundry"}
    assert store.read_ref("thrapwell foundry FW 1") == other.ref
    assert numbers(shelf, EditionRef("Second list", is_draft=True)) == ["FW 1"]


def test_parts_gone_from_every_table_when_a_draft_drops_them(shelf: CatalogueShelf, engine: Engine) -> None:
    put(shelf, swivel("FW 1"), swivel("FW 2"))
    put(shelf, gone=("FW 1", "FW 2"))
    with engine.connect() as connection:
        for table in (EntryRow, PartRecord, PortRow):
            assert connection.execute(select(func.count()).select_from(table)).scalar() == 0


@pytest.mark.parametrize(
    ("name", "told"),
    [("own LIST", "this name"), ("a@b", "begins with"), ("", "begins with"), ("demonstration", "invented")],
)
def test_a_name_that_cannot_stand_is_refused(shelf: CatalogueShelf, name: str, told: str) -> None:
    with pytest.raises(InputFault, match=told):
        shelf.create(name)
    assert [one.name for one in shelf.catalogues()] == [NAME]


@pytest.mark.parametrize(
    ("text", "told"),
    [("Own list", "no published edition"), ("Own list@2", "no published edition"), ("Nobody", "Own list")],
)
def test_an_edition_that_is_not_there_is_told(shelf: CatalogueShelf, text: str, told: str) -> None:
    with pytest.raises(InputFault, match=told):
        shelf.parts(EditionRef.from_text(text))


def test_an_edition_is_found_by_the_title_that_papers_print(shelf: CatalogueShelf) -> None:
    for price in (1, 2):
        put(shelf, swivel("FW 1", price=price))
        publish(shelf)
    found = shelf.opened(EditionRef.from_text("Own list, edition 1")).edition
    assert (found.title, str(found.ref)) == ("Own list, edition 1", "Own list@1")


@pytest.mark.parametrize("text", ["Own list@0", "Own list@x", "Own list@", "@3", "a@b@1", "Own list@-1"])
def test_what_names_no_edition_is_told(text: str) -> None:
    with pytest.raises(InputFault):
        EditionRef.from_text(text)


@given(st.integers(1, 10**8), st.booleans())
def test_an_edition_is_written_as_it_is_read(number: int, is_draft: bool) -> None:
    ref = EditionRef("Müller & Söhne", None if is_draft else number, is_draft=is_draft)
    assert EditionRef.from_text(str(ref)) == ref


_steps = st.lists(
    st.tuples(st.sampled_from(["put", "gone", "publish", "discard"]), st.integers(1, 4), st.integers(1, 3)),
    max_size=25,
)


@settings(max_examples=up_to(25), suppress_health_check=[HealthCheck.function_scoped_fixture], deadline=None)
@given(_steps)
def test_editions_are_what_was_in_the_draft_when_they_were_published(
    tmp_path_factory: pytest.TempPathFactory, steps: list[tuple[str, int, int]]
) -> None:
    """The oracle is a dictionary that is copied at each publishing."""
    engine = open_engine(f"sqlite:///{tmp_path_factory.mktemp('steps') / 'book.sqlite3'}")
    CATALOGUE_SCHEMA.bring_up_to_date(engine)
    shelf = CatalogueShelf(engine)
    shelf.create(NAME)
    draft: dict[str, CatalogueEntry] = {}
    kept: list[dict[str, CatalogueEntry]] = []
    for step, which, price in steps:
        number = f"FW {which}"
        if step == "put":
            draft[number] = swivel(number, price=price) if which < 4 else priced_only(number, minor=price)
            put(shelf, draft[number])
        elif step == "gone":
            draft.pop(number, None)
            put(shelf, gone=(number,))
        elif step == "discard":
            shelf.discard_draft(NAME)
            draft = dict(kept[-1]) if kept else {}
        elif draft != (kept[-1] if kept else {}):
            assert publish(shelf) == len(kept) + 1
            kept.append(dict(draft))
        else:
            with pytest.raises(InputFault):
                publish(shelf)
    for edition, held in enumerate(kept, 1):
        assert {one.number: one for one in shelf.entries(EditionRef(NAME, edition))} == held
    assert {one.number: one for one in shelf.entries(EditionRef(NAME, is_draft=True))} == draft
    shelf.close()
