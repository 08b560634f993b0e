"""Steps over a large catalogue in a process of its own, so that nothing but the step is in its memory.

``python large_catalogue.py write DATABASE COUNT`` puts generated parts into a draft; ``publish DATABASE COLUMNS`` makes
it an edition with its columns; ``read DATABASE COLUMNS`` maps them; ``plan COLUMNS COUNT`` plans a car's position over
mapped columns. Each prints what it took as JSON: seconds of processor time and the most memory held, MiB.
"""

from __future__ import annotations

import json
import sys
import time
from collections.abc import Callable
from datetime import date
from pathlib import Path
from typing import Any

from bench.figures import peak_mib

NAME = "Large list"


def write(database: str, count: str) -> Callable[[], object]:
    from bench.generated_parts import generated_parts
    from spoutline.catalogue.descriptions import entry_of
    from spoutline.catalogue.schema import CATALOGUE_SCHEMA
    from spoutline.catalogue.shelf import CatalogueShelf
    from spoutline.database.engine import open_engine

    engine = open_engine(f"sqlite:///{database}")
    CATALOGUE_SCHEMA.bring_up_to_date(engine)
    shelf, parts = CatalogueShelf(engine), generated_parts(int(count), seed=7)
    shelf.create(NAME)

    def written() -> None:
        with shelf.draft(NAME) as desk:
            desk.put(entry_of(part) for part in parts)

    return written


def publish(database: str, columns: str) -> Callable[[], object]:
    from spoutline.catalogue.shelf import CatalogueShelf
    from spoutline.database.engine import open_engine

    shelf = CatalogueShelf(open_engine(f"sqlite:///{database}"), Path(columns))
    return lambda: shelf.publish(NAME, notes="", publisher="", on=date(2026, 1, 1))


def read(database: str, columns: str) -> Callable[[], object]:
    from spoutline.catalogue.shelf import CatalogueShelf
    from spoutline.database.engine import open_engine
    from spoutline.model.catalogue_edition import EditionRef
    from spoutline.model.part import HANGING_KINDS

    store = CatalogueShelf(open_engine(f"sqlite:///{database}"), Path(columns)).parts(EditionRef(NAME))
    return lambda: [store.columns(kind) for kind in HANGING_KINDS]


def plan(columns: str, count: str) -> Callable[[], object]:
    from bench.column_stores import ColumnStore
    from planning.surveys import CAR
    from rules.stations import tables
    from spoutline.planning.sets.context import PlanningContext
    from spoutline.planning.sets.plan_position import plan_position

    rules, context = tables(), []

    def planned() -> object:
        if not context:
            context.append(PlanningContext(rules, ColumnStore.mapped(int(count), Path(columns))))
        return plan_position(CAR.positions[0], CAR.site, context[0], with_alternatives=False)

    return planned


STEPS: dict[str, Callable[..., Callable[[], object]]] = {"write": write, "publish": publish, "read": read, "plan": plan}
TIMES = {"plan": 3}


def main(step: str, *about: str) -> None:
    """Prepare a step, do it as often as it is measured, and print what it took."""
    work = STEPS[step](*about)
    spent: list[float] = []
    for _ in range(TIMES.get(step, 1)):
        before = time.process_time()
        work()
        spent.append(time.process_time() - before)
    found: dict[str, Any] = {"first_s": spent[0], "least_s": min(spent), "peak_mib": peak_mib()}
    print(json.dumps(found))


if __name__ == "__main__":
    main(*sys.argv[1:])
