"""How the watts of a load were found: its steps with the levels on both sides, its budget, its sum."""

import math

from core.formatting import POINT, NumberLocale, number
from core.found import budgets
from core.found.values import BudgetLine, Explanation, SourceLine
from core.found.writing import figures
from core.language import mark, tr
from core.loads.names import BY_KEY, ELECTRONICS
from core.results.checked_logs import checked_meter
from core.results.holds import gain_u
from core.results.load_answer import step_name, step_watts, watts_text, year_kwh
from core.results.loads import Loads, LoadWatts, MachineLoads, Single
from core.study import Study
from core.units import SECONDS_PER_MINUTE

_TOPIC = "loads"
SUM, PROCESSING, REST = "load_sum", "processing_w", "unexplained_w"


def load_found(
    loads: Loads, study: Study, machine_id: str, key: str, locale: NumberLocale = POINT
) -> Explanation | None:
    """What stands behind one number of the Loads page.

    Parameters
    ----------
    loads : Loads
    study : Study
    machine_id : str
    key : str
        Key of a load, or of the sum, of processing, or of what stays unexplained.
    locale : NumberLocale

    Returns
    -------
    Explanation or None
        None where the machine has no such number.
    """
    machine = next((m for m in loads.machines if m.machine_id == machine_id), None)
    if machine is None:
        return None
    if key == SUM:
        return _sum(machine, study, locale)
    if key == PROCESSING:
        return _processing(machine, study, locale)
    if key == REST:
        return _rest(machine, locale)
    load = machine.of(key)
    return None if load is None else _load(machine, load, study, locale)


def _load(machine: MachineLoads, load: LoadWatts, study: Study, locale: NumberLocale) -> Explanation:
    title = BY_KEY[load.load].title
    method = [tr(_METHOD.get(load.load, _STEPS))]
    if load.load.endswith("holding") and load.load != "motors holding":
        method.append(tr("A held heater takes what is left of its step once it lets go."))
    if len(load.each) > 1:
        method.append(tr("Its values are joined, each weighted by how sure it is."))
    idle = ""
    if load.is_idle:
        energy = number(year_kwh(load), 0, locale)
        if load.load == ELECTRONICS:
            idle = tr("It runs as long as the machine is on: {energy} kWh a year.", energy=energy)
        elif load.is_idle_by_user:
            idle = tr(
                "You said that it runs on while the machine is idle: {energy} kWh a year.", energy=energy
            )
        else:
            idle = tr(
                "The level at the test's end shows that it runs on while the machine is idle: "
                "{energy} kWh a year.",
                energy=energy,
            )
    budget = _budget(machine, load.watts, load.u_w, study, locale)
    return Explanation(
        title=f"{machine.name}: {title}",
        value_text=watts_text(load.watts, load.u95_w, locale),
        topic=_TOPIC,
        method=(*method, *((idle,) if idle else ()), *_by_check(machine, study, locale)),
        formula=(
            *(line for single in load.each for line in _single(machine, single, locale)),
            *budgets.combined(budget, load.u95_w, locale, "W"),
        ),
        sources=_sources(machine, locale),
        budget=budget,
        surer=_surer(),
        cautions=tuple(tr(words) for words in _CAUTIONS),
    )


_METHOD = {ELECTRONICS: mark("What is on before the first step: the level that the test begins with.")}
_STEPS = mark("Each step is the difference of the levels before and after it.")
_SURER = (
    mark("Leave each load on for three minutes or more, and log every second or two."),
    mark("Turn the same load off and on again: each time gives another value."),
)
_CAUTIONS = (
    mark("The watts are those at the plug, with the losses of the machine's supply in them."),
    mark("A load measured alone may take other watts while the machine works."),
)


def _surer() -> tuple[str, ...]:
    return tuple(tr(words) for words in _SURER)


def _single(machine: MachineLoads, single: Single, locale: NumberLocale) -> list[str]:
    """The arithmetic of one value: levels on both sides of its steps."""

    def f(value: float) -> str:
        return figures(value, locale=locale)

    if not single.steps:
        return [tr("level before the first step = {watts} W", watts=f(single.watts))]
    lines = []
    for at in single.steps:
        levels = _levels(machine, at)
        step = next(s for s in machine.steps if s.number == at)
        if levels is not None:
            before, after = levels
            lines.append(
                tr(
                    "step {number}: {after} W − {before} W = {watts}",
                    number=at,
                    after=f(after),
                    before=f(before),
                    watts=step_watts(step, locale),
                )
            )
    if len(single.steps) > 1:
        lines.append(tr("together: {watts} W", watts=f(single.watts)))
    return lines


def _levels(machine: MachineLoads, at: int) -> tuple[float, float] | None:
    """Levels before and after a step, between the pulses where both switch. [W]"""
    for test in machine.stairs:
        place = at - test.first
        if 0 <= place < len(test.plateaus) - 1:
            before, after = test.plateaus[place], test.plateaus[place + 1]
            if before.is_switching and after.is_switching:
                return before.low_w, after.low_w
            return before.mean_w, after.mean_w
    return None


def _by_check(machine: MachineLoads, study: Study, locale: NumberLocale) -> tuple[str, ...]:
    """What same-load checks made of the watts, for each meter of the tests."""
    meters = dict.fromkeys(study.log(test.log_id).meter_id for test in machine.stairs)
    return tuple(line for meter_id in meters for line in budgets.by_check(meter_id, study, locale))


def _budget(
    machine: MachineLoads, watts: float, u_w: float, study: Study, locale: NumberLocale
) -> tuple[BudgetLine, ...]:
    meter_id = next((study.log(t.log_id).meter_id for t in machine.stairs), None)
    key = None if meter_id is None else budgets.gain_key(meter_id, study)
    gain = 0.0 if meter_id is None else gain_u(checked_meter(study, meter_id)) * abs(watts)
    parts = [
        ("levels", u_w, "", tr("how the power scatters on either side, and the display's step")),
        (
            "meter gain",
            gain,
            budgets.shared_with(key, study).replace("run", "test"),
            budgets.why("meter gain", key, study),
        ),
    ]
    return budgets.made([part for part in parts if part[1] > 0], locale, "W")


def _sources(machine: MachineLoads, locale: NumberLocale) -> tuple[SourceLine, ...]:
    return tuple(
        SourceLine(
            tr(
                "step {number} at {at_s} min: {step_name}, {step_watts}",
                number=s.number,
                at_s=number(s.at_s / SECONDS_PER_MINUTE, 1, locale),
                step_name=step_name(s),
                step_watts=step_watts(s, locale),
            ),
            s.run_id,
            bool(s.load),
        )
        for s in machine.steps
    )


def _sum(machine: MachineLoads, study: Study, locale: NumberLocale) -> Explanation | None:
    if machine.sum_w is None:
        return None
    counted = [w for w in machine.loads if BY_KEY[w.load].in_processing]
    lines = [f"{BY_KEY[w.load].title}: {watts_text(w.watts, w.u95_w, locale)}" for w in counted]
    total = figures(math.fsum(w.watts for w in counted), locale=locale)
    own_w = math.hypot(*(w.u_w for w in counted))
    budget = _budget(machine, machine.sum_w.value, own_w, study, locale)
    return Explanation(
        title=tr("{name}: sum of the loads", name=machine.name),
        value_text=watts_text(machine.sum_w.value, machine.sum_w.u95, locale),
        topic=_TOPIC,
        method=(
            tr(
                "The loads that draw all through processing, added up; a heater that heats up is not counted."
            ),
            tr("Their scatter adds in squares; the meter's gain moves all of them alike."),
            *_by_check(machine, study, locale),
        ),
        formula=(
            *lines,
            tr("together: {total} W", total=total),
            *budgets.combined(budget, machine.sum_w.u95, locale, "W"),
        ),
        sources=_sources(machine, locale),
        budget=budget,
        surer=_surer(),
        cautions=tuple(tr(words) for words in _CAUTIONS),
    )


def _processing(machine: MachineLoads, study: Study, locale: NumberLocale) -> Explanation | None:
    if machine.processing_w is None:
        return None
    names = {r.id: r.name for r in study.runs}
    runs = [
        SourceLine(
            tr(
                "{run}: {watts} W",
                run=names.get(run_id) or tr("run {number}", number=i),
                watts=figures(watts, locale=locale),
            ),
            run_id,
        )
        for i, (run_id, watts) in enumerate(machine.processing_runs, start=1)
    ]
    many = len(runs)
    spread = (
        tr("Its interval is that of the spread between the runs.")
        if many > 1
        else tr("Of one run there is no spread, and so no interval.")
    )
    return Explanation(
        title=tr("{name}: watts of processing", name=machine.name),
        value_text=watts_text(machine.processing_w.value, machine.processing_w.u95, locale),
        topic=_TOPIC,
        method=(
            tr("The mean power from the end of warm-up to the end, the mean of the runs that count."),
            spread,
        ),
        formula=(
            tr(
                "mean of {many} = {processing_w} W",
                many=many,
                processing_w=figures(machine.processing_w.value, locale=locale),
            ),
        ),
        sources=tuple(runs),
    )


def _rest(machine: MachineLoads, locale: NumberLocale) -> Explanation | None:
    rest, total, processing = machine.unexplained_w, machine.sum_w, machine.processing_w
    if rest is None or total is None or processing is None:
        return None
    f = [figures(v.value, locale=locale) for v in (processing, total, rest)]
    return Explanation(
        title=tr("{name}: what stays unexplained", name=machine.name),
        value_text=watts_text(rest.value, rest.u95, locale),
        topic=_TOPIC,
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
        formula=(f"{f[0]} W − {f[1]} W = {f[2]} W",),
        sources=_sources(machine, locale),
        surer=(tr("Name every step; add a step with the motors moving."), *_surer()),
        cautions=(
            tr(
                "A negative rest means that the loads were measured warmer, or held hotter, than in the part."
            ),
        ),
    )
