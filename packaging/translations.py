"""Gather the texts of the window into resources/translations/*.ts, and compile those into *.qm.

    python packaging/translations.py            gather, keeping what is translated, then compile
    python packaging/translations.py --list     print the texts that are not translated yet, by language

lrelease comes with PySide6-Essentials. The compiled files are committed, so that building the program needs no Qt.
"""

from __future__ import annotations

import ast
import json
import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path
from xml.etree import ElementTree

PROJECT = Path(__file__).resolve().parents[1]
GUI = PROJECT / "app" / "spoutline" / "gui"
# the columns of tables of positions and of parts are declared where tables are read
_PLANNING = PROJECT / "app" / "spoutline" / "planning"
TABLE_COLUMNS = (
    _PLANNING / "survey_import" / "fields.py",
    _PLANNING / "table_intake" / "intake_fields.py",
    _PLANNING.parent / "model" / "type_columns.py",
)
FOLDER = PROJECT / "resources" / "translations"
FIELDS = PROJECT / "resources" / "fields"
LANGUAGES = ("de", "es", "fr")
CONTEXT = "window"
# texts that stand in records and are translated where they are shown
_TEXT_FIELDS = {"title", "help", "hint", "lead", "group", "words", "empty_means", "source"}
_TEXT_CALLS = {"StepWords", "Option", "_yes_no", "yes_no", "amount", "number"}
_TEXT_TABLES = {"_GROUPS", "_KINDS", "_WORDS", "GROUP_WORDS"}
# rows whose texts stand in order behind the name of the field: group, title, help, source
_QUESTION_ROWS = {"conversion_question": slice(1, 5)}


def texts() -> tuple[str, ...]:
    """Return every text of the window, sorted."""
    files = (*GUI.rglob("*.py"), *TABLE_COLUMNS)
    found = {text for path in files for text in _texts_in(ast.parse(path.read_text(encoding="utf-8")))}
    return tuple(sorted(found))


def _texts_in(tree: ast.Module) -> Iterator[str]:
    named = _named_texts(tree)
    for node in ast.walk(tree):
        if isinstance(node, ast.Call):
            name = node.func.id if isinstance(node.func, ast.Name) else getattr(node.func, "attr", "")
            if name == "tr":
                yield from _constants(node.args[:1])
            elif name in _TEXT_CALLS:
                yield from (text for text in _constants(node.args) if " " in text or text[:1].isupper())
            elif name in _QUESTION_ROWS:
                yield from _constants(named.get(_name(one), one) for one in node.args[_QUESTION_ROWS[name]])
            fields = (one.value for one in node.keywords if one.arg in _TEXT_FIELDS)
            yield from _constants(named.get(_name(one), one) for one in fields)
        elif isinstance(node, ast.ClassDef) and node.name == "MenuId":
            yield from _constants(one.value for one in node.body if isinstance(one, ast.Assign))
        elif isinstance(node, ast.Assign | ast.AnnAssign) and isinstance(node.value, ast.Dict):
            target = node.targets[0] if isinstance(node, ast.Assign) else node.target
            if isinstance(target, ast.Name) and target.id in _TEXT_TABLES:
                yield from _constants(node.value.values)


def _named_texts(tree: ast.Module) -> dict[str, ast.expr]:
    """Return the constants of a module by name, such as the groups of its questions."""
    found: dict[str, ast.expr] = {}
    for node in tree.body:
        if isinstance(node, ast.Assign) and isinstance(node.targets[0], ast.Name):
            found[node.targets[0].id] = node.value
        elif isinstance(node, ast.Assign) and isinstance(node.targets[0], ast.Tuple):
            values = node.value.elts if isinstance(node.value, ast.Tuple) else []
            found |= {_name(one): value for one, value in zip(node.targets[0].elts, values, strict=False)}
    return found


def _name(node: ast.expr) -> str:
    return node.id if isinstance(node, ast.Name) else ""


def _constants(nodes: object) -> Iterator[str]:
    for node in nodes:  # type: ignore[attr-defined]
        if isinstance(node, ast.Constant) and isinstance(node.value, str) and node.value.strip():
            yield node.value
        elif isinstance(node, ast.IfExp):
            yield from _constants((node.body, node.orelse))


def translated(language: str) -> dict[str, str]:
    """Return what is translated into a language, by English text."""
    path = FOLDER / f"window_{language}.ts"
    if not path.is_file():
        return {}
    root = ElementTree.parse(path).getroot()
    pairs = ((one.findtext("source") or "", one.findtext("translation") or "") for one in root.iter("message"))
    return {source: text for source, text in pairs if text}


def write(language: str, known: dict[str, str]) -> Path:
    """Write the source of a language: every text, translated where ``known`` says how; return the file."""
    root = ElementTree.Element("TS", version="2.1", language=language, sourcelanguage="en")
    context = ElementTree.SubElement(root, "context")
    ElementTree.SubElement(context, "name").text = CONTEXT
    for text in texts():
        message = ElementTree.SubElement(context, "message")
        ElementTree.SubElement(message, "source").text = text
        translation = ElementTree.SubElement(message, "translation")
        translation.text = known.get(text)
        if text not in known:
            translation.set("type", "unfinished")
    ElementTree.indent(root, " ")
    path = FOLDER / f"window_{language}.ts"
    path.write_text(
        '<?xml version="1.0" encoding="utf-8"?>\n<!DOCTYPE TS>\n'
        + ElementTree.tostring(root, encoding="unicode")
        + "\n",
        encoding="utf-8",
    )
    return path


def compile_into(source: Path, target: Path) -> None:
    """Compile a source with the lrelease that comes with PySide6."""
    import PySide6

    tool = Path(PySide6.__file__).parent / ("lrelease.exe" if sys.platform == "win32" else "lrelease")
    subprocess.run([tool, "-silent", source, "-qm", target], check=True)


def write_field_titles(language: str, known: dict[str, str]) -> None:
    """Write what fields are called into the table that the command line reads: the titles of the window's questions."""
    from spoutline.gui.edits.field_titles import declared_titles

    lines = [f"# Written by packaging/{Path(__file__).name} from the titles of the questions; not edited by hand."]
    for subject, titles in declared_titles(lambda text: known.get(text, text)).items():
        lines += ["", f"[{subject}]"]
        lines += [f"{_quoted(path)} = {_quoted(title)}" for path, title in titles.items()]
    (FIELDS / f"{language}.toml").write_text("\n".join(lines) + "\n", encoding="utf-8")


def _quoted(text: str) -> str:
    return json.dumps(text, ensure_ascii=False)


def main() -> None:
    """Gather and compile, or list what is missing."""
    if "--list" not in sys.argv:
        write_field_titles("en", {})
    for language in LANGUAGES:
        known = translated(language)
        if "--list" in sys.argv:
            sys.stdout.writelines(f"{language}: {text!r}\n" for text in texts() if text not in known)
            continue
        source = write(language, known)
        compile_into(source, source.with_suffix(".qm"))
        write_field_titles(language, known)
        kept = sum(text in known for text in texts())
        sys.stdout.write(f"{language}: {kept} of {len(texts())} texts translated\n")


if __name__ == "__main__":
    main()
