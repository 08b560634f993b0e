"""Several other answers side by side in words: what each costs, how many positions it touches, what must go when."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence

from spoutline.explain.phrases.what_if_words import WhatIfWord as Word
from spoutline.explain.plan.story import Story
from spoutline.explain.plan.what_if_text import NOTHING, short_text
from spoutline.frozen import frozen
from spoutline.model.part_ref import told_apart
from spoutline.model.what_if import PartFate, WhatIfEffect
from spoutline.model.what_if_matrix import MatrixCell, PartRow, WhatIfMatrix

_SAME = "="
_MARKS = {
    WhatIfEffect.LOSES_SET: "✗",
    WhatIfEffect.NO_SET: "✗",
    WhatIfEffect.MUST_CHANGE: "◆",
    WhatIfEffect.MAY_STAY: "○",
    WhatIfEffect.PRICE_CHANGES: _SAME,
    WhatIfEffect.GETS_SET: "+",
    WhatIfEffect.SAME: _SAME,
    WhatIfEffect.NONE_LASTS: "✗",
    WhatIfEffect.OTHER_LASTS: "◆",
    WhatIfEffect.LASTS: _SAME,
}
_LEGEND = (WhatIfEffect.MUST_CHANGE, WhatIfEffect.MAY_STAY, WhatIfEffect.SAME, WhatIfEffect.GETS_SET)
_LABELS_TOLD = 3
_GOES = frozenset({PartFate.MUST_GO, PartFate.NOT_SOLD})


@frozen
class MatrixLine:
    """One row: what it tells of, today, and each answer in turn."""

    name: str
    today: str
    cells: tuple[str, ...]


def column_titles(found: WhatIfMatrix, story: Story) -> tuple[str, ...]:
    """Return the titles of today and of each answer."""
    answers = (short_text(one.asked, one.jurisdiction, story) for one in found.columns)
    return (story.word(Word.TODAY), *answers)


def matrix_title(found: WhatIfMatrix, story: Story) -> str:
    """Return the question with its answers as one line."""
    answers = ", ".join(column_titles(found, story)[1:])
    return f"{story.title(found.question)}{story.writing.colon} {answers}"


def sum_lines(found: WhatIfMatrix, story: Story) -> tuple[MatrixLine, ...]:
    """Return what each answer costs and how many positions it touches."""
    currency, today = found.currency, found.today

    def money(minor: int) -> str:
        return story.bare_money(minor, currency)

    return (
        MatrixLine(
            f"{story.word(Word.PRICE_OF_SETS)}, {currency}",
            money(today.price_minor),
            tuple(money(one.price_minor) for one in found.sums),
        ),
        MatrixLine(
            f"{story.word(Word.DIFFERENCE)}, {currency}",
            NOTHING,
            tuple(_signed(one.difference_minor, currency, story) for one in found.sums),
        ),
        MatrixLine(story.word(Word.HOW_MANY_MUST), NOTHING, tuple(str(one.must_change) for one in found.sums)),
        MatrixLine(story.word(Word.HOW_MANY_MAY), NOTHING, tuple(str(one.may_stay) for one in found.sums)),
        MatrixLine(
            story.word(Word.HOW_MANY_WITHOUT),
            str(today.without_set),
            tuple(str(one.without_set) for one in found.sums),
        ),
        MatrixLine(story.word(Word.PIECES_COMING), NOTHING, tuple(str(one.parts_coming) for one in found.sums)),
    )


def _signed(minor: int, currency: str, story: Story) -> str:
    return f"{'+' if minor > 0 else ''}{story.bare_money(minor, currency)}"


def position_lines(found: WhatIfMatrix, story: Story) -> tuple[MatrixLine, ...]:
    """Return each position with mark and price by every answer; positions that come out alike stand in one row."""
    currency = found.currency
    alike: dict[tuple[object, ...], list[str]] = {}
    for row in found.rows:
        alike.setdefault((row.price_today_minor, row.cells), []).append(row.label)
    lines = []
    for row in found.rows:
        labels = alike.pop((row.price_today_minor, row.cells), None)
        if labels is not None:
            today = _priced(row.price_today_minor, currency, story)
            cells = tuple(cell_text(cell, currency, story) for cell in row.cells)
            lines.append(MatrixLine(", ".join(labels), today, cells))
    return tuple(lines)


def cell_text(cell: MatrixCell, currency: str, story: Story) -> str:
    """Return a cell in a few signs, readable without color."""
    mark = _SAME if cell.effect is None else _MARKS[cell.effect]
    return mark if cell.price_minor is None else f"{mark} {story.bare_money(cell.price_minor, currency)}"


def legend_text(story: Story) -> str:
    """Return what the marks of positions mean."""
    told = [f"{_MARKS[effect]} {story.word(effect)}" for effect in _LEGEND]
    return " · ".join((*told, f"{_MARKS[WhatIfEffect.NO_SET]} {story.word(Word.NO_SET)}"))


def part_lines(found: WhatIfMatrix, story: Story) -> tuple[MatrixLine, ...]:
    """Return what must be changed when: each part of today that some answer lets go, and at which positions."""
    alike: dict[tuple[object, ...], list[PartRow]] = {}
    for row in found.part_rows:
        if _GOES.intersection(row.fates):
            alike.setdefault((row.slot, row.part.ref, row.fates), []).append(row)
    names = _names(row for rows in alike.values() for row in rows)
    return tuple(
        MatrixLine(
            _where(rows, story),
            names[rows[0].part.ref],
            tuple(map(_fate_mark, rows[0].fates)),
        )
        for rows in alike.values()
    )


def _where(rows: Sequence[PartRow], story: Story) -> str:
    """Return the place of a part with its positions, or with their number where they are many."""
    slot = story.word(rows[0].slot)
    if len(rows) > _LABELS_TOLD:
        return f"{len(rows)} × {slot}"
    return f"{', '.join(row.label for row in rows)}{story.writing.colon} {slot}"


def _names(rows: Iterable[PartRow]) -> Mapping[object, str]:
    refs = tuple(dict.fromkeys(row.part.ref for row in rows))
    return dict(zip(refs, told_apart(refs), strict=True))


def _fate_mark(fate: PartFate | None) -> str:
    if fate is None:
        return NOTHING
    return "✗" if fate in _GOES else "✓"


def part_legend(story: Story) -> str:
    """Return what the marks of parts mean."""
    return story.word(Word.PARTS_LEGEND)


def _priced(minor: int | None, currency: str, story: Story) -> str:
    return "✗" if minor is None else story.bare_money(minor, currency)
