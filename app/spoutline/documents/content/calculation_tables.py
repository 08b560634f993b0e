"""Annex B of a bill with many unlike positions: each calculation told once, then a line for every set of figures."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator, Mapping, Sequence

from spoutline.documents.content.annex_marks import AnnexMarks
from spoutline.documents.content.blocks import (
    Block,
    Column,
    Columns,
    Derivation,
    Emphasis,
    Figure,
    Heading,
    NumberedLine,
    PageBreak,
    Paragraph,
    Role,
    Row,
    Table,
)
from spoutline.documents.content.references import References
from spoutline.documents.content.stage_table import StageTable, column_share
from spoutline.documents.content.worked_stages import Run, Stage, Stages, stage_of
from spoutline.documents.drawing.flow_chart import HALF_WIDTH, ChartedFlow, chart_of, charted_flow
from spoutline.documents.drawing.shapes import Drawing
from spoutline.explain.phrases.paper_words import PaperWord as Word
from spoutline.explain.plan.checks import check_limit, check_margin, check_value
from spoutline.explain.plan.story import Story
from spoutline.explain.plan.texts import WorkedText
from spoutline.explain.writing.numbering import number_ranges
from spoutline.model.check import Check, CheckId, Outcome, WorkedLine

_FORMULA_SIGN = "F"
_SIGNS_OF_NUMBER = 3
_MOST_SIGNS_OF_GROUPS = 18  # marks of groups beyond that go on in a second line
_LEAST_SIGNS_OF_GROUPS = 8  # beside many figures
_MANY_COLUMNS = 8


def calculation_table_blocks(marks: AnnexMarks, story: Story, references: References) -> Iterator[Block]:
    """Return the annex: the groups and their flow curves, then calculation by calculation formulas, lines, results."""
    curves = tuple(_flow_curves(marks, story))
    teller = _Teller(marks, story, references)
    calculations = [block for check_id in marks.calculations for block in teller.calculation(check_id)]
    yield PageBreak(unless_left=0.5)
    yield Heading(story.word(Word.ANNEX_CALCULATION), 1)
    yield Paragraph(story.word(Word.CALCULATION_TABLES_NOTE), Role.NOTE)
    yield _group_table(marks, story)
    yield from _list_table(marks, story)  # of all lists that are named anywhere, so they were named before
    yield from curves
    yield from calculations


def _group_table(marks: AnnexMarks, story: Story) -> Table:
    columns = (Column(story.word(Word.GROUP), 0.6), Column(story.word(Word.POSITIONS), 9.2))
    rows = []
    for number, like in enumerate(marks.groups):
        text, links = marks.groups_told((number,))
        labels = ", ".join(position.label for position in like.positions)
        rows.append(Row((text, labels), links=links))
    return Table(columns, tuple(rows), close=True)


def _list_table(marks: AnnexMarks, story: Story) -> Iterator[Block]:
    """Return the long lists of groups; nothing where there are none."""
    if not marks.lists:
        return
    yield Heading(story.word(Word.GROUP_LISTS), 2)
    yield Paragraph(story.word(Word.GROUP_LISTS_NOTE), Role.NOTE)
    columns = (Column(story.word(Word.GROUP_LIST), 0.6), Column(story.word(Word.GROUPS), 9.2))
    rows = (Row((one.mark, one.text), linked=1, links=one.links, anchor=one.anchor) for one in marks.lists)
    yield Table(columns, tuple(rows), close=True)


def _flow_curves(marks: AnnexMarks, story: Story) -> Iterator[Block]:
    """Return each flow curve once, two beside each other, with the groups that it holds for."""
    asked: dict[ChartedFlow, list[int]] = defaultdict(list)
    for number, like in enumerate(marks.groups):
        if (flow := charted_flow(like.plan)) is not None:
            asked[flow].append(number)
    curves: dict[Drawing, list[int]] = defaultdict(list)
    for flow, numbers in asked.items():
        if (chart := chart_of(flow, story, HALF_WIDTH)) is not None:
            curves[chart].extend(numbers)
    if not curves:
        return
    yield Heading(story.word(Word.FLOW_CURVE), 2)
    yield Paragraph(story.word(Word.FLOW_DESCRIPTION), Role.NOTE)
    figures = [Figure(chart, marks.groups_told(sorted(numbers))[0]) for chart, numbers in curves.items()]
    for at in range(0, len(figures), 2):
        yield Columns(tuple(figures[at : at + 1]), tuple(figures[at + 1 : at + 2]))


class _Teller:
    """Tells calculation after calculation; formulas and lines that were told before are referred to by number."""

    def __init__(self, marks: AnnexMarks, story: Story, references: References) -> None:
        self._marks, self._story, self._references = marks, story, references
        self._checks: dict[CheckId, list[tuple[int, Check]]] = defaultdict(list)
        for number, like in enumerate(marks.groups):
            for check in like.plan.chosen.checks if like.plan.chosen is not None else ():
                self._checks[check.id].append((number, check))
        told = [check.lines for found in self._checks.values() for _, check in found if check.lines]
        self._stages = Stages(dict.fromkeys(told), story.display.show_quantity)
        self._of_formula = _lines_of_formulas(told)
        self._varying = (
            frozenset(formula for formula, lines in self._of_formula.items() if len({one.note for one in lines}) > 1),
            frozenset(formula for formula, lines in self._of_formula.items() if len({one.source for one in lines}) > 1),
        )
        self._formulas: dict[str, int] = {}
        self._lines: dict[Run, int] = {}

    def calculation(self, check_id: CheckId) -> Iterator[Block]:
        """Yield a calculation: its stages in the order in which they are worked, then the results."""
        found = self._checks[check_id]
        anchor = self._marks.calculation_anchor(check_id)
        yield Heading(f"{self._marks.calculation(check_id)} {self._story.title(check_id)}", 2, anchor)
        for stage, runs in self._by_stage(found).items():
            yield from self._stage(stage, runs)
        yield self._results(found)

    def _by_stage(self, found: Sequence[tuple[int, Check]]) -> Mapping[Stage, Mapping[Run, list[int]]]:
        """Return the runs of a calculation by stage, each with the groups that it holds for."""
        by_stage: dict[Stage, dict[Run, list[int]]] = {}
        for number, check in found:
            for run in self._stages.runs(check.lines):
                by_stage.setdefault(stage_of(run), {}).setdefault(run, []).append(number)
        return by_stage

    def _stage(self, stage: Stage, runs: Mapping[Run, Sequence[int]]) -> Iterator[Block]:
        again = {run: numbers for run, numbers in runs.items() if run in self._lines}
        fresh = {run: numbers for run, numbers in runs.items() if run not in self._lines}
        derived = tuple(self._derived(formula) for formula in stage if formula not in self._formulas)
        if derived:
            yield Derivation(derived)
        if again:
            yield Paragraph(self._told_before(again), Role.NOTE)
        if fresh:
            table = StageTable(tuple(fresh), self._varying, self._story, self._references)
            numbers = number_ranges((self._formulas[formula] for formula in stage), _FORMULA_SIGN)
            named = "" if derived else self._story.phrases.fill("formulas_used", numbers=numbers)
            if note := " ".join(filter(None, (named, _closed(table.remark), table.in_every_line))):
                yield Paragraph(note, Role.NOTE, formula=True)
            yield self._table(table, fresh)

    def _derived(self, formula: str) -> NumberedLine:
        number = self._formulas[formula] = len(self._formulas) + 1
        notes, sources = self._varying
        line = self._of_formula[formula][0]
        text = self._story.worked_line(line)
        note = "" if formula in notes else text.note
        told = WorkedText(formula=text.formula, inputs="", result="", source="", note=note)
        mark = "" if formula in sources else self._references.of_text(line.source)
        return NumberedLine(f"{_FORMULA_SIGN}{number}", told, mark)

    def _told_before(self, again: Mapping[Run, Sequence[int]]) -> str:
        by_groups: dict[str, list[int]] = defaultdict(list)
        for run, numbers in again.items():
            by_groups[self._marks.groups_told(numbers)[0]].append(self._lines[run])
        lines = ", ".join(f"{number_ranges(lines)} ({groups})" for groups, lines in by_groups.items())
        return self._story.phrases.fill("lines_again_for", lines=lines)

    def _table(self, table: StageTable, runs: Mapping[Run, Sequence[int]]) -> Table:
        rows = []
        for run, groups in runs.items():
            number = self._lines[run] = len(self._lines) + 1
            # no links: they stand in the results below, and thousands of them would make up half of the file
            rows.append(Row((str(number), self._marks.groups_told(groups)[0], *table.cells(run))))
        most = _MOST_SIGNS_OF_GROUPS if len(table.columns) < _MANY_COLUMNS else _LEAST_SIGNS_OF_GROUPS
        longest = min(max(len(row.cells[1]) for row in rows), most)
        columns = (
            Column(self._story.word(Word.NUMBER), column_share(_SIGNS_OF_NUMBER)),
            Column(self._story.word(Word.HOLDS_FOR), column_share(longest)),
        )
        return Table(
            (*columns, *table.columns),
            tuple(rows),
            close=True,
            folded=table.is_narrow_beside(sum(column.share for column in columns)),
        )

    def _results(self, found: Sequence[tuple[int, Check]]) -> Table:
        story = self._story
        columns = (
            Column(story.word(Word.HOLDS_FOR), 1.7),
            Column(story.word(Word.VALUE), 2.6),
            Column(story.word(Word.LIMIT), 2.4),
            Column(story.word(Word.MARGIN), 1.5),
            Column(story.word(Word.OUTCOME), 1.8),
            Column(story.word(Word.SOURCE), 0.9),
        )
        results: dict[tuple[str, ...], list[int]] = defaultdict(list)
        faults: set[tuple[str, ...]] = set()
        for number, check in found:
            figures = check_value(check, story), check_limit(check, story), check_margin(check, story)
            source = self._references.of_bounds((check.lower, check.upper))
            told = (*figures, story.marked_outcome(check), source)
            results[told].append(number)
            if check.outcome in (Outcome.FAILS, Outcome.UNKNOWN):
                faults.add(told)
        rows = []
        for cells, groups in results.items():
            holding, links = self._marks.groups_told(groups)
            emphasis = Emphasis.FAULT if cells in faults else Emphasis.NONE
            rows.append(Row((holding, *cells), emphasis, links=links))
        return Table(columns, tuple(rows), close=True, whole=True)


def _closed(remark: str) -> str:
    return f"{remark.removesuffix('.')}." if remark else ""


def _lines_of_formulas(told: Sequence[Sequence[WorkedLine]]) -> Mapping[str, Sequence[WorkedLine]]:
    found: dict[str, list[WorkedLine]] = defaultdict(list)
    for lines in told:
        for line in lines:
            found[line.formula].append(line)
    return found
