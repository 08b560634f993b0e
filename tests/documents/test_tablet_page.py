"""The page for a tablet in a real browser: filled in as a person does, saved, read back as the PDF form is.

What a reading is in SI and what it keeps is told by the PDF form's reader and the record's rules, which have tests of
their own against published units; here the page must say the same as they do.
"""

from __future__ import annotations

import base64
import re
import time
from collections.abc import Iterator
from dataclasses import replace
from io import BytesIO
from pathlib import Path

import pytest
from PIL import Image
from pypdf import PdfReader

from browser import Browser, browser, needs_browser
from documents import plan_factory as factory
from documents.pack_words import words
from documents.test_record_form import filled as filled_pdf
from spoutline import assets
from spoutline.documents.pack.form_fields import ItemField, item_field
from spoutline.documents.pack.form_reading import records_from_form
from spoutline.documents.pack.papers import form_pdf, record_pdf
from spoutline.documents.pack.record_sheet import verdict_text
from spoutline.documents.pack.tablet_page import tablet_html
from spoutline.documents.pack.tablet_reading import FilledForm, form_from_page
from spoutline.explain.pack.words import PackWord
from spoutline.input_bounds.bounds import BOUNDS
from spoutline.model.check import Bound, Check, CheckId, Outcome
from spoutline.model.faults import InputFault
from spoutline.model.finding import Severity
from spoutline.model.language import Language
from spoutline.model.limit import LimitStatus
from spoutline.model.plan import PositionPlan, SitePlan
from spoutline.model.quantity import Dimension
from spoutline.model.record import READING_DIMENSIONS, ReadingVerdict, RecordEntry, RecordItemId
from spoutline.rules.work.records import judged_entry, judged_record, record_items
from spoutline.ruletables.inspection_items import load_reading_bands
from spoutline.units.accepted import UnitSystem
from spoutline.units.meter_readings import parse_reading

BANDS = load_reading_bands(assets.resources_folder())
HOSTILE = '</script><img src=x onerror="document.title=1">'


def station(*labels: str) -> SitePlan:
    return factory.site_plan(*(factory.fitting_plan(factory.position(label)) for label in labels or ("1A",)))


def hanging_clear() -> PositionPlan:
    plan = factory.fitting_plan()
    assert plan.chosen is not None
    # bound of the ground clearance: common practice, no source
    low = Bound(value=0.1, source="common practice", status=LimitStatus.COMMON_PRACTICE)
    clearance = Check(
        id=CheckId.GROUND_CLEARANCE_AT_REST,
        severity=Severity.SHOULD,
        outcome=Outcome.PASSES,
        value=0.3,
        dimension=Dimension.LENGTH,
        lower=low,
        upper=None,
        margin=0.2,
    )
    return replace(plan, chosen=replace(plan.chosen, checks=(*plan.chosen.checks, clearance)))


def page_of(
    folder: Path, site_plan: SitePlan, language: Language = Language.ENGLISH, system: UnitSystem = UnitSystem.SI
) -> Path:
    path = folder / "form.html"
    path.write_bytes(tablet_html(site_plan, words(language, system), BANDS))
    return path


@pytest.fixture(scope="module")
def _running(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Browser]:
    with browser(tmp_path_factory.mktemp("browser")) as one:
        yield one


@pytest.fixture
def tab(_running: Browser) -> Browser:
    _running.asked.clear()
    _running.said.clear()
    _running.show_as(1024, 800)
    return _running


def saved(tab: Browser, folder: Path) -> str:
    """Save as a person does and return the text of the file."""
    tab.keep_downloads_in(folder)
    before = set(folder.glob("*.json"))
    tab.click("save")
    end = time.monotonic() + 20
    while not (new := [one for one in folder.glob("*.json") if one not in before and one.stat().st_size]):
        assert time.monotonic() < end, "nothing was saved"
        time.sleep(0.05)
    return new[0].read_text(encoding="utf-8")


def said_at(tab: Browser, field: str) -> str:
    return str(tab.run(f"document.getElementById('v-{field}').textContent"))


def read(text: str) -> FilledForm:
    return form_from_page(text, "filled.json", "Signature")


def a_photo(path: Path, size: tuple[int, int] = (2400, 1600)) -> Path:
    picture = Image.effect_noise(size, 90).convert("RGB")
    exif = Image.Exif()
    exif[0x010E] = "told by the camera"  # ImageDescription, Exif 2.3
    picture.save(path, "JPEG", quality=95, exif=exif)
    return path


@needs_browser
def test_a_form_filled_on_a_tablet_becomes_the_record_that_the_pdf_form_becomes(tab: Browser, tmp_path: Path) -> None:
    site_plan = station("1A", "2B")
    values = {
        "p1_spout_reading": "20.8",
        "p1_bond_reading": "1.5k",
        "p1_flow_reading": "10 gpm",
        "p2_flow_reading": "12",
        "p1_done_by": 'Ada "Quill" & Sons',
        "p1_signed_by": "A. Quill",
        "p1_remarks": "dry after 10 min, ñ ü é",
        "p1_part2_serial": "X-77",
        "p1_part2_service_until": "2031-04",
    }
    chosen = {"p1_leak_result": "passed", "p2_leak_result": "failed", "p1_done_on": "2026-12-01"}
    tab.open(page_of(tmp_path, site_plan))
    for field, text in values.items():
        tab.write(field, text)
    for field, value in chosen.items():
        tab.choose(field, value)
    from_page = read(saved(tab, tmp_path))
    pdf = filled_pdf(form_pdf(site_plan, words()), **values, **chosen)
    assert from_page.records == records_from_form(pdf, "filled.pdf")
    assert from_page.photos == {}
    assert tab.said == []


@needs_browser
def test_nothing_is_asked_of_any_network_and_the_policy_forbids_it(tab: Browser, tmp_path: Path) -> None:
    tab.open(page_of(tmp_path, station()))
    tab.write("p1_flow_reading", "35")
    saved(tab, tmp_path)
    assert tab.asked
    assert [one for one in tab.asked if not one.startswith(("file:", "data:", "blob:"))] == []
    refused = tab.run("fetch('https://example.invalid/').then(() => 'went out', () => 'refused')")
    assert refused == "refused"
    assert any("Content Security Policy" in one for one in tab.said)
    assert [one for one in tab.asked if one.startswith("http")] == []  # refused before it was asked


def test_the_page_names_no_address_and_runs_its_own_script_alone(tmp_path: Path) -> None:
    text = page_of(tmp_path, station()).read_text(encoding="utf-8")
    assert not re.search(r"""(?:src|href|action)\s*=\s*["']?(?!#|data:)[a-z]""", text.partition("<script")[0])
    assert re.findall(r"(?<![\w.])(?:fetch|XMLHttpRequest|WebSocket|eval|Function|sendBeacon|innerHTML)\b", text) == []
    assert "connect-src 'none'" in text
    assert "default-src 'none'" in text


READINGS = {
    Language.ENGLISH: (
        "20.8",
        "20,8",
        "0.82 in",
        "13/16 in",
        "13/16",
        "20.8 MM",
        "21.5",
        "19",
        "20 8",
        "2 kohm",
        "1e3",
    ),
    Language.GERMAN: ("20,8", "20.8", "20.800", "0,82 in", "21,5 mm", "x"),
    Language.SPANISH: ("20,8", "20.8", "20,800", "2,08 cm"),
    Language.FRENCH: ("20,8", "1.250", "-3", "20,8 m"),
}
RESISTANCES = ("OL", "∞", ">10M", "> 90 k", "90k", "1.5 kohm", "3 Mohm", "3 mohm", "2000000", "open", "5 Ω", "5 V", "0")
LENGTHS = ("4", "4 in", "1 ft 2 1/2 in", "1' 2\"", "2′ 3½″", "1 ft 13 in", "30 cm", "1-1/4 in", "0.3 m")


def expected(item: RecordItemId, text: str, site_plan: SitePlan, language: Language, system: UnitSystem) -> str:
    """Return what the program itself says of a reading; "unreadable" where it asks for it again."""
    (found,) = (one for one in record_items(site_plan.positions[0]) if one.id is item)
    try:
        reading = parse_reading(text, READING_DIMENSIONS[item], system, language)
    except InputFault:
        return "unreadable"
    entry = RecordEntry(item=item, reading=reading.value, over_range=reading.over_range)
    return judged_entry(found, entry, BANDS.get(item)).value


@needs_browser
@pytest.mark.parametrize("language", Language)
def test_a_reading_is_judged_as_typed_by_the_limits_of_the_plan(
    tab: Browser, tmp_path: Path, language: Language
) -> None:
    story, site_plan = words(language).story, station()
    tab.open(page_of(tmp_path, site_plan, language))
    asked = [(RecordItemId.SPOUT, text) for text in READINGS[language]]
    asked += [(RecordItemId.BOND, text) for text in RESISTANCES]
    asked += [(RecordItemId.FLOW, text) for text in ("35", "29", "350", "10 gpm", "0.6 L/s")]
    seen = set()
    for item, text in asked:
        field = item_field(1, item, ItemField.READING)
        tab.write(field, text)
        verdict = expected(item, text, site_plan, language, UnitSystem.SI)
        seen.add(verdict)
        told = story.word(PackWord.TABLET_UNREADABLE) if verdict == "unreadable" else None
        shown = said_at(tab, field)
        if told is None:
            assert shown == verdict_text(ReadingVerdict(verdict), story), text
        else:
            assert told in shown, text
    assert seen >= {"within", "outside", "unusual", "unreadable"}


@needs_browser
def test_feet_and_inches_are_read_as_the_program_reads_them(tab: Browser, tmp_path: Path) -> None:
    site_plan, item = factory.site_plan(hanging_clear()), RecordItemId.CLEARANCE
    tab.open(page_of(tmp_path, site_plan, system=UnitSystem.US))
    for text in LENGTHS:
        field = item_field(1, item, ItemField.READING)
        tab.write(field, text)
        verdict = expected(item, text, site_plan, Language.ENGLISH, UnitSystem.US)
        shown = said_at(tab, field)
        assert shown.startswith(
            "?" if verdict == "unreadable" else verdict_text(ReadingVerdict(verdict), words().story)
        ), text


@needs_browser
def test_photos_come_back_small_and_with_nothing_but_their_pixels(tab: Browser, tmp_path: Path) -> None:
    site_plan = station("1A", "2B")
    tab.open(page_of(tmp_path, site_plan))
    photo, other = a_photo(tmp_path / "valve.jpg"), tmp_path / "notes.txt"
    other.write_text("no picture", encoding="utf-8")
    tab.give("add-1", photo)
    tab.until("document.querySelectorAll('#photos-1 img').length === 1")
    tab.write("caption-1-0", "breakaway, arrow to the nozzle")
    tab.give("add-2", other)
    tab.until("document.getElementById('photo-state-2').textContent")
    assert "notes.txt" in tab.run("document.getElementById('photo-state-2').textContent")
    tab.draw("pad-1")
    tab.write("p1_done_by", "Ada Quill")
    form = read(saved(tab, tmp_path))
    first, second = form.records
    assert [(one.name, one.caption) for one in first.photos] == [
        ("valve.jpg", "breakaway, arrow to the nozzle"),
        ("signature.png", "Signature"),
    ]
    assert second.photos == ()
    kept, drawn = (Image.open(BytesIO(form.photos[one.sha256])) for one in first.photos)
    assert (kept.format, max(kept.size)) == ("JPEG", 1600) or max(kept.size) < 1600
    assert kept.width / kept.height == pytest.approx(1.5, abs=0.01)
    assert not kept.getexif()
    assert (drawn.format, drawn.size) == ("PNG", (600, 200))
    assert drawn.convert("L").getextrema() == (0, 255)  # ink on paper
    plan = site_plan.positions[0]
    judged = judged_record(first, record_items(plan), BANDS)
    sheet = record_pdf(site_plan, words(), [judged], form.photos)
    reader = PdfReader(BytesIO(sheet))
    assert sum(len(page.images) for page in reader.pages) >= 2
    assert "arrow to the nozzle" in "".join(page.extract_text() for page in reader.pages)


@needs_browser
def test_no_more_photos_are_taken_than_are_read(tab: Browser, tmp_path: Path) -> None:
    tab.open(page_of(tmp_path, station()))
    small = [a_photo(tmp_path / f"{number}.jpg", (60, 40)) for number in range(BOUNDS.tablet_photos + 1)]
    tab.give("add-1", *small)
    tab.until("document.getElementById('photo-state-1').textContent")
    assert tab.run("document.querySelectorAll('#photos-1 img').length") == BOUNDS.tablet_photos
    assert str(BOUNDS.tablet_photos) in tab.run("document.getElementById('photo-state-1').textContent")


@needs_browser
def test_a_saved_form_is_gone_on_with_and_another_one_refused(tab: Browser, tmp_path: Path) -> None:
    page = page_of(tmp_path, station())
    tab.open(page)
    tab.write("p1_spout_reading", "21.5")
    tab.write("p1_done_by", "Ada Quill")
    text = saved(tab, tmp_path)
    tab.click("empty")
    tab.until("document.getElementById('p1_done_by').value === ''")
    assert said_at(tab, "p1_spout_reading") == ""
    strange = tmp_path / "strange.json"
    strange.write_text(text.replace("0123456789abcdef", "fedcba9876543210"), encoding="utf-8")
    tab.give("open", strange)
    tab.until("document.getElementById('state').textContent.includes('strange.json')")
    assert tab.run("document.getElementById('p1_done_by').value") == ""
    again = tmp_path / "again.json"
    again.write_text(text, encoding="utf-8")
    tab.give("open", again)
    tab.until("document.getElementById('p1_done_by').value === 'Ada Quill'")
    assert "OUT OF LIMIT" in said_at(tab, "p1_spout_reading")


@needs_browser
def test_the_copy_in_the_browser_helps_and_is_not_needed(tab: Browser, tmp_path: Path) -> None:
    page = page_of(tmp_path, station("7K"))
    tab.open(page)
    tab.run("localStorage.clear()")  # pages from files share one store; large pictures of other tests may fill it
    tab.write("p1_done_by", "Ada Quill")
    tab.until("Object.keys(localStorage).some(k => localStorage.getItem(k).includes('Ada Quill'))")
    # the browser may draw the page again in another process, which its store reaches a moment later
    for _ in range(20):
        tab.open(page)
        if tab.run("document.getElementById('p1_done_by').value") == "Ada Quill":
            break
        time.sleep(0.1)
    assert tab.run("document.getElementById('p1_done_by').value") == "Ada Quill"
    assert words().story.word(PackWord.TABLET_KEPT) in tab.run("document.getElementById('state').textContent")
    # a browser that refuses its store: the page works all the same
    refusing = "Object.defineProperty(window, 'localStorage', {get() { throw new Error('refused'); }})"
    added = tab.send("Page.addScriptToEvaluateOnNewDocument", source=refusing)
    try:
        tab.open(page)
        tab.write("p1_done_by", "B. Fen")
        assert read(saved(tab, tmp_path)).records[0].done_by == "B. Fen"
    finally:
        tab.send("Page.removeScriptToEvaluateOnNewDocument", identifier=added["identifier"])


@needs_browser
def test_a_name_with_markup_is_a_name(tab: Browser, tmp_path: Path) -> None:
    site_plan = station()
    site = site_plan.survey.site.model_copy(update={"name": HOSTILE})
    named = replace(site_plan, survey=site_plan.survey.model_copy(update={"site": site}))
    tab.open(page_of(tmp_path, named))
    assert HOSTILE in tab.run("document.title")
    tab.write("p1_done_by", HOSTILE)
    tab.give("add-1", a_photo(tmp_path / "a<b>&c.jpg", (60, 40)))
    tab.until("document.querySelectorAll('#photos-1 img').length === 1")
    assert tab.run("document.querySelectorAll('img[src=x]').length") == 0
    (record,) = read(saved(tab, tmp_path)).records
    assert (record.site, record.done_by, record.photos[0].name) == (HOSTILE, HOSTILE, "a<b>&c.jpg")


@needs_browser
@pytest.mark.parametrize("language", Language)
@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_a_narrow_screen_needs_no_sideways_scroll_and_fingers_find_every_control(
    tab: Browser, tmp_path: Path, language: Language, scheme: str
) -> None:
    # WCAG 2.2, 1.4.10: 320 CSS px; 2.5.5 (AAA): targets of 44 by 44
    tab.show_as(320, 640, scheme)
    tab.open(page_of(tmp_path, station("1A", "2B"), language))
    tab.run("document.querySelectorAll('details').forEach(d => { d.open = true; })")
    assert tab.run("document.documentElement.scrollWidth") <= 320
    small = tab.run(
        "[...document.querySelectorAll('.position input:not([type=hidden]):not([type=file]), select, textarea, button,"
        " .file, nav a')].filter(e => e.getClientRects().length && e.getBoundingClientRect().height < 43.5)"
        ".map(e => e.outerHTML.slice(0, 80))"
    )
    assert small == []
    # WCAG 2.2, 1.4.3: text of at least 4.5 to 1
    paper, ink, quiet = (
        tab.run(f"getComputedStyle(document.querySelector('{one}')).{two}")
        for one, two in (("body", "backgroundColor"), ("body", "color"), ("label", "color"))
    )
    assert min(contrast(paper, ink), contrast(paper, quiet)) >= 4.5


def contrast(one: str, other: str) -> float:
    """Return the contrast of two colors as WCAG 2.2 defines it."""

    def light(text: str) -> float:
        parts = [int(number) / 255 for number in re.findall(r"\d+", text)[:3]]
        linear = [part / 12.92 if part <= 0.04045 else ((part + 0.055) / 1.055) ** 2.4 for part in parts]
        return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]

    low, high = sorted((light(one), light(other)))
    return (high + 0.05) / (low + 0.05)


@needs_browser
def test_every_control_is_reached_by_keyboard_and_has_a_name(tab: Browser, tmp_path: Path) -> None:
    tab.open(page_of(tmp_path, station()))
    tab.run("document.querySelector('nav a').focus()")
    reached = set()
    for _ in range(120):
        tab.press("Tab", 9)
        reached.add(tab.run("document.activeElement.id"))
    for field in ("p1_bond_reading", "p1_leak_result", "p1_signed_by", "clear-1", "add-1", "save", "open", "empty"):
        assert field in reached
    tree = tab.send("Accessibility.getFullAXTree")["nodes"]
    roles = {"textbox", "combobox", "button", "Date"}
    unnamed = [
        node["role"]["value"]
        for node in tree
        if not node.get("ignored")
        and node.get("role", {}).get("value") in roles
        and not node.get("name", {}).get("value", "").strip()
    ]
    assert unnamed == []


@needs_browser
@pytest.mark.parametrize("language", Language)
def test_a_preview_without_script_says_so_and_offers_no_button(
    tab: Browser, tmp_path: Path, language: Language
) -> None:
    tab.open(page_of(tmp_path, station(), language), scripts=False)
    try:
        shown = tab.send("Runtime.evaluate", expression="1")  # the protocol itself still runs
        assert shown["result"]["value"] == 1
        tree = tab.send("Accessibility.getFullAXTree")["nodes"]
        told = " ".join(node.get("name", {}).get("value", "") for node in tree if not node.get("ignored"))
        said = words(language).story.word(PackWord.TABLET_NO_SCRIPT)
        assert " ".join(said.split()) in " ".join(told.split())
        assert words(language).story.word(PackWord.TABLET_SAVE) not in told
    finally:
        tab.send("Emulation.setScriptExecutionDisabled", value=False)


@needs_browser
def test_on_paper_every_position_stands_and_no_button(tab: Browser, tmp_path: Path) -> None:
    tab.open(page_of(tmp_path, station("1A", "2B")))
    tab.write("p1_done_by", "Ada Quill")
    tab.run("dispatchEvent(new Event('beforeprint'))")
    pdf = base64.b64decode(tab.send("Page.printToPDF")["data"])
    text = "".join(page.extract_text() for page in PdfReader(BytesIO(pdf)).pages)
    for told in ("1A", "2B", "Ada Quill"):
        assert told in text
    assert words().story.word(PackWord.TABLET_SAVE) not in text
