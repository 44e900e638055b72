"""Cases: clocks of twelve hours that run past noon, and weekdays in brackets. Common practice, no source."""

from collections.abc import Callable, Iterator
from datetime import datetime, timedelta

from tests.core.logs.corpus import START, Case, Machine, Writer, load, table

#: what stands for the two halves of a day, and whether before the clock time
_HALVES = (
    ("Chinese", "上午", "下午", True),
    ("Korean", "오전", "오후", True),
    ("Greek", "πμ", "μμ", False),
    ("Greek with points", "π.μ.", "μ.μ.", False),
    ("Spanish", "a. m.", "p. m.", False),
)
_WEEKDAYS = "月火水木金土日"


def cases() -> Iterator[Case]:
    """All of them; the log runs from 9:36 to 13:36."""
    t = load(1440)
    w, one = Writer(t), (Machine(t),)

    def at(i: int) -> datetime:
        return START + timedelta(seconds=float(t.time_s[i]))

    def clock(i: int) -> str:
        return f"{at(i).hour % 12 or 12:02d}:{at(i):%M:%S}"

    def of(*cells: Callable[[int], str], head: tuple[str, ...] = ("time",)) -> bytes:
        return table(t, (*head, "power [W]", "energy [kWh]"), (*cells, w.watts, w.kwh), ";").encode()

    for name, morning, evening, is_before in _HALVES:

        def halved(i: int, words: tuple[str, str] = (morning, evening), before: bool = is_before) -> str:
            word = words[at(i).hour >= 12]
            return f"{at(i):%Y/%m/%d} " + (f"{word} {clock(i)}" if before else f"{clock(i)} {word}")

        yield Case(f"past noon in {name}", of(halved), one)
    apart = of(lambda i: f"{at(i):%m/%d/%Y}", clock, lambda i: f"{at(i):%p}", head=("Date", "Time", "AM/PM"))
    yield Case("AM and PM in a column of their own", apart, one)

    def day(i: int) -> str:
        return _WEEKDAYS[at(i).weekday()]

    joined = of(lambda i: f"{at(i):%Y年%m月%d日}({day(i)}) {at(i):%H時%M分%S秒}", head=("日時",))
    yield Case("a weekday in brackets behind the date", joined, one)
    beside = of(lambda i: f"{at(i):%Y/%m/%d}({day(i)})", lambda i: f"{at(i):%H:%M:%S}", head=("日付", "時刻"))
    yield Case("a weekday in brackets, the clock time beside it", beside, one)
    yield Case("a weekday of one letter first", of(lambda i: f"{day(i)} {at(i):%d.%m.%Y %H:%M:%S}"), one)
    digits = of(lambda i: f"{at(i):%y%m%d%H%M%S}")
    yield Case("digits of a year of two digits and the rest", digits, one)
    since_1970 = [(at(i) - START.replace(1970, 1, 1, 0, 0)) / timedelta(seconds=1) for i in range(1440)]
    day_of_1858 = of(lambda i: f"{40587 + since_1970[i] / 86400:.7f}", head=("MJD",))
    start = "2025-06-23T09:36:00+00:00"
    yield Case("modified Julian dates", day_of_1858, one, clock="absolute", start=start)
    ticks = of(lambda i: f"{621355968000000000 + int(since_1970[i]) * 10**7}", head=("ticks",))
    yield Case("ticks since the year 1", ticks, one)
    filed = of(lambda i: f"{116444736000000000 + int(since_1970[i]) * 10**7}", head=("filetime",))
    yield Case("ticks since 1601", filed, one, clock="absolute", start=start)
