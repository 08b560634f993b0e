"""Hose that is cut to length with its fittings fitted: one article, an entry for each length that it is sold in.

Every length is a part like any other: the search weighs it against hoses of fixed length, papers and orders name it.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import field, replace
from decimal import Decimal
from enum import StrEnum
from fractions import Fraction
from math import floor
from typing import Final

from spoutline.catalogue.descriptions import COLUMNS, describe, figure_cells
from spoutline.explain.writing.money import amount, decimals
from spoutline.frozen import frozen
from spoutline.model.catalogue_entry import NAME_LENGTH, CatalogueEntry, EntryPrice, FigureCell
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.part import HOSES, PartStatus
from spoutline.model.pricing import PriceBreak, PriceList, PriceRow
from spoutline.model.worded import Worded
from spoutline.planning.keeping.article_entries import EntryPair, article_changes, check_list, sound_entry

MOST_LENGTHS: Final = 400
_INCHES: Final = 12
_NUMBER_LENGTH: Final = 40  # there is room for the length behind it
_SOURCE: Final = "cut to length, article "


class LengthUnit(StrEnum):
    """In what an article's lengths and prices are."""

    METRE = "m"
    FOOT = "ft"

    @property
    def metres(self) -> Fraction:
        """How many metres it has; a foot exactly 0.3048 (international yard and pound agreement, 1959)."""
        return Fraction("0.3048") if self is LengthUnit.FOOT else Fraction(1)


@frozen(kw_only=True)
class CutHose:
    """An article: hose of ``base`` cut to any of the lengths from ``shortest`` to ``longest`` by ``step``, in ``unit``.

    ``by_length`` is the price of one unit of length, ``fitted`` what is added once for fittings and work, both by
    currency. Lead time and supplier are the base's where None.
    """

    number: str
    base: CatalogueEntry
    unit: LengthUnit
    shortest: Fraction
    longest: Fraction
    step: Fraction
    by_length: Mapping[str, Decimal]
    fitted: Mapping[str, Decimal] = field(default_factory=dict)
    lead_days: int | None = None
    supplier: str | None = None


def lengths_of(cut: CutHose) -> tuple[Fraction, ...]:
    """Return every length of an article, rising; raise ``InputFault`` where there is none or far too many."""
    problems = []
    if cut.shortest <= 0:
        problems.append(InputProblem("", "shortest", _plain(cut.shortest), "a length above 0"))
    if cut.step <= 0:
        problems.append(InputProblem("", "step", _plain(cut.step), "a length above 0"))
    if cut.longest < cut.shortest:
        problems.append(
            InputProblem(
                "", "longest", _plain(cut.longest), Worded("at least the shortest, {plain}", plain=_plain(cut.shortest))
            )
        )
    if problems:
        raise InputFault(tuple(problems))
    count = int((cut.longest - cut.shortest) / cut.step) + 1
    if count > MOST_LENGTHS:
        wanted = Worded(
            "a step that makes at most {most_lengths} lengths; this one makes {count}",
            most_lengths=MOST_LENGTHS,
            count=count,
        )
        raise InputFault((InputProblem("", "step", _plain(cut.step), wanted),))
    return tuple(cut.shortest + place * cut.step for place in range(count))


def _plain(length: Fraction) -> str:
    """Return a length as a decimal number, rounded where it has no end."""
    rounded = (Decimal(length.numerator) / Decimal(length.denominator)).quantize(Decimal("0.0001"))
    return f"{rounded.normalize():f}"


def length_words(length: Fraction, unit: LengthUnit) -> str:
    """Return a length as it stands in the number of a part: ``2.75 m``, ``8 ft 6 in``."""
    if unit is LengthUnit.METRE:
        return f"{_plain(length)} m"
    feet = int(length)
    inches = (length - feet) * _INCHES
    if inches.denominator != 1:
        return f"{_plain(length)} ft"
    return f"{feet} ft {int(inches)} in" if inches else f"{feet} ft"


def price_minor(cut: CutHose, length: Fraction, currency: str) -> int:
    """Return what one length costs in minor units, half a unit rounded up."""
    price = Fraction(cut.by_length[currency]) * length + Fraction(cut.fitted.get(currency, Decimal(0)))
    minor: int = floor(price * Fraction(10 ** decimals(currency)) + Fraction(1, 2))
    return minor


def cut_entries(cut: CutHose) -> tuple[CatalogueEntry, ...]:
    """Return the entry of every length.

    Figures are those of the base, its length and mass apart: a metre more has the mass of a metre of hose more.

    Raises
    ------
    InputFault
        The base is no described hose, or what is said of the article is not usable.
    """
    return tuple(_entry(cut, length, _base(cut)) for length in lengths_of(cut))


def _base(cut: CutHose) -> tuple[float, float, float]:
    """Return length, mass, and mass of a metre of the base."""
    base, found = cut.base, describe(cut.base)
    if base.kind not in HOSES or found.part is None or found.part.hose is None:
        lacks = Worded("; it lacks {lacking}", lacking=", ".join(found.lacking)) if found.lacking else ""
        raise InputFault(
            (
                InputProblem(
                    str(base.ref), "base", str(base.kind), Worded("a described hose is needed{lacks}", lacks=lacks)
                ),
            )
        )
    if not 1 <= len(cut.number) <= _NUMBER_LENGTH:
        wanted: str = Worded(
            "a number of 1 to {number_length} characters; the length follows it", number_length=_NUMBER_LENGTH
        )
        raise InputFault((InputProblem("", "number", repr(cut.number[:60]), wanted),))
    if not cut.by_length:
        wanted = "a price of one unit of length, such as 12.50 USD"
        raise InputFault((InputProblem("", "price", "nothing", wanted),))
    return found.part.hose.length_m, found.part.mass_kg, found.part.hose.mass_kg_m


def _entry(cut: CutHose, length: Fraction, base: tuple[float, float, float]) -> CatalogueEntry:
    base_m, base_kg, kg_m = base
    length_m = float(length * cut.unit.metres)
    words = length_words(length, cut.unit)
    kind = cut.base.kind
    if kind is None:
        raise TypeError("a base without a kind was refused before")
    own, wrong = figure_cells(
        kind,
        {"length_m": round(length_m, 9), "mass_kg": round(base_kg + (length_m - base_m) * kg_m, 6)},
        source=f"{_SOURCE}{cut.number}",
    )
    if wrong:
        raise InputFault(tuple(InputProblem(words, *one) for one in wrong))
    cells: dict[str, FigureCell] = {cell.column: cell for cell in cut.base.figures}
    cells |= {cell.column: cell for cell in own}
    made = {
        "number": f"{cut.number} {words}",
        "maker": cut.base.maker,
        "name": f"{cut.base.name}, cut to {words}"[:NAME_LENGTH],
        "kind": kind,
        "status": PartStatus.ACTIVE,
        "supplier": cut.base.supplier if cut.supplier is None else cut.supplier,
        "family": cut.base.family,
        "lead_days": cut.base.lead_days if cut.lead_days is None else cut.lead_days,
        "pack": 1,
        "prices": tuple(
            EntryPrice(currency=currency, minor=price_minor(cut, length, currency))
            for currency in sorted(cut.by_length)
        ),
        "remark": _remark(cut),
        "figures": tuple(cells[column] for column in COLUMNS[kind] if column in cells),
    }
    return sound_entry(made, words)


def _remark(cut: CutHose) -> str:
    prices = ", ".join(
        f"{price} {currency} per {cut.unit}, {cut.fitted.get(currency, Decimal(0))} fitted"
        for currency, price in sorted(cut.by_length.items())
    )
    return f"{cut.number}: {cut.base.number} cut to length, {prices}"[:300]


def cut_changes(cut: CutHose, there: Iterable[CatalogueEntry]) -> tuple[EntryPair, ...]:
    """Return what an article changes in a draft that holds ``there``; see ``article_changes``."""
    return article_changes(cut_entries(cut), there, cut.base.maker, f"{_SOURCE}{cut.number}")


def with_lengths(price_list: PriceList, cut: CutHose, changes: Iterable[EntryPair]) -> PriceList:
    """Return a price list with the rows of an article's lengths, those that it has no longer left out.

    Raise ``InputFault`` where the list is of another maker or in a currency that the article has no price in.
    """
    check_list(price_list, cut.base.maker, cut.by_length)
    gone = {before.number for before, after in changes if before is not None and after is None}
    rows = {row.part_number: row for row in price_list.rows if row.part_number not in gone}
    for length in lengths_of(cut):
        number = f"{cut.number} {length_words(length, cut.unit)}"
        price = amount(price_minor(cut, length, price_list.currency), price_list.currency)
        step = PriceBreak(from_quantity=1, unit_price=price)
        rows[number] = PriceRow(part_number=number, discount_group=_group(rows.get(number), rows, cut), breaks=(step,))
    return replace(price_list, rows=tuple(rows[number] for number in sorted(rows)))


def _group(own: PriceRow | None, rows: Mapping[str, PriceRow], cut: CutHose) -> str:
    """Return the discount group of a length: its own, else that of the hose that it is cut from."""
    known = own or rows.get(cut.base.number)
    return "" if known is None else known.discount_group
