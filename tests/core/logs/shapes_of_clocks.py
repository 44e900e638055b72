"""Cases: how times are written."""

from collections.abc import Callable, Iterator
from datetime import UTC, datetime, timedelta, timezone

from tests.core.logs.corpus import (
    START,
    Case,
    Machine,
    Writer,
    load,
    moment,
    stamp,
    table,
)


def cases() -> Iterator[Case]:
    """All of them."""
    yield from _clocks()


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
        ("%d/%m/%Y %H:%M:%S", "D/M/Y"),
        ("%d-%m-%y %H:%M:%S", "D-M-y"),
        ("%Y/%m/%d %H:%M:%S", "Y/M/D"),
        ("%m/%d/%Y %H:%M:%S", "M/D/Y"),
        ("%m/%d/%Y %I:%M:%S %p", "12 h"),
        ("%d %b %Y %H:%M:%S", "month in letters"),
        ("%B %d, %Y %H:%M:%S", "month first in letters"),
        ("%a %d %b %Y %H:%M:%S", "weekday"),
        ("%a, %d %b %Y %H:%M:%S +0200", "mail"),
        ("%d.%m.%Y, %H:%M:%S", "comma after the date"),
        ("%d.%m.%Y %H.%M.%S", "points in the clock"),
        ("%Y.%m.%d-%H:%M:%S", "hyphen between"),
    ):
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
    two = table(
        t,
        ("Datum", "Uhrzeit", "W", "kWh"),
        (lambda i: stamp(t.time_s[i], "%d.%m.%Y"), lambda i: stamp(t.time_s[i], "%H:%M:%S"), w.watts, w.kwh),
        ";",
    )
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
    clock = table(
        long,
        ("Elapsed", "W", "kWh"),
        (
            lambda i: f"{int(long.time_s[i]) // 3600}:{int(long.time_s[i]) // 60 % 60:02d}:00",
            Writer(long).watts,
            Writer(long).kwh,
        ),
    )
    yield Case("elapsed over 24 h", clock.encode(), (Machine(long),), **relative)
    yield Case(
        "ISO durations",
        with_time(lambda i: f"PT{int(t.time_s[i]) // 60}M{int(t.time_s[i]) % 60}S"),
        one,
        **relative,
    )
    night = table(
        t,
        ("clock", "W", "kWh"),
        (
            lambda i: (moment(2025, 6, 23, 23, 50) + timedelta(seconds=float(t.time_s[i]))).strftime(
                "%H:%M:%S"
            ),
            w.watts,
            w.kwh,
        ),
    )
    yield Case(
        "clock time over midnight", night.encode(), one, problems=("log.time_of_day_only",), **relative
    )
    days = [(START - moment(1899, 12, 30)).total_seconds() / 86400 + s / 86400 for s in t.time_s]
    yield Case("spreadsheet serials", with_time(lambda i: f"{days[i]:.8f}", "Date"), one)
    named = with_time(lambda i: w.time(i), "time (UTC)")
    yield Case("zone in the heading", named, one, clock="absolute", start="2025-06-23T09:36:00+00:00")
    above = b"Time zone: Europe/Berlin\n" + with_time(w.time)
    yield Case("zone above the headings", above, one, clock="absolute", start="2025-06-23T09:36:00+02:00")
    seconds = load(rows=600, step_s=1.0)
    cut = table(
        seconds,
        ("time", "W", "kWh"),
        (lambda i: stamp(seconds.time_s[i], "%Y-%m-%d %H:%M"), Writer(seconds).watts, Writer(seconds).kwh),
    )
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
        ("back", moment(2025, 10, 26, 1, 30), -3600),
        ("forward", moment(2025, 3, 30, 1, 0), 3600),
    ):
        edge = moment(2025, 10, 26, 3, 0) if gap < 0 else moment(2025, 3, 30, 2, 0)

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
