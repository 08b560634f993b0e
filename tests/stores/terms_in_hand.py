"""Terms as tests have them: out of a text instead of a file, and what other quotations of the firm share of them."""

from __future__ import annotations

from spoutline.book import terms_text
from spoutline.model.quotation_terms import Terms
from spoutline.model.usual_terms import UsualHeading, UsualTerms


def terms_from_toml(text: str, place: str) -> Terms:
    """Return the terms in a TOML text that came from ``place``; raise ``InputFault`` with every fault."""
    table = terms_text._table(text, place)
    terms_text._taken_complete(table, place)
    return terms_text.checked(table, Terms, place)


def shared_of(terms: Terms) -> UsualTerms:
    """Return the part of a quotation's terms that other quotations of the same firm share.

    Left out are the customer, the number, title, day and scope of the heading, the options and the overridden prices.
    """
    heading = UsualHeading(
        valid_days=terms.heading.valid_days,
        prepared_by=terms.heading.prepared_by or None,
        exclusions=terms.heading.exclusions or None,
        conditions=terms.heading.conditions or None,
    )
    return UsualTerms(
        seller=terms.seller,
        heading=heading,
        currency=terms.currency,
        rounding=terms.rounding,
        exchange=terms.exchange,
        buying=terms.buying,
        selling=terms.selling,
        freight=terms.freight,
        labour=terms.labour,
        taxes=terms.taxes,
        spares=terms.spares,
        consumables=terms.consumables,
        stock_price=terms.stock_price,
        drive_offs=terms.drive_offs,
        service_lives=terms.service_lives,
        yearly=terms.yearly,
    )
