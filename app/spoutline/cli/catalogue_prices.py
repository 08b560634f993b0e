"""`catalogue price-list` and `catalogue price`: price lists with validity, and which price applies on a day and why."""

from __future__ import annotations

import argparse
from collections.abc import Callable, Iterable, Iterator
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING, Final

from spoutline.cli.catalogue_import import choices_in, report_document, report_line, table_arguments, with_repairs
from spoutline.cli.command import Said, display_of
from spoutline.cli.exit_code import ExitCode
from spoutline.cli.mail import add_paper, paper_files
from spoutline.cli.outputs import InputFile, OutputArguments
from spoutline.cli.voice import counted, said, told
from spoutline.model.catalogue_edition import EditionRef
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.worded import Worded
from spoutline.planning.pricing.applying import ListStanding, ListVerdict, PriceAnswer, PriceAsked

if TYPE_CHECKING:
    from spoutline.bootstrap import Workbench
    from spoutline.model.pricing import FoundPrice, PriceList

_MOST: Final = 1_000_000
_SHOWN: Final = 5  # numbers in a line
_WORDS: Final[dict[ListStanding, str]] = {
    ListStanding.APPLIES: Worded("applies"),
    ListStanding.COMES_AFTER: Worded(
        "would apply too, but comes after it: another currency is wanted, or it began earlier"
    ),
    ListStanding.BELOW_LEAST_QUANTITY: Worded("sells this part only from a greater quantity"),
    ListStanding.NOT_LISTED: Worded("does not list this part"),
    ListStanding.OTHER_CURRENCY: Worded("is in a currency that is not wanted"),
    ListStanding.OTHER_SUPPLIER: Worded("is of another supplier"),
    ListStanding.NOT_YET_VALID: Worded("is not valid yet"),
    ListStanding.EXPIRED: Worded("has ended"),
}
_EDITION: Final = "NAME, NAME@3 or NAME@draft; default: the newest edition"


def price_arguments(parser: argparse.ArgumentParser) -> None:
    """Declare which price is asked for."""
    parser.add_argument("edition", metavar="NAME", help=_EDITION)
    parser.add_argument("part", metavar="PART", help="number, or maker and number where several share it")
    parser.add_argument("--on", metavar="DATE", type=_day, default=None, help="day, such as 2027-03-01; default: today")
    parser.add_argument("--quantity", metavar="N", type=int, default=1, help="pieces ordered; default: 1")
    parser.add_argument("--currency", metavar="CODE", action="append", default=[], help="wanted, the preferred first")
    parser.add_argument("--supplier", metavar="NAME", default="", help="only price lists of this supplier")


def price_list_arguments(
    parser: argparse.ArgumentParser, shared: Callable[[], argparse.ArgumentParser], epilog: str
) -> None:
    """Declare what can be done with price lists."""
    actions = parser.add_subparsers(dest="list_action", metavar="ACTION", required=True)

    def add(name: str, words: str) -> argparse.ArgumentParser:
        made = actions.add_parser(name, help=words, description=words, parents=[shared()], epilog=epilog)
        made.add_argument("--json", action="store_true", help="print a JSON document instead of a text")
        return made

    listed = add("list", "the price lists of an edition, and which are valid today")
    listed.add_argument("edition", metavar="NAME", help=_EDITION)
    take = add("import", "take a price file into the draft as a price list with its validity")
    take.add_argument("file", metavar="FILE", type=Path, action=InputFile, words="the price file", help=_FILE)
    take.add_argument("--into", metavar="NAME", required=True, help="catalog whose draft takes it in")
    take.add_argument("--id", metavar="ID", required=True, dest="list_id", help="its name; replaces the list so named")
    take.add_argument("--currency", metavar="CODE", required=True, help="of its prices, ISO 4217")
    take.add_argument("--valid-from", metavar="DATE", type=_day, required=True, help="first day")
    take.add_argument("--valid-to", metavar="DATE", type=_day, default=None, help="last day; default: open")
    take.add_argument("--dry-run", action="store_true", help="check the file, and change nothing")
    table_arguments(take.add_argument_group("the file"))
    export = add("export", "write the price lists of an edition as a paper")
    export.add_argument("edition", metavar="NAME", help=_EDITION)
    export.add_argument("--id", metavar="ID", default="", dest="list_id", help="only this list")
    add_paper(OutputArguments(export), "the paper")
    remove = add("remove", "take a price list out of the draft")
    remove.add_argument("name", metavar="NAME")
    remove.add_argument("list_id", metavar="ID")


_FILE = "columns number, group, from_quantity, unit_price in CSV; or any table that `catalogue import` reads"


def _day(text: str) -> date:
    try:
        return date.fromisoformat(text)
    except ValueError:
        fault = said("{given!r} is no day: write it as 2027-03-01", given=text[:60])
        raise argparse.ArgumentTypeError(fault) from None


def run_price(workbench: Workbench, arguments: argparse.Namespace) -> Said:
    """Return which price applies, and what becomes of every other list of the maker."""
    if not 1 <= arguments.quantity <= _MOST:
        wanted = Worded("a whole number from 1 to {most}", most=_MOST)
        raise InputFault((InputProblem("", "--quantity", str(arguments.quantity), wanted),))
    ref = EditionRef.from_text(arguments.edition)
    service = workbench.catalogues()
    asked = PriceAsked(
        part=service.named_part(ref, arguments.part),
        quantity=arguments.quantity,
        day=arguments.on or date.today(),
        currencies=tuple(code.upper() for code in arguments.currency),
        supplier=arguments.supplier,
    )
    answer = service.prices().price(ref, asked)
    plain = service.prices().plain(ref, asked.part)
    found = answer.applies
    head = said("{part}, {day}, pieces: {count}", part=asked.part, day=asked.day.isoformat(), count=asked.quantity)
    lines = [said("{place}: {said}", place=head, said=_price_told(found))]
    lines += [f"  {_verdict_line(one)}" for one in answer.verdicts]
    lines += [
        f"  {said('plain price of the catalog, by which sets are chosen: {price}', price=f'{price} {code}')}"
        for code, price in plain
    ]
    document: dict[str, object] = {"edition": str(ref), **_answer_document(answer)}
    document["plain_prices"] = [{"currency": code, "price": price} for code, price in plain]
    return (ExitCode.FITS if found is not None else ExitCode.DOES_NOT_FIT), lines, document


def _price_told(found: FoundPrice | None) -> str:
    if found is None:
        return said("no price list applies")
    line = said(
        "{price}, list {id}, from {count} pieces on",
        price=f"{found.reached.unit_price} {found.price_list.currency}",
        id=found.price_list.id,
        count=found.reached.from_quantity,
    )
    group = found.row.discount_group
    return f"{line}, {said('discount group {group}', group=group)}" if group else line


def run_price_list(workbench: Workbench, arguments: argparse.Namespace) -> Said:
    """Do what is asked of price lists."""
    service = workbench.catalogues()
    if arguments.list_action == "remove":
        service.prices().remove(arguments.name, arguments.list_id)
        return (
            ExitCode.FITS,
            [said("{name}: {part} taken out", name=arguments.name, part=arguments.list_id)],
            {"removed": arguments.list_id},
        )
    if arguments.list_action == "import":
        return _import(workbench, arguments)
    if arguments.list_action == "export":
        return _export(workbench, arguments)
    ref, today = EditionRef.from_text(arguments.edition), date.today()
    lists = service.shelf().price_lists(ref)
    count = counted("no price lists", "{count} price list", "{count} price lists", count=len(lists))
    lines = [said("{place}: {said}", place=ref, said=count), *(f"  {_list_line(one, today)}" for one in lists)]
    held = {one.id for one in lists}
    beside = tuple(one for one in service.prices().lists(ref) if one.id not in held)
    if beside:
        lines += [said("of folders, beside those of the edition:"), *(f"  {_list_line(one, today)}" for one in beside)]
    document: dict[str, object] = {
        "edition": str(ref),
        "price_lists": [_list_document(one, today) for one in lists],
        "price_lists_of_folders": [_list_document(one, today) for one in beside],
    }
    return ExitCode.FITS, lines, document


def _export(workbench: Workbench, arguments: argparse.Namespace) -> Said:
    if arguments.pdf is None and arguments.mail is None:
        raise InputFault((InputProblem("", "--pdf", "nothing", "name the file to write"),))
    ref = EditionRef.from_text(arguments.edition)
    story = workbench.story(display_of(arguments, workbench))
    prices, today = workbench.catalogues().prices(), date.today()
    contents = paper_files(
        workbench, arguments, lambda form: prices.pdf(ref, story, arguments.list_id, today, form=form)
    )
    with arguments.output_plan.staged(contents) as files:
        files.place()
    named = ", ".join(map(str, contents))
    return (
        ExitCode.FITS,
        [said("{name}: written to {files}", name=ref, files=named)],
        {"edition": str(ref), "file": named},
    )


def _import(workbench: Workbench, arguments: argparse.Namespace) -> Said:
    from spoutline.catalogue.price_lists import is_price_table
    from spoutline.planning.table_intake.into_draft import maps_in, open_supplier_table

    service = workbench.catalogues()
    head = {
        "id": arguments.list_id,
        "maker": arguments.maker,
        "supplier": arguments.supplier or "",
        "currency": arguments.currency.upper(),
        "valid_from": arguments.valid_from,
        "valid_to": arguments.valid_to,
    }
    if is_price_table(arguments.file):
        done = service.prices().import_file(arguments.into, arguments.file, head, dry_run=arguments.dry_run)
    else:
        maps = maps_in(arguments.map) if arguments.map is not None else ()
        names = ("sheet", "encoding", "decimal_comma", "maker", "supplier")
        given: dict[str, object] = {name: value for name in names if (value := getattr(arguments, name)) is not None}
        given["currency"] = head["currency"]
        opened = with_repairs(open_supplier_table(arguments.file, maps, given, choices_in(arguments.column)), arguments)
        made = service.prices().import_table(arguments.into, opened, head, dry_run=arguments.dry_run)
        if made.price_list is None:
            lines = [said("{path}: nothing was taken in", path=arguments.file)]
            lines += [f"  {report_line(one)}" for one in made.report.reports]
            code = ExitCode.DOES_NOT_FIT if arguments.dry_run else ExitCode.BAD_INPUT
            return code, lines, {"reports": [report_document(one) for one in made.report.reports]}
        done = made.price_list
    shown = _list_line(done, date.today())
    line = said("tried, nothing changed: {counts}", counts=shown) if arguments.dry_run else shown
    lines = [said("{place}: {said}", place=f"{arguments.into}@draft", said=line)]
    strange = service.prices().of_no_part(arguments.into, done)
    if strange:
        shown = ", ".join(strange[:_SHOWN])
        lines.append(
            said("numbers that no part of the draft has: {count}, such as {numbers}", count=len(strange), numbers=shown)
        )
    document = {"dry_run": arguments.dry_run, **_list_document(done, date.today()), "of_no_part": list(strange)}
    return ExitCode.FITS, lines, document


def price_list_changes(before: Iterable[PriceList], after: Iterable[PriceList]) -> tuple[tuple[str, str], ...]:
    """Return which price lists are new, gone or changed between two editions, by id."""
    old, new = ({one.id: one for one in lists} for lists in (before, after))
    return tuple(
        ("new" if name not in old else "gone" if name not in new else "changed", name)
        for name in sorted({*old, *new})
        if old.get(name) != new.get(name)
    )


def _list_line(one: PriceList, today: date) -> str:
    by = f", {said('supplied by {name}', name=one.supplier)}" if one.supplier else ""
    parts = counted("no parts", "{count} part", "{count} parts", count=len(one.rows))
    text = f"{one.maker}{by}, {one.currency}, {_span(one)} ({_state(one, today)}), {parts}"
    return said("{place}: {said}", place=one.id, said=text)


def _span(one: PriceList) -> str:
    if one.valid_to is None:
        return said("from {day} on", day=one.valid_from)
    return said("{first} to {last}", first=one.valid_from, last=one.valid_to)


def _state(one: PriceList, today: date) -> str:
    if one.holds_on(today):
        return said("valid")
    return said("not valid yet") if one.valid_from > today else said("ended")


def _list_document(one: PriceList, today: date) -> dict[str, object]:
    return {
        "id": one.id,
        "maker": one.maker,
        "supplier": one.supplier,
        "currency": one.currency,
        "valid_from": one.valid_from.isoformat(),
        "valid_to": None if one.valid_to is None else one.valid_to.isoformat(),
        "valid_today": one.holds_on(today),
        "parts": len(one.rows),
    }


def _verdict_line(one: ListVerdict) -> str:
    place = f"{one.price_list.id} ({one.price_list.currency}, {_span(one.price_list)})"
    return said("{place}: {said}", place=place, said=f"{told(_WORDS[one.standing])}{''.join(_stated(one))}")


def _stated(one: ListVerdict) -> Iterator[str]:
    if one.found is not None:
        reached = one.found.reached
        price = f"{reached.unit_price} {one.price_list.currency}"
        yield f"; {said('{price} from {count} pieces on', price=price, count=reached.from_quantity)}"


def _answer_document(answer: PriceAnswer) -> dict[str, object]:
    return {
        "part": {"number": answer.asked.part.number, "maker": answer.asked.part.maker},
        "day": answer.asked.day.isoformat(),
        "quantity": answer.asked.quantity,
        "price_lists": [
            {
                "id": one.price_list.id,
                "standing": one.standing.value,
                "currency": one.price_list.currency,
                "supplier": one.price_list.supplier,
                "unit_price": None if one.found is None else str(one.found.reached.unit_price),
                "from_quantity": None if one.found is None else one.found.reached.from_quantity,
                "discount_group": "" if one.found is None else one.found.row.discount_group,
            }
            for one in answer.verdicts
        ],
    }
