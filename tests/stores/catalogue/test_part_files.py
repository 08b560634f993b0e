"""Pictures and documents of parts: written anew or checked, kept once, handed on; hostile files are refused by name.

Orientation and place are read as Exif 2.32 states them (tags 0x0112 and 0x8825), by the library and not by the program.
"""

from __future__ import annotations

import json
import struct
import zipfile
import zlib
from collections.abc import Callable, Iterator
from datetime import date
from io import BytesIO
from pathlib import Path

import pypdf
import pytest
from PIL import Image
from pypdf.generic import DictionaryObject, NameObject, TextStringObject
from sqlalchemy import func, select

from spoutline.bootstrap import Settings, Workbench, open_workbench
from spoutline.catalogue.part_files import MOST_PIXELS, kept_file
from spoutline.catalogue.tables import FileRow
from spoutline.database.engine import open_engine
from spoutline.input_bounds.bounds import BOUNDS, InputBounds
from spoutline.model.catalogue_edition import EditionRef
from spoutline.model.catalogue_entry import CatalogueEntry
from spoutline.model.faults import InputFault
from spoutline.model.part_file import MOST_FILES, FileMatter, MediaType
from spoutline.model.part_ref import PartRef

NAME = "Office list"
ONE, OTHER = PartRef("A-1", "Zinnia Makeup"), PartRef("B-2", "Zinnia Makeup")
DRAFT = EditionRef(NAME, is_draft=True)


def picture(form: str = "PNG", size: tuple[int, int] = (40, 30), mode: str = "RGB", **said: object) -> bytes:
    target = BytesIO()
    image = Image.new(mode, size, 0 if mode in ("L", "I;16") else None)  # type: ignore[arg-type]
    image.save(target, form, **said)  # type: ignore[arg-type]
    return target.getvalue()


def document(change: Callable[[pypdf.PdfWriter], None] = lambda _: None) -> bytes:
    writer, target = pypdf.PdfWriter(), BytesIO()
    writer.add_blank_page(200, 200)
    change(writer)
    writer.write(target)
    return target.getvalue()


def test_a_photo_is_turned_upright_and_loses_what_stands_beside_its_pixels() -> None:
    exif = Image.Exif()
    exif[0x0112] = 6  # to be turned a quarter clockwise
    exif[0x8825] = {1: "N", 2: (51.0, 0.0, 0.0)}
    given = picture("JPEG", (400, 200), exif=exif)
    assert b"Exif" in given
    file, kept = kept_file(given, "p", "Coupling", None)
    assert (file.matter, file.media, file.size) == (FileMatter.PICTURE, MediaType.JPEG, len(kept))
    with Image.open(BytesIO(kept)) as shown:
        assert shown.size == (200, 400)
        assert not shown.getexif()
    assert b"Exif" not in kept


def test_what_hides_behind_or_inside_a_picture_is_not_kept() -> None:
    secret = b"place where it was taken"
    chunk = struct.pack(">I", len(secret)) + b"tEXt" + secret + struct.pack(">I", zlib.crc32(b"tEXt" + secret))
    whole = picture("PNG")
    end = whole.index(b"IEND") - 4
    _, kept = kept_file(whole[:end] + chunk + whole[end:] + b"<script>", "p", "x", None)
    assert secret not in kept
    assert b"<script>" not in kept


@pytest.mark.parametrize(
    ("form", "mode"), [("PNG", "RGBA"), ("PNG", "P"), ("PNG", "I;16"), ("PNG", "LA"), ("JPEG", "CMYK"), ("JPEG", "L")]
)
def test_every_usual_form_is_kept_so_that_paper_can_show_it(form: str, mode: str) -> None:
    file, kept = kept_file(picture(form, mode=mode), "p", "x", None)
    with Image.open(BytesIO(kept)) as shown:
        assert (shown.mode, shown.format) == ("RGB", form)
    assert file.is_picture


def test_a_large_picture_is_made_smaller_in_its_proportions() -> None:
    _, kept = kept_file(picture("JPEG", (4000, 1000)), "p", "x", None)
    with Image.open(BytesIO(kept)) as shown:
        assert shown.size == (MOST_PIXELS, MOST_PIXELS // 4)


def _locked(writer: pypdf.PdfWriter) -> None:
    writer.encrypt("secret", algorithm="RC4-128")


def _scripted(writer: pypdf.PdfWriter) -> None:
    action = {NameObject("/S"): NameObject("/JavaScript"), NameObject("/JS"): TextStringObject("app.alert(1)")}
    writer.root_object[NameObject("/OpenAction")] = DictionaryObject(action)


HOSTILE: dict[str, tuple[bytes, str]] = {
    "nothing": (b"", "a PNG or JPEG picture is needed"),
    "words": (b"hello", "a PNG or JPEG picture is needed"),
    "scalable": (b'<svg xmlns="http://www.w3.org/2000/svg"/>', "a PNG or JPEG picture is needed"),
    "another form": (picture("GIF"), "a PNG or JPEG picture is needed"),
    "cut off": (picture("PNG", (400, 300))[:200], "a PNG or JPEG picture is needed"),
    "bomb": (
        picture("PNG")[:16] + struct.pack(">II", 60_000, 60_000) + picture("PNG")[24:],
        "pixels|picture is needed",
    ),
    "no document": (b"%PDF-1.7 nothing", "a PDF document that opens is needed"),
    "cut document": (document()[:80], "a PDF document that opens is needed"),
    "locked": (document(_locked), "without a password"),
    "script": (document(_scripted), "without scripts"),
    "file inside": (document(lambda writer: writer.add_attachment("x.exe", b"MZ")), "without scripts"),
}


@pytest.mark.parametrize("name", HOSTILE)
def test_what_is_no_picture_or_document_is_refused(name: str) -> None:
    content, told = HOSTILE[name]
    with pytest.raises(InputFault, match=told):
        kept_file(content, "p", "x", None)


def test_a_title_and_what_it_is_are_checked() -> None:
    with pytest.raises(InputFault, match="any other file of a part PDF"):
        kept_file(picture(), "p", "x", FileMatter.INSTRUCTIONS)
    with pytest.raises(InputFault, match="any other file of a part PDF"):
        kept_file(document(), "p", "x", FileMatter.PICTURE)
    for title in ("", "x" * 200, "a\u202eb"):
        with pytest.raises(InputFault, match="title"):
            kept_file(picture(), "p", title, None)


@pytest.fixture
def bench(own_database: Path, tmp_path: Path) -> Iterator[Workbench]:
    bench = open_workbench(Settings(database=str(own_database), profiles=tmp_path / "profiles"))
    service = bench.catalogues()
    service.create(NAME)
    with service.shelf().draft(NAME) as desk:
        desk.put(CatalogueEntry(number=ref.number, maker=ref.maker, name="Coupling") for ref in (ONE, OTHER))
    yield bench
    bench.close()


def contents_kept(database: Path) -> int:
    with open_engine(f"sqlite:///{database}").connect() as connection:
        count: int = connection.execute(select(func.count()).select_from(FileRow)).scalar_one()
    return count


def test_a_content_is_kept_once_for_parts_and_editions(bench: Workbench, own_database: Path, tmp_path: Path) -> None:
    service = bench.catalogues()
    (tmp_path / "a.png").write_bytes(picture())
    for ref in (ONE, OTHER):
        service.files().attach(NAME, ref, tmp_path / "a.png", title="Front")
    for day in range(1, 6):
        with service.shelf().draft(NAME) as desk:
            desk.put([CatalogueEntry(number=f"C-{day}", maker="Zinnia Makeup", name="Another")])
        service.shelf().publish(NAME, notes=str(day), publisher="Ada", on=date(2026, 1, day))
    assert contents_kept(own_database) == 1
    change = service.files().detach(NAME, ONE, "front")
    assert change.after is not None
    assert change.after.files == ()
    published = service.shelf().entry(EditionRef(NAME, 5), ONE)
    assert published is not None
    assert service.files().content(published.files[0]) == kept_file(picture(), "p", "x", None)[1]
    with pytest.raises(InputFault, match="the part has no file"):
        service.files().detach(NAME, ONE, "front")


def test_one_of_the_same_title_is_replaced_and_there_is_an_end(bench: Workbench, tmp_path: Path) -> None:
    service = bench.catalogues()
    (tmp_path / "a.png").write_bytes(picture())
    (tmp_path / "b.pdf").write_bytes(document())
    for number in range(MOST_FILES):
        service.files().attach(NAME, ONE, tmp_path / "a.png", title=f"Side {number}")
    with pytest.raises(InputFault, match=f"at most {MOST_FILES} of a part"):
        service.files().attach(NAME, ONE, tmp_path / "a.png", title="One more")
    change = service.files().attach(NAME, ONE, tmp_path / "b.pdf", title="side 3", matter=FileMatter.CERTIFICATE)
    assert change.after is not None
    assert [one.matter for one in change.after.files].count(FileMatter.CERTIFICATE) == 1
    assert len(change.after.files) == MOST_FILES


def test_the_exchange_file_hands_them_on_with_the_same_bytes(bench: Workbench, tmp_path: Path) -> None:
    service = bench.catalogues()
    (tmp_path / "a.jpg").write_bytes(picture("JPEG"))
    (tmp_path / "b.pdf").write_bytes(document())
    service.files().attach(NAME, ONE, tmp_path / "a.jpg", title="=Front")
    service.files().attach(NAME, OTHER, tmp_path / "b.pdf", title="How to hang it", matter=FileMatter.INSTRUCTIONS)
    handed = service.export(DRAFT)
    (tmp_path / "h.zip").write_bytes(handed)
    other = open_workbench(Settings(database=str(tmp_path / "new.sqlite3"), profiles=tmp_path / "p"))
    other.catalogues().create("Twin")
    other.catalogues().import_exchange(tmp_path / "h.zip", "Twin")
    twin = EditionRef("Twin", is_draft=True)
    assert other.catalogues().export(twin) == handed
    entry = other.catalogues().shelf().entry(twin, OTHER)
    assert entry is not None
    assert other.catalogues().files().content(entry.files[0]) == document()
    other.close()


@pytest.mark.parametrize("damage", ["content", "missing", "title", "digest"])
def test_a_damaged_exchange_file_is_refused_and_changes_nothing(bench: Workbench, tmp_path: Path, damage: str) -> None:
    service = bench.catalogues()
    (tmp_path / "a.png").write_bytes(picture())
    service.files().attach(NAME, ONE, tmp_path / "a.png", title="Front")
    service.create("Twin")
    source = zipfile.ZipFile(BytesIO(service.export(DRAFT)))
    with zipfile.ZipFile(tmp_path / "d.zip", "w") as target:
        for name in source.namelist():
            content = source.read(name)
            if name.startswith("files/"):
                if damage == "missing":
                    continue
                content = picture(size=(41, 30)) if damage == "content" else content
            if name == "files.csv" and damage in ("title", "digest"):
                content = content.replace(b"Front", b"x" * 300) if damage == "title" else content[:-60] + b"zz,9\n"
            target.writestr(name, content)
    with pytest.raises(InputFault):
        service.import_exchange(tmp_path / "d.zip", "Twin")
    assert list(service.shelf().entries(EditionRef("Twin", is_draft=True))) == []


def test_the_bounds_of_a_file_hold(bench: Workbench, tmp_path: Path) -> None:
    kept = {name: getattr(BOUNDS, name) for name in InputBounds.__dataclass_fields__}
    try:
        object.__setattr__(BOUNDS, "part_file_bytes", 100)
        object.__setattr__(BOUNDS, "part_document_pages", 1)
        (tmp_path / "a.png").write_bytes(picture(size=(400, 300), mode="L"))
        with pytest.raises(InputFault, match="at most 100 bytes are read"):
            bench.catalogues().files().attach(NAME, ONE, tmp_path / "a.png")
        with pytest.raises(InputFault, match="a document of 1 to 1 pages is kept"):
            kept_file(document(lambda writer: writer.add_blank_page(9, 9) and None), "p", "x", None)
    finally:
        for name, value in kept.items():
            object.__setattr__(BOUNDS, name, value)


def test_the_command_line_keeps_shows_and_writes_files(
    spoutline: Callable[..., object], bench: Workbench, own_database: Path, tmp_path: Path
) -> None:
    def run(*words: object, code: int = 0) -> str:
        done = spoutline("--database", str(own_database), "catalogue", "entry", *words)
        assert done.code == code, (done.out, done.err)  # type: ignore[attr-defined]
        return str(done.out or done.err)  # type: ignore[attr-defined]

    (tmp_path / "how.pdf").write_bytes(document())
    assert ": 1 file\n" in run("attach", NAME, "A-1", tmp_path / "how.pdf", "--matter", "instructions")
    assert "instructions: how (application/pdf" in run("show", NAME, "A-1")
    (shown,) = json.loads(run("show", NAME, "A-1", "--json"))["files"]
    assert (shown["title"], shown["matter"]) == ("how", "instructions")
    run("file", NAME, "A-1", "how", "--out", tmp_path / "out.pdf")
    assert (tmp_path / "out.pdf").read_bytes() == document()
    assert "one of: how" in run("file", NAME, "A-1", "why", "--out", tmp_path / "out2.pdf", code=2)
    assert ": no files" in run("detach", NAME, "A-1", "HOW")
    assert "a PNG or JPEG picture is needed" in run("attach", NAME, "A-1", Path(__file__), code=2)
