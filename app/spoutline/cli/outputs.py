"""Files that a command reads and writes, declared with its arguments, so that none can be written unchecked."""

from __future__ import annotations

import argparse
from collections.abc import Callable, Iterable, Sequence
from contextlib import suppress
from functools import partial
from pathlib import Path
from typing import Any

from spoutline.cli.files import STANDARD_INPUT
from spoutline.documents.own_files import FileForm, own_test
from spoutline.documents.paper_form import form_of
from spoutline.whole_files import InUse, OutputPlan, PlannedFile
from spoutline.whole_files.plan import FORCE

FormOf = Callable[[argparse.Namespace], FileForm]
_BY_ENDING = "HTML where the name ends with .html, a mail with the PDF attached where it ends with .eml"
_OUTPUTS, _INPUTS = "named_outputs", "named_inputs"


class OutputFile(argparse.Action):
    """An option that names a file to be written."""

    def __init__(self, *, form: FileForm | FormOf, **named: Any) -> None:  # noqa: ANN401 - argparse's own
        super().__init__(**named)
        self.form = form

    def __call__(
        self, _parser: argparse.ArgumentParser, namespace: argparse.Namespace, values: object, _option: object = None
    ) -> None:
        """Take the file, as argparse calls it."""
        setattr(namespace, self.dest, values)
        named = dict(getattr(namespace, _OUTPUTS, {}))
        named[self.option_strings[0]] = (values, self.form)
        setattr(namespace, _OUTPUTS, named)


class OutputFolder(argparse.Action):
    """An option that names a folder into which files are written whose names the command gives; see ``order_files``."""

    def __call__(
        self, _parser: argparse.ArgumentParser, namespace: argparse.Namespace, values: object, _option: object = None
    ) -> None:
        """Take the folder, as argparse calls it."""
        setattr(namespace, self.dest, values)


class InputFile(argparse.Action):
    """An argument that names a file to be read, or with ``pattern`` a folder of such files; ``several`` may come."""

    def __init__(self, *, words: str, several: bool = False, pattern: str = "", **named: Any) -> None:  # noqa: ANN401
        super().__init__(**named)
        self.words, self.several, self.pattern = words, several, pattern

    def __call__(
        self,
        _parser: argparse.ArgumentParser,
        namespace: argparse.Namespace,
        values: Any,  # noqa: ANN401 - argparse's own
        _option: object = None,
    ) -> None:
        """Take the file, as argparse calls it."""
        setattr(namespace, self.dest, [*(getattr(namespace, self.dest) or ()), values] if self.several else values)
        if values is None or values == STANDARD_INPUT:
            return
        path = Path(values)
        paths = [path]
        if self.pattern:
            paths = []
            with suppress(OSError):  # a folder that cannot be looked at is told of by whoever reads what is in it
                paths = sorted(path.glob(self.pattern))
        setattr(namespace, _INPUTS, [*getattr(namespace, _INPUTS, ()), *(InUse(one, self.words) for one in paths)])


class OutputArguments:
    """Declares the files that a command writes, and beside them ``--force``."""

    def __init__(self, parser: argparse.ArgumentParser) -> None:
        self._parser = parser
        parser.add_argument(
            FORCE,
            action="store_true",
            help="replace a file that is there and was not written by the program; never one that is being read",
        )

    def add(self, option: str, form: FileForm | FormOf, words: str | None = None) -> None:
        """Declare one file."""
        self._parser.add_argument(option, metavar="F", type=Path, action=OutputFile, form=form, help=words)

    def add_paper(self, option: str, words: str) -> None:
        """Declare a paper: PDF, or by the ending of the file's name HTML or a mail; ``mail.paper_file`` makes it."""
        self.add(option, partial(_paper_file_form, option), f"{words}; {_BY_ENDING}")


def _paper_file_form(option: str, arguments: argparse.Namespace) -> FileForm:
    path: Path = getattr(arguments, option.removeprefix("--").replace("-", "_"))
    return FileForm.MAIL if is_mail(path) else FileForm(form_of(path).value)


def is_mail(path: Path) -> bool:
    """Say whether the ending of a file's name asks for a mail with the paper attached."""
    return path.suffix.lower() == f".{FileForm.MAIL}"


def output_plan(arguments: argparse.Namespace, in_use: Callable[[], Sequence[InUse]]) -> OutputPlan:
    """Return the plan of the files that the arguments name; raise ``InputFault`` where one must not be written.

    ``in_use`` is only asked where something is to be written.
    """
    named: dict[str, tuple[Path, FileForm | FormOf]] = getattr(arguments, _OUTPUTS, {})
    inputs: Iterable[InUse] = getattr(arguments, _INPUTS, ())
    files = []
    for option, (path, form) in named.items():
        known = form if isinstance(form, FileForm) else form(arguments)
        files.append(PlannedFile(option, path, own_test(known)))
    plan = OutputPlan(files, (*inputs, *in_use()) if files else (), force=getattr(arguments, "force", False))
    plan.check()
    return plan
