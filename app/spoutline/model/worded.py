"""What is said to a person with figures in it, so that words and figures stay apart until the language is known."""

from __future__ import annotations

from collections.abc import Mapping


class Worded(str):
    """A text in English that remembers how it was made.

    It is a text like any other to whoever writes or stores it; ``explain`` says it in another language from
    ``template``, whose places in braces are filled from ``figures``. A figure may be something said itself.
    """

    template: str
    figures: Mapping[str, object]

    def __new__(cls, template: str, /, **figures: object) -> Worded:
        """Fill the template; a name in braces without a figure is a ``KeyError``."""
        made = super().__new__(cls, template.format(**figures))
        made.template, made.figures = template, figures
        return made

    def __str__(self) -> str:
        """Return itself: a fault that is made from it still says how it was made."""
        return self

    def __getnewargs_ex__(self) -> tuple[tuple[str], dict[str, object]]:
        """Return what makes the same again, for processes that send it to each other."""
        return (self.template,), dict(self.figures)
