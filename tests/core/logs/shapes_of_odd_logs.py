"""Cases: rarer ways to write clocks, units and rows. Common practice, no source."""

import json
from collections.abc import Callable, Iterator

import numpy as np

from tests.core.logs.corpus import Case, Load, Machine, Writer, load, number, stamp, table

Cell = Callable[[int], str]
ABSOLUTE = {"clock": "absolute", "start": "2025-06-23T09:36:00+00:00"}
RELATIVE = {"clock": "relative", "start": None}


def cases() -> Iterator[Case]:
    """All of them."""
    t = load()
    yield from _clocks(t)
    yield from _numbered(t)
    yield from _languages(t)
    yield from _units(t)
    yield from _rows(t)
    yield _apart_by_little()


def _clocks(t: Load) -> Iterator[Case]:
    w = Writer(t)
    alone = (Machine(t, has_counter=False),)

    def field(form: str) -> Cell:
        return lambda i: stamp(t.time_s[i], form)

    def of(*columns: Cell, head: str) -> bytes:
        return table(t, (*head.split(","), "W"), (*columns, w.watts)).encode()

    yield Case("the year after the clock", of(field("%a %b %d %H:%M:%S %Y"), head="time"), alone)
    yield Case("date and clock in digits", of(field("%Y%m%d"), field("%H%M%S"), head="date,time"), alone)
    slow = load(step_s=60.0)
    v = Writer(slow)
    text = table(
        slow,
        ("date", "time", "W"),
        (
            lambda i: stamp(slow.time_s[i], "%Y-%m-%d"),
            lambda i: stamp(slow.time_s[i], "%H%M").lstrip("0") or "0",
            v.watts,
        ),
    )
    yield Case("hours and minutes in digits", text.encode(), (Machine(slow, has_counter=False),))
    day = of(field("%Y"), field("%j"), field("%H:%M:%S"), head="Year,DOY,Time")
    yield Case("day of the year and a clock", day, alone)
    split = of(
        field("%Y"), field("%j"), field("%H"), field("%M"), field("%S"), head="Year,Day of year,H,Min,Sec"
    )
    yield Case("day of the year and three fields", split, alone)
    seconds = of(field("%Y-%m-%d"), lambda i: f"{34560 + 10 * i}", head="date,seconds since midnight")
    yield Case("a date and seconds since midnight", seconds, alone)
    julian = of(lambda i: f"{2460849.9 + t.time_s[i] / 86400:.6f}", head="JD")
    micros = of(lambda i: f"{10_000_000 * i}", head="micros")
    yield Case("microseconds since the start", micros, alone, **RELATIVE)
    coarse = (Machine(t, has_counter=False, time_within=0.11),)
    yield Case("Julian dates", julian, coarse, **ABSOLUTE)


def _numbered(t: Load) -> Iterator[Case]:
    w = Writer(t)
    alone = (Machine(t, has_counter=False),)
    rows = "No,W\n" + "".join(f"{i + 1},{w.watts(i)}\n" for i in range(t.time_s.size))
    told = "Sampling interval: 10 s\nStart: 2025-06-23 09:36:00\n\n"
    yield Case("numbered rows, interval and start above", (told + rows).encode(), alone)
    yield Case("numbered rows, interval above", ("Intervall: 0:00:10\n\n" + rows).encode(), alone, **RELATIVE)
    second = Machine(Load(t.time_s / 10, t.power_w, t.counter_wh), has_counter=False)
    yield Case("numbered rows alone", rows.encode(), (second,), problems=("log.rows_counted",), **RELATIVE)
    elapsed = "s,W\n" + "".join(f"{i * 10},{w.watts(i)}\n" for i in range(t.time_s.size))
    began = "Beginn: 23.06.2025 09:36:00\n\n"
    yield Case("elapsed time, its beginning above", (began + elapsed).encode(), alone)


def _languages(t: Load) -> Iterator[Case]:
    one = (Machine(t),)

    def of(head: str, form: str, energy_wh: bool = False) -> bytes:
        w = Writer(t, form, ",")
        return table(t, head.split(";"), (w.time, w.watts, w.wh if energy_wh else w.kwh), ";").encode()

    yield Case("Swedish", of("Tidpunkt;Effekt (W);Mätarställning (kWh)", "%Y-%m-%d %H:%M:%S"), one)
    yield Case("Polish", of("Data i godzina;Moc czynna [W];Licznik energii [kWh]", "%d.%m.%Y %H:%M:%S"), one)
    head = "Data/Hora;Potência ativa (W);Consumo acumulado (kWh)"
    yield Case("Portuguese", of(head, "%d/%m/%Y %H:%M:%S"), one)
    head = "Data e ora;Potenza attiva [W];Energia totale [Wh]"
    yield Case("Italian with points in the clock", of(head, "%d/%m/%Y %H.%M.%S", True), one)
    head = "Zeitpunkt;Wirkleistung in W;Zählerstand in kWh"
    yield Case("German with Uhr", of(head, "%d.%m.%Y, %H:%M:%S Uhr"), one)
    w = Writer(t, "%Y年%m月%d日 %H時%M分%S秒")
    text = table(t, ("日時", "電力(W)", "積算電力量(kWh)"), (w.time, w.watts, w.kwh))
    yield Case("Japanese with signs in the stamps", text.encode(), one)


def _units(t: Load) -> Iterator[Case]:
    w = Writer(t)
    one = (Machine(t),)

    def times(values: np.ndarray, factor: float) -> Cell:
        return lambda i: f"{values[i] * factor:.0f}"

    def of(head: str, *columns: Cell) -> bytes:
        return table(t, ("time", *head.split(",")), (w.time, *columns)).encode()

    tenths = of("power (0.1 W),energy (0.1 Wh)", times(t.power_w, 10), times(t.counter_wh, 10))
    yield Case("tenths of watts and watt hours", tenths, one)
    hundredths = of("power [W],energy [0.001 kWh]", w.watts, times(t.counter_wh, 1))
    coarse = Machine(t, counter_within=0.6)
    yield Case("thousandths of kilowatt hours", hundredths, (coarse,))
    apparent: Cell = lambda i: f"{t.power_w[i] / 0.8 + 3:.1f}"  # noqa: E731
    yield Case("volt-amperes before watts", of("VA,W,PF,kWh", apparent, w.watts, lambda i: "0.8", w.kwh), one)
    yield Case("letters for powers", of("S,P,Q,E", apparent, w.watts, lambda i: "20.1", w.wh), one)
    yield Case("watt seconds", of("P/W,E/Ws", w.watts, times(t.counter_wh, 3600)), one)
    today = of(
        "power W,today kWh,yesterday kWh,total kWh",
        w.watts, w.kwh, lambda i: "1.234", lambda i: f"{123.4 + t.counter_wh[i] / 1000:.4f}",
    )  # fmt: skip
    yield Case("counters of today, yesterday and in total", today, one)
    sent = of("power,energy consumed [Wh],energy returned [Wh]", w.watts, w.wh, lambda i: "0.0")
    yield Case("energy taken and given", sent, one)
    c = Writer(t, decimal=",")
    large = table(
        t,
        ("time", "W", "Wh"),
        (c.time, c.watts, lambda i: number(12345678 + t.counter_wh[i], 1, ",", ".")),
        ";",
    )
    yield Case("a counter with points between thousands", large.encode(), one)


def _rows(t: Load) -> Iterator[Case]:
    w = Writer(t)
    one, alone = (Machine(t),), (Machine(t, has_counter=False),)
    every = range(t.time_s.size)
    wide = "Time                 Power   Energy\n                     W       Wh\n"
    wide += "".join(f"{w.time(i)}  {t.power_w[i]:7.1f} {t.counter_wh[i]:8.1f}\n" for i in every)
    yield Case("columns of fixed width, one heading for date and clock", wide.encode(), one)
    tags = "".join(f'<row time="{w.time(i)}" power="{w.watts(i)}" energy="{w.wh(i)}"/>\n' for i in every)
    yield Case("rows in tags", tags.encode(), one)
    quantities = "".join(
        f"{w.time(i)},power,{w.watts(i)},W\n{w.time(i)},energy,{w.wh(i)},Wh\n{w.time(i)},voltage,230.1,V\n"
        for i in every
    )
    yield Case("a quantity a row with its unit and no headings", quantities.encode(), one)
    ruled = "| time | W |\n|---|---|\n" + "".join(f"| {w.time(i)} | {w.watts(i)} |\n" for i in every)
    yield Case("a table with rules", ruled.encode(), alone)
    quoted = '"Time","Power\n(W)","Energy\n(kWh)"\n'
    quoted += "".join(f'"{w.time(i)}","{w.watts(i)}","{w.kwh(i)}"\n' for i in every)
    yield Case("headings over two lines in quotes", quoted.encode(), one)
    apart = "Power\ntime,W\n" + "".join(f"{w.time(i)},{w.watts(i)}\n" for i in every)
    apart += "\nEnergy\ntime,kWh\n" + "".join(f"{w.time(i)},{w.kwh(i)}\n" for i in every)
    yield Case("a second table below", apart.encode(), alone, refused=242, problems=("log.other_table",))
    numbered = {"time": {i: w.time(i) for i in every}, "power_w": {i: float(t.power_w[i]) for i in every}}
    yield Case("columns of numbered rows", json.dumps(numbered).encode(), alone, file="log.json")
    ends = table(t, ("time", "W", "kWh"), (w.time, w.watts, w.kwh)) + "\nTotal,,0.0885\nMean,132.4,\n"
    yield Case("a summary in two lines", ends.encode(), one, refused=2, problems=("log.refused_rows",))


def _apart_by_little() -> Case:
    """A log on change that stamps each quantity when it comes; its counter tells what a value stands for."""
    rng = np.random.default_rng(3)
    time_s = np.concatenate(([0.0], np.cumsum(np.round(rng.uniform(8, 30, 399), 3))))
    level = np.where(np.arange(400) % 2, 300.0, 60.0)
    power_w = np.round(level + rng.normal(0, 1, 400), 1)
    wh = np.concatenate(([0.0], np.cumsum(power_w[:-1] * np.diff(time_s)) / 3600))
    o = Load(time_s, power_w, np.round(wh, 2))

    def at(i: int, later_s: float = 0.0) -> str:
        return stamp(o.time_s[i] + later_s, "%Y-%m-%dT%H:%M:%S.%f")[:-3] + "Z"

    rows = "".join(
        f"alder_power,{o.power_w[i]},{at(i)}\nalder_energy,{o.counter_wh[i] / 1000:.5f},{at(i, 0.05)}\n"
        for i in range(400)
    )
    return Case(
        "quantities a little apart",
        ("entity,value,changed\n" + rows).encode(),
        (Machine(o, counter_within=0.02),),
        **ABSOLUTE,
    )
