"""The ready demo surveys that come with the program."""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from spoutline.model.survey import Survey

DEFAULT_DEMO = "small_town"


def demo_names() -> tuple[str, ...]:
    """Return the names of the ready demo surveys, sorted."""
    from spoutline import assets

    return tuple(sorted(path.stem for path in assets.demo_folder().glob("*.json")))


def demo_survey(name: str = DEFAULT_DEMO) -> Survey:
    """Return a ready demo survey; raise ``InputFault`` where there is none of that name."""
    from spoutline import assets
    from spoutline.book.choices import not_one_of
    from spoutline.book.survey_text import read_survey

    if name not in demo_names():
        raise not_one_of(name, demo_names(), field="demo")
    return read_survey(assets.demo_folder() / f"{name}.json")
