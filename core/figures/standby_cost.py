"""Standby, switching off, the calendar, and what a print costs, as figures."""

from core.costs.money import decimals_of, money
from core.figures.calendar_values import CalendarFigure, CalendarRow, week_text
from core.figures.compare import source_of
from core.figures.cost_readouts import clock, saving_readings, start_readings, with_lines
from core.figures.curve_values import CurvesFigure, Reading, Spot, Trend
from core.figures.line_up_values import Scale
from core.figures.measures import runs_text
from core.figures.ticks import axis_end
from core.figures.values import Axis, Cell, ComparisonFigure, Mark, Measure, RefLine, Row
from core.formatting import POINT, NumberLocale, number, percent, with_interval
from core.language import mark, tr
from core.quantities import (
    PART_COST,
    PRINT_COST,
    PRINT_KWH,
    PRINT_PRICE,
    STANDBY_COST,
    STANDBY_KWH,
    STANDBY_MEAN_W,
    STANDBY_W,
    Quantity,
)
from core.results.cost_values import MachineCost, StandbyCost
from core.results.values import Measured, State
from core.study import Study
from core.units import SECONDS_PER_HOUR, SECONDS_PER_MINUTE, WH_PER_KWH

#: so many weeks are shown at once
MOST_WEEKS = 16
#: minutes that the chart of switching off shows at least, and how many times those chosen [min]
_LEAST_MIN, _ROOM = 60.0, 2.5
_STATES: tuple[tuple[State, str], ...] = (
    ("off", mark("off")),
    ("standby", mark("standby")),
    ("cooling", mark("cooling")),
    ("warm-up", mark("warm-up")),
    ("processing", mark("processing")),
)


def standby_figure(result: StandbyCost, study: Study, locale: NumberLocale = POINT) -> ComparisonFigure:
    """Standby watts with published limits as lines, and a year of it in kWh and in money."""
    watts = [m.standby for m in result.machines]
    top = axis_end(tuple(s.power_w + (s.u95_w or 0.0) for s in watts if s is not None))
    shown = [limit for limit in result.limits if limit.power_w <= top]
    power = Measure(
        key=STANDBY_MEAN_W.key,
        axis=Axis(STANDBY_MEAN_W.name, "W", top, locale),
        cells=tuple(_standby_cell(m, locale) for m in result.machines),
        rank=0,
        legend=tr("dashed: published limits") if shown else "",
        legend_short=tr("dashed: limits") if shown else "",
        lines=tuple(RefLine(limit.power_w, f"{limit.power_w:g} W: {limit.words}") for limit in shown),
    )
    kwh = _measured(STANDBY_KWH, "kWh", [m.year_kwh for m in result.machines], locale, rank=1)
    measures = [power, kwh]
    if result.total_cost is not None:
        costs = [m.year_cost for m in result.machines]
        measures.append(_money(STANDBY_COST, costs, result.currency, locale, rank=2))
    rows = tuple(_row(m, _idle_words(m, result, locale)) for m in result.machines)
    return ComparisonFigure(
        headline=result.headline,
        conditions=result.conditions,
        source=source_of(study),
        rows=rows,
        measures=with_lines(measures, rows),
    )


def print_figure(result: StandbyCost, study: Study, locale: NumberLocale = POINT) -> ComparisonFigure:
    """A print of some hours: its energy, its electricity, and electricity's part in its price."""
    machines = result.machines
    energies = [
        None
        if m.printed is None
        else Measured(m.printed.energy.value / WH_PER_KWH, _per_kwh(m.printed.energy.u95))
        for m in machines
    ]
    measures = [_measured(PRINT_KWH, "kWh", energies, locale, rank=0)]
    if result.mean_per_kwh is not None:
        costs = [m.print_cost for m in machines]
        measures.append(_money(PRINT_COST, costs, result.currency, locale, rank=1))
        if any(m.price.has_more for m in machines):
            measures.append(_price_measure(result, locale))
        parts = [m.part_cost for m in machines]
        measures.append(_money(PART_COST, parts, result.currency, locale, rank=3))
    rows = tuple(_row(m, _runs_words(m)) for m in machines)
    return ComparisonFigure(
        headline=print_sentence(result, locale),
        conditions=result.conditions,
        source=source_of(study),
        rows=rows,
        measures=with_lines(measures, rows),
    )


def print_sentence(result: StandbyCost, locale: NumberLocale = POINT) -> str:
    """What a print of the stated length takes, from the least to the most."""
    known = sorted(
        (m for m in result.machines if m.printed is not None),
        key=lambda m: m.printed.energy.value if m.printed else 0.0,
    )
    hours = f"{number(result.costs.print_hours, _decimals(result.costs.print_hours), locale)} h"
    if not known:
        return tr("No run tells what a print of {hours} takes.", hours=hours)
    least, most = known[0], known[-1]
    told = {"hours": hours, "energy": _print_words(least, result, locale), "machine": least.name}
    if len(known) == 1:
        return tr("A print of {hours} takes {energy} on {machine}, warm-up included.", **told)
    return tr(
        "A print of {hours} takes {energy} on {machine} and {other_energy} on {other}, warm-up included.",
        other_energy=_print_words(most, result, locale),
        other=most.name,
        **told,
    )


def saving_figure(result: StandbyCost, study: Study, locale: NumberLocale = POINT) -> CurvesFigure | None:
    """What switching off would have saved against the minutes waited; None where no rest is long enough."""
    minutes = result.costs.off_after_min
    machines = [m for m in result.machines if m.rests.idle_wh > 0]
    if not machines:
        return None
    end = max(_LEAST_MIN, _ROOM * minutes)
    trends, spots, facts, low = [], [], [], 0.0
    readings: list[Reading] = []
    for m in machines:
        # beyond its longest rest a log says nothing, so its curve ends there
        last = min(end, m.rests.longest_s / SECONDS_PER_MINUTE)
        saved = 100 * m.rests.saved_wh / m.rests.idle_wh
        reached = [(x, y) for x, y in zip(m.rests.minutes.tolist(), saved.tolist(), strict=True) if x <= last]
        xs, ys = zip(*reached, strict=True)
        low = min(low, *ys)
        trends.append(Trend(xs, ys, m.slot, m.name))
        readings += saving_readings(m, xs, ys, locale)
        share = m.rests.share_after(minutes)
        rests = tr(
            "{name}: {count:rest|rests} of {energy} Wh",
            name=m.name,
            count=m.rests.count,
            energy=number(m.rests.idle_wh, 0, locale),
        )
        if share is None or minutes > last:
            facts.append(tr("{rests}, none so long", rests=rests))
            continue
        (here,) = saving_readings(m, (minutes,), (100 * share,), locale)
        spots.append(Spot(minutes, 100 * share, None, m.slot, "", m.machine_id, "saved", lines=here.lines))
        facts.append(
            tr(
                "{rests}, {share} saved after {minutes} min",
                rests=rests,
                share=percent(share, 0, locale),
                minutes=number(minutes, 0, locale),
            )
        )
    floor = max(-100.0, 25.0 * (low // 25.0)) if low < 0 else 0.0
    chosen = Trend((minutes, minutes), (floor, 100.0), None, "", is_dashed=True)
    return CurvesFigure(
        headline=result.headline,
        conditions=result.conditions,
        source=source_of(study),
        x=Scale(tr("Switched off after so long idle"), "min", 0.0, end, locale),
        y=Scale(tr("Saved of what the rests took"), "%", floor, 100.0, locale),
        trends=(chosen, *trends),
        spots=tuple(spots),
        note=tr("dashed: {minutes} min", minutes=number(minutes, 0, locale)),
        facts=tuple(facts),
        readings=tuple(readings),
    )


def starts_figure(result: StandbyCost, study: Study, locale: NumberLocale = POINT) -> CurvesFigure | None:
    """Cost of the print by the time of day at which it starts; None where the price does not change."""
    machines = [m for m in result.machines if m.starts is not None]
    if not machines:
        return None
    top = axis_end(tuple(float(m.starts.amounts.max()) for m in machines if m.starts))
    low = min(0.0, *(float(m.starts.amounts.min()) for m in machines if m.starts))
    trends, spots = [], []
    for m in machines:
        assert m.starts is not None
        hours, amounts = m.starts.hours.tolist(), m.starts.amounts.tolist()
        trends.append(Trend((*hours, 24.0), (*amounts, amounts[0]), m.slot, m.name))
        hour, amount = m.starts.cheapest
        spots.append(Spot(hour, amount, None, m.slot, "", m.machine_id, "cheapest start"))
    return CurvesFigure(
        headline=starts_sentence(result, locale),
        conditions=result.conditions,
        source=source_of(study),
        x=Scale(tr("Start of the print, local time"), "h", 0.0, 24.0, locale),
        y=Scale(tr("Electricity of the print"), result.currency or tr("amount"), low, top, locale),
        trends=tuple(trends),
        spots=tuple(spots),
        note=tr("marks: the cheapest start"),
        facts=tuple(_start_words(m, result, locale) for m in machines),
        readings=tuple(r for m in machines for r in start_readings(m, result.currency, locale)),
    )


def starts_sentence(result: StandbyCost, locale: NumberLocale = POINT) -> str:
    """When in the day a print costs least, for the machine on which it matters most."""
    known = [m for m in result.machines if m.starts is not None]
    if not known:
        return ""
    most = max(known, key=lambda m: m.starts.dearest[1] - m.starts.cheapest[1] if m.starts else 0.0)
    return f"{_start_words(most, result, locale)}."


def calendar_figure(
    result: StandbyCost, study: Study, machine_id: str | None = None, locale: NumberLocale = POINT
) -> CalendarFigure | None:
    """Operating states week by week, of one machine or of all; None where no log has a clock.

    Parameters
    ----------
    result : StandbyCost
    study : Study
    machine_id : str, optional
        Only this machine.
    locale : NumberLocale
    """
    machines = [m for m in result.machines if machine_id in (None, m.machine_id)]
    rows = [
        CalendarRow(m.machine_id, m.name if i == 0 else "", m.slot, week_text(week.monday), week.blocks)
        for m in machines
        for i, week in enumerate(m.weeks)
    ]
    if not rows:
        return None
    shown = rows[:MOST_WEEKS]
    return CalendarFigure(
        headline=result.headline,
        conditions=result.conditions,
        source=source_of(study),
        rows=tuple(shown),
        legend=tuple((state, tr(name)) for state, name in _STATES),
        facts=tuple(f"{m.name}: {_hours_words(m, locale)}" for m in machines if m.logged_hours > 0),
        unshown=len(rows) - len(shown),
    )


def _hours_words(machine: MachineCost, locale: NumberLocale) -> str:
    return ", ".join(
        f"{tr(state)} {number(hours, 1, locale)} h" for state, hours in machine.hours if hours > 0
    )


def _start_words(machine: MachineCost, result: StandbyCost, locale: NumberLocale) -> str:
    assert machine.starts is not None
    (early, least), (late, most) = machine.starts.cheapest, machine.starts.dearest
    hours = number(result.costs.print_hours, _decimals(result.costs.print_hours), locale)
    decimals = decimals_of(least, result.currency)
    least_text, most_text = (
        money(amount, result.currency, locale, decimals=decimals) for amount in (least, most)
    )
    return tr(
        "A print of {hours} h on {machine} costs least when it starts at {time}: "
        "{least}, against {most} at {other_time}",
        hours=hours,
        machine=machine.name,
        time=clock(early),
        least=least_text,
        most=most_text,
        other_time=clock(late),
    )


def _decimals(hours: float) -> int:
    return 0 if hours == int(hours) else 1


def _print_words(machine: MachineCost, result: StandbyCost, locale: NumberLocale) -> str:
    assert machine.printed is not None
    energy = machine.printed.energy
    kwh = with_interval(energy.value / WH_PER_KWH, _per_kwh(energy.u95), PRINT_KWH, locale)
    if machine.print_cost is None:
        return f"{kwh} kWh"
    return f"{kwh} kWh ({money(machine.print_cost.value, result.currency, locale)})"


def _per_kwh(u95_wh: float | None) -> float | None:
    return None if u95_wh is None else u95_wh / WH_PER_KWH


def _row(machine: MachineCost, words: str) -> Row:
    name = machine.name if machine.count == 1 else f"{machine.count} × {machine.name}"
    return Row(machine.machine_id, name, machine.slot, words)


def _idle_words(machine: MachineCost, result: StandbyCost, locale: NumberLocale) -> str:
    if machine.idle_hours >= result.year_hours:
        return tr("all year")
    return tr("{hours} h a year", hours=number(machine.idle_hours, 0, locale))


def _runs_words(machine: MachineCost) -> str:
    if machine.printed is None:
        return tr("no run")
    return runs_text(machine.printed.runs)


def _standby_cell(machine: MachineCost, locale: NumberLocale) -> Cell:
    found = machine.standby
    if found is None:
        return Cell(
            note=tr("not known"),
            reason=tr("No log of {name} shows it doing nothing.", name=machine.name),
        )
    if found.u95_w is None:
        return Cell(
            mark=Mark(found.power_w, None, with_interval(found.power_w, None, STANDBY_W, locale)),
            reason=tr(
                "{name}: the lowest level of its rests; none lasts a quarter of an hour.", name=machine.name
            ),
        )
    text = with_interval(found.power_w, found.u95_w, STANDBY_MEAN_W, locale)
    told = {
        "name": machine.name,
        "hours": number(found.seconds / SECONDS_PER_HOUR, 1, locale),
        "low": number(found.lowest_w, 2, locale),
        "high": number(found.highest_w, 2, locale),
    }
    if found.is_steady:
        reason = tr("{name}: steady over {hours} h; means of the windows {low} to {high} W.", **told)
    else:
        reason = tr("{name}: not steady over {hours} h; means of the windows {low} to {high} W.", **told)
    return Cell(
        mark=Mark(found.power_w, found.u95_w, text),
        reason=reason,
    )


def _measured(
    quantity: Quantity, unit: str, values: list[Measured | None], locale: NumberLocale, rank: int
) -> Measure:
    top = axis_end(tuple(v.value + (v.u95 or 0.0) for v in values if v is not None))
    cells = tuple(
        Cell(note=tr("not known"))
        if v is None
        else Cell(Mark(v.value, v.u95, with_interval(v.value, v.u95, quantity, locale)))
        for v in values
    )
    return Measure(quantity.key, Axis(quantity.name, unit, top, locale), cells, bars=True, rank=rank)


def _money(
    quantity: Quantity, values: list[Measured | None], currency: str, locale: NumberLocale, rank: int
) -> Measure:
    top = axis_end(tuple(v.value + (v.u95 or 0.0) for v in values if v is not None))
    cells = tuple(
        Cell(note=tr("no price"), reason=tr("The price at that time is not known."))
        if v is None
        else Cell(Mark(v.value, v.u95, money(v.value, "", locale, v.u95)))
        for v in values
    )
    return Measure(quantity.key, Axis(quantity.name, currency, top, locale), cells, bars=True, rank=rank)


def _price_measure(result: StandbyCost, locale: NumberLocale) -> Measure:
    """The whole price as a bar with electricity's part in it filled."""
    cells = []
    for m in result.machines:
        total, share = m.price.total, m.price.electricity_share
        if total is None or share is None:
            cells.append(Cell(note=tr("no price")))
            continue
        text = f"{money(total, '', locale)}, {percent(share, 0 if share >= 0.1 else 1, locale)}"
        reason = ", ".join(
            f"{name} {money(part, result.currency, locale)}"
            for name, part in (
                (tr("electricity"), m.price.electricity),
                (tr("material"), m.price.material),
                (tr("wear"), m.price.wear),
                (tr("purchase"), m.price.purchase),
                (tr("prints that fail"), m.price.failed),
            )
            if part is not None
        )
        cells.append(Cell(Mark(total, None, text), inner=total * share, reason=f"{m.name}: {reason}"))
    top = axis_end(tuple(c.mark.value for c in cells if c.mark is not None))
    return Measure(
        PRINT_PRICE.key,
        Axis(PRINT_PRICE.name, result.currency, top, locale),
        tuple(cells),
        bars=True,
        rank=2,
        legend=tr("filled and %: electricity"),
        legend_short=tr("%: electricity"),
    )
