"""A whole quotation, and a pick list, as content trees."""

from __future__ import annotations

import base64
import json
from collections import defaultdict
from collections.abc import Iterator

from spoutline.documents.content.bill_frame import paper_for
from spoutline.documents.content.blocks import (
    Alignment,
    Block,
    Bullets,
    Column,
    Document,
    Emphasis,
    Heading,
    KeyValues,
    Letterhead,
    Paragraph,
    Row,
    SignatureLines,
    Table,
    Together,
)
from spoutline.documents.quotation.comparison import comparison_blocks
from spoutline.documents.quotation.coverage import coverage_rows
from spoutline.documents.quotation.delivery import delivery_rows
from spoutline.documents.quotation.option_sections import gap_text, option_blocks, position_blocks
from spoutline.documents.quotation.places import sets_of_option
from spoutline.explain.phrases.paper_words import PaperWord
from spoutline.explain.phrases.quotation_words import QuotationWord as Word
from spoutline.explain.plan.story import Story
from spoutline.explain.plan.texts import Named
from spoutline.model.catalogue_edition import DEMONSTRATION
from spoutline.model.limit import LimitId
from spoutline.model.liquid import LiquidFamily
from spoutline.model.quotation import Quotation
from spoutline.model.quotation_pins import Pins
from spoutline.model.quoted_option import QuotedLine
from spoutline.model.requirement import RequirementId
from spoutline.rules.declared.registry import RULES, RuleId

_FINGERPRINT_SHOWN = 12


def quotation_content(quotation: Quotation, revision: int, story: Story) -> Document:
    """Return the quotation as a document; the same document for the same arguments."""
    blocks: list[Block] = [_letterhead(quotation)]
    blocks.append(Heading(f"{story.word(Word.QUOTATION)} {quotation.terms.heading.number}", 1))
    if quotation.open_lines:
        blocks.extend(_draft(quotation, story))
    only = quotation.options[0] if len(quotation.options) == 1 else None
    delivery = delivery_rows(only, quotation, story) if only is not None else ()
    blocks.append(KeyValues((*_head(quotation, revision, story), *coverage_rows(quotation, story), *delivery)))
    if quotation.terms.heading.scope.strip():
        blocks += [Heading(story.word(Word.SCOPE), 2), Paragraph(quotation.terms.heading.scope.strip())]
    blocks.extend(comparison_blocks(quotation, story))
    for number, option in enumerate(quotation.options, start=1):
        blocks.extend(option_blocks(number, option, quotation, story))
    for number, option in enumerate(quotation.options, start=1):
        blocks.extend(position_blocks(number, option, quotation, story))
    blocks.extend(_closing(quotation, story))
    return _document(quotation, revision, story, tuple(blocks), story.word(Word.QUOTATION))


def pick_list_content(quotation: Quotation, option: int, revision: int, story: Story) -> Document:
    """Return what to take from which maker for one option (counted from 0), without prices."""
    chosen = quotation.options[option]
    by_maker: dict[str, list[QuotedLine]] = defaultdict(list)
    for line in chosen.lines:
        by_maker[line.maker].append(line)
    columns = (
        Column(story.word(Word.PICKED), 0.6),
        Column(story.word(Word.PART_NUMBER), 1.2),
        Column(story.word(Word.PART_NAME), 4.0),
        Column(story.word(Word.ORDERED), 0.8, Alignment.RIGHT),
        Column(story.word(Word.LEAD_DAYS), 1.0, Alignment.RIGHT),
    )
    blocks: list[Block] = [Heading(f"{story.word(Word.PICK_LIST)}{story.writing.colon} {chosen.title}", 1)]
    sets = Named(story.phrases.text["sets_title"], sets_of_option(quotation, option, revision, story))
    delivery = delivery_rows(chosen, quotation, story)
    blocks.append(KeyValues((*_head(quotation, revision, story), sets, *delivery)))
    for maker in sorted(by_maker):
        blocks.append(Heading(maker, 2))
        named = ((line, line.name_in(story.phrases.language)) for line in by_maker[maker])
        rows = (Row(("☐", line.part_number, name, str(line.ordered), str(line.lead_time_days))) for line, name in named)
        blocks.append(Table(columns, tuple(rows)))
    return _document(quotation, revision, story, tuple(blocks), story.word(Word.PICK_LIST))


def _document(quotation: Quotation, revision: int, story: Story, blocks: tuple[Block, ...], kind: str) -> Document:
    heading, pins = quotation.terms.heading, quotation.pins
    mark = f"{kind} {heading.number}, {story.word(Word.REVISION)} {revision}"
    return Document(
        title=f"{mark}{story.writing.colon} {pins.survey.site.name}",
        subject=story.word(Word.SUBJECT),
        author=quotation.terms.seller.name,
        language=story.phrases.language,
        paper=paper_for(pins.jurisdiction_id),
        running_head=f"{quotation.terms.seller.name} · {mark}",
        running_foot=f"{story.day(heading.dated)} · {pins.survey.site.name}",
        page_phrase=story.word(PaperWord.PAGE_OF),
        blocks=blocks,
        notice=story.phrases.text["demonstration_notice"] if pins.catalogue == DEMONSTRATION else "",
    )


def _letterhead(quotation: Quotation) -> Letterhead:
    seller = quotation.terms.seller
    lines = [*seller.address.strip().splitlines(), seller.telephone, seller.email, seller.registration]
    picture = base64.b64decode(quotation.logo) if quotation.logo else b""
    return Letterhead(seller.name, tuple(line for line in lines if line.strip()), picture)


def _draft(quotation: Quotation, story: Story) -> Iterator[Block]:
    rows = sorted({gap_text(line, story) for _, line in quotation.open_lines})
    columns = (Column(story.word(Word.DRAFT), 1.0),)
    yield Table(columns, tuple(Row((text,), Emphasis.FAULT) for text in rows))


def _head(quotation: Quotation, revision: int, story: Story) -> Iterator[Named]:
    terms, site = quotation.terms, quotation.pins.survey.site
    customer = terms.customer
    place = "\n".join(text for text in (customer.name, customer.address.strip()) if text)
    rows = (
        (Word.SUBJECT_LINE, terms.heading.title),
        (Word.CUSTOMER, place),
        (Word.CONTACT, customer.contact),
        (Word.TELEPHONE, customer.telephone),
        (Word.EMAIL, customer.email),
        (Word.REGISTRATION, customer.registration),
        (Word.DELIVERY_ADDRESS, customer.delivery_address.strip()),
        (Word.PAYMENT_TERMS, customer.payment_terms),
        (Word.SITE, "\n".join(text for text in (site.name, site.address.strip()) if text)),
        (Word.NUMBER, f"{terms.heading.number}, {story.word(Word.REVISION)} {revision}"),
        (Word.DATED, story.day(terms.heading.dated)),
        (Word.VALID_TO, story.day(quotation.valid_to)),
        (Word.PREPARED_BY, terms.heading.prepared_by),
        (Word.CURRENCY, terms.currency),
    )
    return (Named(story.word(word), text) for word, text in rows if text)


def _closing(quotation: Quotation, story: Story) -> Iterator[Block]:
    heading = quotation.terms.heading
    missing = [
        f"{story.word(Word.NOT_OFFERED)} {position.label} ({option.title}): {story.word(position.status)}"
        for option in quotation.options
        for position in option.without_set
    ]
    if heading.exclusions or missing:
        yield Heading(story.word(Word.EXCLUSIONS), 2)
        yield Bullets((*missing, *heading.exclusions))
    if heading.conditions.strip():
        yield Heading(story.word(Word.CONDITIONS), 2)
        yield Paragraph(heading.conditions.strip())
    yield Paragraph(story.phrases.text["advice"])
    asked = tuple(_asked_here(quotation.pins, story))
    if asked:
        yield Heading(story.word(Word.ASKED_HERE), 2)
        yield KeyValues(asked)
    made_from = (Heading(story.word(Word.MADE_FROM), 2), KeyValues(tuple(_made_from(quotation, story))))
    # what is signed never stands alone on a page: whoever signs sees there what the quotation was made from
    yield Together((*made_from, *_acceptance(quotation, story)))


def _acceptance(quotation: Quotation, story: Story) -> Iterator[Block]:
    yield Heading(story.word(Word.ACCEPTANCE), 2)
    yield Paragraph(story.word(Word.ACCEPTANCE_TEXT))
    titles = " / ".join(f"☐ {option.title}" for option in quotation.options)
    option_line = (
        (f"{story.word(Word.OPTION_TAKEN)}{story.writing.colon} {titles}",) if len(quotation.options) > 1 else ()
    )
    signed = (story.word(Word.NAME_SIGNED), story.word(Word.SIGNATURE), story.word(Word.DATE_SIGNED))
    for line in option_line:
        yield Paragraph(line)
    yield SignatureLines(signed)


def _asked_here(pins: Pins, story: Story) -> Iterator[Named]:
    """Return what the jurisdiction, an air agency or the survey asks of the sets beyond the usual, and who asks it."""
    gasoline = any(one.liquid.family is LiquidFamily.GASOLINE for one in pins.survey.positions)
    rows = {LimitId.HOSE_LOW_PERMEATION: RequirementId.LOW_PERMEATION}
    rows[LimitId.ENHANCED_CONVENTIONAL] = RequirementId.ENHANCED_CONVENTIONAL
    for limit in pins.limits:
        asked = rows.get(LimitId(limit.id)) if limit.id in set(LimitId) else None
        if asked is not None and json.loads(limit.value) is True and gasoline:
            yield Named(story.title(asked), f"{limit.source}, {limit.clause} ({limit.edition})")
    wanted = [one.label for one in pins.survey.positions if one.reconnectable_wanted]
    if wanted:
        source = RULES[RuleId.ASKS_RECONNECTABLE].source
        yield Named(story.title(RequirementId.RECONNECTABLE), f"{', '.join(wanted)}{story.writing.colon} {source}")


def _made_from(quotation: Quotation, story: Story) -> Iterator[Named]:
    pins = quotation.pins
    lists = {price.list_id: f"{price.list_id} ({price.maker}, {price.currency})" for price in pins.prices}
    yield Named(story.word(Word.CATALOGUE), story.edition(pins.catalogue_edition))
    yield Named(story.word(Word.JURISDICTION), story.phrases.tell(pins.jurisdiction_title))
    yield Named(story.word(Word.RULES), pins.rules_edition)
    yield Named(story.word(Word.FINGERPRINT), pins.survey_fingerprint[:_FINGERPRINT_SHOWN])
    if lists:
        yield Named(story.word(Word.PRICE_LISTS), "; ".join(lists[one] for one in sorted(lists)))
