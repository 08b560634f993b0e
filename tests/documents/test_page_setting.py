"""How tables, cautions and running lines are set on pages."""

from __future__ import annotations

from io import BytesIO

import pdfplumber
import pytest

from documents import plan_factory as factory
from documents.readers import cautions, story
from paper_text import pages_of, text_of
from spoutline.documents.bill import bill_pdf
from spoutline.documents.content.blocks import (
    Block,
    CautionNote,
    Column,
    Derivation,
    Document,
    Emphasis,
    Heading,
    NumberedLine,
    PageBreak,
    PaperSize,
    Paragraph,
    Role,
    Row,
    Signal,
    Table,
)
from spoutline.documents.pdf.render import pdf_bytes
from spoutline.explain.plan.texts import WorkedText

COLUMNS = (Column("Name", 1.0), Column("Figure", 1.0))


def pdf_of(*blocks: Block) -> bytes:
    document = Document(
        title="Trial",
        subject="Trial",
        author="Trial",
        language="en",
        paper=PaperSize.LETTER,
        running_head="head",
        running_foot="foot",
        page_phrase="page {page} of ",
        blocks=(Heading("Trial", 1), *blocks),
    )
    return pdf_bytes(document)


def set_pages(*blocks: Block) -> tuple[str, ...]:
    return pages_of(pdf_of(*blocks))


def rows(count: int) -> tuple[Row, ...]:
    return tuple(Row((f"row-{number}-", "1")) for number in range(count))


def lines_above(count: int) -> tuple[Block, ...]:
    return tuple(Paragraph(f"line {number}") for number in range(count))


@pytest.mark.parametrize("above", range(20, 46, 3))
def test_a_whole_table_that_fits_on_a_page_is_not_broken(above: int) -> None:
    pages = set_pages(*lines_above(above), Heading("Checks", 2), Table(COLUMNS, rows(20), dense=True, whole=True))
    holding = [text for text in pages if "row-" in text]
    assert len(holding) == 1
    assert "Checks" in holding[0]


def test_a_whole_table_longer_than_a_page_runs_on() -> None:
    pages = set_pages(Heading("Checks", 2), Table(COLUMNS, rows(120), dense=True, whole=True))
    assert sum("row-" in text for text in pages) > 1
    assert "Checks" in pages[0]


@pytest.mark.parametrize("count", range(34, 62, 2))
def test_a_total_never_stands_alone_on_a_page(count: int) -> None:
    total = Row(("Total", "60"), Emphasis.TOTAL)
    pages = set_pages(Heading("Parts", 2), Table(COLUMNS, (*rows(count), total), dense=True))
    assert pages[-1].count("row-") >= 2


@pytest.mark.parametrize("above", range(20, 46, 2))
def test_a_heading_is_followed_by_rows_on_its_own_page(above: int) -> None:
    pages = set_pages(*lines_above(above), Heading("Parts", 2), Table(COLUMNS, rows(40)))
    (with_heading,) = (text for text in pages if "Parts" in text)
    assert with_heading.count("row-") >= 2


@pytest.mark.parametrize("above", range(30, 44))
def test_a_heading_stays_with_the_formulas_below_it(above: int) -> None:
    text = WorkedText(formula="F = m g", inputs="", result="", source="", note="")
    steps = tuple(NumberedLine(f"F{number}", text, "S1") for number in range(1, 6))
    pages = set_pages(*lines_above(above), Heading("Load", 2), Derivation(steps), Table(COLUMNS, rows(6)))
    (page,) = [page for page in pages if "Load" in page]
    assert "F1" in page


@pytest.mark.parametrize("count", range(8, 20, 2))
def test_no_caution_stands_alone_on_the_last_page(count: int) -> None:
    notes = tuple(
        CautionNote(Signal.WARNING, "WARNING", f"hazard-{number}-", "why", "what to do", "source")
        for number in range(count)
    )
    pages = set_pages(Heading("Cautions", 1), *notes)
    assert len(pages) == 1 or pages[-1].count("hazard-") >= 3


@pytest.mark.parametrize("count", [40, 700])
def test_the_page_number_ends_at_the_margin(count: int) -> None:
    pdf = pdf_of(*lines_above(count))
    with pdfplumber.open(BytesIO(pdf)) as opened:
        assert len(opened.pages) in range(1, 10) if count == 40 else len(opened.pages) > 9
        for page in opened.pages:
            foot = [char for char in page.chars if char["bottom"] > page.height - 40]
            margin_pt = 18 / 25.4 * 72  # 18 mm; 72 points to the inch
            assert max(char["x1"] for char in foot) == pytest.approx(page.width - margin_pt, abs=0.5)


def test_a_copy_without_calculations_still_shows_the_flow_curve() -> None:
    plan = factory.site_plan()
    assert "Flow against pressure" in text_of(bill_pdf(plan, story(), cautions(), calculations=False))


@pytest.mark.parametrize("above", range(20, 46))
def test_a_note_stays_with_the_whole_table_that_it_belongs_to(above: int) -> None:
    table = Table(COLUMNS, rows(6), whole=True)
    pages = set_pages(*lines_above(above), Heading("Ways", 2), table, Paragraph("the note below", Role.NOTE))
    (page,) = [page for page in pages if "the note below" in page]
    assert "row-0-" in page
    assert "Ways" in page


@pytest.mark.parametrize("above", [1, 8, 15, 22, 29, 36, 43])
def test_a_chapter_goes_on_below_a_few_lines_where_its_opening_has_room(above: int) -> None:
    opening = (Heading("Next chapter", 1), Table(COLUMNS, rows(20)))
    pages = set_pages(*lines_above(above), PageBreak(opening=len(opening)), *opening)
    (page,) = [page for page in pages if "Next chapter" in page]
    assert "row-19-" in page  # the opening is in one piece
    alone = set_pages(*lines_above(above), PageBreak(), *opening)
    before = alone[-2]
    assert f"line {above - 1}" in before
    assert "Next chapter" not in before
    # a page of Letter has about 690 pt, a line here 16 pt, the opening about 360 pt
    assert (f"line {above - 1}" in page) is (before.count("line ") <= 18)


def test_no_page_of_the_positions_holds_a_few_lines_alone() -> None:
    plans = tuple(factory.fitting_plan(factory.position(f"{number}A", notes="n" * number)) for number in range(1, 5))
    pages = pages_of(bill_pdf(factory.site_plan(*plans), story(), cautions()))
    ends = [page for page in pages if "Alternatives" in page]
    assert ends
    assert [page for page in ends if len(page.splitlines()) < 9] == []
