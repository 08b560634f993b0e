"""Tables as suppliers write them: every maker, number and price is invented."""

from __future__ import annotations

import io
from collections.abc import Callable
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

import openpyxl

from spoutline.planning.table_intake.column_map import TableMap, suggested
from spoutline.planning.table_intake.headings import find_headings
from spoutline.planning.table_intake.intake import Intake, IntakeReport, PartLine
from spoutline.planning.table_intake.raw_table import RawTable, TextEncoding, open_table

MAKER = "Quillwort Works"
PLAIN = TableMap(maker=MAKER, currency="USD")


@dataclass(frozen=True)
class Seen:
    """What came out of a table."""

    lines: tuple[PartLine, ...]
    report: IntakeReport
    table: RawTable

    def by_number(self) -> dict[str, PartLine]:
        """Return the lines by number."""
        return {line.number: line for line in self.lines}


def seen(path: Path, table_map: TableMap = PLAIN, sheet: str = "") -> Seen:
    """Read a file as its titles suggest."""
    table = open_table(path, sheet or table_map.sheet, table_map.encoding)
    headings = find_headings(table, table_map.titles)
    intake = Intake(table, headings, suggested(headings, table_map), table_map)
    return Seen(tuple(intake.lines()), intake.report, table)


def workbook(fill: Callable[[Any], None]) -> bytes:
    """Return a workbook; ``fill`` gets it with one empty sheet."""
    book = openpyxl.Workbook()
    fill(book)
    out = io.BytesIO()
    book.save(out)
    return out.getvalue()


@dataclass(frozen=True)
class Messy:
    """A file that is no fault of anybody: ``numbers`` are the parts that must come out, ``prices`` in cents."""

    name: str
    content: bytes
    numbers: tuple[str, ...]
    prices: tuple[int, ...] = ()
    values: dict[str, Any] = field(default_factory=dict)  # of the first part
    table_map: TableMap = PLAIN
    questions: int = 0
    ending: str = "csv"


def _sheet(*rows: tuple[object, ...]) -> Callable[[Any], None]:
    def fill(book: Any) -> None:
        for row in rows:
            book.active.append(row)

    return fill


def _merged(book: Any) -> None:
    sheet = book.active
    for row in (("Part no", "Hose", None, "Price"), (None, "Bore (mm)", "Length (m)", "USD"), ("Q-1", 19, 3, 10.5)):
        sheet.append(row)
    sheet.append((None, None, None, None))
    sheet.append(("Q-2", 25, 3.5, 12))
    for cells in ("A1:A2", "B1:C1"):
        sheet.merge_cells(cells)


def _kind_merged_down(book: Any) -> None:
    sheet = book.active
    for row in (("Kind", "Part no", "Price USD"), ("swivel", "Q-1", 10), (None, "Q-2", 11), ("nozzle", "Q-3", 12)):
        sheet.append(row)
    sheet.merge_cells("A2:A3")


def _hidden_sheet(book: Any) -> None:
    old = book.active
    old.title = "2019 old"
    old.append(("Part no", "Price USD"))
    old.append(("Q-OLD", 1))
    old.sheet_state = "hidden"
    new = book.create_sheet("2026")
    new.append(("Part no", "Price USD"))
    new.append(("Q-1", 10))


def _cover_sheet(book: Any) -> None:
    sheet = book.active
    for row in (("Fennel Supply",), ("Price list 2026, all prices net",), (), ("Part no", "Text", "Price (EUR)")):
        sheet.append(row)
    sheet.append(("Q-1", "Whip hose", "10,50 €"))


MESSY: tuple[Messy, ...] = (
    Messy("byte order mark", b"\xef\xbb\xbfnumber,price\nQ-1,10.50\n", ("Q-1",), (1050,)),
    Messy(
        "semicolons, decimal comma",
        b"Part no;Text;Price\nQ-1;Hose, 3/4, black, long;10,50\nQ-2;Hose;1.250,00\n",
        ("Q-1", "Q-2"),
        (1050, 125_000),
        table_map=TableMap(maker=MAKER, currency="EUR", decimal_comma=True),
    ),
    Messy(
        "tabs, UTF-16",
        "Part no\tText\tPrice USD\nQ-1\tDüse\t10.50\n".encode("utf-16"),
        ("Q-1",),
        (1050,),
        {"name": "Düse"},
    ),
    Messy(
        "Windows-1252 as named",
        "Part no,Text,Price\nQ-1,Düse 5 €,10.50\n".encode("cp1252"),
        ("Q-1",),
        (1050,),
        {"name": "Düse 5 €"},
        TableMap(maker=MAKER, currency="USD", encoding=TextEncoding.WINDOWS_1252),
    ),
    Messy("old line ends", b"number,price\rQ-1,10.50\rQ-2,11\r", ("Q-1", "Q-2"), (1050, 1100)),
    Messy(
        "heading above, blank rows",
        b"Fennel Supply,,\n,,\nPart No.,Description,List Price\n\nQ-1,Swivel,10.50\n,,\n",
        ("Q-1",),
        (1050,),
        {"name": "Swivel"},
    ),
    Messy(
        "units in headings",
        b"Part No,Bore (in),Length (ft),Weight (lb)\nQ-1,3/4,9,2\n",
        ("Q-1",),
        (),
        {"bore_mm": 19.05, "length_m": 2.7432, "mass_kg": 0.90718474},
    ),
    Messy(
        "units in a row of their own",
        b"Part No,Bore,Length,Price\n,mm,m,EUR\nQ-1,19,3,10.5\n",
        ("Q-1",),
        (1050,),
        {"bore_mm": 19.0, "length_m": 3.0},
    ),
    Messy(
        "a title over several currencies",
        b"Part No,Text,Price,,Lead time\n,,USD,EUR,days\nQ-1,x,10.5,9,14\n",
        ("Q-1",),
        (1050, 900),
        {"lead_days": 14},
    ),
    Messy(
        "units in the cells",
        b'Part No,Bore,Length\nQ-1,"3/4""",9\'\nQ-2,21 mm,2.5 m\n',
        ("Q-1", "Q-2"),
        (),
        {"bore_mm": 19.05, "length_m": 2.7432},
    ),
    Messy(
        "two rows of titles",
        b"Part,Hose,,Price,\nnumber,Bore (mm),Length (m),USD,EUR\nQ-1,19,3,10.5,9\n",
        ("Q-1",),
        (1050, 900),
        {"bore_mm": 19.0, "length_m": 3.0},
    ),
    Messy(
        "prices as text",
        b'Part no,Price\nQ-1,$1\nQ-2,US$ 2.50\nQ-3,USD 3.00 ea\nQ-4,"$1,234.56"\nQ-5,4.00 each\n',
        ("Q-1", "Q-2", "Q-3", "Q-4", "Q-5"),
        (100, 250, 300, 123_456, 400),
    ),
    Messy("no price yet", b"Part no,Price USD\nQ-1,POA\nQ-2,on request\nQ-3,-\nQ-4,\n", ("Q-1", "Q-2", "Q-3", "Q-4")),
    Messy(
        "totals",
        b"Part no,Text,Price\nQ-1,A,1\nQ-2,B,2\nSubtotal,,3\n,Total,3\nGrand total,,3\n",
        ("Q-1", "Q-2"),
        (100, 200),
    ),
    Messy("sections", b"Part no,Text,Price\nSwivels,,\nQ-1,A,1\nCurb hoses:,,\nQ-2,B,2\n", ("Q-1", "Q-2"), (100, 200)),
    Messy(
        "titles repeated on each page",
        b"Part no,Text,Price\nQ-1,A,1\nPart no,Text,Price\nQ-2,B,2\n",
        ("Q-1", "Q-2"),
        (100, 200),
    ),
    Messy(
        "capitals, signs, columns that mean nothing",
        b"PART_NO.;Colour;DESCRIPTION;;PRICE [USD]\nQ-1;red;x;;1.00\n",
        ("Q-1",),
        (100,),
        {"name": "x"},
    ),
    Messy(
        "numbers of any form",
        "Part no,Price\n00123,1\n12/34-A.5+,2\nÄB 7,3\n".encode(),
        ("00123", "12/34-A.5+", "ÄB 7"),
        (100, 200, 300),
    ),
    Messy("a mistyped title", b"Part nunber,Price,Descripton\nQ-1,1,x\n", ("Q-1",), (100,), {"name": "x"}),
    Messy("blanks that are none", "Part no,Price\n\u00a0Q-1 ,\u00a01.00\n".encode(), ("Q-1",), (100,)),
    Messy(
        "ports as people write them",
        b'Part no,Inlet,Outlet\nQ-1,"3/4"" NPT male",Female NPT 3/4 single\n',
        ("Q-1",),
        (),
        {"inlet": "NPT 3/4 male single", "outlet": "NPT 3/4 female single"},
    ),
    Messy(
        "words in a cell",
        b'Part no,Materials,Listings\nQ-1,"Stainless steel, FKM",E10/E25 E85\n',
        ("Q-1",),
        (),
        {"materials": ("stainless_steel", "fkm"), "listings": ("E10", "E25", "E85")},
    ),
    Messy(
        "merged titles",
        workbook(_merged),
        ("Q-1", "Q-2"),
        (1050, 1200),
        {"bore_mm": 19.0, "length_m": 3.0},
        ending="xlsx",
    ),
    Messy("merged downwards", workbook(_kind_merged_down), ("Q-1", "Q-2", "Q-3"), (1000, 1100, 1200), ending="xlsx"),
    Messy("a hidden sheet first", workbook(_hidden_sheet), ("Q-1",), (1000,), ending="xlsx"),
    Messy(
        "a heading over the table",
        workbook(_cover_sheet),
        ("Q-1",),
        (1050,),
        {"name": "Whip hose"},
        TableMap(maker=MAKER, decimal_comma=True),
        ending="xlsx",
    ),
    Messy(
        "binary dust",
        workbook(_sheet(("Part no", "Price USD"), ("Q-1", 0.1 + 0.2), ("Q-2", 1e3))),
        ("Q-1", "Q-2"),
        (30, 100_000),
        ending="xlsx",
    ),
    Messy(
        "numbers as numbers",
        workbook(_sheet(("Part no", "Price USD"), (12345, 1), (678.0, 2))),
        ("12345", "678"),
        (100, 200),
        ending="xlsx",
    ),
)
