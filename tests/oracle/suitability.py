"""The inspector's own copy of the material table: S suitable, C caution, N unsuitable.

Basis: Oak Ridge National Laboratory elastomer studies (abstracts), DOE E85 and NREL biodiesel handling guides, annex of
ISO 22241-3 for DEF; partly secondary and memory. Columns: E10 E25 E85 B5 B20 B100 DEF.
"""

from __future__ import annotations

COLUMNS = ("E10", "E25", "E85", "B5", "B20", "B100", "DEF")

_ROWS = """
fkm              S S S S S S C
fluorosilicone   S C C S S C C
nbr              S C C S S N C
neoprene         C N N C C N C
sbr              N N N N N N C
silicone         N N N C C C C
polyurethane     C N N C C N N
natural_rubber   N N N N N N C
epdm             N N N N N N S
ptfe             S S S S S S S
polyamide        S C C S S S N
hdpe             C C C S S C S
polypropylene    C C C C C N S
cork_leather     C N N C C N N
stainless_steel  S S S S S S S
carbon_steel     S S S S S S N
aluminium        S C N S S S N
brass            S C N S C N N
copper_bronze    C C C C C N N
zinc             C N N C C N N
lead_tin         N N N C C N N
"""

TABLE: dict[tuple[str, str], str] = {
    (cells[0], column): letter
    for cells in (line.split() for line in _ROWS.strip().splitlines())
    for column, letter in zip(COLUMNS, cells[1:], strict=True)
}
