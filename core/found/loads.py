"""How the watts of a load were found: its steps with the levels on both sides, and its budget."""

from core.formatting import POINT, NumberLocale, number
from core.found import budgets
from core.found.load_parts import (
    IDLE,
    PROCESSING,
    REST,
    STEP,
    SUM,
    TOPIC,
    better,
    budget_of,
    by_check,
    cautions,
    levels_of,
    sources_of,
    without_each,
    year_of_idle,
)
from core.found.load_rest import of_idle, of_processing, of_rest, of_step, of_sum
from core.found.values import Explanation
from core.found.writing import figures, too_high
from core.language import mark, tr
from core.loads.names import BY_KEY, ELECTRONICS
from core.results.load_answer import step_watts, watts_text, year_kwh
from core.results.loads import Loads, LoadWatts, MachineLoads, Single
from core.study import Study


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
        Key of a load, or of the sum, of processing, of what stays unexplained, of what runs while the machine
        is idle, or `STEP` and the number of a step.
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
        return of_sum(machine, study, locale)
    if key == PROCESSING:
        return of_processing(machine, study, locale)
    if key == REST:
        return of_rest(machine, study, locale)
    if key == IDLE:
        return of_idle(machine, locale)
    if key.startswith(STEP):
        return of_step(machine, key.removeprefix(STEP), study, locale)
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
    budget = budget_of(machine, load.watts, load.u_w, study, locale)
    return Explanation(
        title=f"{machine.name}: {title}",
        value_text=watts_text(load.watts, load.u95_w, locale),
        topic=TOPIC,
        method=(*method, *((idle,) if idle else ()), *by_check(machine, study, locale)),
        formula=(
            *(line for single in load.each for line in _single(machine, single, locale)),
            *budgets.combined(budget, load.u95_w, locale, "W"),
        ),
        sources=sources_of(machine, locale),
        budget=budget,
        sensitivity=(
            *without_each([(s.watts, s.u_w, _named(s)) for s in load.each], load.watts, locale),
            *year_of_idle(load, locale),
            too_high(load.watts, "W", locale),
        ),
        surer=better(),
        cautions=cautions(),
    )


_METHOD = {ELECTRONICS: mark("What is on before the first step: the level that the test begins with.")}
_STEPS = mark("Each step is the difference of the levels before and after it.")


def _single(machine: MachineLoads, single: Single, locale: NumberLocale) -> list[str]:
    """The arithmetic of one value: levels on both sides of its steps."""

    def f(value: float) -> str:
        return figures(value, locale=locale)

    if not single.steps:
        return [tr("level before the first step = {watts} W", watts=f(single.watts))]
    lines = []
    for at in single.steps:
        levels = levels_of(machine, at)
        step = next(s for s in machine.steps if s.number == at)
        if levels is not None:
            (before, _), (after, _) = levels
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


def _named(single: Single) -> str:
    """Which steps gave a value."""
    if not single.steps:
        return tr("Without the level before the first step")
    return tr("Without step {numbers}", numbers=", ".join(str(n) for n in single.steps))
