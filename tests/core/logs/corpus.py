"""Small logs in many shapes whose truth is known, made from one invented trace.

Each case is bytes as a meter, a logger or a spreadsheet may write them, and what must be read from them.
"""

import csv
import gzip
import io
import json
import sqlite3
import zipfile
from collections.abc import Callable, Iterator, Sequence
from datetime import UTC, date, datetime, timedelta, timezone
from typing import Any

import numpy as np
from attrs import field, frozen
from numpy.typing import NDArray

F64 = NDArray[np.float64]
START = datetime(2025, 6, 23, 9, 36, 0)


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


def cases() -> list[Case]:
    """All cases."""
    found = [
        *_text(),
        *_numbers(),
        *_clocks(),
        *_words(),
        *_quantities(),
        *_layouts(),
        *_containers(),
        *_flaws(),
    ]
    names = [c.name for c in found]
    assert len(set(names)) == len(names), "case names repeat"
    return found


def _text() -> Iterator[Case]:
    t = load()
    one = (Machine(t),)
    for sign, name in ((",", "comma"), (";", "semicolon"), ("\t", "tab"), ("|", "pipe")):
        yield Case(f"delimiter {name}", plain(t, delimiter=sign).encode(), one, reading={"delimiter": sign})
    spaced = "\n".join(
        "   ".join(line.split(",")) for line in plain(t, head=("date clock", "W", "kWh")).splitlines()
    )
    yield Case(
        "delimiter spaces",
        spaced.replace("date clock", "date   clock").encode(),
        one,
        reading={"delimiter": " "},
    )
    yield Case("quotes", plain(t, quoted=True).encode(), one)
    yield Case("mark of UTF-8", b"\xef\xbb\xbf" + plain(t).encode(), one, reading={"encoding": "utf-8"})
    yield Case(
        "UTF-16 little", b"\xff\xfe" + plain(t).encode("utf-16-le"), one, reading={"encoding": "utf-16-le"}
    )
    yield Case(
        "UTF-16 big", b"\xfe\xff" + plain(t).encode("utf-16-be"), one, reading={"encoding": "utf-16-be"}
    )
    yield Case("UTF-16 without mark", plain(t).encode("utf-16-le"), one)
    umlaut = plain(
        t,
        delimiter=";",
        decimal=",",
        form="%d.%m.%Y %H:%M:%S",
        head=("Zeit", "Leistung (W)", "Zählerstand (kWh)"),
    )
    yield Case("cp1252", umlaut.encode("cp1252"), one, reading={"encoding": "cp1252", "decimal": ","})
    polish = plain(
        t,
        delimiter=";",
        decimal=",",
        form="%d.%m.%Y %H:%M:%S",
        head=("Czas", "Moc (W)", "Zużycie energii (kWh)"),
    )
    yield Case("cp1250", ("Urządzenie: żółte\n" + polish).encode("cp1250"), one)
    yield Case("CRLF", plain(t, newline="\r\n").encode(), one)
    yield Case("CR alone", plain(t, newline="\r").encode(), one)
    yield Case("no last line end", plain(t).rstrip("\n").encode(), one)
    yield Case(
        "preamble",
        b"Meter log\nserial: 000\n\n# columns below\n" + plain(t).encode(),
        one,
        reading={"header_row": 5},
    )
    units = plain(t, head=("time", "power", "energy")).replace("energy\n", "energy\n,W,kWh\n", 1)
    yield Case("units row", units.encode(), one)
    brackets = plain(t, head=("time", "power", "energy")).replace("energy\n", "energy\n[s],[W],[kWh]\n", 1)
    yield Case("units row in brackets", brackets.encode(), one)
    yield Case("no headings", plain(t, head=()).encode(), one, reading={"header_row": None})
    yield Case("trailing delimiter", plain(t).replace("\n", ",\n").encode(), one)
    yield Case("headings in a comment", ("# " + plain(t)).encode(), one)
    yield Case("blank lines", plain(t).replace("\n", "\n\n").encode(), one)


def _numbers() -> Iterator[Case]:
    t = load()
    one = (Machine(t),)
    day = "%d.%m.%Y %H:%M:%S"
    yield Case(
        "decimal comma",
        plain(t, delimiter=";", decimal=",", form=day).encode(),
        one,
        reading={"decimal": ","},
    )
    high = load(start_wh=1234567.0)
    for group, decimal, name in (
        (".", ",", "points"), (",", ".", "commas"), ("\u00a0", ",", "no-break spaces"), ("\u202f", ",", "narrow spaces"),
        (" ", ",", "spaces"), ("'", ".", "apostrophes"),
    ):  # fmt: skip
        w = Writer(high, decimal=decimal, group=group)
        text = table(high, ("time", "power (W)", "energy (Wh)"), (w.time, w.watts, w.wh), ";")
        yield Case(f"thousands {name}", text.encode(), (Machine(high),))
    w = Writer(t)
    in_cell = table(
        t, ("time", "power", "energy"), (w.time, lambda i: w.watts(i) + " W", lambda i: w.kwh(i) + " kWh")
    )
    yield Case("unit in the cell", in_cell.encode(), one)
    exponent = table(t, ("time", "power [W]"), (w.time, lambda i: f"{t.power_w[i]:.4e}"))
    yield Case("exponents", exponent.encode(), (Machine(t, has_counter=False),))
    every = np.arange(t.time_s.size) % 17 == 5
    for spelling in ("NaN", "-", "", "unavailable", "n/a", "null"):
        text = table(t, ("time", "W"), (w.time, lambda i, s=spelling: s if every[i] else w.watts(i)))  # type: ignore[misc]
        kept = Load(t.time_s[~every], t.power_w[~every], t.counter_wh[~every])
        case = (Machine(kept, has_counter=False),)
        yield Case(f"missing as '{spelling}'", text.encode(), case, problems=("log.missing_values",))
    mixed = table(
        t,
        ("time", "power"),
        (
            w.time,
            lambda i: f"{t.power_w[i]:.1f} W" if t.power_w[i] < 200 else f"{t.power_w[i] / 1000:.4f} kW",
        ),
    )
    yield Case("W and kW by turns", mixed.encode(), (Machine(t, has_counter=False),))


def _clocks() -> Iterator[Case]:
    t = load()
    one = (Machine(t),)
    w = Writer(t)
    head = ("time", "W", "kWh")

    def with_time(write: Callable[[int], str], name: str = "time", delimiter: str = ",") -> bytes:
        return table(t, (name, *head[1:]), (write, w.watts, w.kwh), delimiter).encode()

    zone = timezone(timedelta(hours=2))
    unix = [(START.replace(tzinfo=zone) + timedelta(seconds=float(s))).timestamp() for s in t.time_s]
    absolute = {"clock": "absolute", "start": "2025-06-23T09:36:00+02:00"}
    utc = {"clock": "absolute", "start": "2025-06-23T07:36:00+00:00"}
    yield Case(
        "ISO with offset", with_time(lambda i: w.time(i).replace(" ", "T") + "+02:00"), one, **absolute
    )
    yield Case(
        "ISO with offset, no colon",
        with_time(lambda i: w.time(i).replace(" ", "T") + ".000+0200"),
        one,
        **absolute,
    )
    yield Case(
        "ISO with Z",
        with_time(lambda i: datetime.fromtimestamp(unix[i], UTC).strftime("%Y-%m-%dT%H:%M:%SZ")),
        one,
        **utc,
    )
    yield Case("ISO with comma fraction", with_time(lambda i: w.time(i) + ",250", delimiter=";"), one)
    yield Case("ISO basic", with_time(lambda i: stamp(t.time_s[i], "%Y%m%dT%H%M%S")), one)
    yield Case("digits only", with_time(lambda i: stamp(t.time_s[i], "%Y%m%d%H%M%S")), one)
    for factor, decimals, name in (
        (1, 0, "s"),
        (1, 3, "s with fraction"),
        (1e3, 0, "ms"),
        (1e6, 0, "us"),
        (1e9, 0, "ns"),
    ):
        yield Case(
            f"Unix {name}", with_time(lambda i, f=factor, d=decimals: f"{unix[i] * f:.{d}f}"), one, **utc
        )  # type: ignore[misc]
    for form, name in (
        ("%d/%m/%Y %H:%M:%S", "D/M/Y"), ("%d-%m-%y %H:%M:%S", "D-M-y"), ("%Y/%m/%d %H:%M:%S", "Y/M/D"),
        ("%m/%d/%Y %H:%M:%S", "M/D/Y"), ("%m/%d/%Y %I:%M:%S %p", "12 h"), ("%d %b %Y %H:%M:%S", "month in letters"),
        ("%B %d, %Y %H:%M:%S", "month first in letters"), ("%a %d %b %Y %H:%M:%S", "weekday"),
        ("%a, %d %b %Y %H:%M:%S +0200", "mail"), ("%d.%m.%Y, %H:%M:%S", "comma after the date"),
        ("%d.%m.%Y %H.%M.%S", "points in the clock"), ("%Y.%m.%d-%H:%M:%S", "hyphen between"),
    ):  # fmt: skip
        extra = absolute if name == "mail" else {}
        yield Case(
            f"stamp {name}", with_time(lambda i, f=form: stamp(t.time_s[i], f), delimiter=";"), one, **extra
        )  # type: ignore[misc]
    for language, month in (
        ("German", "Juni"),
        ("French", "juin"),
        ("Spanish", "junio"),
        ("Italian", "giugno"),
        ("Dutch", "juni"),
        ("Polish", "czerwca"),
    ):
        write: Callable[[int], str] = lambda i, m=month: stamp(t.time_s[i], f"%d {m} %Y %H:%M:%S")  # type: ignore[misc]  # noqa: E731
        yield Case(f"month in {language}", with_time(write, delimiter=";"), one)
    two = table(t, ("Datum", "Uhrzeit", "W", "kWh"), (
        lambda i: stamp(t.time_s[i], "%d.%m.%Y"), lambda i: stamp(t.time_s[i], "%H:%M:%S"), w.watts, w.kwh), ";")  # fmt: skip
    yield Case("date and clock apart", two.encode(), one)
    relative = {"clock": "relative", "start": None}
    yield Case("elapsed s", with_time(lambda i: f"{t.time_s[i]:.2f}", "elapsed [s]"), one, **relative)
    yield Case("elapsed ms", with_time(lambda i: f"{t.time_s[i] * 1000:.0f}", "elapsed ms"), one, **relative)
    yield Case(
        "elapsed h:mm:ss",
        with_time(lambda i: str(timedelta(seconds=float(t.time_s[i]))).replace(" day, ", ":"), "Elapsed"),
        one,
        **relative,
    )
    long = load(rows=240, step_s=600.0)
    clock = table(long, ("Elapsed", "W", "kWh"), (
        lambda i: f"{int(long.time_s[i]) // 3600}:{int(long.time_s[i]) // 60 % 60:02d}:00", Writer(long).watts, Writer(long).kwh))  # fmt: skip
    yield Case("elapsed over 24 h", clock.encode(), (Machine(long),), **relative)
    yield Case(
        "ISO durations",
        with_time(lambda i: f"PT{int(t.time_s[i]) // 60}M{int(t.time_s[i]) % 60}S"),
        one,
        **relative,
    )
    night = table(t, ("clock", "W", "kWh"), (
        lambda i: (datetime(2025, 6, 23, 23, 50) + timedelta(seconds=float(t.time_s[i]))).strftime("%H:%M:%S"), w.watts, w.kwh))  # fmt: skip
    yield Case(
        "clock time over midnight", night.encode(), one, problems=("log.time_of_day_only",), **relative
    )
    days = [(START - datetime(1899, 12, 30)).total_seconds() / 86400 + s / 86400 for s in t.time_s]
    yield Case("spreadsheet serials", with_time(lambda i: f"{days[i]:.8f}", "Date"), one)
    named = with_time(lambda i: w.time(i), "time (UTC)")
    yield Case("zone in the heading", named, one, clock="absolute", start="2025-06-23T09:36:00+00:00")
    above = b"Time zone: Europe/Berlin\n" + with_time(w.time)
    yield Case("zone above the headings", above, one, clock="absolute", start="2025-06-23T09:36:00+02:00")
    seconds = load(rows=600, step_s=1.0)
    cut = table(seconds, ("time", "W", "kWh"), (
        lambda i: stamp(seconds.time_s[i], "%Y-%m-%d %H:%M"), Writer(seconds).watts, Writer(seconds).kwh))  # fmt: skip
    yield Case(
        "stamps cut to the minute",
        cut.encode(),
        (Machine(seconds, time_within=3.0),),
        problems=("log.stamps_cut",),
    )
    yield from _changes()


def _changes() -> Iterator[Case]:
    """Wall clocks through both changes of the year."""
    t = load(rows=900, step_s=10.0)
    w = Writer(t)
    for name, day, gap in (
        ("back", datetime(2025, 10, 26, 1, 30), -3600),
        ("forward", datetime(2025, 3, 30, 1, 0), 3600),
    ):
        edge = datetime(2025, 10, 26, 3, 0) if gap < 0 else datetime(2025, 3, 30, 2, 0)

        def wall(i: int, day: datetime = day, gap: int = gap, edge: datetime = edge) -> str:
            at = day + timedelta(seconds=float(t.time_s[i]))
            return (at + timedelta(seconds=gap) if at >= edge else at).strftime("%d.%m.%Y %H:%M:%S")

        text = table(t, ("Zeit", "W", "kWh"), (wall, w.watts, w.kwh), ";")
        yield Case(
            f"clock put {name}",
            text.encode(),
            (Machine(t),),
            start=day.isoformat(),
            problems=("log.clock_put",),
        )


def _words() -> Iterator[Case]:
    t = load()
    languages = {
        "English": ("Date", "Time", "Power (W)", "Energy (kWh)", "Voltage (V)"),
        "German": ("Datum", "Uhrzeit", "Wirkleistung [W]", "Zählerstand [kWh]", "Spannung [V]"),
        "French": ("Date", "Heure", "Puissance active (W)", "Énergie consommée (kWh)", "Tension (V)"),
        "Spanish": ("Fecha", "Hora", "Potencia activa (W)", "Energía (kWh)", "Tensión (V)"),
        "Italian": ("Data", "Ora", "Potenza attiva (W)", "Energia (kWh)", "Tensione (V)"),
        "Dutch": ("Datum", "Tijd", "Vermogen (W)", "Meterstand (kWh)", "Spanning (V)"),
        "Polish": ("Data", "Godzina", "Moc czynna (W)", "Zużycie (kWh)", "Napięcie (V)"),
        "Portuguese": ("Data", "Hora", "Potência ativa (W)", "Energia (kWh)", "Tensão (V)"),
        "Swedish": ("Datum", "Klockslag", "Effekt (W)", "Mätarställning (kWh)", "Spänning (V)"),
        "Japanese": ("日付", "時刻", "消費電力 (W)", "積算電力量 (kWh)", "電圧 (V)"),
    }
    w = Writer(t)
    for language, head in languages.items():
        text = table(t, head, (
            lambda i: stamp(t.time_s[i], "%d.%m.%Y"), lambda i: stamp(t.time_s[i], "%H:%M:%S"), w.watts, w.kwh,
            lambda i: f"{229 + i % 3}.{i % 10}"), ";")  # fmt: skip
        yield Case(f"words in {language}", text.encode(), (Machine(t),), file="Alder.csv")
    bare = {
        "German": "Leistung",
        "French": "Puissance",
        "Polish": "Moc",
        "Japanese": "電力",
        "Swedish": "Effekt",
    }
    for language, word in bare.items():
        text = table(t, ("Zeit", word), (w.time, w.watts), ";")
        yield Case(f"power without unit in {language}", text.encode(), (Machine(t, has_counter=False),))


def _quantities() -> Iterator[Case]:
    t = load()
    one = (Machine(t),)
    alone = (Machine(t, has_counter=False),)
    w = Writer(t)

    def of(head: Sequence[str], *columns: Callable[[int], str]) -> bytes:
        return table(t, ("time", *head), (w.time, *columns)).encode()

    yield Case("power kW", of(("kW", "kWh"), w.kilowatts, w.kwh), one)
    yield Case("power mW", of(("P/mW", "E/Wh"), w.milliwatts, w.wh), one)
    yield Case("milliwatts unsaid", of(("power", "energy_wh"), w.milliwatts, w.wh), one)
    yield Case("milliwatts unsaid, no counter", of(("power",), w.milliwatts), alone)
    yield Case("kilowatts unsaid", of(("power", "energy (Wh)"), w.kilowatts, w.wh), one)
    yield Case("counter unit unsaid", of(("power (W)", "energy"), w.watts, w.kwh), one)
    yield Case("counter kJ", of(("W", "energy kJ"), w.watts, w.joules(1e3, 2)), one)
    yield Case("counter MJ", of(("W", "energy MJ"), w.watts, w.joules(1e6, 5)), one)
    yield Case(
        "counter alone",
        of(("energy (Wh)",), w.wh),
        (Machine(t, power_within=400.0),),
        problems=("log.power_from_counter",),
    )
    volts, amps = (lambda i: "230.0"), (lambda i: f"{t.power_w[i] / 230:.4f}")
    yield Case(
        "volts and amperes", of(("U [V]", "I [A]"), volts, amps), alone, problems=("log.apparent_power",)
    )
    apparent = lambda i: f"{t.power_w[i] * 1.3:.1f}"  # noqa: E731
    reactive = lambda i: f"{t.power_w[i] * 0.8:.1f}"  # noqa: E731
    head = ("Apparent power (VA)", "Reactive power (var)", "Power factor", "Active power (W)")
    yield Case("active among others", of(head, apparent, reactive, lambda i: "0.77", w.watts), alone)
    german = ("Scheinleistung", "Blindleistung", "Leistungsfaktor", "Wirkleistung")
    yield Case(
        "active among others in German", of(german, apparent, reactive, lambda i: "0.77", w.watts), alone
    )
    most = lambda i: f"{t.power_w[i] + 5:.1f}"  # noqa: E731
    least = lambda i: f"{t.power_w[i] - 5:.1f}"  # noqa: E731
    yield Case("mean between extremes", of(("min W", "avg W", "max W"), least, w.watts, most), alone)
    half = t.time_s.size // 2
    reset = lambda i: f"{t.counter_wh[i] - (t.counter_wh[half] if i >= half else 0):.1f}"  # noqa: E731
    yield Case(
        "counter reset",
        of(("W", "Wh"), w.watts, reset),
        (Machine(t, counter_within=0.6),),
        problems=("log.counter_reset",),
    )
    rolled = lambda i: f"{(t.counter_wh[i] + 9960.0) % 10000:.1f}"  # noqa: E731
    yield Case("counter rolls over", of(("W", "Wh"), w.watts, rolled), one, problems=("log.counter_reset",))
    glitch = lambda i: "0.0" if i == 150 else f"{t.counter_wh[i]:.1f}"  # noqa: E731
    yield Case("counter with one bad value", of(("W", "Wh"), w.watts, glitch), one)
    each = np.diff(t.counter_wh, prepend=t.counter_wh[0])
    yield Case(
        "energy per interval",
        of(("W", "Wh"), w.watts, lambda i: f"{each[i]:.1f}"),
        one,
        problems=("log.energy_per_interval",),
    )
    day = of(
        ("W", "energy today (kWh)", "energy total (kWh)"),
        w.watts,
        w.kwh,
        lambda i: f"{t.counter_wh[i] / 1000 + 500:.4f}",
    )
    yield Case("day and total counters", day, one)
    warm = of(
        ("W", "bed temperature (°C)", "nozzle temp", "room °F", "state"),
        w.watts,
        lambda i: "60.0",
        lambda i: "210",
        lambda i: "68.0",
        lambda i: "busy",
    )
    yield Case("temperatures and a state", warm, alone)
    steps = np.arange(t.time_s.size) // 3 * 3
    yield Case("values held", of(("W",), lambda i: f"{t.power_w[steps[i]] + steps[i] % 7:.1f}"),
               (Machine(Load(t.time_s, t.power_w[steps] + steps % 7, t.counter_wh), has_counter=False),), problems=("log.values_held",))  # fmt: skip


def _layouts() -> Iterator[Case]:
    a, b = load(seed=1), load(seed=2, start_wh=500.0)
    wa, wb = Writer(a), Writer(b)
    two = (Machine(a, "Alder"), Machine(b, "Birch"))
    wide = table(
        a,
        ("time", "Alder [W]", "Alder [kWh]", "Birch [W]", "Birch [kWh]"),
        (wa.time, wa.watts, wa.kwh, wb.watts, wb.kwh),
    )
    yield Case("wide", wide.encode(), two)
    words = table(a, ("time", "Alder power (W)", "Birch power (W)"), (wa.time, wa.watts, wb.watts))
    lone = (Machine(a, "Alder", False), Machine(b, "Birch", False))
    yield Case("wide in words", words.encode(), lone)
    rows = ["time,machine,W,kWh"]
    for i in range(a.time_s.size):
        rows += [
            f"{wa.time(i)},Alder,{wa.watts(i)},{wa.kwh(i)}",
            f"{wb.time(i)},Birch,{wb.watts(i)},{wb.kwh(i)}",
        ]
    yield Case("a row for each machine", "\n".join(rows).encode(), two)
    rows = ["device;quantity;value;time"]
    for i in range(a.time_s.size):
        for name, w in (("Alder", wa), ("Birch", wb)):
            rows += [f"{name};power;{w.watts(i)} W;{w.time(i)}", f"{name};energy;{w.kwh(i)} kWh;{w.time(i)}"]
    yield Case("a row for each quantity", "\n".join(rows).encode(), two)
    rows = ["when,item,value"]
    for i in range(a.time_s.size):
        rows += [f"{wa.time(i)},Alder power,{wa.watts(i)}", f"{wa.time(i)},Alder energy,{wa.kwh(i)}"]
    yield Case("machine and quantity in one name", "\n".join(rows).encode(), (Machine(a, "Alder"),))
    rows = ["time,quantity,value,unit"]
    for i in range(a.time_s.size):
        rows += [f"{wa.time(i)},power,{wa.watts(i)},W", f"{wa.time(i)},energy,{wa.kwh(i)},kWh"]
    yield Case("unit in a column", "\n".join(rows).encode(), (Machine(a),))
    named = table(a, ("device", "time", "W"), (lambda i: "Cedar", wa.time, wa.watts))
    yield Case("one machine named in a column", named.encode(), (Machine(a, "Cedar", False),))


def _containers() -> Iterator[Case]:
    t = load()
    one = (Machine(t),)
    text = plain(t).encode()
    yield Case("gzip", gzip.compress(text), one, file="Alder.csv.gz")
    packed = io.BytesIO()
    with zipfile.ZipFile(packed, "w", zipfile.ZIP_DEFLATED) as archive:
        archive.writestr("Alder.csv", text)
        archive.writestr("folder/Birch.csv", plain(load(seed=2)))
    yield Case(
        "zip of two",
        packed.getvalue(),
        (Machine(t, "Alder"), Machine(load(seed=2), "Birch")),
        file="logs.zip",
    )
    rows = [
        {"t": stamp(s, "%Y-%m-%dT%H:%M:%S"), "power": p, "total_kwh": c / 1000}
        for s, p, c in zip(t.time_s, t.power_w, t.counter_wh, strict=True)
    ]
    lines = "\n".join(json.dumps(r) for r in rows)
    yield Case("JSON lines", lines.encode(), one, file="log.jsonl")
    yield Case("JSON lines, one broken", (lines + '\n{"t": "2025').encode(), one, refused=1, file="log.jsonl")
    yield Case("JSON array", json.dumps(rows).encode(), one, file="log.json")
    nested = {"meter": "x", "rows": [{"time": r["t"], "values": {"power_w": r["power"]}} for r in rows]}
    yield Case("JSON nested", json.dumps(nested).encode(), (Machine(t, has_counter=False),), file="log.json")
    yield from _tables(t, one)


def _tables(t: Load, one: tuple[Machine, ...]) -> Iterator[Case]:
    import openpyxl
    import pyarrow as pa
    from pyarrow import feather, parquet

    moments = [START + timedelta(seconds=float(s)) for s in t.time_s]
    for is_1904 in (False, True):
        book = openpyxl.Workbook()
        if is_1904:
            book.epoch = datetime(1904, 1, 1)
        sheet = book.active
        assert sheet is not None
        sheet.append(["Bench meter"])
        sheet.append([])
        sheet.append(["Time", "Power (W)", "Energy (kWh)"])
        for moment, p, c in zip(moments, t.power_w, t.counter_wh, strict=True):
            sheet.append([moment, float(p), float(c) / 1000])
        out = io.BytesIO()
        book.save(out)
        yield Case(
            f"xlsx {'1904' if is_1904 else '1900'}",
            out.getvalue(),
            one,
            file="log.xlsx",
            reading={"header_row": 3},
        )
    columns = pa.table(
        {"time": pa.array(moments, pa.timestamp("ms")), "power_w": t.power_w, "energy_wh": t.counter_wh}
    )
    sink = io.BytesIO()
    parquet.write_table(columns, sink)
    yield Case("Parquet", sink.getvalue(), one, file="log.parquet")
    zoned = columns.set_column(0, "time", columns["time"].cast(pa.timestamp("us", "UTC")))
    sink = io.BytesIO()
    feather.write_feather(zoned, sink, "uncompressed")
    yield Case(
        "Arrow", sink.getvalue(), one, file="log.arrow", clock="absolute", start="2025-06-23T09:36:00+00:00"
    )
    base = sqlite3.connect(":memory:")
    base.execute("create table readings (id integer primary key, ts integer, watts real, note text)")
    base.execute("create table other (a, b)")
    first = START.replace(tzinfo=UTC).timestamp()
    base.executemany(
        "insert into readings (ts, watts) values (?, ?)",
        [(int(first + s), float(p)) for s, p in zip(t.time_s, t.power_w, strict=True)],
    )
    base.commit()
    data = base.serialize()
    base.close()
    alone = (Machine(t, has_counter=False),)
    yield Case("SQLite", data, alone, file="log.sqlite", clock="absolute", start="2025-06-23T09:36:00+00:00")


def _flaws() -> Iterator[Case]:
    t = load()
    one = (Machine(t),)
    lines = plain(t).splitlines()
    head, rows = lines[0], lines[1:]

    def text(*parts: Sequence[str]) -> bytes:
        return ("\n".join(x for p in parts for x in p) + "\n").encode()

    again = [x for i, row in enumerate(rows) for x in ((head, row) if i and i % 60 == 0 else (row,))]
    yield Case("repeated headings", text([head], again), one, problems=("log.repeated_headings",))
    yield Case("trailing summary", text(lines, ["", "Total,,0.1234", "Mean power: 90 W"]), one, refused=2)
    yield Case("cut last row", text(lines)[:-1] + b"\n2025-06-23 10:1", one, refused=1)
    nul = text(lines[:100]) + b"\0" * 64 + text(lines[100:])
    yield Case("zero bytes", nul, one, problems=("log.nul_bytes",))
    spliced = [*lines[:50], lines[50] + lines[51], *lines[52:]]
    kept = np.delete(np.arange(t.time_s.size), (49, 50))
    fewer = (Machine(Load(t.time_s[kept], t.power_w[kept], t.counter_wh[kept])),)
    yield Case("spliced row", text(spliced), fewer, refused=1)
    doubled = [x for i, x in enumerate(lines) for x in ((x, x) if i and i % 40 == 0 else (x,))]
    yield Case("repeated rows", text(doubled), one, problems=("log.repeated_rows",))
    yield Case("newest first", text([head], rows[::-1]), one, problems=("log.newest_first",))
    order = np.random.default_rng(3).permutation(len(rows))
    moved = [rows[i] for i in np.lexsort((order, np.arange(len(rows)) // 5))]
    yield Case("unsorted", text([head], moved), one, problems=("log.unsorted",))
    worded = [r.replace(r.split(",")[1], "broken") if i in (30, 90) else r for i, r in enumerate(rows)]
    kept = np.delete(np.arange(t.time_s.size), (30, 90))
    fewer = (Machine(Load(t.time_s[kept], t.power_w[kept], t.counter_wh[kept])),)
    yield Case("words for a number", text([head], worded), fewer, refused=2)
    endless = [r.replace(r.split(",")[1], "inf") if i == 30 else r for i, r in enumerate(rows)]
    kept = np.delete(np.arange(t.time_s.size), 30)
    fewer = (Machine(Load(t.time_s[kept], t.power_w[kept], t.counter_wh[kept])),)
    yield Case("infinite value", text([head], endless), fewer, refused=1)
    odd = [r.replace("2025-06-23", "2025-06-31") if i == 70 else r for i, r in enumerate(rows)]
    kept = np.delete(np.arange(t.time_s.size), 70)
    fewer = (Machine(Load(t.time_s[kept], t.power_w[kept], t.counter_wh[kept])),)
    yield Case("a day that is not", text([head], odd), fewer, refused=1)
    leap = [r.replace("09:36:50", "09:36:60") for r in rows]
    kept = np.delete(np.arange(t.time_s.size), 5)
    fewer = (Machine(Load(t.time_s[kept], t.power_w[kept], t.counter_wh[kept])),)
    yield Case("leap second", text([head], leap), fewer, refused=1)


def written(rows: Sequence[Sequence[object]], **options: Any) -> str:
    """Rows as the csv module writes them."""
    out = io.StringIO()
    csv.writer(out, **options).writerows(rows)
    return out.getvalue()


def today() -> date:
    """A fixed day, so that no case depends on the clock of the computer."""
    return START.date()
