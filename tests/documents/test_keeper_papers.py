"""The keeper's papers: price lists with validity and steps, rules with sources and what differs from the parent."""

from __future__ import annotations

import dataclasses
from datetime import date
from decimal import Decimal

import pytest

from spoutline.bootstrap import Workbench
from spoutline.documents.content.blocks import Document, Heading, KeyValues, Paragraph, Table
from spoutline.documents.keeper.price_lists import price_lists_content
from spoutline.documents.keeper.rule_table import rule_table_content
from spoutline.explain.plan.story import Story
from spoutline.model.catalogue_edition import DEMONSTRATION, CatalogueEdition
from spoutline.model.language import Language
from spoutline.model.limit import LimitStatus
from spoutline.model.part_ref import PartRef
from spoutline.model.pricing import PriceBreak, PriceList, PriceRow
from spoutline.units.accepted import UnitSystem
from spoutline.units.display import Display

MAKER = "Fernmoor Works"
LIST = PriceList(
    id="fernmoor-2027",
    maker=MAKER,
    supplier="Depot & Sons <East>",
    currency="EUR",
    valid_from=date(2027, 1, 1),
    valid_to=date(2027, 6, 30),
    rows=(
        PriceRow(
            part_number="FW 2",
            discount_group="B",
            breaks=(PriceBreak(1, Decimal("1250.50")), PriceBreak(10, Decimal("1199.00"))),
        ),
        PriceRow(part_number="FW 1", discount_group="", breaks=(PriceBreak(1, Decimal("3.00")),)),
    ),
)


@pytest.fixture(params=list(Language))
def story(request: pytest.FixtureRequest, workbench: Workbench) -> Story:
    return workbench.story(Display(UnitSystem.US), request.param)


def tables(document: Document) -> list[Table]:
    return [block for block in document.blocks if isinstance(block, Table)]


def texts(document: Document) -> str:
    rows = [fact.text for block in document.blocks if isinstance(block, KeyValues) for fact in block.rows]
    return "\n".join(rows)


def paper(story: Story, *lists: PriceList, catalogue: str = "Own list") -> Document:
    edition = CatalogueEdition(catalogue=catalogue, number=2, title="Own list, edition 2")
    return price_lists_content(edition, lists, {PartRef("FW 1", MAKER): "Swivel"}, story, date(2026, 11, 28))


def test_every_step_of_a_price_list_stands_in_order_with_its_quantity(story: Story) -> None:
    document = paper(story, LIST)
    (table,) = tables(document)
    cells = [tuple(map(str, row.cells)) for row in table.rows]
    money = story.writing.money
    assert cells == [
        ("FW 1", "Swivel", "", "1", money(Decimal("3.00"), "EUR", with_currency=False)),
        ("FW 2", "", "B", "1", money(Decimal("1250.50"), "EUR", with_currency=False)),
        ("", "", "", "10", money(Decimal("1199.00"), "EUR", with_currency=False)),
    ]
    told = texts(document)
    for part in (MAKER, "Depot & Sons <East>", "EUR", story.day(LIST.valid_from), story.day(date(2027, 6, 30))):
        assert part in told
    assert document.notice == ""
    assert paper(story, LIST, catalogue=DEMONSTRATION).notice


def test_a_list_without_an_end_and_an_edition_without_a_list_say_so(story: Story) -> None:
    document = paper(story, dataclasses.replace(LIST, valid_to=None))
    assert story.day(date(2027, 6, 30)) not in texts(document)
    empty = paper(story)
    assert tables(empty) == []
    assert any(isinstance(block, Paragraph) for block in empty.blocks)


def test_every_limit_stands_with_value_source_and_status_and_what_it_was_before(
    story: Story, workbench: Workbench
) -> None:
    parent = workbench.jurisdictions().one("us_general")
    first = next(one for one in parent.limits if one.value is not None)
    other = dataclasses.replace(first, printed="77.7", source="Fernmoor County code 9", status=LimitStatus.MEMORY)
    limits = tuple(other if one is first else one for one in parent.limits)
    own = dataclasses.replace(parent, id="fernmoor", title="Fernmoor County", limits=limits, built_in=False)
    document = rule_table_content(own, parent, story)
    (table,) = tables(document)
    assert len(table.rows) == len(own.limits)
    cells = [tuple(map(str, row.cells)) for row in table.rows]
    assert [row[0] for row in cells] == [story.limit_title(one) for one in own.limits]
    changed = [row for row in cells if "\n" in row[1]]
    assert len(changed) == 1
    assert "Fernmoor County code 9" in changed[0][2]
    assert story.limit_value(first) in changed[0][1]
    alone = rule_table_content(parent, None, story)
    shown = " ".join(map(str, (cell for row in tables(alone)[0].rows for cell in row.cells)))
    assert not [word for word in ("engineering judgement", "vapour") if word in shown]
    assert not any("\n" in str(row.cells[1]) for row in tables(alone)[0].rows)
    assert sum(isinstance(block, Heading) for block in alone.blocks) >= 1


def test_both_are_papers_and_equal_ones_have_equal_bytes(workbench: Workbench) -> None:
    from io import BytesIO

    from pypdf import PdfReader

    from spoutline.documents.pdf.render import pdf_bytes

    story = workbench.story(Display(UnitSystem.US), Language.ENGLISH)
    rules = workbench.jurisdictions().pdf("us_general", story)
    lists = pdf_bytes(paper(story, LIST))
    assert lists == pdf_bytes(paper(story, LIST))
    for content, wanted in ((lists, "Depot & Sons <East>"), (rules, "trained and licensed installers")):
        read = "".join(page.extract_text() for page in PdfReader(BytesIO(content)).pages)
        assert wanted in " ".join(read.split())
