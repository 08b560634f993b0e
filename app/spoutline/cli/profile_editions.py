"""`profile` (`rules`): rows compared with their parent, changed with their source, published."""

from __future__ import annotations

import argparse
from collections.abc import Callable
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING, Any, Final

from spoutline.cli.answer import write_answer
from spoutline.cli.command import display_of, json_display
from spoutline.cli.exit_code import ExitCode
from spoutline.cli.files import read_survey
from spoutline.cli.outputs import InputFile
from spoutline.cli.progress import TerminalProgress
from spoutline.cli.voice import counted, said
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.language import Language
from spoutline.model.limit import LimitId, LimitStatus
from spoutline.whole_files.environment import files_in

if TYPE_CHECKING:
    from spoutline.bootstrap import Workbench
    from spoutline.explain.plan.story import Story
    from spoutline.model.limit import Limit
    from spoutline.ruletables.editions import RowChange, RuleEdition

_Action = Callable[["Workbench", argparse.Namespace], ExitCode]
_ID: Final = "id of a jurisdiction, or an edition such as my_county@2"


def add_rule_actions(
    actions: Any,  # noqa: ANN401  (argparse keeps the type of its subparsers to itself)
    shared: Callable[[], argparse.ArgumentParser],
) -> None:
    """Declare what is done with the rows and editions of jurisdictions."""

    def add(name: str, words: str, named: str = _ID) -> argparse.ArgumentParser:
        made: argparse.ArgumentParser = actions.add_parser(name, help=words, description=words, parents=[shared()])
        made.add_argument("id", metavar="ID", help=named)
        made.add_argument("--json", action="store_true", help="print a JSON document instead of a text")
        return made

    compare = add("compare", "say which rows differ from those of its parent, or of another jurisdiction or edition")
    compare.add_argument("other", metavar="OTHER", nargs="?", default="", help="default: what it was copied from")
    add("check", "say which changed figures nobody read in a published text or had reported")
    change = add("set", "change one row of an own jurisdiction, with its source", "id of an own jurisdiction")
    change.add_argument("limit", metavar="LIMIT", help="such as hose.length_max; `profile show` lists them")
    change.add_argument("--value", metavar="V", required=True, help="as the source prints it; empty for no figure")
    change.add_argument("--unit", metavar="U", default="", help="unit of a number")
    change.add_argument("--source", metavar="TEXT", required=True, help="where it stands; it cannot be empty")
    change.add_argument("--clause", metavar="TEXT", required=True)
    change.add_argument("--edition", metavar="TEXT", required=True, help="edition of the source")
    change.add_argument("--status", choices=[one.value for one in LimitStatus], required=True, help="how well founded")
    change.add_argument("--note", metavar="TEXT", default="")
    publish = add("publish", "publish an own jurisdiction as its next edition", "id of an own jurisdiction")
    publish.add_argument("--note", metavar="TEXT", required=True, help="what is new in it")
    publish.add_argument("--by", metavar="WHO", required=True, help="who publishes it")
    add("editions", "list the published editions of an own jurisdiction", "id of an own jurisdiction")
    effect = add("effect", "say what becomes of stations under it, against its parent or another")
    effect.add_argument("--against", metavar="OTHER", default="", help="default: newest edition, or else its parent")
    effect.add_argument(
        "--surveys",
        metavar="PATH",
        type=Path,
        action=InputFile,
        words="a survey",
        several=True,
        required=True,
        help="survey file, or folder of them; may be given more than once",
    )


def _compare(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    service = workbench.jurisdictions()
    other = arguments.other or _parent_of(workbench, arguments.id)
    found = service.changes(arguments.id, other) if other else ()
    story = workbench.story(display_of(arguments, workbench, arguments.id))
    against = said("{id} against {other}", id=arguments.id, other=other) if other else _parentless(arguments.id)
    lines = [said("{place}: {said}", place=against, said=_rows_differ(len(found)))]
    for one in found:
        lines.append(f"  {one.id}  {story.phrases.tell(one.after.title)}")
        lines.append(f"    {said('before')}  {_row_line(one.before, story)}")
        lines.append(f"    {said('now')}  {_row_line(one.after, story)}")
    document = {
        "jurisdiction": arguments.id,
        "against": other or None,
        "rows": [_change_document(one) for one in found],
    }
    return write_answer(arguments, lines, document)


def _check(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    from spoutline.ruletables.editions import weakly_founded

    found = weakly_founded(workbench.jurisdictions().changes(arguments.id))
    story = workbench.story(display_of(arguments, workbench, arguments.id))
    told = counted(
        "no changed figures to look at",
        "{count} changed figure to look at",
        "{count} changed figures to look at",
        count=len(found),
    )
    lines = [said("{place}: {said}", place=arguments.id, said=told)]
    lines += [f"  {one.id}  {_row_line(one.after, story)}" for one in found]
    write_answer(arguments, lines, {"jurisdiction": arguments.id, "rows": [_change_document(one) for one in found]})
    return ExitCode.DOES_NOT_FIT if found else ExitCode.FITS


def _set(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    from spoutline.ruletables.nearness import nearest
    from spoutline.ruletables.profiles import WrittenRow

    if arguments.limit not in [one.value for one in LimitId]:
        wanted = nearest(arguments.limit, [one.value for one in LimitId])
        raise InputFault((InputProblem("", "limit", repr(arguments.limit), wanted),))
    written = WrittenRow(
        id=LimitId(arguments.limit),
        printed=arguments.value,
        unit=arguments.unit,
        source=arguments.source,
        clause=arguments.clause,
        edition=arguments.edition,
        status=LimitStatus(arguments.status),
        note=arguments.note,
    )
    after = workbench.jurisdictions().change_row(arguments.id, written)
    limit = after.limit(written.id)
    document = {"jurisdiction": after.id, "edition": after.edition, "row": _row_document(limit)}
    story = workbench.story(display_of(arguments, workbench, after.id))
    return write_answer(arguments, [f"{after.id}, {limit.id}: {_row_line(limit, story)}"], document)


def _publish(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    done = workbench.jurisdictions().publish(arguments.id, publisher=arguments.by, note=arguments.note, on=date.today())
    return write_answer(arguments, [said("published: {edition}", edition=_edition_line(done))], _edition_document(done))


def _editions(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    service = workbench.jurisdictions()
    found = service.editions(arguments.id)
    is_open = not found or found[-1].jurisdiction != service.one(arguments.id)
    lines = [_edition_line(one) for one in found]
    lines.append(said("changed since, not published") if is_open else said("nothing changed since"))
    document = {"editions": [_edition_document(one) for one in found], "changed_since": is_open}
    return write_answer(arguments, lines, document)


def _effect(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    from spoutline.cli.catalogue_text import effect_document, effect_lines

    against = arguments.against or _newest_of(workbench, arguments.id) or _parent_of(workbench, arguments.id)
    if not against:
        wanted = "it has no parent: name a jurisdiction or an edition"
        raise InputFault((InputProblem("", "--against", "nothing", wanted),))
    files = [one for path in arguments.surveys for one in (files_in(path, "*.json") if path.is_dir() else [path])]
    surveys = [read_survey(str(file)) for file in files]
    found = workbench.rule_effects(against, arguments.id, surveys, TerminalProgress())
    rows = workbench.jurisdictions().changes(arguments.id, against)
    lines = [said("{place}: {said}", place=f"{against} → {arguments.id}", said=_rows_differ(len(rows)))]
    lines += [f"  {one.id}: {_value(one.before)} → {_value(one.after)}" for one in rows if one.changes_value]
    lines += effect_lines(found, workbench.story(display_of(arguments, workbench)))
    document = {
        "jurisdiction": arguments.id,
        "against": against,
        "rows": [_change_document(one) for one in rows],
        "positions": effect_document(found, workbench.story(json_display(), Language.ENGLISH)),
    }
    return write_answer(arguments, lines, document)


def _parent_of(workbench: Workbench, jurisdiction_id: str) -> str:
    parent = workbench.jurisdictions().parent(jurisdiction_id)
    return "" if parent is None else parent.id


def _newest_of(workbench: Workbench, jurisdiction_id: str) -> str:
    found = workbench.jurisdictions().editions(jurisdiction_id) if "@" not in jurisdiction_id else ()
    return f"{jurisdiction_id}@{found[-1].number}" if found else ""


def _parentless(jurisdiction_id: str) -> str:
    return said("{id} against nothing, as it has no parent", id=jurisdiction_id)


def _rows_differ(count: int) -> str:
    return counted("no rows differ", "{count} row differs", "{count} rows differ", count=count)


def _value(limit: Limit) -> str:
    return f"{limit.printed} {limit.printed_unit}".strip() or said("no figure")


def _row_line(limit: Limit, story: Story) -> str:
    note = f". {story.limit_note(limit)}" if limit.note else ""
    return f"{_value(limit)}  [{story.word(limit.status)}]  {story.limit_source(limit)}{note}"


def _row_document(limit: Limit) -> dict[str, object]:
    return {
        "id": limit.id.value,
        "value": limit.printed,
        "unit": limit.printed_unit,
        "source": limit.source,
        "clause": limit.clause,
        "edition": limit.edition,
        "status": limit.status.value,
        "note": limit.note,
    }


def _change_document(one: RowChange) -> dict[str, object]:
    return {"id": one.id.value, "before": _row_document(one.before), "after": _row_document(one.after)}


def _edition_line(one: RuleEdition) -> str:
    by = said("by {name}", name=one.publisher)
    return f"{one.jurisdiction.id}@{one.number}  {one.published_on}  {by}  {one.note}"


def _edition_document(one: RuleEdition) -> dict[str, object]:
    return {
        "edition": f"{one.jurisdiction.id}@{one.number}",
        "published_on": one.published_on.isoformat(),
        "publisher": one.publisher,
        "note": one.note,
        "rows_edition": one.jurisdiction.edition,
    }


RULE_ACTIONS: Final[dict[str, _Action]] = {
    "compare": _compare,
    "check": _check,
    "set": _set,
    "publish": _publish,
    "editions": _editions,
    "effect": _effect,
}
