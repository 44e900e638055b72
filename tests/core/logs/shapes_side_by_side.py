"""Cases: two logs side by side in one table, each with its own time; decimal signs that differ by column."""

import io
from collections.abc import Iterator, Sequence
from datetime import timedelta

from tests.core.logs.corpus import START, Case, Machine, Writer, load, number, stamp, table

#: the second log begins so much later [s]
LATER_S = 3605.0
ISO = "%Y-%m-%d %H:%M:%S"


def cases() -> Iterator[Case]:
    """All of them."""
    yield from _side_by_side()
    yield from _one_clock_written_twice()
    yield from _decimal_signs()


def _machines(one: str, other: str, counters: bool = False) -> tuple[Machine, ...]:
    return (
        Machine(load(), one, has_counter=counters),
        Machine(load(rows=150, step_s=7.0, seed=2), other, has_counter=counters),
    )


def _rows(
    forms: tuple[str, str] = (ISO, ISO),
    gap: Sequence[str] = (),
    *,
    behind: bool = False,
    counters: bool = False,
) -> list[list[str]]:
    """Rows of both logs; the shorter one leaves its cells empty at the end."""
    halves = []
    for machine, form, later_s in zip(_machines("", ""), forms, (0.0, LATER_S), strict=True):
        t = machine.load
        cells = [
            [stamp(t.time_s[i] + later_s, form), f"{t.power_w[i]:.1f}"]
            + ([f"{t.counter_wh[i]:.1f}"] if counters else [])
            for i in range(t.time_s.size)
        ]
        halves.append([c[::-1] for c in cells] if behind else cells)
    nothing = [""] * len(halves[1][0])
    other = halves[1] + [nothing] * (len(halves[0]) - len(halves[1]))
    return [[*a, *gap, *b] for a, b in zip(halves[0], other, strict=True)]


def _text(heads: Sequence[str], rows: Sequence[Sequence[str]], sign: str = ",") -> bytes:
    return "\n".join([*heads, *(sign.join(r) for r in rows), ""]).encode()


def _side_by_side() -> Iterator[Case]:
    # the machines begin at different times, so only the first one's start is that of the case
    def case(name: str, data: bytes, one: str, other: str, **more: object) -> Case:
        counters = bool(more.pop("counters", False))
        return Case(name, data, _machines(one, other, counters), start="2025-06-23T", **more)  # type: ignore[arg-type]

    yield case("two times, letters", _text(["time A,power A,time B,power B"], _rows()), "A", "B")
    titled = _text(["Alder;;;Birch;", "Zeit;W;;Zeit;W"], _rows(("%d.%m.%Y %H:%M:%S",) * 2, [""]), ";")
    yield case("two times, a gap and titles", titled, "Alder", "Birch")
    left, right = "log, columns 1 to 2", "log, columns 3 to 4"
    yield case("two times, no headings", _text([], _rows()), left, right)
    yield case("two times, the same headings", _text(["time,W,time,W"], _rows()), left, right)
    cut = [[*r[:2]] if not r[2] else r for r in _rows()]
    yield case("two times, the shorter one leaves its cells out", _text(["time,W,time,W"], cut), left, right)
    behind = _text(["Alder W,Alder time,Birch W,Birch time"], _rows(behind=True))
    yield case("two times behind their powers", behind, "Alder", "Birch")
    ways = _text(["Alder time,Alder W,Birch time,Birch W"], _rows((ISO, "%d/%m/%Y %H:%M:%S")))
    yield case("two times in two ways", ways, "Alder", "Birch")
    head = "Alder time\tAlder W\tAlder Wh\tBirch time\tBirch W\tBirch Wh"
    counted = _text([head], _rows(counters=True), "\t")
    yield case("two times, two counters", counted, "Alder", "Birch", counters=True)
    yield case("two times in a workbook", _workbook(), "Alder", "Birch", file="log.xlsx")


def _workbook() -> bytes:
    import xlsxwriter

    stream = io.BytesIO()
    book = xlsxwriter.Workbook(stream)
    sheet = book.add_worksheet()
    dated = book.add_format({"num_format": "yyyy-mm-dd hh:mm:ss"})
    for column, name, machine, later_s in zip(
        (0, 3), ("Alder", "Birch"), _machines("", ""), (0, LATER_S), strict=True
    ):
        sheet.write(0, column, name)
        sheet.write_row(1, column, ("Time", "Power (W)"))
        for i, (at_s, power_w) in enumerate(zip(machine.load.time_s, machine.load.power_w, strict=True)):
            sheet.write_datetime(2 + i, column, START + timedelta(seconds=float(at_s) + later_s), dated)
            sheet.write_number(2 + i, column + 1, float(power_w))
    book.close()
    return stream.getvalue()


def _one_clock_written_twice() -> Iterator[Case]:
    t = load()
    w = Writer(t)
    zones = (w.time, w.watts, lambda i: stamp(t.time_s[i] - 7200, ISO), w.wh)
    text = table(t, ("local time", "W", "UTC time", "Wh"), zones)
    yield Case("one clock in two zones", text.encode(), (Machine(t),))
    parted = (w.time, w.watts, lambda i: f"{10 * i}", w.wh)
    text = table(t, ("time", "W", "elapsed s", "Wh"), parted)
    yield Case("elapsed time between power and counter", text.encode(), (Machine(t),))


def _decimal_signs() -> Iterator[Case]:
    t = load()
    w, c = Writer(t), Writer(t, decimal=",")
    one = (Machine(t),)
    head = ("Zeit", "Leistung W", "Zähler kWh")
    yield Case(
        "comma in the power, point in the counter",
        table(t, head, (w.time, c.watts, w.kwh), ";").encode(),
        one,
    )
    yield Case(
        "point in the power, comma in the counter",
        table(t, head, (w.time, w.watts, c.kwh), ";").encode(),
        one,
    )
    large = load(start_wh=1234567.0)
    grouped = lambda i: number(large.counter_wh[i], 1, ",", ".")  # noqa: E731
    volts = lambda i: f"{230 + (i % 9) / 10:.1f}"  # noqa: E731
    text = table(large, ("Zeit", "W", "Wh", "U [V]"), (w.time, c.watts, grouped, volts), ";")
    yield Case("points between thousands, and in the volts", text.encode(), (Machine(large),))
    unit = (w.time, lambda i: f"{c.watts(i)} W", lambda i: f"{w.kwh(i)} kWh")
    yield Case("units in cells of two decimal signs", table(t, head, unit, ";").encode(), one)
    quoted = table(t, head, (w.time, c.watts, w.kwh), ",", quoted=True)
    yield Case("two decimal signs in quotes", quoted.encode(), one)
