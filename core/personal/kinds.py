"""What counts as personal data in logs and notes, and how each kind is told from the rest of a text.

Rules: a pattern that would take measured values for personal data is worse than one that misses a rare form,
so numbers count only where a word beside them says what they are. What is found is shown to a person, who
decides.
"""

import ipaddress
import re
from collections.abc import Callable, Iterator, Mapping
from typing import Final, Literal

from attrs import frozen

from core.language import mark

Kind = Literal[
    "device name",
    "e-mail address",
    "user name in a path",
    "hardware address",
    "network address",
    "network name",
    "serial number",
    "position",
]
#: as people read them
TITLES: Final[Mapping[Kind, str]] = {
    "device name": mark("device name"),
    "e-mail address": mark("e-mail address"),
    "user name in a path": mark("user name in a path"),
    "hardware address": mark("hardware address"),
    "network address": mark("network address"),
    "network name": mark("network name"),
    "serial number": mark("serial number"),
    "position": mark("position"),
}
KINDS: Final[tuple[Kind, ...]] = tuple(TITLES)


@frozen
class _Pattern:
    kind: Kind
    found: re.Pattern[str]
    is_meant: Callable[[str], bool] = lambda text: True


def _is_address(text: str) -> bool:
    try:
        address = ipaddress.ip_address(text)
    except ValueError:
        return False
    # a zero address, and a computer's own, say nothing of anybody
    return not (address.is_unspecified or address.is_loopback)


def _has_digit(text: str) -> bool:
    return any(c.isdigit() for c in text)


def _is_mixed(text: str) -> bool:
    return _has_digit(text) and any(c.isalpha() for c in text)


#: between the word that says what a value is, and the value
_LINK: Final = r"[\"']?[ \t]*[:=,;\t][ \t]*[\"']?"

_PATTERNS: Final[tuple[_Pattern, ...]] = (
    _Pattern(
        "e-mail address",
        re.compile(r"(?<![\w.+-])([\w.+-]{1,64}@[\w-]{1,63}(?:\.[\w-]{1,63}){1,8})(?![\w-])"),
    ),
    _Pattern(
        "user name in a path",
        re.compile(r"(?:/home/|/Users/|[A-Za-z]:\\{1,2}Users\\{1,2})([^/\\\s\"',;:<>|]{1,64})"),
    ),
    _Pattern(
        "hardware address",
        re.compile(
            r"(?<![0-9A-Fa-f:-])((?:[0-9A-Fa-f]{2}([:-]))(?:[0-9A-Fa-f]{2}\2){4}[0-9A-Fa-f]{2})(?![0-9A-Fa-f:-])"
        ),
    ),
    # the same without signs between, as names of devices often end in one
    _Pattern(
        "hardware address", re.compile(r"(?<![0-9A-Za-z.])([0-9A-Fa-f]{12})(?![0-9A-Za-z.])"), _is_mixed
    ),
    _Pattern("network address", re.compile(r"(?<![\d.])(\d{1,3}(?:\.\d{1,3}){3})(?![\d.])"), _is_address),
    _Pattern(
        "network address",
        re.compile(r"(?<![0-9A-Za-z:.])((?:[0-9A-Fa-f]{0,4}:){2,7}[0-9A-Fa-f]{0,4})(?![0-9A-Za-z:.])"),
        lambda text: len(text) > 4 and _is_address(text),
    ),
    _Pattern(
        "network name",
        re.compile(
            rf"(?i)\b(?:ssid|wi-?fi(?:[ _-]?name)?){_LINK}([^\"',;\t\r\n]{{1,32}}?)(?=[\"',;\t\r\n]|$)"
        ),
    ),
    _Pattern(
        "serial number",
        re.compile(
            r"(?i)\b(?:serial(?:[ _-]?(?:number|num|no|nr)\.?)?|s/n|imei|device[ _-]?id|mac)"
            rf"{_LINK}([A-Za-z0-9][A-Za-z0-9_-]{{3,63}})"
        ),
        _has_digit,
    ),
    _Pattern(
        "serial number",
        re.compile(
            r"(?<![0-9A-Za-z-])([0-9A-Fa-f]{8}-[0-9A-Fa-f]{4}-[0-9A-Fa-f]{4}-[0-9A-Fa-f]{4}-[0-9A-Fa-f]{12})"
            r"(?![0-9A-Za-z-])"
        ),
    ),
    _Pattern(
        "position",
        re.compile(rf"(?i)\b(?:lat|latitude|lon|lng|longitude|gps){_LINK}(-?\d{{1,3}}\.\d{{2,}})"),
    ),
)


def with_positions(text: str, pseudonyms: Mapping[str, str]) -> str:
    """The text with positions replaced where a word says that they are: elsewhere the same digits are others.

    Examples
    --------
    >>> with_positions('"lat": 48.13, "power": 48.13', {"48.13": "0.01"})
    '"lat": 0.01, "power": 48.13'
    """
    for pattern in _PATTERNS:
        if pattern.kind == "position":
            text = pattern.found.sub(
                lambda m: m[0][: m.start(1) - m.start()] + pseudonyms.get(m[1], m[1]), text
            )
    return text


_DIGITS: Final = str.maketrans("123456789", "000000000")
_MOST_SHAPES: Final = 50_000


def found_in(text: str) -> Iterator[tuple[Kind, str]]:
    """Everything in a text that looks like personal data, each time it stands there.

    Examples
    --------
    >>> list(found_in("from 192.168.1.20 by ann@example.org, 12.5 W"))
    [('e-mail address', 'ann@example.org'), ('network address', '192.168.1.20')]
    """
    known: dict[str, tuple[_Pattern, ...]] = {}
    for line in text.replace("}", "}\n").split("\n"):
        # rows of a log differ in their digits alone: what a row of zeros is like is looked up once
        shape = line.translate(_DIGITS)
        if shape not in known:
            if len(known) > _MOST_SHAPES:
                known.clear()
            known[shape] = tuple(p for p in _PATTERNS if p.found.search(shape))
        for pattern in known[shape]:
            for match in pattern.found.finditer(line):
                if pattern.is_meant(match[1]):
                    yield pattern.kind, match[1]
