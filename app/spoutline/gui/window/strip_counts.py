"""How many parts come into question for each place of the position in hand, and how many did before the last answer."""

from __future__ import annotations

from spoutline.gui.pages.context import Context
from spoutline.gui.widgets.slot_strip import SlotFigure, SlotStrip
from spoutline.gui.wording import tr
from spoutline.model.plan import SlotCount


class StripCounts:
    """Fills the strip of places, and keeps of each position the counts before those that are shown."""

    def __init__(self, context: Context, strip: SlotStrip) -> None:
        self._context, self._strip = context, strip
        self._last: dict[str, tuple[tuple[SlotCount, ...], tuple[SlotCount, ...] | None]] = {}

    def show(self) -> None:
        """Show the counts of the position in hand; what stands there stays until they are known."""
        label = self._context.session.label
        staged = self._context.plans.staged(label)
        if staged is None or staged.counts is None:
            if not self._strip.figures:
                self._strip.show_figures((), tr("Counting the parts that come into question…"))
            return
        before = self._before(label, staged.counts)
        figures = tuple(
            SlotFigure(
                self._context.story.title(count.slot),
                count.in_catalogue,
                count.remaining,
                next((old.remaining for old in before or () if old.slot is count.slot), None),
            )
            for count in staged.counts
        )
        self._strip.show_figures(figures, tr("No part comes into question while the answers contradict each other."))

    def _before(self, label: str, counts: tuple[SlotCount, ...]) -> tuple[SlotCount, ...] | None:
        """Return the counts before these; kept as long as these are shown."""
        known = self._last.get(label)
        if known is None:
            labels = {position.label for position in self._context.session.survey.positions}
            self._last = {one: last for one, last in self._last.items() if one in labels}
            self._last[label] = (counts, None)
            return None
        last, before = known
        if last is not counts:
            before = last
            self._last[label] = (counts, before)
        return before
