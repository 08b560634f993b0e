"""`supplier`: how each supplier wants its order file, and the files of what a quotation orders from each."""

from __future__ import annotations

import argparse
from collections.abc import Callable
from typing import TYPE_CHECKING

from spoutline.cli.answer import write_answer
from spoutline.cli.command import CommandWork, shared_options
from spoutline.cli.exit_code import ExitCode
from spoutline.cli.files import write_standard_output
from spoutline.cli.order_files import add_folder, order_document, order_lines, write_orders
from spoutline.cli.outputs import OutputArguments
from spoutline.cli.typed import serial
from spoutline.cli.voice import said
from spoutline.documents.own_files import FileForm
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.supplier_layout import (
    DayForm,
    DecimalSign,
    OrderContent,
    OrderFileForm,
    Separator,
    TextEncoding,
    units_of,
)
from spoutline.planning.refit.supplier_orders import head_of

if TYPE_CHECKING:
    from spoutline.bootstrap import Workbench
    from spoutline.model.quotation import Quotation
    from spoutline.model.supplier_layout import OrderColumn, SupplierLayout

_CHOICES = {
    "--separator": ("separator", Separator, "what stands between two cells"),
    "--decimal": ("decimal_sign", DecimalSign, "what stands before fractions"),
    "--encoding": ("encoding", TextEncoding, "how the signs of the file are written"),
    "--days": ("day_form", DayForm, "how a day is written"),
    "--file": ("file_form", OrderFileForm, "what file the supplier reads, where those of all suppliers are written"),
}


def _arguments(parser: argparse.ArgumentParser) -> None:
    actions = parser.add_subparsers(dest="action", metavar="ACTION", required=True)

    def add(name: str, words: str, *, in_json: bool = True) -> argparse.ArgumentParser:
        made = actions.add_parser(name, help=words, description=words, parents=[shared_options()])
        if in_json:
            made.add_argument("--json", action="store_true", help="print a JSON document instead of a text")
        return made

    add("list", "list the suppliers for whom the book keeps how their order files look")
    add("show", "show how a supplier's order file looks").add_argument("name", metavar="NAME")
    _layout_arguments(add("set", "keep how a supplier's order file looks; what is not named stays"))
    removed = add("remove", "take what is kept for a supplier out of the book")
    removed.add_argument("name", metavar="NAME")
    orders = add("orders", "print what a quotation orders from each supplier")
    order = add("order", "write the order file of one supplier", in_json=False)
    for one in (orders, order):
        _order_of(one)
    order.add_argument("name", metavar="NAME")
    outputs = OutputArguments(order)
    outputs.add("--csv", FileForm.CSV, "write the order as text, in the columns that the supplier wants, here")
    outputs.add("--xlsx", FileForm.XLSX, "write the order as a workbook here")
    files = add("files", "write the order files of all suppliers into a folder, each as its supplier wants it")
    _order_of(files)
    add_folder(files, "--folder", "folder in which the files of all suppliers go, each named by its supplier")


def _order_of(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("id", metavar="ID", help="id in the book, or the number printed on the paper")
    parser.add_argument("--option", metavar="TITLE", default="", help="option ordered, where there are several")
    parser.add_argument(
        "--revision", metavar="N", type=serial, help="the one that was ordered where not given, else the newest"
    )


def _layout_arguments(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("name", metavar="NAME")
    parser.add_argument(
        "--maker",
        metavar="NAME",
        action="append",
        dest="makers",
        help="maker whose parts are ordered there; may be repeated; without one, the supplier itself",
    )
    parser.add_argument(
        "--column",
        metavar="HEADING=CONTENT",
        action="append",
        dest="columns",
        help="column in its order, a unit or a fixed text behind a colon: Qty=quantity:packs, Account=fixed:4711; may "
        "be repeated, all take the place of those there were",
    )
    headings = parser.add_mutually_exclusive_group()
    headings.add_argument("--headings", action="store_const", const=True, help="the first row holds the headings")
    headings.add_argument(
        "--no-headings", action="store_const", const=False, dest="headings", help="the file begins with the first line"
    )
    for option, (field, kind, words) in _CHOICES.items():
        parser.add_argument(option, choices=[one.value for one in kind], dest=field, help=words)


def _run(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    return _ACTIONS[arguments.action](workbench, arguments)


def _list(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    found = workbench.supplier_orders().all()
    lines = [f"{one.supplier}  {', '.join(one.ordered_makers)}  {len(one.columns)}" for one in found]
    return write_answer(arguments, lines or [said("no suppliers")], {"suppliers": [_document(one) for one in found]})


def _show(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    return _told(arguments, workbench.supplier_orders().named(arguments.name))


def _set(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    service = workbench.supplier_orders()
    before = service.of(arguments.name)
    fields: dict[str, object] = {} if before is None else dict(_document(before))
    fields["supplier"] = arguments.name if before is None else before.supplier
    named = {field: getattr(arguments, field) for field, _, _ in _CHOICES.values()}
    named |= {"makers": arguments.makers, "headings": arguments.headings}
    fields |= {field: value for field, value in named.items() if value is not None}
    if arguments.columns is not None:
        fields["columns"] = [_column(text) for text in arguments.columns]
    elif before is None:
        wanted = "name at least one: --column 'Part number=part_number'"
        raise InputFault((InputProblem("", "--column", "nothing", wanted),))
    return _told(arguments, service.keep(fields, before))


def _column(text: str) -> dict[str, object]:
    """Return the fields of a column as typed: ``HEADING=CONTENT``, a unit or a text behind a colon."""
    heading, equals, rest = text.rpartition("=") if "=fixed:" not in text else text.partition("=")
    content, _, more = rest.partition(":")
    if not equals or content not in set(OrderContent):
        wanted = ", ".join(OrderContent)
        raise InputFault((InputProblem("", "--column", repr(text), wanted),))
    found: dict[str, object] = {"heading": heading, "content": content}
    if more:
        found["text" if content == OrderContent.FIXED else "unit"] = more
    return found


def _remove(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    gone = workbench.supplier_orders().remove(arguments.name)
    return write_answer(arguments, [said("{name}: removed", name=gone.supplier)], {"removed": gone.supplier})


def _orders(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    service, (quotation, revision, option) = workbench.supplier_orders(), _quoted(workbench, arguments)
    found = service.orders(quotation, option)
    if arguments.json:
        write_standard_output(service.json(found, quotation, revision, option))
        return ExitCode.FITS
    currency = quotation.terms.currency
    lines = [f"{one.supplier}  {len(one.lines)} / {one.pieces} ×  {one.cost:f} {currency}" for one in found]
    return write_answer(arguments, lines, {})


def _order(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    if arguments.csv is None and arguments.xlsx is None:
        raise InputFault((InputProblem("", "--csv", "nothing", "name at least one file: --csv or --xlsx"),))
    service, (quotation, revision, option) = workbench.supplier_orders(), _quoted(workbench, arguments)
    order = service.order(quotation, arguments.name, option)
    head = head_of(quotation, revision)
    forms = ((arguments.csv, OrderFileForm.TEXT), (arguments.xlsx, OrderFileForm.WORKBOOK))
    arguments.output_plan.write({path: service.file(order, head, form) for path, form in forms if path is not None})
    return ExitCode.FITS


def _files(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    """Write one file for each supplier, all or none."""
    quotation, revision, option = _quoted(workbench, arguments)
    orders = workbench.supplier_orders().orders(quotation, option)
    written = write_orders(workbench, arguments, "--folder", orders, head_of(quotation, revision))
    return write_answer(arguments, order_lines(written), {"files": [order_document(one) for one in written]})


def _quoted(workbench: Workbench, arguments: argparse.Namespace) -> tuple[Quotation, int, str]:
    """Return the quotation with its revision, and the option asked for: else those that were ordered."""
    service = workbench.quoting()
    stored = service.life().named(arguments.id)
    revision = arguments.revision or service.life().ordered_revision(stored.id) or stored.revision
    events = reversed(service.life().history(stored.id))
    ordered = next((one.option for one in events if one.revision == revision and one.option), "")
    return service.life().at_revision(stored.id, revision), revision, arguments.option or ordered


def _told(arguments: argparse.Namespace, layout: SupplierLayout) -> ExitCode:
    """Say a layout: whose it is in words, the rest as the options that set it."""
    lines = [
        said("{place}: {said}", place=said("supplier"), said=layout.supplier),
        said("{place}: {said}", place=said("makers"), said=", ".join(layout.ordered_makers)),
        "--headings" if layout.headings else "--no-headings",
        *(f"{option} {getattr(layout, field)}" for option, (field, _, _) in _CHOICES.items()),
        *(f"--column {_column_text(one)!r}" for one in layout.columns),
    ]
    return write_answer(arguments, lines, _document(layout))


def _column_text(column: OrderColumn) -> str:
    more = column.text if column.content is OrderContent.FIXED else column.unit
    has_more = column.content is OrderContent.FIXED or len(units_of(column.content)) > 1
    return f"{column.heading}={column.content}{f':{more}' if has_more else ''}"


def _document(layout: SupplierLayout) -> dict[str, object]:
    return layout.model_dump(mode="json")


_ACTIONS: dict[str, Callable[[Workbench, argparse.Namespace], ExitCode]] = {
    "list": _list,
    "show": _show,
    "set": _set,
    "remove": _remove,
    "orders": _orders,
    "order": _order,
    "files": _files,
}

WORK = CommandWork(_arguments, _run)
