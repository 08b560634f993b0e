"""The licenses of everything that the program is made of, as the installed packages declare them."""

from __future__ import annotations

import re
from collections.abc import Iterator
from importlib.metadata import Distribution, PackageNotFoundError, distribution
from typing import Final

from spoutline.frozen import frozen

_OWN: Final = "spoutline"
_REQUIREMENT: Final = re.compile(r"^\s*([A-Za-z0-9][A-Za-z0-9._-]*)\s*(\[[^\]]*\])?[^;]*(?:;(.*))?$")
_EXTRA: Final = re.compile(r"extra\s*==\s*['\"]([^'\"]+)['\"]")
_LICENSE_FILE: Final = re.compile(r"(licen[cs]e|copying|notice|authors)", re.IGNORECASE)
_LONGEST_NAME: Final = 90  # some packages write the whole text where its name belongs


@frozen(kw_only=True)
class PackageLicense:
    """What a package says of itself; ``texts`` are the names of its license files."""

    name: str
    version: str
    license: str
    texts: tuple[str, ...]


_FONTS: Final = PackageLicense(
    name="DejaVu fonts", version="2.37", license="Bitstream Vera license; changes in the public domain", texts=()
)


def package_licenses() -> tuple[PackageLicense, ...]:
    """Return the packages that the program needs to run and that are installed, its own license first.

    What is asked for by optional parts, such as the tests, is left out.
    """
    found: dict[str, PackageLicense] = {}
    waiting: list[tuple[str, frozenset[str]]] = [(_OWN, frozenset())]
    seen: set[tuple[str, frozenset[str]]] = set()
    while waiting:
        name, extras = waiting.pop()
        key = (_plain(name), extras)
        if key in seen:
            continue
        seen.add(key)
        try:
            package = distribution(name)
        except PackageNotFoundError:
            continue  # what another platform needs is not installed on this one
        found[_plain(name)] = _license(package)
        waiting += _needs(package, extras)
    own = found.pop(_plain(_OWN), None)
    others = sorted(found.values(), key=lambda one: one.name.casefold())
    return (*((own,) if own else ()), *others, _FONTS)


def license_text(name: str) -> str:
    """Return the texts of the licenses of an installed package; empty where it brings none."""
    try:
        package = distribution(name)
    except PackageNotFoundError:
        return ""
    files = [one for one in package.files or () if _LICENSE_FILE.search(one.name)]
    texts = []
    for one in files:
        try:
            texts.append(one.locate().read_text(encoding="utf-8", errors="replace"))  # type: ignore[attr-defined]
        except (OSError, IsADirectoryError):
            continue
    return "\n\n".join(texts)


def _license(package: Distribution) -> PackageLicense:
    told = package.metadata
    classifiers = [one for one in told.get_all("Classifier") or [] if str(one).startswith("License ::")]
    named = " / ".join(one.rpartition(" :: ")[2] for one in classifiers)
    expressions, texts = told.get_all("License-Expression") or [], told.get_all("License") or []
    written = str(texts[0] if texts else "").strip().partition("\n")[0]
    short = written if len(written) <= _LONGEST_NAME else ""
    return PackageLicense(
        name=str(told["Name"]),
        version=package.version,
        license=str(expressions[0] if expressions else "") or short or named or "see its files",
        texts=tuple(one.name for one in package.files or () if _LICENSE_FILE.search(one.name)),
    )


def _needs(package: Distribution, extras: frozenset[str]) -> Iterator[tuple[str, frozenset[str]]]:
    for requirement in package.requires or []:
        found = _REQUIREMENT.match(requirement)
        if found is None:
            continue
        name, bracket, condition = found.groups()
        asked = set(_EXTRA.findall(condition or ""))
        if asked and not asked & extras:
            continue
        wanted = frozenset(one.strip() for one in (bracket or "").strip("[]").split(",") if one.strip())
        yield name, wanted


def _plain(name: str) -> str:
    return re.sub(r"[-_.]+", "-", name).casefold()
