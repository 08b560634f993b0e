"""What an installer measures or reads off on site, beside what the plan says."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from typing import Final

from spoutline.documents.content.blocks import Column, Row, Table
from spoutline.documents.pack.commissioning_form import expected_text, limit_text
from spoutline.explain.pack.words import PackWord as Word
from spoutline.explain.plan.checks import below_ground, below_ground_text
from spoutline.explain.plan.story import Story
from spoutline.model.check import Check, CheckId, Outcome
from spoutline.model.plan import JudgedSet, PositionPlan
from spoutline.model.quantity import Dimension
from spoutline.model.record import RecordItem, RecordItemId
from spoutline.rules.checks.spout import SwivelType
from spoutline.rules.work.records import record_items

_MEASURED: Final = (
    (CheckId.SPOUT_DIAMETER, Word.SPOUT_DIAMETER),
    (CheckId.HOSE_LENGTH, Word.HOSE_LENGTH),
    (CheckId.BREAKAWAY_FORCE_CLASS, Word.FORCE_CLASS),
    (CheckId.SWIVEL_TYPE, Word.SWIVEL),
    (CheckId.GROUND_CLEARANCE_AT_REST, None),
    (CheckId.GROUND_CLEARANCE_IN_USE, None),
    (CheckId.RESISTANCE_TOTAL, Word.NOZZLE_RESISTANCE),
    (CheckId.FLOW_HOT, Word.FLOW),
)
_ON_THE_FORM: Final = {
    CheckId.SPOUT_DIAMETER: RecordItemId.SPOUT,
    CheckId.GROUND_CLEARANCE_AT_REST: RecordItemId.CLEARANCE,
    CheckId.RESISTANCE_TOTAL: RecordItemId.BOND,
    CheckId.FLOW_HOT: RecordItemId.FLOW,
}
_BLANK: Final = "______"


def site_check_table(plan: PositionPlan, judged: JudgedSet, story: Story) -> Table:
    """Return the table of what is measured on site: what, by plan, limit, and room for what is found."""
    columns = (
        Column(story.word(Word.WHAT), 2.7),
        Column(story.word(Word.BY_PLAN), 1.4),
        Column(story.word(Word.LIMIT), 2.0),
        Column(story.word(Word.FOUND), 0.75),
    )
    return Table(columns, (*_rows(plan, judged, story), *_outlet_row(plan, story)), dense=True)


def _outlet_row(plan: PositionPlan, story: Story) -> Iterator[Row]:
    """Yield the pull that the outlet bears, which the drive-off is reckoned with; it says where it is assumed."""
    if plan.requirement is None:
        return
    shown = story.display.reading(plan.requirement.outlet_pull_strength_n, Dimension.FORCE)
    is_assumed = plan.position.outlet.pull_strength_n is None
    yield Row(
        (story.word(Word.OUTLET_STRENGTH), shown, story.phrases.text["assumed_figure"] if is_assumed else "", _BLANK)
    )


def _rows(plan: PositionPlan, judged: JudgedSet, story: Story) -> Iterator[Row]:
    by_id = {check.id: check for check in judged.checks}
    on_form = {item.id: item for item in record_items(plan)}
    for check_id, word in _MEASURED:
        check = by_id.get(check_id)
        if check is None or (check.outcome is Outcome.INFORMATION and below_ground(check) is None):
            continue  # nothing to measure, such as a clearance where a reel takes the hose up
        title = story.sentence(story.word(word) if word else story.word(check_id))
        item = on_form.get(_ON_THE_FORM[check_id]) if check_id in _ON_THE_FORM else None
        if item is not None and item.applies:  # the form asks for the same reading: both show the same figures
            cells = (_expected(item, check, judged, story), limit_text(item, story))
        else:
            cells = (_PLANNED.get(check_id, _value)(check, judged, story), _limit(check, story))
        yield Row((title, *cells, _BLANK))


def _expected(item: RecordItem, check: Check, judged: JudgedSet, story: Story) -> str:
    return below_ground_text(check, story) or expected_text(item, story) or _value(check, judged, story)


def _value(check: Check, _judged: JudgedSet, story: Story) -> str:
    below = below_ground_text(check, story)
    if below:
        return below
    return (
        story.display.reading(check.value, check.dimension)
        if check.value is not None
        else story.show(None, check.dimension)
    )


def _force(_check: Check, judged: JudgedSet, story: Story) -> str:
    """Return the window on the plate of the breakaway, which the check holds against the limits."""
    data = next(link.part.breakaway for link in judged.hanging_set.links if link.part.breakaway is not None)
    return story.window(data.separation_minimum_n, data.separation_maximum_n, Dimension.FORCE)


def _swivel(check: Check, _judged: JudgedSet, story: Story) -> str:
    return story.word(SwivelType(check.text)) if check.text else story.show(check.value, check.dimension)


def _limit(check: Check, story: Story) -> str:
    if check.id is CheckId.SWIVEL_TYPE:
        return ""
    low = None if check.lower is None else check.lower.value
    high = None if check.upper is None else check.upper.value
    return story.window(low, high, check.dimension)


_PLANNED: Final[dict[CheckId, Callable[[Check, JudgedSet, Story], str]]] = {
    CheckId.BREAKAWAY_FORCE_CLASS: _force,
    CheckId.SWIVEL_TYPE: _swivel,
}
