"""Logs that were once misread or refused: names above headings, zones, counted rows, changes of the clock."""

import io
import json
from collections.abc import Callable, Sequence
from datetime import UTC, datetime, timedelta
from zoneinfo import ZoneInfo

from openpyxl import Workbook

from tests.core.logs.corpus import START, Case, Load, Machine, Writer, load, table

ALDER, BIRCH = load(), load(seed=2)
_BERLIN = ZoneInfo("Europe/Berlin")
_ISO = "%Y-%m-%d %H:%M:%S"
_HEAD = ("time", "power [W]", "energy [kWh]")


def cases() -> list[Case]:
    """Every such shape."""
    return [*_names_above(), *_rows_counted(), *_zones(), *_clocks(), *_hourly(), *_below(), *_others()]


def _both(has_counter: bool = True) -> tuple[Machine, ...]:
    return Machine(ALDER, "Alder", has_counter), Machine(BIRCH, "Birch", has_counter)


def _wide(head: Sequence[str], above: str = "", *, has_counter: bool = True) -> bytes:
    a, b = Writer(ALDER), Writer(BIRCH)
    columns = (a.time, a.watts, a.kwh, b.watts, b.kwh) if has_counter else (a.time, a.watts, b.watts)
    return (above + table(ALDER, head, columns)).encode()


def _names_above() -> list[Case]:
    twice = ("", "Power (W)", "Energy (kWh)", "Power (W)", "Energy (kWh)")
    book = Workbook()
    sheet = book.active
    assert sheet is not None
    sheet.append([None, "Alder", None, "Birch", None])
    sheet.append(["Time", *twice[1:]])
    for i in range(ALDER.time_s.size):
        at = START + timedelta(seconds=float(ALDER.time_s[i]))
        values = (ALDER.power_w[i], ALDER.counter_wh[i] / 1000, BIRCH.power_w[i], BIRCH.counter_wh[i] / 1000)
        sheet.append([at, *map(float, values)])
    sheet.merge_cells("B1:C1")
    sheet.merge_cells("D1:E1")
    stream = io.BytesIO()
    book.save(stream)
    alike = (Machine(ALDER, "1", has_counter=False), Machine(BIRCH, "2", has_counter=False))
    return [
        Case("names above headings", _wide(twice, "Time,Alder,,Birch,\n"), _both()),
        Case("names above quantities", _wide(("t", "W", "kWh", "W", "kWh"), ",Alder,,Birch,\n"), _both()),
        Case("names in joined cells of a sheet", stream.getvalue(), _both(), file="log.xlsx"),
        Case("two columns of one heading", _wide(("time", "power", "power"), has_counter=False), alike),
        Case("names without a unit", _wide(("time", "Alder", "Birch"), has_counter=False), _both(False)),
    ]


def _rows_counted() -> list[Case]:
    w = Writer(ALDER)
    counted = table(ALDER, (), (lambda i: str(i), w.time, w.watts, w.kwh)).encode()
    later = table(ALDER, (), (lambda i: str(i + 1000), w.time, w.watts)).encode()
    printed = "                    time    power   energy_kwh\n" + table(
        ALDER,
        (),
        (lambda i: f"{i:<4d}", w.time, lambda i: f"{w.watts(i):>8}", lambda i: f"{w.kwh(i):>8}"),
        " ",
    )
    by_number = "\n".join(
        f"{10 * i};{number};{Writer(truth).watts(i)}"
        for i in range(ALDER.time_s.size)
        for number, truth in ((3, ALDER), (7, BIRCH))
    )
    machines = (Machine(ALDER, "3", has_counter=False), Machine(BIRCH, "7", has_counter=False))
    return [
        Case("rows counted from 0, no headings", counted, (Machine(ALDER),)),
        Case("rows counted from 1000, no headings", later, (Machine(ALDER, has_counter=False),)),
        Case("a table as a program prints it", printed.encode(), (Machine(ALDER),)),
        Case("machines by number", f"t [s];dev;p\n{by_number}\n".encode(), machines, "relative", None),
    ]


def _zones() -> list[Case]:
    w = Writer(ALDER)

    def stamped(name: str, form: str, start: str, quote: str = "") -> Case:
        at = Writer(ALDER, form)
        text = table(ALDER, _HEAD, (lambda i: f"{quote}{at.time(i)}{quote}", w.watts, w.kwh))
        return Case(name, text.encode(), (Machine(ALDER),), "absolute", start)

    two = "2025-06-23T09:36:00+02:00"
    utc = "2025-06-23T09:36:00+00:00"
    script = "%a %b %d %Y %H:%M:%S GMT+0200 (Central European Summer Time)"
    return [
        stamped("digits and Z", "%Y%m%dT%H%M%SZ", utc),
        stamped("digits and an offset", "%Y%m%dT%H%M%S+0200", two),
        stamped("UTC and an offset", "%d.%m.%Y %H:%M:%S UTC+02:00", two),
        stamped("GMT and hours alone", "%Y-%m-%d %H:%M:%S GMT+2", two),
        stamped("offset and its name in brackets", script, two),
        stamped("offset and its letters", "%Y-%m-%d %H:%M:%S.000000000 +0200 CEST", two),
    ]


def _clocks() -> list[Case]:
    w = Writer(ALDER)
    first_ms = int(START.replace(tzinfo=UTC).timestamp() * 1000)

    def at_ms(i: int) -> int:
        return first_ms + round(1000 * float(ALDER.time_s[i]))

    def case(
        name: str, at: Callable[[int], str], clock: str, start: str | None, heading: str = "time"
    ) -> Case:
        text = table(ALDER, (heading, *_HEAD[1:]), (at, w.watts, w.kwh))
        return Case(name, text.encode(), (Machine(ALDER),), clock, start)

    slow = load(240, 50.0)
    elapsed = table(
        slow, ("time", "power [W]"), (lambda i: f"{50 * i // 60:02d}:{50 * i % 60:02d}", Writer(slow).watts)
    )
    turn = load(240, 1800.0)
    at = [datetime(2025, 12, 30, tzinfo=UTC) + timedelta(seconds=float(s)) for s in turn.time_s]
    plain_words = Writer(turn)
    over_new_year = table(turn, _HEAD[:2], (lambda i: at[i].strftime("%b %d %H:%M:%S"), plain_words.watts))
    system = "\n".join(
        f"{at[i].strftime('%b')} {at[i].day:2d} {at[i].strftime('%H:%M:%S')} hall meter[31{i % 2}]: "
        f"power={plain_words.watts(i)} W"
        for i in range(240)
    )
    only_power = (Machine(turn, has_counter=False),)
    days = 739791.4
    return [
        case(
            "milliseconds in words", lambda i: f"/Date({at_ms(i)})/", "absolute", "2025-06-23T09:36:00+00:00"
        ),
        case(
            "milliseconds in words with an offset",
            lambda i: f"/Date({at_ms(i) - 7_200_000}+0200)/",
            "absolute",
            "2025-06-23T09:36:00+02:00",
        ),
        case(
            "days since the year 0",
            lambda i: f"{days + ALDER.time_s[i] / 86400:.9f}",
            "local",
            "2025-06-23T09:36:00",
            "day number",
        ),
        Case("no year", over_new_year.encode(), only_power, "relative", None, ("log.no_year",)),
        Case("no year in a system's log", system.encode(), only_power, "relative", None, file="log.txt"),
        Case(
            "minutes and seconds beyond a day of minutes",
            elapsed.encode(),
            (Machine(slow, has_counter=False),),
            "relative",
            None,
            ("log.minutes_or_hours",),
        ),
    ]


def _hourly() -> list[Case]:
    """A row an hour over a change of the clock, by the wall clock."""

    def over(start: datetime) -> tuple[bytes, Load]:
        truth = load(60, 3600.0)
        at = [(start + timedelta(hours=i)).astimezone(_BERLIN) for i in range(60)]
        w = Writer(truth)
        return table(truth, _HEAD[:2], (lambda i: at[i].strftime(_ISO), w.watts)).encode(), truth

    autumn, truth = over(datetime(2025, 10, 24, 22, tzinfo=UTC))
    spring, _ = over(datetime(2025, 3, 28, 23, tzinfo=UTC))
    machine = (Machine(truth, has_counter=False),)
    told = ("log.clock_put",)
    return [
        Case("hourly, the clock put back", autumn, machine, start="2025-10-25T00:00:00", problems=told),
        Case("hourly, the clock put forward", spring, machine, start="2025-03-29T00:00:00", problems=told),
    ]


def _below() -> list[Case]:
    """Logs of two machines below one another."""
    texts = {
        name: table(truth, _HEAD, (Writer(truth).time, Writer(truth).watts, Writer(truth).kwh))
        for name, truth in (("Alder", ALDER), ("Birch", BIRCH))
    }
    titled = "\n".join(f"Device: {name}\n{text}" for name, text in texts.items())
    book = Workbook()
    sheet = book.active
    assert sheet is not None
    for name, truth in (("", ALDER), ("Birch", BIRCH)):
        if name:
            sheet.append([])
            sheet.append([name])
        sheet.append(_HEAD)
        for i in range(truth.time_s.size):
            at = START + timedelta(seconds=float(truth.time_s[i]))
            sheet.append([at, float(truth.power_w[i]), float(truth.counter_wh[i]) / 1000])
    stream = io.BytesIO()
    book.save(stream)
    begun = "\n".join(f"Log begun {i}\n{text}" for i, text in enumerate((texts["Alder"],) * 2))
    in_sheet = (Machine(ALDER, "log"), Machine(BIRCH, "Birch"))
    return [
        Case("one machine below the other", titled.encode(), _both()),
        Case("one machine below the other in a sheet", stream.getvalue(), in_sheet, file="log.xlsx"),
        Case(
            "a log begun again",
            begun.encode(),
            (Machine(ALDER),),
            refused=1,
            problems=("log.repeated_headings",),
        ),
    ]


def _others() -> list[Case]:
    w = Writer(ALDER)
    wide = str.maketrans("0123456789.:/", "０１２３４５６７８９．：／")
    japanese = Writer(ALDER, "%Y/%m/%d %H:%M:%S")
    digits = table(ALDER, ("日時", "電力（W）", "電力量（kWh）"), (japanese.time, w.watts, w.kwh))
    minutes = table(
        ALDER, (*_HEAD[:2], "total (Wmin)"), (w.time, w.watts, lambda i: f"{60 * ALDER.counter_wh[i]:.0f}")
    )
    rows = [
        f"{w.time(i)},{name},{value}"
        for i in range(ALDER.time_s.size)
        for name, value in (("power_w", w.watts(i)), ("energy_kwh", w.kwh(i)))
    ]

    def payload(i: int) -> str:
        inner = json.dumps({"power": float(ALDER.power_w[i]), "total_wh": float(ALDER.counter_wh[i])})
        return '"' + inner.replace('"', '""') + '"'

    objects = table(ALDER, ("time", "topic", "payload"), (w.time, lambda _: "hall/plug", payload))
    clock = Writer(ALDER, "%H:%M:%S")
    days = table(ALDER, ("day", *_HEAD), (lambda _: "1", clock.time, w.watts, w.kwh))
    notes = table(ALDER, (*_HEAD, "note"), (w.time, w.watts, w.kwh, lambda i: "power" if i % 50 == 7 else ""))
    book = Workbook()
    sheet = book.active
    assert sheet is not None
    sheet.append(["Datum", "Uhrzeit", "Leistung W"])
    for i in range(ALDER.time_s.size):
        at = START + timedelta(seconds=float(ALDER.time_s[i]))
        sheet.append([None if i else at.date(), at.time(), float(ALDER.power_w[i])])
    stream = io.BytesIO()
    book.save(stream)
    only_power = (Machine(ALDER, has_counter=False),)
    return [
        Case("objects in cells", objects.encode(), (Machine(ALDER),)),
        Case("a count of days and a clock", days.encode(), (Machine(ALDER),), "relative", None),
        Case("a note now and then", notes.encode(), (Machine(ALDER),)),
        Case("a date in the first row of a sheet", stream.getvalue(), only_power, file="log.xlsx"),
        Case("digits as wide as letters", digits.translate(wide).encode(), (Machine(ALDER),)),
        Case("watt minutes", minutes.encode(), (Machine(ALDER),)),
        Case("a letter for the value", ("time,metric,v\n" + "\n".join(rows)).encode(), (Machine(ALDER),)),
    ]
