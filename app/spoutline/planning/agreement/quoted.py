"""Agreed sets made of a quotation that the book keeps: those of one of its options, with where they are from."""

from __future__ import annotations

from datetime import datetime

from spoutline.book.quotation_records import StoredQuotation
from spoutline.model.agreed_sets import AgreedSets, AgreementKind, AgreementOrigin, QuotedSource
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.worded import Worded
from spoutline.planning.agreement.making import sets_of_option


def sets_of_quotation(stored: StoredQuotation, named: str, by: str, reason: str, now: datetime) -> AgreedSets:
    """Return the sets of the option ``named``, by title or by its number from 1, as one entry of a history.

    Without a name it is the only option. Raise ``InputFault`` with the titles.
    """
    quotation = stored.quotation
    titles = [one.title for one in quotation.options]
    place = next((place for place, title in enumerate(titles, 1) if named in (title, str(place))), None)
    if place is None and not named and len(titles) == 1:
        place = 1
    if place is None:
        wanted = Worded("name the option by title or number: {titles}", titles=", ".join(titles))
        raise InputFault((InputProblem("", "option", named or "nothing", wanted),))
    positions, parts = sets_of_option(quotation.options[place - 1], quotation.pins)
    pins = quotation.pins
    source = QuotedSource(
        id=stored.id,
        number=quotation.terms.heading.number,
        revision=stored.revision,
        option=place,
        title=titles[place - 1],
    )
    return AgreedSets(
        serial=1,
        site=pins.survey.site.name,
        survey_id=pins.survey_id,
        survey_revision=pins.survey_revision,
        survey_fingerprint=pins.survey_fingerprint,
        currency=quotation.terms.currency,
        catalogue_edition=pins.catalogue_edition,
        catalogue=pins.catalogue,
        edition=pins.edition,
        rules_edition=pins.rules_edition,
        agreed_at=now,
        origin=AgreementOrigin(kind=AgreementKind.QUOTATION, by=by, reason=reason, quotation=source),
        positions=positions,
        parts=parts,
    )
