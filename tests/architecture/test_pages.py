"""The pages for people: short enough to be read, and true of the commands, files and pages that they name."""

from __future__ import annotations

import argparse
import re
import shlex
from pathlib import Path

import pytest

from spoutline.cli import main
from spoutline.cli.command import DiscreetParser
from spoutline.cli.commands import COMMANDS
from spoutline.cli.main import WINDOW

PROJECT = Path(__file__).resolve().parents[2]
HELP = PROJECT / "resources" / "help"
README = PROJECT / "README.md"
# half of what the page held when it was the manual too
README_LINES, README_WORDS = 93, 956

_NOT_OURS = (".venv", "node_modules", ".git")
PAGES = sorted(page for page in PROJECT.rglob("*.md") if not set(_NOT_OURS) & set(page.relative_to(PROJECT).parts))
SHOWING_COMMANDS = [page for page in PAGES if page == README or page.is_relative_to(HELP)]


def named(page: Path) -> str:
    return page.relative_to(PROJECT).as_posix()


def blocks(text: str, language: str) -> list[str]:
    return re.findall(rf"^```{language}\n(.*?)^```$", text, re.MULTILINE | re.DOTALL)


def command_lines(text: str) -> list[list[str]]:
    """Return the words behind ``spoutline`` of every line of a block of shell commands."""
    split = [shlex.split(line, comments=True) for block in blocks(text, "sh") for line in block.splitlines()]
    return [words[1:] for words in split if words[:1] == ["spoutline"]]


def actions_of(parser: argparse.ArgumentParser) -> dict[str, argparse.ArgumentParser]:
    if isinstance(parser, DiscreetParser):
        parser.declared()
    found = [one.choices for one in parser._actions if isinstance(one, argparse._SubParsersAction)]
    return dict(found[0]) if found else {}


def test_the_readme_stays_short() -> None:
    text = README.read_text(encoding="utf-8")
    assert len(text.splitlines()) <= README_LINES
    assert len(text.split()) <= README_WORDS


def test_the_readme_shows_pictures_and_leads_to_every_page_of_the_manual() -> None:
    text = README.read_text(encoding="utf-8")
    assert len(re.findall(r"!\[[^\]]+\]\(packaging/pictures/[a-z]+\.png\)", text)) >= 3
    contents = (HELP / "README.md").read_text(encoding="utf-8")
    for page in HELP.glob("*.md"):
        assert f"](resources/help/{page.name})" in text
        assert page.name == "README.md" or f"]({page.name})" in contents


@pytest.mark.parametrize("page", PAGES, ids=named)
def test_links_lead_somewhere(page: Path) -> None:
    targets = re.findall(r"\]\(([^)#\s]+)(?:#[^)]*)?\)", page.read_text(encoding="utf-8"))
    local = [target for target in targets if "://" not in target]
    assert [target for target in local if not (page.parent / target).exists()] == []


@pytest.mark.parametrize("page", SHOWING_COMMANDS, ids=named)
def test_commands_shown_are_commands_of_the_program(page: Path, capsys: pytest.CaptureFixture[str]) -> None:
    refused = []
    for words in command_lines(page.read_text(encoding="utf-8")):
        try:
            main._parser().parse_args(words)
        except SystemExit:
            refused.append((words, capsys.readouterr().err))
    assert refused == []


@pytest.mark.parametrize("page", SHOWING_COMMANDS, ids=named)
def test_commands_named_in_a_sentence_exist(page: Path) -> None:
    known = actions_of(main._parser())
    names = {name for command in COMMANDS for name in (command.name, command.also) if name}
    assert set(known) == {WINDOW, *names}
    unknown = []
    for words in re.findall(
        r"`spoutline ([a-z]+(?:-[a-z]+)*(?: [a-z]+(?:-[a-z]+)*)?)", page.read_text(encoding="utf-8")
    ):
        command, _, action = words.partition(" ")
        actions = actions_of(known[command]) if command in known else {}
        if command not in known or (action and actions and action not in actions):
            unknown.append(words)
    assert unknown == []


def test_every_command_has_its_place_in_the_manual() -> None:
    text = "\n".join(page.read_text(encoding="utf-8") for page in HELP.glob("*.md"))
    names = [WINDOW, *(command.name for command in COMMANDS)]
    assert [name for name in names if not re.search(rf"\bspoutline .*{name}\b", text)] == []


def test_the_survey_of_the_manual_is_one() -> None:
    from spoutline.book.survey_text import survey_from_json

    [text] = blocks((HELP / "surveys.md").read_text(encoding="utf-8"), "json")
    assert [position.label for position in survey_from_json(text, "surveys.md").positions] == ["1A gasoline"]


def test_a_command_that_does_not_exist_would_be_found(capsys: pytest.CaptureFixture[str]) -> None:
    [words] = command_lines("```sh\nspoutline bill station.json --tiff bill.tiff  # as a picture\n```\n")
    assert words == ["bill", "station.json", "--tiff", "bill.tiff"]
    with pytest.raises(SystemExit):
        main._parser().parse_args(words)
    assert "--tiff" in capsys.readouterr().err


SOURCE = PROJECT / "app" / "spoutline"
DEVELOPERS = PROJECT / "DEVELOPERS.md"
CODE_PAGES = [DEVELOPERS, *(page for page in PAGES if page.is_relative_to(SOURCE))]


def where_table() -> list[list[str]]:
    text = DEVELOPERS.read_text(encoding="utf-8").partition("## Where do I change X\n")[2].partition("\n## ")[0]
    rows = [line.strip("|").split("|") for line in text.splitlines() if line.startswith("|")]
    return rows[2:]


def test_every_file_of_the_where_to_change_table_exists() -> None:
    rows = where_table()
    assert {row[0].strip() for row in rows} >= {"limit", "rule", "check", "part attribute", "phrase", "language"}
    assert {row[0].strip() for row in rows} >= {"document", "question", "command", "window text", "migration"}
    paths = [path for row in rows for path in re.findall(r"`([\w.]+/[\w./]*)`", "|".join(row))]
    assert len(paths) > 2 * len(rows)
    assert [path for path in paths if not (PROJECT / path).exists() and not (SOURCE / path).exists()] == []


def test_the_where_to_change_table_comes_first() -> None:
    [first, *_] = re.findall(r"^## (.+)$", DEVELOPERS.read_text(encoding="utf-8"), re.MULTILINE)
    assert first == "Where do I change X"


def names_a_module(name: str) -> bool:
    """Tell whether a dotted name leads to a module or package, or to something that its text defines."""
    parts = name.split(".")
    for count in range(len(parts), 0, -1):
        base = SOURCE.joinpath(*parts[:count])
        for path in (base.with_suffix(".py"), base / "__init__.py"):
            if path.is_file():
                rest = parts[count:]
                text = path.read_text(encoding="utf-8")
                return all(re.search(rf"\b{re.escape(one)}\b", text) for one in rest)
    return False


@pytest.mark.parametrize("page", CODE_PAGES, ids=named)
def test_modules_named_beside_the_code_exist(page: Path) -> None:
    packages = {path.name for path in SOURCE.iterdir() if path.is_dir()}
    dotted = re.findall(r"`([a-z_]+(?:\.[A-Za-z_]+)+)`", page.read_text(encoding="utf-8"))
    ours = [name for name in dotted if name.partition(".")[0] in packages and not name.endswith((".py", ".toml"))]
    assert [name for name in ours if not names_a_module(name)] == []
    paths = re.findall(r"`((?:[\w.]+/)+[\w.]*)`", page.read_text(encoding="utf-8"))
    bases = (PROJECT, SOURCE, page.parent)
    assert [path for path in paths if not any((base / path).exists() for base in bases)] == []
