"""Numbers as meters, loggers and spreadsheets write them, turned into float64.

Rules: the decimal sign is decided once for a file; a cell that does not fit it is refused, never
guessed. Cells repeat a lot in a log, so each distinct text is looked at once.
"""

import math
import re
from collections import Counter
from collections.abc import Iterable, Sequence
from functools import lru_cache
from typing import Any

import numpy as np
from attrs import frozen
from numpy.typing import NDArray

from core.logs.words import unit_of
from core.traces import F64

#: what stands in a cell when there was nothing to write
MISSING = frozenset(
    {
        "", "-", "--", "---", "—", "–", "?", "*", "na", "n/a", "#n/a", "nan", "-nan", "null", "none", "nil",
        "missing", "unavailable", "unknown", "offline", "error", "err", "on", "off", "true", "false",
        "nicht verfügbar", "unbekannt", "indisponible", "inconnu", "no disponible", "desconocido", "brak",
        "nd",
        "n.d.", "k.a.", "s/d", "\\n", "inf?", "undefined", "#wert!", "#value!", "#ref!", "欠測",
        "ol", "####", "#####", "######", "########",
    }
)  # fmt: skip

#: the spellings of it that the fast reader knows too (it compares letter by letter)
MISSING_SPELLINGS = sorted(
    {m for m in MISSING if not m.startswith("\\")}
    | {m.upper() for m in MISSING}
    | {m.capitalize() for m in MISSING}
    | {"NaN", "N/a"}
)

SPACES = " \u00a0\u202f\u2009\u2007'’"
_GROUPS = str.maketrans("", "", SPACES)
_CELL = re.compile(
    rf"^([+\-−]?[\d][\d.,{SPACES}]*|[+\-−]?[.,]\d+)(?:[eE]([+\-]?\d{{1,3}}))?\s*([^\d\s][^\d]{{0,11}})?$"
)
_INFINITE = re.compile(r"^[+\-−]?(inf|infinity|∞)$", re.IGNORECASE)
_THOUSANDS = {
    # thousands, or thousands above which hundreds of them are parted, as in India
    ".": re.compile(r"^(?:\d{1,3}(,\d{3})+|\d{1,2}(,\d\d)+,\d{3})(\.\d*)?$"),
    ",": re.compile(r"^\d{1,3}(\.\d{3})+(,\d*)?$"),
}

#: cells that prove a column to have another decimal sign than the rest of the file
_PROOFS = 3
FINE, EMPTY, INFINITE, WRONG = 0, 1, 2, 3


@lru_cache(maxsize=1 << 13)
def parse(text: str, decimal: str) -> tuple[float, str, int]:
    """(value, unit, verdict) of one cell; the verdict is FINE, EMPTY, INFINITE or WRONG.

    Remembered, as every step of finding out what a log holds asks the same cells again.

    Examples
    --------
    >>> parse("1.234,5 W", ",")
    (1234.5, 'W', 0)
    """
    text = text.strip(" \t\u00a0\"'\ufeff")
    if text.casefold() in MISSING:
        return math.nan, "", EMPTY
    if _INFINITE.match(text):
        return math.nan, "", INFINITE
    match = _CELL.match(text)
    if not match:
        return math.nan, "", WRONG
    body, exponent, unit = match.groups()
    written = ""
    if unit:
        written = unit_of(unit.strip())[1]
        if not written and unit.strip() != "%":
            return math.nan, "", WRONG
    body = body.replace("−", "-").translate(_GROUPS)
    sign = -1.0 if body.startswith("-") else 1.0
    body = body.lstrip("+-")
    if _THOUSANDS[decimal].match(body):
        body = body.replace("," if decimal == "." else ".", "")
    if decimal == ",":
        if "." in body:
            return math.nan, "", WRONG
        body = body.replace(",", ".")
    if body.count(".") > 1 or "," in body:
        return math.nan, "", WRONG
    value = sign * float(f"{body}e{exponent}" if exponent else body)
    return (value, written, FINE) if math.isfinite(value) else (math.nan, "", INFINITE)


@frozen
class Numbers:
    """A column of numbers: values, verdict by row, and the units found inside cells with their counts."""

    values: F64
    verdicts: NDArray[np.int8]
    units: tuple[tuple[str, int], ...] = ()


def parse_column(column: Any, decimal: str) -> Numbers:
    """Parse an Arrow string column.

    Parameters
    ----------
    column : pyarrow.Array or ChunkedArray of strings
    decimal : {".", ","}
    """
    import pyarrow as pa

    whole = column.combine_chunks() if isinstance(column, pa.ChunkedArray) else column
    coded = whole.dictionary_encode()
    texts = coded.dictionary.to_pylist()
    codes = coded.indices.fill_null(len(texts)).to_numpy(zero_copy_only=False)
    values = np.full(len(texts) + 1, np.nan)
    verdicts = np.full(len(texts) + 1, EMPTY, dtype=np.int8)
    units: list[str] = [""] * (len(texts) + 1)
    for i, text in enumerate(texts):
        values[i], units[i], verdicts[i] = parse.__wrapped__(text, decimal)  # all differ: nothing to remember
    counts = np.bincount(codes, minlength=len(texts) + 1)
    seen: dict[str, int] = {}
    for unit, count in zip(units, counts.tolist(), strict=True):
        if unit:
            seen[unit] = seen.get(unit, 0) + count
    from core.units import ENERGY_IN_WH, POWER_IN_W

    if len(seen) > 1:  # a logger that changes from W to kW as it goes: all in one unit
        for table, base in ((POWER_IN_W, "W"), (ENERGY_IN_WH, "Wh")):
            if all(unit in table for unit in seen):
                values *= np.array([table.get(u, 1.0) for u in units])
                seen = {base: sum(seen.values())}
    return Numbers(values[codes], verdicts[codes], tuple(sorted(seen.items(), key=lambda p: -p[1])))


_COMMA = re.compile(r"^[+\-−]?\d+,\d+(?:[eE][+-]?\d+)?(?:\s*[^\d\s]{1,8})?$")
_POINT = re.compile(r"^[+\-−]?\d+\.\d+(?:[eE][+-]?\d+)?(?:\s*[^\d\s]{1,8})?$")
_GROUPED_POINT = re.compile(rf"^[+\-−]?\d{{1,3}}([,{SPACES}]\d{{3}})+\.\d+(?:\s*[^\d\s]{{1,8}})?$")
_GROUPED_COMMA = re.compile(rf"^[+\-−]?\d{{1,3}}([.{SPACES}]\d{{3}})+,\d+(?:\s*[^\d\s]{{1,8}})?$")
#: several groups of digits: the sign between them parts no fraction
_GROUPS_OF = {
    ",": re.compile(r"^[+\-−]?(?:\d{1,3}(?:,\d{3}){2,}|\d{1,2}(?:,\d\d)+,\d{3})$"),
    ".": re.compile(r"^[+\-−]?\d{1,3}(?:\.\d{3}){2,}$"),
}


def columns_of_other_sign(columns: Sequence[Sequence[str]], sign: str) -> frozenset[int]:
    """Columns in which every fraction has the decimal sign that is not `sign`.

    A sign before exactly three digits could be one between thousands and is no proof.
    """
    return frozenset(i for i, cells in enumerate(columns) if _is_of_other_sign(cells, sign))


def _is_of_other_sign(cells: Sequence[str], sign: str) -> bool:
    mine, other = (_COMMA, _POINT) if sign == "," else (_POINT, _COMMA)
    proofs = 0
    for cell in cells:
        text = cell.strip()
        if mine.match(text):
            return False
        if other.match(text):
            whole, fraction = re.split(r"[.,]", text)[:2]
            proofs += len(re.split(r"\D", fraction)[0]) != 3 or whole.lstrip("+-−") == "0"
    return proofs >= _PROOFS


def decimal_of(cells: Iterable[str]) -> tuple[str, int, int]:
    """(decimal sign, cells that show it, cells that show the other) of many cells.

    A lone comma or point followed by exactly three digits could be a thousands sign and counts for
    nothing unless it is the only evidence.
    """
    shown = Counter(map(_sign_shown, cells))
    comma, point = shown[",", True], shown[".", True]
    if not comma and not point:
        comma, point = shown[",", False], shown[".", False]
    return (",", comma, point) if comma > point else (".", point, comma)


@lru_cache(maxsize=1 << 13)
def _sign_shown(cell: str) -> tuple[str, bool]:
    """The decimal sign in a cell, "" for none, and whether it can be nothing else."""
    text = cell.strip()
    for sign, lone, grouped in ((",", _COMMA, _GROUPED_COMMA), (".", _POINT, _GROUPED_POINT)):
        if lone.match(text):
            digits = re.split(r"\D", text.split(sign)[1])[0]
            return sign, len(digits) != 3 or text.lstrip("+-−").startswith("0")
        if grouped.match(text):
            return sign, True
        if _GROUPS_OF[sign].match(text):
            return "." if sign == "," else ",", True
    return "", False
