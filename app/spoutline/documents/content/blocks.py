"""The blocks of a document: texts, tables, drawings, in reading order."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from enum import StrEnum

from spoutline.documents.drawing.shapes import Drawing
from spoutline.explain.plan.texts import Named, WorkedText
from spoutline.frozen import frozen
from spoutline.ruletables.caution_signs import CautionSign


class Role(StrEnum):
    """What a paragraph is for."""

    BODY = "body"
    LEAD = "lead"  # stands out under a heading
    NOTE = "note"  # small print


class Alignment(StrEnum):
    """How the cells of a column stand."""

    LEFT = "left"
    RIGHT = "right"


class Emphasis(StrEnum):
    """How a row stands out."""

    NONE = "none"
    TOTAL = "total"
    FAULT = "fault"


class Signal(StrEnum):
    """Signal words of a caution, gravest first."""

    DANGER = "danger"
    WARNING = "warning"
    CAUTION = "caution"
    NOTICE = "notice"


class PaperSize(StrEnum):
    """Sheet sizes."""

    A4 = "A4"
    LETTER = "Letter"


@frozen
class Heading:
    """A heading of a chapter, ``level`` 1, or of a section in it, 2. All headings stand in the outline.

    ``anchor`` is the name by which links lead here; empty where none does.
    """

    text: str
    level: int
    anchor: str = ""


@frozen
class Link:
    """The signs of a text from ``start`` to before ``end``, which lead to the heading or row that bears ``anchor``."""

    start: int
    end: int
    anchor: str


def linked_pieces(text: str, links: Iterable[Link]) -> Iterator[tuple[str, Link | None]]:
    """Yield a text in pieces, each with the link that it is, or None; the links stand in their order."""
    reached = 0
    for link in links:
        if link.start > reached:
            yield text[reached : link.start], None
        yield text[link.start : link.end], link
        reached = link.end
    if reached < len(text):
        yield text[reached:], None


@frozen
class Paragraph:
    """Running text; the figures in a ``formula`` have symbols with lowered indices, other texts may have ``links``."""

    text: str
    role: Role = Role.BODY
    formula: bool = False
    links: tuple[Link, ...] = ()


@frozen
class Bullets:
    """A list of sentences."""

    items: tuple[str, ...]


@frozen
class KeyValues:
    """Labelled texts."""

    rows: tuple[Named, ...]


@frozen
class Column:
    """A column of a table; ``share`` is its part of the width, relative to the other columns.

    Title and cells of a ``formula`` column are symbols and formulas, with raised powers and lowered indices.
    """

    title: str
    share: float
    alignment: Alignment = Alignment.LEFT
    formula: bool = False


@frozen
class Row:
    """Cells, one for each column. ``links`` are those of the cell in column ``linked``, in their order.

    ``anchor`` is the name by which links lead here; empty where none does. Rows of a folded table bear none.
    """

    cells: tuple[str, ...]
    emphasis: Emphasis = Emphasis.NONE
    linked: int = 0
    links: tuple[Link, ...] = ()
    anchor: str = ""

    def linked_pieces(self) -> Iterator[tuple[str, Link | None]]:
        """Yield the linked cell in pieces, each with the link that it is, or None."""
        return linked_pieces(self.cells[self.linked], self.links)


@frozen
class Table:
    """Rows under column titles, which repeat on every page; ``dense`` sets them closer, ``tight`` closer still.

    ``close`` is for many rows that are read line by line: as close as tight ones, in letters as large as any table's.

    A ``whole`` table that fits on one page is not broken over two. A ``folded`` one is narrow: on a sheet its rows
    stand two beside each other, read across.
    """

    columns: tuple[Column, ...]
    rows: tuple[Row, ...]
    dense: bool = False
    whole: bool = False
    tight: bool = False
    close: bool = False
    folded: bool = False

    def __post_init__(self) -> None:
        for row in self.rows:
            if len(row.cells) != len(self.columns):
                raise ValueError(f"{len(row.cells)} cells under {len(self.columns)} columns: {row.cells}")


@frozen
class Figure:
    """A drawing with its caption; ``scale_phrase`` has a place ``{n}`` for the scale, empty for a chart.

    ``most_height_mm`` is how high the drawing may be on the sheet; None leaves that to where it stands.
    """

    drawing: Drawing
    caption: str
    scale_phrase: str = ""
    most_height_mm: float | None = None


@frozen
class NumberedLine:
    """A worked line with the number by which others refer to it, and the mark of its source in a list."""

    number: str
    line: WorkedText
    mark: str


@frozen
class Derivation:
    """The formulas of a calculation, each with its number, what its symbols mean, and the mark of its source."""

    steps: tuple[NumberedLine, ...]


@frozen
class ToldBefore:
    """Lines that hold here too and were told before, referred to by number."""

    text: str


@frozen
class Worked:
    """The worked lines of one check; lines without a number carry their source as a text."""

    title: str
    outcome: str
    lines: tuple[WorkedText | NumberedLine | ToldBefore, ...]
    limit: str
    sources: tuple[str, ...]


@frozen
class CautionNote:
    """One caution of the installer's sheet."""

    signal: Signal
    signal_word: str
    hazard: str
    why: str
    what_to_do: str
    source: str


@frozen
class PageBreak:
    """The next block starts a page, unless more than the share ``unless_left`` of a page is left.

    Where the next ``opening`` blocks have room below what stands on the page, they go on there, so that no few lines
    are alone on a page.
    """

    unless_left: float = 1.0
    opening: int = 0


@frozen
class Letterhead:
    """Who writes: name and lines beside a picture (PNG or JPEG bytes, empty for none)."""

    name: str
    lines: tuple[str, ...]
    picture: bytes = b""


@frozen
class SignatureLines:
    """Lines to be filled in by hand, each with its label below; they stay on one page."""

    labels: tuple[str, ...]


@frozen
class Columns:
    """Two runs of blocks side by side on one page; ``left_share`` is the left one's part of the width."""

    left: tuple[Block, ...]
    right: tuple[Block, ...]
    left_share: float = 0.5


@frozen
class Together:
    """Blocks that stay on one page as far as a page holds them, so that the last of them never stand alone."""

    blocks: tuple[Block, ...]


@frozen
class ScanCode:
    """A code for cameras (QR, ISO/IEC 18004) that holds ``text``, with a caption below it."""

    text: str
    caption: str


@frozen
class CautionSheet:
    """Cautions with their signs on at most ``pages`` pages, set smaller where they are many.

    ``signed_by`` are the labels of lines to be signed below the last of them; ``leads`` counts the paragraphs between
    the heading of the page and the cautions.
    """

    notes: tuple[SignedCaution, ...]
    pages: int
    signed_by: tuple[str, ...] = ()
    leads: int = 1


@frozen
class SignedCaution:
    """A caution with the sign beside it."""

    note: CautionNote
    sign: CautionSign


@frozen
class TextBox:
    """A field of a form to write in; ``name`` is unique in the document, ``tip`` says what belongs in it.

    A hidden field is for the program that reads the form back: it takes no room and nobody sees it.
    """

    name: str
    tip: str
    value: str = ""
    lines: int = 1
    read_only: bool = False
    hidden: bool = False


@frozen
class ChoiceBox:
    """A field of a form with one of ``options``, pairs of stored value and shown word; ``value`` is chosen at first."""

    name: str
    tip: str
    options: tuple[tuple[str, str], ...]
    value: str


@frozen
class FormTable:
    """A table whose cells are texts or fields."""

    columns: tuple[Column, ...]
    rows: tuple[tuple[str | TextBox | ChoiceBox, ...], ...]


@frozen
class Picture:
    """A photo (PNG or JPEG bytes) with a caption below it."""

    content: bytes
    caption: str


@frozen
class PictureRow:
    """Up to three small pictures side by side, each with its caption below it."""

    pictures: tuple[Picture, ...]


SpecialBlock = (
    Letterhead | SignatureLines | Columns | Together | ScanCode | CautionSheet | FormTable | Picture | PictureRow
)
WorkedBlock = Worked | Derivation
Block = (
    SpecialBlock | WorkedBlock | Heading | Paragraph | Bullets | KeyValues | Table | Figure | CautionNote | PageBreak
)


@frozen(kw_only=True)
class Document:
    """A whole document. ``running_head`` and ``running_foot`` stand on every page; ``page_phrase`` has ``{page}``.

    ``notice`` stands at the right of every head: what nobody may overlook on any page.
    """

    title: str
    subject: str
    author: str
    language: str
    paper: PaperSize
    running_head: str
    running_foot: str
    page_phrase: str
    blocks: tuple[Block, ...]
    notice: str = ""
