"""The ready demo surveys that come with the program."""

from __future__ import annotations

from functools import cache
from typing import TYPE_CHECKING

from spoutline.frozen import frozen

if TYPE_CHECKING:
    from spoutline.model.survey import Survey

DEFAULT_DEMO = "small_town"


@frozen
class ReadyStation:
    """A ready demo survey on a list: its name, the site's name and the number of positions."""

    name: str
    site_name: str
    positions: int


def demo_names() -> tuple[str, ...]:
    """Return the names of the ready demo surveys, sorted."""
    from spoutline import assets

    return tuple(sorted(path.stem for path in assets.demo_folder().glob("*.json")))


@cache
def ready_stations() -> tuple[ReadyStation, ...]:
    """Return what a list of the ready demo surveys shows, by the site's name; they are read once."""
    surveys = {name: demo_survey(name) for name in demo_names()}
    stations = (ReadyStation(name, one.site.name, len(one.positions)) for name, one in surveys.items())
    return tuple(sorted(stations, key=lambda station: station.site_name))


def demo_survey(name: str = DEFAULT_DEMO) -> Survey:
    """Return a ready demo survey; raise ``InputFault`` where there is none of that name."""
    from spoutline import assets
    from spoutline.book.choices import not_one_of
    from spoutline.book.survey_text import read_survey

    if name not in demo_names():
        raise not_one_of(name, demo_names(), field="demo")
    return read_survey(assets.demo_folder() / f"{name}.json")
