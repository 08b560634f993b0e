"""The entries of the terms form, subject by subject."""

from __future__ import annotations

from collections.abc import Iterable
from enum import StrEnum

from spoutline.gui.edits.question import Option
from spoutline.gui.edits.terms_fields import Known, Subject, TermsColumn, TermsEntry, TermsField, TermsTable
from spoutline.model.charge import Charge, Per
from spoutline.model.part import PartKind
from spoutline.model.quotation_terms import (
    BreakawayWish,
    FreightMethod,
    HoseWish,
    RoundingMode,
    SellingMethod,
    Singles,
    TaxRounding,
)
from spoutline.model.yearly_cost import LiquidUnit


def _options(members: Iterable[StrEnum]) -> tuple[Option, ...]:
    return tuple(
        Option(member.value, _AMERICAN.get(member.value, member.value.replace("_", " "))) for member in members
    )


# ids keep their spelling; what a person reads is what stands on paper
_AMERICAN = {"labour": "labor", "goods": "materials", "adaptor": "adapter", "vapour_port_cap": "vapor port cap"}
_CHARGES = _options(Charge)
_KINDS = _options(PartKind)
_PERCENT = "Percent, 0 to 100."
# columns that several tables have
_KIND_COLUMN = TermsColumn(
    name="kind", title="Kind of part", help="Each kind once.", share=3, entry=TermsEntry.CHOICE, options=_KINDS
)
_GROUP_COLUMN = TermsColumn(
    name="group",
    title="Discount group",
    help="As in the price list.",
    share=4,
    known=Known.GROUPS,
    empty_words="every group",
)
_PERCENT_COLUMN = TermsColumn(name="percent", title="Percent", help=_PERCENT, share=2, entry=TermsEntry.NUMBER)


def _party(owner: str, who: str) -> tuple[TermsField, ...]:
    return (
        TermsField(path=f"{owner}.name", title="&Name", help=f"Firm or person who {who}."),
        TermsField(path=f"{owner}.contact", title="Con&tact", help="Who answers questions."),
        TermsField(
            path=f"{owner}.address", title="A&ddress", help="Line by line, as printed.", entry=TermsEntry.LONG_TEXT,
            is_wide=True,
        ),
        TermsField(path=f"{owner}.telephone", title="Telep&hone", help="Printed as written."),
        TermsField(path=f"{owner}.email", title="&E-mail", help="Printed as written."),
        TermsField(
            path=f"{owner}.registration", title="&Registration", help="Registration or tax number, printed as written."
        ),
    )  # fmt: skip


LETTERHEAD = Subject(
    name="seller",
    title="Letterhead",
    lead="Who quotes. It stands at the top of the quotation.",
    parts=(
        *_party("seller", "quotes"),
        TermsField(
            path="seller.logo", title="&Picture", help="PNG or JPEG for the letterhead.", entry=TermsEntry.PICTURE,
            is_wide=True,
        ),
    ),
)  # fmt: skip

CUSTOMER = Subject(
    name="customer",
    title="Customer",
    lead="Who is quoted to.",
    parts=(
        *_party("customer", "gets the quotation"),
        TermsField(
            path="customer.delivery_address",
            title="De&livery address",
            help="Where it goes, where that is elsewhere.",
            entry=TermsEntry.LONG_TEXT,
            is_wide=True,
        ),
        TermsField(path="customer.payment_terms", title="Terms of pa&yment", help="Printed as written."),
    ),
)

HEADING = Subject(
    name="heading",
    title="Number and day",
    lead="What tells this quotation from others, and how long it stands.",
    parts=(
        TermsField(
            path="heading.number", title="&Number",
            help="Your own quotation number, or a pattern for the book: {year}-{serial:04}.",
        ),
        TermsField(path="heading.title", title="&Title", help="What the quotation is for."),
        TermsField(
            path="heading.dated", title="&Day", entry=TermsEntry.DAY,
            help="Year-month-day. Prices that are valid on this day are used.",
        ),
        TermsField(
            path="heading.valid_days", title="&Valid for", entry=TermsEntry.COUNT,
            help="Days for which the offer stands, 1 to 730.",
        ),
        TermsField(path="heading.prepared_by", title="&Prepared by", help="Name printed on the quotation."),
    ),
)  # fmt: skip

CONDITIONS = Subject(
    name="conditions",
    title="Scope and conditions",
    lead="What is offered, what is not, and on which terms of sale.",
    parts=(
        TermsField(
            path="heading.scope", title="Sc&ope", entry=TermsEntry.LONG_TEXT, is_wide=True,
            help="What is supplied and done.",
        ),
        TermsTable(
            path="heading.exclusions", title="Not included", row="exclusion",
            help="One sentence in each row.",
            columns=(TermsColumn(name="", title="What is not included", help="One sentence.", share=1),),
        ),
        TermsField(
            path="heading.conditions", title="Ter&ms of sale", entry=TermsEntry.LONG_TEXT, is_wide=True,
            help="Printed in full.",
        ),
    ),
)  # fmt: skip

MONEY = Subject(
    name="money",
    title="Currency and rounding",
    lead="The currency of every amount in the quotation, and how amounts are rounded.",
    parts=(
        TermsField(
            path="currency", title="&Currency", help="Three letters of ISO 4217, such as USD.", known=Known.CURRENCIES
        ),
        TermsField(
            path="rounding.mode", title="&Rounding", help="Which way a rest goes.", entry=TermsEntry.CHOICE,
            options=(
                Option(RoundingMode.HALF_UP, "to the nearest, a half upwards"),
                Option(RoundingMode.HALF_EVEN, "to the nearest, a half to the even digit"),
                Option(RoundingMode.UP, "always upwards"),
                Option(RoundingMode.DOWN, "always downwards"),
            ),
        ),
        TermsField(
            path="rounding.unit_step", title="Step of &unit prices", entry=TermsEntry.NUMBER,
            help="0.05 rounds to the next multiple of five cents.",
        ),
        TermsField(
            path="rounding.total_step", title="Step of the &total", entry=TermsEntry.NUMBER,
            help="Step of the amount payable.",
        ),
        TermsTable(
            path="exchange", title="Exchange rates", row="rate",
            help="For price lists in another currency: one unit of theirs in units of the quotation's.",
            columns=(
                TermsColumn(
                    name="currency", title="Currency", help="Three letters of ISO 4217, such as EUR.", share=2,
                    known=Known.CURRENCIES,
                ),
                TermsColumn(name="rate", title="Rate", help="Above 0.", share=2, entry=TermsEntry.NUMBER),
                TermsColumn(name="dated", title="Day", help="Year-month-day.", share=2, entry=TermsEntry.DAY),
                TermsColumn(name="source", title="Read where", help="Where the rate was read.", share=5),
            ),
        ),
    ),
)  # fmt: skip

BUYING = Subject(
    name="buying",
    title="Buying",
    lead="What makers take off their lists for you: it makes the cost of the materials.",
    parts=(
        TermsTable(
            path="buying", title="Discounts of makers", row="discount",
            help="An empty maker or group means every one; the row that says more counts.",
            columns=(
                TermsColumn(
                    name="maker", title="Maker", help="As in the price list.", share=5, known=Known.MAKERS,
                    empty_words="every maker",
                ),
                _GROUP_COLUMN,
                _PERCENT_COLUMN,
            ),
        ),
    ),
)  # fmt: skip

SELLING = Subject(
    name="selling",
    title="Selling",
    lead="How the customer's prices are made.",
    parts=(
        TermsField(
            path="selling.method", title="W&ay", help="What the percentage is taken from.", entry=TermsEntry.CHOICE,
            options=(
                Option(SellingMethod.LIST_LESS_DISCOUNT, "list price less a discount"),
                Option(SellingMethod.MARK_UP_ON_COST, "cost and a mark-up on it"),
                Option(SellingMethod.MARGIN_ON_PRICE, "cost with a margin on the selling price"),
            ),
        ),
        TermsField(path="selling.percent", title="&Percent", help=_PERCENT, entry=TermsEntry.NUMBER),
        TermsField(
            path="selling.least_margin_percent", title="&Least margin, percent", entry=TermsEntry.NUMBER,
            help="Of the price; a line below it is asked about before the issue. Empty: only below cost.",
        ),
        TermsTable(
            path="selling.exceptions", title="Exceptions", row="exception",
            help="Another percentage for a kind of part or a discount group.",
            columns=(
                TermsColumn(
                    name="kind", title="Kind of part", help="One kind, or every kind.", share=4,
                    entry=TermsEntry.CHOICE, options=(Option("", "every kind"), *_KINDS), empty_words="every kind",
                ),
                _GROUP_COLUMN,
                _PERCENT_COLUMN,
            ),
        ),
    ),
)  # fmt: skip

FREIGHT_AND_TAX = Subject(
    name="freight",
    title="Freight and taxes",
    lead="What is added to materials and labor.",
    parts=(
        TermsField(
            path="freight.method", title="&Freight", help="What it is reckoned from.", entry=TermsEntry.CHOICE,
            options=(
                Option(FreightMethod.FIXED, "a fixed amount"),
                Option(FreightMethod.PERCENT_OF_GOODS, "percent of the materials"),
                Option(FreightMethod.PER_KILOGRAM, "an amount for each kilogram"),
            ),
        ),
        TermsField(
            path="freight.amount", title="&Amount or percent", help="As the way of reckoning asks.",
            entry=TermsEntry.NUMBER,
        ),
        TermsTable(
            path="taxes", title="Taxes", row="tax",
            help="Each tax lies on the amounts ticked.",
            columns=(
                TermsColumn(name="name", title="Tax", help="As printed.", share=5),
                _PERCENT_COLUMN,
                TermsColumn(
                    name="on", title="Lies on", help="Materials, labor, freight: any of them.", share=5,
                    entry=TermsEntry.SEVERAL, options=_CHARGES,
                    initial=";".join(member.value for member in Charge),
                ),
            ),
        ),
        TermsField(
            path="rounding.tax", title="Tax is &rounded", help="Once, or before the lines are added up.",
            entry=TermsEntry.CHOICE,
            options=(
                Option(TaxRounding.WHOLE, "once for the whole quotation"),
                Option(TaxRounding.LINE, "for each line"),
            ),
        ),
    ),
)  # fmt: skip

LABOUR = Subject(
    name="labour",
    title="Labor",
    lead="Tasks with their hours, at one rate.",
    parts=(
        TermsField(
            path="labour.hourly_rate", title="Rate of an &hour", help="In the currency of the quotation.",
            entry=TermsEntry.NUMBER,
        ),
        TermsTable(
            path="labour.tasks", title="Tasks", row="task",
            help="Hours count once for each position, dispenser or site; kinds limit a task to sets that hold one.",
            columns=(
                TermsColumn(name="title", title="Task", help="As printed.", share=9),
                TermsColumn(
                    name="per", title="Once for each", help="Position, dispenser or site.", share=3,
                    entry=TermsEntry.CHOICE, options=_options(Per), initial=Per.POSITION.value,
                ),
                TermsColumn(name="hours", title="Hours", help="0 to 1000.", share=2, entry=TermsEntry.NUMBER),
                TermsColumn(
                    name="kinds", title="Only where the set holds", share=6, entry=TermsEntry.SEVERAL, options=_KINDS,
                    help="One of these kinds of part; empty: at every set.", empty_words="every set",
                ),
            ),
        ),
    ),
)  # fmt: skip

STOCK = Subject(
    name="stock",
    title="Spares and stock",
    lead="What is delivered beside the parts that are installed, and what it is worth to stock few part numbers.",
    parts=(
        TermsTable(
            path="spares", title="Spares", row="spare",
            help="Percent of all that is installed of a kind, rounded up once and spread over the parts of which there "
            "are most.",
            columns=(
                _KIND_COLUMN,
                _PERCENT_COLUMN,
                TermsColumn(
                    name="singles", title="Parts installed once", share=3, entry=TermsEntry.CHOICE,
                    help="Whether a part of which only one is installed has a share in the spares.",
                    options=(
                        Option(Singles.NONE.value, "no spare"), Option(Singles.SHARE.value, "share in the spares"),
                    ), initial=Singles.NONE.value,
                ),
            ),
        ),
        TermsField(
            path="consumables.sealant_joints", title="&Joints of a container of sealant", entry=TermsEntry.COUNT,
            help="How many joints one container seals; empty: one container for each set.",
        ),
        TermsField(
            path="stock_price", title="Worth of one part number &less", entry=TermsEntry.NUMBER,
            help="Sets are chosen together so that parts and this price for each part number cost least; empty: each "
            "position is chosen for itself.",
        ),
    ),
)  # fmt: skip

DRIVE_OFFS = Subject(
    name="drive_offs",
    title="Drive-offs",
    lead="The customer's own expectation, for comparing breakaways. All empty: no comparison.",
    parts=(
        TermsField(
            path="drive_offs.per_position_year", title="&Separations at a position in a year",
            help="An estimate, such as 0.04: one in 25 years.", entry=TermsEntry.NUMBER,
        ),
        TermsField(path="drive_offs.years", title="&Years", help="1 to 30.", entry=TermsEntry.COUNT),
        TermsField(
            path="drive_offs.single_use_hours", title="&Hours with a single-use breakaway",
            help="To put a position back into service.", entry=TermsEntry.NUMBER,
        ),
        TermsField(
            path="drive_offs.reconnectable_hours", title="Hours with a &reconnectable breakaway",
            help="To put a position back into service.", entry=TermsEntry.NUMBER,
        ),
        TermsField(
            path="drive_offs.reconnectable_replaced_percent", title="Reconnectable ones re&placed",
            help="Percent of separations after which it is replaced all the same.", entry=TermsEntry.NUMBER,
        ),
    ),
)  # fmt: skip

YEARLY = Subject(
    name="yearly",
    title="Yearly cost",
    lead="What sets are weighed by beside their price. Spares and drive-offs have pages of their own. All empty: wear "
    "by common practice alone.",
    parts=(
        TermsTable(
            path="service_lives", title="Service lives", row="service life",
            help="After how many years a kind of part is replaced; a kind that is not here is as common practice has "
            "it.",
            columns=(
                _KIND_COLUMN,
                TermsColumn(name="years", title="Years", help="0.1 to 100.", share=2, entry=TermsEntry.NUMBER),
            ),
        ),
        TermsField(
            path="yearly.liquid_price", title="Price of the liq&uid", entry=TermsEntry.NUMBER,
            help="Of the liquid that is lost through hoses; empty: such losses are left out.",
        ),
        TermsField(
            path="yearly.liquid_unit", title="Price is &for one", help="The volume that the price is of.",
            entry=TermsEntry.CHOICE, options=_options(LiquidUnit),
        ),
        TermsField(
            path="yearly.interest_percent", title="&Interest on spares", entry=TermsEntry.NUMBER,
            help="Percent in a year on what lies in spares; empty: spares are left out.",
        ),
    ),
)  # fmt: skip

OPTIONS = Subject(
    name="options",
    title="Options",
    lead="One to four alternatives side by side in one quotation.",
    parts=(
        TermsTable(
            path="options", title="Options", row="option",
            help="Each option is planned and priced by itself.",
            columns=(
                TermsColumn(name="title", title="Option", help="As printed; each once.", share=6),
                TermsColumn(
                    name="breakaway", title="Breakaways", help="Which breakaways it draws on.", share=4,
                    entry=TermsEntry.CHOICE, options=_options(BreakawayWish), initial=BreakawayWish.ANY.value,
                ),
                TermsColumn(
                    name="hose", title="Hoses", help="Which hoses it draws on.", share=4,
                    entry=TermsEntry.CHOICE, options=_options(HoseWish), initial=HoseWish.ANY.value,
                ),
            ),
        ),
        TermsTable(
            path="alternates", title="Alternates", row="alternate",
            help="Parts offered in place of those of lines, with the difference in price and in no total.",
            columns=(
                TermsColumn(
                    name="part", title="Part of a line", help="Its number.", share=4, known=Known.PART_NUMBERS
                ),
                TermsColumn(
                    name="by", title="Offered instead", help="Its number; a part of the same kind.", share=4,
                    known=Known.PART_NUMBERS,
                ),
                TermsColumn(name="note", title="What speaks for it", help="Printed as written.", share=6),
            ),
        ),
    ),
)  # fmt: skip

OVERRIDES = Subject(
    name="overrides",
    title="Prices by name",
    lead="A price that somebody answers for, in place of the lists. Without a price, the line says that it follows.",
    parts=(
        TermsTable(
            path="overrides", title="Prices by name", row="price",
            help="Name and reason stand on record with the quotation.",
            columns=(
                TermsColumn(
                    name="part", title="Part number", help="Each once.", share=4, known=Known.PART_NUMBERS
                ),
                TermsColumn(
                    name="unit_price", title="Price of one", help="Empty: the price follows.", share=3,
                    entry=TermsEntry.NUMBER, empty_words="follows",
                ),
                TermsColumn(name="by", title="Who answers for it", help="A person's name.", share=4),
                TermsColumn(name="reason", title="Reason", help="Why the lists do not hold.", share=6),
            ),
        ),
    ),
)  # fmt: skip

SUBJECTS = (
    LETTERHEAD,
    CUSTOMER,
    HEADING,
    CONDITIONS,
    OPTIONS,
    MONEY,
    BUYING,
    SELLING,
    LABOUR,
    FREIGHT_AND_TAX,
    STOCK,
    DRIVE_OFFS,
    YEARLY,
    OVERRIDES,
)
