"""Every temperature that was held as a row, and what a cooler bed saves on every machine, as tables."""

from collections.abc import Iterable, Sequence

from attrs import evolve

from core.beds.quantities import (
    HEAT_CAPACITY,
    HELD_W,
    SAVED_SHARE,
    SAVED_WH,
    TIMES_FLOOR,
    W_PER_DM2,
    WARM_UP_WH,
)
from core.formatting import POINT, UNKNOWN, NumberLocale, duration, number, with_interval
from core.language import mark, tr
from core.quantities import Quantity
from core.results.bed_answer import money_text
from core.results.cooler_beds import Savings
from core.results.holds import Beds, Held, MachineBed
from core.results.values import Measured
from core.tables import Cell, Column, Table
from core.units import SECONDS_PER_MINUTE, WH_PER_KWH

#: stands after a temperature that was neither logged nor noted for the test itself
_SIGN = "*"
_OTHERWISE = ("of the test", "ordinary", "other log")

_HOLDS = (
    Column("machine", mark("Machine"), "left"),
    Column("bed_c", mark("Bed [°C]")),
    Column("room_c", mark("Room [°C]")),
    Column("bed_w", mark("Bed held [W]")),
    Column("w_per_dm2", mark("Per area [W/dm²]")),
    Column("of_floor_percent", mark("Of the floor [%]")),
    Column("half_hour_w", mark("First half hour [W]")),
    Column("full_hour_w", mark("First hour [W]")),
    Column("settled_w", mark("Steady, all [W]")),
    Column("steady_after_min", mark("Steady after [min]")),
    Column("warm_up_wh", mark("Warm-up [Wh]")),
    Column("heat_capacity_j_per_k", mark("Heat capacity [J/K]")),
)
#: so many machines are told of each in its own words
_MOST_TOLD = 4
#: columns that are left away where no area is known
_WITH_AREA = ("w_per_dm2", "of_floor_percent")
_NO_HOUR = mark("No test from cold lasted an hour: whether the warm-up matters cannot be told.")
_SAVINGS = (
    Column("machine", mark("Machine"), "left"),
    Column("saved_wh", mark("Saved [Wh]")),
    Column("saved_percent", mark("Of the bed [%]")),
)


def rows_of(beds: Beds) -> tuple[tuple[MachineBed, Held], ...]:
    """The holds in the order of the table's rows."""
    return tuple((m, h) for m in beds.machines for h in m.held)


def holds_table(beds: Beds, locale: NumberLocale = POINT) -> Table:
    """Every held temperature with what it tells, as people read it; nothing per area where none is known.

    A star stands after a temperature that was neither logged nor noted for this test.
    """
    rows = tuple(_row(machine, held, locale) for machine, held in rows_of(beds))
    kept = [i for i, c in enumerate(_HOLDS) if c.key not in _WITH_AREA or any(r[i] != UNKNOWN for r in rows)]
    return Table(
        tr("Held temperatures"),
        _titled(_HOLDS[i] for i in kept),
        tuple(tuple(row[i] for i in kept) for row in rows),
    )


def _titled(columns: Iterable[Column]) -> tuple[Column, ...]:
    """The columns with their titles in the language of the window."""
    return tuple(evolve(column, title=tr(column.title)) for column in columns)


def _row(machine: MachineBed, held: Held, locale: NumberLocale) -> tuple[Cell, ...]:
    hold = held.hold
    return (
        machine.name,
        _temperature(held.bed_c, held.bed_known, locale),
        _temperature(held.room_c, held.room_known, locale),
        _value(held.bed_w, HELD_W, locale),
        _value(held.w_per_dm2, W_PER_DM2, locale),
        _alone(held.times_floor, TIMES_FLOOR, locale),
        _alone(hold.half_hour_w, HELD_W, locale),
        _alone(hold.full_hour_w, HELD_W, locale),
        _alone(hold.steady.mean_w, HELD_W, locale),
        _steady_after(held, locale),
        _value(held.warm_up_wh, WARM_UP_WH, locale),
        _value(held.heat_capacity, HEAT_CAPACITY, locale),
    )


def _steady_after(held: Held, locale: NumberLocale) -> str:
    steady = held.hold.steady
    if not steady.is_settled:
        return tr("never")
    return number((steady.start_s - held.hold.start_s) / SECONDS_PER_MINUTE, 1, locale)


def _temperature(celsius: float | None, known: str, locale: NumberLocale) -> str:
    if celsius is None:
        return UNKNOWN
    return number(celsius, 1, locale) + (_SIGN if known in _OTHERWISE else "")


def _value(measured: Measured | None, quantity: Quantity, locale: NumberLocale) -> str:
    if measured is None:
        return UNKNOWN
    return with_interval(measured.value, measured.u95, quantity, locale)


def _alone(value: float | None, quantity: Quantity, locale: NumberLocale) -> str:
    return with_interval(value, None, quantity, locale)


def half_hour_note(beds: Beds, locale: NumberLocale = POINT) -> str:
    """Whether the warm-up matters: half an hour against the full hour, and against the settled watts."""
    told: list[str] = []
    halves: list[float] = []
    for machine, held in rows_of(beds):
        half, full_w = held.half_over_full, held.hold.full_hour_w
        settled_w = held.hold.steady.mean_w
        if not held.hold.is_first or half is None or full_w is None or settled_w <= 0:
            continue
        halves.append(half)
        told.append(
            tr(
                "{machine}: the first half hour reads {half} than the first hour, and that "
                "{hour} than settled.",
                machine=machine.name,
                half=_apart(half, locale),
                hour=_apart(full_w / settled_w, locale),
            )
        )
    if len(told) > _MOST_TOLD:
        low, high = (_apart(f(halves), locale) for f in (min, max))
        told = [
            tr(
                "{count} tests of an hour: the first half hour reads from {low} to {high} than the hour.",
                count=len(halves),
                low=low,
                high=high,
            )
        ]
    stars = {h.bed_known for _, h in rows_of(beds)} | {h.room_known for _, h in rows_of(beds)}
    note = " ".join(told) or tr(_NO_HOUR)
    if stars & set(_OTHERWISE):
        note += " " + tr("{sign} of the test, of another log, or an ordinary room.", sign=_SIGN)
    return note


def _apart(ratio: float, locale: NumberLocale) -> str:
    percent = 100 * abs(ratio - 1)
    text = number(percent, 0 if percent >= 10 else 1, locale)
    if ratio >= 1:
        return tr("{percents} % more", percents=text)
    return tr("{percents} % less", percents=text)


def savings_table(
    savings: Savings, locale: NumberLocale = POINT, price_per_kwh: float | None = None, currency: str = ""
) -> Table:
    """What every machine would save, and the sum of one print on each."""
    money_column = Column("saved_money", tr("Saved [{currency}]", currency=currency or tr("money")))
    columns: Sequence[Column] = (*_titled(_SAVINGS), *((money_column,) if price_per_kwh is not None else ()))
    rows: list[tuple[Cell, ...]] = []
    for saving in savings.machines:
        money = (money_text(saving.saved_price(price_per_kwh), locale),) if price_per_kwh is not None else ()
        rows.append(
            (
                saving.name,
                _value(saving.saved_wh, SAVED_WH, locale),
                _value(saving.saved_share, SAVED_SHARE, locale),
                *money,
            )
        )
    if len(rows) > 1 and savings.total_wh is not None:
        total = (_total_money(savings.total_wh, price_per_kwh, locale),) if price_per_kwh is not None else ()
        rows.append((tr("One print on each"), _value(savings.total_wh, SAVED_WH, locale), UNKNOWN, *total))
    title = tr("Saved in a print of {length}", length=duration(savings.plan.print_s))
    return Table(title, tuple(columns), tuple(rows))


def _total_money(total_wh: Measured, price_per_kwh: float, locale: NumberLocale) -> str:
    per_wh = price_per_kwh / WH_PER_KWH
    amount = Measured(total_wh.value * per_wh, (total_wh.u95 or 0.0) * per_wh)
    return money_text(amount, locale)
