"""The page for a tablet: the commissioning form as one HTML file that works without a network and calls nothing.

It is made from the same blocks as the PDF form, so that words, limits and names of fields are one; its script judges a
reading as it is typed and saves a file that ``tablet_reading`` reads. The policy of the page forbids every connection.
"""

from __future__ import annotations

import hashlib
import json
import re
from base64 import b64encode
from collections.abc import Iterable, Iterator, Mapping, Sequence
from typing import Final

from spoutline import assets
from spoutline.documents.content.bill_frame import paper_for
from spoutline.documents.content.blocks import (
    Block,
    ChoiceBox,
    Column,
    Columns,
    FormTable,
    PageBreak,
    TextBox,
)
from spoutline.documents.html.escaping import attribute, direction, html_text
from spoutline.documents.html.setting import PageSetting
from spoutline.documents.html.style import STYLE
from spoutline.documents.marks import HTML_GENERATOR
from spoutline.documents.pack.commissioning_form import form_blocks
from spoutline.documents.pack.content import PackWords, caution_blocks
from spoutline.documents.pack.form_fields import LONGEST_LINE, LONGEST_TEXT, NOT_CHOSEN, FormField, ItemField
from spoutline.documents.pack.position_sheet import position_blocks
from spoutline.documents.pack.record_sheet import verdict_text
from spoutline.documents.pack.tablet_limits import judged_fields
from spoutline.documents.pack.tablet_reading import FORMAT, LONGEST_EDGE, VERSION
from spoutline.explain.pack.words import PackWord as Word
from spoutline.explain.plan.story import Story
from spoutline.input_bounds.bounds import BOUNDS
from spoutline.model.faults import InputFault, InputProblem, StoreFault
from spoutline.model.language import Language
from spoutline.model.part_ref import PartRef
from spoutline.model.plan import PositionPlan, SitePlan
from spoutline.model.record import ReadingBand, ReadingVerdict, RecordItemId
from spoutline.model.worded import Worded
from spoutline.units.meter_readings import takes_comma, writes_comma

_FOLDER: Final = "tablet"
_JUDGED: Final = re.compile(rf"_({ItemField.READING}|{ItemField.RESULT})$")
_DAY: Final = re.compile(rf"^p[0-9]+_{FormField.DONE_ON}$")
_STEM: Final = re.compile(r"[^\w-]+")
_PAD: Final = (600, 200)  # pixels of the field for a signature
_WORDS: Final = {
    "unsaved": Word.TABLET_UNSAVED,
    "saved": Word.TABLET_SAVED,
    "kept": Word.TABLET_KEPT,
    "other": Word.TABLET_OTHER,
    "emptyAsk": Word.TABLET_EMPTY_ASK,
    "caption": Word.TABLET_CAPTION,
    "remove": Word.TABLET_REMOVE,
    "full": Word.TABLET_FULL,
    "noPicture": Word.TABLET_NO_PICTURE,
    "unreadable": Word.TABLET_UNREADABLE,
}


def tablet_html(
    site_plan: SitePlan,
    words: PackWords,
    bands: Mapping[RecordItemId, ReadingBand],
    *,
    namesakes: tuple[PartRef, ...] = (),
) -> bytes:
    """Return the page for a tablet as HTML in UTF-8, of every position that has a set; the same for the same arguments.

    Parameters
    ----------
    site_plan
        The plan of the site; a plan of one position makes the page of that position.
    words
        Story, cautions and signs of one language.
    bands
        How far from its computed value a reading may lie before it is unusual.
    namesakes
        As of ``form_pdf``.

    Raises
    ------
    InputFault
        No position has a set, so there is nothing to put into service.
    StoreFault
        The script, the style or a font that comes with the program is missing.
    """
    story = words.story
    plans = [plan for plan in site_plan.positions if plan.chosen is not None]
    if not plans:
        wanted = "a position with a set is needed: a form without one would record nothing"
        raise InputFault((InputProblem("", "positions", "none with a set", wanted),))
    script = _own_file("form.js")
    setting = _FieldSetting(site_plan, story)
    title = f"{story.word(Word.FORM)}{story.writing.colon} {site_plan.survey.site.name}"
    data = _page_data(plans, site_plan, story, bands)
    notice = story.phrases.text["demonstration_notice"] if site_plan.shows_invented_parts else ""
    parts = (
        _head(title, script, site_plan, story),
        f'<header><p{direction(title)}>{html_text(title)}</p><p class="notice">{html_text(notice)}</p></header>\n',
        f'<noscript><p class="blocked">{html_text(story.word(Word.TABLET_NO_SCRIPT))}</p></noscript>\n',
        f'<main>\n<h1{direction(title)}>{html_text(title)}</h1>\n<p class="lead">',
        f"{html_text(story.word(Word.TABLET_LEAD))}</p>\n",
        _checklist(plans, story),
        _begun_form(story),
        _opened(Word.CAUTION_SHEET, setting.elements(tuple(caution_blocks(site_plan, words))), story),
        *_positions(plans, site_plan, story, setting, namesakes),
        "</main>\n",
        _bar(story),
        f"<footer><p>{html_text(story.word(Word.REVISION))} {site_plan.provenance.survey_fingerprint}</p></footer>\n",
        f'<script type="application/json" id="form-data">{_json(data)}</script>\n',
        f"<script>{script}</script>\n</body>\n</html>\n",
    )
    return "".join(parts).encode("utf-8")


def _own_file(name: str) -> str:
    path = assets.resources_folder() / _FOLDER / name
    try:
        return path.read_text(encoding="utf-8")
    except OSError as fault:
        raise StoreFault(
            Worded(
                "The file {path}, which comes with the program, is missing ({reason}).",
                path=path,
                reason=fault.strerror or fault,
            )
        ) from fault


def _head(title: str, script: str, site_plan: SitePlan, story: Story) -> str:
    digest = b64encode(hashlib.sha256(script.encode("utf-8")).digest()).decode()
    # only this script runs, and nothing is fetched or sent; pictures are those that a person adds
    policy = (
        f"default-src 'none'; script-src 'sha256-{digest}'; style-src 'unsafe-inline'; img-src data: blob:; "
        "connect-src 'none'; form-action 'none'; base-uri 'none'"
    )
    return (
        f'<!DOCTYPE html>\n<html lang="{attribute(story.phrases.language)}">\n<head>\n<meta charset="utf-8">\n'
        f'<meta http-equiv="Content-Security-Policy" content="{policy}">\n'
        f'<meta name="generator" content="{HTML_GENERATOR}">\n'
        '<meta name="viewport" content="width=device-width, initial-scale=1">\n'
        f'<meta name="author" content="{attribute(f"Spoutline {site_plan.provenance.program_version}")}">\n'
        f"<title>{html_text(title)}</title>\n<style>{STYLE}{_own_file('form.css')}</style>\n</head>\n<body>\n"
    )


def _json(data: object) -> str:
    """Return data for inside a script element: no sign in it can end the element or begin a comment."""
    text = json.dumps(data, ensure_ascii=False, sort_keys=True, separators=(",", ":"))
    return text.replace("<", "\\u003c").replace(">", "\\u003e").replace("&", "\\u0026")


def _page_data(
    plans: Sequence[PositionPlan], site_plan: SitePlan, story: Story, bands: Mapping[RecordItemId, ReadingBand]
) -> dict[str, object]:
    language = Language(story.phrases.language)
    readings: dict[str, object] = {}
    for number, plan in enumerate(plans, start=1):
        readings.update(judged_fields(number, plan, story, bands))
    stem = _STEM.sub("-", site_plan.survey.site.name).strip("-") or "form"
    return {
        "format": FORMAT,
        "version": VERSION,
        "positions": [str(number) for number in range(1, len(plans) + 1)],
        "file": f"{stem}-filled.json",
        "notChosen": NOT_CHOSEN,
        "writesComma": writes_comma(language),
        "takesComma": takes_comma(language),
        "readings": readings,
        "verdicts": {verdict.value: verdict_text(verdict, story) for verdict in ReadingVerdict},
        "words": {name: story.word(word) for name, word in _WORDS.items()},
        "mostPhotos": BOUNDS.tablet_photos,
        "mostPhotoBytes": BOUNDS.tablet_photo_bytes,
        "mostTotal": BOUNDS.tablet_total_bytes,
        "mostBytes": BOUNDS.tablet_bytes,
        "longestEdge": LONGEST_EDGE,
    }


def _checklist(plans: Sequence[PositionPlan], story: Story) -> str:
    links = "".join(
        f'<li><a href="#position-{number}">{html_text(plan.position.label)} '
        f'<span class="count" data-count="{number}"></span></a></li>'
        for number, plan in enumerate(plans, start=1)
    )
    return f'<nav aria-label="{attribute(story.word(Word.POSITIONS))}"><ol>{links}</ol></nav>\n'


def _opened(word: Word, elements: Iterable[str], story: Story) -> str:
    return f"<details><summary>{html_text(story.word(word))}</summary>{''.join(elements)}</details>\n"


def _positions(
    plans: Sequence[PositionPlan],
    site_plan: SitePlan,
    story: Story,
    setting: _FieldSetting,
    namesakes: tuple[PartRef, ...],
) -> Iterator[str]:
    pages = _pages(form_blocks(site_plan, story, namesakes))
    for number, (plan, page) in enumerate(zip(plans, pages, strict=True), start=1):
        setting.number = number
        heading, *rest = page
        title = "".join(setting.elements((heading,))).strip()
        sheet = setting.elements([one for one in position_blocks(plan, site_plan, story) if one != PageBreak()])
        yield (
            f'<section class="position" id="position-{number}"><details{" open" if number == 1 else ""}>'
            f'<summary>{title}<span class="count" data-count="{number}"></span></summary>\n'
        )
        yield _opened(Word.TABLET_SHEET, sheet, story)
        yield from setting.elements(_without_codes(rest))
        yield _signature(number, story)
        yield _photos(number, story)
        yield "</details></section>\n"


def _pages(blocks: Iterable[Block]) -> list[list[Block]]:
    pages: list[list[Block]] = [[]]
    for block in blocks:
        if isinstance(block, PageBreak):
            pages.append([])
        else:
            pages[-1].append(block)
    return pages


def _without_codes(blocks: Iterable[Block]) -> list[Block]:
    """Return the blocks without what stands beside the head of a sheet: nobody scans the screen that he holds."""
    return [inner for block in blocks for inner in (block.left if isinstance(block, Columns) else (block,))]


def _signature(number: int, story: Story) -> str:
    words = html_text(story.word(Word.TABLET_SIGN))
    width, height = _PAD
    return (
        f'<div data-script hidden><p class="hint" id="pad-words-{number}">{words}</p>'
        f'<canvas id="pad-{number}" width="{width}" height="{height}" role="img" aria-labelledby="pad-words-{number}">'
        f'</canvas><p><button type="button" id="clear-{number}">{html_text(story.word(Word.TABLET_CLEAR))}</button></p>'
        "</div>\n"
    )


def _photos(number: int, story: Story) -> str:
    return (
        f"<div data-script hidden><h3>{html_text(story.word(Word.PHOTOS))}</h3>"
        f'<div class="photos" id="photos-{number}"></div><p><label class="file">'
        f'{html_text(story.word(Word.TABLET_ADD_PHOTO))}<input type="file" id="add-{number}" accept="image/*" multiple>'
        f'</label></p><p class="unreadable" id="photo-state-{number}" role="status"></p></div>\n'
    )


def _begun_form(story: Story) -> str:
    """Return what is done with a form as a whole, apart from the button that is always in reach."""
    return (
        f'<p data-script hidden><label class="file">{html_text(story.word(Word.TABLET_OPEN))}'
        '<input type="file" id="open" accept=".json,application/json"></label> '
        f'<button type="button" id="empty">{html_text(story.word(Word.TABLET_EMPTY))}</button></p>\n'
    )


def _bar(story: Story) -> str:
    save = html_text(story.word(Word.TABLET_SAVE))
    return (
        f'<div class="bar" data-script hidden><button type="button" class="main" id="save">{save}</button>'
        '<p id="state" role="status"></p></div>\n'
    )


class _FieldSetting(PageSetting):
    """Sets a table of fields as a list of items, each as narrow as the screen, with fields that can be filled in."""

    def __init__(self, site_plan: SitePlan, story: Story) -> None:
        super().__init__(paper_for(site_plan.jurisdiction.id))
        self.number = 1
        self._story = story

    def _form_table(self, block: FormTable) -> str:
        return "".join(self._item(row, block.columns) for row in block.rows)

    def _item(self, row: Sequence[str | TextBox | ChoiceBox], columns: Sequence[Column]) -> str:
        cells = list(zip(row, columns, strict=True))
        if all(isinstance(cell, TextBox) and cell.hidden for cell in row):
            return "".join(self._hidden(cell) for cell in row if isinstance(cell, TextBox))
        texts = [(cell, column.title) for cell, column in cells if isinstance(cell, str) and column.title]
        units = [cell for cell, column in cells if isinstance(cell, str) and not column.title]
        boxes = [(cell, column.title) for cell, column in cells if not isinstance(cell, str)]
        # a row is told by its first text, one that is counted by its number and the text behind
        headed = 2 if texts and texts[0][0].isdecimal() else 1
        told = ". ".join(text for text, _ in texts[:headed])
        name = self._new_id("t")
        head = f'<p class="what" id="{name}">{html_text(told)}</p>' if told else ""
        facts = "".join(
            f"<div><dt>{html_text(title)}</dt><dd>{html_text(text)}</dd></div>"
            for text, title in texts[headed:]
            if text
        )
        fields = "".join(self._box(cell, title, name if told else "", " ".join(units)) for cell, title in boxes)
        group = f' role="group" aria-labelledby="{name}"' if told else ""
        listed = f"<dl>{facts}</dl>" if facts else ""
        return f'<div class="item"{group}>{head}{listed}<div class="boxes">{fields}</div></div>\n'

    def _hidden(self, box: TextBox) -> str:
        return f'<input type="hidden" {self._named(box.name)} value="{attribute(box.value)}">'

    def _named(self, name: str) -> str:
        return f'id="{attribute(name)}" data-field data-position="{self.number}"'

    def _box(self, box: TextBox | ChoiceBox, title: str, row: str, unit: str) -> str:
        name = attribute(box.name)
        is_judged = _JUDGED.search(box.name) is not None
        is_reading = is_judged and isinstance(box, TextBox)
        words = f"{title} ({unit})" if is_reading and unit else title
        named = f'{self._named(box.name)} aria-labelledby="{f"{row} " if row else ""}l-{name}"'
        if is_judged:
            named += f' aria-describedby="v-{name}"'
        label = f'<label for="{name}" id="l-{name}">{html_text(words)}</label>'
        verdict = f'<output id="v-{name}" for="{name}"></output>' if is_judged else ""
        return f"<div>{label}{_control(box, named)}{verdict}</div>"


def _control(box: TextBox | ChoiceBox, named: str) -> str:
    if isinstance(box, ChoiceBox):
        options = "".join(
            f'<option value="{attribute(value)}"{" selected" if value == box.value else ""}>{html_text(word)}</option>'
            for value, word in box.options
        )
        return f"<select {named}>{options}</select>"
    named = f'{named} autocomplete="off"'
    if box.lines > 1:
        return f'<textarea {named} rows="{box.lines}" maxlength="{LONGEST_TEXT}">{html_text(box.value)}</textarea>'
    kind = "date" if _DAY.match(box.name) else "text"
    most = "" if kind == "date" else f' maxlength="{LONGEST_LINE}"'
    return f'<input type="{kind}" {named}{most} value="{attribute(box.value)}">'
