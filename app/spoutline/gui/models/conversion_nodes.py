"""Rows of a conversion: the ways, the positions with what stays, goes and comes."""

from __future__ import annotations

from collections.abc import Iterator

from spoutline.documents.conversion.position_sheets import basis_rows
from spoutline.explain.conversion.story import ConversionStory
from spoutline.explain.writing.money import amount
from spoutline.gui.models.node_tree import Node
from spoutline.gui.roles import Tone
from spoutline.model.conversion import SiteConversion
from spoutline.model.conversion_answers import OptionKind
from spoutline.model.position_conversion import Closing, DifferenceAction, PositionConversion, PositionOutcome
from spoutline.model.removal_standing import Standing

STANDING_TONES = {
    Standing.NOT_ALLOWED: Tone.BAD,
    Standing.ASK: Tone.QUESTION,
    Standing.MAY_GO: Tone.NOTE,
    Standing.MUST_GO: Tone.CAUTION,
    Standing.NOT_CONCERNED: Tone.NOTE,
}
_OUTCOME_TONES = {
    PositionOutcome.CONVERTS: Tone.GOOD,
    PositionOutcome.NOTHING_TO_DO: Tone.NOTE,
    PositionOutcome.NOT_ALLOWED: Tone.BAD,
    PositionOutcome.NO_SET: Tone.BAD,
    PositionOutcome.NOT_DECIDED: Tone.QUESTION,
    PositionOutcome.REFUSED: Tone.BAD,
}
_ACTION_TONES = {
    DifferenceAction.KEEP: Tone.GOOD,
    DifferenceAction.REMOVE: Tone.CAUTION,
    DifferenceAction.ADD: Tone.NOTE,
    DifferenceAction.CAP: Tone.NOTE,
}


def way_nodes(conversion: SiteConversion, words: ConversionStory) -> tuple[Node, ...]:
    """Return one row for each way: what is bought, what is kept, departures from good practice."""
    currency = conversion.survey.site.currency
    worked_on = [one for one in conversion.positions if one.outcome is not PositionOutcome.NOTHING_TO_DO]
    found: list[Node] = []
    for kind in OptionKind:
        options = [option for one in worked_on if (option := one.way(kind)) is not None]
        cells = (
            words.title(kind),
            words.money(amount(sum(option.bought_minor for option in options), currency), currency),
            str(sum(len(option.kept) for option in options)),
            str(sum(option.departures for option in options)),
        )
        followed = kind is conversion.survey.conversion.follow and not conversion.shows_sets
        found.append(Node(cells=cells, record=kind, is_head=followed, hint=words.say("followed") if followed else ""))
    return tuple(found)


def conversion_nodes(conversion: SiteConversion, words: ConversionStory) -> tuple[Node, ...]:
    """Return one row for each position, below it what happens with each part; the record is the label."""
    positions = (_position_node(one, conversion, words) for one in conversion.positions)
    return (*positions, *_shared_nodes(conversion, words), *_change_nodes(conversion, words))


def _change_nodes(conversion: SiteConversion, words: ConversionStory) -> Iterator[Node]:
    """Yield the tanks that change their liquid, and what the sequence cannot keep or does not know."""
    changes = tuple(
        Node(
            cells=(
                words.tank_of(change),
                words.liquids(change),
                " ".join((f"{words.title(change.way)}.", *words.why_within(change))),
            ),
            tone=Tone.NOTE,
            hint="; ".join(words.asked_by_change(change)),
        )
        for change in conversion.tank_changes
    )
    if changes:
        yield Node(cells=(words.say("tank_changes"),), spans=True, tone=Tone.NOTE, children=changes, is_head=True)
    notes = conversion.sequence.notes if conversion.sequence is not None else ()
    if notes:
        rows = tuple(
            Node(cells=(words.title(note.finding), words.note_subject(note), words.note(note)), tone=Tone.QUESTION)
            for note in notes
        )
        yield Node(cells=(words.say("sequence_notes"),), spans=True, tone=Tone.QUESTION, children=rows, is_head=True)


def _shared_nodes(conversion: SiteConversion, words: ConversionStory) -> Iterator[Node]:
    """Yield what is closed once for a dispenser or the site, and what stays live there."""
    shared = tuple(_closing_node(one, None, words) for one in conversion.closings if not one.position)
    if shared:
        yield Node(cells=(words.say("closed_once"),), spans=True, tone=Tone.NOTE, children=shared, is_head=True)
    live = tuple(
        Node(
            cells=(words.say("stays_live"), f"{one.quantity} ×", words.live(one)),
            tone=Tone.CAUTION,
            hint=words.say("live_lead"),
        )
        for one in conversion.stays_live
    )
    if live:
        yield Node(cells=(words.say("live_title"),), spans=True, tone=Tone.CAUTION, children=live, is_head=True)


def _closing_node(closing: Closing, label: str | None, words: ConversionStory) -> Node:
    return Node(
        cells=(words.title(DifferenceAction.CAP), f"{closing.quantity} ×", words.closing(closing)),
        record=label,
        tone=Tone.NOTE,
        hint=words.story.sourced(closing.source, closing.status),
    )


def _position_node(one: PositionConversion, conversion: SiteConversion, words: ConversionStory) -> Node:
    currency = conversion.survey.site.currency
    lines = tuple(
        Node(
            cells=(
                words.title(line.action),
                line.part.number if line.part else words.installed(line.installed),
                words.difference(line, currency),
            ),
            record=one.position.label,
            tone=_ACTION_TONES[line.action],
            hint=words.difference_source(line),
        )
        for line in one.differences
    )
    basis = tuple(
        Node(cells=(row.label, "", row.text), record=one.position.label, tone=Tone.NOTE)
        for row in basis_rows(one, words)
    )
    closings = tuple(_closing_node(closing, one.position.label, words) for closing in one.closings)
    kinds = ", ".join(map(words.word, one.kinds)) or words.say("no_kind")
    return Node(
        cells=(one.position.label, words.title(one.outcome), kinds),
        record=one.position.label,
        positions=(one.position.label,),
        tone=_OUTCOME_TONES[one.outcome],
        children=(*basis, *lines, *closings),
        is_head=True,
    )
