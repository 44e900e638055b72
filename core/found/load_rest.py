"""How it was found what loads make together, what processing takes, what stays, what one step moved."""

import math

from core.formatting import NumberLocale, number
from core.found import budgets
from core.found.load_parts import (
    TOPIC,
    better,
    budget_of,
    by_check,
    cautions,
    gain_line,
    levels_of,
    meter_of,
    sources_of,
)
from core.found.values import BudgetLine, Explanation, SourceLine
from core.found.writing import figures, otherwise, too_high
from core.language import mark, tr
from core.loads.names import BY_KEY
from core.results.checked_logs import checked_meter
from core.results.holds import gain_u
from core.results.load_answer import HOURS_A_YEAR, step_name, step_watts, watts_text, year_kwh
from core.results.loads import LoadWatts, MachineLoads
from core.study import Study
from core.units import WH_PER_KWH

_SPREAD = mark("the runs differ from one another")


def _counted(machine: MachineLoads) -> list[LoadWatts]:
    return [w for w in machine.loads if BY_KEY[w.load].in_processing]


def of_sum(machine: MachineLoads, study: Study, locale: NumberLocale) -> Explanation | None:
    """The loads that draw all through processing, added up; None where there is none."""
    if machine.sum_w is None:
        return None
    counted = _counted(machine)
    lines = [f"{BY_KEY[w.load].title}: {watts_text(w.watts, w.u95_w, locale)}" for w in counted]
    total = figures(math.fsum(w.watts for w in counted), locale=locale)
    own_w = math.hypot(*(w.u_w for w in counted))
    budget = budget_of(machine, machine.sum_w.value, own_w, study, locale)
    return Explanation(
        title=tr("{name}: sum of the loads", name=machine.name),
        value_text=watts_text(machine.sum_w.value, machine.sum_w.u95, locale),
        topic=TOPIC,
        method=(
            tr(
                "The loads that draw all through processing, added up; a heater that heats up is not counted."
            ),
            tr("Their scatter adds in squares; the meter's gain moves all of them alike."),
            *by_check(machine, study, locale),
        ),
        formula=(
            *lines,
            tr("together: {total} W", total=total),
            *budgets.combined(budget, machine.sum_w.u95, locale, "W"),
        ),
        sources=sources_of(machine, locale),
        budget=budget,
        sensitivity=(
            *_without_loads(counted, -1.0, locale),
            too_high(machine.sum_w.value, "W", locale),
        ),
        surer=better(),
        cautions=cautions(),
    )


def _without_loads(counted: list[LoadWatts], sign: float, locale: NumberLocale) -> tuple[str, ...]:
    return tuple(
        otherwise(tr("If {load} were not counted", load=BY_KEY[w.load].title), sign * w.watts, "W", locale)
        for w in counted
    )


def of_processing(machine: MachineLoads, study: Study, locale: NumberLocale) -> Explanation | None:
    """Mean watts from the end of warm-up to the end; None where no run tells."""
    if machine.processing_w is None:
        return None
    names = {r.id: r.name for r in study.runs}
    named = [
        (run_id, names.get(run_id) or tr("run {number}", number=i), watts)
        for i, (run_id, watts) in enumerate(machine.processing_runs, start=1)
    ]
    each = [watts for _, _, watts in named]
    value = machine.processing_w.value
    terms = " + ".join(figures(w, locale=locale) for w in each)
    mean = figures(value, locale=locale)
    lines = _spread(each, locale)
    return Explanation(
        title=tr("{name}: watts of processing", name=machine.name),
        value_text=watts_text(value, machine.processing_w.u95, locale),
        topic=TOPIC,
        method=(
            tr("The mean power from the end of warm-up to the end, the mean of the runs that count."),
            tr("Its interval is that of the spread between the runs.")
            if len(each) > 1
            else tr("Of one run there is no spread, and so no interval."),
        ),
        formula=(
            f"({terms}) ÷ {len(each)} = {mean} W" if len(each) > 1 else f"{mean} W",
            *budgets.combined(lines, machine.processing_w.u95, locale, "W"),
        ),
        sources=tuple(
            SourceLine(tr("{run}: {watts} W", run=name, watts=figures(watts, locale=locale)), run_id)
            for run_id, name, watts in named
        ),
        budget=lines,
        without_budget="" if lines else tr("Of one run there is no spread, and so no interval."),
        sensitivity=(*_without_runs(named, value, locale), too_high(value, "W", locale)),
        surer=(tr("More runs: what differs from run to run can only be seen with two or more."),)
        if len(each) == 1
        else (),
    )


def _spread(each: list[float], locale: NumberLocale) -> tuple[BudgetLine, ...]:
    return budgets.made([("repeats", _spread_u(each), "", tr(_SPREAD))], locale, "W")


def _spread_u(each: list[float]) -> float:
    """Standard uncertainty of a mean by the spread of its values; 0 of one alone. [W]"""
    if len(each) < 2:
        return 0.0
    mean = math.fsum(each) / len(each)
    return math.sqrt(math.fsum((w - mean) ** 2 for w in each) / (len(each) - 1) / len(each))


def _without_runs(named: list[tuple[str, str, float]], value: float, locale: NumberLocale) -> tuple[str, ...]:
    told = []
    for run_id, name, _ in named:
        rest = [w for other, _, w in named if other != run_id]
        if rest:
            by = math.fsum(rest) / len(rest) - value
            told.append(otherwise(tr("Without {name}", name=name), by, "W", locale))
    return tuple(told)


def of_rest(machine: MachineLoads, study: Study, locale: NumberLocale) -> Explanation | None:
    """Watts of processing that no load explains; None where either is not known."""
    rest, total, processing = machine.unexplained_w, machine.sum_w, machine.processing_w
    if rest is None or total is None or processing is None:
        return None
    f = [figures(v.value, locale=locale) for v in (processing, total, rest)]
    counted = _counted(machine)
    each = [watts for _, watts in machine.processing_runs]
    parts = [
        (mark("levels"), math.hypot(*(w.u_w for w in counted)), "", tr("how the loads' power scatters")),
        ("repeats", _spread_u(each), "", tr(_SPREAD)),
        *_gains(machine, total.value, processing.value, rest.value, study),
    ]
    lines = budgets.made([part for part in parts if part[1] > 0], locale, "W")
    named = [(run_id, run_id, watts) for run_id, watts in machine.processing_runs]
    names = {r.id: r.name for r in study.runs}
    named = [(i, names.get(i) or tr("run {number}", number=n), w) for n, (i, _, w) in enumerate(named, 1)]
    return Explanation(
        title=tr("{name}: what stays unexplained", name=machine.name),
        value_text=watts_text(rest.value, rest.u95, locale),
        topic=TOPIC,
        method=(
            tr(
                "Watts of processing less the sum of the loads. With one meter for both its gain "
                "scales what is left; two meters err each for themselves."
            ),
            tr(
                "It holds what was not named, moving motors, plastic that melts, and heaters "
                "that work harder in a print."
            ),
        ),
        formula=(f"{f[0]} W − {f[1]} W = {f[2]} W", *budgets.combined(lines, rest.u95, locale, "W")),
        sources=sources_of(machine, locale),
        budget=lines,
        sensitivity=(
            *_without_runs(named, processing.value, locale),
            *_without_loads(counted, 1.0, locale),
            too_high(rest.value, "W", locale),
        ),
        surer=(tr("Name every step; add a step with the motors moving."), *better()),
        cautions=(
            tr(
                "A negative rest means that the loads were measured warmer, or held hotter, than in the part."
            ),
        ),
    )


def _gains(
    machine: MachineLoads, total_w: float, processing_w: float, rest_w: float, study: Study
) -> list[tuple[str, float, str, str]]:
    """One meter's gain scales what is left; those of two meters scale each its own."""
    metered = {study.log(test.log_id).meter_id for test in machine.stairs}
    counted = {run_id for run_id, _ in machine.processing_runs}
    used = {study.log(r.log_id).meter_id for r in study.runs if r.id in counted}
    if used <= metered:
        return [gain_line(machine, rest_w, study, of_runs=True)]
    meter_id = max(used, key=lambda m: gain_u(checked_meter(study, m)))
    key = budgets.gain_key(meter_id, study)
    other = gain_u(checked_meter(study, meter_id)) * processing_w
    name = f"{tr('meter gain')}, {study.meter(meter_id).name}"
    return [
        gain_line(machine, total_w, study),
        (name, other, budgets.shared_with(key, study), budgets.why("meter gain", key, study)),
    ]


def of_idle(machine: MachineLoads, locale: NumberLocale) -> Explanation | None:
    """What runs while the machine is idle, over a year; None where nothing is known to."""
    idle = [w for w in machine.loads if w.is_idle]
    if not idle:
        return None
    whole = math.fsum(year_kwh(w) for w in idle)
    per_w = HOURS_A_YEAR / WH_PER_KWH
    parts = [(BY_KEY[w.load].title, w.u_w * per_w, "", tr("how its levels scatter")) for w in idle]
    lines = budgets.made([part for part in parts if part[1] > 0], locale, "kWh")
    each = [
        tr(
            "{load}: {watts} W × {hours} h / 1000 = {energy} kWh",
            load=BY_KEY[w.load].title,
            watts=figures(w.watts, locale=locale),
            hours=number(HOURS_A_YEAR, 0, locale),
            energy=figures(year_kwh(w), locale=locale),
        )
        for w in idle
    ]
    return Explanation(
        title=tr("{name}: what runs while it is idle", name=machine.name),
        value_text=tr("{energy} kWh a year", energy=number(whole, 0, locale)),
        topic=TOPIC,
        method=(
            tr("The watts of each load that never goes off, over all hours of a year."),
            tr("Electronics run as long as the machine is on; of others the test's end, or you, said so."),
        ),
        formula=(*each, tr("together: {energy} kWh", energy=figures(whole, locale=locale))),
        sources=sources_of(machine, locale),
        budget=lines,
        without_budget="" if lines else tr("Nothing scatters in these levels."),
        sensitivity=(
            *(
                otherwise(tr("If {load} did not run", load=BY_KEY[w.load].title), -year_kwh(w), "kWh", locale)
                for w in idle
            ),
            otherwise(tr("If the machine were off for one hour a day"), -whole / 24, "kWh", locale),
            too_high(whole, "kWh", locale),
        ),
        surer=better(),
    )


def of_step(machine: MachineLoads, told: str, study: Study, locale: NumberLocale) -> Explanation | None:
    """How far one step moved the power; None where there is no such step."""
    step = next((s for s in machine.steps if str(s.number) == told), None)
    levels = None if step is None else levels_of(machine, step.number)
    if step is None or levels is None:
        return None
    (before_w, before_u), (after_w, after_u) = levels
    parts = [
        (mark("level before"), before_u, "", tr("how the power scatters, and the display's step")),
        (mark("level after"), after_u, "", tr("how the power scatters, and the display's step")),
        gain_line(machine, step.watts, study),
    ]
    lines = budgets.made([part for part in parts if part[1] > 0], locale, "W")
    meter_id = meter_of(machine, study)
    meter = "" if meter_id is None else study.meter(meter_id).name
    return Explanation(
        title=tr("{name}, step {place}: {what}", name=machine.name, place=told, what=step_name(step)),
        value_text=step_watts(step, locale),
        topic=TOPIC,
        method=(
            tr("Each step is the difference of the levels before and after it."),
            tr("The meter's offset drops out of a difference; its gain stays."),
            *by_check(machine, study, locale),
        ),
        formula=(
            f"{figures(after_w, locale=locale)} W − {figures(before_w, locale=locale)} W = "
            f"{figures(step.watts, locale=locale)} W",
            *budgets.combined(lines, step.u95_w, locale, "W"),
        ),
        sources=(
            SourceLine(
                tr(
                    "step {number} at {at_s} min: {step_name}, {step_watts}",
                    number=step.number,
                    at_s=number(step.at_s / 60, 1, locale),
                    step_name=step_name(step),
                    step_watts=step_watts(step, locale),
                ),
                step.run_id,
            ),
            *((SourceLine(tr("measured with {name}", name=meter)),) if meter else ()),
        ),
        budget=lines,
        sensitivity=(
            otherwise(
                tr("If what was on before had risen by 1 % at the same moment"), -before_w / 100, "W", locale
            ),
            too_high(step.watts, "W", locale),
        ),
        surer=better(),
        cautions=cautions(),
    )
