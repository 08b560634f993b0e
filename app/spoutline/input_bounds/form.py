"""A filled form looked at before it is read."""

from __future__ import annotations

from spoutline.input_bounds.bounds import BOUNDS
from spoutline.input_bounds.refusal import refusal
from spoutline.model.worded import Worded


def check_form(pdf: bytes, place: str) -> None:
    """Refuse a PDF with far more objects than a form has; raise ``InputFault``."""
    for sign, most, what in (
        (b" obj", BOUNDS.form_objects, Worded("objects")),
        (b"<<", BOUNDS.form_dictionaries, Worded("dictionaries")),
    ):
        count = pdf.count(sign)
        if count > most:
            raise refusal(
                place,
                "form",
                f"{count} {what}",
                Worded("a form of at most {most} {what} is read", most=most, what=what),
            )
