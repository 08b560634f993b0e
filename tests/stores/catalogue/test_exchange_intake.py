"""An exchange file taken in: what a look tells is what then happens, and what is stopped changes nothing."""

from __future__ import annotations

import csv
import io
import os
import random
import subprocess
import sys
import zipfile
from collections.abc import Callable
from datetime import date
from decimal import Decimal
from pathlib import Path
from typing import Any, ClassVar

import pytest
from hypothesis import HealthCheck, example, given, settings
from hypothesis import strategies as st
from pydantic import ValidationError

from examples import up_to
from spoutline.bootstrap import Workbench
from spoutline.bootstrap.exchange_intake import take_in
from spoutline.catalogue.draft import DraftDesk
from spoutline.catalogue.entry_cells import entry_of_cells
from spoutline.catalogue.exchange import exchange_bytes
from spoutline.catalogue.price_lists import COLUMNS, price_list_of
from spoutline.catalogue.schema import CATALOGUE_SCHEMA
from spoutline.catalogue.shelf import CatalogueShelf
from spoutline.database.engine import open_engine
from spoutline.model.catalogue_edition import EditionRef
from spoutline.model.catalogue_entry import CatalogueEntry
from spoutline.model.cross_reference import CrossReference
from spoutline.model.faults import Cancelled, InputFault
from spoutline.model.part import PartKind
from spoutline.model.part_family import PartFamily
from spoutline.model.part_ref import PartRef
from spoutline.model.pricing import PriceBreak, PriceList, PriceRow
from stores.catalogue.entries import MAKER, NAME, swivel

DRAFT = EditionRef(NAME, is_draft=True)


class Stopping:
    """Asks to stop once the file is read so far, in percent; keeps what it was told."""

    def __init__(self, at: int) -> None:
        self.at = at
        self.told: list[int] = []

    def on_progress(self, done: int, total: int) -> None:
        assert total == 100
        self.told.append(done)

    def should_stop(self) -> bool:
        return bool(self.told) and self.told[-1] >= self.at


def price_list(name: str, cents: int, numbers: int = 2) -> PriceList:
    rows = tuple(
        PriceRow(
            part_number=f"FW {number}",
            discount_group="",
            breaks=(PriceBreak(1, Decimal(cents + number) / 100), PriceBreak(10, Decimal(cents) / 100)),
        )
        for number in sorted(range(numbers), key=str)
    )
    return PriceList(name, MAKER, "USD", date(2026, 1, 1), None, rows)


def held(bench: Workbench, name: str = NAME) -> tuple[Any, ...]:
    """Return all that a draft holds."""
    shelf, ref = bench.catalogues().shelf(), EditionRef(name, is_draft=True)
    return tuple(shelf.entries(ref)), shelf.price_lists(ref), shelf.families(ref), shelf.references(ref)


def some(draw: random.Random) -> tuple[list[CatalogueEntry], list[PriceList], list[PartFamily]]:
    """Return parts, lists and families, few enough that two drafts have many of them in common."""
    families = [
        PartFamily(name=name, kind=swivel().kind, figures=swivel(planes=str(planes)).figures[-1:])
        for name, planes in (("One", draw.choice((1, 2))), ("Two", 2))
        if draw.random() < 0.7
    ]
    entries = [
        swivel(
            f"FW {number}", draw.choice((1765, 1800)), planes=draw.choice(("1", None)), family=draw.choice(("", "One"))
        )
        for number in range(6)
        if draw.random() < 0.6
    ]
    lists = [price_list(name, draw.choice((500, 600))) for name in ("a", "b", "c") if draw.random() < 0.6]
    return entries, lists, families


def filled(bench: Workbench, name: str, draw: random.Random) -> None:
    entries, lists, families = some(draw)
    with bench.catalogues().shelf().draft(name) as desk:
        desk.families.keep_only(set())
        desk.keep_only(set())
        desk.price_lists.keep_only(set())
        desk.families.put(families)
        desk.put(entries)
        desk.price_lists.put(lists)


@settings(max_examples=up_to(20), deadline=None, suppress_health_check=[HealthCheck.function_scoped_fixture])
@given(seed=st.integers(0, 2**32), keep_others=st.booleans())
def test_a_look_tells_what_then_happens_and_changes_nothing(
    own_workbench: Workbench, tmp_path: Path, seed: int, keep_others: bool
) -> None:
    draw, service = random.Random(seed), own_workbench.catalogues()
    if NAME not in {one.name for one in service.all()}:
        service.create(NAME)
    filled(own_workbench, NAME, draw)
    entries, lists, families = some(draw)
    known = {one.name for one in families}
    path = tmp_path / "exchange.zip"
    path.write_bytes(
        exchange_bytes([one for one in entries if one.family in known or not one.family], (), lists, families)
    )
    before = held(own_workbench)
    counts = service.look_at_exchange(path, NAME)
    assert held(own_workbench) == before
    done = service.import_exchange(path, NAME, keep_others=keep_others)
    assert done == (counts.beside if keep_others else counts.alone)
    # counted from what the draft held and holds now
    were, are = ({one.ref: one for one in held_of[0]} for held_of in (before, held(own_workbench)))
    assert done.new == len(are.keys() - were.keys())
    assert done.gone == len(were.keys() - are.keys())
    lists_were, lists_are = ({one.id: one for one in held_of[1]} for held_of in (before, held(own_workbench)))
    names = lists_were.keys() | lists_are.keys()
    assert done.price_lists == sum(lists_were.get(one) != lists_are.get(one) for one in names)


@pytest.mark.parametrize("keep_others", [True, False])
def test_a_part_that_only_follows_its_family_is_no_change(
    own_workbench: Workbench, tmp_path: Path, keep_others: bool
) -> None:
    service = own_workbench.catalogues()
    service.create(NAME)
    one, two = (PartFamily(name="One", kind=swivel().kind, figures=swivel(planes=n).figures[-1:]) for n in ("1", "2"))
    part = swivel(planes=None, family="One")
    with service.shelf().draft(NAME) as desk:
        desk.families.put([one])
        desk.put([part])
    path = tmp_path / "exchange.zip"
    path.write_bytes(exchange_bytes([part], (), (), [two]))
    counts = service.look_at_exchange(path, NAME)
    done = service.import_exchange(path, NAME, keep_others=keep_others)
    assert done == counts.beside == counts.alone
    assert (done.new, done.changed, done.unchanged, done.gone) == (0, 0, 1, 0)
    assert [entry.figure("planes") for entry in service.shelf().entries(DRAFT)] == [2]


@pytest.mark.parametrize("at", [0, 40, 99])
@pytest.mark.parametrize("looks", [False, True])
def test_what_is_stopped_changes_nothing(own_workbench: Workbench, tmp_path: Path, at: int, looks: bool) -> None:
    service = own_workbench.catalogues()
    service.create(NAME)
    filled(own_workbench, NAME, random.Random(3))
    before = held(own_workbench)
    path = tmp_path / "exchange.zip"
    path.write_bytes(exchange_bytes([swivel(f"FW {number}") for number in range(3000)], (), [price_list("z", 5, 1500)]))
    stopping = Stopping(at)
    act: Callable[..., object] = service.look_at_exchange if looks else service.import_exchange
    with pytest.raises(Cancelled):
        act(path, NAME, stopping)
    assert stopping.told == sorted(set(stopping.told))
    assert [one for one in stopping.told if one >= at] == stopping.told[-1:]  # it stops at the next look
    assert held(own_workbench) == before


def test_publishing_that_is_stopped_publishes_nothing(own_workbench: Workbench) -> None:
    service = own_workbench.catalogues()
    service.create(NAME)
    with service.shelf().draft(NAME) as desk:
        desk.put(swivel(f"FW {number}") for number in range(1200))

    class AfterSome:
        told: ClassVar[list[tuple[int, int]]] = []

        def on_progress(self, done: int, total: int) -> None:
            self.told.append((done, total))

        def should_stop(self) -> bool:
            return len(self.told) > 1

    with pytest.raises(Cancelled):
        service.publish(NAME, AfterSome(), notes="first", publisher="keeper", on=date(2026, 1, 1))
    assert AfterSome.told == [(0, 1200), (500, 1200)]
    assert service.shelf().catalogue(NAME).editions == ()
    service.publish(NAME, notes="first", publisher="keeper", on=date(2026, 1, 1))
    assert len(service.shelf().catalogue(NAME).editions) == 1


def test_price_lists_come_back_in_whatever_order_their_prices_stand(own_workbench: Workbench, tmp_path: Path) -> None:
    """A person sorts the table by number; 1,201 rows of a list are more than are packed at once."""
    lists = [price_list("a", 500, 600), price_list("b", 700, 3), price_list("c", 900, 1)]
    path, mixed = tmp_path / "exchange.zip", tmp_path / "mixed.zip"
    path.write_bytes(exchange_bytes([swivel()], (), lists))
    with zipfile.ZipFile(path) as was, zipfile.ZipFile(mixed, "w") as now:
        for name in was.namelist():
            text = was.read(name).decode()
            if name == "list_prices.csv":
                head, *rows = csv.reader(io.StringIO(text))
                random.Random(5).shuffle(rows)
                written = io.StringIO(newline="")
                csv.writer(written).writerows([head, *rows])
                text = written.getvalue()
            now.writestr(name, text)
    service = own_workbench.catalogues()
    service.create(NAME)
    assert service.import_exchange(mixed, NAME).price_lists == 3
    assert list(service.shelf().price_lists(DRAFT)) == lists
    assert service.import_exchange(path, NAME).price_lists == 0


_TEXTS = st.text(alphabet="aB9 ./-'=Ä\u0301\u200b\ufeff\x00\u00ad\t", max_size=6)
_CELLS = st.fixed_dictionaries(
    {},
    optional={
        "number": _TEXTS | st.just("FW 1"),
        "maker": _TEXTS | st.just(MAKER),
        "name": _TEXTS | st.text("x", min_size=199, max_size=202),
        "status": st.sampled_from(("active", "superseded", "discontinued", "gone")),
        "discontinued_from": st.sampled_from(("2024-02-29", "2023-02-29", "soon")),
        "superseded_by": st.sampled_from(("FW 1", "FW 2", "?")),
        "superseded_by_maker": st.sampled_from((MAKER, "\u200b")),
        "item_number": _TEXTS,
        "gtin": st.sampled_from(("6291041500213", "6291041500214", "1")),
        "supplier": _TEXTS,
        "family": _TEXTS,
        "lead_days": st.sampled_from(("0", "400", "401", "-1", "five", " 7 ", "1.0")),
        "pack": st.sampled_from(("0", "1", "1001")),
        "remark": _TEXTS,
    },
)


@settings(max_examples=up_to(400), deadline=None)
@given(_CELLS)
@example({"number": "FW 1", "maker": MAKER, "status": "superseded"})
@example({"number": "FW 1", "maker": MAKER, "status": "superseded", "superseded_by": "FW 1"})
@example({"number": "FW 1", "maker": MAKER, "superseded_by": "FW 2"})
@example({"number": "FW 1", "maker": MAKER, "status": "superseded", "superseded_by": "FW 2", "lead_days": " 7 "})
def test_cells_that_are_read_once_make_the_entry_that_its_model_makes(cells: dict[str, str]) -> None:
    beside: dict[str, Any] = {"kind": None, "prices": (), "figures": (), "files": ()}

    def tried(make: Callable[[], CatalogueEntry]) -> object:
        try:
            return make()
        except ValidationError as fault:
            return [(one["loc"], one["msg"]) for one in fault.errors(include_url=False)]

    assert tried(lambda: entry_of_cells(cells, **beside)) == tried(lambda: CatalogueEntry(**beside, **cells))


_AMOUNTS = st.sampled_from(("1", "0", "-1", "1.50", "1e2", "nan", "inf", "10000000", "10000000.01", "1" * 15, "", "x"))
_ROWS = st.tuples(_TEXTS | st.just("FW 1"), _TEXTS | st.text("g", min_size=119, max_size=122), _AMOUNTS, _AMOUNTS)


@settings(max_examples=up_to(300), deadline=None)
@given(_ROWS)
def test_a_row_of_a_price_list_is_read_alike_with_a_column_more(row: tuple[str, str, str, str]) -> None:
    """A row with other columns is read by the model alone, which then tells of what is too much, and of the rest."""
    head = {"id": "a", "maker": MAKER, "currency": "USD", "valid_from": date(2026, 1, 1)}
    cells = dict(zip(COLUMNS, row, strict=True))

    def told(cells: dict[str, str]) -> object:
        try:
            return price_list_of(head, [(1, cells)], str).rows
        except InputFault as fault:
            return {str(one) for one in fault.problems}

    both, plain = told(cells | {"colour": "red"}), told(cells)
    assert isinstance(both, set)
    extra = {one for one in both if "colour" in one}
    assert len(extra) == 1
    assert plain == both - extra if both - extra else isinstance(plain, tuple)


@settings(max_examples=up_to(300), deadline=None)
@given(
    st.integers(1, 1_200_000).map(str) | st.sampled_from(("007", "1.0", " 4 ", "1_0")),
    st.decimals(0, 20_000_000, places=4).map(str) | st.sampled_from(("0.00", "007.50", " 1 ", "1e2", ".5")),
)
def test_a_row_of_a_price_list_keeps_what_its_texts_say(quantity: str, price: str) -> None:
    """Of amounts within the bounds of a list, by Python's own reading of the texts; whatever way they are read."""
    head = {"id": "a", "maker": MAKER, "currency": "USD", "valid_from": date(2026, 1, 1)}
    cells = {"number": "FW 1", "group": "", "from_quantity": quantity, "unit_price": price}
    sound = 1 <= float(quantity) <= 1_000_000 and 0 < Decimal(price.strip()) <= 10_000_000
    try:
        rows = price_list_of(head, [(1, cells)], str).rows
    except InputFault:
        assert not sound
        return
    assert sound
    ((step,),) = (row.breaks for row in rows)
    assert (step.from_quantity, str(step.unit_price)) == (int(float(quantity)), str(Decimal(price.strip())))


def test_an_unknown_catalog_is_told_with_how_it_is_begun(own_workbench: Workbench, tmp_path: Path) -> None:
    path = tmp_path / "exchange.zip"
    path.write_bytes(exchange_bytes([swivel()]))
    service = own_workbench.catalogues()
    service.create("Other list")
    with pytest.raises(InputFault) as told:
        service.import_exchange(path, NAME)
    assert 'Other list; to begin this one run `spoutline catalog new "Own list"`' in str(told.value.problems[0])
    assert service.shelf().entry(EditionRef("Other list", is_draft=True), PartRef("FW 1", MAKER)) is None


# another process, with little patience, puts a part into the draft of a catalogue
_OTHER_WRITER = """
import sys
from spoutline.catalogue.shelf import CatalogueShelf
from spoutline.database.engine import open_engine
from spoutline.database.faults import Patience
from stores.catalogue.entries import swivel

shelf = CatalogueShelf(open_engine(sys.argv[1], Patience.SHORT))
with shelf.draft(sys.argv[2]) as desk:
    desk.put([swivel(sys.argv[3])])
"""


class OtherWriter:
    """Lets another process write to the book as soon as the file is being read."""

    def __init__(self, url: str, name: str) -> None:
        self._arguments = (url, name, "FW other")
        self.ended: list[tuple[int, str]] = []

    def on_progress(self, _done: int, _total: int) -> None:
        if not self.ended:
            command = [sys.executable, "-c", _OTHER_WRITER, *self._arguments]
            environment = os.environ | {"PYTHONPATH": os.pathsep.join(sys.path)}
            done = subprocess.run(command, capture_output=True, text=True, check=False, env=environment)
            self.ended.append((done.returncode, done.stderr))

    def should_stop(self) -> bool:
        return False


@pytest.fixture
def two_drafts(url: str) -> CatalogueShelf:
    """Return a shelf with two catalogues, each with the same part in its draft."""
    engine = open_engine(url)
    CATALOGUE_SCHEMA.bring_up_to_date(engine)
    shelf = CatalogueShelf(engine)
    for name in (NAME, "Second list"):
        shelf.create(name)
        with shelf.draft(name) as desk:
            desk.put([swivel("FW old")])
    return shelf


def draft_of(shelf: CatalogueShelf, name: str) -> set[str]:
    return {one.number for one in shelf.entries(EditionRef(name, is_draft=True))}


@pytest.fixture
def long_file(tmp_path: Path) -> Path:
    """Return an exchange file of so many rows that its reading is told about."""
    path = tmp_path / "exchange.zip"
    path.write_bytes(exchange_bytes([swivel(f"FW {number}") for number in range(600)]))
    return path


def test_others_write_while_a_file_is_read(two_drafts: CatalogueShelf, long_file: Path, url: str) -> None:
    other = OtherWriter(url, "Second list")
    done = take_in(two_drafts, NAME, long_file, other, keep_others=True)
    assert other.ended == [(0, "")]  # it found the book free, or else it would have given up after a second
    assert (done.new, done.gone) == (600, 0)
    assert draft_of(two_drafts, NAME) == {"FW old", *(f"FW {number}" for number in range(600))}
    assert draft_of(two_drafts, "Second list") == {"FW old", "FW other"}


@pytest.mark.parametrize("keep_others", [True, False])
def test_a_draft_that_another_changed_meanwhile_is_told_and_stays(
    two_drafts: CatalogueShelf, long_file: Path, url: str, keep_others: bool
) -> None:
    other = OtherWriter(url, NAME)
    with pytest.raises(InputFault) as told:
        take_in(two_drafts, NAME, long_file, other, keep_others=keep_others)
    assert other.ended == [(0, "")]
    assert "somebody changed its draft while the file was read" in str(told.value.problems[0])
    assert draft_of(two_drafts, NAME) == {"FW old", "FW other"}
    done = take_in(two_drafts, NAME, long_file, keep_others=keep_others)  # once more, as it asks
    assert (done.new, done.gone) == (600, 0 if keep_others else 2)


_CHANGES: dict[str, Callable[[DraftDesk], object]] = {
    "a part more": lambda desk: desk.put([swivel("FW 2")]),
    "a part less": lambda desk: desk.take_out([PartRef("FW old", MAKER)]),
    "a part otherwise": lambda desk: desk.put([swivel("FW old", name="another name")]),
    "a price list": lambda desk: desk.price_lists.put([price_list("other", 400)]),
    "a price list otherwise": lambda desk: desk.price_lists.put([price_list("list", 400)]),
    "an old number": lambda desk: desk.references.put(
        [CrossReference(number="X 1", maker=MAKER, part_number="FW old", part_maker=MAKER)]
    ),
    "a family": lambda desk: desk.families.put([PartFamily(name="family", kind=PartKind.SWIVEL)]),
}


@pytest.mark.parametrize("what", _CHANGES)
def test_a_draft_shows_that_it_changed(two_drafts: CatalogueShelf, what: str) -> None:
    def stamp() -> str:
        with two_drafts.looking(NAME) as desk:
            return desk.stamp()

    with two_drafts.draft(NAME) as desk:
        desk.price_lists.put([price_list("list", 300)])
    before = stamp()
    with two_drafts.draft("Second list") as desk:  # of another catalogue
        _CHANGES[what](desk)
    assert stamp() == before
    with two_drafts.draft(NAME) as desk:
        _CHANGES[what](desk)
    assert stamp() != before
