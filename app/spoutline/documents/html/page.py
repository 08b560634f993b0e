"""A content tree as one HTML page: the words and figures of the paper, for people who hear, enlarge or restyle it.

Nothing in it runs and nothing is fetched: its own style, drawings and pictures stand inside, and its policy forbids any
more. The page follows WCAG 2.2: headings in order, tables with scope, a language, drawings with title and description.
"""

from __future__ import annotations

from spoutline.documents.content.blocks import Block, Document, Heading
from spoutline.documents.html.escaping import attribute, direction, html_text
from spoutline.documents.html.setting import PageSetting
from spoutline.documents.html.style import STYLE
from spoutline.documents.marks import HTML_GENERATOR

_POLICY = "default-src 'none'; style-src 'unsafe-inline'; img-src data:"
_LISTED_FROM = 3  # chapters from which on they are listed at the start


def html_bytes(document: Document) -> bytes:
    """Return ``document`` as HTML in UTF-8; equal documents give equal bytes.

    Raises
    ------
    InputFault
        A picture in it cannot be read.
    StoreFault
        A font that comes with the program is missing; the drawings measure their texts with it.
    """
    setting = PageSetting(document.paper)
    body = setting.elements(_without_own_title(document))
    parts = (
        f'<!DOCTYPE html>\n<html lang="{attribute(document.language)}">\n<head>\n<meta charset="utf-8">\n',
        f'<meta http-equiv="Content-Security-Policy" content="{_POLICY}">\n',
        f'<meta name="generator" content="{HTML_GENERATOR}">\n',
        '<meta name="viewport" content="width=device-width, initial-scale=1">\n',
        f'<meta name="author" content="{attribute(document.author)}">\n',
        f'<meta name="description" content="{attribute(document.subject)}">\n',
        f"<title>{html_text(document.title)}</title>\n<style>{STYLE}</style>\n</head>\n<body>\n",
        _head(document),
        f"<main>\n<h1{direction(document.title)}>{html_text(document.title)}</h1>\n",
        _contents(document, setting.chapters),
        *body,
        f"</main>\n<footer><p>{html_text(document.running_foot)}</p></footer>\n</body>\n</html>\n",
    )
    return "".join(parts).encode("utf-8")


def _head(document: Document) -> str:
    notice = f'<p class="notice">{html_text(document.notice)}</p>' if document.notice else ""
    head = f"<p{direction(document.running_head)}>{html_text(document.running_head)}</p>"
    return f"<header>{head}{notice}</header>\n"


def _without_own_title(document: Document) -> tuple[Block, ...]:
    """Return the blocks; a first heading that repeats the title is left to the title."""
    first = next((one for one in document.blocks if isinstance(one, Heading)), None)
    if first is None or first.level > 1 or first.text != document.title:
        return document.blocks
    return tuple(one for one in document.blocks if one is not first)


def _contents(document: Document, chapters: tuple[tuple[str, str], ...]) -> str:
    if len(chapters) < _LISTED_FROM:
        return ""
    links = "".join(f'<li><a href="#{name}"{direction(text)}>{html_text(text)}</a></li>' for name, text in chapters)
    return f'<nav aria-label="{attribute(document.title)}"><ol>{links}</ol></nav>\n'
