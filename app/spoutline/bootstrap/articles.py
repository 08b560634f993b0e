"""Articles put into the draft of a catalogue as several entries: hose cut to length, sets sold made up."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

from spoutline.frozen import frozen
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.worded import Worded

if TYPE_CHECKING:
    from spoutline.catalogue.draft import DraftDesk
    from spoutline.catalogue.shelf import CatalogueShelf
    from spoutline.model.catalogue_entry import CatalogueEntry
    from spoutline.model.pricing import PriceList
    from spoutline.planning.keeping.article_entries import EntryPair
    from spoutline.planning.keeping.cut_lengths import CutHose
    from spoutline.planning.keeping.made_up import MadeUpSet


@frozen
class ArticleDone:
    """What an article changed in a draft: entries before and after."""

    changes: tuple[EntryPair, ...]

    @property
    def counts(self) -> tuple[int, int, int]:
        """How many of its parts are new, changed and taken out."""
        new = sum(before is None for before, _ in self.changes)
        gone = sum(after is None for _, after in self.changes)
        return new, len(self.changes) - new - gone, gone


class ArticleService:
    """Puts articles into drafts, whole or not at all.

    With ``price_list`` the rows of that list of the draft are renewed too: quotations go by price lists. Raise
    ``InputFault`` where the article is not usable or the draft has no such list of its maker.
    """

    def __init__(self, shelf: Callable[[], CatalogueShelf]) -> None:
        self._shelf = shelf

    def cut_hose(self, name: str, cut: CutHose, *, price_list: str = "", dry_run: bool = False) -> ArticleDone:
        """Put every length of an article into the draft of a catalogue; lengths that it has no longer go."""
        from spoutline.planning.keeping.cut_lengths import cut_changes, with_lengths

        with self._shelf().draft(name, dry_run=dry_run) as desk:
            changes = cut_changes(cut, _near(desk, cut.base.maker, cut.number))
            if price_list:
                desk.price_lists.put((with_lengths(_list_named(price_list, desk), cut, changes),))
            return _put(desk, changes)

    def make_up(self, name: str, made: MadeUpSet, *, price_list: str = "", dry_run: bool = False) -> ArticleDone:
        """Put every part of a set sold made up into the draft of a catalogue; parts that it has no longer go."""
        from spoutline.planning.keeping.made_up import made_up_changes, with_article

        with self._shelf().draft(name, dry_run=dry_run) as desk:
            changes = made_up_changes(made, _near(desk, made.made_by, made.number))
            if price_list:
                desk.price_lists.put((with_article(_list_named(price_list, desk), made),))
            return _put(desk, changes)


def _near(desk: DraftDesk, maker: str, number: str) -> list[CatalogueEntry]:
    """Return the entries of a draft that an article may have made, or whose numbers it would take."""
    near = [one for one in desk.refs() if one.maker == maker and one.number.startswith(number)]
    return list(desk.entries(near).values())


def _list_named(name: str, desk: DraftDesk) -> PriceList:
    known = desk.price_lists.all()
    if name not in known:
        wanted = Worded("one of: {known}", known=", ".join(known) or "the draft has no price list")
        raise InputFault((InputProblem("", "price list", repr(name), wanted),))
    return known[name]


def _put(desk: DraftDesk, changes: tuple[EntryPair, ...]) -> ArticleDone:
    desk.take_out(before.ref for before, after in changes if before is not None and after is None)
    desk.put(after for _before, after in changes if after is not None)
    return ArticleDone(changes)
