"""`catalogue cut`: hose sold by the meter or foot with fittings fitted, as one part for each length."""

from __future__ import annotations

import argparse
from fractions import Fraction
from typing import TYPE_CHECKING

from spoutline.cli.catalogue_import import change_word, counts_line
from spoutline.cli.command import Said
from spoutline.cli.exit_code import ExitCode
from spoutline.cli.voice import said
from spoutline.model.catalogue_edition import EditionRef
from spoutline.model.faults import InputFault, InputProblem

if TYPE_CHECKING:
    from spoutline.bootstrap import Workbench
    from spoutline.model.catalogue_entry import CatalogueEntry
    from spoutline.planning.keeping.cut_lengths import CutHose

_TOLD = 60


def cut_arguments(parser: argparse.ArgumentParser) -> None:
    """Declare what is said of the article."""
    parser.add_argument("name", metavar="NAME", help="catalog into whose draft the lengths go")
    parser.add_argument("base", metavar="PART", help="hose of the draft that is cut: number, or maker and number")
    parser.add_argument(
        "--number", required=True, metavar="NUMBER", help="number of the article; the length follows it"
    )
    parser.add_argument("--unit", choices=("m", "ft"), required=True, help="unit of lengths and of the price")
    for option, words in (("--from", "shortest"), ("--to", "longest"), ("--step", "step")):
        parser.add_argument(option, dest=words, metavar="LENGTH", required=True, help=f"{words}, in the unit")
    parser.add_argument(
        "--price", metavar="AMOUNT", action="append", default=[], help="of one unit, such as '12.50 USD'"
    )
    parser.add_argument(
        "--fitted", metavar="AMOUNT", action="append", default=[], help="added once for fittings and work; default: 0"
    )
    parser.add_argument("--lead-days", type=int, metavar="DAYS", help="lead time; default: that of the hose")
    parser.add_argument("--supplier", metavar="NAME", help="who supplies it; default: who supplies the hose")
    parser.add_argument(
        "--price-list", metavar="ID", default="", help="price list of the draft whose rows are renewed too"
    )
    parser.add_argument("--dry-run", action="store_true", help="say what would change, and change nothing")


def run_cut(workbench: Workbench, arguments: argparse.Namespace) -> Said:
    """Put the lengths into the draft and return exit code, text lines and document."""
    service = workbench.catalogues()
    ref = EditionRef(arguments.name, is_draft=True)
    base = service.shelf().entry(ref, service.named_part(ref, arguments.base))
    if base is None:
        raise InputFault((InputProblem("", "PART", repr(arguments.base), "a hose of the draft"),))
    cut = _cut(arguments, base)
    done = service.articles().cut_hose(arguments.name, cut, price_list=arguments.price_list, dry_run=arguments.dry_run)
    new, changed, gone = done.counts
    lines = [change_line(before, after) for before, after in done.changes[:_TOLD]]
    if len(done.changes) > _TOLD:
        lines.append(f"  … {said('{count} more', count=len(done.changes) - _TOLD)}")
    counts = {"new": new, "changed": changed, "out": gone}
    lines.append(counts_line(arguments, counts, f"{arguments.name}, {cut.number}"))
    document = {
        "catalogue": arguments.name,
        "dry_run": arguments.dry_run,
        "number": cut.number,
        "cut_from": {"number": base.number, "maker": base.maker},
        "new": new,
        "changed": changed,
        "gone": gone,
        "lengths": [
            {
                "number": after.number,
                "length_m": after.figure("length_m"),
                "prices": [{"currency": one.currency, "minor": one.minor} for one in after.prices],
            }
            for _before, after in done.changes
            if after is not None
        ],
    }
    return ExitCode.FITS, lines, document


def change_line(before: CatalogueEntry | None, after: CatalogueEntry | None) -> str:
    """Return what an article changes in a draft, in a line."""
    from spoutline.explain.writing.money import amount

    shown = after or before
    if shown is None:
        raise TypeError("a change is of an entry")
    kind = "new" if before is None else "out" if after is None else "changed"
    prices = ", ".join(f"{amount(one.minor, one.currency)} {one.currency}" for one in shown.prices)
    return f"  {change_word(kind)} {shown.ref}  {prices}"


def read_lead_days(days: int | None) -> int | None:
    """Return a lead time as it was said; raise ``InputFault`` where no part has such a one."""
    if days is not None and not 0 <= days <= 400:
        raise InputFault((InputProblem("", "--lead-days", str(days), "a whole number from 0 to 400"),))
    return days


def _cut(arguments: argparse.Namespace, base: CatalogueEntry) -> CutHose:
    from spoutline.planning.keeping.cut_lengths import CutHose, LengthUnit
    from spoutline.planning.keeping.cut_texts import read_amounts, read_length

    unit = LengthUnit(arguments.unit)
    lengths: dict[str, Fraction] = {
        name: read_length(getattr(arguments, name), unit, name) for name in ("shortest", "longest", "step")
    }
    return CutHose(
        number=arguments.number.strip(),
        base=base,
        unit=unit,
        by_length=read_amounts("; ".join(arguments.price), "price"),
        fitted=read_amounts("; ".join(arguments.fitted), "fitted"),
        lead_days=read_lead_days(arguments.lead_days),
        supplier=arguments.supplier,
        **lengths,
    )
