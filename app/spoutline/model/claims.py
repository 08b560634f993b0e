"""The one guard against texts that claim more than advice, in every language of the program."""

from __future__ import annotations

import re
from functools import cache
from typing import Final

ADVICE_ONLY: Final = "say what was found; the program never claims approval or compliance"

# What a text about an installation must never say. Nouns that name somebody else's act ("written approval") and
# attributes that tell which goods to use ("pièces homologuées") are no claims; a verdict is one.
_CLAIMS: Final = (
    r"\b(approved|compliant|complies|comply|conforms|certified|guarante\w+)\b",
    r"\b(aprobad[oa]s?|garantiza\w*)\b",
    r"\b(cumplen?|conformes?) (con )?(el|la|los|las|todas?|todos?)\b",
    r"\b(es|son|está|están|queda|quedan) (homologad|certificad|autorizad|conforme)\w*",
    r"\b(genehmigt\w*|zugelassen\w*|konform\w*|\w+konform|vorschriftsmäßig\w*|normgerecht\w*|garantiert\w*)\b",
    r"\b(approuvée?s?|garantit|garantie?s?)\b",
    r"\bconformes? (à|aux?)\b",
    r"\b(est|sont) (homologu|agréé|certifi|conforme)\w*",
    # a verdict in one word
    r"^(conformes?|homologad[oa]s?|certificad[oa]s?|homologuée?s?|certifiée?s?|zertifiziert)$",
)
# every claim holds one of these, and to look for them takes a tenth of the time
_STEMS: Final = (
    *("appro", "aprobad", "agréé", "autor", "cert", "compl", "conform", "cumpl", "garant", "genehm", "guarant"),
    *("homolog", "konform", "normgerecht", "vorschr", "zert", "zugelassen"),
)
# vessels that codes call approved: the term of a thing to bring along, not a verdict
_TERMS: Final = r"\bapproved (metal )?container"


def claim_in(text: str) -> str | None:
    """Return the words of ``text`` that claim approval, compliance or a guarantee; None where it claims nothing."""
    folded = text.casefold()
    if not any(stem in folded for stem in _STEMS):
        return None
    claims, terms = _patterns()
    found = claims.search(terms.sub("", text).strip().rstrip("."))
    return found.group() if found else None


@cache
def _patterns() -> tuple[re.Pattern[str], re.Pattern[str]]:
    """Return what finds claims and what finds terms, compiled when a text is first looked at."""
    return re.compile("|".join(_CLAIMS), re.IGNORECASE), re.compile(_TERMS, re.IGNORECASE)
