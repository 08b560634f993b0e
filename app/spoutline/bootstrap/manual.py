"""The manual: pages from ``resources/help``, and those that are made: words of the trade, rules, licenses."""

from __future__ import annotations

import re
import tomllib
from collections.abc import Callable, Iterable, Iterator
from enum import StrEnum
from functools import cached_property
from typing import TYPE_CHECKING, Final

from spoutline import assets
from spoutline.frozen import frozen
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.language import Language
from spoutline.model.worded import Worded

if TYPE_CHECKING:
    from pathlib import Path

    from spoutline.explain.plan.story import Story
    from spoutline.model.limit import Jurisdiction


class HelpUser(StrEnum):
    """For whom a page is."""

    DISTRIBUTOR = "distributor"
    OWNER = "owner"
    INSTALLER = "installer"


class MadePage(StrEnum):
    """Pages that no file holds."""

    GLOSSARY = "glossary"
    RULES = "rules"
    LICENSES = "licenses"


@frozen(kw_only=True)
class HelpTopic:
    """A page in the list of contents."""

    name: str
    title: str
    users: frozenset[HelpUser]


@frozen(kw_only=True)
class HelpPage:
    """A page as Markdown, and the language that it is written in."""

    topic: HelpTopic
    text: str
    language: Language


@frozen(kw_only=True)
class HelpHit:
    """A paragraph of a page that holds all words looked for, and the heading above it."""

    topic: HelpTopic
    heading: str
    told: str
    is_heading: bool


@frozen
class Term:
    """A word of the trade and what it means here."""

    word: str
    meaning: str


_MOST_HITS: Final = 60
_HEADING: Final = re.compile(r"^#+ +(.+)$")


class Manual:
    """The manual in one language. Pages without a translation are told in English, and say so by their language."""

    def __init__(
        self, language: Language, story: Callable[[], Story], jurisdiction: Callable[[], Jurisdiction]
    ) -> None:
        self._language, self._story, self._jurisdiction = language, story, jurisdiction

    @cached_property
    def topics(self) -> tuple[HelpTopic, ...]:
        """The pages in their order."""
        rows = tomllib.loads((_folder() / "contents.toml").read_text(encoding="utf-8"))["page"]
        return tuple(
            HelpTopic(
                name=row["name"], title=row[self._language], users=frozenset(HelpUser(one) for one in row["users"])
            )
            for row in rows
        )

    @cached_property
    def terms(self) -> tuple[Term, ...]:
        """Words of the trade, in the order of the alphabet."""
        table = tomllib.loads((_folder() / "glossary.toml").read_text(encoding="utf-8"))
        terms = (Term(*row[self._language]) for row in table.values())
        return tuple(sorted(terms, key=lambda one: one.word.casefold()))

    def page(self, name: str) -> HelpPage:
        """Return a page by its name, however it is joined; raise ``InputFault`` with the names that there are."""
        wanted = re.sub(r"[\s-]+", "_", name.strip().casefold()).removesuffix(".md")
        topic = next((one for one in self.topics if one.name == wanted), None)
        if topic is None:
            names = ", ".join(one.name for one in self.topics)
            raise InputFault((InputProblem("", "topic", repr(name), Worded("write one of {names}", names=names)),))
        text, language = self._text(topic)
        return HelpPage(topic=topic, text=text, language=language)

    def search(self, words: str) -> tuple[HelpHit, ...]:
        """Return the paragraphs that hold every word, in the order of the pages, those of headings first."""
        wanted = words.casefold().split()
        if not wanted:
            return ()
        found = [hit for topic in self.topics for hit in _hits(topic, self._text(topic)[0], wanted)]
        found.sort(key=lambda hit: not hit.is_heading)
        return tuple(found[:_MOST_HITS])

    # inside

    def _text(self, topic: HelpTopic) -> tuple[str, Language]:
        made = {
            MadePage.GLOSSARY: self._glossary,
            MadePage.RULES: self._rules,
            MadePage.LICENSES: self._licenses,
        }.get(topic.name)  # type: ignore[call-overload]
        if made is not None:
            return made(topic.title), self._language
        own = _folder() / self._language / f"{topic.name}.md"
        if own.is_file():
            return own.read_text(encoding="utf-8"), self._language
        return (_folder() / f"{topic.name}.md").read_text(encoding="utf-8"), Language.ENGLISH

    def _glossary(self, title: str) -> str:
        return "\n\n".join((f"# {title}", *(f"**{one.word}** – {one.meaning}" for one in self.terms))) + "\n"

    def _rules(self, title: str) -> str:
        from spoutline.explain.plan.rule_sources import rule_sources

        return rule_sources(title, self._story(), self._jurisdiction())

    def _licenses(self, title: str) -> str:
        from spoutline.bootstrap.licenses import package_licenses
        from spoutline.explain.phrases.manual_words import ManualWord

        story = self._story()
        head = [story.title(one) for one in (ManualWord.PACKAGE, ManualWord.VERSION, ManualWord.LICENSE)]
        rows = ((one.name, one.version, one.license) for one in package_licenses())
        return "\n".join((f"# {title}", "", _row(head), "|---|---|---|", *map(_row, rows), ""))


def _row(cells: Iterable[str]) -> str:
    return f"| {' | '.join(cells)} |"


def _folder() -> Path:
    return assets.resources_folder() / "help"


def _hits(topic: HelpTopic, text: str, wanted: list[str]) -> Iterator[HelpHit]:
    heading = topic.title
    for paragraph in re.split(r"\n\s*\n|\n(?=\|)", text):
        lines = paragraph.strip()
        found = _HEADING.match(lines.partition("\n")[0])
        if found:
            heading = found.group(1)
        told = re.sub(r"\s+", " ", re.sub(r"[*`#]|\[([^\]]+)\]\([^)]*\)", r"\1", lines)).strip()
        if told and all(word in told.casefold() for word in wanted):
            yield HelpHit(topic=topic, heading=heading, told=told, is_heading=bool(found))
