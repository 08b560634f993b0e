"""A table of positions taken into a survey: every row a new position or other answers of one that is there."""

from __future__ import annotations

import difflib
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import field, replace
from functools import cache
from typing import Any

from pydantic import ValidationError

from spoutline.book.survey_faults import problems_of
from spoutline.frozen import frozen
from spoutline.input_bounds.bounds import BOUNDS
from spoutline.model.answered import answers_of
from spoutline.model.dispenser_type import folded_type_name, with_type
from spoutline.model.faults import InputFault, InputNote, InputProblem
from spoutline.model.liquid import LiquidFamily
from spoutline.model.survey import DispenserType, Position, Survey
from spoutline.model.worded import Worded
from spoutline.planning.survey_import.cells import cell_value
from spoutline.planning.survey_import.fields import BY_KEY as QUESTIONS
from spoutline.planning.survey_import.ports import outlet_notes, settle_outlet
from spoutline.planning.survey_import.words import blend_named, put_value
from spoutline.planning.table_intake.cell_values import FaultKind
from spoutline.planning.table_intake.draft_changes import DraftChanges, row_changes
from spoutline.planning.table_intake.intake import CellReport, Intake, IntakeReport, PartLine, Progress, Seen
from spoutline.planning.table_intake.intake_fields import DISPENSER_TYPE
from spoutline.planning.table_intake.into_draft import OpenedTable, TableResult, report_of_row

_LIQUID, _BLEND, _LABEL, _DISPENSER = "liquid.family", "liquid.blend_percent", "label", "dispenser"


@frozen(kw_only=True)
class IntoSurvey:
    """Where the rows of a table go.

    ``survey`` holds positions that a row with their label changes; None where the table is all there is. ``template``
    answers what a row of a new position leaves out. ``types`` are the dispenser types that rows may name, by their
    folded names.
    """

    survey: Survey | None = None
    template: Position | None = None
    types: Mapping[str, DispenserType] = field(default_factory=dict)
    take_out_missing: bool = False

    def there(self) -> dict[str, Position]:
        """Return the positions that are there, by label."""
        return {} if self.survey is None else {one.label: one for one in self.survey.positions}


@frozen
class PositionsRead:
    """The positions after a table: those that were there, in their order, then new ones; of no use where not sound.

    ``notes`` tell how sizes were understood and which paths do not go with their thread.
    """

    result: TableResult
    positions: tuple[Position, ...]
    notes: tuple[InputNote, ...]

    @property
    def report(self) -> IntakeReport:
        """What was seen on the way."""
        return self.result.report

    def survey(self, before: Survey) -> Survey:
        """Return the survey with these positions; raise ``InputFault`` where they do not hold together."""
        try:
            return Survey(site=before.site, positions=self.positions, conversion=before.conversion)
        except ValidationError as fault:
            place = self.result.opened.table.place
            told = [str(one.get("ctx", {}).get("error", one["msg"])) for one in fault.errors(include_url=False)]
            raise InputFault(tuple(InputProblem(place, "positions", "these rows", words) for words in told)) from fault


def read_positions(
    into: IntoSurvey, opened: OpenedTable, progress: Progress | None = None, *, seen: Seen | None = None
) -> PositionsRead:
    """Return the positions that a table makes of a survey.

    An empty cell leaves the answer that is there, the template's, the dispenser type's, or the usual one. A type that a
    row names holds for all rows of its dispenser.

    Raises
    ------
    InputFault
        No column says what positions are called or sell, or there are far more rows than a survey has positions.
    Stopped
        The progress asked to stop.
    """
    return _Reader(into, opened, progress, seen).read()


class _Reader:
    """Walks the table to its end and gathers every report."""

    def __init__(self, into: IntoSurvey, opened: OpenedTable, progress: Progress | None, seen: Seen | None) -> None:
        self._into, self._opened = into, opened
        self._there = into.there()
        self._intake = Intake(
            opened.table,
            opened.headings,
            opened.mapping,
            opened.table_map,
            progress,
            seen=seen,
            alone_is_row=lambda text: into.template is not None or text in self._there,
        )
        self._report = self._intake.report
        self._columns = {one.field.key: one.place for one in opened.mapping if one.field is not None}
        self._notes: list[InputNote] = []

    def read(self) -> PositionsRead:
        """Return what the table makes."""
        lines = []
        for line in self._intake.lines():
            lines.append(line)
            if len(lines) > BOUNDS.table_rows:
                wanted = Worded(
                    "a survey has far fewer positions; at most {most} rows are read", most=BOUNDS.table_rows
                )
                raise InputFault((InputProblem(self._opened.table.place, "rows", str(len(lines)), wanted),))
        self._check_columns(lines)
        types = self._types_by_dispenser(lines)
        found: dict[str, tuple[int, Position]] = {}
        for line in lines:
            position = self._position(line, types) if line.is_sound else None
            if position is not None:
                found[position.label] = line.row, position
        self._report.reports.sort(key=lambda one: one.row)
        gone = [label for label in self._there if label not in found] if self._into.survey is not None else []
        kept = [
            found[label][1] if label in found else one
            for label, one in self._there.items()
            if label in found or not self._into.take_out_missing
        ]
        made = [one for label, (_, one) in found.items() if label not in self._there]
        return PositionsRead(
            TableResult(self._opened, self._report, self._changes(found, gone)), (*kept, *made), tuple(self._notes)
        )

    def _check_columns(self, lines: Sequence[PartLine]) -> None:
        """Refuse a mapping that would leave a liquid to a guess; the blend is asked for row by row."""
        new = [line for line in lines if line.number not in self._there]
        if self._into.template is not None or not new:
            return
        needed = []
        if _LIQUID not in self._columns:
            needed.append((_LIQUID, "what each position sells"))
        elif _BLEND not in self._columns and not any(blend_named(line.texts.get(_LIQUID, "")) for line in lines):
            needed.append((_BLEND, "how much blend is in it"))
        if needed:
            place = self._opened.table.place
            raise InputFault(
                tuple(
                    InputProblem(
                        place,
                        Worded("mapping, {key}", key=key),
                        "nothing",
                        Worded("map one column to {key}, {words}", key=key, words=words),
                    )
                    for key, words in needed
                )
            )

    def _types_by_dispenser(self, lines: Sequence[PartLine]) -> dict[str, DispenserType]:
        """Return the type that rows name for each dispenser; one that is unknown or contradicted is a fault."""
        found: dict[str, tuple[DispenserType, int]] = {}
        known = {**self._into.types}
        for one in self._there.values():
            if one.dispenser_type is not None:
                known.setdefault(folded_type_name(one.dispenser_type.name), one.dispenser_type)
        for line in lines:
            name = str(line.values.get(DISPENSER_TYPE, ""))
            if not name:
                continue
            kind = known.get(folded_type_name(name))
            if kind is None:
                self._tell_unknown_type(line, name, known)
                continue
            first, row = found.setdefault(self._dispenser(line), (kind, line.row))
            if first.name != kind.name:
                wanted = Worded(
                    "row {row} says that this dispenser is a {first_name}; let both say the same",
                    row=row,
                    first_name=first.name,
                )
                self._tell(line.row, DISPENSER_TYPE, name, wanted)
        return {dispenser: kind for dispenser, (kind, _row) in found.items()}

    def _tell_unknown_type(self, line: PartLine, name: str, known: Mapping[str, DispenserType]) -> None:
        near = difflib.get_close_matches(folded_type_name(name), known, 1, 0.5)
        nearest = known[near[0]].name if near else ""
        hint = Worded("did you mean {nearest}? ", nearest=nearest) if nearest else ""
        names = ", ".join(sorted(one.name for one in known.values())[:20])
        told = Worded("{hint}use a dispenser type of the book: {names}", hint=hint, names=names or "it has none yet")
        base = report_of_row(self._opened, line.row, DISPENSER_TYPE, name, told)
        self._report.add(replace(base, nearest=nearest, word=name))

    def _dispenser(self, line: PartLine) -> str:
        base = self._there.get(line.number) or self._into.template
        return str(line.values.get(_DISPENSER, base.dispenser if base is not None else ""))

    def _position(self, line: PartLine, types: Mapping[str, DispenserType]) -> Position | None:
        """Return the position of a row; None where something is wrong in it."""
        before = self._report.faults + self._report.questions
        base = self._there.get(line.number) or self._into.template
        kind = types.get(self._dispenser(line))
        try:
            if base is not None and kind is not None:
                base = with_type(base, kind)
            document: dict[str, Any] = {} if base is None else answers_of(base, mode="json")
            if base is None and kind is not None:
                document["dispenser_type"] = answers_of(kind, mode="json")
            self._put(document, line)
            self._take_blend(document, line, has_base=base is not None)
            if self._report.faults + self._report.questions > before:
                return None
            settle_outlet(document, line.texts)
            position = Position.model_validate(document)
        except ValidationError as fault:
            self._tell_faults(line, fault)
            return None
        self._notes.extend(
            InputNote(self._opened.table.address(line.row, self._columns[one.field]), one.field, one.value, one.told)
            for one in outlet_notes(position.outlet, {key: text for key, text in line.texts.items() if text})
            if one.field in self._columns
        )
        return position

    def _put(self, document: dict[str, Any], line: PartLine) -> None:
        document[_LABEL] = self._opened.plain(line.number)
        for key, value in line.values.items():
            if key == DISPENSER_TYPE:
                continue
            stored = self._opened.plain(value) if isinstance(value, str) else value
            put_value(document, QUESTIONS[key].path, round(stored, 9) if isinstance(stored, float) else stored)

    def _take_blend(self, document: dict[str, Any], line: PartLine, *, has_base: bool) -> None:
        """Take the blend from a liquid written as E85 or B20; an empty cell must not read as none."""
        text = line.texts.get(_LIQUID, "")
        named, said = blend_named(text), line.values.get(_BLEND)
        if named is not None and said is None:
            put_value(document, QUESTIONS[_BLEND].path, named)
        elif named is not None and said != named:
            wanted = Worded("{text} says {named:g} %; let both say the same", text=text, named=named)
            self._tell(line.row, _BLEND, line.texts.get(_BLEND, ""), wanted)
        elif said is None and not has_base and line.values.get(_LIQUID) != LiquidFamily.DEF:
            if _LIQUID not in line.values:
                self._ask(line.row, _LIQUID, "write what the position sells, such as gasoline or E10, or skip the row")
            else:
                self._ask(line.row, _BLEND, "write the percentage of ethanol or biodiesel, 0 for none")

    def _tell_faults(self, line: PartLine, fault: ValidationError) -> None:
        for one in problems_of(fault, Position, "", whole="row"):
            # a rule over several fields is told at the first of them that has a column
            key = one.field if one.field in self._columns else ""
            key = key or next((name for name in self._columns if name.startswith(one.field)), "")
            root = one.field.partition(".")[0]  # the blend of E850 stands in the column of liquids
            key = key or next((name for name in self._columns if name.partition(".")[0] == root), _LABEL)
            text = line.number if key == _LABEL else line.texts.get(key, one.value)
            self._tell(line.row, key, text, one.wanted)

    def _tell(self, row: int, key: str, text: str, wanted: str) -> None:
        self._report.add(report_of_row(self._opened, row, key, text, wanted))

    def _ask(self, row: int, key: str, wanted: str) -> None:
        column = key if key in self._columns else _LIQUID
        asked: CellReport = replace(
            report_of_row(self._opened, row, column, "", wanted), kind=FaultKind.QUESTION, field=key
        )
        self._report.add(asked)

    def _changes(self, found: Mapping[str, tuple[int, Position]], gone: Sequence[str]) -> DraftChanges:
        def rows() -> Iterator[tuple[int, str, Mapping[str, str] | None, Mapping[str, str]]]:
            for label, (row, position) in found.items():
                before = self._there.get(label)
                usual = _texts(_blank(position)) if before is None else {}
                after = _texts(position)
                if before is None:
                    after = {key: text for key, text in after.items() if usual.get(key) != text}
                yield row, label, None if before is None else _texts(before), after

        return row_changes(rows(), gone)


def _blank(position: Position) -> Position:
    """Return a position of this label of which nothing was said."""
    return _usual().model_copy(update={"label": position.label})


@cache
def _usual() -> Position:
    return Position(label="x")


def _texts(position: Position) -> dict[str, str]:
    """Return the answers of a position as the survey keeps them, by key; what nobody answered shows its usual value."""
    texts = {}
    for key, question in QUESTIONS.items():
        value = cell_value(position, question)
        if value is None or value == "" or key == _LABEL:
            continue
        number = f"{value:.9g}" if isinstance(value, float) else str(value)
        texts[key] = ("yes" if value else "no") if isinstance(value, bool) else number
    if position.dispenser_type is not None:
        texts[DISPENSER_TYPE] = position.dispenser_type.name
    return texts
