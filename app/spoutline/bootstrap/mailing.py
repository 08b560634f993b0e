"""Papers handed to mail, wired to the words of the language that each paper is written in."""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from pathlib import Path

    from spoutline.bootstrap.phrase_tables import PhraseTables
    from spoutline.model.quotation_terms import Party


class MailService:
    """Mails with a paper attached; the same bytes for the same arguments."""

    def __init__(self, phrases: PhraseTables) -> None:
        self._phrases = phrases

    def draft(self, pdf: bytes, name: str, recipient: Party | None = None) -> bytes:
        """Return a mail that was not sent yet, with a paper of the program attached.

        Parameters
        ----------
        pdf
            The paper; subject and text are in its language.
        name
            Name of the attached file.
        recipient
            Whom it goes to; a mail address that cannot be used is left out.
        """
        from spoutline.documents.mail import Mail, attachment_name, mail_bytes, paper_marks, recipients_of

        marks = paper_marks(pdf)
        attached = attachment_name(name)
        text = self._phrases.plan(marks.language).fill("mail_text", paper=marks.title, file=attached)
        subject = marks.title or attached
        return mail_bytes(
            Mail(subject=subject, text=text, name=attached, paper=pdf, recipients=recipients_of(recipient))
        )

    def is_large(self, path: Path) -> bool:
        """Say whether many mail services would refuse the mail for its size; False for a file that is gone."""
        from spoutline.documents.mail import LARGE_BYTES

        return path.is_file() and path.stat().st_size > LARGE_BYTES
