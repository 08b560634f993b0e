"""Which chains the catalogue can make up, found port by port: a check of the data, written without the search."""

import csv
from collections.abc import Callable, Iterable

from spoutline import assets
from spoutline.catalogue.rows import TABLES
from spoutline.model.part import Part, PartKind
from spoutline.model.port import FlowPath, Gender, Port, ThreadStandard


def mates(upstream: Port, downstream: Port) -> bool:
    """Same thread standard, size and path, and one of each gender (ASME B1.20.1, ISO 228-1: 60 against 55 degrees)."""
    return (upstream.thread, upstream.size, upstream.path) == (
        downstream.thread,
        downstream.size,
        downstream.path,
    ) and upstream.gender is not downstream.gender


def reached(port: Port, parts: Iterable[Part]) -> set[Port]:
    """Open ports after one of ``parts`` is made up to ``port``."""
    return {part.outlet for part in parts if part.inlet and part.outlet and mates(port, part.inlet)}


def can_make_up(
    outlet: Port, chain: Iterable[PartKind], parts: Iterable[Part], suits: Callable[[Part], bool], adaptors: bool = True
) -> bool:
    """Say whether parts of the chain's kinds that suit can be made up in order, an adaptor before each if need be."""
    suiting: dict[PartKind, list[Part]] = {kind: [] for kind in PartKind}
    for part in parts:
        if suits(part):
            suiting[part.kind].append(part)
    open_ports = {outlet}
    for kind in chain:
        if adaptors:
            between = suiting[PartKind.ADAPTOR] + (suiting[PartKind.SPLITTER] if open_ports == {outlet} else [])
            open_ports = open_ports.union(*(reached(port, between) for port in open_ports))
        if kind is PartKind.NOZZLE:
            return any(mates(port, part.inlet) for port in open_ports for part in suiting[kind] if part.inlet)
        open_ports = set().union(*(reached(port, suiting[kind]) for port in open_ports)) if open_ports else set()
    return bool(open_ports)


def outlet(thread: ThreadStandard, size: str, path: FlowPath = FlowPath.SINGLE) -> Port:
    """A dispenser outlet: female by custom (common practice, no source)."""
    return Port(thread=thread, size=size, gender=Gender.FEMALE, path=path)


def remarks() -> dict[str, str]:
    """What the reviewers' column says of each part number; a near miss starts with ``trap``."""
    found = {}
    for name in TABLES:
        lines = (assets.catalogue_folder() / name).read_text(encoding="utf-8").splitlines()
        for row in csv.DictReader(line for line in lines if not line.startswith("#")):
            found[row["number"]] = row["remark"]
    return found
