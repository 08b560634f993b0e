"""The text of a cell read as what its column holds: a value, a fault, or a question that only a person answers."""

from __future__ import annotations

import difflib
import math
import re
import unicodedata
from collections.abc import Callable
from datetime import date
from decimal import ROUND_HALF_UP, Decimal
from enum import StrEnum
from typing import Final

from spoutline.explain.writing.money import amount, decimals
from spoutline.frozen import frozen
from spoutline.model.faults import InputFault
from spoutline.model.figure import Bounds, TableUnit
from spoutline.model.part_identity import made_up_fault
from spoutline.model.plain_values import hidden_sign
from spoutline.model.port import MADE_UP_IN, FlowPath, Gender, Port, ThreadStandard
from spoutline.model.port_sizes import path_of_thread, read_size, thread_named
from spoutline.model.quantity import Dimension
from spoutline.model.worded import Worded
from spoutline.planning.table_intake.headings import currency_named
from spoutline.planning.table_intake.intake_fields import CellKind, IntakeField, kind_words
from spoutline.units.accepted import ACCEPTED, UnitSystem
from spoutline.units.quantities import parse
from spoutline.units.unit_lines import to_core

Value = str | float | int | bool | tuple[str, ...] | date

_YES: Final = frozenset({"yes", "y", "x", "true", "1", "✓", "✔", "ja", "oui", "sí", "si"})
_NO: Final = frozenset({"no", "n", "false", "0", "-", "✗", "nein", "non"})
_NO_PRICE: Final = frozenset(
    {
        "-",
        "–",
        "—",
        "n/a",
        "na",
        "poa",
        "p.o.a.",
        "on request",
        "upon request",
        "price on request",
        "call",
        "tbd",
        "tba",
    }
    | {"auf anfrage", "a.a.", "sur demande"}
)
_PLAIN: Final = re.compile(r"[+-]?(?:\d+(?:\.\d*)?|\.\d+)(?:[eE][+-]?\d{1,3})?", re.ASCII)
_GROUPED_POINT: Final = re.compile(r"[+-]?\d{1,3}(?:[, ']\d{3})+(?:\.\d+)?", re.ASCII)
_GROUPED_COMMA: Final = re.compile(r"[+-]?\d{1,3}(?:[. ']\d{3})+(?:,\d+)?", re.ASCII)
_AMOUNT_WORDS: Final = re.compile(
    r"\b(?:USD|EUR|GBP|CAD|CHF|AUD|MXN)\b|(?:US|C|CA|A|AU)?[$€£]|/?\s*(?:ea\.?|each|pc\.?|pcs\.?)$", re.I
)
_WORD_PARTS: Final = re.compile(r"\s*[,;|/+&\n]\s*|\s+and\s+")
_MOST_MINOR: Final = 10_000_000_00
_GENDERS: Final = {
    **dict.fromkeys(("male", "m", "mnpt", "external", "mip"), Gender.MALE),
    **dict.fromkeys(("female", "f", "fem", "fnpt", "internal", "fip"), Gender.FEMALE),
}
_PATHS: Final = {
    "single": FlowPath.SINGLE,
    "balance": FlowPath.BALANCE,
    "vacuum assist": FlowPath.VACUUM_ASSIST,
    "vacuum_assist": FlowPath.VACUUM_ASSIST,
    "assist": FlowPath.VACUUM_ASSIST,
}


_FORMULA: Final = re.compile(r"'*[ \n]*[=+\-@\t\r＝＋－＠]")  # OWASP, CSV injection


def with_shield(text: str) -> str:
    """Return a text as the program writes it into a CSV table that is taken in again; see ``without_shield``."""
    return f"'{text}" if _FORMULA.match(text) else text


def without_shield(text: str) -> str:
    """Return a text of the program's own CSV table without the apostrophe that keeps it from being a formula."""
    return text[1:] if text.startswith("'") and _FORMULA.match(text) else text


class FaultKind(StrEnum):
    """Whether a cell cannot be right, or could mean two things."""

    FAULT = "fault"
    QUESTION = "question"


@frozen
class CellFault(Exception):
    """Why a cell has no value: what would be right, the nearest text that would be, and the word that it replaces."""

    kind: FaultKind
    wanted: str
    nearest: str = ""
    word: str = ""


@frozen
class Money:
    """An amount in minor units of a currency; ``minor`` is None where the table says that there is no list price."""

    currency: str
    minor: int | None


def _fault(wanted: str, nearest: str = "", word: str = "") -> CellFault:
    return CellFault(FaultKind.FAULT, wanted, nearest, word)


def _question(wanted: str, nearest: str = "") -> CellFault:
    return CellFault(FaultKind.QUESTION, wanted, nearest)


def read_cell(text: str, field: IntakeField, unit: str = "", *, decimal_comma: bool = False) -> Value:
    """Return the value of a cell.

    Parameters
    ----------
    text
        What stands there, not empty.
    field
        What its column holds; no price: see ``read_money``.
    unit
        Unit of numbers that name none.
    decimal_comma
        Whether a comma is the decimal sign.

    Returns
    -------
    Value
        A number in the unit of the field, a word, words, yes or no, a date, a text.

    Raises
    ------
    CellFault
        It is no such value, or could mean two things.
    """
    return _READERS[field.cell](text, field, unit, decimal_comma)


def _text(text: str, _field: IntakeField, _unit: str, _comma: bool) -> str:
    plain = unicodedata.normalize("NFC", " ".join(text.split()))  # two spellings of one number are one number
    if told := hidden_sign(plain):
        raise _fault(told, "".join(sign for sign in plain if not hidden_sign(sign)))
    return plain


def plain_number_text(text: str, *, decimal_comma: bool) -> str:
    """Return a number as the program writes it: decimal point, nothing between thousands.

    Raises
    ------
    CellFault
        A sign in it could part thousands or decimals.
    """
    bare = text.replace("−", "-").strip()
    if _PLAIN.fullmatch(bare) and not (decimal_comma and re.fullmatch(r"[+-]?\d{1,3}\.\d{3}", bare)):
        return bare
    grouped = _GROUPED_COMMA if decimal_comma else _GROUPED_POINT
    thousands, decimal = (".", ",") if decimal_comma else (",", ".")
    if grouped.fullmatch(bare):
        if bare.count(thousands) == 1 and decimal not in bare:
            whole = bare.replace(thousands, "")
            wanted: str = Worded(
                "it could be {bare} or {whole}; write it without {thousands!r}",
                bare=bare.replace(thousands, "."),
                whole=whole,
                thousands=thousands,
            )
            raise _question(wanted, whole)
        for sign in (thousands, " ", "'"):
            bare = bare.replace(sign, "")
        return bare.replace(decimal, ".")
    if decimal_comma and re.fullmatch(r"[+-]?\d+,\d+", bare):
        return bare.replace(",", ".")
    if not decimal_comma and re.fullmatch(r"[+-]?\d+,\d+", bare):
        wanted = "the comma looks like a decimal sign: say that the table has decimal commas, or write a point"
        raise _question(wanted, bare.replace(",", "."))
    return ""


def _number(text: str, field: IntakeField, unit: str, comma: bool) -> float:
    dimension = field.dimension
    bare = plain_number_text(text, decimal_comma=comma)
    if dimension is None:
        if not bare:
            raise _fault("write a number")
        value = float(bare)
    elif bare:
        value = _in_unit_of(field, float(bare), unit)
    else:
        value = _quantity(text, field, dimension, unit, comma)
    if not math.isfinite(value):
        raise _fault("write a number of ordinary size")
    _check_bounds(value, field)
    return value


def _in_unit_of(field: IntakeField, number: float, unit: str) -> float:
    dimension = field.dimension
    if dimension is None:
        return number
    if not unit and field.needs_unit:
        wanted = "say in which unit the column is; behind the field in the mapping, such as "
        raise _question(Worded("{wanted}{key} in {a_unit}", wanted=wanted, key=field.key, a_unit=_a_unit(dimension)))
    if unit == field.unit.value and unit:
        return number
    if unit not in ACCEPTED[dimension]:
        known = ", ".join(one for one in ACCEPTED[dimension] if one)
        raise _fault(
            Worded(
                "{unit} is no unit of a {dimension}; use one of {known}",
                unit=unit or "no unit",
                dimension=dimension.value.replace("_", " "),
                known=known,
            )
        )
    return _from_si(to_core(number, unit, dimension), field.unit)


def _a_unit(dimension: Dimension) -> str:
    return next((one for one in ACCEPTED[dimension] if one), "")


def _from_si(value: float, unit: TableUnit) -> float:
    """Return an SI value in a table's unit, without the binary dust of the conversion."""
    return float(f"{value / unit.to_si(1.0):.9g}")


def _quantity(text: str, field: IntakeField, dimension: Dimension, unit: str, comma: bool) -> float:
    written = text.replace(",", ".") if comma and "." not in text else text
    written = _plain_signs(written)
    if unit and not re.search(r"[^\W\d_]|[\"'°Ω%]", written):
        written = f"{written} {unit}"
    elif field.needs_unit and not unit and re.fullmatch(r"[\d\s/.-]+", written):
        raise _question(
            Worded(
                "say in which unit the column is, such as {key} in {a_unit}", key=field.key, a_unit=_a_unit(dimension)
            )
        )
    try:
        value = parse(written, dimension, UnitSystem.SI)
    except InputFault as fault:
        raise _fault(fault.problems[0].wanted) from fault
    return _from_si(value, field.unit)


def _plain_signs(text: str) -> str:
    for signs, plain in (("“”″", '"'), ("‘’′", "'"), ("–", "-"), ("\u2044", "/")):
        for sign in signs:
            text = text.replace(sign, plain)
    for sign, plain in (("¼", " 1/4"), ("½", " 1/2"), ("¾", " 3/4"), ("⅜", " 3/8"), ("⅝", " 5/8"), ("⅞", " 7/8")):
        text = text.replace(sign, plain)
    return text.replace("''", '"').strip()


def _check_bounds(value: float, field: IntakeField) -> None:
    bounds = field.bounds if field.is_figure else Bounds()
    if not bounds.admit(value):
        unit = f" {field.unit.value}" if field.unit.value else ""
        raise _fault(
            Worded(
                "{lower} must be {words}{unit}; this is {value:g}{unit}",
                lower=field.title.lower(),
                words=bounds.words,
                unit=unit,
                value=value,
            )
        )


def _whole(text: str, field: IntakeField, _unit: str, comma: bool) -> int:
    bare = plain_number_text(
        re.sub(r"\s*(?:days?|d|pcs?\.?|pieces?|tage?)$", "", text, flags=re.I), decimal_comma=comma
    )
    number = float(bare) if bare else math.nan
    if not number.is_integer():
        raise _fault("write a whole number")
    _check_bounds(number, field)
    return int(number)


def _word_form(text: str) -> str:
    return re.sub(r"[\s-]+", "_", text.strip().casefold())


def _word(text: str, field: IntakeField, _unit: str, _comma: bool) -> str:
    known = {one.value.casefold(): one.value for one in field.choices}
    form = _word_form(text if field.word_of is None else field.word_of(text))
    if form in known:
        return known[form]
    if field.key == "kind" and (kind := kind_words().get(" ".join(text.casefold().replace("-", " ").split()))):
        return kind.value
    near = difflib.get_close_matches(form, known, n=1, cutoff=0.6)
    nearest = known[near[0]] if near else ""
    hint = Worded("did you mean {nearest}? ", nearest=nearest) if nearest else ""
    raise _fault(
        Worded("{hint}use one of: {values}", hint=hint, values=", ".join(known.values())), nearest, text.strip()
    )


def _words(text: str, field: IntakeField, unit: str, comma: bool) -> tuple[str, ...]:
    pieces = [piece for piece in _WORD_PARTS.split(text) if piece.strip()]
    found: list[str] = []
    for piece in pieces:
        try:
            found.append(_word(piece, field, unit, comma))
        except CellFault:
            if " " not in piece.strip():
                raise
            found.extend(_words_between_blanks(piece.split(), field, unit, comma))
    distinct = tuple(dict.fromkeys(found))
    return distinct if field.keeps_order else tuple(sorted(distinct))


def _words_between_blanks(parts: list[str], field: IntakeField, unit: str, comma: bool) -> list[str]:
    """Read words between blanks, the longest first: a word may hold a blank (stainless steel)."""
    known = {one.value.casefold() for one in field.choices}
    found, start = [], 0
    while start < len(parts):
        size = next((size for size in (3, 2) if _word_form(" ".join(parts[start : start + size])) in known), 1)
        found.append(_word(" ".join(parts[start : start + size]), field, unit, comma))
        start += size
    return found


def _yes_no(text: str, _field: IntakeField, _unit: str, _comma: bool) -> bool:
    word = text.strip().casefold()
    if word not in _YES and word not in _NO:
        raise _fault("write yes or no")
    return word in _YES


def _port(text: str, _field: IntakeField, _unit: str, _comma: bool) -> str:
    own, inside, article = text.partition(f" {MADE_UP_IN} ")
    words = _plain_signs(own).replace(",", " ").split()
    gender = path = thread = None
    rest: list[str] = []
    if len(words) > 1 and words[0] == "M" and re.match(r"\d+(?:\.\d+)?x", words[1]):
        thread, words = ThreadStandard.M, words[1:]  # M 34x1.5; else M is short for male
    for word in words:
        plain = word.casefold().strip("().")
        if plain in _GENDERS and (gender is None or _GENDERS[plain] is not gender):
            if gender is not None:
                raise _fault("it names both genders; write one port, such as NPT 3/4 male single")
            gender = _GENDERS[plain]
        elif plain in _PATHS and path is None:
            path = _PATHS[plain]
        elif plain in ("npt", "g", "bspp", "un") and thread is None:
            thread = ThreadStandard.G if plain in ("g", "bspp") else ThreadStandard(plain.upper())
        elif plain not in ("thread", "coaxial", "path", "-"):
            rest.append(word)
    written = " ".join(rest)
    thread = thread or thread_named(written)
    wanted = "write thread standard, size, gender and path, such as NPT 3/4 male single"
    if thread is None:
        raise _question(Worded("it names no thread standard; {wanted}", wanted=wanted))
    if gender is None:
        raise _question(Worded("it says neither male nor female; {wanted}", wanted=wanted))
    try:
        size = read_size(written, thread)
    except ValueError as fault:
        raise _fault(str(fault)) from fault
    carried = path_of_thread(thread)
    if path is not None and path is not carried:
        raise _fault(Worded("a {thread} thread carries the path {carried}", thread=thread, carried=carried))
    if inside and (wrong := made_up_fault(article.strip())):
        raise _fault(
            Worded("after {made_up_in!r} stands a joint of an article: {wrong}", made_up_in=MADE_UP_IN, wrong=wrong)
        )
    return str(Port(thread, size, gender, carried, article.strip()))


def _date(text: str, _field: IntakeField, _unit: str, _comma: bool) -> date:
    try:
        return date.fromisoformat(text.strip().removesuffix(" 00:00:00"))
    except ValueError:
        raise _fault("write a date as YYYY-MM-DD") from None


def _money(_text: str, field: IntakeField, _unit: str, _comma: bool) -> Value:
    raise TypeError(f"{field.key} is read by read_money")


_READERS: Final[dict[CellKind, Callable[[str, IntakeField, str, bool], Value]]] = {
    CellKind.TEXT: _text,
    CellKind.NUMBER: _number,
    CellKind.WHOLE: _whole,
    CellKind.WORD: _word,
    CellKind.WORDS: _words,
    CellKind.YES_NO: _yes_no,
    CellKind.PORT: _port,
    CellKind.DATE: _date,
    CellKind.MONEY: _money,
}


def read_money(text: str, currency: str, *, decimal_comma: bool = False) -> Money:
    """Return the price in a cell; ``currency`` is that of the column, and a cell that names another is a fault.

    Raises
    ------
    CellFault
        It is no amount, has parts of a minor unit, or no currency is known.
    """
    named = currency_named(text)
    if named and currency and named != currency and not ("$" in text and currency in ("CAD", "AUD", "MXN")):
        raise _fault(
            Worded(
                "the cell names {named} and the column {currency}; let both say the same",
                named=named,
                currency=currency,
            )
        )
    known = currency or named
    if text.strip().casefold() in _NO_PRICE:
        return Money(known, None)
    if not known:
        raise _question("say in which currency the prices are, such as price in USD")
    bare = plain_number_text(_AMOUNT_WORDS.sub("", text).strip(), decimal_comma=decimal_comma)
    if not bare:
        raise _fault("write an amount, such as 12.50")
    places = decimals(known)
    minor = Decimal(bare).scaleb(places)
    whole = minor.to_integral_value(ROUND_HALF_UP)
    if abs(minor - whole) > Decimal("0.0001"):  # a spreadsheet's 12.500000000000002 is 12.50
        raise _question(
            Worded(
                "a price in {known} has at most {places} decimals: round it, or say of how many pieces it is",
                known=known,
                places=places,
            ),
            str(amount(int(whole), known)),
        )
    if not 0 <= whole <= _MOST_MINOR:
        raise _fault(Worded("a price is at least 0 and at most {amount}", amount=amount(_MOST_MINOR, known)))
    return Money(known, int(whole))
