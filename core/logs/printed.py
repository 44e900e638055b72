"""Objects as programs print them, made into JSON: quotes of one stroke, None, True, moments by their fields.

Rules: only marks and words are exchanged, nothing is evaluated; what is no such object stays what it was, and
is refused as damaged JSON.
"""

import re

_TOKEN = re.compile(
    r"""(?P<one>'(?:[^'\\\n]|\\.)*')|(?P<two>"(?:[^"\\\n]|\\.)*")"""
    r"""|(?P<moment>\b(?:datetime\.)?datetime\((?P<fields>\d{1,6}(?:,\s?\d{1,6}){4,6})(?:,\s?tzinfo=(?P<zone>[^()]{1,30}))?\))"""
    r"""|(?P<number>\b(?:np\.|numpy\.)?(?:float|int)\d{0,2}\((?P<value>[^()]{1,40})\))"""
    r"""|(?P<word>\b(?:True|False|None|nan|inf)\b)"""
)
_WORDS = {"True": "true", "False": "false", "None": "null", "nan": "null", "inf": "null"}
_BEGINS = re.compile(rb"[\[{(,]\s*(?:[\[{]\s*)?'")


def is_printed(text: bytes) -> bool:
    """Whether an object's first key stands in quotes of one stroke, which JSON does not know."""
    return bool(_BEGINS.match(text.lstrip()[:200]))


def as_json(text: str) -> str:
    """A printed object, or several, as JSON.

    Examples
    --------
    >>> as_json("{'on': True, 'p': None, 't': datetime.datetime(2025, 6, 23, 9, 36)}")
    '{"on": true, "p": null, "t": "2025-06-23T09:36:00"}'
    """
    return _TOKEN.sub(_exchanged, text)


def _exchanged(match: re.Match[str]) -> str:
    if match["one"]:
        inner = match["one"][1:-1].replace("\\'", "'")
        return '"' + re.sub(r'(?<!\\)"', r"\"", inner) + '"'
    if match["moment"]:
        return f'"{_moment(match["fields"], match["zone"])}"'
    if match["number"]:
        return match["value"]
    return _WORDS[match["word"]] if match["word"] else match[0]


def _moment(fields: str, zone: str | None) -> str:
    year, month, day, hour, minute, *rest = (int(f) for f in fields.split(","))
    second, micro = (*rest, 0, 0)[:2]
    fraction = f".{micro:06d}" if micro else ""
    end = "Z" if zone is not None and "utc" in zone.casefold() else ""
    return f"{year:04d}-{month:02d}-{day:02d}T{hour:02d}:{minute:02d}:{second:02d}{fraction}{end}"
