"""The one place where plain text becomes rich text of a label."""

from __future__ import annotations

from html import escape


def rich(text: str) -> str:
    """Return user or catalogue text as markup that shows exactly that text, line breaks kept."""
    return escape(text, quote=True).replace("\n", "<br>")


def tip(text: str) -> str:
    """Return user or catalogue text as a tool tip that shows exactly that text; empty for an empty one."""
    return f"<span>{rich(text)}</span>" if text else ""


def mnemonic_safe(text: str) -> str:
    """Return text for a button or menu in which an ampersand stays an ampersand."""
    return text.replace("&", "&&")
