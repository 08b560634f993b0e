"""The year by which each site is to be done: as the owner says for this programme, else as its survey says."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from pathlib import PurePath

from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.programme import SiteResult
from spoutline.model.worded import Worded


def deadlines_of(sites: Sequence[SiteResult], named: Mapping[str, int], first_year: int | None) -> dict[str, int]:
    """Return deadlines, calendar years, by the file of the site.

    Parameters
    ----------
    sites
        All sites of the programme.
    named
        Calendar years by the file of a site, with or without its ending, or by its name; they go before the surveys'.
    first_year
        Calendar year of the first year.

    Raises
    ------
    InputFault
        A name is of no site or of several, or deadlines are named and no first year is.
    """
    problems = tuple(_problems(sites, named, first_year))
    if problems:
        raise InputFault(problems)
    own = {_named(sites, name)[0].place: year for name, year in named.items()}
    of_surveys = {one.place: one.deadline_year for one in sites if one.deadline_year is not None}
    return {**of_surveys, **own}


def _problems(sites: Sequence[SiteResult], named: Mapping[str, int], first_year: int | None) -> Iterator[InputProblem]:
    if named and first_year is None:
        yield InputProblem("", "deadline", ", ".join(named), "name the first calendar year too: --from 2027")
    for name in named:
        found = _named(sites, name)
        if not found:
            known = ", ".join(one.place for one in sites[:5])
            yield InputProblem(
                "", "deadline", repr(name), Worded("name a survey file of the folder, such as {known}", known=known)
            )
        elif len(found) > 1:
            files = ", ".join(one.place for one in found)
            yield InputProblem(
                "", "deadline", repr(name), Worded("several are called so: name the file, one of {files}", files=files)
            )


def _named(sites: Sequence[SiteResult], name: str) -> tuple[SiteResult, ...]:
    by_file = tuple(one for one in sites if name in (one.place, PurePath(one.place).stem))
    return by_file or tuple(one for one in sites if one.name == name)
