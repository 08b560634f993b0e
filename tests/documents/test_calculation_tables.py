"""Annex B of a bill of many unlike positions: every figure of the plan stands on the paper, and nothing is told twice.

What must be found is taken from the plan, never from the paper; the formulas that are worked again are those of the
handbooks named beside them.
"""

from __future__ import annotations

import math
import re
from collections.abc import Iterator
from io import BytesIO

import pytest
from pypdf import PageObject, PdfReader

from documents import plan_factory as factory
from documents.calculation_reading import Line, calculations_of, figures_in, groups_in
from documents.html_reading import figures, page_of, shown_text
from documents.readers import story
from paper_text import pages_of, text_of
from spoutline.bootstrap import Workbench
from spoutline.bootstrap.demos import demo_survey
from spoutline.documents.content.annex_marks import annex_marks
from spoutline.documents.content.blocks import Column, Document, Link, PaperSize, Row, Table
from spoutline.documents.content.grouping import LikePositions, like_positions
from spoutline.documents.content.worked_stages import Stages, stage_of
from spoutline.documents.html.page import html_bytes
from spoutline.documents.paper_form import PaperForm
from spoutline.documents.pdf.render import pdf_bytes
from spoutline.explain.phrases.paper_words import PaperWord
from spoutline.explain.plan.story import Story
from spoutline.model.check import Check, WorkedLine
from spoutline.model.language import Language
from spoutline.model.plan import SitePlan
from spoutline.model.quantity import Dimension, Quantity
from spoutline.units.accepted import UnitSystem
from spoutline.units.display import Display

SPACES = re.compile(r"\s+")


@pytest.fixture
def station(workbench: Workbench, plans_once: None) -> SitePlan:
    """Return a station of 48 hoses in a dozen unlike groups, some without a set."""
    return workbench.plan_site(demo_survey("refit_48"))


def paper(workbench: Workbench, plan: SitePlan, system: UnitSystem, form: PaperForm, language: Language) -> bytes:
    return workbench.bills().pdf(plan, Display(system), form=form, language=language)


def symbol(name: str, told: Story) -> str:
    return told.symbol(name).replace("_", "")


def plain(text: str) -> str:
    return SPACES.sub(" ", text.replace("\N{NO-BREAK SPACE}", " "))


def same_formula(text: str) -> str:
    return re.sub(r"[\s_^]", "", text)


def sheets(plan: SitePlan) -> list[tuple[int, LikePositions, tuple[Check, ...]]]:
    return [
        (number, like, like.plan.chosen.checks)
        for number, like in enumerate(like_positions(plan.positions), start=1)
        if like.plan.chosen is not None
    ]


def holds(line: Line, figure: Quantity, told: Story) -> bool:
    shown = {name.replace("_", ""): text for name, text in line.figures.items()}
    return shown.get(symbol(figure.name, told)) == plain(told.display.show_quantity(figure))


@pytest.mark.parametrize("system", UnitSystem)
def test_every_figure_limit_and_margin_of_every_position_is_in_the_lines_of_its_group(
    workbench: Workbench, station: SitePlan, system: UnitSystem
) -> None:
    told = story(system)
    found = calculations_of(paper(workbench, station, system, PaperForm.HTML, Language.ENGLISH))
    by_title = {calculation.title: calculation for calculation in found.values()}
    all_formulas = [same_formula(text) for one in found.values() for text in one.formulas]
    looked_at = 0
    for group, _, checks in sheets(station):
        for check in checks:
            if not check.lines:
                continue
            calculation, text = by_title[told.title(check.id)], told.check(check)
            own = [line for line in calculation.lines if group in line.groups]
            for line in check.lines:
                wanted = (*line.inputs, line.result)
                assert any(all(holds(one, figure, told) for figure in wanted) for one in own), (group, check.id, line)
                formula = same_formula(told.worked_line(line).formula)
                assert any(formula in one for one in all_formulas)
                looked_at += len(wanted)
            cells = tuple(map(plain, (text.value, text.limit, text.margin)))
            assert [row[:3] for groups, row in calculation.results if group in groups] == [cells]
    assert looked_at > 1000


def test_a_formula_and_a_line_are_told_once(workbench: Workbench, station: SitePlan) -> None:
    found = calculations_of(paper(workbench, station, UnitSystem.US, PaperForm.HTML, Language.ENGLISH))
    formulas = [re.sub(r"^F\d+ ", "", text) for one in found.values() for text in one.formulas]
    wanted = {line.formula for _, _, checks in sheets(station) for check in checks for line in check.lines}
    assert len(formulas) == len(set(formulas)) == len(wanted)


def in_si(text: str) -> float:
    """Return a figure of the SI paper as a number in its SI unit; prefixes by the SI brochure."""
    number, _, unit = text.partition(" ")
    scale = {"mm": 1e-3, "m": 1, "m/s": 1, "L/min": 1e-3 / 60, "kPa": 1e3, "Pa": 1, "MPa": 1e6, "N": 1, "kN": 1e3}
    return float(number.replace(",", "")) * (scale[unit] if unit else 1)


def test_a_reader_works_the_lines_of_the_paper_out_by_hand(workbench: Workbench, station: SitePlan) -> None:
    """Continuity, Crane TP 410: v = 4 Q / (pi D²); statics: F = W + Fu + Fp; ratio of forces: n = Fsep,min / F."""
    found = calculations_of(paper(workbench, station, UnitSystem.SI, PaperForm.HTML, Language.ENGLISH))
    by_title = {one.title: [line.figures for line in one.lines] for one in found.values()}
    velocities = [line for line in by_title["Flow, cold"] if {"Q", "D", "v"} <= line.keys()]
    assert len(velocities) > 10
    for line in velocities:
        flow, bore = in_si(line["Q"]), in_si(line["D"])
        assert in_si(line["v"]) == pytest.approx(4 * flow / (math.pi * bore**2), rel=2e-3)
    pulls = by_title["Breakaway margin over the service load"]
    sums = [line for line in pulls if {"W", "Fu", "Fp", "F"} <= line.keys()]
    shares = [line for line in pulls if {"Fsep,min", "F", "n"} <= line.keys()]
    assert sums
    assert shares
    for line in sums:
        assert in_si(line["F"]) == pytest.approx(sum(in_si(line[name]) for name in ("W", "Fu", "Fp")), rel=2e-3)
    for line in shares:
        assert in_si(line["n"]) == pytest.approx(in_si(line["Fsep,min"]) / in_si(line["F"]), rel=2e-3)


@pytest.mark.parametrize("language", Language)
def test_pdf_and_html_hold_the_figures_of_the_plan_in_every_language(
    workbench: Workbench, station: SitePlan, language: Language
) -> None:
    us = UnitSystem.US
    pdf = text_of(paper(workbench, station, us, PaperForm.PDF, language))
    page = shown_text(paper(workbench, station, us, PaperForm.HTML, language))
    told = workbench.story(Display(us), language)
    wanted: set[str] = set()
    for _, like, checks in sheets(station):
        wanted.update(one.label for one in like.positions)
        for check in checks:
            text = told.check(check)
            wanted.update(figures(" ".join((text.value, text.limit, text.margin))))
            for line in check.lines:
                wanted.update(figures(" ".join(told.display.show_quantity(one) for one in (*line.inputs, line.result))))
    assert len(wanted) > 300
    in_pdf, in_page = figures(pdf), figures(page)
    assert not {one for one in wanted if one not in in_pdf and one not in pdf}
    assert not {one for one in wanted if one not in in_page and one not in page}


def test_the_bill_of_48_hoses_is_a_good_deal_shorter_than_its_calculations_line_by_line(
    workbench: Workbench, station: SitePlan
) -> None:
    # told line by line, in smaller letters, the same bill had 79 pages; half of them repeated formulas
    assert len(pages_of(paper(workbench, station, UnitSystem.US, PaperForm.PDF, Language.ENGLISH))) < 54


def test_links_of_the_pdf_lead_from_a_check_to_its_calculation_and_back_to_the_position(
    workbench: Workbench, station: SitePlan
) -> None:
    reader = PdfReader(BytesIO(paper(workbench, station, UnitSystem.US, PaperForm.PDF, Language.ENGLISH)))
    texts = [plain(page.extract_text()) for page in reader.pages]
    leads = [set(_led_to(page, reader)) for page in reader.pages]
    told, marks = story(UnitSystem.US), annex_marks(like_positions(station.positions))
    assert marks is not None

    def page_with(text: str, start: int = 0) -> int:
        return next(number for number, found in enumerate(texts) if number >= start and text in found)

    annex = page_with(told.word(PaperWord.ANNEX_CALCULATION))
    back = set().union(*leads[annex:])
    for group, _, checks in sheets(station):
        section = page_with(f"G{group}: Position")
        assert section in back
        from_section = set().union(*leads[section : section + 3])
        for check in checks:
            if check.lines:
                heading = f"{marks.calculation(check.id)} {told.title(check.id)}"
                assert page_with(heading, annex) in from_section


def _led_to(page: PageObject, reader: PdfReader) -> Iterator[int]:
    """Yield the numbers of the pages that the links of a page lead to."""
    pages = {one.indirect_reference.idnum: number for number, one in enumerate(reader.pages) if one.indirect_reference}
    for annotation in page.get("/Annots", ()):
        yield pages[annotation.get_object()["/Dest"][0].idnum]


def test_links_of_the_page_lead_to_what_stands_on_it(workbench: Workbench, station: SitePlan) -> None:
    page = page_of(paper(workbench, station, UnitSystem.US, PaperForm.HTML, Language.ENGLISH))
    ids = [one.attributes["id"] for one in page.elements if "id" in one.attributes]
    assert len(ids) == len(set(ids))
    links = {one.attributes["href"].removeprefix("#") for one in page.all("a")}
    assert links <= set(ids)
    assert {"group1", "calculation1"} <= links


def line(formula: str, result: float, **inputs: float) -> WorkedLine:
    return WorkedLine(
        formula=formula,
        inputs=tuple(Quantity(name, value, Dimension.RATIO) for name, value in inputs.items()),
        result=Quantity(formula.partition(" ")[0], result, Dimension.RATIO),
        source="",
    )


def runs_of(*calculations: tuple[WorkedLine, ...]) -> list[list[tuple[str, ...]]]:
    stages = Stages(calculations, lambda figure: f"{figure.value:g}")
    return [[stage_of(run) for run in stages.runs(lines)] for lines in calculations]


def test_formulas_that_always_follow_each_other_are_one_stage() -> None:
    first = (line("b = 2 a", 2, a=1), line("c = b + 1", 3, b=2))
    second = (line("b = 2 a", 4, a=2), line("c = b + 1", 5, b=4))
    assert runs_of(first, second) == [[("b = 2 a", "c = b + 1")]] * 2


def test_a_formula_that_also_follows_another_is_a_stage_of_its_own() -> None:
    first = (line("b = 2 a", 2, a=1), line("c = b + 1", 3, b=2))
    second = (line("b = 3 a", 3, a=1), line("c = b + 1", 4, b=3))
    assert runs_of(first, second) == [[("b = 2 a",), ("c = b + 1",)], [("b = 3 a",), ("c = b + 1",)]]


def test_a_symbol_never_means_two_figures_in_one_line() -> None:
    lines = (line("b = 2 a", 2, a=1), line("c = a + 1", 4, a=3))
    assert runs_of(lines) == [[("b = 2 a",), ("c = a + 1",)]]


def test_a_stage_too_wide_for_a_sheet_is_parted_alike_for_all() -> None:
    long, short = 1234567.0, 1.0
    names = [f"x{number}" for number in range(7)]
    calculations = [
        (
            line("b = x", value, **dict.fromkeys(names, value)),
            line("c = y", value, **{name.replace("x", "y"): value for name in names}),
        )
        for value in (long, short)
    ]
    # 15 figures of up to 11 signs ("1.23457e+06") and what lies between need more than the 92 signs of a sheet
    assert runs_of(*calculations) == [[("b = x",), ("c = y",)]] * 2


def test_rows_of_a_folded_table_stand_two_beside_each_other_and_none_is_lost() -> None:
    rows = tuple(Row((f"row{number}", f"cell{number}")) for number in range(7))
    table = Table((Column("No.", 1), Column("Value", 1)), rows, folded=True)
    document = Document(
        title="Paper",
        subject="",
        author="",
        language="en",
        paper=PaperSize.A4,
        running_head="",
        running_foot="",
        page_phrase="Page {page} of ",
        blocks=(table,),
    )
    (page,) = pages_of(pdf_bytes(document))
    words = page.split()
    assert {f"row{number}" for number in range(7)} | {f"cell{number}" for number in range(7)} <= set(words)
    assert words.count("No.") == 2
    assert shown_text(html_bytes(document)).count("No.") == 1


def test_a_linked_cell_comes_apart_into_its_pieces() -> None:
    row = Row(("G1, G3–5",), links=(Link(0, 2, "group1"), Link(4, 6, "group3"), Link(7, 8, "group5")))
    pieces = [(text, link.anchor if link else "") for text, link in row.linked_pieces()]
    assert pieces == [("G1", "group1"), (", ", ""), ("G3", "group3"), ("–", ""), ("5", "group5")]


def test_marks_name_groups_and_ranges_with_links_to_each_that_is_named() -> None:
    plans = [factory.fitting_plan(factory.position(label)) for label in "ABCD"]
    groups = tuple(LikePositions(plan, (plan.position,)) for plan in plans)
    marks = annex_marks(groups)
    assert marks is not None
    text, links = marks.groups_told((0, 1, 2, 3))
    assert text == "G1–4"
    assert [(text[one.start : one.end], one.anchor) for one in links] == [("G1", "group1"), ("4", "group4")]
    assert groups_in(text) == {1, 2, 3, 4}
    assert annex_marks(groups[:2]) is None


def test_figures_of_a_cell_are_read_apart() -> None:
    assert figures_in("a = 1 ft 2 in, whip hose = 3 lbf, p(TH-W1) = 0.5 psi") == {
        "a": "1 ft 2 in",
        "whip hose": "3 lbf",
        "p(TH-W1)": "0.5 psi",
    }
