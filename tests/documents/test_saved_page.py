"""What a tablet's page saved and somebody may have changed: read, or refused, the place and the field told."""

from __future__ import annotations

import base64
import json
import zlib
from collections.abc import Callable
from io import BytesIO
from pathlib import Path
from typing import Any

import pytest
from PIL import Image

from reliability.fuzz_seeds import picture, saved_page
from spoutline.documents.own_files import FileForm, is_own
from spoutline.documents.pack.tablet_reading import FilledForm, form_from_page
from spoutline.model.faults import InputFault


def changed(change: Callable[[dict[str, Any]], object], *, pictures: int = 1) -> FilledForm:
    document = json.loads(saved_page(pictures=pictures))
    change(document)
    return form_from_page(json.dumps(document), "filled.json", "Signature")


def encoded(content: bytes) -> str:
    return base64.b64encode(content).decode()


def fields(document: dict[str, Any]) -> dict[str, str]:
    (only,) = document["fields"]
    held: dict[str, str] = only
    return held


def photo(document: dict[str, Any]) -> dict[str, Any]:
    held: dict[str, Any] = document["pictures"][0]
    return held


def test_a_sound_one_is_read() -> None:
    form = changed(lambda document: None)
    (record,) = form.records
    assert (record.site, record.position, record.plan_revision) == ("Fern Hollow", "1A", "0123456789abcdef")
    assert [one.caption for one in record.photos] == ["the valve"]
    assert set(form.photos) == {one.sha256 for one in record.photos}


@pytest.mark.parametrize(
    ("change", "told"),
    [
        (lambda one: one.update(format="spoutline-survey"), "format"),
        (lambda one: one.update(version=2), "version 1 is read"),
        (lambda one: one.pop("fields"), "fields"),
        (lambda one: one.update(extra=1), "extra"),
        (lambda one: one.update(fields={}), "a list of fields"),
        (lambda one: one.update(fields=[]), "no field of a position"),
        (lambda one: fields(one).update({"constructor": "x"}), "no field of a form"),
        (lambda one: fields(one).update({"p1_<script>": "x"}), "no field of a form"),
        (lambda one: fields(one).update(p1_done_by=7), "p1_done_by"),
        (lambda one: fields(one).update(p1_remarks="x" * 20_000), "at most 4000 characters"),
        (lambda one: fields(one).update(p1_tag="spoutline:site=x"), "scan the code"),
        (lambda one: one["fields"].append({"p1_done_by": "two"}), "twice"),
        (lambda one: one.update(pictures={}), "a list is needed"),
        (lambda one: one["pictures"].append("x"), "picture 2"),
        (lambda one: photo(one).update(position=9), "position"),
        (lambda one: photo(one).update(position=True), "position"),
        (lambda one: photo(one).update(position="1_tag\n"), "position"),
        (lambda one: photo(one).update(kind="svg"), "photo, signature"),
        (lambda one: photo(one).update(kind=[]), "photo, signature"),
        (lambda one: photo(one).update(name=["x"]), "name"),
        (lambda one: photo(one).update(caption="x" * 201), "at most 200 characters"),
        (lambda one: photo(one).update(data="<svg onload=alert(1)>"), "base64"),
        (lambda one: photo(one).update(data=7), "a picture of at most"),
        (lambda one: photo(one).update(data=encoded(b"<svg xmlns='http://www.w3.org/2000/svg'/>")), "PNG or JPEG"),
        (lambda one: photo(one).update(data=encoded(picture("GIF"))), "PNG or JPEG"),
        (lambda one: photo(one).update(data=encoded(picture("JPEG", (900, 700))[:3000])), "PNG or JPEG"),
        (lambda one: photo(one).update(data=encoded(zlib.compress(bytes(10**6)))), "PNG or JPEG"),
        (lambda one: photo(one).update(data="A" * 2_000_000), "at most 700000 bytes"),
    ],
)
def test_a_changed_one_is_refused_with_what_would_be_right(
    change: Callable[[dict[str, Any]], object], told: str
) -> None:
    with pytest.raises(InputFault, match=told) as caught:
        changed(change)
    assert all(problem.place == "filled.json" and len(problem.value) <= 200 for problem in caught.value.problems)


def test_a_value_that_no_field_takes_is_asked_again_as_on_the_pdf_form() -> None:
    def write(document: dict[str, Any]) -> None:
        fields(document).update(p1_flow_reading="much", p1_leak_result="fine", p1_done_on="soon", p1_done_by="x" * 201)

    (record,) = changed(write).records
    assert {one.field for one in record.unread} == {"p1_flow_reading", "p1_leak_result", "p1_done_on", "p1_done_by"}
    assert record.entries == ()


def test_names_stay_names_and_hidden_signs_are_shown() -> None:
    def write(document: dict[str, Any]) -> None:
        photo(document).update(name="\u202egpj.<b>", caption="=1+1 </script>")

    (record,) = changed(write).records
    (note,) = record.photos
    assert note.name == "\ufffdgpj.<b>"  # Unicode 5.22: the sign that stands for what is not shown
    assert note.caption == "=1+1 </script>"


def test_nothing_of_a_picture_is_kept_but_its_pixels() -> None:
    def write(document: dict[str, Any]) -> None:
        photo(document)["data"] = encoded(picture("JPEG", (40, 30)) + b"<?php hidden ?>")

    form = changed(write)
    (content,) = form.photos.values()
    assert b"hidden" not in content
    again = Image.open(BytesIO(content))
    assert (again.format, again.size) == ("JPEG", (40, 30))
    pixel = again.getpixel((20, 15))
    assert isinstance(pixel, tuple)
    # as it was painted; ITU-T T.81 keeps a plain area but for rounding
    assert max(abs(got - want) for got, want in zip(pixel, (200, 80, 20), strict=True)) <= 4


def test_one_signature_and_no_more() -> None:
    with pytest.raises(InputFault, match="at most 1 of a position"):
        changed(lambda document: [one.update(kind="signature") for one in document["pictures"]], pictures=2)


def test_what_a_person_filled_in_is_never_taken_for_a_paper_that_may_be_replaced(tmp_path: Path) -> None:
    path = tmp_path / "filled.json"
    path.write_text(saved_page(), encoding="utf-8")
    assert not is_own(path, FileForm.JSON)
