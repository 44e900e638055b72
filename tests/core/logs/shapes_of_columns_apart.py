"""Cases: what belongs together stands in columns, words or rows of its own."""

from collections.abc import Callable, Iterator

import numpy as np

from tests.core.logs.corpus import Case, Load, Machine, Writer, load, stamp, table

Cell = Callable[[int], str]
RELATIVE = {"clock": "relative", "start": None}


def cases() -> Iterator[Case]:
    """All of them."""
    t = load()
    yield from _times(t)
    yield from _powers(t)
    yield from _rows(t)


def _times(t: Load) -> Iterator[Case]:
    w = Writer(t)
    one, alone = (Machine(t),), (Machine(t, has_counter=False),)
    slow = load(rows=240, step_s=60.0)
    v = Writer(slow)
    text = table(
        slow,
        ("Datum", "Uhrzeit", "Leistung W", "Energie kWh"),
        (
            lambda i: stamp(slow.time_s[i], "%d.%m.%y"),
            lambda i: stamp(slow.time_s[i], "%H:%M"),
            v.watts,
            v.kwh,
        ),
        ";",
    )
    yield Case("short year apart from hours and minutes", text.encode(), (Machine(slow),))
    text = table(
        t,
        ("Data", "Ora", "W", "kWh"),
        (lambda i: stamp(t.time_s[i], "%d.%m.%y"), lambda i: stamp(t.time_s[i], "%H.%M.%S"), w.watts, w.kwh),
        ";",
    )
    yield Case("points in date and clock", text.encode(), one)

    def of(write: Cell, name: str = "time") -> bytes:
        return table(t, (name, "W"), (write, w.watts)).encode()

    def parts(i: int) -> tuple[int, int, int]:
        s = int(t.time_s[i])
        return s // 3600, s // 60 % 60, s % 60

    yield Case(
        "days and a clock",
        of(lambda i: "0d {:02d}:{:02d}:{:02d}".format(*parts(i)), "elapsed"),
        alone,
        **RELATIVE,
    )
    yield Case(
        "hours, minutes, seconds in letters",
        of(lambda i: "{}h {}m {}s".format(*parts(i)), "elapsed"),
        alone,
        **RELATIVE,
    )
    yield Case("an apostrophe before each stamp", of(lambda i: "'" + w.time(i)), alone)
    yield Case("stamps in brackets", of(lambda i: f"[{w.time(i)}]"), alone)


def _powers(t: Load) -> Iterator[Case]:
    w = Writer(t)
    one, alone = (Machine(t),), (Machine(t, has_counter=False),)

    def since(i: int) -> str:
        return f"{t.power_w[: i + 1].mean():.1f}"

    text = table(
        t, ("Time", "Current Power (W)", "Average Power (W)", "Total (kWh)"), (w.time, w.watts, since, w.kwh)
    )
    yield Case("the mean since the start beside the power", text.encode(), one)
    head = ("Time", "Power", "Power 5 min avg", "Max power today", "kWh today")
    text = table(t, head, (w.time, w.watts, since, lambda i: f"{t.power_w[: i + 1].max()}", w.kwh))
    yield Case("highest of the day and counter of the day", text.encode(), one)
    text = table(t, (), (w.time, lambda i: "230.1", lambda i: f"{t.power_w[i] / 230.1:.3f}", w.watts, w.kwh))
    yield Case("volts, amperes, watts with no headings", text.encode(), one)
    half = Load(t.time_s, np.round(t.power_w / 2, 1), t.counter_wh)
    text = table(
        t,
        ("time", "Alder (W)", "Birch (W)", "Total (W)"),
        (w.time, w.watts, Writer(half).watts, lambda i: f"{t.power_w[i] * 1.5:.1f}"),
    )
    yield Case(
        "two machines and their sum",
        text.encode(),
        (Machine(t, "Alder", False), Machine(half, "Birch", False)),
    )
    text = "\n".join(f"Jun 23 {stamp(t.time_s[i], '%H:%M:%S')} plug power {w.watts(i)} W" for i in range(240))
    yield Case("a line of words around each value", text.encode(), alone, **RELATIVE)


def _rows(t: Load) -> Iterator[Case]:
    w = Writer(t)
    even = Load(t.time_s[::2], t.power_w[::2], t.counter_wh[::2])
    text = table(
        t,
        ("time", "W", "kWh"),
        (w.time, lambda i: "" if i % 2 else w.watts(i), lambda i: w.kwh(i - 1) if i % 2 else ""),
    )
    # a reading of the counter is up to 20 s old where the power stands: 310 W for 20 s are 1.7 Wh
    yield Case(
        "power and counter by turns",
        text.encode(),
        (Machine(even, counter_within=1.9),),
        problems=("log.missing_values",),
    )
