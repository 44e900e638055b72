"""Rows spelt as programs show or protect them, brought to plain cells.

They are formulas, frames, arrows behind the time, brackets around a row, rare signs between cells.

Rules: a way is taken only where nearly all rows are spelt so; lines stay where they were, so that
their numbers do. What was done is told as a reason.
"""

import re
from collections.abc import Callable, Sequence

from attrs import frozen

from core.language import later, mark
from core.logs import printed
from core.logs.cell_kinds import cell_kind

#: rows that are looked at, and the share of them that must be spelt alike
_LOOKED_AT, _SHARE = 60, 0.9
#: share of the cells between rare signs that must be values
_VALUES = 0.6
#: what has to stand in a text that is spelt in one of these ways, so that others are passed over quickly
_HINTS = ('="', '=""', "│", "┃", " -> ", " → ", "(", "[", "\x1f", "\x01", "^", "~", "¦", "§")
_FORMULA = re.compile(r'"=""([^"\n]*)"""|(?<![^,;\t|\n])="([^"\n]*)"')
_FRAME = str.maketrans("│┃║┆", "||||")
#: a line of a frame, or of the names of types below headings
_RULE = re.compile(r"^[\s\-+|:=·.…─━═╌╍┄┅┌┬┐├┼┤└┴┘╞╪╡╭╮╰╯┏┳┓┣╋┫┗┻┛┡╇┩╔╦╗╠╬╣╚╩╝╟╫╢╤╧╥╨╒╕╘╛╓╖╙╜]*$")
_TYPES = re.compile(
    r"^(?:str|string|text|varchar|object|cat|f32|f64|float\d*|double|real|decimal\S*|[iu]\d{1,2}|u?int\d*"
    r"|bigint|integer|---|bool\w*|date|time|timestamp\w*|datetime\S*|datetime\[.*\]|null)$",
    re.IGNORECASE,
)
_ARROW = re.compile(r"^(\[?\d[\d:.,\-/T ]{6,28}\]?)\s(?:->|→)\s(?=\S)")
_BRACKETS = re.compile(r"^\s*[(\[]([^()\[\]]*,[^()\[\]]*)[)\]]\s*[,;]?\s*$")
_RARE = {"\x1f": "0x1F", "\x01": "0x01", "^": "^", "~": "~", "¦": "¦", "§": "§"}


@frozen
class Spelling:
    """How rows are spelt: `plain` brings a whole text to plain cells."""

    plain: Callable[[str], str]
    reason: str


def find(lines: Sequence[str]) -> Spelling | None:
    r"""How the rows of a text are spelt; None where they are plain.

    Parameters
    ----------
    lines : sequence of str
        The first lines of the text.

    Examples
    --------
    >>> find(["time,W", "09:36,6.2"]) is None
    True
    >>> find(["time^W", "09:36^6.2", "09:37^6.4"]).plain("09:36^6.2")
    '09:36\t6.2'
    """
    rows = [x for x in lines if x.strip()][-_LOOKED_AT:]
    together = "\n".join(rows)
    if not any(hint in together for hint in _HINTS):
        return None
    for way in (_formulas, _frame, _arrows, _in_brackets, _rare_sign):
        found = way(rows)
        if found is not None:
            return found
    return None


def _most(count: int, rows: Sequence[str]) -> bool:
    return len(rows) > 1 and count >= _SHARE * len(rows) - 1


def _formulas(rows: Sequence[str]) -> Spelling | None:
    if not _most(sum(bool(_FORMULA.search(x)) for x in rows), rows):
        return None

    def plain(text: str) -> str:
        return _FORMULA.sub(lambda m: f'"{m[1] if m[1] is not None else m[2]}"', text)

    return Spelling(plain, later(mark('cells are written as formulas, ="…"')))


def _frame(rows: Sequence[str]) -> Spelling | None:
    if not _most(sum(x.lstrip()[:1] in ("│", "┃", "║", "┌", "╞", "├", "└") for x in rows), rows):
        return None

    def plain(text: str) -> str:
        return "\n".join(_unframed(x) for x in text.split("\n"))

    return Spelling(plain, later(mark("a table in a frame, as programs print it")))


def _unframed(line: str) -> str:
    line = line.rstrip("\r").translate(_FRAME)
    cells = [c.strip() for c in line.strip().strip("|").split("|")]
    if _RULE.match(line) or all(_TYPES.match(c) for c in cells):
        return ""
    return line


def _arrows(rows: Sequence[str]) -> Spelling | None:
    rests = [x[m.end() :] for x in rows if (m := _ARROW.match(x))]
    if not _most(len(rests), rows):
        return None
    sign = next((s for s in ";\t," if sum(s in x for x in rests) >= _SHARE * len(rests)), " ")
    by_line = re.compile(_ARROW.pattern, re.MULTILINE)

    def plain(text: str) -> str:
        return by_line.sub(lambda m: m[1] + sign, text)

    return Spelling(plain, later(mark("an arrow stands between the time and the values")))


def _in_brackets(rows: Sequence[str]) -> Spelling | None:
    if not any(x.lstrip()[:1] in ("(", "[") for x in rows):
        return None
    bare = printed.as_json("\n".join(rows)).split("\n")
    if not _most(sum(bool(_BRACKETS.match(x)) for x in bare), bare):
        return None

    def plain(text: str) -> str:
        return "\n".join(_unbracketed(x) for x in printed.as_json(text).split("\n"))

    return Spelling(plain, later(mark("each row stands in brackets, as programs print it")))


def _unbracketed(line: str) -> str:
    within = _BRACKETS.match(line)
    return line if within is None else re.sub(r",\s+", ",", within[1].strip())


def _rare_sign(rows: Sequence[str]) -> Spelling | None:
    for sign, shown in _RARE.items():
        counts = [x.count(sign) for x in rows]
        usual = max(set(counts), key=counts.count)
        if usual and _most(counts.count(usual), rows) and _parts_values(rows, sign):

            def plain(text: str, sign: str = sign) -> str:
                return text.replace(sign, "\t")

            return Spelling(plain, later(mark("{sign} stands between the cells, read as a tab"), sign=shown))
    return None


def _parts_values(rows: Sequence[str], sign: str) -> bool:
    """Whether what stands between the signs are values, and no others of the usual signs are at work."""
    kinds = [cell_kind(c) for x in rows for c in x.split(sign)]
    return kinds.count("number") + kinds.count("stamp") > _VALUES * len(kinds) and "\t" not in "".join(rows)
