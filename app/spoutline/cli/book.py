"""`book`: back the book up, restore it, check it, save what cannot be read, print the roles of a shared one."""

from __future__ import annotations

import argparse
import json
from collections.abc import Callable, Mapping
from pathlib import Path
from typing import TYPE_CHECKING

from spoutline.cli.command import CommandWork, shared_options
from spoutline.cli.exit_code import ExitCode
from spoutline.cli.files import write_standard_output
from spoutline.cli.outputs import InputFile, OutputArguments
from spoutline.cli.typed import serial
from spoutline.cli.voice import counted, said, told
from spoutline.documents.own_files import FileForm
from spoutline.model.faults import DamagedStore, InputFault, InputProblem
from spoutline.model.worded import Worded

if TYPE_CHECKING:
    from spoutline.book.backups import Backup
    from spoutline.book.book import Book
    from spoutline.book.book_file import FileReport
    from spoutline.bootstrap import Workbench
    from spoutline.bootstrap.backups import BookCheck

# why a backup was made, by the name of the reason
_REASONS = {
    "daily": Worded("daily"),
    "asked": Worded("asked for"),
    "before-migration": Worded("before bringing up"),
    "before-restore": Worded("before restoring"),
}
_Action = Callable[["Workbench", argparse.Namespace], ExitCode]


def _arguments(parser: argparse.ArgumentParser) -> None:
    actions = parser.add_subparsers(dest="action", required=True, metavar="ACTION")

    def add(name: str, words: str) -> argparse.ArgumentParser:
        return actions.add_parser(name, help=words, description=words, parents=[shared_options()], epilog=_EPILOG)

    backup = add("backup", "make a backup now, verified by opening; or list those that are kept")
    backup.add_argument("--list", action="store_true", help="list the backups, newest first, and make none")
    backup.add_argument("--daily", action="store_true", help="make one only where there is none of today")
    restore = add("restore", "put a backup in the place of the book; what lay there is set aside, not deleted")
    restore.add_argument(
        "backup",
        metavar="BACKUP",
        type=Path,
        nargs="?",
        action=InputFile,
        words="the backup",
        help="the newest sound one if not given",
    )
    check = add("check", "read every page and every survey, and say what is wrong if anything is")
    check.add_argument(
        "file", metavar="FILE", type=Path, nargs="?", action=InputFile, words="the file", help="the book if not given"
    )
    rescue = add("rescue", "save a survey as it lies in the book, readable or not; without ID list those that are not")
    rescue.add_argument("id", metavar="ID", type=serial, nargs="?", help="number of the survey in the book")
    rescue.add_argument("--revision", metavar="N", type=serial, help="an earlier save of it; the last one if not given")
    OutputArguments(rescue).add("--out", FileForm.TEXT, "write it here instead of on standard output")
    for one in (backup, restore, check, rescue):
        one.add_argument("--json", action="store_true", help="print a JSON document instead of a text")
    roles = add("roles", "print SQL that makes reader, estimator and keeper on a PostgreSQL server")
    roles.add_argument("--sql", action="store_true", required=True, help="print the SQL; the server's keeper runs it")
    roles.add_argument("--schema", metavar="NAME", default="public", help="schema of the book's tables")


_EPILOG = "Exit codes: 0 done and sound, 1 the book or the backup is not sound, 2 it could not be done."


def _run(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    return _ACTIONS[arguments.action](workbench, arguments)


def _backup(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    from spoutline.book.backups import BackupReason

    desk = workbench.keeping()
    if arguments.list:
        kept = desk.backups()
        text = "".join(f"{_line(one)}\n" for one in kept) or f"{said('no backup yet')}\n"
        return _say(arguments, text, {"backups": [_document(one) for one in kept]})
    try:
        made = desk.back_up_daily() if arguments.daily else desk.back_up(BackupReason.ASKED)
    except DamagedStore as fault:
        return _not_sound(arguments, fault)
    if made is None:
        desk.book_file()  # tells of a server
        return _say(arguments, f"{said('there is a backup of today already')}\n", {"backup": None})
    return _say(arguments, f"{_line(made)}\n", {"backup": _document(made)})


def _restore(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    try:
        done = workbench.keeping().restore(arguments.backup)
    except DamagedStore as fault:
        return _not_sound(arguments, fault)
    text = f"{said('restored from {backup}: {held}', backup=done.backup, held=_held(done.report))}\n"
    if done.set_aside is not None:
        text += f"{said('what lay there is now {path}', path=done.set_aside)}\n"
    document = {
        "restored": str(workbench.keeping().book_file()),
        "backup": str(done.backup),
        "set_aside": None if done.set_aside is None else str(done.set_aside),
        "surveys": done.report.surveys,
        "quotations": done.report.quotations,
    }
    return _say(arguments, text, document)


def _check(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    found = workbench.keeping().check(arguments.file)
    text = (
        said(
            "{place} is sound: {held}, {backups}", place=found.place, held=_held(found), backups=_backups(found.backups)
        )
        if found.is_sound
        else f"{told(found.fault)}\n{_backups(found.backups)}"
    )
    document = {
        "place": found.place,
        "sound": found.is_sound,
        "fault": found.fault,
        "surveys": found.surveys,
        "quotations": found.quotations,
        "backups": found.backups,
    }
    _say(arguments, f"{text}\n", document)
    return ExitCode.FITS if found.is_sound else ExitCode.DOES_NOT_FIT


def _rescue(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    book = workbench.book()
    if arguments.id is None:
        if arguments.out is not None or arguments.revision is not None:
            wanted = "name the survey by its number; without it those that cannot be read are listed"
            raise InputFault((InputProblem("", "ID", "nothing", wanted),))
        return _list_unreadable(book, arguments)
    text = book.written(arguments.id, arguments.revision)
    if arguments.out is None:
        _say(arguments, f"{text}\n", {"survey": arguments.id, "document": text})
        return ExitCode.FITS
    content = text.encode("utf-8", "surrogatepass")
    arguments.output_plan.write({arguments.out: content})
    document = {"survey": arguments.id, "path": str(arguments.out), "bytes": len(content)}
    written = said("{count} bytes are in {path}", count=len(content), path=arguments.out)
    return _say(arguments, f"{written}\n", document)


def _list_unreadable(book: Book, arguments: argparse.Namespace) -> ExitCode:
    found = book.unreadable()
    lines = [
        f"{entry.id:>5}  {entry.name}  {said('revision {number}', number=entry.revision)}\n       {told(fault)}\n"
        for entry, fault in found
    ]
    surveys = [
        {"id": entry.id, "name": entry.name, "revision": entry.revision, "fault": fault} for entry, fault in found
    ]
    _say(arguments, "".join(lines) or f"{said('every survey can be read')}\n", {"unreadable": surveys})
    return ExitCode.DOES_NOT_FIT if found else ExitCode.FITS


def _roles(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    write_standard_output(workbench.keeping().roles_sql(arguments.schema))
    return ExitCode.FITS


def _held(one: BookCheck | FileReport) -> str:
    """Return how many surveys and quotations a book or a backup holds."""
    surveys = counted("no surveys", "{count} survey", "{count} surveys", count=one.surveys)
    return f"{surveys}, {counted('no quotations', '{count} quotation', '{count} quotations', count=one.quotations)}"


def _backups(count: int) -> str:
    return counted("no backups kept", "{count} backup kept", "{count} backups kept", count=count)


def _line(one: Backup) -> str:
    return f"{one.made_at:%Y-%m-%d %H:%M:%SZ}  {told(_REASONS[one.reason.value]):<16}  {one.size_bytes:>10}  {one.path}"


def _document(one: Backup) -> dict[str, object]:
    return {
        "path": str(one.path),
        "made_at": one.made_at.isoformat(),
        "reason": one.reason.value,
        "size_bytes": one.size_bytes,
    }


def _say(arguments: argparse.Namespace, text: str, document: Mapping[str, object]) -> ExitCode:
    write_standard_output(json.dumps(document, indent=2, ensure_ascii=False) + "\n" if arguments.json else text)
    return ExitCode.FITS


def _not_sound(arguments: argparse.Namespace, fault: DamagedStore) -> ExitCode:
    _say(arguments, f"{told(str(fault))}\n", {"sound": False, "fault": str(fault)})
    return ExitCode.DOES_NOT_FIT


_ACTIONS: dict[str, _Action] = {
    "backup": _backup,
    "restore": _restore,
    "check": _check,
    "rescue": _rescue,
    "roles": _roles,
}

WORK = CommandWork(_arguments, _run)
