"""Cases: dates in words and of other calendars, zones by letters, spans of time, clocks in other signs."""

from collections.abc import Callable, Iterator
from datetime import datetime, timedelta

from tests.core.logs.corpus import START, Case, Load, Machine, Writer, load, table

Cell = Callable[[int], str]
_HEAD = ("time", "power [W]", "energy [kWh]")


def cases() -> Iterator[Case]:
    """All of them."""
    yield from _in_words()
    yield from _other_years()
    yield from _letters()
    yield from _spans()
    yield from _signs()
    yield from _elapsed()


TRUTH = load()
W = Writer(TRUTH)


def _at(i: int) -> datetime:
    return START + timedelta(seconds=float(TRUTH.time_s[i]))


def _of(cell: Cell, delimiter: str = ";", encoding: str = "utf-8") -> bytes:
    return table(TRUTH, _HEAD, (cell, W.watts, W.kwh), delimiter).encode(encoding)


def _local(name: str, cell: Cell, encoding: str = "utf-8") -> Case:
    return Case(name, _of(cell, encoding=encoding), (Machine(TRUTH),))


def _in_words() -> Iterator[Case]:
    dates = {
        "Spanish with its particles": "23 de junio de 2025",
        "Spanish with a weekday": "lunes, 23 de junio de 2025",
        "Spanish, at the": "23 de junio de 2025 a las",
        "Portuguese, cut short": "segunda-feira, 23 de jun. de 2025 às",
        "French, at": "lundi 23 juin 2025 à",
        "German, at": "Montag, 23. Juni 2025 um",
        "English, ordinal": "June 23rd, 2025",
        "English, of": "23rd of June 2025",
        "Russian, declined": "23 июня 2025 г.",
        "Ukrainian, declined": "23 червня 2025 р.",
        "Catalan": "23 de juny del 2025",
        "Hungarian, the year first": "2025. június 23.",
        "Czech, declined": "23. června 2025",
        "Finnish, declined": "23. kesäkuuta 2025",
        "Turkish": "23 Haziran 2025",
        "Greek": "23 Ιουνίου 2025",
        "Danish": "23. juni 2025",
        "Romanian": "23 iunie 2025",
        "the year first, the month in letters": "2025 Jun 23",
    }
    for name, date in dates.items():
        yield _local(f"a date in words: {name}", lambda i, d=date: f"{d} {_at(i):%H:%M:%S}")  # type: ignore[misc]
    yield _local("a date in words and halves of the day", lambda i: f"June 23, 2025 at {_at(i):%I:%M:%S} AM")


def _other_years() -> Iterator[Case]:
    yield _local("years of an era", lambda i: f"令和7年6月23日 {_at(i):%H:%M:%S}")
    signs = lambda i: f"令和7年6月23日 {_at(i).hour}時{_at(i):%M}分{_at(i):%S}秒"  # noqa: E731
    yield _local("years of an era, clock in words, cp932", signs, "cp932")
    yield _local("an era by its letter", lambda i: f"R7/06/23 {_at(i):%H:%M:%S}")
    yield _local("an era by its letter, with points", lambda i: f"R07.06.23 {_at(i):%H:%M:%S}")
    yield _local("years since 1911", lambda i: f"民國114年06月23日 {_at(i):%H:%M:%S}")
    two = table(
        TRUTH, ("date", "clock", "W", "kWh"),
        (lambda _: "R7/06/23", lambda i: f"{_at(i):%H:%M:%S}", W.watts, W.kwh),
    )  # fmt: skip
    yield Case("an era by its letter, the clock apart", two.encode(), (Machine(TRUTH),))


def _letters() -> Iterator[Case]:
    offsets = {"EST": "-05:00", "EDT": "-04:00", "CDT": "-05:00", "PST": "-08:00", "AEST": "+10:00"}
    for letters, offset in offsets.items():
        start = f"2025-06-23T09:36:00{offset}"
        data = _of(lambda i, z=letters: f"{W.time(i)} {z}")  # type: ignore[misc]
        yield Case(f"a zone by its letters: {letters}", data, (Machine(TRUTH),), "absolute", start)
    far = "2025-06-23T09:36:00-04:00"
    half = _of(lambda i: f"{_at(i):%m/%d/%Y %I:%M:%S %p} EDT")
    yield Case("a zone by its letters behind AM", half, (Machine(TRUTH),), "absolute", far)
    before = _of(lambda i: f"{_at(i):%a %b %d %H:%M:%S} EDT 2025")
    yield Case("a zone by its letters before the year", before, (Machine(TRUTH),), "absolute", far)
    for letters, offset in {"BST": "+01:00", "IST": "+05:30", "CST": "-06:00"}.items():
        data = _of(lambda i, z=letters: f"{W.time(i)} {z}")  # type: ignore[misc]
        start, told = f"2025-06-23T09:36:00{offset}", ("log.zone_letters_doubtful",)
        yield Case(f"letters of several zones: {letters}", data, (Machine(TRUTH),), "absolute", start, told)
    for letters in ("QXT", "ET"):
        data = _of(lambda i, z=letters: f"{W.time(i)} {z}")  # type: ignore[misc]
        told = ("log.zone_letters_unknown",)
        yield Case(f"letters of no zone: {letters}", data, (Machine(TRUTH),), problems=told)


def _spans() -> Iterator[Case]:
    slow = load(240, 900.0)
    v = Writer(slow)
    one = (Machine(slow, has_counter=False),)
    began = START - timedelta(minutes=36)

    def at(i: int, later_s: float = 0.0) -> datetime:
        return began + timedelta(seconds=float(slow.time_s[i]) + later_s)

    def case(name: str, cell: Cell, kind: str = "local", end: str = "") -> Case:
        data = table(slow, ("period", "power [W]"), (cell, v.watts), ";").encode()
        return Case(f"a span of time: {name}", data, one, kind, f"2025-06-23T09:00:00{end}")

    yield case("day and two clocks", lambda i: f"{at(i):%d.%m.%Y %H:%M} - {at(i, 900):%H:%M}")
    yield case("tight", lambda i: f"{at(i):%Y-%m-%d %H:%M}-{at(i, 900):%H:%M}")
    yield case("two days", lambda i: f"{at(i):%Y-%m-%d %H:%M} – {at(i, 900):%Y-%m-%d %H:%M}")
    zulu = "%Y-%m-%dT%H:%M:%SZ"
    yield case("of ISO 8601", lambda i: f"{at(i):{zulu}}/{at(i, 900):{zulu}}", "absolute", "+00:00")
    yield case("of ISO 8601 with its length", lambda i: f"{at(i):{zulu}}/PT15M", "absolute", "+00:00")
    apart = table(
        slow, ("date", "time", "mean W"),
        (lambda i: f"{at(i):%Y-%m-%d}", lambda i: f"{at(i):%H:%M} - {at(i, 900):%H:%M}", v.watts),
    )  # fmt: skip
    start = "2025-06-23T09:00:00"
    yield Case("a span of time beside its date", apart.encode(), one, start=start)


def _signs() -> Iterator[Case]:
    forms = {
        "a colon before milliseconds": "%Y-%m-%d %H:%M:%S:000",
        "dashes everywhere": "%Y-%m-%d-%H-%M-%S",
        "points everywhere": "%Y.%m.%d.%H.%M.%S",
        "colons in the date": "%Y:%m:%d %H:%M:%S",
        "the clock first": "%H:%M:%S %d.%m.%Y",
    }
    for name, form in forms.items():
        yield _local(f"a stamp with {name}", lambda i, f=form: f"{_at(i):{f}}")  # type: ignore[misc]
    served = _of(lambda i: f"{_at(i):[%d/%b/%Y:%H:%M:%S +0200]}", ",")
    start = "2025-06-23T09:36:00+02:00"
    yield Case("a stamp in brackets, as servers write it", served, (Machine(TRUTH),), "absolute", start)


def _elapsed() -> Iterator[Case]:
    slow = load(700, 10.0)

    def case(name: str, truth: Load, cell: Cell, problems: tuple[str, ...] = ()) -> Case:
        v = Writer(truth)
        data = table(truth, ("elapsed", "power [W]"), (cell, v.watts)).encode()
        return Case(name, data, (Machine(truth, has_counter=False),), "relative", None, problems)

    def parts(truth: Load, i: int) -> tuple[int, int]:
        return divmod(int(truth.time_s[i]), 60)

    yield case("minutes and seconds in letters", TRUTH, lambda i: "{}m {}s".format(*parts(TRUTH, i)))

    def tight(i: int) -> str:
        minutes, seconds = parts(TRUTH, i)
        return f"{minutes}m{seconds}s" if minutes else f"{seconds}s"

    yield case("minutes and seconds in letters, tight", TRUTH, tight)
    yield case(
        "minutes and seconds with a fraction", TRUTH, lambda i: "{:02}:{:02}.0".format(*parts(TRUTH, i))
    )

    def shown(i: int) -> str:
        minutes, seconds = parts(slow, i)
        return f"{minutes % 60:02}:{seconds:02}.0"

    yield case("minutes and seconds of a lost hour", slow, shown, ("log.hours_lost",))
