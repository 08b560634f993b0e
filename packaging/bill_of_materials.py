"""Writes the bill of materials of the program: CycloneDX 1.6 in JSON, the same bytes for the same packages.

Usage, in the environment that the program is built from: python packaging/bill_of_materials.py OUTPUT.json
"""

from __future__ import annotations

import hashlib
import importlib.metadata
import json
import re
import sys
import tomllib
import uuid
from pathlib import Path
from typing import Any

from locked import PROGRAM, Locked, read_lock

PROJECT = Path(__file__).resolve().parents[1]
_SPACE = uuid.UUID("6ba7b811-9dad-11d1-80b4-00c04fd430c8")  # the URL name space of RFC 9562, 6.6


def bill_of_materials() -> dict[str, Any]:
    """Return the document: the program, every package that it is delivered with, and its fonts."""
    project = tomllib.loads((PROJECT / "pyproject.toml").read_text(encoding="utf-8"))["project"]
    packages = [one for one in read_lock(PROJECT / "requirements.lock") if one.section == PROGRAM]
    program = {
        "type": "application",
        "bom-ref": _reference(project["name"], project["version"]),
        "name": project["name"],
        "version": project["version"],
        "description": project["description"],
        "purl": _reference(project["name"], project["version"]),
    }
    by_name = {one.name: _reference(one.name, one.version) for one in packages}
    document: dict[str, Any] = {
        "$schema": "http://cyclonedx.org/schema/bom-1.6.schema.json",
        "bomFormat": "CycloneDX",
        "specVersion": "1.6",
        "version": 1,
        "metadata": {"component": program},
        "components": [*(_package(one) for one in packages), *_fonts()],
        "dependencies": [
            {"ref": program["bom-ref"], "dependsOn": sorted({by_name[name] for name in _direct(project, by_name)})},
            *({"ref": by_name[one.name], "dependsOn": _needs(one.name, by_name)} for one in packages),
        ],
    }
    content = json.dumps(document, sort_keys=True)
    document["serialNumber"] = f"urn:uuid:{uuid.uuid5(_SPACE, content)}"
    return document


def _package(one: Locked) -> dict[str, Any]:
    component: dict[str, Any] = {
        "type": "library",
        "bom-ref": _reference(one.name, one.version),
        "name": one.name,
        "version": one.version,
        "purl": _reference(one.name, one.version),
        "properties": [{"name": "spoutline:distribution-sha256", "value": value} for value in one.hashes],
    }
    licence = _licence(one.name)
    if licence:
        component["licenses"] = [{"license": {"name": licence}}]
    return component


def _licence(name: str) -> str:
    """Return what a package says of its licence, in a line; empty where it is not installed or says nothing."""
    try:
        told = importlib.metadata.metadata(name)
    except importlib.metadata.PackageNotFoundError:
        return ""
    classified = [text.rpartition(" :: ")[2] for text in told.get_all("Classifier") or () if text.startswith("License")]
    found = told.get("License-Expression") or " and ".join(classified) or told.get("License") or ""
    return str(found).strip().splitlines()[0][:200] if str(found).strip() else ""


def _fonts() -> list[dict[str, Any]]:
    folder = PROJECT / "resources" / "fonts"
    return [
        {
            "type": "data",
            "bom-ref": f"file:resources/fonts/{path.name}",
            "name": path.name,
            "hashes": [{"alg": "SHA-256", "content": hashlib.sha256(path.read_bytes()).hexdigest()}],
            "licenses": [{"license": {"name": "see resources/fonts/LICENSE.txt"}}],
        }
        for path in sorted(folder.glob("*.ttf"))
    ]


def _direct(project: dict[str, Any], known: dict[str, str]) -> list[str]:
    texts = [*project["dependencies"], *project["optional-dependencies"]["office"]]
    return [name for name in map(_name, texts) if name in known]


def _needs(name: str, known: dict[str, str]) -> list[str]:
    try:
        texts = importlib.metadata.requires(name) or []
    except importlib.metadata.PackageNotFoundError:
        texts = []
    return sorted({known[_name(text)] for text in texts if "extra ==" not in text and _name(text) in known})


def _name(requirement: str) -> str:
    return re.sub(r"[-_.]+", "-", re.split(r"[^A-Za-z0-9._-]", requirement.strip(), maxsplit=1)[0]).lower()


def _reference(name: str, version: str) -> str:
    return f"pkg:pypi/{name}@{version}"


def main() -> int:
    """Write the document into the file that is named, and return the exit code."""
    if len(sys.argv) != 2:
        print(__doc__, file=sys.stderr)
        return 2
    text = json.dumps(bill_of_materials(), indent=2, ensure_ascii=False) + "\n"
    Path(sys.argv[1]).write_text(text, encoding="utf-8")
    return 0


if __name__ == "__main__":
    sys.exit(main())
