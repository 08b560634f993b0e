"""The bill of many positions that all differ: long lists and equal sections are told once, in letters that can be read.

What must stand on the paper is taken from the plan, never from the paper.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import replace
from functools import lru_cache
from io import BytesIO

import pdfplumber
import pytest
from pypdf import PdfReader

from documents import plan_factory as factory
from documents.calculation_reading import calculations_of
from documents.html_reading import page_of
from documents.readers import cautions, story
from paper_text import pages_of
from spoutline.documents.bill import bill_pdf
from spoutline.documents.content.bill_content import bill_content
from spoutline.documents.content.blocks import Block, Heading, Paragraph, Row, Table
from spoutline.documents.content.set_sections import alternative_blocks, joint_blocks
from spoutline.documents.paper_form import PaperForm
from spoutline.model.check import CheckId
from spoutline.model.plan import PositionPlan, SitePlan
from spoutline.units.accepted import UnitSystem
from spoutline.units.display import Display

POSITIONS = 40
ODD = tuple(range(1, POSITIONS, 2))


@lru_cache(maxsize=1)
def station() -> SitePlan:
    """Return positions that all stand at another distance; every second one has another cold flow and dearer sets."""
    return factory.site_plan(*map(_plan, range(POSITIONS)))


def _plan(number: int) -> PositionPlan:
    filler = factory.position().filler
    where = factory.position(f"{number}A", filler=filler.model_copy(update={"distance_m": round(2 + number / 100, 2)}))
    plan = factory.fitting_plan(where)
    if number not in ODD:
        return plan
    assert plan.chosen is not None
    others = tuple(one for one in plan.chosen.checks if one.id is not CheckId.FLOW_COLD)
    chosen = replace(plan.chosen, checks=(*others, factory.flow_check(CheckId.FLOW_COLD, 41.0)))
    dearer = tuple(replace(one, price_difference_minor=9900) for one in plan.alternatives)
    return replace(plan, chosen=chosen, alternatives=dearer)


@lru_cache(maxsize=2)
def paper(form: PaperForm) -> bytes:
    return bill_pdf(station(), story(), cautions(), form=form)


def sections() -> dict[str, list[Block]]:
    """Return the blocks behind the heading of each group, by its anchor."""
    found: dict[str, list[Block]] = {}
    now: list[Block] = []
    for block in bill_content(station(), story(), cautions()).blocks:
        if isinstance(block, Heading) and block.level == 1:
            now = found.setdefault(block.anchor, []) if block.anchor else []
        now.append(block)
    return found


def rows_of(blocks: Iterable[Block]) -> list[tuple[str, ...]]:
    return [row.cells for block in blocks if isinstance(block, Table) for row in block.rows]


@pytest.mark.parametrize("kind", ["joints", "alternatives"])
def test_equal_sections_are_told_once_and_the_others_lead_to_them(kind: str) -> None:
    def wanted(plan: PositionPlan) -> tuple[Block, ...]:
        assert plan.chosen is not None
        if kind == "joints":
            return tuple(joint_blocks(plan.chosen, story()))
        return tuple(alternative_blocks(plan, station().survey.site.currency, story()))

    told = sections()
    title = wanted(station().positions[0])[0]
    assert isinstance(title, Heading)
    in_full = 0
    for number, plan in enumerate(station().positions, start=1):
        blocks = told[f"group{number}"]
        if title in blocks:
            at = blocks.index(title)
            assert rows_of(blocks[at + 1 : at + 2]) == rows_of(wanted(plan))
            in_full += 1
            continue
        (reference,) = (one for one in blocks if isinstance(one, Paragraph) and one.links and title.text in one.text)
        (link,) = reference.links
        first = int(link.anchor.removeprefix("group"))
        assert reference.text[link.start : link.end] == f"G{first}"
        assert first < number
        assert title in told[f"group{first}"]
        assert wanted(station().positions[first - 1]) == wanted(plan)
    assert in_full == (1 if kind == "joints" else 2)


def test_a_position_of_which_nothing_was_found_says_so_in_one_line() -> None:
    for blocks in sections().values():
        assert [one for one in blocks if isinstance(one, Paragraph) and one.text == "Findings: Nothing to report."]


def lists() -> Mapping[str, Row]:
    tables = (one for one in bill_content(station(), story(), cautions()).blocks if isinstance(one, Table))
    return {row.cells[0]: row for table in tables for row in table.rows if row.anchor}


def test_a_long_list_of_groups_is_told_once_with_a_link_to_each_of_them() -> None:
    rows = lists()
    odd = ", ".join(f"G{number + 1}" for number in ODD)
    even = ", ".join(f"G{number}" for number in ODD)
    assert {row.cells[1] for row in rows.values()} == {odd, even}
    for row in rows.values():
        assert [one.anchor for one in row.links] == [
            f"group{mark.removeprefix('G')}" for mark in row.cells[1].split(", ")
        ]
    text = "\n".join(pages_of(paper(PaperForm.PDF)))
    assert " ".join(text.split()).count(odd) == 1


def test_each_group_finds_its_results_through_the_lists() -> None:
    found = {one.title: one for one in calculations_of(paper(PaperForm.HTML)).values()}
    cold = found[story().title(CheckId.FLOW_COLD)]
    shown = Display(UnitSystem.SI).show_quantity
    for number, plan in enumerate(station().positions, start=1):
        assert plan.chosen is not None
        (check,) = (one for one in plan.chosen.checks if one.id is CheckId.FLOW_COLD)
        (result,) = [cells for groups, cells in cold.results if number in groups]
        assert result[0] == story().check(check).value.replace("\N{NO-BREAK SPACE}", " ")
        own = [line.figures for line in cold.lines if number in line.groups]
        assert any(shown(check.lines[0].result).replace("\N{NO-BREAK SPACE}", " ") in one.values() for one in own)


def test_links_lead_from_a_list_and_to_it() -> None:
    page = page_of(paper(PaperForm.HTML))
    ids = {one.attributes["id"] for one in page.elements if "id" in one.attributes}
    led_to = {one.attributes["href"].removeprefix("#") for one in page.all("a")}
    anchors = {row.anchor for row in lists().values()}
    assert anchors <= led_to <= ids
    reader = PdfReader(BytesIO(paper(PaperForm.PDF)))
    texts = pages_of(paper(PaperForm.PDF))
    (told,) = (number for number, text in enumerate(texts) if "Lists of groups" in text)
    assert any(told in set(_led_to(reader, number)) for number in range(told + 1, len(texts)))
    behind = set(_led_to(reader, told))
    wanted = {next(at for at, text in enumerate(texts) if f"G{number + 1}: Position" in text) for number in ODD}
    assert wanted <= behind


def _led_to(reader: PdfReader, number: int) -> Iterator[int]:
    pages = {one.indirect_reference.idnum: at for at, one in enumerate(reader.pages) if one.indirect_reference}
    for annotation in reader.pages[number].get("/Annots", ()):
        yield pages[annotation.get_object()["/Dest"][0].idnum]


def test_the_tables_of_a_long_bill_are_set_in_letters_of_at_least_7_5_points() -> None:
    """Smaller letters tire whoever reads many rows (common practice, no source)."""
    with pdfplumber.open(BytesIO(paper(PaperForm.PDF))) as opened:
        words = [word for page in opened.pages for word in page.extract_words(extra_attrs=["size"])]
    for text in ("Outcome", "Margin", "passes", "whip"):  # titles and cells of sections and annexes
        sizes = [float(word["size"]) for word in words if word["text"] == text]
        assert sizes
        assert min(sizes) >= 7.49, text
