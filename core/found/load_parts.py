"""What the explanations of the Loads page share: keys, levels, budgets, sources, and what else could be."""

import math
from collections.abc import Sequence

from core.formatting import NumberLocale, number
from core.found import budgets
from core.found.values import BudgetLine, SourceLine
from core.found.writing import otherwise
from core.language import mark, tr
from core.results.checked_logs import checked_meter
from core.results.holds import gain_u
from core.results.load_answer import HOURS_A_YEAR, step_name, step_watts
from core.results.loads import LoadWatts, MachineLoads
from core.study import Study
from core.units import SECONDS_PER_MINUTE, WH_PER_KWH

TOPIC = "loads"
SUM, PROCESSING, REST, IDLE, STEP = "load_sum", "processing_w", "unexplained_w", "idle_kwh", "step "
SCATTER = mark("how the power scatters on either side, and the display's step")
_SURER = (
    mark("Leave each load on for three minutes or more, and log every second or two."),
    mark("Turn the same load off and on again: each time gives another value."),
)
_CAUTIONS = (
    mark("The watts are those at the plug, with the losses of the machine's supply in them."),
    mark("A load measured alone may take other watts while the machine works."),
)
#: a weight is never taken for more sure than this [W]
_LEAST_U_W = 1e-9


def better() -> tuple[str, ...]:
    """What would make a load surer."""
    return tuple(tr(words) for words in _SURER)


def cautions() -> tuple[str, ...]:
    """What to know before relying on a load."""
    return tuple(tr(words) for words in _CAUTIONS)


def levels_of(machine: MachineLoads, at: int) -> tuple[tuple[float, float], tuple[float, float]] | None:
    """Levels before and after a step with their u, between the pulses where both switch. [W]"""
    for test in machine.stairs:
        place = at - test.first
        if 0 <= place < len(test.plateaus) - 1:
            before, after = test.plateaus[place], test.plateaus[place + 1]
            if before.is_switching and after.is_switching:
                return (before.low_w, before.low_u_w), (after.low_w, after.low_u_w)
            return (before.mean_w, before.u_w), (after.mean_w, after.u_w)
    return None


def by_check(machine: MachineLoads, study: Study, locale: NumberLocale) -> tuple[str, ...]:
    """What same-load checks made of the watts, for each meter of the tests."""
    meters = dict.fromkeys(study.log(test.log_id).meter_id for test in machine.stairs)
    return tuple(line for meter_id in meters for line in budgets.by_check(meter_id, study, locale))


def meter_of(machine: MachineLoads, study: Study) -> str | None:
    """The meter of the tests."""
    return next((study.log(t.log_id).meter_id for t in machine.stairs), None)


def gain_line(
    machine: MachineLoads, watts: float, study: Study, *, of_runs: bool = False
) -> tuple[str, float, str, str]:
    """The line of the gain of the tests' meter in a budget."""
    meter_id = meter_of(machine, study)
    key = None if meter_id is None else budgets.gain_key(meter_id, study)
    gain = 0.0 if meter_id is None else gain_u(checked_meter(study, meter_id)) * abs(watts)
    shared = budgets.shared_with(key, study)
    return (
        "meter gain",
        gain,
        shared if of_runs else shared.replace("run", "test"),
        budgets.why("meter gain", key, study),
    )


def budget_of(
    machine: MachineLoads, watts: float, u_w: float, study: Study, locale: NumberLocale
) -> tuple[BudgetLine, ...]:
    """Scatter of the levels, and the meter's gain. [W]"""
    parts = [(mark("levels"), u_w, "", tr(SCATTER)), gain_line(machine, watts, study)]
    return budgets.made([part for part in parts if part[1] > 0], locale, "W")


def sources_of(machine: MachineLoads, locale: NumberLocale) -> tuple[SourceLine, ...]:
    """The steps of the machine's tests."""
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


def without_each(
    values: Sequence[tuple[float, float, str]], joined: float, locale: NumberLocale
) -> tuple[str, ...]:
    """What values weighted into one would give without each of them.

    Parameters
    ----------
    values : sequence of (watts, u, what is left out)
    joined : float
        [W]
    locale : NumberLocale
    """
    told = []
    for left, (_, _, what) in enumerate(values):
        rest = [(w, 1 / max(u, _LEAST_U_W) ** 2) for i, (w, u, _) in enumerate(values) if i != left]
        if rest:
            then = math.fsum(w * k for w, k in rest) / math.fsum(k for _, k in rest)
            told.append(otherwise(what, then - joined, "W", locale))
    return tuple(told)


def year_of_idle(load: LoadWatts, locale: NumberLocale) -> tuple[str, ...]:
    """What a watt more of a load that never goes off would be in a year."""
    if not load.is_idle:
        return ()
    what = tr("If it drew 1 W more, in a year")
    return (otherwise(what, HOURS_A_YEAR / WH_PER_KWH, "kWh", locale),)
