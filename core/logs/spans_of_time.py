"""Cells that hold a span of time, as ``09:00 - 09:15``: each row counts from where its span begins.

Rules: a cell is cut only where the end differs from row to row, as an offset from UTC would not.
"""

import re
from typing import Any

_CLOCK = r"\d{1,2}[:.]\d\d(?:[:.]\d\d(?:[.,]\d{1,9})?)?(?:\s?[AaPp]\.?[Mm]\.?)?"
_DATE = r"(?:\d{1,4}[-/.]\d{1,2}[-/.]\d{1,4}\.?(?:T|,?\s)\s?)?"
#: what stands behind the beginning, up to the end of the cell
END = (
    rf"(?:\s?(?:[-–—~]|bis|to|until|till)\s?{_DATE}{_CLOCK}|/{_DATE}{_CLOCK}(?:Z|[+\-]\d\d:?\d\d)?"
    r"|/P[\dDTHMS]{2,12})"
)
_SPAN = re.compile(rf"(?:^|.*?[\sT,])\d{{1,2}}[:.]\d\d\S*?(?:\s?[AaPp]\.?[Mm]\.?)?({END})$")
_LOOKED_AT = 50


def has_span(cell: str) -> bool:
    """Whether a cell can hold a span of time."""
    return _SPAN.match(cell.strip()) is not None


def beginnings(column: Any) -> Any | None:
    """An Arrow string column with the beginning of each span; None where it holds no spans.

    Examples
    --------
    >>> import pyarrow as pa
    >>> beginnings(pa.array(["09:00 - 09:15", "09:15 - 09:30"])).to_pylist()
    ['09:00', '09:15']
    >>> beginnings(pa.array(["09:00-07:00", "09:15-07:00"])) is None
    True
    """
    first = [c for x in column[:_LOOKED_AT] if (c := x.as_py())]
    found = [_SPAN.match(c.strip()) for c in first[:2]]
    if not found or not all(found):
        return None
    ends = [m[1] for c in first if (m := _SPAN.match(c.strip()))]
    if len(ends) < len(first) or (len(set(ends)) < 2 and not ends[0].startswith("/P")):
        return None
    import pyarrow.compute as pc

    return pc.replace_substring_regex(column, rf"{END}\s*$", "")
