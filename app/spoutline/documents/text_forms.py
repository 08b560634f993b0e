"""How formulas are written in plain text, so that each writer can raise powers and lower indices."""

from __future__ import annotations

import re
from typing import Final

FORMULA_INDEX: Final = re.compile(r"(?<![A-Za-z])([A-Za-zΑ-ω]{1,2})_([A-Za-z0-9]+(?:,[a-z]+)?)")
FORMULA_POWER: Final = re.compile(r"\^(-?[0-9.]+)")
