"""`help`: print a page of the manual, or say where words stand in it."""

from __future__ import annotations

import argparse
import textwrap
from collections.abc import Iterator
from typing import TYPE_CHECKING

from spoutline.cli.command import DEFAULT_JURISDICTION, CommandWork, display_of
from spoutline.cli.exit_code import ExitCode
from spoutline.cli.files import write_standard_output

if TYPE_CHECKING:
    from spoutline.bootstrap import Workbench
    from spoutline.bootstrap.manual import HelpHit, HelpTopic

_WIDTH = 110
_LONGEST_TOLD = 300


def _arguments(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("topic", metavar="TOPIC", nargs="?", help="name of a page; without one the pages are listed")
    parser.add_argument("--search", metavar="WORDS", help="say where these words stand in the manual")
    parser.add_argument(
        "--jurisdiction", metavar="ID", default=DEFAULT_JURISDICTION, help="whose limits the page of rules shows"
    )


def _run(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    from spoutline.cli.answer import printable
    from spoutline.explain.phrases.manual_words import ManualWord

    display = display_of(arguments, workbench, arguments.jurisdiction)
    manual, story = workbench.manual(display, arguments.jurisdiction), workbench.story(display)
    code = ExitCode.FITS
    if arguments.search is not None:
        lines = list(_hits(manual.search(arguments.search)))
        if not lines:
            lines, code = [story.word(ManualWord.NOTHING_FOUND)], ExitCode.DOES_NOT_FIT
    elif arguments.topic is None:
        lines = list(_topics(manual.topics))
    else:
        page = manual.page(arguments.topic)
        lines = [] if page.language is workbench.language else [story.word(ManualWord.ONLY_ENGLISH), ""]
        lines += page.text.rstrip("\n").split("\n")
    write_standard_output("".join(f"{printable(line)}\n" for line in lines))
    return code


def _topics(topics: tuple[HelpTopic, ...]) -> Iterator[str]:
    width = max(len(one.name) for one in topics) + 2
    for one in topics:
        yield f"{one.name:<{width}}{one.title}"


def _hits(hits: tuple[HelpHit, ...]) -> Iterator[str]:
    for hit in hits:
        yield f"{hit.topic.name}: {hit.heading}"
        if not hit.is_heading:
            told = hit.told if len(hit.told) <= _LONGEST_TOLD else f"{hit.told[:_LONGEST_TOLD]}…"
            yield from textwrap.wrap(told, _WIDTH, initial_indent="    ", subsequent_indent="    ")


WORK = CommandWork(_arguments, _run)
