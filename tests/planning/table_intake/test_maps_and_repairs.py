"""Maps that are remembered and recognised again, repairs that can be done again, and figures read out of texts."""

from __future__ import annotations

from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from planning.table_intake.supplier_tables import MAKER, PLAIN, seen
from spoutline.model.faults import InputFault
from spoutline.model.part import PartKind
from spoutline.model.plain_values import hidden_sign
from spoutline.planning.table_intake.column_map import (
    MapColumn,
    TableMap,
    corrected,
    map_from_toml,
    map_to_toml,
    remembering,
    suggested,
)
from spoutline.planning.table_intake.headings import find_headings
from spoutline.planning.table_intake.intake import Intake, Stopped
from spoutline.planning.table_intake.intake_fields import BY_KEY
from spoutline.planning.table_intake.raw_table import TextEncoding, open_table
from spoutline.planning.table_intake.repairs import ChangeWhere, Repairs, ReplaceWord, SetCell, SkipRow, SkipWhere
from spoutline.planning.table_intake.text_patterns import proposals, proposed_kind

shown = st.text(max_size=40).filter(lambda text: not hidden_sign(text))
keys = st.sampled_from(sorted(BY_KEY))
currencies = st.sampled_from(["", "USD", "EUR"])
columns = st.builds(
    MapColumn, title=shown, head=shown, field=keys, unit=st.sampled_from(["", "mm"]), currency=currencies
)
steps = st.one_of(
    st.builds(SetCell, row=st.integers(1, 9), field=keys, was=shown, to=shown),
    st.builds(ReplaceWord, field=keys, word=shown.filter(bool), by=shown),
    st.builds(ChangeWhere, where=keys, shows=shown, field=keys, to=shown),
    st.builds(SkipRow, row=st.integers(1, 9), number=shown),
    st.builds(SkipWhere, where=keys, shows=shown),
)
maps = st.builds(
    TableMap,
    supplier=shown,
    maker=shown,
    kind=st.sampled_from([None, *PartKind]),
    currency=currencies,
    sheet=shown,
    encoding=st.sampled_from(TextEncoding),
    decimal_comma=st.booleans(),
    column=st.lists(columns, max_size=4).map(tuple),
    repair=st.lists(steps, max_size=4).map(tuple),
)


@given(table_map=maps)
def test_a_map_written_as_toml_reads_back_the_same(table_map: TableMap) -> None:
    assert map_from_toml(map_to_toml(table_map), "map.toml") == table_map


@given(taken=st.lists(steps, max_size=6), texts=st.dictionaries(keys, shown, max_size=4), row=st.integers(1, 9))
def test_repairs_done_again_in_the_same_order_give_the_same(
    taken: list[SetCell | ReplaceWord | ChangeWhere | SkipRow | SkipWhere], texts: dict[str, str], row: int
) -> None:
    again = map_from_toml(map_to_toml(TableMap(repair=tuple(taken))), "m").repair
    assert Repairs(taken).done(row, texts) == Repairs(again).done(row, texts)


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("format = 'x'", "format"),
        ("[[column]]\ntitle = 'a'\nfield = 'bore'", "use one of: number"),
        ("[[repair]]\ndo = 'delete_all'", "repair"),
        ("currency = 'dollars'", "currency"),
        ("a = ", "valid TOML"),
    ],
)
def test_a_map_that_cannot_be_used_is_refused_by_its_field(text: str, told: str) -> None:
    with pytest.raises(InputFault, match=told):
        map_from_toml(text, "map.toml")


TABLE = "Art;Txt;Ø (mm);EK USD\nQ-1;Hose;19;10.50\n"


def _file(tmp_path: Path, text: str) -> Path:
    path = tmp_path / "p.csv"
    path.write_text(text, encoding="utf-8")
    return path


def test_a_corrected_map_is_remembered_and_its_titles_are_recognised_again(tmp_path: Path) -> None:
    path = _file(tmp_path, "Number;Txt;Ø (mm);EK USD\nQ-1;Hose;19;10.50\n")
    table = open_table(path)
    headings = find_headings(table, {"EK USD": "price"})
    said = {"Txt": "name", "C": "bore_mm", "EK USD": "price in USD"}
    mapping = corrected(suggested(headings), said, table.place)
    assert [one.slot for one in mapping] == ["number", "name", "bore_mm", "price_usd"]
    kept = remembering(PLAIN, headings, mapping)
    again = seen(_file(tmp_path, "Number;Txt;Ø (mm);EK USD\nQ-7;Whip;21;11\n"), kept)
    assert kept.recognises(find_headings(again.table, kept.titles))
    (line,) = again.lines
    assert (line.number, line.values, line.prices[0].minor) == ("Q-7", {"name": "Whip", "bore_mm": 21.0}, 1100)
    other = find_headings(open_table(_file(tmp_path, "Number;Price\nQ;1\n")))
    assert not kept.recognises(other)


@pytest.mark.parametrize(
    ("said", "told"),
    [
        ({"Z": "number"}, "name one column of"),
        ({"A": "numbr"}, "did you mean number"),
        ({"B": "bore_mm in furlongs"}, "unit"),
    ],
)
def test_a_correction_that_names_nothing_is_refused(tmp_path: Path, said: dict[str, str], told: str) -> None:
    headings = find_headings(open_table(_file(tmp_path, "Number,Bore (mm),Price\nQ,1,2\n")))
    with pytest.raises(InputFault, match=told):
        corrected(suggested(headings), said, "p.csv")


def test_a_table_without_a_column_of_numbers_or_a_maker_is_refused(tmp_path: Path) -> None:
    path = _file(tmp_path, "Description,Price USD\nHose,5\n")
    with pytest.raises(InputFault) as caught:
        seen(path, TableMap())
    assert [one.field for one in caught.value.problems] == ["mapping, number", "mapping, maker"]


def test_repairs_mend_a_table_and_hold_on_the_next_one(tmp_path: Path) -> None:
    path = _file(
        tmp_path, "Part no,Text,Materials,Price USD\nQ-1,Hose,aluminum; nbr,5\nQ-2,Old,brass,x\nQ-3,Hose,brass,y\n"
    )
    broken = seen(path)
    assert broken.report.faults == 3
    assert broken.report.words[("materials", "aluminum", "aluminium")] == 1
    steps = (
        ReplaceWord(field="materials", word="Aluminum", by="aluminium"),
        SkipRow(row=3, number="Q-2"),
        SetCell(row=4, field="price_usd", was="y", to="7"),
        ChangeWhere(where="name", shows="hose", field="kind", to="curb hose"),
    )
    mended = seen(path, PLAIN.model_copy(update={"repair": steps}))
    assert mended.report.is_sound
    assert mended.report.skipped == 1
    assert [(line.number, line.kind, line.prices[0].minor) for line in mended.lines] == [
        ("Q-1", PartKind.CURB_HOSE, 500),
        ("Q-3", PartKind.CURB_HOSE, 700),
    ]
    assert mended.lines[0].values["materials"] == ("aluminium", "nbr")
    nextone = _file(
        tmp_path, "Part no,Text,Materials,Price USD\nQ-1,Hose,aluminum,5\nQ-5,Hose,brass,6\nQ-6,Old,brass,y2\n"
    )
    again = seen(nextone, PLAIN.model_copy(update={"repair": steps}))
    assert [line.number for line in again.lines] == ["Q-1", "Q-5", "Q-6"]  # row 3 is another part now: it stays
    assert again.report.faults == 1


def test_progress_is_told_and_may_stop_the_reading(tmp_path: Path) -> None:
    path = _file(tmp_path, "Part no,Price USD\n" + "".join(f"Q-{number},5\n" for number in range(1, 1201)))
    table = open_table(path)
    headings = find_headings(table)
    told: list[int] = []
    assert (
        len(list(Intake(table, headings, suggested(headings), PLAIN, lambda rows: not told.append(rows)).lines()))
        == 1200
    )
    assert told == [500, 1000, 1200]
    with pytest.raises(Stopped):
        list(Intake(table, headings, suggested(headings), PLAIN, lambda rows: rows < 1000).lines())


@pytest.mark.parametrize(
    ("text", "kind", "figures"),
    [
        # 3/4 in = 19.05 mm, 9 ft = 2.7432 m: international yard and pound agreement, 1959
        ("3/4\" x 9' hardwall", PartKind.CURB_HOSE, {"bore_mm": 19.05, "length_m": 2.7432, "construction": "hardwall"}),
        (
            "1 in. ID softwall hose, 12 ft",
            PartKind.CURB_HOSE,
            {"bore_mm": 25.4, "length_m": 3.6576, "construction": "softwall"},
        ),
        ("21mm x 4 m hose low perm", PartKind.CURB_HOSE, {"bore_mm": 21.0, "length_m": 4.0, "low_permeation": True}),
        ("Breakaway 3/4 reconnectable E85", PartKind.BREAKAWAY, {"reconnectable": True, "listings": ("E85",)}),
        ("Swivel, 2 plane", PartKind.SWIVEL, {}),
        ("", PartKind.CURB_HOSE, {}),
    ],
)
def test_a_text_proposes_figures_with_their_words(text: str, kind: PartKind, figures: dict[str, object]) -> None:
    found = proposals(text, kind)
    assert {one.column: one.value for one in found} == figures
    assert all(one.words and one.words in text and one.pattern for one in found)
    assert proposals(text, kind, confirmed=()) == ()
    assert {one.pattern for one in proposals(text, kind, confirmed=("hardwall",))} <= {"hardwall"}


@pytest.mark.parametrize(
    ("text", "kind"),
    [
        ("Whip hose 3/4 x 1 ft", PartKind.WHIP_HOSE),
        ("SWIVEL BREAKAWAY 3/4", PartKind.SWIVEL_BREAKAWAY),
        ("Break-away, single use", PartKind.BREAKAWAY),
        ("Auto nozzle", PartKind.NOZZLE),
        ("3/4 hardwall", PartKind.CURB_HOSE),
        ("Tee", None),
    ],
)
def test_a_text_names_a_kind(text: str, kind: PartKind | None) -> None:
    assert proposed_kind(text) is kind


def test_every_declared_figure_with_a_column_can_be_taken_in() -> None:
    from spoutline.model.part_figures import FIGURES

    assert {figure.declared.column for figure in FIGURES if figure.declared.column} <= set(BY_KEY)


def test_a_map_without_its_own_maker_names_nobody(tmp_path: Path) -> None:
    found = seen(_file(tmp_path, f"Part no,Maker,Price USD\nQ-1,{MAKER},5\nQ-2,,6\n"), TableMap())
    assert [line.maker for line in found.lines] == [MAKER, ""]
    assert [report.wanted for report in found.report.reports] == ["name the maker, in the row or for all rows"]
