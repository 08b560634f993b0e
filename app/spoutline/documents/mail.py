"""A paper as a mail that was not sent yet (RFC 5322, MIME): a draft that a mail program opens, with the PDF attached.

Neither clock nor random number enters, so equal papers give equal bytes: no date and no message id, which the program
that sends the mail adds, and a boundary that is a digest of the mail. By that digest the program knows its own mails.
"""

from __future__ import annotations

import hashlib
import re
import unicodedata
from email import policy
from email.headerregistry import Address
from email.message import EmailMessage
from io import BytesIO
from typing import Final

from spoutline.documents.marks import MAIL_PROGRAM
from spoutline.frozen import frozen
from spoutline.model.language import Language, language_of
from spoutline.model.quotation_terms import Party

LARGE_BYTES: Final = 20_000_000  # common practice, no source: many mail services take no more with one mail
_ENDING: Final = ".pdf"
_LONGEST_NAME: Final = 120  # characters of the name of the attachment
_LONGEST_LINE: Final = 300  # characters of a subject
# RFC 5322 section 3.2.3, dot-atom, without quoted names; the host as in RFC 1123 section 2.1
_LOCAL: Final = re.compile(r"[A-Za-z0-9!#$%&'*+/=?^_`{|}~-]+(?:\.[A-Za-z0-9!#$%&'*+/=?^_`{|}~-]+)*")
_HOST: Final = re.compile(r"[A-Za-z0-9](?:[A-Za-z0-9-]*[A-Za-z0-9])?(?:\.[A-Za-z0-9](?:[A-Za-z0-9-]*[A-Za-z0-9])?)+")
_DIGITS: Final = 40
_NO_BOUNDARY: Final = b"=_" + b"0" * _DIGITS
_BOUNDARY: Final = re.compile(rb'boundary="(=_[0-9a-f]{40})"')
_START: Final = f"X-Unsent: 1\r\nX-Mailer: {MAIL_PROGRAM}\r\n".encode()
_JOINERS: Final = "\u200c\u200d"  # zero-width signs that the writing of some languages needs
_WRITTEN: Final = re.compile(r"(?:[^<>@]*<)?\s*([^\s<>@]+)@([^\s<>@]+)\s*>?")  # name@host, or Somebody <name@host>


@frozen
class PaperMarks:
    """What a PDF of the program says of itself: its title, and the language that it is written in."""

    title: str
    language: Language


@frozen(kw_only=True)
class Mail:
    """A mail to be handed over; ``name`` is that of the attached file, ``paper`` its bytes."""

    subject: str
    text: str
    name: str
    paper: bytes
    recipients: tuple[Address, ...] = ()


def paper_marks(pdf: bytes) -> PaperMarks:
    """Return what a PDF that the program wrote says of itself; English where it names no language of the program."""
    from pypdf import PdfReader

    reader = PdfReader(BytesIO(pdf))
    title = reader.metadata.title if reader.metadata is not None else None
    language = language_of(str(reader.root_object.get("/Lang", "")))
    return PaperMarks(title or "", language or Language.ENGLISH)


def mail_bytes(mail: Mail) -> bytes:
    """Return the mail as a file that mail programs open as a draft (``X-Unsent``).

    Texts of persons cannot add a header: each is brought into one line without control characters first.
    """
    message = EmailMessage(policy=policy.SMTP)
    message["X-Unsent"] = "1"
    message["X-Mailer"] = MAIL_PROGRAM
    if mail.recipients:
        message["To"] = mail.recipients
    message["Subject"] = _line(mail.subject)[:_LONGEST_LINE]
    message.set_content(_text(mail.text), charset="utf-8", cte="quoted-printable")
    name = attachment_name(mail.name)
    message.add_attachment(mail.paper, maintype="application", subtype="pdf", filename=name)
    message.set_boundary(_NO_BOUNDARY.decode())
    message.set_boundary(_digest(message.as_bytes()).decode())
    return message.as_bytes()


def attachment_name(name: str) -> str:
    """Return the name of a PDF file without folders, signs that show nothing, and any other ending behind it."""
    told = "".join("_" if sign in '/\\:*?"<>|' else sign for sign in _line(name))
    stem = told[: -len(_ENDING)] if told.lower().endswith(_ENDING) else told
    return f"{stem[:_LONGEST_NAME].strip(' .') or 'paper'}{_ENDING}"


def recipients_of(party: Party | None) -> tuple[Address, ...]:
    """Return the mail addresses that are written of somebody; what is no address is left out."""
    if party is None:
        return ()
    found = (_address(text, party.contact or party.name) for text in re.split(r"[;,]", party.email))
    return tuple(one for one in found if one is not None)


def is_mail_of_program(content: bytes) -> bool:
    """Say whether a file is a mail as the program writes it: nobody has added to it or changed it since."""
    if not content.startswith(_START):
        return False
    boundaries = {found[1] for found in _BOUNDARY.finditer(content)}
    return any(_digest(content.replace(one, _NO_BOUNDARY)) == one for one in boundaries)


def _digest(content: bytes) -> bytes:
    """Return the boundary for a mail that is written with ``_NO_BOUNDARY``: it can occur nowhere in it by chance."""
    return b"=_" + hashlib.sha256(content).hexdigest()[:_DIGITS].encode()


def _line(text: str) -> str:
    """Return a text in one line, as a header takes it: no line breaks, no control characters, no halves of signs."""
    seen = (sign for sign in " ".join(text.split()) if sign in _JOINERS or unicodedata.category(sign)[0] != "C")
    return " ".join("".join(seen).split())


def _text(text: str) -> str:
    lines = (_line(line) for line in text.splitlines())
    return "\n".join(lines).rstrip() + "\n"


def _address(text: str, name: str) -> Address | None:
    found = _WRITTEN.fullmatch(text.strip())
    if found is None or _LOCAL.fullmatch(found[1]) is None:
        return None
    try:
        host = found[2].encode("idna").decode("ascii")
    except UnicodeError:
        return None
    if _HOST.fullmatch(host) is None:
        return None
    return Address(display_name=_line(name)[:_LONGEST_NAME], username=found[1], domain=host)
