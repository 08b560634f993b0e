"""Steps that change entries of the draft in hand, and how the last ones are taken back."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from spoutline.catalogue.shelf_lookup import EntryChange
from spoutline.frozen import frozen
from spoutline.gui.pages.catalogues.chosen import InHand
from spoutline.gui.pages.context import Context
from spoutline.gui.waiting import wait_for
from spoutline.model.catalogue_entry import CatalogueEntry
from spoutline.model.faults import InputFault, StoreFault

_MOST_KEPT = 100


@frozen
class DraftStep:
    """What one step changed in the draft of a catalogue."""

    catalogue: str
    changes: tuple[EntryChange, ...]


class EntrySteps:
    """Takes steps and takes them back, one by one; the draft says where somebody else changed a part meanwhile."""

    def __init__(self, context: Context, in_hand: InHand) -> None:
        self._context, self._in_hand = context, in_hand
        self._past: list[DraftStep] = []

    @property
    def last(self) -> DraftStep | None:
        """The step that would be taken back: the last one in the draft in hand; None for none."""
        name = self._in_hand.draft_name
        return next((step for step in reversed(self._past) if step.catalogue == name), None)

    def change(self, pairs: Sequence[tuple[CatalogueEntry | None, CatalogueEntry | None]]) -> None:
        """Bring entries from one state to another; raise ``InputFault`` or ``StoreFault``, and nothing changed then."""
        changes = tuple(
            EntryChange((after or before).ref, before, after)  # type: ignore[union-attr]  # one of them is there
            for before, after in pairs
            if before != after
        )
        name = self._in_hand.draft_name
        if changes:
            changes = self._write(name, changes)
            self._past = [*self._past[1 - _MOST_KEPT :], DraftStep(name, changes)]

    def take_back(self) -> None:
        """Take the last step back; raise as ``change`` does."""
        step = self.last
        if step is not None:
            self._write(step.catalogue, tuple(EntryChange(one.ref, one.after, one.before) for one in step.changes))
            self._past.remove(step)

    def _write(self, name: str, changes: tuple[EntryChange, ...]) -> tuple[EntryChange, ...]:
        service = self._context.session.workbench.catalogues()
        return wait_for(lambda: service.change_entries(name, changes))


def tried(act: Callable[[], None]) -> str:
    """Do something and return what is wrong where it cannot be done; empty where it was."""
    try:
        act()
    except (InputFault, StoreFault) as fault:
        return str(fault)
    return ""
