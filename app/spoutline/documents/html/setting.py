"""Content blocks turned into HTML elements."""

from __future__ import annotations

from base64 import b64encode
from collections.abc import Iterable, Iterator, Sequence
from typing import Final

from spoutline.documents.content import blocks
from spoutline.documents.content.blocks import Alignment, Emphasis, Role
from spoutline.documents.drawing.fit import fit
from spoutline.documents.html.escaping import attribute, direction, formula_html, html_text
from spoutline.documents.html.fields import field
from spoutline.documents.html.signs import code_svg, sign_svg
from spoutline.documents.html.svg import drawing_svg
from spoutline.documents.pdf import styles
from spoutline.documents.pdf.photo import drawable
from spoutline.documents.pdf.side_by_side import COLUMN_GAP
from spoutline.explain.plan.texts import WorkedText

_TITLE_LEVEL: Final = 1
_NO_HEADING: Final = ""


class PageSetting:
    """Sets the blocks of one page; ids count up, so that equal pages are equal bytes."""

    def __init__(self, paper: blocks.PaperSize) -> None:
        # drawings are as large as on the sheet, so that both tell the same scale
        self._width_pt = styles.PAGE_SIZES[paper][0] - 2 * styles.MARGIN_SIDE
        self._ids = 0
        self._chapters: list[tuple[str, str]] = []
        self._level = _TITLE_LEVEL
        self._heading = _NO_HEADING

    @property
    def chapters(self) -> tuple[tuple[str, str], ...]:
        """Id and text of every heading of a chapter set so far."""
        return tuple(self._chapters)

    def elements(self, content: Sequence[blocks.Block]) -> list[str]:
        """Return the elements of ``content`` in its order."""
        return [element for block in content for element in self._elements(block)]

    def _elements(self, block: blocks.Block) -> Iterator[str]:
        match block:
            case blocks.Heading():
                yield self._heading_element(block)
            case blocks.Paragraph():
                named = "" if block.role is Role.BODY else f' class="{block.role}"'
                told = formula_html(block.text) if block.formula else _linked_text(block)
                yield f"<p{named}{direction(block.text)}>{told}</p>\n"
            case blocks.Bullets():
                yield f"<ul>{''.join(map(_item, block.items))}</ul>\n" if block.items else ""
            case blocks.KeyValues():
                yield _key_values(block)
            case blocks.Table():
                yield self._table(block)
            case blocks.Figure():
                yield self._figure(block, styles.figure_height(block), self._width_pt)
            case blocks.Worked():
                yield _worked(block)
            case blocks.Derivation():
                yield _lines(block.steps)
            case blocks.CautionNote():
                yield _caution(block)
            case blocks.PageBreak():
                yield '<div class="sheet"></div>\n' if block.unless_left >= 1.0 else "<hr>\n"
            case _:
                yield from self._special(block)

    def _special(self, block: blocks.SpecialBlock) -> Iterator[str]:
        match block:
            case blocks.Letterhead():
                yield _letterhead(block)
            case blocks.SignatureLines():
                yield _signatures(block.labels)
            case blocks.Columns():
                yield self._columns(block)
            case blocks.Together():
                yield f'<div class="together">{"".join(self.elements(block.blocks))}</div>\n'
            case blocks.ScanCode():
                caption, text = html_text(block.caption), html_text(block.text)
                code = code_svg(block.text)
                yield f'<figure class="scan">{code}<figcaption>{caption}<br>{text}</figcaption></figure>'
            case blocks.CautionSheet():
                yield "".join(_caution(one.note, sign_svg(one.sign)) for one in block.notes)
                yield _signatures(block.signed_by)
            case blocks.FormTable():
                yield self._form_table(block)
            case blocks.PictureRow():
                yield f'<div class="pictures">{"".join(map(_photo, block.pictures))}</div>\n'
            case blocks.Picture():
                yield _photo(block)

    def _new_id(self, kind: str) -> str:
        self._ids += 1
        return f"{kind}{self._ids}"

    def _heading_element(self, block: blocks.Heading) -> str:
        name = block.anchor or self._new_id("h")
        # no level is left out on the way down, however a paper begins
        self._level = min(block.level + _TITLE_LEVEL, self._level + 1)
        self._heading = name
        if block.level == 1:
            self._chapters.append((name, block.text))
        return f'<h{self._level} id="{name}"{direction(block.text)}>{html_text(block.text)}</h{self._level}>\n'

    def _scrolled(self, content: str) -> str:
        """Return what may be wider than a small window in a frame that scrolls, also by keyboard."""
        named = f' aria-labelledby="{self._heading}"' if self._heading else ""
        return f'<div class="wide" role="group" tabindex="0"{named}>{content}</div>\n'

    def _table(self, block: blocks.Table) -> str:
        dense = ' class="dense"' if block.dense else ""
        rows = "".join(_row(row, block.columns) for row in block.rows)
        return self._scrolled(f"<table{dense}>{_table_head(block.columns)}<tbody>{rows}</tbody></table>")

    def _form_table(self, block: blocks.FormTable) -> str:
        hidden = [isinstance(one, blocks.TextBox) and one.hidden for row in block.rows for one in row]
        if all(hidden):
            return ""
        rows = "".join(f"<tr>{''.join(map(_form_cell, row))}</tr>" for row in block.rows)
        return self._scrolled(f"<table>{_table_head(block.columns)}<tbody>{rows}</tbody></table>")

    def _figure(self, block: blocks.Figure, height_pt: float, width_pt: float) -> str:
        fitted = fit(block.drawing, width_pt=width_pt, height_pt=height_pt)
        scale = f"{block.scale_phrase.format(n=fitted.scale)}." if block.scale_phrase else ""
        caption = " ".join(filter(None, (block.caption, scale)))
        drawn = self._scrolled(drawing_svg(block.drawing, fitted, self._new_id("d")))
        return f"<figure>{drawn}<figcaption{direction(caption)}>{html_text(caption)}</figcaption></figure>\n"

    def _columns(self, block: blocks.Columns) -> str:
        sides = []
        for content, share in ((block.left, block.left_share), (block.right, 1 - block.left_share)):
            inside = "".join(self._beside(content, (self._width_pt - COLUMN_GAP) * share))
            sides.append(f'<div style="flex:{share:.2f} 1 16rem">{inside}</div>')
        return f'<div class="columns">{"".join(sides)}</div>\n'

    def _beside(self, content: Iterable[blocks.Block], width_pt: float) -> Iterator[str]:
        for block in content:
            if isinstance(block, blocks.Figure):
                yield self._figure(block, styles.figure_height(block, styles.FIGURE_HEIGHT_BESIDE), width_pt)
            else:
                yield from self._elements(block)


def _item(text: str) -> str:
    return f"<li{direction(text)}>{html_text(text)}</li>"


def _key_values(block: blocks.KeyValues) -> str:
    rows = (
        f"<div><dt>{html_text(row.label)}</dt><dd{direction(row.text)}>{html_text(row.text)}</dd></div>"
        for row in block.rows
    )
    return f"<dl>{''.join(rows)}</dl>\n"


def _table_head(columns: Sequence[blocks.Column]) -> str:
    cells = (
        f'<th scope="col"{_side(column)}>{_formed(column.title, column)}</th>' if column.title else "<td></td>"
        for column in columns
    )
    return f"<thead><tr>{''.join(cells)}</tr></thead>"


def _side(column: blocks.Column) -> str:
    return ' class="end"' if column.alignment is Alignment.RIGHT else ""


def _row(row: blocks.Row, columns: Sequence[blocks.Column]) -> str:
    span = 1
    if row.emphasis is Emphasis.TOTAL:  # a total's name reaches to its first figure, as on paper
        span = next((at for at, cell in enumerate(row.cells[1:], start=1) if cell), 1)
    head = _first_cell(row, columns[0], span)
    rest = (
        f"<td{_side(columns[at])}{direction(row.cells[at])}>{_cell_text(row, at, columns[at])}</td>"
        for at in range(span, len(columns))
    )
    named = "" if row.emphasis is Emphasis.NONE else f' class="{row.emphasis}"'
    anchor = f' id="{row.anchor}"' if row.anchor else ""
    return f"<tr{anchor}{named}>{head}{''.join(rest)}</tr>"


def _first_cell(row: blocks.Row, column: blocks.Column, span: int) -> str:
    spanned, text = f' colspan="{span}"' if span > 1 else "", row.cells[0]
    if not text:
        return f"<td{spanned}></td>"
    return f'<th scope="row"{_side(column)}{spanned}{direction(text)}>{_cell_text(row, 0, column)}</th>'


def _cell_text(row: blocks.Row, at: int, column: blocks.Column) -> str:
    """Return the text of a cell, the linked parts of it as links."""
    if not row.links or row.linked != at:
        return _formed(row.cells[at], column)
    pieces = (_formed(piece, column) if link is None else _link(piece, link) for piece, link in row.linked_pieces())
    return "".join(pieces)


def _linked_text(block: blocks.Paragraph) -> str:
    pieces = blocks.linked_pieces(block.text, block.links)
    return "".join(html_text(piece) if link is None else _link(piece, link) for piece, link in pieces)


def _link(text: str, link: blocks.Link) -> str:
    return f'<a href="#{link.anchor}">{html_text(text)}</a>'


def _formed(text: str, column: blocks.Column) -> str:
    return formula_html(text) if column.formula else html_text(text)


def _worked(block: blocks.Worked) -> str:
    closing = " – ".join((block.limit, "; ".join(block.sources))) if block.sources else ""
    beside = block.outcome if closing else f"{block.outcome}. {block.limit}"
    note = f'<p class="note">{html_text(closing)}</p>' if closing else ""
    title = f'<p class="worked"><strong>{html_text(block.title)}</strong> {html_text(beside)}</p>'
    return f"{title}{_lines(block.lines)}{note}\n"


def _lines(lines: Iterable[WorkedText | blocks.NumberedLine | blocks.ToldBefore]) -> str:
    items = "".join(f"<li>{_worked_line(line)}</li>" for line in lines)
    return f'<ul class="lines">{items}</ul>\n'


def _worked_line(line: WorkedText | blocks.NumberedLine | blocks.ToldBefore) -> str:
    if isinstance(line, blocks.ToldBefore):
        return html_text(line.text)
    number, mark = (line.number, line.mark) if isinstance(line, blocks.NumberedLine) else ("", "")
    text = line.line if isinstance(line, blocks.NumberedLine) else line
    small = [formula_html(text.inputs)] if text.inputs else []
    small += [html_text(item) for item in (text.note, "" if mark else text.source) if item]
    parts = (
        f'<span class="number">{html_text(number)}</span>' if number else "",
        f"<span>{formula_html(text.formula)}</span>" if text.formula else "",
        f'<span class="inputs">{"; ".join(small)}</span>' if small else "",
        f"<strong>{formula_html(text.result)}</strong>" if text.result else "",
        f'<span class="mark">{html_text(mark)}</span>' if mark else "",
    )
    return " ".join(filter(None, parts))


def _caution(note: blocks.CautionNote, sign: str = "") -> str:
    source = f'<p class="source">{html_text(note.source)}</p>' if note.source else ""
    return (
        f'<div class="caution {note.signal}">{sign}<div><p class="signal">{html_text(note.signal_word)}</p>'
        f'<p class="hazard">{html_text(note.hazard)}</p><p>{html_text(note.why)}</p>'
        f"<p>→ {html_text(note.what_to_do)}</p>{source}</div></div>\n"
    )


def _letterhead(block: blocks.Letterhead) -> str:
    lines = "<br>".join(map(html_text, block.lines))
    picture = _image(drawable(block.picture, "", "seller.logo"), block.name) if block.picture else ""
    name = f"<strong{direction(block.name)}>{html_text(block.name)}</strong>"
    return f'<div class="letterhead">{picture}<address>{name}<br>{lines}</address></div>\n'


def _signatures(labels: Sequence[str]) -> str:
    return f'<ul class="sign-here">{"".join(map(_item, labels))}</ul>\n' if labels else ""


def _photo(block: blocks.Picture) -> str:
    image = _image(drawable(block.content, block.caption, "photo"), block.caption)
    return f"<figure>{image}<figcaption>{html_text(block.caption)}</figcaption></figure>\n"


def _image(content: bytes, told: str) -> str:
    kind = "png" if content.startswith(b"\x89PNG") else "jpeg"
    return f'<img alt="{attribute(told)}" src="data:image/{kind};base64,{b64encode(content).decode()}">'


def _form_cell(cell: str | blocks.TextBox | blocks.ChoiceBox) -> str:
    return f"<td>{html_text(cell) if isinstance(cell, str) else field(cell)}</td>"
