"""What a quotation was made from, written out word for word."""

from __future__ import annotations

import json
from collections.abc import Iterable, Sequence
from dataclasses import asdict
from enum import Enum

from spoutline.model.limit import RuleTables
from spoutline.model.part import Part
from spoutline.model.plan import Provenance
from spoutline.model.pricing import PriceList
from spoutline.model.quotation_pins import PinnedLimit, PinnedPart, PinnedPrice, Pins
from spoutline.model.quoted_option import QuotedOption
from spoutline.model.survey import Survey


def part_text(part: Part) -> str:
    """Return everything that the catalogue states about a part as JSON, the same text for the same part."""
    return json.dumps(asdict(part), default=_plain, sort_keys=True, ensure_ascii=False)


def pins_of(
    survey: Survey,
    *,
    options: Sequence[QuotedOption],
    parts: Sequence[Part],
    lists: Sequence[PriceList],
    tables: RuleTables,
    provenance: Provenance,
    origin: tuple[int, int] | None,
) -> Pins:
    """Return the pins of a quotation; ``origin`` is id and revision of the survey in the book, None from a file."""
    survey_id, revision = origin or (None, None)
    return Pins(
        survey=survey,
        survey_id=survey_id,
        survey_revision=revision,
        survey_fingerprint=provenance.survey_fingerprint,
        catalogue_edition=provenance.catalogue_edition,
        catalogue=provenance.catalogue,
        edition=provenance.edition,
        rules_edition=provenance.rules_edition,
        jurisdiction_id=provenance.jurisdiction_id,
        jurisdiction_title=tables.jurisdiction.title,
        program_version=provenance.program_version,
        parts=tuple(PinnedPart(number=part.number, maker=part.maker, text=part_text(part)) for part in parts),
        prices=tuple(_prices(options, lists)),
        limits=tuple(_limits(tables)),
    )


def _plain(value: object) -> object:
    if isinstance(value, frozenset | set):
        return sorted(str(item.value) if isinstance(item, Enum) else str(item) for item in value)
    raise TypeError(f"{type(value).__name__} has no place in a part")


def _prices(options: Sequence[QuotedOption], lists: Sequence[PriceList]) -> Iterable[PinnedPrice]:
    by_id = {one.id: one for one in lists}
    used = sorted({(line.list_id, line.part_number) for option in options for line in option.lines if line.list_id})
    for list_id, number in used:
        price_list = by_id[list_id]
        row = price_list.by_number[number]
        yield PinnedPrice(
            list_id=list_id,
            maker=price_list.maker,
            currency=price_list.currency,
            valid_from=price_list.valid_from,
            valid_to=price_list.valid_to,
            part_number=number,
            discount_group=row.discount_group,
            breaks=tuple((step.from_quantity, step.unit_price) for step in row.breaks),
        )


def _limits(tables: RuleTables) -> Iterable[PinnedLimit]:
    for limit in tables.jurisdiction.limits:
        yield PinnedLimit(
            id=limit.id.value,
            value=json.dumps(limit.value),
            printed=limit.printed,
            printed_unit=limit.printed_unit,
            source=limit.source,
            clause=limit.clause,
            edition=limit.edition,
            status=limit.status,
        )
