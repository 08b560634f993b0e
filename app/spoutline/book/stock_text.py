"""A stock list as CSV text: part number, quantity and maker, every fault with its line."""

from __future__ import annotations

import csv
import io
from collections.abc import Callable, Iterator, Sequence
from pathlib import Path

from spoutline.input_bounds.bounds import BOUNDS
from spoutline.input_bounds.reading import bounded_text
from spoutline.input_bounds.tables import csv_rows
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.part_ref import PartRef
from spoutline.model.plain_values import hidden_sign
from spoutline.model.stock import Stock, StockLine
from spoutline.model.worded import Worded

_NUMBER, _QUANTITY, _MAKER = "part_number", "quantity", "maker"
_MOST = 100_000
_LONGEST_QUANTITY = 12  # digits, leading zeros among them
_SHOWN = 60


def read_stock(path: Path, read_ref: Callable[[str], PartRef] = PartRef) -> Stock:
    """Return the stock list in the UTF-8 file ``path``; raise ``InputFault`` naming what is wrong."""
    text = bounded_text(path, BOUNDS.stock_bytes, "file", "a readable UTF-8 stock list is needed")
    return stock_from_csv(text, str(path), read_ref)


def stock_from_csv(text: str, place: str, read_ref: Callable[[str], PartRef] = PartRef) -> Stock:
    """Return the stock list in CSV text with the columns part_number and quantity, separated by commas or semicolons.

    A column maker may stand beside them; without it ``read_ref`` reads the maker out of a part number that names one.

    Raises
    ------
    InputFault
        A column is missing, a quantity is no whole number, or a number stands twice: all of them are named.
    """
    first, _, _ = text.partition("\n")
    reader = csv.DictReader(io.StringIO(text), delimiter=";" if ";" in first and "," not in first else ",")
    named = next(csv_rows(_head(reader), lambda: Worded("{place}, line 1", place=place)))
    heads = [name.strip().lower() for name in named]
    if _NUMBER not in heads or _QUANTITY not in heads:
        wanted: str = Worded(
            "the first line must name the columns {number} and {quantity}", number=_NUMBER, quantity=_QUANTITY
        )
        raise InputFault((InputProblem(place, "columns", ", ".join(heads) or "nothing", wanted),))
    reader.fieldnames = heads
    problems: list[InputProblem] = []
    lines: dict[PartRef, StockLine] = {}
    for row in csv_rows(
        reader, lambda: Worded("{place}, line {line_num}", place=place, line_num=reader.reader.line_num)
    ):
        if len(lines) + len(problems) >= BOUNDS.stock_lines:
            wanted = Worded("at most {most} lines are read", most=BOUNDS.stock_lines)
            raise InputFault(
                (InputProblem(place, "lines", Worded("more than {most}", most=BOUNDS.stock_lines), wanted),)
            )
        line = _line(row, Worded("{place}, line {line_num}", place=place, line_num=reader.line_num), problems, read_ref)
        if line is None:
            continue
        if line.part in lines:
            wanted = "each part number stands once"
            problems.append(
                InputProblem(
                    Worded("{place}, line {line_num}", place=place, line_num=reader.line_num),
                    _NUMBER,
                    repr(str(line.part)),
                    wanted,
                )
            )
        lines[line.part] = line
    if problems:
        raise InputFault(tuple(problems))
    return Stock(lines=tuple(lines.values()))


def _head(reader: csv.DictReader[str]) -> Iterator[Sequence[str]]:
    yield reader.fieldnames or ()


def _line(
    row: dict[str, str | None], place: str, problems: list[InputProblem], read_ref: Callable[[str], PartRef]
) -> StockLine | None:
    """Return a line of the list; None for an empty line and for a faulty one."""
    number, quantity, maker = ((row.get(name) or "").strip() for name in (_NUMBER, _QUANTITY, _MAKER))
    if not number and not quantity:
        return None
    if not number:
        problems.append(InputProblem(place, _NUMBER, "nothing", "write the part number"))
        return None
    if told := hidden_sign(number) or hidden_sign(maker):
        problems.append(InputProblem(place, _NUMBER, repr(number[:_SHOWN]), told))
        return None
    if not quantity.isdecimal() or len(quantity) > _LONGEST_QUANTITY or int(quantity) > _MOST:
        problems.append(
            InputProblem(
                place,
                _QUANTITY,
                repr(quantity[:_SHOWN]),
                Worded("a whole number from 0 to {most} is needed", most=_MOST),
            )
        )
        return None
    return StockLine(part=PartRef(number, maker) if maker else read_ref(number), quantity=int(quantity))
