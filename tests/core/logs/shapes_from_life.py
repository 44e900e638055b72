"""Cases: logs as plug-in meters, data loggers, home servers and spreadsheets really write them.

Each mixes several habits at once: common practice, no source.
"""

import io
import json
from collections.abc import Callable, Iterator
from datetime import UTC, timedelta, timezone

import numpy as np

from tests.core.logs.corpus import START, Case, Load, Machine, Writer, load, moment, stamp, table

Cell = Callable[[int], str]
ABSOLUTE = {"clock": "absolute", "start": "2025-06-23T09:36:00+00:00"}
RELATIVE = {"clock": "relative", "start": None}


def cases() -> Iterator[Case]:
    """All of them."""
    t = load()
    yield from _headings(t)
    yield from _rows(t)
    yield from _stamps(t)
    yield from _counted_time()
    yield from _companions(t)
    yield from _numbers(t)
    yield from _objects(t)
    yield _workbook(t)


def _headings(t: Load) -> Iterator[Case]:
    w = Writer(t, "%d.%m.%Y %H:%M:%S", ",")
    one = (Machine(t),)
    rows = table(t, (), (w.time, w.watts, w.kwh), ";")
    yield Case("units in the second line", f"Zeit;Leistung;Energie\n;W;kWh\n{rows}".encode(), one)
    yield Case("units and kinds of value in lines", f"Zeit;P;E\n;[W];[kWh]\n;Mean;Last\n{rows}".encode(), one)
    yield Case("a ruler below the headings", f"Zeit;W;kWh\n----;----;----\n{rows}".encode(), one)
    keys = "Serial;A-17\nInterval;10 s\nExported;24.06.2025 08:00:00\n\nZeit;Leistung [W];Energie [kWh]\n"
    yield Case("keys and values above the headings", (keys + rows).encode(), one)
    said = "sep=;\nZeit;Leistung [W];Energie [kWh]\n" + rows
    yield Case("the delimiter named in the first line", said.encode(), one)


def _rows(t: Load) -> Iterator[Case]:
    w = Writer(t)
    one = (Machine(t),)
    rows = table(t, (), (w.time, w.watts, w.kwh)).splitlines()
    head = "time,power [W],energy [kWh]"
    yield Case("a comma at the end of each row", "\n".join([head, *(r + "," for r in rows)]).encode(), one)
    all_ends = "\n".join(x + "," for x in (head, *rows))
    yield Case("a comma at the end of each line", all_ends.encode(), one)
    yield Case("blank lines between rows", "\n\n".join([head, *rows]).encode(), one)
    spaced = "\r\r\n".join([head, *rows])
    yield Case("line ends written twice", spaced.encode(), one)
    tabs = "\n".join([head.replace(",", ",\t"), *(r.replace(",", ",\t") for r in rows)])
    yield Case("a tab after each comma", tabs.encode(), one)
    words = [head]
    for i, row in enumerate(rows):
        words.append(row)
        if i in (30, 120):
            words.append(f"{w.time(i)},connection lost,")
        if i == 60:
            words.append(f"*** {w.time(i)} restarted ***")
    yield Case("messages between rows", "\n".join(words).encode(), one, refused=3)
    padded = "\n".join(
        [
            f"{'time':<20} ; {'W':>9} ; {'kWh':>9}",
            *(" ; ".join(c.rjust(9) for c in r.split(",")) for r in rows),
        ]
    )
    yield Case("cells padded with spaces", padded.encode(), one)
    quoted = "\n".join([f'"{head}"', *(f'"{r}"' for r in rows)])
    yield Case("each line in quotes", quoted.encode(), one)


def _stamps(t: Load) -> Iterator[Case]:
    w = Writer(t)
    one = (Machine(t),)

    def of(write: Cell, name: str = "time", delimiter: str = ",") -> bytes:
        return table(t, (name, "W", "kWh"), (write, w.watts, w.kwh), delimiter).encode()

    yield Case("UTC after each stamp", of(lambda i: w.time(i) + " UTC"), one, **ABSOLUTE)
    yield Case("offset with a space before it", of(lambda i: w.time(i) + " +0000"), one, **ABSOLUTE)
    yield Case("offset of hours alone", of(lambda i: w.time(i) + "+00"), one, **ABSOLUTE)
    two = {"clock": "absolute", "start": "2025-06-23T09:36:00+02:00"}
    yield Case("GMT+2 in the heading", of(w.time, "Time (GMT+2)"), one, **two)
    yield Case("UTC+02:00 in the heading", of(w.time, "timestamp [UTC+02:00]"), one, **two)
    yield Case(
        "fraction after a comma, T between",
        of(lambda i: stamp(t.time_s[i], "%Y-%m-%dT%H:%M:%S,123"), delimiter=";"),
        one,
        start="2025-06-23T09:36:00.123",
    )
    yield Case("weekday after the date", of(lambda i: stamp(t.time_s[i], "%d.%m.%Y (%a) %H:%M:%S")), one)
    yield Case(
        "weekday in German",
        of(lambda i: "Mo., " + stamp(t.time_s[i], "%d.%m.%Y %H:%M:%S"), delimiter=";"),
        one,
    )
    yield Case("o'clock in words", of(lambda i: stamp(t.time_s[i], "%d.%m.%Y %H:%M:%S Uhr")), one)
    yield Case(
        "at between date and time",
        of(lambda i: stamp(t.time_s[i], "%b %d, %Y at %I:%M:%S %p"), delimiter=";"),
        one,
    )
    yield Case(
        "mail without weekday, offset named",
        of(lambda i: stamp(t.time_s[i], "%d %b %Y %H:%M:%S GMT")),
        one,
        **ABSOLUTE,
    )
    yield Case("one digit days and hours", of(lambda i: _short(t.time_s[i])), one)
    night = moment(2025, 3, 3, 23, 40)

    def to_24(i: int) -> str:
        at = night + timedelta(seconds=float(t.time_s[i]))
        if (at.hour, at.minute, at.second) == (0, 0, 0):
            return f"{at - timedelta(days=1):%d.%m.%Y};24:00:00"
        return f"{at:%d.%m.%Y;%H:%M:%S}"

    text = table(t, ("Date;Time", "Watt", "Wh"), (to_24, w.watts, w.wh), ";")
    yield Case("midnight written as 24:00:00", text.encode(), one, start=night.isoformat())
    joined = table(t, ("Time", "W", "Wh"), (lambda i: to_24(i).replace(";", " "), w.watts, w.wh))
    yield Case("date and 24:00:00 in one cell", joined.encode(), one, start=night.isoformat())
    slow = load(rows=240, step_s=60.0)
    text = table(
        slow,
        ("Time", "W", "kWh"),
        (Writer(slow, "%Y-%m-%d %H:%M").time, Writer(slow).watts, Writer(slow).kwh),
    )
    yield Case("a row a minute, no seconds", text.encode(), (Machine(slow),))


def _short(seconds: float) -> str:
    at = START + timedelta(seconds=float(seconds))
    return f"{at.day}/{at.month}/{at.year} {at.hour}:{at.minute:02d}:{at.second:02d}"


def _counted_time() -> Iterator[Case]:
    t = load()
    w = Writer(t)
    one = (Machine(t),)

    def of(source: Load, head: str, write: Cell) -> bytes:
        return table(source, (head, "W", "kWh"), (write, Writer(source).watts, Writer(source).kwh)).encode()

    yield Case(
        "elapsed minutes", of(t, "Elapsed (min)", lambda i: f"{t.time_s[i] / 60:.4f}"), one, **RELATIVE
    )
    yield Case("elapsed hours", of(t, "Elapsed (h)", lambda i: f"{t.time_s[i] / 3600:.6f}"), one, **RELATIVE)
    yield Case(
        "minutes in words", of(t, "Time in minutes", lambda i: f"{t.time_s[i] / 60:.4f}"), one, **RELATIVE
    )
    yield Case(
        "milliseconds since the start",
        of(t, "millis", lambda i: f"{5123 + t.time_s[i] * 1000:.0f}"),
        one,
        **RELATIVE,
    )
    unix = START.replace(tzinfo=UTC).timestamp()
    coarse = load(rows=240, step_s=60.0)
    exponent = of(coarse, "epoch", lambda i: f"{unix + coarse.time_s[i]:.9E}")
    yield Case("Unix time with an exponent", exponent, (Machine(coarse, time_within=0.6),), **ABSOLUTE)
    minutes = table(
        t,
        ("row", "m:ss", "W"),
        (lambda i: str(i + 1), lambda i: f"{int(t.time_s[i]) // 60}:{int(t.time_s[i]) % 60:02d}", w.watts),
    )
    yield Case(
        "elapsed m:ss beside a row number", minutes.encode(), (Machine(t, has_counter=False),), **RELATIVE
    )


def _companions(t: Load) -> Iterator[Case]:
    """Columns that stand beside power and counter and must not be taken for them."""
    w = Writer(t)
    one = (Machine(t),)
    volts: Cell = lambda i: f"{229 + i % 3}.{i % 10}"  # noqa: E731
    amps: Cell = lambda i: f"{t.power_w[i] / 230 / 0.9:.3f}"  # noqa: E731
    factor: Cell = lambda i: f"0.{88 + i % 9}"  # noqa: E731
    mains: Cell = lambda i: f"{49.9 + i % 3 / 10:.1f}"  # noqa: E731
    load_share: Cell = lambda i: f"{t.power_w[i] / 23:.1f} %"  # noqa: E731
    yield Case(
        "everything a meter shows",
        table(
            t,
            ("Time", "Voltage", "Current", "Power Factor", "Frequency", "Load %", "Power", "Energy"),
            (w.time, volts, amps, factor, mains, load_share, w.watts, w.kwh),
        ).encode(),
        one,
    )
    yield Case(
        "three powers",
        table(
            t,
            ("time", "Apparent Power (VA)", "Reactive Power (var)", "Active Power (W)", "Total (kWh)"),
            (
                w.time,
                lambda i: f"{t.power_w[i] * 1.1:.1f}",
                lambda i: f"{t.power_w[i] * 0.4:.1f}",
                w.watts,
                w.kwh,
            ),
        ).encode(),
        one,
    )
    night = load(rows=240, step_s=600.0, start_wh=81230.0)
    v = Writer(night)
    midnight_s = 14.4 * 3600
    day = np.where(night.time_s < midnight_s, night.counter_wh - 81230.0, np.nan)
    at = int(np.searchsorted(night.time_s, midnight_s))
    day[at:] = night.counter_wh[at:] - night.counter_wh[at - 1]
    yield Case(
        "total beside a counter of the day",
        table(
            night,
            ("Time", "Today kWh", "Yesterday kWh", "Total kWh", "Power W"),
            (v.time, lambda i: f"{day[i] / 1000:.3f}", lambda i: "2.114", v.kwh, v.watts),
        ).encode(),
        (Machine(night, counter_within=0.6),),
    )
    yield Case(
        "one phase in use, and the total",
        table(
            t,
            ("time", "P L1 [W]", "P L2 [W]", "P L3 [W]", "P total [W]", "E total [kWh]"),
            (w.time, w.watts, lambda i: "0.0", lambda i: "0.0", w.watts, w.kwh),
        ).encode(),
        one,
    )
    yield Case(
        "lowest, mean and highest power",
        table(
            t,
            ("time", "min W", "avg W", "max W", "kWh"),
            (
                w.time,
                lambda i: f"{t.power_w[i] * 0.9:.1f}",
                w.watts,
                lambda i: f"{t.power_w[i] * 1.2:.1f}",
                w.kwh,
            ),
        ).encode(),
        one,
    )
    yield Case(
        "a switch and a signal strength",
        table(
            t,
            ("last_updated", "rssi", "switch", "power_w", "energy_kwh", "cost_eur"),
            (w.time, lambda i: str(-60 - i % 7), lambda i: "on", w.watts, w.kwh, lambda i: f"{i / 1000:.3f}"),
        ).encode(),
        one,
    )
    fed = load()
    fed.power_w[5:9] *= -1
    yield Case(
        "some powers below zero",
        table(fed, ("time", "W"), (w.time, Writer(fed).watts)).encode(),
        (Machine(fed, has_counter=False),),
        problems=("log.negative_power",),
    )


def _numbers(t: Load) -> Iterator[Case]:
    one = (Machine(t),)
    big = load(start_wh=1234567.0)
    w = Writer(big, "%d.%m.%Y %H:%M:%S", ",", ".")
    text = table(
        big,
        ("Zeit", "Leistung", "Zähler"),
        (w.time, lambda i: w.watts(i) + " W", lambda i: w.wh(i) + " Wh"),
        ";",
        "\r\n",
        True,
    )
    yield Case("units in quoted cells, point between thousands", text.encode("cp1252"), (Machine(big),))
    w = Writer(big, "%d.%m.%Y %H:%M:%S", ".", "'")
    text = table(big, ("Zeit", "Leistung (W)", "Zähler (Wh)"), (w.time, w.watts, w.wh), ";")
    yield Case("apostrophes between thousands", text.encode(), (Machine(big),))
    w = Writer(t)
    text = table(
        t,
        ("time", "power", "energy"),
        (w.time, lambda i: f"{t.power_w[i]:.1f}W", lambda i: f"{t.counter_wh[i] / 1000:.4f}kWh"),
    )
    yield Case("units close to the numbers", text.encode(), one)
    text = table(
        t,
        ("time", "power", "energy (kWh)"),
        (w.time, lambda i: f"+{t.power_w[i]:08.1f}", lambda i: f"{t.counter_wh[i] / 1000:.6e}"),
    )
    yield Case("signs, leading zeros and exponents", text.encode(), one)


def _objects(t: Load) -> Iterator[Case]:
    """JSON as servers and message brokers keep it."""
    one = (Machine(t),)
    alone = (Machine(t, has_counter=False),)
    unix = START.replace(tzinfo=UTC).timestamp()

    def lines(make: Callable[[int], object]) -> bytes:
        return "\n".join(json.dumps(make(i)) for i in range(t.time_s.size)).encode()

    def kwh(i: int) -> float:
        return float(t.counter_wh[i]) / 1000

    yield Case(
        "objects inside objects",
        lines(
            lambda i: {"ts": unix + t.time_s[i], "data": {"power": t.power_w[i], "energy": {"total": kwh(i)}}}
        ),
        one,
        file="log.jsonl",
        **ABSOLUTE,
    )
    yield Case(
        "milliseconds as text",
        lines(lambda i: {"time": f"{(unix + t.time_s[i]) * 1000:.0f}", "watts": f"{t.power_w[i]:.1f}"}),
        alone,
        file="log.jsonl",
        **ABSOLUTE,
    )
    zone = timezone(timedelta(hours=2))

    def states(i: int) -> dict[str, object]:
        at = (START.replace(tzinfo=zone) + timedelta(seconds=float(t.time_s[i]))).isoformat()
        is_power = i % 2 == 0
        return {
            "what": "plug power" if is_power else "plug voltage",
            "value": f"{t.power_w[i]}" if is_power else "230.1",
            "changed": at,
            "more": {"unit": "W" if is_power else "V", "label": "Plug"},
        }

    half = Load(t.time_s[::2], t.power_w[::2], t.counter_wh[::2])
    yield Case(
        "a line for each change",
        lines(states),
        (Machine(half, has_counter=False),),
        file="log.jsonl",
        clock="absolute",
        start="2025-06-23T09:36:00+02:00",
    )
    pairs = {
        "series": [
            {
                "name": "power_w",
                "points": [
                    [(unix + s) * 1000, p] for s, p in zip(t.time_s.tolist(), t.power_w.tolist(), strict=True)
                ],
            }
        ]
    }
    yield Case("pairs of time and value", json.dumps(pairs).encode(), alone, file="log.json", **ABSOLUTE)
    columns = {
        "meta": {"interval": 10},
        "time": [stamp(s, "%Y-%m-%d %H:%M:%S") for s in t.time_s],
        "power_w": t.power_w.tolist(),
        "energy_kwh": [kwh(i) for i in range(t.time_s.size)],
    }
    yield Case("columns as lists", json.dumps(columns, indent=1).encode(), one, file="log.json")
    keyed = {
        stamp(s, "%Y-%m-%dT%H:%M:%S"): {"power": p} for s, p in zip(t.time_s, t.power_w.tolist(), strict=True)
    }
    yield Case("stamps as keys", json.dumps(keyed).encode(), alone, file="log.json")


def _workbook(t: Load) -> Case:
    """Real dates, a title above, units as number formats, and a total at the foot."""
    import openpyxl

    book = openpyxl.Workbook()
    sheet = book.active
    assert sheet is not None
    sheet.append(["Energy log of the bench"])
    sheet.append([])
    sheet.append(["Date", "Time", "Power", "Energy"])
    sheet.append(["", "", "W", "kWh"])
    for s, p, c in zip(t.time_s.tolist(), t.power_w.tolist(), t.counter_wh.tolist(), strict=True):
        at = START + timedelta(seconds=s)
        sheet.append([at.date(), at.time(), p, c / 1000])
    out = io.BytesIO()
    book.save(out)
    return Case("dates and times of a workbook", out.getvalue(), (Machine(t),), file="log.xlsx")
