"""Study and traces into what standby and prints cost.

Theory of operation: what is measured (standby, rests, runs taken apart, calendar) is remembered by log, edges
and meter; prices are put to it last, so that typing a price computes hardly anything again.
"""

import math
from collections.abc import Mapping, Sequence
from datetime import date, datetime, timedelta, tzinfo
from functools import lru_cache

import numpy as np
from attrs import evolve

from core.activity import Activity
from core.costs.limits import limits_on
from core.costs.print_cost import Course, LongPrint, Price, Starts, by_start, long_print, price_of
from core.costs.rates import MachineCosts, PriceList, Tariff
from core.costs.standby import STATES, hours_in_states
from core.costs.switch_off import MINUTES, Rests, rests_between, savings, together
from core.costs.tariff import Steps, cost_of, steps_between, steps_for, year_steps, zone_of
from core.costs.weeks import Week, weeks
from core.energy.integral import by_power_wh
from core.results import standby
from core.results.compare import machine_inputs
from core.results.cost_answer import conditions, headline
from core.results.cost_values import MachineCost, StandbyCost
from core.results.machine import LogInput, MachineInput, machine_result
from core.results.runs import Seen, as_checked, measure
from core.results.values import Energy, Influence, Measured, RunResult, State, StateSpan
from core.states import states_of_log, warm_up_end
from core.study import Boundary, Kind, Meter, Study
from core.traces import Clock, Trace
from core.uncertainty import NORMAL_95
from core.units import SECONDS_PER_DAY, SECONDS_PER_HOUR, WH_PER_KWH

#: stretches in which a machine was used; a rest lies between them
_USES: tuple[Kind, ...] = ("run", "other part", "broken off", "cut", "heating", "hold test", "switch-on test")
_WHOLE_PARTS: tuple[Kind, ...] = ("run", "other part")
_WITH_WARM_UP: Boundary = "warm-up and processing"


def standby_cost(
    study: Study,
    traces: Mapping[str, Trace],
    activities: Mapping[str, Activity] | None = None,
    *,
    year: int,
) -> StandbyCost:
    """What the machines of a study cost while they do nothing, and what their prints cost.

    Parameters
    ----------
    study : Study
    traces : mapping of log id to Trace
        A log that is missing here has not been read and is left out.
    activities : mapping of log id to Activity, optional
    year : int
        Calendar year whose hours, bands and changed days are meant.
    """
    inputs = machine_inputs(study, traces, activities or {})
    tariff = study.costs.tariff
    listed = next((p for p in study.price_lists if p.id == tariff.list_id), None)
    zone = zone_of(tariff, _first_clock(inputs))
    steps = _priced_time(tariff, listed, zone, year)
    hours = (datetime(year + 1, 1, 1) - datetime(year, 1, 1)).total_seconds() / SECONDS_PER_HOUR  # noqa: DTZ001
    midnights = _midnights_s(steps, zone)
    machines = tuple(_machine(given, study, listed, steps, hours, midnights) for given in inputs)
    mean = steps.mean_per_kwh
    total = _total(machines)
    result = StandbyCost(
        machines=machines,
        costs=study.costs,
        part=study.part,
        year=year,
        year_hours=hours,
        mean_per_kwh=mean,
        priced_share=steps.known_share,
        total_kwh=total,
        total_cost=_times(total, mean),
        saved_share=_saved_share(machines, study.costs.off_after_min),
        standing_year=None
        if tariff.standing_per_day is None
        else tariff.standing_per_day * hours * SECONDS_PER_HOUR / SECONDS_PER_DAY,
        limits=limits_on(date(year, 1, 1)),
    )
    return evolve(result, headline=headline(result), conditions=conditions(result))


def forget() -> None:
    """Let go of everything remembered, and of the traces with it: when a study is closed."""
    standby.forget()
    for remembered in (_spans_of, _rests_of, _course_of):
        remembered.cache_clear()


def _machine(
    given: MachineInput,
    study: Study,
    listed: PriceList | None,
    steps: Steps,
    hours: float,
    midnights: tuple[float, ...],
) -> MachineCost:
    costs, stated = study.costs, study.costs.of(given.machine.id)
    best = standby.best_standby(((log.seen, log.meter) for log in given.logs), given.calibration)
    found = None if best is None else best[0]
    rest_hours = max(0.0, hours - (stated.printing_hours or 0.0))
    idle_hours = rest_hours if stated.idle_hours is None else min(stated.idle_hours, rest_hours)
    factor = idle_hours * stated.count / WH_PER_KWH
    # a level lies low, so a year is not made of it
    year_kwh = (
        None
        if found is None or found.u95_w is None
        else Measured(found.power_w * factor, found.u95_w * factor)
    )
    counted = machine_result(given).included
    printed = long_print(_courses(given, counted), costs.print_hours * SECONDS_PER_HOUR)
    mean = steps.mean_per_kwh
    print_cost = None if printed is None else _times(_per_kwh(printed.energy), mean)
    printing_kwh = _printing_kwh(printed, stated)
    part_cost, part_influences, unpriced_share = _part_cost(given, counted, study, listed)
    return MachineCost(
        machine_id=given.machine.id,
        name=given.machine.name,
        slot=given.machine.slot,
        count=stated.count,
        files=tuple(name for log in given.logs for name in log.files),
        meter_id=None if best is None else given.logs[best[1]].meter.id,
        standby=found,
        idle_hours=idle_hours,
        printing_hours=stated.printing_hours,
        year_kwh=year_kwh,
        year_cost=_times(year_kwh, mean),
        hours=_hours(given.logs),
        weeks=_weeks(given.logs, costs.tariff),
        rests=_rests(given.logs, costs.off_after_min),
        part_wh=machine_result(given).energy_wh,
        part_cost=part_cost,
        unpriced_share=unpriced_share,
        printed=printed,
        print_cost=print_cost,
        printing_kwh=printing_kwh,
        printing_cost=_times(printing_kwh, mean),
        price=_price(print_cost, study, stated),
        co2_g=_co2_g(printed, costs.co2_g_per_kwh),
        starts=None if printed is None else _starts(printed, steps, midnights),
        part_influences=part_influences,
    )


def _price(print_cost: Measured | None, study: Study, stated: MachineCosts) -> Price:
    return price_of(None if print_cost is None else print_cost.value, study.costs, stated)


def _printing_kwh(printed: LongPrint | None, stated: MachineCosts) -> Measured | None:
    """Energy of a year of prints of that length, one warm-up each."""
    if printed is None or stated.printing_hours is None:
        return None
    prints = stated.count * stated.printing_hours * SECONDS_PER_HOUR / printed.seconds
    one = _per_kwh(printed.energy)
    return Measured(one.value * prints, None if one.u95 is None else one.u95 * prints)


def _co2_g(printed: LongPrint | None, factor: float | None) -> float | None:
    return None if printed is None or factor is None else printed.energy.value / WH_PER_KWH * factor


def _starts(printed: LongPrint, steps: Steps, midnights: tuple[float, ...]) -> Starts | None:
    return by_start(printed, steps, midnights) if len(midnights) > 1 else None


# time and price


def _first_clock(inputs: Sequence[MachineInput]) -> Clock | None:
    clocks = [log.seen.trace.clock for given in inputs for log in given.logs if log.seen is not None]
    return next((clock for clock in clocks if clock.kind == "absolute"), None)


def _priced_time(tariff: Tariff, listed: PriceList | None, zone: tzinfo, year: int) -> Steps:
    """The time over which prices are looked at: a year, or all the dates that a list has."""
    if tariff.priced_by == "list" and listed is not None:
        start_s = listed.start_s
        if listed.is_local:
            start_s -= _offset_s(zone, start_s)
        return steps_between(tariff, listed, zone, start_s, start_s + listed.end_s - listed.start_s)
    return year_steps(tariff, listed, zone, year)


def _offset_s(zone: tzinfo, at_s: float) -> float:
    return (datetime.fromtimestamp(at_s, zone).utcoffset() or timedelta(0)).total_seconds()


@lru_cache(maxsize=16)
def _days_s(start_s: float, end_s: float, zone: tzinfo) -> tuple[float, ...]:
    first = datetime.fromtimestamp(start_s, zone).replace(hour=0, minute=0, second=0, microsecond=0)
    count = int((end_s - start_s) // SECONDS_PER_DAY) + 2
    days = [(first.replace(tzinfo=None) + timedelta(days=i)).replace(tzinfo=zone) for i in range(count)]
    return tuple(day.timestamp() for day in days)


def _midnights_s(steps: Steps, zone: tzinfo) -> tuple[float, ...]:
    if np.unique(steps.prices_per_kwh[np.isfinite(steps.prices_per_kwh)]).size < 2:
        return ()
    return _days_s(float(steps.edges_s[0]), float(steps.edges_s[-1]), zone)


# standby, states, rests


@lru_cache(maxsize=4096)
def _spans_of(log: Seen) -> tuple[StateSpan, ...]:
    return states_of_log(log.trace, log.activity)


def _hours(logs: Sequence[LogInput]) -> tuple[tuple[State, float], ...]:
    sums = [hours_in_states(_spans_of(log.seen)) for log in logs if log.seen is not None]
    return tuple((state, math.fsum(each[state] for each in sums)) for state in STATES)


def _weeks(logs: Sequence[LogInput], tariff: Tariff) -> tuple[Week, ...]:
    by_monday: dict[date, Week] = {}
    for log in logs:
        if log.seen is None:
            continue
        clock = log.seen.trace.clock
        zone = zone_of(tariff, clock) if clock.kind == "absolute" else None
        for week in weeks(clock, _spans_of(log.seen), zone):
            known = by_monday.get(week.monday)
            blocks = week.blocks if known is None else (*known.blocks, *week.blocks)
            by_monday[week.monday] = Week(week.monday, blocks)
    return tuple(by_monday[monday] for monday in sorted(by_monday))


def _rests(logs: Sequence[LogInput], off_after_min: float) -> Rests:
    minutes = tuple(sorted({*MINUTES, off_after_min}))
    return together([_rests_of(log, minutes) for log in logs if log.seen is not None])


@lru_cache(maxsize=4096)
def _rests_of(log: LogInput, minutes: tuple[float, ...]) -> Rests:
    assert log.seen is not None
    trace, activity = log.seen.trace, log.seen.activity
    uses = []
    for run in log.runs:
        if run.kind not in _USES or run.end_s <= run.start_s:
            continue
        warm_wh = None
        if run.kind in _WHOLE_PARTS:
            warm_s = warm_up_end(trace, activity, run.start_s, run.end_s)
            warm_wh = by_power_wh(trace, run.start_s, warm_s)
        uses.append((run.start_s, run.end_s, warm_wh))
    return savings(trace, rests_between(uses, trace.end_s), minutes)


def _saved_share(machines: Sequence[MachineCost], minutes: float) -> float | None:
    """What switching off saves of the year's standby of the machines whose rests are long enough to tell."""
    known = [
        (m.year_kwh.value, share)
        for m in machines
        if m.tells_saving_after(minutes)
        and m.year_kwh is not None
        and (share := m.rests.share_after(minutes)) is not None
    ]
    total = math.fsum(kwh for kwh, _ in known)
    return math.fsum(kwh * share for kwh, share in known) / total if total > 0 else None


def _total(machines: Sequence[MachineCost]) -> Measured | None:
    """Standby of a year of all machines: what one meter gives several of them adds up."""
    known = [m for m in machines if m.year_kwh is not None and m.standby is not None]
    if not known:
        return None
    by_meter: dict[str | None, float] = {}
    own = 0.0
    for m in known:
        assert m.standby is not None
        factor = m.idle_hours * m.count / WH_PER_KWH
        by_meter[m.meter_id] = by_meter.get(m.meter_id, 0.0) + m.standby.by_meter_w * factor
        own += (m.standby.own_w * factor) ** 2
    u = math.sqrt(math.fsum(u**2 for u in by_meter.values()) + own)
    return Measured(math.fsum(m.year_kwh.value for m in known if m.year_kwh), NORMAL_95 * u)


# runs


def _courses(given: MachineInput, counted: Sequence[RunResult]) -> list[Course]:
    """The runs that count, taken apart into warm-up and processing, whatever the boundary of the study."""
    by_id = {run.id: (run, log) for log in given.logs for run in log.runs}
    found = []
    for result in counted:
        if result.run_id not in by_id:
            if result.energy is not None and result.seconds:
                found.append(Course(result.energy, 0.0, 0.0, result.seconds))
            continue
        run, log = by_id[result.run_id]
        course = None
        if log.seen is not None:
            course = _course_of(log.seen, run.start_s, run.end_s, log.meter)
        if course is not None:
            energy = as_checked(course.energy, log.meter, given.calibration)
            scale = energy.energy_wh / course.energy.energy_wh if course.energy.energy_wh else 1.0
            found.append(evolve(course, energy=energy, warm_up_wh=course.warm_up_wh * scale))
    return found


@lru_cache(maxsize=32_768)
def _course_of(log: Seen, start_s: float, end_s: float, meter: Meter) -> Course | None:
    measured = measure(log, start_s, end_s, _WITH_WARM_UP, meter)
    if measured is None:
        return None
    warm_s = next((s.end_s for s in measured.states if s.state == "warm-up"), measured.start_s)
    whole_wh = by_power_wh(log.trace, measured.start_s, measured.end_s)
    share = by_power_wh(log.trace, measured.start_s, warm_s) / whole_wh if whole_wh > 0 else 0.0
    return Course(
        energy=measured.energy,
        warm_up_wh=share * measured.energy.energy_wh,
        warm_up_s=warm_s - measured.start_s,
        seconds=measured.end_s - measured.start_s,
    )


def _part_cost(
    given: MachineInput, counted: Sequence[RunResult], study: Study, listed: PriceList | None
) -> tuple[Measured | None, tuple[Influence, ...], float]:
    """Mean cost of a part, each run priced when made; what makes it unsure; the share with no price."""
    tariff = study.costs.tariff
    by_id = {run.id: (run, log) for log in given.logs for run in log.runs}
    amounts, energies, all_wh = [], [], []
    for result in counted:
        if result.energy is None:
            continue
        all_wh.append(result.energy.energy_wh)
        run, log = by_id.get(result.run_id, (None, None))
        per_kwh = tariff.price_per_kwh if tariff.priced_by == "single" else None
        if tariff.priced_by != "single" and run is not None and log is not None and log.seen is not None:
            measured = measure(log.seen, run.start_s, run.end_s, study.boundary, log.meter)
            if measured is not None:
                per_kwh = _price_when_made(log.seen.trace, measured.start_s, measured.end_s, tariff, listed)
        if per_kwh is not None:
            amounts.append(result.energy.energy_wh / WH_PER_KWH * per_kwh)
            energies.append(result.energy)
    unpriced = 1.0 - math.fsum(e.energy_wh for e in energies) / math.fsum(all_wh) if any(all_wh) else 0.0
    return *_mean_amount(amounts, energies), unpriced


def _price_when_made(
    trace: Trace, start_s: float, end_s: float, tariff: Tariff, listed: PriceList | None
) -> float | None:
    """Price of a kilowatt hour of this run, its power priced as it was drawn; None if a part has none."""
    cost = cost_of(trace, steps_for(tariff, listed, trace.clock, start_s, end_s))
    if cost.energy_wh <= 0 or cost.unpriced_wh > 0:
        return None
    return cost.amount * WH_PER_KWH / cost.energy_wh


def _mean_amount(
    amounts: Sequence[float], energies: Sequence[Energy]
) -> tuple[Measured | None, tuple[Influence, ...]]:
    """Mean cost, as unsure as the mean energy is: when a part is made is the user's choice, not chance."""
    from core.uncertainty import mean_of

    if not amounts:
        return None, ()
    found = mean_of(list(energies))
    mean = found.energy_wh
    amount = math.fsum(amounts) / len(amounts)
    u95 = None if mean.u95 is None or mean.value <= 0 else abs(amount) * mean.u95 / mean.value
    return Measured(amount, u95), found.influences


def _per_kwh(energy: Measured) -> Measured:
    return Measured(energy.value / WH_PER_KWH, None if energy.u95 is None else energy.u95 / WH_PER_KWH)


def _times(value: Measured | None, price: float | None) -> Measured | None:
    if value is None or price is None:
        return None
    return Measured(value.value * price, None if value.u95 is None else value.u95 * abs(price))
