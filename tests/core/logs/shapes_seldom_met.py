"""Cases: shapes that few logs have, each of a meter, a sheet or a script. Common practice, no source."""

import bz2
import json
import lzma
from collections.abc import Callable, Iterator
from datetime import UTC, datetime, timedelta
from typing import Any
from zoneinfo import ZoneInfo

import numpy as np

from tests.core.logs.corpus import START, Case, Load, Machine, Writer, load, number, stamp, table

Cell = Callable[[int], str]
ABSOLUTE: dict[str, Any] = {"clock": "absolute", "start": "2025-06-23T09:36:00+00:00"}
AHEAD: dict[str, Any] = {"clock": "absolute", "start": "2025-06-23T09:36:00+02:00"}
RELATIVE: dict[str, Any] = {"clock": "relative", "start": None}


def cases() -> Iterator[Case]:
    """All of them."""
    t = load()
    yield from _clocks(t)
    yield from _languages(t)
    yield from _columns(t)
    yield from _containers(t)
    yield from _both_changes()


def _clocks(t: Load) -> Iterator[Case]:
    w, c = Writer(t), Writer(t, decimal=",")
    one = (Machine(t),)

    def at(i: int) -> datetime:
        return START + timedelta(seconds=float(t.time_s[i]))

    def of(cell: Cell, head: str = "time", delimiter: str = ",") -> bytes:
        return table(t, (head, "power [W]", "energy [kWh]"), (cell, w.watts, w.kwh), delimiter).encode()

    named = of(lambda i: f"{at(i):%Y-%m-%dT%H:%M:%S}+02:00[Europe/Berlin]")
    yield Case("a zone in brackets behind the offset", named, one, **AHEAD)
    yield Case("a week and its day", of(lambda i: f"{at(i):%G-W%V-%uT%H:%M:%S}"), one)
    yield Case("a year and its day", of(lambda i: f"{at(i):%Y-%jT%H:%M:%S}Z"), one, **ABSOLUTE)
    yield Case("t and z in small letters", of(lambda i: f"{at(i):%Y-%m-%dt%H:%M:%S}z"), one, **ABSOLUTE)
    yield Case("summer time by its letters", of(lambda i: f"{at(i):%Y-%m-%d %H:%M:%S} CEST"), one, **AHEAD)

    def american(i: int) -> str:
        d = at(i)
        return f"{d.month}/{d.day}/{d.year}, {d.hour % 12 or 12}:{d:%M:%S}\u202f{d:%p}"

    yield Case("a narrow space before AM", of(american, delimiter=";"), one)

    def spanish(i: int) -> str:
        d = at(i)
        half = "a. m." if d.hour < 12 else "p. m."
        return f"{d.day}/{d.month}/{d.year} {d.hour % 12 or 12}:{d:%M:%S} {half}"

    yield Case("a. m. with points and a space", of(spanish, "fecha"), one)
    slow = load(240, 300.0)
    v = Writer(slow)

    def new_date(i: int) -> str:
        day, before = (stamp(slow.time_s[j], "%Y-%m-%d") for j in (i, max(0, i - 1)))
        return day if i == 0 or day != before else ""

    text = table(
        slow,
        ("date", "time", "W", "Wh"),
        (new_date, lambda i: stamp(slow.time_s[i], "%H:%M:%S"), v.watts, v.wh),
    )
    yield Case("a date only where it changes", text.encode(), (Machine(slow),))

    def serial(i: int) -> str:
        return f"{45831.4 + t.time_s[i] / 86400:.8f}".replace(".", ",")

    text = table(t, ("Zeit", "Leistung [W]", "Energie [kWh]"), (serial, c.watts, c.kwh), ";")
    yield Case("spreadsheet serials with decimal commas", text.encode(), one)

    def until(i: int) -> str:
        return stamp(t.time_s[i] + 10, "%Y-%m-%d %H:%M:%S")

    text = table(t, ("from", "to", "mean W", "Wh total"), (w.time, until, w.watts, w.wh))
    yield Case("from and to of each interval", text.encode(), one)


def _languages(t: Load) -> Iterator[Case]:
    w, c = Writer(t), Writer(t, decimal=",")
    one = (Machine(t),)

    def at(i: int) -> datetime:
        return START + timedelta(seconds=float(t.time_s[i]))

    def of(head: str, cell: Cell, encoding: str = "utf-8") -> bytes:
        return table(t, head.split(";"), (cell, c.watts, c.kwh), ";").encode(encoding)

    def czech(i: int) -> str:
        d = at(i)
        return f"{d.day}. {d.month}. {d.year} {d.hour}:{d:%M:%S}"

    yield Case("Czech in cp1250", of("Čas;Výkon [W];Energie [kWh]", czech, "cp1250"), one)
    hungarian = of(
        "Idő;Teljesítmény (W);Energia (kWh)", lambda i: f"{at(i):%Y. %m. %d.} {at(i).hour}:{at(i):%M:%S}"
    )
    yield Case("Hungarian with points and spaces", hungarian, one)
    finnish = of("Aika;Teho (W);Energia (kWh)", lambda i: f"{at(i):%d.%m.%Y klo %H.%M.%S}")
    yield Case("Finnish", finnish, one)
    russian = of("Дата и время;Мощность, Вт;Энергия, кВт·ч", lambda i: f"{at(i):%d.%m.%Y %H:%M:%S}")
    yield Case("Russian, units in its letters", russian, one)
    text = table(t, ("时间", "功率(W)", "电量(kWh)"), (w.time, w.watts, w.kwh))
    yield Case("Chinese in gb18030", text.encode("gb18030"), one)

    def korean(i: int) -> str:
        d = at(i)
        return (
            f"{d.year}. {d.month}. {d.day}. {'오전' if d.hour < 12 else '오후'} {d.hour % 12 or 12}:{d:%M:%S}"
        )

    text = table(t, ("시간", "전력(W)", "전력량(kWh)"), (korean, w.watts, w.kwh))
    yield Case("Korean", text.encode(), one)


def _columns(t: Load) -> Iterator[Case]:
    w, c = Writer(t), Writer(t, decimal=",")
    one, alone = (Machine(t),), (Machine(t, has_counter=False),)
    every = range(t.time_s.size)
    text = table(
        t,
        ("t/s", "U/V", "I/A", "P/W", "W/Wh"),
        (
            lambda i: f"{t.time_s[i]:.0f}",
            lambda i: "230,1",
            lambda i: number(t.power_w[i] / 230.1, 3, ","),
            c.watts,
            c.wh,
        ),
        ";",
    )
    yield Case("letters of quantities over their units", text.encode(), one, **RELATIVE)
    for name, factor in (("a share", "0.80"), ("percent", "80.0")):
        text = table(
            t,
            ("time", "V", "A", "power factor"),
            (w.time, lambda i: "230.0", lambda i: f"{t.power_w[i] / 184:.5f}", lambda i, f=factor: f),  # type: ignore[misc]
        )
        yield Case(f"volts, amperes and a power factor in {name}", text.encode(), alone)
    text = table(
        t,
        ("time", "bed [°C]", "power actual [W]", "power limit [W]", "Wh"),
        (w.time, lambda i: "59.8", w.watts, lambda i: "2300", w.wh),
    )
    yield Case("a limit beside the power", text.encode(), one)
    u = load(seed=2)
    v = Writer(u)
    head = "time,alder,,birch,\n,W,kWh,W,kWh\n"
    rows = "".join(f"{w.time(i)},{w.watts(i)},{w.kwh(i)},{v.watts(i)},{v.kwh(i)}\n" for i in every)
    yield Case(
        "names over two columns each", (head + rows).encode(), (Machine(t, "alder"), Machine(u, "birch"))
    )
    for unit, factor_w in (("tenths", 10), ("hundredths", 100)):
        raw = [f"{v * factor_w:.0f}" for v in t.power_w]
        text = table(t, ("time", "power", "energy_wh"), (w.time, raw.__getitem__, w.wh))
        yield Case(f"{unit} of watts unsaid", text.encode(), one)
    signs = {17: "OL", 18: "####", 19: "---", 20: "#N/A"}
    text = table(t, ("time", "W", "Wh"), (w.time, lambda i: signs.get(i, w.watts(i)), w.wh))
    left = Load(*(np.delete(x, list(signs)) for x in (t.time_s, t.power_w, t.counter_wh)))
    yield Case("signs for a value that was too large", text.encode(), (Machine(left),))
    for value in ("-999.9", "65535"):
        watts = [value if i % 40 == 17 else w.watts(i) for i in every]
        text = table(t, ("time", "W", "Wh"), (w.time, watts.__getitem__, w.wh))
        gone = range(17, 240, 40)
        left = Load(*(np.delete(x, gone) for x in (t.time_s, t.power_w, t.counter_wh)))
        told = ("log.stand_in",)
        yield Case(f"{value} where nothing was measured", text.encode(), (Machine(left),), problems=told)


def _containers(t: Load) -> Iterator[Case]:
    w = Writer(t)
    one = (Machine(t),)
    every = range(t.time_s.size)
    coloured = "".join(f"\x1b[32m{w.time(i)}\x1b[0m {w.watts(i)} W {w.wh(i)} Wh\n" for i in every)
    yield Case("colours of a terminal", coloured.encode(), one, file="log.txt")
    data = table(t, ("time", "W", "Wh"), (w.time, w.watts, w.wh)).encode()
    yield Case("bzip2", bz2.compress(data), one, file="log.csv.bz2")
    yield Case("xz", lzma.compress(data), one, file="log.csv.xz")
    rows = [[w.time(i), float(t.power_w[i]), float(t.counter_wh[i])] for i in range(t.time_s.size)]
    held = {"columns": ["time", "power_w", "energy_wh"], "data": rows}
    yield Case("columns named above rows", json.dumps(held).encode(), one, file="log.json")


def _both_changes() -> Iterator[Case]:
    """A wall clock of no stated zone from February to November, put forward and back on the way."""
    began = datetime(2025, 2, 28, 20, tzinfo=UTC)
    for minutes in (10, 15, 30):
        time_s = np.arange(260 * 24 * 60 // minutes) * np.float64(60.0 * minutes)
        beat = np.arange(time_s.size)
        power_w = np.round(np.where(beat % 48 < 12, 300.0, 60.0) + beat % 7 * np.float64(0.1), 1)
        truth = Load(time_s, power_w, time_s)
        for zone in ("Europe/Berlin", "Australia/Sydney"):
            local = [(began + timedelta(seconds=s)).astimezone(ZoneInfo(zone)) for s in time_s.tolist()]
            lines = (f"{x:%Y-%m-%d %H:%M:%S},{p}\n" for x, p in zip(local, power_w, strict=True))
            yield Case(
                f"a row each {minutes} minutes through both changes, {zone}",
                ("time,W\n" + "".join(lines)).encode(),
                (Machine(truth, has_counter=False),),
                start=f"{local[0]:%Y-%m-%dT%H:%M:%S}",
                problems=("log.clock_put",),
            )
