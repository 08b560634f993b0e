"""Papers as HTML: the words and figures of the PDF, marked up so that they can be heard and enlarged."""

from __future__ import annotations

import itertools
import json
import os
import re
import shutil
import subprocess
from collections.abc import Callable
from dataclasses import replace
from datetime import date
from pathlib import Path

import pytest

from documents.html_reading import figures, page_of, shown_text
from paper_text import pages_of, text_of
from planning.quoting_terms import terms_of
from spoutline.bootstrap import Workbench
from spoutline.bootstrap.demos import demo_survey
from spoutline.documents.content.blocks import (
    Bullets,
    ChoiceBox,
    Column,
    Document,
    Emphasis,
    FormTable,
    Heading,
    Letterhead,
    PaperSize,
    Paragraph,
    Row,
    Table,
    TextBox,
)
from spoutline.documents.html.page import html_bytes
from spoutline.documents.html.style import STYLE
from spoutline.documents.paper_form import PaperForm, form_of
from spoutline.model.language import Language
from spoutline.model.pack import PackJob
from spoutline.units.accepted import UnitSystem
from spoutline.units.display import Display

AS_FOUND = terms_of(options=[{"title": "As found"}])
US = Display(UnitSystem.US)
HTML = PaperForm.HTML
Make = Callable[[PaperForm], bytes]


def document(*blocks: object) -> Document:
    return Document(
        title="Paper",
        subject="for a test",
        author="Spoutline",
        language="en",
        paper=PaperSize.A4,
        running_head="Head",
        running_foot="Foot",
        page_phrase="Page {page} of ",
        blocks=blocks,  # type: ignore[arg-type]
    )


@pytest.fixture
def papers(workbench: Workbench, plans_once: None) -> dict[str, Make]:
    """Return each paper of a demo station, to be made in a form."""
    survey = demo_survey("small_town")
    survey = survey.model_copy(update={"positions": survey.positions[:2]})
    plan = workbench.plan_site(survey)
    packing, quoting = workbench.packing(), workbench.quoting()
    quotation = quoting.quote(survey, AS_FOUND, US).quotation
    conversion = workbench.converting().convert_shown(demo_survey("conversion_balance"))[0]
    due = packing.due(plan, date(2027, 1, 4))
    spanish = Language.SPANISH
    return {
        "bill": lambda form: workbench.bills().pdf(plan, US, form=form),
        "bill de": lambda form: workbench.bills().pdf(plan, US, form=form, language=Language.GERMAN),
        "pack": lambda form: packing.pack(plan, spanish, US, PackJob(), form=form),
        "cautions": lambda form: packing.caution_sheet(plan, spanish, US, form=form),
        "inspection": lambda form: packing.inspection_plan(plan, due, Language.FRENCH, US, form=form),
        "quotation": lambda form: quoting.papers().pdf(quotation, 1, US, form),
        "pick list": lambda form: quoting.papers().pick_list(quotation, 0, 1, US, form),
        "conversion": lambda form: workbench.converting().pdf(conversion, US, form=form),
        "one page": lambda form: workbench.converting().one_page(conversion, US, form=form),
    }


def test_every_paper_says_in_html_what_its_pdf_says_and_can_be_heard(papers: dict[str, Make]) -> None:
    for name, make in papers.items():
        content, pdf = make(HTML), make(PaperForm.PDF)
        assert content == make(HTML), name
        check_figures(name, content, pdf)
        check_structure(name, content)


def check_figures(name: str, content: bytes, pdf: bytes) -> None:
    """Hold the figures of both forms against each other; a PDF has page numbers besides, a page the text of a code."""
    heard, printed = shown_text(content), text_of(pdf)
    codes = {text for one in page_of(content).all("figcaption") for text in figures(one.text)}
    pages = {str(number) for number in range(1, len(pages_of(pdf)) + 1)}
    assert figures(heard) - figures(printed) <= codes, name
    # a line may end inside a number of part or page; what is left must be a piece of what is heard
    lost = {one for one in figures(printed) - figures(heard) - pages if one.strip(".,/") not in heard}
    assert lost == set(), name


def check_structure(name: str, content: bytes) -> None:
    page = page_of(content)
    (root,) = page.all("html")
    assert root.attributes["lang"] in {"en", "de", "es", "fr"}
    assert [one.text for one in page.all("h1")] == [page.all("title")[0].text]
    levels = [int(one.tag[1]) for one in page.elements if re.fullmatch(r"h[1-6]", one.tag)]
    assert all(deeper - level <= 1 for level, deeper in itertools.pairwise(levels)), name
    ids = [one.attributes["id"] for one in page.elements if "id" in one.attributes]
    assert len(ids) == len(set(ids))
    for one in page.elements:
        for target in one.attributes.get("aria-labelledby", "").split():
            assert target in ids
    assert all(one.text.strip() and one.attributes["scope"] in ("col", "row") for one in page.all("th")), name
    assert len(page.all("tbody")) == len(page.all("table"))
    for drawing in (one for one in page.all("svg") if "aria-hidden" not in one.attributes):
        assert drawing.attributes["role"] == "img"
        assert {one.tag for one in page.elements if one.parents[-1:] == ("svg",)} >= {"title", "desc"}
    assert all(one.attributes["alt"] for one in page.all("img"))
    assert page.all("main")
    check_that_nothing_calls_out(content)


def check_that_nothing_calls_out(content: bytes) -> None:
    text = content.decode()
    page = page_of(content)
    assert page.all("script") == page.all("link") == page.all("iframe") == page.all("object") == []
    assert not any(name.startswith("on") for one in page.elements for name in one.attributes)
    links = [one.attributes.get("src", "") + one.attributes.get("href", "") for one in page.elements]
    assert all(link.startswith(("#", "data:image/")) or not link for link in links)
    assert set(re.findall(r"https?://[^\"'\s<]+", text)) <= {"http://www.w3.org/2000/svg"}
    assert "url(" not in text
    assert "@import" not in text
    assert "default-src 'none'" in text


def test_what_people_type_is_text_wherever_it_stands() -> None:
    """Signs of markup, a sign that turns the direction of reading, and a text that reads from the right."""
    evil = '"><script>alert(1)</script>\u202e & <b>'
    columns = (Column("a", 1.0), Column(evil, 1.0))
    blocks = (
        Heading(evil, 1),
        Paragraph(evil),
        Bullets((evil,)),
        Table(columns, (Row((evil, evil)), Row((evil, ""), Emphasis.TOTAL))),
        Letterhead(evil, (evil,)),
        FormTable(columns, ((TextBox("n", evil, evil), ChoiceBox("c", evil, ((evil, evil),), evil)),)),
        Paragraph("תחנת דלק 12"),
    )
    content = html_bytes(replace(document(*blocks), title=evil, author=evil, notice=evil, running_head=evil))
    check_that_nothing_calls_out(content)
    page = page_of(content)
    assert "\u202e" not in content.decode()
    assert page.all("h1")[0].text == '"><script>alert(1)</script> & <b>'
    assert page.all("input")[0].attributes["value"] == '"><script>alert(1)</script> & <b>'
    (hebrew,) = (one for one in page.all("p") if "תחנת" in one.text)
    assert hebrew.attributes["dir"] == "auto"


def test_the_first_level_goes_before_the_second_however_a_paper_begins() -> None:
    page = page_of(html_bytes(document(Heading("Section", 2), Heading("Chapter", 1), Heading("Section", 2))))
    assert [one.tag for one in page.elements if re.fullmatch(r"h\d", one.tag)] == ["h1", "h2", "h2", "h3"]


def _luminance(colour: str) -> float:
    """Return the relative luminance of WCAG 2.2."""
    digits = colour.lstrip("#")
    digits = "".join(one * 2 for one in digits) if len(digits) == 3 else digits
    parts = [int(digits[at : at + 2], 16) / 255 for at in (0, 2, 4)]
    linear = [part / 12.92 if part <= 0.04045 else ((part + 0.055) / 1.055) ** 2.4 for part in parts]
    return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]


def contrast(one: str, other: str) -> float:
    light, dark = sorted((_luminance(one), _luminance(other)), reverse=True)
    return (light + 0.05) / (dark + 0.05)


def test_texts_and_frames_stand_out() -> None:
    """WCAG 2.2, success criteria 1.4.3 (4.5 to 1 for text) and 1.4.11 (3 to 1 for what is no text)."""
    named = dict(re.findall(r"--(\w+):(#[0-9a-f]+)", STYLE))
    assert min(contrast(named[one], "#ffffff") for one in ("ink", "quiet", "accent", "fault")) >= 4.5
    assert contrast(named["rule"], "#ffffff") >= 3.0
    panels = {"#0b4a8a": "#ffffff", "#a3151b": "#ffffff", "#ef7d00": "#000000", "#ffd400": "#000000"}
    assert all(ground in STYLE for ground in panels)
    assert min(contrast(ground, ink) for ground, ink in panels.items()) >= 4.5


def test_the_ending_of_a_name_chooses_the_form() -> None:
    assert form_of(Path("a.HTML")) is form_of(Path("a.htm")) is HTML
    assert form_of(Path("a.pdf")) is form_of(Path("a")) is PaperForm.PDF


def _checker() -> tuple[str, str] | None:
    """Return a headless browser and the checker's script (axe-core of npm), where both are installed."""
    browser = next(filter(None, map(shutil.which, ("chromium", "chromium-browser"))), None)
    named = os.environ.get("AXE_CORE", "")
    if not named and shutil.which("npm"):
        done = subprocess.run(["npm", "root", "--global"], capture_output=True, text=True, check=False)
        named = str(Path(done.stdout.strip() or ".", "axe-core", "axe.min.js"))
    return (browser, named) if browser and Path(named).is_file() else None


CHECKER = _checker()


@pytest.mark.skipif(
    CHECKER is None,
    reason="needs Chromium, and axe-core from npm (npm install --global axe-core, or AXE_CORE=.../axe.min.js)",
)
def test_an_accessibility_checker_finds_nothing(papers: dict[str, Make], workbench: Workbench, tmp_path: Path) -> None:
    assert CHECKER is not None
    survey = demo_survey("small_town")
    plan = workbench.plan_site(survey.model_copy(update={"positions": survey.positions[:2]}))
    tablet = {one.value: workbench.packing().tablet_page(plan, one, US) for one in Language}
    browser, script = CHECKER
    run = (
        "axe.run(document).then(r => {document.body.textContent = '';"
        "const e = document.createElement('pre'); e.id = 'told';"
        "e.textContent = JSON.stringify(r.violations.map(v => [v.id, v.nodes.map(n => n.html).slice(0, 3)]));"
        "document.body.append(e);});"
    )
    faults = {}
    for name, page in ({name: make(HTML) for name, make in papers.items()} | tablet).items():
        text = re.sub(r"<meta http-equiv[^>]*>", "", page.decode())
        checker = f"<script>{Path(script).read_text(encoding='utf-8')}</script><script>{run}</script>"
        path = tmp_path / "paper.html"
        path.write_text(text.replace("</body>", f"{checker}</body>"), encoding="utf-8")
        command = [browser, "--headless", "--no-sandbox", "--disable-gpu", f"--user-data-dir={tmp_path / 'browser'}"]
        done = subprocess.run(
            [*command, "--virtual-time-budget=60000", "--dump-dom", path.as_uri()], capture_output=True, check=True
        )
        told = re.search(r'<pre id="told">(.*?)</pre>', done.stdout.decode(), re.DOTALL)
        assert told is not None, name
        if told[1] != "[]":
            faults[name] = json.loads(told[1].replace("&lt;", "<").replace("&gt;", ">").replace("&amp;", "&"))
    assert faults == {}
