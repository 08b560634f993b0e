"""The installer's pack as a printer and a person on the island see it."""

from __future__ import annotations

import itertools
import re
from dataclasses import replace
from datetime import date
from functools import cache
from io import BytesIO
from pathlib import Path

import pdfplumber
import pypdfium2
import pytest
import zxingcpp

from documents import plan_factory as factory
from documents.pack_words import every_kind_of_position, words
from documents.readers import outputs_elsewhere, reader_of
from paper_text import page_text, pages_of, text_of
from spoutline.documents.pack.papers import caution_pdf, pack_pdf
from spoutline.model.installed import InstalledPart
from spoutline.model.language import Language
from spoutline.model.pack import Contact, PackJob
from spoutline.model.part import PartKind
from spoutline.model.plan import PositionPlan, SitePlan
from spoutline.model.position_tag import tag_from_text
from spoutline.units.accepted import UnitSystem

TESTS = Path(__file__).parents[1]
JOB = PackJob(
    first_day=date(2026, 12, 1),
    last_day=date(2026, 12, 2),
    authority="Bramblefork fire office (invented)",
    adopted_codes="Local code 12 (invented)",
    permit_number="HF-26-0001",
    contacts=(Contact(role="Operator", name="Ada Quill", telephone="000-0000"),),
)


@cache
def usual(language: Language = Language.ENGLISH) -> bytes:
    return pack_pdf(factory.site_plan(), words(language), JOB, dated=date(2026, 11, 25))


def sheet_pages(pdf: bytes, heading: str) -> list[str]:
    return [page for page in pages_of(pdf) if heading in page]


def test_the_cover_names_site_days_people_and_the_local_code() -> None:
    cover = page_text(usual(), 0)
    for text in (
        "Bramblefork Fuels",
        "Dec 1, 2026",
        "Dec 2, 2026",
        "Ada Quill",
        "000-0000",
        "Bramblefork fire office (invented)",
        "Local code 12 (invented)",
        "HF-26-0001",
        "Local codes, the authority having jurisdiction",
    ):
        assert text in cover


def test_what_the_cover_does_not_know_is_left_to_write() -> None:
    cover = page_text(pack_pdf(factory.site_plan(), words(), PackJob()), 0)
    assert cover.count("____") >= 7


def test_the_loading_list_holds_every_part_of_the_plan_with_its_quantity() -> None:
    plans = (factory.fitting_plan(factory.position("P1")), factory.fitting_plan(factory.position("P2")))
    text = text_of(pack_pdf(factory.site_plan(*plans), words(), JOB))
    # two positions, each with the five parts of the chain and two labels
    for number in ("QW-W18", "QW-B7", "QW-C12", "QW-S2", "QW-N101"):
        assert re.search(rf"\b2 {number}\b", text), number
    assert re.search(r"\b4 QW-L1\b.*P1 \(2\), P2 \(2\)", text)
    boxes = [text.index(f"Box {number}:") for number in (1, 2, 3, 4)]
    assert boxes == sorted(boxes)
    assert "Box 5:" not in text  # numbered as loaded: no number is missed, and none is looked for in vain
    assert "how many go to which position" in text


def test_brackets_are_explained_only_where_some_stand() -> None:
    plan = factory.fitting_plan(accessories=())
    assert "how many go to which position" not in text_of(pack_pdf(factory.site_plan(plan), words(), JOB))


def test_each_position_has_one_sheet_that_holds_its_plan() -> None:
    (sheet,) = sheet_pages(usual(), "Position 1A")
    text = " ".join(sheet.split())
    for number, link in enumerate(factory.chain().links, start=1):
        named = f"{link.part.number} {re.escape(link.part.name)}"
        assert re.search(rf"\b{number} [a-z -]+ {named} {link.part.mass_kg:.3g} kg 1\b", text)
    assert text.count("SEALANT on the male thread") == 5
    assert "20.8 mm" in text
    assert "20.5 mm – 21.34 mm" in text
    assert "600 N – 1100 N" in text  # on the plate of the breakaway
    assert "whip hose 0.457 m, curb hose 3.658 m" in text
    assert "cannot be shown" in text or "not stated" in text  # a resistance that nobody states is not left out
    assert "vehicle end toward the curb hose" in text


def test_a_position_without_a_set_says_so_and_draws_nothing_to_fit() -> None:
    (sheet,) = sheet_pages(usual(), "Position 2A")
    assert "No set was found" in " ".join(sheet.split())
    assert "Order of assembly" not in sheet


def test_a_broken_must_stands_above_the_drawing() -> None:
    (sheet,) = sheet_pages(usual(), "Position 1A")  # its resistance cannot be shown, and must be
    text = " ".join(sheet.split())
    assert text.index("Do not fit this set") < text.index("Order of assembly")
    assert "resistance, outlet to spout tip" in text


def staying(plan: PositionPlan, number: str) -> PositionPlan:
    assert plan.chosen is not None
    chosen = plan.chosen.hanging_set
    links = tuple(replace(link, kept=link.part.number == number) for link in chosen.links)
    return replace(plan, chosen=replace(plan.chosen, hanging_set=replace(chosen, links=links)))


def test_what_is_taken_off_is_listed_and_a_kept_part_is_not() -> None:
    installed = (
        InstalledPart(kind=PartKind.NOZZLE, number="OLD-1"),
        InstalledPart(kind=PartKind.SWIVEL, number="QW-S2"),
        InstalledPart(kind=PartKind.CURB_HOSE, description="coaxial hose, plate gone"),
    )
    where = factory.position("V1", vapour_today="balance", installed=installed)
    text = text_of(pack_pdf(factory.site_plan(staying(factory.fitting_plan(where), "QW-S2")), words(), JOB))
    assert "Removed: nozzle OLD-1; curb hose coaxial hose, plate gone." in text
    assert "Vapor recovery ends here" in text
    unknown = text_of(pack_pdf(factory.site_plan(factory.fitting_plan()), words(), JOB))
    assert "write down what you take off" in unknown


@pytest.mark.parametrize("language", Language)
def test_the_caution_sheet_comes_last_on_few_pages(language: Language) -> None:
    pdf = pack_pdf(factory.site_plan(*every_kind_of_position()), words(language), JOB)
    reader = reader_of(pdf)
    chapters = [entry for entry in reader.outline if not isinstance(entry, list)]
    assert chapters[-1].title == words(language).story.phrases.words["PackWord"]["caution_sheet"]
    start = reader.get_destination_page_number(chapters[-1])
    assert start is not None
    assert len(reader.pages) - start <= 4  # every caution there is, in letters of 7 points at least


@pytest.mark.parametrize("language", Language)
def test_every_position_fits_on_one_page_in_every_language(language: Language) -> None:
    plans = every_kind_of_position()
    pdf = pack_pdf(factory.site_plan(*plans), words(language), JOB)
    reader = reader_of(pdf)
    starts = [reader.get_destination_page_number(entry) for entry in reader.outline if not isinstance(entry, list)][2:]
    assert len(starts) == len(plans) + 1
    assert all(later - sooner == 1 for sooner, later in itertools.pairwise(starts))  # type: ignore[operator]


@pytest.mark.parametrize("jurisdiction_id", ["us_general", "europe"])
@pytest.mark.parametrize("language", Language)
def test_everything_lies_inside_the_page_and_no_label_is_cut(language: Language, jurisdiction_id: str) -> None:
    plan = factory.site_plan(*every_kind_of_position(), jurisdiction_id=jurisdiction_id)
    pdf = pack_pdf(plan, words(language), JOB)
    document = pypdfium2.PdfDocument(pdf)
    for page in document:
        drawn = list(page.get_objects(max_depth=1))  # runs of text, lines, areas, pictures; bounds from below left
        assert drawn
        for item in drawn:
            left, bottom, right, top = item.get_bounds()
            assert 0 <= left <= right <= page.get_width()
            assert 0 <= bottom <= top <= page.get_height()
    assert "…" not in text_of(pdf)


def test_the_hanging_hose_is_true_to_the_scale_it_states() -> None:
    with pdfplumber.open(BytesIO(usual())) as document:
        page = next(page for page in document.pages if "Scale 1:" in page.extract_text())
        scale = int(re.findall(r"Scale 1:(\d+)", page.extract_text())[0])
        # the filler is 2 m from the outlet: 2000 mm / n on paper, 72/25.4 points a millimetre
        wanted = 2000 / scale * 72 / 25.4
        lengths = [line["x1"] - line["x0"] for line in page.lines if abs(line["y1"] - line["y0"]) < 1e-6]
    assert any(length == pytest.approx(wanted, abs=0.02) for length in lengths)


def test_a_scanner_reads_site_position_and_revision_back_from_the_printed_code() -> None:
    # read by ZXing, an independent reader of ISO/IEC 18004 codes, from the page as rendered at 200 dots per inch
    at = factory.site(name="Łódź & Ford; Ø=1")
    plan = factory.site_plan(factory.fitting_plan(factory.position("1A; x=2 ü"), at), at=at)
    document = pypdfium2.PdfDocument(pack_pdf(plan, words(), JOB))
    found = []
    for page in document:
        image = page.render(scale=200 / 72).to_pil().convert("L")
        found += [result.text for result in zxingcpp.read_barcodes(image)]
    (text,) = found
    tag = tag_from_text(text)
    assert (tag.site, tag.position, tag.revision) == ("Łódź & Ford; Ø=1", "1A; x=2 ü", "0123456789abcdef")


@pytest.mark.parametrize(
    ("language", "figure"),
    [(Language.GERMAN, "20,8 mm"), (Language.FRENCH, "20,8 mm"), (Language.SPANISH, "20.8 mm")],
)
def test_figures_are_written_with_the_decimal_sign_of_the_language(language: Language, figure: str) -> None:
    assert figure in text_of(usual(language))


def test_us_units_stand_alone() -> None:
    text = text_of(pack_pdf(factory.site_plan(), words(system=UnitSystem.US), JOB))
    assert "12 ft" in text
    assert not re.search(r"\d (mm|m|N|L/min)\b(?! in)", text.partition("Caution sheet")[0].partition("Position 1A")[2])


def test_language_title_and_fonts_are_set() -> None:
    reader = reader_of(usual(Language.SPANISH))
    assert reader.trailer["/Root"]["/Lang"] == "es"
    assert reader.metadata is not None
    assert reader.metadata.title == "Carpeta del instalador: Bramblefork Fuels"
    names = {
        font.get_object()["/BaseFont"] for page in reader.pages for font in page["/Resources"].get("/Font", {}).values()
    }
    assert all("DejaVuSans" in name for name in names)


def test_the_same_plan_gives_the_same_bytes_in_any_process() -> None:
    script = (
        "import hashlib; from datetime import date; from documents import plan_factory as f;"
        "from documents.pack_words import words; from spoutline.model.pack import PackJob;"
        "from spoutline.model.language import Language;"
        "from spoutline.documents.pack.papers import *;"
        "p, w = f.site_plan(), words(Language.GERMAN); d = date(2026, 11, 25);"
        "print([hashlib.sha256(b).hexdigest() for b in"
        " (pack_pdf(p, w, PackJob(), dated=d), caution_pdf(p, w), form_pdf(p, w))])"
    )
    assert len(outputs_elsewhere(script)) == 1


@pytest.mark.parametrize("name", ["<b>Bold & Brash</b> <font", "=cmd|' /C calc'!A0", "W" * 60, "bad\x07\x1b sequence"])
def test_names_are_data(name: str) -> None:
    at = factory.site(name=name[:60])
    plan: SitePlan = factory.site_plan(factory.fitting_plan(factory.position(name[:60]), at), at=at)
    job = PackJob(contacts=(Contact(role=name, name=name),), notes=name * 3)
    assert pack_pdf(plan, words(), job).startswith(b"%PDF")
    assert caution_pdf(plan, words()).startswith(b"%PDF")
