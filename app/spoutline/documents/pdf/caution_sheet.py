"""Cautions with their signs, gravest first, in two columns on few pages."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Final

from reportlab.lib.colors import Color, HexColor, black, white
from reportlab.lib.styles import ParagraphStyle
from reportlab.pdfbase.pdfmetrics import stringWidth
from reportlab.platypus import Flowable, Spacer, Table, TableStyle

from spoutline.documents.content.blocks import CautionSheet, Signal, SignedCaution
from spoutline.documents.pdf import styles
from spoutline.documents.pdf.fonts import BOLD, REGULAR, markup, printable
from spoutline.documents.pdf.paragraphs import Paragraph
from spoutline.documents.pdf.sign_painter import SignFlowable, paint_alert

# points; the largest at which all fits is the measure. None is smaller than 7: the sheet is read standing, outdoors
# (common practice, no source)
_SIZES: Final = (8.0, 7.6, 7.2, 7.0)
_WORTH_A_PAGE: Final = 0.9  # of that size: letters no smaller than this are taken where they save a page
_LEAST_SOURCE: Final = 5.6  # points; sources are set smaller than the text down to this
_GAP: Final = 14.0
_HEAD_ROOM: Final = 74.0  # heading and lead above the first page's columns
_LEAD_ROOM: Final = 30.0  # each further paragraph there
_ROOM_BELOW: Final = 4.0
_SIGNED_ROOM: Final = 56.0  # for the lines to be signed
_LEADING: Final = 1.2
_Pages = list[list[list[Flowable]]]  # by page and column
# signal words after ANSI Z535.4: danger white on red, warning black on orange, caution black on yellow, notice white on
# blue without the alert symbol; from memory. In grey the four panels differ in shade, and each bears its word.
PANELS: Final[dict[Signal, tuple[Color, Color]]] = {
    Signal.DANGER: (HexColor("#a3151b"), white),
    Signal.WARNING: (HexColor("#ef7d00"), black),
    Signal.CAUTION: (HexColor("#ffd400"), black),
    Signal.NOTICE: (HexColor("#0b4a8a"), white),
}


class SignalPanel(Flowable):  # type: ignore[misc]
    """The signal word on its colour, with the safety alert symbol where people can be hurt."""

    def __init__(self, signal: Signal, word: str, size_pt: float, width_pt: float) -> None:
        super().__init__()
        self._signal = signal
        self._word = printable(word)
        self._size = size_pt
        self.width, self.height = width_pt, size_pt * 1.5

    def wrap(self, _available_width: float, _available_height: float) -> tuple[float, float]:
        """Return the size, as reportlab asks for it."""
        return self.width, self.height

    def draw(self) -> None:
        """Paint panel, symbol and word."""
        canvas = self.canv
        ground, ink = PANELS[self._signal]
        canvas.saveState()
        canvas.setFillColor(ground)
        canvas.setStrokeColor(black)
        canvas.setLineWidth(0.6)
        canvas.rect(0, 0, self.width, self.height, stroke=1, fill=1)
        x = self._size * 0.6
        if self._signal is not Signal.NOTICE:
            canvas.translate(x + self._size * 0.6, self.height / 2 - self._size * 0.06)
            paint_alert(canvas, self._size * 0.62, ink, ground)
            canvas.translate(-x - self._size * 0.6, -self.height / 2 + self._size * 0.06)
            x += self._size * 1.6
        canvas.setFillColor(ink)
        canvas.setFont(BOLD, self._size)
        canvas.drawString(x, self.height / 2 - self._size * 0.36, self._word)
        canvas.restoreState()


def caution_sheet(block: CautionSheet, width_pt: float) -> Iterator[Flowable]:
    """Return the cautions on at most ``block.pages`` pages, lines to sign included.

    Where they do not fit even at the smallest size, they take as few more as that needs: none is left out or set
    smaller. Letters are set a little smaller than need be where that saves a page, which else often bears one caution
    alone.
    """
    column = (width_pt - _GAP) / 2
    at_size = {size: _pages([_item(one, size, column) for one in block.notes], column, block) for size in _SIZES}
    most = max(block.pages, len(at_size[_SIZES[-1]]))
    largest = next(size for size in _SIZES if len(at_size[size]) <= most)
    near = (pages for size, pages in at_size.items() if largest * _WORTH_A_PAGE <= size <= largest)
    yield from _set_pages(min(near, key=len), column)


def _pages(items: list[Flowable], column_pt: float, block: CautionSheet) -> _Pages:
    """Return pages of two columns each, filled in reading order; those of the last page are about as long.

    The first page has less room for its heading, the last for the lines to be signed.
    """
    heights = [float(item.wrap(column_pt, 10_000)[1]) for item in items]
    last, columns = 1, _columns(heights, block, 1)
    while len(columns) > 2 * last:
        last += 1
        further = _columns(heights, block, last)
        if len(further) <= 2 * (last - 1):  # all fits on a page less but for the lines, which take some cautions along
            break
        columns = further
    pages = [columns[at : at + 2] for at in range(0, len(columns), 2)]
    pages[-1] = _evened([number for column in pages[-1] for number in column], heights)
    return [[[items[number] for number in column] for column in page] for page in pages]


def _columns(heights: list[float], block: CautionSheet, last: int) -> list[list[int]]:
    """Return the numbers of the cautions in each column where ``last`` is the page with the lines to be signed."""

    def room(number: int) -> float:
        page = (number - 1) // 2 + 1
        signed = _SIGNED_ROOM if block.signed_by and page == last else 0.0
        above = _HEAD_ROOM + _LEAD_ROOM * (block.leads - 1) if page == 1 else 0.0
        return float(styles.TEXT_HEIGHT_LEAST - _ROOM_BELOW - above - signed)

    columns: list[list[int]] = [[]]
    left = room(1)
    for number, needed in enumerate(heights):
        if needed > left and columns[-1]:
            columns.append([])
            left = room(len(columns))
        columns[-1].append(number)
        left -= needed
    return columns


def _evened(numbers: list[int], heights: list[float]) -> list[list[int]]:
    """Return the cautions of a page in two columns, the longer of which is as short as can be."""

    def longer(count: int) -> float:
        return max(sum(heights[one] for one in some) for some in (numbers[:count], numbers[count:]))

    count = min(range(len(numbers), -1, -1), key=longer)
    return [numbers[:count], numbers[count:]]


def _set_pages(pages: _Pages, column_pt: float) -> Iterator[Flowable]:
    for left, right in pages:
        widths = [column_pt, _GAP, column_pt]
        yield Table([[left, "", right]], colWidths=widths, style=TableStyle(_bare_rules()), hAlign="LEFT")


def _item(signed: SignedCaution, size: float, column_pt: float) -> Flowable:
    """Return one caution: panel above, sign at the left, text at the right."""
    note = signed.note
    sign_size = size * 4.6
    text_width = column_pt - sign_size - size * 0.9
    plain = _style("caution_sheet_text", REGULAR, size)
    text = [
        Paragraph(markup(note.hazard), _style("caution_sheet_hazard", BOLD, size * 1.04)),
        Paragraph(markup(note.why), plain),
        Paragraph(f"<b>→</b> {markup(note.what_to_do)}", plain),
        Paragraph(
            markup(note.source),
            _style("caution_sheet_source", REGULAR, max(size * 0.76, min(size, _LEAST_SOURCE)), grey=True),
        ),
    ]
    panel = SignalPanel(note.signal, note.signal_word, size * 1.02, _panel_width(note.signal_word, size))
    rules = [*_bare_rules(), ("TOPPADDING", (0, 0), (-1, -1), size * 0.12)]
    body = Table(
        [[SignFlowable(signed.sign, sign_size), [panel, *text]]],
        colWidths=[sign_size + size * 0.9, text_width],
        style=TableStyle(rules),
        hAlign="LEFT",
    )
    closing = Spacer(1, size * 0.7)
    return Table([[[body, closing]]], colWidths=[column_pt], style=TableStyle(_bare_rules()), hAlign="LEFT")


def _bare_rules() -> list[tuple[object, ...]]:
    """Return the rules of a table without any padding."""
    whole: list[tuple[object, ...]] = [("FONTNAME", (0, 0), (-1, -1), REGULAR), ("VALIGN", (0, 0), (-1, -1), "TOP")]
    sides = ("LEFTPADDING", "RIGHTPADDING", "TOPPADDING", "BOTTOMPADDING")
    return [*whole, *((side, (0, 0), (-1, -1), 0) for side in sides)]


def _panel_width(word: str, size: float) -> float:
    return float(stringWidth(printable(word), BOLD, size * 1.02)) + size * 3.6


def _style(name: str, font: str, size: float, *, grey: bool = False) -> ParagraphStyle:
    return ParagraphStyle(
        f"{name}_{size:g}",
        fontName=font,
        bulletFontName=font,
        fontSize=size,
        leading=size * _LEADING,
        textColor=styles.GREY if grey else styles.BLACK,
        splitLongWords=1,
    )
