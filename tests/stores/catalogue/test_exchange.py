"""The exchange file: everything comes back, byte for byte; what is no sound file is refused and changes nothing."""

from __future__ import annotations

import io
import json
import random
import zipfile
from collections.abc import Callable
from datetime import date
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from examples import up_to
from spoutline.catalogue.descriptions import COLUMNS, describe, entry_of, figure_cells
from spoutline.catalogue.entry_text import entry_from_text, entry_text
from spoutline.catalogue.exchange import exchange_bytes
from spoutline.catalogue.exchange_format import DESCRIPTOR
from spoutline.catalogue.exchange_reader import ExchangeReader
from spoutline.catalogue.source import SourceCatalogue
from spoutline.input_bounds.bounds import BOUNDS
from spoutline.model.catalogue_entry import CatalogueEntry, EntryPrice, Origin
from spoutline.model.faults import InputFault
from spoutline.model.part import PartKind, PartStatus
from spoutline.model.part_figures import PartFigure
from stores.catalogue.entries import priced_only, swivel


def read_back(content: bytes, folder: Path) -> tuple[list[CatalogueEntry], list[str]]:
    path = folder / "exchange.zip"
    path.write_bytes(content)
    with ExchangeReader(path) as reader:
        return list(reader.entries()), [str(problem) for problem in reader.problems]


def test_every_invented_part_is_described_by_its_entry_again(reviewed: SourceCatalogue) -> None:
    for part in reviewed.parts:
        assert describe(entry_of(part)).part == part


def test_the_invented_catalogue_comes_back_byte_for_byte(reviewed: SourceCatalogue, tmp_path: Path) -> None:
    entries = [entry_of(part) for part in reviewed.parts]
    content = exchange_bytes(entries)
    back, problems = read_back(content, tmp_path)
    assert problems == []
    assert sorted(back, key=lambda one: one.ref) == entries
    assert exchange_bytes(reversed(back)) == content


_SIGNS = "aÄя中'=+-@\",;¼… "
_ORIGINS = [one for one in Origin if one is not Origin.FAMILY]  # families have tests of their own
_NUMBER_SIGNS = "AbÄя中9٤/.-+"


def any_entry(draw: random.Random, number: int) -> CatalogueEntry:
    """Return an entry of any kind, in which any figure may lack and any text may hold what trips a table up."""

    def text(signs: str = _SIGNS, most: int = 12) -> str:
        return "".join(draw.choices(signs, k=draw.randrange(most))).strip()

    kind = draw.choice([None, *PartKind])
    known = COLUMNS[kind] if kind else {}
    cells = {column: any_cell(draw, figure) for column, figure in known.items() if draw.random() < 0.6}
    figures, wrong = figure_cells(kind, cells, draw.choice(_ORIGINS), text()) if kind else ((), ())
    assert wrong == ()
    currencies = draw.choice([(), ("EUR",), ("EUR", "USD")])
    return CatalogueEntry(
        number=f"{draw.choice(['', '-', '+', '/'])}{number}{text(_NUMBER_SIGNS)}",
        maker=draw.choice(["Fernmoor", "=Thrap", "'+Well"]),
        name=text(),
        kind=kind,
        status=draw.choice([PartStatus.ACTIVE, PartStatus.DISCONTINUED]),
        discontinued_from=draw.choice([None, date(2024, 2, 29)]),
        item_number=draw.choice(["", "0815", "+4711", "'=x"]),
        gtin=draw.choice(["", "6291041500213"]),
        supplier=text(),
        family=text(),
        lead_days=draw.choice([None, 0, 400]),
        pack=draw.choice([None, 1, 1000]),
        prices=tuple(EntryPrice(currency=one, minor=draw.randrange(10**9)) for one in currencies),
        remark=text(f"{_SIGNS}\n", most=40),
        figures=figures,
    )


def any_cell(draw: random.Random, figure: PartFigure) -> object:
    bounds = figure.declared.bounds
    if figure.value_type is bool:
        return draw.random() < 0.5
    if figure.choices:
        words = [one.value for one in figure.choices]
        return tuple(draw.sample(words, draw.randint(1, len(words)))) if figure.many else draw.choice(words)
    if figure.value_type is int:
        return draw.randint(1, 3)
    if not figure.is_number:
        return "NPT 3/4 male single"
    low = bounds.above if bounds.least is None else bounds.least
    assert low is not None
    assert bounds.most is not None
    value = draw.choice([draw.uniform(low, bounds.most), bounds.most, round(bounds.most / 3, 3), -0.0, 1e-9])
    return value if bounds.admit(value) else bounds.most


@settings(max_examples=up_to(60), deadline=None)
@given(st.integers(0, 2**32))
def test_any_catalogue_comes_back_byte_for_byte(tmp_path_factory: pytest.TempPathFactory, seed: int) -> None:
    draw = random.Random(seed)
    given_entries = [any_entry(draw, number) for number in range(draw.randrange(8))]
    content = exchange_bytes(given_entries)
    back, problems = read_back(content, tmp_path_factory.mktemp("exchange"))
    assert problems == []
    assert sorted(back, key=lambda one: one.ref) == sorted(given_entries, key=lambda one: one.ref)
    assert exchange_bytes(back) == content
    for entry in given_entries:
        assert entry_from_text(entry_text(entry)) == entry


def test_no_text_of_a_part_becomes_a_formula(tmp_path: Path) -> None:
    content = exchange_bytes([priced_only(text='=HYPERLINK("x")'), priced_only("FW 901", text="'=already")])
    with zipfile.ZipFile(io.BytesIO(content)) as archive:
        table = archive.read("unknown_kind.csv").decode()
    assert ",\"'=HYPERLINK" in table
    back, _problems = read_back(content, tmp_path)
    assert [one.name for one in back] == ['=HYPERLINK("x")', "'=already"]


def test_the_descriptor_is_a_data_package_with_a_schema_for_every_column(tmp_path: Path) -> None:
    """Data Package 2.0: https://datapackage.org/standard/data-package, Table Schema: fields and primary key."""
    with zipfile.ZipFile(io.BytesIO(exchange_bytes([swivel(), priced_only()]))) as archive:
        said = json.loads(archive.read(DESCRIPTOR))
        for resource in said["resources"]:
            head = archive.read(resource["path"]).decode().splitlines()[0].split(",")
            assert [field["name"] for field in resource["schema"]["fields"]] == head
            assert set(resource["schema"]["primaryKey"]) <= set(head)
            assert all(field["type"] for field in resource["schema"]["fields"])
    assert said["$schema"].startswith("https://datapackage.org/profiles/2.0/")
    assert {one["name"] for one in said["resources"]} == {"swivel", "unknown_kind", "prices"}


def changed(member: str, change: Callable[[bytes], bytes | None], content: bytes | None = None) -> bytes:
    """Return an exchange file with one member changed; None leaves it out."""
    target = io.BytesIO()
    with (
        zipfile.ZipFile(io.BytesIO(content or exchange_bytes([swivel(), priced_only()]))) as archive,
        zipfile.ZipFile(target, "w") as made,
    ):
        for name in archive.namelist():
            text: bytes | None = archive.read(name)
            if name == member:
                text = change(archive.read(name))
            if text is not None:
                made.writestr(name, text)
    return target.getvalue()


@pytest.mark.parametrize(
    ("content", "told"),
    [
        (b"no archive", "exchange file"),
        (b"", "exchange file"),
        (exchange_bytes([swivel()])[:-30], "exchange file"),
        (changed(DESCRIPTOR, lambda _: None), "format"),
        (changed(DESCRIPTOR, lambda _: b"[1]"), "format"),
        (changed(DESCRIPTOR, lambda text: text.replace(b'"formatVersion": 1', b'"formatVersion": 2')), "version 1"),
        (changed("swivel.csv", lambda _: b"\xff\xfe\x00"), "UTF-8"),
    ],
)
def test_what_is_no_exchange_file_is_refused(content: bytes, told: str, tmp_path: Path) -> None:
    with pytest.raises(InputFault, match=told):
        read_back(content, tmp_path)


def test_a_member_that_does_not_belong_there_is_refused(tmp_path: Path) -> None:
    target = io.BytesIO(exchange_bytes([swivel()]))
    with zipfile.ZipFile(target, "a") as archive:
        archive.writestr("../outside.csv", "x")
    with pytest.raises(InputFault, match="outside"):
        read_back(target.getvalue(), tmp_path)


def test_a_file_that_unpacks_to_far_too_much_is_refused_before_it_is_unpacked(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("spoutline.catalogue.exchange_archive.BOUNDS", type(BOUNDS)(exchange_unpacked_bytes=1000))
    with pytest.raises(InputFault, match="unpacked"):
        read_back(exchange_bytes([swivel()]), tmp_path)


@pytest.mark.parametrize(
    ("member", "old", "new", "told"),
    [
        ("swivel.csv", b",0.3,", b",heavy,", "mass_kg: 'heavy'"),
        ("swivel.csv", b",0.3,", b",-1,", "mass_kg: '-1'"),
        ("swivel.csv", b"FW 1,", b"FW_1,", "number: 'FW_1'"),
        ("swivel.csv", b",active,", b",asleep,", "status"),
        ("swivel.csv", b"number,maker", b"nummer,maker", "columns"),
        ("prices.csv", b"USD,1765", b"USD,17.65", "price_minor"),
        ("prices.csv", b"FW 1,", b"FW 2,", "FW 2"),
    ],
)
def test_a_wrong_cell_is_told_with_its_place(member: str, old: bytes, new: bytes, told: str, tmp_path: Path) -> None:
    sound = exchange_bytes([swivel()])
    with zipfile.ZipFile(io.BytesIO(sound)) as archive:
        assert old in archive.read(member)
    _back, problems = read_back(changed(member, lambda text: text.replace(old, new), sound), tmp_path)
    assert any(told in problem for problem in problems)
    assert any(".csv" in problem for problem in problems)


def test_a_number_that_stands_twice_is_told(tmp_path: Path) -> None:
    def doubled(text: bytes) -> bytes:
        head, row = text.splitlines(keepends=True)
        return head + row + row

    _back, problems = read_back(changed("swivel.csv", doubled, exchange_bytes([swivel()])), tmp_path)
    assert any("may stand once" in problem for problem in problems)
