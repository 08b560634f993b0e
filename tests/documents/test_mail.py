"""Papers handed to mail, read back with the standard library's parser as a mail program reads them."""

from __future__ import annotations

import re
import string
from email import message_from_bytes, policy
from email.message import EmailMessage
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from examples import up_to
from paper_text import text_of
from planning.quoting_terms import terms_of
from spoutline.bootstrap import Workbench
from spoutline.bootstrap.demos import demo_survey
from spoutline.documents.mail import (
    Mail,
    attachment_name,
    is_mail_of_program,
    mail_bytes,
    paper_marks,
    recipients_of,
)
from spoutline.documents.own_files import FileForm, is_own
from spoutline.model.language import Language
from spoutline.model.quotation_terms import Recipient
from spoutline.units.accepted import UnitSystem
from spoutline.units.display import Display

US = Display(UnitSystem.US)
PAPER = b"%PDF-1.4 nothing but a stand-in\n%%EOF\n"
ANY_TEXT = st.text(max_size=400)


def read(content: bytes) -> EmailMessage:
    message = message_from_bytes(content, policy=policy.default)
    assert isinstance(message, EmailMessage)
    assert message.defects == []
    return message


def text_in(message: EmailMessage) -> str:
    body = message.get_body(("plain",))
    assert body is not None
    return str(body.get_content())


def attached(message: EmailMessage) -> EmailMessage:
    (one,) = message.iter_attachments()
    assert isinstance(one, EmailMessage)
    return one


@pytest.fixture(scope="module")
def bill(workbench: Workbench) -> bytes:
    survey = demo_survey("small_town")
    plan = workbench.plan_site(survey.model_copy(update={"positions": survey.positions[:1]}))
    return workbench.bills().short_pdf(plan, US, language=Language.GERMAN)


def test_a_paper_is_attached_whole_under_its_title_and_in_its_language(workbench: Workbench, bill: bytes) -> None:
    message = read(workbench.mailing().draft(bill, "Tankstelle Übersee"))
    assert message["X-Unsent"] == "1"
    assert message["Subject"] == paper_marks(bill).title
    assert demo_survey("small_town").site.name in message["Subject"]
    assert "Das Papier ist keine Erlaubnis" in text_in(message)
    assert "Tankstelle Übersee.pdf" in text_in(message)
    paper = attached(message)
    assert paper.get_content_type() == "application/pdf"
    assert paper.get_content_disposition() == "attachment"
    assert paper.get_filename() == "Tankstelle Übersee.pdf"
    assert paper.get_content() == bill
    assert "Stückliste" in text_of(paper.get_content())
    assert {"To", "From", "Date", "Message-ID", "Cc", "Bcc"}.isdisjoint(message.keys())


@pytest.mark.parametrize("language", list(Language))
def test_the_mail_is_in_the_language_of_the_paper_whatever_the_program_speaks(
    workbench: Workbench, language: Language
) -> None:
    survey = demo_survey("small_town")
    plan = workbench.plan_site(survey.model_copy(update={"positions": survey.positions[:1]}))
    pdf = workbench.packing().caution_sheet(plan, language, US)
    assert paper_marks(pdf).language is language
    words = {"en": "no permission", "de": "keine Erlaubnis", "es": "no es un permiso", "fr": "pas une autorisation"}
    assert words[language] in text_in(read(workbench.mailing().draft(pdf, "cautions")))


def test_equal_papers_give_equal_bytes_that_any_mail_server_carries(workbench: Workbench, bill: bytes) -> None:
    content = workbench.mailing().draft(bill, "bill")
    assert content == workbench.mailing().draft(bill, "bill")
    assert content.isascii()
    lines = content.split(b"\r\n")
    assert b"\n" not in content.replace(b"\r\n", b"")
    assert max(map(len, lines)) <= 998  # RFC 5322 section 2.1.1
    assert max(len(line) for line in lines) <= 78  # and should not exceed 78


def test_a_quotation_goes_to_its_customer(workbench: Workbench, plans_once: None) -> None:
    survey = demo_survey("marina")
    customer = {
        "name": "Ünlü & Söhne",
        "contact": "Anna Ünlü",
        "email": "anna@müller.example; orders@example.com, none",
    }
    quotation = workbench.quoting().quote(survey, terms_of(options=[{"title": "A"}], customer=customer), US).quotation
    pdf = workbench.quoting().papers().pdf(quotation, 1, US)
    message = read(workbench.mailing().draft(pdf, "q", quotation.terms.customer))
    # IDNA of the host, RFC 3490: encoded with the standard library's codec, another path than the program's bytes
    hosts = ["anna@" + "müller.example".encode("idna").decode(), "orders@example.com"]
    assert [one.addr_spec for one in message["To"].addresses] == hosts
    assert {one.display_name for one in message["To"].addresses} == {"Anna Ünlü"}
    assert quotation.terms.heading.number in message["Subject"]


@pytest.mark.parametrize(
    ("written", "read_as"),
    [
        ("a@b.example", ["a@b.example"]),
        ("Anna <a.b+c@d.example>", ["a.b+c@d.example"]),
        (" a@b.example ;c@d.example ", ["a@b.example", "c@d.example"]),
        ("", []),
        ("call instead", []),
        ("a@b", []),
        ("a@@b.example", []),
        ("a b@c.example", []),
        ("a@b.example\r\nBcc: c@d.example", []),
        ("ü@b.example", []),  # needs SMTPUTF8, RFC 6531, which not every server has
        ("a..b@c.example", []),
        ("a@-b.example", []),
        (f"a@{'b' * 80}.example", []),
    ],
)
def test_addresses_are_taken_as_they_are_written_and_others_left_out(written: str, read_as: list[str]) -> None:
    party = Recipient.model_construct(name="N", contact="", email=written)
    assert [one.addr_spec for one in recipients_of(party)] == read_as


@given(subject=ANY_TEXT, text=ANY_TEXT, name=ANY_TEXT, contact=ANY_TEXT, email=ANY_TEXT)
@settings(max_examples=up_to(200))
def test_no_text_adds_a_header_or_a_part(subject: str, text: str, name: str, contact: str, email: str) -> None:
    party = Recipient.model_construct(name="N", contact=contact, email=f"{email};a@b.example")
    mail = Mail(subject=subject, text=text, name=name, paper=PAPER, recipients=recipients_of(party))
    content = mail_bytes(mail)
    message = read(content)
    known = {"X-Unsent", "X-Mailer", "To", "Subject", "MIME-Version", "Content-Type"}
    assert set(message.keys()) == known
    assert len(message.keys()) == len(known)
    assert "a@b.example" in [one.addr_spec for one in message["To"].addresses]
    assert [part.get_content_type() for part in message.iter_parts()] == ["text/plain", "application/pdf"]
    assert attached(message).get_content() == PAPER
    assert attached(message).get_filename() == attachment_name(name)
    assert is_mail_of_program(content)


def test_a_subject_that_shows_the_boundary_is_known_all_the_same() -> None:
    for subject in (f"=_{'0' * 40}", f'boundary="=_{"0" * 40}"', f'boundary="=_{"a" * 40}"'):
        content = mail_bytes(Mail(subject=subject, text=subject, name=subject, paper=PAPER))
        assert read(content)["Subject"] == subject
        assert is_mail_of_program(content)
        assert not is_mail_of_program(content.replace(b"stand", b"stood").replace(PAPER[:8], b"%PDF-1.5") + b" ")


INJECTION = "Fuels\r\nBcc: thief@example.com\r\n\r\n<script>\u2028Cc: x\x0bTo: y"


def test_headers_in_names_of_people_stay_words() -> None:
    party = Recipient.model_construct(name="N", contact=INJECTION, email="a@b.example")
    mail = Mail(subject=INJECTION, text=INJECTION, name=INJECTION, paper=PAPER, recipients=recipients_of(party))
    message = read(mail_bytes(mail))
    assert (message["Bcc"], message["Cc"]) == (None, None)
    assert message["Subject"] == "Fuels Bcc: thief@example.com <script> Cc: x To: y"
    assert [one.addr_spec for one in message["To"].addresses] == ["a@b.example"]
    assert attached(message).get_filename() == "Fuels Bcc_ thief@example.com _script_ Cc_ x To_ y.pdf"


@pytest.mark.parametrize(
    ("name", "attached_as"),
    [
        ("report", "report.pdf"),
        ("report.PDF", "report.pdf"),
        ("report.exe", "report.exe.pdf"),
        ("../../etc/passwd", "_.._etc_passwd.pdf"),
        ("\u202efdp.exe", "fdp.exe.pdf"),  # an override of the direction would hide the ending
        ("", "paper.pdf"),
        ("заправка 加油站", "заправка 加油站.pdf"),
        ("x" * 500, "x" * 120 + ".pdf"),
    ],
)
def test_an_attachment_has_a_harmless_name(name: str, attached_as: str) -> None:
    assert attachment_name(name) == attached_as
    assert attached(read(mail_bytes(Mail(subject="s", text="t", name=name, paper=PAPER)))).get_filename() == attached_as


def test_a_text_that_looks_like_a_boundary_or_a_lone_dot_stays_a_text() -> None:
    mail = Mail(subject="s", text="t", name="n", paper=PAPER)
    boundary = read(mail_bytes(mail)).get_boundary()
    text = f"--{boundary}--\n.\n--=_\nFrom here on"
    told = text_in(read(mail_bytes(Mail(subject="s", text=text, name="n", paper=PAPER))))
    assert told.splitlines() == text.splitlines()


def test_a_huge_paper_arrives_whole_and_is_told_to_be_large(workbench: Workbench, tmp_path: Path) -> None:
    paper = bytes(range(256)) * 100_000  # 25.6 MB
    content = mail_bytes(Mail(subject="s", text="t", name="n", paper=paper))
    assert attached(read(content)).get_content() == paper
    huge, small = tmp_path / "huge.eml", tmp_path / "small.eml"
    huge.write_bytes(content)
    small.write_bytes(mail_bytes(Mail(subject="s", text="t", name="n", paper=PAPER)))
    assert [workbench.mailing().is_large(one) for one in (huge, small, tmp_path / "gone.eml")] == [True, False, False]
    assert is_own(huge, FileForm.MAIL)


def test_the_program_knows_its_mails_and_none_that_somebody_changed(
    workbench: Workbench, bill: bytes, tmp_path: Path
) -> None:
    path, content = tmp_path / "own.eml", workbench.mailing().draft(bill, "bill")
    path.write_bytes(content)
    assert is_own(path, FileForm.MAIL)
    others = {
        "to added": content.replace(b"Subject:", b"To: a@b.example\r\nSubject:", 1),
        "other words": content.replace(b"keine", b"eine", 1),
        "ending": content + b"\r\nmine\r\n",
        "cut": content[: len(content) // 2],
        "another program": content.replace(b"X-Mailer: Spoutline", b"X-Mailer: Other", 1),
        "empty": b"",
        "noise": bytes(range(256)),
        "nested": b"Content-Type: multipart/mixed; boundary=a\r\nX-Mailer: Spoutline\r\n\r\n--a\r\n\r\n--a--\r\n",
    }
    for name, changed in others.items():
        path.write_bytes(changed)
        assert changed != content, name
        assert not is_own(path, FileForm.MAIL), name


def test_every_letter_of_the_alphabet_of_names_survives_in_a_subject() -> None:
    signs = f"{string.ascii_letters} {string.punctuation} ÄÖÜßéñçœ – „“ ‰ € \u200d"
    message = read(mail_bytes(Mail(subject=signs, text=signs, name="n", paper=PAPER)))
    assert message["Subject"] == " ".join(signs.split())
    assert re.sub(r"\s+", " ", text_in(message)).strip() == " ".join(signs.split())
