"""A small evaluator of the formulas in a workbook, so that totals can be recomputed without the program.

Arithmetic is exact (Decimal): the grammar is numbers, cells, ranges, + - * /, parentheses, =, and the functions named
below with the meaning of the open spreadsheet standard (OpenDocument 1.3 part 4: SUM 6.16.61, ROUND 6.17.5, ROUNDUP,
ROUNDDOWN, MOD, IF, SUMPRODUCT).
"""

from __future__ import annotations

import re
from collections.abc import Callable
from decimal import ROUND_DOWN, ROUND_HALF_UP, ROUND_UP, Decimal, localcontext
from io import BytesIO

import openpyxl
from openpyxl.worksheet.worksheet import Worksheet

_TOKEN = re.compile(r"\s*(?:(\d+\.?\d*(?:[eE][+-]?\d+)?)|([A-Z]+\d+(?::[A-Z]+\d+)?)|([A-Z]+)|(.))")


class Workbook:
    """The formulas of a workbook, and the values that the program left beside them."""

    def __init__(self, content: bytes) -> None:
        self.formulas = openpyxl.load_workbook(BytesIO(content))
        self.values = openpyxl.load_workbook(BytesIO(content), data_only=True)

    def computed(self, sheet: str, cell: str) -> Decimal:
        """Return the value of a cell, recomputed from the cells that hold no formula."""
        return _Cells(self.formulas[sheet]).value(cell)


class _Cells:
    def __init__(self, sheet: Worksheet) -> None:
        self.sheet = sheet
        self.known: dict[str, Decimal] = {}

    def value(self, cell: str) -> Decimal:
        if cell not in self.known:
            content = self.sheet[cell].value
            if isinstance(content, str) and content.startswith("="):
                with localcontext() as context:
                    context.prec = 50
                    self.known[cell] = _Reader(content[1:], self).whole()
            elif isinstance(content, int | float):
                self.known[cell] = Decimal(str(content))
            else:
                self.known[cell] = Decimal(0)  # a text or an empty cell counts nothing in a sum
        return self.known[cell]

    def range(self, name: str) -> list[Decimal]:
        return [self.value(cell.coordinate) for row in self.sheet[name] for cell in row]


class _Reader:
    def __init__(self, text: str, cells: _Cells) -> None:
        self.tokens = [match.groups() for match in _TOKEN.finditer(text)]
        self.place = 0
        self.cells = cells

    def whole(self) -> Decimal:
        found = self.comparison()
        assert self.place == len(self.tokens), self.tokens[self.place :]
        return found

    def sign(self) -> str | None:
        return self.tokens[self.place][3] if self.place < len(self.tokens) else None

    def comparison(self) -> Decimal:
        left = self.sum()
        if self.sign() == "=":
            self.place += 1
            return Decimal(int(left == self.sum()))
        return left

    def sum(self) -> Decimal:
        left = self.product()
        while self.sign() in ("+", "-"):
            sign = self.sign()
            self.place += 1
            right = self.product()
            left = left + right if sign == "+" else left - right
        return left

    def product(self) -> Decimal:
        left = self.atom()
        while self.sign() in ("*", "/"):
            sign = self.sign()
            self.place += 1
            right = self.atom()
            left = left * right if sign == "*" else left / right
        return left

    def atom(self) -> Decimal:
        number, cell, function, sign = self.tokens[self.place]
        self.place += 1
        if number is not None:
            return Decimal(number)
        if cell is not None:
            return self.cells.value(cell)
        if function is not None:
            return _FUNCTIONS[function](self.arguments())
        if sign == "-":
            return -self.atom()
        assert sign == "(", sign
        found = self.comparison()
        assert self.sign() == ")"
        self.place += 1
        return found

    def arguments(self) -> list[list[Decimal]]:
        assert self.sign() == "("
        found: list[list[Decimal]] = []
        while self.sign() != ")":
            self.place += 1
            cell = self.tokens[self.place][1]
            if cell is not None and ":" in cell:
                self.place += 1
                found.append(self.cells.range(cell))
            else:
                found.append([self.comparison()])
        self.place += 1
        return found


def _rounding(way: str) -> Callable[[list[list[Decimal]]], Decimal]:
    def to_places(arguments: list[list[Decimal]]) -> Decimal:
        (value,), (places,) = arguments
        return value.quantize(Decimal(1).scaleb(-int(places)), rounding=way)

    return to_places


def _mod(arguments: list[list[Decimal]]) -> Decimal:
    (value,), (divisor,) = arguments
    return value - divisor * (value / divisor).to_integral_value(rounding="ROUND_FLOOR")


_FUNCTIONS: dict[str, Callable[[list[list[Decimal]]], Decimal]] = {
    "SUM": lambda arguments: sum((value for one in arguments for value in one), start=Decimal(0)),
    "SUMPRODUCT": lambda arguments: sum(
        (left * right for left, right in zip(*arguments, strict=True)), start=Decimal(0)
    ),
    "ROUND": _rounding(ROUND_HALF_UP),
    "ROUNDUP": _rounding(ROUND_UP),
    "ROUNDDOWN": _rounding(ROUND_DOWN),
    "MOD": _mod,
    "IF": lambda arguments: arguments[1][0] if arguments[0][0] else arguments[2][0],
}
