"""The owner's report, its drawings and its calendar: what a reader sees, and that it never reads as permission."""

from __future__ import annotations

import re
from dataclasses import replace
from datetime import date, datetime
from functools import lru_cache
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from paper_text import page_text, pages_of, text_of
from spoutline import assets
from spoutline.bootstrap import Settings, Workbench, open_workbench
from spoutline.bootstrap.demos import demo_survey
from spoutline.documents.calendar import calendar_bytes
from spoutline.documents.content.blocks import CautionNote, CautionSheet, Figure, Heading, PageBreak, Table
from spoutline.documents.conversion.content import conversion_content
from spoutline.documents.conversion.gantt import gantt_drawings
from spoutline.documents.drawing.shapes import Dot
from spoutline.explain.conversion.phrases import conversion_phrases_from_toml
from spoutline.explain.conversion.sentences import SENTENCES
from spoutline.model.conversion import SiteConversion
from spoutline.model.faults import Cancelled, InputFault
from spoutline.model.language import Language
from spoutline.model.removal_standing import Standing
from spoutline.model.survey import Survey, VapourStatus
from spoutline.ruletables.cautions import load_cautions
from spoutline.units.accepted import UnitSystem
from spoutline.units.display import Display

SI, US = Display(UnitSystem.SI), Display(UnitSystem.US)
CAUTIONS = load_cautions(assets.resources_folder())
PHRASES = Path(__file__).resolve().parents[2] / "resources" / "conversion" / "en.toml"


@pytest.fixture(scope="module")
def bench(shared_database: Path) -> Workbench:
    return open_workbench(Settings(database=str(shared_database)))


@lru_cache(maxsize=4)
def conversion_of(bench: Workbench, demo: str) -> SiteConversion:
    return bench.converting().convert(demo_survey(demo))


class Impatient:
    """Asks to stop once it was told of so many units."""

    def __init__(self, most: int) -> None:
        self.told: list[tuple[int, int]] = []
        self._most = most

    def on_progress(self, done: int, total: int) -> None:
        self.told.append((done, total))

    def should_stop(self) -> bool:
        return len(self.told) >= self._most


def refused(bench: Workbench) -> SiteConversion:
    survey = demo_survey("conversion_assist")
    answers = survey.conversion.model_copy(update={"agency": "california_retail"})
    return bench.converting().convert(survey.model_copy(update={"conversion": answers}))


def test_the_summary_stands_on_one_page_with_its_decision_table(bench: Workbench) -> None:
    conversion = conversion_of(bench, "conversion_assist")
    pdf = bench.converting().pdf(conversion, SI)
    first, second = pages_of(pdf)[:2]
    assert "Which way" in first
    assert "Full renewal" in first
    assert "Whom to tell" in first
    assert second.lstrip().startswith("Conversion report")
    assert "Money" in second


@pytest.mark.parametrize("language", list(Language))
def test_no_page_holds_but_the_last_lines_of_the_summary(bench: Workbench, language: Language) -> None:
    conversion = conversion_of(bench, "conversion_balance")
    before = bench.language
    bench.speak(language)
    try:
        pages = pages_of(bench.converting().pdf(conversion, US))
    finally:
        bench.speak(before)
    assert all(len(page.split()) > 100 for page in pages[:3])  # head and foot have some thirty words


def test_every_page_says_that_it_is_no_permission_and_who_decides(bench: Workbench) -> None:
    pdf = bench.converting().pdf(conversion_of(bench, "conversion_assist"), SI)
    for text in pages_of(pdf):
        assert "no permission" in text
        assert "air agency" in text


def test_the_report_stops_while_it_is_written(bench: Workbench) -> None:
    """Of a big station, writing takes as long as setting what was written."""
    conversion, words = conversion_of(bench, "conversion_balance"), bench.converting().words(SI)
    sheets = len(conversion.positions)
    for most in (0, 1, sheets, sheets + 1):
        impatient = Impatient(most)
        with pytest.raises(Cancelled):
            conversion_content(conversion, words, CAUTIONS, progress=impatient)
        assert impatient.told == [(done, sheets) for done in range(most)]
    patient = Impatient(sheets + 2)
    whole = conversion_content(conversion, words, CAUTIONS, progress=patient)
    assert whole == conversion_content(conversion, words, CAUTIONS)
    assert patient.told[-1] == (sheets, sheets)


def test_a_site_where_removal_is_not_allowed_says_so_before_anything_else(bench: Workbench) -> None:
    conversion = refused(bench)
    assert conversion.standing.standing is Standing.NOT_ALLOWED
    content = conversion_content(conversion, bench.converting().words(SI), CAUTIONS)
    heading, caution, *_ = content.blocks
    assert isinstance(heading, Heading)
    assert isinstance(caution, CautionNote)
    assert "not allowed" in caution.hazard
    first = page_text(bench.converting().pdf(conversion, SI), 0)
    assert first.index("not allowed here") < first.index("Name")


def test_bringing_recovery_in_where_it_must_go_is_warned_of(bench: Workbench) -> None:
    # Arizona, area A: recovery at the nozzle was taken away by rule (A.A.C. R20-2-913)
    survey = demo_survey("conversion_balance")
    kept = survey.positions[3].model_copy(update={"vapour_wanted": VapourStatus.BALANCE})
    answers = survey.conversion.model_copy(update={"agency": "arizona"})
    changed = survey.model_copy(update={"positions": (kept,), "conversion": answers})
    conversion = bench.converting().convert(changed)
    content = conversion_content(conversion, bench.converting().words(SI), CAUTIONS)
    warning = content.blocks[1]
    assert isinstance(warning, CautionNote)
    assert "brought in" in warning.hazard


def test_every_position_has_a_sheet_of_its_own_and_the_caution_sheet_comes_last(bench: Workbench) -> None:
    conversion = conversion_of(bench, "conversion_balance")
    blocks = conversion_content(conversion, bench.converting().words(SI), CAUTIONS).blocks
    chapters = [block.text for block in blocks if isinstance(block, Heading) and block.level == 1]
    sheets = [title for title in chapters if "removal and fitting" in title]
    assert len(sheets) == len(conversion.positions)
    for at, block in enumerate(blocks):
        if isinstance(block, Heading) and block.text in sheets:
            assert isinstance(blocks[at - 1], PageBreak)
    assert isinstance(blocks[-1], CautionSheet)


def test_the_critical_path_is_told_without_color(bench: Workbench) -> None:
    conversion = conversion_of(bench, "conversion_assist")
    sequence = conversion.sequence
    assert sequence is not None
    drawings = gantt_drawings(sequence, bench.converting().words(SI))
    dots = sum(isinstance(shape, Dot) for drawing in drawings for shape in drawing.shapes)
    assert 0 < sum(task.critical for task in sequence.tasks) == dots < len(sequence.tasks)


def test_the_chart_names_the_year_from_which_nothing_is_added(bench: Workbench) -> None:
    # the recalled national table crosses the break-even share of efficiency 0.71, 0.9014, between 2017 and 2018
    conversion = conversion_of(bench, "conversion_assist")
    blocks = conversion_content(conversion, bench.converting().words(SI), CAUTIONS).blocks
    figures = [block for block in blocks if isinstance(block, Figure)]
    assert "from 2018 on" in figures[0].caption
    assert len(figures) >= 2  # the chart and the bars


def test_the_bars_show_every_task_once(bench: Workbench) -> None:
    conversion = conversion_of(bench, "conversion_assist")
    assert conversion.sequence is not None
    blocks = conversion_content(conversion, bench.converting().words(SI), CAUTIONS).blocks
    bars = [block.drawing for block in blocks if isinstance(block, Figure) and "Sheet" in block.caption]
    names = [
        shape.text for drawing in bars for shape in drawing.shapes if hasattr(shape, "anchor") and shape.at.x_m == 0.0
    ]
    assert len(names) == len(conversion.sequence.tasks)


def test_each_figure_of_the_emissions_carries_its_status(bench: Workbench) -> None:
    conversion = conversion_of(bench, "conversion_assist")
    assert conversion.emissions is not None
    blocks = conversion_content(conversion, bench.converting().words(SI), CAUTIONS).blocks
    tables = [block for block in blocks if isinstance(block, Table)]
    rows = {row.cells[0]: row.cells[-1] for table in tables for row in table.rows}
    for figure in conversion.emissions.figures:
        assert rows[figure.title]
    assert rows[conversion.emissions.figures[0].title].startswith("recalled")  # the constant 0.0777
    assert "equation 2" not in text_of(bench.converting().pdf(conversion, SI)).lower()


def test_the_same_conversion_gives_the_same_bytes(bench: Workbench) -> None:
    conversion = conversion_of(bench, "conversion_balance")
    service = bench.converting()
    again = service.convert(demo_survey("conversion_balance"))
    assert service.pdf(conversion, SI) == service.pdf(again, SI)
    assert service.pdf(conversion, SI) != service.pdf(conversion, US)


def test_us_units_are_not_mixed_with_si(bench: Workbench) -> None:
    text = text_of(bench.converting().pdf(conversion_of(bench, "conversion_assist"), US))
    text = text.partition("Caution sheet for the installer")[0]  # its texts quote what the sources print
    assert re.search(r"\d (kg|kPa|mm|mg/L)\b", text) is None


def test_text_of_the_survey_is_data_on_paper(bench: Workbench) -> None:
    survey = demo_survey("conversion_balance")
    site = survey.site.model_copy(update={"name": "A & B <Fuels>"})
    conversion = bench.converting().convert(survey.model_copy(update={"site": site}))
    assert "A & B <Fuels>" in text_of(bench.converting().pdf(conversion, SI))


# calendar


def unfolded(calendar: bytes) -> list[str]:
    """Read content lines as RFC 5545 section 3.1 says: CRLF ends a line, CRLF and a blank goes on with it."""
    text = calendar.decode("utf-8")
    assert text.endswith("\r\n")
    assert "\n" not in text.replace("\r\n", "")
    return text.replace("\r\n ", "").split("\r\n")[:-1]


def events(calendar: bytes) -> list[dict[str, str]]:
    found: list[dict[str, str]] = []
    for line in unfolded(calendar):
        name, _, value = line.partition(":")
        if line == "BEGIN:VEVENT":
            found.append({})
        elif found and line != "END:VEVENT":
            found[-1][name.partition(";")[0]] = value
    return found


def test_the_calendar_holds_one_event_for_each_task(bench: Workbench) -> None:
    conversion = conversion_of(bench, "conversion_assist")
    assert conversion.sequence is not None
    calendar = bench.converting().calendar(conversion, SI)
    lines = unfolded(calendar)
    assert lines[0] == "BEGIN:VCALENDAR"
    assert lines[-1] == "END:VCALENDAR"
    assert "VERSION:2.0" in lines  # RFC 5545 section 3.7.4
    found = events(calendar)
    assert len(found) == len(conversion.sequence.tasks)
    assert len({event["UID"] for event in found}) == len(found)
    assert all({"UID", "DTSTAMP", "DTSTART", "SUMMARY"} <= set(event) for event in found)  # section 3.6.1


def test_no_line_of_the_calendar_is_longer_than_75_octets(bench: Workbench) -> None:
    # RFC 5545 section 3.1: lines should not be longer than 75 octets, excluding the line break
    calendar = bench.converting().calendar(conversion_of(bench, "conversion_assist"), SI)
    assert max(len(line) for line in calendar.split(b"\r\n")) <= 75


def test_events_carry_the_times_of_their_tasks(bench: Workbench) -> None:
    conversion = conversion_of(bench, "conversion_assist")
    found = events(bench.converting().calendar(conversion, SI))
    first = next(event for event in found if event["SUMMARY"].endswith("Give notice"))
    assert datetime.strptime(first["DTSTART"], "%Y%m%dT%H%M%S").date() == date(2027, 3, 1)
    wait = next(event for event in found if "Wait for the notice" in event["SUMMARY"])
    assert (wait["DTSTART"], wait["DTEND"]) == ("20270301", "20270331")


def test_a_moved_plan_keeps_the_names_of_its_events(bench: Workbench) -> None:
    conversion = conversion_of(bench, "conversion_assist")
    assert conversion.sequence is not None
    later = replace(conversion, sequence=replace(conversion.sequence, first_day=date(2028, 1, 3)))
    service = bench.converting()
    names = [[event["UID"] for event in events(service.calendar(one, SI))] for one in (conversion, later)]
    assert names[0] == names[1]


def test_a_plan_without_dates_gives_no_calendar_and_says_what_is_missing(bench: Workbench) -> None:
    with pytest.raises(InputFault) as refused_calendar:
        bench.converting().calendar(conversion_of(bench, "conversion_balance"), SI)
    assert "start_date" in refused_calendar.value.problems[0].field


@given(st.text(alphabet=st.characters(exclude_categories=("Cs", "Cc")), max_size=300))
def test_folding_can_be_undone_and_cuts_no_character(text: str) -> None:
    raw = calendar_bytes(text, "test", ())
    assert all(len(part) <= 75 for part in raw.split(b"\r\n"))
    line = next(line for line in unfolded(raw) if line.startswith("X-WR-CALNAME:"))
    read = re.sub(r"\\([\\;,])", r"\1", line.partition(":")[2])  # RFC 5545 section 3.3.11
    assert read == text


def test_text_values_are_escaped_as_the_standard_says() -> None:
    # RFC 5545 section 3.3.11
    lines = unfolded(calendar_bytes("a\\b;c,d\ne\x07", "test", ()))
    assert "X-WR-CALNAME:a\\\\b\\;c\\,d\\ne" in lines
    lines = unfolded(calendar_bytes("BEGIN:VEVENT\r\nUID:x", "test", ()))
    assert "X-WR-CALNAME:BEGIN:VEVENT\\nUID:x" in lines


# words


def test_phrases_that_claim_or_lack_are_refused_with_every_fault() -> None:
    text = PHRASES.read_text(encoding="utf-8")
    broken = text.replace('decision = "Which way"', 'decision = "This conversion is approved"').replace(
        'hours = "{hours} h"', 'hours = "{minutes} h"'
    )
    with pytest.raises(InputFault) as refused_words:
        conversion_phrases_from_toml(broken, "en.toml")
    fields = {problem.field for problem in refused_words.value.problems}
    assert fields == {"sentences.decision", "sentences.hours"}


def test_every_sentence_of_the_list_is_written_and_used() -> None:
    phrases = conversion_phrases_from_toml(PHRASES.read_text(encoding="utf-8"), "en.toml")
    assert set(phrases.sentences) == set(SENTENCES)


def test_a_survey_without_answers_on_conversion_can_still_be_converted(bench: Workbench) -> None:
    survey: Survey = demo_survey("small_town")
    conversion = bench.converting().convert(survey)
    assert conversion.plan_complete
    assert b"%PDF" in bench.converting().pdf(conversion, SI)[:8]
