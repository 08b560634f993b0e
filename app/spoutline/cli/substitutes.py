"""`substitutes`: every catalogue part that could hang in a place of a position's set, and why the others could not."""

from __future__ import annotations

import argparse
import textwrap
from collections.abc import Iterator
from typing import TYPE_CHECKING

from spoutline.cli.command import CommandWork, add_survey, display_of, json_display
from spoutline.cli.exit_code import ExitCode
from spoutline.cli.files import read_survey, write_standard_output
from spoutline.cli.progress import TerminalProgress
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.language import Language
from spoutline.model.part_ref import PartRef, told_apart
from spoutline.model.requirement import Slot
from spoutline.model.worded import Worded

if TYPE_CHECKING:
    from spoutline.bootstrap import Workbench
    from spoutline.explain.plan.story import Story
    from spoutline.explain.plan.what_differs import ListedParts
    from spoutline.model.plan import HangingSet, PositionPlan
    from spoutline.model.substitute import Misfit, Substitute, Substitutes
    from spoutline.model.survey import Survey

_WIDTH = 110


def _arguments(parser: argparse.ArgumentParser) -> None:
    add_survey(parser)
    parser.add_argument("position", metavar="POSITION", help="label of a position of the survey")
    parser.add_argument(
        "place", metavar="PLACE", help="a place of its set, such as nozzle, or part of it: number, or maker and number"
    )
    parser.add_argument("--misfits", action="store_true", help="say of the other parts of the kind why they could not")
    parser.add_argument(
        "--json", action="store_true", help="print the document; `schema --output substitutes` describes it"
    )


def _run(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    survey = read_survey(arguments.survey)
    plan = workbench.plan_position(survey, arguments.position, with_alternatives=False)
    found = _found(workbench, survey, plan, arguments)
    if arguments.json:
        story = workbench.story(json_display(), Language.ENGLISH)
    else:
        story = workbench.story(display_of(arguments, workbench, survey.site.jurisdiction))
    if arguments.json:
        from spoutline.documents.json.substitutes import substitutes_json

        provenance = workbench.provenance(survey)
        write_standard_output(substitutes_json(plan.position.label, found, survey.site.currency, provenance, story))
    else:
        from spoutline.cli.answer import printable

        lines = _no_set(plan, story) if found is None else _text(found, story)
        write_standard_output("".join(f"{printable(line)}\n" for line in lines))
    return ExitCode.FITS if found is not None and found.fitting else ExitCode.DOES_NOT_FIT


def _found(
    workbench: Workbench, survey: Survey, plan: PositionPlan, arguments: argparse.Namespace
) -> Substitutes | None:
    """Return what could hang in the place; None where the position has no set."""
    from spoutline.planning.sets.substitutes import Listening

    if plan.chosen is None:
        return None
    named = _part_in(plan.chosen.hanging_set, arguments.place)
    listening = Listening(TerminalProgress("{done} of {total} parts tried"))
    return workbench.substitutes(survey, plan, named, listening, with_misfits=arguments.misfits)


def _part_in(hanging_set: HangingSet, place: str) -> PartRef | str:
    """Return the part that a place of the set stands for, or that is given; raise ``InputFault``."""
    wanted = place.strip().lower().replace(" ", "_").replace("-", "_")
    if wanted not in set(Slot):
        return place.strip()
    parts = [link.part.ref for link in hanging_set.links if link.slot == wanted]
    if len(parts) == 1:
        return parts[0]
    if parts:
        hint = Worded("the set holds several; name one of {told_apart}", told_apart=", ".join(told_apart(parts)))
    else:
        hint = Worded(
            "the set has no such place; it has {fromkeys}",
            fromkeys=", ".join(dict.fromkeys(link.slot for link in hanging_set.links)),
        )
    raise InputFault((InputProblem("", "place", repr(place), hint),))


def _no_set(plan: PositionPlan, story: Story) -> Iterator[str]:
    yield f"✗ {story.phrases.fill('terminal_no_set', position=plan.position.label)}"
    if plan.refusal is not None:
        yield from story.refusal(plan.refusal)
    elif plan.conflict is not None:
        yield from story.conflict(plan.conflict)


def _text(found: Substitutes, story: Story) -> Iterator[str]:
    from spoutline.explain.plan.what_differs import ListedParts

    price = story.money(found.chosen.price_minor, found.chosen.currency)
    misfits = tuple(one.part for one in found.misfits or ())
    parts = (found.part, *(one.part for one in found.fitting), *misfits, *found.not_decided)
    listed = ListedParts(parts, story)
    named = listed.of(found.part, with_name=True)
    yield story.phrases.fill("terminal_set", place=story.title(found.slot), part=named, price=price)
    count = len(found.fitting)
    yield (
        _counted(("terminal_others_one", "terminal_others_many"), count, story)
        if count
        else story.phrases.text["terminal_no_other"]
    )
    for one in found.fitting:
        yield from _fitting_lines(one, listed, story)
    if found.not_decided:
        numbers = ", ".join(listed.of(one) for one in found.not_decided)
        yield story.phrases.fill("substitutes_not_decided", numbers=numbers)
    if found.misfits is not None:
        yield _counted(("terminal_misfits_one", "terminal_misfits_many"), len(found.misfits), story)
        for misfit in found.misfits:
            yield from _misfit_lines(misfit, listed, story)


def _counted(keys: tuple[str, str], count: int, story: Story) -> str:
    """Return a counted text; the first key is that of one."""
    return story.phrases.fill(keys[count != 1], count=count)


def _fitting_lines(one: Substitute, listed: ListedParts, story: Story) -> Iterator[str]:
    hanging_set = one.judged.hanging_set
    difference = story.signed_money(one.price_difference_minor, hanging_set.currency)
    price = story.money(hanging_set.price_minor, hanging_set.currency)
    yield f"✓ {story.phrases.fill('terminal_fitting', part=listed.of(one.part), difference=difference, price=price)}"
    if one.changes:
        changes = "; ".join(story.slot_change(change) for change in one.changes)
        yield from _wrapped(story.phrases.fill("terminal_changes", changes=changes))
    if one.given_up:
        yield from _wrapped(story.phrases.fill("terminal_gives_up", lines=story.line_names(one.given_up)))
    if one.kept:
        yield from _wrapped(story.phrases.fill("terminal_keeps", lines=story.line_names(one.kept)))


def _misfit_lines(misfit: Misfit, listed: ListedParts, story: Story) -> Iterator[str]:
    yield f"✗ {listed.of(misfit.part)}"
    yield from _wrapped(story.misfit(misfit))


def _wrapped(text: str) -> list[str]:
    return textwrap.wrap(text, _WIDTH, initial_indent="    ", subsequent_indent="    ", break_on_hyphens=False)


WORK = CommandWork(_arguments, _run)
