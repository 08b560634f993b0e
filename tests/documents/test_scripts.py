"""Papers in all scripts: joined, put in order, from further fonts, and never as boxes."""

from __future__ import annotations

import shutil
import unicodedata
from collections.abc import Iterator
from pathlib import Path

import pytest
from bidi.algorithm import get_display
from reportlab.pdfbase import pdfmetrics

from documents.test_html import document
from paper_text import text_of
from spoutline.documents.content.blocks import Bullets, Column, Heading, Paragraph, Row, Table
from spoutline.documents.pdf import other_fonts
from spoutline.documents.pdf.fonts import REGULAR, printable, register_fonts
from spoutline.documents.pdf.render import pdf_bytes
from spoutline.documents.pdf.scripts import Ink, Sign, broken, has_other, line_of, text_width

ARABIC = "محطة الوقود رقم 12 (المخرج 7) NPT 3/4"
HEBREW = "תחנת הדלק (יציאה 3) NPT 3/4 באורך"
CHINESE = "北京加油站，有六台加油机。"


@pytest.fixture(autouse=True)
def fonts() -> Iterator[None]:
    register_fonts()
    yield
    forget_fonts()


def forget_fonts() -> None:
    from spoutline.documents.pdf import scripts

    other_fonts.other_fonts.cache_clear()
    other_fonts.font_for.cache_clear()
    scripts.is_other.cache_clear()
    other_fonts.missing_characters.take()
    other_fonts.missing_characters._told.clear()  # each test is told for itself


@pytest.fixture
def no_further_fonts(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(other_fonts, "_folders", tuple)
    forget_fonts()


def seen(text: str) -> str:
    """Return a line as its glyphs follow each other from the left, forms of a letter as the letter."""
    runs = "".join(str(run.text) for run in line_of(text, REGULAR, 10).runs)
    return unicodedata.normalize("NFKC", runs)


@pytest.mark.parametrize("text", [HEBREW, "Station שלום 12 end", "שלום (abc) 12.50", "abc"])
def test_a_line_is_seen_in_the_order_of_the_unicode_algorithm(text: str) -> None:
    """Against the display order of UAX 9 as python-bidi's whole function gives it (we take its levels alone)."""
    assert seen(text) == get_display(text)


def test_letters_of_arabic_join() -> None:
    """Unicode Standard, Arabic Presentation Forms-B: U+FE91 beh initial, U+FE92 medial, U+FE90 final; from the left."""
    (run,) = line_of("ببب", REGULAR, 10).runs
    assert [hex(ord(one)) for one in run.text] == ["0xfe90", "0xfe92", "0xfe91"]
    assert run.width == pytest.approx(text_width("ببب", REGULAR, 10))


def test_a_line_ends_where_a_script_lets_it_and_never_before_a_closing_sign() -> None:
    """Unicode Standard Annex 14: ideographs part before and after, no line begins with a full stop or comma."""
    held = pdfmetrics.getFont(REGULAR).face.charToGlyph
    assert ord("北") not in held
    signs = [Sign(one, Ink(REGULAR, 10.0)) for one in CHINESE * 6]
    lines = broken(signs, [60.0, 60.0])
    assert len(lines) > 3
    texts = ["".join(str(run.text) for run in line.runs) for line in lines]
    if other_fonts.font_for("北"):  # without one, the numbers of the characters stand there, as the next tests show
        assert not any(text.startswith(("，", "。")) for text in texts)
        assert max(line.width for line in lines) <= 60.0 + 1e-6


def test_words_stay_whole_and_the_longest_is_broken() -> None:
    signs = [Sign(one, Ink(REGULAR, 10.0)) for one in f"{HEBREW} {'ש' * 40}"]
    lines = broken(signs, [120.0, 120.0])
    assert max(line.width for line in lines) <= 120.0 + 1e-6
    together = " ".join(unicodedata.normalize("NFKC", "".join(str(one.text) for one in line.runs)) for line in lines)
    assert sum(one == "ש" for one in together) == 40
    assert lines[0].reads_from_right


def test_a_paper_in_arabic_hebrew_and_chinese_shows_no_box_and_is_the_same_each_time() -> None:
    rows = tuple(Row((HEBREW, CHINESE, "12.50")) for _ in range(120))
    columns = (Column(ARABIC, 1.0), Column("b", 1.0), Column("c", 0.3))
    long = Paragraph(" ".join([ARABIC, HEBREW, CHINESE]) * 200)  # over more than one page
    blocks = (Heading(ARABIC, 1), long, Bullets((ARABIC, CHINESE)), Table(columns, rows))
    made = pdf_bytes(document(*blocks))
    assert made == pdf_bytes(document(*blocks))
    text = text_of(made)
    assert "□" not in text
    assert text.count("12.50") == 120
    assert "NPT 3/4" in text
    letters = unicodedata.normalize("NFKC", text)
    assert set("محطة") <= set(letters)
    if other_fonts.font_for("北"):
        assert "北京加油站" in text
        assert "[U+" not in text
    else:
        assert "[U+5317 U+4EAC" in text


def test_without_a_font_the_numbers_are_printed_and_the_person_is_told_once(no_further_fonts: None) -> None:
    assert printable("Beijing 北京!") == "Beijing [U+5317 U+4EAC]!"
    assert printable("\u202eabc\u0007") == "abc"
    (note,) = other_fonts.missing_characters.take()
    assert note.value == "京北"
    assert "no installed TrueType font" in note.told
    assert "fonts-droid-fallback" in note.told
    printable("北")
    assert other_fonts.missing_characters.take() == ()
    assert "[U+5317 U+4EAC]" in text_of(pdf_bytes(document(Paragraph("北京"))))


def test_a_font_in_the_persons_own_folder_is_taken(
    monkeypatch: pytest.MonkeyPatch, tmp_path: Path, no_further_fonts: None
) -> None:
    """The project's own font stands in for one that a person brings: what it holds is no further font's then."""
    from spoutline import assets

    monkeypatch.setattr(other_fonts, "own_folder", lambda: tmp_path)
    (tmp_path / "damaged.ttf").write_bytes(b"no font")
    shutil.copy(assets.resources_folder() / "fonts" / "DejaVuSans.ttf", tmp_path / "mine.ttf")
    forget_fonts()
    assert len(other_fonts.other_fonts()) == 1
    assert other_fonts.font_for("A") == other_fonts.other_fonts()[0]
    assert other_fonts.font_for("\U00012000") is None


def test_plain_text_takes_the_usual_way() -> None:
    assert not has_other("Zapfsäule Ω ≤ → 3/4 ½ éñ")
    assert has_other(HEBREW)
