"""The invented catalogue with one nozzle more: another maker's, under a number that is taken already."""

from __future__ import annotations

import shutil
from pathlib import Path

from spoutline import assets

NUMBER, MAKER, OTHER = "QW-N101", "Quillmere Forgeworks", "Otterbramble Nozzleworks"
OTHER_PRICE = "70.10"
_OTHERS_PREFIX = "OB"


def catalogue_of_two_makers(folder: Path) -> Path:
    """Copy the source tables into ``folder``, the nozzle doubled under its number and priced by the other maker."""
    shutil.copytree(assets.catalogue_folder(), folder)
    table = folder / "nozzles.csv"
    lines = table.read_text(encoding="utf-8").splitlines()
    twin = next(line for line in lines if line.startswith(f"{NUMBER},"))
    kept = [line if line.startswith("#") or not line else f"{line}," for line in lines]
    kept[0] = f"{lines[0]},maker"
    table.write_text("\n".join([*kept, f"{twin},{_OTHERS_PREFIX}", ""]), encoding="utf-8")
    with (folder / "prices" / "ob-2026-h2-usd.csv").open("a", encoding="utf-8") as prices:
        prices.write(f"{NUMBER},nozzles,1,{OTHER_PRICE}\n")
    return folder
