"""The papers of a quotation: totals recomputed from the workbook and from the text of the PDF, names kept harmless."""

from __future__ import annotations

import csv
import io
import re
from decimal import ROUND_HALF_UP, Decimal
from itertools import pairwise

import pypdfium2
import pytest

from documents.readers import reader_of, story
from documents.spreadsheet import Workbook
from paper_text import page_text, pages_of, text_of
from planning.quoting_terms import terms_of
from spoutline.bootstrap import Workbench
from spoutline.bootstrap.demos import demo_survey
from spoutline.documents.content.blocks import Table
from spoutline.documents.pdf import styles
from spoutline.documents.quotation.option_sections import position_blocks
from spoutline.documents.quotation.papers import (
    pick_list_pdf,
    quotation_order_csv,
    quotation_pdf,
    quotation_workbook,
)
from spoutline.explain.phrases.quotation_words import QuotationWord
from spoutline.model.language import Language
from spoutline.model.quotation import Quotation
from spoutline.model.quotation_terms import Terms
from spoutline.units.accepted import UnitSystem
from spoutline.units.display import Display

CENT = Decimal("0.01")
OPTIONS = [
    {"title": "Single-use", "breakaway": "single_use"},
    {"title": "Reconnectable", "breakaway": "reconnectable"},
]
USUAL = {
    "options": OPTIONS,
    "selling": {"percent": "7.5"},
    "freight": {"method": "percent_of_goods", "amount": "2.5"},
    "labour": {
        "hourly_rate": "83.35",
        "tasks": [{"title": "Exchange", "hours": "0.35"}, {"title": "Lock out", "per": "dispenser", "hours": "0.5"}],
    },
    "taxes": [{"name": "State", "percent": "6.25", "on": ["goods"]}, {"name": "City", "percent": "1.125"}],
    "spares": [{"kind": "nozzle", "percent": 10}],
}


def quoted(workbench: Workbench, terms: Terms, demo: str = "marina", **site: str) -> Quotation:
    survey = demo_survey(demo)
    survey = survey.model_copy(update={"site": survey.site.model_copy(update=site)})
    return workbench.quoting().quote(survey, terms, Display(UnitSystem.SI)).quotation


@pytest.fixture(scope="module")
def quotation(workbench: Workbench) -> Quotation:
    return quoted(workbench, terms_of(**USUAL))


def column(workbook: Workbook, sheet: str, name: str) -> list[tuple[str, object]]:
    """Return the cells of column J whose row is named so in column A."""
    rows = workbook.values[sheet].iter_rows()
    return [(row[9].coordinate, row[9].value) for row in rows if str(row[0].value or "").startswith(name)]


def cents(value: object) -> Decimal:
    return Decimal(str(value)).quantize(CENT)


@pytest.mark.parametrize(
    "changes",
    [
        {},
        {"rounding": {"mode": "half_even", "unit_step": "0.05", "total_step": "0.10"}},
        {"rounding": {"mode": "up", "tax": "line"}, "freight": {"method": "fixed", "amount": "99.90"}},
        {"rounding": {"mode": "down", "tax": "line"}, "freight": {"method": "per_kilogram", "amount": "1.35"}},
        {"taxes": [], "labour": {}},
    ],
)
def test_the_formulas_of_the_workbook_recompute_every_amount(workbench: Workbench, changes: dict[str, object]) -> None:
    made = quoted(workbench, terms_of(**{**USUAL, **changes}))
    workbook = Workbook(quotation_workbook(made, 1, story()))
    for number, option in enumerate(made.options, start=1):
        sheet = f"Option {number}"
        formulas = workbook.formulas[sheet]
        cells = [
            cell for row in formulas.iter_rows() for cell in row if isinstance(cell.value, str) and cell.value[0] == "="
        ]
        assert len(cells) >= 2 * len(option.lines) + 4
        for cell in cells:
            beside = Decimal(str(workbook.values[sheet][cell.coordinate].value))
            assert workbook.computed(sheet, cell.coordinate) == pytest.approx(beside, abs=Decimal("1e-9")), cell.value
        (total,) = column(workbook, sheet, "Total")
        assert workbook.computed(sheet, total[0]) == option.total


def test_a_changed_quantity_changes_the_total_by_its_price(quotation: Quotation) -> None:
    workbook = Workbook(quotation_workbook(quotation, 1, story()))
    sheet = workbook.formulas["Option 1"]
    (goods, before), *_ = column(workbook, "Option 1", "Materials")
    line = quotation.options[0].lines[0]
    row = next(row for row in sheet.iter_rows() if row[1].value == line.part_number)
    row[4].value += 3
    assert line.unit_price is not None
    assert workbook.computed("Option 1", goods) == cents(before) + 3 * line.unit_price


def test_the_lines_of_the_workbook_add_up_without_its_formulas(quotation: Quotation) -> None:
    """Goods, labour, freight and taxes by hand arithmetic from quantities, prices, hours and rates alone."""
    sheet = Workbook(quotation_workbook(quotation, 1, story())).values["Option 1"]
    rows = [[cell.value for cell in row] for row in sheet.iter_rows()]
    heads = [number for number, row in enumerate(rows) if row[0] == "Line"]
    lines = [row for row in rows[heads[0] + 1 : heads[1]] if isinstance(row[0], int | float)]
    tasks = [row for row in rows[heads[1] + 1 :] if isinstance(row[0], int | float)]
    goods = sum((Decimal(row[4] + row[5] + row[6]) * cents(row[8]) for row in lines), start=Decimal(0))
    labour = sum(
        (
            (Decimal(str(row[2])) * Decimal(str(row[3])) * Decimal("83.35")).quantize(CENT, ROUND_HALF_UP)
            for row in tasks
        ),
        start=Decimal(0),
    )
    freight = (goods * Decimal("0.025")).quantize(CENT, ROUND_HALF_UP)
    state = (goods * Decimal("0.0625")).quantize(CENT, ROUND_HALF_UP)
    city = ((goods + labour + freight) * Decimal("0.01125")).quantize(CENT, ROUND_HALF_UP)
    assert quotation.options[0].total == goods + labour + freight + state + city


def paper_sections(text: str, titles: list[str]) -> list[str]:
    """Return the text about each option: from its heading to the next one, the last to what goes where."""
    begins = [text.index(f"Option {number}: {title}") for number, title in enumerate(titles, start=1)]
    return [text[begin:end] for begin, end in pairwise([*begins, text.index("What goes where")])]


def amount_of(printed: str) -> Decimal:
    return Decimal(printed.replace(",", ""))


def printed_total(section: str, lines_expected: int) -> Decimal:
    """Add up one option's section of the paper from its lines on, holding each printed sum against its parts."""
    money = r"(-?[\d,]+\.\d\d)"
    lines = re.findall(rf"(\d+) (\d+) (\d+) (\d+) {money} {money}", section)
    assert len(lines) == lines_expected
    goods = Decimal(0)
    for fitted, spares, rest, ordered, each, amount in lines:
        assert int(fitted) + int(spares) + int(rest) == int(ordered)
        assert int(ordered) * amount_of(each) == amount_of(amount)
        goods += amount_of(amount)
    tasks = re.findall(rf"([\d.]+) ([\d.]+) {money} {money}(?= |$)", section.partition("Hours")[2])
    labour = sum((amount_of(amount) for _, _, _, amount in tasks), start=Decimal(0))
    for _, hours, rate, amount in tasks:
        assert (Decimal(hours) * amount_of(rate)).quantize(CENT, ROUND_HALF_UP) == amount_of(amount)
    amounts = {
        name: amount_of(value)
        for name, value in re.findall(rf"(Materials|Labor|Freight|Subtotal|Rounding|Total, USD) {money}", section)
    }
    assert (amounts["Materials"], amounts["Labor"]) == (goods, labour)
    assert goods + labour + amounts["Freight"] == amounts["Subtotal"]
    taxes = Decimal(0)
    for percent, base, tax in re.findall(rf"([\d.]+) % on {money} {money}", section):
        assert (amount_of(base) * Decimal(percent) / 100).quantize(CENT, ROUND_HALF_UP) == amount_of(tax)
        taxes += amount_of(tax)
    assert amounts["Subtotal"] + taxes + amounts.get("Rounding", Decimal(0)) == amounts["Total, USD"]
    return amounts["Total, USD"]


def test_the_text_of_the_pdf_adds_up_option_by_option(quotation: Quotation) -> None:
    """Lines and totals read back from the paper: quantity, unit price and amount stand at the end of each line."""
    text = text_of(quotation_pdf(quotation, 1, story()))
    sections = paper_sections(text, [option.title for option in quotation.options])
    for section, option in zip(sections, quotation.options, strict=True):
        assert printed_total(section, len(option.lines)) == option.total


def test_the_paper_and_the_workbook_of_a_whole_station_say_the_same(workbench: Workbench) -> None:
    """48 hoses, three options: each total added up from the paper's text, and again by the workbook's formulas."""
    service = workbench.quoting()
    terms = service.terms().read_terms(service.terms().demo_terms())
    made = quoted(workbench, terms, "refit_48")
    text = text_of(quotation_pdf(made, 1, story()))
    workbook = Workbook(quotation_workbook(made, 1, story()))
    titles = [option.title for option in made.options]
    assert len(titles) == 3
    # the survey keeps a swivel of which the catalogue says that LS-S101 took its place
    assert text.count("Replaced by its maker: LS-S113 → LS-S101 (4A diesel, 4B diesel)") == 3
    for number, (section, option) in enumerate(zip(paper_sections(text, titles), made.options, strict=True), start=1):
        (total,) = column(workbook, f"Option {number}", "Total")
        recomputed = workbook.computed(f"Option {number}", total[0])
        assert recomputed == printed_total(section, len(option.lines)) == option.total
        fitted = sum(line.fitted for line in option.lines if line.part_number[3] == "N")  # numbers of nozzles
        assert fitted == 48


# points; a sheet of US letter less the margins, and where the running foot stands
HEIGHT_OF_TEXT, FOOT = 792 - styles.MARGIN_TOP - styles.MARGIN_BOTTOM, styles.MARGIN_BOTTOM
ROOM_ABOVE_HEADING = 34  # left out at the top of a page


def room_below(paper: bytes, place: int) -> float:
    """Return how many points are free on a page below its text, -1 the last page, read with PDFium."""
    document = pypdfium2.PdfDocument(paper)
    try:
        text = document[len(document) + place].get_textpage()
        bottoms = [text.get_charbox(one)[1] for one in range(text.count_chars())]
        return float(min(one for one in bottoms if one > FOOT) - FOOT)
    finally:
        document.close()


@pytest.mark.parametrize("language", [Language.ENGLISH, Language.GERMAN])
def test_what_is_signed_never_stands_alone_on_the_last_page(workbench: Workbench, language: Language) -> None:
    """Three options; conditions from none to a page long, so that every place comes to the foot of a page.

    Whoever signs sees on the same page what the quotation was made from: common practice, no source.
    """
    options = [*OPTIONS, {"title": "Third", "breakaway": "single_use"}]
    made = quoted(workbench, terms_of(**(USUAL | {"options": options})))
    told = workbench.story(Display(UnitSystem.SI), language)
    words = {one: told.word(one) for one in QuotationWord}
    ends, carried = set(), 0
    for lines in range(0, 60, 5):
        heading = made.terms.heading.model_copy(update={"conditions": "\n".join(["Invented condition."] * lines)})
        changed = made.model_copy(update={"terms": made.terms.model_copy(update={"heading": heading})})
        paper = quotation_pdf(changed, 1, told)
        pages = pages_of(paper)
        last = pages[-1]
        places = [last.find(words[one]) for one in (QuotationWord.MADE_FROM, QuotationWord.ACCEPTANCE_TEXT)]
        places += [last.rfind(words[one]) for one in (QuotationWord.OPTION_TAKEN, QuotationWord.SIGNATURE)]
        assert -1 not in places, (lines, last)
        assert places == sorted(places)
        ends.add(len(pages))
        if not last[: places[0]].count(words[QuotationWord.CONDITIONS]) and lines:
            # carried over as a whole, and only because the page before holds no more of it
            needed = HEIGHT_OF_TEXT - room_below(paper, -1)
            assert room_below(paper, -2) < needed + ROOM_ABOVE_HEADING, (lines, needed)
            carried += 1
    assert len(ends) > 1  # the last page came to its end on the way
    assert carried


def test_positions_with_the_same_set_share_a_row_and_none_is_lost(workbench: Workbench) -> None:
    made = quoted(workbench, terms_of(), "refit_48")
    blocks = list(position_blocks(1, made.options[0], made, story()))
    (table,) = (block for block in blocks if isinstance(block, Table))
    labels = [label for row in table.rows for label in row.cells[0].split(", ")]
    assert sorted(labels) == sorted(one.label for one in demo_survey("refit_48").positions)
    assert len(table.rows) < 15
    for row in table.rows:
        for label in row.cells[0].split(", "):
            position = next(one for one in made.options[0].positions if one.label == label)
            assert row.cells[-1].startswith(", ".join(position.part_numbers))
            assert position.dispenser in row.cells[1].split(", ")


def test_islands_stand_where_dispensers_are_named_if_a_position_names_one(workbench: Workbench) -> None:
    """In the refit's survey the dispensers 3 and 4 stand on island 2; with the names taken away no column is left."""
    made = quoted(workbench, terms_of(), "refit_48")
    (table,) = (block for block in position_blocks(1, made.options[0], made, story()) if isinstance(block, Table))
    assert [one.title for one in table.columns] == ["Position", "Dispenser", "Island", "Liquid", "Set, dispenser first"]
    (row,) = (row for row in table.rows if "3A diesel" in row.cells[0].split(", "))
    assert "2" in row.cells[2].split(", ")
    sheet = Workbook(quotation_workbook(made, 1, story())).values["Positions"]
    rows = [[str(cell.value) for cell in cells] for cells in sheet.iter_rows()]
    assert rows[0][1:4] == ["Position", "Dispenser", "Island"]
    assert {tuple(cells[2:4]) for cells in rows if cells[1] in ("3A diesel", "4B regular")} == {("3", "2"), ("4", "2")}
    survey = made.pins.survey
    bare = survey.model_copy(
        update={"positions": tuple(one.model_copy(update={"island": ""}) for one in survey.positions)}
    )
    without = made.model_copy(update={"pins": made.pins.model_copy(update={"survey": bare})})
    (table,) = (block for block in position_blocks(1, made.options[0], without, story()) if isinstance(block, Table))
    assert "Island" not in [one.title for one in table.columns]
    titles = [cell.value for cell in Workbook(quotation_workbook(without, 1, story())).values["Positions"][1]]
    assert titles == ["Option", "Position", "Dispenser", "Liquid", "Set, dispenser first"]


def test_options_stand_side_by_side_with_their_differences(quotation: Quotation) -> None:
    text = text_of(quotation_pdf(quotation, 1, story()))
    first, second = quotation.options
    assert f"◆ {second.total:,.2f} +{second.total - first.total:,.2f}" in text
    assert "Where the parts differ" in text


def test_every_page_is_numbered_and_the_quotation_can_be_signed(quotation: Quotation) -> None:
    pdf = quotation_pdf(quotation, 3, story())
    assert f"page {len(pages_of(pdf))} of" in page_text(pdf, -1)
    text = text_of(pdf)
    for words in (
        "HS-1, Revision 3",
        "Hedgerow Supply",
        "Hollow Ford Fuels",
        "Signature",
        "Valid through Dec 25, 2026",
    ):
        assert words in text
    metadata = reader_of(pdf).metadata
    assert metadata is not None
    assert metadata.author == "Hedgerow Supply"


def test_the_paper_advises_and_claims_nothing(quotation: Quotation) -> None:
    text = text_of(quotation_pdf(quotation, 1, story())).lower()
    assert "the authority having jurisdiction" in text
    for claim in ("approved", "compliant", "certified"):
        assert claim not in text


def test_no_cost_of_the_seller_stands_on_paper_or_in_the_workbook(workbench: Workbench) -> None:
    made = quoted(workbench, terms_of(**{**USUAL, "buying": [{"percent": "33.37"}], "stock_price": "77.77"}))
    text = text_of(quotation_pdf(made, 1, story()))
    assert "33.37" not in text
    assert "77.77" not in text
    costs = [line.cost for line in made.options[0].lines if line.cost is not None]
    bought = {f"{cost:f}" for cost in costs if cost != cost.quantize(CENT)}  # no price looks like these
    assert len(bought) > 3
    sheet = Workbook(quotation_workbook(made, 1, story())).values["Option 1"]
    shown = {str(cell.value) for row in sheet.iter_rows() for cell in row}
    assert bought.isdisjoint(shown)


def test_equal_quotations_give_equal_bytes(workbench: Workbench, quotation: Quotation) -> None:
    again = quoted(workbench, terms_of(**USUAL))
    assert again == quotation
    for make in (quotation_pdf, quotation_workbook):
        assert make(again, 1, story()) == make(quotation, 1, story())
    kept = Quotation.model_validate_json(quotation.model_dump_json())
    assert quotation_pdf(kept, 1, story()) == quotation_pdf(quotation, 1, story())


HOSTILE = '=HYPERLINK("http://x","y")'


def test_names_never_become_formulas_or_markup(workbench: Workbench) -> None:
    """Formula starts after OWASP, CSV injection: = + - @ and tab."""
    seller = {"name": "<b>Bold & Sons</b>"}
    customer = {"name": "@SUM(1+1)"}
    options = [{"title": HOSTILE}, {"title": "+1", "breakaway": "reconnectable"}]
    terms = terms_of(seller=seller, customer=customer, options=options, taxes=[{"name": "=1+1", "percent": 5}])
    made = quoted(workbench, terms, name="-2+3<i>")
    text = text_of(quotation_pdf(made, 1, story()))
    for shown in ("<b>Bold & Sons</b>", "@SUM(1+1)", "-2+3<i>", "=1+1"):
        assert shown in text
    rows = list(csv.reader(io.StringIO(quotation_order_csv(made, 1).decode("utf-8-sig"))))
    assert {row[2] for row in rows[1:]} == {f"'{HOSTILE}", "'+1"}
    book = Workbook(quotation_workbook(made, 1, story())).formulas
    own = re.compile(r"^=[A-Z0-9+\-*/().,:=]+$")
    for sheet in book.worksheets:
        for row in sheet.iter_rows():
            for cell in row:
                if cell.data_type == "f":
                    assert own.match(cell.value), cell.value
                    assert "HYPERLINK" not in cell.value


def test_a_missing_price_is_shown_and_marks_the_draft(workbench: Workbench) -> None:
    survey = demo_survey("marina")
    later = terms_of(heading={"number": "HS-2", "dated": "2028-01-01"})
    made = workbench.quoting().quote(survey, later, Display(UnitSystem.SI)).quotation
    assert {line.part_number for _, line in made.open_lines} == {line.part_number for line in made.options[0].lines}
    text = text_of(quotation_pdf(made, 1, story()))
    assert "Draft, not to be sent" in text
    assert "the price list has run out" in text
    workbook = Workbook(quotation_workbook(made, 1, story()))
    assert any(cell.value == "no price" for row in workbook.values["Option 1"].iter_rows() for cell in row)


@pytest.mark.parametrize(
    ("language", "hose"), [("es", "Manguera principal"), ("de", "Zapfschlauch"), ("fr", "Flexible principal")]
)
def test_the_parts_of_a_quotation_are_named_in_the_language_of_its_paper(
    quotation: Quotation, workbench: Workbench, language: str, hose: str
) -> None:
    story = workbench.story(Display(UnitSystem.SI), Language(language))
    for paper in (quotation_pdf(quotation, 1, story), pick_list_pdf(quotation, 0, 1, story)):
        text = " ".join(text_of(paper).split())
        # words of the trade that the catalog uses in its names; titles of options are the seller's own
        left = re.findall(r"\b(?:nozzle|hose|breakaway|swivel|latch|hardwall|softwall)\b", text, re.IGNORECASE)
        assert left == []
    assert hose in " ".join(text_of(quotation_pdf(quotation, 1, story)).split())
    english = text_of(quotation_pdf(quotation, 1, workbench.story(Display(UnitSystem.SI), Language.ENGLISH)))
    assert "hose 1 in" in " ".join(english.split())


def test_the_pick_list_names_each_maker_with_its_pieces(quotation: Quotation) -> None:
    text = text_of(pick_list_pdf(quotation, 1, 1, story()))
    for line in quotation.options[1].lines:
        assert line.maker in text
        assert line.part_number in text
    assert not re.search(r"\d\.\d\d", text)  # no prices


def test_the_order_lines_repeat_the_quotation(quotation: Quotation) -> None:
    rows = list(csv.DictReader(io.StringIO(quotation_order_csv(quotation, 2).decode("utf-8-sig"))))
    assert len(rows) == sum(len(option.lines) for option in quotation.options)
    for option in quotation.options:
        mine = [row for row in rows if row["option"] == option.title]
        assert sum(Decimal(row["quantity"]) * Decimal(row["unit_price"]) for row in mine) == option.goods_amount
    ordered = quotation.options[1].title
    alone = list(csv.DictReader(io.StringIO(quotation_order_csv(quotation, 2, ordered).decode("utf-8-sig"))))
    assert {row.pop("sets") for row in alone} == {"as ordered in quotation HS-1 revision 2, option 2"}
    offered = [row for row in rows if row["option"] == ordered]
    assert {row.pop("sets") for row in offered} == {"as offered in quotation HS-1 revision 2, option 2"}
    assert alone == offered
