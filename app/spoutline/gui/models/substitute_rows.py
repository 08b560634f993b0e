"""Rows and columns of what else could hang in a place, and of what could not."""

from __future__ import annotations

from spoutline.explain.plan.story import Story
from spoutline.explain.plan.what_differs import ListedParts
from spoutline.frozen import frozen
from spoutline.gui.models.record_table import Column
from spoutline.gui.roles import Tone
from spoutline.gui.wording import tr
from spoutline.model.finding import Severity, Verdict
from spoutline.model.part import Part
from spoutline.model.part_ref import PartRef
from spoutline.model.substitute import Misfit, Substitute


@frozen
class SubstituteRow:
    """A part for the place: with the set that holds it, or why it does not fit."""

    result: Substitute | Misfit

    @property
    def part(self) -> Part:
        """The part."""
        return self.result.part

    @property
    def fits(self) -> bool:
        """Whether some set that keeps every must holds the part."""
        return isinstance(self.result, Substitute)


def substitute_columns(story: Story, currency: str, listed: ListedParts) -> tuple[Column[SubstituteRow], ...]:
    """Return the columns; parts that do not fit sort behind all others. ``listed``: their parts."""

    def hint(row: SubstituteRow) -> str:
        return "\n".join((f"{row.part.number}  {story.part_name(row.part)}", row.part.maker, *details(row, story)))

    return (
        Column(title=tr("Part"), text=lambda row: row.part.number, hint=hint, tone=_tone),
        Column(title=tr("Differs in"), text=lambda row: listed.differs(row.part), hint=hint, leads=True),
        Column(
            title=tr("Set, ± {currency}").format(currency=currency),
            text=lambda row: _difference(row, story),
            sort=_dearness,
            hint=hint,
            is_number=True,
        ),
        Column(title=tr("Gives up"), text=lambda row: _given_up(row, story), hint=hint),
        Column(title=tr("Also changes"), text=lambda row: _also(row, story), hint=hint),
    )


def details(row: SubstituteRow, story: Story) -> tuple[str, ...]:
    """Return what the part brings with it, or the first reason why it does not fit, in full."""
    if isinstance(row.result, Misfit):
        return (tr("Does not fit: {reason}").format(reason=story.misfit(row.result)),)
    found: list[str] = []
    if row.result.changes:
        changes = "; ".join(story.slot_change(change) for change in row.result.changes)
        found.append(tr("Also changes: {changes}").format(changes=changes))
    if row.result.given_up:
        found.append(tr("Gives up: {lines}").format(lines=story.line_names(row.result.given_up)))
        found.extend(_broken_shoulds(row.result, story))
    if row.result.kept:
        found.append(tr("Keeps, other than the set in hand: {lines}").format(lines=story.line_names(row.result.kept)))
    return tuple(found) or (tr("Takes the place alone; nothing else changes and no should is given up."),)


def _broken_shoulds(found: Substitute, story: Story) -> tuple[str, ...]:
    return tuple(
        story.finding(finding).sentence
        for finding in found.judged.findings
        if finding.severity is Severity.SHOULD
        and finding.verdict is Verdict.BROKEN
        and finding.part in found.judged.hanging_set.refs
    )


def _tone(row: SubstituteRow) -> Tone:
    if isinstance(row.result, Misfit):
        return Tone.BAD
    return Tone.CAUTION if row.result.given_up else Tone.GOOD


def _difference(row: SubstituteRow, story: Story) -> str:
    """Return what the set costs more or less; the currency stands in the column's title."""
    if isinstance(row.result, Misfit):
        return tr("does not fit")
    minor = row.result.price_difference_minor
    if minor == 0:
        return tr("same")
    sign = "+" if minor > 0 else "-"
    return f"{sign}{story.bare_money(abs(minor), row.result.judged.hanging_set.currency)}"


def _dearness(row: SubstituteRow) -> tuple[bool, int, PartRef]:
    difference = row.result.price_difference_minor if isinstance(row.result, Substitute) else 0
    return not row.fits, difference, row.part.ref


def _given_up(row: SubstituteRow, story: Story) -> str:
    return story.line_names(row.result.given_up) if isinstance(row.result, Substitute) else ""


def _also(row: SubstituteRow, story: Story) -> str:
    if isinstance(row.result, Misfit):
        return story.misfit(row.result)
    return "; ".join(story.slot_change(change) for change in row.result.changes)
