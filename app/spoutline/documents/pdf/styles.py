"""Sizes, colours and paragraph styles of the paper: black on white with one accent, readable without colour."""

from __future__ import annotations

from dataclasses import replace
from typing import Final

from reportlab.lib.colors import Color, HexColor, white
from reportlab.lib.enums import TA_CENTER, TA_RIGHT
from reportlab.lib.pagesizes import A4, LETTER
from reportlab.lib.styles import ParagraphStyle
from reportlab.lib.units import mm

from spoutline.documents.content.blocks import Alignment, Figure, PaperSize, Role, Signal, Table
from spoutline.documents.drawing.shapes import Ink
from spoutline.documents.pdf.fonts import BOLD, REGULAR
from spoutline.frozen import frozen

PAGE_SIZES: Final = {PaperSize.A4: A4, PaperSize.LETTER: LETTER}
MARGIN_SIDE: Final = 18 * mm
MARGIN_TOP: Final = 23 * mm
MARGIN_BOTTOM: Final = 20 * mm
FIGURE_HEIGHT: Final = 80 * mm
FIGURE_HEIGHT_BESIDE: Final = 56 * mm  # in one of two columns
# what every sheet size leaves for text
TEXT_HEIGHT_LEAST: Final = min(height for _, height in PAGE_SIZES.values()) - MARGIN_TOP - MARGIN_BOTTOM

BLACK: Final = HexColor("#16191c")
GREY: Final = HexColor("#565d63")
RULE: Final = HexColor("#b9bfc4")
ACCENT: Final = HexColor("#1d4f6b")
FAULT: Final = HexColor("#8a2a10")

INKS: Final[dict[Ink, Color]] = {
    Ink.GROUND: BLACK,
    Ink.WATER: HexColor("#3f6f8f"),
    Ink.STATION: HexColor("#3a4248"),
    Ink.VEHICLE: HexColor("#8b9399"),
    Ink.HOSE: ACCENT,
    Ink.HOSE_AT_REST: HexColor("#8fa9b8"),
    Ink.FITTING: BLACK,
    Ink.CORD: GREY,
    Ink.MEASURE: GREY,
    Ink.TEXT: BLACK,
    Ink.PAPER: white,
    Ink.GRID: HexColor("#d9dee1"),
    Ink.AXIS: BLACK,
    Ink.COLD: ACCENT,
    Ink.HOT: FAULT,
    Ink.FAULT: FAULT,
}

# signal colours after ISO 3864-4 are for labels; on paper the word and the bar's weight carry the meaning
SIGNAL_BARS: Final[dict[Signal, tuple[Color, float]]] = {
    Signal.DANGER: (FAULT, 4.5),
    Signal.WARNING: (HexColor("#b35c00"), 3.5),
    Signal.CAUTION: (HexColor("#8a7400"), 2.5),
    Signal.NOTICE: (ACCENT, 1.5),
}

# neither the first nor the last line of a paragraph stands alone on a page
_BODY = ParagraphStyle(
    "body",
    fontName=REGULAR,
    bulletFontName=REGULAR,
    fontSize=8.6,
    leading=12.2,
    textColor=BLACK,
    splitLongWords=1,
    allowWidows=0,
    allowOrphans=0,
)
_CELL = ParagraphStyle("cell", parent=_BODY, fontSize=7.4, leading=9.2)

HEADINGS: Final = {
    1: ParagraphStyle("heading1", parent=_BODY, fontName=BOLD, fontSize=16, leading=20, textColor=ACCENT, spaceAfter=8),
    2: ParagraphStyle("heading2", parent=_BODY, fontName=BOLD, fontSize=10, leading=13, spaceBefore=9, spaceAfter=3),
}
ROLES: Final = {
    Role.BODY: ParagraphStyle("plain", parent=_BODY, spaceAfter=4),
    Role.LEAD: ParagraphStyle("lead", parent=_BODY, textColor=GREY, spaceAfter=7),
    Role.NOTE: ParagraphStyle(
        "note", parent=_BODY, fontSize=7.2, leading=9.6, textColor=GREY, spaceBefore=3, spaceAfter=5
    ),
}
BULLET: Final = ParagraphStyle("bullet", parent=_BODY, leftIndent=11, bulletIndent=1, spaceAfter=3)
LABEL: Final = ParagraphStyle("label", parent=_BODY, textColor=GREY)
VALUE: Final = ParagraphStyle("value", parent=_BODY)
_CELLS: Final = {
    Alignment.LEFT: _CELL,
    Alignment.RIGHT: ParagraphStyle("cell_right", parent=_CELL, alignment=TA_RIGHT),
}
HEAD_CELLS: Final = {
    Alignment.LEFT: ParagraphStyle("head", parent=_CELL, fontName=BOLD, fontSize=7.0, textColor=GREY),
    Alignment.RIGHT: ParagraphStyle(
        "head_right", parent=_CELL, fontName=BOLD, fontSize=7.0, textColor=GREY, alignment=TA_RIGHT
    ),
}
_STRONG_CELLS: Final = {
    Alignment.LEFT: ParagraphStyle("strong", parent=_CELL, fontName=BOLD),
    Alignment.RIGHT: ParagraphStyle("strong_right", parent=_CELL, fontName=BOLD, alignment=TA_RIGHT),
}
_FAULT_CELLS: Final = {
    Alignment.LEFT: ParagraphStyle("fault", parent=_CELL, textColor=FAULT),
    Alignment.RIGHT: ParagraphStyle("fault_right", parent=_CELL, textColor=FAULT, alignment=TA_RIGHT),
}


def _sized(
    styles: dict[Alignment, ParagraphStyle], name: str, size: float, leading: float
) -> dict[Alignment, ParagraphStyle]:
    return {
        alignment: ParagraphStyle(f"{style.name}_{name}", parent=style, fontSize=size, leading=leading)
        for alignment, style in styles.items()
    }


@frozen
class TableSetting:
    """How close the rows of a table are set: styles of titles and cells, room above and below in points."""

    heads: dict[Alignment, ParagraphStyle]
    plain: dict[Alignment, ParagraphStyle]
    strong: dict[Alignment, ParagraphStyle]
    fault: dict[Alignment, ParagraphStyle]
    above_pt: float
    below_pt: float
    left_pt: float


def _closer(name: str, size: float, leading: float, *, above_pt: float, below_pt: float) -> TableSetting:
    plain, strong, fault = (_sized(cells, name, size, leading) for cells in (_CELLS, _STRONG_CELLS, _FAULT_CELLS))
    return TableSetting(HEAD_CELLS, plain, strong, fault, above_pt, below_pt, left_pt=4)


WIDE_TABLE: Final = TableSetting(HEAD_CELLS, _CELLS, _STRONG_CELLS, _FAULT_CELLS, above_pt=2.6, below_pt=2.8, left_pt=6)
DENSE_TABLE: Final = _closer("dense", 7.0, 8.7, above_pt=0.8, below_pt=1.6)
TIGHT_TABLE: Final = _closer("tight", 6.3, 7.3, above_pt=0.3, below_pt=0.9)
CLOSE_TABLE: Final = replace(
    _closer("close", 7.5, 8.3, above_pt=0.2, below_pt=0.7), heads=_sized(HEAD_CELLS, "close", 7.5, 8.3)
)


def figure_height(block: Figure, usual_pt: float = FIGURE_HEIGHT) -> float:
    """Return how high a drawing is at most, in points; ``usual_pt`` where it does not say so itself."""
    return usual_pt if block.most_height_mm is None else block.most_height_mm * mm


def table_setting(block: Table) -> TableSetting:
    """Return how close the rows of a table are set."""
    if block.close:
        return CLOSE_TABLE
    if block.tight:
        return TIGHT_TABLE
    return DENSE_TABLE if block.dense else WIDE_TABLE


WORKED_TITLE: Final = ParagraphStyle("worked_title", parent=_BODY, fontName=BOLD, fontSize=8.2, leading=11)
WORKED_LINE: Final = ParagraphStyle("worked_line", parent=_CELL, fontSize=7.4, leading=9.8)
WORKED_INPUT: Final = ParagraphStyle("worked_input", parent=_CELL, fontSize=6.7, leading=9, textColor=GREY)
SIGNAL_WORD: Final = ParagraphStyle("signal", parent=_BODY, fontName=BOLD, fontSize=8.2, leading=11)
HAZARD: Final = ParagraphStyle("hazard", parent=_BODY, fontName=BOLD, fontSize=8.8, leading=11.6)
CAUTION_TEXT: Final = ParagraphStyle("caution_text", parent=_BODY, fontSize=8.0, leading=10.8)
CAUTION_SOURCE: Final = ParagraphStyle("caution_source", parent=_BODY, fontSize=6.6, leading=8.6, textColor=GREY)
CAPTION: Final = ParagraphStyle("caption", parent=_BODY, fontSize=7.2, leading=9.6, textColor=GREY, spaceBefore=2)
LETTER_NAME: Final = ParagraphStyle(
    "letter_name", parent=_BODY, fontName=BOLD, fontSize=11, leading=14, alignment=TA_RIGHT
)
LETTER_LINE: Final = ParagraphStyle("letter_line", parent=_BODY, fontSize=7.8, leading=10.4, alignment=TA_RIGHT)
CODE_CAPTION: Final = ParagraphStyle(
    "code_caption", parent=_BODY, fontSize=6.4, leading=8, textColor=GREY, alignment=TA_CENTER
)
