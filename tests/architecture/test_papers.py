"""Every paper of the window goes out by the one pair of hands that saves, prints and mails it."""

from __future__ import annotations

import ast
from collections.abc import Iterator
from functools import cache
from pathlib import Path

import spoutline

PROGRAM = Path(spoutline.__file__).parent
GUI = PROGRAM / "gui"
HANDS = "PaperHands"
# the hands themselves, and what only writes into a file that a print dialog chose
THEIR_OWN = {"gui/dialogs/handing.py", "gui/dialogs/saving.py", "gui/dialogs/printing.py"}


@cache
def trees(folder: Path) -> tuple[tuple[str, ast.Module], ...]:
    return tuple(
        (path.relative_to(PROGRAM).as_posix(), ast.parse(path.read_text(encoding="utf-8")))
        for path in sorted(folder.rglob("*.py"))
    )


def makers() -> set[str]:
    """Return the names of the use cases that make a paper: they take the form in which it is wanted."""
    found = set()
    for _, tree in trees(PROGRAM / "bootstrap"):
        for node in ast.walk(tree):
            if isinstance(node, ast.FunctionDef) and not node.name.startswith("_"):
                told = [*node.args.args, *node.args.kwonlyargs]
                if any(isinstance(one.annotation, ast.Name) and one.annotation.id == "PaperForm" for one in told):
                    found.add(node.name)
    return found


def called(tree: ast.AST) -> Iterator[str]:
    for node in ast.walk(tree):
        if isinstance(node, ast.Call):
            if isinstance(node.func, ast.Attribute):
                yield node.func.attr
            elif isinstance(node.func, ast.Name):
                yield node.func.id


def takes_a_form(node: ast.Call) -> bool:
    names = [one.id for one in (*node.args, *(word.value for word in node.keywords)) if isinstance(one, ast.Name)]
    return "form" in names


def papers_made(tree: ast.AST, names: set[str]) -> bool:
    """Say whether a use case that makes a paper is called, with the form in which the hands want it."""
    calls = (node for node in ast.walk(tree) if isinstance(node, ast.Call) and isinstance(node.func, ast.Attribute))
    return any(node.func.attr in names and takes_a_form(node) for node in calls if isinstance(node.func, ast.Attribute))


def test_whatever_makes_a_paper_in_the_window_has_the_hands_that_save_print_and_mail_it() -> None:
    names, with_papers, without_hands = makers(), [], []
    assert {"pdf", "paper", "pack", "certificate", "record_sheet", "programme_pdf"} <= names
    for place, tree in trees(GUI):
        if papers_made(tree, names):
            with_papers.append(place)
            if HANDS not in set(called(tree)):
                without_hands.append(place)
    assert without_hands == []
    assert len(with_papers) > 12


def test_no_paper_is_saved_printed_or_mailed_but_by_those_hands() -> None:
    found = []
    for place, tree in trees(GUI):
        if place in THEIR_OWN:
            continue
        words = {"ask_paper", "form_of", "print_document", "mailing", "QPrinter", "QPrintDialog"}
        found += [f"{place}: {name}" for name in called(tree) if name in words]
        for node in ast.walk(tree):
            if isinstance(node, ast.Attribute) and isinstance(node.value, ast.Name):
                told = f"{node.value.id}.{node.attr}"
                if told in {"FileForm.PDF", "FileForm.MAIL"} and place != "gui/pages/quotation/files.py":
                    found.append(f"{place}: {told}")
    assert found == []


def test_hands_give_all_three_steps_in_both_shapes() -> None:
    """Walk the source: three buttons and a menu are made from the same rows, so neither can lack a step."""
    tree = ast.parse((GUI / "dialogs" / "handing.py").read_text(encoding="utf-8"))
    (hands,) = (node for node in tree.body if isinstance(node, ast.ClassDef) and node.name == HANDS)
    steps = {node.name: node for node in hands.body if isinstance(node, ast.FunctionDef)}
    for shape in ("buttons", "menu_button"):
        assert "_steps" in set(called(steps[shape])), shape
    told = {node.attr for node in ast.walk(steps["_steps"]) if isinstance(node, ast.Attribute)}
    assert {"save", "print_shown", "mail"} <= told


def test_hands_that_are_made_are_laid_out() -> None:
    """Hands without a button would save nothing: each module that makes them asks for buttons or for a menu."""
    for place, tree in trees(GUI):
        if HANDS in set(called(tree)) and place not in THEIR_OWN and place != "gui/pages/quotation/files.py":
            told = {node.attr for node in ast.walk(tree) if isinstance(node, ast.Attribute)}
            assert told & {"buttons", "menu_button"}, place
    offer = ast.parse((GUI / "pages" / "quotation" / "offer.py").read_text(encoding="utf-8"))
    asked = [ast.unparse(node) for node in ast.walk(offer) if isinstance(node, ast.Attribute)]
    for kind, shape in (("PDF", "buttons"), ("PICK_LIST", "menu_button"), ("MARGIN", "menu_button")):
        assert f"hands[FileKind.{kind}].{shape}" in asked
