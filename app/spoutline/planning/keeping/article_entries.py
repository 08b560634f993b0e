"""What articles share that stand in a draft as several entries: each is made soundly, and all are changed together."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping

from pydantic import ValidationError

from spoutline.catalogue.descriptions import describe
from spoutline.model.catalogue_entry import CatalogueEntry
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.pricing import PriceList
from spoutline.model.worded import Worded

EntryPair = tuple[CatalogueEntry | None, CatalogueEntry | None]  # before and after


def sound_entry(given: Mapping[str, object], place: str) -> CatalogueEntry:
    """Return the entry of these fields; raise ``InputFault`` at ``place`` where one of them is not usable."""
    try:
        entry = CatalogueEntry.model_validate(given)
    except ValidationError as fault:
        raise InputFault(
            tuple(
                InputProblem(place, ".".join(map(str, one["loc"])) or "part", repr(one["input"])[:60], one["msg"])
                for one in fault.errors(include_url=False)
            )
        ) from fault
    faults = describe(entry).faults
    if faults:
        raise InputFault(tuple(InputProblem(place, one.column, one.value, one.wanted) for one in faults))
    return entry


def entries_of_article(entries: Iterable[CatalogueEntry], maker: str, source: str) -> Iterator[CatalogueEntry]:
    """Yield those entries of a draft of which a figure comes from an article, by the source that it writes."""
    for entry in entries:
        if entry.maker == maker and any(cell.source == source for cell in entry.figures):
            yield entry


def article_changes(
    after: Iterable[CatalogueEntry], there: Iterable[CatalogueEntry], maker: str, source: str
) -> tuple[EntryPair, ...]:
    """Return what an article changes in a draft that holds ``there``: each entry before and after, equal ones left out.

    Entries that the article has no longer are taken out. Raise ``InputFault`` where a number belongs to another part.
    """
    held = {entry.ref: entry for entry in there}
    wanted = {entry.ref: entry for entry in after}
    own = {entry.ref: entry for entry in entries_of_article(held.values(), maker, source)}
    taken = sorted(ref for ref in wanted if ref in held and ref not in own)
    if taken:
        right = "another number of the article: a part of the draft has this one already"
        raise InputFault(tuple(InputProblem("", "number", repr(str(ref)), right) for ref in taken[:5]))
    refs = dict.fromkeys((*own, *wanted))
    return tuple((own.get(ref), wanted.get(ref)) for ref in refs if own.get(ref) != wanted.get(ref))


def check_list(price_list: PriceList, maker: str, currencies: Iterable[str]) -> None:
    """Raise ``InputFault`` where a price list is of another maker, or in a currency that an article has no price in."""
    known, problems = sorted(currencies), []
    if price_list.maker != maker:
        problems.append(InputProblem("", "price list", repr(price_list.id), Worded("a list of {maker}", maker=maker)))
    if price_list.currency not in known:
        problems.append(
            InputProblem("", "price list", price_list.currency, Worded("a list in {known}", known=", ".join(known)))
        )
    if problems:
        raise InputFault(tuple(problems))
