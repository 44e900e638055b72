"""Small logs in many shapes whose truth is known, made from one invented trace.

Each case is bytes as a meter, a logger or a spreadsheet may write them, and what must be read from them.
"""

from collections.abc import Callable, Sequence
from datetime import datetime, timedelta
from typing import Any

import numpy as np
from attrs import field, frozen
from numpy.typing import NDArray

F64 = NDArray[np.float64]


def moment(year: int, month: int, day: int, hour: int = 0, minute: int = 0) -> datetime:
    """A wall clock of no stated zone, as most meters write it."""
    return datetime(year, month, day, hour, minute)  # noqa: DTZ001


START = moment(2025, 6, 23, 9, 36)


@frozen(eq=False)
class Load:
    """The truth: times [s], power [W], counter [Wh]."""

    time_s: F64
    power_w: F64
    counter_wh: F64


def load(rows: int = 240, step_s: float = 10.0, seed: int = 1, start_wh: float = 0.0) -> Load:
    """Standby, a warm-up, a heater that goes on and off, standby."""
    rng = np.random.default_rng(seed)
    time_s = np.arange(rows) * step_s
    share = np.arange(rows) / rows
    power = np.where((share < 0.1) | (share > 0.9), 6.0, 62.0)
    power[(share >= 0.1) & (share < 0.2)] = 310.0
    cycle = (np.arange(rows) % 12 < 4) & (share >= 0.2) & (share <= 0.9)
    power = np.round(power + 240.0 * cycle + np.round(rng.normal(0, 0.6, rows), 1), 1)
    gained = np.concatenate(([0.0], np.cumsum(0.5 * (power[1:] + power[:-1]) * np.diff(time_s)) / 3600))
    return Load(time_s, power, np.round(start_wh + gained, 1))


@frozen(eq=False)
class Machine:
    """What must be read of one machine."""

    load: Load
    name: str | None = None
    has_counter: bool = True
    power_within: float = 0.051
    time_within: float = 0.02
    counter_within: float = 0.25
    rows: slice = slice(None)


@frozen(eq=False)
class Case:
    """A file and what must be read from it."""

    name: str
    data: bytes
    machines: tuple[Machine, ...]
    clock: str = "local"
    start: str | None = "2025-06-23T09:36:00"
    problems: tuple[str, ...] = ()
    refused: int = 0
    file: str = "log.csv"
    reading: dict[str, Any] = field(factory=dict)


def stamp(seconds: float, form: str) -> str:
    """A time of the trace as strftime `form`."""
    return (START + timedelta(seconds=float(seconds))).strftime(form)


def number(value: float, decimals: int, decimal: str = ".", group: str = "") -> str:
    """A number with a decimal sign and a sign between thousands."""
    text = f"{value:,.{decimals}f}"
    return text.replace(",", "\0").replace(".", decimal).replace("\0", group)


def table(
    truth: Load,
    head: Sequence[str],
    columns: Sequence[Callable[[int], str]],
    delimiter: str = ",",
    newline: str = "\n",
    quoted: bool = False,
) -> str:
    """Text with a line a row."""
    lines = [delimiter.join(head)] if head else []
    for i in range(truth.time_s.size):
        cells = [c(i) for c in columns]
        lines.append(delimiter.join(f'"{c}"' if quoted else c for c in cells))
    return newline.join(lines) + newline


@frozen(eq=False)
class Writer:
    """Columns of one trace in a given spelling."""

    truth: Load
    form: str = "%Y-%m-%d %H:%M:%S"
    decimal: str = "."
    group: str = ""

    def time(self, i: int) -> str:
        return stamp(self.truth.time_s[i], self.form)

    def watts(self, i: int) -> str:
        return number(self.truth.power_w[i], 1, self.decimal, self.group)

    def kilowatts(self, i: int) -> str:
        return number(self.truth.power_w[i] / 1000, 4, self.decimal)

    def milliwatts(self, i: int) -> str:
        return number(self.truth.power_w[i] * 1000, 0)

    def wh(self, i: int) -> str:
        return number(self.truth.counter_wh[i], 1, self.decimal, self.group)

    def kwh(self, i: int) -> str:
        return number(self.truth.counter_wh[i] / 1000, 4, self.decimal)

    def joules(self, unit: float, decimals: int) -> Callable[[int], str]:
        return lambda i: number(self.truth.counter_wh[i] * 3600 / unit, decimals, self.decimal)


def plain(truth: Load, **spelling: Any) -> str:
    """Time, power and counter with English headings."""
    delimiter = spelling.pop("delimiter", ",")
    newline = spelling.pop("newline", "\n")
    quoted = spelling.pop("quoted", False)
    head = spelling.pop("head", ("time", "power [W]", "energy [kWh]"))
    w = Writer(truth, **spelling)
    return table(truth, head, (w.time, w.watts, w.kwh), delimiter, newline, quoted)
