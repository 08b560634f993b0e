"""`--mail` of every command with a paper: the PDF of the same run, attached to a mail that was not sent yet."""

from __future__ import annotations

import argparse
import shutil
from collections.abc import Callable, Iterator
from email import message_from_bytes, policy
from email.message import EmailMessage
from pathlib import Path

import pytest

from program_runs import Spoutline
from spoutline.cli import main
from spoutline.cli.command import DiscreetParser
from spoutline.model.language import Language


def every_parser() -> Iterator[DiscreetParser]:
    def below(parser: DiscreetParser) -> Iterator[DiscreetParser]:
        parser.declared()
        yield parser
        for action in parser._actions:
            if isinstance(action, argparse._SubParsersAction):
                for inner in dict.fromkeys(action.choices.values()):
                    yield from below(inner)

    return below(main._parser(Language.ENGLISH))


DEMO = Path(__file__).resolve().parents[2] / "resources" / "demo"
TERMS = """
[seller]
name = "Hedgerow Supply"
[customer]
name = "Hollow Ford Fuels"
email = "orders@hollow-ford.example"
[heading]
number = "HS-7"
dated = 2026-11-25
"""


def read(path: Path) -> EmailMessage:
    message = message_from_bytes(path.read_bytes(), policy=policy.default)
    assert isinstance(message, EmailMessage)
    assert message.defects == []
    return message


def paper_in(path: Path) -> tuple[str | None, bytes]:
    (one,) = read(path).iter_attachments()
    assert isinstance(one, EmailMessage)
    return one.get_filename(), one.get_content()


@pytest.fixture
def terms(tmp_path: Path) -> Path:
    path = tmp_path / "terms.toml"
    path.write_text(TERMS, encoding="utf-8")
    return path


COMMANDS: tuple[tuple[str, ...], ...] = (
    ("bill",),
    ("bill", "--short"),
    ("pack", "--language", "es"),
    ("convert",),
)


@pytest.mark.parametrize("command", COMMANDS, ids=" ".join)
def test_the_mail_holds_the_paper_of_the_same_run(
    command: tuple[str, ...], spoutline: Spoutline, written: Callable[..., Path], tmp_path: Path
) -> None:
    pdf, mail = tmp_path / "paper.pdf", tmp_path / "señal.eml"
    name, *options = command
    done = spoutline(name, written(), *options, "--pdf", pdf, "--mail", mail)
    assert done.code == 0, done.err
    assert paper_in(mail) == ("señal.pdf", pdf.read_bytes())
    message = read(mail)
    assert message["X-Unsent"] == "1"
    assert "To" not in message
    before = mail.read_bytes()
    assert spoutline(name, written(), *options, "--mail", mail).code == 0  # its own: written over, the same again
    assert mail.read_bytes() == before
    mail.write_bytes(before + b"mine")
    refused = spoutline(name, written(), *options, "--mail", mail)
    assert (refused.code, mail.read_bytes()) == (2, before + b"mine")
    assert "--mail" in refused.err


@pytest.mark.parametrize(
    "command",
    [
        ("measure", "SURVEY"),
        ("weigh", "SURVEY", "1"),
        ("whatif", "SURVEY", "--blend", "E15"),
        ("whatif", "SURVEY", "--blend", "E15", "--blend", "E85"),
        ("profile", "export", "us_general"),
        ("due",),
        ("stock", "list"),
        ("customer", "list"),
        ("quotation", "list"),
        ("catalogue", "coverage", "Demonstration", "--liquid", "e10", "--duty", "car", "--climate", "moderate"),
    ],
    ids=" ".join,
)
def test_every_paper_is_written_as_a_mail_where_its_name_ends_so(
    command: tuple[str, ...],
    spoutline: Spoutline,
    written: Callable[..., Path],
    tmp_path: Path,
    database_to_copy: Path,
) -> None:
    own = Path(shutil.copy(database_to_copy, tmp_path / "own.sqlite3"))
    asked = [str(written()) if one == "SURVEY" else one for one in command]
    if command[0] == "stock":
        assert spoutline("stock", "count", "Van", "TH-W101", "--database", own).code == 0
    option = "--out" if "coverage" in command else "--pdf"
    pdf, mail = tmp_path / "paper.pdf", tmp_path / "by_name.eml"
    for path in (pdf, mail):
        done = spoutline(*asked, option, path, "--database", own)
        assert done.code in {0, 1}, done.err
    assert paper_in(mail) == ("by_name.pdf", pdf.read_bytes())
    if option == "--pdf":
        other = tmp_path / "other.eml"
        assert spoutline(*asked, "--mail", other, "--database", own).code in {0, 1}
        assert paper_in(other)[1] == pdf.read_bytes()


def test_secondary_papers_go_out_as_mails_by_their_names(
    spoutline: Spoutline, written: Callable[..., Path], terms: Path, tmp_path: Path
) -> None:
    sheet, picks = tmp_path / "cautions.eml", tmp_path / "picks.eml"
    assert spoutline("pack", written(), "--cautions", sheet).code == 0
    assert spoutline("quote", written(), "--terms", terms, "--pick-list", picks).code == 0
    assert paper_in(sheet)[1][:4] == paper_in(picks)[1][:4] == b"%PDF"


def test_whatever_writes_a_paper_writes_it_as_a_mail_too() -> None:
    """Walk all commands: beside each ``--pdf`` stands ``--mail``, and every paper's help tells the ending of a mail."""
    lacking = []
    for parser in every_parser():
        options = {option: one for one in parser._actions for option in one.option_strings}
        if "--pdf" in options and "--mail" not in options:
            lacking.append(parser.prog)
        for option in ("--cautions", "--inspection", "--pick-list", "--bill", "--bond", "--leak", "--one-page"):
            if option in options and ".eml" not in (options[option].help or ""):
                lacking.append(f"{parser.prog} {option}")
    assert lacking == ["spoutline quotation issue"]  # which keeps the papers; `print` hands them to mail


def test_a_conversion_goes_out_as_report_or_as_one_page(spoutline: Spoutline, tmp_path: Path) -> None:
    survey, page, mail = DEMO / "conversion_balance.json", tmp_path / "page.pdf", tmp_path / "bank.eml"
    assert spoutline("convert", survey, "--one-page", page, "--mail", mail, "--language", "de").code == 0
    assert paper_in(mail) == ("bank.pdf", page.read_bytes())
    assert read(mail)["Subject"] == "Tankstelle auf einer Seite: Pebblecap Station"
    body = read(mail).get_body(("plain",))
    assert body is not None
    assert "Das Papier ist keine Erlaubnis" in body.get_content()


def test_a_quotation_goes_to_its_customer_and_again_as_it_was_issued(
    spoutline: Spoutline, written: Callable[..., Path], terms: Path, tmp_path: Path, database_to_copy: Path
) -> None:
    own = Path(shutil.copy(database_to_copy, tmp_path / "own.sqlite3"))
    pdf, mail = tmp_path / "q.pdf", tmp_path / "q.eml"
    quoted = spoutline("quote", written(), "--terms", terms, "--pdf", pdf, "--mail", mail, "--database", own)
    assert quoted.code == 0, quoted.err
    assert paper_in(mail) == ("q.pdf", pdf.read_bytes())
    assert [one.addr_spec for one in read(mail)["To"].addresses] == ["orders@hollow-ford.example"]
    assert "HS-7" in read(mail)["Subject"]
    for step in (
        ("keep", written(), "--terms", terms, "--by", "O"),
        ("issue", 1, "--by", "O", "--pdf", pdf, "--force"),
    ):
        done = spoutline("quotation", *step, "--database", own)
        assert done.code == 0, done.err
    again = tmp_path / "again.eml"
    assert spoutline("quotation", "print", 1, "--mail", again, "--database", own).code == 0
    assert paper_in(again) == ("again.pdf", pdf.read_bytes())
    assert [one.addr_spec for one in read(again)["To"].addresses] == ["orders@hollow-ford.example"]


def test_a_very_large_mail_is_noted(
    spoutline: Spoutline, written: Callable[..., Path], tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("spoutline.documents.mail.LARGE_BYTES", 1_000)
    done = spoutline("bill", written(), "--short", "--mail", tmp_path / "bill.eml")
    assert done.code == 0
    assert "more than many mail services take" in done.err
