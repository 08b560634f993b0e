"""One question about the conversion of a site, as a row of the tables of questions."""

from __future__ import annotations

from spoutline.gui.edits.question import Entry, Question, Step


def conversion_question(  # noqa: PLR0917  (the columns of the tables of questions)
    path: str, group: str, title: str, help_text: str, source: str, entry: Entry, **more: object
) -> Question:
    """Return a question of the conversion page; ``path`` names the field, its parts separated by dots."""
    return Question(
        path=tuple(path.split(".")),
        step=Step.CONVERSION,
        group=group,
        title=title,
        help=help_text,
        source=source,
        entry=entry,
        **more,  # type: ignore[arg-type]
    )
