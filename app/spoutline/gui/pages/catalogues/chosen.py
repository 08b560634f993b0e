"""The edition that the keeper has in hand, shared by the panels of the page."""

from __future__ import annotations

from dataclasses import dataclass

from spoutline.gui.jobs import JobKey, JobKind
from spoutline.gui.models.catalogue_rows import EditionRow

SHELF = JobKey(JobKind.CATALOGUE, "shelf")
STEP = JobKey(JobKind.CATALOGUE, "step")
FIND = JobKey(JobKind.CATALOGUE, "find")
DIFFERENCE = JobKey(JobKind.CATALOGUE, "difference")
EFFECT = JobKey(JobKind.CATALOGUE, "effect")
SURVEYS = JobKey(JobKind.CATALOGUE, "surveys")
REFERENCES = JobKey(JobKind.CATALOGUE, "references")
HEALTH = JobKey(JobKind.CATALOGUE, "health")
COVER = JobKey(JobKind.CATALOGUE, "cover")
COVERED = JobKey(JobKind.CATALOGUE, "covered")
PRICE = JobKey(JobKind.CATALOGUE, "price")
PRICE_LISTS = JobKey(JobKind.CATALOGUE, "price lists")
FILE = JobKey(JobKind.FILE, "catalogue")


@dataclass(slots=True)
class InHand:
    """What the panels work on; None before the catalogues of the book were read."""

    row: EditionRow | None = None
    rows: tuple[EditionRow, ...] = ()  # every draft and edition of the book

    @property
    def draft_name(self) -> str:
        """The catalogue whose draft can be written to; empty where there is none."""
        return "" if self.row is None or self.row.facts.is_demonstration else self.row.facts.name
