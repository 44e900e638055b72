"""Tables out of Arrow's columns, and numbers out of its columns of text."""

from typing import Any

import numpy as np
from attrs import evolve

from core.logs.table import Table
from core.traces import F64


def table_of_arrow(arrow: Any) -> Table:
    """An Arrow table as a `Table`: nested fields become columns named ``outer.inner``."""
    import pyarrow as pa
    import pyarrow.compute as pc

    for _ in range(4):
        if not any(pa.types.is_struct(f.type) for f in arrow.schema):
            break
        arrow = arrow.flatten()
    names: list[str] = []
    columns: list[Any] = []
    for name, column in zip(arrow.schema.names, arrow.columns, strict=True):
        kind = column.type
        if pa.types.is_dictionary(kind):
            column = column.cast(kind.value_type)
            kind = column.type
        if pa.types.is_floating(kind) or pa.types.is_integer(kind) or pa.types.is_decimal(kind):
            columns.append(_own(column.cast(pa.float64(), safe=False)))
        elif pa.types.is_timestamp(kind):
            columns.append(column)
        elif pa.types.is_date(kind) or pa.types.is_time(kind):
            columns.append(column.cast(pa.string()))
        elif pa.types.is_duration(kind):
            scale = {"s": 1.0, "ms": 1e3, "us": 1e6, "ns": 1e9}[kind.unit]
            columns.append(np.array(column.cast(pa.int64()).to_numpy(), dtype=np.float64) / scale)
            name = f"{name} [s]"
        elif pa.types.is_string(kind) or pa.types.is_large_string(kind):
            columns.append(pc.cast(column, pa.string()))
        else:
            continue
        names.append(name)
    return Table(tuple(names), tuple(columns), arrow.num_rows, ((0, 1),))


def _own(column: Any) -> F64:
    """Numbers that nobody else holds, copied once."""
    values: F64 = column.to_numpy()
    return values if values.flags.writeable else values.copy()


def with_numbers(table: Table, wanted: list[bool]) -> tuple[Table, str]:
    """Parse text columns that should hold numbers; returns the decimal sign found in them too."""
    from core.logs import numbers

    columns, wrong, units = list(table.columns), dict(table.wrong), dict(table.units)
    texts = [
        c
        for c, w in zip(columns, wanted, strict=True)
        if w and c is not None and not isinstance(c, np.ndarray)
    ]
    sample = [str(x) for c in texts for x in c.slice(0, 2000).to_pylist() if x is not None]
    sign = numbers.decimal_of(sample)[0] if sample else "."
    other = "." if sign == "," else ","
    for i, (column, want) in enumerate(zip(table.columns, wanted, strict=True)):
        if not want or column is None or isinstance(column, np.ndarray):
            continue
        import pyarrow as pa

        if not pa.types.is_string(column.type):
            columns[i] = None
            continue
        cells = [str(x) for x in column.slice(0, 2000).to_pylist() if x is not None]
        is_other = bool(numbers.columns_of_other_sign([cells], sign))
        parsed = numbers.parse_column(column, other if is_other else sign)
        columns[i] = parsed.values
        bad = np.flatnonzero(parsed.verdicts >= numbers.INFINITE)
        if bad.size:
            wrong[i] = bad
        if parsed.units:
            units[i] = parsed.units[0][0]
    return evolve(table, columns=tuple(columns), wrong=wrong, units=units), sign
