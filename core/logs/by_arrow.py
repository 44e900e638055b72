"""A block of regular rows as an Arrow table: the quickest way that fits it is found by trying.

Rules: a way gives exactly the values of the slower ones or nothing. Arrow is told every column's type, so
that it guesses nothing.
"""

from collections.abc import Sequence
from typing import Any, Literal

from attrs import frozen

from core.logs import numbers
from core.logs.even_stamps import WIDTH, whole_seconds
from core.logs.sniff import Form
from core.logs.source import BLOCK

#: how a column is read; "dated text" are stamps of one decided form, turned into seconds block by block;
#: a "swapped number" has the other decimal sign than the file
Kind = Literal["number", "local stamp", "stamp", "dated text", "swapped number", "text", "skip"]
_STAMPS = ("stamp", "local stamp")


@frozen
class Way:
    """How a block is tried.

    ``unit`` is that of the stamps, "" where they are of one width and read by `whole_seconds`;
    without ``may_miss`` every number is there, and no cell needs to be held against the words for none.
    """

    unit: Literal["", "s", "us"]
    may_miss: bool


#: reads what the others read, and more
SURE = Way("us", True)


def ways(kinds: Sequence[Kind]) -> tuple[Way, ...]:
    """The ways to try, quickest first."""
    tried = [Way("", False), Way("", True), Way("s", True), SURE]
    if set(_STAMPS).isdisjoint(kinds):
        tried = [Way("us", False), SURE]
    # what is kept as text may hold a word for no value, which must be told from text
    is_free = {"number", "skip", *_STAMPS}.issuperset(kinds)
    return tuple(w for w in tried if w.may_miss or is_free)


def read(block: Any, form: Form, kinds: Sequence[Kind], way: Way = SURE, delimiter: str | None = None) -> Any:
    """The block as an Arrow table without its skipped columns, None where this way does not fit it.

    Parameters
    ----------
    block : buffer of whole lines
    form : Form
    kinds : Kind a column
    way : Way
    delimiter : str, optional
        Where the lines were put together anew; else that of the form.
    """
    import pyarrow as pa
    from pyarrow import csv

    types = {
        "number": pa.float64(), "text": pa.string(), "dated text": pa.string(), "skip": pa.string(),
        "swapped number": pa.string(),
    }  # fmt: skip
    if way.unit:
        types |= {"stamp": pa.timestamp(way.unit, "UTC"), "local stamp": pa.timestamp(way.unit)}
    else:
        types |= {"stamp": pa.binary(WIDTH + 1), "local stamp": pa.binary(WIDTH)}
    names = [f"c{i}" for i in range(len(kinds))]
    try:
        table = csv.read_csv(
            pa.BufferReader(pa.py_buffer(block)),
            read_options=csv.ReadOptions(column_names=names, block_size=BLOCK, use_threads=False),
            parse_options=csv.ParseOptions(
                delimiter=delimiter or form.delimiter, ignore_empty_lines=delimiter is not None
            ),
            convert_options=csv.ConvertOptions(
                column_types={n: types[k] for n, k in zip(names, kinds, strict=True)},
                include_columns=[n for n, k in zip(names, kinds, strict=True) if k != "skip"],
                decimal_point=form.decimal,
                null_values=numbers.MISSING_SPELLINGS if way.may_miss else [],
                strings_can_be_null=True,
            ),
        )
    except pa.ArrowInvalid:
        return None
    return table if way.unit else _clocked(table, kinds)


def _clocked(table: Any, kinds: Sequence[Kind]) -> Any:
    """The table with its stamps of one width as time stamps, None where some are not of that form."""
    for place, kind in enumerate(k for k in kinds if k != "skip"):
        if kind in _STAMPS:
            chunks = [whole_seconds(c, kind == "stamp") for c in table.column(place).chunks]
            if not chunks or any(c is None for c in chunks):
                return None
            table = table.set_column(place, table.field(place).name, chunks)
    return table
