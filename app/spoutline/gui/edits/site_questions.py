"""The questions about the site as a whole."""

from __future__ import annotations

from spoutline.gui.edits.question import Entry, Measure, Option, Question, Step
from spoutline.model.quantity import Dimension
from spoutline.model.survey import Service


def site_questions(jurisdictions: tuple[Option, ...], currencies: tuple[Option, ...]) -> tuple[Question, ...]:
    """Return the questions about the site; the choices of local rules and currencies come from the stores."""
    return (*_head_questions(), *_rule_questions(jurisdictions), *_climate_questions(), *_money_questions(currencies))


def _head_questions() -> tuple[Question, ...]:
    return (
        Question(
            path=("name",),
            step=Step.SITE,
            group="Site",
            title="&Name of the site",
            help="Head of the bill.",
            source="Free text",
            entry=Entry.TEXT,
        ),
        Question(
            path=("address",),
            step=Step.SITE,
            group="Site",
            title="&Address",
            help="Printed on the bill.",
            source="Free text",
            entry=Entry.LONG_TEXT,
        ),
        Question(
            path=("customer",),
            step=Step.SITE,
            group="Site",
            title="C&ustomer",
            help="Whom the bill is for. New quotations go to the customer of this name in the book.",
            source="Free text",
            entry=Entry.TEXT,
        ),
    )


def _rule_questions(jurisdictions: tuple[Option, ...]) -> tuple[Question, ...]:
    return (
        Question(
            path=("jurisdiction",),
            step=Step.SITE,
            group="Rules",
            title="&Local rules",
            help="Which limits apply. The adopted code and the authority having jurisdiction decide; ask them where a "
            "row is unconfirmed.",
            source="Each row names its own source: see Local rules",
            entry=Entry.CHOICE,
            options=jurisdictions,
        ),
        Question(
            path=("service",),
            step=Step.SITE,
            group="Rules",
            title="&Who fuels?",
            help="Decides automatic shut-off and the hold-open latch.",
            source="NFPA 30A as reproduced by state agencies",
            entry=Entry.CHOICE,
            options=(
                Option(Service.SELF, "Customers", "Staff on site"),
                Option(Service.ATTENDED, "An attendant", ""),
                Option(Service.UNATTENDED, "Customers, nobody on site", ""),
            ),
        ),
        Question(
            path=("fenced",),
            step=Step.SITE,
            group="Rules",
            title="Is it a &fenced above-ground site, closed to the public?",
            help="Some codes allow a longer hose there.",
            source="State code texts; local code",
            entry=Entry.YES_NO,
        ),
    )


def _climate_questions() -> tuple[Question, ...]:
    return (
        Question(
            path=("climate", "low_c"),
            step=Step.SITE,
            group="Climate",
            title="Col&dest",
            help="Lowest air temperature the hardware meets.",
            source="Weather records of the place",
            entry=Entry.QUANTITY,
            measure=Measure(Dimension.TEMPERATURE),
        ),
        Question(
            path=("climate", "high_c"),
            step=Step.SITE,
            group="Climate",
            title="Ho&ttest",
            help="Highest temperature, sun on the hose included.",
            source="Weather records of the place",
            entry=Entry.QUANTITY,
            measure=Measure(Dimension.TEMPERATURE),
        ),
    )


def _money_questions(currencies: tuple[Option, ...]) -> tuple[Question, ...]:
    return (
        Question(
            path=("currency",),
            step=Step.SITE,
            group="Money",
            title="Cu&rrency",
            help="List prices of the catalog in this currency.",
            source="ISO 4217",
            entry=Entry.CHOICE,
            options=currencies,
        ),
        Question(
            path=("stock_price",),
            step=Step.SITE,
            group="Money",
            title="Price of one &more part number",
            help="What stocking another part number is worth, in the currency of the site. Above 0 the sets of the "
            "whole station are chosen together, so that like positions get like parts.",
            source="Whoever orders and stocks the parts",
            entry=Entry.TEXT,
        ),
    )
