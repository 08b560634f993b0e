"""From an empty book over two suppliers' tables to an issued quotation, in the window, with nothing invented."""

from __future__ import annotations

import shutil
from collections.abc import Iterator, Mapping
from datetime import date
from pathlib import Path

import openpyxl
import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QFileDialog, QWidget
from pytestqt.qtbot import QtBot

from paper_text import text_of
from postgresql_server import OwnServer
from spoutline.bootstrap import Settings, Workbench, open_workbench
from spoutline.bootstrap.fault_log import FaultLog
from spoutline.gui.actions import ActionId
from spoutline.gui.edits.question import Step
from spoutline.gui.pages.catalogues.page import CataloguesPage
from spoutline.gui.pages.quotation.files import FileKind
from spoutline.gui.pages.quotation.page import QuotationPage
from spoutline.gui.widgets.answer_field import TextField
from spoutline.gui.widgets.theme import dress
from spoutline.gui.window.faults import UnexpectedFault
from spoutline.gui.window.main_window import MainWindow
from spoutline.gui.window.start import Opening
from spoutline.gui.window.workplace import Workplace
from spoutline.model.catalogue_edition import DEMONSTRATION, EditionRef
from spoutline.model.quotation_status import QuotationStatus

pytestmark = pytest.mark.plans_anew
MAKER = "Brackenspout Works"
NAME = "Office list"
PARTS_OF_A_KIND = 24
PRICED = 300
TERMS = """
[seller]
name = "Hedgerow Supply"
[customer]
name = "Fernhollow Fuels"
[heading]
number = "OWN-1"
dated = {today}
[[options]]
title = "As planned"
"""
LISTS = """
[[price_list]]
id = "bw"
maker = "Brackenspout Works"
currency = "USD"
valid_from = 2026-07-01
valid_to = 2099-12-31
"""
# the figures are invented; units stand in the titles, as suppliers write them
EVERY = {
    "Listing class": "E10 B5 B20",
    "Listing scheme": "UL",
    "Min temp (°C)": "-29",
    "Max temp (°C)": "52",
    "Working pressure (psi)": "50",
    "serial_or_date_code_marked": "yes",
    "Lead time": "4",
}
MADE_UP = {"kv_m3_h": "8,5", "Resistance (ohm)": "2", "Tensile strength (N)": "3000"}
HOSE = {
    "Inlet": "3/4 NPT male",
    "Outlet": "3/4 NPT male",
    "Materials": "nbr, carbon steel",
    "construction": "hardwall",
    "Bore (in)": "0,75",
    "OD (mm)": "30",
    "Bend radius (mm)": "110",
    "mass_kg_m": "0,62",
    "resistance_ohm_m": "120",
    "permeation_g_m2_day": "70",
    "low_permeation": "no",
    "built_in_swivel": "no",
    "Tensile strength (N)": "3000",
}
BREAKAWAY = MADE_UP | {
    "Inlet": "3/4 NPT female",
    "Outlet": "3/4 NPT female",
    "Materials": "aluminum, fkm, carbon steel",
    "Separation force min (N)": "445",
    "Separation force max (N)": "890",
    "reconnectable": "no",
    "closes_vapour": "no",
    "omnidirectional": "no",
    "placements": "dispenser_end",
    "seal_diameter_mm": "14",
    "Body length (in)": "3,5",
    "tightening_torque_n_m": "54",
}
SWIVEL = MADE_UP | {
    "Inlet": "3/4 NPT female",
    "Outlet": "3/4 NPT male",
    "Materials": "aluminum, fkm, carbon steel",
    "planes": "2",
    "Body length (in)": "3",
    "tightening_torque_n_m": "47",
}
NOZZLE = MADE_UP | {
    "Inlet": "3/4 NPT female",
    "Listing class": "E10",
    "Materials": "aluminum, fkm, stainless steel",
    "operation": "automatic",
    "service": "gasoline",
    "liquids": "gasoline",
    "Spout OD (mm)": "20,8",
    "spout_straight_mm": "66",
    "spring_distance_mm": "76,2",
    **dict.fromkeys(("hold_open", "no_pressure_device", "attitude_device", "bellows", "misfill_interlock"), "no"),
    **dict.fromkeys(("enhanced_conventional", "def_zone_evaluated"), "no"),
    "min_flow_l_min": "11",
    "max_flow_l_min": "50",
    "Body length (in)": "12",
}
# heading, letter, text, figures, weight in lb, length in ft of the first and how much the next has more
KINDS = (
    ("Whip hoses", "W", "Whip hose", HOSE, "1,1", (0.75, 0.25)),
    ("Breakaways", "B", "Breakaway", BREAKAWAY, "1,0", None),
    ("Curb hoses", "H", "Curb hose", HOSE, "4,0", (8.0, 0.5)),
    ("Swivels", "S", "Swivel", SWIVEL, "0,75", None),
    ("Nozzles", "N", "Nozzle", NOZZLE, "2,8", None),
)


def part_rows() -> Iterator[str | Mapping[str, str]]:
    """Yield headings and rows of the part file: 120 parts under five headings."""
    for heading, letter, text, figures, weight, lengths in KINDS:
        yield heading
        for place in range(PARTS_OF_A_KIND):
            row = {"Part No.": f"{letter} {100 + place}", "Description": f"{text} 3/4 in, {place + 1}"}
            row |= EVERY | figures | {"Weight (lb)": weight}
            if lengths is not None:  # a hose of 0.62 kg/m weighs 0.42 lb for each foot, and its couplings come on top
                length = lengths[0] + place * lengths[1]
                row["Length (ft)"] = f"{length:.2f}".replace(".", ",")
                row["Weight (lb)"] = f"{0.6 + 0.45 * length:.2f}".replace(".", ",")
            yield row


def write_parts(path: Path) -> Path:
    """Write the part file: semicolons, decimal commas, a heading over each kind, a misspelt word."""
    rows = list(part_rows())
    titles = list(dict.fromkeys(title for row in rows if not isinstance(row, str) for title in row))
    lines = ["Brackenspout Works, range of parts", ";".join(titles)]
    for row in rows:
        lines.append(row if isinstance(row, str) else ";".join(row.get(title, "") for title in titles))
    path.write_text("\n".join(lines) + "\n", encoding="utf-8-sig")
    return path


def write_prices(path: Path) -> Path:
    """Write the price file: 300 rows, of which 180 are parts nobody described; a total at the end."""
    book = openpyxl.Workbook()
    sheet = book.active
    sheet.title = "Prices"
    sheet.append(["Price list of Brackenspout Works"])
    sheet.append([])
    sheet.append(["Part No.", "Description", "List price USD"])
    for place, number in enumerate(priced_numbers()):
        price = amount(place)
        sheet.append([number, f"item {number}", f"${price:.2f}" if place % 3 == 0 else price])
    sheet.append(["Total", None, 12345.67])
    book.save(path)
    return path


def priced_numbers() -> list[str]:
    """Return the numbers of the price file, those of the part file first."""
    numbers = [row["Part No."] for row in part_rows() if not isinstance(row, str)]
    return numbers + [f"X {place:03}" for place in range(PRICED - len(numbers))]


def amount(place: int) -> float:
    """Return the price in USD of the part at a place of the price file."""
    return 20 + place / 4


def write_buying_prices(folder: Path) -> None:
    """Write what the firm buys at: the price list of the maker, as it stands in the price file."""
    folder.mkdir(parents=True)
    (folder / "lists.toml").write_text(LISTS, encoding="utf-8")
    rows = [f"{number},all,1,{amount(place):.2f}" for place, number in enumerate(priced_numbers())]
    (folder / "bw.csv").write_text("\n".join(("number,group,from_quantity,unit_price", *rows)) + "\n", encoding="utf-8")


@pytest.fixture
def database(request: pytest.FixtureRequest, database_to_copy: Path, tmp_path: Path) -> Iterator[str]:
    """Yield the address of a book that holds the invented catalog: a file, or on a server of PostgreSQL of its own."""
    if request.param == "file":
        shutil.copy(database_to_copy, tmp_path / "own.sqlite3")
        yield str(tmp_path / "own.sqlite3")
        return
    server = OwnServer()
    yield server.url()
    server.remove()


@pytest.fixture
def empty_book(database: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[Workbench]:
    """Yield use cases over a book without a survey."""
    monkeypatch.setenv("XDG_DATA_HOME", str(tmp_path / "data"))
    write_buying_prices(tmp_path / "data" / "spoutline" / "prices")
    bench = open_workbench(Settings(database=database, profiles=tmp_path / "profiles"))
    for entry in bench.book().entries():
        bench.book().remove(entry.id)
    yield bench
    bench.close()


@pytest.fixture
def window(qtbot: QtBot, qapp: QApplication, empty_book: Workbench, tmp_path: Path) -> Iterator[MainWindow]:
    """Yield the window after a person chose to begin their own in it, without the demonstration."""
    dress(qapp, dark=False)
    window = MainWindow()
    qtbot.addWidget(window)
    window.resize(1280, 720)
    window.show()
    opening = Opening(window, lambda: empty_book, None, UnexpectedFault(window, FaultLog(tmp_path / "log")))
    opening.start()
    qtbot.waitUntil(lambda: opening.choice is not None and opening.choice.isVisible(), timeout=30_000)
    choice = opening.choice
    assert choice is not None
    qtbot.keyClicks(choice.catalogue_edit, NAME)
    qtbot.keyClicks(choice.site_edit, "Fernhollow Fuels")
    choice.without_box.click()
    click(qtbot, choice.own_button)
    qtbot.waitUntil(lambda: window.workplace is not None, timeout=30_000)
    yield window
    window.jobs.close()


def click(qtbot: QtBot, widget: QWidget) -> None:
    qtbot.waitUntil(widget.isEnabled, timeout=60_000)
    qtbot.mouseClick(widget, Qt.MouseButton.LeftButton)


def take_over(page: CataloguesPage, qtbot: QtBot, path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Choose a file, name its maker, mend what one word mends, and take it over into the draft."""
    panel = page.import_panel
    page.tabs.setCurrentWidget(panel)
    monkeypatch.setattr(QFileDialog, "getOpenFileName", lambda *_: (str(path), ""))
    click(qtbot, panel.options.choose_button)
    qtbot.waitUntil(lambda: panel.opened is not None and panel.opened.table.place.startswith(str(path)), timeout=60_000)
    panel.options.maker_edit.selectAll()
    qtbot.keyClicks(panel.options.maker_edit, MAKER)
    qtbot.keyClick(panel.options.maker_edit, Qt.Key.Key_Return)
    qtbot.waitUntil(lambda: panel.look is not None, timeout=60_000)
    if path.suffix == ".csv":
        panel.options.comma_box.click()
        qtbot.waitUntil(lambda: panel.look is not None, timeout=60_000)
        told = [str(report) for report in panel.findings.report_model.records]
        assert {report.nearest for report in panel.findings.report_model.records} == {"aluminium"}, told[:5]
        click(qtbot, panel.findings.replace_button)
        qtbot.waitUntil(lambda: panel.look is not None, timeout=60_000)
    assert panel.look is not None
    told = [str(report) for report in panel.findings.report_model.records]
    assert not told, told[:5]
    click(qtbot, panel.take_button)


def publish(page: CataloguesPage, qtbot: QtBot) -> None:
    """Publish the draft under a note and a name."""
    panel = page.shelf_panel
    page.tabs.setCurrentWidget(panel)
    qtbot.keyClicks(panel.note_edit, "First list")
    qtbot.keyClicks(panel.publisher_edit, "Ada Fenn")
    click(qtbot, panel.publish_button)
    qtbot.waitUntil(
        lambda: page.in_hand.row is not None and page.in_hand.row.ref == EditionRef(NAME, 1), timeout=60_000
    )


def survey_the_hose(workplace: Workplace, qtbot: QtBot) -> None:
    """Say what the hose sells: gasoline with a tenth of ethanol."""
    workplace.show_step(Step.LIQUID)
    blend = workplace.steps.pages[Step.LIQUID].form.field("liquid.blend_percent")
    assert isinstance(blend, TextField)
    blend.editor.selectAll()
    qtbot.keyClicks(blend.editor, "10")
    qtbot.keyClick(blend.editor, Qt.Key.Key_Return)
    assert workplace.session.survey.positions[0].liquid.blend_percent == 10


def quote_and_issue(page: QuotationPage, qtbot: QtBot, terms: Path) -> None:
    """Quote on terms, keep the quotation and issue it under a name."""
    offer = page.panel.offer
    page.terms.use_file(terms)
    click(qtbot, offer.make_button)
    qtbot.waitUntil(lambda: page.quotation is not None, timeout=60_000)
    qtbot.keyClicks(page.panel.name_edit, "Ada Fenn")
    click(qtbot, offer.keep_button)
    qtbot.waitUntil(lambda: page.stored is not None and not page.is_busy, timeout=60_000)
    click(qtbot, offer.issue_button)
    qtbot.waitUntil(lambda: page.stored is not None and page.stored.status is QuotationStatus.ISSUED, timeout=60_000)


@pytest.mark.parametrize("database", ["file", pytest.param("server", marks=pytest.mark.postgres)], indirect=True)
def test_an_empty_book_comes_to_an_issued_quotation_of_its_own_parts(
    window: MainWindow, qtbot: QtBot, empty_book: Workbench, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    workplace = window.workplace
    assert workplace is not None
    page = workplace.catalogues_page
    qtbot.waitUntil(lambda: page.in_hand.draft_name == NAME, timeout=30_000)
    for path, count in ((write_parts(tmp_path / "parts.csv"), 120), (write_prices(tmp_path / "prices.xlsx"), PRICED)):
        take_over(page, qtbot, path, monkeypatch)
        qtbot.waitUntil(
            lambda wanted=count: page.in_hand.row is not None and page.in_hand.row.facts.draft_parts == wanted,
            timeout=120_000,
        )
    publish(page, qtbot)
    row = page.in_hand.row
    assert row is not None
    assert row.edition is not None
    assert (row.edition.parts_count, row.edition.described_count) == (PRICED, 120)
    assert empty_book.catalogues().chosen() == EditionRef(NAME)
    survey_the_hose(workplace, qtbot)
    label = workplace.session.label
    qtbot.waitUntil(
        lambda: (plan := workplace.plans.plan(label)) is not None and plan.chosen is not None, timeout=120_000
    )
    plan = workplace.plans.plan(label)
    assert plan is not None
    assert plan.chosen is not None
    links = plan.chosen.hanging_set.links
    assert {link.part.maker for link in links} == {MAKER}
    window.actions_by_id[ActionId.QUOTATIONS].trigger()
    terms = tmp_path / "terms.toml"
    terms.write_text(TERMS.format(today=date.today().isoformat()), encoding="utf-8")
    quotations = workplace.quotation_page
    quote_and_issue(quotations, qtbot, terms)
    quotations.save_as(tmp_path / "sent.pdf", FileKind.PDF)
    qtbot.waitUntil((tmp_path / "sent.pdf").exists, timeout=60_000)
    told = text_of((tmp_path / "sent.pdf").read_bytes())
    assert f"{NAME}, edition 1" in told
    for link in links:
        assert link.part.number in told
    assert DEMONSTRATION not in told
    assert "invented" not in told.casefold()
