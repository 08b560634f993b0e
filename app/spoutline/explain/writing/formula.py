"""Formulas as they are read: Greek letters, roots and a true minus for what code spells out."""

from __future__ import annotations

import re
from typing import Final

_GREEK: Final = {
    "pi": "π",
    "rho": "ρ",
    "nu": "ν",
    "mu": "μ",
    "phi": "φ",
    "theta": "θ",
    "eta": "η",
    "tau": "τ",
    "kappa": "κ",
    "epsilon": "ε",
    "eps": "ε",
    "zeta": "ζ",
    "alpha": "α",
    "beta": "β",
    "lambda": "λ",
}
# a letter stands alone: not inside a word; an index behind an underscore may follow
_NAME = re.compile(rf"(?<![A-Za-z]){'(' + '|'.join(_GREEK) + ')'}(?![A-Za-z])")
_ROOT = re.compile(r"\bsqrt\(")
_SUM = re.compile(r"\bsum\(")


# a name of whole words, such as whip_hose; a symbol has one or two letters before its index
_WORDS = re.compile(r"^[A-Za-z]{3,}(_[A-Za-z]+)+$")


def symbol_text(name: str) -> str:
    """Return the symbol of a quantity as it is read; a name of whole words is written with spaces."""
    if _WORDS.match(name) and name.split("_", maxsplit=1)[0] not in _GREEK:
        return name.replace("_", " ")
    return formula_text(name)


def formula_text(formula: str) -> str:
    """Return ``formula`` with spelled-out Greek letters, roots, sums and minus signs as signs."""
    text = _NAME.sub(lambda match: _GREEK[match.group(1)], formula)
    text = _SUM.sub("Σ(", _ROOT.sub("√(", text))
    return text.replace(" - ", " − ").replace(" * ", " · ")
