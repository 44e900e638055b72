"""Text logs whose rows name their values: ``power=62.3 W, energy=45 Wh``, a stamp before them or among them.

Rules: a name begins with a letter and ends at the sign between name and value; a value ends where the next
name begins, so a decimal comma is safe among commas. Lines without a pair are set aside with their numbers.
"""

import re
from itertools import islice

from attrs import evolve, frozen

from core.language import later, mark
from core.logs import text
from core.logs.cell_kinds import cell_kind
from core.logs.cells import table_of_cells
from core.logs.reading import REFUSED_KEPT
from core.logs.table import Broken
from core.logs.unpacked import Item, refused
from core.logs.words import meaning
from core.problems import Problem

#: lines that are looked at to see whether a text is of this kind, and the share of them that must be
_LOOKED_AT = 200
_SHARE = 0.8
#: a longer line is no row of a log
_LONGEST = 1 << 16
_MOST_NAMES = 2000
_LOADS = frozenset({"power", "energy"})

#: a word with its unit in brackets, and more words where a sign of separation stands before them
_WORD = r"[^\W\d][\w.\-/%]{0,40}(?:\s?[\[(][^\[\]()=:;,]{1,12}[\])])?"
_WORDS = r"[^\W\d][\w.\-/%]{0,40}(?:\s[^\W\d][\w.\-/%]{0,40}){0,4}(?:\s?[\[(][^\[\]()=:;,]{1,12}[\])])?"
_PAIR = {
    sign: re.compile(
        rf"(?:^|[,;|&\t{{(]\s*)({_WORDS})\s*{sign}(?![{sign}/])|(?<=\s)({_WORD})\s*{sign}(?![{sign}/])"
    )
    for sign in "=:"
}
#: what a line must hold at least, so that other logs are passed over quickly: clock times hold colons too
_HINT = {"=": re.compile("="), ":": re.compile(r"[^\W\d][\])]?\s?:")}
_ENDS = " \t,;|&{}()<>/\"'"
#: a moment in digits behind the last value of a line, and whole numbers told by a letter
_MOMENT = re.compile(r"(\S+)\s+(\d{10}|\d{13}|\d{16}|\d{19})")
_WHOLE = re.compile(r"^(-?\d+)[iu]$")
_FRACTION = re.compile(r"(:\d\d),(\d{1,6})(?!\d)")
#: the number of a process behind its name
_PROCESS = re.compile(r"\[\d+$")
_SPLIT = re.compile(r"[,;|\t]")
#: words that the stamp at the beginning of a line may be made of
_STAMP_WORDS = 4
#: how urgent a program holds a line to be
_LEVELS = frozenset({"", "INFO", "DEBUG", "WARN", "WARNING", "NOTICE", "TRACE"})


@frozen
class _Line:
    """The cells before the first pair, and the pairs."""

    lead: tuple[str, ...]
    pairs: tuple[tuple[str, str], ...]


def sign_of(head: str) -> str | None:
    """The sign between names and values, ``"="`` or ``":"``; None when a text is not of this kind.

    Examples
    --------
    >>> sign_of("09:36:00 power=5.1 W energy=2 Wh")
    '='
    >>> sign_of("time,power,energy") is None
    True
    """
    lines = [x for x in islice(head.splitlines(), _LOOKED_AT) if x.strip()]
    for sign in _PAIR:
        if sum(bool(_HINT[sign].search(x)) for x in lines) < _SHARE * len(lines):
            continue
        taken = [_taken_apart(x[:_LONGEST], sign) for x in lines]
        told = [x for x in taken if x.pairs and (sign == "=" or len(x.pairs) > 1 or _is_stamp(x.lead[:1]))]
        names = {name for x in told for name, _ in x.pairs}
        if len(told) >= _SHARE * len(lines) > 0 and any(meaning(n).quantity in _LOADS for n in names):
            return sign
    return None


def is_made_of_pairs(data: bytes) -> bool:
    """Whether a text, in whatever encoding, is of this kind, by its beginning."""
    head = data[: text.HEAD]
    if b"=" not in head and b":" not in head:
        return False
    return sign_of(text.decode(head, "").data.decode("utf-8", "replace")) is not None


def open_pairs(data: bytes, name: str, encoding: str | None) -> list[Item] | Problem:
    """The table that the lines make: a column for each name, in the order in which names first come."""
    decoded = text.decode(data, name, encoding)
    whole = decoded.data.decode("utf-8", "replace")
    sign = sign_of(whole[: text.HEAD]) or "="
    rows: list[_Line] = []
    lines: list[int] = []
    broken: list[Broken] = []
    count = 0
    for i, written in enumerate(whole.split("\n"), 1):
        if not written.strip():
            continue
        line = _taken_apart(written[:_LONGEST], sign)
        if line.pairs:
            rows.append(line)
            lines.append(i)
            continue
        count += 1
        if len(broken) < REFUSED_KEPT:
            broken.append(Broken(i, written[:300], "row.pairs"))
    width = max((len(r.lead) for r in rows[:_LOOKED_AT]), default=0)
    names = list(dict.fromkeys(n for r in rows for n, _ in r.pairs))
    if not rows or len(names) > _MOST_NAMES:
        return refused(name, "log.no_table", first_line=whole[:120].split("\n")[0])
    import numpy as np

    columns: list[list[str | None]] = [
        [r.lead[i] if i < len(r.lead) else None for r in rows] for i in range(width)
    ]
    told = [dict(r.pairs) for r in rows]
    columns += [[pairs.get(n) for pairs in told] for n in names]
    heads = [*(f"column {i + 1}" for i in range(width)), *names]
    table = table_of_cells(heads, columns, np.array(lines, dtype=np.int64))
    table = evolve(table, broken=tuple(broken), broken_count=count)
    told_by = later(mark("{encoding}: {why}"), encoding=decoded.encoding, why=decoded.reason)
    why = ("layout", f"lines of names and values, '{sign}' between them")
    reasons = (("encoding", told_by), why)
    return [Item(table, encoding=decoded.encoding, reasons=reasons, problems=decoded.problems)]


def _taken_apart(line: str, sign: str) -> _Line:
    found = list(_PAIR[sign].finditer(line))
    if not found:
        return _Line((), ())
    ends = [*(m.start() for m in found[1:]), len(line)]
    pairs = tuple(
        ((m.group(1) or m.group(2)).strip(), line[m.end() : end].strip(_ENDS))
        for m, end in zip(found, ends, strict=True)
    )
    moment = _MOMENT.fullmatch(pairs[-1][1])
    if moment and sign == "=":
        values = [(n, _WHOLE.sub(r"\1", v)) for n, v in (*pairs[:-1], (pairs[-1][0], moment[1]))]
        pairs = (*values, ("time", moment[2]))
    return _Line(lead(line[: found[0].start()].strip(_ENDS + "-[]")), pairs)


def lead(before: str) -> tuple[str, ...]:
    """What stands at the beginning of a line, as cells: a stamp, then the words after it.

    Examples
    --------
    >>> lead("2025-06-23 09:36:00 INFO plug 7:")
    ('2025-06-23 09:36:00', 'plug 7')
    """
    if not before:
        return ()
    # a comma before the fraction of a second parts nothing
    before = _FRACTION.sub(r"\1.\2", before, count=1)
    cells = [c.strip(_ENDS + "[]") for c in _SPLIT.split(before)]
    words = cells[0].split()
    for count in range(min(_STAMP_WORDS, len(words)), 0, -1):
        if words[count - 1].strip("[]:") in _LEVELS:  # no zone, though written like one
            continue
        if _is_stamp((" ".join(words[:count]).strip("[]"),)):
            rest = " ".join(w for w in words[count:] if w.strip("[]:-") not in _LEVELS).strip("[]: -")
            rest = _PROCESS.sub("", rest)
            return (" ".join(words[:count]).strip("[]"), *([rest] if rest else []), *cells[1:])
    return tuple(cells)


def _is_stamp(cells: tuple[str, ...]) -> bool:
    return bool(cells) and cell_kind(cells[0].rstrip(":")) == "stamp"
