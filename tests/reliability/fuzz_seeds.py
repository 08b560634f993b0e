"""Sound files of every kind that the program takes from outside, made once: what the fuzzer damages."""

from __future__ import annotations

import base64
import csv
import io
import json
import re
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING

from reliability.fuzz_mutations import form_of, rezipped
from spoutline import assets
from spoutline.book.survey_text import survey_to_json
from spoutline.bootstrap.demos import demo_survey
from spoutline.catalogue.exchange import exchange_bytes
from spoutline.documents.own_files import FileForm
from spoutline.model.catalogue_entry import CatalogueEntry, EntryPrice, FigureCell, Origin
from spoutline.model.language import Language
from spoutline.model.part import PartKind
from spoutline.model.record import CommissioningRecord, InspectionEntry, PhotoNote, WearEntry
from spoutline.model.survey import Survey
from spoutline.units.accepted import UnitSystem
from spoutline.units.display import Display

if TYPE_CHECKING:
    from spoutline.bootstrap import Workbench
    from spoutline.model.plan import SitePlan

SI = Display(UnitSystem.SI)
DAY = date(2026, 11, 25)
TABLE = (
    "Label;Liquid;Blend;Duty;Outlet thread;Outlet size;Outlet height;Hook height;Filler distance;Notes\n"
    "1A;gasoline;10;car;NPT;3/4;2.1 m;1.1;2.0;near the kiosk\n"
    "1B;gasoline;10;car;NPT;3/4;7 ft;1.1;;\n"
    "2A;diesel;5;truck;NPT;1;2.2;1.2;3.1;\n"
)
JOB = """\
first_day = 2026-12-01
last_day = 2026-12-03
authority = "County fire marshal"
adopted_codes = "NFPA 30A"
permit_number = "P-7"
notes = "Gate is left of the kiosk."
[[contacts]]
role = "owner"
name = "Odile Fenn"
telephone = "555 0100"
"""
REFERENCES = (
    b"old number,old maker,part number,part maker,relation\nB 100,Brackwater,Q 1/2,Quillwort Works,same\n"
    b"C-1,Aldertarn,B 100,Brackwater,equivalent\n",
    b"Competitor;Their number;Our number;Our maker;Note\nBrackwater;B 7;Q-2;Quillwort Works;=1+1\nTotal;;;;\n",
)
TYPES = (
    b"name,maker,outlet.thread,outlet.size,outlet.height_m,retrieval,overhead\n"
    b"Rushwater 7,Rushwater,NPT,3/4,2.1,reel,\n",
    b"Dispenser model;Outlet height (ft);Retrieval;Overhead;Supply pressure (psi)\nRushwater 8;7 ft 6 in;reel;yes;50\n",
)
PRICE_TABLES = (
    b"Part no,Description,List price\nQ-1,hose,$12.50\nQ-2,=1+1,n/a\nTotal,,12.50\n",
    b"Part no;Text;Price USD;Maker\nQ 1/2;swivel;10;Quillwort Works\n",
)
POSITIONS = (
    b"Hose;Pump;Fuel;Percent;Outlet height (ft);Pump model;Note\nIsland 1\n1A;1;E10;;7 ft;Rushwater 7;=1+1\n"
    b"1B;1;diesel;5;2.1 m;;x\nTotal;;;;;;\n",
)
MAP = (
    b'format = "spoutline-table-map"\nsubject = "positions"\nunits = "US"\ndecimal_comma = true\n'
    b'[[column]]\ntitle = "Hose"\nfield = "label"\n[[repair]]\ndo = "skip_row"\nrow = 3\nnumber = "1A"\n',
)
STOCK = "part_number,quantity\nLS-S101,4\nLS-B101,2\nQW-N101,0\n"
LISTS = """\
[[price_list]]
id = "own"
maker = "Larkspindle Couplings"
currency = "USD"
valid_from = 2026-01-01
valid_to = 2027-06-30
"""
PRICES = (
    "number,group,from_quantity,unit_price\nLS-S101,couplings,1,17.65\nLS-S101,couplings,10,15.90\nLS-B101,,1,40.90\n"
)
SUPPLIER_TABLES = (
    b"Part no,Description,Bore (in),Length,Materials,Inlet,List price\n"
    b'Q-1,"3/4"" x 9\' hardwall",3/4,9 ft,"nbr, aluminum",NPT 3/4 male single,$12.50\nTotal,,,,,,12.50\n',
    b"Part no;Kind;Weight;End of sale;Price\n;;kg;;EUR\nSwivels;;;;\nQ-1;swivel;0.5;2027-01-31;10\n",
)


@dataclass(frozen=True)
class Seeds:
    """Sound content of each kind, and the survey that the papers among it are of."""

    survey: Survey
    terms: bytes
    profile: bytes
    agreed: bytes
    form: bytes
    record: bytes
    quotation: bytes
    part_number: str
    own_files: tuple[tuple[FileForm, bytes], ...]


def one_position() -> Survey:
    """Return a survey of one position, quick to plan."""
    whole = demo_survey("small_town")
    return whole.model_copy(update={"positions": whole.positions[:1]})


def survey_documents() -> tuple[bytes, ...]:
    """Return surveys as files: answers only, every field spelled out, and one with parts that hang today."""
    conversion = demo_survey("conversion_balance")
    short = conversion.model_copy(update={"positions": conversion.positions[:1]})
    texts = (survey_to_json(one_position()), one_position().model_dump_json(indent=2), survey_to_json(short))
    return tuple(text.encode() for text in texts)


def make_seeds(bench: Workbench) -> Seeds:
    """Return the seeds that only the program itself can make."""
    from spoutline.model.agreed_sets import AgreementKind, AgreementOrigin
    from spoutline.planning.agreement.making import agreed_sets
    from spoutline.ruletables.profiles import profile_to_toml
    from stores.terms_in_hand import terms_from_toml

    survey = one_position()
    site_plan = bench.plan_site(survey)
    terms = bench.quoting().terms().demo_terms().read_text(encoding="utf-8")
    origin = AgreementOrigin(kind=AgreementKind.PERSON, by="Odile Fenn", reason="as planned")
    agreed = agreed_sets(site_plan, origin, bench.book().agreements.now(), None)
    quotation = bench.quoting().quote(survey, terms_from_toml(terms, "terms"), SI).quotation
    form = plain_form(bench.packing().form(site_plan, Language.ENGLISH, SI, DAY))
    from spoutline.documents.pack.form_reading import records_from_form

    (record,) = records_from_form(form, "form")
    chosen = site_plan.positions[0].chosen
    assert chosen is not None
    jurisdictions = bench.jurisdictions()
    own = jurisdictions.copy("us_general", "own_rules", "Own rules")
    return Seeds(
        survey=survey,
        terms=terms.encode(),
        profile=profile_to_toml(own).encode(),
        agreed=agreed.model_dump_json().encode(),
        form=form,
        record=record.model_dump_json().encode(),
        quotation=quotation.model_dump_json().encode(),
        part_number=chosen.hanging_set.links[-1].part.number,
        own_files=tuple(_own_files(bench, site_plan)),
    )


def _own_files(bench: Workbench, site_plan: SitePlan) -> Iterator[tuple[FileForm, bytes]]:
    """Yield a paper of each form that the program knows again as its own."""
    bills, packing = bench.bills(), bench.packing()
    yield FileForm.PDF, bills.pdf(site_plan, SI)
    yield FileForm.MAIL, bench.mailing().draft(bills.short_pdf(site_plan, SI), "bill")
    yield FileForm.CSV, bills.csv(site_plan, SI)
    yield FileForm.XLSX, bills.xlsx(site_plan, SI)
    yield FileForm.ICS, packing.inspection_calendar(site_plan, packing.due(site_plan, DAY), Language.ENGLISH, SI)
    yield FileForm.JSON, b'{"format": "spoutline-plan", "version": 1}'
    yield FileForm.HTML, b'<!doctype html><meta name="generator" content="Spoutline 1.0">'


def plain_form(printed: bytes) -> bytes:
    """Return a printed form filled in, as the smallest PDF that holds the same fields."""
    from pypdf import PdfReader

    filled = {
        "p1_bond_reading": "1500 ohm",
        "p1_flow_reading": "36 L/min",
        "p1_leak_result": "passed",
        "p1_done_on": "2026-11-20",
        "p1_done_by": "Merle Ash",
        "p1_signed_by": "M. Ash",
        "p1_remarks": "gate left open",
    }
    fields = []
    for name, field in (PdfReader(io.BytesIO(printed)).get_fields() or {}).items():
        value = filled.get(name, str(field.get("/V") or ""))
        text = re.sub(r"([()\\])", r"\\\1", value).encode("latin-1", "replace")
        fields.append((name.encode(), b"(%s)" % text))
    return form_of(fields)


def saved_page(*, pictures: int = 1) -> str:
    """Return what the page for a tablet saves of one position with photos."""
    fields = {
        "p1_tag": "spoutline:site=Fern%20Hollow;position=1A;revision=0123456789abcdef",
        "p1_planned": "LS-B101 QW-N103",
        "p1_language": "en",
        "p1_units": "SI",
        "p1_flow_reading": "36 L/min",
        "p1_leak_result": "passed",
        "p1_done_on": "2026-11-20",
        "p1_done_by": "Merle Ash",
    }
    photos = [
        {
            "position": 1,
            "kind": "photo",
            "name": f"{number}.jpg",
            "caption": "the valve",
            "data": base64.b64encode(picture("JPEG", (40, 30), red=number)).decode(),
        }
        for number in range(pictures)
    ]
    page = {"format": "filled-spoutline-form", "version": 1, "fields": [fields], "pictures": photos}
    return json.dumps(page)


def records_of_installers(record: bytes) -> tuple[tuple[type, bytes], ...]:
    """Return a document of each kind of record in the book."""
    wear = {"site": "S", "position": "1", "done_on": "2026-11-20", "removed": "LS-B101", "reason": "wear"}
    inspected = {"site": "S", "position": "1", "item": "hoses", "done_on": "2026-11-20", "result": "passed"}
    from spoutline.model.inspection import InspectionItemId

    inspected["item"] = next(iter(InspectionItemId)).value
    return (
        (CommissioningRecord, record),
        (WearEntry, json.dumps(wear).encode()),
        (InspectionEntry, json.dumps(inspected).encode()),
    )


def catalogue_source(folder: Path) -> None:
    """Write a catalogue of a few parts: the titles of each table and its first sound rows."""
    folder.mkdir(parents=True, exist_ok=True)
    whole = assets.catalogue_folder()
    for path in sorted(whole.iterdir()):
        if path.suffix == ".toml":
            (folder / path.name).write_bytes(path.read_bytes())
        elif path.suffix == ".csv":
            lines = [line for line in path.read_text(encoding="utf-8").splitlines() if not line.startswith("#")]
            rows = [line for line in csv.reader(lines) if line[2] != "superseded"][:4]  # titles first
            out = io.StringIO()
            csv.writer(out, lineterminator="\n").writerows(rows)
            (folder / path.name).write_text(out.getvalue(), encoding="utf-8")


def picture(form: str, size: tuple[int, int] = (40, 30), *, red: int = 200) -> bytes:
    """Return a picture, ``PNG`` or ``JPEG``."""
    from PIL import Image

    out = io.BytesIO()
    Image.new("RGB", size, (red, 80, 20)).save(out, form)
    return out.getvalue()


def photo_note(content: bytes) -> PhotoNote:
    """Return the note of a photo."""
    import hashlib

    return PhotoNote(name="p.png", sha256=hashlib.sha256(content).hexdigest())


def workbook(rows: int = 3, dimension: str = "") -> bytes:
    """Return a workbook of a few rows; ``dimension`` overrides the size that the sheet states."""
    import openpyxl

    book = openpyxl.Workbook()
    sheet = book.active
    sheet.append(["Label", "Liquid", "Blend", "Duty", "Hook height"])
    for number in range(1, rows + 1):
        sheet.append([str(number), "gasoline", 10, "car", 1.2])
    out = io.BytesIO()
    book.save(out)
    if not dimension:
        return out.getvalue()
    return rezipped(
        out.getvalue(),
        lambda name, text: re.sub(rb'<dimension ref="[^"]*"', b'<dimension ref="%s"' % dimension.encode(), text),
    )


def supplier_workbook() -> bytes:
    """Return a price file with merged titles and a hidden sheet."""
    import openpyxl

    book = openpyxl.Workbook()
    sheet = book.active
    for row in (("Part no", "Hose", None, "Price"), (None, "Bore (mm)", "Length (m)", "USD"), ("Q-1", 19, 3, 10.5)):
        sheet.append(row)
    sheet.merge_cells("A1:A2")
    book.create_sheet("old").sheet_state = "hidden"
    out = io.BytesIO()
    book.save(out)
    return out.getvalue()


def workbook_of_a_spreadsheet(rows: int = 3) -> bytes:
    """Return such a workbook as spreadsheets write it: a list of texts, cell formats, a formula with its result."""
    import xlsxwriter

    out = io.BytesIO()
    book = xlsxwriter.Workbook(out)
    sheet, length = book.add_worksheet(), book.add_format({"num_format": "0.00"})
    sheet.write_row(0, 0, ["Label", "Liquid", "Blend", "Duty", "Hook height"])
    for number in range(1, rows + 1):
        sheet.write_row(number, 0, [str(number), "gasoline", 10, "car"])
        sheet.write_formula(number, 4, "=1.1+0.1", length, 1.2)
    book.close()
    return out.getvalue()


def exchange_file() -> bytes:
    """Return an exchange file of two entries: one with figures, a price and where they come from, one undescribed."""
    cells = (
        FigureCell(column="materials", value=("nbr", "aluminium"), origin=Origin.STATED, source="page 3"),
        FigureCell(column="mass_kg", value=1.2, origin=Origin.STATED, source=""),
    )
    maker, price = "Quillwort Works", EntryPrice(currency="USD", minor=1250)
    return exchange_bytes(
        [
            CatalogueEntry(number="Q 1/2", maker=maker, kind=PartKind.SWIVEL, figures=cells, prices=(price,)),
            CatalogueEntry(number="Q-2", maker=maker, item_number="77", name="hose, =1+1"),
        ]
    )
