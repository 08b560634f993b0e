"""Secrets stay out of messages and logs: database addresses without their passwords, texts without those of an address.

Passwords come in many forms: ``user:password@``, parameters behind a question mark, a connection string of words
(``password=…``), percent-encoded or not, and in addresses that no driver can read. Whatever is not known to be harmless
is left out.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from typing import Final
from urllib.parse import quote, quote_plus, unquote, unquote_plus

HIDDEN: Final = "***"

# parameters of libpq whose values help to find a fault and give nothing away (PostgreSQL 17, 32.1.2)
_HARMLESS: Final = frozenset(
    (
        *("host", "hostaddr", "port", "dbname", "user", "service", "servicefile", "application_name"),
        *("connect_timeout", "client_encoding", "sslmode", "channel_binding", "target_session_attrs", "gssencmode"),
    )
)
_SHORTEST: Final = 3  # a shorter secret cannot be cut out of a sentence without spoiling it
_HOST: Final = re.compile(r"(\[[0-9A-Fa-f:.%]*\]|[^:\[\]]*)(:[0-9]*)?")
_ADDRESS: Final = re.compile(r"[A-Za-z][A-Za-z0-9+.-]*://[^\s'\"<>]+")
_WORD: Final = re.compile(
    r"(?i)\b([\w.-]*(?:password|passwd|pwd|secret|token|passphrase)[\w.-]*)(\s*[=:]\s*)('(?:[^'\\]|\\.)*'|\"(?:[^\"\\]|\\.)*\"|[^\s&;,)]+)"
)


def shown_address(address: str) -> str:
    """Return a database address as it may be shown: no password, and no value of a parameter that may be one.

    A path is shown as it is. Whether a driver could read the address does not matter.
    """
    scheme, colon, rest = address.partition("://")
    if not colon:
        return _WORD.sub(rf"\1\2{HIDDEN}", address)
    if scheme.partition("+")[0] == "sqlite":
        path, mark, _ = rest.partition("?")
        return f"{scheme}://{path}{mark}{HIDDEN if mark else ''}"
    parts = _parts(rest)
    if parts is None:
        return f"{scheme}://{HIDDEN}"
    user, host = parts
    place, mark, query = host.partition("#")[0].partition("?")
    hosts, slash, name = place.partition("/")
    shown_user = f"{user.partition(':')[0]}:{HIDDEN}@" if ":" in user else f"{user}@" if user else ""
    if not _are_hosts(hosts):
        return f"{scheme}://{shown_user}{HIDDEN}"
    shown_query = "&".join(_shown_parameter(one) for one in re.split("[&;]", query)) if mark else ""
    return f"{scheme}://{shown_user}{hosts}{slash}{name}{mark}{shown_query}"


def discreet(text: str, address: str = "") -> str:
    """Return a text, of a driver or a traceback, without the secrets of ``address`` and of any address in it.

    Where a secret is too short to be cut out, a text that holds it is left out whole.
    """
    for secret in sorted(set(_secrets_of(address)), key=len, reverse=True):
        if secret not in text:
            continue
        if len(secret) < _SHORTEST:
            return "the reason is left out, as it may name the password"
        text = text.replace(secret, HIDDEN)
    text = _ADDRESS.sub(lambda found: shown_address(found[0]), text)
    return _WORD.sub(rf"\1\2{HIDDEN}", text)


def _parts(rest: str) -> tuple[str, str] | None:
    """Return what stands before the last @ and what stands behind it; None where that cannot be told apart.

    A password may hold any sign, written right or wrong, so the last @ ends it; one behind a question mark may be a
    password's or a parameter's.
    """
    if "@" in rest.partition("?")[2]:
        return None
    user, _, host = rest.rpartition("@")
    return user, host


def _shown_parameter(parameter: str) -> str:
    name, equals, _ = parameter.partition("=")
    if not equals:
        return HIDDEN
    return parameter if _is_harmless(name) else f"{name}={HIDDEN}"


def _are_hosts(text: str) -> bool:
    return all(_HOST.fullmatch(one) for one in text.split(","))


def _is_harmless(name: str) -> bool:
    return unquote_plus(name).strip().lower() in _HARMLESS


def _secrets_of(address: str) -> Iterator[str]:
    """Yield every text that may be a secret of an address, as written and as it is meant."""
    scheme, colon, rest = address.partition("://")
    found = [match[3].strip("'\"") for match in _WORD.finditer(address)]
    if colon and scheme.partition("+")[0] != "sqlite":
        parts = _parts(rest)
        if parts is None:
            found += [one for one in re.split("[@:?&=;/#]", rest) if not _is_harmless(one)]
        else:
            user, host = parts
            password = user.partition(":")[2]
            # where a sign in the password was not encoded, a driver takes what follows it for host, port or name
            found += [password, *re.split("[@:/?#]", password)]
            place, mark, query = host.partition("?")
            hosts = place.partition("/")[0]
            if not _are_hosts(hosts):  # a password without a host behind it
                found += [hosts.partition(":")[2], host.partition(":")[2], *re.split("[:,/?&;=#]", host)[1:]]
            parameters = (one.partition("=") for one in re.split("[&;]", query)) if mark else ()
            found += [value if equals else name for name, equals, value in parameters if not _is_harmless(name)]
    for one in found:
        for form in (one, unquote(one), unquote_plus(one), quote(one), quote_plus(one)):
            # as it is, and as Python quotes it in the words of a fault
            yield from (text for text in (form, repr(form)[1:-1], form.replace("\\", "\\\\")) if text)
