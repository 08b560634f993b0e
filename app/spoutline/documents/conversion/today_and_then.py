"""What hangs now and what comes: each position in one row, those that are told alike in one together."""

from __future__ import annotations

from spoutline.documents.content.blocks import Column, Emphasis, Row, Table
from spoutline.explain.conversion.story import ConversionStory
from spoutline.explain.phrases.paper_words import PaperWord
from spoutline.frozen import frozen
from spoutline.model.conversion import SiteConversion
from spoutline.model.difference_reason import DifferenceReason
from spoutline.model.installed import InstalledCondition, InstalledPart
from spoutline.model.part import Part
from spoutline.model.part_ref import PartRef, told_apart
from spoutline.model.position_conversion import (
    ConversionKind,
    DifferenceAction,
    DifferenceLine,
    PositionConversion,
)

_NOTHING = "–"
_BAD = (InstalledCondition.WORN, InstalledCondition.DAMAGED)
_LABELS_SHARE = 1.1
_LEAST_SHARE = 0.9
_MANY_LABELS = 60  # characters
# ways of conversion that liquid and vapor of today and afterwards tell better
_TOLD_BY_CHANGES = (
    ConversionKind.DECOMMISSION,
    ConversionKind.ADD_RECOVERY,
    ConversionKind.CHANGE_RECOVERY,
    ConversionKind.CHANGE_LIQUID,
)


@frozen
class _Told:
    """What the table tells of a position beside its label."""

    change: str
    keep: str
    remove: str
    add: str
    is_open: bool


def today_and_then(conversion: SiteConversion, open_labels: frozenset[str], words: ConversionStory) -> Table:
    """Return the table: positions, what changes, the parts that stay, go and come; ``open_labels`` stand out in it."""
    names = _names(conversion)
    shared: dict[_Told, list[str]] = {}
    for one in conversion.positions:
        told = _told(one, names, words, is_open=one.position.label in open_labels)
        shared.setdefault(told, []).append(one.position.label)
    rows = tuple(
        Row(
            (words.places(labels), told.change, told.keep, told.remove, told.add),
            Emphasis.FAULT if told.is_open else Emphasis.NONE,
        )
        for told, labels in shared.items()
    )
    titles = (
        (words.story.word(PaperWord.POSITIONS), _LABELS_SHARE),
        (words.say("kinds"), 1.9),
        (words.title(DifferenceAction.KEEP), 1.5),
        (words.title(DifferenceAction.REMOVE), 2.3),
        (words.title(DifferenceAction.ADD), 3.2),
    )
    return Table(tuple(Column(title, _share(rows, at, share)) for at, (title, share) in enumerate(titles)), rows)


def _share(rows: tuple[Row, ...], at: int, usual: float) -> float:
    """Return the share of a column: less where it holds nothing, more where many positions are told in one row."""
    cells = [row.cells[at] for row in rows]
    if all(cell == _NOTHING for cell in cells):
        return _LEAST_SHARE
    return 2 * usual if at == 0 and max(map(len, cells), default=0) > _MANY_LABELS else usual


def _names(conversion: SiteConversion) -> dict[PartRef, str]:
    """Return how each part is called: by number alone where that tells it from all others on the page."""
    lines = (line for one in conversion.positions for line in one.differences)
    refs = sorted({line.part.ref for line in lines if line.part is not None})
    return dict(zip(refs, told_apart(refs), strict=True))


def _told(one: PositionConversion, names: dict[PartRef, str], words: ConversionStory, *, is_open: bool) -> _Told:
    change = _change(one, words)
    if is_open and one.shown is None:
        hangs = ", ".join(_named(item, words) for item in one.position.installed)
        keep = words.say("hangs_on", parts=hangs) if hangs else _NOTHING
        return _Told(change, keep, _NOTHING, words.title(one.outcome), is_open=True)
    keep, remove = (
        ", ".join(_installed(line, words) for line in one.differences if line.action is action) or _NOTHING
        for action in (DifferenceAction.KEEP, DifferenceAction.REMOVE)
    )
    added = (_new(line, names, words) for line in one.differences if line.action is DifferenceAction.ADD)
    return _Told(change, keep, remove, ", ".join(added) or _NOTHING, is_open)


def _change(one: PositionConversion, words: ConversionStory) -> str:
    """Return liquid and vapor recovery, of today too where they change, and what else is asked."""
    position = one.position
    told = [words.word(kind) for kind in one.kinds if kind not in _TOLD_BY_CHANGES]
    told.append(words.liquid_change(position))
    if position.vapour_today is not position.vapour_wanted:
        told.append(words.vapour_change(position))
    if not one.kinds:
        told.append(words.say("no_kind"))
    return "; ".join(told)


def _installed(line: DifferenceLine, words: ConversionStory) -> str:
    """Return a part that hangs there: kind and number, or its description; whether it is in bad condition."""
    item = line.installed
    if item is None:
        return ""
    if line.reason is DifferenceReason.NOT_RECORDED:
        return f"{words.story.word(item.kind)} ({words.word(line.reason)})"
    return _named(item, words)


def _named(item: InstalledPart, words: ConversionStory) -> str:
    told = item.description if item.ref is None else f"{words.story.word(item.kind)} {item.ref}"
    return f"{told} ({words.word(item.condition)})" if item.condition in _BAD else told


def _new(line: DifferenceLine, names: dict[PartRef, str], words: ConversionStory) -> str:
    part: Part | None = line.part
    text = f"{words.story.word(part.kind)} {names[part.ref]}" if part is not None else ""
    return text if line.quantity == 1 else f"{line.quantity} × {text}"
