"""Traces as few bytes, for the way from one process or computer to another, the same to the last bit.

Theory. A meter shows decimal numbers with a few digits, a column of them mostly stands still, and a clock
mostly ticks evenly. So the float64 values of a column are whole numbers over a power of ten, times the factor
of their unit, and the steps between these whole numbers (for times, the steps of the steps) are small and
repeat. These are packed by zlib. A column of other values goes with its bytes sorted by their place in the
number, which zlib packs less well.

Rules: what is packed is unpacked at once and held against the column, bit by bit; a way that does not give
the same bits is not taken.
"""

import zlib
from collections.abc import Iterator

import numpy as np
from attrs import evolve, frozen
from numpy.typing import NDArray

from core.traces import F64, Trace, read_only
from core.units import ENERGY_IN_WH

#: digits behind the decimal sign, and factors of units, that are looked for
_DIGITS = range(7)
_FACTORS = (1.0, ENERGY_IN_WH["kWh"])
#: rows that show whether a way can do for the whole column
_SAMPLE = 2000
#: whole numbers up to here are float64 values of their own, and so are the steps between them
_MOST = 2.0**51
#: the fastest of zlib: a slower one gains a tenth
_LEVEL = 1
#: how often the steps between neighbours are taken
_TIMES = 2


@frozen
class Column:
    """One column, packed.

    ``digits`` is None where the bytes are those of the float64 values; else they are steps of whole numbers,
    taken ``steps`` times, as integers of ``width`` bytes, and the values are the whole numbers over ten to
    the ``digits``, times ``factor``.
    """

    size: int
    data: bytes
    digits: int | None = None
    factor: float = 1.0
    steps: int = 1
    width: int = 8


@frozen
class Parcel:
    """A trace without its columns, and these."""

    trace: Trace
    time_s: Column
    power_w: Column
    counter_wh: Column | None
    temperatures_c: tuple[tuple[str, Column], ...]


def packed(trace: Trace) -> Parcel:
    """Pack a trace.

    Examples
    --------
    >>> trace = Trace.of([0, 10, 20], [5, 5.1, 6])
    >>> unpacked(packed(trace)).power_w.tolist()
    [5.0, 5.1, 6.0]
    """
    return Parcel(
        evolve(trace, time_s=_NONE, power_w=_NONE, counter_wh=None, temperatures_c={}),
        pack_column(trace.time_s, _TIMES),
        pack_column(trace.power_w),
        None if trace.counter_wh is None else pack_column(trace.counter_wh),
        tuple((place, pack_column(column)) for place, column in trace.temperatures_c.items()),
    )


def unpacked(parcel: Parcel) -> Trace:
    """The trace that was packed."""
    return evolve(
        parcel.trace,
        time_s=read_only(unpack_column(parcel.time_s)),
        power_w=read_only(unpack_column(parcel.power_w)),
        counter_wh=None if parcel.counter_wh is None else read_only(unpack_column(parcel.counter_wh)),
        temperatures_c={place: read_only(unpack_column(c)) for place, c in parcel.temperatures_c},
    )


_NONE = read_only(np.zeros(0))


def pack_column(values: F64, steps: int = 1) -> Column:
    """Pack one column.

    Parameters
    ----------
    values : ndarray, shape (n,)
        Any float64 values, also NaN and infinite ones.
    steps : int
        How often steps between neighbours are taken, where the values are decimal numbers.
    """
    for digits, factor in _ways(values[:_SAMPLE]):
        whole = _whole(values, digits, factor)
        if whole is not None:
            for _ in range(steps):
                whole = np.diff(whole, prepend=0)
            kind = np.min_scalar_type(-int(np.abs(whole).max(initial=0)) - 1)
            data = zlib.compress(whole.astype(kind).tobytes(), _LEVEL)
            return Column(values.size, data, digits, factor, steps, kind.itemsize)
    places = np.ascontiguousarray(values).view(np.uint8).reshape(-1, 8).T
    return Column(values.size, zlib.compress(places.tobytes(), _LEVEL))


def unpack_column(column: Column) -> F64:
    """The values of a column, to the last bit."""
    data = zlib.decompress(column.data)
    if column.digits is None:
        places = np.frombuffer(data, np.uint8).reshape(8, column.size)
        values: F64 = np.ascontiguousarray(places.T).reshape(-1).view(np.float64)
        return values
    whole = np.frombuffer(data, f"i{column.width}").astype(np.int64)
    for _ in range(column.steps):
        whole = np.cumsum(whole)
    return _values(whole, column.digits, column.factor)


def _ways(sample: F64) -> Iterator[tuple[int, float]]:
    """Digits and factors by which some of the values are whole numbers."""
    for factor in _FACTORS:
        for digits in _DIGITS:
            if _whole(sample, digits, factor) is not None:
                yield digits, factor
                break


def _whole(values: F64, digits: int, factor: float) -> NDArray[np.int64] | None:
    """The whole numbers that give just these values; None where there are none."""
    with np.errstate(over="ignore", invalid="ignore"):
        near = np.rint(values / factor * 10.0**digits)
    if not bool((np.abs(near) < _MOST).all()):  # so is NaN refused
        return None
    whole = near.astype(np.int64)
    back = _values(whole, digits, factor)
    is_same = np.array_equal(back.view(np.int64), np.ascontiguousarray(values).view(np.int64))
    return whole if is_same else None


def _values(whole: NDArray[np.int64], digits: int, factor: float) -> F64:
    values: F64 = whole / 10.0**digits * factor
    return values
