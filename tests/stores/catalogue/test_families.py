"""Families of parts: figures set once, inherited, overridden; what follows when the family changes."""

from __future__ import annotations

from datetime import date
from pathlib import Path

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from spoutline.bootstrap import Settings, Workbench, open_workbench
from spoutline.catalogue.families import with_family
from spoutline.catalogue.shelf_lookup import EntryChange
from spoutline.model.catalogue_edition import EditionRef
from spoutline.model.catalogue_entry import CatalogueEntry, FigureCell, Origin
from spoutline.model.faults import InputFault
from spoutline.model.part import PartKind
from spoutline.model.part_family import PartFamily
from spoutline.planning.keeping.entry_editing import with_field
from spoutline.planning.keeping.family_editing import edited_family
from stores.catalogue.entries import SWIVEL, priced_only, swivel

NAME = "Own list"
DRAFT = EditionRef(NAME, is_draft=True)
DAY = date(2026, 11, 28)
TEXTS = {**SWIVEL, "mass_kg": "0.3"}


@pytest.fixture
def bench(tmp_path: Path) -> Workbench:
    opened = open_workbench(Settings(database=str(tmp_path / "book.sqlite3"), profiles=tmp_path / "profiles"))
    opened.catalogues().create(NAME)
    return opened


def family(name: str = "One plane", **changes: str) -> PartFamily:
    return edited_family(None, name, PartKind.SWIVEL, {**TEXTS, **changes})


def bare(number: str, **changes: object) -> CatalogueEntry:
    """Return a part that belongs to the family and says no figure itself."""
    entry = priced_only(number).model_copy(update={"family": "One plane", "lead_days": 5})
    return entry.model_copy(update=changes)


def put(bench: Workbench, *entries: CatalogueEntry) -> None:
    with bench.catalogues().shelf().draft(NAME) as desk:
        desk.put(entries)


def held(bench: Workbench, number: str, ref: EditionRef = DRAFT) -> CatalogueEntry:
    found = next(one for one in bench.catalogues().shelf().entries(ref) if one.number == number)
    assert found is not None
    return found


def cell(entry: CatalogueEntry, column: str) -> FigureCell | None:
    return next((one for one in entry.figures if one.column == column), None)


def test_parts_have_the_figures_of_their_family_whichever_is_put_first(bench: Workbench) -> None:
    put(bench, bare("FW 1"), bare("FW 2", family="Other"))
    assert bench.catalogues().put_family(NAME, family()) == 1
    put(bench, bare("FW 3"))
    for number in ("FW 1", "FW 3"):
        entry = held(bench, number)
        assert entry.kind is PartKind.SWIVEL
        assert cell(entry, "mass_kg") == FigureCell(
            column="mass_kg", value=0.3, origin=Origin.FAMILY, source="One plane"
        )
    assert held(bench, "FW 2").figures == ()
    lacking = {line.entry.number: line.lacking for line in bench.catalogues().find(DRAFT, "", limit=9).lines}
    assert lacking["FW 1"] == lacking["FW 3"] == ()


def test_a_part_keeps_its_own_figure_and_takes_the_familys_again_where_it_leaves_it_open(bench: Workbench) -> None:
    bench.catalogues().put_family(NAME, family())
    put(bench, bare("FW 1"))
    service = bench.catalogues()

    def change(key: str, text: str) -> CatalogueEntry:
        before = held(bench, "FW 1")
        (done,) = service.change_entries(NAME, [EntryChange(before.ref, before, with_field(before, key, text))])
        assert done.after == held(bench, "FW 1")
        return held(bench, "FW 1")

    own = cell(change("mass_kg", "0.5"), "mass_kg")
    assert own == FigureCell(column="mass_kg", value=0.5)
    service.put_family(NAME, family(mass_kg="0.7", max_pressure_kpa="600"))
    entry = held(bench, "FW 1")
    assert (entry.figure("mass_kg"), entry.figure("max_pressure_kpa")) == (0.5, 600)
    again = cell(change("mass_kg", ""), "mass_kg")
    assert again == FigureCell(column="mass_kg", value=0.7, origin=Origin.FAMILY, source="One plane")
    assert change("family", "").figures == ()


def test_a_figure_that_the_family_loses_is_lost_by_its_parts(bench: Workbench) -> None:
    bench.catalogues().put_family(NAME, family())
    put(bench, bare("FW 1"))
    bench.catalogues().put_family(NAME, edited_family(family(), "One plane", PartKind.SWIVEL, {"mass_kg": ""}))
    assert cell(held(bench, "FW 1"), "mass_kg") is None
    assert next(iter(bench.catalogues().find(DRAFT, "", limit=9).lines)).lacking == ("mass_kg",)
    bench.catalogues().remove_family(NAME, "One plane")
    assert held(bench, "FW 1").figures == ()
    with pytest.raises(InputFault, match="no family"):
        bench.catalogues().remove_family(NAME, "One plane")


def test_published_editions_keep_what_was_inherited_and_the_draft_goes_back_to_it(bench: Workbench) -> None:
    service = bench.catalogues()
    service.put_family(NAME, family())
    put(bench, bare("FW 1"))
    first = service.publish(NAME, notes="first", publisher="Ada Fenn", on=DAY).ref
    service.put_family(NAME, family(mass_kg="0.9"))
    assert service.shelf().catalogue(NAME).families_changed
    assert (held(bench, "FW 1", first).figure("mass_kg"), held(bench, "FW 1").figure("mass_kg")) == (0.3, 0.9)
    assert [part.mass_kg for part in service.shelf().parts(first).search("fw1", None, 9)] == [0.3]
    service.discard_draft(NAME)
    assert service.families(DRAFT) == service.families(first)
    assert held(bench, "FW 1").figure("mass_kg") == 0.3
    assert not service.shelf().catalogue(NAME).has_changes


def test_a_family_can_be_called_otherwise_and_its_parts_go_with_it(bench: Workbench) -> None:
    service = bench.catalogues()
    service.put_family(NAME, family())
    put(bench, bare("FW 1"))
    assert service.put_family(NAME, family("Plain"), renamed_from="One plane") == 1
    entry = held(bench, "FW 1")
    assert (entry.family, cell(entry, "mass_kg").source) == ("Plain", "Plain")  # type: ignore[union-attr]
    assert [one.name for one in service.families(DRAFT)] == ["Plain"]


def test_a_family_that_would_make_a_part_faulty_changes_nothing(bench: Workbench) -> None:
    service = bench.catalogues()
    service.put_family(NAME, family())
    put(bench, bare("FW 1", kind=PartKind.SWIVEL, figures=(FigureCell(column="temp_min_c", value=10.0),)))
    with pytest.raises(InputFault, match="FW 1"):
        service.put_family(NAME, family(temp_max_c="-20", temp_min_c="-29"))
    assert held(bench, "FW 1").figure("temp_max_c") == 52


@pytest.mark.parametrize(("texts", "told"), [({"mass_kg": "far"}, "mass_kg"), ({"price": "3 USD"}, "price")])
def test_what_a_family_cannot_have_is_told_at_its_field(texts: dict[str, str], told: str) -> None:
    with pytest.raises(InputFault) as raised:
        edited_family(None, "One plane", PartKind.SWIVEL, texts)
    assert [one.place for one in raised.value.problems] == [told]


def test_the_exchange_file_carries_families_byte_for_byte(bench: Workbench, tmp_path: Path) -> None:
    service = bench.catalogues()
    service.put_family(NAME, family("=One, 'plane'"))
    put(bench, bare("FW 1", family="=One, 'plane'"), swivel("FW 2"), priced_only("FW 3"))
    content = service.export(DRAFT)
    path = tmp_path / "exchange.zip"
    path.write_bytes(content)
    service.create("Second")
    service.import_exchange(path, "Second")
    second = EditionRef("Second", is_draft=True)
    assert service.export(second) == content
    assert service.families(second) == service.families(DRAFT)
    editions = [service.publish(name, notes="n", publisher="p", on=DAY) for name in (NAME, "Second")]
    assert editions[0].fingerprint == editions[1].fingerprint


def test_a_file_whose_figures_come_from_a_family_that_it_has_not_is_refused(bench: Workbench, tmp_path: Path) -> None:
    from spoutline.catalogue.exchange import exchange_bytes

    path = tmp_path / "exchange.zip"
    path.write_bytes(exchange_bytes([with_family(bare("FW 1"), {"One plane": family()})]))
    with pytest.raises(InputFault, match=r"families\.csv"):
        bench.catalogues().import_exchange(path, NAME)


COLUMNS = ("mass_kg", "temp_max_c", "max_pressure_kpa", "kv_m3_h")
figures_drawn = st.dictionaries(st.sampled_from(COLUMNS), st.sampled_from(["60", "61", "62"]), max_size=4)


@settings(max_examples=60, deadline=None, suppress_health_check=[HealthCheck.function_scoped_fixture])
@given(own=figures_drawn, first=figures_drawn, second=figures_drawn)
def test_every_figure_is_the_parts_own_or_else_the_familys(
    own: dict[str, str], first: dict[str, str], second: dict[str, str]
) -> None:
    cells = tuple(FigureCell(column=column, value=float(own[column])) for column in COLUMNS if column in own)
    entry = bare("FW 1", kind=PartKind.SWIVEL, figures=cells)
    for texts in (first, second):  # the second takes the place of the first
        common = edited_family(None, "One plane", PartKind.SWIVEL, texts)
        entry = with_family(entry, {"One plane": common})
        wanted = {**texts, **own}
        assert {cell.column: cell.value for cell in entry.figures} == {key: float(text) for key, text in wanted.items()}
        assert {cell.column for cell in entry.figures if cell.origin is Origin.FAMILY} == set(texts) - set(own)
