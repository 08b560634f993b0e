"""Content blocks turned into what reportlab sets on pages."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from typing import Any, Final

from reportlab.pdfbase.pdfmetrics import stringWidth
from reportlab.platypus import CondPageBreak, Flowable, KeepTogether, Spacer, Table, TableStyle
from reportlab.platypus import PageBreak as NextPage

from spoutline.documents.content import blocks
from spoutline.documents.pdf import styles
from spoutline.documents.pdf.caution_sheet import caution_sheet
from spoutline.documents.pdf.fields import form_table
from spoutline.documents.pdf.figure import FigureFlowable
from spoutline.documents.pdf.fonts import REGULAR, markup
from spoutline.documents.pdf.formulas import formula_markup
from spoutline.documents.pdf.letter import letterhead, signature_lines
from spoutline.documents.pdf.paragraphs import Paragraph, linked_paragraph
from spoutline.documents.pdf.photo import photo, photo_row
from spoutline.documents.pdf.row_table import RowTable
from spoutline.documents.pdf.side_by_side import scan_code, side_by_side
from spoutline.documents.pdf.tables import set_table
from spoutline.explain.plan.texts import WorkedText

# a table names its own font on the page even where every cell is a paragraph
_NO_OTHER_FONT: Final = ("FONTNAME", (0, 0), (-1, -1), REGULAR)
_LABEL_SHARE: Final = 0.24
# number, formula, what is put in, result, mark of the source
_WORKED_SHARES: Final = (0.045, 0.285, 0.43, 0.185, 0.055)
_DERIVATION_SHARES: Final = (0.045, 0.45, 0.45, 0.055)
_WORKED_RULES: Final[tuple[tuple[Any, ...], ...]] = (
    _NO_OTHER_FONT,
    ("VALIGN", (0, 0), (-1, -1), "TOP"),
    ("LINEBELOW", (0, 0), (-1, -1), 0.3, styles.RULE),
    ("LEFTPADDING", (0, 0), (0, -1), 0),
    ("RIGHTPADDING", (0, 0), (-1, -1), 4),
    ("RIGHTPADDING", (-1, 0), (-1, -1), 0),
    ("TOPPADDING", (0, 0), (-1, -1), 0.8),
    ("BOTTOMPADDING", (0, 0), (-1, -1), 1.6),
)
_NEEDED_BELOW_HEADING: Final = 70.0  # a heading this near the foot goes to the next page
_HEADING_HEIGHT: Final = 34.0  # a section's heading with the room around it
_ROOM_ABOVE_CHAPTER: Final = 22.0
_LAST_CAUTIONS: Final = 3
_CAUTION_GAP: Final = 7.0
_SIGNAL_PADDING: Final = 15.0  # points beside a signal word
_ENDLESS: Final = 1e6


class OutlineHeading(Paragraph):
    """A heading that the page template enters in the outline."""

    def __init__(self, text: str, level: int, anchor: str = "") -> None:
        super().__init__(markup(text), styles.HEADINGS[level])
        self.outline_text = text
        self.outline_level = level - 1
        self.anchor = anchor


def set_blocks(content: Sequence[blocks.Block], width_pt: float) -> Iterator[Flowable]:
    """Return the flowables of ``content`` for a frame of ``width_pt`` points; a heading stays with what it heads."""
    measured: RowTable | None = None  # set already, to know the room that the heading above needs
    for number, block in enumerate(content):
        following = content[number + 1] if number + 1 < len(content) else None
        table, measured = measured, None
        if isinstance(block, blocks.Heading) and block.level > 1:
            measured = set_table(following, width_pt) if isinstance(following, blocks.Table) else None
            behind = content[number + 2] if number + 2 < len(content) else None
            note = _note_height(following, behind, width_pt) if isinstance(following, blocks.Table) else 0.0
            yield CondPageBreak(_room_below_heading(following, measured, width_pt) + note)
        elif _begins_last_cautions(content, number):
            last = [one for one in content[number : number + _LAST_CAUTIONS] if isinstance(one, blocks.CautionNote)]
            yield CondPageBreak(sum(_height(_caution_table(one, width_pt), width_pt) + _CAUTION_GAP for one in last))
        if isinstance(block, blocks.Table) and (table is not None or _has_note(block, following)):
            yield from _whole_table(
                block, table or set_table(block, width_pt), _note_height(block, following, width_pt)
            )
        elif isinstance(block, blocks.PageBreak) and block.opening:
            yield CondPageBreak(_opening_height(content[number + 1 : number + 1 + block.opening], width_pt))
        elif isinstance(block, blocks.Heading) and number and _may_go_on(content[number - 1]):
            heading = OutlineHeading(block.text, block.level, block.anchor)
            heading.spaceBefore = _ROOM_ABOVE_CHAPTER  # nothing at the top of a page
            yield heading
        else:
            yield from _set_block(block, width_pt)


def _room_below_heading(following: blocks.Block | None, table: RowTable | None, width_pt: float) -> float:
    """Return the room that a heading needs with the start of what it heads; ``table`` is that, where it is one."""
    if isinstance(following, blocks.Figure):
        return FigureFlowable(following, width_pt).least_height_pt + _NEEDED_BELOW_HEADING
    if isinstance(following, blocks.Table) and table is not None:
        return max(_NEEDED_BELOW_HEADING, _HEADING_HEIGHT + _unbroken_height(following, table))
    if isinstance(following, blocks.Derivation):
        return _HEADING_HEIGHT + _derivation_room(following)
    return _NEEDED_BELOW_HEADING


def _derivation_room(block: blocks.Derivation) -> float:
    """Return the room that formulas need with the start of the figures put into them."""
    return float(_NEEDED_BELOW_HEADING + len(block.steps) * styles.WORKED_LINE.leading)


def _opening_height(opening: Sequence[blocks.Block], width_pt: float) -> float:
    """Return the room that the first blocks of a chapter need where they are not to be broken."""
    heights = (
        one.least_height_pt + _NEEDED_BELOW_HEADING if isinstance(one, FigureFlowable) else _height(one, width_pt)
        for one in set_blocks(opening, width_pt)
        if not isinstance(one, CondPageBreak)
    )
    return float(min(sum(heights) + _HEADING_HEIGHT, styles.TEXT_HEIGHT_LEAST))


def _has_note(block: blocks.Table, following: blocks.Block | None) -> bool:
    """Say whether a note belongs to a table that is to stay in one piece."""
    return block.whole and isinstance(following, blocks.Paragraph) and following.role is blocks.Role.NOTE


def _note_height(block: blocks.Table, following: blocks.Block | None, width_pt: float) -> float:
    """Return the height of the note that belongs to a whole table; none where none does."""
    if not isinstance(following, blocks.Paragraph) or not _has_note(block, following):
        return 0.0
    style = styles.ROLES[following.role]
    return _height(Paragraph(markup(following.text), style), width_pt) + float(style.spaceBefore)


def _whole_table(block: blocks.Table, table: RowTable, note_pt: float = 0.0) -> Iterator[Flowable]:
    """Return a table with what keeps it in one piece, and with its note, where it is to stay so."""
    if block.whole:
        yield CondPageBreak(_unbroken_height(block, table) + note_pt)
    yield table


def _unbroken_height(block: blocks.Table, table: RowTable) -> float:
    """Return the height of what must stay together at the start of a table: all of it, or its first rows."""
    if block.whole and table.height <= styles.TEXT_HEIGHT_LEAST - _HEADING_HEIGHT:
        return table.height
    return table.opening_height


def _height(flowable: Flowable, width_pt: float) -> float:
    return float(flowable.wrap(width_pt, _ENDLESS)[1])


def _begins_last_cautions(content: Sequence[blocks.Block], number: int) -> bool:
    """Return whether the last few cautions of a longer sheet begin here, so that none stands alone on a page."""
    if not isinstance(content[number - 1], blocks.CautionNote):
        return False
    rest = content[number : number + _LAST_CAUTIONS + 1]
    run = next((at for at, one in enumerate(rest) if not isinstance(one, blocks.CautionNote)), len(rest))
    return run == _LAST_CAUTIONS


def _set_block(block: blocks.Block, width_pt: float) -> Iterator[Flowable]:
    match block:
        case blocks.Heading():
            yield OutlineHeading(block.text, block.level, block.anchor)
        case blocks.Paragraph():
            yield _paragraph(block)
        case blocks.Bullets():
            for item in block.items:
                yield Paragraph(markup(item), styles.BULLET, bulletText="–")
        case blocks.KeyValues():
            yield _key_values(block, width_pt)
        case blocks.Table():
            yield from _whole_table(block, set_table(block, width_pt))
        case blocks.Figure():
            yield FigureFlowable(block, width_pt)
        case blocks.Worked():
            yield from _worked(block, width_pt)
        case blocks.Derivation():
            yield CondPageBreak(_derivation_room(block))
            yield _derivation(block, width_pt)
        case blocks.CautionNote():
            yield _caution(block, width_pt)
        case blocks.PageBreak():
            yield from _page_break(block)
        case _:
            yield from _set_special_block(block, width_pt)


def _paragraph(block: blocks.Paragraph) -> Paragraph:
    style = styles.ROLES[block.role]
    if block.links:
        return linked_paragraph(blocks.linked_pieces(block.text, block.links), style)
    return Paragraph(formula_markup(block.text) if block.formula else markup(block.text), style)


def _page_break(block: blocks.PageBreak) -> Iterator[Flowable]:
    if block.unless_left >= 1.0:
        yield NextPage()
    else:
        yield CondPageBreak(styles.TEXT_HEIGHT_LEAST * block.unless_left)


def _may_go_on(block: blocks.Block) -> bool:
    """Say whether what follows a block may stand below other things of its page."""
    return isinstance(block, blocks.PageBreak) and bool(block.opening or block.unless_left < 1.0)


def _in_one_piece(flowables: Iterable[Flowable]) -> Iterator[Flowable]:
    """Yield what is set, without what asks for room of its own: one kept in one piece tells no height to another."""
    for one in flowables:
        if isinstance(one, KeepTogether):
            yield from _in_one_piece(one._content)
        elif not isinstance(one, CondPageBreak):
            yield one


def _set_special_block(block: blocks.SpecialBlock, width_pt: float) -> Iterator[Flowable]:
    """Return the flowables of what only letters and the installer's sheets hold."""
    match block:
        case blocks.Letterhead():
            yield from letterhead(block, width_pt)
        case blocks.SignatureLines():
            yield signature_lines(block, width_pt)
        case blocks.Columns():
            yield side_by_side(block, width_pt, _set_block)
        case blocks.Together():
            yield KeepTogether(list(_in_one_piece(set_blocks(block.blocks, width_pt))))
        case blocks.ScanCode():
            yield from scan_code(block)
        case blocks.CautionSheet():
            yield from caution_sheet(block, width_pt)
            if block.signed_by:
                yield signature_lines(blocks.SignatureLines(block.signed_by), width_pt)
        case blocks.FormTable():
            yield form_table(block, width_pt)
        case blocks.Picture():
            yield photo(block, width_pt)
        case blocks.PictureRow():
            yield photo_row(block, width_pt)


def _key_values(block: blocks.KeyValues, width_pt: float) -> Flowable:
    rows = [
        [Paragraph(markup(row.label), styles.LABEL), Paragraph(markup(row.text), styles.VALUE)] for row in block.rows
    ]
    widths = [width_pt * _LABEL_SHARE, width_pt * (1 - _LABEL_SHARE)]
    style = [
        _NO_OTHER_FONT,
        ("VALIGN", (0, 0), (-1, -1), "TOP"),
        ("LEFTPADDING", (0, 0), (0, -1), 0),
        ("TOPPADDING", (0, 0), (-1, -1), 0.8),
        ("BOTTOMPADDING", (0, 0), (-1, -1), 0.8),
    ]
    # notes and addresses may be longer than a page
    return Table(rows, colWidths=widths, style=TableStyle(style), hAlign="LEFT", splitInRow=1)


def _worked(block: blocks.Worked, width_pt: float) -> Iterator[Flowable]:
    """Return title, one row for each line, then limit and sources; the title stays with its first line."""
    closing = " – ".join((block.limit, "; ".join(block.sources))) if block.sources else ""
    beside = block.outcome if closing else f"{block.outcome}. {block.limit}"
    title = f"{markup(block.title)}<font name='{REGULAR}' color='#565d63'>&nbsp;&nbsp;{markup(beside)}</font>"
    yield CondPageBreak(_NEEDED_BELOW_HEADING)
    yield Spacer(1, 5)
    yield Paragraph(title, styles.WORKED_TITLE)
    rows = [_worked_row(line) for line in block.lines]
    told_before = (number for number, line in enumerate(block.lines) if isinstance(line, blocks.ToldBefore))
    rules = [*_WORKED_RULES, *(("SPAN", (1, number), (-1, number)) for number in told_before)]
    widths = [width_pt * share for share in _WORKED_SHARES]
    yield Table(rows, colWidths=widths, style=TableStyle(rules), hAlign="LEFT")
    if closing:
        yield Paragraph(markup(closing), styles.ROLES[blocks.Role.NOTE])


def _derivation(block: blocks.Derivation, width_pt: float) -> Table:
    """Return the formulas, one row for each; a long formula has the room that no figures need here."""
    cells = [_worked_row(step) for step in block.steps]
    rows = [[number, formula, note, mark] for number, formula, note, _, mark in cells]
    widths = [width_pt * share for share in _DERIVATION_SHARES]
    return Table(rows, colWidths=widths, style=TableStyle(_WORKED_RULES), hAlign="LEFT", spaceBefore=3)


def _worked_row(line: WorkedText | blocks.NumberedLine | blocks.ToldBefore) -> list[Any]:
    """Return number, formula, what is put in, result and mark of the source."""
    if isinstance(line, blocks.ToldBefore):
        return ["", Paragraph(markup(line.text), styles.WORKED_INPUT), "", "", ""]
    number, mark = (line.number, line.mark) if isinstance(line, blocks.NumberedLine) else ("", "")
    text = line.line if isinstance(line, blocks.NumberedLine) else line
    small = [formula_markup(text.inputs)] if text.inputs else []
    small += [markup(item) for item in (text.note, "" if mark else text.source) if item]
    return [
        Paragraph(markup(number), styles.WORKED_INPUT),
        Paragraph(formula_markup(text.formula), styles.WORKED_LINE),
        Paragraph("; ".join(small), styles.WORKED_INPUT),
        Paragraph(formula_markup(text.result), styles.WORKED_LINE),
        Paragraph(markup(mark), styles.WORKED_INPUT),
    ]


def _caution(block: blocks.CautionNote, width_pt: float) -> Flowable:
    return KeepTogether([_caution_table(block, width_pt), Spacer(1, _CAUTION_GAP)])


def _caution_table(block: blocks.CautionNote, width_pt: float) -> Table:
    bar, weight = styles.SIGNAL_BARS[block.signal]
    text = [
        Paragraph(markup(block.hazard), styles.HAZARD),
        Paragraph(markup(block.why), styles.CAUTION_TEXT),
        Paragraph(f"<b>→</b> {markup(block.what_to_do)}", styles.CAUTION_TEXT),
        Paragraph(markup(block.source), styles.CAUTION_SOURCE),
    ]
    word = Paragraph(
        f"<font color='{bar.hexval().replace('0x', '#')}'>{markup(block.signal_word)}</font>", styles.SIGNAL_WORD
    )
    rules = [
        _NO_OTHER_FONT,
        ("VALIGN", (0, 0), (-1, -1), "TOP"),
        ("LINEBEFORE", (0, 0), (0, -1), weight, bar),
        ("LEFTPADDING", (0, 0), (0, -1), 8),
        ("TOPPADDING", (0, 0), (-1, -1), 1),
        ("BOTTOMPADDING", (0, 0), (-1, -1), 1),
    ]
    # a signal word is never broken, however long the language makes it
    word_pt = stringWidth(block.signal_word, styles.SIGNAL_WORD.fontName, styles.SIGNAL_WORD.fontSize)
    left = max(width_pt * 0.15, word_pt + _SIGNAL_PADDING)
    return Table([[word, text]], colWidths=[left, width_pt - left], style=TableStyle(rules), hAlign="LEFT")
