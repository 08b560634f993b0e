"""The terms in hand: a value with its source, and the prices for which somebody answered since it was read."""

from __future__ import annotations

from contextlib import suppress
from dataclasses import replace
from datetime import date
from decimal import Decimal
from pathlib import Path

from pydantic import ValidationError

from spoutline.book.quotation_records import StoredQuotation
from spoutline.book.survey_faults import problems_of
from spoutline.bootstrap.quotations import QuotationService
from spoutline.frozen import frozen
from spoutline.gui.wording import tr
from spoutline.model.customer import Customer, with_customer
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.part_ref import PartRef
from spoutline.model.quotation import Quotation
from spoutline.model.quotation_status import QuotationStatus
from spoutline.model.quotation_terms import PriceOverride, Terms
from spoutline.units.decimals import exact_decimal


@frozen
class PriceAnswer:
    """What a person said about the price of a part since the terms were read; None takes an earlier word back."""

    part: PartRef
    override: PriceOverride | None


@frozen
class Picture:
    """A letterhead's picture that a quotation carries: the name in its terms, the bytes in base 64."""

    name: str
    content: str


@frozen(kw_only=True)
class TermsInHand:
    """Terms on which the next quotation is made.

    ``base`` is None for a file that could not be read. With a ``file`` the base is read anew before it is quoted on;
    ``answers`` stand over what is read. ``folder`` is where the letterhead's picture lies, unless ``picture`` carries
    it. ``title`` says in words whose terms they are.

    ``chosen_for`` is the survey of the book for which a person chose the customer of the base; other surveys are quoted
    to the customer that their site has in the book, which is ``recipient``: None where it has none.
    """

    title: str
    base: Terms | None
    file: Path | None = None
    folder: Path | None = None
    picture: Picture | None = None
    answers: tuple[PriceAnswer, ...] = ()
    chosen_for: int | None = None
    recipient: Customer | None = None

    @property
    def terms(self) -> Terms | None:
        """The terms with the answers, to the site's customer where their prices can be made for it."""
        if self.base is None:
            return None
        overrides = self.base.overrides
        for answer in self.answers:
            overrides = _answered(overrides, answer)
        terms = self.base.model_copy(update={"overrides": overrides}) if self.answers else self.base
        if self.recipient is None:
            return terms
        with suppress(InputFault):  # told when they are quoted on, see ``as_read``
            return with_customer(terms, self.recipient)
        return terms

    def to_site(self, survey_id: int, customer: Customer | None) -> TermsInHand:
        """Return the terms for a survey whose site has this customer in the book, None for none of it."""
        return replace(self, recipient=None if self.chosen_for == survey_id else customer)

    @property
    def overrides(self) -> tuple[PriceOverride, ...]:
        """The prices in force for which somebody answers."""
        terms = self.terms
        return terms.overrides if terms is not None else ()

    def answered(self, part: PartRef, override: PriceOverride | None) -> TermsInHand:
        """Return the terms with one more answer; it takes the place of an earlier one about the same part."""
        others = tuple(one for one in self.answers if one.part != part)
        return replace(self, answers=(*others, PriceAnswer(part, override)))

    def as_read(self, service: QuotationService) -> TermsInHand:
        """Return the terms as their file says them now.

        Raise ``InputFault`` with every fault of the file, or where its prices cannot be made for the site's customer.
        """
        read = self if self.file is None else replace(self, base=service.terms().read_terms(self.file))
        if read.base is not None and read.recipient is not None:
            with_customer(read.base, read.recipient)
        return read

    def logo(self, service: QuotationService) -> str:
        """Return the letterhead's picture in base 64. Raise ``InputFault`` where it cannot be read."""
        terms = self.terms
        if terms is None:
            return ""
        if self.picture is not None and self.picture.name == terms.seller.logo:
            return self.picture.content
        return service.terms().logo(terms, self.folder)


def terms_of_file(path: Path, terms: Terms | None = None) -> TermsInHand:
    """Return the terms of a file; without ``terms`` they are read when they are quoted on."""
    return TermsInHand(title=path.name, base=terms, file=path, folder=path.parent)


def terms_of_quotation(quotation: Quotation, revision: int) -> TermsInHand:
    """Return the terms that a quotation carries in itself, its picture with them."""
    terms = quotation.terms
    return TermsInHand(
        title=tr("those of {number} r{revision}").format(number=terms.heading.number, revision=revision),
        base=terms,
        picture=Picture(terms.seller.logo, quotation.logo),
        chosen_for=quotation.pins.survey_id,
    )


def terms_for_revision(stored: StoredQuotation, today: date) -> TermsInHand:
    """Return the terms of a quotation to quote it again: dated today where it is older, so that the offer can stand.

    The day decides which price lists hold, and until when the offer stands.
    """
    found = terms_of_quotation(stored.quotation, stored.revision)
    heading = stored.quotation.terms.heading
    over = stored.quotation.valid_to < today
    if heading.dated >= today or (stored.status is QuotationStatus.DRAFT and not over):
        return found
    return replace(found, base=_dated(stored.quotation.terms, today))


def dated_today(found: TermsInHand, today: date) -> TermsInHand:
    """Return the terms with the day of today where theirs is an earlier one."""
    if found.base is None or found.base.heading.dated >= today:
        return found
    return replace(found, base=_dated(found.base, today))


def _answered(overrides: tuple[PriceOverride, ...], answer: PriceAnswer) -> tuple[PriceOverride, ...]:
    """Return the prices by name with an answer in the place of the one about the same part."""
    new = () if answer.override is None else (answer.override,)
    place = next((at for at, one in enumerate(overrides) if one.part.names(answer.part)), len(overrides))
    return (*overrides[:place], *new, *overrides[place + 1 :])


def price_answer(part: PartRef, price: str | None, by: str, reason: str) -> PriceOverride:
    """Return what a person says about the price of a part.

    Parameters
    ----------
    part
        The part.
    price
        The price of one piece as typed, in the currency of the quotation; None lets the price follow.
    by, reason
        Who answers for it, and why.

    Raises
    ------
    InputFault
        Naming what is missing or no price.
    """
    problems: list[InputProblem] = []
    amount: Decimal | None = None
    if price is not None:
        try:
            amount = exact_decimal(price, field=tr("price"))
        except InputFault as fault:
            problems.extend(fault.problems)
    if not by.strip():
        problems.append(InputProblem("", tr("your name"), tr("nothing"), tr("somebody has to answer for a price")))
    if not reason.strip():
        problems.append(InputProblem("", tr("reason"), tr("nothing"), tr("say why: it stands on the paper")))
    if problems:
        raise InputFault(tuple(problems))
    try:
        return PriceOverride(part=part, unit_price=amount, by=by, reason=reason)
    except ValidationError as fault:
        found = problems_of(fault, PriceOverride, "")
        raise InputFault(tuple(replace(one, field=one.field.replace("_", " ")) for one in found)) from fault


def _dated(terms: Terms, today: date) -> Terms:
    return terms.model_copy(update={"heading": terms.heading.model_copy(update={"dated": today})})
