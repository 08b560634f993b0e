"""Sound input made unsound: bytes, trees of JSON and TOML, cells of CSV, parts of a workbook, fields of a PDF.

Each function takes sound content and a source of chance and returns content a reader may take or must refuse.
"""

from __future__ import annotations

import csv
import io
import json
import random
import re
import tomllib
import warnings
import zipfile
from collections.abc import Callable
from datetime import date, datetime
from typing import Any, Final

_TOKENS: Final = (
    b"1e-308",
    b"-0.0",
    b"1e308",
    b"NaN",
    b"Infinity",
    b"9" * 5000,
    b"0x" + b"f" * 900,
    b"1e99999999999999999999",
    b"[" * 3000,
    b"{" * 3000,
    b'{"a":' * 1500,
    b"a = " + b"[" * 2000,
    b"a." * 400 + b"b = 1\n",
    b"null",
    b"true",
    b'""',
    b"\x00",
    b"\xff\xfe",
    "\u202e".encode(),
    b'"\\ud800"',
    b'"\\u0000"',
    b"x" * 200_000,
    b'"',
    b"'",
    b"\r",
    b"\n",
    b",",
    b";",
    b"\t",
    "\u0664\u0662".encode(),
    b"1979-05-27T07:32:00Z",
    b"- ",
    b"=",
    b"\\",
    b"(",
    b")",
    b"<<",
    b">>",
    b"/V 5",
    b"/T 7",
    b"endobj",
    b"<!DOCTYPE a>",
)
_TEXTS: Final = (
    "",
    " ",
    "x" * 5000,
    "\x00",
    "\u202eabc",
    "\u200e",
    "\u061c",
    "\u2066",
    "\ud800",
    "\udfff",
    "\ufeff",
    "\u200b",
    "\x1b[31m",
    "\r\n",
    "\t",
    "=1+1",
    "@SUM(A1)",
    "'; DROP TABLE surveys; --",
    "<b>x</b>",
    "&amp;",
    "%s%n",
    "{0}",
    "../../etc/passwd",
    "file:///etc/passwd",
    "http://127.0.0.1:9/x",
    "\\\\server\\share",
    "NaN",
    "1e308",
    "\u0664\u0662",
    "\U0001f6e2",
    "e\u0301",
    "\uffff",
    "٠",
    "½",
    "1,5",
    "1.000.000",
    "12 in 3/4",
    "-",
    "none",
    "yes",
    "C:\\x",
    "con",
    "a" * 61,
    "a" * 201,
)
_NUMBERS: Final = (
    0,
    -1,
    1,
    2,
    10**6,
    10**18,
    10**30,
    -(10**30),
    2**31,
    2**63,
    0.1,
    -0.0,
    1e-308,
    5e-324,
    1e-12,
    1e308,
    float("inf"),
    float("-inf"),
    float("nan"),
    0.3333333333333333,
    99.99999999,
)
Mutate = Callable[[bytes, random.Random], bytes]


def of_bytes(sound: bytes, chance: random.Random) -> bytes:
    """Return content with a few places changed, dropped, doubled or replaced by a token that hurts readers."""
    content = bytearray(sound)
    for _ in range(chance.randint(1, 4)):
        place = chance.randrange(len(content) + 1)
        end = min(len(content), place + chance.choice((0, 1, 2, 8, 40)))
        match chance.randrange(4):
            case 0:
                content[place:end] = chance.choice(_TOKENS)
            case 1:
                content[place:end] = b""
            case 2:
                content[place:place] = content[place:end]
            case _:
                content[place:end] = chance.randbytes(end - place)
    return bytes(content)


def _odd_value(chance: random.Random, depth: int = 0) -> Any:
    match chance.randrange(10 if depth < 2 else 7):
        case 0 | 1 | 2:
            return chance.choice(_TEXTS)
        case 3 | 4 | 5:
            return chance.choice(_NUMBERS)
        case 6:
            return chance.choice((None, True, False, [], {}))
        case 7:
            return [_odd_value(chance, depth + 1) for _ in range(chance.choice((1, 2, 50)))]
        case 8:
            return {chance.choice(("label", "name", "", "x")): _odd_value(chance, depth + 1)}
        case _:
            value: Any = 1
            for _ in range(chance.choice((5, 60, 200))):
                value = [value] if chance.random() < 0.5 else {"a": value}
            return value


def _places(tree: Any) -> list[tuple[Any, Any]]:
    """Return every container and key or index of a tree."""
    found: list[tuple[Any, Any]] = []
    open_ones = [tree]
    while open_ones:
        one = open_ones.pop()
        keys = one.keys() if isinstance(one, dict) else range(len(one)) if isinstance(one, list) else ()
        for key in keys:
            found.append((one, key))
            open_ones.append(one[key])
    return found


def _mutated_tree(tree: Any, chance: random.Random) -> None:
    for _ in range(chance.choice((1, 1, 1, 2, 4))):
        places = _places(tree)
        if not places:
            return
        holder, key = chance.choice(places)
        match chance.randrange(8):
            case 0:
                del holder[key]
            case 1:
                other, name = chance.choice(places)
                if isinstance(other, dict) and name in other:
                    holder[key] = json.loads(json.dumps(other[name], default=str))
            case 2 if isinstance(holder, dict):
                holder[chance.choice(("nonsense", str(key) + " ", *_TEXTS[:12]))] = holder.pop(key)
            case 3 if isinstance(holder, list):
                holder[key:key] = [holder[key]] * chance.choice((1, 2, 60))
            case 4 if isinstance(holder[key], str):
                text = holder[key]
                at = chance.randrange(len(text) + 1)
                holder[key] = text[:at] + chance.choice(_TEXTS) + text[at:]
            case 5 if isinstance(holder[key], int | float):
                holder[key] = chance.choice(_NUMBERS)
            case _:
                holder[key] = _odd_value(chance)


def of_json(sound: bytes, chance: random.Random) -> bytes:
    """Return a JSON document with a few values, names or lists changed; sometimes its bytes too."""
    if chance.random() < 0.2:
        return of_bytes(sound, chance)
    tree = json.loads(sound)
    _mutated_tree(tree, chance)
    text = json.dumps(tree, ensure_ascii=chance.random() < 0.5)
    if chance.random() < 0.05:  # the same name twice
        text = re.sub(r'("\w+"): ', lambda one: f"{one[0]}1, {one[0]}", text, count=chance.randint(1, 3))
    return text.encode("utf-8", "surrogatepass")


def of_toml(sound: bytes, chance: random.Random) -> bytes:
    """Return a TOML document with a few values, names or lists changed; sometimes its bytes too."""
    if chance.random() < 0.25:
        return of_bytes(sound, chance)
    tree = tomllib.loads(sound.decode())
    _mutated_tree(tree, chance)
    text = "".join(f"{_toml_key(name)} = {_toml(value)}\n" for name, value in tree.items() if value is not None)
    return text.encode("utf-8", "surrogatepass")


def _toml_key(name: object) -> str:
    return json.dumps(str(name), ensure_ascii=False)


def _toml(value: Any) -> str:
    if isinstance(value, bool):
        return str(value).lower()
    if isinstance(value, dict):
        return "{" + ", ".join(f"{_toml_key(name)} = {_toml(one)}" for name, one in value.items()) + "}"
    if isinstance(value, list):
        return "[" + ", ".join(map(_toml, value)) + "]"
    if isinstance(value, date | datetime):
        return value.isoformat()
    return repr(value) if isinstance(value, int | float) else json.dumps(value, ensure_ascii=False)


def of_csv(sound: bytes, chance: random.Random) -> bytes:
    """Return a table with cells, rows, titles, signs between cells or the encoding changed."""
    if chance.random() < 0.25:
        return of_bytes(sound, chance)
    text = sound.decode()
    between = max(",;\t", key=text.partition("\n")[0].count)
    rows = list(csv.reader(io.StringIO(text, newline=""), delimiter=between))
    for _ in range(chance.choice((1, 1, 2, 5))):
        row = chance.choice(rows) if rows else []
        match chance.randrange(7):
            case 0 if row:
                row[chance.randrange(len(row))] = chance.choice(_TEXTS)
            case 1 if row:
                row[chance.randrange(len(row))] = str(chance.choice(_NUMBERS))
            case 2 if row:
                row.pop(chance.randrange(len(row)))
            case 3:
                row.insert(chance.randrange(len(row) + 1), chance.choice(("", "x", *_TEXTS)))
            case 4:
                rows.insert(chance.randrange(len(rows) + 1), list(row))
            case 5 if rows:
                rows.pop(chance.randrange(len(rows)))
            case _:
                row.extend([""] * chance.choice((1, 300)))
    out = io.StringIO(newline="")
    writer = csv.writer(out, delimiter=chance.choice((between, between, between, ",", ";", "\t")))
    writer.writerows(rows)
    encoding = chance.choice(("utf-8", "utf-8", "utf-8", "utf-8-sig", "utf-16", "latin-1"))
    return out.getvalue().encode(encoding, "surrogatepass" if encoding.startswith("utf") else "replace")


_XML_PIECES: Final = (
    b"<c t='e'><v>#N/A</v></c>",
    b'<row r="99999999999">',
    b'<row r="1048576"/>',
    b'<c r="XFD1"><v>1</v></c>',
    b'<c r="A1048577"><v>1</v></c>',
    b"<!DOCTYPE a>",
    b"<!ENTITY a 'b'>",
    b"<f>1+1</f>",
    b"<is><t>x</t></is>",
    b"</row>",
    b"&#0;",
    b"&#x202e;",
    b"&a;",
    b"<![CDATA[x]]>",
    b"<!-- -->",
    b'<dimension ref="A1:A1"/>',
    b"<v>1e999</v>",
    b"<v>-</v>",
    b'<mergeCell ref="A1:A1048576"/>',
    b'<mergeCell ref="ZZZ1:A0"/>',
    b"<v>99999999999999999999</v>",
    b"<row/>",
    b'<c t="d"><v>2026-13-45</v></c>',
    b'<c s="99999"><v>1</v></c>',
    b'<c t="s"><v>99999</v></c>',
    b'<c t="s"><v>-1</v></c>',
)
_ATTRIBUTE: Final = re.compile(rb'(\s\w+=")([^"]*)(")')
_ATTRIBUTE_VALUES: Final = (
    b"",
    b"0",
    b"-1",
    b"1",
    b"A1",
    b"A0",
    b"XFD1048576",
    b"99999999999",
    b"A1:XFD1048576",
    b"s",
    b"e",
    b"b",
    b"d",
    b"n",
    b"str",
    b"inlineStr",
    b"x",
    b"1e9",
    b"../../x",
    b"&#0;",
    b"rId99",
)


def of_workbook(sound: bytes, chance: random.Random) -> bytes:
    """Return a workbook with the texts, attributes and elements of one of its files changed, or the archive itself."""
    if chance.random() < 0.1:
        return of_bytes(sound, chance)
    with zipfile.ZipFile(io.BytesIO(sound)) as archive:
        parts = {name: archive.read(name) for name in archive.namelist()}
    hit = chance.choice([*parts, *["xl/worksheets/sheet1.xml"] * 8])
    if chance.random() < 0.05:
        del parts[hit]
    else:
        parts[hit] = _mutated_xml(parts[hit], chance)
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w", zipfile.ZIP_STORED) as archive:
        for name, text in parts.items():
            archive.writestr(name, text)
    return out.getvalue()


def _mutated_xml(text: bytes, chance: random.Random) -> bytes:
    for _ in range(chance.choice((1, 1, 2, 4))):
        attributes = list(_ATTRIBUTE.finditer(text))
        match chance.randrange(5):
            case 0 if attributes:
                one = chance.choice(attributes)
                text = text[: one.start(2)] + chance.choice(_ATTRIBUTE_VALUES) + text[one.end(2) :]
            case 1:
                ends = [at.end() for at in re.finditer(rb">", text)] or [0]
                at = chance.choice(ends)
                text = text[:at] + chance.choice(_XML_PIECES) * chance.choice((1, 1, 1, 300)) + text[at:]
            case 2:
                texts = list(re.finditer(rb">([^<>]+)<", text))
                if texts:
                    one = chance.choice(texts)
                    new = chance.choice((*_TEXTS, *map(str, _NUMBERS))).encode("utf-8", "surrogatepass")
                    text = text[: one.start(1)] + new + text[one.end(1) :]
            case 3:
                tags = list(re.finditer(rb"<[^>]*>", text))
                one = chance.choice(tags) if tags else None
                if one is not None:
                    text = text[: one.start()] + one[0] * chance.choice((0, 2, 400)) + text[one.end() :]
            case _:
                text = of_bytes(text, chance)
    return text


_PDF_VALUES: Final = (
    b"5",
    b"-1",
    b"null",
    b"true",
    b"[1 2]",
    b"<< /A 1 >>",
    b"/Off",
    b"/Yes",
    b"()",
    b"<feff>",
    b"<feffd800>",
    b"<ff>",
    b"1 0 R",
    b"99 0 R",
    b"(" + b"x" * 5000 + b")",
    b"1e308",
    b"(\\000)",
    b"<feff202e0041>",
    b"(1,5)",
    b"(nan)",
    b"(1e400 m)",
)
_PDF_FIELD: Final = re.compile(rb"/T \((\w+)\) /V (\([^)]*\))")


def of_form(sound: bytes, chance: random.Random) -> bytes:
    """Return a form with values, names or the order of its fields changed; sometimes the file around them."""
    if chance.random() < 0.2:
        return of_bytes(sound, chance)
    fields = [(name, value) for name, value in _PDF_FIELD.findall(sound)]
    for _ in range(chance.choice((1, 1, 2, 5))):
        if not fields:
            break
        place = chance.randrange(len(fields))
        name, value = fields[place]
        match chance.randrange(6):
            case 0:
                fields[place] = (name, chance.choice(_PDF_VALUES))
            case 1 | 2:
                text = chance.choice(
                    (*_TEXTS, *map(str, _NUMBERS), "2026-13-01", "2026-02-30", "0001-01-01", "9999-12-31")
                )
                fields[place] = (name, b"<" + text.encode("utf-16", "surrogatepass")[:8000].hex().encode() + b">")
            case 3:
                fields.pop(place)
            case 4:
                fields.insert(place, (name, chance.choice(fields)[1]))
            case _:
                fields[place] = (chance.choice((b"p1_tag", b"p99999_tag", b"p0_tag", b"x", b"", name + b".a")), value)
    return form_of(fields)


def form_of(fields: list[tuple[bytes, bytes]]) -> bytes:
    """Return a PDF with a form: names and values as they stand in the file (ISO 32000-1, 12.7)."""
    widgets = [b"<< /Type /Annot /Subtype /Widget /FT /Tx /Rect [0 0 9 9] /T (%s) /V %s >>" % one for one in fields]
    refs = b" ".join(b"%d 0 R" % (4 + place) for place in range(len(widgets)))
    objects = [
        b"<< /Type /Catalog /Pages 2 0 R /AcroForm << /Fields [%s] >> >>" % refs,
        b"<< /Type /Pages /Kids [3 0 R] /Count 1 >>",
        b"<< /Type /Page /Parent 2 0 R /MediaBox [0 0 99 99] /Annots [%s] >>" % refs,
        *widgets,
    ]
    out, places = bytearray(b"%PDF-1.7\n"), []
    for number, one in enumerate(objects, 1):
        places.append(len(out))
        out += b"%d 0 obj\n%s\nendobj\n" % (number, one)
    start = len(out)
    out += b"xref\n0 %d\n0000000000 65535 f \n" % (len(objects) + 1)
    out += b"".join(b"%010d 00000 n \n" % place for place in places)
    out += b"trailer << /Size %d /Root 1 0 R >>\nstartxref\n%d\n%%%%EOF\n" % (len(objects) + 1, start)
    return bytes(out)


def rezipped(content: bytes, change: Callable[[str, bytes], bytes]) -> bytes:
    """Return an archive with each of its files changed."""
    out = io.BytesIO()
    with zipfile.ZipFile(io.BytesIO(content)) as old, zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED) as new:
        for name in old.namelist():
            new.writestr(name, change(name, old.read(name)))
    return out.getvalue()


def of_package(sound: bytes, chance: random.Random) -> bytes:
    """Return an exchange file with one of its tables or its description changed, its files mixed up, or its bytes."""
    if chance.random() < 0.1:
        return of_bytes(sound, chance)
    with zipfile.ZipFile(io.BytesIO(sound)) as archive:
        members = [(name, archive.read(name)) for name in archive.namelist()]
    place = chance.randrange(len(members))
    name, content = members[place]
    match chance.randrange(8):
        case 0:
            members.pop(place)
        case 1:
            members.append((chance.choice(("../x.csv", "/x.csv", "x/", ".", "x" * 300, name)), content))
        case 2:
            members[place] = (name, chance.choice(members)[1])
        case _:
            members[place] = (name, of_json(content, chance) if name.endswith(".json") else of_csv(content, chance))
    out = io.BytesIO()
    with warnings.catch_warnings(), zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED) as archive:
        warnings.simplefilter("ignore")  # a name twice is meant
        for one, text in members:
            archive.writestr(one, text)
    return out.getvalue()
