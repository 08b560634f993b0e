"""The PDF as a reader, a printer and a second machine see it."""

from __future__ import annotations

import itertools
import re
from dataclasses import replace
from datetime import date
from functools import lru_cache
from io import BytesIO
from pathlib import Path

import pdfplumber
import pytest
from pypdf.generic import IndirectObject
from reportlab.lib.styles import ParagraphStyle
from reportlab.platypus import Paragraph

from documents import plan_factory as factory
from documents.readers import cautions, outputs_elsewhere, reader_of, story
from paper_text import page_text, pages_of, text_of
from spoutline.documents.bill import bill_pdf
from spoutline.documents.content.bill_content import bill_content
from spoutline.documents.content.blocks import NumberedLine, Worked
from spoutline.documents.pdf.fonts import REGULAR, markup, printable, register_fonts
from spoutline.documents.pdf.formulas import formula_markup
from spoutline.documents.pdf.render import pdf_bytes
from spoutline.explain.plan.texts import WorkedText
from spoutline.model.plan import SitePlan
from spoutline.units.accepted import UnitSystem

TESTS = Path(__file__).parents[1]


def made(plan: SitePlan, system: UnitSystem = UnitSystem.SI) -> bytes:
    return bill_pdf(plan, story(system), cautions(), dated=date(2026, 11, 25))


@lru_cache(maxsize=1)
def usual() -> bytes:
    return made(factory.site_plan())


def test_the_text_holds_parts_prices_checks_and_reasons() -> None:
    text = text_of(usual())
    for words in (
        "QW-N101",
        "275.45",
        "20.5 mm to 21.34 mm",
        "? cannot be shown",
        "Bramblefork Fuels",
        "covered again",
    ):
        assert words in text


def test_the_last_chapter_is_the_caution_sheet_and_nothing_follows() -> None:
    reader = reader_of(usual())
    chapters = [entry for entry in reader.outline if not isinstance(entry, list)]
    assert chapters[-1].title == "Caution sheet for the installer"
    start = reader.get_destination_page_number(chapters[-1])
    assert start is not None
    last = " ".join(pages_of(usual())[start:])
    assert "NOTICE" in last
    assert "Parts from dispenser to vehicle" not in last
    assert "what the positions ask for" not in last


def test_the_outline_lists_chapters_with_their_sections() -> None:
    outline = reader_of(usual()).outline
    titles = [entry.title for entry in outline if not isinstance(entry, list)]
    assert titles[:2] == ["Bill of materials", "Position 1A"]
    sections = [entry.title for entry in outline[3]]
    assert sections == [
        "Parts from dispenser to vehicle",
        "Drawing",
        "Checks",
        "Joints",
        "Findings",
        "Alternatives",
    ]


def test_title_author_and_language_are_set() -> None:
    reader = reader_of(usual())
    assert reader.metadata is not None
    assert reader.metadata.title == "Bill of materials: Bramblefork Fuels"
    assert reader.metadata.author == "Spoutline 0.1.0"
    assert reader.trailer["/Root"]["/Lang"] == "en"


def test_every_font_is_embedded() -> None:
    reader = reader_of(usual())
    fonts = {}
    for page in reader.pages:
        resources = page["/Resources"]
        for font in resources.get("/Font", {}).values():
            fonts[font.get_object()["/BaseFont"]] = font.get_object()
    assert fonts
    for name, font in fonts.items():
        assert "DejaVuSans" in name
        assert isinstance(font["/FontDescriptor"].raw_get("/FontFile2"), IndirectObject)


def test_pages_count_themselves() -> None:
    reader = reader_of(usual())
    total = len(reader.pages)
    assert f"page 1 of {total}" in page_text(usual(), 0)
    assert f"page {total} of {total}" in page_text(usual(), -1)


@pytest.mark.parametrize(
    ("jurisdiction_id", "size_mm"),
    [("us_general", (215.9, 279.4)), ("europe", (210.0, 297.0))],  # ANSI/ASME Y14.1 size A; ISO 216 A4
)
def test_the_sheet_is_letter_in_the_united_states_and_a4_elsewhere(
    jurisdiction_id: str, size_mm: tuple[float, float]
) -> None:
    page = reader_of(made(factory.site_plan(factory.fitting_plan(), jurisdiction_id=jurisdiction_id))).pages[0]
    found = (float(page.mediabox.width) * 25.4 / 72, float(page.mediabox.height) * 25.4 / 72)
    assert found == pytest.approx(size_mm, abs=0.1)


def test_everything_lies_inside_the_page() -> None:
    far = factory.position("F" * 60, filler=factory.Filler(label="x" * 200, distance_m=28.0, height_m=4.5))
    plan = factory.site_plan(factory.fitting_plan(), factory.fitting_plan(far))
    with pdfplumber.open(BytesIO(made(plan))) as document:
        for page in document.pages:
            for item in (*page.chars, *page.lines, *page.curves, *page.rects):
                assert item["x0"] >= 0
                assert item["x1"] <= page.width
                assert item["top"] >= 0
                assert item["bottom"] <= page.height


def test_the_drawing_is_true_to_the_scale_it_states() -> None:
    plan = factory.site_plan(factory.fitting_plan())
    with pdfplumber.open(BytesIO(made(plan))) as document:
        page = next(page for page in document.pages if "Scale 1:" in page.extract_text())
        scale = int(re.findall(r"Scale 1:(\d+)", page.extract_text())[0])
        # the filler is 2 m from the outlet: 2000 mm / n on paper, 72/25.4 points a millimetre
        wanted = 2000 / scale * 72 / 25.4
        lengths = [line["x1"] - line["x0"] for line in page.lines if abs(line["y1"] - line["y0"]) < 1e-6]
    assert any(length == pytest.approx(wanted, abs=0.02) for length in lengths)


def test_the_hose_is_drawn_as_a_vector_with_its_bow() -> None:
    with pdfplumber.open(BytesIO(usual())) as document:
        page = next(page for page in document.pages if "Scale 1:" in page.extract_text())
        assert not page.images
        assert any(len(curve["pts"]) > 50 for curve in page.curves)


@pytest.mark.parametrize(
    "name",
    [
        "<b>Bold & Brash</b> <font",
        "=cmd|' /C calc'!A0",
        "W" * 60,
        "Łódź Ø 5½ – “née” Ω",
        "bad\x07\x1b sequence",
        "&lt;para&gt; &#38; <para>",
    ],
)
def test_names_are_printed_as_they_are(name: str) -> None:
    at = factory.site(name=name[:60], address=name * 20)
    where = factory.position(name[:60], notes=name * 5)
    text = text_of(made(factory.site_plan(factory.fitting_plan(where, at), at=at)))
    assert printable(name).strip().split()[0][:12] in text


@pytest.mark.parametrize(
    ("notes", "word", "count"),
    [
        ("line\n" * 790, "line", 790),
        ("\n" * 3990 + "Zz", "Zz", 1),
        ("Zword " * 660, "Zword", 660),
        ("Ø" * 3999, "Ø", 3999),
    ],
)
def test_notes_longer_than_a_page_run_on(notes: str, word: str, count: int) -> None:
    text = text_of(made(factory.site_plan(factory.fitting_plan(factory.position(notes=notes)))))
    assert text.count(word) >= count


def test_characters_that_no_font_has_show_as_their_numbers() -> None:
    assert printable("pump \U00012000 x") == "pump [U+12000] x"
    at = factory.site(name="Pump \U00012000 Station")
    assert "Pump [U+12000] Station" in text_of(made(factory.site_plan(factory.fitting_plan(at=at), at=at)))


def test_markup_is_escaped_in_one_place() -> None:
    assert markup("a <b> & c\nd") == "a &lt;b&gt; &amp; c<br/>d"


def test_formulas_raise_powers_and_lower_indices() -> None:
    marked = re.sub(r"<(sub|super) [^>]*>", r"<\1>", formula_markup("p_h = x^2 < y"))
    assert marked == "p<sub>h</sub> = x<super>2</super> &lt; y"


def test_indices_and_powers_stay_clear_of_the_lines_above_and_below() -> None:
    lines = tuple(
        NumberedLine(str(number), WorkedText(formula="F_p^2 = h_low", inputs="", result="", source="", note=""), "")
        for number in (1, 2, 3)
    )
    sheet = Worked(title="Pull", outcome="", lines=lines, limit="", sources=())
    document = replace(bill_content(factory.site_plan(), story(), cautions()), blocks=(sheet,))
    with pdfplumber.open(BytesIO(pdf_bytes(document))) as opened:
        chars = [char for char in opened.pages[0].chars if char["text"] in "Fplow2="]
    rows = sorted({round(char["bottom"], 1) for char in chars if char["text"] == "="})
    assert len(rows) == 3
    small = [char for char in chars if char["size"] < 6]
    assert len(small) == 15  # p, 2, l, o, w in each of three lines
    for upper, lower in itertools.pairwise(rows):
        row = [char for char in chars if char["bottom"] <= upper + 4]
        below = [char for char in chars if upper + 4 < char["bottom"] <= lower + 4]
        assert max(char["bottom"] for char in row) <= min(char["top"] for char in below)


def test_the_bill_without_calculations_is_shorter_and_says_so() -> None:
    plan = factory.site_plan()
    short = bill_pdf(plan, story(), cautions(), calculations=False)
    whole = bill_pdf(plan, story(), cautions())
    assert len(text_of(short)) < len(text_of(whole))
    assert len(reader_of(short).pages) <= len(reader_of(whole).pages)
    assert "annex B) are left out of this copy" in text_of(short)
    assert "v = 4 Q" not in text_of(short)


def test_a_long_table_repeats_its_head_on_each_page() -> None:
    plans = [factory.fitting_plan(factory.position(f"P{number}")) for number in range(60)]
    pdf = made(factory.site_plan(*plans[:1], *(factory.conflicting_plan(f"C{n}") for n in range(60))))
    with_rows = pages_of(pdf)[:3]
    assert all("Dispenser" in text and "Result" in text for text in with_rows[:2])


@pytest.mark.at_length  # the commands are held so each time, in tests/cli/test_output_files.py
def test_the_same_plan_gives_the_same_bytes_in_any_process() -> None:
    script = (
        "import hashlib; from datetime import date; from documents import plan_factory as f;"
        "from documents.readers import story, cautions; from spoutline.documents.bill import *;"
        "p = f.site_plan(); s = story();"
        "print([hashlib.sha256(b).hexdigest() for b in"
        " (bill_pdf(p, s, cautions(), dated=date(2026, 11, 25)), bill_csv(p, s), bill_xlsx(p, s))])"
    )
    assert len(outputs_elsewhere(script)) == 1


def test_another_date_gives_other_bytes() -> None:
    plan = factory.site_plan(factory.fitting_plan())
    assert bill_pdf(plan, story(), cautions()) != made(plan)
    assert "Nov 25, 2026" in text_of(made(plan))


@pytest.mark.parametrize(
    ("text", "kept"),
    [
        ("left at 90.1 % of", "left at 90.1\xa0% of"),
        ("at least 0.1 m; 10 g/m²·day and 37.85 L/min", "at least 0.1\xa0m; 10\xa0g/m²·day and 37.85\xa0L/min"),
        ("2 lb/1000 gal, 43 kΩ, 14 days", "2\xa0lb/1000\xa0gal, 43\xa0kΩ, 14\xa0days"),
        ("position 4 left of 3 meters", "position 4 left of 3 meters"),  # words that merely begin like a unit
    ],
)
def test_no_line_ends_between_a_figure_and_its_unit(text: str, kept: str) -> None:
    # SI brochure, 5.4.3: the unit follows the number behind a space; the two are one expression
    assert markup(text) == kept


def test_a_figure_at_the_end_of_a_line_goes_to_the_next_with_its_unit() -> None:
    register_fonts()
    style = ParagraphStyle("narrow", fontName=REGULAR, fontSize=10)
    lines = [
        line
        for width in range(60, 200, 3)
        for line in simple_lines(
            Paragraph(markup("The share that stays is 90.1 % of all that was there"), style), width
        )
    ]
    assert len(lines) > 100
    assert not any(line.endswith("90.1") or line.startswith("%") for line in lines)


def simple_lines(paragraph: Paragraph, width_pt: float) -> list[str]:
    paragraph.wrap(width_pt, 1e6)
    return [" ".join(line[1]).strip() for line in paragraph.blPara.lines]
