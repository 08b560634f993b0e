"""A conversion as a text for the terminal: what the first page of the report says, and the parts of each position."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from spoutline.documents.content.blocks import Bullets, CautionNote, Heading, KeyValues, Paragraph, Table
from spoutline.documents.conversion.case_section import case_cells, case_titles, case_told
from spoutline.documents.conversion.position_sheets import basis_rows
from spoutline.documents.conversion.summary import assumed_blocks, summary_blocks, why_open
from spoutline.explain.conversion.case_words import case_note
from spoutline.explain.conversion.story import ConversionStory
from spoutline.model.conversion import SiteConversion
from spoutline.model.position_conversion import Closing, DifferenceAction
from spoutline.planning.conversion.cases import CaseResult

_LABEL_WIDTH = 24
_FIRST_WIDTH, _CELL_WIDTH = 38, 16


def conversion_text(conversion: SiteConversion, words: ConversionStory, cases: Sequence[CaseResult] = ()) -> str:
    """Return the summary, the cases side by side, and the differences of every position."""
    lines = [words.say("report_title", site=conversion.survey.site.name), ""]
    note = case_note(conversion, words)
    lines.extend([note, ""] if note else [])
    lines.extend(_summary(conversion, words))
    lines.extend(_cases(cases, words))
    for one in conversion.positions:
        kinds = ", ".join(map(words.word, one.kinds)) or words.say("no_kind")
        lines += ["", f"{one.position.label}: {words.word(one.outcome)} ({kinds})"]
        if not one.options and one.differences == () and one.kinds:
            lines.append(f"  {why_open(one, words)}")
        lines.extend(f"  {row.label}: {row.text}" for row in basis_rows(one, words))
        currency = conversion.survey.site.currency
        for line in one.differences:
            name = line.part.number if line.part else words.installed(line.installed)
            lines.append(f"  {words.word(line.action):8} {name:16} {words.difference(line, currency)}")
        lines.extend(_closing(closing, words) for closing in one.closings)
    shared = [closing for closing in conversion.closings if not closing.position]
    if shared:
        lines += ["", words.say("site_closings"), *(_closing(closing, words) for closing in shared)]
    if conversion.stays_live:
        lines += ["", words.say("live_title"), *(f"  {words.live(one)}" for one in conversion.stays_live)]
    for change in conversion.tank_changes:
        lines += ["", f"{words.say('tank_head', tank=words.tank_of(change))}: {', '.join(change.positions)}"]
        lines += [f"  {words.liquids(change)}: {words.word(change.way)}"]
        lines += [f"  {text}" for text in (*words.why_within(change), *words.asked_by_change(change))]
    if conversion.sequence is not None and conversion.sequence.notes:
        lines += ["", words.say("sequence_notes"), *(f"  - {words.note(note)}" for note in conversion.sequence.notes)]
    return "\n".join(lines) + "\n"


def _aligned(rows: Sequence[tuple[str, ...]]) -> Iterator[str]:
    """Yield rows with their columns aligned, wider than usual where a language needs it."""
    widths = [max(map(len, column)) for column in zip(*rows, strict=True)]
    first_width, *others = (max(_FIRST_WIDTH, widths[0]), *(max(_CELL_WIDTH, width + 2) for width in widths[1:]))
    for first, *rest in rows:
        yield f"  {first:{first_width}}" + "".join(f"{cell:>{width}}" for cell, width in zip(rest, others, strict=True))


def _cases(cases: Sequence[CaseResult], words: ConversionStory) -> Iterator[str]:
    """Yield the cases side by side, and what is otherwise in each; nothing without cases."""
    if len(cases) < 2:
        return
    yield from ("", words.say("cases"), words.say("cases_lead"))
    yield from _aligned([case_titles(words), *(case_cells(one, words) for one in cases)])
    yield from (f"  - {case_told(one, words)}" for one in cases if one.case is not None)


def _closing(closing: Closing, words: ConversionStory) -> str:
    return f"  {words.word(DifferenceAction.CAP):8} {f'{closing.quantity} ×':16} {words.closing(closing)}"


def _summary(conversion: SiteConversion, words: ConversionStory) -> Iterator[str]:
    for block in (*summary_blocks(conversion, words, None), *assumed_blocks(conversion, words)):
        match block:
            case CautionNote():
                yield f"{block.signal_word.upper()}: {block.hazard}"
                yield f"  {block.why}"
                yield f"  {block.what_to_do}"
                yield f"  {block.source}"
            case Heading():
                yield ""
                yield block.text
            case KeyValues():
                yield from (f"  {row.label:{_LABEL_WIDTH}} {row.text}" for row in block.rows)
            case Bullets():
                yield from (f"  - {item}" for item in block.items)
            case Paragraph():
                yield f"  {block.text}"
            case Table():
                yield from _aligned(
                    (tuple(column.title for column in block.columns), *(row.cells for row in block.rows))
                )
            case _:
                continue
