"""Three jobs in pictures: what a distributor, a station owner and an installer do here, one after the other."""

from __future__ import annotations

from PySide6.QtWidgets import QStackedWidget, QVBoxLayout, QWidget

from spoutline.frozen import frozen
from spoutline.gui.dialogs.form import FormDialog
from spoutline.gui.widgets.cards import plain_label
from spoutline.gui.widgets.picture import Picture
from spoutline.gui.widgets.step_rail import StepRail
from spoutline.gui.wording import tr


@frozen(kw_only=True)
class Job:
    """One job: its short name, whose it is, its picture and its steps."""

    title: str
    lead: str
    picture: str
    steps: tuple[str, ...]


def _jobs() -> tuple[Job, ...]:
    return (
        Job(
            title=tr("Quote"),
            lead=tr("A distributor quotes a refit"),
            picture="quote",
            steps=(
                tr("Survey: say for each position what flows, what it serves, and how far it has to reach."),
                tr("Parts list: a set for each position that fits together, with its price and its reasons."),
                tr("Quotation: on your terms, drafted, issued and answered. An accepted one agrees its sets."),
            ),
        ),
        Job(
            title=tr("Convert"),
            lead=tr("A station owner plans a conversion"),
            picture="convert",
            steps=(
                tr("Survey: say what hangs there today and what is wanted, above all for vapor."),
                tr("Conversion: compare the ways, with what stays, goes and comes, their cost and their emissions."),
                tr("Agree on one way; save its report and the calendar of its steps."),
            ),
        ),
        Job(
            title=tr("Install"),
            lead=tr("An installer prints the work"),
            picture="install",
            steps=(
                tr("Installer's work: a loading list, a sheet for each position, and the caution sheet to sign."),
                tr("At the dispenser: hang the set, measure, and fill the form."),
                tr("Read the form back: what hangs there is as built, and inspections fall due from then on."),
            ),
        ),
    )


class TourDialog(FormDialog):
    """One page a job; steps along the head lead to each, *Next* through all of them."""

    help_topic = "first_steps"

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(tr("Three jobs in pictures"), parent)
        jobs = _jobs()
        self.rail = StepRail(tuple(job.title for job in jobs), self)
        self.rail.chosen.connect(self.show_job)
        self.body.addWidget(self.rail)
        self.pages = QStackedWidget(self)
        for job in jobs:
            self.pages.addWidget(_page(job))
        self.body.addWidget(self.pages, 1)
        hint = tr("The bar above each page leads through these places and says where each stands.")
        self.body.addWidget(plain_label(hint, "quiet", wraps=True))
        self.next_button = self.add_buttons(tr("&Next"))
        self.resize(680, 480)
        self.show_job(0)

    def show_job(self, place: int) -> None:
        """Bring a job into view."""
        self.pages.setCurrentIndex(place)
        self.rail.show_place(place)
        is_last = place == self.pages.count() - 1
        self.next_button.setText(tr("&Begin") if is_last else tr("&Next"))

    def accept(self) -> None:
        """Go on to the next job; after the last one close."""
        if self.pages.currentIndex() < self.pages.count() - 1:
            self.show_job(self.pages.currentIndex() + 1)
        else:
            super().accept()


def _page(job: Job) -> QWidget:
    page = QWidget()
    column = QVBoxLayout(page)
    column.setContentsMargins(0, 6, 0, 0)
    column.addWidget(plain_label(job.lead, "siteTitle", wraps=True))
    column.addWidget(Picture(job.picture, job.lead, page), 1)
    for number, step in enumerate(job.steps, start=1):
        column.addWidget(plain_label(f"{number}.  {step}", wraps=True))
    return page
