"""The files that the invented catalogue is compiled from, and their fingerprint."""

from __future__ import annotations

import hashlib
from dataclasses import replace
from pathlib import Path

from spoutline.input_bounds.bounds import BOUNDS
from spoutline.input_bounds.reading import bounded_bytes
from spoutline.model.faults import InputFault
from spoutline.model.part import ACCESSORIES, PartKind

MAKERS_FILE = "makers.toml"
EDITION_FILE = "edition.toml"
REFERENCES_FILE = "cross_references.csv"
KINDS_OF_TABLE: dict[str, tuple[PartKind, ...]] = {
    "nozzles.csv": (PartKind.NOZZLE,),
    "swivels.csv": (PartKind.SWIVEL,),
    "swivel_breakaways.csv": (PartKind.SWIVEL_BREAKAWAY,),
    "curb_hoses.csv": (PartKind.CURB_HOSE,),
    "whip_hoses.csv": (PartKind.WHIP_HOSE,),
    "breakaways.csv": (PartKind.BREAKAWAY,),
    "adaptors.csv": (PartKind.ADAPTOR,),
    "splitters.csv": (PartKind.SPLITTER,),
    "accessories.csv": ACCESSORIES,
}


def fingerprint_of(source: Path) -> str:
    """Return a fingerprint of every source file; raise ``InputFault`` where one cannot be read."""
    digest = hashlib.sha256()
    for name in (EDITION_FILE, MAKERS_FILE, *KINDS_OF_TABLE):
        digest.update(name.encode() + b"\0" + bytes_of(source / name) + b"\0")
    if (source / REFERENCES_FILE).exists():
        digest.update(REFERENCES_FILE.encode() + b"\0" + bytes_of(source / REFERENCES_FILE) + b"\0")
    return digest.hexdigest()


def bytes_of(path: Path) -> bytes:
    """Return what a source file holds; raise ``InputFault`` naming it where it cannot be read."""
    try:
        return bounded_bytes(path, BOUNDS.catalogue_bytes, "file", f"a readable file {path}")
    except InputFault as fault:
        raise InputFault(tuple(replace(one, place=path.name) for one in fault.problems)) from fault
