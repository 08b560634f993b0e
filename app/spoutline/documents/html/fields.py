"""Fields of a form, to fill in and print; what is typed goes nowhere: only the PDF is read back."""

from __future__ import annotations

from spoutline.documents.content.blocks import ChoiceBox, TextBox
from spoutline.documents.html.escaping import attribute, html_text


def field(box: TextBox | ChoiceBox) -> str:
    """Return a field with its tip as its name; nothing for one that is hidden."""
    label = f'aria-label="{attribute(box.tip)}"'
    if isinstance(box, ChoiceBox):
        options = (
            f'<option value="{attribute(value)}"{" selected" if value == box.value else ""}>{html_text(word)}</option>'
            for value, word in box.options
        )
        return f"<select {label}>{''.join(options)}</select>"
    if box.hidden:
        return ""
    fixed = " readonly" if box.read_only else ""
    if box.lines > 1:
        return f'<textarea {label} rows="{box.lines}"{fixed}>{html_text(box.value).replace("<br>", chr(10))}</textarea>'
    return f'<input type="text" {label} value="{attribute(box.value)}"{fixed}>'
