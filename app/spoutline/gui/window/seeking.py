"""What the one search offers of the window and its book, and how each of it is gone to."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import TYPE_CHECKING

from spoutline.frozen import frozen
from spoutline.gui.actions import ACTIONS, ActionId
from spoutline.gui.jobs import JobKey, JobKind, Ticket
from spoutline.gui.models.command_search import Found, FoundKind
from spoutline.gui.waiting import wait_for
from spoutline.gui.wording import tr
from spoutline.model.faults import InputFault, StoreFault

if TYPE_CHECKING:
    from spoutline.book.quotation_records import QuotationEntry
    from spoutline.book.records import StoredSurvey, SurveyEntry
    from spoutline.gui.window.main_window import MainWindow
    from spoutline.gui.window.workplace import Workplace
    from spoutline.model.part import Part

_SEEK = JobKey(JobKind.COMMAND_SEARCH)
_MOST = 8
_LEAST_LETTERS = 2  # a single letter is in every part


@frozen
class Leading:
    """What leads to where a person wants to go: a command, another survey, pages of help and words of the trade."""

    do: Callable[[ActionId], object]
    turn_to: Callable[[StoredSurvey | None], object]
    help_found: Callable[[], tuple[Found, ...]]


class Seeking:
    """Gathers what can be gone to when the search is opened, and asks the book while a person types."""

    def __init__(self, window: MainWindow, workplace: Workplace, leading: Leading) -> None:
        self._window, self._workplace, self._leading = window, workplace, leading

    def ask(self) -> None:
        """Let a person search, and go to what was chosen."""
        from spoutline.gui.dialogs.command_search import CommandSearchDialog

        dialog = CommandSearchDialog(self.offered(), self.seek, self._window)
        dialog.exec()
        self._window.jobs.cancel(_SEEK)
        chosen = dialog.chosen
        dialog.deleteLater()
        if chosen is not None:
            chosen.go()

    def offered(self) -> tuple[Found, ...]:
        """Return what is known without asking: commands that can be given, positions, pages of help."""
        return (*self._commands(), *self._positions(), *self._leading.help_found())

    def seek(self, text: str, take: Callable[[Sequence[Found]], None]) -> None:
        """Ask the book for surveys, quotations and parts, off the window's thread; what cannot be read is left out."""
        session = self._workplace.session
        workbench, survey, words = session.workbench, session.survey, text.strip()

        def work(_: Ticket) -> tuple[tuple[SurveyEntry, ...], tuple[QuotationEntry, ...], tuple[Part, ...]]:
            wanted = words.casefold()
            surveys = tuple(one for one in workbench.book().entries() if wanted in one.name.casefold())[:_MOST]
            quotations = workbench.quoting().life().quotations(words)[:_MOST]
            is_long = len(words) >= _LEAST_LETTERS
            parts = workbench.parts().search(words, None, _MOST, survey=survey) if is_long else ()
            return surveys, quotations, parts

        def show(found: tuple[tuple[SurveyEntry, ...], tuple[QuotationEntry, ...], tuple[Part, ...]]) -> None:
            surveys, quotations, parts = found
            take((*map(self._survey, surveys), *map(self._quotation, quotations), *map(self._part, parts)))

        self._window.jobs.start(_SEEK, work, show, lambda _: take(()), priority=30)

    def _commands(self) -> list[Found]:
        return [
            Found(
                kind=FoundKind.COMMAND,
                title=tr(record.title).replace("&", "").rstrip("…"),
                told=tr(record.hint),
                keys=record.keys,
                go=self._doer(record.id),
            )
            for record in ACTIONS
            if record.id is not ActionId.SEARCH and self._window.actions_by_id[record.id].isEnabled()
        ]

    def _doer(self, action: ActionId) -> Callable[[], object]:
        return lambda: self._leading.do(action)

    def _positions(self) -> list[Found]:
        survey = self._workplace.session.survey
        return [
            Found(
                kind=FoundKind.POSITION,
                title=one.label,
                told=tr("Dispenser {0}").format(one.dispenser),
                go=self._turner(one.label),
            )
            for one in survey.positions
        ]

    def _turner(self, label: str) -> Callable[[], object]:
        def turn() -> None:
            self._workplace.session.look_at(label)
            self._workplace.show_walk()

        return turn

    def _survey(self, entry: SurveyEntry) -> Found:
        def go() -> None:
            session = self._workplace.session
            if entry.id == session.stored.id:
                self._workplace.show_walk()
                return
            try:
                self._leading.turn_to(wait_for(lambda: session.workbench.book().stored(entry.id)))
            except (InputFault, StoreFault) as fault:
                self._window.show_trouble(str(fault))

        return Found(kind=FoundKind.SURVEY, title=entry.name, told=tr("Survey of the book"), go=go)

    def _quotation(self, entry: QuotationEntry) -> Found:
        def go() -> None:
            self._workplace.show_quotations()
            self._workplace.quotation_page.look_at(entry.id)

        told = ", ".join(one for one in (entry.customer, entry.site) if one)
        return Found(kind=FoundKind.QUOTATION, title=entry.number, told=told, go=go)

    def _part(self, part: Part) -> Found:
        def go() -> None:
            self._workplace.show_part_question()
            self._workplace.set_page.why_not.ask_about(part.ref)

        return Found(kind=FoundKind.PART, title=part.number, told=f"{part.maker}: {part.name}", go=go)
