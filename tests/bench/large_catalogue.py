"""Steps over a large catalogue in a process of its own, so that nothing but the step is in its memory.

``python large_catalogue.py write DATABASE COUNT`` puts generated parts into a draft; ``publish DATABASE COLUMNS`` makes
it an edition with its columns; ``file FILE COUNT`` writes generated parts with price lists into an exchange file,
``import DATABASE FILE`` takes one into a draft, ``check DATABASE COLUMNS`` checks and publishes it, ``export DATABASE``
makes the file again; ``read DATABASE COLUMNS`` maps them; ``plan COLUMNS COUNT`` plans a car's position over
mapped columns. Each prints what it took as JSON: seconds of processor time and the most memory held, MiB.
"""

from __future__ import annotations

import gc
import json
import sys
import time
from collections.abc import Callable, Iterator, Sequence
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING, Any

from bench.figures import peak_mib
from spoutline.__main__ import GARBAGE_OF_A_COMMAND

if TYPE_CHECKING:
    from spoutline.bootstrap.catalogues import CatalogueService
    from spoutline.model.part import Part
    from spoutline.model.pricing import PriceList

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


def file(path: str, count: str) -> Callable[[], object]:
    from bench.generated_parts import generated_parts
    from spoutline.catalogue.descriptions import entry_of
    from spoutline.catalogue.exchange import exchange_bytes

    parts = generated_parts(int(count), seed=7)
    return lambda: Path(path).write_bytes(exchange_bytes(map(entry_of, parts), (), price_lists(parts)))


def price_lists(parts: Sequence[Part]) -> Iterator[PriceList]:
    """Yield two price lists of each maker, with two breaks for every part."""
    from decimal import Decimal

    from spoutline.model.pricing import PriceBreak, PriceList, PriceRow

    for maker in sorted({part.maker for part in parts}):
        rows = tuple(
            PriceRow(
                part_number=part.number,
                discount_group="",
                breaks=(PriceBreak(1, Decimal(100 + len(part.number))), PriceBreak(10, Decimal("99.50"))),
            )
            for part in parts
            if part.maker == maker
        )
        for currency in ("EUR", "USD"):
            name = f"{maker.replace(' ', '-')}-{currency}"
            yield PriceList(name, maker, currency, date(2026, 1, 1), None, rows)


def service_of(database: str, columns: Path | None = None) -> CatalogueService:
    """Return the keeper's work on the catalogues of a database alone."""
    from spoutline.bootstrap.catalogues import CatalogueService, Sources
    from spoutline.catalogue.schema import CATALOGUE_SCHEMA
    from spoutline.catalogue.shelf import CatalogueShelf
    from spoutline.database.engine import open_engine

    engine = open_engine(f"sqlite:///{database}")
    CATALOGUE_SCHEMA.bring_up_to_date(engine)
    shelf = CatalogueShelf(engine, columns)
    nothing: Any = None
    return CatalogueService(
        Sources(
            shelf=lambda: shelf,
            jurisdictions=tuple,
            tables=nothing,
            price_lists=lambda _: (),
            lists_that_come_with=lambda _: (),
            plan=nothing,
            planned_with=nothing,
            survey=nothing,
            maps=nothing,
        )
    )


def take_in(database: str, path: str) -> Callable[[], object]:
    service = service_of(database)
    service.create(NAME)
    return lambda: service.import_exchange(Path(path), NAME)


def check(database: str, columns: str) -> Callable[[], object]:
    service = service_of(database, Path(columns))
    return lambda: service.publish(NAME, notes="first", publisher="bench", on=date(2026, 1, 1))


def export(database: str) -> Callable[[], object]:
    from spoutline.model.catalogue_edition import EditionRef

    service = service_of(database)
    return lambda: service.export(EditionRef(NAME, 1))


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


STEPS: dict[str, Callable[..., Callable[[], object]]] = {
    "write": write,
    "publish": publish,
    "file": file,
    "import": take_in,
    "check": check,
    "export": export,
    "read": read,
    "plan": plan,
}
TIMES = {"plan": 3}


def main(step: str, *about: str) -> None:
    """Prepare a step, do it as often as it is measured, and print what it took; garbage is sought as a command does."""
    gc.set_threshold(*GARBAGE_OF_A_COMMAND)
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
