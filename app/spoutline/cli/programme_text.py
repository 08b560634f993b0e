"""A programme of several sites as a text for the terminal."""

from __future__ import annotations

from collections.abc import Iterator

from spoutline.cli.answer import printable
from spoutline.explain.conversion.programme_words import ProgrammeWords
from spoutline.explain.conversion.story import ConversionStory
from spoutline.model.programme import Programme, RankedSite


def programme_text(programme: Programme, kept: str, words: ConversionStory) -> str:
    """Return terms, years with their visits and the reasons, what is left out; ``kept`` says where it is kept."""
    return "".join(f"{printable(line)}\n" for line in _lines(ProgrammeWords(programme, words), kept))


def _lines(words: ProgrammeWords, kept: str) -> Iterator[str]:
    programme, say = words.programme, words.words.say
    yield f"{say('program_title', name=programme.name)} ({kept})"
    yield say("program_advice")
    if programme.stopped:
        yield say("program_stopped")
    yield from words.terms()
    for year in programme.years:
        yield ""
        yield f"{words.year(year.year)}: {words.year_line(year)}"
        for one in programme.ranked:
            for visit in one.visits:
                if visit.year == year.year:
                    yield f"  {one.rank:4} {one.site.name} ({one.site.place}): {words.visit_line(one, visit)}"
                    if visit is one.visits[-1]:
                        yield from (f"       {text}" for text in _told(words, one))
    left = [one for one in programme.ranked if one.left_out]
    if left:
        yield ""
        yield f"{say('program_left_out')}:"
        for one in left:
            yield f"  {one.rank:4} {one.site.name} ({one.site.place}): {words.left_out(one)}"
            yield from (f"       {text}" for text in (words.deadline(one), words.waiting(one)) if text)
    if programme.others:
        yield ""
        yield f"{say('program_others')}:"
        yield from (f"       {one.name} ({one.place}): {words.other(one)}" for one in programme.others)
    yield ""
    yield from words.rules()


def _told(words: ProgrammeWords, one: RankedSite) -> Iterator[str]:
    yield from (text for text in (words.why(one), words.deadline(one), words.waiting(one)) if text)
