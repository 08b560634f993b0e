"""What changed between two revisions of a quotation."""

from __future__ import annotations

from collections.abc import Iterator
from enum import StrEnum

from pydantic import BaseModel

from spoutline.frozen import frozen
from spoutline.model.part_ref import PartRef, told_apart
from spoutline.model.quotation import Quotation
from spoutline.model.quoted_option import QuotedLine, QuotedOption
from spoutline.model.survey import Survey


class Changed(StrEnum):
    """What kind of thing differs."""

    OPTION_ADDED = "option_added"
    OPTION_DROPPED = "option_dropped"
    PART_ADDED = "part_added"
    PART_DROPPED = "part_dropped"
    QUANTITY = "quantity"
    UNIT_PRICE = "unit_price"
    TOTAL = "total"
    POSITION_SET = "position_set"
    TERMS = "terms"
    SURVEY = "survey"
    SITE = "site"
    POSITION = "position"
    POSITION_ADDED = "position_added"
    POSITION_DROPPED = "position_dropped"
    CATALOGUE = "catalogue"
    PRICE_LIST = "price_list"
    RULES = "rules"


@frozen(kw_only=True)
class RevisionChange:
    """One difference; ``before`` and ``after`` as text, empty where there was or is nothing.

    ``subject`` names what differs: a part number, the label of a position, a field by its path, an edition.
    ``position`` is the label of the position whose field differs, empty for a field of anything else.
    """

    changed: Changed
    option: str
    subject: str
    before: str
    after: str
    position: str = ""


def revision_changes(before: Quotation, after: Quotation) -> tuple[RevisionChange, ...]:
    """Return every difference of content between two revisions, sources first, then option by option."""
    return (
        *_sources(before, after),
        *_survey(before.pins.survey, after.pins.survey),
        *_price_lists(before, after),
        *_fields(Changed.TERMS, before.terms, after.terms),
        *_options(before, after),
    )


def _sources(before: Quotation, after: Quotation) -> Iterator[RevisionChange]:
    for changed, subject, old, new in (
        (Changed.SURVEY, "fingerprint", before.pins.survey_fingerprint, after.pins.survey_fingerprint),
        (Changed.CATALOGUE, "edition", before.pins.catalogue_edition, after.pins.catalogue_edition),
        (Changed.RULES, "edition", before.pins.rules_edition, after.pins.rules_edition),
        (Changed.RULES, "jurisdiction", before.pins.jurisdiction_id, after.pins.jurisdiction_id),
    ):
        if old != new:
            yield RevisionChange(changed=changed, option="", subject=subject, before=old, after=new)


def _survey(before: Survey, after: Survey) -> Iterator[RevisionChange]:
    """Return what was surveyed otherwise, position by position; a renamed position is dropped and added."""
    yield from _fields(Changed.SITE, before.site, after.site)
    old = {one.label: one for one in before.positions}
    new = {one.label: one for one in after.positions}
    for label in dict.fromkeys((*old, *new)):
        if label in old and label in new:
            yield from _fields(Changed.POSITION, old[label], new[label], position=label)
        else:
            changed = Changed.POSITION_DROPPED if label in old else Changed.POSITION_ADDED
            yield RevisionChange(changed=changed, option="", subject=label, before="", after="")


def _price_lists(before: Quotation, after: Quotation) -> Iterator[RevisionChange]:
    """Return the makers whose prices come from another list."""
    old, new = _lists_by_maker(before), _lists_by_maker(after)
    for maker in sorted(old.keys() | new.keys()):
        was, now = old.get(maker, ""), new.get(maker, "")
        if was != now:
            yield RevisionChange(changed=Changed.PRICE_LIST, option="", subject=maker, before=was, after=now)


def _lists_by_maker(quotation: Quotation) -> dict[str, str]:
    found: dict[str, set[str]] = {}
    for price in quotation.pins.prices:
        found.setdefault(price.maker, set()).add(price.list_id)
    return {maker: ", ".join(sorted(ids)) for maker, ids in found.items()}


def _fields(changed: Changed, before: BaseModel, after: BaseModel, *, position: str = "") -> Iterator[RevisionChange]:
    """Return the fields, by their paths, in which two documents differ."""
    old, new = _flat(before), _flat(after)
    for field in sorted(old.keys() | new.keys()):
        was, now = old.get(field, ""), new.get(field, "")
        if was != now:
            yield RevisionChange(changed=changed, option="", subject=field, before=was, after=now, position=position)


def _flat(value: object, path: str = "") -> dict[str, str]:
    """Return every leaf of a document by its path."""
    if isinstance(value, BaseModel):
        pairs = [(f"{path}.{name}" if path else name, getattr(value, name)) for name in type(value).model_fields]
    elif isinstance(value, tuple):
        pairs = [(f"{path}[{number}]", item) for number, item in enumerate(value)]
    else:
        return {} if value is None else {path: str(value)}
    found: dict[str, str] = {}
    for name, item in pairs:
        found.update(_flat(item, name))
    return found


def _options(before: Quotation, after: Quotation) -> Iterator[RevisionChange]:
    old = {option.title: option for option in before.options}
    new = {option.title: option for option in after.options}
    for title, option in old.items():
        if title not in new:
            yield RevisionChange(
                changed=Changed.OPTION_DROPPED, option=title, subject=title, before=f"{option.total:f}", after=""
            )
    for title, option in new.items():
        if title in old:
            yield from _option(old[title], option)
        else:
            yield RevisionChange(
                changed=Changed.OPTION_ADDED, option=title, subject=title, before="", after=f"{option.total:f}"
            )


def _option(before: QuotedOption, after: QuotedOption) -> Iterator[RevisionChange]:
    old = {line.part: line for line in before.lines}
    new = {line.part: line for line in after.lines}
    parts = sorted(old.keys() | new.keys())
    for part, shown in zip(parts, told_apart(parts), strict=True):
        yield from _line(after.title, shown, old.get(part), new.get(part))
    sets = {position.label: position.parts for position in before.positions}
    now = {position.label: position.parts for position in after.positions}
    for label in dict.fromkeys((*sets, *now)):
        was, became = _set_texts(sets.get(label, ()), now.get(label, ()))
        if was != became:
            yield RevisionChange(
                changed=Changed.POSITION_SET,
                option=after.title,
                subject=label,
                before=was,
                after=became,
            )
    if before.total != after.total:
        yield RevisionChange(
            changed=Changed.TOTAL,
            option=after.title,
            subject=after.title,
            before=f"{before.total:f}",
            after=f"{after.total:f}",
        )


def _set_texts(before: tuple[PartRef, ...], after: tuple[PartRef, ...]) -> tuple[str, str]:
    """Return both sets in words; a quotation of an earlier program names no makers, and then none are compared."""
    if not all(part.maker for part in (*before, *after)):
        before, after = (tuple(PartRef(part.number) for part in parts) for parts in (before, after))
    shown = told_apart((*before, *after))
    return " ".join(shown[: len(before)]), " ".join(shown[len(before) :])


def _line(option: str, number: str, old: QuotedLine | None, new: QuotedLine | None) -> Iterator[RevisionChange]:
    if old is None and new is not None:
        yield RevisionChange(
            changed=Changed.PART_ADDED, option=option, subject=number, before="", after=str(new.ordered)
        )
    elif new is None and old is not None:
        yield RevisionChange(
            changed=Changed.PART_DROPPED, option=option, subject=number, before=str(old.ordered), after=""
        )
    elif old is not None and new is not None:
        for changed, was, now in (
            (Changed.QUANTITY, str(old.ordered), str(new.ordered)),
            (Changed.UNIT_PRICE, _price(old), _price(new)),
        ):
            if was != now:
                yield RevisionChange(changed=changed, option=option, subject=number, before=was, after=now)


def _price(line: QuotedLine) -> str:
    return "" if line.unit_price is None else f"{line.unit_price:f}"
