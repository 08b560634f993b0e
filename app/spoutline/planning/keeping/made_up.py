"""Sets sold made up: one article of several parts joined before they are sold, priced as one, weighed by the search.

Every part of an article is an entry of its own with the figures of the part that it is made from, so that rules, loads,
drawing and papers see what hangs. The joints inside are joints of the article alone (``Port.made_up_in``): where one of
its parts hangs, all of them hang, in their order. The first has the article's number and its price; the others come
with it.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import replace
from decimal import Decimal
from itertools import pairwise
from typing import Final
from unicodedata import normalize

from spoutline.catalogue.descriptions import COLUMNS, describe
from spoutline.frozen import frozen
from spoutline.model.catalogue_entry import NAME_LENGTH, CatalogueEntry, EntryPrice, FigureCell, Origin
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.part import HANGING_KINDS, MOST_IN_ARTICLE, PLACE_OF_PART, Part, PartKind, PartStatus
from spoutline.model.part_identity import number_fault
from spoutline.model.port import Port
from spoutline.model.pricing import PriceBreak, PriceList, PriceRow
from spoutline.model.worded import Worded
from spoutline.planning.keeping.article_entries import EntryPair, article_changes, check_list, sound_entry
from spoutline.planning.pricing.rounding import minor_units
from spoutline.rules.chain.joints import mates

MOST_PARTS: Final = MOST_IN_ARTICLE
_MOST_PRICE: Final = 10_000_000
_NUMBER_LENGTH: Final = 60  # there is room for the place of a part behind it
_SOURCE: Final = "made up, article "


@frozen(kw_only=True)
class MadeUpSet:
    """An article: ``parts`` in their order, dispenser first, joined and sold as one at ``prices`` by currency.

    ``maker`` is who makes it up, the maker of the first part where empty. ``name`` is what it is called, made from the
    kinds of its parts where empty. Lead time is the longest of the parts where None, supplier the first part's.
    """

    number: str
    parts: tuple[CatalogueEntry, ...]
    prices: Mapping[str, Decimal]
    maker: str = ""
    name: str = ""
    lead_days: int | None = None
    supplier: str | None = None

    def __post_init__(self) -> None:
        """Write accents as entries have them, so that joints and parts name the article alike."""
        object.__setattr__(self, "number", normalize("NFC", self.number))
        object.__setattr__(self, "maker", normalize("NFC", self.maker))

    @property
    def made_by(self) -> str:
        """Who makes it up."""
        return self.maker or self.parts[0].maker


def place_number(number: str, place: int) -> str:
    """Return the number of the part at a place of an article, from 1: the first has the article's own."""
    return number if place == 1 else f"{number}{PLACE_OF_PART}{place}"


def made_up_entries(made: MadeUpSet) -> tuple[CatalogueEntry, ...]:
    """Return the entry of every part of an article.

    Raises
    ------
    InputFault
        The article has no usable number or price, too few or too many parts, or parts that do not join.
    """
    _check_said(made)
    described = [_described(one) for one in made.parts]
    _check_joints(described)
    lead = max(part.lead_time_days for part in described) if made.lead_days is None else made.lead_days
    return tuple(_entry(made, place, described, lead) for place in range(1, len(described) + 1))


def joining_order(entries: Iterable[CatalogueEntry]) -> tuple[CatalogueEntry, ...]:
    """Return entries in an order in which each joins the next, dispenser first; as they come where there is none.

    Where several orders join, the one that follows the usual order of kinds comes first.
    """
    given = tuple(entries)
    parts = [describe(one).part for one in given]
    if len(given) > MOST_PARTS or None in parts:
        return given
    known = [part for part in parts if part is not None]
    usual = sorted(range(len(known)), key=lambda at: _USUAL.get(known[at].kind, len(_USUAL)))
    found = _joined([], usual, known)
    return given if found is None else tuple(given[at] for at in found)


_USUAL: Final = {
    kind: place
    for place, kind in enumerate(
        (
            *(PartKind.SPLITTER, PartKind.WHIP_HOSE, PartKind.BREAKAWAY, PartKind.CURB_HOSE, PartKind.ADAPTOR),
            *(PartKind.SWIVEL, PartKind.SWIVEL_BREAKAWAY, PartKind.NOZZLE),
        )
    )
}


def _joined(taken: list[int], left: list[int], parts: list[Part]) -> list[int] | None:
    if not left:
        return taken
    above = parts[taken[-1]].outlet if taken else None
    for at in left:
        below = parts[at].inlet
        if not taken or (above is not None and below is not None and mates(above, below)):
            found = _joined([*taken, at], [one for one in left if one != at], parts)
            if found is not None:
                return found
    return None


def _check_said(made: MadeUpSet) -> None:
    problems = []
    if not 2 <= len(made.parts) <= MOST_PARTS:
        wanted = Worded(
            "2 to {most_parts} parts, in the order in which they hang, dispenser first", most_parts=MOST_PARTS
        )
        problems.append(InputProblem("", "parts", str(len(made.parts)), wanted))
    if not 1 <= len(made.number) <= _NUMBER_LENGTH:
        wanted = Worded(
            "a number of 1 to {number_length} characters; the places of the parts follow it",
            number_length=_NUMBER_LENGTH,
        )
        problems.append(InputProblem("", "number", repr(made.number[:80]), wanted))
    elif fault := number_fault(made.number):
        problems.append(InputProblem("", "number", repr(made.number), fault))
    if not made.prices:
        problems.append(InputProblem("", "price", "nothing", "the price of the whole article, such as 412.00 USD"))
    for currency, price in made.prices.items():
        if not 0 < price <= _MOST_PRICE:
            problems.append(
                InputProblem(
                    "", "price", f"{price} {currency}", Worded("above 0, at most {most_price}", most_price=_MOST_PRICE)
                )
            )
            continue
        try:
            minor_units(price, currency)
        except ValueError as fault:
            problems.append(InputProblem("", "price", f"{price} {currency}", str(fault)))
    if problems:
        raise InputFault(tuple(problems))


def _described(entry: CatalogueEntry) -> Part:
    found = describe(entry)
    if found.part is None or entry.kind not in HANGING_KINDS:
        lacks = Worded("; it lacks {lacking}", lacking=", ".join(found.lacking)) if found.lacking else ""
        wanted: str = Worded(
            "a described part that hangs, such as a hose, breakaway, swivel or nozzle, is needed{lacks}", lacks=lacks
        )
        raise InputFault((InputProblem(str(entry.ref), "part", str(entry.kind), wanted),))
    if found.part.article is not None:
        wanted = "a part sold by itself: an article is made up from parts"
        raise InputFault((InputProblem(str(entry.ref), "part", str(found.part.article), wanted),))
    return found.part


def _check_joints(parts: list[Part]) -> None:
    problems = []
    for above, below in pairwise(parts):
        if above.outlet is None or below.inlet is None:
            ends = above if above.outlet is None else below
            problems.append(InputProblem("", "parts", str(ends.ref), "nothing can be joined to its end here"))
        elif not mates(above.outlet, below.inlet):
            wanted = Worded(
                "its inlet ({inlet}) must join the outlet of {above} ({outlet})",
                inlet=below.inlet,
                above=above.ref,
                outlet=above.outlet,
            )
            problems.append(InputProblem("", "parts", str(below.ref), wanted))
    if problems:
        raise InputFault(tuple(problems))


def _entry(made: MadeUpSet, place: int, parts: list[Part], lead: int) -> CatalogueEntry:
    base, number = made.parts[place - 1], place_number(made.number, place)
    kind = base.kind
    if kind is None:
        raise TypeError("a part without a kind was refused before")
    taken = {"origin": Origin.SIMILAR, "source": str(base.ref)[:200]}
    cells: dict[str, FigureCell] = {cell.column: cell.model_copy(update=taken) for cell in base.figures}
    cells |= {cell.column: cell for cell in _ends(made, place, parts[place - 1], is_last=place == len(parts))}
    given = {
        "number": number,
        "maker": made.made_by,
        "name": _name(made, place, parts),
        "kind": kind,
        "status": PartStatus.ACTIVE,
        "supplier": made.parts[0].supplier if made.supplier is None else made.supplier,
        "lead_days": lead,
        "pack": 1,
        "prices": tuple(
            EntryPrice(currency=currency, minor=minor_units(price, currency) if place == 1 else 0)
            for currency, price in sorted(made.prices.items())
        ),
        "remark": f"{made.number}: made from {base.ref}"[:300],
        "figures": tuple(cells[column] for column in COLUMNS[kind] if column in cells),
    }
    return sound_entry(given, number)


def _ends(made: MadeUpSet, place: int, part: Part, *, is_last: bool) -> Iterator[FigureCell]:
    """Yield the ends of a part that lie inside the article."""
    inside = (("inlet", part.inlet, place > 1, place), ("outlet", part.outlet, not is_last, place + 1))
    for column, port, is_inside, below in inside:
        if port is not None and is_inside:
            own: Port = replace(port, made_up_in=f"{made.made_by} {place_number(made.number, below)}")
            yield FigureCell(column=column, value=str(own), source=f"{_SOURCE}{made.number}")


def _name(made: MadeUpSet, place: int, parts: list[Part]) -> str:
    if place > 1:
        return f"{parts[place - 1].name}, in {made.number}"[:NAME_LENGTH]
    kinds = ", ".join(part.kind.value.replace("_", " ") for part in parts)
    return (made.name or f"Made-up set: {kinds}")[:NAME_LENGTH]


def made_up_changes(made: MadeUpSet, there: Iterable[CatalogueEntry]) -> tuple[EntryPair, ...]:
    """Return what an article changes in a draft that holds ``there``; see ``article_changes``."""
    return article_changes(made_up_entries(made), there, made.made_by, f"{_SOURCE}{made.number}")


def with_article(price_list: PriceList, made: MadeUpSet) -> PriceList:
    """Return a price list with the row of an article.

    Raise ``InputFault`` where the list is of another maker or in a currency that the article has no price in.
    """
    check_list(price_list, made.made_by, made.prices)
    rows = {row.part_number: row for row in price_list.rows}
    group = rows[made.number].discount_group if made.number in rows else ""
    step = PriceBreak(from_quantity=1, unit_price=made.prices[price_list.currency])
    rows[made.number] = PriceRow(part_number=made.number, discount_group=group, breaks=(step,))
    return replace(price_list, rows=tuple(rows[number] for number in sorted(rows)))
