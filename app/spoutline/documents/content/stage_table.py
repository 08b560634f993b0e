"""The table of a stage of calculations: a column for each symbol, a line for each set of figures."""

from __future__ import annotations

from collections.abc import Iterator

from spoutline.documents.content.blocks import Column
from spoutline.documents.content.references import References
from spoutline.documents.content.worked_stages import Run, figures_of
from spoutline.explain.phrases.paper_words import PaperWord as Word
from spoutline.explain.plan.story import Story
from spoutline.model.quantity import Quantity

_HALF_SHEET = 53.0  # signs, of all columns with what is left between them
_BETWEEN = 1.8  # signs; what is left between two columns
_MOST_SIGNS = 37  # of a text in one line; longer ones go on in a second
_LEAST_SIGNS = 14
_TEXT_SIGNS = 78.0  # that a sheet has beside numbers and marks of groups, for figures and one text


Varying = tuple[frozenset[str], frozenset[str]]  # formulas whose notes, whose sources differ from line to line


def column_share(signs: int) -> float:
    """Return the share of a column whose cells are ``signs`` long."""
    return signs + _BETWEEN


class StageTable:
    """Columns and cells of the runs through one stage.

    A symbol that all runs have gets a column, unless its figure is the same in every line: that is told once.
    Figures whose symbols differ, like the parts of a sum, stand behind their symbols in one cell. Notes and sources
    stand in the lines for the formulas of which ``varying`` (notes, sources) says that they are not always the same;
    ``remark`` is the note that all lines here have nevertheless, empty where there is none.
    """

    def __init__(self, runs: tuple[Run, ...], varying: Varying, story: Story, references: References) -> None:
        self._story, self._references = story, references
        self._varying = varying
        notes = {self._note(run) for run in runs}
        self.remark = notes.pop() if len(runs) > 1 and len(notes) == 1 else ""
        self._notes = not self.remark and any(notes)
        self._sources = any(line.formula in varying[1] and line.source for run in runs for line in run)
        figures = [figures_of(run) for run in runs]
        shared = [name for name in figures[0] if all(name in one for one in figures)]
        same = [name for name in shared if len(runs) > 1 and len({one[name] for one in figures}) == 1]
        self._symbols = [name for name in shared if name not in same]
        self._named_beside = frozenset(shared)
        self._has_others = any(self._others(run, results=False) for run in runs)
        self._has_named_results = any(self._others(run, results=True) for run in runs)
        self._same = [figures[0][name] for name in same]
        self._cells = {run: tuple(self._made(run)) for run in runs}

    @property
    def in_every_line(self) -> str:
        """The figures that all lines share, as one text; empty where there are none."""
        if not self._same:
            return ""
        return self._story.phrases.fill("in_every_line", inputs=self._told(self._same))

    @property
    def columns(self) -> tuple[Column, ...]:
        """The columns of symbols, then those of other figures, notes and sources where there are any."""
        word = self._story.word
        symbols = [(self._story.symbol(name), True) for name in self._symbols]
        others = [(self._story.phrases.text["with_inputs"], True)] * self._has_others
        results = [(word(Word.VALUE), True)] * self._has_named_results
        notes = [(word(Word.REMARK), True)] * self._notes
        sources = [(word(Word.SOURCE), False)] * self._sources
        titles = [*symbols, *others, *results, *notes, *sources]
        widths = [max(map(len, cells)) for cells in zip(*self._cells.values(), strict=True)]
        spare = int(_TEXT_SIGNS - sum(map(column_share, widths[: len(symbols)])))
        most = min(max(spare, _LEAST_SIGNS), _MOST_SIGNS)
        widths = [width if at < len(symbols) else min(width, most) for at, width in enumerate(widths)]
        return tuple(
            Column(title, column_share(max(width, len(title))), formula=is_formula)
            for (title, is_formula), width in zip(titles, widths, strict=True)
        )

    def is_narrow_beside(self, taken: float) -> bool:
        """Say whether the columns take half a sheet at most, together with others of ``taken`` signs."""
        return sum(column.share for column in self.columns) + taken <= _HALF_SHEET

    def cells(self, run: Run) -> tuple[str, ...]:
        """Return the cells of a run under ``columns``."""
        return self._cells[run]

    def _made(self, run: Run) -> Iterator[str]:
        figures = figures_of(run)
        yield from (self._story.display.show_quantity(figures[name]) for name in self._symbols)
        if self._has_others:
            yield self._told(self._others(run, results=False))
        if self._has_named_results:
            yield self._told(self._others(run, results=True))
        if self._notes:
            yield self._note(run)
        if self._sources:
            own = (line for line in run if line.formula in self._varying[1])
            yield ", ".join(dict.fromkeys(self._references.of_text(line.source) for line in own))

    def _note(self, run: Run) -> str:
        own = (line for line in run if line.formula in self._varying[0] and line.note)
        return "; ".join(self._story.worked_line(line).note for line in own)

    def _others(self, run: Run, *, results: bool) -> list[Quantity]:
        """Return the results, or the figures that are none, of a run that have no column and are not in every line."""
        found = {line.result.name for line in run}
        return [
            figure
            for name, figure in figures_of(run).items()
            if name not in self._named_beside and (name in found) is results
        ]

    def _told(self, figures: list[Quantity]) -> str:
        shown = self._story.display.show_quantity
        return ", ".join(f"{self._story.symbol(figure.name)} = {shown(figure)}" for figure in figures)
