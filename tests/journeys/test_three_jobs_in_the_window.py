"""The three jobs from an empty book to the last paper, by mouse and keyboard, and the papers held against each other.

What a paper says is read back and compared with what another paper says, with sums worked out here, and with what the
window shows.
"""

from __future__ import annotations

import csv
import io
import re
from collections import Counter
from collections.abc import Iterable, Iterator
from decimal import Decimal
from email import policy
from email.parser import BytesParser
from pathlib import Path

import openpyxl
import pytest
from pypdf import PdfReader, PdfWriter
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from journeys.person import Person
from paper_text import pages_of, text_of
from spoutline.book.survey_text import survey_to_json
from spoutline.bootstrap import Settings, Workbench, open_workbench
from spoutline.bootstrap.demos import demo_survey
from spoutline.bootstrap.fault_log import FaultLog
from spoutline.gui.widgets.theme import dress
from spoutline.gui.window.faults import UnexpectedFault
from spoutline.gui.window.main_window import MainWindow
from spoutline.gui.window.start import Opening
from spoutline.model.survey import Survey

# what Qt says of popups, and of programs of a desktop, where there is no screen
pytestmark = pytest.mark.qt_log_ignore("This plugin does not support")
PART_NUMBER = re.compile(r"\b[A-Z]{2}-[A-Z]{1,2}\d{3}\b")  # how the invented catalog numbers its parts
AMOUNT = r"([\d,]+\.\d\d)"


def survey_file(folder: Path, demo: str, count: int | None = None) -> Path:
    """Write a ready survey, or its first positions, as the file that somebody was sent."""
    survey: Survey = demo_survey(demo)
    if count is not None:
        survey = survey.model_copy(update={"positions": survey.positions[:count]})
    path = folder / f"{demo}.spoutline.json"
    path.write_text(survey_to_json(survey), encoding="utf-8")
    return path


@pytest.fixture
def empty_book(database_to_copy: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[Workbench]:
    """Yield use cases over a book in which nobody has surveyed anything."""
    monkeypatch.setenv("XDG_DATA_HOME", str(tmp_path / "data"))
    database = tmp_path / "own.sqlite3"
    database.write_bytes(database_to_copy.read_bytes())
    bench = open_workbench(Settings(database=str(database), profiles=tmp_path / "profiles"))
    for entry in bench.book().entries():
        bench.book().remove(entry.id)
    yield bench
    bench.close()


@pytest.fixture
def person(
    qtbot: QtBot, qapp: QApplication, empty_book: Workbench, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> Iterator[Person]:
    """Yield a person before the window that asks how to begin."""
    dress(qapp, dark=False)
    window = MainWindow()
    qtbot.addWidget(window)
    window.resize(1280, 720)
    window.show()
    opening = Opening(window, lambda: empty_book, None, UnexpectedFault(window, FaultLog(tmp_path / "log")))
    opening.start()
    person = Person(qtbot, window, monkeypatch)
    person.waits_for("How do you want to begin?")
    yield person
    window.jobs.close()


def amount(text: str) -> Decimal:
    return Decimal(text.replace(",", ""))


def begin_with(person: Person, path: Path, standing: str) -> None:
    """Read a survey file on the page that asks how to begin, and wait for its sets."""
    person.file(path)
    person.click("Read from file…")
    person.waits_for_standing("All positions", standing)


def save(person: Person, button: str, path: Path) -> bytes:
    """Save a paper by the button that says ``button``; return what was written."""
    person.file(path)
    person.click(button)
    return person.waits_for_file(path)


def save_by_menu(person: Person, button: str, path: Path) -> bytes:
    """Save a paper by the menu of the button that says ``button``; return what was written."""
    person.file(path)
    person.click_in_menu(button, "Save PDF…")
    return person.waits_for_file(path)


def amounts(cells: Iterable[str]) -> list[Decimal]:
    """Return the amounts of money among cells."""
    return [amount(cell) for cell in cells if re.fullmatch(AMOUNT, cell)]


def order_lines(data: bytes, option: str) -> list[dict[str, str]]:
    """Return the lines of one option of a file for an order system."""
    rows = csv.DictReader(io.StringIO(data.decode("utf-8-sig")))
    return [row for row in rows if row["option"] == option]


def bill_rows(data: bytes) -> list[dict[str, str]]:
    return [row for row in csv.DictReader(io.StringIO(data.decode("utf-8-sig"))) if row["Part number"]]


def hung(numbers: Iterable[str]) -> set[str]:
    """Return the numbers of what hangs, without sealants, labels and clamps (GR)."""
    return {number for number in numbers if not number.startswith("GR-")}


def is_number(cell: object) -> bool:
    return isinstance(cell, int | float) and not isinstance(cell, bool)


def test_a_distributor_quotes_a_refit_and_the_order_is_what_the_papers_say(
    person: Person, tmp_path: Path, empty_book: Workbench
) -> None:
    begin_with(person, survey_file(tmp_path, "small_town"), "6 of 6 fit")
    terms = tmp_path / "terms.toml"
    terms.write_bytes(empty_book.quoting().terms().demo_terms().read_bytes())
    person.press("Ctrl+T")
    person.file(terms)
    person.choose_from_menu("Take terms", "From a file…")
    person.click("Quote this survey")
    person.type_into("Your name", "Ada Fenn")
    person.click("Save in the book")
    person.click("Issue")
    person.waits_for_standing("Quotation", "2026-0417 issued")
    shown = {row[0].removeprefix("◆ "): row[1:] for row in person.table("Options side by side")}
    totals, goods = amounts(shown["Total"]), amounts(shown["Materials"])
    assert len(totals) == 3
    charges = ("Materials", "Labor", "Freight", "Sales tax")
    assert totals == [sum(column) for column in zip(*(amounts(shown[one]) for one in charges), strict=True)]

    paper = text_of(save(person, "Save PDF…", tmp_path / "sent.pdf"))
    internal = {"Cost", "Margin", "Margin, %"}  # are the firm's own and never on what a customer is sent
    for title, cells in shown.items():
        for figure in amounts(cells):
            assert (f"{figure:,}" in paper) is (title not in internal), (title, figure)
    workbook = openpyxl.load_workbook(io.BytesIO(save(person, "XLSX…", tmp_path / "sent.xlsx")), data_only=True)
    cells = [cell for sheet in workbook for row in sheet.values for cell in row]
    assert set(totals) <= {round(Decimal(str(cell)), 2) for cell in cells if is_number(cell)}
    order = save(person, "CSV…", tmp_path / "order.csv")
    for title, ordered in zip(("Single-use breakaways", "Reconnectable breakaways"), goods, strict=False):
        lines = order_lines(order, title)
        assert sum(Decimal(line["amount"]) for line in lines) == ordered
        assert all(Decimal(line["quantity"]) * Decimal(line["unit_price"]) == Decimal(line["amount"]) for line in lines)
    mailed = save(person, "Hand to mail…", tmp_path / "sent.eml")
    (attached,) = BytesParser(policy=policy.default).parsebytes(mailed).iter_attachments()
    assert text_of(attached.get_content()) == paper

    person.choose_from_menu("Accepted", "Single-use breakaways")
    person.waits_for_standing("Quotation", "2026-0417 accepted")
    person.go_to_tab("Book")
    (entry,) = person.table("Quotations in the book")
    assert f"{totals[0]:,}" in " ".join(entry)
    person.click("Parts list")
    person.waits_for("Sets: as ordered in quotation 2026-0417")
    billed: Counter[str] = Counter()
    for row in bill_rows(save(person, "Save CSV…", tmp_path / "bill.csv")):
        billed[row["Part number"]] += int(row["Qty"])
    ordered_pieces = {
        line["part_number"]: int(line["quantity"]) for line in order_lines(order, "Single-use breakaways")
    }
    # what is ordered beyond what hangs are spares and the rest of packs, never less and of no other part
    assert set(billed) == set(ordered_pieces)
    assert all(ordered_pieces[number] >= billed[number] for number in hung(billed))


def test_an_owner_plans_a_conversion_and_every_paper_has_its_figures(person: Person, tmp_path: Path) -> None:
    begin_with(person, survey_file(tmp_path, "conversion_balance"), "5 of 5 fit")
    person.press("Ctrl+E")
    person.go_to_tab("Site answers")
    person.type_into("First day of the plan", "2027-03-01")
    person.go_to_tab("Result")
    person.waits_for("Good practice beside it")
    ways = {row[0]: amount(row[1].removesuffix(" USD")) for row in person.table("Ways to convert")}
    least, followed = ways["Least cost"], ways["Good practice"]
    assert person.sees(f"at least {followed:,} USD")
    assert person.sees(f"{followed - least:,} USD more")

    report_pages = pages_of(save(person, "Save PDF…", tmp_path / "report.pdf"))
    report = text_of(tmp_path / "report.pdf")
    assert all(f"{cost:,} USD" in report for cost in ways.values())
    (money_page,) = [page for page in report_pages if "Cost of the conversion\n" in page and "Grant" in page]
    parts_and_extras = re.search(
        rf"Parts of the sets yes {AMOUNT} USD What goes with the sets yes {AMOUNT}", flat(money_page)
    )
    assert parts_and_extras is not None
    assert sum(map(amount, parts_and_extras.groups())) == followed
    person.click("Station on one page")
    one_page = text_of(save(person, "Save PDF…", tmp_path / "one.pdf"))
    assert f"{followed:,}" in one_page
    calendar = save(person, "Save calendar…", tmp_path / "plan.ics").decode()
    assert "DTSTART;VALUE=DATE:20270301" in calendar or "DTSTART:20270301T" in calendar
    assert calendar.count("BEGIN:VEVENT") == calendar.count("END:VEVENT") > 20

    person.click_and_answer("Agree on the way shown…", lambda: agree(person, "Bo Fenn"))
    person.waits_for("Sets: agreed")
    person.click("Parts list")
    person.waits_for("Sets: agreed")
    rows = bill_rows(save(person, "Save CSV…", tmp_path / "bill.csv"))
    for label in ("1A", "1B", "2A E15", "2B E10", "3 DEF"):
        sheet = report.split(f"Position {label}: removal and fitting")[-1].split("The ways at this position")[0]
        installed = sheet.split("What is installed, dispenser first")[1]
        of_bill = hung(row["Part number"] for row in rows if row["Position"] == label)
        assert of_bill == hung(PART_NUMBER.findall(installed)), label


def agree(person: Person, name: str) -> None:
    """Say in the dialog who agrees."""
    person.type_into("Your name", name)
    person.click("Agree")


def flat(text: str) -> str:
    return " ".join(text.split())


def test_an_installer_prints_the_pack_and_hands_over_what_was_measured(person: Person, tmp_path: Path) -> None:
    begin_with(person, survey_file(tmp_path, "small_town", 2), "2 of 2 fit")
    person.press("Ctrl+B")
    planned = {label: set() for label in ("1A gasoline", "1B gasoline")}
    for row in bill_rows(save(person, "Save CSV…", tmp_path / "bill.csv")):
        planned[row["Position"]].add(row["Part number"])
    person.press("Ctrl+J")
    person.type_into("Permit number", "P-77")
    person.waits_for("pages")
    pack = pages_of(save(person, "Save PDF…", tmp_path / "pack.pdf"))
    assert "P-77" in pack[0]
    for label, numbers in planned.items():
        (sheet,) = [page for page in pack if flat(page).count(f"Position {label}") and "Parts list" in page]
        assert set(PART_NUMBER.findall(sheet)) == numbers
    assert set(PART_NUMBER.findall(pack[1])) == set.union(*planned.values())  # what is loaded is what is fitted

    person.choose("Paper", "Commissioning form to fill in")
    form = tmp_path / "form.pdf"
    save(person, "Save PDF…", form)
    fill(form, tmp_path / "filled.pdf")
    person.go_to_tab("Record of the position")
    person.file(tmp_path / "filled.pdf")
    person.click("Read a filled form…")
    person.click("Save the record")
    person.waits_for_standing("Installer's work", "1 of 2 built")
    record = text_of(save_by_menu(person, "Record (PDF)", tmp_path / "record.pdf"))
    assert "Cy Moss" in record
    assert "378 Ω" in record
    as_built = text_of(save_by_menu(person, "Bill as built", tmp_path / "built.pdf"))
    assert hung(planned["1A gasoline"]) <= set(PART_NUMBER.findall(as_built))


def fill(form: Path, filled: Path) -> None:
    """Fill the form in as an installer does: readings within their limits, each trial passed, a name below."""
    readings = {"clearance": "5 in", "spout": "0.82 in", "bond": "378", "flow": "9.5"}
    writer = PdfWriter(clone_from=form)
    names = [name for name in PdfReader(form).get_fields() or {} if name.startswith("p1_")]
    values = {name: "passed" for name in names if name.endswith("_result")}
    values |= {f"p1_{item}_reading": text for item, text in readings.items()}
    values |= {"p1_done_by": "Cy Moss", "p1_signed_by": "Cy Moss", "p1_done_on": "2026-11-20", "p1_licence": "L-1"}
    for page in writer.pages:
        writer.update_page_form_field_values(page, values, auto_regenerate=False)
    writer.write(filled)
