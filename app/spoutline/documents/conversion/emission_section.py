"""What the conversion does to emissions: chart, years, worked lines, sensitivity, every figure with its status."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from spoutline.documents.content.blocks import (
    Alignment,
    Block,
    Bullets,
    Column,
    Emphasis,
    Figure,
    Heading,
    PageBreak,
    Paragraph,
    Role,
    Row,
    Table,
    Worked,
)
from spoutline.documents.conversion.emission_chart import emission_chart
from spoutline.explain.conversion.story import ConversionStory
from spoutline.explain.phrases.paper_words import PaperWord
from spoutline.explain.plan.texts import WorkedText
from spoutline.model.conversion import SiteConversion
from spoutline.model.emission_sheet import EmissionSheet, EmissionYear, SensitivityRow
from spoutline.model.limit import LimitStatus
from spoutline.model.quantity import Dimension

_READ = (LimitStatus.VERIFIED, LimitStatus.SECONDARY)
_DIMENSION_OF = {
    "vapour_pressure": Dimension.PRESSURE,
    "ambient": Dimension.TEMPERATURE,
    "throughput": Dimension.VOLUME,
}


def emission_blocks(conversion: SiteConversion, words: ConversionStory) -> Iterator[Block]:
    """Return the chapter on emissions; nothing where recovery stays as it is."""
    sheet = conversion.emissions
    if sheet is None:
        return
    opening: list[Block] = [
        Heading(words.say("emissions"), 1),
        Paragraph(words.say("emissions_lead" if sheet.removing else "emissions_lead_adding"), Role.LEAD),
    ]
    if sheet.gaps:
        opening.append(Bullets(tuple(words.word(gap) for gap in sheet.gaps)))
    chart = emission_chart(sheet, words)
    if chart is not None:
        opening.append(Figure(chart, chart.description))
    yield PageBreak(opening=len(opening))
    yield from opening
    yield Paragraph(words.say("shares_from", source=words.story.cited(sheet.shares_source)), Role.NOTE)
    yield Heading(words.say("year_table"), 2)
    yield _year_table(sheet, words)
    yield Paragraph(words.say("year_note"), Role.NOTE)
    yield from _worked(sheet, conversion, words)
    if sheet.sensitivity:
        yield Heading(words.say("sensitivity"), 2)
        yield _sensitivity_table(sheet, words)
        yield Paragraph(words.say("sensitivity_note"), Role.NOTE)
    yield Heading(words.say("figures"), 2)
    yield _figure_table(sheet, words)


def _year_table(sheet: EmissionSheet, words: ConversionStory) -> Table:
    columns = (
        Column(words.say("year"), 0.7),
        Column(words.say("onboard_share"), 1.1, Alignment.RIGHT),
        Column(words.say("share_origin"), 2.5),
        Column(words.say("increment"), 1.1, Alignment.RIGHT),
        Column(words.say("displacement"), 1.25, Alignment.RIGHT),
        Column(words.say("spillage"), 1.2, Alignment.RIGHT),
        Column(words.say("permeation"), 1.2, Alignment.RIGHT),
        Column(words.say("total"), 1.2, Alignment.RIGHT),
    )
    return Table(columns, tuple(_year_row(one, sheet, words) for one in sheet.years))


def _year_row(one: EmissionYear, sheet: EmissionSheet, words: ConversionStory) -> Row:
    balanced = sheet.reference_year is not None and one.year >= sheet.reference_year
    masses = (one.displacement_kg, one.spillage_kg, one.permeation_kg, one.total_kg)
    cells = (
        str(one.year),
        words.percent(one.onboard_share),
        words.word(one.origin),
        words.signed_percent(one.increment),
        *(words.mass(mass) if balanced else "" for mass in masses),
    )
    return Row(cells, Emphasis.TOTAL if one.year == sheet.crossing_year else Emphasis.NONE)


def _worked(sheet: EmissionSheet, conversion: SiteConversion, words: ConversionStory) -> Iterator[Block]:
    basis = words.word(conversion.survey.conversion.emissions.basis)
    year = sheet.reference_year if sheet.reference_year is not None else "–"
    lines = (sheet.break_even, *sheet.lines)
    yield Heading(words.say("worked"), 2)
    yield Worked(
        title=words.say("worked_title", year=year),
        outcome=basis,
        lines=tuple(_cited(words.story.worked_line(line), words) for line in lines),
        limit=words.say("worked_note"),
        sources=(),
    )


def _sensitivity_table(sheet: EmissionSheet, words: ConversionStory) -> Table:
    columns = (
        Column(words.say("input"), 2.4),
        Column(words.say("low_high"), 2.0),
        Column(words.say("increment"), 1.8),
        Column(words.say("change"), 2.0),
        Column(words.say("crossing"), 1.2),
        Column(words.story.word(PaperWord.SOURCE), 2.4),
    )
    return Table(columns, tuple(_sensitivity_row(row, words) for row in sheet.sensitivity))


def _sensitivity_row(row: SensitivityRow, words: ConversionStory) -> Row:
    dimension = _DIMENSION_OF.get(row.input_name)

    def shown(value: float) -> str:
        if dimension is Dimension.VOLUME:
            return words.volume(value)
        if dimension is not None:
            return words.story.show(value, dimension)
        return (
            words.story.writing.figure(f"{value:.4g}")
            if row.input_name == "compatibility_slope"
            else words.percent(value)
        )

    def crossing(year: int | None) -> str:
        return words.say("never") if year is None else str(year)

    cells = (
        words.say(f"input_{row.input_name}"),
        f"{shown(row.low)} / {shown(row.high)}",
        f"{words.signed_percent(row.increment_low)} / {words.signed_percent(row.increment_high)}",
        f"{words.mass(row.change_low_kg)} / {words.mass(row.change_high_kg)}",
        f"{crossing(row.crossing_low)} / {crossing(row.crossing_high)}",
        words.story.cited(row.source),
    )
    return Row(cells)


def _figure_table(sheet: EmissionSheet, words: ConversionStory) -> Table:
    columns = (
        Column(words.say("figure"), 3.2),
        Column(words.story.word(PaperWord.VALUE), 1.4, Alignment.RIGHT),
        Column(words.story.word(PaperWord.SOURCE), 3.4),
        Column(words.story.word(PaperWord.LIMIT_STATUS), 1.6),
    )
    rows = tuple(
        Row(
            (
                words.story.phrases.tell(figure.title),
                words.published(figure),
                f"{figure.source}, {figure.clause} ({figure.edition})",
                words.story.limit_status(figure.status),
            ),
            Emphasis.NONE if figure.status in _READ else Emphasis.FAULT,
        )
        for figure in sheet.figures
    )
    return Table(columns, rows)


def _cited(line: WorkedText, words: ConversionStory) -> WorkedText:
    """Return a worked line with its source as the paper's language cites it."""
    return replace(line, source=words.story.cited(line.source))
