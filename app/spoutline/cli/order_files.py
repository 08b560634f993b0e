"""The order files of all suppliers, written together into one folder: a file for each, as its supplier wants it."""

from __future__ import annotations

import argparse
from collections.abc import Mapping, Sequence
from pathlib import Path
from typing import TYPE_CHECKING

from spoutline.cli.outputs import OutputFolder
from spoutline.cli.voice import said
from spoutline.documents.own_files import FileForm, own_test
from spoutline.frozen import frozen
from spoutline.model.faults import InputFault, InputProblem
from spoutline.whole_files import OutputPlan, PlannedFile
from spoutline.whole_files.plan import FORCE

if TYPE_CHECKING:
    from spoutline.bootstrap import Workbench
    from spoutline.planning.refit.supplier_orders import OrderHead, SupplierOrder


@frozen
class WrittenOrder:
    """An order with the file that holds it."""

    order: SupplierOrder
    path: Path


def add_folder(parser: argparse.ArgumentParser, option: str, words: str, *, required: bool = True) -> None:
    """Declare the folder that order files go into, and ``--force`` where the command has none yet."""
    parser.add_argument(option, metavar="FOLDER", type=Path, action=OutputFolder, required=required, help=words)
    if FORCE not in parser._option_string_actions:
        parser.add_argument(
            FORCE,
            action="store_true",
            help="replace a file that is there and was not written by the program; never one that is being read",
        )


def write_orders(
    workbench: Workbench,
    arguments: argparse.Namespace,
    option: str,
    orders: Sequence[SupplierOrder],
    head: OrderHead,
) -> tuple[WrittenOrder, ...]:
    """Write the file of each order into a folder, all or none, and return them; a folder that is not there is made.

    ``option`` is the one that names the folder. Raise ``InputFault`` naming every file that must not be written.
    """
    folder: Path = getattr(arguments, option.removeprefix("--"))
    service = workbench.supplier_orders()
    paths = [folder / name for name in service.file_names(orders, head)]
    contents = {path: service.file(order, head) for path, order in zip(paths, orders, strict=True)}
    if not contents:
        return ()
    try:
        folder.mkdir(exist_ok=True)
    except OSError as fault:
        wanted = "a folder is needed, or a name for one in a folder that is there"
        raise InputFault((InputProblem("", option, f"'{folder}'", wanted),)) from fault
    planned = [PlannedFile(option, path, own_test(FileForm(path.suffix.removeprefix(".")))) for path in paths]
    OutputPlan(planned, workbench.files_in_use(), force=arguments.force).write(contents)
    return tuple(WrittenOrder(order, path) for order, path in zip(orders, paths, strict=True))


def order_lines(written: Sequence[WrittenOrder]) -> list[str]:
    """Return a line of text for each file."""
    if not written:
        return [said("nothing is to be ordered")]
    return [
        said(
            "{path}  lines: {lines}, pieces: {pieces}",
            path=one.path,
            lines=len(one.order.lines),
            pieces=one.order.pieces,
        )
        for one in written
    ]


def order_document(one: WrittenOrder) -> Mapping[str, object]:
    """Return a file as JSON values."""
    return {
        "supplier": one.order.supplier,
        "file": str(one.path),
        "lines": len(one.order.lines),
        "pieces": one.order.pieces,
    }
