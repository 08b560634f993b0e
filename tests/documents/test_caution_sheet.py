"""The caution sheet: complete, gravest first, signed by shape, on few pages, in letters that are read outdoors."""

from __future__ import annotations

import re
from collections import Counter
from dataclasses import replace
from io import BytesIO

import pdfplumber
import pypdfium2
import pytest
from reportlab.platypus import Spacer

from documents import plan_factory as factory
from documents.pack_words import every_kind_of_position, words
from documents.readers import reader_of
from paper_text import text_of
from spoutline.documents.content.blocks import CautionSheet, Document, PaperSize, Signal
from spoutline.documents.drawing.pictograms import Area, Disc, pictogram_marks
from spoutline.documents.pack.content import caution_blocks
from spoutline.documents.pack.papers import caution_pdf
from spoutline.documents.pdf import caution_sheet, styles
from spoutline.documents.pdf.render import pdf_bytes
from spoutline.model.caution import CautionCondition, CautionSeverity
from spoutline.model.language import Language
from spoutline.rules.work.job_conditions import job_conditions
from spoutline.ruletables.caution_signs import Pictogram, SignShape

SIGNAL_WORDS = {"DANGER", "WARNING", "CAUTION", "NOTICE"}  # ANSI Z535.4 and, for notice, Z535.2
SEVERE_FIRST = [severity.value for severity in CautionSeverity]


def everything() -> bytes:
    return caution_pdf(factory.site_plan(*every_kind_of_position()), words())


def test_the_crowded_site_brings_up_every_condition_but_one() -> None:
    found = job_conditions(factory.site_plan(*every_kind_of_position()))
    assert set(CautionCondition) - found == {CautionCondition.SINGLE_USE_BREAKAWAY}


@pytest.mark.parametrize("language", Language)
def test_all_cautions_of_a_crowded_site_stand_on_few_pages_large_enough_and_none_is_left_out(
    language: Language,
) -> None:
    plan = factory.site_plan(*every_kind_of_position())
    pdf = caution_pdf(plan, words(language))
    assert len(reader_of(pdf).pages) <= 4
    with pdfplumber.open(BytesIO(pdf)) as paper:  # most letters are those of the cautions
        sizes = Counter(round(char["size"], 2) for page in paper.pages for char in page.chars)
    assert sizes.most_common(1)[0][0] >= 7.0  # points; what is read standing, outdoors: common practice, no source
    text = re.sub(r"\s", "", text_of(pdf))
    conditions = job_conditions(plan)
    fitting = [caution for caution in words(language).cautions if caution.applies_to(conditions)]
    assert len(fitting) > 30
    for caution in fitting:
        for words_of_it in (caution.hazard, caution.why, caution.what_to_do):
            assert re.sub(r"\s", "", words_of_it) in text, caution.id


def test_all_cautions_together_take_four_pages_at_most_in_the_longest_language() -> None:
    for language in Language:
        own = words(language)
        always = tuple(replace(one, applies=frozenset({CautionCondition.ALWAYS})) for one in own.cautions)
        blocks = tuple(caution_blocks(factory.site_plan(), replace(own, cautions=always)))
        document = Document(
            title="t", subject="s", author="a", language=language.value, paper=PaperSize.LETTER, running_head="h",
            running_foot="f", page_phrase="{page}", blocks=blocks,
        )  # fmt: skip
        assert len(reader_of(pdf_bytes(document)).pages) <= 4


def test_no_last_page_bears_one_caution_alone_and_both_its_columns_are_used() -> None:
    """However many cautions there are: a page for one is saved by letters no more than a tenth smaller."""
    (sheet,) = [
        block
        for block in caution_blocks(factory.site_plan(*every_kind_of_position()), words())
        if isinstance(block, CautionSheet)
    ]
    for count in range(2, len(sheet.notes) + 1):
        pages = column_counts(replace(sheet, notes=sheet.notes[:count], pages=3, signed_by=()))
        assert sum(left + right for left, right in pages) == count
        assert min(pages[-1]) >= 1, count


def test_the_lines_to_be_signed_have_room_below_cautions_however_many_there_are() -> None:
    sheet = CautionSheet((), pages=1, signed_by=("signature",))
    for count in range(1, 120):
        pages = caution_sheet._pages([Spacer(1, 40.0) for _ in range(count)], 200.0, sheet)
        assert sum(len(column) for page in pages for column in page) == count
        head = caution_sheet._HEAD_ROOM if len(pages) == 1 else 0.0
        longest = 40.0 * max(len(column) for column in pages[-1])
        assert longest + head + caution_sheet._SIGNED_ROOM <= styles.TEXT_HEIGHT_LEAST, count


def column_counts(sheet: CautionSheet) -> list[tuple[int, int]]:
    """Return how many cautions stand in the left and in the right column of each page, told by their panels."""
    document = Document(
        title="t", subject="s", author="a", language="en", paper=PaperSize.LETTER, running_head="h",
        running_foot="f", page_phrase="{page}", blocks=(sheet,),
    )  # fmt: skip
    with pdfplumber.open(BytesIO(pdf_bytes(document))) as paper:
        counts = []
        for page in paper.pages:
            words_of_signal = [word for word in page.extract_words() if word["text"] in SIGNAL_WORDS]
            left = sum(word["x0"] < page.width / 2 for word in words_of_signal)
            counts.append((left, len(words_of_signal) - left))
        return counts


def test_the_gravest_come_first() -> None:
    (sheet,) = [
        block
        for block in caution_blocks(factory.site_plan(*every_kind_of_position()), words())
        if isinstance(block, CautionSheet)
    ]
    order = [SEVERE_FIRST.index(signed.note.signal.value) for signed in sheet.notes]
    assert order == sorted(order)
    assert {signed.note.signal for signed in sheet.notes} == set(Signal)


def test_nothing_lies_outside_the_page() -> None:
    with pdfplumber.open(BytesIO(everything())) as document:
        for page in document.pages:
            for item in (*page.chars, *page.curves, *page.rects):
                assert item["x0"] >= 0
                assert item["x1"] <= page.width
                assert item["top"] >= 0
                assert item["bottom"] <= page.height


def test_text_stays_legible_in_black_and_white() -> None:
    # 5.6 points is the smallest size the sheet may take; each signal word must stand out from its panel in grey.
    # W3C WCAG 2.1 success criterion 1.4.3 asks a contrast of 4.5 to 1 for text and 3 to 1 for large bold text
    from spoutline.documents.pdf.caution_sheet import PANELS

    with pdfplumber.open(BytesIO(everything())) as document:
        sizes = [char["size"] for page in document.pages for char in page.chars]
    assert min(sizes) >= 5.55  # of text and sources; a size is read to a hundredth
    for ground, ink in PANELS.values():
        lights = sorted(_luminance(colour) for colour in (ground, ink))
        assert (lights[1] + 0.05) / (lights[0] + 0.05) >= 4.5


def _luminance(colour: object) -> float:
    """Return the relative luminance after WCAG 2.1."""
    channels = (colour.red, colour.green, colour.blue)  # type: ignore[attr-defined]
    red, green, blue = (one / 12.92 if one <= 0.04045 else ((one + 0.055) / 1.055) ** 2.4 for one in channels)
    return float(0.2126 * red + 0.7152 * green + 0.0722 * blue)


def test_the_shapes_of_signs_differ_when_printed_grey() -> None:
    # ISO 3864-1: triangle warns, ring with a bar forbids, disc commands; so the outlines must differ, not the colours
    from reportlab.pdfgen.canvas import Canvas

    from spoutline.documents.pdf.sign_painter import paint_sign
    from spoutline.ruletables.caution_signs import CautionSign

    pictures = []
    for shape in SignShape:
        buffer = BytesIO()
        canvas = Canvas(buffer, pagesize=(100, 100), invariant=1)
        canvas.translate(50, 50)
        paint_sign(canvas, CautionSign(shape, Pictogram.FLAME), 45)
        canvas.showPage()
        canvas.save()
        image = pypdfium2.PdfDocument(buffer.getvalue())[0].render(scale=1).to_pil().convert("L")
        # the corner left of the top: empty beside a triangle's point, still empty or filled for round shapes
        pictures.append(image)
    top_left = [image.getpixel((24, 16)) for image in pictures]
    assert top_left[0] > 240  # beside the point of the triangle there is paper
    assert min(top_left[1:]) < 240  # the round shapes reach there
    middle_edge = [image.getpixel((50 - 38, 50)) for image in pictures]
    assert len(set(middle_edge)) > 1


@pytest.mark.parametrize("pictogram", Pictogram)
def test_every_pictogram_is_drawn_inside_its_square(pictogram: Pictogram) -> None:
    marks = pictogram_marks(pictogram)
    assert marks
    assert any(not mark.hollow for mark in marks)
    for mark in marks:
        if isinstance(mark, Disc):
            assert max(map(abs, mark.centre)) + mark.radius <= 1.05
        else:
            assert len(mark.points) >= (3 if isinstance(mark, Area) else 2)
            assert all(abs(x) <= 1.05 and abs(y) <= 1.05 for x, y in mark.points)
