"""Packs the frozen program as a Debian package: the program, its desktop entry, file type, icons and metadata.

Usage: python3 packaging/deb.py BUNDLE TARGET_FOLDER

BUNDLE is the folder that packaging/bundle.py makes; dpkg-deb must be there. packaging/try_deb.sh installs the package
into a bare Debian root and runs it there.
"""

from __future__ import annotations

import gzip
import os
import shutil
import subprocess
import sys
import tempfile
import tomllib
from pathlib import Path

import environment

PROJECT = Path(__file__).resolve().parents[1]
LINUX = PROJECT / "packaging" / "linux"
ICONS = PROJECT / "packaging" / "icons"
MAINTAINER = "The Spoutline developers <spoutline@example.invalid>"
RELEASED = "Sat, 28 Nov 2026 12:00:00 +0000"
_MTIME = 1795867200  # the same for every file, so that equal bundles give equal packages
# the C library of the machine that freezes; the lock's wheels ask for less
_C_LIBRARY = "libc6 (>= 2.36)"
_SECTION, _PRIORITY = "misc", "optional"


def main() -> int:
    """Write the package and print where it lies and how large it is; return the exit code."""
    if len(sys.argv) != 3:
        print(__doc__, file=sys.stderr)
        return 2
    if shutil.which("dpkg-deb") is None:
        print("dpkg-deb is missing; on Debian and Ubuntu the package dpkg-dev brings it.", file=sys.stderr)
        return 2
    bundle, folder = Path(sys.argv[1]).resolve(), Path(sys.argv[2]).resolve()
    folder.mkdir(parents=True, exist_ok=True)
    project = tomllib.loads((PROJECT / "pyproject.toml").read_text(encoding="utf-8"))["project"]
    target = folder / f"{project['name']}_{project['version']}_{_architecture()}.deb"
    with tempfile.TemporaryDirectory() as name:
        root = Path(name, "root")
        installed = tree(root, bundle, project["version"])
        control(root, project, installed)
        _level(root)
        subprocess.run(
            ["dpkg-deb", "--root-owner-group", "-Zzstd", "--build", str(root), str(target)],
            check=True,
            stdout=subprocess.DEVNULL,
            env={**os.environ, "SOURCE_DATE_EPOCH": str(_MTIME)},
        )
    print(f"{target}: {target.stat().st_size / 1e6:.0f} MB, {installed / 1e6:.0f} MB installed")
    return 0


def tree(root: Path, bundle: Path, version: str) -> int:
    """Lay out what is installed below ``root``; return its size in bytes."""
    program = root / "usr" / "lib" / "spoutline"
    shutil.copytree(bundle, program, symlinks=True)
    command = root / "usr" / "bin" / "spoutline"
    command.parent.mkdir(parents=True)
    command.symlink_to("../lib/spoutline/spoutline")
    share = root / "usr" / "share"
    icons = share / "icons" / "hicolor"
    doc = share / "doc" / "spoutline"
    files = {
        share / "applications" / "spoutline.desktop": LINUX / "spoutline.desktop",
        share / "mime" / "packages" / "spoutline.xml": LINUX / "spoutline.xml",
        share / "metainfo" / "invalid.spoutline.spoutline.metainfo.xml": LINUX / "spoutline.metainfo.xml",
        icons / "scalable" / "apps" / "spoutline.svg": LINUX / "spoutline.svg",
        icons / "scalable" / "mimetypes" / "application-x-spoutline-survey.svg": LINUX
        / "application-x-spoutline-survey.svg",
        doc / "copyright": PROJECT / "LICENSE",
        doc / "bill_of_materials.cdx.json": bundle / "_internal" / "spoutline.cdx.json",
    }
    for path in ICONS.glob("spoutline-*.png"):
        size = path.stem.rpartition("-")[2]
        files[icons / f"{size}x{size}" / "apps" / "spoutline.png"] = path
    for target, source in files.items():
        target.parent.mkdir(parents=True, exist_ok=True)
        shutil.copyfile(source, target)
    _write_zipped(
        doc / "changelog.gz",
        f"spoutline ({version}) unstable; urgency=low\n\n  * Version {version}.\n\n -- {MAINTAINER}  {RELEASED}\n",
    )
    return sum(path.stat().st_size for path in root.rglob("*") if path.is_file() and not path.is_symlink())


def control(root: Path, project: dict[str, str], installed: int) -> None:
    """Write what dpkg reads: who, what, and the libraries of the system that Qt asks for."""
    debian = root / "DEBIAN"
    debian.mkdir()
    # libraries that the bundle brings along need no package
    brought = {path.name for path in (root / "usr" / "lib" / "spoutline").rglob("*.so*")}
    asked = {package for library, package in environment.DEBIAN_PACKAGE.items() if library not in brought}
    fields = {
        "Package": project["name"],
        "Version": project["version"],
        "Section": _SECTION,
        "Priority": _PRIORITY,
        "Architecture": _architecture(),
        "Depends": ", ".join([_C_LIBRARY, *sorted(asked)]),
        "Recommends": "shared-mime-info, hicolor-icon-theme, desktop-file-utils",
        "Suggests": "fonts-droid-fallback, cups",
        "Installed-Size": str(-(-installed // 1024)),
        "Maintainer": MAINTAINER,
        "Description": "hanging hardware of motor-fuel dispensers\n"
        " Turns the survey of a fueling station into checked, explained and priced sets\n"
        " of whip hose, breakaway, curb hose, swivel and nozzle. It advises; local codes\n"
        " and the authority having jurisdiction decide.",
    }
    text = "".join(f"{name}: {value}\n" for name, value in fields.items())
    (debian / "control").write_text(text, encoding="utf-8")


def _architecture() -> str:
    return subprocess.run(["dpkg", "--print-architecture"], check=True, capture_output=True, text=True).stdout.strip()


def _write_zipped(path: Path, text: str) -> None:
    with path.open("wb") as raw, gzip.GzipFile(filename="", fileobj=raw, mode="wb", mtime=0) as stream:
        stream.write(text.encode("utf-8"))


def _level(root: Path) -> None:
    """Give every file the same rights and the same time."""
    for path in sorted(root.rglob("*"), reverse=True):
        if path.is_symlink():
            os.utime(path, (_MTIME, _MTIME), follow_symlinks=False)
            continue
        runs = path.is_dir() or path == root / "usr" / "lib" / "spoutline" / "spoutline"
        path.chmod(0o755 if runs else 0o644)
        os.utime(path, (_MTIME, _MTIME))


if __name__ == "__main__":
    sys.exit(main())
