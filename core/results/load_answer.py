"""The Loads page's sentences: what takes most on a machine, what stays unexplained, what runs all night."""

from core.formatting import POINT, NumberLocale, capitalised, listed, number, one_of, with_interval, with_unit
from core.language import mark, tr
from core.loads.names import BY_KEY, ELECTRONICS
from core.quantities import Quantity
from core.results.load_naming import LoadStep
from core.results.loads import Loads, LoadWatts, MachineLoads
from core.study import Study
from core.units import SECONDS_PER_MINUTE, WH_PER_KWH

LOAD_W = Quantity("load_w", mark("Load"), "W", decimals=1)
IDLE_KWH = Quantity("idle_kwh", mark("A year"), "kWh", decimals=1, higher_is_better=False)
HOURS_A_YEAR = 8760.0
NOTHING = mark("No switch-on test yet: nobody has measured what each load takes.")
HOW_TO = mark(
    "A switch-on test: machine on and idle, meter logging every second or few. After five minutes turn on "
    "one load and wait three minutes, then the next: fans, motors, hot end, last the bed. Let a heater reach "
    "its temperature and hold it before you go on. Drop the log here: a staircase is found by itself, or "
    "mark a stretch on the Logs page as a switch-on test. Use the machine's own controls only: never open "
    "it, and keep away from mains and hot parts."
)
CAUTION = mark("Turn loads on by the machine's controls only: inside are mains voltage and hot parts.")


def watts_text(value: float, u95: float | None, locale: NumberLocale = POINT) -> str:
    """Watts with their interval and unit."""
    return with_unit(with_interval(value, u95, LOAD_W, locale), LOAD_W)


def year_kwh(load: LoadWatts) -> float:
    """What a load takes in a year in which it never goes off. [kWh]"""
    return load.watts * HOURS_A_YEAR / WH_PER_KWH


def headline(loads: Loads, machine_id: str = "", locale: NumberLocale = POINT) -> str:
    """What the tests say of one machine, in one sentence; of the first with names where none is chosen."""
    tested = loads.tested
    if not tested:
        if not any(m.tests for m in loads.machines):
            return tr(NOTHING)
        return tr("A switch-on test was marked, but no step stands out in it.")
    named = [m for m in tested if len(m.loads) > 1]
    machine = next((m for m in tested if m.machine_id == machine_id), (named or tested)[0])
    told = [w for w in machine.loads if w.load != ELECTRONICS and BY_KEY[w.load].in_processing]
    if not told:
        steps = sum(s.watts > 0 for s in machine.steps)
        if not steps:
            return tr(
                "no steps up found on {machine}: say below which load was turned on at each.",
                machine=machine.name,
            )
        return tr(
            "{count:step|steps} up found on {machine}: say below which load was turned on at each.",
            count=steps,
            machine=machine.name,
        )
    told.sort(key=lambda w: -w.watts)
    parts = [f"{BY_KEY[w.load].title} {watts_text(w.watts, w.u95_w, locale)}" for w in told[:3]]
    rest = machine.unexplained_w
    if rest is None:
        return tr("On {machine}: {loads}.", machine=machine.name, loads=listed(parts))
    return tr(
        "On {machine}: {loads}; {watts} of processing stay unexplained.",
        machine=machine.name,
        loads=listed(parts),
        watts=watts_text(rest.value, rest.u95, locale),
    )


def idle_sentence(machine: MachineLoads, locale: NumberLocale = POINT) -> str:
    """What runs while the machine is idle, with its year; empty where nothing is known to."""
    idle = [w for w in machine.loads if w.is_idle]
    if not idle:
        return ""
    parts = [
        tr("{load} ({energy} kWh a year)", load=BY_KEY[w.load].title, energy=number(year_kwh(w), 0, locale))
        for w in idle
    ]
    return tr("While {machine} is idle, these run on: {loads}.", machine=machine.name, loads=listed(parts))


def conditions(loads: Loads, study: Study, locale: NumberLocale = POINT) -> str:
    """The line under the sentence: tests, how watts are told, what is not named."""
    tests = sum(m.tests for m in loads.machines)
    if not tests:
        return tr(HOW_TO)
    unnamed = sum(m.unnamed for m in loads.machines)
    without = [m.name for m in loads.machines if not m.tests]
    parts = [
        tr("{tests:switch-on test|switch-on tests}", tests=tests),
        tr("each step on top of what was on before it"),
        tr("95 % intervals hold noise, display and the meter's gain"),
    ]
    if unnamed:
        parts.append(tr("{count:step|steps} up without a name", count=unnamed))
    if without:
        named = listed(without) if len(without) <= 4 else tr("{count} machines", count=len(without))
        parts.append(tr("no test: {machines}", machines=named))
    if study.invented:
        parts.append(tr("invented data"))
    return "; ".join(parts) + ". " + tr(CAUTION)


def step_name(step: LoadStep) -> str:
    """What a step is called, or what it could be."""
    if step.load:
        return BY_KEY[step.load].title
    if step.could_be:
        return f"{one_of([BY_KEY[load].title for load in step.could_be])}?"
    return tr("all that was on, together?") if step.is_all else tr("not named")


def ambiguous(machine: MachineLoads) -> str:
    """Which steps the test alone cannot name, and why; empty where there is none."""
    unsure = [s for s in machine.steps if s.could_be and not s.load]
    told = [
        tr(
            "step {place} could be {loads}, which take the same",
            place=str(s.number),
            loads=one_of([BY_KEY[load].title for load in s.could_be]),
        )
        for s in unsure
    ]
    if not told:
        return ""
    return tr("{steps}: say which it was.", steps=capitalised(listed(told)))


def step_watts(step: LoadStep, locale: NumberLocale = POINT) -> str:
    """How far a step moved the power, with its sign and interval."""
    return ("+" if step.watts > 0 else "") + watts_text(step.watts, step.u95_w, locale)


def step_readout(machine: MachineLoads, number_of: int, locale: NumberLocale = POINT) -> tuple[str, ...]:
    """What is read out at a step, as lines; empty where there is no such step."""
    step = next((s for s in machine.steps if s.number == number_of), None)
    if step is None:
        return ()
    who = tr("named by you") if step.is_named else tr("found") if step.load else tr("not named yet")
    at_min = number(step.at_s / SECONDS_PER_MINUTE, 1, locale)
    return (
        tr(
            "{machine}, step {place} at {minutes} min",
            machine=machine.name,
            place=str(step.number),
            minutes=at_min,
        ),
        f"{step_name(step)}: {step_watts(step, locale)}",
        who,
    )
