"""What a field of the survey or of the terms is called where it is told by its path: the title of what asks for it.

What asks is loaded with the first field that is told: the start of the window tells none.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from functools import cache

from spoutline.explain.phrases.field_words import PARTED, bare_path, field_called
from spoutline.frozen import frozen
from spoutline.gui.edits.question import Question
from spoutline.gui.wording import tr


@frozen(kw_only=True)
class _Asking:
    """What asks for a field, in English: the group it stands in, empty for none, and its title."""

    group: str = ""
    title: str


def position_field(path: str) -> str:
    """Return what a field of a position is called in the language of the window."""
    return _called(_of_position(), path)


def site_field(path: str) -> str:
    """Return what a field of the site, or of the conversion of the site, is called in the language of the window."""
    return _called(_of_site(), path)


def terms_field(path: str) -> str:
    """Return what a field of the terms is called in the language of the window; a row by its table and number."""
    return _called(_of_terms(), path)


def undo_words(question: Question) -> str:
    """Return the title of a question as the undo menu says it, in the language of the window."""
    return _plain(question.title).strip("¿? \u00a0\u202f")  # French sets a narrow or wide space before its mark


def declared_titles(say: Callable[[str], str]) -> dict[str, dict[str, str]]:
    """Return the titles of all fields by subject and path in the words of ``say``, for the command line's tables."""
    subjects = {"position": _of_position(), "site": _of_site(), "terms": _of_terms()}
    return {
        subject: {path: _title(one, lambda text: say(text).replace("&", "")) for path, one in sorted(asked.items())}
        for subject, asked in subjects.items()
    }


def _called(asked: Mapping[str, _Asking], path: str) -> str:
    """Return ``group · title``, places in lists counted from 1; the path in words where nothing asks for it."""
    found = asked.get(bare_path(path))
    return field_called(None if found is None else _title(found, _plain), path)


def _title(asked: _Asking, say: Callable[[str], str]) -> str:
    if asked.group in ("", asked.title):
        return say(asked.title)
    return f"{say(asked.group)}{PARTED}{say(asked.title)}"


def _plain(text: str) -> str:
    return tr(text).replace("&", "")


@cache
def _of_position() -> dict[str, _Asking]:
    """Return what asks for the fields of a position; the words of columns of tables where no question does."""
    from spoutline.gui.edits.conversion_questions import position_conversion_questions
    from spoutline.gui.edits.place_questions import OUTLET_QUESTIONS, filler_questions
    from spoutline.gui.edits.questions import DUTY_QUESTIONS, LIQUID_QUESTIONS, SET_QUESTIONS, VAPOUR_QUESTIONS
    from spoutline.model.type_columns import TYPE_COLUMNS
    from spoutline.planning.survey_import.fields import FIELDS

    asked = {field.key: _Asking(title=field.title) for field in FIELDS}
    asked |= {
        field.key.replace("liquid.", "liquid_today."): _Asking(group="Liquid sold today", title=field.title)
        for field in FIELDS
        if field.path[0] == "liquid"
    }
    asked |= {
        f"dispenser_type.{column.key}": _Asking(group="Dispenser type", title=column.title) for column in TYPE_COLUMNS
    }
    asked |= {
        "decisions.pinned": _Asking(group="Wishes", title="Part asked for"),
        "decisions.refused": _Asking(group="Wishes", title="Part refused"),
        "installed.kind": _Asking(group="Part there today {0}", title="Kind"),
        "installed.number": _Asking(group="Part there today {0}", title="Part number"),
        "installed.maker": _Asking(group="Part there today {0}", title="Maker"),
        "installed.description": _Asking(group="Part there today {0}", title="Description"),
        "installed.path": _Asking(group="Part there today {0}", title="Path, where known"),
        "installed.condition": _Asking(group="Part there today {0}", title="Condition"),
        "installed.age_years": _Asking(group="Part there today {0}", title="Age, years"),
    }
    asked |= _by_path((*LIQUID_QUESTIONS, *DUTY_QUESTIONS, *VAPOUR_QUESTIONS, *OUTLET_QUESTIONS, *SET_QUESTIONS))
    asked |= _by_path(position_conversion_questions(), group="")
    asked |= _by_path(filler_questions(None), group="Vehicle filler")
    return asked | _by_path(filler_questions(0), group="Further filler {0}")


@cache
def _of_site() -> dict[str, _Asking]:
    from spoutline.gui.edits.conversion_questions import conversion_questions
    from spoutline.gui.edits.site_questions import site_questions

    return _by_path((*conversion_questions(()), *site_questions((), ())))


def _by_path(questions: Iterable[Question], *, group: str | None = None) -> dict[str, _Asking]:
    """Return the questions by their paths, without the places in lists; in their own groups where ``group`` is None."""
    return {
        ".".join(step for step in one.path if isinstance(step, str)): _Asking(
            group=one.group if group is None else group, title=one.title
        )
        for one in questions
    }


@cache
def _of_terms() -> dict[str, _Asking]:
    """Return the entries and columns of the terms form by their paths; a bare row is known by that of its table."""
    from spoutline.gui.edits.terms_subjects import SUBJECTS

    asked = {
        field.path: _Asking(group=subject.title, title=field.title) for subject in SUBJECTS for field in subject.fields
    }
    return asked | {
        ".".join(filter(None, (table.path, column.name))): _Asking(group=table.title, title=column.title)
        for subject in SUBJECTS
        for table in subject.tables
        for column in table.columns
    }
