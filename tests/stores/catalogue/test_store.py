"""The store answers as a plain search through all parts would, and gives back exactly what the source says."""

import threading
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from sqlalchemy import make_url

from examples import up_to
from spoutline.catalogue.build import ensure_catalogue
from spoutline.catalogue.shelf import CatalogueShelf
from spoutline.catalogue.store import CatalogueStore
from spoutline.model.candidate_filter import CandidateFilter
from spoutline.model.catalogue_edition import DEMONSTRATION, EditionRef
from spoutline.model.faults import StoreFault
from spoutline.model.liquid import ListingClass, ListingScheme
from spoutline.model.part import Part, PartKind, PartStatus
from spoutline.model.part_ref import PartRef
from spoutline.model.port import FlowPath
from spoutline.planning.protocols import PartStore
from two_makers import MAKER, NUMBER, OTHER, catalogue_of_two_makers


def keeps(part: Part, wanted: CandidateFilter) -> bool:
    """The filter in plain words."""
    return (
        part.kind is wanted.kind
        and (wanted.path is None or part.path is wanted.path)
        and (wanted.listing_class is None or wanted.listing_class in part.listings)
        and (wanted.scheme is None or wanted.scheme in part.schemes)
        and (wanted.temperature_low_c is None or part.temperature_minimum_c <= wanted.temperature_low_c)
        and (wanted.temperature_high_c is None or part.temperature_maximum_c >= wanted.temperature_high_c)
        and (not wanted.active_only or part.status is PartStatus.ACTIVE)
    )


filters = st.builds(
    CandidateFilter,
    kind=st.sampled_from(PartKind),
    path=st.none() | st.sampled_from(FlowPath),
    listing_class=st.none() | st.sampled_from(ListingClass),
    scheme=st.none() | st.sampled_from(ListingScheme),
    temperature_low_c=st.none() | st.sampled_from([-40.0, -30.0, -29.0, -28.9, -20.0, -10.0, 0.0]),
    temperature_high_c=st.none() | st.sampled_from([30.0, 40.0, 50.0, 52.0, 52.1, 60.0]),
    active_only=st.booleans(),
)


@settings(max_examples=up_to(200), deadline=None)
@given(wanted=filters)
def test_the_filter_equals_a_plain_search_through_all_parts(store, reviewed, wanted):
    assert store.candidates(wanted) == tuple(part for part in reviewed.parts if keeps(part, wanted))


def test_every_part_comes_back_as_the_source_says(store, reviewed):
    assert store.parts([part.ref for part in reversed(reviewed.parts)]) == reviewed.parts


def test_the_store_is_what_the_use_cases_ask_for(store):
    asked: PartStore = store
    assert asked.edition().title == "Invented catalog 2026-11"
    assert str(asked.edition().ref) == "Demonstration@1"


def test_counts_agree_with_the_source(store, reviewed):
    for kind in PartKind:
        assert store.count(kind) == sum(part.kind is kind for part in reviewed.parts)


def test_unknown_numbers_are_left_out(store):
    assert store.part(PartRef("XX-N000")) is None
    assert [part.number for part in store.parts([PartRef(one) for one in ("XX-N000", "QW-N101", "QW-N101")])] == [
        "QW-N101"
    ]
    assert store.parts([]) == ()


def test_currencies_are_sorted(store):
    assert store.currencies() == ("EUR", "USD")


@pytest.mark.parametrize("typed", ["QW-N1O1", "qw-n101", "QWN101", " QW-N101 "])
def test_a_mistyped_number_gets_near_ones(store, typed):
    assert "QW-N101" in store.nearest_numbers(typed)
    assert len(store.nearest_numbers(typed)) <= 3


def test_nothing_near_means_no_suggestion(store):
    assert store.nearest_numbers("????") == ()


def test_search_finds_every_word_in_number_name_or_maker(store, reviewed):
    found = store.search("bellows E85 quillmere", None, 100)
    assert found
    for part in found:
        text = f"{part.number} {part.name} {part.maker}".casefold()
        assert all(word in text for word in ("bellows", "e85", "quillmere"))
    assert found == tuple(
        part
        for part in reviewed.parts
        if all(word in f"{part.number} {part.name} {part.maker}".casefold() for word in ("bellows", "e85", "quillmere"))
    )


def test_search_keeps_kind_and_limit(store):
    assert {part.kind for part in store.search("3/4", PartKind.SWIVEL, 500)} == {PartKind.SWIVEL}
    assert len(store.search("", None, 5)) == 5
    assert store.search("", None, 0) == ()


@pytest.mark.parametrize("text", ["%", "_", "\\", "' UNION SELECT 1 --", '"', "=zz+zz"])
def test_search_text_is_data(store, text):
    assert store.search(text, None, 10) == ()


def test_readers_in_several_threads_agree(store: CatalogueStore):
    answers: list[tuple[Part, ...]] = []
    failed: list[Exception] = []

    def read() -> None:
        try:
            for kind in PartKind:
                store.candidates(CandidateFilter(kind=kind))
            answers.append(store.search("", None, 10_000))
        except Exception as fault:  # the thread must report, not die
            failed.append(fault)

    threads = [threading.Thread(target=read) for _ in range(8)]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()
    assert failed == []
    assert len(set(answers)) == 1


def test_a_cold_store_reads_a_kind_with_few_queries(shared_database):
    from sqlalchemy import event

    from spoutline.database.engine import open_engine

    engine = open_engine(f"sqlite:///{shared_database}")
    asked: list[str] = []
    event.listen(engine, "before_cursor_execute", lambda *arguments: asked.append(arguments[2]))
    opened = CatalogueShelf(engine).parts(EditionRef(DEMONSTRATION))
    asked.clear()
    assert len(opened.candidates(CandidateFilter(kind=PartKind.NOZZLE))) > 100
    assert sum("SELECT" in statement for statement in asked) < 12  # keys, parts and their tables: none per part
    asked.clear()
    for _ in range(2):  # of parts once read the keys alone are asked for, and of an edition not even these again
        opened.candidates(CandidateFilter(kind=PartKind.NOZZLE, active_only=True))
    assert sum("SELECT" in statement for statement in asked) == 1
    opened.close()


def test_parts_of_an_edition_are_looked_up_once_and_a_bare_number_still_names_every_maker_s(tmp_path):
    from sqlalchemy import event

    from spoutline.database.engine import open_engine

    url = f"sqlite:///{tmp_path / 'two.sqlite3'}"
    ensure_catalogue(url, catalogue_of_two_makers(tmp_path / "catalog")).close()
    engine = open_engine(url)
    asked: list[str] = []
    event.listen(engine, "before_cursor_execute", lambda *arguments: asked.append(arguments[2]))
    store = CatalogueShelf(engine).parts(EditionRef(DEMONSTRATION))
    refs = [PartRef("QW-N102", MAKER), PartRef(NUMBER, OTHER)]
    before = store.parts(refs)
    assert [part.ref for part in before] == [PartRef(NUMBER, OTHER), PartRef("QW-N102", MAKER)]  # by number
    asked.clear()
    assert store.parts([*refs, *refs]) == before
    assert asked == []
    assert [part.ref for part in store.parts([PartRef(NUMBER)])] == sorted(
        [PartRef(NUMBER, MAKER), PartRef(NUMBER, OTHER)]
    )
    assert store.parts([PartRef(NUMBER, MAKER), PartRef("QW-NOTHING", MAKER)])[0].ref == PartRef(NUMBER, MAKER)
    store.close()


def test_a_deleted_file_is_told_and_no_empty_one_takes_its_place(compiled_url, source):
    """SQLite itself opens a new, empty file where one is missing: https://www.sqlite.org/c3ref/open.html"""
    store, file = ensure_catalogue(compiled_url, source), Path(make_url(compiled_url).database)
    file.unlink()
    with pytest.raises(StoreFault, match="no longer there"):
        store.nearest_numbers("QW-N101")
    store.close()
    with pytest.raises(StoreFault, match="no longer there"):
        store.candidates(CandidateFilter(kind=PartKind.NOZZLE))
    with pytest.raises(StoreFault, match="no longer there"):
        ensure_catalogue(compiled_url, source, may_create=False)
    assert not file.exists()
