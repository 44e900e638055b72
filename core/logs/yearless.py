"""Stamps with a month in words and no year, as system logs have them: ``Jun 23 09:36:00``.

Rules: without its year a stamp is no moment, so only the time between rows is taken; after December comes the
January of the next year.
"""

import re
from typing import Any

import numpy as np

from core.logs import stamps
from core.logs.words import plain
from core.traces import F64

_FORM = re.compile(
    r"^\s*(?:[^\W\d_]{2,4}\.?,?\s+)?([^\W\d_]{3,10})\.?\s+(\d{1,2}),?\s+(\d\d):(\d\d):(\d\d)(?:[.,](\d{1,9}))?\s*$"
)
#: years with and without a 29 February to count in
_LEAP, _COMMON = 2004, 2001


def seconds_of(column: Any) -> F64 | None:
    """Seconds from the first of a year, NaN where a stamp cannot be read; None for stamps of other forms. [s]

    Parameters
    ----------
    column : pyarrow.StringArray or pyarrow.ChunkedArray
    """
    first = [str(c) for c in column[:50] if c.as_py()]
    if not first or sum(_read(c) is not None for c in first) <= 0.5 * len(first):
        return None
    read = [None if c is None else _read(c) for c in column.to_pylist()]
    leap = any(r is not None and r[:2] == (2, 29) for r in read)
    year, last = (_LEAP if leap else _COMMON), 0
    out = np.full(len(read), np.nan)
    for i, found in enumerate(read):
        if found is None:
            continue
        month, day, second = found
        if month == 1 and last == 12:
            year += 1
        elif month == 12 and last == 1:
            year -= 1
        last = month
        fields = (np.array([n], dtype=np.int64) for n in (year, month, day))
        out[i] = stamps.midnight(*fields)[0] + second
    return out


def _read(cell: str) -> tuple[int, int, float] | None:
    """(month, day, second of the day)."""
    match = _FORM.match(cell)
    month = None if match is None else stamps.MONTHS.get(plain(match[1]))
    if match is None or month is None or int(match[3]) > 23 or int(match[4]) > 59 or int(match[5]) > 60:
        return None
    fraction = float(f"0.{match[6]}") if match[6] else 0.0
    return month, int(match[2]), int(match[3]) * 3600 + int(match[4]) * 60 + int(match[5]) + fraction
