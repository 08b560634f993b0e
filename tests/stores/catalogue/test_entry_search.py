"""Search as somebody types: what is found, in which order, held against a search in plain Python over random texts."""

from __future__ import annotations

import tempfile
import unicodedata
from collections.abc import Iterator
from datetime import date
from pathlib import Path

import pytest
from hypothesis import HealthCheck, example, given, settings
from hypothesis import strategies as st
from sqlalchemy import Engine, text

from spoutline.catalogue import entry_search
from spoutline.catalogue.schema import CATALOGUE_SCHEMA
from spoutline.catalogue.shelf import CatalogueShelf
from spoutline.database.engine import open_engine
from spoutline.model.catalogue_edition import EditionRef
from spoutline.model.catalogue_entry import CatalogueEntry
from spoutline.model.cross_reference import CrossReference
from stores.catalogue.entries import MAKER, NAME, priced_only, swivel

DRAFT = EditionRef(NAME, is_draft=True)
DAY = date(2026, 11, 28)
SOME = 500


def put(shelf: CatalogueShelf, *entries: CatalogueEntry, old: tuple[tuple[str, str], ...] = ()) -> None:
    """Put entries in, and old numbers (number, part number) that lead to them."""
    with shelf.draft(NAME) as desk:
        desk.put(entries)
        desk.references.put(
            CrossReference(number=number, maker="Oldforge", part_number=part, part_maker=MAKER) for number, part in old
        )


def found(shelf: CatalogueShelf, typed: str, ref: EditionRef = DRAFT) -> list[str]:
    return [entry.number for entry in shelf.find(ref, typed, limit=SOME)[0]]


# a search in plain Python, over one letter or digit after the other


def letters(written: str) -> list[str]:
    """Return the signs of a text as they are compared; a blank between words, a joining sign as it is."""
    signs: list[str] = []
    for sign in unicodedata.normalize("NFKD", unicodedata.normalize("NFKD", written).casefold()):
        category = unicodedata.category(sign)
        if category in ("Mn", "Me") or (category == "Cf" and not sign.isascii()):
            continue
        if sign in "/.-+" or (category == "Pd" and not sign.isascii()) or sign == "\u2212":
            signs.append("-" if category == "Pd" or sign == "\u2212" else sign)
        elif sign in "\u2044\u2215":
            signs.append("/")
        else:
            signs.append(sign if sign.isalnum() or category[0] == "M" else " ")
    return signs


def words(written: str) -> list[str]:
    return [bare for word in "".join(letters(written)).split(" ") if (bare := word.strip("/.-+"))]


def bare(written: str) -> str:
    return "".join(sign for sign in letters(written) if sign not in "/.-+ ")


def pieces(signs: str) -> Iterator[str]:
    """Yield the rest of a text from each place on where a piece of letters or of digits begins."""
    for place in range(len(signs)):
        now, before = signs[place], signs[place - 1] if place else " "
        if now not in "/.-+ " and (before in "/.-+ " or now.isdecimal() != before.isdecimal()):
            yield signs[place:]


def closeness(entry: CatalogueEntry, old: tuple[str, ...], typed: str) -> int | None:
    """Return 0 for a number typed whole, 1 for its beginning, 2 for words; None where it is not found."""
    asked, whole = words(typed), bare(typed)
    if not asked:
        return None
    numbers = [one for one in (entry.number, entry.item_number, entry.gtin) if one]
    named = [bare(one) for one in numbers] + ["".join(c for c in one.casefold() if c.isalnum()) for one in old]
    plain_old = "".join(c for c in typed.casefold() if c.isalnum())
    if whole in map(bare, numbers) or plain_old in named[len(numbers) :]:
        return 0
    if any(one.startswith(whole) for one in map(bare, numbers)):
        return 1
    if plain_old and any(one.startswith(plain_old) for one in named[len(numbers) :]):
        return 1
    rests = [bare(rest) for one in numbers for rest in pieces(" ".join(words(one)))]
    of_texts = [
        rest for one in (entry.name, entry.maker, entry.supplier) for word in words(one) for rest in pieces(word)
    ]
    if any(rest.startswith(whole) for rest in rests):
        return 2
    is_known = all(
        any(rest.startswith(word) for rest in of_texts) or any(rest.startswith(bare(word)) for rest in rests)
        for word in asked
    )
    return 2 if is_known else None


SIGNS = "ab1 2/.-+éßΩ号"
numbers_drawn = st.text(SIGNS, min_size=1, max_size=7).map(lambda one: " ".join(one.split()))
numbers_drawn = numbers_drawn.filter(lambda one: any(sign.isalnum() for sign in one))
texts_drawn = st.text(SIGNS + "\"*()'%_:^½İक", max_size=12).map(lambda one: " ".join(one.split()))
typed_drawn = st.one_of(
    st.text(SIGNS + "\"*()'%_:^{}\\", max_size=6),
    st.sampled_from(
        ["a AND b", "a* OR b", "NOT a", "NEAR(a b)", '"a', "a:b", "search_text:a", "- -a", "^a", "(", "1/2", "½"]
    ),
)


@pytest.fixture(scope="module")
def drawn_shelf() -> Iterator[CatalogueShelf]:
    with tempfile.TemporaryDirectory() as folder:
        engine = open_engine(f"sqlite:///{folder}/book.sqlite3")
        CATALOGUE_SCHEMA.bring_up_to_date(engine)
        made = CatalogueShelf(engine)
        made.create(NAME)
        yield made
        engine.dispose()


@settings(max_examples=120, suppress_health_check=[HealthCheck.function_scoped_fixture], deadline=None)
@given(
    st.lists(
        st.tuples(numbers_drawn, texts_drawn, numbers_drawn), min_size=1, max_size=6, unique_by=lambda one: one[0]
    ),
    st.lists(typed_drawn, min_size=1, max_size=4),
)
@example([("1/2", "½ inch", "a")], ["½", "1/2", "12", '"1/2"*'])
@example([("ab 1+2", "x", "b"), ("ab12", "ab", "ab")], ["ab12", "ab 1", "AB 1+2", "12"])
def test_the_same_is_found_as_by_plain_python(
    drawn_shelf: CatalogueShelf, drawn: list[tuple[str, str, str]], asked: list[str]
) -> None:
    entries = {
        number: CatalogueEntry(number=number, maker=MAKER, name=name, item_number="S 1-b" if place == 0 else "")
        for place, (number, name, _old) in enumerate(drawn)
    }
    old = {number: (f"{one}",) for number, _name, one in drawn}
    references = {one[0]: number for number, one in old.items() if one[0] not in entries}
    with drawn_shelf.draft(NAME) as desk:
        desk.references.keep_only(set())
        desk.keep_only(set())
        desk.put(entries.values())
        desk.references.put(
            CrossReference(number=number, maker="Oldforge", part_number=part, part_maker=MAKER)
            for number, part in references.items()
        )
    leading = {part: (number,) for number, part in references.items()}
    for typed in [*asked, *(number for number, _name, _old in drawn), *(old for _number, _name, old in drawn)]:
        wanted = []
        for number, entry in entries.items():
            close = closeness(entry, leading.get(number, ()), typed)
            if close is not None:
                wanted.append((close, number))
        expected = [number for _close, number in sorted(wanted)] if typed.strip() else sorted(entries)
        assert found(drawn_shelf, typed) == expected, typed


# what a person types


@pytest.mark.parametrize(
    "typed",
    [
        "FW-1/20.5+K",
        "fw 1 20",
        "FW1205K",
        "20.5+k",
        "FW1",
        "205",
        "NIP",
        "nippel ¾",
        '3/4"',
        "3/4 nip",
        "FERNMOOR",
        "fw-",
    ],
)
def test_a_part_is_found_by_what_stands_on_its_label_or_in_its_text(shelf: CatalogueShelf, typed: str) -> None:
    put(shelf, priced_only("FW-1/20.5+K", "3/4\" x 9' Nippel, galvanisé"), priced_only("ZZ 9", "other thing"))
    assert found(shelf, typed)[0] == "FW-1/20.5+K"


@pytest.mark.parametrize("typed", ["наконечник", "НАКОН", "軟管", "galvanise", "GALVANISÉ", "μ5", "Straße", "STRASSE"])
def test_words_of_any_script_are_found_whatever_their_capitals_and_accents(shelf: CatalogueShelf, typed: str) -> None:
    put(shelf, priced_only("K 1", "Наконечник 軟管 galvanisé μ5 Straße"), priced_only("K 2", "hose"))
    assert found(shelf, typed) == ["K 1"]


@pytest.mark.parametrize(
    "typed", ['"', "*", "-", "'", "%", "_", "\\", "()", '"*"', "\0", "\ud800", "=", "@1", "!0", "#", "&swivel"]
)
def test_signs_alone_find_nothing_and_are_no_operators(shelf: CatalogueShelf, typed: str) -> None:
    put(shelf, priced_only("ZX", "hose"))
    assert found(shelf, typed) == []


@pytest.mark.parametrize("typed", ["hose AND swivel", "hose OR zz", "NOT zz", "hose -swivel", "NEAR(hose swivel)"])
def test_words_that_a_database_would_obey_are_words(shelf: CatalogueShelf, typed: str) -> None:
    put(shelf, priced_only("K 1", "hose"), priced_only("K 2", "swivel for a hose"))
    assert found(shelf, typed) == [] if "-swivel" not in typed else found(shelf, typed) == ["K 2"]


def test_exact_numbers_go_first_then_beginnings_then_words(shelf: CatalogueShelf) -> None:
    put(
        shelf,
        priced_only("A 1", "fits X 10"),
        priced_only("B-X10", "tail"),
        priced_only("X 100", "longer"),
        priced_only("X-10", "exact"),
        priced_only("Z 9", "by its old number"),
        priced_only("Y 1", "by the beginning of its old number"),
        old=(("X.10", "Z 9"), ("X 10 B", "Y 1")),
    )
    assert found(shelf, "x10") == ["X-10", "Z 9", "X 100", "Y 1", "B-X10"]  # "X 10" in a text is two words
    assert found(shelf, "x 10") == ["X-10", "Z 9", "X 100", "Y 1", "A 1", "B-X10"]


def test_item_numbers_gtins_and_old_numbers_over_several_steps_are_found(shelf: CatalogueShelf) -> None:
    put(
        shelf,
        priced_only("K 1").model_copy(update={"item_number": "ST-77", "gtin": "4006381333931"}),
        priced_only("K 2"),
        old=(("OLD 5", "K 2"),),
    )
    with shelf.draft(NAME) as desk:
        desk.references.put(
            [CrossReference(number="VERY OLD", maker="Elder", part_number="OLD 5", part_maker="Oldforge")]
        )
    assert found(shelf, "st77") == ["K 1"]
    assert found(shelf, "4006381") == ["K 1"]
    assert found(shelf, "very") == ["K 2"]


def test_the_words_follow_the_entry_in_the_same_transaction(shelf: CatalogueShelf, engine: Engine) -> None:
    put(shelf, priced_only("K 1", "green hose"), swivel("K 2"))
    first = shelf.publish(NAME, notes="first", publisher="Ada Fenn", on=DAY).ref
    put(shelf, priced_only("K 1", "blue hose"))
    assert (found(shelf, "green"), found(shelf, "blue")) == ([], ["K 1"])
    assert (found(shelf, "green", first), found(shelf, "blue", first)) == (["K 1"], [])
    with pytest.raises(RuntimeError), shelf.draft(NAME) as desk:
        desk.put([priced_only("K 3", "red hose")])
        raise RuntimeError
    assert found(shelf, "red") == []
    shelf.discard_draft(NAME)
    assert (found(shelf, "green"), found(shelf, "blue")) == (["K 1"], [])
    with engine.connect() as connection:  # FTS5's own check that its index says what the table says
        connection.execute(text("INSERT INTO catalogue_find(catalogue_find, rank) VALUES ('integrity-check', 1)"))


def test_a_list_is_narrowed_to_what_is_not_described_and_to_its_catalogue(shelf: CatalogueShelf) -> None:
    put(shelf, priced_only("K 1", "swivel, priced"), swivel("K 2"))
    shelf.create("Other list")
    with shelf.draft("Other list") as desk:
        desk.put([priced_only("K 3", "swivel elsewhere")])
    assert found(shelf, "swivel") == ["K 1", "K 2"]
    entries, count = shelf.find(DRAFT, "swivel", limit=5, described=False)
    assert ([entry.number for entry in entries], count.number, count.is_all) == (["K 1"], 1, True)
    for described, wanted in ((None, ["K 1", "K 2"]), (True, ["K 2"]), (False, ["K 1"])):
        entries, count = shelf.find(DRAFT, "", limit=5, described=described)
        assert ([entry.number for entry in entries], count.number) == (wanted, len(wanted))
    published = shelf.publish(NAME, notes="first", publisher="Ada Fenn", on=DAY).ref
    put(shelf, priced_only("K 0", "later"))
    entries, count = shelf.find(published, "", limit=1, described=None)
    assert ([entry.number for entry in entries], count.number) == (["K 1"], 2)


def test_of_very_many_the_numbers_still_go_first(shelf: CatalogueShelf, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(entry_search, "MOST_ORDERED", 20)
    put(shelf, *(priced_only(f"K {serial}", "hose 77") for serial in range(60)), priced_only("77", "swivel"))
    entries, count = shelf.find(DRAFT, "77", limit=20)
    assert (entries[0].number, count.number, count.is_all) == ("77", 20, False)


def test_a_book_of_the_version_before_is_found_by_its_words(tmp_path: Path) -> None:
    from alembic import command
    from alembic.config import Config

    engine = open_engine(f"sqlite:///{tmp_path / 'old.sqlite3'}")
    CATALOGUE_SCHEMA.bring_up_to_date(engine)
    shelf = CatalogueShelf(engine)
    shelf.create(NAME)
    put(shelf, priced_only("K-1", "Green hose"))
    config = Config()
    config.set_main_option("script_location", str(CATALOGUE_SCHEMA.migrations))
    with engine.connect() as connection, connection.begin():
        config.attributes["connection"] = connection
        command.downgrade(config, "catalogue_0009")
        known_by = connection.execute(text("SELECT search_text FROM catalogue_entry")).scalar_one()
        assert known_by == f"k-1 green hose {MAKER.casefold()}"
    CATALOGUE_SCHEMA.bring_up_to_date(engine)
    assert found(shelf, "k1") == found(shelf, "gree") == ["K-1"]
    engine.dispose()
