"""Stamps that count milliseconds with words around them: ``/Date(1700000000000+0200)/``.

Rules: the number is the moment itself; the offset after it says only what the wall clock showed.
"""

from typing import Any

import numpy as np

from core.traces import F64

_FORM = r"^\s*/Date\((?P<ms>\d{11,14})(?P<offset>[+\-]\d{4})?\)/\s*$"


def seconds_of(column: Any) -> tuple[F64, float] | None:
    """Moments of an Arrow string column, and the first offset from UTC; None where it holds other stamps. [s]

    Examples
    --------
    >>> import pyarrow as pa
    >>> seconds_of(pa.array(["/Date(1700000000000+0200)/", None]))
    (array([1.7e+09,     nan]), 7200.0)
    """
    import pyarrow as pa
    import pyarrow.compute as pc

    first = next((str(c) for c in column[:50] if c.as_py()), "")
    if not first.lstrip().startswith("/Date("):
        return None
    parts = pc.extract_regex(column, _FORM)
    counted = pc.cast(pc.struct_field(parts, "ms"), pa.int64())
    seconds = np.asarray(pc.cast(counted, pa.float64()).to_numpy(zero_copy_only=False)) / 1e3
    written = next((o for p in parts[:50] if (o := (p.as_py() or {}).get("offset"))), "+0000")
    offset_s = (int(written[1:3]) * 3600.0 + int(written[3:5]) * 60.0) * (-1.0 if written[0] == "-" else 1.0)
    return seconds, offset_s
