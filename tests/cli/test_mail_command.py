"""`--mail` of every command with a paper: the PDF of the same run, attached to a mail that was not sent yet."""

from __future__ import annotations

import shutil
from collections.abc import Callable
from email import message_from_bytes, policy
from email.message import EmailMessage
from pathlib import Path

import pytest

from program_runs import Spoutline

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
